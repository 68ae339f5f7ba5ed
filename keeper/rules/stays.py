"""Where animals stood: stays in tubs, who shared one, which tubs touch, days of washing up.

A stay goes from a move into a tub to the next move, or to the day on which its animal left the
room or was missed. One that is found without a move stands where it stood before, as on the
board. A day of moving counts for both tubs, as it does for the sires of a clutch.
"""

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from enum import Enum
from itertools import groupby

from keeper.husbandry.animal import IN_THE_ROOM, AnimalId, Status
from keeper.husbandry.events import Moved, Stock
from keeper.husbandry.place import Place, place_of
from keeper.husbandry.profile import practice

TUBS_TOGETHER = practice(2)
"""From so many tubs of a rack washed on one day on, hands can put two animals back wrongly."""


class Side(Enum):
    """Where a tub touches another, as the rack is looked at from the front."""

    LEFT = "left"
    RIGHT = "right"
    ABOVE = "above"
    BELOW = "below"


@dataclass(frozen=True, slots=True, kw_only=True)
class Stay:
    """Days of one animal in one place; until is the first day elsewhere, None while it lasts.

    came_from, went_to: the place straight before and after. left: the status that ended it, where
    no move did.
    """

    animal: AnimalId
    place: str
    since: date
    until: date | None = None
    came_from: str | None = None
    went_to: str | None = None
    left: Status | None = None

    def last(self, today: date) -> date:
        """Its last day, a day of moving included."""
        return today if self.until is None else self.until

    def covers(self, day: date) -> bool:
        """Whether the animal stood there at the end of *day*; of a visit of hours, on it."""
        if self.since == self.until:
            return day == self.since
        return self.since <= day and (self.until is None or day < self.until)


@dataclass(frozen=True, slots=True, kw_only=True)
class Away:
    """Days out of the room. until: back on, None while it lasts; from_place: where it was last."""

    animal: AnimalId
    status: Status
    since: date
    until: date | None = None
    from_place: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Shared:
    """Another animal in the same tub, both days included.

    in_passing: one left on the day on which the other came, so perhaps they never met.
    """

    other: AnimalId
    first: date
    last: date
    in_passing: bool = False

    @property
    def days(self) -> int:
        return (self.last - self.first).days + 1


@dataclass(frozen=True, slots=True, kw_only=True)
class WashDay:
    """So many tubs of a rack were washed on one day, of so many that were lived in."""

    on: date
    tubs: tuple[str, ...]
    lived: int


def place_name(written: str) -> str:
    """A place as stays name it, however it is written.

    >>> place_name("b3-2"), place_name(" shelf ")
    ('B3·2', 'shelf')
    """
    place = place_of(written)
    return written.strip() if place is None else str(place)


@dataclass(frozen=True, slots=True)
class _Change:
    day: date
    place: str | None
    status: Status


def stays_of(animal: AnimalId, moves: Iterable[Moved], stock: Iterable[Stock] = ()) -> list[Stay]:
    """The places of one animal one after another."""
    changes = _changes(moves, stock)
    stays: list[Stay] = []
    for n, change in enumerate(changes):
        where = _where(change)
        if where is None:
            continue
        before = _where(changes[n - 1]) if n else None
        after = changes[n + 1] if n + 1 < len(changes) else None
        gone = after is not None and after.status not in IN_THE_ROOM
        stays.append(
            Stay(
                animal=animal,
                place=where,
                since=change.day,
                until=after.day if after else None,
                came_from=before,
                went_to=_where(after) if after else None,
                left=after.status if after and gone else None,
            )
        )
    return stays


def away_of(animal: AnimalId, moves: Iterable[Moved], stock: Iterable[Stock]) -> list[Away]:
    """The times out of the room: missing, on loan, sold, dead."""
    changes = _changes(moves, stock)
    found: list[Away] = []
    for n, change in enumerate(changes):
        if change.status in IN_THE_ROOM:
            continue
        until = changes[n + 1].day if n + 1 < len(changes) else None
        before = _where(changes[n - 1]) if n else None
        found.append(
            Away(
                animal=animal,
                status=change.status,
                since=change.day,
                until=until,
                from_place=before,
            )
        )
    return found


