"""Lines: what the house breeds for. Genes with who carries them, and colour by generations."""

from __future__ import annotations

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
from keeper.desktop.background import Worker
from keeper.desktop.desk_reading import DeskReading
from keeper.desktop.look import Look
from keeper.desktop.models.faced_rows import FacedRows
from keeper.desktop.notices import Notices
from keeper.desktop.page_keys import add_key, add_told_key
from keeper.desktop.paper.desk import PaperDesk
from keeper.desktop.screens.animal_line import AnimalLine
from keeper.desktop.screens.lines_beside import LIST_SHARE, LOWER_SHARE, GeneBeside
from keeper.desktop.screens.lines_colour import colour_face
from keeper.desktop.screens.lines_deeds import LinesDeeds
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
        self._desk = LinesDesk(keeping)
        self._reading = DeskReading(
            self,
            keeping,
            worker,
            question=self._desk.lines,
            take=self._take,
            refused=self._say_unread,
            close=self._desk.close,
        )
        self.lines: Lines | None = None
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
            aside=self._reading.beside,
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
        self._reading.stop()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._reading.look()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    # --- reading -----------------------------------------------------------------------------

    def _take(self, found: Lines) -> None:
        """Show them, and ask for the rest; the row that was chosen is chosen again."""
        if found.cards is None:
            self._reading.further(lambda: self._desk.whole(found), self._take)
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
            self._reading.beside(lambda: gene_detail(row, cards), self.gene.show_detail)

    def _say_unread(self, sentence: str) -> None:
        self.none.setText(tr("The lines could not be read. {why}", why=sentence))
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
        self._notices.changed.connect(self._reading.hear)
        self._look.changed.connect(self._fit)

    def _row(self) -> Line | None:
        found = self.list.currentIndex().data(ROW_ROLE)
        return found if isinstance(found, GeneLine | ColourLine) else None
