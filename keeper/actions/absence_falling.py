"""What falls into an absence, read from the book: for the line, the page and the watch."""

from collections import defaultdict
from collections.abc import Sequence
from datetime import date

from keeper.actions.absences import absences
from keeper.actions.due_board import E
from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.kept_lines import clutch_facts
from keeper.actions.quarantine import open_holds
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.care import Dose, FaecalTest, Medicine, Permit
from keeper.husbandry.events import ShedSign
from keeper.husbandry.house import HousePermit
from keeper.husbandry.now import AnimalNow
from keeper.rules.absence import Absence
from keeper.rules.holds import holds_of
from keeper.rules.watch_absence import (
    Falling,
    absence_lines,
    dosing,
    ending,
    faecal_due,
    laying,
    pipping,
)
from keeper.rules.watch_facts import WatchLine
from keeper.store import reading

_SIGNS = 6


def lines_of_absences(keeping: Keeping, on: date) -> tuple[WatchLine, ...]:
    """Lines of the watch for every absence that is not over on the day *on*."""
    return tuple(
        line
        for absence in absences(keeping, on)
        if absence.last >= on
        for line in absence_lines(falling_into(keeping, absence, on), absence)
    )


def falling_into(keeping: Keeping, absence: Absence, on: date) -> list[Falling]:
    """What falls into *absence* from the day *on*, as it is known on that day."""
    everyone = animals_on(keeping, on)
    here = [row for row in everyone if row.in_the_room]
    found = pipping(clutch_facts(keeping, everyone, on), absence, on)
    found += _of_animals(keeping, here, absence, on)
    house = [entry.event for entry in reading.all_of(keeping.book, HousePermit)]
    return found + ending([p for p in house if p.happened.day <= on], absence, on)


def _of_animals(
    keeping: Keeping, here: Sequence[AnimalNow], absence: Absence, on: date
) -> list[Falling]:
    held, sheds = open_holds(keeping, on).holds, reading.before_laying(keeping.book, on)
    medicines, doses = _told(keeping, Medicine, on), _told(keeping, Dose, on)
    tests, permits = _told(keeping, FaecalTest, on), _told(keeping, Permit, on)
    signs = reading.recent(keeping.book, ShedSign, sheds, _SIGNS, until=on)
    found: list[Falling | None] = []
    for row in here:
        key, place = row.animal, row.place or row.called
        if key in held or key in sheds:
            profile = keeping.profile(row)
            holds = holds_of(row, held.get(key, ()), profile, on, signs=signs.get(key, ()))
            found.append(laying(key, place, holds, profile, absence))
            found.append(faecal_due(key, place, tests.get(key, ()), holds, absence, on))
        if key in medicines:
            found += dosing(key, place, medicines[key], doses.get(key, ()), absence, on)
        if key in permits:
            found += ending(permits[key], absence, on, place, key)
    return [each for each in found if each is not None]


def _told(keeping: Keeping, kind: type[E], on: date) -> dict[AnimalId, list[E]]:
    found: dict[AnimalId, list[E]] = defaultdict(list)
    for entry in reading.all_of(keeping.book, kind):
        if entry.event.happened.day <= on:
            found[entry.event.animal].append(entry.event)
    return found
