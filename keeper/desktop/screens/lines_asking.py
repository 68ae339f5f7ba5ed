"""What is typed in the place of lines: a new gene, and what an animal shows or is said to carry."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from keeper.actions.finding import found
from keeper.actions.gene_typed import NAMING, gene_typed, genes_named, name_gene, naming_typed
from keeper.actions.gene_words import gene_words
from keeper.actions.keeping import Keeping, Written
from keeper.actions.lines_desk import GeneLine
from keeper.actions.noting import note
from keeper.actions.typed_entries import Typed, happened_on
from keeper.desktop.screens.animal_asking import hinted, where_of, writes
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.when import at_instant
from keeper.language import tr
from keeper.reports.words import species_words


@dataclass(slots=True)
class Naming:
    """A gene of one of *species*, slugs; Up and Down choose among them."""

    keeping: Keeping
    species: Sequence[str]
    _chosen: int = 0

    @property
    def slug(self) -> str:
        return self.species[self._chosen % len(self.species)]

    @property
    def prompt(self) -> str:
        profile = self.keeping.profiles.get(self.slug)
        kind = species_words(profile) if profile else self.slug
        return tr("new gene of the {species}", species=kind)

    @property
    def hint(self) -> str:
        more = tr("↑ ↓ another species") if len(self.species) > 1 else ""
        return "; ".join(filter(None, (hinted(NAMING), more)))

    def echo(self, text: str) -> str:
        if not text.strip():
            return self.hint
        try:
            named = genes_named(self.keeping, self.slug)
            happened = at_instant(self.keeping.now())
            return writes(gene_words(naming_typed(self.slug, happened, text, named=named)))
        except ValueError as error:
            return str(error)

    def step(self, by: int) -> None:
        self._chosen += by

    def take(self, text: str) -> Written:
        return name_gene(self.keeping, self.slug, text)


@dataclass(slots=True)
class Telling:
    """What *row*, or another animal named before a colon, shows or carries of the gene of *line*.

    row: None where none is chosen; then one has to be named.
    """

    keeping: Keeping
    line: GeneLine
    row: AnimalNow | None

    @property
    def prompt(self) -> str:
        gene = self.line.named.gene
        if self.row is None:
            return tr("{gene}, of an animal", gene=gene)
        return tr("{gene}, of {animal}", gene=gene, animal=where_of(self.row))

    @property
    def hint(self) -> str:
        return hinted(tr("visual, normal, het, 66 %, clear; of another: A2·4: visual"))

    def echo(self, text: str) -> str:
        if not text.strip():
            return self.hint
        try:
            row, typed = self._read(text)
        except (ValueError, LookupError) as error:
            return str(error.args[0])
        return writes(tr("{animal}: {what}", animal=where_of(row), what=typed.what))

    def step(self, by: int) -> None:
        return None

    def take(self, text: str) -> Written:
        row, typed = self._read(text)
        events = (typed.event, *typed.also)
        return note(self.keeping, typed.verb, *events, where=where_of(row), what=typed.what)

    def _read(self, text: str) -> tuple[AnimalNow, Typed]:
        """The animal and its entry. Raises ValueError or LookupError with one sentence."""
        before, colon, after = text.partition(":")
        row = self._named(before) if colon else self.row
        if row is None:
            raise LookupError(tr("No animal is chosen; name one and a colon, as A2·4: visual."))
        gene, told = self.line.named, (after if colon else text).strip()
        happened = happened_on(self.keeping, row, self.keeping.today)
        typed = gene_typed(
            row.animal,
            happened,
            f"{gene.gene} {told}",
            named=self.line.genes.named,
            species=gene.species,
        )
        return row, typed

    def _named(self, text: str) -> AnimalNow:
        rows = [row for row in self.line.genes.rows.values() if row.in_the_room]
        fits = found(rows, text)
        if not fits:
            told = tr("No {species} here is {typed!r}.", species=self.line.species, typed=text)
            raise LookupError(told)
        return fits[0]
