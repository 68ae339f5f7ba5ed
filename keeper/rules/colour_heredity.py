"""How much of a colour is inherited: from the house's own clutches, and until then a placeholder.

The slope of the means of clutches on their mid-parents estimates the heritability (Falconer &
Mackay, chapter 10). A clutch weighs by its size n as n (1 + T) / (1 + n T), for the sibs of one
clutch tell less each the more alike they are; T = (t - h2^2 / 2) / (1 - t) with the likeness of
full sibs t = h2 / 2 of the placeholder (the same chapter, weighting of families of unequal size,
quoted from memory). The standard error is that of a weighted straight line.

The placeholder gives way by weight of evidence: the own slope counts the least of three shares,
of the clutches beyond two among the six that are wanted beyond two, of 80 young, and of a
standard error of 0.25. Each grows by small steps, so that no new clutch makes the figure jump.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from statistics import fmean

from keeper.husbandry.profile import practice

PLACEHOLDER_H2 = practice(0.4)
"""No heritability of a snake's colour was found in print; bounds of 0.3 to 0.5 are usual."""

OWN_CLUTCHES, OWN_YOUNG, OWN_ERROR = practice(8), practice(80), practice(0.25)
LINE_CLUTCHES = 2
"""Through two clutches a line goes exactly and says nothing of its own error."""

PLACEHOLDER_SD, SD_WEIGHS = practice(1.5), practice(10)
"""Until the house has its own spread: a standard deviation in points, as if of so many animals."""

_LEAST_SPREAD = 1e-9  # mid-parents that are all alike give no slope


@dataclass(frozen=True, slots=True, kw_only=True)
class Family:
    """A clutch whose parents are both scored, and its scored young."""

    mid_parent: float
    scores: tuple[float, ...]

    @property
    def mean(self) -> float:
        return fmean(self.scores)


@dataclass(frozen=True, slots=True, kw_only=True)
class OwnSlope:
    """The slope of young on mid-parent and its standard error; it may lie outside 0 to 1."""

    slope: float
    error: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Heritability:
    """The figure in use. share: how far the own slope counts in it, 0 to 1."""

    value: float
    share: float
    own: OwnSlope | None
    clutches: int
    young: int


def heritability(families: Sequence[Family]) -> Heritability:
    """The placeholder, pulled over to the slope of *families* by weight of evidence."""
    told = [each for each in families if each.scores]
    own = own_slope(told)
    young = sum(len(each.scores) for each in told)
    share = _share(len(told), young, own.error) if own else 0.0
    bounded = min(1.0, max(0.0, own.slope)) if own else 0.0
    value = PLACEHOLDER_H2.value + share * (bounded - PLACEHOLDER_H2.value)
    return Heritability(value=value, share=share, own=own, clutches=len(told), young=young)


def own_slope(families: Sequence[Family]) -> OwnSlope | None:
    """Means of clutches on mid-parents, weighted by size; None where three do not differ.

    >>> pairs = [(4, 4.5), (5, 5.0), (6, 5.5)]
    >>> found = own_slope([Family(mid_parent=x, scores=(y, y)) for x, y in pairs])
    >>> round(found.slope, 3), round(found.error, 3)
    (0.5, 0.0)
    """
    if len(families) <= LINE_CLUTCHES:
        return None
    weights = [clutch_weight(len(each.scores)) for each in families]
    xs, ys = [each.mid_parent for each in families], [each.mean for each in families]
    mean_x, mean_y = _mean(xs, weights), _mean(ys, weights)
    spread = sum(w * (x - mean_x) ** 2 for w, x in zip(weights, xs, strict=True))
    if spread <= _LEAST_SPREAD:
        return None
    both = zip(weights, xs, ys, strict=True)
    slope = sum(w * (x - mean_x) * (y - mean_y) for w, x, y in both) / spread
    off = [y - mean_y - slope * (x - mean_x) for x, y in zip(xs, ys, strict=True)]
    left = sum(w * each**2 for w, each in zip(weights, off, strict=True))
    variance = left / (len(families) - LINE_CLUTCHES)
    return OwnSlope(slope=slope, error=math.sqrt(variance / spread))


def clutch_weight(young: int, h2: float = PLACEHOLDER_H2.value) -> float:
    """How much the mean of so many sibs tells, one young being 1.

    >>> [round(clutch_weight(n), 2) for n in (1, 5, 10)]
    [1.0, 3.29, 4.6]
    """
    alike = h2 / 2
    more = (alike - h2**2 / 2) / (1 - alike)
    return young * (1 + more) / (1 + young * more)


def told_by(sizes: Sequence[int], h2: float) -> float:
    """As how many animals of no kinship the sibs of clutches of these *sizes* tell of a mean.

    >>> round(told_by([10, 10], 0.4), 1)
    7.1
    """
    return sum(size / (1 + (size - 1) * h2 / 2) for size in sizes)


def line_sd(groups: Sequence[Sequence[float]]) -> float:
    """Standard deviation of a score within *groups*, such as generations, pooled.

    The placeholder counts in it as ``SD_WEIGHS`` animals of its own, and so gives way bit by bit.

    >>> line_sd([]), round(line_sd([[4.0, 6.0], [5.0]]), 2)
    (1.5, 1.49)
    """
    squares, free = SD_WEIGHS.value * PLACEHOLDER_SD.value**2, SD_WEIGHS.value
    for group in groups:
        if len(group) > 1:
            mean = fmean(group)
            squares += sum((score - mean) ** 2 for score in group)
            free += len(group) - 1
    return math.sqrt(squares / free)


def _share(clutches: int, young: int, error: float) -> float:
    beyond = (clutches - LINE_CLUTCHES) / (OWN_CLUTCHES.value - LINE_CLUTCHES)
    sharp = OWN_ERROR.value / error if error > 0 else 1.0
    return min(1.0, beyond, young / OWN_YOUNG.value, sharp)


def _mean(values: Sequence[float], weights: Sequence[float]) -> float:
    return sum(w * v for w, v in zip(weights, values, strict=True)) / sum(weights)
