"""The racks as they stand in the room: rows and tubs, who lives in each, how warm each row is."""

import re
from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from keeper.actions.due_board import DueRow, due_rows
from keeper.actions.keeping import Keeping
from keeper.actions.rack_heat import PlaceHeat, heat_at
from keeper.husbandry.animal import Stage
from keeper.husbandry.place import Place, place_of
from keeper.husbandry.profile import SpeciesProfile
from keeper.language import tr
from keeper.rules.stages import stage_of
from keeper.store import reading

RACK_SETTING = "rack "
"""Setting: ``rack A`` is ``7x10``, seven rows of ten tubs; empty means as the animals stand."""

GAPS_MOST = 12
"""More numbers than that without an animal are another numbering, not empty tubs."""

ROWS_MOST, TUBS_MOST = 40, 60
ELSEWHERE = ""
"""Letter of those who stand where no rack, row and tub can be read."""

_ELSEWHERE_ROW = 10
_DECLARED = re.compile(r"\s*(\d{1,3})\s*[x×*]\s*(\d{1,3})\s*")

Size = tuple[int, int]
"""Rows of a rack, and tubs in each of its rows."""


@dataclass(frozen=True, slots=True, kw_only=True)
class RackTub:
    """One tub. name: its place as the book writes it; living: nobody, one, or those who share."""

    number: int
    name: str
    living: tuple[DueRow, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class RackRow:
    """A row of tubs from left to right; number 0 where it has none."""

    number: int
    name: str
    tubs: tuple[RackTub, ...]
    profile: SpeciesProfile | None = None  # of those who live there
    heat: PlaceHeat | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Rack:
    """stages: those most of its animals are in, youngest first. declared: by the keeper."""

    letter: str
    rows: tuple[RackRow, ...]
    stages: tuple[Stage, ...] = ()
    declared: Size | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Room:
    """Every rack in the order of letters, those who stand elsewhere last."""

    on: date
    racks: tuple[Rack, ...]
    profiles: Mapping[int, SpeciesProfile]  # of every animal
    heat: Mapping[str, PlaceHeat]  # what was read at tubs, rows and racks

    def tubs(self) -> Iterator[RackTub]:
        return (tub for rack in self.racks for row in rack.rows for tub in row.tubs)

    def everyone(self) -> Iterator[DueRow]:
        return (living for tub in self.tubs() for living in tub.living)

    def tub_at(self, written: str) -> RackTub | None:
        """The tub that a written place names; None where no such tub stands in the room."""
        place = place_of(written)
        fits = (t for t in self.tubs() if t.name == written or (place and _is_at(t, place)))
        return next(fits, None)


def read_room(keeping: Keeping, on: date) -> Room:
    """The racks on the day *on*."""
    rows = due_rows(keeping, on)
    profiles = {row.animal.animal: keeping.profile(row.animal) for row in rows}
    by_place: dict[str, SpeciesProfile] = {}
    for row in rows:
        for name in names_of(row.animal.place):
            by_place.setdefault(name, profiles[row.animal.animal])
    return room_of(rows, on, sizes_declared(keeping), profiles, heat_at(keeping, by_place, on))


def room_of(
    rows: Sequence[DueRow],
    on: date,
    declared: Mapping[str, Size],
    profiles: Mapping[int, SpeciesProfile],
    heat: Mapping[str, PlaceHeat] | None = None,
) -> Room:
    """The room that *rows*, in walking order, make with what the keeper *declared*."""
    living: dict[str, dict[int, dict[int, list[DueRow]]]] = {letter: {} for letter in declared}
    others: list[DueRow] = []
    for row in rows:
        place = place_of(row.animal.place or "")
        if place is None:
            others.append(row)
        else:
            tubs = living.setdefault(place.rack, {}).setdefault(place.row, defaultdict(list))
            tubs[place.tub].append(row)
    known = heat or {}
    racks = [
        _rack(letter, living[letter], declared.get(letter), (profiles, known, on))
        for letter in sorted(living)
    ]
    if others:
        racks.append(_elsewhere(others))
    return Room(on=on, racks=tuple(racks), profiles=profiles, heat=known)


def sizes_declared(keeping: Keeping) -> dict[str, Size]:
    """Rows and tubs of the racks that the keeper declared, by letter."""
    found = {}
    for key, value in reading.settings(keeping.book).items():
        size = size_of(value) if key.startswith(RACK_SETTING) else None
        if size is not None:
            found[key.removeprefix(RACK_SETTING)] = size
    return found


def size_of(text: str) -> Size | None:
    """Rows and tubs as written, ``7x10``; None when *text* is no such size.

    >>> size_of("7x10"), size_of("7 × 10"), size_of("seven"), size_of("0x4")
    ((7, 10), (7, 10), None, None)
    """
    match = _DECLARED.fullmatch(text)
    if match is None:
        return None
    rows, tubs = int(match[1]), int(match[2])
    return (rows, tubs) if 1 <= rows <= ROWS_MOST and 1 <= tubs <= TUBS_MOST else None


def names_of(written: str | None) -> tuple[str, ...]:
    """A tub, its row and its rack by name, narrowest first.

    >>> names_of("b3-2"), names_of("shelf"), names_of(None)
    (('B3·2', 'B3', 'B'), ('shelf',), ())
    """
    place = place_of(written or "")
    if place is None:
        return (written,) if written else ()
    return str(place), f"{place.rack}{place.row}", place.rack


def numbers_from_one(present: Iterable[int], declared: int = 0) -> list[int]:
    """The numbers of tubs that stand there, from 1 to the highest, gaps included.

    >>> numbers_from_one([2, 4]), numbers_from_one([2], declared=3), numbers_from_one([101, 102])
    ([1, 2, 3, 4], [1, 2, 3], [101, 102])
    """
    found = {number for number in present if number > 0}
    highest = max(found, default=0)
    if highest - len(found) > max(GAPS_MOST, declared):
        return sorted(found | set(range(1, declared + 1)))
    return list(range(1, max(highest, declared) + 1))


_Facts = tuple[Mapping[int, SpeciesProfile], Mapping[str, PlaceHeat], date]


def _rack(
    letter: str, rows: Mapping[int, Mapping[int, list[DueRow]]], size: Size | None, facts: _Facts
) -> Rack:
    profiles, heat, on = facts
    row_count, tub_count = size or (0, 0)
    numbers = numbers_from_one(rows, row_count)
    here = [row for tubs in rows.values() for living in tubs.values() for row in living]
    made = []
    for number in numbers:
        declared = tub_count if number <= row_count else 0
        tubs = _tubs(letter, number, rows.get(number, {}), declared)
        first = next((row for tub in tubs for row in tub.living), None)
        name = f"{letter}{number}"
        made.append(
            RackRow(
                number=number,
                name=name,
                tubs=tubs,
                profile=profiles.get(first.animal.animal) if first else None,
                heat=heat.get(name),
            )
        )
    stages = _stages(here, profiles, on)
    return Rack(letter=letter, rows=tuple(made), stages=stages, declared=size)


def _tubs(
    letter: str, row: int, living: Mapping[int, list[DueRow]], declared: int
) -> tuple[RackTub, ...]:
    found = []
    for number in numbers_from_one(living, declared):
        here = tuple(living.get(number, ()))
        written = here[0].animal.place if here else None
        name = written or str(Place(letter, row, number))
        found.append(RackTub(number=number, name=name, living=here))
    return tuple(found)


def _stages(
    rows: Sequence[DueRow], profiles: Mapping[int, SpeciesProfile], on: date
) -> tuple[Stage, ...]:
    """The two stages that most of *rows* are in, youngest first."""
    told = (stage_of(row.animal, profiles[row.animal.animal], on) for row in rows)
    counts = Counter(stage for stage in told if stage is not None)
    most = {stage for stage, _ in counts.most_common(2)}
    return tuple(stage for stage in Stage if stage in most)


def _elsewhere(rows: Sequence[DueRow]) -> Rack:
    """Those without a readable place, ten in a row, each place with all who share it."""
    places: dict[str, list[DueRow]] = defaultdict(list)
    for row in rows:
        written = row.animal.place
        places[written or tr("no place, {code}", code=row.animal.code)].append(row)
    tubs = [
        RackTub(number=number, name=name, living=tuple(living))
        for number, (name, living) in enumerate(places.items(), start=1)
    ]
    chunks = [tubs[n : n + _ELSEWHERE_ROW] for n in range(0, len(tubs), _ELSEWHERE_ROW)]
    made = tuple(RackRow(number=0, name="", tubs=tuple(chunk)) for chunk in chunks)
    return Rack(letter=ELSEWHERE, rows=made)


def _is_at(tub: RackTub, place: Place) -> bool:
    return place_of(tub.name) == place
