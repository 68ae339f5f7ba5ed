"""Readings of a page that go on: its rows first, then what stands beside the chosen one."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import Generic, TypeVar

from PySide6.QtWidgets import QWidget

from keeper.actions.keeping import Keeping
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.background import Background, Worker

T = TypeVar("T")
Found = TypeVar("Found")


class DeskReading(Generic[T]):
    """Asks a desk off the main thread; an answer that is no longer asked for is dropped.

    question: what the page shows on a day, asked when it is shown, when the book changed in view,
    and when the day is another. take: gets the answer on the main thread. refused: gets the
    sentence where the book cannot be read. close: lets go of the desk's book, in its thread.
    """

    def __init__(
        self,
        page: QWidget,
        keeping: Keeping,
        worker: Worker | None,
        *,
        question: Callable[[date], T],
        take: Callable[[T], None],
        refused: Callable[[str], None],
        close: Callable[[], None],
    ) -> None:
        self._page, self._keeping = page, keeping
        self._worker = worker or Background()
        self._question, self._show = question, take
        self._refused, self._close = refused, close
        self._on: date | None = None
        self._turn = 0  # counts readings
        self._asked = 0  # counts what was asked beside them
        self.stale = True

    def hear(self) -> None:
        """The book changed: what is shown is old."""
        self.stale = True
        if self._page.isVisible():
            self._read()

    def look(self) -> None:
        """Read if what the page shows is old."""
        if self.stale or self._on != self._keeping.today:
            self._read()

    def further(self, job: Callable[[], Found], show: Callable[[Found], object]) -> None:
        """More of the same reading: *show* what *job* finds, unless it is read anew meanwhile."""
        turn = self._turn
        self._run(job, show, lambda: turn == self._turn)

    def beside(self, job: Callable[[], Found], show: Callable[[Found], object]) -> None:
        """The same, unless anything else was asked beside it meanwhile."""
        self._asked += 1
        self.then(job, show)

    def then(self, job: Callable[[], Found], show: Callable[[Found], object]) -> None:
        """More of what was asked beside the reading last."""
        asked = (self._asked, self._turn)
        self._run(job, show, lambda: asked == (self._asked, self._turn))

    def stop(self) -> None:
        """Let go of the book; nothing is shown any more."""
        self._turn += 1
        self._worker.stop(self._close)

    def _read(self) -> None:
        self.stale = False
        self._turn += 1
        on = self._on = self._keeping.today
        self.further(lambda: self._question(on), self._show)

    def _run(
        self,
        job: Callable[[], Found],
        show: Callable[[Found], object],
        wanted: Callable[[], bool],
    ) -> None:
        """Do *job* and *show* what it found, each only while it is *wanted*."""
        self._worker.run(
            lambda: (job(),) if wanted() else (),
            lambda found: show(*found) if found and wanted() else None,
            self._failed,
        )

    def _failed(self, error: Exception) -> None:
        if not isinstance(error, REFUSALS):
            raise error
        self._refused(said(error))
