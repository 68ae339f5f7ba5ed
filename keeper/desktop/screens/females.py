"""Females: when each may be bred, by her gates, and the day her weight is expected."""

from __future__ import annotations

from datetime import date
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QItemSelectionModel
from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from keeper.actions.female_desk import CAUTION, FemaleDesk, Females, set_gate, wants_forecast
from keeper.actions.females import FemaleRow
from keeper.actions.keeping import Keeping
from keeper.actions.other_process import call_off
from keeper.actions.troubles import REFUSALS, said
from keeper.actions.weighing import typed_grams
from keeper.desktop.background import Background, Worker
from keeper.desktop.look import Look
from keeper.desktop.models.female_rows import ROW_ROLE, FemaleRowsModel
from keeper.desktop.notices import Notices
from keeper.desktop.page_keys import add_key, add_told_key
from keeper.desktop.screens.female_words import female_face
from keeper.desktop.type import Use
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.desktop.widgets.female_list import FemaleHead, FemaleList, GateLegend
from keeper.desktop.widgets.words_line import HeadLine, Words
from keeper.language import tr
from keeper.reports.figures import mass_unit
from keeper.reports.figures import typed_grams as typed_mass
from keeper.reports.words import sentence
from keeper.reports.writing import in_use

if TYPE_CHECKING:
    from keeper.actions.forecasting import WeightForecast

_NONE = tr("No female stands in this book. A sex is written on the animal’s page.")
_PERMISSION = tr(
    "Every gate met is leave to consider a pairing, no advice to make one."
    " Enter opens her page, G changes the weight of the gate."
)


