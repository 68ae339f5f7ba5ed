"""Lines: what the house breeds for. Genes with who carries them, and colour by generations."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget

from keeper.actions.keeping import Keeping
from keeper.actions.lines_desk import (
    ColourLine,
    GeneLine,
    Line,
    Lines,
    LinesDesk,
    gene_detail,
)
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.background import Background, Worker
from keeper.desktop.look import Look
from keeper.desktop.models.faced_rows import FacedRows
from keeper.desktop.notices import Notices
from keeper.desktop.page_keys import add_key, add_told_key
from keeper.desktop.paper.desk import PaperDesk
from keeper.desktop.screens.animal_line import AnimalLine
from keeper.desktop.screens.lines_beside import LIST_SHARE, LOWER_SHARE, GeneBeside
from keeper.desktop.screens.lines_colour import colour_face
from keeper.desktop.screens.lines_deeds import Found, LinesDeeds
from keeper.desktop.screens.lines_words import NO_LINES, NOTE, head_words, line_face
from keeper.desktop.type import Use
from keeper.desktop.widgets.colour_panel import ColourPanel
from keeper.desktop.widgets.line_list import LineFace, LineLegend, LineList, line_head
from keeper.desktop.widgets.row_list import ROW_ROLE
from keeper.desktop.widgets.words_line import HeadLine, Words
from keeper.language import tr

_LIST_SHARE = 0.42


class LinesScreen(QWidget):
    """The place *Lines*. Rows come first, what stands beside the chosen one after them."""

    def __init__(
        self, look: Look, keeping: Keeping, notices: Notices, *, worker: Worker | None = None
    ) -> None:
        super().__init__()
        self._look, self._keeping, self._notices = look, keeping, notices
        self._worker = worker or Background()
        self._desk = LinesDesk(keeping)
        self.lines: Lines | None = None
        self._turn = 0  # counts readings; what belongs to an older one is dropped
        self._asked = 0  # counts details and pairs asked for, likewise
        self._stale = True
        self._on: date | None = None
        self.head, self.heads = HeadLine(look), line_head(look)
        self.model = FacedRows[Line, LineFace](self)
        self.list = LineList(look, self.model)
        self.gene, self.colour = GeneBeside(look), ColourPanel(look)
        self.beside = QStackedWidget()
        self.legend = LineLegend(look)
        self.none = Words(look, Use.PAGE_ASIDE, "ink")
        self.line = AnimalLine(look, self, notices)
        self.paper = PaperDesk(keeping, self, tell=notices.noted.emit, refuse=notices.refused.emit)
        self._deeds = LinesDeeds(
            keeping,
            notices,
            line=self.line,
            paper=self.paper,
            beside=self.gene,
            row=self._row,
            lines=lambda: self.lines,
            aside=self._aside,
        )
        self._lay_out()
        self._listen()
        self.setFocusProxy(self.list)

    def scanned(self, code: str) -> None:
        """Choose the animal whose label was scanned, if it stands beside the chosen gene."""
        animals = self.gene.detail.animals if self.gene.detail else ()
        for number, each in enumerate(animals):
            if code in (each.row.code, each.row.place) and not self.gene.cards:
                self.gene.list.choose(number)
                self.gene.list.setFocus()
                return
        self._notices.refused.emit(tr("No animal listed here is {code!r}.", code=code))

    def close_down(self) -> None:
        """Let go of the book."""
        self._turn += 1
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
        turn, desk = self._turn, self._desk
        on = self._on = self._keeping.today
        self._worker.run(lambda: desk.lines(on), lambda found: self._take(turn, found), self._fail)

    def _take(self, turn: int, found: Lines) -> None:
        """Show them, and ask for the rest; the row that was chosen is chosen again."""
        if turn != self._turn:
            return
        if found.cards is None:
            desk = self._desk
            self._worker.run(
                lambda: desk.whole(found), lambda whole: self._take(turn, whole), self._fail
            )
        chosen = self._row()
        self.lines = found
        faces = [
            line_face(row) if isinstance(row, GeneLine) else colour_face(row) for row in found.rows
        ]
        self.model.show_rows(list(zip(found.rows, faces, strict=True)))
        self.head.show_words(tr("Lines"), *head_words(found))
        self.none.setText(NO_LINES)
        self.none.setVisible(not found.rows and found.cards is not None)
        self.beside.setVisible(bool(found.rows))
        keys = [row.key for row in found.rows]
        self.list.choose(keys.index(chosen.key) if chosen and chosen.key in keys else 0)
        self.gene.show_under(isinstance(self._row(), GeneLine))
        self._fit()

    def _show_beside(self) -> None:
        """The panel of the chosen row; that of a gene when it is read."""
        row = self._row()
        self.gene.show_under(isinstance(row, GeneLine))
        if isinstance(row, ColourLine):
            self.colour.show_colour(row.facts)
            self.beside.setCurrentWidget(self.colour)
        elif isinstance(row, GeneLine) and self.lines is not None:
            self.beside.setCurrentWidget(self.gene)
            self.gene.show_reading(row)
            if self.gene.cards:
                self.gene.show_cards(self.lines)
            cards = self.lines.cards
            self._aside(lambda: gene_detail(row, cards), self.gene.show_detail)

    def _aside(self, job: Callable[[], Found], show: Callable[[Found], object]) -> None:
        """Do *job* off the main thread and *show* it, if nothing else was asked for since."""
        self._asked += 1
        asked, turn = self._asked, self._turn

        def take(found: Found) -> None:
            if (asked, turn) == (self._asked, self._turn):
                show(found)

        self._worker.run(job, take, self._fail)

    def _fail(self, error: Exception) -> None:
        if not isinstance(error, REFUSALS):
            raise error
        self.none.setText(tr("The lines could not be read. {why}", why=said(error)))
        self.none.show()

    # --- showing -----------------------------------------------------------------------------

    def _lay_out(self) -> None:
        self._left = QVBoxLayout()
        self._left.setSpacing(0)
        self._left.addWidget(self.heads)
        self._left.addWidget(self.none)
        self._left.addWidget(self.list, LIST_SHARE)
        self._under = QVBoxLayout()
        self._under.addWidget(self.gene.proofs)
        self._under.addWidget(self.gene.panel, 1)
        self._left.addLayout(self._under, LOWER_SHARE)
        self.beside.addWidget(self.gene)
        self.beside.addWidget(self.colour)
        self._body = QHBoxLayout()
        self._body.setSpacing(0)
        self._body.addLayout(self._left, 1)
        self._body.addWidget(self.beside)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.head)
        column.addLayout(self._body, 1)
        column.addWidget(self.legend)
        column.addWidget(self.line)
        self.none.hide()
        self.legend.show_note(NOTE)
        self.head.show_words(tr("Lines"), [(tr("looking through the book"), False)])

    def _fit(self) -> None:
        look = self._look
        self._body.setContentsMargins(round(look.u(4.8, 2.3)), 0, round(look.u(4.8, 2.3)), 0)
        self._left.setContentsMargins(0, 0, round(look.u(5, 2.4)), 0)
        self._under.setContentsMargins(round(look.u(2.2, 1.2)), round(look.u(3, 1.4)), 0, 0)
        wide = round((1 - _LIST_SHARE) * self.width())
        self.beside.setMinimumWidth(wide)
        self.beside.setMaximumWidth(wide)
        self.gene.fit()
        self.heads.leave(self.list.verticalScrollBar().sizeHint().width())

    def _listen(self) -> None:
        deeds = self._deeds
        self.list.activated.connect(lambda _: deeds.open())
        self.gene.list.activated.connect(lambda _: deeds.open())
        self.list.selectionModel().currentChanged.connect(lambda *_: self._show_beside())
        add_told_key(self, "Enter", tr("open the animal’s page"), deeds.open)
        for key, words, slot in (
            ("Right", tr("go to the animals"), deeds.go_to_animals),
            ("Left", tr("go back to genes and lines"), self.list.setFocus),
            ("Space", tr("take the animal for a pair, or leave it"), deeds.take_for_pair),
            ("K", tr("what the animal shows or is said to carry"), deeds.tell),
            ("N", tr("name a new gene"), deeds.name),
            ("C", tr("cards out of date, and the animals again"), deeds.turn_cards),
            ("W", tr("words of a colour in the whole room, and back"), self.colour.turn_over),
            ("Ctrl+P", tr("what is shown, on paper"), deeds.print),
            ("Ctrl+Shift+P", tr("the last PDF on a printer"), self.paper.to_printer),
        ):
            add_key(self, key, words, slot)
        self._notices.changed.connect(self._hear)
        self._look.changed.connect(self._fit)

    def _row(self) -> Line | None:
        found = self.list.currentIndex().data(ROW_ROLE)
        return found if isinstance(found, GeneLine | ColourLine) else None
