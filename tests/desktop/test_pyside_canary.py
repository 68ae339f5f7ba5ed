"""A canary for the reference count of None.

PySide6 6.12.0 on Python 3.11 drops one reference to None on ordinary calls, until the process
dies with "none_dealloc" (reported upstream as PYSIDE-3474). Before trusting a new PySide6, these
calls, the kinds the program makes, must leave the count where it was.
"""

import sys
from collections.abc import Callable

import pytest
from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QFont, QImage, QPainter, QPainterPath, QPalette, QPen
from PySide6.QtWidgets import QFormLayout, QLabel, QLineEdit, QTableView, QWidget
from pytestqt.qtbot import QtBot

REPEATS = 2_000
NOISE = REPEATS // 20

pytestmark = pytest.mark.skipif(
    sys.version_info >= (3, 12), reason="None is immortal from Python 3.12 on"
)


class Rows(QAbstractTableModel):
    """A table of one column."""

    changed = Signal(int)

    def rowCount(self, parent: QModelIndex = QModelIndex()) -> int:  # noqa: B008
        return 3

    def columnCount(self, parent: QModelIndex = QModelIndex()) -> int:  # noqa: B008
        return 1

    def data(self, index: QModelIndex, role: int = Qt.ItemDataRole.DisplayRole) -> str | None:
        return "41.2 g" if role == Qt.ItemDataRole.DisplayRole else None


def drift(call: Callable[[], object]) -> int:
    """How many references to None `call` gains (or, below zero, loses) in REPEATS calls."""
    for _ in range(50):
        call()
    before = sys.getrefcount(None)
    for _ in range(REPEATS):
        call()
    return sys.getrefcount(None) - before


def trace_a_path() -> None:
    path = QPainterPath()
    path.moveTo(0, 0)
    path.lineTo(3, 4)
    path.cubicTo(QPointF(1, 1), QPointF(2, 2), QPointF(3, 3))
    path.addRect(QRectF(0, 0, 2, 2))
    path.closeSubpath()


def test_paths_keep_none(qtbot: QtBot) -> None:
    assert drift(trace_a_path) > -NOISE


def test_painting_keeps_none(qtbot: QtBot) -> None:
    image = QImage(40, 40, QImage.Format.Format_ARGB32)

    def paint() -> None:
        painter = QPainter(image)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor("#335577"), 1.5))
        painter.setFont(QFont())
        painter.save()
        painter.translate(1, 1)
        painter.drawLine(QPointF(0, 0), QPointF(9, 9))
        painter.fillRect(QRectF(1, 1, 5, 5), QColor("white"))
        painter.drawText(QPointF(1, 9), "41.2")
        painter.restore()
        painter.end()

    assert drift(paint) > -NOISE


def test_tables_and_signals_keep_none(qtbot: QtBot) -> None:
    view, rows = QTableView(), Rows()
    qtbot.addWidget(view)
    view.setModel(rows)
    rows.changed.connect(lambda _: None)

    def read() -> None:
        rows.data(rows.index(0, 0))
        view.selectRow(1)
        view.setCurrentIndex(rows.index(0, 0))
        rows.dataChanged.emit(rows.index(0, 0), rows.index(2, 0))
        rows.changed.emit(1)

    assert drift(read) > -NOISE


def test_widgets_keep_none(qtbot: QtBot) -> None:
    label, line, owner = QLabel(), QLineEdit(), QWidget()
    for widget in (label, line, owner):
        qtbot.addWidget(widget)

    def write() -> None:
        label.setText("41.2 g")
        label.setAccessibleName("Weight")
        line.setText("41,2")
        line.selectAll()
        line.clear()
        owner.setPalette(QPalette())
        owner.setEnabled(True)
        owner.update()
        QObject(owner).setParent(None)

    assert drift(write) > -NOISE


def test_making_forms_keeps_none(qtbot: QtBot) -> None:
    def make() -> None:
        form = QWidget()
        layout = QFormLayout(form)
        layout.addRow("Weight", QLineEdit())
        layout.setContentsMargins(0, 0, 0, 0)

    assert drift(make) > -NOISE
