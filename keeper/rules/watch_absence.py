"""What falls into an absence and waits for nobody: eggs, doses, tests and papers with a day."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.care import Dose, FaecalResult, FaecalTest, Medicine
from keeper.husbandry.events import HoldKind
from keeper.husbandry.profile import SpeciesProfile
from keeper.husbandry.reasons import Reason, because
from keeper.rules.absence import Absence
from keeper.rules.holds import Hold
from keeper.rules.watch_eggs import ClutchFacts
from keeper.rules.watch_facts import Severity, WatchLine
from keeper.rules.watch_medicine import courses
from keeper.rules.watch_tests import (
    APART_DAYS,
    FAECALS_WANTED,
    P,
    clear_faecals,
    latest_permits,
)

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("may pip while away", ("low", "high", "still_in")),
    ("no cutting but by experienced hands", ()),
    ("may lay while away", ("since", "until")),
    ("gravid while away", ("since",)),
    ("doses while away", ("medicine", "count", "low", "high")),
    ("faecal test while away", ("on",)),
    ("permit ends while away", ("permit", "number", "on")),
    ("away then", ("who", "first", "last")),
    ("ends with the absence", ("on",)),
)
"""Every reason of this module with the figures it carries."""

PIPPING, LAYING, DUE = "pipping while away", "laying while away", "due while away"
_DAY = timedelta(days=1)


@dataclass(frozen=True, slots=True, kw_only=True)
class Falling:
    """One thing that falls into an absence. place: a tub, a clutch by its name, or a paper."""

    kind: str
    place: str
    why: Reason
    animal: AnimalId | None = None


def pipping(clutches: Iterable[ClutchFacts], absence: Absence, today: date) -> list[Falling]:
    """Clutches with good eggs left whose usual days of pipping fall into *absence*."""
    found = []
    for clutch in clutches:
        figures, laid_on = clutch.figures, clutch.laid.happened.day
        if figures is None or clutch.still_in <= 0:
            continue
        low = laid_on + timedelta(days=round(figures.pip_days_least.value))
        high = laid_on + timedelta(days=round(figures.pip_days_most.value))
        if _meets(low, high, absence, today):
            why = because("may pip while away", low=low, high=high, still_in=clutch.still_in)
            found.append(Falling(kind=PIPPING, place=clutch.name, why=why, animal=clutch.dam))
    return found


def laying(
    animal: AnimalId,
    place: str,
    holds: Sequence[Hold],
    profile: SpeciesProfile,
    absence: Absence,
) -> Falling | None:
    """A female who may lay in *absence*: after her pre-lay shed, else held as gravid.

    After the shed eggs are to be expected until the day on which a vet would be asked.
    """
    pre_lay = next((hold for hold in holds if hold.kind is HoldKind.PRE_LAY), None)
    figures = profile.holds.get(HoldKind.PRE_LAY)
    if pre_lay is not None and pre_lay.until is None and figures and figures.renew_after_days:
        until = pre_lay.since + timedelta(days=round(figures.renew_after_days.value))
        why = because("may lay while away", since=pre_lay.since, until=until)
        return Falling(kind=LAYING, place=place, why=why, animal=animal)
    gravid = next((hold for hold in holds if hold.kind is HoldKind.GRAVID), None)
    if gravid is None or (gravid.until is not None and gravid.until <= absence.first):
        return None
    why = because("gravid while away", since=gravid.since)
    return Falling(kind=LAYING, place=place, why=why, animal=animal)


def dosing(
    animal: AnimalId,
    place: str,
    medicines: Sequence[Medicine],
    told: Sequence[Dose],
    absence: Absence,
    today: date,
) -> list[Falling]:
    """Each medicine of one animal with doses that fall into *absence*."""
    days: dict[str, dict[date, int]] = {}
    for n in range(absence.days):
        day = absence.first + n * _DAY
        for course in courses(medicines, told, day) if day >= today else ():
            if course.due_on is not None and course.due_on >= max(absence.first, today):
                name = course.medicine.medicine
                days.setdefault(name, {})[course.due_on] = course.medicine.doses_a_day
    found = []
    for name, doses in sorted(days.items()):
        count, low, high = sum(doses.values()), min(doses), max(doses)
        why = because("doses while away", medicine=name, count=count, low=low, high=high)
        found.append(Falling(kind=DUE, place=place, why=why, animal=animal))
    return found


def faecal_due(
    animal: AnimalId,
    place: str,
    tests: Sequence[FaecalTest],
    holds: Sequence[Hold],
    absence: Absence,
    today: date,
) -> Falling | None:
    """The next faecal test of a quarantine, where its day falls into *absence*."""
    kept = next((hold for hold in holds if hold.kind is HoldKind.QUARANTINE), None)
    if kept is None or _is_awaited(tests):
        return None
    if len(clear_faecals(tests, kept.since)) >= FAECALS_WANTED.value:
        return None
    told = [test.happened.day for test in tests if test.happened.day >= kept.since]
    on = max([kept.since, *told]) + timedelta(days=APART_DAYS.value)
    if not _meets(on, on, absence, today):
        return None
    why = because("faecal test while away", on=on)
    return Falling(kind=DUE, place=place, why=why, animal=animal)


def ending(
    permits: Iterable[P],
    absence: Absence,
    today: date,
    place: str = "",
    animal: AnimalId | None = None,
) -> list[Falling]:
    """Papers whose last day falls into *absence*; of the house they stand under their own name."""
    return [
        Falling(
            kind=DUE,
            place=place or permit.kind,
            why=because(
                "permit ends while away",
                permit=permit.kind,
                number=permit.number,
                on=permit.expires,
            ),
            animal=animal,
        )
        for permit in latest_permits(permits)
        if _meets(permit.expires, permit.expires, absence, today)
    ]


def absence_lines(falling: Iterable[Falling], absence: Absence) -> tuple[WatchLine, ...]:
    """One line for each kind of thing at each place, told until the absence is over."""
    lines: dict[tuple[str, str], list[Falling]] = {}
    for each in falling:
        lines.setdefault((each.kind, each.place), []).append(each)
    away = because("away then", who=absence.who or None, first=absence.first, last=absence.last)
    return tuple(
        WatchLine(
            animal=None,
            place=place,
            kind=kind,
            severity=Severity.THIS_WEEK,
            since=None,
            ends=because("ends with the absence", on=absence.last),
            because=(*(each.why for each in found), *_cautions(kind), away),
            members=tuple({each.animal: None for each in found if each.animal is not None}),
        )
        for (kind, place), found in lines.items()
    )


def _cautions(kind: str) -> Sequence[Reason]:
    return (because("no cutting but by experienced hands"),) if kind == PIPPING else ()


def _meets(low: date, high: date, absence: Absence, today: date) -> bool:
    return low <= absence.last and high >= max(absence.first, today)


def _is_awaited(tests: Sequence[FaecalTest]) -> bool:
    """Whether the last was sent off, or something was found: the next step is not a day's."""
    last = max(tests, key=lambda test: test.happened, default=None)
    return last is not None and last.result in (FaecalResult.SENT, FaecalResult.FOUND)
