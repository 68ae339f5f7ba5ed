"""What was seen or said of an animal, as the numbers of copies that it leaves possible.

Possible copies are a mask of bits: 1 none, 2 one, 4 two.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Protocol

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.genes import GeneTold, Inheritance
from keeper.husbandry.profile import practice
from keeper.rules.genetics.elimination import Leading

NONE, ONE, TWO, ANY = 1, 2, 4, 7

UNTOLD_FOUNDER: Mapping[int, Leading] = {0: (0, 1.0), 1: (1, 2.0), 2: (2, 1.0)}
"""A founder of which nothing is told counts as clear unless its young say otherwise (common
practice): each of its copies is the gene with a chance q, reckoned in the limit for q to 0. The
figures are those of Hardy and Weinberg, (1 - q)², 2q(1 - q) and q², by their leading terms."""

SHOWN_DOMINANT_TWO = practice(1 / 3)
"""A founder that shows a dominant gene has two copies as often as one that both parents gave it
or either did: the share among the showing young of two animals of one copy each."""


class Word(Protocol):
    """What stands of one animal and one gene; a `GeneRead` is one."""

    @property
    def told(self) -> GeneTold: ...
    @property
    def percent(self) -> float | None: ...


@dataclass(frozen=True, slots=True)
class Said:
    """A word without the entry around it."""

    told: GeneTold
    percent: float | None = None


@dataclass(frozen=True, slots=True)
class GeneAsked:
    """One gene and what was told of it.

    told: the word that stands of each animal. hidden: animals whose look is no witness of this
    gene, because they show one that hides it.
    """

    inheritance: Inheritance
    told: Mapping[AnimalId, Word]
    hidden: frozenset[AnimalId] = frozenset()

    def possible(self, animal: AnimalId) -> int:
        """Copies that the word on it leaves, as a mask."""
        word = self.told.get(animal)
        if word is None or (word.told is GeneTold.POSSIBLE and word.percent is None):
            return ANY
        if animal in self.hidden and word.told in (GeneTold.NORMAL, GeneTold.POSSIBLE):
            return ANY
        return _LEAVES[self.inheritance][word.told]

    def own_prior(self, animal: AnimalId) -> Mapping[int, Leading] | None:
        """What a founder's own word makes of it, where it says more than what is possible."""
        word = self.told.get(animal)
        if word is None:
            return None
        if word.told is GeneTold.POSSIBLE and word.percent is not None:
            return {0: (0, 1 - word.percent / 100), 1: (0, word.percent / 100)}
        if self.inheritance is Inheritance.DOMINANT and word.told in SHOWING:
            return {1: (0, 1 - SHOWN_DOMINANT_TWO.value), 2: (0, SHOWN_DOMINANT_TWO.value)}
        return None


SHOWING = frozenset({GeneTold.VISUAL, GeneTold.SUPER})

_SAME = {GeneTold.HET: ONE, GeneTold.CLEAR: NONE, GeneTold.POSSIBLE: NONE | ONE}
_LEAVES: Mapping[Inheritance, Mapping[GeneTold, int]] = {
    Inheritance.RECESSIVE: _SAME
    | {GeneTold.VISUAL: TWO, GeneTold.SUPER: TWO, GeneTold.NORMAL: NONE | ONE},
    Inheritance.INCOMPLETE: _SAME
    | {GeneTold.VISUAL: ONE, GeneTold.SUPER: TWO, GeneTold.NORMAL: NONE},
    Inheritance.DOMINANT: _SAME
    | {GeneTold.VISUAL: ONE | TWO, GeneTold.SUPER: ONE | TWO, GeneTold.NORMAL: NONE},
}


def shown_by(told: Mapping[AnimalId, Word]) -> frozenset[AnimalId]:
    """Animals that show this gene: they are no witness of a gene that it hides."""
    return frozenset(animal for animal, word in told.items() if word.told in SHOWING)
