"""The growth curve: weights on a ratio scale, the band of her sex behind them."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QPainterPath, QPolygonF

from keeper.actions.animal_page import BandPoint, Weighed
from keeper.desktop.type import Use
from keeper.desktop.widgets.lettering import RIGHT, cap_height, font_to_fit, set_line
from keeper.desktop.widgets.life_canvas import LABEL_LEFT_UNITS, Canvas
from keeper.desktop.widgets.spreading import spread
from keeper.husbandry.animal import Sex
from keeper.language import tr
from keeper.reports.figures import mass, mass_unit
from keeper.reports.words import word
from keeper.reports.writing import in_use

_FINER = tuple(tuple(1 + n / part for n in range(9 * part)) for part in (2, 5, 10))
_STEPS = ((1, 2, 5), (1, 1.5, 2, 3, 4, 5, 6, 8), *_FINER)
_AIR = 0.06  # of the range left free above and below, in logarithms
_KEY = ((tr("empty", sense="weight"), "ink"), (tr("within digestion"), "sheet"))
_LEAST_FIGURE_PT = 7.0
_CENTILE_LINES = 1.55  # names of centiles stand so many capitals apart


@dataclass(frozen=True, slots=True, kw_only=True)
class WeightScale:
    """Grams to a height: equal ratios are equal distances."""

    low_g: float
    high_g: float
    top: float
    bottom: float
    px_a_log: float = field(init=False)

    def __post_init__(self) -> None:
        px = (self.bottom - self.top) / math.log(self.high_g / self.low_g)
        object.__setattr__(self, "px_a_log", px)

    def y(self, grams: float) -> float:
        return self.bottom - math.log(grams / self.low_g) * self.px_a_log

    def ticks(self, least: int = 3) -> list[float]:
        """Grams in range, round in the unit in use; *least* of them if any steps give so many."""
        found: list[float] = []
        unit = in_use().mass(1.0)
        for steps in _STEPS:
            low = math.floor(math.log10(self.low_g * unit))
            high = math.ceil(math.log10(self.high_g * unit))
            every = [step * 10.0**power / unit for power in range(low, high + 1) for step in steps]
            found = [grams for grams in every if self.low_g <= grams <= self.high_g]
            if len(found) >= least:
                break
        return found


def weight_scale(weights_g: Sequence[float], rect: QRectF) -> WeightScale:
    """A scale that holds all of *weights_g*, with some air; 1 to 10 g where there are none."""
    low, high = min(weights_g, default=1.0), max(weights_g, default=10.0)
    air = (high / low) ** _AIR if high > low * 1.02 else 1.1
    return WeightScale(low_g=low / air, high_g=high * air, top=rect.top(), bottom=rect.bottom())


def paint_weight_grid(canvas: Canvas, scale: WeightScale) -> None:
    """Lines and figures of the scale, the lane's name, the base line."""
    look, plot = canvas.look, canvas.layout.plot
    half = cap_height(look.font(Use.TABLE)) / 2
    heads = _heads(canvas)
    floor = plot.top() if plot.height() > look.u(60) else 0.0
    before = math.inf
    for grams in scale.ticks():
        y = scale.y(grams)
        if before - y < 4 * half or y < floor:
            continue
        before = y
        canvas.line("hair", 1.0, plot.left(), y, plot.right(), y)
        canvas.line("line", 1.1, plot.left() - look.u(1.2), y, plot.left(), y)
        _paint_figure(canvas, y + half, mass(grams), heads)
    canvas.line("line", 1.1, plot.left(), plot.top(), plot.left(), plot.bottom())
    canvas.line("line", 1.3, plot.left(), plot.bottom(), plot.right(), plot.bottom())
    left = look.u(*LABEL_LEFT_UNITS)
    for base, words, use in heads:
        canvas.words(left, base, words, use=use, ink="ink" if use is Use.TABLE_STRONG else "ink3")


def _heads(canvas: Canvas) -> list[tuple[float, str, Use]]:
    """The lane's name and its unit, line by line, each with its base."""
    look, base = canvas.look, canvas.layout.plot.top() + canvas.look.u(2.6, 1.6)
    lines = (tr("weight"), mass_unit(), tr("ratio"), tr("scale", sense="of a plot"))
    uses = (Use.TABLE_STRONG, Use.TABLE, Use.TABLE, Use.TABLE)
    bases = (base + n * look.u(4.4, 3.9) for n in range(len(lines)))
    return list(zip(bases, lines, uses, strict=True))


