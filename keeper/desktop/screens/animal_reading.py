"""An animal's page read and its forecast reckoned off the main thread; the last asking counts."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from keeper.actions.animal_desk import AnimalDesk, Opened
from keeper.actions.animal_page import AnimalPage
from keeper.actions.keeping import Keeping
from keeper.actions.other_process import call_off
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.background import Background, Worker

if TYPE_CHECKING:
    from keeper.actions.forecasting import WeightForecast


class AnimalReading:
    """Two workers, each with a book of its own, so that a long reckoning holds up no page.

    opened and reckoned get the answers on the main thread, refused the sentence where the
    book cannot be read. What belongs to an older asking is dropped.
    """

    def __init__(
        self,
        keeping: Keeping,
        reader: Worker | None,
        reckoner: Worker | None,
        *,
        opened: Callable[[Opened], object],
        reckoned: Callable[[AnimalPage, WeightForecast | None], object],
        refused: Callable[[str], object],
    ) -> None:
        self._keeping = keeping
        self._reader, self._reckoner = reader or Background(), reckoner or Background()
        self._pages, self._forecasts = AnimalDesk(keeping), AnimalDesk(keeping)
        self._opened, self._reckoned, self._refused = opened, reckoned, refused
        self._asked_for: int | None = None
        self._turn = 0
        self._stale = True

    @property
    def asked_for(self) -> int | None:
        """The animal that was asked for last; None: the first of the walk."""
        return self._asked_for

    @property
    def stale(self) -> bool:
        """Whether the book has changed since the last reading."""
        return self._stale

    def hear(self) -> None:
        """The book changed: what is shown is old."""
        self._stale = True

    def again(self) -> None:
        """Read the animal that was asked for last."""
        self.read(self._asked_for)

    def read(self, animal: int | None) -> None:
        """Open the page of *animal*, or of the first in walking order; then its forecast."""
        again, self._stale = self._stale, False
        self._asked_for = animal
        self._turn += 1
        turn, on, desk = self._turn, self._keeping.today, self._pages

        def done(opened: Opened) -> None:
            if turn == self._turn:
                self._arrived(opened)

        self._reader.run(lambda: desk.open(animal, on, again=again), done, self._failed)

    def stop(self) -> None:
        """Let go of the book in both threads; no result arrives after this."""
        self._turn += 1
        call_off()
        self._reader.stop(self._pages.close)
        self._reckoner.stop(self._forecasts.close)

    def _arrived(self, opened: Opened) -> None:
        page = opened.page
        if page is not None:
            self._asked_for = page.animal.animal
        self._opened(opened)
        if page is not None and page.target_g is not None:
            self._reckon(page)

    def _reckon(self, page: AnimalPage) -> None:
        """Skipped in the thread where another animal was asked for meanwhile."""
        turn, desk = self._turn, self._forecasts

        def job() -> WeightForecast | None:
            return desk.forecast(page) if turn == self._turn else None

        def done(told: WeightForecast | None) -> None:
            if turn == self._turn:
                self._reckoned(page, told)

        self._reckoner.run(job, done, self._failed)

    def _failed(self, error: Exception) -> None:
        """A refusal of the book is the keeper's to know; anything else is a fault of ours."""
        if not isinstance(error, REFUSALS):
            raise error
        self._refused(said(error))
