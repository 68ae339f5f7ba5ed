"""Where the tubs of a time-line lie: rows in rack order, a lane for each who shares, in pages."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from keeper.actions.time_line import RackTime, TubTime


@dataclass(frozen=True, slots=True, kw_only=True)
class LineSizes:
    """Lengths in px: the most and the least height of a lane, and air between tubs and rows."""

    most: float
    least: float
    tub_air: float
    row_air: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """A tub on the page: its index, where it begins, its lanes and the height of each."""

    tub: int
    top: float
    lanes: int
    lane_high: float

    @property
    def height(self) -> float:
        return self.lanes * self.lane_high


@dataclass(frozen=True, slots=True, kw_only=True)
class LinePage:
    """The tubs from *first* up to, not including, *last* are shown."""

    lines: tuple[Line, ...]
    first: int
    last: int

    def of(self, tub: int) -> Line | None:
        return next((line for line in self.lines if line.tub == tub), None)


def lanes_in_view(tub: TubTime, first: date, last: date) -> int:
    """So many lanes its stays in view take, one at least."""
    day = timedelta(days=1)
    lanes = [
        bar.lane
        for bar in tub.bars
        if bar.stay.since <= last and (bar.stay.until is None or bar.stay.until + day > first)
    ]
    return 1 + max(lanes, default=0)


def exact_page(
    told: RackTime, days: tuple[date, date], room: float, sizes: LineSizes, first: int
) -> LinePage:
    """The tubs from *first* on that stand on a page, in the lowest lanes."""
    lanes = [lanes_in_view(tub, *days) for tub in told.tubs]
    return _placed(lanes, _gaps(told.tubs, sizes), room, sizes.least, first)


def line_page(
    told: RackTime, days: tuple[date, date], room: float, sizes: LineSizes, at: tuple[int, int]
) -> LinePage:
    """The tubs that stand on a page *room* px high.

    at: the first tub of the page before, and the one that must be in view; the page moves no
    further than it must. Lanes are as high as lets all tubs stand on one page, within limits.
    """
    lanes = [lanes_in_view(tub, *days) for tub in told.tubs]
    gaps = _gaps(told.tubs, sizes)
    high = (room - sum(gaps)) / max(1, sum(lanes))
    high = min(sizes.most, max(sizes.least, high))
    first, chosen = at
    heights = [count * high + gap for count, gap in zip(lanes, gaps, strict=True)]
    first = _first(heights, room, min(first, max(0, len(lanes) - 1)), chosen)
    return _placed(lanes, gaps, room, high, first)


def _placed(
    lanes: Sequence[int], gaps: Sequence[float], room: float, high: float, first: int
) -> LinePage:
    lines: list[Line] = []
    top = 0.0
    for tub in range(first, len(lanes)):
        gap = gaps[tub] if lines else 0.0
        if lines and top + gap + lanes[tub] * high > room + 0.5:
            break
        crowded = min(high, room / lanes[tub])
        lines.append(Line(tub=tub, top=top + gap, lanes=lanes[tub], lane_high=crowded))
        top += gap + lanes[tub] * crowded
    return LinePage(lines=tuple(lines), first=first, last=first + len(lines))


def _gaps(tubs: Sequence[TubTime], sizes: LineSizes) -> list[float]:
    """Air above each tub, more where a row begins."""
    before = [None, *(tub.row for tub in tubs[:-1])]
    return [
        sizes.row_air if tub.row != row and row is not None else sizes.tub_air
        for tub, row in zip(tubs, before, strict=False)
    ]


def _first(heights: Sequence[float], room: float, first: int, chosen: int) -> int:
    """The first tub of the page that holds *chosen*, and no empty room where tubs are left."""
    if chosen < first:
        first = chosen
    while first < chosen and sum(heights[first : chosen + 1]) > room:
        first += 1
    while first > 0 and sum(heights[first - 1 :]) <= room:
        first -= 1
    return first
