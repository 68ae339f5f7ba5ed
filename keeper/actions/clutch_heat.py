"""The heat a clutch lay in: what probes and hands read in its incubator, while it lay there."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date, datetime

from keeper.actions.eggs_placing import Stay
from keeper.actions.keeping import Keeping
from keeper.husbandry.events import Zone
from keeper.store import readings
from keeper.store.heat_days import readings_at


@dataclass(frozen=True, slots=True, kw_only=True)
class LainHeat:
    """Degrees Celsius from *since* on: lowest, mean of the days' means, highest.

    days: the mean of each day that was read.
    """

    since: date
    low_c: float
    mean_c: float
    high_c: float
    days: Mapping[date, float] = field(default_factory=dict)


@dataclass(slots=True)
class _Day:
    low_c: float
    high_c: float
    sum_c: float
    count: int

    @property
    def mean_c(self) -> float:
        return self.sum_c / self.count


def lain_heat(keeping: Keeping, stays: Sequence[Stay], until: datetime) -> LainHeat | None:
    """What was read where the eggs lay, up to *until*; None where nothing was."""
    days: dict[date, _Day] = {}
    for day, low_c, mean_c, high_c in _read(keeping, stays, until):
        known = days.get(day)
        if known is None:
            days[day] = _Day(low_c=low_c, high_c=high_c, sum_c=mean_c, count=1)
            continue
        known.low_c, known.high_c = min(known.low_c, low_c), max(known.high_c, high_c)
        known.sum_c, known.count = known.sum_c + mean_c, known.count + 1
    if not days:
        return None
    return LainHeat(
        since=min(stay.since for stay in stays).date(),
        low_c=min(day.low_c for day in days.values()),
        mean_c=sum(day.mean_c for day in days.values()) / len(days),
        high_c=max(day.high_c for day in days.values()),
        days={day: told.mean_c for day, told in sorted(days.items())},
    )


_Told = tuple[date, float, float, float]
"""Local day, lowest, mean and highest: of an hour of a probe, or of one reading by hand."""


def _read(keeping: Keeping, stays: Sequence[Stay], until: datetime) -> Iterator[_Told]:
    for stay in stays:
        end = min(until, stay.until or until)
        if stay.since >= end:
            continue
        yield from _probed(keeping, stay, end)
        first, last = stay.since.date(), end.date()
        for _, _, day, temp_c in readings_at(
            keeping.book, [stay.place], [Zone.INCUBATOR], first, last
        ):
            yield day, temp_c, temp_c, temp_c


def _probed(keeping: Keeping, stay: Stay, end: datetime) -> Iterator[_Told]:
    for probe, first, last in _hung(keeping, stay, end):
        for hour in readings.hours_of(keeping.book, probe, first, last):
            day = hour.at.astimezone(stay.since.tzinfo).date()
            yield day, hour.low_c, hour.mean_c, hour.high_c


def _hung(keeping: Keeping, stay: Stay, end: datetime) -> Iterator[tuple[str, datetime, datetime]]:
    """Probes that hung in the incubator of *stay*, and from when to when."""
    for probe, placed in readings.placings(keeping.book).items():
        ends = [each.happened.at for each in placed[1:]]
        for each, until in zip(placed, [*ends, end], strict=True):
            first, last = max(stay.since, each.happened.at), min(end, until)
            is_there = each.zone is Zone.INCUBATOR and each.place == stay.place
            if is_there and first < last:
                yield probe, first, last
