"""The life strip: one time axis from hatching to today and what is forecast, lanes beneath it.

The picture is painted once for each page and view and kept; only the cursor moves over it.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from html import escape
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QLineF, QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QHelpEvent, QMouseEvent, QPainter, QPixmap, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QToolTip, QWidget

from keeper.actions.animal_page import AnimalPage
from keeper.actions.day_of_life import event_days
from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.growth_forecast import Fan, forecast_words, paint_forecast
from keeper.desktop.widgets.growth_plot import (
    WeightScale,
    basis_words,
    dot_at,
    paint_band,
    paint_outlines,
    paint_plot_key,
    paint_weight_grid,
    paint_weights,
    weight_scale,
)
from keeper.desktop.widgets.lettering import CENTRE, cap_height, set_line
from keeper.desktop.widgets.life_axis import TimeAxis
from keeper.desktop.widgets.life_canvas import (
    AXIS_LEFT_UNITS,
    AXIS_RIGHT_UNITS,
    Canvas,
    LifeLayout,
    life_layout,
)
from keeper.desktop.widgets.life_lanes_body import paint_breeding, paint_shed
from keeper.desktop.widgets.life_lanes_food import paint_meals, paint_not_eaten
from keeper.desktop.widgets.life_lanes_room import paint_heat, paint_place
from keeper.desktop.widgets.life_view import LifeView, view_of
from keeper.husbandry.animal import Sex
from keeper.reports.figures import day as day_words
from keeper.reports.words import because_text

if TYPE_CHECKING:
    from keeper.actions.forecasting import WeightForecast

_AHEAD_DAYS = (60, 330)
_AHEAD_SHARE = 0.06
_FORECAST_SHARE = 1.35  # of the age: a late limit must not squeeze the life that was lived


class LifeStrip(Drawn):
    """Shows a page; ``day_asked`` when a day of it is pressed."""

    day_asked = Signal(object)

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._page: AnimalPage | None = None
        self._forecast: WeightForecast | None = None
        self._waiting = False
        self._view: LifeView | None = None
        self._picture: QPixmap | None = None
        self._scale: WeightScale | None = None
        self._days: Sequence[date] = ()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        look.changed.connect(self._forget_picture)

    @property
    def view(self) -> LifeView:
        """What is in view; RuntimeError before a page is shown."""
        if self._view is None:
            raise RuntimeError("no life is shown yet")
        return self._view

    @property
    def days(self) -> Sequence[date]:
        """Days on which anything happened, in order."""
        return self._days

    def show_page(
        self, page: AnimalPage, forecast: WeightForecast | None = None, *, waiting: bool = False
    ) -> None:
        """Show a life; of the same animal the view and the cursor stay.

        waiting: a forecast is still being reckoned; one of the same animal stays till then.
        """
        same = self._page is not None and self._page.animal.animal == page.animal.animal
        if waiting and same:
            forecast = self._forecast
        self._page, self._forecast, self._days = page, forecast, event_days(page)
        self._waiting = waiting and forecast is None
        last = _life_last(page, forecast)
        if same and self._view is not None and self._view.life_first == page.first_day:
            self._view = self._view.reaching(last)
        else:
            self._view = view_of(page.first_day, last, page.today, page.today)
        self._forget_picture()
        self.tell(_in_words(page, forecast))

    def show_view(self, view: LifeView) -> None:
        """Move the cursor or zoom."""
        before, self._view = self._view, view
        if before is None or (before.first, before.last) != (view.first, view.last):
            self._forget_picture()
        self.update()

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(200), self.look.u(120, 90)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._forget_picture()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self._ask(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        self._ask(event)

    def event(self, event: QEvent) -> bool:
        if isinstance(event, QHelpEvent) and event.type() == QEvent.Type.ToolTip and self._page:
            words = day_words(self._axis().day_at(event.pos().x()))
            QToolTip.showText(event.globalPos(), escape(words), self)
            return True
        return super().event(event)

    def paint(self, painter: QPainter) -> None:
        if self._page is None or self._view is None:
            return
        if self._picture is None:
            self._picture = self._painted()
        painter.drawPixmap(QPointF(0, 0), self._picture)
        self._paint_cursor(painter, self._page, self._view)

    def _ask(self, event: QMouseEvent) -> None:
        if self._page is not None and event.buttons() & Qt.MouseButton.LeftButton:
            self.day_asked.emit(self._axis().day_at(event.position().x()))

    def _axis(self) -> TimeAxis:
        left, right = self.look.u(*AXIS_LEFT_UNITS), self.look.u(*AXIS_RIGHT_UNITS)
        view = self.view
        right_x = max(left + 10.0, self.width() - right)
        return TimeAxis(first=view.first, last=view.last, left=left, right=right_x)

    def _forget_picture(self) -> None:
        self._picture = None
        self.update()

    def _painted(self) -> QPixmap:
        assert self._page is not None
        ratio = self.devicePixelRatioF()
        picture = QPixmap(self.size() * ratio)
        picture.setDevicePixelRatio(ratio)
        picture.fill(self.look.colour("ground"))
        painter = QPainter(picture)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        layout = life_layout(self.width(), self.height(), self.look)
        canvas = Canvas(painter, self.look, self._axis(), layout, self._page)
        _paint_grid(canvas)
        self._scale = _paint_plot(canvas, self._forecast, self._waiting)
        paint_meals(canvas)
        paint_not_eaten(canvas)
        paint_shed(canvas)
        paint_heat(canvas)
        paint_place(canvas)
        paint_breeding(canvas, self._forecast.on if self._forecast else None)
        _paint_today(canvas, layout.meals.top(), layout.breeding.bottom())
        painter.end()
        return picture

    def _paint_cursor(self, painter: QPainter, page: AnimalPage, view: LifeView) -> None:
        """The flag on top with its day, a line through every lane, a ring round a weight."""
        look, axis = self.look, self._axis()
        layout: LifeLayout = life_layout(self.width(), self.height(), look)
        canvas = Canvas(painter, look, axis, layout, page)
        x = axis.x(view.cursor)
        canvas.line("point", 2.4, x, layout.flag.top(), x, layout.breeding.bottom())
        strong, words = look.font(Use.TABLE_STRONG), _flag_words(view)
        wide = max(look.u(21, 16), canvas.wide(words, Use.TABLE_STRONG) + look.u(4))
        left = min(max(x - wide / 2, 0.0), self.width() - wide)
        flag = QRectF(left, layout.flag.top(), wide, layout.flag.height())
        _name_today(canvas, flag)
        painter.fillRect(flag, look.colour("point"))
        base = flag.center().y() + cap_height(strong) / 2
        place = QPointF(flag.center().x(), base)
        set_line(painter, place, words, strong, look.colour("on_point"), align=CENTRE)
        on_day = [w for w in page.weighed if w.day == view.cursor]
        if on_day and self._scale is not None:
            painter.setPen(canvas.pen("point", 2.2))
            painter.drawEllipse(dot_at(canvas, on_day[-1], self._scale), look.u(2), look.u(2))


def _flag_words(view: LifeView) -> str:
    same_year = view.first.year == view.cursor.year == view.last.year or view.span_days <= 366
    return day_words(view.cursor, on=view.cursor if same_year else None)


def _life_last(page: AnimalPage, forecast: WeightForecast | None) -> date:
    """Where the axis ends: some way ahead, and past the forecast's limits."""
    age = max((page.today - page.first_day).days, 1)
    least, most = _AHEAD_DAYS
    ahead = _AHEAD_SHARE * age if page.target_g is None else 1.2 * age
    days = min(max(ahead, least), most)
    if forecast is not None and forecast.on is not None and not forecast.reached:
        air = max(7, 0.03 * age)
        end = ((forecast.high or forecast.on) - page.today).days + air
        needed = 1.15 * (forecast.on - page.today).days + air
        days = max(days, min(end, max(needed, _FORECAST_SHARE * age)))
    return page.today + timedelta(days=round(days))


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
    _paint_key(canvas, _ahead_words(forecast, waiting))
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
        return "the forecast is being reckoned"
    if forecast is None or forecast.on is not None:
        return ""
    return because_text(forecast.because[:1], forecast.animal.sex)


