"""The marks of a lane of the time-line: a letter on its day, none over another."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from PySide6.QtCore import QLineF, QRectF
from PySide6.QtGui import QPainter, QPen

from keeper.actions.time_line import Mark
from keeper.desktop.look import Look
from keeper.desktop.widgets.life_axis import TimeAxis
from keeper.desktop.widgets.time_line_faces import paint_mark


def paint_marks(
    painter: QPainter, look: Look, axis: TimeAxis, rect: QRectF, marks: Sequence[Mark]
) -> None:
    """Every mark in view on its day, those that would cover each other one behind another."""
    boxes = list(mark_boxes(look, axis, rect, marks))
    painter.setPen(QPen(look.colour("ink"), 1.4))
    days = (axis.x(mark.on) for _, mark in boxes)
    painter.drawLines([QLineF(x, rect.top(), x, rect.bottom()) for x in days])
    for box, mark in boxes:
        paint_mark(painter, box, mark.kind, look)


def mark_boxes(
    look: Look, axis: TimeAxis, rect: QRectF, marks: Sequence[Mark]
) -> Iterator[tuple[QRectF, Mark]]:
    """A box for each mark in view, begun on its day or behind the one before."""
    side = min(rect.height() - 1.0, look.u(4.6, 4))
    end = -1e9
    for mark in marks:
        if not axis.first <= mark.on < axis.last:  # the axis ends behind the last day
            continue
        left = min(max(axis.x(mark.on), end), axis.right - side)
        box = QRectF(left, rect.center().y() - side / 2, side, side)
        end = box.right() + 1.0
        yield box, mark