def lanes_of(stays: Sequence[Stay]) -> tuple[int, ...]:
    """A lane for each of the stays in one tub, oldest first: those who share lie side by side.

    >>> day = date(2026, 3, 1)
    >>> one = Stay(animal=1, place="A1·1", since=day)
    >>> lanes_of([one, replace(one, animal=2)])
    (0, 1)
    """
    ends: list[date] = []
    found = []
    for stay in stays:
        until = date.max if stay.until is None else stay.until
        lane = next((n for n, end in enumerate(ends) if end <= stay.since), len(ends))
        ends[lane : lane + 1] = [until]
        found.append(lane)
    return tuple(found)


def shared_with(stay: Stay, others: Iterable[Stay], today: date) -> list[Shared]:
    """Everyone who was in the tub during *stay*, in the order of time."""
    found = []
    for other in others:
        if other.place != stay.place or other.animal == stay.animal:
            continue
        first = max(stay.since, other.since)
        last = min(stay.last(today), other.last(today))
        if first <= last:
            passing = _one_after_another(stay, other) or _one_after_another(other, stay)
            each = Shared(other=other.animal, first=first, last=last, in_passing=passing)
            found.append(each)
    return sorted(found, key=lambda each: (each.first, each.other))


def touching(place: Place) -> Mapping[Side, Place]:
    """The four tubs beside, above and below one; that they stand in the rack is not said.

    >>> {side.value: str(each) for side, each in touching(Place("B", 2, 4)).items()}
    {'left': 'B2·3', 'right': 'B2·5', 'above': 'B1·4', 'below': 'B3·4'}
    """
    return {
        Side.LEFT: replace(place, tub=place.tub - 1),
        Side.RIGHT: replace(place, tub=place.tub + 1),
        Side.ABOVE: replace(place, row=place.row - 1),
        Side.BELOW: replace(place, row=place.row + 1),
    }


def wash_days(
    cleaned: Iterable[tuple[AnimalId, date]], stays: Sequence[Stay]
) -> tuple[WashDay, ...]:
    """Days on which several tubs of one rack were cleaned whole. stays: of that rack alone."""
    by_animal: dict[AnimalId, list[Stay]] = defaultdict(list)
    for stay in stays:
        by_animal[stay.animal].append(stay)
    tubs: dict[date, set[str]] = defaultdict(set)
    for animal, day in cleaned:
        tubs[day] |= {stay.place for stay in by_animal[animal] if stay.covers(day)}
    return tuple(
        WashDay(
            on=day,
            tubs=tuple(sorted(washed, key=_walking)),
            lived=len({stay.place for stay in stays if stay.covers(day)}),
        )
        for day, washed in sorted(tubs.items())
        if len(washed) >= TUBS_TOGETHER.value
    )


def _changes(moves: Iterable[Moved], stock: Iterable[Stock]) -> list[_Change]:
    """Every time at which place or status changed, each with both as they were from then on.

    What was written of one instant is one change. One that is back and is put into another tub
    on the same day was not in its old one meanwhile.
    """
    told: list[Moved | Stock] = sorted([*moves, *stock], key=lambda each: each.happened)
    place: str | None = None
    status = Status.KEPT
    found: list[_Change] = []
    for _, events in groupby(told, key=lambda each: each.happened.at):
        for event in events:
            day = event.happened.day
            if isinstance(event, Moved):
                place = None if event.place is None else place_name(event.place)
            else:
                status = event.status
        change = _Change(day, place, status)
        if _is_just_back(found) and found[-1].day == day:
            found.pop()
        if not found or _as_it_was(found[-1]) != _as_it_was(change):
            found.append(change)
    return found


def _is_just_back(changes: Sequence[_Change]) -> bool:
    """Whether the last of the changes brought an animal back into the room."""
    if len(changes) < 2:
        return False
    return changes[-2].status not in IN_THE_ROOM and changes[-1].status in IN_THE_ROOM


def _as_it_was(change: _Change) -> tuple[str | None, Status]:
    return _where(change), change.status


def _where(change: _Change) -> str | None:
    """The place of one that is in the room."""
    return change.place if change.status in IN_THE_ROOM else None


def _one_after_another(before: Stay, after: Stay) -> bool:
    return before.until == after.since and before.since < after.since


def _walking(place: str) -> tuple[str, int, int]:
    found = place_of(place)
    return (place, 0, 0) if found is None else (found.rack, found.row, found.tub)
