"""The females as their place shows them, and their forecasts, read off to the side.

Everything of ``FemaleDesk`` is called in one thread, the one that first asks.
"""

from contextlib import ExitStack
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

from keeper.actions.females import FemaleRow, female_rows
from keeper.actions.keeping import Keeping, Written
from keeper.actions.own_connection import own_connection
from keeper.actions.settings import set_own_figure
from keeper.husbandry.animal import AnimalId
from keeper.language import tr
from keeper.rules.breeding import EGG_BINDING
from keeper.rules.breeding import Gate as Gate

if TYPE_CHECKING:
    from keeper.actions.forecasting import Forecaster, WeightForecast

CAUTION = EGG_BINDING
"""Stands beside every list of gates."""

GATE_KEY = "breeding.female.weight_g"


@dataclass(frozen=True, slots=True, kw_only=True)
class Females:
    """Every female in the room on a day, the nearest to her gates first."""

    on: date
    rows: tuple[FemaleRow, ...]


def wants_forecast(row: FemaleRow) -> bool:
    """Whether her weight gate is open, so that a day can be asked for."""
    return any(gate.name == "weight" and gate.state == "not yet" for gate in row.gates)


def target_g(row: FemaleRow) -> float:
    """The weight her gate asks for: the profile's, or back to her weight before laying."""
    gate = next((gate for gate in row.gates if gate.name == "weight"), None)
    need_g = gate.missing.figures.get("need_g") if gate else None
    return float(need_g) if isinstance(need_g, int | float) else row.gate_g


def set_gate(keeping: Keeping, row: FemaleRow, grams: float, reason: str) -> Written:
    """Let females of her kind be bred from *grams* on, by the keeper's own judgement.

    Raises:
        ValueError: no reason, or a weight the profile cannot have; nothing is written.
    """
    if not reason.strip():
        raise ValueError(tr("An own figure needs a reason in your own words."))
    slug = keeping.profile(row.animal).slug
    return set_own_figure(keeping, slug, GATE_KEY, grams, reason.strip())


class FemaleDesk:
    """Reads the book with a connection of its own."""

    def __init__(self, keeping: Keeping) -> None:
        self._own = keeping
        self._open = ExitStack()
        self._aside: Keeping | None = None
        self._forecaster: Forecaster | None = None

    def females(self, on: date) -> Females:
        """All of them as of *on*, from the book as it is now.

        Raises:
            BookError: the book cannot be opened again.
        """
        self.close()
        self._aside = self._open.enter_context(own_connection(self._own))
        return Females(on=on, rows=tuple(female_rows(self._aside, on)))

    def forecast(self, row: FemaleRow, on: date) -> "tuple[AnimalId, WeightForecast]":
        """When she reaches the weight of her gate. Imports numpy; the first of a kind is slow."""
        from keeper.actions.fitting_aside import fit_aside  # numpy: only when it is asked for
        from keeper.actions.forecasting import Forecaster

        if self._aside is None:
            self.females(on)
        assert self._aside is not None
        if self._forecaster is None:
            self._forecaster = Forecaster(self._aside, on, fit_aside)
        return row.animal.animal, self._forecaster.weight(row.animal, target_g(row))

    def close(self) -> None:
        """Let go of the book; in the thread that used it."""
        self._open.close()
        self._aside = self._forecaster = None
