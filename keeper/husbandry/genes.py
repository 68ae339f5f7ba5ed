"""Genes of one place on the chromosome each, what an animal shows of them, and scores of colour."""

from dataclasses import dataclass
from enum import StrEnum

from keeper.husbandry.about import AnimalEvent
from keeper.husbandry.impossible import COLOUR_SCORE, HET_PERCENT, impossible
from keeper.husbandry.when import Happened


class Inheritance(StrEnum):
    """How many copies of a gene show."""

    RECESSIVE = "recessive"  # two copies show, one does not
    INCOMPLETE = "incomplete dominant"  # one copy shows, two show otherwise: the super form
    DOMINANT = "dominant"  # one copy shows as two do


class GeneTold(StrEnum):
    """What was seen of an animal, or said of it by whoever bred it."""

    VISUAL = "visual"  # shows it
    SUPER = "super"  # shows two copies of an incomplete dominant gene
    NORMAL = "normal"  # looked at in good light, and does not show it
    HET = "het"  # said or known to carry one copy
    POSSIBLE = "possible het"  # said to carry one copy with a likelihood
    CLEAR = "clear"  # said or known to carry none


@dataclass(frozen=True, slots=True, kw_only=True)
class GeneNamed:
    """From then on the house reckons with this gene in animals of this species.

    gene: the keeper's word for it, one place on the chromosome. hidden_by: a gene whose visuals
    look the same with and without this one, so that they are no witness of it.
    """

    happened: Happened
    gene: str
    species: str
    inheritance: Inheritance
    hidden_by: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class GeneRead(AnimalEvent):
    """What this animal shows or is said to carry of one gene; the latest of each gene stands.

    percent: how likely it carries one copy, as the trade says it (66); read with POSSIBLE alone,
    which without it tells nothing.
    """

    gene: str
    told: GeneTold
    percent: float | None = None

    def __post_init__(self) -> None:
        if self.percent is not None and not 0 < self.percent < 100:
            raise impossible(HET_PERCENT, self.percent)


@dataclass(frozen=True, slots=True, kw_only=True)
class LookScored(AnimalEvent):
    """A score from 1 to 10 of a look that many genes make, judged by eye under the same lamp.

    trait: the keeper's word for it.
    """

    trait: str
    score: float

    def __post_init__(self) -> None:
        if not 1 <= self.score <= 10:
            raise impossible(COLOUR_SCORE, self.score)


AboutGenes = GeneRead | LookScored
