"""What is measured on an animal beside its weight: lengths and a body score."""

from dataclasses import dataclass

from keeper.husbandry.about import AnimalEvent
from keeper.husbandry.impossible import LENGTH, SCORE, impossible, refuse_unless_positive


@dataclass(frozen=True, slots=True, kw_only=True)
class Measured(AnimalEvent):
    """Snout-vent length and body score (1 thin to 5 fat), whichever was taken."""

    svl_cm: float | None = None
    body_score: float | None = None

    def __post_init__(self) -> None:
        refuse_unless_positive(LENGTH, self.svl_cm)
        if self.body_score is not None and not 1 <= self.body_score <= 5:
            raise impossible(SCORE, self.body_score)


@dataclass(frozen=True, slots=True, kw_only=True)
class TotalLength(AnimalEvent):
    """From snout to tail tip. Body condition is reckoned from snout to vent alone."""

    total_cm: float

    def __post_init__(self) -> None:
        refuse_unless_positive(LENGTH, self.total_cm)
