"""Clutches as rows of a list."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from PySide6.QtCore import QAbstractListModel, QModelIndex, QObject, Qt

from keeper.actions.clutch_rows import ClutchRow
from keeper.desktop.widgets.clutch_row import ClutchFace
from keeper.desktop.widgets.row_list import FACE_ROLE, ROW_ROLE, Index

FaceOf = Callable[[ClutchRow], ClutchFace]


class ClutchRowsModel(QAbstractListModel):
    """Shows the rows it is given; a face is made when its row is first looked at."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.rows: Sequence[ClutchRow] = ()
        self._face_of: FaceOf | None = None
        self._faces: dict[int, ClutchFace] = {}

    def show_rows(self, rows: Sequence[ClutchRow], face_of: FaceOf) -> None:
        self.beginResetModel()
        self.rows, self._face_of, self._faces = tuple(rows), face_of, {}
        self.endResetModel()

    def face(self, number: int) -> ClutchFace:
        """The face of the row *number*."""
        assert self._face_of is not None
        if number not in self._faces:
            self._faces[number] = self._face_of(self.rows[number])
        return self._faces[number]

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self.rows)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            return self.face(index.row()).said
        if role == FACE_ROLE:
            return self.face(index.row())
        return self.rows[index.row()] if role == ROW_ROLE else None
