"""Clutches: where each lies, what became of its eggs, when it may pip, its young and sires."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, datetime
from functools import partial

from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from keeper.actions.clutch_desk import CAUTIONS, ClutchDesk, Clutches
from keeper.actions.clutch_detail import ClutchDetail
from keeper.actions.clutch_rows import ClutchRow
from keeper.actions.keeping import Keeping
from keeper.desktop.background import Worker
from keeper.desktop.desk_reading import DeskReading
from keeper.desktop.look import Look
from keeper.desktop.models.clutch_rows import ClutchRowsModel
from keeper.desktop.notices import Notices
from keeper.desktop.page_keys import add_key, add_told_key
from keeper.desktop.paper.desk import PaperDesk
from keeper.desktop.paper.printing import Sheets
from keeper.desktop.screens.animal_line import AnimalLine
from keeper.desktop.screens.clutch_beside import ClutchBeside
from keeper.desktop.screens.clutch_deeds import ClutchAsked, eggs_asked, looks_asked, young_asked
from keeper.desktop.screens.clutch_words import clutch_face, head_words
from keeper.desktop.screens.colour_asking import clutch_asked
from keeper.desktop.type import Use
from keeper.desktop.widgets.clutch_list import ClutchLegend, ClutchList, clutch_head
from keeper.desktop.widgets.row_list import ROW_ROLE
from keeper.desktop.widgets.words_line import HeadLine, Words
from keeper.language import tr
from keeper.reports.words import because_text

_NONE = tr("No clutch stands in this book. L on a female’s page writes one.")
_KEYS = tr("Enter: the dam’s page; I: its eggs; K: looks of its young; Shift+K: what it may give.")

Key = tuple[int, datetime]


class ClutchesScreen(QWidget):
    """The place *Clutches*. Rows come first, what stands beside the chosen one after them."""

    def __init__(
        self, look: Look, keeping: Keeping, notices: Notices, *, worker: Worker | None = None
    ) -> None:
        super().__init__()
        self._look, self._keeping, self._notices = look, keeping, notices
        self._desk = ClutchDesk(keeping)
        self._reading = DeskReading(
            self,
            keeping,
            worker,
            question=self._desk.clutches,
            take=self._take,
            refused=self._say_unread,
            close=self._desk.close,
        )
        self._on: date | None = None
        self._wanted = ""
        self.head = HeadLine(look)
        self.heads = clutch_head(look)
        self.model = ClutchRowsModel(self)
        self.list = ClutchList(look, self.model)
        self.beside = ClutchBeside(look)
        self.legend = ClutchLegend(look)
        self.none = Words(look, Use.PAGE_ASIDE, "ink")
        self.line = AnimalLine(look, self, notices)
        self.paper = PaperDesk(keeping, self, tell=notices.noted.emit, refuse=notices.refused.emit)
        self._lay_out()
        self._listen()
        self.setFocusProxy(self.list)

    def show_clutch(self, name: str) -> None:
        """Choose the clutch called *name*, now or as soon as it is read."""
        self._wanted = name
        for number, row in enumerate(self.model.rows):
            if row.facts.name == name:
                self.list.choose(number)
                self._wanted = name if self._reading.stale else ""
                return

    def scanned(self, code: str) -> None:
        """Go to the clutch of the animal whose label was scanned: the dam, or one of the young."""
        for number, row in enumerate(self.model.rows):
            named = [row.dam, *row.young]
            if any(code in (each.code, each.place) for each in named):
                self.list.choose(number)
                return
        self._notices.refused.emit(tr("No clutch here is of {code!r}.", code=code))

    def close_down(self) -> None:
        """Let go of the book."""
        self._reading.stop()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._reading.look()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _take(self, found: Clutches) -> None:
        chosen = self._row()
        self._on = self.list.painter.today = found.on
        self.model.show_rows(found.rows, lambda row: clutch_face(row, found.on))
        self._show(found)
        wanted, self._wanted = self._wanted, ""
        self.list.choose(_number(found, wanted, chosen))

    def _show_detail(self) -> None:
        """What stands beside the row now, the rest when it is read."""
        row, on = self._row(), self._on
        if row is None or on is None:
            return
        self.beside.show_row(row)
        desk, reading, beside = self._desk, self._reading, self.beside

        def take(found: ClutchDetail) -> None:
            beside.show_detail(found, on)
            reading.then(lambda: desk.genes(row), beside.show_genes)

        reading.beside(lambda: desk.detail(row, on), take)

    def _say_unread(self, sentence: str) -> None:
        self.none.setText(tr("The clutches could not be read. {why}", why=sentence))
        self.none.show()

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.head)
        self._frame = QVBoxLayout()
        self._frame.setSpacing(0)
        self._frame.addWidget(self.heads)
        self._frame.addWidget(self.none)
        self._frame.addWidget(self.list, 6)
        self._frame.addWidget(self.beside, 5)
        column.addLayout(self._frame, 1)
        column.addWidget(self.legend)
        column.addWidget(self.line)
        self.none.hide()
        self.legend.show_caution(f"{because_text(CAUTIONS)} {_KEYS}")
        self.head.show_words(tr("Clutches"), [(tr("looking through the book"), False)])

    def _listen(self) -> None:
        self.list.activated.connect(lambda _: self._open())
        self.list.selectionModel().currentChanged.connect(lambda *_: self._show_detail())
        add_told_key(self, "Enter", tr("open the dam’s page"), self._open)

        def ask(make: ClutchAsked) -> Callable[[], None]:
            return partial(self._ask, make)

        for key, words, slot in (
            ("I", tr("its eggs: where they lie, what became of them"), ask(eggs_asked)),
            ("Y", tr("young hatched"), ask(young_asked)),
            ("R", tr("score the colour of its young"), ask(clutch_asked)),
            ("K", tr("what its young show of a gene"), ask(looks_asked)),
            ("Shift+K", tr("the young it may give first, and back"), self.beside.turn_over),
            ("W", tr("weigh its young"), self._weigh),
            ("Ctrl+P", tr("clutch record on paper"), lambda: self.paper.make(self._record)),
            ("Ctrl+Shift+P", tr("the last PDF on a printer"), self.paper.to_printer),
        ):
            add_key(self, key, words, slot)
        self._notices.changed.connect(self._reading.hear)
        self._look.changed.connect(self._fit)

    def _fit(self) -> None:
        margin = round(self._look.u(4.8, 2.3))
        self._frame.setContentsMargins(margin, 0, margin, 0)
        self.beside.fit()
        if self._on is not None:
            self.heads.show_day(self._on, self.list.verticalScrollBar().sizeHint().width())

    def _show(self, found: Clutches) -> None:
        self.head.show_words(tr("Clutches"), *head_words(found.rows))
        self.none.setText(_NONE)
        self.none.setVisible(not found.rows)
        self.beside.setVisible(bool(found.rows))
        self._fit()

    def _row(self) -> ClutchRow | None:
        found = self.list.currentIndex().data(ROW_ROLE)
        return found if isinstance(found, ClutchRow) else None

    def _open(self) -> None:
        row = self._row()
        if row is not None:
            self._notices.animal_asked.emit(row.dam.animal)

    def _ask(self, make: ClutchAsked) -> None:
        row = self._row()
        if row is None or self._on is None:
            self._notices.refused.emit(_NONE if self._on else tr("The book is still being read."))
            return
        self.line.open(make(self._keeping, row, self._on))

    def _weigh(self) -> None:
        """Go along the scales from the first of its young on."""
        row = self._row()
        here = [young for young in row.young if young.in_the_room] if row else []
        if here:
            self._notices.weighing_asked.emit(here[0].code)
        else:
            self._notices.refused.emit(tr("No young of it is here to be weighed."))

    def _record(self) -> Sheets:
        return self.beside.record(self._keeping)


def _number(found: Clutches, wanted: str, chosen: ClutchRow | None) -> int:
    """The clutch that was asked for, else the one that was chosen, else the first."""
    for number, row in enumerate(found.rows):
        is_same = chosen is not None and row.key == chosen.key
        if row.facts.name == wanted or (not wanted and is_same):
            return number
    return 0
