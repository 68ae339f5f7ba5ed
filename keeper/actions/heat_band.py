"""The day-night band of one place and zone: fourteen days against today, by the time of day."""

from bisect import bisect_left
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta, timezone
from math import floor
from statistics import median

from keeper.actions.due_board import feed_nights_around
from keeper.actions.keeping import Keeping
from keeper.husbandry.events import Heat, ProbePlaced, Zone
from keeper.store import reading, readings
from keeper.store.readings import DAY_SECONDS, HourRange
from keeper.store.rows import day_number

STEPS = 48
"""The day is told in half hours."""

BAND_DAYS = 14
MONTH_DAYS = 30
_LEAST_FOR_BAND = 5
_LEAST_STEPS = 12
_STEP_SECONDS = DAY_SECONDS // STEPS
_SECOND = timedelta(seconds=1)

Told = tuple[int, float]
"""A second since 1970, of UTC or of the place, and degrees Celsius."""


@dataclass(frozen=True, slots=True, kw_only=True)
class BandStep:
    """A half hour of the day over the days before: the middle, and where 5 and 95 % lie."""

    low_c: float
    middle_c: float
    high_c: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Point:
    """One reading. hour: time of day at the place, 0 to 24."""

    hour: float
    temp_c: float


@dataclass(frozen=True, slots=True, kw_only=True)
class DayBand:
    """What is drawn: steps of the band (None: fewer than five readings), and today's points.

    before: the readings of the days before, where they are too few for a band. nights: feed
    nights of these days. by_probe: whether any reading came from a probe.
    """

    place: str
    zone: Zone
    on: date
    steps: tuple[BandStep | None, ...]
    today: tuple[Point, ...]
    before: tuple[Point, ...]
    days: int
    count: int
    nights: tuple[date, ...]
    by_probe: bool

    @property
    def has_band(self) -> bool:
        """Whether enough of the day is known to draw a band."""
        return sum(step is not None for step in self.steps) >= _LEAST_STEPS


def band_of(keeping: Keeping, place: str, zone: Zone, on: date) -> DayBand:
    """The last fourteen days of *zone* at *place* before *on*, and the day *on*."""
    offset = keeping.now().utcoffset() or timedelta(0)
    end = _local(on + timedelta(days=1), offset)
    begin = end - timedelta(days=BAND_DAYS + 1)
    typed = _typed(keeping, place, zone, begin, end)
    probed = list(_probed(keeping, place, zone, begin, end))
    shift, midnight = offset // _SECOND, day_number(on) * DAY_SECONDS
    found = sorted((at + shift, temp_c) for at, temp_c in (*typed, *probed))
    first = bisect_left(found, (midnight,))
    before, today = found[:first], found[first : bisect_left(found, (midnight + DAY_SECONDS,))]
    nights = feed_nights_around(keeping, on)
    return DayBand(
        place=place,
        zone=zone,
        on=on,
        steps=tuple(_steps(before)),
        today=tuple(map(_point, today)),
        before=tuple(map(_point, before)) if not probed else (),
        days=len({at // DAY_SECONDS for at, _ in before}),
        count=len(before),
        nights=tuple(n for n in nights if on - timedelta(days=BAND_DAYS) <= n <= on),
        by_probe=bool(probed),
    )


def month_of(keeping: Keeping, probe: str, until: datetime) -> list[HourRange]:
    """Thirty days of one probe up to *until*, hour by hour, ready to draw."""
    return readings.hours_of(keeping.book, probe, until - timedelta(days=MONTH_DAYS), until)


def probes_at(
    keeping: Keeping, place: str, zone: Zone
) -> list[tuple[ProbePlaced, datetime | None]]:
    """Each time that a probe hung there, and until when; None: it still does."""
    found = []
    for events in readings.placings(keeping.book).values():
        ends = [event.happened.at for event in events[1:]] + [None]
        for event, end in zip(events, ends, strict=True):
            if event.place == place and event.zone is zone:
                found.append((event, end))
    return found


def _local(day: date, offset: timedelta) -> datetime:
    return datetime.combine(day, time.min, timezone(offset))


def _typed(
    keeping: Keeping, place: str, zone: Zone, begin: datetime, end: datetime
) -> Iterator[Told]:
    first, last = _seconds(begin), _seconds(end)
    entries = reading.all_of(
        keeping.book, Heat, "e.place = ? AND e.at BETWEEN ? AND ?", place, first, last
    )
    for entry in entries:
        if entry.event.zone is zone:
            yield _seconds(entry.event.happened.at), entry.event.temp_c


def _probed(
    keeping: Keeping, place: str, zone: Zone, begin: datetime, end: datetime
) -> Iterator[Told]:
    for event, until in probes_at(keeping, place, zone):
        first, last = max(begin, event.happened.at), min(end, until or end)
        if first < last:
            for at, value in readings.values_of(keeping.book, event.probe, first, last):
                yield at, value / 100


def _steps(before: Sequence[Told]) -> Iterator[BandStep | None]:
    steps: list[list[float]] = [[] for _ in range(STEPS)]
    for at, temp_c in before:
        steps[at % DAY_SECONDS // _STEP_SECONDS].append(temp_c)
    for values in steps:
        yield _step(sorted(values)) if len(values) >= _LEAST_FOR_BAND else None


def _step(ordered: Sequence[float]) -> BandStep:
    return BandStep(
        low_c=_quantile(ordered, 0.05),
        middle_c=median(ordered),
        high_c=_quantile(ordered, 0.95),
    )


def _quantile(ordered: Sequence[float], share: float) -> float:
    """Between the two nearest values.

    >>> _quantile([1.0, 2.0, 3.0], 0.25)
    1.5
    """
    place = share * (len(ordered) - 1)
    low = floor(place)
    high = min(low + 1, len(ordered) - 1)
    return ordered[low] + (place - low) * (ordered[high] - ordered[low])


def _point(each: Told) -> Point:
    at, temp_c = each
    return Point(hour=at % DAY_SECONDS / 3600, temp_c=temp_c)


def _seconds(at: datetime) -> int:
    return int(at.timestamp())
