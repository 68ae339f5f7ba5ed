"""What the watch says of clutches, prey in the freezer and mites, and of each animal's own care."""

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date, datetime, time, timedelta
from typing import NamedTuple, TypeVar

from keeper.actions.freezer import bags_on
from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.prey_desk import larder
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.care import Dose, Eggs, EggsPlaced, FaecalTest, Medicine, Permit
from keeper.husbandry.events import AnimalEvent, Clutch
from keeper.husbandry.house import HousePermit, MiteStep
from keeper.husbandry.now import AnimalNow
from keeper.language import tr
from keeper.rules.watch_eggs import TOLD_FOR_DAYS, ClutchFacts, egg_lines
from keeper.rules.watch_facts import Course, Lying, WatchLine
from keeper.rules.watch_medicine import courses
from keeper.rules.watch_mites import mite_lines
from keeper.rules.watch_prey import prey_lines
from keeper.rules.watch_tests import permit_lines
from keeper.store import reading

R = TypeVar("R")
C = TypeVar("C", bound=AnimalEvent)

_LAST_HOUR = time(23, 59)
_HATCHES_WITHIN = timedelta(days=200)


@dataclass(frozen=True, slots=True, kw_only=True)
class CareTold:
    """Courses, tests and papers of every animal that has any, and all steps against mites."""

    courses: Mapping[AnimalId, Sequence[Course]] = field(default_factory=dict)
    faecals: Mapping[AnimalId, Sequence[FaecalTest]] = field(default_factory=dict)
    permits: Mapping[AnimalId, Sequence[Permit]] = field(default_factory=dict)
    mites: Sequence[MiteStep] = ()


def care_told(keeping: Keeping, on: date) -> CareTold:
    """What was written of care up to the day *on*, as the rules ask for it."""
    medicines, doses = _by_animal(keeping, Medicine, on), _by_animal(keeping, Dose, on)
    return CareTold(
        courses={
            animal: courses(written, doses.get(animal, ()), on)
            for animal, written in medicines.items()
        },
        faecals=_by_animal(keeping, FaecalTest, on),
        permits=_by_animal(keeping, Permit, on),
        mites=_until(keeping, MiteStep, on),
    )


def kept_lines(keeping: Keeping, everyone: Sequence[AnimalNow], on: date) -> tuple[WatchLine, ...]:
    """Lines about clutches, prey, mites papers of the house. everyone: those who left too."""
    here = [row for row in everyone if row.in_the_room]
    return (
        *egg_lines(clutch_facts(keeping, everyone, on), _instant(keeping, on)),
        *mite_lines(_until(keeping, MiteStep, on), here, on),
        *_prey(keeping, on),
        *permit_lines(_until(keeping, HousePermit, on), on),
    )


def clutch_facts(
    keeping: Keeping,
    everyone: Sequence[AnimalNow],
    on: date,
    *,
    days_most: float = TOLD_FOR_DAYS.value,
) -> tuple[ClutchFacts, ...]:
    """Every clutch laid in the *days_most* up to *on*, with what was written of eggs and young."""
    rows = {row.animal: row for row in everyone}
    told, young = _by_animal(keeping, Eggs, on), _hatched(everyone, on)
    placed = _by_animal(keeping, EggsPlaced, on)
    found = []
    for dam, laid in _by_animal(keeping, Clutch, on).items():
        if dam not in rows:
            continue
        laid = sorted(laid, key=lambda clutch: clutch.happened)
        for at, clutch in enumerate(laid):
            if (on - clutch.happened.day).days > days_most:
                continue
            hatched = _young(young, clutch, is_last=clutch is laid[-1])
            found.append(
                ClutchFacts(
                    name=clutch.code or rows[dam].code,
                    dam=dam if rows[dam].in_the_room else None,
                    laid=clutch,
                    told=[each for each in told.get(dam, ()) if _is_of(each, laid, at)],
                    numbered=[day for day, _ in hatched],
                    figures=keeping.profile(rows[dam]).incubator,
                    placed=[each for each in placed.get(dam, ()) if _is_of(each, laid, at)],
                    young=[animal for _, animal in hatched],
                )
            )
    return tuple(found)


