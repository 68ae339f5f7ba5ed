"""Care typed in one line: medicine, doses, faecal tests, permits, eggs: see ``typed_entries``.

Nothing of a medicine is proposed, completed or reckoned: what vet and label say is kept as it
was typed.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any

from keeper.actions.care_words import care_words, often_words
from keeper.actions.eggs_placing import is_placing, placing_typed
from keeper.actions.keeping import Keeping
from keeper.actions.typed_entries import Typed, chosen, day_typed
from keeper.actions.typed_names import either, keyword
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.care import (
    Dose,
    DoseTold,
    EggFate,
    Eggs,
    FaecalResult,
    FaecalTest,
    Medicine,
    Permit,
)
from keeper.husbandry.events import Cleaned, Clutch
from keeper.husbandry.house import Cleaning
from keeper.husbandry.when import Happened
from keeper.language import tr
from keeper.reports.figures import day as day_words
from keeper.reports.figures import moment
from keeper.rules.watch_medicine import MISSED_TOLD_DAYS, due_days, given_shortly_before, is_ticked
from keeper.store import reading

MEDICINE = tr(
    "as the vet wrote it: name / amount / route / until 12 Dec or 14 days / every 2 days or"
    " 2 times a day / lot 7; or given, missed or stopped"
)
FAECAL = tr("sent, clear, or found: and what the laboratory says")
PERMIT = tr("kind / number / last day: transfer permit / 26-118 / 30 Jun 2027")
EGGS = tr(
    "how many and what: 8 veined, 8 pipped, 6 hatched, 1 failed, 1 died; or where:"
    " in Incubator 1, box 3; a clutch after 'of'"
)

_TOLD = {way: told for told in DoseTold for way in keyword(told.value)}
_RESULTS = {result.value: result for result in FaecalResult}
_FATES = {fate.value: fate for fate in EggFate}
_A_DAY = either("d", "day", "days")
_STROKE = re.compile(r"\s+/\s+|\s*;\s*")
_EVERY = re.compile(
    rf"{either('every')}\s+(?:(\d{{1,3}})\s*{_A_DAY}|{_A_DAY})|{either('daily')}", re.IGNORECASE
)
_TIMES = re.compile(
    rf"(?:(\d{{1,2}})\s*{either('times', 'x')}|{either('twice')})"
    rf"\s+{either('a day', 'daily')}",
    re.IGNORECASE,
)
_UNTIL = re.compile(rf"{either('until')}\s+(\S.*)", re.IGNORECASE)
_LASTS = re.compile(rf"(\d{{1,3}})\s*{_A_DAY}", re.IGNORECASE)
_LOT = re.compile(rf"{either('lot', 'batch')}\s+(\S.*)", re.IGNORECASE)
_OF = re.compile(rf"\s{either('of')}\s", re.IGNORECASE)
_BY = re.compile(rf"\s{either('by')}\s", re.IGNORECASE)
_EGGS = re.compile(r"(\d{1,3})\s*([^\W\d_]+)")


@dataclass(frozen=True, slots=True, kw_only=True)
class Running:
    """A course that runs on a day, and what was told of its doses."""

    medicine: Medicine
    told: tuple[Dose, ...] = ()

    @property
    def given(self) -> list[Dose]:
        """Doses that were given."""
        return [dose for dose in self.told if dose.told is DoseTold.GIVEN]

    def runs(self, on: date) -> bool:
        """Whether a dose may still be told of on the day *on*."""
        stopped = any(
            dose.told is DoseTold.STOPPED and dose.happened.at >= self.medicine.happened.at
            for dose in self.told
        )
        after_days = (on - self.medicine.last_on).days
        return not stopped and after_days <= MISSED_TOLD_DAYS.value


def running_courses(keeping: Keeping, animal: AnimalId, on: date) -> tuple[Running, ...]:
    """Courses of *animal* that a dose on the day *on* can be of, the last one of each medicine.

    One whose last dose is not long past is among them: it may have been missed.
    """
    doses = [entry.event for entry in reading.history(keeping.book, Dose, animal)]
    latest: dict[str, Medicine] = {}
    for entry in reading.history(keeping.book, Medicine, animal):
        if entry.event.first_on <= on:
            latest[entry.event.medicine.casefold()] = entry.event
    found = [
        Running(
            medicine=medicine,
            told=tuple(dose for dose in doses if dose.medicine.casefold() == name),
        )
        for name, medicine in latest.items()
    ]
    return tuple(course for course in found if course.runs(on))


def clutches_of(keeping: Keeping, animal: AnimalId) -> list[Clutch]:
    """Every clutch of *animal*, oldest first."""
    return [entry.event for entry in reading.history(keeping.book, Clutch, animal)]


def medicine_typed(
    animal: AnimalId,
    happened: Happened,
    text: str,
    *,
    keeper: str,
    running: Sequence[Running] = (),
) -> Typed:
    """A course, or a tick for one dose: ``given``, ``missed, vomited``, ``stopped``.

    keeper: who gives where no other is named (``given by Anna``). running: her courses, for a
    tick that names none.

    Raises:
        ValueError: a part that the vet must have written is missing, a tick is for no course, or
            a second one for the same dose.
    """
    head = text.strip().split(maxsplit=1)[0].rstrip(",;:").casefold() if text.strip() else ""
    if head in _TOLD and len(_between(text)) == 1:
        return _dose(animal, happened, text.strip()[len(head) :], _TOLD[head], keeper, running)
    return _course(animal, happened, text)


class AskedAgain(ValueError):
    """Nothing is wrong with what was typed; typed once more it is written."""


def ask_if_near(dose: Dose, running: Sequence[Running]) -> None:
    """Raises AskedAgain where a dose that is given lies strangely near to the one before."""
    course = next((each for each in running if _called(each) == dose.medicine), None)
    if course is None or dose.told is not DoseTold.GIVEN:
        return
    before = given_shortly_before(course.medicine, course.given, dose.happened)
    if before is not None:
        raise AskedAgain(
            tr(
                "{name} is written as given on {moment}, and the vet wrote {often}: look again."
                " The same line once more writes it; ask a reptile vet if in doubt.",
                name=dose.medicine,
                moment=moment(before.happened.at),
                often=often_words(course.medicine),
            )
        )


def faecal_typed(animal: AnimalId, happened: Happened, text: str) -> Typed:
    """``sent``, ``clear``, ``found: flagellates``.

    Raises:
        ValueError: no such result, or something was found and nothing says what.
    """
    told, _, note = text.strip().replace(":", ",", 1).partition(",")
    result = chosen(told, _RESULTS, tr("result of a faecal test"))
    words = note.strip() or None
    if result is FaecalResult.FOUND and words is None:
        raise ValueError(tr("What was found? As the laboratory wrote it: found: flagellates."))
    event = FaecalTest(animal=animal, happened=happened, result=result, note=words)
    return _typed("faecal test", event)


def permit_typed(animal: AnimalId, happened: Happened, text: str) -> Typed:
    """``transfer permit / 26-118 / 30 Jun 2027``.

    Raises:
        ValueError: kind, number or last day is missing.
    """
    kind, number, expires, *notes = permit_parts(text, happened.day)
    event = Permit(
        animal=animal,
        happened=happened,
        kind=kind,
        number=number,
        expires=expires,
        note=" / ".join(notes) or None,
    )
    return _typed("permit", event)


def permit_parts(text: str, on: date) -> tuple[Any, ...]:
    """Kind, number and last day of a permit typed on the day *on*, then what else was typed.

    Raises:
        ValueError: one of the three is missing.
    """
    parts = _between(text)
    if len(parts) < 3 or not all(parts[:3]):
        raise ValueError(tr("A permit needs {parts}.", parts=PERMIT))
    return (*parts[:2], day_typed(parts[2], on), *parts[3:])


def eggs_typed(
    animal: AnimalId,
    happened: Happened,
    text: str,
    *,
    laid: Sequence[Clutch],
    known: Sequence[str] = (),
) -> Typed:
    """``6 hatched, 1 failed of 26-9``: what became of her eggs, or ``in Incubator 1, box 3``.

    laid: her clutches. known: incubators in the book's own spelling.

    Raises:
        ValueError: no number, nothing that can become of an egg, or no such clutch by that day.
    """
    told, clutch = _parted(text, _OF)
    _refuse_unlaid(laid, clutch, happened.day)
    if is_placing(told):
        meant = next((each for each in reversed(laid) if clutch and each.code == clutch), None)
        return placing_typed(animal, happened, told, known=known, clutch=meant)
    found = [_some_eggs(animal, happened, part, clutch or None) for part in told.split(",")]
    what = ", ".join(care_words(event) for event in found)
    return Typed(verb="eggs", event=found[0], also=tuple(found[1:]), what=what)


def cleaning_typed(animal: AnimalId, happened: Happened, text: str) -> Typed:
    """Her own tub: ``whole`` or ``spot``, then a note."""
    told, _, note = (part.strip() for part in text.partition(","))
    extents = {extent.value: extent for extent in Cleaning}
    extent = chosen(told or Cleaning.WHOLE.value, extents, tr("cleaning"))
    event = Cleaned(animal=animal, happened=happened, extent=extent, note=note or None)
    whole = extent is Cleaning.WHOLE
    what = tr("tub cleaned whole") if whole else tr("tub spot-cleaned")
    return Typed(verb="cleaned", event=event, what=what)


def _course(animal: AnimalId, happened: Happened, text: str) -> Typed:
    parts = [part for part in _between(text) if part]
    if len(parts) < 4:
        raise ValueError(tr("A course needs {parts}.", parts=MEDICINE))
    name, amount, route, *rest = parts
    last_on: date | None = None
    every_days, times, lot, notes = 1, None, None, []
    for part in rest:
        if every := _EVERY.fullmatch(part):
            every_days = int(every[1] or 1)
        elif often := _TIMES.fullmatch(part):
            times = int(often[1] or 2)
        elif until := _UNTIL.fullmatch(part):
            last_on = day_typed(until[1], happened.day)
        elif days := _LASTS.fullmatch(part):
            last_on = happened.day + timedelta(days=int(days[1]) - 1)
        elif lot_told := _LOT.fullmatch(part):
            lot = lot_told[1]
        else:
            notes.append(part)
    if last_on is None or last_on < happened.day:
        raise ValueError(tr("Until when? A course needs its last day: until 12 Dec, or 14 days."))
    event = Medicine(
        animal=animal,
        happened=happened,
        note=" / ".join(notes) or None,
        medicine=name,
        amount=amount,
        route=route,
        first_on=happened.day,
        last_on=last_on,
        every_days=every_days,
        lot=lot,
        times_a_day=None if times == 1 else times,
    )
    return _typed("medicine", event)


def _between(text: str) -> list[str]:
    """The parts between strokes. A stroke inside a word, as in mg/kg, parts nothing; a semicolon
    does, but typed by a quick hand it is taken for the beginning of a label."""
    return [part.strip() for part in _STROKE.split(text.strip())]


def _dose(
    animal: AnimalId,
    happened: Happened,
    rest: str,
    told: DoseTold,
    keeper: str,
    running: Sequence[Running],
) -> Typed:
    """``given``, ``given Tarsin by Anna``, ``missed Tarsin, spat out``."""
    named, _, note = (part.strip() for part in rest.partition(","))
    name, who = _parted(f" {named}", _BY)
    course = _course_meant(name, running)
    if told is DoseTold.GIVEN:
        _refuse_doubled(course, happened.day)
    event = Dose(
        animal=animal,
        happened=happened,
        note=note or None,
        medicine=course.medicine.medicine,
        told=told,
        given_by=who or keeper or None,
    )
    return _typed("dose", event)


def _parted(text: str, at: re.Pattern[str]) -> tuple[str, str]:
    """What stands before and after the first *at*; nothing after where there is none."""
    head, *rest = at.split(text, maxsplit=1)
    return head.strip(), rest[0].strip() if rest else ""


def _course_meant(name: str, running: Sequence[Running]) -> Running:
    fits = [each for each in running if _called(each).casefold().startswith(name.casefold())]
    if len(fits) != 1:
        which = ", ".join(_called(each) for each in fits or running) or tr("none")
        raise ValueError(tr("Which medicine? Courses that run: {which}.", which=which))
    return fits[0]


def _called(course: Running) -> str:
    return course.medicine.medicine


def _refuse_doubled(course: Running, on: date) -> None:
    """Raises ValueError where the dose of that day was written as given already."""
    due = max((day for day in due_days(course.medicine) if day <= on), default=None)
    if due is None or not is_ticked(course.medicine, due, course.given):
        return
    name, day = _called(course), day_words(due)
    raise ValueError(
        tr("The dose of {name} due on {day} is written as given; no second.", name=name, day=day)
    )


def _refuse_unlaid(laid: Sequence[Clutch], code: str, on: date) -> None:
    before = [clutch for clutch in laid if clutch.happened.day <= on]
    if not before:
        raise ValueError(tr("No clutch of hers was laid by {day}.", day=day_words(on)))
    codes = [clutch.code for clutch in before if clutch.code]
    if code and code not in codes:
        known = ", ".join(codes) or tr("none has a code")
        raise ValueError(tr("{typed!r} is no clutch of hers; {known}.", typed=code, known=known))


def _some_eggs(animal: AnimalId, happened: Happened, text: str, clutch: str | None) -> Eggs:
    match = _EGGS.fullmatch(text.strip())
    if match is None or not int(match[1]):
        raise ValueError(
            tr("{typed!r} is not understood; {right}.", typed=text.strip(), right=EGGS)
        )
    fate = chosen(match[2], _FATES, tr("thing that becomes of eggs"))
    return Eggs(animal=animal, happened=happened, fate=fate, count=int(match[1]), clutch=clutch)


def _typed(verb: str, event: Medicine | Dose | FaecalTest | Permit) -> Typed:
    return Typed(verb=verb, event=event, what=care_words(event))
