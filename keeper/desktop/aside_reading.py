"""A page's one question to the book, asked off the main thread whenever the page is in view."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import Generic, TypeVar

from PySide6.QtWidgets import QWidget

from keeper.actions.keeping import Keeping
from keeper.actions.own_connection import own_connection
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.background import Background, Worker

T = TypeVar("T")


class AsideReading(Generic[T]):
    """Reads when the page is shown, when the book changed in view, and when the day is another.

    question: asked with a book of its own and the day. take: gets the answer on the main
    thread. refused: gets the sentence where the book cannot be read.
    """

    def __init__(
        self,
        page: QWidget,
        keeping: Keeping,
        worker: Worker | None,
        *,
        question: Callable[[Keeping, date], T],
        take: Callable[[T], None],
        refused: Callable[[str], None],
    ) -> None:
        self._page, self._keeping = page, keeping
        self._worker = worker or Background()
        self._question, self._take, self._refused = question, take, refused
        self._on: date | None = None
        self._stale, self._reading, self._over = True, False, False

    def hear(self) -> None:
        """The book changed: what is shown is old."""
        self._stale = True
        self.look()

    def look(self) -> None:
        """Read if the page is in view and what it shows is old."""
        old = self._stale or self._on != self._keeping.today
        if old and self._page.isVisible() and not (self._reading or self._over):
            self._read()

    def stop(self) -> None:
        """Wait for a reading that runs; nothing is read any more."""
        self._over = True
        self._worker.stop()

    def _read(self) -> None:
        self._stale, self._reading = False, True
        keeping, question = self._keeping, self._question
        on = self._on = keeping.today

        def job() -> T:
            with own_connection(keeping) as aside:
                return question(aside, on)

        self._worker.run(job, self._answered, self._failed)

    def _answered(self, answer: T) -> None:
        """What changed while it was read is read once more."""
        self._reading = False
        if not self._over:
            self._take(answer)
            self.look()

    def _failed(self, error: Exception) -> None:
        self._reading = False
        if not isinstance(error, REFUSALS):
            raise error
        self._refused(said(error))
