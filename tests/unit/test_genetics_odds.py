"""What is told of genes in cases that a breeder knows; figures worked by hand."""

import pytest

from keeper.husbandry.genes import GeneTold
from keeper.husbandry.reasons import because
from keeper.rules.genetics.answers import CARRIER, CLEAR, TWO_COPIES
from keeper.rules.genetics.odds import TOO_WIDE, gene_odds, genes_odds
from keeper.rules.genetics.pedigree import Kin
from keeper.rules.genetics.witness import Said, shown_by
from tests.genes_told import (
    CLEAR_TOLD,
    DOMINANT,
    HET,
    INCOMPLETE,
    NORMAL,
    PROVING,
    PROVING_TOLD,
    SUPER,
    VISUAL,
    answer,
    asked,
    born,
    litter,
    whys,
)

# What the trade states


def test_normal_young_of_two_hets_are_two_thirds_het() -> None:
    found = answer([born(3, 1, 2)], {1: HET, 2: HET, 3: NORMAL})

    assert found.odds[3].het == pytest.approx(2 / 3)
    assert found.odds[3].two == 0
    assert found.because[3] == (because("both parents carry it", dam=1, sire=2),)


def test_young_of_a_het_and_an_animal_without_word_are_half_het() -> None:
    found = answer([born(3, 1, 2)], {1: HET})

    assert (found.odds[2], found.odds[3].one, found.odds[3].two) == (CLEAR, 0.5, 0.0)
    assert whys(found, 3) == ["one parent carries it, the other is clear"]
    assert whys(found, 2) == ["nothing speaks for it, counts as clear"]


def test_young_of_a_visual_are_het_for_certain() -> None:
    found = answer([born(3, 1, 2)], {1: VISUAL, 3: NORMAL})

    assert found.odds[3] == CARRIER
    assert whys(found, 3) == ["a parent shows it"]


def test_young_of_a_possible_het_carry_half_its_odds() -> None:
    found = answer([born(3, 1, 2)], {1: 66.0})

    assert found.odds[3].carries == pytest.approx(0.33)
    assert found.because[3] == (
        because("one parent may carry it, the other is clear", parent=1, odds=pytest.approx(0.66)),
    )


def test_one_visual_young_of_two_without_word_proves_both() -> None:
    found = answer([born(3, 1, 2)], {3: VISUAL})

    assert (found.odds[1], found.odds[2], found.odds[3]) == (CARRIER, CARRIER, TWO_COPIES)
    assert found.because[1] == (because("young that show it", young=1, of=3),)


def test_a_visual_whose_parents_nobody_wrote_down_is_no_contradiction() -> None:
    assert answer([born(3)], {3: VISUAL}).odds == {3: TWO_COPIES}


@pytest.mark.parametrize(
    ("young", "left"), [(1, 1 / 2), (2, 1 / 3), (3, 1 / 5), (4, 1 / 9), (5, 1 / 17), (7, 1 / 65)]
)
def test_normal_young_by_a_visual_lower_the_odds_of_a_possible_het(young: int, left: float) -> None:
    """2/3 to 1/3 at first, each normal young halves: 2 to 2ⁿ."""
    kin = [born(3, 1, 2), *litter(10, young, 3, 4)]
    told = {1: HET, 2: HET, 3: NORMAL, 4: VISUAL} | dict.fromkeys(range(10, 10 + young), NORMAL)
    found = answer(kin, told)

    assert found.odds[3].carries == pytest.approx(left)
    assert because("normal young by one that shows it", young=young) in found.because[3]


def test_a_grandparent_may_have_passed_it_on_where_a_parent_must() -> None:
    """The dam has it from one of her own parents, from either alike."""
    found = answer([born(3, 1, 2), born(5, 3, 4)], {4: HET, 5: VISUAL})

    assert found.odds[3] == CARRIER
    assert (found.odds[1].one, found.odds[2].one) == (0.5, 0.5)
    assert found.because[1] == (because("young may have it from here", of=3, odds=1.0),)


