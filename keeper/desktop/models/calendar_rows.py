"""Females of the pairing calendar as rows of a list."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QAbstractListModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from keeper.actions.pairing_calendar import CalendarRow
from keeper.desktop.widgets.pairing_list import CALENDAR_FACE_ROLE
from keeper.desktop.widgets.pairing_row import CalendarFace

Index = QModelIndex | QPersistentModelIndex
CALENDAR_ROW_ROLE = CALENDAR_FACE_ROLE + 1
Pair = tuple[CalendarRow, CalendarFace]


class CalendarRowsModel(QAbstractListModel):
    """Shows the rows it is given; a face may be put in later, when her forecast comes."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._pairs: list[Pair] = []

    @property
    def rows(self) -> Sequence[CalendarRow]:
        return [row for row, _ in self._pairs]

    @property
    def faces(self) -> Sequence[CalendarFace]:
        return [face for _, face in self._pairs]

    def show_rows(self, pairs: Sequence[Pair]) -> None:
        self.beginResetModel()
        self._pairs = list(pairs)
        self.endResetModel()

    def show_face(self, number: int, face: CalendarFace) -> None:
        """Put another face on the row *number*."""
        self._pairs[number] = (self._pairs[number][0], face)
        index = self.index(number)
        self.dataChanged.emit(index, index)

    def put_in(self, number: int, pair: Pair) -> None:
        """A row more, which becomes that of *number*."""
        self.beginInsertRows(QModelIndex(), number, number)
        self._pairs.insert(number, pair)
        self.endInsertRows()

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self._pairs)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        row, face = self._pairs[index.row()]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            return face.said
        if role == CALENDAR_FACE_ROLE:
            return face
        return row if role == CALENDAR_ROW_ROLE else None
