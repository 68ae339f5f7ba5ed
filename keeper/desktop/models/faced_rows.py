"""Rows of a list, each with the face that is painted of it."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any, Generic, Protocol, TypeVar

from PySide6.QtCore import QAbstractListModel, QModelIndex, QObject, Qt

from keeper.desktop.widgets.row_list import FACE_ROLE, ROW_ROLE, Index


class Face(Protocol):
    """What a row shows; said: the same as text, for assistive technology."""

    @property
    def said(self) -> str: ...


R = TypeVar("R")
F = TypeVar("F", bound=Face)


class FacedRows(QAbstractListModel, Generic[R, F]):
    """Shows the rows it is given; asks no rule and no book.

    A face may be put in later, when what it tells has been reckoned.
    """

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.pairs: list[tuple[R, F]] = []

    @property
    def rows(self) -> Sequence[R]:
        return [row for row, _ in self.pairs]

    @property
    def faces(self) -> Sequence[F]:
        return [face for _, face in self.pairs]

    def show_rows(self, pairs: Iterable[tuple[R, F]]) -> None:
        """These in place of all there were."""
        self.beginResetModel()
        self.pairs = list(pairs)
        self.endResetModel()

    def show_face(self, number: int, face: F) -> None:
        """Put another face on the row *number*."""
        self.pairs[number] = (self.pairs[number][0], face)
        index = self.index(number)
        self.dataChanged.emit(index, index)

    def put_in(self, number: int, pair: tuple[R, F]) -> None:
        """A row more, which becomes that of *number*."""
        self.beginInsertRows(QModelIndex(), number, number)
        self.pairs.insert(number, pair)
        self.endInsertRows()

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self.pairs)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        row, face = self.pairs[index.row()]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            return face.said
        if role == FACE_ROLE:
            return face
        return row if role == ROW_ROLE else None
