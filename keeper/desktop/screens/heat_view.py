"""The parts of the heat page in their places; what they show is the screen's."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QStackedLayout, QVBoxLayout, QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.desktop.widgets.day_night_band import DayNightBand
from keeper.desktop.widgets.heat_list import HeatLegend, HeatList
from keeper.desktop.widgets.reading_panel import ReadingPanel
from keeper.desktop.widgets.told_sheet import ToldSheet
from keeper.desktop.widgets.words_line import HeadLine, Words


class HeatView(QWidget):
    """The list at the left; at the right the panel, and under it the band or the sheet."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look = look
        self.head = HeadLine(look)
        self.list = HeatList(look)
        self.legend = HeatLegend(look)
        self.panel = ReadingPanel(look)
        self.band = DayNightBand(look, self)  # a stack shows its first page at once
        self.sheet = ToldSheet(look, self)
        self.keys = Words(look, Use.BODY, "ink2")
        self.asking = AskingLine(look, self)
        self._lay_out()
        look.changed.connect(self._fit)

    def lay_over(self, part: QWidget) -> None:
        """Show the band or the sheet under the panel."""
        self._under.setCurrentWidget(part)

    def _lay_out(self) -> None:
        self._under = QStackedLayout()
        self._under.addWidget(self.band)
        self._under.addWidget(self.sheet)
        left, right = QVBoxLayout(), QVBoxLayout()
        left.addWidget(self.list, 1)
        left.addWidget(self.legend)
        right.addWidget(self.panel)
        right.addLayout(self._under, 1)
        self._body = QHBoxLayout()
        self._body.addLayout(left, 11)
        self._body.addLayout(right, 10)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.head)
        column.addLayout(self._body, 1)
        column.addWidget(self.keys)
        column.addWidget(self.asking)
        self.keys.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._fit()

    def _fit(self) -> None:
        look = self._look
        self._body.setContentsMargins(0, 0, round(look.u(7, 3.5)), round(look.u(1)))
        self._body.setSpacing(round(look.u(5, 3)))
