"""What is told of genes only because founders of which nothing is told count as clear."""

from keeper.husbandry.reasons import because
from keeper.rules.genetics.answers import CARRIER
from keeper.rules.genetics.odds import genes_odds
from keeper.rules.genetics.pedigree import Kin
from tests.genes_told import (
    CLEAR_TOLD,
    HET,
    NORMAL,
    PROVING,
    PROVING_TOLD,
    VISUAL,
    answer,
    asked,
    born,
    litter,
)


def test_what_is_certain_by_the_founders_rule_alone_says_so() -> None:
    """The mate without word counts as clear, so the possible het must have passed it on."""
    found = answer(PROVING, PROVING_TOLD | {8: VISUAL})

    assert found.by_rule == {3, 4}


def test_what_is_certain_by_words_and_young_does_not_rest_on_the_rule() -> None:
    found = answer([born(3, 1, 2)], {1: CLEAR_TOLD, 2: VISUAL, 3: NORMAL})

    assert found.odds[3] == CARRIER
    assert found.by_rule == frozenset()


def test_a_sire_who_is_out_only_because_nothing_is_told_of_him_is_named() -> None:
    """He may carry it unknown; the other shows that he does."""
    kin = [Kin(animal=10, dam=3, sires=((1, 9.0), (2, 1.0)), brood="c")]
    found = answer(kin, {3: HET, 2: HET, 10: VISUAL})
    excluded = answer(kin, {3: HET, 2: HET, 1: CLEAR_TOLD, 10: VISUAL})

    assert [(each.male, each.odds, each.fits) for each in found.sires[10]] == [
        (2, 1.0, True),
        (1, 0.0, True),
    ]
    assert found.because[10][-1] == because(
        "sire counted out, nothing tells that he carries it", male=1, written=0.9
    )
    assert [each.fits for each in excluded.sires[10]] == [True, False]


def test_an_animal_that_something_is_told_of_needs_no_parents() -> None:
    assert answer([], {7: HET}).odds == {7: CARRIER}


def test_a_young_that_may_have_it_from_either_parent_proves_neither() -> None:
    found = answer([born(3, 1, 2)], {1: HET, 2: HET, 3: HET})

    assert found.because[1] == (because("told het"),)


def test_two_genes_too_wide_together_say_that_sires_are_told_by_each_alone() -> None:
    words = asked({1: 50.0, 2: 50.0, 3: 50.0})
    genes = {"light": words, "plain": words}
    kin = [*litter(10, 2, 3, 1, 2), *litter(20, 2, 3, 1, 2)]
    found = {widest: genes_odds(kin, genes, widest=widest) for widest in (200, 10_000)}

    assert {young for each in found[200].values() for young in each.apart} == {10, 11, 20, 21}
    assert not any(each.apart for each in found[10_000].values())
