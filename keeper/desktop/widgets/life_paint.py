"""A life painted whole: band, weights and forecast over the lanes, on any painter."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QPointF, QSizeF, Qt
from PySide6.QtGui import QPainter

from keeper.actions.animal_page import AnimalPage, BandPoint
from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.growth_forecast import Fan, paint_forecast
from keeper.desktop.widgets.growth_plot import (
    WeightScale,
    basis_words,
    dot_at,
    paint_band,
    paint_outlines,
    paint_plot_key,
    paint_weight_grid,
    paint_weights,
    plot_key_rect,
    weight_scale,
)
from keeper.desktop.widgets.lettering import cap_height
from keeper.desktop.widgets.life_axis import TimeAxis
from keeper.desktop.widgets.life_canvas import (
    AXIS_LEFT_UNITS,
    AXIS_RIGHT_UNITS,
    Canvas,
    life_layout,
)
from keeper.desktop.widgets.life_lanes_body import paint_breeding, paint_shed
from keeper.desktop.widgets.life_lanes_food import paint_meals, paint_not_eaten
from keeper.desktop.widgets.life_lanes_notes import paint_notes
from keeper.desktop.widgets.life_lanes_room import paint_heat, paint_place
from keeper.desktop.widgets.life_view import LifeView
from keeper.husbandry.animal import Sex
from keeper.language import tr
from keeper.reports.words import because_text

if TYPE_CHECKING:
    from keeper.actions.forecasting import WeightForecast


_PLACES = 60
Bands = Mapping[Sex, Sequence[BandPoint]]


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """What is painted. waiting: a forecast is still being reckoned."""

    page: AnimalPage
    forecast: WeightForecast | None = None
    waiting: bool = False


def life_axis(view: LifeView, width: float, look: Look) -> TimeAxis:
    """The axis of what is in view, on a strip of *width* px."""
    left, right = look.u(*AXIS_LEFT_UNITS), look.u(*AXIS_RIGHT_UNITS)
    right_x = max(left + 10.0, width - right)
    return TimeAxis(first=view.first, last=view.last, left=left, right=right_x)


def paint_life(
    painter: QPainter, look: Look, told: Told, view: LifeView, size: QSizeF
) -> WeightScale:
    """Paint all but the cursor; returns the scale that the weights stand on."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    layout = life_layout(size.width(), size.height(), look)
    canvas = Canvas(painter, look, life_axis(view, size.width(), look), layout, told.page)
    _paint_grid(canvas)
    scale = _paint_plot(canvas, told.forecast, told.waiting)
    paint_meals(canvas)
    paint_not_eaten(canvas)
    paint_shed(canvas)
    paint_heat(canvas)
    paint_place(canvas)
    paint_notes(canvas)
    paint_breeding(canvas, told.forecast.on if told.forecast else None)
    _paint_today(canvas, layout.meals.top(), layout.breeding.bottom())
    return scale


def _paint_grid(canvas: Canvas) -> None:
    """Lines of the months through every lane, their names and the years under the plot."""
    layout, axis, look = canvas.layout, canvas.axis, canvas.look
    pad = look.u(1, 0.8)
    label = look.u(13, 10)
    ticks = axis.ticks(label)
    months = layout.dates.top() + cap_height(look.font(Use.TABLE)) + look.u(1.8, 1)
    years = months + look.u(4.6, 3.7)
    end = -1.0
    for tick in ticks:
        x = axis.x(tick.day)
        canvas.line("hair", 1.0, x, layout.plot.top(), x, layout.plot.bottom())
        canvas.line("hair", 1.0, x, layout.meals.top(), x, layout.breeding.bottom())
        base = months if not tick.words else years
        if tick.words and x + canvas.wide(tick.words) < axis.right + look.u(6):
            canvas.words(x + pad, months, tick.words)
        wide = canvas.wide(tick.year, Use.TABLE_STRONG)
        if tick.year and x > end and x + wide < axis.right + look.u(8):
            canvas.words(x + pad, base, tick.year, use=Use.TABLE_STRONG, ink="ink")
            end = x + wide + 2 * pad


