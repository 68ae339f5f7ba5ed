"""Holds that run on a day: quarantines anew where one arrived, and longer where mites were."""

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from keeper.actions.holds_ever import holds_ever
from keeper.actions.keeping import Keeping
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import HoldKind, HoldSet, Moved, Remark, RemarkKind
from keeper.husbandry.house import MiteStep, MitesTold
from keeper.rules.quarantine import (
    NOWHERE,
    Longer,
    MitesSeen,
    Restart,
    arrivals,
    lengthened,
    rack_of,
    rack_on,
    restarted,
)
from keeper.store import reading
from keeper.store.rows import day_number

_OVER = timedelta(days=400)
"""A quarantine that was over for longer than this is not begun anew."""


@dataclass(frozen=True, slots=True)
class OpenHolds:
    """Holds set by hand that run on a day; quarantines among them that began anew, or last longer.

    A quarantine may have done both: it runs as *longer* says.
    """

    holds: Mapping[AnimalId, Sequence[HoldSet]]
    anew: Mapping[AnimalId, Restart]
    longer: Mapping[AnimalId, Longer]


def open_holds(keeping: Keeping, on: date) -> OpenHolds:
    """Every hold set by hand that runs on the day *on*."""
    lately = _lately(keeping, on)
    holds = reading.open_holds(keeping.book, on)
    if not lately:
        return OpenHolds(holds, {}, {})
    anew, longer = _changed(keeping, lately, on)
    found = {animal: list(kept) for animal, kept in holds.items()}
    for animal in {*anew, *longer}:
        others = [h for h in found.get(animal, []) if h.kind is not HoldKind.QUARANTINE]
        runs = longer[animal].hold if animal in longer else anew[animal].hold
        found[animal] = [*others, runs]
    return OpenHolds(found, anew, longer)


def _lately(keeping: Keeping, on: date) -> frozenset[AnimalId]:
    """Animals that were in quarantine lately, released since or not."""
    condition = "e.kind = ? AND e.day <= ? AND (e.until IS NULL OR e.until >= ?)"
    days = (day_number(on), day_number(on - _OVER))
    kept = reading.all_of(keeping.book, HoldSet, condition, HoldKind.QUARANTINE.value, *days)
    return frozenset(entry.event.animal for entry in kept)


def _changed(
    keeping: Keeping, animals: frozenset[AnimalId], on: date
) -> tuple[dict[AnimalId, Restart], dict[AnimalId, Longer]]:
    """Quarantines of *animals* that nobody ended, that began anew or last longer, and run."""
    moves = {animal: _moves(keeping, animal, on) for animal in animals}
    came, seen = arrivals(moves, _quarantines(keeping, animals, on)), _mites(keeping, on)
    anew: dict[AnimalId, Restart] = {}
    longer: dict[AnimalId, Longer] = {}
    for animal, held in reading.open_holds(keeping.book, on, ends_from=on - _OVER).items():
        own = [hold for hold in held if hold.kind is HoldKind.QUARANTINE]
        if not own:
            continue
        restart = restarted(own[-1], moves[animal], came, on)
        hold = restart.hold if restart else own[-1]
        mites = lengthened(hold, moves[animal], seen, on)
        until = mites.hold.until if mites else hold.until
        if until is None or on < until:
            anew |= {animal: restart} if restart else {}
            longer |= {animal: mites} if mites else {}
    return anew, longer


def _mites(keeping: Keeping, on: date) -> list[MitesSeen]:
    """Every day on which mites were there: seen on an animal, or met in a rack or the room."""
    since = (day_number(on - _OVER), day_number(on))
    steps = reading.all_of(keeping.book, MiteStep, "e.day BETWEEN ? AND ?", *since)
    met = [
        MitesSeen(on=step.happened.day, rack=rack_of(step.place))
        for step in (entry.event for entry in steps)
        if step.told in (MitesTold.BEGUN, MitesTold.SEEN)
    ]
    condition = "e.kind = ? AND e.day BETWEEN ? AND ?"
    seen = reading.all_of(keeping.book, Remark, condition, RemarkKind.MITES.value, *since)
    return [*met, *(_seen_on(keeping, entry.event) for entry in seen)]


def _seen_on(keeping: Keeping, remark: Remark) -> MitesSeen:
    """Mites on an animal are in its rack too; one without a tub had them alone."""
    day = remark.happened.day
    rack = rack_on(_moves(keeping, remark.animal, day), day)
    return MitesSeen(on=day, rack=rack or NOWHERE, animal=remark.animal)


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
