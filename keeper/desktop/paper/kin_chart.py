"""Weights by age of everyone in a clutch or line: a line each, named where it ends."""

from __future__ import annotations

from collections.abc import Sequence
from operator import itemgetter

from PySide6.QtCore import QLineF, QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import QPainter, QPainterPath, QPen

from keeper.actions.kin_weights import Course, Kin
from keeper.desktop.paper.flow import Artist
from keeper.desktop.paper.paper_look import PaperLook
from keeper.desktop.type import Use
from keeper.desktop.widgets.growth_plot import WeightScale, weight_scale
from keeper.desktop.widgets.lettering import CENTRE, RIGHT, cap_height, set_line
from keeper.desktop.widgets.spreading import spread
from keeper.husbandry.animal import Sex
from keeper.language import tr
from keeper.reports.figures import mass, mass_unit, number

_LEFT_UNITS, _RIGHT_UNITS, _FOOT_UNITS, _TOP_UNITS = 14.0, 26.0, 12.0, 7.0
_LEFT = Qt.AlignmentFlag.AlignLeft
AGE = tr("age, days")
_AGE_STEPS = (10, 30, 60, 90, 180, 365, 730, 1826)
_DASHES = {Sex.MALE: [5.0, 3.0], Sex.UNKNOWN: [1.5, 2.5]}
"""A male's line is dashed, a line of unknown sex dotted, a female's whole."""


def kin_artist(kin: Kin) -> Artist:
    """Paints the chart."""

    def paint(painter: QPainter, size: QSizeF) -> None:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        _Chart(painter, PaperLook(), kin.courses, size).paint()

    return paint


class _Chart:
    """One chart being painted."""

    def __init__(
        self, painter: QPainter, look: PaperLook, courses: Sequence[Course], size: QSizeF
    ) -> None:
        self._painter, self._look, self._courses = painter, look, courses
        left, right = look.u(_LEFT_UNITS), size.width() - look.u(_RIGHT_UNITS)
        top, bottom = look.u(_TOP_UNITS), size.height() - look.u(_FOOT_UNITS)
        self._plot = QRectF(left, top, right - left, bottom - top)
        ages = [age for course in courses for age, _ in course.points]
        self._oldest = max([*ages, 1])
        weights = [grams for course in courses for _, grams in course.points]
        self._scale: WeightScale = weight_scale(weights, self._plot)

    def paint(self) -> None:
        self._paint_grid()
        for course in self._courses:
            self._paint_course(course)
        self._name_ends()

    def _x(self, age: float) -> float:
        return self._plot.left() + age / self._oldest * self._plot.width()

    def _words(self, place: QPointF, words: str, align: Qt.AlignmentFlag) -> None:
        font = self._look.font(Use.TABLE)
        set_line(self._painter, place, words, font, self._look.colour("ink"), align=align)

    def _paint_grid(self) -> None:
        plot, look, painter = self._plot, self._look, self._painter
        half = cap_height(look.font(Use.TABLE)) / 2
        for grams in self._scale.ticks():
            y = self._scale.y(grams)
            painter.setPen(QPen(look.colour("hair"), 1.0))
            painter.drawLine(QLineF(plot.left(), y, plot.right(), y))
            self._words(QPointF(plot.left() - look.u(1.5), y + half), mass(grams), RIGHT)
        step = next((n for n in _AGE_STEPS if self._oldest / n <= 9), _AGE_STEPS[-1])
        base = plot.bottom() + look.u(5)
        for age in range(0, self._oldest + 1, step):
            painter.setPen(QPen(look.colour("hair"), 1.0))
            painter.drawLine(QLineF(self._x(age), plot.top(), self._x(age), plot.bottom()))
            self._words(QPointF(self._x(age), base), number(age), CENTRE)
        painter.setPen(QPen(look.colour("line"), 1.3))
        painter.drawLine(plot.bottomLeft(), plot.bottomRight())
        painter.drawLine(plot.topLeft(), plot.bottomLeft())
        key = tr(
            "{unit}, ratio scale; females whole, males dashed, sex not known dotted",
            unit=mass_unit(),
        )
        self._words(QPointF(plot.left() - look.u(6), look.u(4)), key, _LEFT)
        self._words(QPointF(plot.center().x(), plot.bottom() + look.u(10)), AGE, CENTRE)

    def _paint_course(self, course: Course) -> None:
        pen = QPen(self._look.colour("ink"), 1.3, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap)
        if course.sex in _DASHES:
            pen.setDashPattern(_DASHES[course.sex])
        path = QPainterPath()
        for n, (age, grams) in enumerate(course.points):
            at = QPointF(self._x(age), self._scale.y(grams))
            path.lineTo(at) if n else path.moveTo(at)
        self._painter.setBrush(Qt.BrushStyle.NoBrush)
        self._painter.strokePath(path, pen)
        if course.points:
            self._painter.setBrush(self._look.colour("ink"))
            self._painter.setPen(Qt.PenStyle.NoPen)
            self._painter.drawEllipse(path.currentPosition(), 2.2, 2.2)

    def _name_ends(self) -> None:
        """Each at the right of the plot, moved apart so that none covers another."""
        look = self._look
        high = 2.1 * cap_height(look.font(Use.TABLE))
        found = [(self._scale.y(c.points[-1][1]), c) for c in self._courses if c.points]
        ends = sorted(found, key=itemgetter(0))
        most = int(self._plot.height() / high)
        if len(ends) > most:
            return
        bounds = (self._plot.top() + high / 4, self._plot.bottom())
        bases = spread([wanted + high / 4 for wanted, _ in ends], high, *bounds)
        for y, (_, course) in zip(bases, ends, strict=True):
            age, grams = course.points[-1]
            self._painter.setPen(QPen(look.colour("line"), 0.8))
            start = QPointF(self._x(age), self._scale.y(grams))
            edge = QPointF(self._plot.right() + look.u(2.5), y - high / 4)
            self._painter.drawLine(start, edge)
            self._words(edge + QPointF(look.u(0.8), high / 4), course.label, _LEFT)
