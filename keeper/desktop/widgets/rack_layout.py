"""Where racks, rows and tubs stand on the page: whole pixels, from counts and the room there is."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from PySide6.QtCore import QLine, QPoint, QRect, QRectF

Counts = Sequence[Sequence[int]]
"""For each rack the number of tubs in each of its rows."""

_WIDER_BY = 0.4  # a rack of more tubs is wider, but by far less than their number
_PASSES = 3
_BANDS_MOST = 12
_CROWDED = 0.6  # of what a tub needs; below it less air and smaller labels are worth it


@dataclass(frozen=True, slots=True, kw_only=True)
class Measures:
    """Lengths in px: uprights left and right, hot end column, air between racks and bands,
    heading above a rack, the largest a tub is drawn, and the width at which it says all."""

    left: float
    right: float
    heat: float
    air: float
    head: float
    widest: float
    tallest: float
    good: float

    @property
    def beside(self) -> float:
        return self.left + self.right + self.heat

    def tight(self) -> Measures:
        """The same with less round the tubs, for a room of very many."""
        less = {name: 0.7 * getattr(self, name) for name in ("left", "right", "heat", "head")}
        return replace(self, air=0.4 * self.air, **less)


@dataclass(frozen=True, slots=True, kw_only=True)
class RackShape:
    """One rack. numbers, heats: boxes for the labels of each row; shelves: a double line each.

    tubs_at: the upper left corner of every front, by row; all are of tub_size.
    """

    heading: QRect
    left: QRect
    right: QRect
    numbers: tuple[QRect, ...]
    heats: tuple[QRect, ...]
    shelves: tuple[QLine, ...]
    tub_size: tuple[int, int]
    tubs_at: tuple[tuple[QPoint, ...], ...]


def lay_out(counts: Counts, area: QRectF, measures: Measures) -> list[RackShape]:
    """Every rack at the same height, in as many bands as show the tubs largest."""
    if not counts or area.isEmpty():
        return []
    places, legible = _best(counts, area, measures)
    if legible < _CROWDED * measures.good:
        measures = measures.tight()
        places, _ = _best(counts, area, measures)
    return [_rack(rack, place, measures) for rack, place in zip(counts, places, strict=True)]


def _best(counts: Counts, area: QRectF, m: Measures) -> tuple[list[QRectF], float]:
    """The places of the best number of bands, and how legible that is; fewer bands win ties."""
    most = min(len(counts), _BANDS_MOST)
    tries = [_in_bands(counts, area, m, bands) for bands in range(1, most + 1)]
    told = [_legibility(counts, places, m) for places in tries]
    best = told.index(max(told))
    return tries[best], told[best]


def _legibility(counts: Counts, places: Sequence[QRectF], m: Measures) -> float:
    """The smallest tub decides; past what it needs to say all, more size is worth nothing."""
    sizes = [_pitch(rack, place, m) for rack, place in zip(counts, places, strict=True)]
    return min(min(wide, 0.8 * high, m.good) for wide, high in sizes)


def _in_bands(counts: Counts, area: QRectF, m: Measures, bands: int) -> list[QRectF]:
    """Where each rack stands when they are cut into *bands*."""
    groups = _split([_weight(rack) for rack in counts], bands)
    high = (area.height() - m.air * (len(groups) - 1)) / len(groups)
    places: list[QRectF] = []
    for number, (first, last) in enumerate(groups):
        top = area.top() + number * (high + m.air)
        places += _band(counts[first:last], QRectF(area.left(), top, area.width(), high), m)
    return places


def _weight(rack: Sequence[int]) -> float:
    return float(max((*rack, 1)) ** _WIDER_BY)


def _split(weights: Sequence[float], bands: int) -> list[tuple[int, int]]:
    """Racks in order, cut into *bands* of about the same weight, none of them empty.

    >>> _split([1, 1, 1, 1], 2), _split([3, 1, 1], 3)
    ([(0, 2), (2, 4)], [(0, 1), (1, 2), (2, 3)])
    """
    ends: list[int] = []
    used, total = 0.0, sum(weights)
    for index, weight in enumerate(weights):
        used += weight
        to_come, left = bands - 1 - len(ends), len(weights) - index - 1
        full = used >= 0.98 * total * (len(ends) + 1) / bands
        if to_come and left >= to_come and (full or left == to_come):
            ends.append(index + 1)
    ends.append(len(weights))
    return list(zip([0, *ends], ends, strict=False))


def _band(racks: Counts, band: QRectF, m: Measures) -> list[QRectF]:
    widths = _widths(racks, band.width(), m)
    spare = band.width() - sum(widths) - len(racks) * m.beside
    air = min(2.2 * m.air, spare / (len(racks) - 1)) if len(racks) > 1 else 0.0
    places, left = [], band.left()
    for width in widths:
        places.append(QRectF(left, band.top(), width + m.beside, band.height()))
        left += width + m.beside + max(m.air, air)
    return places


def _widths(racks: Counts, width: float, m: Measures) -> list[float]:
    """Width of each row of tubs; what a small rack cannot use goes to the others."""
    room = max(1.0, width - len(racks) * m.beside - (len(racks) - 1) * m.air)
    most = [max((*rack, 1)) * m.widest for rack in racks]
    weights = [_weight(rack) for rack in racks]
    given = [0.0] * len(racks)
    for _ in range(_PASSES):
        open_ = [n for n in range(len(racks)) if given[n] < most[n]]
        spare = room - sum(given)
        total = sum(weights[n] for n in open_)
        for n in open_:
            given[n] = min(most[n], given[n] + spare * weights[n] / total)
    return given


def _pitch(rack: Sequence[int], place: QRectF, m: Measures) -> tuple[int, int]:
    """From one tub to the next, and from one shelf to the next, in whole px."""
    wide = int((place.width() - m.beside) / max((*rack, 1)))
    high = int(min(m.tallest, (place.height() - m.head) / max(1, len(rack))))
    return max(3, wide), max(4, high)


def _rack(rack: Sequence[int], place: QRectF, m: Measures) -> RackShape:
    """Fronts stand on their shelf, with air between that shrinks with them."""
    left, head = round(place.left()), round(m.head)
    top = round(place.top()) + head
    up_left, up_right = round(m.left), round(m.right)
    tub, shelf = _pitch(rack, place, m)
    air = 4 if tub >= 24 else 2 if tub >= 12 else 1
    side, first = max(1, air // 2), left + up_left
    last = first + tub * max((*rack, 1))
    tops = [top + n * shelf for n in range(len(rack))]
    high = shelf * max(1, len(rack)) + round(min(m.right, shelf / 6))
    return RackShape(
        heading=QRect(left, top - head, last - left + up_right + round(m.heat), head - 2),
        left=QRect(left, top - 2, up_left, high),
        right=QRect(last, top - 2, up_right, high),
        numbers=tuple(QRect(left, y, up_left, shelf) for y in tops),
        heats=tuple(QRect(last + up_right, y + 1, round(m.heat), shelf - 2) for y in tops),
        shelves=tuple(
            QLine(first, y + shelf + by, last, y + shelf + by) for y in tops for by in (-1, 1)
        ),
        tub_size=(max(2, tub - air), max(3, shelf - side - 2)),
        tubs_at=tuple(
            tuple(QPoint(first + n * tub + side, y + side) for n in range(count))
            for y, count in zip(tops, rack, strict=True)
        ),
    )