def test_a_visual_bred_in_the_line_makes_the_shared_grandsire_the_carrier() -> None:
    """One copy that came down twice is likelier than two that came from outside."""
    found = answer([born(3, 1, 2), born(5, 4, 2), born(6, 3, 5)], {6: VISUAL})

    assert found.odds[2] == CARRIER
    assert (found.odds[1], found.odds[4]) == (CLEAR, CLEAR)


# Scenario: a het proves out


def test_a_proven_young_makes_a_66_percent_parent_certain_and_its_siblings_50() -> None:
    before = answer(PROVING, PROVING_TOLD)
    after = answer(PROVING, PROVING_TOLD | {8: VISUAL})

    assert before.odds[3].het == pytest.approx(2 / 3)
    assert (before.odds[5].het, before.odds[6].het) == pytest.approx((1 / 3, 1 / 3))
    assert (after.odds[5], after.odds[3], after.odds[6].het) == (CARRIER, CARRIER, 0.5)
    assert whys(after, 3)[0] == "young that carry it, the other parent being clear"


def test_proving_one_young_of_two_certain_carriers_changes_no_sibling() -> None:
    kin = [*litter(3, 4, 1, 2), born(9, 3, 8)]
    told: dict[int, GeneTold | float] = {1: HET, 2: HET, 8: VISUAL} | dict.fromkeys(
        range(3, 7), NORMAL
    )
    after = answer(kin, told | {9: VISUAL})

    assert after.odds[3] == CARRIER
    assert [after.odds[each].het for each in (4, 5, 6)] == pytest.approx([2 / 3] * 3)


def test_a_proven_young_of_a_doubtful_sire_is_shared_by_his_candidates() -> None:
    """Half the weight each, one 66 % and one 33 %: 2 to 1, and the likelier a carrier for it."""
    kin = [Kin(animal=5, dam=3, sires=((1, 1.0), (2, 1.0))), born(8, 5, 7)]
    found = answer(kin, {1: 66.0, 2: 33.0, 7: VISUAL, 8: VISUAL})

    assert [(each.male, each.odds) for each in found.sires[5]] == [
        (1, pytest.approx(2 / 3)),
        (2, pytest.approx(1 / 3)),
    ]
    assert found.odds[1].carries == pytest.approx(2 / 3 + 1 / 3 * 0.66)
    assert found.odds[2].carries == pytest.approx(1 / 3 + 2 / 3 * 0.33)
    assert whys(found, 5)[-1] == "sire in doubt"


# Scenario: a clutch long after the last pairing, of stored sperm


def test_the_label_of_young_widens_when_the_sire_comes_into_doubt() -> None:
    """By the visual alone all are het; by the other, of whom nothing is told, none is."""
    sure = answer([born(5, 3, 1)], {1: VISUAL})
    doubtful = answer([Kin(animal=5, dam=3, sires=((1, 3.0), (2, 1.0)))], {1: VISUAL})

    assert sure.odds[5] == CARRIER
    assert doubtful.odds[5].het == 0.75
    assert doubtful.because[5] == (because("sire in doubt", candidates=2, likeliest=1, odds=0.75),)


def test_looks_of_young_exclude_a_candidate() -> None:
    found = answer(litter(10, 2, 3, 1, 2), {3: VISUAL, 1: VISUAL, 10: NORMAL})

    assert [(each.male, each.written, each.odds) for each in found.sires[11]] == [
        (2, 0.5, 1.0),
        (1, 0.5, 0.0),
    ]
    assert found.odds[11] == CARRIER


def test_young_of_one_clutch_have_one_sire_and_of_two_clutches_may_have_two() -> None:
    """One young shows that its sire carries; its clutch-mate has the same sire, others not."""
    told: dict[int, GeneTold | float] = {3: HET, 1: HET, 10: VISUAL}
    together = answer(litter(10, 2, 3, 1, 2), told)
    apart = answer([*litter(10, 1, 3, 1, 2), *litter(20, 1, 3, 1, 2)], told)

    assert together.sires[11][0].odds == 1.0
    assert apart.sires[20][0].odds == 0.5


