"""The batches of the book as a table."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any, NamedTuple

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt
from PySide6.QtGui import QFont

from keeper.actions.records import RecordRow
from keeper.reports.figures import day

Index = QModelIndex | QPersistentModelIndex
ROW_ROLE = Qt.ItemDataRole.UserRole
_MOST_NAMES = 3


class Column(NamedTuple):
    heading: str
    text: Callable[[RecordRow], str]


def _when(row: RecordRow) -> str:
    return f"{day(row.batch.written.date())} {row.batch.written:%H:%M:%S}"


def _entries(row: RecordRow) -> str:
    return ", ".join(f"{count} {kind.replace('_', ' ')}" for kind, count in row.counts.items())


def _who(row: RecordRow) -> str:
    names = ", ".join(row.animals[:_MOST_NAMES])
    return f"{names} …" if len(row.animals) == _MOST_NAMES else names


COLUMNS = (
    Column("written", _when),
    Column("what was done", lambda row: row.batch.verb),
    Column("animals", _who),
    Column("entries", _entries),
    Column("reason", lambda row: row.batch.reason or ""),
    Column("by", lambda row: row.batch.keeper or row.batch.station),
    Column("stands", lambda row: "" if row.batch.stands else "taken back"),
)


class RecordRowsModel(QAbstractTableModel):
    """Shows the rows it is given; what was taken back is struck through."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._rows: Sequence[RecordRow] = ()

    def show_rows(self, rows: Sequence[RecordRow]) -> None:
        self.beginResetModel()
        self._rows = tuple(rows)
        self.endResetModel()

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(COLUMNS)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        if orientation is Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            return COLUMNS[section].heading
        return None

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        row = self._rows[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return COLUMNS[index.column()].text(row)
        if role == Qt.ItemDataRole.FontRole and not row.batch.stands:
            struck = QFont()
            struck.setStrikeOut(True)
            return struck
        return row if role == ROW_ROLE else None
