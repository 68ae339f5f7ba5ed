"""A score of a look in one line: of the animal on its page, or of a whole clutch in walking order.

What was scored before is not shown while scoring, so that it does not lead the eye; a day in the
past is the day of an old picture that is scored again.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from functools import partial

from keeper.actions.clutch_rows import ClutchRow
from keeper.actions.keeping import Keeping, Written
from keeper.actions.noting import note
from keeper.actions.typed_colour import (
    VERB,
    ClutchTyped,
    clutch_typed,
    colour_typed,
    traits_known,
)
from keeper.actions.typed_entries import happened_on
from keeper.desktop.screens.animal_asking import Noting, hinted, writes
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import walking_key
from keeper.language import tr
from keeper.reports.figures import day as day_words


def colour_asked(keeping: Keeping, row: AnimalNow, day: date) -> Noting:
    """A line for one score on *day*."""
    known = traits_known(keeping)
    told = tr("a look and a score from 1 to 10, then a note: red 7.5")
    if known:
        told = tr("{hint}; scored so far: {looks}", hint=told, looks=", ".join(known))
    prompt = tr("colour, {day}", day=day_words(day))
    return Noting(keeping, row, day, prompt, hinted(told), partial(colour_typed, known=known))


def clutch_asked(keeping: Keeping, row: ClutchRow, day: date) -> ClutchScoring:
    """A line for the young of *row* that are here."""
    here = [young for young in row.young if young.in_the_room]
    here.sort(key=lambda young: (walking_key(young.place), young.code))
    return ClutchScoring(keeping, row.facts.name, here, day, traits_known(keeping))


@dataclass(slots=True)
class ClutchScoring:
    """The young of a clutch along the tubs, a number each; it says whose turn it is."""

    keeping: Keeping
    clutch: str
    young: Sequence[AnimalNow]
    day: date
    known: Sequence[str]

    @property
    def prompt(self) -> str:
        return tr("colour of {clutch}", clutch=self.clutch)

    @property
    def hint(self) -> str:
        if not self.young:
            return self._nobody
        looks = ", ".join(self.known)
        look = looks or tr("red", sense="a colour, as an example")
        return tr(
            "{look} and {count} scores in walking order from {first}, - for one not scored",
            look=look,
            count=len(self.young),
            first=self.young[0].place_and_name,
        )

    def echo(self, text: str) -> str:
        if not text.strip():
            return self.hint
        try:
            return writes(self._typed(text).what)
        except ValueError as error:
            return str(error)

    def step(self, by: int) -> None:
        return None

    def take(self, text: str) -> Written:
        typed = self._typed(text)
        return note(self.keeping, VERB, *typed.events, where=self.clutch, what=typed.what)

    def _typed(self, text: str) -> ClutchTyped:
        if not self.young:
            raise ValueError(self._nobody)
        happened = happened_on(self.keeping, self.young[0], self.day)
        return clutch_typed(self.young, happened, text, self.known)

    @property
    def _nobody(self) -> str:
        return tr("No young of {clutch} is here to be scored.", clutch=self.clutch)