def test_looks_of_one_gene_tell_the_sire_for_another() -> None:
    kin = litter(10, 2, 3, 1, 2)
    found = genes_odds(
        kin,
        {
            "light": asked({3: VISUAL, 1: VISUAL, 10: NORMAL}),
            "plain": asked({2: VISUAL}),
        },
    )

    assert found["plain"].odds[11] == CARRIER
    assert found["plain"].sires[10][0].male == 2


# What cannot be


def test_one_normal_young_of_two_visuals_is_told_as_such_and_no_figure_with_it() -> None:
    found = answer([born(3, 1, 2)], {1: VISUAL, 2: VISUAL, 3: NORMAL})
    (told,) = found.contradictions

    assert set(told.animals) == {1, 2, 3}
    assert told.because == because(
        "young of two that show it does not", young=3, dam=1, sire=2, sires=1
    )
    assert (found.odds, found.because) == ({}, {})
    assert set(found.untold) == {1, 2, 3}


def test_it_is_no_contradiction_where_another_male_may_be_the_sire() -> None:
    found = answer(litter(3, 1, 1, 2, 9), {1: VISUAL, 2: VISUAL, 3: NORMAL})

    assert found.contradictions == ()
    assert found.sires[3][0].male == 9


def test_it_is_one_where_every_candidate_shows_it() -> None:
    (told,) = answer(
        litter(3, 1, 1, 2, 9), {1: VISUAL, 2: VISUAL, 9: VISUAL, 3: NORMAL}
    ).contradictions

    assert told.because.figures["sires"] == 2
    assert set(told.animals) == {1, 2, 3, 9}


def test_a_visual_of_a_clear_parent_is_told() -> None:
    (told,) = answer([born(3, 1, 2)], {1: CLEAR_TOLD, 3: VISUAL}).contradictions

    assert told.because == because("shows it though a parent is clear", young=3, parent=1)


def test_a_contradiction_in_one_clutch_leaves_another_line_alone() -> None:
    kin = [born(3, 1, 2), born(13, 11, 12)]
    found = answer(kin, {1: VISUAL, 2: VISUAL, 3: NORMAL, 11: HET, 12: HET, 13: NORMAL})

    assert found.odds[13].het == pytest.approx(2 / 3)
    assert not found.untold.keys() & {11, 12, 13}


def test_the_sire_of_a_clutch_is_not_told_from_a_disputed_word() -> None:
    """Candidate 2 is said to be het, and born of two that show it."""
    kin = [born(2, 8, 9), *litter(10, 2, 3, 2, 4)]
    words: dict[int, GeneTold | float] = {2: HET, 3: HET, 10: VISUAL}
    undisputed = answer(kin, words)
    disputed = answer(kin, words | {8: VISUAL, 9: VISUAL})

    assert undisputed.sires[11][0].male == 2
    assert disputed.sires == {}
    assert disputed.untold.keys() >= {2, 8, 9, 11}


def test_each_of_two_contradictions_is_named() -> None:
    """The second hangs on the first by a candidate whose own word is disputed."""
    kin = [born(3, None, 0), born(5, 1, 0, 3)]
    told: dict[int, GeneTold | float] = {0: NORMAL, 1: NORMAL, 3: SUPER, 5: SUPER}
    found = answer(kin, told, inheritance=INCOMPLETE)

    assert {frozenset(each.animals) for each in found.contradictions} == {
        frozenset({0, 3}),
        frozenset({1, 5}),
    }
    assert found.odds == {}


