"""Which words an animal's odds lean on, told by leaving them out."""

import pytest

from keeper.husbandry.genes import GeneTold, Inheritance
from keeper.rules.genetics.answers import CopyOdds
from keeper.rules.genetics.leaning import Leaning, leanings
from keeper.rules.genetics.odds import genes_odds
from keeper.rules.genetics.pedigree import Kin
from keeper.rules.genetics.witness import GeneAsked, Said

HET, NORMAL, VISUAL = GeneTold.HET, GeneTold.NORMAL, GeneTold.VISUAL


def born(animal: int, dam: int, sire: int) -> Kin:
    return Kin(animal=animal, dam=dam, sires=((sire, 1.0),))


def leaned(
    kin: list[Kin], told: dict[int, GeneTold], animal: int, **more: int
) -> tuple[Leaning, ...]:
    words = {name: Said(word) for name, word in told.items()}
    return leanings(kin, {"a": GeneAsked(Inheritance.RECESSIVE, words)}, "a", animal, **more)


TWELVE = [born(3, 1, 2), *(born(young, 3, 4) for young in range(10, 22))]
TOLD = {1: HET, 2: HET, 3: NORMAL, 4: VISUAL} | dict.fromkeys(range(10, 22), NORMAL)


def test_twelve_normal_young_are_one_weight_and_it_is_the_heaviest() -> None:
    first, *_ = leaned(TWELVE, TOLD, 3)

    assert (first.animals, first.told) == (tuple(range(10, 22)), NORMAL)
    assert first.without == CopyOdds(pytest.approx(1 / 3), pytest.approx(2 / 3), 0.0)


def test_words_that_change_nothing_are_not_named() -> None:
    """Another line beside it."""
    found = leaned([*TWELVE, born(33, 31, 32)], TOLD | {31: HET, 33: NORMAL}, 3)

    assert all(name < 30 for each in found for name in each.animals)


def test_of_two_words_that_say_the_same_neither_is_missed() -> None:
    """The parents are hets by word, and by their visual young."""
    found = leaned([born(3, 1, 2), born(4, 1, 2)], {1: HET, 2: HET, 3: NORMAL, 4: VISUAL}, 3)

    assert {each.animals for each in found} == {(3,)}


def test_each_weight_is_the_answer_without_it() -> None:
    words = {name: Said(word) for name, word in TOLD.items()}
    for each in leaned(TWELVE, TOLD, 3):
        left = {name: word for name, word in words.items() if name not in each.animals}
        asked = GeneAsked(Inheritance.RECESSIVE, left)

        assert genes_odds(TWELVE, {"a": asked})["a"].odds[3] == each.without


def test_no_more_words_are_tried_than_asked_for() -> None:
    assert len(leaned(TWELVE, TOLD, 3, most=2)) <= 2
