"""The table of batches: one row chosen, columns that share the width."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView, QWidget

from keeper.actions.records import RecordRow
from keeper.desktop.models.record_rows import COLUMNS, ROW_ROLE, RecordRowsModel

_SHARES = (3.2, 2.4, 3, 4.4, 3, 2, 1.8)


class RecordTable(QTableView):
    """Shows rows it is given; the chosen one stays chosen when new ones come above it."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._rows = RecordRowsModel(self)
        self.setModel(self._rows)
        self.setAccessibleName("what was written, newest first")
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setShowGrid(False)
        self.setTabKeyNavigation(False)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.verticalHeader().hide()
        self.horizontalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft)
        self.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)

    def show_rows(self, rows: Sequence[RecordRow]) -> None:
        chosen = self.chosen()
        self._rows.show_rows(rows)
        keys = [row.batch.id for row in rows]
        self.selectRow(keys.index(chosen.batch.id) if chosen and chosen.batch.id in keys else 0)

    def chosen(self) -> RecordRow | None:
        found = self.currentIndex().data(ROW_ROLE)
        return found if isinstance(found, RecordRow) else None

    def share(self, width: float) -> None:
        """Give each column its share of *width*."""
        unit = width / sum(_SHARES)
        for index in range(len(COLUMNS)):
            self.setColumnWidth(index, int(unit * _SHARES[index]))
