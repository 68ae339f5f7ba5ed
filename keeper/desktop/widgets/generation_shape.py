"""Where everything of the picture of generations stands: columns, and dots side by side."""

from __future__ import annotations

import math
from collections import Counter, defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF

from keeper.reports.colour_facts import ColourFacts, Dot, PairToCome

LEAST_SCORE, MOST_SCORE = 1.0, 10.0
_AIR = 0.4  # points of the score left free above and below
_DOTS_SHARE, _BESIDE_BANDS_SHARE = 0.8, 0.64  # of a column, for its dots and names
_DOTS_MIDDLE, _DOTS_HALF = 0.38, 0.34  # of that room, where names stand at the right
_FIGURES_SHARE = 0.16  # of a column, at its left, for the figures of its means
_LEAST_RADIUS, _SMALLEST = 2.0, 0.9
_LINES_HIGH = 0.42  # points of the score that lines of one score may take
_GAP_SHARE = 0.35  # of a radius, between dots in lines
_APART = 1.0
RING = 1.9
"""The radius of a ring, in radii of a dot."""

Near = tuple[float, float, float]
"""Height, offset and reach of a dot."""


@dataclass(frozen=True, slots=True, kw_only=True)
class GenerationColumn:
    """One generation, from left to end.

    first: where its marks begin, figures before it; centre: the middle of its dots; right: where
    their room ends. bands: the room for what may come, None where nothing may.
    """

    generation: int
    left: float
    first: float
    centre: float
    right: float
    end: float
    bands: tuple[float, float] | None


@dataclass(frozen=True, slots=True, kw_only=True)
class GenerationShape:
    """columns by generation; radius of a dot; places of the dots, in the order of the facts."""

    plot: QRectF
    columns: Mapping[int, GenerationColumn]
    radius: float
    places: tuple[QPointF, ...]

    def y(self, score: float) -> float:
        return score_y(self.plot, score)


def score_y(plot: QRectF, score: float) -> float:
    """The height of *score* in *plot*."""
    low, high = LEAST_SCORE - _AIR, MOST_SCORE + _AIR
    return plot.bottom() - (score - low) / (high - low) * plot.height()


def shape_of(facts: ColourFacts, plot: QRectF, radius: float) -> GenerationShape:
    """Everything in *plot*; where so many do not fit side by side the dots are smaller.

    Where they would be too small to see, those of like score stand in lines about its height.
    """
    columns = _columns(facts, plot)
    radius = max(_LEAST_RADIUS, min(radius, _fitting(facts.dots, columns)))
    by_column: dict[int, list[int]] = defaultdict(list)
    for at, dot in enumerate(facts.dots):
        by_column[dot.generation].append(at)
    while True:
        offs = {
            n: [QPointF(off, 0) for off in swarm([facts.dots[at] for at in members], plot, radius)]
            for n, members in by_column.items()
        }
        widest = {n: max(abs(off.x()) for off in found) for n, found in offs.items()}
        fits = all(wide + radius <= _half(columns[n]) for n, wide in widest.items())
        if not fits and radius <= _LEAST_RADIUS:
            radius, offs = _in_lines(facts.dots, by_column, columns, plot)
            fits = True
        if fits:
            break
        radius = max(_LEAST_RADIUS, 0.85 * radius)
    places = [QPointF() for _ in facts.dots]
    for n, members in by_column.items():
        for at, off in zip(members, offs[n], strict=True):
            places[at] = QPointF(columns[n].centre, score_y(plot, facts.dots[at].score)) + off
    return GenerationShape(plot=plot, columns=columns, radius=radius, places=tuple(places))


def swarm(dots: Sequence[Dot], plot: QRectF, radius: float) -> list[float]:
    """How far each of *dots* stands from the middle, so that none lies on another."""
    order = sorted(range(len(dots)), key=lambda at: (dots[at].score, dots[at].animal))
    most = 2 * RING * radius + 3 * _APART
    found = [0.0] * len(dots)
    near: list[Near] = []  # what may still be touched
    for at in order:
        y, own = score_y(plot, dots[at].score), _reach(dots[at], radius)
        near = [one for one in near if one[0] - y < most]
        found[at] = _free(y, own, near)
        near.append((y, found[at], own))
    return found


def band_middles(column: GenerationColumn, pairs: Sequence[PairToCome]) -> list[float]:
    """The middle of the band of each of *pairs*."""
    assert column.bands is not None
    left, right = column.bands
    step = (right - left) / len(pairs)
    return [left + (n + 0.5) * step for n in range(len(pairs))]


