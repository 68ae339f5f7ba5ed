"""The typed weight beside the expected range on a ratio scale: equal steps are equal factors."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.lettering import CENTRE, LEFT, RIGHT, advance, set_line
from keeper.desktop.widgets.patterns import COARSE, Pattern, paint_pattern
from keeper.language import tr
from keeper.reports.figures import mass_unit, number
from keeper.reports.writing import in_use

_STEPS = (1, 2, 3, 5)
_LABELS_LEAST = 4
_ROOM = 1.6  # the scale goes on by this factor beyond what it has to show


@dataclass(frozen=True, slots=True, kw_only=True)
class GaugeMarks:
    """What stands on the scale, grams: the expected range, what was typed, the guess.

    ``how`` is the slip that leads from the one to the other, in words.
    """

    low_g: float | None = None
    high_g: float | None = None
    typed_g: float | None = None
    guess_g: float | None = None
    how: str = ""
    range_words: str = ""


def ends_of(marks: GaugeMarks) -> tuple[float, float] | None:
    """The grams at both ends of the scale; None where there is nothing to show.

    >>> ends_of(GaugeMarks(low_g=100.0, high_g=160.0))
    (62.5, 256.0)
    """
    shown = [marks.low_g, marks.high_g, marks.typed_g, marks.guess_g]
    known = [grams for grams in shown if grams]
    if not known:
        return None
    words_at_right = marks.typed_g is not None and marks.typed_g < (marks.low_g or 0)
    return min(known) / _ROOM, max(known) * (_ROOM**2 if words_at_right else _ROOM)


def ticks(low: float, high: float) -> Iterator[tuple[float, bool]]:
    """Round figures of any unit between *low* and *high* and whether each is labelled.

    >>> [grams for grams, labelled in ticks(25, 600) if labelled]
    [30.0, 50.0, 100.0, 200.0, 300.0, 500.0]
    """
    decade = 10.0 ** math.floor(math.log10(low))
    while decade <= high:
        for step in range(1, 10):
            grams = round(step * decade, 6)
            if low <= grams <= high:
                yield grams, step in _STEPS
        decade *= 10


def paint_gauge(painter: QPainter, rect: QRectF, marks: GaugeMarks, look: Look) -> None:
    """Paint the scale over *rect*: pointers above its line, figures beneath."""
    ends = ends_of(marks)
    if ends is None:
        return
    axis = rect.bottom() - look.u(12, 8.6)
    span = math.log(ends[1] / ends[0])

    def x_of(grams: float) -> float:
        return rect.left() + rect.width() * math.log(grams / ends[0]) / span

    _paint_axis(painter, rect, axis, ends, look)
    if marks.low_g is not None and marks.high_g is not None:
        block = QRectF(x_of(marks.low_g), axis - look.u(7, 5), 0, look.u(7, 5))
        block.setRight(max(x_of(marks.high_g), block.left() + look.u(1.5)))
        _paint_block(painter, block, rect, marks, look)
    if marks.typed_g is not None:
        _paint_typed(painter, QPointF(x_of(marks.typed_g), axis), rect, marks, look)
    if marks.guess_g is not None:
        guess = QPointF(x_of(marks.guess_g), axis - look.u(8, 5.8))
        _paint_pointer(painter, guess, look, filled=False)
        font = look.font(Use.BODY_STRONG)
        beside = QPointF(guess.x() + look.u(4, 3), guess.y() - look.u(0.6))
        set_line(painter, beside, number(in_use().mass(marks.guess_g), 3), font, look.colour("ink"))
        if marks.typed_g is not None:
            end = x_of(min(marks.guess_g, marks.low_g or marks.guess_g))
            _paint_way(painter, (x_of(marks.typed_g), end), axis, marks, look)


def _paint_axis(
    painter: QPainter, rect: QRectF, axis: float, ends: tuple[float, float], look: Look
) -> None:
    painter.setPen(QPen(look.colour("line"), 1.4))
    painter.drawLine(QLineF(rect.left(), axis, rect.right(), axis))
    font, span, last = look.font(Use.TABLE), math.log(ends[1] / ends[0]), -math.inf
    first, beyond = (in_use().mass(end) for end in ends)
    every = list(ticks(first, beyond))
    few = sum(labelled for _, labelled in every) < _LABELS_LEAST
    for weight, usual in every:
        labelled = usual or few
        x = rect.left() + rect.width() * math.log(weight / first) / span
        long = look.u(2.4, 1.8) if labelled else look.u(1.3, 1)
        painter.setPen(QPen(look.colour("line"), 1.2))
        painter.drawLine(QLineF(x, axis, x, axis + long))
        text = number(weight, 3)
        half = advance(font, text) / 2
        if labelled and x - half > last and rect.left() <= x - half and x + half <= rect.right():
            place = QPointF(x, axis + look.u(7, 5.2))
            set_line(painter, place, text, font, look.colour("ink2"), align=CENTRE)
            last = x + half + look.u(2)
    place = QPointF(rect.right(), rect.bottom() - look.u(0.4))
    hint = look.font(Use.KEY_HINT)
    told = tr("{unit}, ratio scale", unit=mass_unit())
    set_line(painter, place, told, hint, look.colour("ink3"), align=RIGHT)


def _paint_block(
    painter: QPainter, block: QRectF, rect: QRectF, marks: GaugeMarks, look: Look
) -> None:
    painter.fillRect(block, look.colour("sheet"))
    paint_pattern(painter, block, Pattern.HATCH, look.colour("ink2"), COARSE)
    painter.setPen(QPen(look.colour("ink"), 2.0))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(block)
    font, air = look.font(Use.BODY_STRONG), look.u(2.4, 1.8)
    base = block.bottom() - look.u(1.4, 1)
    over = marks.typed_g is not None and marks.high_g is not None and marks.typed_g > marks.high_g
    wide = advance(font, marks.range_words)
    if not over and block.right() + air + wide <= rect.right():
        place, align = QPointF(block.right() + air, base), LEFT
    else:
        place, align = QPointF(block.left() - air, base), RIGHT
    set_line(painter, place, marks.range_words, font, look.colour("ink"), align=align)


def _paint_typed(
    painter: QPainter, tip: QPointF, rect: QRectF, marks: GaugeMarks, look: Look
) -> None:
    _paint_pointer(painter, tip, look, filled=True)
    font, air = look.font(Use.BODY_STRONG), look.u(3.6, 2.8)
    words = _typed_words(marks)
    base = tip.y() - look.u(1.4, 1)
    fits = tip.x() + air + advance(font, words) <= rect.right()
    place = QPointF(tip.x() + air if fits else tip.x() - air, base)
    set_line(painter, place, words, font, look.colour("ink"), align=LEFT if fits else RIGHT)


def _typed_words(marks: GaugeMarks) -> str:
    return tr("{mass} typed", mass=number(in_use().mass(marks.typed_g or 0.0), 3))


def _paint_pointer(painter: QPainter, tip: QPointF, look: Look, *, filled: bool) -> None:
    half, high = look.u(2.8, 2.1), look.u(5, 3.8)
    corners = [
        QPointF(tip.x() - half, tip.y() - high),
        QPointF(tip.x() + half, tip.y() - high),
        tip,
    ]
    painter.setPen(QPen(look.colour("ink"), 2.0))
    painter.setBrush(look.colour("ink" if filled else "sheet"))
    painter.drawPolygon(QPolygonF(corners))


def _paint_way(
    painter: QPainter, ends: tuple[float, float], axis: float, marks: GaugeMarks, look: Look
) -> None:
    """Dashes from the typed figure to the guess with the slip on them, where there is room."""
    font, air = look.font(Use.TABLE), look.u(3, 2.2)
    label = look.u(3.6, 2.8) + advance(look.font(Use.BODY_STRONG), _typed_words(marks))
    words = advance(font, marks.how)
    begin, end = ends[0] + label + air, ends[1] - look.u(5, 3.8)
    if end - begin < words + 6 * air:
        return
    base = axis - look.u(2.8, 2.1)
    middle = (begin + end) / 2
    pen = QPen(look.colour("line"), 1.6)
    pen.setDashPattern([4, 3])
    painter.setPen(pen)
    for left, right in ((begin, middle - words / 2 - air), (middle + words / 2 + air, end)):
        painter.drawLine(QLineF(left, base, right, base))
    place = QPointF(middle, base + look.u(1.4, 1.1))
    set_line(painter, place, marks.how, font, look.colour("ink2"), align=CENTRE)
    head = look.u(1.6, 1.2)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(look.colour("line"))
    corners = [
        QPointF(end, base - head),
        QPointF(end + 2 * head, base),
        QPointF(end, base + head),
    ]
    painter.drawPolygon(QPolygonF(corners))