def _paint_key(canvas: Canvas, beyond: str) -> None:
    page = canvas.page
    growth = page.profile.growth
    curve = growth.get(page.animal.sex) or next(iter(growth.values()), None)
    if curve is None or page.animal.hatched_first is None:
        paint_plot_key(canvas, "no band: hatching day not known" if curve else "no band", beyond)
        return
    paint_plot_key(canvas, basis_words(page.animal.sex, page.basis), beyond)


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


def _name_today(canvas: Canvas, flag_of_cursor: QRectF) -> None:
    """In the row of the flag, unless the flag stands there."""
    axis, flag, look = canvas.axis, canvas.layout.flag, canvas.look
    if not axis.shows(canvas.page.today):
        return
    x = axis.x(canvas.page.today)
    canvas.painter.setPen(canvas.pen("ink", 1.6, Qt.PenStyle.DotLine))
    canvas.painter.drawLine(QLineF(x, flag.top() + look.u(1), x, canvas.layout.plot.top()))
    base = canvas.middle(flag, Use.TABLE_STRONG) + look.u(0.3)
    left, wide = x + look.u(1.2, 1), canvas.wide("today", Use.TABLE_STRONG)
    meets = left < flag_of_cursor.right() + look.u(1) and left + wide > flag_of_cursor.left()
    if not meets and left + wide < axis.right + look.u(*AXIS_RIGHT_UNITS):
        canvas.words(left, base, "today", use=Use.TABLE_STRONG, ink="ink")


def _in_words(page: AnimalPage, forecast: WeightForecast | None) -> str:
    """The picture as a whole, for a screen reader."""
    name = page.animal.name or page.animal.code
    lanes = page.lanes
    counts = (
        (len(page.weighed), "weighing", "weighings"),
        (len(page.life.meals), "meal", "meals"),
        (len(lanes.refusals), "refusal", "refusals"),
        (len(page.life.regurgitations), "regurgitation", "regurgitations"),
        (sum(cycle.shed is not None for cycle in lanes.sheds), "shed", "sheds"),
        (len(page.beside.stays), "place", "places"),
        (len(page.life.clutches), "clutch", "clutches"),
    )
    told = ", ".join(f"{n} {one if n == 1 else many}" for n, one, many in counts)
    ahead = "; ".join(forecast_words(forecast)) if forecast else ""
    since = f"life of {name} from {day_words(page.first_day)} to {day_words(page.today)}"
    return ". ".join(part for part in (f"{since}: {told}", ahead) if part)
