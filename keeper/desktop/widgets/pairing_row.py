"""One female on the pairing calendar: who, what comes next, and her bars and marks by day.

Three lines of marks: males with her; eggs to come, eggs that lie, young; gates and recovery. A
cooled rest shades the whole row, and the keeper's absences all rows.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.calendar_strip import (
    Window,
    paint_bracket,
    paint_laid,
    paint_letter,
    paint_ring,
    paint_window,
)
from keeper.desktop.widgets.lettering import (
    LEAST_PT,
    advance,
    cap_height,
    narrowed,
    set_line,
    wrapped,
)
from keeper.desktop.widgets.life_axis import TimeAxis
from keeper.desktop.widgets.pairing_marks import (
    Bar,
    Kind,
    paint_away,
    paint_bar,
    paint_earlier,
    paint_lasting,
    paint_out,
)
from keeper.desktop.widgets.pairing_shape import CalendarColumns, mondays_in, months_in

_DAY = timedelta(days=1)
_PAPERS = {False: "ground", True: "sheet"}
_MALES, _EGGS, _GATES = 0.15, 0.45, 0.78  # where the middles of the three lines lie
_HALF_HIGH = {Kind.TOGETHER: 0.11, Kind.RECOVERING: 0.11}
_EGGS_HALF_HIGH = 0.14
_WEEK_PX = 16.0
"""From so many px a week on, weeks are ruled too."""


@dataclass(frozen=True, slots=True, kw_only=True)
class CalendarFace:
    """rings: days of pairings, and whether a lock was seen; signs: days with their letter.

    males: first and last day with each, and his name, in order.
    laid, out: days of clutches and of first young; window, from_on: the day of her weight, and
    that from which she is old enough; said: all of it in words.
    """

    place: str
    name: str
    aside: str
    bars: tuple[Bar, ...] = ()
    rings: tuple[tuple[date, bool], ...] = ()
    males: tuple[tuple[date, date, str], ...] = ()
    signs: tuple[tuple[date, str], ...] = ()
    laid: tuple[date, ...] = ()
    out: tuple[date, ...] = ()
    window: Window | None = None
    from_on: date | None = None
    said: str = ""

    def __hash__(self) -> int:
        """By what is told: rows are looked up at every paint, and words keep their hash."""
        return hash((self.name, self.said))


@dataclass(frozen=True, slots=True, kw_only=True)
class Ground:
    """What lies beneath every row alike: today, and first and last days of absences."""

    today: date
    away: tuple[tuple[date, date], ...] = ()


def paint_row(
    painter: QPainter,
    rect: QRectF,
    face: CalendarFace,
    columns: CalendarColumns,
    ground: Ground,
    look: Look,
    *,
    here: bool = False,
) -> None:
    """Paint *face* in *rect*; *here* is the chosen one, on a sheet with a pointer before it."""
    axis = columns.axis
    painter.fillRect(rect, look.colour(_PAPERS[here]))
    paint_ground(painter, rect, axis, ground, look)
    for bar in face.bars:
        if bar.kind is Kind.COOLED:
            _paint_span(painter, rect.adjusted(0, 1, 0, -1), bar, axis, look)
    _paint_who(painter, rect, columns, face, look)
    painter.save()
    clip = QRectF(axis.left, rect.top(), axis.right - axis.left, rect.height())
    painter.setClipRect(clip, Qt.ClipOperation.IntersectClip)
    _paint_bars(painter, rect, face.bars, axis, look)
    _paint_males(painter, rect, face.males, axis, look, _PAPERS[here])
    _paint_marks(painter, rect, face, axis, look)
    painter.restore()
    painter.setPen(QPen(look.colour("hair"), 1.0))
    y = rect.bottom() - 0.5
    painter.drawLine(QLineF(columns.place, y, rect.right(), y))
    if here:
        pointer = QRectF(rect.left(), rect.top(), look.u(1.2, 0.8), rect.height())
        painter.fillRect(pointer, look.colour("point"))


def paint_ground(
    painter: QPainter, rect: QRectF, axis: TimeAxis, ground: Ground, look: Look
) -> None:
    """Absences, the lines of the months and, where they have room, of the weeks, and today."""
    ruled = mondays_in(axis) if 7 * axis.px_a_day >= _WEEK_PX else list(months_in(axis))
    painter.setPen(QPen(look.colour("hair"), 1.0))
    painter.drawLines([QLineF(axis.x(d), rect.top(), axis.x(d), rect.bottom()) for d in ruled])
    for first, last in ground.away:
        if axis.shows(first, last):
            paint_away(painter, _across(rect, axis, first, last + _DAY), look)
    if axis.shows(ground.today):
        pen = QPen(look.colour("ink"), 1.6, Qt.PenStyle.CustomDashLine, Qt.PenCapStyle.FlatCap)
        pen.setDashPattern([1.0, 1.5])
        painter.setPen(pen)
        x = axis.x(ground.today)
        painter.drawLine(QLineF(x, rect.top(), x, rect.bottom()))


def _across(rect: QRectF, axis: TimeAxis, first: date, last: date) -> QRectF:
    left, right = max(axis.x(first), axis.left), min(axis.x(last), axis.right)
    return QRectF(left, rect.top(), max(0.0, right - left), rect.height())


def _line(rect: QRectF, middle: float, half_high: float) -> QRectF:
    high = rect.height()
    return QRectF(
        rect.left(), rect.top() + (middle - half_high) * high, rect.width(), 2 * half_high * high
    )


def _line_of(rect: QRectF, kind: Kind) -> QRectF:
    middle = {Kind.TOGETHER: _MALES, Kind.RECOVERING: _GATES}.get(kind, _EGGS)
    return _line(rect, middle, _HALF_HIGH.get(kind, _EGGS_HALF_HIGH))


def _paint_span(painter: QPainter, line: QRectF, bar: Bar, axis: TimeAxis, look: Look) -> None:
    """A bar on its line, cut at the ends of what is in view."""
    last = axis.last if bar.last is None else bar.last + _DAY
    if not axis.shows(bar.first, last):
        return
    room = _across(line, axis, bar.first, last)
    room.setWidth(max(room.width(), 3.0))
    open_end = bar.last is None
    if bar.rank:
        paint_earlier(painter, room, bar.rank, look, open_end=open_end)
    else:
        ends = open_end or bar.lasting
        paint_bar(painter, room, bar.kind, look, open_end=ends, asked=open_end)
    if bar.lasting:
        beyond = look.u(3, 2.4)
        paint_lasting(painter, QRectF(room.right(), room.top(), beyond, room.height()), look)


def _paint_bars(
    painter: QPainter, rect: QRectF, bars: Sequence[Bar], axis: TimeAxis, look: Look
) -> None:
    """The oldest signs first, so that what counts lies over what it replaced."""
    for bar in sorted(bars, key=lambda each: -each.rank):
        if bar.kind is not Kind.COOLED:
            _paint_span(painter, _line_of(rect, bar.kind), bar, axis, look)


def _paint_marks(
    painter: QPainter, rect: QRectF, face: CalendarFace, axis: TimeAxis, look: Look
) -> None:
    high = rect.height()
    males, eggs = rect.top() + _MALES * high, rect.top() + _EGGS * high
    gates = rect.top() + _GATES * high
    if face.window is not None and axis.shows(face.window.low, face.window.high or axis.last):
        paint_window(painter, _line(rect, _GATES, 0.1), axis, face.window, look)
    if face.from_on is not None and axis.shows(face.from_on):
        paint_bracket(painter, QPointF(axis.x(face.from_on), gates), look)
    for on, letter in face.signs:
        if axis.shows(on):
            paint_letter(painter, QPointF(axis.x(on), eggs), letter, look)
    for on in face.out:
        if axis.shows(on):
            paint_out(painter, QPointF(axis.x(on), eggs), look)
    for on in face.laid:
        if axis.shows(on):
            paint_laid(painter, QPointF(axis.x(on), eggs), look)
    for on, locked in face.rings:
        if axis.shows(on):
            paint_ring(painter, QPointF(axis.x(on), males), look, filled=locked)


def _paint_males(
    painter: QPainter,
    rect: QRectF,
    males: Sequence[tuple[date, date, str]],
    axis: TimeAxis,
    look: Look,
    paper: str,
) -> None:
    """The name of each behind his last day with her, where it ends before the next one begins."""
    font, air = look.font(Use.TABLE), look.u(2.4, 1.9)
    line = _line(rect, _MALES, _HALF_HIGH[Kind.TOGETHER])
    base = line.center().y() + cap_height(font) / 2
    nexts = [*((axis.x(first), name) for first, _, name in males[1:]), (axis.right, "")]
    for (_, last, name), (end, next_name) in zip(males, nexts, strict=False):
        left = axis.x(last + _DAY) + air
        wide = advance(font, name)
        has_room = left + wide + air <= end or not next_name
        if axis.shows(last) and name != next_name and has_room:
            painter.fillRect(
                QRectF(left - 1, line.top(), wide + 2, line.height()), look.colour(paper)
            )
            set_line(painter, QPointF(left, base), name, font, look.colour("ink2"))


def _paint_who(
    painter: QPainter, rect: QRectF, columns: CalendarColumns, face: CalendarFace, look: Look
) -> None:
    """Place and name, and beneath them in two lines what comes next."""
    top, plain = rect.top(), look.font(Use.TABLE)
    first = top + look.u(5, 4.1)
    wide = columns.name - columns.place
    strong = look.font(Use.TABLE_STRONG)
    at = QPointF(columns.place, first)
    set_line(painter, at, face.place, strong, look.colour("ink"), room=wide)
    name, room = look.font(Use.BODY_STRONG), columns.name_end - columns.name
    at = QPointF(columns.name, first)
    set_line(painter, at, face.name, name, look.colour("ink"), room=room)
    room = columns.name_end - columns.place
    lines = list(wrapped(face.aside, plain, room))
    if len(lines) > 2:
        lines[1:] = [" ".join(lines[1:])]
    for number, line in enumerate(lines):
        base = QPointF(columns.place, top + look.u(9.9, 8.2) + number * look.u(4.6, 3.9))
        font = narrowed(plain, line, room, LEAST_PT)
        set_line(painter, base, line, font, look.colour("ink2"), room=room)
