"""The forecast on the growth curve: a fan from her last weight to the weight asked about.

Between the two only the limits are known. The edges bend as the expected curve does and end
at the limits; beyond them nothing is drawn.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainterPath, QPolygonF

from keeper.desktop.type import Use
from keeper.desktop.widgets.growth_plot import WeightScale
from keeper.desktop.widgets.lettering import RIGHT
from keeper.desktop.widgets.life_canvas import Canvas
from keeper.language import tr
from keeper.reports.figures import day, grams

if TYPE_CHECKING:
    from keeper.actions.forecasting import WeightForecast

_STEPS = 24
_DASHES, _DOTS = Qt.PenStyle.CustomDashLine, Qt.PenStyle.DotLine
_NO_BRUSH = Qt.BrushStyle.NoBrush


@dataclass(frozen=True, slots=True, kw_only=True)
class Fan:
    """From *start_g* on *start* to *target_g*; median is how the expected weight grows."""

    start: date
    start_g: float
    target_g: float
    median: Callable[[date], float | None]

    def path_to(self, end: date) -> list[tuple[date, float]]:
        """Days and grams on the way to the target on *end*."""
        days = max(1, (end - self.start).days)
        at = [self.start + timedelta(days=round(n * days / _STEPS)) for n in range(_STEPS + 1)]
        climb = math.log(self.target_g / self.start_g)
        return [(one, self.start_g * math.exp(climb * self._share(one, end))) for one in at]

    def _share(self, one: date, end: date) -> float:
        """How much of the climb is done by *one*: as the median does, else evenly."""
        begun, now, done = (self.median(at) for at in (self.start, one, end))
        if begun and now and done and done > begun * 1.02:
            return math.log(now / begun) / math.log(done / begun)
        return (one - self.start).days / max(1, (end - self.start).days)


def paint_forecast(canvas: Canvas, fan: Fan, told: WeightForecast, scale: WeightScale) -> None:
    """Fan, target, date bar and the date in words."""
    if told.on is None or told.low is None:
        return
    last = told.high or canvas.axis.last + timedelta(days=1)
    _paint_fan(canvas, fan, told, scale, last)
    plot, y = canvas.layout.plot, scale.y(told.target_g)
    canvas.line("point", 1.8, max(canvas.today_x, plot.left()), y, canvas.axis.x(last), y)
    bar = _paint_bar(canvas, told, y)
    middle = QPointF(canvas.axis.x(told.on), y)
    canvas.painter.setPen(canvas.pen("point", 2.2))
    canvas.painter.setBrush(canvas.look.colour("ground"))
    canvas.painter.drawEllipse(middle, canvas.look.u(1.4, 1.1), canvas.look.u(1.4, 1.1))
    _paint_words(canvas, told, bar)


def forecast_words(told: WeightForecast) -> tuple[str, ...]:
    """The date in words, then its limits."""
    if told.on is None or told.low is None:
        return ()
    first = day(told.low, on=told.high)
    if told.high:
        limits = tr("8 in 10: {first} to {last}", first=first, last=day(told.high))
    else:
        limits = tr("8 in 10: {first} or later, no latest day can be told", first=first)
    head = tr("{weight} about {day}", weight=grams(told.target_g), day=day(told.on))
    return (head, limits) + ((tr("dark bar: 5 in 10"),) if told.half_low else ())


def _paint_fan(
    canvas: Canvas, fan: Fan, told: WeightForecast, scale: WeightScale, last: date
) -> None:
    """8 in 10 outlined, 5 in 10 dotted, the median a stroke."""
    assert told.on is not None and told.low is not None
    painter = canvas.painter
    outer = _area(canvas, fan, scale, told.low, last)
    painter.fillPath(outer, canvas.look.colour("sheet"))
    painter.strokePath(outer, canvas.pen("point", 1.6))
    if told.half_low is not None:
        for end in (told.half_low, told.half_high or last):
            path = _curve(canvas, fan.path_to(end), scale)
            painter.strokePath(path, canvas.pen("point", 1.1, _DOTS))
    painter.strokePath(_curve(canvas, fan.path_to(told.on), scale), canvas.pen("point", 2.6))


def _area(canvas: Canvas, fan: Fan, scale: WeightScale, low: date, high: date) -> QPainterPath:
    path = _curve(canvas, fan.path_to(low), scale)
    path.connectPath(_curve(canvas, fan.path_to(high), scale).toReversed())
    path.closeSubpath()
    return path


def _curve(
    canvas: Canvas, points: Sequence[tuple[date, float]], scale: WeightScale
) -> QPainterPath:
    path = QPainterPath()
    path.addPolygon(QPolygonF([QPointF(canvas.axis.x(at), scale.y(g)) for at, g in points]))
    return path


def _paint_bar(canvas: Canvas, told: WeightForecast, top: float) -> QRectF:
    """The limits on the base line: 8 in 10 outlined, 5 in 10 dark, lines up to the target."""
    assert told.on is not None and told.low is not None
    axis, look, bottom = canvas.axis, canvas.look, canvas.layout.plot.bottom()
    high = look.u(1.7, 1.4)
    end = axis.right + look.u(4)  # what lies beyond the axis is cut off there, without an end
    left, right = axis.x(told.low), min(axis.x(told.high), end) if told.high else end
    bar = QRectF(left, bottom - high, right - left, high)
    canvas.painter.fillRect(bar, look.colour("sheet"))
    if told.half_low is not None:
        half = min(axis.x(told.half_high), end) if told.half_high else end
        dark = QRectF(axis.x(told.half_low), bar.top(), half - axis.x(told.half_low), high)
        canvas.painter.fillRect(dark, look.colour("point"))
    canvas.painter.setPen(canvas.pen("point", 1.6))
    canvas.painter.setBrush(_NO_BRUSH)
    canvas.painter.drawRect(bar)
    for x, width in ((left, 1.3), (axis.x(told.on), 2.0), (right, 1.3)):
        canvas.painter.setPen(canvas.pen("point", width, _DASHES))
        canvas.painter.drawLine(QLineF(x, top, x, bar.top()))
    return bar


def words_end(plot: QRectF, beside: float, widest: float, margin: float) -> float:
    """Where words end: *beside* the bar, but within the plot where the bar lies beyond it."""
    return min(max(beside, plot.left() + widest + margin), plot.right() - margin)


def _paint_words(canvas: Canvas, told: WeightForecast, bar: QRectF) -> None:
    """At the left of the bar, on the ground: the curve is high above it on a ratio scale."""
    look, words = canvas.look, forecast_words(told)
    uses = (Use.PAGE_HEAD, Use.TABLE_STRONG, Use.TABLE)
    steps = (0.0, look.u(5, 4.3), look.u(5, 4.2))
    widest = max(canvas.wide(line, use) for line, use in zip(words, uses, strict=False))
    x = words_end(canvas.layout.plot, bar.left() - look.u(4, 2.5), widest, look.u(2))
    base = bar.top() - look.u(1.4, 1.2) - sum(steps[1 : len(words)])
    for line, use, step in zip(words, uses, steps, strict=False):
        base += step
        ink = "ink2" if use is Use.TABLE else "point"
        canvas.words(x, base, line, use=use, ink=ink, align=RIGHT, paper="ground")