def _columns(facts: ColourFacts, plot: QRectF) -> dict[int, GenerationColumn]:
    banded = {pair.generation for pair in facts.pairs}
    last = max({dot.generation for dot in facts.dots} | banded, default=0)
    dotted = {dot.generation for dot in facts.dots}
    shares = [1.0 if n in dotted else 0.6 for n in range(last + 1)]
    unit, left = plot.width() / sum(shares), plot.left()
    found = {}
    for n, share in enumerate(shares):
        found[n] = _column(n, left, share * unit, n in dotted, n in banded)
        left += share * unit
    return found


def _column(
    generation: int, left: float, width: float, dotted: bool, banded: bool
) -> GenerationColumn:
    end = left + width
    if not dotted:
        bands = (left + 0.1 * width, end - 0.1 * width)
        return GenerationColumn(
            generation=generation,
            left=left,
            first=left,
            centre=left + width / 2,
            right=left,
            end=end,
            bands=bands if banded else None,
        )
    share = _BESIDE_BANDS_SHARE if banded else _DOTS_SHARE
    first = left + _FIGURES_SHARE * width
    right = left + (_FIGURES_SHARE + share) * width
    return GenerationColumn(
        generation=generation,
        left=left,
        first=first,
        centre=first + _DOTS_MIDDLE * (right - first),
        right=right,
        end=end,
        bands=(right, end - 0.02 * width) if banded else None,
    )


def _fitting(dots: Sequence[Dot], columns: Mapping[int, GenerationColumn]) -> float:
    """The radius at which the longest row of equal scores just has room."""
    rows = Counter((dot.generation, dot.score) for dot in dots)
    fits = [
        (2 * _half(columns[generation]) / count - _APART) / 2
        for (generation, _), count in rows.items()
    ]
    return min(fits, default=math.inf)


def _in_lines(
    dots: Sequence[Dot],
    by_column: Mapping[int, Sequence[int]],
    columns: Mapping[int, GenerationColumn],
    plot: QRectF,
) -> tuple[float, dict[int, list[QPointF]]]:
    """The largest radius, and where dots stand about column and score, that keep lines apart."""
    high = abs(score_y(plot, 1.0) - score_y(plot, 1.0 + _LINES_HIGH))
    radius = _LEAST_RADIUS
    while True:
        apart = 2 * radius + _GAP_SHARE * radius
        found, deepest = {}, 1
        for n, members in by_column.items():
            across = max(1, int(2 * _half(columns[n]) / apart))
            found[n], lines = _lines([dots[at].score for at in members], across, apart)
            deepest = max(deepest, lines)
        if deepest * apart <= high or radius <= _SMALLEST:
            return radius, found
        radius *= 0.9


def _lines(scores: Sequence[float], across: int, apart: float) -> tuple[list[QPointF], int]:
    """Places about the middle, *across* in a line at most, and the most lines of one score."""
    many, seen = Counter(scores), Counter[float]()
    found = []
    for score in scores:
        lines = -(-many[score] // across)
        wide = -(-many[score] // lines)
        line, at = divmod(seen[score], wide)
        seen[score] += 1
        here = min(wide, many[score] - line * wide)
        found.append(QPointF((at - (here - 1) / 2) * apart, (line - (lines - 1) / 2) * apart))
    return found, max((-(-count // across) for count in many.values()), default=1)


def _half(column: GenerationColumn) -> float:
    return _DOTS_HALF * (column.right - column.first)


def _reach(dot: Dot, radius: float) -> float:
    """A ringed dot keeps others out of its ring."""
    return RING * radius + _APART if dot.selected else radius


def _free(y: float, own: float, near: Sequence[Near]) -> float:
    """The offset nearest to the middle at which a dot at *y* touches none of *near*."""
    barred = []
    for other, off, reach in near:
        apart = own + reach + _APART
        aside = apart**2 - (other - y) ** 2
        if aside > 0:
            barred.append((off - math.sqrt(aside), off + math.sqrt(aside)))
    barred.sort()
    right = _past(barred)
    left = -_past(sorted((-high, -low) for low, high in barred))
    return right if right <= -left else left


def _past(barred: Sequence[tuple[float, float]]) -> float:
    """The first place from 0 on that lies in none of *barred*, which are in order."""
    place = 0.0
    for low, high in barred:
        if low >= place:
            break
        place = max(place, high)
    return place
