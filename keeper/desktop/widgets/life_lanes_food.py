"""The lanes of what was eaten and what was not: strokes of grams, crosses, triangles, holds."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence
from datetime import date, timedelta
from itertools import pairwise

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPolygonF

from keeper.actions.life import EATEN
from keeper.actions.life_lanes import Counting, HoldSpan, RefusalMark
from keeper.desktop.type import Use
from keeper.desktop.widgets.lettering import RIGHT, cap_height
from keeper.desktop.widgets.life_canvas import Canvas, Free
from keeper.desktop.widgets.patterns import FINE, Pattern, paint_pattern
from keeper.husbandry.events import Offer, Result
from keeper.language import tr, tr_noop
from keeper.reports.figures import GAP, mass, mass_unit
from keeper.reports.prey_words import prey_words
from keeper.reports.words import word
from keeper.reports.writing import in_use

_KEY = (tr_noop("counted"), tr_noop("excused"), tr_noop("regurgitated"), tr_noop("hold"))


def paint_meals(canvas: Canvas) -> None:
    """One stroke a meal, as high as its grams; the next one hollow."""
    lane, look = canvas.layout.meals, canvas.look
    canvas.lane(lane, tr("meals", sense="lane"), mass_unit(), top=True)
    meals = [
        offer
        for offer in canvas.page.life.offers
        if offer.result in EATEN and canvas.axis.shows(offer.happened.day)
    ]
    planned_g = sum(offer.grams for offer in canvas.page.plan.offer)
    most = max([planned_g, *(m.mass_g or 0.0 for m in meals)], default=0.0)
    if not meals and not planned_g:
        _paint_nothing(canvas, lane, tr("no meal in the book"))
        return
    scale = (lane.height() - look.u(3, 2)) / most if most else 0.0
    _paint_grams(canvas, lane, scale, most)
    wide, ink = min(look.u(1), max(1.2, 1.6 * canvas.axis.px_a_day)), look.colour("ink")
    for meal in meals:
        _paint_meal(canvas, lane, meal, wide, scale, ink)
    _paint_planned(canvas, lane, wide, planned_g * scale)


def paint_not_eaten(canvas: Canvas) -> None:
    """Crosses bold where they count and thin where excused, triangles, bars for holds."""
    lane = canvas.layout.not_eaten
    canvas.lane(lane, tr("not eaten"))
    free = Free(lane.left(), lane.right())
    holds = [s for s in canvas.page.lanes.holds if canvas.axis.shows(s.since, _end(canvas, s))]
    for span in holds:
        _paint_hold(canvas, lane, span, free)
    refusals = [r for r in canvas.page.lanes.refusals if canvas.axis.shows(r.day)]
    for mark in refusals:
        _paint_cross(canvas, lane, mark, free)
    for event in canvas.page.life.regurgitations:
        if canvas.axis.shows(event.happened.day):
            _paint_triangle(canvas, lane, canvas.axis.x(event.happened.day), free)
    _name_run(canvas, lane, refusals, free)
    for span in reversed(holds):
        _name_hold(canvas, lane, span, free)
    _paint_key(canvas, lane, free)


_STEPS = (0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500)


def _paint_grams(canvas: Canvas, lane: QRectF, scale: float, most: float) -> None:
    if not most:
        return
    unit = in_use().mass(1.0)
    step = next((s for s in _STEPS if most * unit / s < 3), 1000.0) / unit
    half = cap_height(canvas.look.font(Use.TABLE)) / 2
    for n in range(1, int(most / step) + 1):
        y = lane.bottom() - n * step * scale
        tick = canvas.look.u(1.2)
        canvas.line("line", 1.1, lane.left() - tick, y, lane.left(), y)
        canvas.words(lane.left() - 1.7 * tick, y + half, mass(n * step), align=RIGHT)


def _paint_meal(
    canvas: Canvas, lane: QRectF, meal: Offer, wide: float, scale: float, ink: QColor
) -> None:
    """A part taken is hollow above its half; a meal without grams is a stub."""
    x = canvas.axis.x(meal.happened.day)
    if meal.mass_g is None:
        high = canvas.look.u(1.6)
        rect = QRectF(x - wide / 2, lane.bottom() - high, wide, high)
        canvas.painter.fillRect(rect, canvas.look.colour("line"))
        return
    high = max(1.5, meal.mass_g * scale)
    rect = QRectF(x - wide / 2, lane.bottom() - high, wide, high)
    if meal.result is Result.PART:
        canvas.painter.setPen(canvas.pen("ink", 1.0))
        canvas.painter.drawRect(rect)
        rect = rect.adjusted(0, high / 2, 0, 0)
    canvas.painter.fillRect(rect, ink)


def _paint_planned(canvas: Canvas, lane: QRectF, wide: float, high: float) -> None:
    """The next offer, hollow at its day, with its prey in words."""
    plan = canvas.page.plan
    day = max(plan.due_on or canvas.page.today, canvas.page.today)
    if not plan.offer or not canvas.axis.shows(day):
        return
    x = canvas.axis.x(day) + wide
    rect = QRectF(x, lane.bottom() - high, max(3.0, 1.2 * wide), high)
    canvas.painter.setPen(canvas.pen("ink", 1.1))
    canvas.painter.setBrush(canvas.look.colour("sheet"))
    canvas.painter.drawRect(rect)
    canvas.painter.setBrush(Qt.BrushStyle.NoBrush)
    told = tr(" and ").join(f"{offer.count}{GAP}{prey_words(offer.prey)}" for offer in plan.offer)
    left = rect.right() + canvas.look.u(2.5, 1.8)
    room = canvas.axis.right - left
    words = tr("next: {offer}", offer=told)
    if canvas.wide(words) <= room:
        base = lane.bottom() - canvas.look.u(2.4, 1.6)
        canvas.words(left, base, words, room=room)


def _end(canvas: Canvas, span: HoldSpan) -> date:
    return (span.until or canvas.page.today) - timedelta(days=1 if span.until else 0)


def _paint_hold(canvas: Canvas, lane: QRectF, span: HoldSpan, free: Free) -> None:
    axis, high = canvas.axis, 0.42 * lane.height()
    left = max(axis.left, axis.x(span.since))
    right = min(axis.right, axis.x(span.until or canvas.page.today))
    rect = QRectF(left, lane.center().y() - high / 2, max(3.0, right - left), high)
    canvas.painter.fillRect(rect, canvas.look.colour("sheet"))
    paint_pattern(canvas.painter, rect, Pattern.UPRIGHT_BARS, canvas.look.colour("line"), FINE)
    canvas.painter.setPen(canvas.pen("ink2", 1.0))
    canvas.painter.drawRect(rect)
    free.take(rect.left(), rect.right())


def _paint_cross(canvas: Canvas, lane: QRectF, mark: RefusalMark, free: Free) -> None:
    x, y, arm = canvas.axis.x(mark.day), lane.center().y(), canvas.look.u(1.2, 0.95)
    _cross(canvas, x, y, arm, mark.counting is Counting.COUNTED)
    free.take(x - arm, x + arm)


def _cross(canvas: Canvas, x: float, y: float, arm: float, counted: bool) -> None:
    ink, width = ("ink", 2.8) if counted else ("ink2", 1.2)
    canvas.line(ink, width, x - arm, y - arm, x + arm, y + arm)
    canvas.line(ink, width, x - arm, y + arm, x + arm, y - arm)


def _paint_triangle(canvas: Canvas, lane: QRectF, x: float, free: Free) -> None:
    wide = canvas.look.u(1.6, 1.3)
    _triangle(canvas, x, lane.center().y(), wide)
    free.take(x - wide, x + wide)


def _triangle(canvas: Canvas, x: float, y: float, wide: float) -> None:
    corners = [QPointF(x - wide, y - wide), QPointF(x + wide, y - wide), QPointF(x, y + wide)]
    canvas.painter.setPen(canvas.pen("ink", 1.8))
    canvas.painter.setBrush(canvas.look.colour("sheet"))
    canvas.painter.drawPolygon(QPolygonF(corners))
    canvas.painter.setBrush(Qt.BrushStyle.NoBrush)


def _name_run(canvas: Canvas, lane: QRectF, refusals: Sequence[RefusalMark], free: Free) -> None:
    """Each run of refusals in numbers at its right, where there is room; the last one first."""
    ate = [o.happened.day for o in canvas.page.life.offers if o.result in EATEN]
    for run in reversed(_runs(refusals, ate)):
        counted = sum(mark.counting is Counting.COUNTED for mark in run)
        told = [tr("{count} counted", count=counted)] if counted else []
        if counted < len(run):
            told.append(tr("{count} excused", count=len(run) - counted))
        _name(canvas, lane, canvas.axis.x(run[-1].day), ", ".join(told), free)


def _runs(refusals: Sequence[RefusalMark], ate: Sequence[date]) -> list[list[RefusalMark]]:
    """Refusals without a meal between them."""
    runs, meals = [[mark] for mark in refusals[:1]], sorted(ate)
    for one, other in pairwise(refusals):
        if bisect_left(meals, one.day) < bisect_left(meals, other.day):
            runs.append([])
        runs[-1].append(other)
    return runs


def _name_hold(canvas: Canvas, lane: QRectF, span: HoldSpan, free: Free) -> None:
    right = min(canvas.axis.right, canvas.axis.x(span.until or canvas.page.today))
    days = ((span.until or canvas.page.today) - span.since).days
    told = tr("{kind}, no end", kind=word(span.kind))
    if span.until:
        told = tr("{kind}, {days}\u00a0d", kind=word(span.kind), days=days)
    _name(canvas, lane, right, told, free)


def _name(canvas: Canvas, lane: QRectF, x: float, words: str, free: Free) -> None:
    """*words* at the right of *x*, or not at all."""
    left = x + canvas.look.u(2.4, 2)
    if free.claim(left, left + canvas.wide(words) + canvas.look.u(1)):
        canvas.words(left, canvas.middle(lane), words)


def _paint_key(canvas: Canvas, lane: QRectF, free: Free) -> None:
    """What the marks mean, at the right end where nothing stands in the way."""
    names, look = _KEY, canvas.look
    mark, gap = look.u(4, 3.2), look.u(4, 2.6)
    wide = sum(mark + canvas.wide(tr(name)) + gap for name in names) - gap
    x = lane.right() - wide
    if x < canvas.today_x or not free.claim(x - gap, lane.right()):
        return
    base, y = canvas.middle(lane), lane.center().y()
    for name in names:
        if name == "regurgitated":
            _triangle(canvas, x + look.u(1.6, 1.3), y, look.u(1.5, 1.2))
        elif name == "hold":
            rect = QRectF(x, y - look.u(1.3, 1.1), look.u(3, 2.4), look.u(2.6, 2.2))
            paint_pattern(canvas.painter, rect, Pattern.UPRIGHT_BARS, look.colour("line"), FINE)
            canvas.painter.setPen(canvas.pen("ink2", 1.0))
            canvas.painter.drawRect(rect)
        else:
            _cross(canvas, x + look.u(1.5, 1.2), y, look.u(1.2, 0.95), name == "counted")
        canvas.words(x + mark, base, tr(name))
        x += mark + canvas.wide(tr(name)) + gap


def _paint_nothing(canvas: Canvas, lane: QRectF, words: str) -> None:
    canvas.words(lane.left() + canvas.look.u(3, 2), canvas.middle(lane), words, ink="ink3")
