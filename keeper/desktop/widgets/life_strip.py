"""The life strip: one time axis from hatching to today and what is forecast, lanes beneath it.

The picture is painted once for each page and view and kept; only the cursor moves over it.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from html import escape
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QLineF, QPointF, QRectF, QSizeF, Qt, Signal
from PySide6.QtGui import QHelpEvent, QMouseEvent, QPainter, QPixmap, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QToolTip, QWidget

from keeper.actions.animal_page import AnimalPage
from keeper.actions.day_of_life import event_days
from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.growth_forecast import forecast_words
from keeper.desktop.widgets.growth_plot import WeightScale, dot_at
from keeper.desktop.widgets.lettering import CENTRE, cap_height, set_line
from keeper.desktop.widgets.life_axis import TimeAxis
from keeper.desktop.widgets.life_canvas import (
    AXIS_RIGHT_UNITS,
    Canvas,
    LifeLayout,
    life_layout,
)
from keeper.desktop.widgets.life_paint import Told, life_axis, paint_life
from keeper.desktop.widgets.life_view import LifeView, view_of
from keeper.language import tr
from keeper.reports.figures import GAP, counted
from keeper.reports.figures import day as day_words

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
    def told(self) -> Told | None:
        """What is drawn, for whoever draws it elsewhere; None before a page is shown."""
        if self._page is None:
            return None
        return Told(page=self._page, forecast=self._forecast, waiting=self._waiting)

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
        return life_axis(self.view, self.width(), self.look)

    def _forget_picture(self) -> None:
        self._picture = None
        self.update()

    def _painted(self) -> QPixmap:
        told = self.told
        assert told is not None
        ratio = self.devicePixelRatioF()
        picture = QPixmap(self.size() * ratio)
        picture.setDevicePixelRatio(ratio)
        picture.fill(self.look.colour("ground"))
        painter = QPainter(picture)
        self._scale = paint_life(painter, self.look, told, self.view, QSizeF(self.size()))
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


def _name_today(canvas: Canvas, flag_of_cursor: QRectF) -> None:
    """In the row of the flag, unless the flag stands there."""
    axis, flag, look = canvas.axis, canvas.layout.flag, canvas.look
    if not axis.shows(canvas.page.today):
        return
    x = axis.x(canvas.page.today)
    canvas.painter.setPen(canvas.pen("ink", 1.6, Qt.PenStyle.DotLine))
    canvas.painter.drawLine(QLineF(x, flag.top() + look.u(1), x, canvas.layout.plot.top()))
    base = canvas.middle(flag, Use.TABLE_STRONG) + look.u(0.3)
    left, wide = x + look.u(1.2, 1), canvas.wide(tr("today"), Use.TABLE_STRONG)
    meets = left < flag_of_cursor.right() + look.u(1) and left + wide > flag_of_cursor.left()
    if not meets and left + wide < axis.right + look.u(*AXIS_RIGHT_UNITS):
        canvas.words(left, base, tr("today"), use=Use.TABLE_STRONG, ink="ink")


def _in_words(page: AnimalPage, forecast: WeightForecast | None) -> str:
    """The picture as a whole, for a screen reader."""
    name = page.animal.called
    lanes = page.lanes
    counts = (
        (len(page.weighed), counted("weighing", "weighings")),
        (len(page.life.meals), counted("meal", "meals")),
        (len(lanes.refusals), counted("refusal", "refusals")),
        (len(page.life.regurgitations), counted("regurgitation", "regurgitations")),
        (sum(cycle.shed is not None for cycle in lanes.sheds), counted("shed", "sheds")),
        (len(page.beside.stays), counted("place", "places")),
        (len(page.life.remarks), counted("note", "notes")),
        (len(page.life.pairings), counted("pairing", "pairings")),
        (len(page.life.clutches), counted("clutch", "clutches")),
    )
    told = ", ".join(tell(n).replace(GAP, " ") for n, tell in counts)
    ahead = "; ".join(forecast_words(forecast)) if forecast else ""
    life = tr(
        "life of {name} from {first} to {last}: {counts}",
        name=name,
        first=day_words(page.first_day),
        last=day_words(page.today),
        counts=told,
    )
    return ". ".join(part for part in (life, ahead) if part)
