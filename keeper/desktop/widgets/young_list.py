"""The young of one clutch, one a line, under a head; as a list that can be walked and scrolled."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import (
    QAbstractListModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QPointF,
    QRectF,
    QSize,
    Qt,
)
from PySide6.QtGui import QPainter, QPen, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QListView,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import LEAST_PT, narrowed, set_line
from keeper.language import tr

HEADS = (
    tr("letter"),
    tr("number"),
    tr("hatched at"),
    tr("now", sense="a weight"),
    tr("sex", sense="a narrow column"),
    tr("first shed"),
    tr("first meal"),
    tr("kept", sense="meals"),
    tr("fate"),
)
SHARES = (0.07, 0.15, 0.12, 0.12, 0.12, 0.12, 0.12, 0.08, 0.10)

Index = QModelIndex | QPersistentModelIndex


@dataclass(frozen=True, slots=True, kw_only=True)
class YoungFace:
    """One young: a cell for each of ``HEADS``, and all of it in words."""

    cells: tuple[str, ...]
    said: str


class YoungModel(QAbstractListModel):
    """Shows the faces it is given."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.faces: Sequence[YoungFace] = ()

    def show_faces(self, faces: Sequence[YoungFace]) -> None:
        self.beginResetModel()
        self.faces = tuple(faces)
        self.endResetModel()

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self.faces)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        face = self.faces[index.row()]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            return face.said
        return face if role == Qt.ItemDataRole.UserRole else None


class YoungList(QListView):
    """Shows a ``YoungModel``; Tab reaches it, so that a long clutch can be walked."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.young = YoungModel(self)
        self.setModel(self.young)
        self.setItemDelegate(_YoungPainter(look, self))
        self.setObjectName("young")
        self.setAccessibleName(tr("young of the clutch"))
        self.setUniformItemSizes(True)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerItem)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setFrameShape(QListView.Shape.NoFrame)
        self._look = look
        look.changed.connect(self._fit)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        """Show whole lines alone."""
        self.setViewportMargins(0, 0, 0, self.height() % _line_height(self._look))
        self.scheduleDelayedItemsLayout()


class YoungHead(Drawn):
    """The heads of the columns; without young, one sentence in their place."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._none = ""

    def show_none(self, none: str) -> None:
        """Show the sentence *none* in place of the heads; nothing: the heads."""
        self._none = none
        self.tell(none or ", ".join(HEADS))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(100, 80), self.look.u(6.4, 5.2)

    def paint(self, painter: QPainter) -> None:
        look, font = self.look, self.look.font(Use.TABLE)
        base = self.height() - look.u(1.8, 1.3)
        if self._none:
            room = float(self.width())
            set_line(painter, QPointF(0, base), self._none, font, look.colour("ink2"), room=room)
            return
        _set_cells(painter, QRectF(self.rect()), base, HEADS, look, "ink2", Use.TABLE)
        painter.setPen(QPen(look.colour("line"), 1.0))
        painter.drawLine(0, self.height() - 1, self.width(), self.height() - 1)


class _YoungPainter(QStyledItemDelegate):
    def __init__(self, look: Look, view: QListView) -> None:
        super().__init__(view)
        self._look, self._view = look, view

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        return QSize(self._view.viewport().width(), _line_height(self._look))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        rect, look = QRectF(option.rect), self._look
        base = rect.bottom() - look.u(1.5, 1.2)
        face = index.data(Qt.ItemDataRole.UserRole)
        _set_cells(painter, rect, base, face.cells, look, "ink", Use.TABLE)
        painter.setPen(QPen(look.colour("hair"), 1.0))
        y = rect.bottom() - 0.5
        painter.drawLine(QPointF(rect.left(), y), QPointF(rect.right(), y))


def _line_height(look: Look) -> int:
    return round(look.u(5.6, 4.7))


def _set_cells(
    painter: QPainter,
    rect: QRectF,
    base: float,
    cells: Sequence[str],
    look: Look,
    ink: str,
    use: Use,
) -> None:
    left, font = rect.left(), look.font(use)
    for text, share in zip(cells, SHARES, strict=True):
        room = share * rect.width() - look.u(1, 0.7)
        fitted = narrowed(font, text, room, LEAST_PT)
        set_line(painter, QPointF(left, base), text, fitted, look.colour(ink), room=room)
        left += share * rect.width()
