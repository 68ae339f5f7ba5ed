"""A list of rows of one height, painted from faces, each row once.

Only whole rows are shown, and the scroll bar is always there.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Sequence
from typing import Any

from PySide6.QtCore import (
    QAbstractItemModel,
    QItemSelectionModel,
    QLineF,
    QModelIndex,
    QPersistentModelIndex,
    QPointF,
    QRect,
    QRectF,
    QSize,
    Qt,
)
from PySide6.QtGui import QPainter, QPen, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.kept_picture import KeptRows, seen
from keeper.desktop.widgets.lettering import LEAST_PT, narrowed, set_line

FACE_ROLE = Qt.ItemDataRole.UserRole
ROW_ROLE = FACE_ROLE + 1
"""Of a model: what is painted of a row, and the row itself."""

Index = QModelIndex | QPersistentModelIndex


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
        self.look, self._row_height = look, row_height
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

    @property
    def row_px(self) -> int:
        """How high a row is now."""
        return round(self._row_height(self.look))

    def choose(self, number: int) -> None:
        """Choose the row *number* and bring it into view; none where there is no such row."""
        choose_row(self, number)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        """Show whole rows alone."""
        self.setViewportMargins(0, 0, 0, self.height() % self.row_px)
        self.scheduleDelayedItemsLayout()


def choose_row(view: QListView, number: int) -> None:
    """Choose the row *number* of *view* and bring it into view."""
    index = view.model().index(number, 0)
    flag = QItemSelectionModel.SelectionFlag.ClearAndSelect
    view.selectionModel().setCurrentIndex(index, flag)
    view.scrollTo(index)


class RowPainter(QStyledItemDelegate):
    """Lays the rows of *of* down as pictures; ``draw`` says how one looks. most: kept at once."""

    def __init__(self, of: RowList, most: int) -> None:
        super().__init__(of)
        self.look, self._of = of.look, of
        self._rows = KeptRows(most)

    def beside(self) -> Hashable:
        """What every row depends on beside its face; None: no row is shown yet."""
        return ()

    def draw(self, painter: QPainter, row: QRectF, face: Any, *, here: bool, held: bool) -> None:
        """Paint *face* in *row*. here: it is the chosen one; held: and its list has the keys."""
        raise NotImplementedError

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        return QSize(self._of.viewport().width(), self._of.row_px)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        if (beside := self.beside()) is None:
            return
        face = index.data(FACE_ROLE)
        here = bool(option.state & QStyle.StateFlag.State_Selected)
        held = here and self._of.hasFocus()

        def paint(on: QPainter, rect: QRect) -> None:
            on.setRenderHint(QPainter.RenderHint.Antialiasing)
            self.draw(on, QRectF(rect), face, here=here, held=held)

        about, ground = (face, here, held, beside), self.look.colour("ground")
        self._rows.lay(painter, option.rect, about, seen(self.look), paint, ground)


def paint_ground(painter: QPainter, row: QRectF, look: Look, *, here: bool, held: bool) -> float:
    """The paper of a row, a pointer before the chosen one, a hair beneath; where words begin.

    held: whether its list has the keyboard; else the pointer is quiet.
    """
    painter.fillRect(row, look.colour("sheet" if here else "ground"))
    if here:
        bar = QRectF(row.left(), row.top(), look.u(1.2, 0.8), row.height())
        painter.fillRect(bar, look.colour("point" if held else "line"))
    left = row.left() + look.u(2.2, 1.2)
    painter.setPen(QPen(look.colour("hair"), 1.0))
    painter.drawLine(QLineF(left, row.bottom() - 0.5, row.right(), row.bottom() - 0.5))
    return left


def paint_cells(
    painter: QPainter,
    row: QRectF,
    cells: Sequence[tuple[str, str]],
    edges: Sequence[float],
    look: Look,
) -> None:
    """Two lines of words in each column, between *edges*, one more than *cells*."""
    strong, plain = look.font(Use.BODY_STRONG), look.font(Use.TABLE)
    first, second = row.top() + look.u(5.6, 4.5), row.top() + look.u(10.4, 8.6)
    for (above, beneath), at, end in zip(cells, edges[:-1], edges[1:], strict=True):
        room, left = end - at - look.u(1, 0.8), row.left() + at
        font = narrowed(strong, above, room, LEAST_PT)
        set_line(painter, QPointF(left, first), above, font, look.colour("ink"), room=room)
        fitted = narrowed(plain, beneath, room, LEAST_PT)
        set_line(painter, QPointF(left, second), beneath, fitted, look.colour("ink2"), room=room)
