"""The batches of the book as a table that reads on as it is scrolled."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from datetime import date
from typing import Any, NamedTuple

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt
from PySide6.QtGui import QFont

from keeper.actions.records import RecordRow
from keeper.language import tr
from keeper.reports.figures import day
from keeper.reports.words import verb_words

Index = QModelIndex | QPersistentModelIndex
Older = Callable[[RecordRow], Sequence[RecordRow]]
ROW_ROLE = Qt.ItemDataRole.UserRole
_WORDS = int(Qt.ItemDataRole.DisplayRole)
_ANSWERED = frozenset({_WORDS, int(Qt.ItemDataRole.FontRole), int(ROW_ROLE)})


_MADE_UP = re.compile(r"station-([0-9a-f]{4})[0-9a-f]*")
"""A name that a machine was given; its first letters tell one from another."""


class Seen(NamedTuple):
    """From where the list is looked at: the day, and the station whose name need not be said."""

    today: date
    station: str


class Column(NamedTuple):
    heading: str
    text: Callable[[RecordRow, Seen], str]


def when(row: RecordRow, seen: Seen) -> str:
    """When it was written: the time alone for today."""
    written = row.batch.written
    time = f"{written:%H:%M:%S}"
    return time if written.date() == seen.today else f"{day(written.date(), seen.today)} {time}"


def by_whom(row: RecordRow, seen: Seen) -> str:
    """The keeper who wrote it, or the machine where none is named; this one is *here*."""
    if row.batch.keeper:
        return row.batch.keeper
    station = row.batch.station
    if station == seen.station:
        return tr("here")
    made = _MADE_UP.fullmatch(station)
    return tr("machine {name}", name=made[1]) if made else station


def _who(row: RecordRow, seen: Seen) -> str:
    return ", ".join(row.animals) + (" …" if row.more_animals else "")


def _stands(row: RecordRow, seen: Seen) -> str:
    return "" if row.batch.stands else tr("taken back")


COLUMNS = (
    Column(tr("written"), when),
    Column(tr("what was done"), lambda row, seen: verb_words(row.batch.verb)),
    Column(tr("animals"), _who),
    Column(tr("what it says"), lambda row, seen: row.told),
    Column(tr("by"), by_whom),
    Column(tr("stands"), _stands),
)


class RecordRowsModel(QAbstractTableModel):
    """Shows the rows it is given and reads older ones on; what was taken back is struck through.

    older: the rows that come after one, newest first; none at the book's beginning.
    """

    def __init__(self, parent: QObject | None = None, *, older: Older = lambda row: ()) -> None:
        super().__init__(parent)
        self._rows: list[RecordRow] = []
        self._seen = Seen(date.min, "")
        self._older, self._whole = older, True
        self.head_font: QFont | None = None

    def show_rows(self, rows: Sequence[RecordRow], seen: Seen) -> None:
        self.beginResetModel()
        self._rows, self._seen, self._whole = list(rows), seen, not rows
        self.endResetModel()

    def shown(self, row: int, column: int) -> tuple[str, bool]:
        """The words of a cell, and whether they are struck through."""
        told = self._rows[row]
        return COLUMNS[column].text(told, self._seen), not told.batch.stands

    def canFetchMore(self, parent: Index) -> bool:
        return not self._whole and not parent.isValid()

    def fetchMore(self, parent: Index) -> None:
        more = self._older(self._rows[-1])
        self._whole = not more
        if more:
            first = len(self._rows)
            self.beginInsertRows(QModelIndex(), first, first + len(more) - 1)
            self._rows += more
            self.endInsertRows()

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(COLUMNS)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        if orientation is Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            return COLUMNS[section].heading
        if role == Qt.ItemDataRole.FontRole:
            return self.head_font
        return None

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role not in _ANSWERED:  # a view asks for seven roles of each cell that it paints
            return None
        row = self._rows[index.row()]
        if role == _WORDS:
            return COLUMNS[index.column()].text(row, self._seen)
        if role == ROW_ROLE:
            return row
        if row.batch.stands:
            return None
        struck = QFont()
        struck.setStrikeOut(True)
        return struck