class FemalesScreen(QWidget):
    """The place *Females*. Rows come first, forecasts one by one after them."""

    def __init__(
        self, look: Look, keeping: Keeping, notices: Notices, *, worker: Worker | None = None
    ) -> None:
        super().__init__()
        self._look, self._keeping, self._notices = look, keeping, notices
        self._worker = worker or Background()
        self._desk = FemaleDesk(keeping)
        self._forecasts: dict[int, WeightForecast] = {}
        self._on: date | None = None
        self._turn = 0  # counts readings; what belongs to an older one is dropped
        self._stale, self._gate_asked = True, False
        self.head = HeadLine(look)
        self.heads = FemaleHead(look)
        self.model = FemaleRowsModel(self)
        self.list = FemaleList(look, self.model)
        self.legend = GateLegend(look)
        self.none = Words(look, Use.PAGE_ASIDE, "ink")
        self.asking = AskingLine(look, self)
        self._lay_out()
        self._listen()
        self.setFocusProxy(self.list)

    def scanned(self, code: str) -> None:
        """Go to the female whose label was scanned."""
        for number, row in enumerate(self.model.rows):
            if code in (row.animal.code, row.animal.place):
                self._choose(number)
                return
        self._notices.refused.emit(tr("No female here bears {code!r}.", code=code))

    def close_down(self) -> None:
        """Let go of the book; a kind that is being fitted is called off."""
        self._turn += 1
        call_off()
        self._worker.stop(self._desk.close)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self._stale or self._on != self._keeping.today:
            self._read()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    # --- reading -----------------------------------------------------------------------------

    def _hear(self) -> None:
        self._stale = True
        if self.isVisible():
            self._read()

    def _read(self) -> None:
        self._stale = False
        self._turn += 1
        turn, on, desk = self._turn, self._keeping.today, self._desk
        self._worker.run(
            lambda: desk.females(on), lambda found: self._take(turn, found), self._fail
        )

    def _take(self, turn: int, found: Females) -> None:
        if turn != self._turn:
            return
        chosen = self._row()
        self._on = self.list.painter.today = found.on
        pairs = [(row, female_face(row, self._kept(row), found.on)) for row in found.rows]
        self.model.show_rows(pairs)
        animals = [row.animal.animal for row in found.rows]
        known = chosen is not None and chosen.animal.animal in animals
        self._choose(animals.index(chosen.animal.animal) if chosen and known else 0)
        self._show(found)
        if self._gate_asked:
            self._ask_gate()
        self._reckon(turn, [n for n, row in enumerate(found.rows) if wants_forecast(row)])

    def _kept(self, row: FemaleRow) -> WeightForecast | None:
        """The forecast of the reading before, shown until the new one comes."""
        return self._forecasts.get(row.animal.animal)

    def _reckon(self, turn: int, left: list[int]) -> None:
        """One forecast after another, so that a new reading need not wait for all of them."""
        if not left or turn != self._turn or self._on is None:
            return
        number, rest = left[0], left[1:]
        row, on, desk = self.model.rows[number], self._on, self._desk

        def take(found: tuple[int, WeightForecast]) -> None:
            if turn == self._turn:
                self._forecasts[found[0]] = found[1]
                self.model.show_face(number, female_face(row, found[1], on))
                self._reckon(turn, rest)

        self._worker.run(lambda: desk.forecast(row, on), take, self._fail)

    def _fail(self, error: Exception) -> None:
        if not isinstance(error, REFUSALS):
            raise error
        self.none.setText(tr("The females could not be read. {why}", why=said(error)))
        self.none.show()

    # --- showing -----------------------------------------------------------------------------

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.head)
        self._frame = QVBoxLayout()
        self._frame.setSpacing(0)
        self._frame.addWidget(self.heads)
        self._frame.addWidget(self.none)
        self._frame.addWidget(self.list, 1)
        column.addLayout(self._frame, 1)
        column.addWidget(self.legend)
        column.addWidget(self.asking)
        self.none.hide()
        self.legend.show_caution(f"{_PERMISSION} {sentence(CAUTION)}")
        self.head.show_words(tr("Females"), [(tr("looking through the book"), False)])

    def _listen(self) -> None:
        self.list.activated.connect(lambda _: self._open())
        add_told_key(self, "Enter", tr("open her page"), self._open)
        add_key(self, "G", tr("change the weight of the gate"), self._ask_gate)
        self._notices.changed.connect(self._hear)
        self._look.changed.connect(self._fit)

    def _fit(self) -> None:
        margin = round(self._look.u(4.8, 2.3))
        self._frame.setContentsMargins(margin, 0, margin, 0)
        if self._on is not None:
            self.heads.show_day(self._on, self.list.verticalScrollBar().sizeHint().width())

    def _show(self, found: Females) -> None:
        ready = sum(row.ready == "met" for row in found.rows)
        met = tr("{number} of {last}", number=ready, last=len(found.rows))
        parts = [(met, True), (tr("have every gate met; nearest first"), False)]
        self.head.show_words(tr("Females"), parts)
        self.none.setText(_NONE)
        self.none.setVisible(not found.rows)
        self._fit()

    def _row(self) -> FemaleRow | None:
        found = self.list.currentIndex().data(ROW_ROLE)
        return found if isinstance(found, FemaleRow) else None

    def _choose(self, number: int) -> None:
        index = self.model.index(number)
        flag = QItemSelectionModel.SelectionFlag.ClearAndSelect
        self.list.selectionModel().setCurrentIndex(index, flag)
        self.list.scrollTo(index)

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
        question = tr(
            "Every female {species} from how many {unit}",
            species=row.species,
            unit=tr("ounces") if in_use().ounces else tr("grams"),
        )
        self.asking.ask(question, partial(self._take_grams, row), typed_mass(row.gate_g))

    def _take_grams(self, row: FemaleRow, text: str) -> bool:
        """The weight in the unit in use, with or without it."""
        try:
            typed_g = typed_grams(text.strip().removesuffix(mass_unit()).strip())
            weight_g = round(typed_g, 1) if in_use().ounces else typed_g
        except ValueError as refusal:
            self._notices.refused.emit(said(refusal))
            return False
        self.asking.ask(tr("Because"), partial(self._set_gate, row, weight_g))
        return False

    def _set_gate(self, row: FemaleRow, weight_g: float, reason: str) -> bool:
        return self._notices.tell_of(lambda: set_gate(self._keeping, row, weight_g, reason))
