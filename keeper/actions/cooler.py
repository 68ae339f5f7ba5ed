"""Hot ends of rows by day, typed or probed, and which rows are cooler than they used to be."""

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from datetime import date, datetime, time, timedelta
from statistics import median

from keeper.actions.keeping import Keeping
from keeper.husbandry.events import Heat, ProbePlaced, Zone
from keeper.husbandry.place import place_of
from keeper.rules.cooler_rows import PAST_DAYS, Cooler, cooler_rows
from keeper.rules.sensors import FAILURE_VALUES_C
from keeper.store import reading, readings


def cooler_of(
    keeping: Keeping, nights: Sequence[date], on: date
) -> Mapping[str, Mapping[date, Cooler]]:
    """What rows and racks read about each of *nights* says against their own past."""
    if not nights:
        return {}
    first = min(nights) - timedelta(days=PAST_DAYS.value)
    return cooler_rows(hot_ends_by_day(keeping, first, on), nights)


def hot_ends_by_day(
    keeping: Keeping, first: date, last: date
) -> dict[str, list[tuple[date, float]]]:
    """The middle of each day's readings, by row or rack, oldest first."""
    found: dict[str, dict[date, list[float]]] = defaultdict(lambda: defaultdict(list))
    for place, day, temp_c in (*_typed(keeping, first, last), *_probed(keeping, first, last)):
        name = _row_or_rack(place)
        if name and temp_c not in FAILURE_VALUES_C:
            found[name][day].append(temp_c)
    return {
        name: [(day, median(days[day])) for day in sorted(days)] for name, days in found.items()
    }


def _typed(keeping: Keeping, first: date, last: date) -> Iterator[tuple[str, date, float]]:
    now_at = keeping.now()
    for heat in reading.on_days(keeping.book, Heat, first, last):
        if heat.zone is Zone.HOT and heat.happened.at <= now_at:
            yield heat.place, heat.happened.day, heat.temp_c


def _probed(keeping: Keeping, first: date, last: date) -> Iterator[tuple[str, date, float]]:
    """The middle of each hour of the probes that hung at hot ends."""
    zone = keeping.now().tzinfo
    begin = datetime.combine(first, time.min, zone)
    end = min(keeping.now(), datetime.combine(last, time.max, zone))
    for probe, placings in readings.placings(keeping.book).items():
        for placed, since, until in _hung(placings, begin, end):
            for hour in readings.hours_of(keeping.book, probe, since, until):
                yield placed.place or "", hour.at.astimezone(zone).date(), hour.mean_c


def _hung(
    placings: Sequence[ProbePlaced], begin: datetime, end: datetime
) -> Iterator[tuple[ProbePlaced, datetime, datetime]]:
    """Where a probe hung at a hot end from *begin* to *end*, and when."""
    ends = [placed.happened.at for placed in placings[1:]]
    for placed, until in zip(placings, [*ends, end], strict=True):
        since, until = max(begin, placed.happened.at), min(end, until)
        if placed.zone is Zone.HOT and placed.place is not None and since < until:
            yield placed, since, until


def _row_or_rack(written: str) -> str:
    """The row of a tub; a row or a rack as it is written."""
    place = place_of(written)
    return written if place is None else f"{place.rack}{place.row}"
