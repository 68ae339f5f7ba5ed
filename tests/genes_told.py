"""Small pedigrees and words about genes, written briefly for tests."""

from keeper.husbandry.genes import GeneTold, Inheritance
from keeper.rules.genetics.answers import GeneAnswer
from keeper.rules.genetics.odds import gene_odds
from keeper.rules.genetics.pedigree import Kin
from keeper.rules.genetics.witness import GeneAsked, Said

VISUAL, SUPER, NORMAL = GeneTold.VISUAL, GeneTold.SUPER, GeneTold.NORMAL
HET, POSSIBLE, CLEAR_TOLD = GeneTold.HET, GeneTold.POSSIBLE, GeneTold.CLEAR
RECESSIVE, INCOMPLETE, DOMINANT = Inheritance


def born(animal: int, dam: int | None = None, *males: int, brood: int | None = None) -> Kin:
    """Males weigh alike."""
    return Kin(animal=animal, dam=dam, sires=tuple((each, 1.0) for each in males), brood=brood)


def litter(first: int, count: int, dam: int | None, *males: int) -> list[Kin]:
    return [born(animal, dam, *males, brood=first) for animal in range(first, first + count)]


def asked(
    told: dict[int, GeneTold | float],
    inheritance: Inheritance = RECESSIVE,
    hidden: tuple[int, ...] = (),
) -> GeneAsked:
    """A number is what a possible het was said to carry, in percent."""
    words = {
        name: Said(POSSIBLE, word) if isinstance(word, float) else Said(word)
        for name, word in told.items()
    }
    return GeneAsked(inheritance, words, frozenset(hidden))


def answer(kin: list[Kin], told: dict[int, GeneTold | float], **more: object) -> GeneAnswer:
    return gene_odds(kin, asked(told, **more))  # type: ignore[arg-type]


def whys(found: GeneAnswer, animal: int) -> list[str]:
    return [reason.why for reason in found.because[animal]]


PROVING = [born(3, 1, 2), born(5, 3, 4), born(6, 3, 4), born(8, 5, 7)]
PROVING_TOLD: dict[int, GeneTold | float] = {
    1: HET,
    2: HET,
    3: NORMAL,
    5: NORMAL,
    6: NORMAL,
    7: VISUAL,
}
