"""Marks of the picture of generations: dots by sex and whereabouts, rings, diamonds."""

from __future__ import annotations

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from keeper.desktop.look import Look
from keeper.desktop.widgets.generation_shape import RING as RING
from keeper.husbandry.animal import Sex
from keeper.reports.colour_facts import Dot

_SQUARE, _TRIANGLE = 0.88, 1.15  # of the radius of a disc, so that all weigh alike


def paint_dot(painter: QPainter, look: Look, dot: Dot, place: QPointF, radius: float) -> None:
    """A disc for a female, a square for a male, a triangle where the sex is not known.

    Hollow where it is gone; a bar beneath one that was scored at another age.
    """
    pen = QPen(look.colour("ink"), min(1.5, 0.5 * radius))
    pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    painter.setPen(pen)
    painter.setBrush(look.colour("ink" if dot.here else "ground"))
    if dot.sex is Sex.FEMALE:
        painter.drawEllipse(place, radius, radius)
    elif dot.sex is Sex.MALE:
        side = _SQUARE * radius
        painter.drawRect(QRectF(place.x() - side, place.y() - side, 2 * side, 2 * side))
    else:
        side = _TRIANGLE * radius
        corners = ((0.0, -side), (side, 0.8 * side), (-side, 0.8 * side))
        painter.drawPolygon(QPolygonF([place + QPointF(x, y) for x, y in corners]))
    if not dot.like_age:
        y = place.y() + RING * radius + 0.6 * radius
        painter.setPen(QPen(look.colour("ink"), max(1.5, 0.45 * radius), _SOLID, _FLAT))
        painter.drawLine(QLineF(place.x() - 1.5 * radius, y, place.x() + 1.5 * radius, y))


def paint_ring(painter: QPainter, look: Look, place: QPointF, radius: float) -> None:
    """Round a dot that is bred from; a gap of the ground lies between them."""
    reach = RING * radius
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(look.colour("point"), max(1.2, 0.4 * radius)))
    painter.drawEllipse(place, reach, reach)


def paint_diamond(painter: QPainter, look: Look, place: QPointF, radius: float) -> None:
    """A mid-parent: open, on the colour of the ground."""
    reach = 1.5 * radius
    corners = ((0.0, -reach), (reach, 0.0), (0.0, reach), (-reach, 0.0))
    painter.setPen(QPen(look.colour("ink"), 1.5))
    painter.setBrush(look.colour("ground"))
    painter.drawPolygon(QPolygonF([place + QPointF(x, y) for x, y in corners]))


_SOLID, _FLAT = Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap
