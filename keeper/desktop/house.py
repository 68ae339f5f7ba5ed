"""The window over one open book: its places, its foot line, take back and put back."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import date

from PySide6.QtCore import QObject, QTimer
from PySide6.QtWidgets import QWidget

from keeper.actions import undoing
from keeper.actions.keeping import Keeping, Written
from keeper.actions.troubles import REFUSALS, said
from keeper.actions.tub_labels import code_scanned
from keeper.desktop.look import Look
from keeper.desktop.main_window import MainWindow
from keeper.desktop.notices import Notices
from keeper.desktop.places import Place, key_of
from keeper.desktop.widgets import foot
from keeper.language import tr
from keeper.reports.figures import day, weekday
from keeper.reports.words import verb_words

Maker = Callable[[Look, Keeping, Notices], QWidget]

CLOCK_MS = 15_000
ANIMAL_PLACE, RECORDS_PLACE = "Animal", "Records"
PREY_PLACE, CLUTCH_PLACE, SCALES, RACKS_PLACE = "Prey", "Clutches", "Weigh-in", "Racks"
TAKES_BACK = tr("Ctrl+Z takes it back")
"""Said at the foot, unless the page has words of its own in ``takes_back``."""


class House(QObject):
    """Joins a window to a book. It shows and passes on; screens and verbs do the rest.

    makers: the places by name, in the order of the strip. window: one that already shows the
    same places at first sight; without it one is made.
    """

    def __init__(
        self,
        keeping: Keeping,
        look: Look,
        makers: Mapping[str, Maker],
        window: MainWindow | None = None,
    ) -> None:
        super().__init__()
        self.keeping = keeping
        self.notices = Notices(self)
        self._names = tuple(makers)
        self._pages: list[QWidget] = []
        places = [self._place(name, make) for name, make in makers.items()]
        self.window = window or MainWindow(look, places)
        if window is not None:
            window.enter(look, places)
        self._listen()
        self._clock = QTimer(self, interval=CLOCK_MS)
        self._clock.timeout.connect(self._show_clock)
        self._clock.start()
        self._show_clock()
        if keeping.told:
            self.window.foot.show_note(keeping.told)

    def _place(self, name: str, make: Maker) -> Place:
        return Place(
            key=key_of(name),
            name=name,
            title=tr(name),
            make=lambda look: self._made(make(look, self.keeping, self.notices)),
        )

    def _made(self, page: QWidget) -> QWidget:
        self._pages.append(page)
        return page

    def _listen(self) -> None:
        window, notices = self.window, self.notices
        notices.written.connect(self._show_written)
        notices.refused.connect(window.foot.show_refusal)
        notices.noted.connect(window.foot.show_note)
        notices.animal_asked.connect(self._show_animal)
        notices.grade_asked.connect(self._show_grade)
        notices.clutch_asked.connect(self._show_clutch)
        notices.weighing_asked.connect(self._show_on_scales)
        notices.stay_asked.connect(self._show_stay)
        window.undo_asked.connect(self._take_back)
        window.redo_asked.connect(self._put_back)
        window.scanned.connect(self._pass_scan_on)
        window.closing.connect(self._close_pages)
        window.place_changed.connect(self._show_way_back)

    def _close_pages(self) -> None:
        """Pages that work in a thread of their own end it; nobody sees the window meanwhile.

        No page hears of another light or size any more: it would ask a book that is closed.
        """
        self._clock.stop()
        self.window.hide()
        for page in self._pages:
            self.window.look.disconnect(page, None)
            close_down = getattr(page, "close_down", None)
            if close_down is not None:
                close_down()

    def _show_clock(self) -> None:
        now = self.keeping.now()
        self.window.strip.show_clock(f"{weekday(now)} {day(now.date())}", f"{now:%H:%M}")

    def _show_written(self, written: Written) -> None:
        take_back, reach = self._way_back()
        shown = foot.Written(
            clock=f"{written.at:%H:%M:%S}",
            place=written.where or verb_words(written.verb),
            what=written.what,
            take_back=take_back,
            reach=reach,
        )
        self.window.foot.show_written(shown)

    def _show_way_back(self) -> None:
        self.window.foot.show_way_back(*self._way_back())

    def _way_back(self) -> tuple[str, str]:
        """How the page in sight says that what was written is taken back, and how far."""
        here = self.window.page(self.window.place.name)
        return getattr(here, "takes_back", TAKES_BACK), getattr(here, "reach", "")

    def _turns_join(self, join: int | None, *, back: bool) -> bool:
        """Whether what is taken or put back is a *join*: Records does it, as it may take long."""
        if join is None or RECORDS_PLACE not in self._names:
            return False
        records = self.window.page(RECORDS_PLACE)
        records.turn_join(join, back=back)  # type: ignore[attr-defined]
        return True

    def _take_back(self) -> None:
        if self._turns_join(undoing.join_to_take_back(self.keeping), back=True):
            return
        try:
            target, _ = undoing.take_back(self.keeping)
        except REFUSALS as refusal:
            self.window.foot.show_refusal(said(refusal))
            return
        self.notices.changed.emit()
        when = f"{target.written:%H:%M:%S}"
        self.window.foot.show_note(
            tr(
                "Taken back: {verb}, written {when}. Ctrl+Shift+Z writes it again.",
                verb=verb_words(target.verb),
                when=when,
            )
        )

    def _put_back(self) -> None:
        if self._turns_join(undoing.join_to_put_back(self.keeping), back=False):
            return
        try:
            undoing.put_back(self.keeping)
        except REFUSALS as refusal:
            self.window.foot.show_refusal(said(refusal))
            return
        self.notices.changed.emit()
        self.window.foot.show_note(tr("Written again. Ctrl+Z takes it back."))

    def _show_animal(self, animal: int) -> None:
        if ANIMAL_PLACE not in self._names:
            return
        page = self.window.page(ANIMAL_PLACE)
        page.show_animal(animal)  # type: ignore[attr-defined]
        self.window.go_to(self._names.index(ANIMAL_PLACE))

    def _show_grade(self, prey: str) -> None:
        if PREY_PLACE not in self._names:
            return
        page = self.window.page(PREY_PLACE)
        page.show_grade(prey)  # type: ignore[attr-defined]
        self.window.go_to(self._names.index(PREY_PLACE))

    def _show_clutch(self, name: str) -> None:
        if CLUTCH_PLACE not in self._names:
            return
        page = self.window.page(CLUTCH_PLACE)
        page.show_clutch(name)  # type: ignore[attr-defined]
        self.window.go_to(self._names.index(CLUTCH_PLACE))

    def _show_on_scales(self, code: str) -> None:
        if SCALES in self._names:
            self.window.go_to(self._names.index(SCALES))
            self.window.page(SCALES).scanned(code)  # type: ignore[attr-defined]

    def _show_stay(self, animal: int, on: date) -> None:
        if RACKS_PLACE in self._names:
            self.window.go_to(self._names.index(RACKS_PLACE))
            self.window.page(RACKS_PLACE).show_stay(animal, on)  # type: ignore[attr-defined]

    def ask_newcomer(self) -> None:
        """Go where an animal is written into the book, with the line for it open."""
        self.window.go_to(self._names.index(ANIMAL_PLACE))
        self.window.page(ANIMAL_PLACE).ask_newcomer()  # type: ignore[attr-defined]

    def _pass_scan_on(self, code: str) -> None:
        page = self.window.page(self.window.place.name)
        take = getattr(page, "scanned", None)
        if take is None:
            told = tr("Nothing here takes the scanned code {code}.", code=code)
            self.window.foot.show_refusal(told)
            return
        try:
            take(code_scanned(self.keeping, code))
        except REFUSALS as refusal:
            self.window.foot.show_refusal(said(refusal))
