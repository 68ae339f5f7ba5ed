"""The papers of the racks: labels in rack order, refusals of the nights, the carry-out list."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtWidgets import QWidget

from keeper.actions.keeping import Keeping
from keeper.actions.racks import Rack, Room
from keeper.actions.refusal_strip import refusal_strip
from keeper.actions.time_line_told import Told
from keeper.actions.tub_labels import labels_of, place_labels_of
from keeper.desktop.notices import Notices
from keeper.desktop.paper.desk import PaperDesk
from keeper.desktop.paper.printing import Sheets, printed_words
from keeper.desktop.paper.refusal_pages import RefusalPages, refusal_pages
from keeper.desktop.paper.time_pages import TimePages, time_pages
from keeper.desktop.screens.label_asking import Batch, LabelAsking
from keeper.desktop.screens.racks_strip import head_words, picture_of, strip_legend
from keeper.desktop.screens.racks_time_words import rack_called
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.desktop.widgets.rack_paint import At
from keeper.desktop.widgets.time_line_sheet import Shown
from keeper.language import tr

NOT_YET = tr("The racks are still being read; a moment.")


class RacksPaper:
    """What the keys of paper do; each writes a PDF beside the book.

    line: where it is asked at which label of a sheet to begin. seen: the room that is shown,
    None until it is read, and the tub that is chosen.
    """

    def __init__(
        self,
        keeping: Keeping,
        notices: Notices,
        page: QWidget,
        line: AskingLine,
        seen: Callable[[], tuple[Room | None, At | None]],
    ) -> None:
        self._keeping, self._notices, self._seen = keeping, notices, seen
        self.desk = PaperDesk(keeping, page, tell=notices.noted.emit, refuse=notices.refused.emit)
        self._asking = LabelAsking(keeping, notices, line, self.desk)

    def rack_labels(self) -> None:
        """Labels of the rack of the chosen tub, of the first where nothing is chosen."""
        self._asking.ask(self._of_the_rack)

    def room_labels(self) -> None:
        self._asking.ask(self._of_the_room)

    def rack_places(self) -> None:
        """Labels of every tub of the rack, whoever lives there; they stay on the tubs."""
        self._asking.ask(self._places_of_the_rack)

    def room_places(self) -> None:
        self._asking.ask(self._places_of_the_room)

    def refusals(self) -> None:
        """The last feed nights of every animal, as the strip shows them."""
        self.desk.make(lambda: refusal_sheets(self._keeping))

    def time_line(self, seen: tuple[Shown, Told] | None) -> None:
        """The rack through time as it is in view, and all that is told of the chosen tub."""
        if seen is None:
            self._notices.noted.emit(NOT_YET)
        else:
            self.desk.make(lambda: time_sheets(self._keeping, *seen))

    def carry_out(self) -> None:
        """For a fire or a power cut: who first, where they stand, and in what."""
        self.desk.make_aside(tr("Carry-out list"), carry_sheets)

    def _of_the_rack(self) -> Batch:
        room, at = self._read()
        rack, letter, where = _rack_of(room, at)
        tubs = [tub for one in rack for row in one.rows for tub in row.tubs]
        here = [living.animal for tub in tubs for living in tub.living]
        title = tr("Tub labels, {where}", where=where)
        return Batch(title, f"labels-{letter}", labels_of(self._keeping, here))

    def _of_the_room(self) -> Batch:
        room, _ = self._read()
        here = [living.animal for living in room.everyone()]
        title = tr("Tub labels, the room")
        return Batch(title, "labels", labels_of(self._keeping, here))

    def _places_of_the_rack(self) -> Batch:
        rack, letter, where = _rack_of(*self._read())
        names = [tub.name for one in rack for row in one.rows for tub in row.tubs]
        title = tr("Labels of the places, {where}", where=where)
        return Batch(title, f"places-{letter}", place_labels_of(names))

    def _places_of_the_room(self) -> Batch:
        room, _ = self._read()
        title = tr("Labels of the places, the room")
        return Batch(title, "places", place_labels_of(tub.name for tub in room.tubs()))

    def _read(self) -> tuple[Room, At | None]:
        room, at = self._seen()
        if room is None:
            raise LookupError(NOT_YET)
        return room, at


def _rack_of(room: Room, at: At | None) -> tuple[Sequence[Rack], str, str]:
    """The rack of *at*, the first where nothing is chosen; its letter, and it in words."""
    racks = room.racks[at.rack : at.rack + 1] if at else room.racks[:1]
    letter = racks[0].letter if racks else ""
    if not letter:
        return racks, "elsewhere", tr("elsewhere")
    return racks, letter, tr("rack {letter}", letter=letter)


def carry_sheets(keeping: Keeping) -> Sheets:
    """The carry-out list of today. Raises LookupError where nobody is in the room."""
    from keeper.actions.carrying_out import carry_facts  # what sets pages, when asked for
    from keeper.desktop.paper.flow import document_pages
    from keeper.reports.carry_out import carry_out

    document = carry_out(carry_facts(keeping))
    stem = f"carry-out-{keeping.today.isoformat()}"
    return Sheets(title=document.title, stem=stem, pages=document_pages(document))


def time_sheets(keeping: Keeping, shown: Shown, told: Told) -> Sheets:
    """The time-line of a rack."""
    pages = TimePages(shown=shown, told=told, printed=printed_words(keeping))
    called = shown.told.letter or "elsewhere"
    stem = f"time-line-{called}-{shown.view.cursor.isoformat()}"
    return Sheets(title=rack_called(shown.told), stem=stem, pages=time_pages(pages))


def refusal_sheets(keeping: Keeping) -> Sheets:
    """The refusals of the last feed nights. Raises LookupError where there is no night."""
    strip = refusal_strip(keeping, keeping.today)
    told = RefusalPages(
        title=tr("Refusals, {nights}", nights=head_words(strip)),
        picture=picture_of(strip),
        legend=strip_legend(strip),
        printed=printed_words(keeping),
    )
    stem = f"refusals-{keeping.today.isoformat()}"
    title = tr("Refusals of the feed nights")
    return Sheets(title=title, stem=stem, pages=refusal_pages(told))
