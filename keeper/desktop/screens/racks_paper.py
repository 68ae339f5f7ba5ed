"""The papers of the racks: labels in rack order, and the refusals of the nights."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from PySide6.QtWidgets import QWidget

from keeper.actions.keeping import Keeping
from keeper.actions.racks import Room
from keeper.actions.refusal_strip import refusal_strip
from keeper.actions.tub_labels import labels_of
from keeper.desktop.notices import Notices
from keeper.desktop.paper.desk import PaperDesk
from keeper.desktop.paper.printing import Sheets, printed_words
from keeper.desktop.paper.refusal_pages import RefusalPages, refusal_pages
from keeper.desktop.screens.racks_strip import head_words, picture_of, strip_legend
from keeper.desktop.widgets.rack_paint import At
from keeper.husbandry.now import AnimalNow

NOT_YET = "The racks are still being read; a moment."


class RacksPaper:
    """What the keys of paper do; each writes a PDF beside the book.

    seen: the room that is shown, None until it is read, and the tub that is chosen.
    """

    def __init__(
        self,
        keeping: Keeping,
        notices: Notices,
        page: QWidget,
        seen: Callable[[], tuple[Room | None, At | None]],
    ) -> None:
        self._keeping, self._seen = keeping, seen
        self.desk = PaperDesk(keeping, page, tell=notices.noted.emit, refuse=notices.refused.emit)

    def rack_labels(self) -> None:
        """Labels of the rack of the chosen tub, of the first where nothing is chosen."""
        self.desk.make(self._of_the_rack)

    def room_labels(self) -> None:
        self.desk.make(self._of_the_room)

    def refusals(self) -> None:
        """The last feed nights of every animal, as the strip shows them."""
        self.desk.make(lambda: refusal_sheets(self._keeping))

    def _of_the_rack(self) -> Sheets:
        room, at = self._read()
        racks = room.racks[at.rack : at.rack + 1] if at else room.racks[:1]
        tubs = [tub for rack in racks for row in rack.rows for tub in row.tubs]
        here = [living.animal for tub in tubs for living in tub.living]
        letter = racks[0].letter if racks else ""
        where = f"rack {letter}" if letter else "elsewhere"
        return label_sheets(self._keeping, here, where, f"labels-{letter or 'elsewhere'}")

    def _of_the_room(self) -> Sheets:
        room, _ = self._read()
        here = [living.animal for living in room.everyone()]
        return label_sheets(self._keeping, here, "the room", "labels")

    def _read(self) -> tuple[Room, At | None]:
        room, at = self._seen()
        if room is None:
            raise LookupError(NOT_YET)
        return room, at


def label_sheets(keeping: Keeping, rows: Iterable[AnimalNow], where: str, stem: str) -> Sheets:
    """Labels of *rows*. Raises LookupError where there are none."""
    from keeper.desktop.paper.tub_labels import tub_label_pages  # the code maker, when asked for

    pages = tub_label_pages(labels_of(keeping, rows), printed_words(keeping))
    return Sheets(title=f"Tub labels, {where}", stem=stem, pages=pages)


def refusal_sheets(keeping: Keeping) -> Sheets:
    """The refusals of the last feed nights. Raises LookupError where there is no night."""
    strip = refusal_strip(keeping, keeping.today)
    told = RefusalPages(
        title=f"Refusals, {head_words(strip)}",
        picture=picture_of(strip),
        legend=strip_legend(strip),
        printed=printed_words(keeping),
    )
    stem = f"refusals-{keeping.today.isoformat()}"
    return Sheets(title="Refusals of the feed nights", stem=stem, pages=refusal_pages(told))
