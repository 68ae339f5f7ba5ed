"""Courses of medicine as the vet wrote them: a dose that is due, and one that was missed.

Nothing is reckoned of amounts: they are repeated in the vet's own words. A missed dose is told
until the keeper has written what became of it; it is never added to another.
"""

from collections.abc import Iterable, Iterator, Sequence
from datetime import date, timedelta

from keeper.husbandry.care import Dose, DoseTold, Medicine
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import COMMON_PRACTICE, Sourced
from keeper.husbandry.reasons import Figure, Reason, because
from keeper.rules.watch_facts import Course, Severity, Signal, WatchFacts

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("dose due", ("medicine", "amount", "route", "on", "number", "doses")),
    ("dose missed, never doubled, ask a reptile vet", ("medicine", "on", "count")),
    ("weight beside a dose", ("weight_g", "weighed_on")),
    ("ends with a dose written", ()),
)
"""Every reason of this module with the figures it carries."""

MISSED_TOLD_DAYS = Sourced(value=30, source=COMMON_PRACTICE)
"""A missed dose of longer ago is history, which the records keep."""


def courses(medicines: Iterable[Medicine], told: Iterable[Dose], today: date) -> tuple[Course, ...]:
    """The courses of one animal that ask for something on the day *today*.

    A later entry of the same medicine replaces the one before it from its first day on.
    """
    by_name: dict[str, list[Medicine]] = {}
    for medicine in sorted(medicines, key=lambda each: each.happened):
        by_name.setdefault(_name(medicine.medicine), []).append(medicine)
    doses = [dose for dose in told if dose.happened.day <= today]
    found = [
        _course(medicine, after, [d for d in doses if _name(d.medicine) == name], today)
        for name, written in by_name.items()
        for medicine, after in zip(written, [*written[1:], None], strict=True)
        if medicine.happened.day <= today
    ]
    return tuple(course for course in found if course.due_on or course.missed)


def is_ticked(medicine: Medicine, due_on: date, doses: Iterable[Dose]) -> bool:
    """Whether something was told of the dose of *due_on*, before the next one was due."""
    next_on = due_on + timedelta(days=medicine.every_days)
    return any(due_on <= dose.happened.day < next_on for dose in doses)


def medicine_signals(facts: WatchFacts, today: date) -> Iterator[Signal]:
    """One line for each course that asks for something; it cannot be put aside."""
    for course in facts.courses:
        yield Signal(
            kind="medicine",
            severity=Severity.TODAY,
            because=tuple(_why(course, facts.now)),
            since=min((*course.missed, course.due_on or today)),
            ends=because("ends with a dose written"),
            always=True,
        )


def _why(course: Course, now: AnimalNow) -> Iterator[Reason]:
    medicine = course.medicine
    if course.due_on is not None:
        yield because(
            "dose due",
            medicine=medicine.medicine,
            amount=medicine.amount,
            route=medicine.route,
            on=course.due_on,
            number=course.number,
            doses=course.doses,
        )
    if course.missed:
        count, first = len(course.missed), course.missed[0]
        missed: dict[str, Figure] = {"medicine": medicine.medicine, "on": first, "count": count}
        yield because("dose missed, never doubled, ask a reptile vet", **missed)
    if now.weight_g is not None and now.weighed_on is not None:
        yield because("weight beside a dose", weight_g=now.weight_g, weighed_on=now.weighed_on)


def _course(
    medicine: Medicine, after: Medicine | None, doses: Sequence[Dose], today: date
) -> Course:
    days = due_days(medicine)
    stopped = [
        dose.happened.day
        for dose in doses
        if dose.told is DoseTold.STOPPED and dose.happened.at >= medicine.happened.at
    ]
    end = min([*stopped, *([after.first_on] if after else [])], default=date.max)
    open_days = [
        day
        for day in days
        if max(medicine.happened.day, medicine.first_on) <= day <= today and day < end
        if not is_ticked(medicine, day, doses)
    ]
    due_on = next((d for d in open_days if (today - d).days < medicine.every_days), None)
    told_from = today - timedelta(days=MISSED_TOLD_DAYS.value)
    return Course(
        medicine=medicine,
        due_on=due_on,
        number=days.index(due_on) + 1 if due_on else 0,
        doses=len(days),
        missed=tuple(day for day in open_days if day != due_on and day >= told_from),
    )


def due_days(medicine: Medicine) -> list[date]:
    """Every day on which a dose of the course is due, as far as it was written."""
    length = (medicine.last_on - medicine.first_on).days
    return [
        medicine.first_on + timedelta(days=days)
        for days in range(0, length + 1, medicine.every_days)
    ]


def _name(medicine: str) -> str:
    return medicine.strip().casefold()
