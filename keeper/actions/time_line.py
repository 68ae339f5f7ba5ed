"""One rack through time: who stood in which of its tubs, and what neighbours are looked at for."""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from enum import StrEnum

from keeper.actions.holds_ever import holds_ever
from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.quarantine import open_holds
from keeper.actions.racks import ELSEWHERE, numbers_from_one, sizes_declared
from keeper.husbandry.animal import AnimalId, Status
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
from keeper.husbandry.house import Cleaning, MiteStep, MitesTold
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import Place, place_of
from keeper.husbandry.reasons import Reason
from keeper.rules.neighbours import Grown, MitesFound, found_where
from keeper.rules.quarantine import rack_of
from keeper.rules.stays import Away, Stay, WashDay, away_of, lanes_of, stays_of, wash_days
from keeper.store import reading
from keeper.store.many import keys_told


_EVER_IN = "e.animal IN (SELECT x.animal FROM moved x WHERE ltrim(x.place) LIKE ?)"
_AMONG = "e.animal IN (SELECT value FROM json_each(?))"
_OF_EITHER = """(e.animal IN (SELECT value FROM json_each(?))
    OR e.mate IN (SELECT value FROM json_each(?)))"""


class MarkKind(StrEnum):
    """What is marked on a day; its value is the letter that stands for it."""

    MITES = "M"
    TREATED = "T"
    CLEAR = "C"
    ENDED = "E"
    WASHED = "W"
    QUARANTINE = "Q"
    RELEASED = "R"
    PAIRED = "P"
    LOCK = "L"
    SWAP = "S"
    MISSING = "X"
    FOUND = "F"
    GONE = "G"


@dataclass(frozen=True, slots=True, kw_only=True)
class Mark:
    """tub: where it is drawn; None: on the line of the whole rack. animal: whose, if one's."""

    kind: MarkKind
    on: date
    tub: str | None = None
    animal: AnimalId | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Bar:
    """A stay as it is drawn: in the lane of its tub."""

    stay: Stay
    name: str
    lane: int

    @property
    def animal(self) -> AnimalId:
        return self.stay.animal


@dataclass(frozen=True, slots=True, kw_only=True)
class TubTime:
    """A tub through time. row: its row's name; known_from: before it nothing is written of it."""

    name: str
    row: str
    lanes: int
    bars: tuple[Bar, ...]
    known_from: date | None

    def at(self, day: date) -> tuple[Bar, ...]:
        """Those who stood there on *day*."""
        return tuple(bar for bar in self.bars if bar.stay.covers(day))


