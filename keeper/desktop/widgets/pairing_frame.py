"""What stands over and under the rows of the pairing calendar: months, and clutches by week."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from PySide6.QtCore import QLineF, QPointF, QRectF
from PySide6.QtGui import QPainter, QPen

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.lettering import (
    CENTRE,
    LEAST_PT,
    advance,
    cap_height,
    narrowed,
    set_line,
    wrapped,
)
from keeper.desktop.widgets.life_axis import TimeAxis
from keeper.desktop.widgets.pairing_row import Ground, paint_ground
from keeper.desktop.widgets.pairing_shape import CalendarColumns, mondays_in, months_in
from keeper.desktop.widgets.patterns import FINE, Pattern, paint_pattern
from keeper.language import tr
from keeper.reports.figures import day
from keeper.reports.writing import in_use

_WEEK = timedelta(days=7)


@dataclass(frozen=True, slots=True, kw_only=True)
class WeekFace:
    """Clutches in the incubator in the week of *monday*: for sure, and further ones that may be."""

    monday: date
    sure: int
    may: int


def head_height(look: Look) -> float:
    """Today, the months with their years, and the days of the Mondays."""
    return look.u(15.6, 12.6)


def foot_height(look: Look) -> float:
    return look.u(15, 12.4)


def paint_calendar_head(
    painter: QPainter, rect: QRectF, columns: CalendarColumns, ground: Ground, look: Look
) -> None:
    """Months at the left of their line, years before them in bold, Mondays where they fit."""
    axis, plain = columns.axis, look.font(Use.TABLE)
    lowest = rect.bottom() - look.u(1.6, 1.1)
    months = lowest - look.u(4.6, 3.9)
    _paint_months(painter, months, axis, look)
    _paint_mondays(painter, lowest, axis, look)
    above = months - look.u(4.8, 4)
    _paint_years(painter, above, axis, look, _paint_today(painter, above, axis, ground, look))
    at = QPointF(columns.place, lowest)
    room = columns.name_end - columns.place
    told = tr("tub, name, what comes next")
    set_line(painter, at, told, plain, look.colour("ink2"), room=room)
    painter.setPen(QPen(look.colour("line"), 1.2))
    y = rect.bottom() - 0.6
    painter.drawLine(QLineF(columns.place, y, rect.right(), y))


def _paint_today(
    painter: QPainter, base: float, axis: TimeAxis, ground: Ground, look: Look
) -> tuple[float, float]:
    """Over its line; from where to where it goes."""
    if not axis.shows(ground.today):
        return axis.left, axis.left
    told, strong = tr("today {day}", day=day(ground.today, on=ground.today)), Use.TABLE_STRONG
    half = advance(look.font(strong), told) / 2
    middle = min(max(axis.x(ground.today), axis.left + half), axis.right - half)
    at = QPointF(middle, base)
    set_line(painter, at, told, look.font(strong), look.colour("ink"), align=CENTRE)
    return middle - half, middle + half


def _paint_years(
    painter: QPainter, base: float, axis: TimeAxis, look: Look, taken: tuple[float, float]
) -> None:
    """Each over the first of its months at which it stands clear of today."""
    strong, air, named = look.font(Use.TABLE_STRONG), look.u(1.6, 1.2), 0
    for month in months_in(axis):
        left, told = axis.x(month) + look.u(1, 0.6), f"{month:%Y}"
        right = left + advance(strong, told)
        clear = right + air < taken[0] or left - air > taken[1]
        if month.year != named and clear and right <= axis.right:
            set_line(painter, QPointF(left, base), told, strong, look.colour("ink2"))
            named = month.year


def _paint_months(painter: QPainter, base: float, axis: TimeAxis, look: Look) -> None:
    """A month of which only days are in view is named where its name has room."""
    plain, starts = look.font(Use.TABLE), list(months_in(axis))
    ends = [*(axis.x(start) for start in starts[1:]), axis.right]
    for start, end in zip(starts, ends, strict=True):
        left, name = axis.x(start) + look.u(1, 0.6), in_use().months[start.month - 1]
        if left + advance(plain, name) <= end:
            set_line(painter, QPointF(left, base), name, plain, look.colour("ink2"))


def _paint_mondays(painter: QPainter, base: float, axis: TimeAxis, look: Look) -> None:
    """The day of the month of as many Mondays as stand clear of each other."""
    font = look.font(Use.TABLE)
    every_px = advance(font, "30") + look.u(2.4, 2)
    step = next((n for n in (1, 2, 4) if n * 7 * axis.px_a_day >= every_px), 0)
    for number, monday in enumerate(mondays_in(axis) if step else ()):
        if number % step == 0:
            at = QPointF(axis.x(monday) + look.u(0.6, 0.4), base)
            set_line(painter, at, str(monday.day), font, look.colour("ink3"))


def paint_calendar_foot(
    painter: QPainter,
    rect: QRectF,
    weeks: Sequence[WeekFace],
    columns: CalendarColumns,
    ground: Ground,
    look: Look,
) -> None:
    """A bar and its figure for each week: plain for sure, hatched for such as may lie there."""
    axis, plain = columns.axis, look.font(Use.TABLE)
    painter.setPen(QPen(look.colour("line"), 1.2))
    painter.drawLine(QLineF(columns.place, rect.top() + 0.6, rect.right(), rect.top() + 0.6))
    inside = rect.adjusted(0, look.u(1.2, 0.9), 0, -look.u(0.6, 0.4))
    paint_ground(painter, inside, axis, Ground(today=ground.today), look)
    shown = [week for week in weeks if axis.shows(week.monday) and week.monday < axis.last]
    most = max((week.sure + week.may for week in weeks), default=0)
    figures = cap_height(plain) + look.u(1.6, 1.2)
    before = 0
    for week in shown:
        left = axis.x(week.monday)
        box = QRectF(left, inside.top(), axis.x(week.monday + _WEEK) - left, inside.height())
        _paint_week(painter, box, week, most, figures, look)
        _paint_count(painter, box, week, most, figures, look, before)
        before = week.sure + week.may
    told = tr("clutches in the incubator: sure, and hatched such as may be")
    room = columns.name_end - columns.place
    for number, line in enumerate(list(wrapped(told, plain, room))[:3]):
        at = QPointF(columns.place, rect.top() + look.u(5, 4.2) + number * look.u(4.6, 3.9))
        fitted = narrowed(plain, line, room, LEAST_PT)
        set_line(painter, at, line, fitted, look.colour("ink2"), room=room)


def _paint_week(
    painter: QPainter, box: QRectF, week: WeekFace, most: int, figures: float, look: Look
) -> None:
    count = week.sure + week.may
    if not count:
        return
    one = (box.height() - figures) / max(1, most)
    air = 1.0 if box.width() > 6 else 0.5
    bar = box.adjusted(air, 0, -air, 0)
    sure = QRectF(bar.left(), bar.bottom() - week.sure * one, bar.width(), week.sure * one)
    may = QRectF(bar.left(), sure.top() - week.may * one, bar.width(), week.may * one)
    for part, pattern, mark in ((sure, Pattern.SOLID, "fill2"), (may, Pattern.HATCH, "ink")):
        if part.height() > 0:
            painter.fillRect(part, look.colour("sheet"))
            paint_pattern(painter, part, pattern, look.colour(mark), FINE)
            painter.setPen(QPen(look.colour("line"), 1.0))
            painter.drawRect(part)


def _paint_count(
    painter: QPainter,
    box: QRectF,
    week: WeekFace,
    most: int,
    figures: float,
    look: Look,
    before: int,
) -> None:
    """The figure over the bar; where figures would run together, only where it changes."""
    count, font = week.sure + week.may, look.font(Use.TABLE)
    clear = advance(font, str(count)) + look.u(1.2, 1) <= box.width()
    if count and (clear or count != before):
        top = box.bottom() - count * (box.height() - figures) / max(1, most)
        at = QPointF(box.center().x(), top - look.u(0.8, 0.6))
        set_line(painter, at, str(count), font, look.colour("ink"), align=CENTRE)
