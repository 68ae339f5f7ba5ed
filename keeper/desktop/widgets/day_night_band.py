"""The day-night band: two weeks' middle and 5 to 95 % over 24 hours, and today over it."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import timedelta

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPainterPath, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from keeper.actions.heat_band import BAND_DAYS, STEPS, BandStep, DayBand, Point
from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.degree_marks import degree_marks
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.kept_picture import KeptPicture
from keeper.desktop.widgets.lettering import (
    CENTRE,
    LEFT,
    RIGHT,
    advance,
    cap_height,
    font_to_fit,
    set_line,
)
from keeper.language import tr
from keeper.reports.figures import celsius, day, degrees, span

_GAP_HOURS = 1.0
_LEAST_PT = 8.0
_MARKS = 6
_STEP_HOURS = 24 / STEPS

_NOT_READ = tr("not read in two weeks")


@dataclass(frozen=True, slots=True, kw_only=True)
class Limit:
    """A line across the picture and its words."""

    temp_c: float
    words: str


@dataclass(frozen=True, slots=True, kw_only=True)
class BandFace:
    """What is drawn. wanted: low and high, None where nothing is wanted."""

    title: str
    band: DayBand
    wanted: tuple[float, float] | None
    limits: tuple[Limit, ...]


class DayNightBand(Drawn):
    """x: 24 hours; y: degrees Celsius. Beneath, the days with their feed nights marked."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._face: BandFace | None = None
        self._low_c, self._high_c = 20.0, 35.0
        self._plot = QRectF()
        self._kept = KeptPicture()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def show_band(self, face: BandFace) -> None:
        self._face = face
        self._low_c, self._high_c = _scale(face)
        self.tell(band_words(face))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(120, 80), self.look.u(60, 40)

    def paint(self, painter: QPainter) -> None:
        if (face := self._face) is not None:
            self._kept.lay(
                painter, self.size(), self.look, face, lambda p: self._draw(p, face), "ground"
            )

    def _draw(self, painter: QPainter, face: BandFace) -> None:
        look = self.look
        strong = look.font(Use.TABLE_STRONG)
        head = QPointF(look.u(3, 2), look.u(4, 3.4))
        set_line(painter, head, face.title, strong, look.colour("ink"), room=self.width())
        self._plot = self._plot_rect(face.limits)
        self._paint_wanted(painter, face)
        self._paint_grid(painter)
        if face.band.has_band:
            self._paint_band(painter, face.band)
        self._paint_limits(painter, face.limits)
        self._paint_points(painter, face.band.before, solid=False)
        self._paint_today(painter, face.band)
        self._paint_nights(painter, face.band)
        if not face.band.count and not face.band.today:
            middle = QPointF(self._plot.center().x(), self._plot.center().y())
            words = _NOT_READ
            set_line(painter, middle, words, strong, look.colour("ink2"), align=CENTRE)

    def _plot_rect(self, limits: Sequence[Limit]) -> QRectF:
        """Where readings are drawn; the words of *limits* have room at its right."""
        look = self.look
        font = look.font(Use.TABLE)
        left = look.u(3, 2) + advance(font, "30") + look.u(2)
        beside = max((advance(font, limit.words) for limit in limits), default=0.0) + look.u(2)
        return QRectF(
            left,
            look.u(8, 6.4),
            self.width() - left - max(look.u(22, 19), beside),
            self.height() - look.u(8, 6.4) - look.u(18, 14.5),
        )

    def _x(self, hour: float) -> float:
        return self._plot.left() + hour / 24 * self._plot.width()

    def _y(self, temp_c: float) -> float:
        share = (temp_c - self._low_c) / (self._high_c - self._low_c)
        return self._plot.bottom() - share * self._plot.height()

    def _paint_wanted(self, painter: QPainter, face: BandFace) -> None:
        if face.wanted is None:
            return
        look = self.look
        top, bottom = self._y(face.wanted[1]), self._y(face.wanted[0])
        rect = QRectF(self._plot.left(), top, self._plot.width(), bottom - top)
        painter.fillRect(rect, look.colour("band1"))
        self._beside(painter, rect.center().y(), tr("wanted"), "ink2")
        words = span(celsius(face.wanted[0]), celsius(face.wanted[1]))
        self._beside(painter, rect.center().y() + look.u(4.6, 3.9), words, "ink2")

    def _paint_grid(self, painter: QPainter) -> None:
        look, plain = self.look, self.look.font(Use.TABLE)
        for temp_c, words in degree_marks(self._low_c, self._high_c, _MARKS, least=2):
            y = self._y(temp_c)
            painter.setPen(QPen(look.colour("hair"), 1.0))
            painter.drawLine(QLineF(self._plot.left(), y, self._plot.right(), y))
            place = QPointF(self._plot.left() - look.u(1.5), y + cap_height(plain) / 2)
            set_line(painter, place, words, plain, look.colour("ink2"), align=RIGHT)
        painter.setPen(QPen(look.colour("line"), 1.1))
        bottom = self._plot.bottom()
        painter.drawLine(QLineF(self._plot.left(), bottom, self._plot.right(), bottom))
        base = bottom + look.u(4.8, 4)
        for hour in range(0, 25, 6):
            x = self._x(hour)
            painter.setPen(QPen(look.colour("line"), 1.1))
            painter.drawLine(QLineF(x, bottom, x, bottom + 4))
            align = {0: LEFT, 24: RIGHT}.get(hour, CENTRE)
            words = f"{hour:02d}:00"
            set_line(painter, QPointF(x, base), words, plain, look.colour("ink2"), align=align)

    def _paint_band(self, painter: QPainter, band: DayBand) -> None:
        look = self.look
        for run in _runs(band):
            lows = [QPointF(self._x(hour), self._y(step.low_c)) for hour, step in run]
            highs = [QPointF(self._x(hour), self._y(step.high_c)) for hour, step in run]
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(look.colour("band2"))
            painter.drawPolygon(QPolygonF([*lows, *reversed(highs)]))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(look.colour("line"), 1.0))
            painter.drawPolyline(QPolygonF(lows))
            painter.drawPolyline(QPolygonF(highs))
            painter.setPen(QPen(look.colour("ink3"), 1.6))
            middles = [QPointF(self._x(hour), self._y(step.middle_c)) for hour, step in run]
            painter.drawPolyline(QPolygonF(middles))

    def _paint_limits(self, painter: QPainter, limits: Sequence[Limit]) -> None:
        look = self.look
        pen = QPen(look.colour("ink2"), 1.2, Qt.PenStyle.CustomDashLine, Qt.PenCapStyle.FlatCap)
        pen.setDashPattern([4.0, 3.0])
        for limit in limits:
            y = self._y(limit.temp_c)
            painter.setPen(pen)
            painter.drawLine(QLineF(self._plot.left(), y, self._plot.right(), y))
            self._beside(painter, y, limit.words, "ink2")

    def _paint_today(self, painter: QPainter, band: DayBand) -> None:
        look = self.look
        if not band.by_probe:
            self._paint_points(painter, band.today, solid=True)
        else:
            painter.setPen(QPen(look.colour("ink"), 1.8))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            path, before = QPainterPath(), -9.0
            for point in band.today:
                place = QPointF(self._x(point.hour), self._y(point.temp_c))
                if point.hour - before > _GAP_HOURS:
                    path.moveTo(place)
                path.lineTo(place)
                before = point.hour
            painter.strokePath(path, painter.pen())
        if band.today:
            last = band.today[-1]
            strong = look.font(Use.TABLE_STRONG)
            words = tr("today {temp}", temp=degrees(last.temp_c))
            x = self._x(last.hour) + look.u(1.6)
            align = LEFT
            if x + advance(strong, words) > self._plot.right():
                x, align = self._x(last.hour) - look.u(1.6), RIGHT
            y = self._y(last.temp_c) - look.u(2.6)
            wide = advance(strong, words)
            box = QRectF(x - (wide if align is RIGHT else 0), y, wide, 0)
            up = cap_height(strong) + look.u(0.8)
            painter.fillRect(box.adjusted(-4, -up, 4, look.u(0.8)), look.colour("ground"))
            set_line(painter, QPointF(x, y), words, strong, look.colour("ink"), align=align)

    def _paint_points(self, painter: QPainter, points: Sequence[Point], *, solid: bool) -> None:
        look = self.look
        radius = look.u(1.0, 0.8)
        painter.setPen(QPen(look.colour("ink"), 1.3))
        painter.setBrush(look.colour("ink" if solid else "ground"))
        for point in points:
            centre = QPointF(self._x(point.hour), self._y(point.temp_c))
            painter.drawEllipse(centre, radius, radius)

    def _paint_nights(self, painter: QPainter, band: DayBand) -> None:
        """A square for each of the days; solid where it was a feed night, framed for today."""
        look, plain = self.look, self.look.font(Use.TABLE)
        top = self._plot.bottom() + look.u(8, 6.4)
        side = look.u(3.6, 3)
        words = tr("feed nights")
        left = self._plot.left()
        base = top + side / 2 + cap_height(plain) / 2
        left += set_line(painter, QPointF(left, base), words, plain, look.colour("ink2"))
        first = band.on - timedelta(days=BAND_DAYS)
        start = left + look.u(2)
        room = (self._plot.right() - start) / (BAND_DAYS + 1)
        for n in range(BAND_DAYS + 1):
            on = first + timedelta(days=n)
            rect = QRectF(start + n * room, top, min(side, room * 0.8), side)
            painter.setPen(QPen(look.colour("line"), 1.1))
            painter.setBrush(look.colour("ink" if on in band.nights else "ground"))
            painter.drawRect(rect)
        ends = ((first, start, LEFT), (band.on, start + BAND_DAYS * room + side, RIGHT))
        for on, x, align in ends:
            told = tr("today") if on == band.on else day(on, on=band.on)
            place = QPointF(x, top + side + look.u(4.6, 3.9))
            set_line(painter, place, told, plain, look.colour("ink2"), align=align)

    def _beside(self, painter: QPainter, y: float, words: str, ink: str) -> None:
        look, plain = self.look, self.look.font(Use.TABLE)
        place = QPointF(self._plot.right() + look.u(1.6, 1.2), y + cap_height(plain) / 2)
        room = self.width() - place.x()
        fitted = font_to_fit(plain, words, room, _LEAST_PT)
        set_line(painter, place, words, fitted, look.colour(ink), room=room)