def _paint_plot(canvas: Canvas, forecast: WeightForecast | None, waiting: bool) -> WeightScale:
    """Band, weights and forecast; returns the scale that they stand on."""
    page, axis, plot = canvas.page, canvas.axis, canvas.layout.plot
    bands = page.bands(axis.first, axis.last)
    told = _told_in_view(axis, page, forecast)
    seen = [w.scale_g for w in page.weighed if axis.shows(w.day)]
    for points in bands.values():
        seen += [g for p in points for g in (p.expected.p3_g, p.expected.p97_g)]
    scale = weight_scale([*seen, told.target_g] if told else seen, plot)
    paint = paint_outlines if page.animal.sex is Sex.UNKNOWN else paint_band
    for sex, points in bands.items():
        if len(points) > 1:
            paint(canvas, sex, points, scale)
    paint_weight_grid(canvas, scale)
    _paint_today(canvas, plot.top(), plot.bottom())
    canvas.painter.save()
    air = canvas.look.u(1.4, 1.1)
    canvas.painter.setClipRect(plot.adjusted(-air, -1, air, 1))
    fan = _fan(page, told) if told else None
    if told and fan:
        paint_forecast(canvas, fan, told, scale)
    _paint_key(canvas, _ahead_words(forecast, waiting), bands, scale, fan is not None)
    paint_weights(canvas, page.weighed, scale)
    canvas.painter.restore()
    return scale


def _told_in_view(
    axis: TimeAxis, page: AnimalPage, forecast: WeightForecast | None
) -> WeightForecast | None:
    """The forecast, where it tells a day to come and days to come are in view."""
    if forecast is None or forecast.on is None or forecast.low is None or forecast.reached:
        return None
    return forecast if axis.last > page.today else None


def _ahead_words(forecast: WeightForecast | None, waiting: bool) -> str:
    """Why no fan is drawn, where none is."""
    if waiting:
        return tr("the forecast is being reckoned")
    if forecast is None or forecast.on is not None:
        return ""
    return because_text(forecast.because[:1], forecast.animal.sex)


def _paint_key(
    canvas: Canvas, beyond: str, bands: Bands, scale: WeightScale, forecast: bool
) -> None:
    """At the top left; folded, or at the bottom right, where the curve has risen into it.

    forecast: its date stands at the bottom.
    """
    basis = _basis(canvas)
    level, folded = (basis, beyond), (*basis.split(", ", 1), beyond)
    tried = [(level, False), (folded, False), *([] if forecast else [(level, True)])]
    rects = [(lines, plot_key_rect(canvas, lines, low=low)) for lines, low in tried]
    places = list(_drawn(canvas, bands, scale))
    paint_plot_key(canvas, *min(rects, key=lambda one: sum(map(one[1].contains, places))))


def _drawn(canvas: Canvas, bands: Bands, scale: WeightScale) -> Iterator[QPointF]:
    """Where band and weights lie, closely enough to keep words clear of them."""
    weighed = canvas.page.weighed
    for one in weighed[:: 1 + len(weighed) // _PLACES]:
        yield dot_at(canvas, one, scale)
    for points in bands.values():
        for point in points[:: 1 + len(points) // _PLACES]:
            x, told = canvas.axis.x(point.day), point.expected
            for grams in (told.p3_g, told.p50_g, told.p97_g):
                yield QPointF(x, scale.y(grams))


def _basis(canvas: Canvas) -> str:
    """Whose band it is, or why there is none."""
    page = canvas.page
    growth = page.profile.growth
    curve = growth.get(page.animal.sex) or next(iter(growth.values()), None)
    if curve is None or page.animal.hatched_first is None:
        return tr("no band: hatching day not known") if curve else tr("no band")
    return basis_words(page.animal.sex, page.basis)


def _fan(page: AnimalPage, forecast: WeightForecast) -> Fan | None:
    last = page.last_weighed(page.today)
    if last is None or last.empty_g is None or last.empty_g >= forecast.target_g:
        return None

    def median(day: date) -> float | None:
        expected = page.expected(day)
        return expected.m_g if expected else None

    return Fan(start=last.day, start_g=last.empty_g, target_g=forecast.target_g, median=median)


def _paint_today(canvas: Canvas, top: float, bottom: float) -> None:
    """Dotted ink from *top* to *bottom*."""
    if canvas.axis.shows(canvas.page.today):
        x = canvas.axis.x(canvas.page.today)
        canvas.painter.setPen(canvas.pen("ink", 1.6, Qt.PenStyle.DotLine))
        canvas.painter.drawLine(QLineF(x, top, x, bottom))
