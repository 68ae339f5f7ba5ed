"""The page of the time-line: the rack through time, what is told of a tub beside it, its legend."""

from __future__ import annotations

from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from keeper.actions.time_line_told import Told
from keeper.desktop.look import Look
from keeper.desktop.screens.racks_time_words import time_legend
from keeper.desktop.widgets.time_line import TimeLine
from keeper.desktop.widgets.time_line_legend import TimeLegend
from keeper.desktop.widgets.time_line_sheet import Shown
from keeper.desktop.widgets.time_line_told import ToldSheet


class TimePage(QWidget):
    """Shows what it is given."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self.line, self.told = TimeLine(look, self), ToldSheet(look, self)
        self.legend = TimeLegend(look, self)
        self._beside = QHBoxLayout()
        self._beside.setSpacing(round(look.u(2, 1.4)))
        self._beside.addWidget(self.line, 1)
        self._beside.addWidget(self.told)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(self._beside, 1)
        column.addWidget(self.legend)
        look.changed.connect(self._fit)
        self._fit()

    def show_time(self, shown: Shown, told: Told) -> None:
        """The rack, and what is told of the chosen tub."""
        self.line.show_time(shown)
        self.told.show_told(told)
        self.legend.show_keys(time_legend(shown.told))

    def _fit(self) -> None:
        self._beside.setContentsMargins(0, 0, round(self._look.u(7, 3.5)), 0)
