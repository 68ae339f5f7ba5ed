"""Hot end readings of one place over some days, the wanted range behind them."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.degree_marks import degree_marks
from keeper.desktop.widgets.lettering import RIGHT, advance, cap_height, set_line
from keeper.desktop.widgets.life_axis import TimeAxis
from keeper.language import tr
from keeper.reports.figures import celsius, day, span

Height = Callable[[float], float]

_AIR_C = 1.0
_LABEL_SHARE = 0.2  # of the range, left free where the last reading is named


@dataclass(frozen=True, slots=True, kw_only=True)
class HeatDots:
    """words head the picture; readings are days and degrees Celsius, oldest first."""

    words: str
    first: date
    last: date
    readings: tuple[tuple[date, float], ...]
    low_c: float
    high_c: float

    @property
    def said(self) -> str:
        """The same in words: the wanted range, then each day."""
        wanted = span(celsius(self.low_c), celsius(self.high_c))
        told = "; ".join(f"{day(on, on=self.last)} {celsius(c)}" for on, c in self.readings)
        return tr("{head}, wanted {span}: {readings}", head=self.words, span=wanted, readings=told)


def paint_heat(painter: QPainter, rect: QRectF, heat: HeatDots, look: Look) -> None:
    """Paint *heat* in *rect*: head, scale at the left, days beneath, dots; the last is named."""
    plain, strong = look.font(Use.TABLE), look.font(Use.TABLE_STRONG)
    head = QPointF(rect.left(), rect.top() + look.u(3.6, 3))
    set_line(painter, head, heat.words, strong, look.colour("ink2"), room=rect.width())
    left = rect.left() + advance(plain, "30") + look.u(2)
    plot = QRectF(left, rect.top() + look.u(7, 5.5), rect.right() - left - look.u(2), 0)
    plot.setBottom(rect.bottom() - look.u(6, 5))
    axis = TimeAxis(first=heat.first, last=heat.last, left=plot.left(), right=plot.right())
    low_c, high_c = _scale(heat)
    down = plot.height() / (high_c - low_c)

    def y(temp_c: float) -> float:
        return plot.bottom() - (temp_c - low_c) * down

    band = QRectF(plot.left(), y(heat.high_c), plot.width(), y(heat.low_c) - y(heat.high_c))
    painter.fillRect(band, look.colour("band2"))
    _paint_scale(painter, plot, y, (low_c, high_c), look)
    _paint_days(painter, plot, axis, look)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(look.colour("ink"))
    for on, temp_c in heat.readings:
        painter.drawEllipse(QPointF(axis.x(on), y(temp_c)), look.u(1.1, 0.9), look.u(1.1, 0.9))
    _paint_last(painter, plot, axis, y, heat, look)


def _scale(heat: HeatDots) -> tuple[float, float]:
    every = [heat.low_c, heat.high_c, *(temp_c for _, temp_c in heat.readings)]
    low_c, high_c = min(every) - _AIR_C, max(every) + _AIR_C
    share = _LABEL_SHARE * (high_c - low_c)
    last_c = heat.readings[-1][1] if heat.readings else heat.low_c
    below, above = last_c < heat.low_c, last_c > heat.high_c
    return math.floor(low_c - below * share), math.ceil(high_c + above * share)


def _paint_scale(
    painter: QPainter, plot: QRectF, y: Height, ends: tuple[float, float], look: Look
) -> None:
    low_c, high_c = ends
    plain = look.font(Use.TABLE)
    for temp_c, words in degree_marks(low_c, high_c, plot.height() / look.u(7, 6)):
        painter.setPen(QPen(look.colour("hair"), 1.0))
        painter.drawLine(QLineF(plot.left(), y(temp_c), plot.right(), y(temp_c)))
        place = QPointF(plot.left() - look.u(1.2), y(temp_c) + cap_height(plain) / 2)
        set_line(painter, place, words, plain, look.colour("ink2"), align=RIGHT)


def _paint_days(painter: QPainter, plot: QRectF, axis: TimeAxis, look: Look) -> None:
    plain = look.font(Use.TABLE)
    painter.setPen(QPen(look.colour("line"), 1.1))
    painter.drawLine(QLineF(plot.left(), plot.bottom(), plot.right(), plot.bottom()))
    for tick in axis.ticks(advance(plain, "29 Nov") + look.u(2)):
        x = axis.x(tick.day)
        painter.drawLine(QLineF(x, plot.bottom(), x, plot.bottom() + 3))
        wide = advance(plain, tick.words)
        at = min(max(x - wide / 2, plot.left()), plot.right() + look.u(2) - wide)
        place = QPointF(at, plot.bottom() + look.u(5, 4.2))
        set_line(painter, place, tick.words, plain, look.colour("ink2"))


def _paint_last(
    painter: QPainter, plot: QRectF, axis: TimeAxis, y: Height, heat: HeatDots, look: Look
) -> None:
    """The last reading named beside its dot, where it lies out of the wanted range."""
    if not heat.readings:
        return
    on, temp_c = heat.readings[-1]
    if heat.low_c <= temp_c <= heat.high_c:
        return
    strong = look.font(Use.TABLE_STRONG)
    below = temp_c < heat.low_c
    base = y(temp_c) + look.u(6, 5) if below else y(temp_c) - look.u(2.6, 2)
    place = QPointF(min(axis.x(on) + look.u(1), plot.right() + look.u(2)), base)
    set_line(painter, place, celsius(temp_c), strong, look.colour("ink"), align=RIGHT)
