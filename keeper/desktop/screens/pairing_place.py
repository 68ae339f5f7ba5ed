"""The pairing calendar in the place Females: read beside the window, its keys and its paper."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import TYPE_CHECKING

from PySide6.QtGui import QAction
from PySide6.QtWidgets import QWidget

from keeper.actions.clutch_desk import CAUTIONS
from keeper.actions.female_desk import Females
from keeper.actions.females import FemaleRow
from keeper.actions.keeping import Keeping
from keeper.actions.pairing_calendar import CalendarDesk, PairingCalendar
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.background import Background, Worker
from keeper.desktop.look import Look
from keeper.desktop.notices import Notices
from keeper.desktop.page_keys import add_key, add_told_key
from keeper.desktop.paper.desk import PaperDesk
from keeper.desktop.paper.printing import Sheets
from keeper.desktop.screens.pairing_calendar import PairingView
from keeper.desktop.screens.pairing_faces import Shown, shown_rows
from keeper.desktop.screens.pairing_paper import calendar_sheets
from keeper.language import tr
from keeper.reports.words import because_text

if TYPE_CHECKING:
    from keeper.actions.forecasting import WeightForecast

_KEYS = tr("Arrows: week and female; + and - fewer and more weeks; C back to the gates.")
_NOT_READ = tr("The pairing calendar is not read yet; C turns to it, then it prints.")


class PairingPlace:
    """What the screen *page* asks of its second view.

    worker: reads beside the window; without one a thread of its own, so that no forecast that
    is being reckoned keeps the calendar waiting.
    """

    def __init__(
        self,
        look: Look,
        keeping: Keeping,
        notices: Notices,
        page: QWidget,
        *,
        worker: Worker | None = None,
    ) -> None:
        self._notices, self._page = notices, page
        self._worker = worker or Background()
        self._desk = CalendarDesk(keeping)
        self._females: Females | None = None
        self._turn, self._stale = 0, True
        self._wanted: int | None = None  # whose row is to be chosen when the calendar is read
        self._own: list[QAction] = []
        self._read_now: Callable[[], object] = lambda: None
        self.view = PairingView(look)
        self.view.legend.show_caution(f"{_KEYS} {because_text(CAUTIONS[2:3])}")
        self.paper = PaperDesk(keeping, page, tell=notices.noted.emit, refuse=notices.refused.emit)

    @property
    def chosen(self) -> FemaleRow | None:
        row = self.view.chosen
        return row.female if row is not None else None

    def listen(self, opened: Callable[[], None], read: Callable[[], object]) -> None:
        """opened: Enter on a row; read: a calendar was read. Keys are listed while it is shown."""
        view, page, self._read_now = self.view, self._page, read
        view.list.activated.connect(lambda _: opened())
        view.rows_came.connect(read)
        before = len(page.actions())
        for key, words, slot in (
            ("Left", tr("a week back"), lambda: view.go_by(-1)),
            ("Right", tr("a week on"), lambda: view.go_by(1)),
            ("Space", tr("this week"), view.go_home),
            ("+", tr("fewer weeks"), lambda: view.zoom(1)),
            ("-", tr("more weeks"), lambda: view.zoom(-1)),
        ):
            add_told_key(page, key, words, slot)
        self._own = page.actions()[before:]
        for action in self._own:
            page.removeAction(action)
        add_key(page, "Ctrl+P", tr("the pairing calendar on paper"), self._print)
        add_key(page, "Ctrl+Shift+P", tr("the last PDF on a printer"), self.paper.to_printer)

    def take(self, females: Females, *, read: bool) -> None:
        """The females as they were read anew; *read*: the calendar is in sight."""
        self._females, self._stale = females, True
        if read:
            self._read()

    def turn(self, row: FemaleRow | None, *, to_calendar: bool) -> None:
        """Into sight, with the female of *row* chosen, or out of it."""
        for action in self._own:
            if to_calendar:
                self._page.addAction(action)
            else:
                self._page.removeAction(action)
        if to_calendar:
            self._wanted = row.animal.animal if row is not None else None
            if self._stale:
                self._read()
            else:
                self._choose_wanted()

    def choose(self, row: FemaleRow) -> None:
        """Go to her row, now or when the calendar is read."""
        self._wanted = row.animal.animal
        self._choose_wanted()

    def head_parts(self) -> list[tuple[str, bool]]:
        """What the head line says beside the name of the place."""
        calendar = self.view.calendar
        if calendar is None:
            return [(tr("pairing calendar"), True), (tr("looking through the book"), False)]
        count = len(self.view.model.rows)
        told = tr(
            "{count} of {all} females; what ends first, first", count=count, all=len(calendar.rows)
        )
        return [(tr("pairing calendar"), True), (told, False)]

    def close_down(self) -> None:
        """Let go of the book."""
        self._turn += 1
        self._worker.stop(self._desk.close)

    def _read(self) -> None:
        females = self._females
        if females is None:
            return
        self._stale = False
        self._turn += 1
        turn, desk, forecasts = self._turn, self._desk, dict(self.view.forecasts)

        def read() -> tuple[PairingCalendar, list[Shown]]:
            found = desk.calendar(females)
            return found, shown_rows(found, forecasts)

        def take(found: tuple[PairingCalendar, list[Shown]]) -> None:
            if turn == self._turn:
                self._take(*found, forecasts)

        self._worker.run(read, take, self._fail)

    def _take(
        self,
        found: PairingCalendar,
        shown: Sequence[Shown],
        heard: Mapping[int, WeightForecast],
    ) -> None:
        """heard: the forecasts that were there when it was read; later ones are put in."""
        self.view.show_calendar(found, shown)
        for animal, forecast in list(self.view.forecasts.items()):
            if heard.get(animal) is not forecast:
                self.view.show_forecast(animal, forecast)
        self._choose_wanted()
        self._read_now()

    def _choose_wanted(self) -> None:
        if self._wanted is not None and self.view.calendar is not None:
            self.view.choose(self._wanted)
            self._wanted = None

    def _fail(self, error: Exception) -> None:
        if not isinstance(error, REFUSALS):
            raise error
        self.view.none.setText(tr("The calendar could not be read. {why}", why=said(error)))
        self.view.none.show()

    def sheets(self, keeping: Keeping) -> Sheets:
        """The calendar that was read last. Raises LookupError while none was."""
        calendar = self.view.calendar
        if calendar is None or self._stale:
            raise LookupError(_NOT_READ)
        return calendar_sheets(keeping, calendar, dict(self.view.forecasts))

    def _print(self) -> None:
        """Pages are set and written off the main thread: a large room has many."""
        if self.view.calendar is None or self._stale:
            self._notices.refused.emit(_NOT_READ)
        else:
            self.paper.make_aside(tr("Pairing calendar"), self.sheets)
