"""Genes asked for in one line on an animal's page, and what she carries put into words."""

from __future__ import annotations

from datetime import date

from keeper.actions.gene_typed import GENE, gene_typed, genes_named
from keeper.actions.keeping import Keeping
from keeper.actions.typed_entries import Typed
from keeper.desktop.screens.animal_asking import Noting, hinted
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.when import Happened
from keeper.language import tr
from keeper.reports.figures import day as day_words


def gene_asked(keeping: Keeping, row: AnimalNow, day: date) -> Noting:
    """What she shows or is said to carry, or a gene of her species named."""
    named = genes_named(keeping, row.species)

    def reader(animal: AnimalId, happened: Happened, text: str) -> Typed:
        return gene_typed(animal, happened, text, named=named, species=row.species)

    names = ", ".join(gene.gene for gene in named)
    hint = tr("{hint}; named here: {names}", hint=GENE, names=names) if names else GENE
    return Noting(keeping, row, day, tr("gene, {day}", day=day_words(day)), hinted(hint), reader)
