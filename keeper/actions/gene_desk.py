"""The genes of the house read off to the side; all in one thread, the one that first asks."""

from contextlib import ExitStack
from dataclasses import replace

from keeper.actions.gene_cards import CardOutOfDate, cards_out_of_date
from keeper.actions.gene_odds import HouseGenes, house_genes
from keeper.actions.gene_page import GenesOfAnimal, genes_of
from keeper.actions.gene_world import KINDS
from keeper.actions.keeping import Keeping
from keeper.actions.own_connection import own_connection
from keeper.husbandry.animal import AnimalId
from keeper.store.as_written import mark_of

Mark = tuple[int | None, ...]


class GeneDesk:
    """Reads the book with a connection of its own; reckons anew only where genes may differ."""

    def __init__(self, keeping: Keeping) -> None:
        self._own = keeping
        self._open = ExitStack()
        self._aside: Keeping | None = None
        self._house: tuple[Mark, HouseGenes] | None = None
        self._cards: tuple[Mark, tuple[CardOutOfDate, ...]] | None = None

    def genes(self) -> HouseGenes:
        """Every species, from the book as it is now.

        Raises:
            BookError: the book cannot be opened again.
        """
        return self._read()[1]

    def of(self, animal: AnimalId) -> GenesOfAnimal | None:
        """What one animal carries; None of one that the book does not hold."""
        return genes_of(self.genes(), animal)

    def cards(self) -> tuple[CardOutOfDate, ...]:
        """Cards that went with animals and are out of date."""
        mark, house = self._read()
        if self._cards is None or self._cards[0] != mark:
            self._cards = (mark, cards_out_of_date(self._keeping(), house))
        return self._cards[1]

    def close(self) -> None:
        """Let go of the book; in the thread that used it."""
        self._open.close()
        self._aside = self._house = self._cards = None

    def _read(self) -> tuple[Mark, HouseGenes]:
        keeping = self._keeping()
        mark = mark_of(keeping.book, KINDS)
        if self._house is None or self._house[0] != mark:
            keeping.forget_figures()
            self._house = (mark, house_genes(keeping))
        elif self._house[1].on != keeping.today:
            self._house = (mark, replace(self._house[1], on=keeping.today))
        return self._house

    def _keeping(self) -> Keeping:
        if self._aside is None:
            self._aside = self._open.enter_context(own_connection(self._own))
        return self._aside
