"""Females: when each may be bred, by her gates, and the day her weight is expected."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QStackedWidget, QVBoxLayout, QWidget

from keeper.actions.female_desk import FemaleDesk, Females, wants_forecast
from keeper.actions.females import FemaleRow
from keeper.actions.keeping import Keeping
from keeper.actions.other_process import call_off
from keeper.desktop.background import Worker
from keeper.desktop.desk_reading import DeskReading
from keeper.desktop.look import Look
from keeper.desktop.models.faced_rows import FacedRows
from keeper.desktop.notices import Notices
from keeper.desktop.page_keys import add_key, add_told_key
from keeper.desktop.screens.female_gates import GateAsking
from keeper.desktop.screens.female_page import GatesPage
from keeper.desktop.screens.female_words import female_face
from keeper.desktop.screens.pairing_place import PairingPlace
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.desktop.widgets.gate_row import FemaleFace
from keeper.desktop.widgets.row_list import ROW_ROLE
from keeper.desktop.widgets.words_line import HeadLine
from keeper.language import tr

if TYPE_CHECKING:
    from keeper.actions.forecasting import WeightForecast

_NONE = tr("No female stands in this book. A sex is written on the animal’s page.")


class FemalesScreen(QWidget):
    """The place *Females*. Rows come first, forecasts one by one after them."""

    def __init__(
        self, look: Look, keeping: Keeping, notices: Notices, *, worker: Worker | None = None
    ) -> None:
        super().__init__()
        self._keeping, self._notices = keeping, notices
        self._desk = FemaleDesk(keeping)
        self._reading = DeskReading(
            self,
            keeping,
            worker,
            question=self._desk.females,
            take=self._take,
            refused=self._say_unread,
            close=self._desk.close,
        )
        self._forecasts: dict[int, WeightForecast] = {}
        self._on: date | None = None
        self._gate_asked = False
        self.head = HeadLine(look)
        self.model = FacedRows[FemaleRow, FemaleFace](self)
        self.gates = GatesPage(look, self.model)
        self.list, self.none = self.gates.list, self.gates.none
        self.legend = self.gates.legend
        self.asking = AskingLine(look, self)
        self._gates = GateAsking(keeping, notices, self.asking)
        self.pairing = PairingPlace(look, keeping, notices, self, worker=worker)
        self._stack = QStackedWidget(self)
        self._lay_out()
        self._listen()
        self.setFocusProxy(self.list)

    @property
    def calendar_shown(self) -> bool:
        """Whether the pairing calendar lies over the gates."""
        return self._stack.currentWidget() is self.pairing.view

    def scanned(self, code: str) -> None:
        """Go to the female whose label was scanned."""
        for number, row in enumerate(self.model.rows):
            if code in (row.animal.code, row.animal.place):
                self.list.choose(number)
                if self.calendar_shown:
                    self.pairing.choose(row)
                return
        self._notices.refused.emit(tr("No female here bears {code!r}.", code=code))

    def close_down(self) -> None:
        """Let go of the book; a kind that is being fitted is called off."""
        call_off()
        self._reading.stop()
        self.pairing.close_down()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._reading.look()

    # --- reading -----------------------------------------------------------------------------

    def _take(self, found: Females) -> None:
        chosen = self._row()
        self._on = found.on
        self.gates.show_day(found.on)
        pairs = [(row, female_face(row, self._kept(row), found.on)) for row in found.rows]
        self.model.show_rows(pairs)
        animals = [row.animal.animal for row in found.rows]
        known = chosen is not None and chosen.animal.animal in animals
        self.list.choose(animals.index(chosen.animal.animal) if chosen and known else 0)
        self.pairing.take(found, read=self.calendar_shown)
        self._show(found)
        if self._gate_asked:
            self._ask_gate()
        self._reckon([n for n, row in enumerate(found.rows) if wants_forecast(row)])

    def _kept(self, row: FemaleRow) -> WeightForecast | None:
        """The forecast of the reading before, shown until the new one comes."""
        return self._forecasts.get(row.animal.animal)

    def _reckon(self, left: list[int]) -> None:
        """One forecast after another, so that a new reading need not wait for all of them."""
        if not left or self._on is None:
            return
        number, rest = left[0], left[1:]
        row, on, desk = self.model.rows[number], self._on, self._desk

        def take(found: tuple[int, WeightForecast]) -> None:
            self._forecasts[found[0]] = found[1]
            self.model.show_face(number, female_face(row, found[1], on))
            self.pairing.view.show_forecast(*found)
            self._reckon(rest)

        self._reading.further(lambda: desk.forecast(row, on), take)

    def _say_unread(self, sentence: str) -> None:
        self.none.setText(tr("The females could not be read. {why}", why=sentence))
        self.none.show()

    # --- showing -----------------------------------------------------------------------------

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.head)
        column.addWidget(self._stack, 1)
        column.addWidget(self.asking)
        self._stack.addWidget(self.gates)
        self._stack.addWidget(self.pairing.view)
        self.head.show_words(tr("Females"), [(tr("looking through the book"), False)])

    def _listen(self) -> None:
        self.list.activated.connect(lambda _: self._open())
        add_told_key(self, "Enter", tr("open her page"), self._open)
        add_key(self, "G", tr("change the weight of the gate"), self._ask_gate)
        add_key(self, "C", tr("the pairing calendar, and back"), self._turn_over)
        self.pairing.listen(self._open, self._show_head)
        self._notices.changed.connect(self._reading.hear)

    def _turn_over(self) -> None:
        """From the gates to the calendar, and back; the same female stays chosen."""
        row, to_calendar = self._row(), not self.calendar_shown
        self._stack.setCurrentWidget(self.pairing.view if to_calendar else self.gates)
        self.setFocusProxy(self.pairing.view.list if to_calendar else self.list)
        self.setFocus()
        is_first = self.list.currentIndex().row() == 0  # nobody was chosen: begin at the top
        self.pairing.turn(None if is_first else row, to_calendar=to_calendar)
        if row is not None and not to_calendar:
            animals = [each.animal.animal for each in self.model.rows]
            if row.animal.animal in animals:
                self.list.choose(animals.index(row.animal.animal))
        self._show_head()

    def _show(self, found: Females) -> None:
        self.none.setText(_NONE)
        self.none.setVisible(not found.rows)
        self._show_head()

    def _show_head(self) -> None:
        if self.calendar_shown:
            self.head.show_words(tr("Females"), self.pairing.head_parts())
            return
        if self._on is None:
            return
        rows = self.model.rows
        ready = sum(row.ready == "met" for row in rows)
        met = tr("{number} of {last}", number=ready, last=len(rows))
        parts = [(met, True), (tr("have every gate met; nearest first"), False)]
        self.head.show_words(tr("Females"), parts)

    def _row(self) -> FemaleRow | None:
        """The female that is chosen, in whichever of the two views."""
        if self.calendar_shown and (of_calendar := self.pairing.chosen) is not None:
            return of_calendar
        found = self.list.currentIndex().data(ROW_ROLE)
        return found if isinstance(found, FemaleRow) else None

    # --- doing -------------------------------------------------------------------------------

    def _open(self) -> None:
        row = self._row()
        if row is not None:
            self._notices.animal_asked.emit(row.animal.animal)

    def _ask_gate(self) -> None:
        """While the rows are still being read the question waits for them."""
        row = self._row()
        if row is None:
            self._gate_asked = self._on is None
            if self._gate_asked:
                self._notices.noted.emit(tr("The females are still being read; then it asks."))
            else:
                self._notices.refused.emit(tr("No female stands in this book; there is no gate."))
            return
        self._gate_asked = False
        self._gates.ask(row)
