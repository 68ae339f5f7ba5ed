"""The table of batches: one row chosen, columns that share the width."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, Qt, Signal
from PySide6.QtGui import QFont, QPainter
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
    QWidget,
)

from keeper.actions.records import RecordRow
from keeper.desktop.models.record_rows import COLUMNS, ROW_ROLE, Older, RecordRowsModel, Seen
from keeper.desktop.widgets.kept_picture import KeptRows
from keeper.language import tr

_BAR_SHARE, _PAD, _CELLS_KEPT = 10, 4, 600
_SELECTED = QStyle.StateFlag.State_Selected
_SHARES = (2.6, 2.9, 3.4, 6.9, 1.9, 1.7)


class _Barred(QStyledItemDelegate):
    """Words under their headings; a bar at the left end of the chosen row.

    Its lightness alone would not show which row is chosen. A cell is painted once for what it
    says and looks like; the style of the window takes long for each.
    """

    def __init__(self, rows: RecordRowsModel, parent: QWidget) -> None:
        super().__init__(parent)
        self._rows = rows
        self._cells = KeptRows(_CELLS_KEPT)

    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        column = index.column()
        about = (*self._rows.shown(index.row(), column), option.state.value, column == 0)
        look_of = (option.palette.cacheKey(), option.font.key())

        def paint(kept: QPainter, rect: QRect) -> None:
            option.rect = rect
            self._paint(kept, option, index)

        self._cells.lay(painter, QRect(option.rect), about, look_of, paint)

    def _paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        if not option.state & _SELECTED:
            option.rect.adjust(_PAD, 0, 0, 0)
            super().paint(painter, option, index)
            return
        bar = QRect(option.rect)
        painter.fillRect(bar, option.palette.highlight())
        option.rect.adjust(_PAD, 0, 0, 0)
        super().paint(painter, option, index)
        if index.column() == 0:
            bar.setWidth(max(2, bar.height() // _BAR_SHARE))
            painter.fillRect(bar, option.palette.text())


class RecordTable(QTableView):
    """Shows rows it is given; the chosen one stays chosen when new ones come above it.

    Signal ``chosen_changed`` when another row is chosen. older: see ``RecordRowsModel``.
    """

    chosen_changed = Signal()

    def __init__(self, parent: QWidget, *, older: Older) -> None:
        super().__init__(parent)
        self._rows = RecordRowsModel(self, older=older)
        self.setModel(self._rows)
        self.selectionModel().currentRowChanged.connect(lambda *_: self.chosen_changed.emit())
        self.setItemDelegate(_Barred(self._rows, self))
        self.setAccessibleName(tr("what was written, newest first"))
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setShowGrid(False)
        self.setTabKeyNavigation(False)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.verticalHeader().hide()
        self.horizontalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft)
        self.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)

    def show_rows(self, rows: Sequence[RecordRow], seen: Seen) -> None:
        chosen = self.chosen()
        self._rows.show_rows(rows, seen)
        keys = [row.batch.id for row in rows]
        self.selectRow(keys.index(chosen.batch.id) if chosen and chosen.batch.id in keys else 0)

    def chosen(self) -> RecordRow | None:
        found = self.currentIndex().data(ROW_ROLE)
        return found if isinstance(found, RecordRow) else None

    def moveCursor(
        self, step: QAbstractItemView.CursorAction, modifiers: Qt.KeyboardModifier
    ) -> QModelIndex:
        """Home and End go to the newest line and to the oldest that is read."""
        ends = {
            QAbstractItemView.CursorAction.MoveHome: 0,
            QAbstractItemView.CursorAction.MoveEnd: self._rows.rowCount() - 1,
        }
        if step in ends:
            return self._rows.index(ends[step], 0)
        return super().moveCursor(step, modifiers)

    def dress(self, font: QFont) -> None:
        """Set everything in *font*, the headings too, which follow no font of the widget's."""
        self._rows.head_font = font
        self.setFont(font)
        self._rows.headerDataChanged.emit(Qt.Orientation.Horizontal, 0, len(COLUMNS) - 1)

    def over(self, room: int) -> int:
        """What is left of *room* under the last whole row: no row is cut by the lower edge."""
        heads = self.horizontalHeader().sizeHint().height()
        rows = self.verticalHeader().defaultSectionSize()
        return max(0, room - heads) % rows

    def share(self, width: float) -> None:
        """Give each column its share of *width*."""
        unit = width / sum(_SHARES)
        for index in range(len(COLUMNS)):
            self.setColumnWidth(index, int(unit * _SHARES[index]))