def _paint_figure(
    canvas: Canvas, base: float, text: str, heads: Sequence[tuple[float, str, Use]]
) -> None:
    """A figure of the scale, set smaller where a line of the lane's name stands beside it."""
    look, font = canvas.look, canvas.look.font(Use.TABLE)
    right = canvas.layout.plot.left() - look.u(2, 1.7)
    near = [line for line in heads if abs(line[0] - base) < 1.5 * cap_height(font)]
    ends = max((canvas.wide(words, use) for _, words, use in near), default=0.0)
    room = right - look.u(*LABEL_LEFT_UNITS) - ends - look.u(0.8, 0.6)
    if ends:
        font = font_to_fit(font, text, room, _LEAST_FIGURE_PT)
    set_line(canvas.painter, QPointF(right, base), text, font, look.colour("ink2"), align=RIGHT)


def paint_band(canvas: Canvas, sex: Sex, points: Sequence[BandPoint], scale: WeightScale) -> None:
    """What is expected of one sex: p3-p97 and p10-p90 filled and edged, p50 drawn through."""
    painter, look = canvas.painter, canvas.look
    outer = _between(canvas, points, scale, lambda e: e.p3_g, lambda e: e.p97_g)
    inner = _between(canvas, points, scale, lambda e: e.p10_g, lambda e: e.p90_g)
    painter.fillPath(outer, look.colour("band1"))
    painter.fillPath(inner, look.colour("band2"))
    lines: tuple[tuple[Callable[..., float], str, bool], ...] = (
        (lambda e: e.p3_g, "line", False),
        (lambda e: e.p97_g, "line", False),
        (lambda e: e.p10_g, "ink3", True),
        (lambda e: e.p90_g, "ink3", True),
    )
    for of, ink, dashed in lines:
        style = Qt.PenStyle.CustomDashLine if dashed else Qt.PenStyle.SolidLine
        painter.strokePath(_line(canvas, points, scale, of), canvas.pen(ink, 1.0, style))
    painter.strokePath(_line(canvas, points, scale, lambda e: e.p50_g), canvas.pen("ink3", 1.6))
    _name_ends(canvas, points[-1], scale)


def paint_outlines(
    canvas: Canvas, sex: Sex, points: Sequence[BandPoint], scale: WeightScale
) -> None:
    """One sex among two, where hers is not known: its p3, p50 and p97 as lines with its name."""
    dashed = sex is Sex.MALE
    style = Qt.PenStyle.CustomDashLine if dashed else Qt.PenStyle.SolidLine
    edges: tuple[Callable[..., float], ...] = (lambda e: e.p3_g, lambda e: e.p97_g)
    for of in edges:
        canvas.painter.strokePath(_line(canvas, points, scale, of), canvas.pen("line", 1.1, style))
    middle = _line(canvas, points, scale, lambda e: e.p50_g)
    canvas.painter.strokePath(middle, canvas.pen("ink3", 1.8, style))
    plot, half = canvas.layout.plot, cap_height(canvas.look.font(Use.TABLE)) / 2
    y = scale.y(points[-1].expected.p50_g) + half
    canvas.words(plot.right() + canvas.look.u(1), y, word(sex), use=Use.TABLE_STRONG, ink="ink")


def paint_weights(canvas: Canvas, weighed: Sequence[Weighed], scale: WeightScale) -> None:
    """Solid dots fasted and joined, hollow ones within digestion, as they stood on the scale."""
    painter, look, axis = canvas.painter, canvas.look, canvas.axis
    solid = [w for w in weighed if w.fasted]
    painter.strokePath(_joined(canvas, solid, scale), canvas.pen("ink", 1.6))
    radius = _dot_radius(canvas, weighed)
    painter.setPen(canvas.pen("ink", min(1.7, 0.5 * radius)))
    brushes = {True: QBrush(look.colour("ink")), False: QBrush(look.colour("sheet"))}
    for one in weighed:
        if not axis.shows(one.day):
            continue
        painter.setBrush(brushes[one.fasted])
        painter.drawEllipse(dot_at(canvas, one, scale), radius, radius)
    painter.setBrush(Qt.BrushStyle.NoBrush)


def dot_at(canvas: Canvas, weighed: Weighed, scale: WeightScale) -> QPointF:
    """Where a weighing stands: fasted by its empty weight, else by the scale's."""
    grams = weighed.empty_g if weighed.fasted and weighed.empty_g else weighed.scale_g
    return QPointF(canvas.axis.x(weighed.day), scale.y(grams))


