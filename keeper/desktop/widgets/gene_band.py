"""What an animal carries, in one line beneath its head, and the sheet that tells why."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QLineF, QPointF
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QSizePolicy, QVBoxLayout, QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.clutch_panel import ClutchPanel, Paragraph
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import RIGHT, Run, advance, set_line, set_runs

Word = tuple[str, str, bool]
"""A gene, what is told of it, and whether that is sure."""


class GeneBand(Drawn):
    """Genes with their words; at the right which key tells more. What is sure stands heavy."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._head, self._aside = "", ""
        self._words: Sequence[Word] = ()

    def show_words(self, head: str, words: Sequence[Word], aside: str) -> None:
        """Show *words* after *head*, and *aside* flush right."""
        self._head, self._words, self._aside = head, tuple(words), aside
        told = ", ".join(f"{gene} {word}".strip() for gene, word, _ in self._words)
        self.tell(f"{head}: {told}. {aside}")

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(200), self.look.u(7.4, 5.4)

    def paint(self, painter: QPainter) -> None:
        look = self.look
        margin, base = look.u(7, 3.5), look.u(5, 3.8)
        bottom = self.height() - 1.0
        painter.setPen(QPen(look.colour("hair"), 1.0))
        painter.drawLine(QLineF(margin, bottom, self.width() - margin, bottom))
        plain, strong = look.font(Use.TABLE), look.font(Use.TABLE_STRONG)
        right = self.width() - margin
        aside = look.colour("ink2")
        set_line(painter, QPointF(right, base), self._aside, plain, aside, align=RIGHT)
        runs = [Run(text=self._head, font=plain, colour=aside)]
        for gene, word, sure in self._words:
            wide, font = look.u(4.5, 3), strong if sure else plain
            runs.append(Run(text=gene, font=font, colour=look.colour("ink"), gap=wide))
            ink = look.colour("ink" if sure else "ink2")
            runs.append(Run(text=word, font=font, colour=ink, gap=look.u(1.2, 0.9)))
        room = right - margin - advance(plain, self._aside) - look.u(5, 3)
        set_runs(painter, QPointF(margin, base), runs, room)


class GeneSheet(QWidget):
    """Headed paragraphs on a sheet, in the place of the read-out."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self.panel = ClutchPanel(look, self)
        self._column = QVBoxLayout(self)
        self._column.addWidget(self.panel)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)
        look.changed.connect(self._fit)
        self._fit()

    def show_paragraphs(self, paragraphs: Sequence[Paragraph]) -> None:
        self.panel.show_paragraphs(paragraphs)

    def text(self) -> str:
        """All of it in words."""
        return self.panel.text()

    def paintEvent(self, _event: object) -> None:
        look, top = self._look, self._look.u(2.4, 0.8)
        painter = QPainter(self)
        painter.fillRect(self.rect().adjusted(0, round(top), 0, 0), look.colour("sheet"))
        painter.setPen(QPen(look.colour("ink2"), 3))
        painter.drawLine(QLineF(1.5, top, 1.5, self.height()))
        painter.end()

    def _fit(self) -> None:
        u = self._look.u
        wide = round(u(61.5, 52))
        self.setMinimumWidth(wide)
        self.setMaximumWidth(wide)
        edges = (u(4.2, 3), u(3.4, 1.4), u(2.4, 1.8), u(1.5, 1))
        self._column.setContentsMargins(*(round(edge) for edge in edges))
