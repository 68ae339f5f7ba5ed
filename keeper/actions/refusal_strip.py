"""What became of every offer of the last feed nights, animals in rack order: for the pattern."""

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum

from keeper.actions.holds_ever import holds_ever
from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.racks import names_of
from keeper.actions.unwritten import of_one_nights
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import Offer, PlanLine, Result, RoundClosed, ShedSign
from keeper.husbandry.now import AnimalNow
from keeper.language import tr
from keeper.rules.feeding import DueState
from keeper.rules.holds import excused, half_counted, holds_on
from keeper.rules.refusals import prey_changes
from keeper.store import reading
from keeper.store.rows import day_number

NIGHTS = 12
_BACK_DAYS = (45, 200)
_SIGNS = 24
_ASKED = (DueState.DUE.value, DueState.CANNOT_TELL.value)


class Cell(StrEnum):
    """What one animal's night came to."""

    TAKEN = "taken"
    PART = "part taken"
    REFUSED = "refused"
    EXCUSED = "refused, excused"
    LEFT_IN = "left in"
    NOT_OFFERED = "not offered"
    NOT_REACHED = "not reached"


_TAKEN, _PART, _REFUSED = Cell.TAKEN, Cell.PART, Cell.REFUSED
"""What the margins count: excused refusals say nothing of appetite, open offers nothing yet."""

