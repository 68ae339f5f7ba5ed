"""Care asked for in one line on an animal's page: medicine, faecal test, permit, eggs, cleaning."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from functools import partial

from keeper.actions.eggs_placing import incubators
from keeper.actions.keeping import Keeping, Written
from keeper.actions.typed_care import (
    EGGS,
    FAECAL,
    MEDICINE,
    PERMIT,
    Running,
    ask_if_near,
    cleaning_typed,
    clutches_of,
    eggs_typed,
    faecal_typed,
    medicine_typed,
    permit_typed,
    running_courses,
)
from keeper.actions.typed_entries import happened_on
from keeper.desktop.screens.animal_asking import Noting, hinted
from keeper.husbandry.care import Dose
from keeper.husbandry.now import AnimalNow
from keeper.language import tr
from keeper.reports.figures import day as day_words


@dataclass(slots=True)
class DoseNoting(Noting):
    """A dose near to the one before is asked again; the same line once more writes it."""

    running: Sequence[Running] = ()
    _asked: str | None = None

    def take(self, text: str) -> Written:
        sure, self._asked = text == self._asked, text
        happened = happened_on(self.keeping, self.row, self.day)
        event = self.reader(self.row.animal, happened, text).event
        if isinstance(event, Dose) and not sure:
            ask_if_near(event, self.running)
        return Noting.take(self, text)


def medicine_asked(keeping: Keeping, row: AnimalNow, day: date) -> Noting:
    """A course, or a tick for a dose of one that runs."""
    running = running_courses(keeping, row.animal, day)
    reader = partial(medicine_typed, keeper=keeping.keeper, running=running)
    prompt = tr("medicine, {day}", day=day_words(day))
    return DoseNoting(keeping, row, day, prompt, MEDICINE, reader, running)


def faecal_asked(keeping: Keeping, row: AnimalNow, day: date) -> Noting:
    prompt = tr("faecal test, {day}", day=day_words(day))
    return Noting(keeping, row, day, prompt, hinted(FAECAL), faecal_typed)


def permit_asked(keeping: Keeping, row: AnimalNow, day: date) -> Noting:
    return Noting(keeping, row, day, tr("permit"), hinted(PERMIT), permit_typed)


def eggs_asked(keeping: Keeping, row: AnimalNow, day: date) -> Noting:
    """Raises LookupError for one that has laid no eggs."""
    laid = clutches_of(keeping, row.animal)
    if not laid:
        raise LookupError(tr("No clutch of {who} is in the book; L writes one.", who=row.called))
    prompt = tr("her eggs, {day}", day=day_words(day))
    reader = partial(eggs_typed, laid=laid, known=incubators(keeping))
    return Noting(keeping, row, day, prompt, hinted(EGGS), reader)


def cleaning_asked(keeping: Keeping, row: AnimalNow, day: date) -> Noting:
    prompt = tr("tub cleaned, {day}", day=day_words(day))
    hint = hinted(tr("whole or spot, then a note; Enter alone is whole"))
    return Noting(keeping, row, day, prompt, hint, cleaning_typed)
