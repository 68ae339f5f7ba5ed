"""Colour across generations, read off to the side: line by line, look by look.

Everything of ``ColourDesk`` is called in one thread, the one that first asks.
"""

from collections import defaultdict
from collections.abc import Iterable, Mapping
from contextlib import ExitStack
from datetime import date

from keeper.actions.colour_coming import pairs_to_come
from keeper.actions.colour_line import ColourLine, Rows
from keeper.actions.colour_told import colour_facts
from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.own_connection import own_connection
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import ShedSign, ShedStage
from keeper.husbandry.genes import LookScored
from keeper.reports.colour_facts import ColourChoice as ColourChoice
from keeper.reports.colour_facts import ColourFacts as ColourFacts
from keeper.reports.words import short_species_words
from keeper.rules.colour import Score, clouded
from keeper.store import reading

Scores = Mapping[AnimalId, list[Score]]


class ColourDesk:
    """Reads the book with a connection of its own."""

    def __init__(self, keeping: Keeping) -> None:
        self._own = keeping
        self._open = ExitStack()
        self._aside: Keeping | None = None

    def choices(self, on: date) -> tuple[ColourChoice, ...]:
        """Every line with a scored look as of *on*, the most scored first; read anew.

        Raises:
            BookError: the book cannot be opened again.
        """
        self.close()
        return colour_choices(self._keeping(), on)

    def facts(self, choice: ColourChoice, on: date) -> ColourFacts:
        """All that is shown of *choice* as of *on*."""
        return facts_of(self._keeping(), choice, on)

    def close(self) -> None:
        """Let go of the book; in the thread that used it."""
        self._open.close()
        self._aside = None

    def _keeping(self) -> Keeping:
        if self._aside is None:
            self._aside = self._open.enter_context(own_connection(self._own))
        return self._aside


def colour_choices(keeping: Keeping, on: date) -> tuple[ColourChoice, ...]:
    """Every line with a scored look, and every species whose lines are several together."""
    rows = {row.animal: row for row in animals_on(keeping, on)}
    found: list[ColourChoice] = []
    for trait in looks_scored(keeping, on):
        scored = [rows[key] for key in _scores(keeping, trait, on) if key in rows]
        for species in sorted({row.species for row in scored}):
            for line in _lines({row.line for row in scored if row.species == species}):
                made = _choice(keeping, rows, trait, species, line, on)
                found += [made] if made.scored else []
    return tuple(sorted(found, key=lambda each: (-each.generations, -each.scored, each.words)))


def facts_of(keeping: Keeping, choice: ColourChoice, on: date) -> ColourFacts:
    """All that is shown of *choice* as of *on*."""
    rows = {row.animal: row for row in animals_on(keeping, on)}
    line = _line(keeping, rows, choice.trait, choice.species, choice.line, on)
    return colour_facts(line, choice, on)


def _choice(
    keeping: Keeping, rows: Rows, trait: str, species: str, line: str | None, on: date
) -> ColourChoice:
    made = _line(keeping, rows, trait, species, line, on, coming=False)
    one = next(row for row in rows.values() if row.species == species)
    return ColourChoice(
        species=species,
        kind=short_species_words(keeping.profile(one)),
        line=line,
        trait=trait,
        scored=len(made.counted),
        generations=len(made.groups),
    )


def _line(
    keeping: Keeping,
    rows: Rows,
    trait: str,
    species: str,
    line: str | None,
    on: date,
    *,
    coming: bool = True,
) -> ColourLine:
    members = [row for row in rows.values() if row.species == species and line in (None, row.line)]
    scores = _scores(keeping, trait, on)
    pairs = list(pairs_to_come(keeping, rows, members, scores, on)) if coming else []
    return ColourLine(members, rows, scores, pairs)


def looks_scored(keeping: Keeping, on: date) -> list[str]:
    """The keeper's words for looks, each as it was first written, by the alphabet."""
    found: dict[str, str] = {}
    for entry in _entries(keeping):
        if entry.event.happened.day <= on:
            found.setdefault(entry.event.trait.casefold(), entry.event.trait)
    return sorted(found.values(), key=str.casefold)


def _lines(lines: set[str | None]) -> list[str | None]:
    """The lines to choose from: where there are several, all together too."""
    named: list[str | None] = [*sorted(line for line in lines if line is not None)]
    return named if len(lines) == 1 and named else [None, *named]


def _entries(keeping: Keeping) -> list[reading.Entry[LookScored]]:
    return keeping.once("looks scored", lambda: reading.all_of(keeping.book, LookScored))


def _scores(keeping: Keeping, trait: str, on: date) -> Scores:
    """Scores of a look by animal in the order of writing."""
    return keeping.once(("scores", trait, on), lambda: _read_scores(keeping, trait, on))


def _read_scores(keeping: Keeping, trait: str, on: date) -> Scores:
    rows = {row.animal: row for row in animals_on(keeping, on)}
    entries = _entries(keeping)
    signs = _signs(keeping, {entry.event.animal for entry in entries})
    written: dict[int, date] = {}
    found: dict[AnimalId, list[Score]] = defaultdict(list)
    for entry in entries:
        event, row = entry.event, rows.get(entry.event.animal)
        day = event.happened.day
        if event.trait.casefold() != trait.casefold() or row is None or day > on:
            continue
        batch = entry.key.batch
        if batch not in written:
            told = reading.batch_row(keeping.book, batch)
            written[batch] = told.written.date() if told else day
        found[event.animal].append(
            Score(
                score=event.score,
                on=day,
                written_on=written[batch],
                age_days=row.age_days(day),
                clouded=clouded(signs[event.animal], day),
            )
        )
    return found


def _signs(
    keeping: Keeping, animals: Iterable[AnimalId]
) -> Mapping[AnimalId, list[tuple[date, ShedStage]]]:
    """Days of shed signs, by animal."""
    found: dict[AnimalId, list[tuple[date, ShedStage]]] = defaultdict(list)
    for animal in animals:
        for entry in reading.history(keeping.book, ShedSign, animal):
            found[animal].append((entry.event.happened.day, entry.event.stage))
    return found
