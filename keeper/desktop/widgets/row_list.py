"""A list of rows of one height: only whole rows are shown, and its scroll bar is always there."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QAbstractItemModel, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QListView, QWidget

from keeper.desktop.look import Look


class RowList(QListView):
    """row_height: px of a row in a look. The one who makes it sets a delegate and its names."""

    def __init__(
        self,
        look: Look,
        model: QAbstractItemModel,
        row_height: Callable[[Look], float],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._look, self._row_height = look, row_height
        self.setModel(model)
        self.setUniformItemSizes(True)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerItem)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setFrameShape(QListView.Shape.NoFrame)
        bar = self.verticalScrollBar()
        bar.rangeChanged.connect(lambda _, most: bar.setEnabled(most > 0))
        look.changed.connect(self._fit)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        """Show whole rows alone."""
        self.setViewportMargins(0, 0, 0, self.height() % round(self._row_height(self._look)))
        self.scheduleDelayedItemsLayout()
