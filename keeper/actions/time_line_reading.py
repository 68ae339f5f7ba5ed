"""What the time-line of a rack asks the book: stays, finds of mites, washings, quarantines."""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from keeper.actions.holds_ever import holds_ever
from keeper.actions.keeping import Keeping
from keeper.actions.quarantine import open_holds
from keeper.actions.racks import ELSEWHERE, sizes_declared
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import (
    Cleaned,
    HoldKind,
    HoldSet,
    Moved,
    Paired,
    Remark,
    RemarkKind,
    Stock,
)
from keeper.husbandry.house import Cleaning, MiteStep
from keeper.husbandry.place import place_of
from keeper.rules.neighbours import MitesFound, found_where
from keeper.rules.quarantine import rack_of
from keeper.rules.stays import Away, Stay, away_of, stays_of
from keeper.store import reading
from keeper.store.many import keys_told

_EVER_IN = "e.animal IN (SELECT x.animal FROM moved x WHERE ltrim(x.place) LIKE ?)"
_AMONG = "e.animal IN (SELECT value FROM json_each(?))"
_OF_EITHER = """(e.animal IN (SELECT value FROM json_each(?))
    OR e.mate IN (SELECT value FROM json_each(?)))"""


@dataclass(frozen=True, slots=True, kw_only=True)
class Apart:
    """Days in quarantine; until is the first day out of it, None while it is open."""

    animal: AnimalId
    since: date
    until: date | None


StaysOf = Mapping[AnimalId, Sequence[Stay]]
"""Those of one rack, by animal."""


def by_animal(stays: Iterable[Stay]) -> dict[AnimalId, list[Stay]]:
    """The stays of each animal, in their order."""
    found: dict[AnimalId, list[Stay]] = defaultdict(list)
    for stay in stays:
        found[stay.animal].append(stay)
    return found


def letter_of(keeping: Keeping, animal: AnimalId, on: date) -> str | None:
    """The rack in which an animal stood on a day, else in which it stood last before; None: never.

    Empty where the place names no rack.
    """
    moves = (entry.event for entry in reading.history(keeping.book, Moved, animal))
    stays = [stay for stay in stays_of(animal, moves) if stay.since <= on]
    return rack_letter(stays[-1].place) if stays else None


def letters(keeping: Keeping) -> tuple[str, ...]:
    """Every rack in which an animal ever stood or that is declared, those elsewhere last."""
    return keeping.once("racks ever", lambda: _letters(keeping))


def _letters(keeping: Keeping) -> tuple[str, ...]:
    found = {rack_letter(place) for place in reading.places_ever(keeping.book)}
    found |= set(sizes_declared(keeping))
    return tuple(sorted(found, key=lambda letter: (letter == ELSEWHERE, letter)))


def rack_letter(place: str | None) -> str:
    """The rack of a written place; empty where it names none."""
    found = place_of(place or "")
    return ELSEWHERE if found is None else found.rack


def all_stays(
    keeping: Keeping, letter: str, on: date
) -> tuple[dict[AnimalId, list[Stay]], dict[AnimalId, list[Away]]]:
    """Every place of each animal that ever stood in the rack."""
    begins = f"{letter}%" if letter.isascii() else "%"  # SQL knows no capitals of other letters
    moves: dict[AnimalId, list[Moved]] = defaultdict(list)
    for entry in reading.all_of(keeping.book, Moved, _EVER_IN, begins):
        if entry.event.happened.day <= on:
            moves[entry.event.animal].append(entry.event)
    stock: dict[AnimalId, list[Stock]] = defaultdict(list)
    for entered in reading.all_of(keeping.book, Stock, _AMONG, keys_told(moves)):
        if entered.event.happened.day <= on:
            stock[entered.event.animal].append(entered.event)
    stays = {animal: stays_of(animal, own, stock[animal]) for animal, own in moves.items()}
    return stays, {animal: away_of(animal, own, stock[animal]) for animal, own in moves.items()}


def finds_in(keeping: Keeping, stays: StaysOf, on: date) -> Iterator[MitesFound]:
    """Mites seen on animals, in the tubs of this rack in which they stood."""
    seen = reading.all_of(keeping.book, Remark, "e.kind = ?", RemarkKind.MITES.value)
    for remark in (entry.event for entry in seen):
        own = stays.get(remark.animal, ())
        found = found_where(remark.animal, remark.happened.day, own)
        if found is not None and found.on <= on:
            yield found


def steps_in(keeping: Keeping, letter: str, on: date) -> list[MiteStep]:
    """Steps against mites in this rack or in the whole room, oldest first."""
    every = (entry.event for entry in reading.all_of(keeping.book, MiteStep))
    own = [
        step
        for step in every
        if step.happened.day <= on and (step.place is None or rack_of(step.place) == letter)
    ]
    return sorted(own, key=lambda step: step.happened)


def cleanings_of(
    keeping: Keeping, animals: Iterable[AnimalId], on: date
) -> list[tuple[AnimalId, date]]:
    condition = "e.animal IN (SELECT value FROM json_each(?)) AND e.extent = ?"
    values = (keys_told(animals), Cleaning.WHOLE.value)
    found = (entry.event for entry in reading.all_of(keeping.book, Cleaned, condition, *values))
    return [(each.animal, each.happened.day) for each in found if each.happened.day <= on]


def quarantines_of(keeping: Keeping, animals: Iterable[AnimalId], on: date) -> Iterator[Apart]:
    """Past ones as they were ended; those that run as they run now."""
    running = open_holds(keeping, on).holds
    ever = holds_ever(keeping, sorted(animals), on)
    for animal, holds in ever.items():
        own = [hold for hold in holds if hold.kind is HoldKind.QUARANTINE]
        now = [h for h in running.get(animal, ()) if h.kind is HoldKind.QUARANTINE]
        for n, hold in enumerate(own):
            last = now[-1] if now and n == len(own) - 1 else hold
            yield _apart(hold, last)


def _apart(hold: HoldSet, as_it_runs: HoldSet) -> Apart:
    return Apart(animal=hold.animal, since=hold.happened.day, until=as_it_runs.until)


def pairings_among(keeping: Keeping, animals: Iterable[AnimalId], on: date) -> tuple[Paired, ...]:
    keys = keys_told(animals)
    found = (e.event for e in reading.all_of(keeping.book, Paired, _OF_EITHER, keys, keys))
    own = (paired for paired in found if paired.happened.day <= on)
    return tuple(sorted(own, key=lambda paired: paired.happened))
