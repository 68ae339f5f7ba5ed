"""The page of the round while none is open: head line, counts and pad. It loads no rule."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QRectF
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from keeper.desktop.look import Look
from keeper.desktop.widgets.night_counts import CountsTable, NightCounts
from keeper.desktop.widgets.pad import PadLegend, meanings
from keeper.desktop.widgets.words_line import HeadLine
from keeper.language import tr


class QuietView(QWidget):
    """Head line, counts and pad, the pad where the walking page has it."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.look = look
        self.pad = PadLegend(look)
        self._head = HeadLine(look)
        self._table = CountsTable(look)
        self._body = QWidget()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self._head)
        column.addWidget(self._body, 1)
        for child in (self._table, self.pad):
            child.setParent(self._body)
        look.changed.connect(self._lay_out)

    def show_counts(self, counts: NightCounts, legend: Mapping[str, str]) -> None:
        """Show *counts*, those that are due first, and what the pad does now."""
        due = next(iter(counts.total.counts), 0)
        tonight = tr("{count} due tonight", count=due)
        self._head.show_words(tr("Round"), ((tr("none open"), False),), (tonight,))
        self._table.show_counts(counts)
        self.pad.show_meanings(meanings(legend, frozenset()))
        self._lay_out()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._lay_out()

    def _lay_out(self) -> None:
        look, body = self.look, QRectF(self._body.rect())
        margin, gutter, side = look.u(7, 3.5), look.u(8.5, 4), look.u(102.5, 78)
        high = look.u(70, 60)
        left = body.width() - margin - side
        self._table.setGeometry(
            QRectF(margin, look.u(4), left - gutter - margin, body.height() - look.u(7)).toRect()
        )
        top = body.height() - look.u(3, 2) - high
        self.pad.setGeometry(QRectF(left, top, side, high).toRect())
