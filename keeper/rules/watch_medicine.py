"""Courses of medicine as the vet wrote them: a dose that is due, and one that was missed.

Of several doses a day one is missed when its day is over; on the first day of a course one is
enough, because it may have begun in the evening. Nothing is reckoned of amounts: they are
repeated in the vet's own words. A missed dose is told until the keeper has written what became
of it; it is never added to another.
"""

from collections.abc import Iterable, Iterator, Sequence
from datetime import date, timedelta

from keeper.husbandry.care import Dose, DoseTold, Medicine
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import practice
from keeper.husbandry.reasons import Figure, Reason, because
from keeper.husbandry.when import Happened
from keeper.rules.watch_facts import Course, Severity, Signal, WatchFacts

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("dose due", ("medicine", "amount", "route", "on", "number", "doses")),
    ("dose of several a day due", ("medicine", "amount", "route", "on", "told", "times")),
    ("dose missed, never doubled, ask a reptile vet", ("medicine", "on", "count")),
    ("weight beside a dose", ("weight_g", "weighed_on")),
    ("ends with a dose written", ()),
)
"""Every reason of this module with the figures it carries."""

NEAR_SHARE = practice(0.5)
"""A dose nearer to the one before than this share of the interval the vet wrote is asked again."""

MISSED_TOLD_DAYS = practice(30)
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


def told_of(medicine: Medicine, due_on: date, doses: Iterable[Dose]) -> int:
    """How many doses of *due_on* something was told of, before the next ones were due."""
    next_on = due_on + timedelta(days=medicine.every_days)
    return sum(due_on <= dose.happened.day < next_on for dose in doses)


def is_ticked(medicine: Medicine, due_on: date, doses: Iterable[Dose]) -> bool:
    """Whether something was told of every dose of *due_on*."""
    return told_of(medicine, due_on, doses) >= medicine.doses_a_day


def given_shortly_before(medicine: Medicine, given: Iterable[Dose], at: Happened) -> Dose | None:
    """The last dose that was given before the instant *at*, where that is strangely near.

    Only times that are known to the minute are held against each other; a dose of which the day
    alone is known says nothing. Nothing is refused by this, and nothing reckoned of amounts.
    """
    interval = timedelta(days=medicine.every_days) / medicine.doses_a_day
    exact = [dose for dose in given if not dose.happened.span and dose.happened.at <= at.at]
    last = max(exact, key=lambda dose: dose.happened.at, default=None)
    if last is None or at.span:
        return None
    return last if at.at - last.happened.at < NEAR_SHARE.value * interval else None


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
        yield _due(course, course.due_on)
    if course.missed:
        count, first = len(course.missed), course.missed[0]
        missed: dict[str, Figure] = {"medicine": medicine.medicine, "on": first, "count": count}
        yield because("dose missed, never doubled, ask a reptile vet", **missed)
    if now.weight_g is not None and now.weighed_on is not None:
        yield because("weight beside a dose", weight_g=now.weight_g, weighed_on=now.weighed_on)


def _due(course: Course, on: date) -> Reason:
    medicine, times = course.medicine, course.medicine.doses_a_day
    told: dict[str, Figure] = {
        "medicine": medicine.medicine,
        "amount": medicine.amount,
        "route": medicine.route,
        "on": on,
    }
    if times > 1:
        return because("dose of several a day due", told=course.told, times=times, **told)
    return because("dose due", number=course.number, doses=course.doses, **told)


def _course(
    medicine: Medicine, after: Medicine | None, doses: Sequence[Dose], today: date
) -> Course:
    days, times = due_days(medicine), medicine.doses_a_day
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
    told = told_of(medicine, due_on, doses) if due_on else 0
    told_from = today - timedelta(days=MISSED_TOLD_DAYS.value)
    over = [day for day in open_days if day != due_on and day >= told_from]
    return Course(
        medicine=medicine,
        due_on=due_on,
        number=days.index(due_on) * times + told + 1 if due_on else 0,
        doses=len(days) * times,
        missed=tuple(day for day in over for _ in range(_missed(medicine, day, doses))),
        told=told,
    )


def _missed(medicine: Medicine, on: date, doses: Sequence[Dose]) -> int:
    """Doses of *on*, a day that is over, of which nothing was told."""
    told = told_of(medicine, on, doses)
    wanted = 1 if on == medicine.first_on else medicine.doses_a_day
    return max(0, wanted - told)


def due_days(medicine: Medicine) -> list[date]:
    """Every day on which a dose of the course is due, as far as it was written."""
    length = (medicine.last_on - medicine.first_on).days
    return [
        medicine.first_on + timedelta(days=days)
        for days in range(0, length + 1, medicine.every_days)
    ]


def _name(medicine: str) -> str:
    return medicine.strip().casefold()
