"""What every entry about an animal carries, whatever its kind."""

from dataclasses import dataclass

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.when import Happened


@dataclass(frozen=True, slots=True, kw_only=True)
class AnimalEvent:
    """Of whom, when, and the keeper's own words beside it."""

    animal: AnimalId
    happened: Happened
    note: str | None = None
