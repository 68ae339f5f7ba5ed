"""Crosses, proving out and whose odds moved; figures worked by hand."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from keeper.husbandry.genes import GeneTold, Inheritance
from keeper.rules.genetics.answers import CARRIER, CLEAR, TWO_COPIES, CopyOdds
from keeper.rules.genetics.changed import changed
from keeper.rules.genetics.crosses import (
    Called,
    Locus,
    at_least_one,
    passed_on,
    young_odds,
    young_of,
)
from keeper.rules.genetics.odds import gene_odds
from keeper.rules.genetics.pedigree import Kin
from keeper.rules.genetics.proving import (
    left_after,
    normals_chance,
    normals_needed,
    possible_het,
)
from keeper.rules.genetics.witness import GeneAsked, Said

A = Locus(gene="a", inheritance=Inheritance.RECESSIVE)
B = Locus(gene="b", inheritance=Inheritance.RECESSIVE)
HIDDEN_B = Locus(gene="b", inheritance=Inheritance.RECESSIVE, hidden_by="a")
INCOMPLETE = Locus(gene="i", inheritance=Inheritance.INCOMPLETE)
DOMINANT = Locus(gene="d", inheritance=Inheritance.DOMINANT)
BOTH_HET = {"a": CARRIER, "b": CARRIER}


def shares(dam, sire, *loci):
    return {look.shows: look.share for look in young_of(dam, sire, loci)}


def under(dam, sire, *loci):
    """What may lie under each look."""
    return {look.shows: look.may_carry for look in young_of(dam, sire, loci)}


odds_drawn = st.tuples(*[st.floats(0.01, 1)] * 3).map(
    lambda parts: CopyOdds(*(part / sum(parts) for part in parts))
)


def test_visual_by_visual_of_two_places_are_all_normal_looking_double_hets() -> None:
    (look,) = young_of({"a": TWO_COPIES}, {"b": TWO_COPIES}, [A, B])

    assert (look.shows, look.share) == ((), 1.0)
    assert look.may_carry == (Called(gene="a", one=1.0, two=0), Called(gene="b", one=1.0, two=0))


def test_normals_of_a_double_het_cross_are_two_thirds_het_for_each() -> None:
    assert [called.one for called in under(BOTH_HET, BOTH_HET, A, B)[()]] == pytest.approx(
        [2 / 3, 2 / 3]
    )


def test_of_those_that_hide_it_a_quarter_have_two_copies_and_half_have_one() -> None:
    (hidden,) = under(BOTH_HET, BOTH_HET, A, HIDDEN_B)["a",]

    assert (hidden.gene, hidden.one, hidden.two) == ("b", 0.5, 0.25)


def test_an_incomplete_dominant_gene_gives_a_super_form() -> None:
    looks = young_of({"i": CARRIER}, {"i": CARRIER}, [INCOMPLETE])

    assert [(look.shows, look.supers, look.share) for look in looks] == [
        (("i",), (), 0.5),
        ((), (), 0.25),
        (("i",), ("i",), 0.25),
    ]
    assert all(look.may_carry == () for look in looks)


def test_a_dominant_look_leaves_open_whether_there_are_two_copies() -> None:
    looks = under({"d": CARRIER}, {"d": CARRIER}, DOMINANT)

    assert looks["d",] == (Called(gene="d", one=pytest.approx(2 / 3), two=pytest.approx(1 / 3)),)
    assert looks[()] == ()


def test_a_gene_not_given_of_a_parent_is_clear() -> None:
    assert shares({"a": TWO_COPIES}, {}, A) == {(): 1.0}


@settings(deadline=None)
@given(odds_drawn, odds_drawn, odds_drawn, odds_drawn)
def test_shares_of_all_looks_sum_to_one(a: CopyOdds, b: CopyOdds, c: CopyOdds, d: CopyOdds) -> None:
    looks = young_of({"a": a, "b": b}, {"a": c, "b": d}, [A, HIDDEN_B])

    assert sum(look.share for look in looks) == pytest.approx(1)
    assert len({(look.shows, look.supers) for look in looks}) == len(looks)


@settings(deadline=None)
@given(odds_drawn, odds_drawn, st.integers(1, 12))
def test_one_gene_at_least_once_is_proof(dam: CopyOdds, sire: CopyOdds, young: int) -> None:
    """Two ways to the same figure."""
    found = at_least_one({"a": dam}, {"a": sire}, [A], ["a"], young)

    assert found == pytest.approx(1 - normals_chance(dam, sire, young))


def test_young_of_a_doubtful_carrier_hang_together() -> None:
    """By half a het no number of young makes a visual likelier than half."""
    alone = at_least_one({"a": possible_het(0.5)}, {"a": TWO_COPIES}, [A], ["a"], 1)
    many = at_least_one({"a": possible_het(0.5)}, {"a": TWO_COPIES}, [A], ["a"], 40)

    assert (alone, many) == (pytest.approx(0.25), pytest.approx(0.5))


def test_a_hidden_look_is_never_among_the_young() -> None:
    assert at_least_one(BOTH_HET, BOTH_HET, [A, HIDDEN_B], ["a", "b"], 40) == 0


def test_what_if_young_are_reckoned_from_the_whole_pedigree() -> None:
    """Two young of one unproven dam: both carry or neither, 1/2·1/4·1/4, not (1/4·1/2)²."""
    kin = [Kin(animal=3, dam=1, sires=((2, 1.0),)), Kin(animal=4, dam=1, sires=((5, 1.0),))]
    gene = GeneAsked(Inheritance.RECESSIVE, {1: Said(GeneTold.POSSIBLE, 50.0)})
    found = young_odds(kin, {"a": gene}, 3, 4)["a"]
    each = gene_odds(kin, gene).odds

    assert found.two == pytest.approx(0.5 / 4 / 4)
    assert passed_on(each[3], each[4]).two == pytest.approx((0.25 / 2) ** 2)


def test_the_unborn_takes_nobody_s_key() -> None:
    kin = [Kin(animal=-1, dam=1, sires=((2, 1.0),))]
    gene = GeneAsked(Inheritance.RECESSIVE, {1: Said(GeneTold.HET)})

    assert young_odds(kin, {"a": gene}, 1, -1)["a"].two == pytest.approx(0.125)


# Proving out


def test_a_mate_that_may_be_clear_proves_less_and_never_all() -> None:
    """Of 50 % het by 50 % het, a hundred normal young leave the case that the mate is clear."""
    left = left_after(possible_het(0.5), possible_het(0.5), 100)

    assert left == pytest.approx(1 / 3, abs=1e-6)
    assert normals_needed(possible_het(0.5), possible_het(0.5)) is None


def test_a_clear_mate_proves_nothing() -> None:
    assert left_after(possible_het(0.5), CLEAR, 30) == 0.5
    assert normals_chance(possible_het(0.5), CLEAR, 30) == 1


def test_a_sure_carrier_is_never_proven_clear() -> None:
    assert left_after(CARRIER, TWO_COPIES, 20) == 1
    assert normals_needed(CARRIER, TWO_COPIES) is None


@settings(deadline=None)
@given(st.floats(0.01, 0.99), st.integers(0, 20), st.integers(0, 20))
def test_proving_is_the_same_in_one_litter_or_two(before: float, first: int, then: int) -> None:
    between = possible_het(left_after(possible_het(before), TWO_COPIES, first))

    assert left_after(between, TWO_COPIES, then) == pytest.approx(
        left_after(possible_het(before), TWO_COPIES, first + then), abs=1e-9
    )


def test_needed_young_are_the_first_that_fall_below() -> None:
    needed = normals_needed(possible_het(2 / 3), TWO_COPIES)

    assert needed is not None
    assert left_after(possible_het(2 / 3), TWO_COPIES, needed) < 0.05
    assert left_after(possible_het(2 / 3), TWO_COPIES, needed - 1) >= 0.05


def test_normals_cannot_come_of_two_that_show_it() -> None:
    assert normals_chance(TWO_COPIES, TWO_COPIES, 1) == 0
    assert normals_chance(TWO_COPIES, TWO_COPIES, 0) == 1


# Whose odds moved


def moved(told: dict[int, GeneTold], more: dict[int, GeneTold]) -> dict[int, tuple[float, float]]:
    kin = [Kin(animal=animal, dam=1, sires=((2, 1.0),)) for animal in (3, 4)]
    before, after = (
        gene_odds(
            kin,
            GeneAsked(Inheritance.RECESSIVE, {name: Said(word) for name, word in words.items()}),
        )
        for words in (told, told | more)
    )
    return {
        each.animal: (each.before.carries, each.after.carries)
        for each in changed(before, after)
        if each.before is not None and each.after is not None
    }


def test_a_proven_sibling_moves_all_whose_odds_it_bears_on() -> None:
    found = moved({1: GeneTold.HET, 4: GeneTold.NORMAL}, {3: GeneTold.VISUAL})

    assert found == {
        2: (0.0, 1.0),
        3: (0.5, 1.0),
        4: (0.5, pytest.approx(2 / 3)),
    }


def test_a_sibling_of_certain_carriers_moves_nobody_else() -> None:
    both = {1: GeneTold.HET, 2: GeneTold.HET, 4: GeneTold.NORMAL}

    assert moved(both, {3: GeneTold.VISUAL}).keys() == {3}


def test_odds_that_can_no_longer_be_told_have_moved() -> None:
    kin = [Kin(animal=3, dam=1, sires=((2, 1.0),))]
    shown = {1: Said(GeneTold.VISUAL), 2: Said(GeneTold.VISUAL)}
    before = gene_odds(kin, GeneAsked(Inheritance.RECESSIVE, shown))
    after = gene_odds(kin, GeneAsked(Inheritance.RECESSIVE, shown | {3: Said(GeneTold.NORMAL)}))

    assert [(each.animal, each.after) for each in changed(before, after)] == [
        (1, None),
        (2, None),
        (3, None),
    ]


def test_an_animal_that_was_not_there_before_has_not_moved() -> None:
    gene = GeneAsked(Inheritance.RECESSIVE, {1: Said(GeneTold.HET)})
    before = gene_odds([Kin(animal=1)], gene)
    after = gene_odds([Kin(animal=1), Kin(animal=3, dam=1, sires=((2, 1.0),))], gene)

    assert changed(before, after) == ()


def test_genes_that_are_not_asked_for_do_not_bear_on_at_least_one() -> None:
    others = [Locus(gene=f"g{n}", inheritance=Inheritance.RECESSIVE) for n in range(12)]
    many = {"a": possible_het(0.5)} | {each.gene: possible_het(0.5) for each in others}

    assert at_least_one(many, many, [A, *others], ["a"], 5) == at_least_one(
        many, many, [A], ["a"], 5
    )
