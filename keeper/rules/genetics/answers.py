"""What is answered of a gene: odds of each animal, of doubtful sires, and what cannot be."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.genes import Inheritance
from keeper.husbandry.reasons import Reason


@dataclass(frozen=True, slots=True)
class CopyOdds:
    """Odds of no copy, one and two; they sum to 1. Exactly 0 means: cannot be."""

    none: float
    one: float
    two: float

    @property
    def carries(self) -> float:
        """Odds of at least one copy."""
        return self.one + self.two

    @property
    def sure(self) -> int | None:
        """How many copies it has for certain; None: in doubt."""
        open_to = [copies for copies, odds in enumerate((self.none, self.one, self.two)) if odds]
        return open_to[0] if len(open_to) == 1 else None

    @property
    def het(self) -> float | None:
        """What the trade calls an animal that does not show a recessive gene: 66 % het.

        None where it has two copies for certain.

        >>> CopyOdds(0.25, 0.5, 0.25).het
        0.6666666666666666
        """
        whole = self.none + self.one
        return self.one / whole if whole else None


CLEAR = CopyOdds(1.0, 0.0, 0.0)
CARRIER = CopyOdds(0.0, 1.0, 0.0)
TWO_COPIES = CopyOdds(0.0, 0.0, 1.0)


@dataclass(frozen=True, slots=True, kw_only=True)
class SireShare:
    """One candidate. written, odds: his share of 1 before the looks of the young, and after.

    fits: whether the looks of this gene leave him; with odds of 0, he is out only because a
    founder of which nothing is told counts as clear.
    """

    male: AnimalId
    written: float
    odds: float
    fits: bool = True


@dataclass(frozen=True, slots=True, kw_only=True)
class Contradiction:
    """Words that cannot all be true, and none of them can be left out of that."""

    animals: tuple[AnimalId, ...]
    because: Reason


@dataclass(frozen=True, slots=True, kw_only=True)
class GeneAnswer:
    """odds: of every animal that can be told. sires: by young whose sire is in doubt, the
    likeliest first; apart: those of them that rest on this gene's looks alone, because all genes
    together were too much. by_rule: animals whose copies are certain only because founders of
    which nothing is told count as clear. untold: animals without odds, and why. because: the
    strongest reason first.
    """

    inheritance: Inheritance
    odds: Mapping[AnimalId, CopyOdds]
    sires: Mapping[AnimalId, tuple[SireShare, ...]] = field(default_factory=dict)
    by_rule: frozenset[AnimalId] = frozenset()
    apart: frozenset[AnimalId] = frozenset()
    contradictions: tuple[Contradiction, ...] = ()
    untold: Mapping[AnimalId, Reason] = field(default_factory=dict)
    because: Mapping[AnimalId, tuple[Reason, ...]] = field(default_factory=dict)
