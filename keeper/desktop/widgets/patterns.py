"""Patterns in device-independent px: hatch, cross hatch, dots, bars, half, dotted ring.

A pattern is a pure function of a rectangle. Hatch direction is fixed in the house: rising is
attention, falling is rest.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from enum import Enum, auto

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF


class Pattern(Enum):
    """What fills a patch."""

    PLAIN = auto()
    SOLID = auto()
    DOTS = auto()
    HALF = auto()
    HATCH = auto()
    BOLD_HATCH = auto()
    CROSS_HATCH = auto()
    LEVEL_BARS = auto()
    UPRIGHT_BARS = auto()
    DOTTED_RING = auto()


@dataclass(frozen=True, slots=True, kw_only=True)
class Grain:
    """How coarse patterns are: distances and strokes in device-independent px."""

    hatch_every: float
    hatch: float
    bold_hatch: float
    cross_hatch: float
    dot_every: float
    dot_radius: float
    bar_every: float
    bar: float


COARSE = Grain(
    hatch_every=7,
    hatch=2.1,
    bold_hatch=2.6,
    cross_hatch=2.1,
    dot_every=6,
    dot_radius=1.3,
    bar_every=6,
    bar=1.3,
)
FINE = Grain(
    hatch_every=4.6,
    hatch=1.5,
    bold_hatch=1.8,
    cross_hatch=1.4,
    dot_every=4,
    dot_radius=0.95,
    bar_every=4,
    bar=1.0,
)
"""For patches too small for a letter."""


def paint_pattern(
    painter: QPainter, rect: QRectF, pattern: Pattern, colour: QColor, grain: Grain = COARSE
) -> None:
    """Paint *pattern* inside *rect*; the painter's clip is respected and restored."""
    if pattern is Pattern.PLAIN:
        return
    painter.save()
    painter.setClipRect(rect, Qt.ClipOperation.IntersectClip)
    _BRUSHES[pattern](painter, rect, colour, grain)
    painter.restore()


def rising_lines(rect: QRectF, every: float) -> Iterator[QLineF]:
    """Lines at 45 degrees, *every* px apart across their own direction."""
    step, height = every * math.sqrt(2), rect.height()
    for number in range(math.ceil((rect.width() + height) / step) + 1):
        left = rect.left() - height + (number + 0.5) * step
        yield QLineF(left, rect.bottom(), left + height, rect.top())


def falling_lines(rect: QRectF, every: float) -> Iterator[QLineF]:
    """The rising lines, mirrored."""
    middle = rect.left() + rect.right()
    for line in rising_lines(rect, every):
        yield QLineF(middle - line.x1(), line.y1(), middle - line.x2(), line.y2())


def dot_centres(rect: QRectF, every: float) -> Iterator[QPointF]:
    """Centres in rows *every* px apart, each second row shifted by half."""
    rows, columns = math.ceil(rect.height() / every), math.ceil(rect.width() / every)
    for row in range(rows + 1):
        for column in range(columns + 1):
            x = (column + (0.75 if row % 2 else 0.25)) * every
            yield QPointF(rect.left() + x, rect.top() + (row + 0.5) * every)


def _lines(painter: QPainter, lines: Iterator[QLineF], colour: QColor, width: float) -> None:
    painter.setPen(QPen(colour, width, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap))
    painter.drawLines(list(lines))


def _solid(painter: QPainter, rect: QRectF, colour: QColor, grain: Grain) -> None:
    painter.fillRect(rect, colour)


def _half(painter: QPainter, rect: QRectF, colour: QColor, grain: Grain) -> None:
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour)
    painter.drawPolygon(QPolygonF([rect.bottomLeft(), rect.topRight(), rect.bottomRight()]))


def _dots(painter: QPainter, rect: QRectF, colour: QColor, grain: Grain) -> None:
    """A round pen sets a whole dot where it touches: all of them are drawn at once."""
    width = 2 * grain.dot_radius
    painter.setPen(QPen(colour, width, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap))
    painter.drawPoints(list(dot_centres(rect, grain.dot_every)))


def _hatch(painter: QPainter, rect: QRectF, colour: QColor, grain: Grain) -> None:
    _lines(painter, rising_lines(rect, grain.hatch_every), colour, grain.hatch)


def _bold_hatch(painter: QPainter, rect: QRectF, colour: QColor, grain: Grain) -> None:
    _lines(painter, rising_lines(rect, grain.hatch_every), colour, grain.bold_hatch)


def _cross_hatch(painter: QPainter, rect: QRectF, colour: QColor, grain: Grain) -> None:
    _lines(painter, rising_lines(rect, grain.hatch_every), colour, grain.cross_hatch)
    _lines(painter, falling_lines(rect, grain.hatch_every), colour, grain.cross_hatch)


def _level_bars(painter: QPainter, rect: QRectF, colour: QColor, grain: Grain) -> None:
    count = math.floor(rect.height() / grain.bar_every)
    rows = (rect.top() + (n + 0.5) * rect.height() / max(1, count) for n in range(count))
    lines = (QLineF(rect.left(), y, rect.right(), y) for y in rows)
    _lines(painter, lines, colour, grain.bar)


def _upright_bars(painter: QPainter, rect: QRectF, colour: QColor, grain: Grain) -> None:
    count = math.floor(rect.width() / grain.bar_every)
    places = (rect.left() + (n + 0.5) * rect.width() / max(1, count) for n in range(count))
    lines = (QLineF(x, rect.top(), x, rect.bottom()) for x in places)
    _lines(painter, lines, colour, grain.bar)


def _dotted_ring(painter: QPainter, rect: QRectF, colour: QColor, grain: Grain) -> None:
    pen = QPen(colour, 1.6, Qt.PenStyle.CustomDashLine, Qt.PenCapStyle.FlatCap)
    pen.setDashPattern([1.0, 1.0])
    inset = min(4.0, rect.height() / 5)
    painter.setPen(pen)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(rect.adjusted(inset, inset, -inset, -inset))


_BRUSHES: dict[Pattern, Callable[[QPainter, QRectF, QColor, Grain], None]] = {
    Pattern.SOLID: _solid,
    Pattern.DOTS: _dots,
    Pattern.HALF: _half,
    Pattern.HATCH: _hatch,
    Pattern.BOLD_HATCH: _bold_hatch,
    Pattern.CROSS_HATCH: _cross_hatch,
    Pattern.LEVEL_BARS: _level_bars,
    Pattern.UPRIGHT_BARS: _upright_bars,
    Pattern.DOTTED_RING: _dotted_ring,
}
