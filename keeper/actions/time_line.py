"""One rack through time: who stood in which of its tubs, and what neighbours are looked at for."""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from enum import Enum

from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.racks import ELSEWHERE, numbers_from_one, sizes_declared
from keeper.actions.time_line_reading import (
    Apart,
    StaysOf,
    all_stays,
    by_animal,
    cleanings_of,
    finds_in,
    letters,
    pairings_among,
    quarantines_of,
    rack_letter,
    steps_in,
)
from keeper.husbandry.animal import AnimalId, Status
from keeper.husbandry.events import (
    Paired,
)
from keeper.husbandry.house import MiteStep, MitesTold
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import Place, place_of
from keeper.husbandry.reasons import Reason
from keeper.rules.neighbours import Grown, MitesFound
from keeper.rules.stays import Away, Stay, WashDay, lanes_of, wash_days


class MarkKind(Enum):
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
    stays, away = all_stays(keeping, letter, on)
    here = [stay for each in stays.values() for stay in each if rack_letter(stay.place) == letter]
    animals = {stay.animal for stay in here}
    paired = pairings_among(keeping, animals, on)
    everyone = {row.animal: row for row in animals_on(keeping, on)}
    stays_of_each = by_animal(here)
    finds = tuple(finds_in(keeping, stays_of_each, on))
    steps = tuple(steps_in(keeping, letter, on))
    washes = wash_days(cleanings_of(keeping, animals, on), here)
    apart = tuple(quarantines_of(keeping, animals, on))
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
    return replace(told, marks=_sorted(_marks(told, stays_of_each)))


def with_swaps(told: RackTime, swaps: Iterable[Suspected]) -> RackTime:
    """The same with what the watch suspects of animals that stand or stood in it."""
    stays = by_animal(told.stays)
    own = tuple(each for each in swaps if _at(stays, each.animal, each.on) is not None)
    marks = [mark for mark in told.marks if mark.kind is not MarkKind.SWAP]
    marks += [_on_animal(stays, MarkKind.SWAP, each.animal, each.on) for each in own]
    return replace(told, swaps=own, marks=_sorted(marks))


# --- tubs ------------------------------------------------------------------------------------


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


# --- marks -----------------------------------------------------------------------------------

_STEPS = {
    MitesTold.BEGUN: MarkKind.TREATED,
    MitesTold.CLEAR: MarkKind.CLEAR,
    MitesTold.SEEN: MarkKind.MITES,
    MitesTold.ENDED: MarkKind.ENDED,
}


def _marks(told: RackTime, stays: StaysOf) -> Iterator[Mark]:
    yield from (Mark(kind=_STEPS[step.told], on=step.happened.day) for step in told.steps)
    yield from (Mark(kind=MarkKind.WASHED, on=wash.on) for wash in told.washes)
    for found in told.finds:
        yield Mark(kind=MarkKind.MITES, on=found.on, tub=found.place, animal=found.animal)
    for apart in told.apart:
        yield _on_animal(stays, MarkKind.QUARANTINE, apart.animal, apart.since)
        if apart.until is not None and apart.until <= told.on:
            yield _on_animal(stays, MarkKind.RELEASED, apart.animal, apart.until)
    for paired in told.paired:
        kind = MarkKind.LOCK if paired.locked else MarkKind.PAIRED
        for animal in (paired.animal, paired.mate):
            yield _on_animal(stays, kind, animal, paired.happened.day)
    yield from _comings_and_goings(told, stays)


def _comings_and_goings(told: RackTime, stays: StaysOf) -> Iterator[Mark]:
    for away in told.away:
        missing = away.status is Status.MISSING
        left = MarkKind.MISSING if missing else MarkKind.GONE
        if away.from_place is not None and rack_letter(away.from_place) == told.letter:
            yield Mark(kind=left, on=away.since, tub=away.from_place, animal=away.animal)
        if away.until is not None:
            yield _on_animal(stays, MarkKind.FOUND, away.animal, away.until)


def _on_animal(stays: StaysOf, kind: MarkKind, animal: AnimalId, on: date) -> Mark:
    """On the tub in which the animal stood then; tub None: it stood in none of this rack."""
    return Mark(kind=kind, on=on, tub=_at(stays, animal, on), animal=animal)


def _at(stays: StaysOf, animal: AnimalId, on: date) -> str | None:
    return next((stay.place for stay in stays.get(animal, ()) if stay.covers(on)), None)


def _sorted(marks: Iterable[Mark]) -> tuple[Mark, ...]:
    """By day; what happened to an animal elsewhere is none of this rack's."""
    own = (mark for mark in marks if mark.animal is None or mark.tub is not None)
    return tuple(sorted(own, key=lambda mark: (mark.on, mark.tub or "", mark.kind)))
