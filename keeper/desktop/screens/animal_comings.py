"""Lines for who comes and goes: a new animal, young, eggs, a pairing, a standing, a name."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import date
from functools import partial

from keeper.actions import breeding_typed as typed
from keeper.actions.keeping import Keeping, Written
from keeper.actions.males import male_lacks
from keeper.actions.newcomers import (
    HATCHED,
    NEW,
    Coming,
    bring_in,
    hatchlings_typed,
    newcomer_typed,
)
from keeper.actions.typed_entries import Reader, Typed, happened_on
from keeper.desktop.screens.animal_asking import Noting, hinted, writes
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.when import Happened, at_instant
from keeper.language import tr
from keeper.reports.figures import day as day_words

Show = Callable[[AnimalId], object]


@dataclass(slots=True)
class Bringing:
    """Animals that are not in the book yet; *show* opens the page of the first of them."""

    keeping: Keeping
    prompt: str
    hint: str
    reader: Callable[[str], Coming]
    show: Show

    def echo(self, text: str) -> str:
        if not text.strip():
            return self.hint
        try:
            return writes(self.reader(text).what)
        except ValueError as error:
            return str(error)

    def step(self, by: int) -> None:
        return None

    def take(self, text: str) -> Written:
        written, animals = bring_in(self.keeping, self.reader(text))
        self.show(animals[0])
        return written


def newcomer_asked(keeping: Keeping, show: Show) -> Bringing:
    """Of today: the day on which it comes into the book."""

    def reader(text: str) -> Coming:
        return newcomer_typed(keeping, at_instant(keeping.now()), text)

    return Bringing(keeping, tr("new animal"), hinted(NEW), reader, show)


def young_asked(keeping: Keeping, row: AnimalNow, day: date, show: Show) -> Bringing:
    def reader(text: str) -> Coming:
        return hatchlings_typed(keeping, row, happened_on(keeping, row, day), text)

    prompt = tr("hatched, {day}", day=day_words(day))
    return Bringing(keeping, prompt, hinted(HATCHED), reader, show)


def laid_asked(keeping: Keeping, row: AnimalNow, day: date) -> Noting:
    prompt = tr("laid, {day}", day=day_words(day))
    return Noting(keeping, row, day, prompt, hinted(typed.LAID), _of(row, typed.laid_typed))


def paired_asked(
    keeping: Keeping, row: AnimalNow, day: date, everyone: Sequence[AnimalNow]
) -> Noting:
    reader = partial(_paired, keeping, day, everyone)
    prompt = tr("paired, {day}", day=day_words(day))
    return Noting(keeping, row, day, prompt, hinted(typed.PAIRED), _of(row, reader))


def _paired(
    keeping: Keeping,
    day: date,
    everyone: Sequence[AnimalNow],
    row: AnimalNow,
    happened: Happened,
    text: str,
) -> Typed:
    """The pairing, and what the male is short of; it is written all the same."""
    told = typed.paired_typed(row, happened, text, everyone)
    males = (each for each in everyone if each.animal in typed.pair_of(told))
    lacks = next(filter(None, (male_lacks(keeping, each, day) for each in males)), "")
    return replace(told, what=f"{told.what}. {lacks}") if lacks else told


def standing_asked(keeping: Keeping, row: AnimalNow, day: date) -> Noting:
    prompt = tr("standing, {day}", day=day_words(day))
    return Noting(keeping, row, day, prompt, hinted(typed.LEAVES), typed.standing_typed)


def named_asked(keeping: Keeping, row: AnimalNow, day: date) -> Noting:
    prompt = tr("called, {day}", day=day_words(day))
    return Noting(keeping, row, day, prompt, hinted(typed.NAMED), _of(row, typed.named_typed))


def _of(row: AnimalNow, reader: Callable[[AnimalNow, Happened, str], Typed]) -> Reader:
    """*reader* of a whole row in the place of one of a key."""
    return lambda _animal, happened, text: reader(row, happened, text)
