"""Holds that run on a day, quarantines counted anew where a new arrival came into their room."""

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from keeper.actions.holds_ever import holds_ever
from keeper.actions.keeping import Keeping
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import HoldKind, HoldSet, Moved
from keeper.rules.quarantine import Restart, arrivals, restarted
from keeper.store import reading
from keeper.store.rows import day_number

_OVER = timedelta(days=400)
"""A quarantine that was over for longer than this is not begun anew."""


@dataclass(frozen=True, slots=True)
class OpenHolds:
    """Holds set by hand that run on a day, and the quarantines among them that began anew."""

    holds: Mapping[AnimalId, Sequence[HoldSet]]
    anew: Mapping[AnimalId, Restart]


def open_holds(keeping: Keeping, on: date) -> OpenHolds:
    """Every hold set by hand that runs on the day *on*."""
    lately = _lately(keeping, on)
    holds = reading.open_holds(keeping.book, on)
    if not lately:
        return OpenHolds(holds, {})
    anew = _begun_anew(keeping, lately, on)
    found = {animal: list(kept) for animal, kept in holds.items()}
    for animal, restart in anew.items():
        others = [h for h in found.get(animal, []) if h.kind is not HoldKind.QUARANTINE]
        found[animal] = [*others, restart.hold]
    return OpenHolds(found, anew)


def _lately(keeping: Keeping, on: date) -> frozenset[AnimalId]:
    """Animals that were in quarantine lately, released since or not."""
    condition = "e.kind = ? AND e.day <= ? AND (e.until IS NULL OR e.until >= ?)"
    days = (day_number(on), day_number(on - _OVER))
    kept = reading.all_of(keeping.book, HoldSet, condition, HoldKind.QUARANTINE.value, *days)
    return frozenset(entry.event.animal for entry in kept)


def _begun_anew(
    keeping: Keeping, animals: frozenset[AnimalId], on: date
) -> dict[AnimalId, Restart]:
    """Quarantines of *animals* that nobody ended, began anew and still run."""
    moves = {animal: _moves(keeping, animal, on) for animal in animals}
    came = arrivals(moves, _quarantines(keeping, animals, on))
    found = {}
    for animal, held in reading.open_holds(keeping.book, on, ends_from=on - _OVER).items():
        own = [hold for hold in held if hold.kind is HoldKind.QUARANTINE]
        restart = restarted(own[-1], moves[animal], came, on) if own else None
        if restart is not None and (restart.hold.until is None or on < restart.hold.until):
            found[animal] = restart
    return found


def _quarantines(
    keeping: Keeping, animals: Iterable[AnimalId], on: date
) -> dict[AnimalId, list[HoldSet]]:
    """Quarantines of each animal, as they were ended by hand."""
    found: dict[AnimalId, list[HoldSet]] = defaultdict(list)
    for animal, holds in holds_ever(keeping, animals, on).items():
        for hold in holds:
            if hold.kind is HoldKind.QUARANTINE:
                found[animal].append(hold)
    return found


def _moves(keeping: Keeping, animal: AnimalId, on: date) -> list[Moved]:
    moves = [entry.event for entry in reading.history(keeping.book, Moved, animal)]
    return [move for move in moves if move.happened.day <= on]
