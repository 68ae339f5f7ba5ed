"""The first view of Females: heads, rows and legend, one below another."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QAbstractItemModel
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from keeper.actions.female_desk import CAUTION
from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.female_list import FemaleList, GateLegend, female_head
from keeper.desktop.widgets.words_line import Words
from keeper.language import tr
from keeper.reports.words import sentence

_PERMISSION = tr(
    "Every gate met is leave to consider a pairing, no advice to make one."
    " Enter opens her page, G changes the weight of the gate."
)
_TO_CALENDAR = tr("C turns to the pairing calendar.")


class GatesPage(QWidget):
    """Shows the females of *model* as of the day that it is given."""

    def __init__(self, look: Look, model: QAbstractItemModel) -> None:
        super().__init__()
        self._look = look
        self._on: date | None = None
        self.heads, self.list = female_head(look), FemaleList(look, model)
        self.legend = GateLegend(look)
        self.none = Words(look, Use.PAGE_ASIDE, "ink")
        self.none.hide()
        self.legend.show_caution(f"{_PERMISSION} {_TO_CALENDAR} {sentence(CAUTION)}")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        self._frame = QVBoxLayout()
        self._frame.setSpacing(0)
        self._frame.addWidget(self.heads)
        self._frame.addWidget(self.none)
        self._frame.addWidget(self.list, 1)
        column.addLayout(self._frame, 1)
        column.addWidget(self.legend)
        look.changed.connect(self._fit)

    def show_day(self, on: date) -> None:
        """Rows and months are those of the day *on*."""
        self._on = self.list.painter.today = on
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        margin = round(self._look.u(4.8, 2.3))
        self._frame.setContentsMargins(margin, 0, margin, 0)
        if self._on is not None:
            self.heads.show_day(self._on, self.list.verticalScrollBar().sizeHint().width())
