"""Which pairing would tell most of a possible het, and when there is nothing to be asked."""

import pytest

from keeper.husbandry.animal import Sex
from keeper.rules.genetics.answers import CARRIER, CLEAR, TWO_COPIES, CopyOdds
from keeper.rules.proving_pairs import best_of_each, proving_pairs, tells

DAM, OTHER, SIRE, BUCK, LITTLE = 1, 2, 3, 4, 5
POSSIBLE = CopyOdds(1 / 3, 2 / 3, 0.0)
HALF = CopyOdds(0.5, 0.5, 0.0)


def sexes(**known):
    return {DAM: Sex.FEMALE, OTHER: Sex.FEMALE, SIRE: Sex.MALE, BUCK: Sex.MALE, **known}


def test_an_animal_in_doubt_is_put_to_one_that_shows_the_gene_before_a_het():
    pairs = proving_pairs({DAM: POSSIBLE, SIRE: CARRIER, BUCK: TWO_COPIES}, sexes())

    assert [(p.tested, p.mate, p.mate_is) for p in pairs] == [
        (DAM, BUCK, "visual"),
        (DAM, SIRE, "het"),
    ]


def test_a_male_in_doubt_is_tested_by_a_female():
    (pair,) = proving_pairs({DAM: TWO_COPIES, SIRE: POSSIBLE, BUCK: CARRIER}, sexes())

    assert (pair.tested, pair.mate) == (SIRE, DAM)


@pytest.mark.parametrize("odds", [CLEAR, CARRIER, TWO_COPIES, CopyOdds(0.995, 0.005, 0.0)])
def test_of_one_that_is_sure_or_hardly_a_carrier_nothing_is_asked(odds):
    assert [
        p for p in proving_pairs({DAM: odds, BUCK: TWO_COPIES}, sexes()) if p.tested == DAM
    ] == []


def test_without_a_known_sex_or_a_mate_that_tells_there_is_no_pairing():
    assert proving_pairs({LITTLE: POSSIBLE, BUCK: TWO_COPIES}, sexes()) == ()
    assert proving_pairs({DAM: POSSIBLE, SIRE: POSSIBLE}, sexes()) == ()
    assert proving_pairs({DAM: POSSIBLE, OTHER: TWO_COPIES}, sexes()) == ()


def test_the_best_of_each_animal_stands_once_the_most_doubtful_first():
    odds = {DAM: POSSIBLE, OTHER: HALF, SIRE: CARRIER, BUCK: TWO_COPIES}

    best = best_of_each(proving_pairs(odds, sexes()))

    assert [(p.tested, p.mate) for p in best] == [(OTHER, BUCK), (DAM, BUCK)]


def test_a_visual_mate_tells_almost_all_of_an_even_doubt_and_no_young_tell_nothing():
    """An even doubt is one bit; after eight normal-looking young 1 in 257 is left of it."""
    assert tells(0.5, "visual") == pytest.approx(1 - (257 / 512) * 0.0368, abs=1e-3)
    assert tells(0.5, "visual", young=0) == pytest.approx(0.0, abs=1e-12)
    assert tells(2 / 3, "visual") > tells(2 / 3, "het") > 0
