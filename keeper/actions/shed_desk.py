"""A second reader of the book for another thread: every shed clock, with a connection of its own.

Everything here is called in one thread, the one that first asks.
"""

from contextlib import ExitStack
from datetime import date

from keeper.actions.keeping import Keeping
from keeper.actions.own_connection import own_connection
from keeper.actions.shed_board import ShedRow, shed_rows


class ShedDesk:
    """Opens the book when first asked."""

    def __init__(self, keeping: Keeping) -> None:
        self._own = keeping
        self._aside: Keeping | None = None
        self._open = ExitStack()

    def rows(self, on: date) -> tuple[ShedRow, ...]:
        """Every animal in the room as of *on*, from the book and the own figures as they are now.

        Raises:
            BookError: the book cannot be opened again.
        """
        if self._aside is None:
            self._aside = self._open.enter_context(own_connection(self._own))
        self._aside.forget_figures()
        return shed_rows(self._aside, on)

    def close(self) -> None:
        """Let go of the book; in the thread that used it."""
        self._open.close()
        self._aside = None