def test_genes_that_leave_no_candidate_together_are_told() -> None:
    kin = litter(10, 1, 3, 1, 2)
    found = genes_odds(
        kin,
        {
            "light": asked({3: VISUAL, 1: VISUAL, 10: NORMAL}),
            "plain": asked({3: VISUAL, 2: VISUAL, 10: NORMAL}),
        },
    )

    for each in found.values():
        assert each.contradictions[0].because == because(
            "no candidate fits every gene", candidates=2
        )
        assert set(each.contradictions[0].animals) == {1, 2, 10}


# Words


def test_a_percent_counts_for_a_founder_and_not_where_the_pedigree_says_more() -> None:
    kin = [born(3, 1, 2)]
    found = answer(kin, {1: HET, 2: HET, 3: 25.0, 4: 25.0})

    assert found.odds[3].het == pytest.approx(2 / 3)
    assert whys(found, 3)[-1] == "told possible het, the parents say more"


def test_a_percent_stands_where_a_parent_is_not_written() -> None:
    found = answer([born(3, 1)], {3: 50.0})

    assert found.odds[3].het == 0.5
    assert whys(found, 3) == ["told possible het"]


def test_a_percent_gives_way_to_the_one_written_parent_that_shows_it() -> None:
    assert answer([born(3, 1)], {1: VISUAL, 3: 50.0}).odds[3] == CARRIER


def test_a_normal_look_is_no_witness_where_another_gene_hides_it() -> None:
    """9 : 3 : 4: of those that show the hiding gene a quarter have two copies of the hidden."""
    seen = answer([born(3, 1, 2)], {1: HET, 2: HET, 3: NORMAL})
    hiding = {3: Said(VISUAL)}
    found = answer([born(3, 1, 2)], {1: HET, 2: HET, 3: NORMAL}, hidden=tuple(shown_by(hiding)))

    assert seen.odds[3].two == 0
    assert (found.odds[3].none, found.odds[3].one, found.odds[3].two) == (0.25, 0.5, 0.25)
    assert whys(found, 3)[-1] == "another gene hides it"


def test_one_copy_of_an_incomplete_dominant_gene_shows_and_two_show_otherwise() -> None:
    found = answer([born(3, 1, 2)], {1: VISUAL, 2: VISUAL}, inheritance=INCOMPLETE)

    assert found.odds[1] == CARRIER
    assert (found.odds[3].none, found.odds[3].one, found.odds[3].two) == (0.25, 0.5, 0.25)
    assert answer([born(3, 1, 2)], {3: SUPER}, inheritance=INCOMPLETE).odds[1] == CARRIER


def test_a_dominant_visual_without_parents_may_have_two_copies_until_a_normal_young() -> None:
    """Normal young by a clear mate: impossible of two copies."""
    kin = [born(3, 1, 2), born(4, 1, 2)]
    before = answer(kin, {1: VISUAL, 3: VISUAL}, inheritance=DOMINANT)
    after = answer(kin, {1: VISUAL, 3: VISUAL, 4: NORMAL}, inheritance=DOMINANT)

    assert before.odds[1].two == pytest.approx(0.5)
    assert after.odds[1] == CARRIER


def test_a_normal_sibling_of_a_visual_says_so() -> None:
    found = answer(litter(3, 2, 1, 2), {3: VISUAL, 4: NORMAL})

    assert found.odds[4].het == pytest.approx(2 / 3)
    assert because("does not show it, a sibling does", sibling=3) in found.because[4]


def test_a_part_too_wide_is_left_untold_with_its_reason() -> None:
    """Two lines of four crossed all ways; the other family beside it is told."""
    kin = [born(20 + 4 * n + m, n, 10 + m) for n in range(1, 5) for m in range(1, 5)]
    told: dict[int, GeneTold | float] = dict.fromkeys(range(25, 41), NORMAL) | {
        1: 50.0,
        2: 50.0,
        11: 50.0,
        12: 50.0,
    }
    found = gene_odds([*kin, born(53, 51, 52)], asked(told | {51: HET}), widest=20)

    assert found.untold[1] == TOO_WIDE
    assert found.odds[53].het == 0.5
