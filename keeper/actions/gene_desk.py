"""The genes of the house read off to the side; all in one thread, the one that first asks."""

from contextlib import ExitStack

from keeper.actions.gene_cards import CardOutOfDate, cards_out_of_date
from keeper.actions.gene_odds import HouseGenes, house_genes
from keeper.actions.keeping import Keeping
from keeper.actions.own_connection import own_connection


class GeneDesk:
    """Reads the book with a connection of its own."""

    def __init__(self, keeping: Keeping) -> None:
        self._own = keeping
        self._open = ExitStack()
        self._aside: Keeping | None = None
        self._house: HouseGenes | None = None

    def genes(self) -> HouseGenes:
        """Every species, from the book as it is now.

        Raises:
            BookError: the book cannot be opened again.
        """
        self.close()
        self._aside = self._open.enter_context(own_connection(self._own))
        self._house = house_genes(self._aside)
        return self._house

    def cards(self) -> tuple[CardOutOfDate, ...]:
        """Cards out of date, of the genes that were read last."""
        if self._aside is None or self._house is None:
            self.genes()
        assert self._aside is not None
        assert self._house is not None
        return cards_out_of_date(self._aside, self._house)

    def close(self) -> None:
        """Let go of the book; in the thread that used it."""
        self._open.close()
        self._aside = self._house = None
