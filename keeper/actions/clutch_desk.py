"""The clutches as their place shows them, read off to the side.

Everything of ``ClutchDesk`` is called in one thread, the one that first asks.
"""

from contextlib import ExitStack
from dataclasses import dataclass
from datetime import date

from keeper.actions.clutch_detail import ClutchDetail, clutch_detail
from keeper.actions.clutch_genes import ClutchGenes, clutch_genes
from keeper.actions.clutch_rows import ClutchRow, clutch_rows
from keeper.actions.gene_desk import GeneDesk
from keeper.actions.keeping import Keeping
from keeper.actions.own_connection import own_connection
from keeper.rules.clutches import CAUTIONS as OF_EGGS
from keeper.rules.sires import ODDS_ALONE

CAUTIONS = (*OF_EGGS, ODDS_ALONE)
"""Stand beside every list of clutches."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Clutches:
    """Every clutch of the book on a day, the open ones first."""

    on: date
    rows: tuple[ClutchRow, ...]


class ClutchDesk:
    """Reads the book with a connection of its own."""

    def __init__(self, keeping: Keeping) -> None:
        self._own = keeping
        self._open = ExitStack()
        self._aside: Keeping | None = None
        self._genes = GeneDesk(keeping)

    def clutches(self, on: date) -> Clutches:
        """All of them as of *on*, from the book as it is now.

        Raises:
            BookError: the book cannot be opened again.
        """
        self._let_go()
        aside = self._aside = self._open.enter_context(own_connection(self._own))
        return Clutches(on=on, rows=tuple(clutch_rows(aside, on)))

    def detail(self, row: ClutchRow, on: date) -> ClutchDetail:
        """All that stands of one of them."""
        if self._aside is None:
            self.clutches(on)
        assert self._aside is not None
        return clutch_detail(self._aside, row, on)

    def genes(self, row: ClutchRow) -> ClutchGenes | None:
        """What it may give, and what its young tell of their sire; slower than all else."""
        return clutch_genes(self._genes.genes(), row)

    def close(self) -> None:
        """Let go of the book; in the thread that used it."""
        self._let_go()
        self._genes.close()

    def _let_go(self) -> None:
        self._open.close()
        self._aside = None
