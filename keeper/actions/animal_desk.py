"""A second reader of the book for another thread: an animal's page, and its forecast.

Everything here is called in one thread, the one that first asks; the connection is its own.
"""

from contextlib import ExitStack
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

from keeper.actions.animal_page import AnimalPage, page_of
from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.own_connection import own_connection
from keeper.actions.own_growth import OwnGrowth
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.now import AnimalNow

if TYPE_CHECKING:
    from keeper.actions.forecasting import Forecaster, WeightForecast


@dataclass(frozen=True, slots=True, kw_only=True)
class Opened:
    """A page among everyone in the book, in walking order; no page in a book without animals."""

    page: AnimalPage | None
    everyone: tuple[AnimalNow, ...]


class AnimalDesk:
    """Reads pages and forecasts off to the side; opens the book when first asked."""

    def __init__(self, keeping: Keeping) -> None:
        self._own = keeping
        self._aside: Keeping | None = None
        self._open = ExitStack()
        self._everyone: tuple[date, tuple[AnimalNow, ...]] | None = None
        self._growth: OwnGrowth | None = None
        self._forecaster: tuple[date, Forecaster] | None = None

    def open(self, animal: AnimalId | None, on: date, *, again: bool = False) -> Opened:
        """The page of *animal* as of *on*, or of the first in walking order.

        again: the book has changed, so that everyone is read anew; an animal whose coming was
        taken back gives way to the first.

        Raises:
            LookupError: the book has no such animal.
            BookError: the book cannot be opened again.
        """
        keeping = self._keeping()
        if again or self._everyone is None or self._everyone[0] != on:
            self._everyone = (on, tuple(animals_on(keeping, on)))
            self._growth = OwnGrowth(keeping, self._everyone[1], on)
        everyone = self._everyone[1]
        here = [row for row in everyone if row.in_the_room]
        fed_on = max((row.offered_on for row in here if row.offered_on), default=None)
        first = next(iter((*here, *everyone)), None)
        gone = animal is None or (again and all(row.animal != animal for row in everyone))
        key = (first.animal if first else None) if gone else animal
        page = None if key is None else page_of(keeping, key, on, fed_on, self._growth)
        return Opened(page=page, everyone=everyone)

    def forecast(self, page: AnimalPage) -> "WeightForecast | None":
        """When she reaches breeding weight; None where that lies behind her or has no gate.

        Imports numpy, and the first of a kind takes some seconds.
        """
        from keeper.actions.fitting_aside import fit_aside  # numpy: only when it is asked for
        from keeper.actions.forecasting import Forecaster

        if page.target_g is None:
            return None
        if self._forecaster is None or self._forecaster[0] != page.today:
            self._forecaster = (page.today, Forecaster(self._keeping(), page.today, fit_aside))
        return self._forecaster[1].weight(page.animal, page.target_g)

    def close(self) -> None:
        """Let go of the book; in the thread that used it."""
        self._open.close()
        self._aside = self._forecaster = self._everyone = self._growth = None

    def _keeping(self) -> Keeping:
        if self._aside is None:
            self._aside = self._open.enter_context(own_connection(self._own))
        return self._aside
