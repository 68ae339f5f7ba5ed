"""Walking a time-line: from stay to stay, from tub to tub, and after an animal that moved."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date, timedelta

from keeper.actions.time_line import Bar, RackTime, TubTime
from keeper.desktop.widgets.life_view import LifeView, view_of

QUARTER_DAYS = 92
"""What is in view when a rack is opened."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TimeAt:
    """Which tub and whose stay is chosen, and the days in view with the day of the cursor."""

    tub: int
    view: LifeView
    animal: int | None = None


def opened(told: RackTime, on: date) -> LifeView:
    """A quarter with *on* in it; all there is where that is less."""
    first = min(told.first, told.on - timedelta(days=1))
    view = view_of(first, told.on, told.on, on)
    while view.span_days > QUARTER_DAYS:
        nearer = view.zoomed(1)
        if nearer == view:
            break
        view = nearer
    return view


def bar_at(told: RackTime, at: TimeAt) -> Bar | None:
    """The stay that is chosen: that of the animal, else the first of the tub on that day."""
    if not told.tubs:
        return None
    here = told.tubs[at.tub].at(at.view.cursor)
    own = next((bar for bar in here if bar.animal == at.animal), None)
    return own or (here[0] if here else None)


def settled(told: RackTime, at: TimeAt) -> TimeAt:
    """The same with the animal that is in the tub on the day; None where nobody is."""
    bar = bar_at(told, at)
    return replace(at, animal=bar.animal if bar else None)


def at_stay(told: RackTime, animal: int | None, place: str | None, on: date) -> TimeAt:
    """The stay of an animal on a day, else the tub of that name, else the first."""
    for n, tub in enumerate(told.tubs):
        if any(bar.animal == animal for bar in tub.at(on)):
            return TimeAt(tub=n, view=opened(told, on), animal=animal)
    last = _last_stay(told, animal, on)
    if last is not None:
        where, bar = last
        day = min(bar.stay.last(told.on), told.on)
        day = day if bar.stay.covers(day) else max(bar.stay.since, day - timedelta(days=1))
        return TimeAt(tub=where, view=opened(told, day), animal=animal)
    named = next((n for n, tub in enumerate(told.tubs) if tub.name == place), 0)
    return settled(told, TimeAt(tub=named, view=opened(told, on)))


def next_slot(told: RackTime, at: TimeAt, by: int) -> TimeAt:
    """The next tub on that day, or the next of those who share it; an empty one too."""
    slots = list(_slots(told, at.view.cursor))
    here = (at.tub, at.animal)
    index = slots.index(here) if here in slots else 0
    tub, animal = slots[min(max(index + by, 0), len(slots) - 1)]
    return replace(at, tub=tub, animal=animal)


def next_of_tub(told: RackTime, at: TimeAt) -> TimeAt:
    """Those who share a tub on that day, one after another."""
    here = [bar.animal for bar in told.tubs[at.tub].at(at.view.cursor)]
    if at.animal not in here:
        return settled(told, at)
    return replace(at, animal=here[(here.index(at.animal) + 1) % len(here)])


def row_of(told: RackTime, row: str) -> RackTime:
    """One row of the rack alone, with what was done in the whole of it."""
    tubs = tuple(tub for tub in told.tubs if tub.row == row)
    names = {tub.name for tub in tubs}
    marks = tuple(mark for mark in told.marks if mark.tub is None or mark.tub in names)
    return replace(told, tubs=tubs, marks=marks)


def change_days(told: RackTime, at: TimeAt) -> list[date]:
    """Days on which anything changed in the tub or was done in the rack."""
    tub = told.tubs[at.tub]
    found = {mark.on for mark in told.marks if mark.tub in (None, tub.name)}
    for bar in tub.bars:
        found |= {bar.stay.since} | ({bar.stay.until} if bar.stay.until else set())
    return sorted(day for day in found if day <= told.on)


def followed(told: RackTime, at: TimeAt, *, onward: bool) -> tuple[str, date] | None:
    """Tub and day of the animal's stay after the chosen one, or before it; None: there is none."""
    bar = bar_at(told, at)
    if bar is None:
        return None
    stay = bar.stay
    if onward and stay.went_to is not None and stay.until is not None:
        return stay.went_to, stay.until
    if not onward and stay.came_from is not None:
        return stay.came_from, stay.since - timedelta(days=1)
    return None


def _slots(told: RackTime, on: date) -> Iterator[tuple[int, int | None]]:
    for n, tub in enumerate(told.tubs):
        here = tub.at(on)
        yield from ((n, bar.animal) for bar in here)
        if not here:
            yield n, None


def _last_stay(told: RackTime, animal: int | None, on: date) -> tuple[int, Bar] | None:
    """The latest stay of an animal in this rack that began by a day, else the first."""
    own = [(n, bar) for n, tub in enumerate(told.tubs) for bar in _of(tub, animal)]
    if not own:
        return None
    begun = [each for each in own if each[1].stay.since <= on]
    return max(begun, key=lambda each: each[1].stay.since) if begun else own[0]


def _of(tub: TubTime, animal: int | None) -> list[Bar]:
    return [bar for bar in tub.bars if bar.animal == animal]
