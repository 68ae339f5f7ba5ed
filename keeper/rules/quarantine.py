"""A new arrival restarts the quarantine of every animal in its room; mites seen lengthen it.

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
    ("quarantine until free of mites", ("on", "days", "until", "before")),
)
"""Every reason of this module with the figures it carries."""

HELD_WITHIN_DAYS = Sourced(value=7, source=COMMON_PRACTICE)
"""An animal put into quarantine so long after it came was a new arrival when it came."""

MITE_FREE_DAYS = Sourced(value=30, source=COMMON_PRACTICE)
"""Quarantine lasts for so long after the last day on which mites were there."""

NOWHERE = ""
"""The rack of an animal that stood in none."""


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


@dataclass(frozen=True, slots=True, kw_only=True)
class MitesSeen:
    """Mites on a day. rack: where, None is the whole room. animal: on whom, where it is known."""

    on: date
    rack: str | None
    animal: AnimalId | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Longer:
    """A quarantine that mites lengthen. hold: as it runs now; before: its end without them."""

    hold: HoldSet
    seen: MitesSeen
    before: date


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
        beside = arrival.animal != hold.animal and rack_on(moves, arrival.on) == arrival.rack
        runs = since < arrival.on <= today and (until is None or arrival.on < until)
        if beside and runs:
            last, since = arrival, arrival.on
            until = arrival.on + length if length is not None else None
    if last is None:
        return None
    offset = hold.happened.at.utcoffset() or timedelta(0)
    anew = replace(hold, happened=on_day(since, offset), until=until)
    return Restart(hold=anew, since=hold.happened.day, arrival=last)


def lengthened(
    hold: HoldSet, moves: Sequence[Moved], seen: Iterable[MitesSeen], today: date
) -> Longer | None:
    """The quarantine *hold* with its end after the days without mites; None where that is earlier.

    Mites count on the animal itself, in its rack of that day and in the room as a whole, from
    the first day of the quarantine until it is over. moves: the animal's own, oldest first.
    """
    if hold.until is None:
        return None
    until, last = hold.until, None
    for each in sorted(seen, key=lambda mites: mites.on):
        near = each.rack is None or rack_on(moves, each.on) == each.rack
        runs = hold.happened.day <= each.on < until and each.on <= today
        free_on = each.on + timedelta(days=MITE_FREE_DAYS.value)
        if (near or each.animal == hold.animal) and runs and free_on > until:
            until, last = free_on, each
    if last is None:
        return None
    return Longer(hold=replace(hold, until=until), seen=last, before=hold.until)


def longer_reason(longer: Longer) -> Reason:
    """Why the quarantine lasts longer than its days."""
    return because(
        "quarantine until free of mites",
        on=longer.seen.on,
        days=int(MITE_FREE_DAYS.value),
        until=longer.hold.until,
        before=longer.before,
    )


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


def rack_on(moves: Sequence[Moved], on: date) -> str | None:
    """The rack in which an animal stood at the end of a day; None where it stood in none."""
    places = [move.place for move in moves if move.happened.day <= on]
    return rack_of(places[-1]) if places else None
