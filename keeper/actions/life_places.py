"""Where an animal stood, with whom, and how warm it was there."""

from bisect import bisect_right
from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from statistics import median

from keeper.actions.keeping import Keeping
from keeper.husbandry.animal import IN_THE_ROOM, AnimalId
from keeper.husbandry.events import Moved, Stock, Zone
from keeper.husbandry.place import place_of
from keeper.store import reading
from keeper.store.heat_days import Reading, readings_at


@dataclass(frozen=True, slots=True, kw_only=True)
class Stay:
    """Days in one tub; until is the first day elsewhere, None while it lasts."""

    place: str
    since: date
    until: date | None = None

    def covers(self, day: date) -> bool:
        return self.since <= day and (self.until is None or day < self.until)


@dataclass(frozen=True, slots=True, kw_only=True)
class Mate:
    """Another animal in the same tub over the days that both were there."""

    animal: AnimalId
    name: str
    since: date
    until: date | None

    def covers(self, day: date) -> bool:
        return self.since <= day and (self.until is None or day < self.until)


@dataclass(frozen=True, slots=True, kw_only=True)
class HeatDay:
    """One day at the place she stood in; None: not read."""

    day: date
    hot_c: float | None = None
    night_c: float | None = None


def stays_of(moves: Iterable[Moved], stock: Iterable[Stock] = ()) -> list[Stay]:
    """Tubs one after another; leaving the room ends the last."""
    changes = [(m.happened.at, m.happened.day, m.place) for m in moves]
    changes += [(s.happened.at, s.happened.day, None) for s in stock if s.status not in IN_THE_ROOM]
    changes.sort(key=lambda change: change[0])
    stays: list[Stay] = []
    for n, (_, since, place) in enumerate(changes):
        until = changes[n + 1][1] if n + 1 < len(changes) else None
        if place is None:
            continue
        if stays and stays[-1].place == place and stays[-1].until == since:
            since = stays.pop().since
        stays.append(Stay(place=place, since=since, until=until))
    return stays


def mates_of(keeping: Keeping, animal: AnimalId, stays: Sequence[Stay]) -> list[Mate]:
    """Everyone who shared one of the tubs, over the days shared, in the order of time."""
    others = {
        entry.event.animal
        for place in {stay.place for stay in stays}
        for entry in reading.all_of(keeping.book, Moved, "e.place = ?", place)
    }
    shared = [mate for other in others - {animal} for mate in _shared(keeping, other, stays)]
    return sorted(shared, key=lambda mate: (mate.since, mate.animal))


def heat_of(keeping: Keeping, stays: Sequence[Stay], on: date) -> list[HeatDay]:
    """Hot end and night low of each day that was read, at her tub, else her row, else her rack.

    Several readings of a day: the middle one of the hot end, the lowest of the night.
    """
    near = {name for stay in stays for name in _names(stay.place)}
    if not near:
        return []
    zones = (Zone.HOT, Zone.NIGHT)
    readings = readings_at(keeping.book, near, zones, stays[0].since, on)
    by_day = _nearest(readings, stays)
    hot, night = by_day.get(Zone.HOT, {}), by_day.get(Zone.NIGHT, {})
    return [
        HeatDay(
            day=day,
            hot_c=median(hot[day]) if day in hot else None,
            night_c=min(night[day]) if day in night else None,
        )
        for day in sorted({*hot, *night})
    ]


def _shared(keeping: Keeping, other: AnimalId, stays: Sequence[Stay]) -> list[Mate]:
    row = reading.animal_now(keeping.book, other)
    if row is None:
        return []
    moves = (entry.event for entry in reading.history(keeping.book, Moved, other))
    stock = (entry.event for entry in reading.history(keeping.book, Stock, other))
    theirs = stays_of(moves, stock)
    return [
        Mate(
            animal=other,
            name=row.called,
            since=max(mine.since, stay.since),
            until=_sooner(mine.until, stay.until),
        )
        for mine in stays
        for stay in theirs
        if _together(mine, stay)
    ]


def _together(one: Stay, other: Stay) -> bool:
    """Whether two stays share a tub for a day or more."""
    begun = one.until is None or other.since < one.until
    return one.place == other.place and begun and (other.until is None or one.since < other.until)


def _sooner(one: date | None, other: date | None) -> date | None:
    return min((day for day in (one, other) if day is not None), default=None)


def _names(place: str) -> tuple[str, ...]:
    """Names under which heat at *place* is written, nearest first: tub, row, rack."""
    found = place_of(place)
    if found is None:
        return (place,)
    return (place, f"{found.rack}{found.row}", found.rack)


def _nearest(
    readings: Iterable[Reading], stays: Sequence[Stay]
) -> Mapping[Zone, dict[date, list[float]]]:
    """Values of each zone and day, from the nearest place that was read on that day."""
    near = _Near(stays)
    ranks: dict[tuple[Zone, date], int] = {}
    values: Mapping[Zone, dict[date, list[float]]] = defaultdict(lambda: defaultdict(list))
    for place, zone, day, temp_c in readings:
        rank = near.rank(place, day)
        if rank is None or rank > ranks.get((zone, day), rank):
            continue
        if rank < ranks.get((zone, day), rank + 1):
            ranks[zone, day] = rank
            values[zone][day] = []
        values[zone][day].append(temp_c)
    return values


class _Near:
    """How near a place that was read is to the tub she stood in."""

    def __init__(self, stays: Sequence[Stay]) -> None:
        self._stays = stays
        self._starts = [stay.since for stay in stays]
        self._names = [_names(stay.place) for stay in stays]

    def rank(self, place: str, day: date) -> int | None:
        """0 her tub, 1 its row, 2 its rack; None: elsewhere."""
        index = bisect_right(self._starts, day) - 1
        if index < 0 or not self._stays[index].covers(day) or place not in self._names[index]:
            return None
        return self._names[index].index(place)
