"""The watch as rows of a list: lines that need a look, then those put aside."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import QAbstractListModel, QModelIndex, QObject, Qt

from keeper.actions.watch_board import Aside, WatchItem
from keeper.desktop.widgets.row_list import FACE_ROLE, ROW_ROLE, Index
from keeper.desktop.widgets.severity_list import Face, said


@dataclass(frozen=True, slots=True, kw_only=True)
class WatchRow:
    """What a row is about, and its face."""

    about: WatchItem | Aside
    face: Face

    @property
    def key(self) -> tuple[object, ...]:
        """What stays the same when the watch is read again."""
        if isinstance(self.about, Aside):
            aside = self.about
            about = aside.animal.animal if aside.animal else aside.place
            return ("aside", about, aside.snooze.watch_kind)
        whose = self.about.animal.animal if self.about.animal else self.about.place
        return (whose, self.about.kind)


class WatchRowsModel(QAbstractListModel):
    """Shows the rows it is given; asks no rule and no book."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._rows: Sequence[WatchRow] = ()

    def show_rows(self, rows: Sequence[WatchRow]) -> None:
        self.beginResetModel()
        self._rows = tuple(rows)
        self.endResetModel()

    @property
    def rows(self) -> Sequence[WatchRow]:
        return self._rows

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() else len(self._rows)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        row = self._rows[index.row()]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            return said(row.face)
        if role == FACE_ROLE:
            return row.face
        return row if role == ROW_ROLE else None
