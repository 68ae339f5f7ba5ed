"""Mites are met in a rack or the room as one: looks at fixed days, all clear at the end.

Day 0 is the treatment, by a vet's word or the label. Mites seen at a look begin the count anew.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.house import MiteStep, MitesTold
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import place_of
from keeper.husbandry.profile import practice
from keeper.husbandry.reasons import Reason, because
from keeper.rules.watch_facts import Severity, WatchLine

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("look for mites", ("number", "begun")),
    ("look for mites late", ("number", "begun", "on", "days")),
    ("mites all clear", ("number", "begun", "on")),
    ("looks for mites missed", ("count",)),
    ("treated against mites", ("on", "text")),
    ("the whole rack is one, product and amount by a reptile vet", ()),
    ("ends with a look for mites", ()),
)
"""Every reason of this module with the figures it carries."""

LOOK_DAYS = tuple(practice(day) for day in (7, 14, 21, 28, 42))
"""Days after day 0 on which to look; a clear look on the last of them is all clear."""

EARLY_DAYS = practice(1)
"""A look so long before its day is that look."""


@dataclass(frozen=True, slots=True, kw_only=True)
class MiteCourse:
    """What is to be done against mites at a place. number: the day of the look that is due.

    late_days: since it was due. missed: looks before it that were never written.
    """

    place: str | None
    begun: date
    number: int
    due_on: date
    late_days: int
    missed: int
    treatment: str | None
    treated_on: date


def mite_lines(
    steps: Iterable[MiteStep], animals: Sequence[AnimalNow], today: date
) -> tuple[WatchLine, ...]:
    """One line for each place where a look is due."""
    by_place: dict[str | None, list[MiteStep]] = {}
    for step in sorted(steps, key=lambda each: each.happened):
        if step.happened.day <= today:
            by_place.setdefault(step.place, []).append(step)
    found = (mite_course(told, today) for told in by_place.values())
    return tuple(_line(course, animals) for course in found if course is not None)


def met_on(steps: Iterable[MiteStep], place: str | None, today: date) -> date | None:
    """The last day on which a step was written for the rack of *place* or for the room."""
    days = [
        step.happened.day
        for step in steps
        if step.happened.day <= today and (step.place is None or _stands_in(place, step.place))
    ]
    return max(days, default=None)


def mite_course(told: Sequence[MiteStep], today: date) -> MiteCourse | None:
    """The look that is due at one place; None between looks and after all is clear.

    told: every step of that place up to *today*, oldest first.
    """
    begun = _begun(told)
    if begun is None:
        return None
    looks = [step.happened.day for step in told if step.happened.day > begun]
    due = [begun + timedelta(days=day.value) for day in LOOK_DAYS]
    undone = [on for on in due if on <= today and not _is_done(on, due, looks)]
    current = max((on for on in due if on <= today), default=None)
    if current is None or current not in undone:
        return None
    treated = [step for step in told if step.treatment]
    return MiteCourse(
        place=told[-1].place,
        begun=begun,
        number=(current - begun).days,
        due_on=current,
        late_days=(today - current).days,
        missed=len(undone) - 1,
        treatment=treated[-1].treatment if treated else None,
        treated_on=treated[-1].happened.day if treated else begun,
    )


def _begun(told: Sequence[MiteStep]) -> date | None:
    """Day 0 of the count that runs; None where none does."""
    begun: date | None = None
    for step in told:
        on = step.happened.day
        if step.told is MitesTold.ENDED:
            begun = None
        elif step.told is not MitesTold.CLEAR:
            begun = on
        elif begun is not None and (on - begun).days >= LOOK_DAYS[-1].value - EARLY_DAYS.value:
            begun = None
    return begun


def _is_done(on: date, due: Sequence[date], looks: Sequence[date]) -> bool:
    """Whether a look was written from shortly before *on* until shortly before the next."""
    early = timedelta(days=EARLY_DAYS.value)
    after = next((other for other in due if other > on), date.max)
    return any(on - early <= day < after - early for day in looks)


def _line(course: MiteCourse, animals: Sequence[AnimalNow]) -> WatchLine:
    return WatchLine(
        animal=None,
        place=course.place,
        kind="mite step",
        severity=Severity.TODAY,
        since=course.due_on,
        ends=because("ends with a look for mites"),
        because=tuple(_why(course)),
        members=_members(course.place, animals),
    )


def _why(course: MiteCourse) -> list[Reason]:
    told = [_look(course)]
    if course.missed:
        told.append(because("looks for mites missed", count=course.missed))
    if course.treatment:
        told.append(because("treated against mites", on=course.treated_on, text=course.treatment))
    return [*told, because("the whole rack is one, product and amount by a reptile vet")]


def _look(course: MiteCourse) -> Reason:
    number, begun, on = course.number, course.begun, course.due_on
    if number == LOOK_DAYS[-1].value:
        return because("mites all clear", number=number, begun=begun, on=on)
    if course.late_days:
        late = course.late_days
        return because("look for mites late", number=number, begun=begun, on=on, days=late)
    return because("look for mites", number=number, begun=begun)


def _members(place: str | None, animals: Sequence[AnimalNow]) -> tuple[AnimalId, ...]:
    if place is None:
        return tuple(row.animal for row in animals)
    return tuple(row.animal for row in animals if _stands_in(row.place, place))


def _stands_in(written: str | None, rack: str) -> bool:
    found = place_of(written or "")
    return written == rack if found is None else found.rack == rack
