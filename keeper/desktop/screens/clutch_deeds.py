"""What can be typed of the chosen clutch: what became of its eggs, where they lie, its young."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date

from keeper.actions.clutch_detail import letter_of
from keeper.actions.clutch_rows import ClutchRow
from keeper.actions.eggs_placing import incubators
from keeper.actions.gene_typed import LOOKS, genes_named, looks_typed
from keeper.actions.keeping import Keeping
from keeper.actions.typed_care import EGGS, eggs_typed
from keeper.actions.typed_entries import Typed
from keeper.desktop.screens import animal_comings as comings
from keeper.desktop.screens.animal_asking import Asking, Noting, hinted
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.when import Happened
from keeper.language import tr
from keeper.reports.figures import day as day_words

ClutchAsked = Callable[[Keeping, ClutchRow, date], Asking]


def eggs_asked(keeping: Keeping, row: ClutchRow, day: date) -> Asking:
    """A line about the eggs of *row*: its code need not be typed."""
    known, laid = incubators(keeping), row.facts.laid
    of = f" of {laid.code}" if laid.code else ""

    def reader(animal: AnimalId, happened: Happened, text: str) -> Typed:
        return eggs_typed(animal, happened, f"{text.strip()}{of}", laid=[laid], known=known)

    prompt = tr("eggs of {clutch}, {day}", clutch=row.facts.name, day=day_words(day))
    return Noting(keeping, row.dam, day, prompt, hinted(EGGS), reader)


def looks_asked(keeping: Keeping, row: ClutchRow, day: date) -> Asking:
    """A line about what all young of *row* show of a gene, those that left among them."""
    named = genes_named(keeping, row.dam.species)
    young: dict[str, AnimalId] = {}
    for name, each in _called(row):
        young.setdefault(name, each.animal)

    def reader(_animal: AnimalId, happened: Happened, text: str) -> Typed:
        return looks_typed(happened, text, young=young, named=named)

    prompt = tr("looks of {clutch}, {day}", clutch=row.facts.name, day=day_words(day))
    return Noting(keeping, row.dam, day, prompt, hinted(LOOKS), reader)


def _called(row: ClutchRow) -> Iterator[tuple[str, AnimalNow]]:
    """Each young by its letter, then by its code and its name."""
    lettered = [(letter_of(young, row.facts.name), young) for young in row.young]
    yield from (each for each in lettered if each[0])
    for young in row.young:
        yield young.code, young
        yield young.called, young


def young_asked(keeping: Keeping, row: ClutchRow, day: date) -> Asking:
    """A line for young of *row* that are not in the book yet; the place stays in view."""
    return comings.young_asked(keeping, row.dam, day, lambda _animal: None)