def lying_at(keeping: Keeping, on: date) -> Mapping[str, Sequence[Lying]]:
    """The clutches whose good eggs lie in each incubator on the day *on*, by its name."""
    found: dict[str, list[Lying]] = defaultdict(list)
    for clutch in placed_clutches(keeping, on):
        there = clutch.lies_in
        if there is not None and there.place is not None:
            called = clutch.name
            if there.box:
                called = tr("{clutch} in box {box}", clutch=clutch.name, box=there.box)
            found[there.place].append(Lying(called=called, dam=clutch.dam))
    return found


def placed_clutches(keeping: Keeping, on: date) -> list[ClutchFacts]:
    """Clutches with good eggs that lie in an incubator on the day *on*, as was written."""
    return keeping.once(("placed clutches", on), lambda: _placed(keeping, on))


def _placed(keeping: Keeping, on: date) -> list[ClutchFacts]:
    if not _until(keeping, EggsPlaced, on):
        return []
    facts = clutch_facts(keeping, animals_on(keeping, on), on)
    return [each for each in facts if each.lies_in is not None and each.still_in > 0]


def _is_of(eggs: Eggs | EggsPlaced, laid: Sequence[Clutch], at: int) -> bool:
    """By the clutch that is named, else of the latest that was laid before."""
    if eggs.clutch is not None:
        return eggs.clutch == laid[at].code
    before = [n for n, clutch in enumerate(laid) if clutch.happened.day <= eggs.happened.day]
    return bool(before) and before[-1] == at


class _Hatched(NamedTuple):
    """Young that hatched, by the code of their clutch and by their dam."""

    by_clutch: Mapping[str | None, Sequence[AnimalNow]]
    by_dam: Mapping[AnimalId | None, Sequence[AnimalNow]]


def _hatched(everyone: Iterable[AnimalNow], on: date) -> _Hatched:
    """All that hatched up to the day *on*."""
    by_clutch: dict[str | None, list[AnimalNow]] = defaultdict(list)
    by_dam: dict[AnimalId | None, list[AnimalNow]] = defaultdict(list)
    for row in everyone:
        if row.hatched_last is not None and row.hatched_last <= on:
            by_clutch[row.clutch].append(row)
            by_dam[row.dam].append(row)
    return _Hatched(by_clutch, by_dam)


def _young(hatched: _Hatched, clutch: Clutch, *, is_last: bool) -> list[tuple[date, AnimalId]]:
    """When which young of *clutch* hatched, told by its code or, without one, by their dam."""
    dam, laid_on = clutch.animal, clutch.happened.day
    if clutch.code is not None:
        rows = [row for row in hatched.by_clutch.get(clutch.code, ()) if row.dam in (None, dam)]
    else:
        rows = list(hatched.by_dam.get(dam, ())) if is_last else []
    days = [(row.hatched_last, row.animal) for row in rows if row.hatched_last is not None]
    return [each for each in days if laid_on < each[0] <= laid_on + _HATCHES_WITHIN]


def _prey(keeping: Keeping, on: date) -> tuple[WatchLine, ...]:
    """By what will be eaten, as the place of prey tells it."""
    if not (bags := bags_on(keeping, on)):
        return ()
    a_week = {grade.prey: grade.a_week for grade in larder(keeping, on).grades}
    return prey_lines(bags, a_week, on)


def _until(keeping: Keeping, kind: type[R], on: date) -> list[R]:
    entries = reading.all_of(keeping.book, kind)
    events = [entry.event for entry in entries]
    return [event for event in events if event.happened.day <= on]  # type: ignore[attr-defined]


def _by_animal(keeping: Keeping, kind: type[C], on: date) -> dict[AnimalId, list[C]]:
    found: dict[AnimalId, list[C]] = defaultdict(list)
    for event in _until(keeping, kind, on):
        found[event.animal].append(event)
    return found


def _instant(keeping: Keeping, on: date) -> datetime:
    """This instant today; of another day its end."""
    now = keeping.now()
    return now if on == now.date() else datetime.combine(on, _LAST_HOUR, now.tzinfo)