def band_words(face: BandFace) -> str:
    """The picture in words."""
    band = face.band
    told = [face.title]
    if face.wanted:
        wanted = span(celsius(face.wanted[0]), celsius(face.wanted[1]))
        told.append(tr("wanted {span}", span=wanted))
    told += [limit.words for limit in face.limits]
    if band.has_band:
        for hour in (3, 9, 15, 21):
            step = band.steps[hour * STEPS // 24]
            if step is not None:
                told.append(_usually(hour, step))
    elif band.count:
        told.append(
            tr(
                "{count} readings on {days} days, too few for a band",
                count=band.count,
                days=band.days,
            )
        )
    elif not band.today:
        told.append(_NOT_READ)
    if band.today:
        told.append(tr("today last {temp}", temp=celsius(band.today[-1].temp_c)))
    nights = ", ".join(day(n, on=band.on) for n in band.nights)
    told.append(tr("feed nights {nights}", nights=nights) if nights else tr("feed nights none set"))
    return "; ".join(told)


def _usually(hour: int, step: BandStep) -> str:
    middle, low_high = celsius(step.middle_c), span(celsius(step.low_c), celsius(step.high_c))
    return tr("{hour:02d}:00 usually {middle}, {span}", hour=hour, middle=middle, span=low_high)


def _scale(face: BandFace) -> tuple[float, float]:
    band = face.band
    values = [*(face.wanted or ()), *(limit.temp_c for limit in face.limits)]
    values += [v for step in band.steps if step for v in (step.low_c, step.high_c)]
    values += [point.temp_c for point in (*band.today, *band.before)]
    low, high = min(values, default=20.0), max(values, default=32.0)
    return math.floor(low - 1), math.ceil(high + 1)


def _runs(band: DayBand) -> Iterator[list[tuple[float, BandStep]]]:
    """Stretches of half hours that have a band, each with its hour."""
    run: list[tuple[float, BandStep]] = []
    for n, step in enumerate(band.steps):
        if step is not None:
            run.append(((n + 0.5) * _STEP_HOURS, step))
        elif run:
            yield run
            run = []
    if run:
        yield run
