"""A dose ticked today from the watch: given for today, or missed for each day that has none."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import timedelta

from keeper.actions.care_words import care_words
from keeper.actions.keeping import Keeping, Written
from keeper.actions.noting import note
from keeper.actions.typed_care import Running, ask_if_near, medicine_typed, running_courses
from keeper.husbandry.care import Dose, DoseTold
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.when import at_instant, on_day
from keeper.language import tr
from keeper.reports.figures import day as day_words
from keeper.rules.watch_facts import Course
from keeper.rules.watch_medicine import courses


class DoseTicks:
    """Ticks of one animal's doses, one line after another.

    A dose strangely near to the one before is asked again; the same line once more writes it.
    """

    def __init__(self, keeping: Keeping, animal: AnimalNow) -> None:
        self._keeping, self._animal = keeping, animal
        self._asked: str | None = None

    def take(self, text: str) -> Written:
        """As ``tick``. Raises AskedAgain once of a dose that is near."""
        sure, self._asked = text == self._asked, text
        return tick(self._keeping, self._animal, text, sure=sure)


def tick(keeping: Keeping, animal: AnimalNow, text: str, *, sure: bool = True) -> Written:
    """Write what became of a dose: ``given by Anna``, ``missed, spat out``, ``stopped``.

    What was missed is written of its own days, so that today's dose stays due. sure: it is not
    asked again where the dose before lies near.

    Raises:
        AskedAgain: it lies near, and nobody was asked yet.
        ValueError: it is no tick, of no course, or given where none is due today.
    """
    running = running_courses(keeping, animal.animal, keeping.today)
    happened = at_instant(keeping.now())
    typed = medicine_typed(animal.animal, happened, text, keeper=keeping.keeper, running=running)
    if not isinstance(typed.event, Dose):
        raise ValueError(tr("Given, missed or stopped are right; V on her page takes a course."))
    doses = _of_its_days(keeping, typed.event, running)
    if not sure:
        ask_if_near(typed.event, running)
    days = ", ".join(day_words(dose.happened.day) for dose in doses)
    what = tr("{told}, {days}", told=care_words(typed.event), days=days)
    return note(keeping, typed.verb, *doses, where=animal.place_and_name, what=what)


def _of_its_days(keeping: Keeping, dose: Dose, running: Sequence[Running]) -> list[Dose]:
    course = _asking(keeping, dose, running)
    if dose.told is DoseTold.GIVEN and (course is None or course.due_on is None):
        raise ValueError(
            tr(
                "No dose of {name} is due today; one of a past day is written on her page, on that"
                " day, or is missed.",
                name=dose.medicine,
            )
        )
    if dose.told is DoseTold.MISSED and course is not None and course.missed:
        offset = keeping.now().utcoffset() or timedelta(0)
        return [replace(dose, happened=on_day(day, offset)) for day in course.missed]
    return [dose]


def _asking(keeping: Keeping, dose: Dose, running: Sequence[Running]) -> Course | None:
    """What the course of *dose* asks for today; None where it asks for nothing."""
    meant = [each for each in running if each.medicine.medicine == dose.medicine]
    asked = [
        found for each in meant for found in courses([each.medicine], each.told, keeping.today)
    ]
    return next(iter(asked), None)