_CELLS = {
    Result.TAKEN: Cell.TAKEN,
    Result.PART: Cell.PART,
    Result.REFUSED: Cell.REFUSED,
    Result.LEFT_IN: Cell.LEFT_IN,
    Result.NOT_OFFERED: Cell.NOT_OFFERED,
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Margin:
    """Counted refusals among the counted offers."""

    refused: int
    offered: int


@dataclass(frozen=True, slots=True, kw_only=True)
class StripAnimal:
    """One animal's nights, oldest first; None where nothing was asked of it."""

    animal: AnimalNow
    cells: tuple[Cell | None, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class StripRow:
    """The animals of one row of tubs in order."""

    name: str
    animals: tuple[StripAnimal, ...]

    @property
    def margin(self) -> Margin:
        return margin_of(cell for each in self.animals for cell in each.cells)


@dataclass(frozen=True, slots=True, kw_only=True)
class Strip:
    nights: tuple[date, ...]
    rows: tuple[StripRow, ...]

    def night_margin(self, index: int) -> Margin:
        return margin_of(each.cells[index] for row in self.rows for each in row.animals)


def margin_of(cells: Iterable[Cell | None]) -> Margin:
    """Refusals and offers that count.

    >>> margin_of([Cell.TAKEN, Cell.REFUSED, Cell.EXCUSED, Cell.NOT_REACHED, None])
    Margin(refused=1, offered=2)
    """
    refused = eaten = 0
    for cell in cells:
        if cell is _REFUSED:
            refused += 1
        elif cell is _TAKEN or cell is _PART:
            eaten += 1
    return Margin(refused=refused, offered=refused + eaten)


def refusal_strip(keeping: Keeping, on: date) -> Strip:
    """The last ``NIGHTS`` feed nights up to *on* that the book knows of."""
    offers, plans = _entries(keeping, on)
    days = sorted({offer.happened.day for offer in offers} | {plan.happened.day for plan in plans})
    shown = tuple(days[-NIGHTS:])
    animals = [row for row in animals_on(keeping, on) if row.in_the_room]
    cells = _cells(keeping, animals, offers, plans)
    rows: dict[str, list[StripAnimal]] = defaultdict(list)
    for row in animals:
        told = tuple(cells.get((row.animal, night)) for night in shown)
        rows[_row_name(row.place)].append(StripAnimal(animal=row, cells=told))
    return Strip(
        nights=shown,
        rows=tuple(StripRow(name=name, animals=tuple(each)) for name, each in rows.items()),
    )


def _entries(keeping: Keeping, on: date) -> tuple[list[Offer], list[PlanLine]]:
    """Offers and plans of as few days as hold the nights that are asked for."""
    offers: list[Offer] = []
    plans: list[PlanLine] = []
    for back in _BACK_DAYS:
        days = (day_number(on - timedelta(days=back)), day_number(on))
        condition = "e.day BETWEEN ? AND ?"
        offers = [e.event for e in reading.all_of(keeping.book, Offer, condition, *days)]
        plans = [e.event for e in reading.all_of(keeping.book, PlanLine, condition, *days)]
        if len({offer.happened.day for offer in offers}) >= NIGHTS:
            break
    return offers, plans


def _cells(
    keeping: Keeping,
    animals: Sequence[AnimalNow],
    offers: Iterable[Offer],
    plans: Iterable[PlanLine],
) -> dict[tuple[AnimalId, date], Cell]:
    """The last word of each night; a tub planned and never answered was not reached."""
    rows = {row.animal: row for row in animals}
    found = dict.fromkeys(_unanswered(keeping, rows, plans), Cell.NOT_REACHED)
    last: dict[tuple[AnimalId, date], Offer] = {}
    for offer in sorted(offers, key=lambda offer: offer.happened.at):
        last[offer.animal, offer.happened.day] = offer
    found |= {key: _CELLS[offer.result] for key, offer in last.items()}
    refusals = [offer for offer in last.values() if offer.result is Result.REFUSED]
    for offer in _excused(keeping, rows, refusals):
        found[offer.animal, offer.happened.day] = Cell.EXCUSED
    for key in _of_changes(keeping, rows, last.values()) & last.keys():
        if last[key].result is Result.REFUSED:
            found[key] = Cell.EXCUSED
    return found


def _unanswered(
    keeping: Keeping, animals: Mapping[AnimalId, AnimalNow], plans: Iterable[PlanLine]
) -> set[tuple[AnimalId, date]]:
    """Animals and nights that were planned and are over, but for what was said of one of two."""
    closed = {entry.event.round for entry in reading.all_of(keeping.book, RoundClosed)}
    asked = (plan for plan in plans if plan.state in _ASKED and plan.round in closed)
    found = {(plan.animal, plan.happened.day) for plan in asked}
    if not found:
        return found
    days = [day for _, day in found]
    of_one = of_one_nights(keeping, animals, max(days) + timedelta(days=1), min(days))
    return found - {(animal, night) for animal, nights in of_one.items() for night in nights}


def _of_changes(
    keeping: Keeping, animals: Mapping[AnimalId, AnimalNow], offers: Iterable[Offer]
) -> set[tuple[AnimalId, date]]:
    """Animals and nights refused straight after a change of prey."""
    told: dict[AnimalId, list[Offer]] = defaultdict(list)
    for offer in offers:
        if offer.animal in animals:
            told[offer.animal].append(offer)
    return {
        (animal, day)
        for animal, each in told.items()
        for day in prey_changes(each, keeping.profile(animals[animal]))
    }


def _excused(
    keeping: Keeping, animals: Mapping[AnimalId, AnimalNow], refusals: Sequence[Offer]
) -> list[Offer]:
    """Those that say nothing of the animal's appetite, by the holds of their own night."""
    keys = {offer.animal for offer in refusals} & animals.keys()
    nights = (offer.happened.day for offer in refusals)
    holds = holds_ever(keeping, keys, max(nights, default=date.min))
    signs = reading.recent(keeping.book, ShedSign, keys, _SIGNS)
    found = []
    for offer in refusals:
        key = offer.animal
        if key in keys:
            profile = keeping.profile(animals[key])
            then = holds_on(offer.happened.day, holds[key], signs[key], profile)
            if excused(offer, then) or half_counted(offer, then):
                found.append(offer)
    return found


def _row_name(place: str | None) -> str:
    names = names_of(place)
    return names[1] if len(names) > 1 else names[0] if names else tr("no place")
