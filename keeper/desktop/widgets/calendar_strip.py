"""A calendar of months on one axis: its head, and what may stand on a row of it.

Forecast windows are outlined for 8 in 10 and dark for 5 in 10, with a stroke for the middle; a
square bracket is the day from which an age is reached. What lies beyond the last month is
told in words at the right.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.lettering import (
    CENTRE,
    advance,
    font_to_fit,
    middle_baseline,
    set_line,
)
from keeper.desktop.widgets.life_axis import TimeAxis
from keeper.language import tr
from keeper.reports.figures import day
from keeper.reports.writing import in_use

MONTHS_BACK, MONTHS_SHOWN = 1, 14
_LEAST_SHARE = 0.8  # of their size, to which words may shrink before they are cut


@dataclass(frozen=True, slots=True, kw_only=True)
class Window:
    """When something is expected: middle, 8 in 10 and 5 in 10. None: no such limit is known.

    on: None where the middle is no likelier than the rest; no stroke is drawn then.
    """

    on: date | None
    low: date
    high: date | None
    half_low: date
    half_high: date | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Marks:
    """What stands on one row. from_on: the age gate; at: a single day; unknown: a question mark.

    paired: days of pairings, and whether a lock was seen; laid: days of clutches; lettered: days
    that a letter stands for, which the legend explains.
    """

    window: Window | None = None
    from_on: date | None = None
    at: date | None = None
    unknown: bool = False
    paired: tuple[tuple[date, bool], ...] = ()
    laid: tuple[date, ...] = ()
    lettered: tuple[tuple[date, str], ...] = ()
    told: str = ""
    beneath: str = ""


def months_round(today: date, left: float, right: float) -> TimeAxis:
    """The axis from the month before *today* on, in whole months.

    >>> axis = months_round(date(2026, 11, 25), 0.0, 100.0)
    >>> axis.first, axis.last
    (datetime.date(2026, 10, 1), datetime.date(2027, 12, 1))
    """
    first = _month(today, -MONTHS_BACK)
    return TimeAxis(first=first, last=_month(first, MONTHS_SHOWN), left=left, right=right)


def paint_head(painter: QPainter, rect: QRectF, axis: TimeAxis, today: date, look: Look) -> None:
    """Months at the left of their line, years above them in bold, today above those."""
    plain, strong = look.font(Use.TABLE), look.font(Use.TABLE_STRONG)
    base = rect.bottom() - look.u(1.8, 1.2)
    year = 0
    for month in _months(axis):
        at = QPointF(axis.x(month) + look.u(1, 0.6), base)
        set_line(painter, at, in_use().months[month.month - 1], plain, look.colour("ink2"))
        if month.year != year:
            above = QPointF(at.x(), base - look.u(4.8, 4))
            set_line(painter, above, f"{month:%Y}", strong, look.colour("ink2"))
        year = month.year
    told = tr("today {day}", day=day(today, on=today))
    half = advance(strong, told) / 2
    middle = min(max(axis.x(today), axis.left + half), axis.right - half)
    top = QPointF(middle, base - look.u(9.6, 8))
    set_line(painter, top, told, strong, look.colour("ink"), align=CENTRE)


def paint_grid(painter: QPainter, rect: QRectF, axis: TimeAxis, today: date, look: Look) -> None:
    """The lines of the months through *rect*, and today in dots."""
    painter.setPen(QPen(look.colour("hair"), 1.0))
    for month in _months(axis):
        painter.drawLine(QLineF(axis.x(month), rect.top(), axis.x(month), rect.bottom()))
    pen = QPen(look.colour("ink"), 1.6, Qt.PenStyle.CustomDashLine, Qt.PenCapStyle.FlatCap)
    pen.setDashPattern([1.0, 1.5])
    painter.setPen(pen)
    painter.drawLine(QLineF(axis.x(today), rect.top(), axis.x(today), rect.bottom()))


def paint_marks(
    painter: QPainter,
    rect: QRectF,
    axis: TimeAxis,
    today: date,
    marks: Marks,
    paper: str,
    look: Look,
) -> None:
    """The marks of one row and its two lines of words, beside them where there is room."""
    high = look.u(4, 3.4)
    bar = QRectF(axis.left, rect.top() + look.u(2.6, 1.8), axis.right - axis.left, high)
    if marks.window is not None and marks.window.low <= axis.last:
        paint_window(painter, bar, axis, marks.window, look)
    if marks.from_on is not None and axis.shows(marks.from_on):
        paint_bracket(painter, QPointF(axis.x(marks.from_on), bar.center().y()), look)
    if marks.at is not None and axis.shows(marks.at):
        x = axis.x(marks.at)
        painter.setPen(QPen(look.colour("point"), 2.2))
        painter.drawLine(QLineF(x, bar.top() - 3, x, bar.bottom() + 3))
    for on, locked in marks.paired:
        if axis.shows(on):
            paint_ring(painter, QPointF(axis.x(on), bar.center().y()), look, filled=locked)
    for on in marks.laid:
        if axis.shows(on):
            paint_laid(painter, QPointF(axis.x(on), bar.center().y()), look)
    for on, letter in marks.lettered:
        if axis.shows(on):
            paint_letter(painter, QPointF(axis.x(on), bar.center().y()), letter, look)
    _paint_words(painter, rect, axis, today, marks, paper, look)


def paint_ring(painter: QPainter, middle: QPointF, look: Look, *, filled: bool) -> None:
    """The ring of a pairing, filled where a lock was seen."""
    painter.setPen(QPen(look.colour("ink"), 1.6))
    painter.setBrush(look.colour("ink" if filled else "sheet"))
    painter.drawEllipse(middle, look.u(1.3, 1), look.u(1.3, 1))
    painter.setBrush(Qt.BrushStyle.NoBrush)


def paint_laid(painter: QPainter, middle: QPointF, look: Look) -> None:
    """The triangle of a clutch."""
    wide, high = look.u(1.6, 1.3), look.u(1.6, 1.3)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(look.colour("ink"))
    corners = ((0.0, -high), (wide, high), (-wide, high))
    painter.drawPolygon([QPointF(middle.x() + x, middle.y() + y) for x, y in corners])
    painter.setBrush(Qt.BrushStyle.NoBrush)


def paint_letter(painter: QPainter, middle: QPointF, letter: str, look: Look) -> None:
    """A letter in a box, for a day on which something was or is to be done."""
    side = look.u(4, 3.4)
    box = QRectF(middle.x() - side / 2, middle.y() - side / 2, side, side)
    painter.fillRect(box, look.colour("sheet"))
    painter.setPen(QPen(look.colour("ink2"), 1.2))
    painter.drawRect(box)
    font = font_to_fit(look.font(Use.TABLE_STRONG), letter, 0.8 * side, 1.0)
    base = QPointF(middle.x(), middle_baseline(box, font))
    set_line(painter, base, letter, font, look.colour("ink"), align=CENTRE)


def paint_window(
    painter: QPainter, bar: QRectF, axis: TimeAxis, window: Window, look: Look
) -> None:
    """8 in 10 outlined, 5 in 10 solid, the middle a stroke; an end not known stays open."""
    left, right = max(axis.x(window.low), axis.left), _end(axis, window.high)
    wide = QRectF(left, bar.top(), max(3.0, right - left), bar.height())
    painter.fillRect(wide, look.colour("sheet"))
    half_left, half_right = max(axis.x(window.half_low), axis.left), _end(axis, window.half_high)
    half = QRectF(half_left, bar.top(), max(2.0, half_right - half_left), bar.height())
    painter.fillRect(half.intersected(wide), look.colour("point"))
    painter.setPen(QPen(look.colour("point"), 1.6))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    lines = [QLineF(wide.topLeft(), wide.topRight()), QLineF(wide.bottomLeft(), wide.bottomRight())]
    lines.append(QLineF(wide.topLeft(), wide.bottomLeft()))
    if window.high is not None and window.high <= axis.last:
        lines.append(QLineF(wide.topRight(), wide.bottomRight()))
    painter.drawLines(lines)
    if window.on is not None and axis.shows(window.on):
        x = axis.x(window.on)
        painter.setPen(QPen(look.colour("point"), 2.2))
        painter.drawLine(QLineF(x, bar.top() - 3, x, bar.bottom() + 3))


def paint_bracket(painter: QPainter, middle: QPointF, look: Look) -> None:
    """The square bracket of an age gate."""
    high, foot = look.u(2.9, 2.4), look.u(1.4, 1.1)
    x, y = middle.x(), middle.y()
    painter.setPen(QPen(look.colour("ink"), 2.4))
    painter.drawPolyline(
        [
            QPointF(x + foot, y - high),
            QPointF(x, y - high),
            QPointF(x, y + high),
            QPointF(x + foot, y + high),
        ]
    )


def _paint_words(
    painter: QPainter,
    rect: QRectF,
    axis: TimeAxis,
    today: date,
    marks: Marks,
    paper: str,
    look: Look,
) -> None:
    plain, strong = look.font(Use.TABLE), look.font(Use.PAGE_HEAD)
    question = advance(strong, "?") + look.u(2, 1.4) if marks.unknown else 0.0
    wide = max(advance(plain, marks.told) + question, advance(plain, marks.beneath))
    left, room = _room_for(axis, today, marks, wide, look.u(2.4, 1.6))
    wide = min(wide, room)
    first, second = rect.top() + look.u(5.6, 4.4), rect.top() + look.u(10.6, 8.6)
    box = QRectF(left - 3, rect.top() + 2, wide + 6, rect.height() - 4)
    painter.fillRect(box, look.colour(paper))
    if marks.unknown:
        set_line(painter, QPointF(left, first + 1), "?", strong, look.colour("ink"))
    for text, indent, base, ink in (
        (marks.told, question, first, "ink"),
        (marks.beneath, 0.0, second, "ink2"),
    ):
        font = font_to_fit(plain, text, wide - indent, _LEAST_SHARE * plain.pointSizeF())
        at = QPointF(left + indent, base)
        set_line(painter, at, text, font, look.colour(ink), room=wide - indent)


def _room_for(
    axis: TimeAxis, today: date, marks: Marks, wide: float, gap: float
) -> tuple[float, float]:
    """Where words *wide* begin and how much room they have.

    In the first free stretch behind the window, else before it, else over a window's open
    end, else cut to the widest stretch. Where no
    mark is in view, by today or, for what lies beyond the last month, flush right.
    """
    taken = _taken(axis, today, marks)
    whole = axis.right - axis.left
    flush = max(axis.left, axis.right - wide)
    if not taken:
        beyond = marks.window is not None or marks.from_on is not None or marks.at is not None
        return (flush if beyond else min(axis.x(today) + gap, flush)), whole
    free = _free(axis, taken, gap)
    fits = [(left, right) for left, right in free if right - left >= wide]
    behind = [slot for slot in fits if slot[0] > taken[0][0]]
    if behind:
        return behind[0][0], wide
    if fits:
        return fits[0][1] - wide, wide
    if marks.window is not None and _end(axis, marks.window.high) >= axis.right:
        shown = [on for on in (marks.window.on, marks.from_on) if on and axis.shows(on)]
        behind_all = max([taken[0][0], *(axis.x(on) for on in shown)]) + 3 * gap
        if behind_all + wide <= axis.right:
            return behind_all, wide
    left, right = max(free, key=lambda slot: slot[1] - slot[0])
    return left, right - left


def _free(
    axis: TimeAxis, taken: Sequence[tuple[float, float]], gap: float
) -> list[tuple[float, float]]:
    """The stretches between what is taken, *gap* away from it, in order."""
    lefts = [axis.left, *(right + gap for _, right in taken)]
    rights = [*(left - gap for left, _ in taken), axis.right]
    return list(zip(lefts, rights, strict=True))


def _taken(axis: TimeAxis, today: date, marks: Marks) -> list[tuple[float, float]]:
    """Where marks in view begin and end, in order, those that meet as one.

    What is past is one stretch up to *today* as soon as anything of it is in view.
    """
    found = []
    dated = (*marks.laid, *(on for on, _ in (*marks.paired, *marks.lettered)))
    if any(axis.shows(on) for on in dated if on <= today):
        found.append((axis.left, axis.x(today)))
    if marks.window is not None and marks.window.low <= axis.last:
        left = max(axis.x(marks.window.low), axis.left)
        found.append((left, max(left + 4, _end(axis, marks.window.high))))
    for on in (marks.from_on, marks.at, *(on for on in dated if on > today)):
        if on is not None and axis.shows(on):
            found.append((axis.x(on), axis.x(on) + 4))
    joined: list[tuple[float, float]] = []
    for left, right in sorted(found):
        if joined and left <= joined[-1][1]:
            joined[-1] = (joined[-1][0], max(joined[-1][1], right))
        else:
            joined.append((left, right))
    return joined


def _end(axis: TimeAxis, on: date | None) -> float:
    return axis.right if on is None else min(axis.x(on), axis.right)


def _month(on: date, further: int) -> date:
    months = on.year * 12 + on.month - 1 + further
    return date(months // 12, months % 12 + 1, 1)


def _months(axis: TimeAxis) -> list[date]:
    """Firsts of the months in view, the first of which begins it."""
    months = (_month(axis.first, n) for n in range(MONTHS_SHOWN))
    return [month for month in months if month < axis.last]
