"""Genes and lines of colour as rows of a list."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QAbstractListModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from keeper.actions.lines_desk import Line
from keeper.desktop.widgets.line_list import FACE_ROLE, LineFace

Index = QModelIndex | QPersistentModelIndex
ROW_ROLE = FACE_ROLE + 1


class LineRowsModel(QAbstractListModel):
    """Shows the rows it is given; asks no rule and no book."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._pairs: Sequence[tuple[Line, LineFace]] = ()

    @property
    def rows(self) -> Sequence[Line]:
        return [row for row, _ in self._pairs]

    def show_rows(self, pairs: Sequence[tuple[Line, LineFace]]) -> None:
        self.beginResetModel()
        self._pairs = tuple(pairs)
        self.endResetModel()

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self._pairs)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        row, face = self._pairs[index.row()]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            return face.said
        if role == FACE_ROLE:
            return face
        return row if role == ROW_ROLE else None