def plot_key_rect(canvas: Canvas, lines: Sequence[str], *, low: bool) -> QRectF:
    """Where the key and its *lines* stand: at the top left, or *low* at the bottom right."""
    look, plot = canvas.look, canvas.layout.plot
    dots = sum(look.u(8, 6.2) + canvas.wide(words) for words, _ in _KEY)
    wide = max([dots, *(canvas.wide(line) for line in lines if line)])
    high = cap_height(look.font(Use.TABLE)) + sum(map(bool, lines)) * look.u(4.9, 4.1)
    air, side = look.u(2.4, 1.8), look.u(4, 3)
    if low:
        right = min(plot.right(), canvas.today_x) - side
        return QRectF(right - wide, plot.bottom() - air - high, wide, high)
    return QRectF(plot.left() + side, plot.top() + air, wide, high)


def paint_plot_key(canvas: Canvas, lines: Sequence[str], rect: QRectF) -> None:
    """What the dots mean and whose band it is, on the plot; *rect* as of ``plot_key_rect``."""
    look = canvas.look
    painter, radius = canvas.painter, look.u(1.15, 0.95)
    base, x = rect.top() + cap_height(look.font(Use.TABLE)), rect.left()
    middle = base - cap_height(look.font(Use.TABLE)) / 2
    for words, fill in _KEY:
        wide = canvas.wide(words)
        canvas.clear(x, base, f"mm {words}", Use.TABLE, Qt.AlignmentFlag.AlignLeft, "ground")
        painter.setPen(canvas.pen("ink", 1.5))
        painter.setBrush(look.colour(fill))
        painter.drawEllipse(QPointF(x + radius, middle), radius, radius)
        canvas.words(x + look.u(4, 3.2), base, words)
        x += look.u(4, 3.2) + wide + look.u(4, 3)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for n, line in enumerate(filter(None, lines), start=1):
        y = base + n * look.u(4.9, 4.1)
        canvas.words(rect.left(), y, line, ink="ink2", paper="ground")


def basis_words(sex: Sex, basis: str) -> str:
    """Whose band is drawn and how it is known."""
    if sex is Sex.UNKNOWN:
        return tr("both sexes, {basis}", basis=basis)
    if sex is Sex.FEMALE:
        return tr("band: females of this kind, {basis}", basis=basis)
    return tr("band: males of this kind, {basis}", basis=basis)


def _dot_radius(canvas: Canvas, weighed: Sequence[Weighed]) -> float:
    """Smaller where the dots of a long life would run into one another."""
    shown = sum(canvas.axis.shows(one.day) for one in weighed)
    apart = (canvas.axis.right - canvas.axis.left) / max(1, shown)
    return min(canvas.look.u(1.3, 1.0), max(1.5, 0.42 * apart))


def _joined(canvas: Canvas, weighed: Sequence[Weighed], scale: WeightScale) -> QPainterPath:
    path = QPainterPath()
    path.addPolygon(QPolygonF([dot_at(canvas, one, scale) for one in weighed]))
    return path


def _line(
    canvas: Canvas, points: Sequence[BandPoint], scale: WeightScale, of: Callable[..., float]
) -> QPainterPath:
    path = QPainterPath()
    places = [QPointF(canvas.axis.x(p.day), scale.y(of(p.expected))) for p in points]
    path.addPolygon(QPolygonF(places))
    return path


def _between(
    canvas: Canvas,
    points: Sequence[BandPoint],
    scale: WeightScale,
    low: Callable[..., float],
    high: Callable[..., float],
) -> QPainterPath:
    path = _line(canvas, points, scale, low)
    path.connectPath(_line(canvas, points, scale, high).toReversed())
    path.closeSubpath()
    return path


def _name_ends(canvas: Canvas, last: BandPoint, scale: WeightScale) -> None:
    """Each centile named beside the end of its line; names that would crowd are led aside to."""
    look, plot = canvas.look, canvas.layout.plot
    half = cap_height(look.font(Use.TABLE)) / 2
    ends = {name: scale.y(grams) for name, grams in _centiles(last)}
    apart = _CENTILE_LINES * 2 * half
    names = spread(list(ends.values()), apart, plot.top() + half, plot.bottom() - half)
    led = max(abs(y - at) for y, at in zip(ends.values(), names, strict=True)) > half
    left = plot.right() + (look.u(3.4, 2.6) if led else look.u(1, 0.8))
    for (name, y), at in zip(ends.items(), names, strict=True):
        if led:
            canvas.line("line", 1.0, plot.right() + look.u(0.4), y, left - look.u(0.5, 0.4), at)
        use, ink = (Use.TABLE_STRONG, "ink") if name == "p50" else (Use.TABLE, "ink2")
        canvas.words(left, at + half, name, use=use, ink=ink)


def _centiles(last: BandPoint) -> Sequence[tuple[str, float]]:
    """Names and grams, the heaviest first."""
    of = last.expected
    return (
        ("p97", of.p97_g),
        ("p90", of.p90_g),
        ("p50", of.p50_g),
        ("p10", of.p10_g),
        ("p3", of.p3_g),
    )
