"""Prey: what is in the freezer, what will be eaten in the coming weeks, what to order by when."""

from __future__ import annotations

from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from keeper.actions.keeping import Keeping
from keeper.actions.prey_desk import GradeDemand, Larder, PreyDesk, order_document
from keeper.desktop.aside_reading import AsideReading
from keeper.desktop.background import Worker
from keeper.desktop.look import Look
from keeper.desktop.models.faced_rows import FacedRows
from keeper.desktop.notices import Notices
from keeper.desktop.page_keys import add_key, add_told_key
from keeper.desktop.paper.desk import PaperDesk
from keeper.desktop.paper.flow import document_pages
from keeper.desktop.paper.printing import Sheets, printed_words
from keeper.desktop.screens.prey_asking import PreyAsking
from keeper.desktop.screens.prey_words import (
    demand_face,
    grade_face,
    head_words,
    next_step,
    notes,
)
from keeper.desktop.type import Use
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.desktop.widgets.prey_demand import DemandFace, PreyDemand
from keeper.desktop.widgets.prey_list import GradeFace, PreyLegend, PreyList, prey_head
from keeper.desktop.widgets.row_list import ROW_ROLE
from keeper.desktop.widgets.words_line import HeadLine, Words
from keeper.language import tr

_NONE = tr("No prey is counted, and no animal is to be fed. S counts a bag that came.")
_LIST_SHARE = 0.555


class PreyScreen(QWidget):
    """The place *Prey*. The book is read off the main thread, and again when it changed."""

    def __init__(
        self, look: Look, keeping: Keeping, notices: Notices, *, worker: Worker | None = None
    ) -> None:
        super().__init__()
        self._look, self._keeping, self._notices = look, keeping, notices
        self.larder: Larder | None = None
        self._reading = AsideReading(
            self,
            keeping,
            worker,
            question=PreyDesk().larder,
            take=self._take,
            refused=self._say_unread,
        )
        self.head = HeadLine(look)
        self.heads = prey_head(look)
        self.model = FacedRows[GradeDemand, GradeFace](self)
        self.list = PreyList(look, self.model)
        self.demand = PreyDemand(look)
        self.legend = PreyLegend(look)
        self.none = Words(look, Use.PAGE_ASIDE, "ink")
        self.asking = AskingLine(look, self)
        self._asks = PreyAsking(keeping, notices, self.asking, self._row)
        self._paper = PaperDesk(keeping, self, tell=notices.noted.emit, refuse=notices.refused.emit)
        self._lay_out()
        self._listen()
        self.setFocusProxy(self.list)

    def show_grade(self, prey: str) -> None:
        """Choose the grade *prey*, as soon as it is read where it is not yet."""
        self._wanted = prey
        preys = [row.prey for row in self.model.rows]
        if prey in preys:
            self.list.choose(preys.index(prey))

    def close_down(self) -> None:
        """Wait for a reading that runs; nothing is read any more."""
        self._reading.stop()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._reading.look()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    # --- reading -----------------------------------------------------------------------------

    def _take(self, larder: Larder) -> None:
        """Show it; the grade that was chosen, or asked for meanwhile, is chosen."""
        before = self._row()
        self.larder = larder
        self.model.show_rows([(grade, grade_face(grade, larder)) for grade in larder.grades])
        wanted = self._wanted or (before.prey if before else "")
        preys = [row.prey for row in self.model.rows]
        self.list.choose(preys.index(wanted) if wanted in preys else 0)
        self._wanted = ""
        self.head.show_words(tr("Prey"), head_words(larder))
        self.legend.show_note(notes(larder))
        self.none.setText(_NONE)
        self.none.setVisible(not larder.grades)
        self._show_demand()

    def _say_unread(self, sentence: str) -> None:
        self.none.setText(tr("The prey could not be read. {why}", why=sentence))
        self.none.show()

    # --- showing -----------------------------------------------------------------------------

    def _lay_out(self) -> None:
        self._wanted = ""
        self._table = QVBoxLayout()
        self._table.setSpacing(0)
        for part in (self.heads, self.none):
            self._table.addWidget(part)
        self._table.addWidget(self.list, 1)
        body = QHBoxLayout()
        body.setSpacing(0)
        body.addLayout(self._table, 1)
        body.addWidget(self.demand)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.head)
        column.addLayout(body, 1)
        column.addWidget(self.legend)
        column.addWidget(self.asking)
        self.none.hide()
        self.legend.show_note("")
        self.head.show_words(tr("Prey"), [(tr("looking through the book"), False)])

    def _listen(self) -> None:
        self.list.activated.connect(lambda _: self._open())
        add_told_key(self, "Enter", tr("open the next animal that changes its grade"), self._open)
        for key, words, slot in (
            ("S", tr("prey counted: a bag that came, or what is left in one"), self._asks.prey),
            ("B", tr("a bag of prey opened"), self._asks.bag),
            ("Ctrl+P", tr("order list on paper"), self._print),
            ("Ctrl+Shift+P", tr("the last PDF on a printer"), self._paper.to_printer),
        ):
            add_key(self, key, words, slot)
        self.list.selectionModel().currentChanged.connect(lambda *_: self._show_demand())
        self._notices.changed.connect(self._reading.hear)
        self._look.changed.connect(self._fit)

    def _fit(self) -> None:
        margin = round(self._look.u(4.8, 2.3))
        self._table.setContentsMargins(margin, 0, round(self._look.u(2, 1)), 0)
        wide = round((1 - _LIST_SHARE) * self.width())
        self.demand.setMinimumWidth(wide)
        self.demand.setMaximumWidth(wide)
        self.heads.leave(self.list.verticalScrollBar().sizeHint().width())

    def _show_demand(self) -> None:
        row = self._row()
        if row is None or self.larder is None:
            self.demand.show_face(DemandFace(head=""))
        else:
            self.demand.show_face(demand_face(row, self.larder))

    def _row(self) -> GradeDemand | None:
        found = self.list.currentIndex().data(ROW_ROLE)
        return found if isinstance(found, GradeDemand) else None

    # --- doing -------------------------------------------------------------------------------

    def _open(self) -> None:
        row = self._row()
        step = next_step(row) if row is not None else None
        if step is None:
            told = tr("No animal goes over to this grade or leaves it in the weeks shown.")
            self._notices.refused.emit(told)
        else:
            self._notices.animal_asked.emit(step.eater.now.animal)

    def _print(self) -> None:
        self._paper.make(self._order_sheets)

    def _order_sheets(self) -> Sheets:
        """Raises LookupError while the book is still being read."""
        if self.larder is None:
            raise LookupError(tr("The prey is still being read; a moment."))
        document = order_document(self.larder, printed_words(self._keeping))
        stem = f"order-{self.larder.on.isoformat()}"
        return Sheets(title=document.title, stem=stem, pages=document_pages(document))
