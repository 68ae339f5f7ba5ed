"""A new arrival restarts the quarantine of every animal in its room.

What the book knows of rooms is the rack: a rack in which animals are in quarantine is taken for
a room of its own. An arrival is an animal that came into that rack from elsewhere, or from
another rack, while it was in quarantine itself.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import HoldSet, Moved
from keeper.husbandry.place import place_of
from keeper.husbandry.profile import COMMON_PRACTICE, Sourced
from keeper.husbandry.reasons import Reason, because
from keeper.husbandry.when import on_day

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("quarantine began anew", ("on", "text", "place", "since")),
)
"""Every reason of this module with the figures it carries."""

HELD_WITHIN_DAYS = Sourced(value=7, source=COMMON_PRACTICE)
"""An animal put into quarantine so long after it came was a new arrival when it came."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Arrival:
    """An animal that came into a rack, while in quarantine, on a day."""

    animal: AnimalId
    rack: str
    on: date


@dataclass(frozen=True, slots=True, kw_only=True)
class Restart:
    """A quarantine that began anew. since: its first day before; hold: as it runs now."""

    hold: HoldSet
    since: date
    arrival: Arrival


def rack_of(written: str | None) -> str | None:
    """The rack of a written place; a place that names no rack is a room of its own.

    >>> rack_of("q1-2"), rack_of("shelf by the window"), rack_of(None)
    ('Q', 'shelf by the window', None)
    """
    place = place_of(written or "")
    return (written or None) if place is None else place.rack


def arrivals(
    moves: Mapping[AnimalId, Sequence[Moved]], held: Mapping[AnimalId, Sequence[HoldSet]]
) -> list[Arrival]:
    """Every arrival in a rack, by day. moves: all of an animal's, oldest first.

    held: its quarantines. Where it was first written into the book, it counts from the day of
    its quarantine if that was earlier: those taken in together had come before.
    """
    found = []
    for animal, own in moves.items():
        before: str | None = None
        for move in own:
            rack, on = rack_of(move.place), move.happened.day
            hold = next((h for h in held.get(animal, ()) if _was_new(h, on)), None)
            if rack is not None and rack != before and hold is not None:
                on = on if before else min(on, hold.happened.day)
                found.append(Arrival(animal=animal, rack=rack, on=on))
            before = rack
    return sorted(found, key=lambda each: (each.on, each.animal))


def restarted(
    hold: HoldSet, moves: Sequence[Moved], came: Iterable[Arrival], today: date
) -> Restart | None:
    """The quarantine *hold* with its days counted from the last arrival beside its animal.

    moves: the animal's own, oldest first. None where nobody came, or it was over by then.
    """
    length = hold.until - hold.happened.day if hold.until is not None else None
    since, until = hold.happened.day, hold.until
    last: Arrival | None = None
    for arrival in came:
        beside = arrival.animal != hold.animal and _rack_on(moves, arrival.on) == arrival.rack
        runs = since < arrival.on <= today and (until is None or arrival.on < until)
        if beside and runs:
            last, since = arrival, arrival.on
            until = arrival.on + length if length is not None else None
    if last is None:
        return None
    offset = hold.happened.at.utcoffset() or timedelta(0)
    anew = replace(hold, happened=on_day(since, offset), until=until)
    return Restart(hold=anew, since=hold.happened.day, arrival=last)


def restart_reason(restart: Restart, who: str) -> Reason:
    """Why the days are counted anew. who: the arrival, as the keeper calls it."""
    arrival = restart.arrival
    return because(
        "quarantine began anew", on=arrival.on, text=who, place=arrival.rack, since=restart.since
    )


def _was_new(hold: HoldSet, on: date) -> bool:
    """Whether the animal of *hold* was in quarantine on a day, or was put into it soon after."""
    begun = hold.happened.day - timedelta(days=HELD_WITHIN_DAYS.value) <= on
    return begun and (hold.until is None or on < hold.until)


def _rack_on(moves: Sequence[Moved], on: date) -> str | None:
    places = [move.place for move in moves if move.happened.day <= on]
    return rack_of(places[-1]) if places else None