@dataclass(frozen=True, slots=True, kw_only=True)
class Apart:
    """Days in quarantine; until is the first day out of it, None while it is open."""

    animal: AnimalId
    since: date
    until: date | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Suspected:
    """A possible swap, as the watch tells it. after: last weighed as itself; on: as the other."""

    animal: AnimalId
    after: date
    on: date
    because: tuple[Reason, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class RackTime:
    """All of one rack up to the day *on*; its letter is empty for those who stand elsewhere.

    letters: every rack of the book. who: every animal of it. grown: those that stood in this one.
    """

    letter: str
    on: date
    first: date
    tubs: tuple[TubTime, ...]
    marks: tuple[Mark, ...]
    who: Mapping[AnimalId, AnimalNow]
    grown: Mapping[AnimalId, Grown]
    letters: tuple[str, ...] = ()
    finds: tuple[MitesFound, ...] = ()
    steps: tuple[MiteStep, ...] = ()
    washes: tuple[WashDay, ...] = ()
    apart: tuple[Apart, ...] = ()
    away: tuple[Away, ...] = ()
    paired: tuple[Paired, ...] = ()
    swaps: tuple[Suspected, ...] = field(default=())

    @property
    def stays(self) -> Iterator[Stay]:
        return (bar.stay for tub in self.tubs for bar in tub.bars)

    def tub(self, name: str) -> TubTime | None:
        return next((tub for tub in self.tubs if tub.name == name), None)


def read_time_line(keeping: Keeping, letter: str, on: date) -> RackTime:
    """The rack *letter* from its first entry to the day *on*."""
    stays, away = _all_stays(keeping, letter, on)
    here = [stay for each in stays.values() for stay in each if _rack(stay.place) == letter]
    animals = {stay.animal for stay in here}
    paired = _pairings(keeping, animals, on)
    everyone = {row.animal: row for row in animals_on(keeping, on)}
    finds = tuple(_finds(keeping, here, on))
    steps = tuple(_steps(keeping, letter, on))
    washes = wash_days(_cleanings(keeping, animals, on), here)
    apart = tuple(_quarantines(keeping, animals, on))
    gone = tuple(each for animal in sorted(animals) for each in away[animal])
    told = RackTime(
        letter=letter,
        on=on,
        first=min((stay.since for stay in here), default=on),
        tubs=tuple(_tubs(letter, here, everyone, sizes_declared(keeping).get(letter))),
        marks=(),
        who=everyone,
        grown={key: _grown(keeping, everyone[key]) for key in animals if key in everyone},
        letters=letters(keeping),
        finds=finds,
        steps=steps,
        washes=washes,
        apart=apart,
        away=gone,
        paired=paired,
    )
    return replace(told, marks=_sorted(_marks(told)))


def with_swaps(told: RackTime, swaps: Iterable[Suspected]) -> RackTime:
    """The same with what the watch suspects of animals that stand or stood in it."""
    own = tuple(each for each in swaps if _at(told, each.animal, each.on) is not None)
    marks = [mark for mark in told.marks if mark.kind is not MarkKind.SWAP]
    marks += [_on_animal(told, MarkKind.SWAP, each.animal, each.on) for each in own]
    return replace(told, swaps=own, marks=_sorted(marks))


def letter_of(keeping: Keeping, animal: AnimalId, on: date) -> str | None:
    """The rack in which an animal stood on a day, else in which it stood last before; None: never.

    Empty where the place names no rack.
    """
    moves = (entry.event for entry in reading.history(keeping.book, Moved, animal))
    stays = [stay for stay in stays_of(animal, moves) if stay.since <= on]
    return _rack(stays[-1].place) if stays else None


def rack_letter(place: str | None) -> str:
    """The rack of a written place; empty where it names none."""
    return _rack(place or "")


def letters(keeping: Keeping) -> tuple[str, ...]:
    """Every rack in which an animal ever stood or that is declared, those elsewhere last."""
    return keeping.once("racks ever", lambda: _letters(keeping))


def _letters(keeping: Keeping) -> tuple[str, ...]:
    moves = (entry.event.place for entry in reading.all_of(keeping.book, Moved))
    found = {_rack(place) for place in moves if place} | set(sizes_declared(keeping))
    return tuple(sorted(found, key=lambda letter: (letter == ELSEWHERE, letter)))


# --- tubs ------------------------------------------------------------------------------------


def _rack(place: str) -> str:
    found = place_of(place)
    return ELSEWHERE if found is None else found.rack


def _all_stays(
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


def _tubs(
    letter: str,
    stays: Sequence[Stay],
    everyone: Mapping[AnimalId, AnimalNow],
    declared: tuple[int, int] | None,
) -> Iterator[TubTime]:
    by_place: dict[str, list[Stay]] = defaultdict(list)
    for stay in sorted(stays, key=lambda each: (each.since, each.animal)):
        by_place[stay.place].append(stay)
    for name, row in _names(letter, by_place, declared or (0, 0)):
        own = by_place.get(name, [])
        lanes = lanes_of(own)
        bars = tuple(
            Bar(stay=stay, name=_called(everyone, stay.animal), lane=lane)
            for stay, lane in zip(own, lanes, strict=True)
        )
        first = own[0].since if own else None
        most = 1 + max(lanes, default=0)
        yield TubTime(name=name, row=row, lanes=most, bars=bars, known_from=first)


def _names(
    letter: str, places: Iterable[str], declared: tuple[int, int]
) -> Iterator[tuple[str, str]]:
    """Every tub of the rack from the first to the last of each row, with its row."""
    if letter == ELSEWHERE:
        yield from ((name, "") for name in sorted(places, key=str.casefold))
        return
    found: dict[int, set[int]] = defaultdict(set)
    for place in map(place_of, places):
        if place is not None:
            found[place.row].add(place.tub)
    for row in numbers_from_one(found, declared[0]):
        for tub in numbers_from_one(found[row], declared[1] if row <= declared[0] else 0):
            yield str(Place(letter, row, tub)), f"{letter}{row}"


def _called(everyone: Mapping[AnimalId, AnimalNow], animal: AnimalId) -> str:
    return everyone[animal].called if animal in everyone else "?"


def _grown(keeping: Keeping, row: AnimalNow) -> Grown:
    return Grown(
        animal=row.animal,
        sex=row.sex,
        species=row.species,
        hatched_on=row.hatched_first,
        figures=keeping.profile(row).clutch,
    )


# --- what is looked at -----------------------------------------------------------------------


def _finds(keeping: Keeping, stays: Sequence[Stay], on: date) -> Iterator[MitesFound]:
    seen = reading.all_of(keeping.book, Remark, "e.kind = ?", RemarkKind.MITES.value)
    for remark in (entry.event for entry in seen):
        found = found_where(remark.animal, remark.happened.day, stays)
        if found is not None and found.on <= on:
            yield found


def _steps(keeping: Keeping, letter: str, on: date) -> list[MiteStep]:
    """Steps against mites in this rack or in the whole room, oldest first."""
    every = (entry.event for entry in reading.all_of(keeping.book, MiteStep))
    own = [
        step
        for step in every
        if step.happened.day <= on and (step.place is None or rack_of(step.place) == letter)
    ]
    return sorted(own, key=lambda step: step.happened)


def _cleanings(
    keeping: Keeping, animals: Iterable[AnimalId], on: date
) -> list[tuple[AnimalId, date]]:
    condition = "e.animal IN (SELECT value FROM json_each(?)) AND e.extent = ?"
    values = (keys_told(animals), Cleaning.WHOLE.value)
    found = (entry.event for entry in reading.all_of(keeping.book, Cleaned, condition, *values))
    return [(each.animal, each.happened.day) for each in found if each.happened.day <= on]


def _quarantines(keeping: Keeping, animals: Iterable[AnimalId], on: date) -> Iterator[Apart]:
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


def _pairings(keeping: Keeping, animals: Iterable[AnimalId], on: date) -> tuple[Paired, ...]:
    keys = keys_told(animals)
    found = (e.event for e in reading.all_of(keeping.book, Paired, _OF_EITHER, keys, keys))
    own = (paired for paired in found if paired.happened.day <= on)
    return tuple(sorted(own, key=lambda paired: paired.happened))


# --- marks -----------------------------------------------------------------------------------

_STEPS = {
    MitesTold.BEGUN: MarkKind.TREATED,
    MitesTold.CLEAR: MarkKind.CLEAR,
    MitesTold.SEEN: MarkKind.MITES,
    MitesTold.ENDED: MarkKind.ENDED,
}


def _marks(told: RackTime) -> Iterator[Mark]:
    yield from (Mark(kind=_STEPS[step.told], on=step.happened.day) for step in told.steps)
    yield from (Mark(kind=MarkKind.WASHED, on=wash.on) for wash in told.washes)
    for found in told.finds:
        yield Mark(kind=MarkKind.MITES, on=found.on, tub=found.place, animal=found.animal)
    for apart in told.apart:
        yield _on_animal(told, MarkKind.QUARANTINE, apart.animal, apart.since)
        if apart.until is not None and apart.until <= told.on:
            yield _on_animal(told, MarkKind.RELEASED, apart.animal, apart.until)
    for paired in told.paired:
        kind = MarkKind.LOCK if paired.locked else MarkKind.PAIRED
        for animal in (paired.animal, paired.mate):
            yield _on_animal(told, kind, animal, paired.happened.day)
    yield from _comings_and_goings(told)


def _comings_and_goings(told: RackTime) -> Iterator[Mark]:
    for away in told.away:
        missing = away.status is Status.MISSING
        left = MarkKind.MISSING if missing else MarkKind.GONE
        if away.from_place is not None and _rack(away.from_place) == told.letter:
            yield Mark(kind=left, on=away.since, tub=away.from_place, animal=away.animal)
        if away.until is not None:
            yield _on_animal(told, MarkKind.FOUND, away.animal, away.until)


def _on_animal(told: RackTime, kind: MarkKind, animal: AnimalId, on: date) -> Mark:
    """On the tub in which the animal stood then; tub None: it stood in none of this rack."""
    return Mark(kind=kind, on=on, tub=_at(told, animal, on), animal=animal)


def _at(told: RackTime, animal: AnimalId, on: date) -> str | None:
    here = (s.place for s in told.stays if s.animal == animal and s.covers(on))
    return next(here, None)


def _sorted(marks: Iterable[Mark]) -> tuple[Mark, ...]:
    """By day; what happened to an animal elsewhere is none of this rack's."""
    own = (mark for mark in marks if mark.animal is None or mark.tub is not None)
    return tuple(sorted(own, key=lambda mark: (mark.on, mark.tub or "", mark.kind)))
