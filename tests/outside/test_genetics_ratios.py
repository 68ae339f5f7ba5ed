"""Crosses against the textbook's ratios and Mendel's own counts; proving against the trade's table.

Sources: ratios of one and two loci and of epistasis as in Griffiths and others, "Introduction to
Genetic Analysis" (from memory), each also plain arithmetic; Mendel's counts of 1866, "Versuche
über Pflanzenhybriden" (from memory). Two non-allelic forms of one look: Bechtel and Bechtel
1981, J Herpetol 15:397-402; independent recessives: Bechtel and Bechtel 1989, J Hered
80:272-276. The proving table is what breeders state (common practice), each figure arithmetic.
"""

from fractions import Fraction

import pytest
from scipy.stats import chisquare

from keeper.husbandry.genes import GeneTold, Inheritance
from keeper.rules.genetics.answers import CARRIER, CLEAR, TWO_COPIES, CopyOdds
from keeper.rules.genetics.crosses import Locus, at_least_one, passed_on, young_of
from keeper.rules.genetics.odds import gene_odds
from keeper.rules.genetics.pedigree import Kin
from keeper.rules.genetics.proving import left_after, normals_needed, possible_het
from keeper.rules.genetics.witness import GeneAsked, Said

RECESSIVE, INCOMPLETE = Inheritance.RECESSIVE, Inheritance.INCOMPLETE


def locus(gene: str, hidden_by: str | None = None, inheritance: Inheritance = RECESSIVE) -> Locus:
    return Locus(gene=gene, inheritance=inheritance, hidden_by=hidden_by)


def hets(genes: str) -> dict[str, CopyOdds]:
    return dict.fromkeys(genes, CARRIER)


def in_parts(dam: dict, sire: dict, loci: list[Locus], whole: int) -> dict[str, Fraction]:
    """Parts of *whole* of each look, its genes written together."""
    looks = young_of(dam, sire, loci)
    return {"".join(look.shows): Fraction(look.share) * whole for look in looks}


def test_one_locus_gives_three_to_one_and_one_to_one() -> None:
    assert in_parts(hets("a"), hets("a"), [locus("a")], 4) == {"": 3, "a": 1}
    assert in_parts(hets("a"), {"a": TWO_COPIES}, [locus("a")], 2) == {"": 1, "a": 1}


def test_copies_of_het_by_het_are_one_two_one() -> None:
    assert passed_on(CARRIER, CARRIER) == CopyOdds(0.25, 0.5, 0.25)


def test_two_loci_give_nine_three_three_one() -> None:
    parts = in_parts(hets("ab"), hets("ab"), [locus("a"), locus("b")], 16)

    assert parts == {"": 9, "a": 3, "b": 3, "ab": 1}


def test_two_loci_by_a_double_visual_give_one_to_each() -> None:
    both = dict.fromkeys("ab", TWO_COPIES)

    assert in_parts(hets("ab"), both, [locus("a"), locus("b")], 4) == {
        "": 1,
        "a": 1,
        "b": 1,
        "ab": 1,
    }


def test_three_loci_give_twenty_seven_and_so_on() -> None:
    parts = in_parts(hets("abc"), hets("abc"), [locus(gene) for gene in "abc"], 64)

    assert parts == {"": 27, "a": 9, "b": 9, "c": 9, "ab": 3, "ac": 3, "bc": 3, "abc": 1}


def test_recessive_epistasis_gives_nine_three_four() -> None:
    parts = in_parts(hets("ab"), hets("ab"), [locus("a"), locus("b", hidden_by="a")], 16)

    assert parts == {"": 9, "b": 3, "a": 4}


def test_dominant_epistasis_gives_twelve_three_one() -> None:
    loci = [locus("d", inheritance=Inheritance.DOMINANT), locus("b", hidden_by="d")]

    assert in_parts(hets("db"), hets("db"), loci, 16) == {"d": 12, "": 3, "b": 1}


def test_two_look_alike_forms_give_nine_to_seven_of_all_that_look_so() -> None:
    parts = in_parts(hets("ab"), hets("ab"), [locus("a"), locus("b")], 16)

    assert (parts.pop(""), sum(parts.values())) == (9, 7)


def test_a_form_by_the_others_het_gives_one_to_three() -> None:
    """aa Bb by Aa bb, the two forms of one look: 1 normal to 3."""
    dam = {"a": TWO_COPIES, "b": CARRIER}
    sire = {"a": CARRIER, "b": TWO_COPIES}
    parts = in_parts(dam, sire, [locus("a"), locus("b")], 4)

    assert (parts.pop(""), sum(parts.values())) == (1, 3)


def test_a_cross_of_three_loci_one_of_them_codominant() -> None:
    """Aa Bb Cc by aa Bb CC: of each of A and a, 1/8, 1/4, 1/8 by copies of B."""
    loci = [locus("a"), locus("b", inheritance=INCOMPLETE), locus("c")]
    dam, sire = hets("abc"), {"a": TWO_COPIES, "b": CARRIER, "c": CLEAR}
    found = {(look.shows, look.supers): look.share for look in young_of(dam, sire, loci)}

    assert found == {
        ((), ()): 1 / 8,
        (("b",), ()): 1 / 4,
        (("b",), ("b",)): 1 / 8,
        (("a",), ()): 1 / 8,
        (("a", "b"), ()): 1 / 4,
        (("a", "b"), ("b",)): 1 / 8,
    }


@pytest.mark.parametrize(
    ("counts", "statistic", "p"),
    [((315, 108, 101, 32), 0.470024, 0.925426), ((5474, 1850), 0.262880, 0.608148)],
)
def test_mendels_counts_fit_the_expected_shares(
    counts: tuple[int, ...], statistic: float, p: float
) -> None:
    genes = "ab"[: len(counts) // 2]
    looks = young_of(hets(genes), hets(genes), [locus(gene) for gene in genes])
    fit = chisquare(counts, [look.share * sum(counts) for look in looks])

    assert fit.statistic == pytest.approx(statistic, abs=1e-6)
    assert fit.pvalue == pytest.approx(p, abs=1e-6)


def test_dropped_genes_fit_the_expected_shares() -> None:
    """20,000 young each from sgkit 0.10.0 `simulate_genedrop`, seed 5: counts it gave."""
    drawn = {(1, 1): (5007, 10025, 4968), (1, 2): (0, 9977, 10023)}
    certain = {1: CARRIER, 2: TWO_COPIES}
    for (dam, sire), counts in drawn.items():
        odds = passed_on(certain[dam], certain[sire])
        expected = [20_000 * each for each in (odds.none, odds.one, odds.two)]
        kept = [(seen, due) for seen, due in zip(counts, expected, strict=True) if due]

        assert chisquare(*zip(*kept, strict=True)).pvalue > 0.05


@pytest.mark.parametrize(
    ("one", "other", "share"),
    [(2 / 3, 1, 1 / 6), (2 / 3, None, 1 / 3), (1 / 2, 1 / 2, 1 / 16)],
)
def test_visuals_of_possible_hets(one: float, other: float | None, share: float) -> None:
    mate = TWO_COPIES if other is None else possible_het(other)

    assert passed_on(possible_het(one), mate).two == pytest.approx(share)


@pytest.mark.parametrize(("young", "chance"), [(6, 3367 / 4096), (10, 1 - 0.75**10)])
def test_at_least_one_visual_of_het_by_het(young: int, chance: float) -> None:
    found = at_least_one(hets("a"), hets("a"), [locus("a")], ["a"], young)

    assert found == pytest.approx(chance, abs=1e-12)


# Proving out (common practice, each figure arithmetic)


@pytest.mark.parametrize(
    ("before", "mate", "normals", "percent"),
    [
        (2 / 3, TWO_COPIES, 1, 50),
        (2 / 3, TWO_COPIES, 2, 33),
        (2 / 3, TWO_COPIES, 3, 20),
        (2 / 3, TWO_COPIES, 4, 11),
        (2 / 3, TWO_COPIES, 5, 5.9),
        (2 / 3, TWO_COPIES, 7, 1.5),
        (1 / 2, TWO_COPIES, 4, 5.9),
        (1 / 2, TWO_COPIES, 5, 3.03),
        (2 / 3, CARRIER, 10, 10),
        (2 / 3, CARRIER, 15, 2.6),
    ],
)
def test_the_table_of_proving(before: float, mate: CopyOdds, normals: int, percent: float) -> None:
    places = len(str(percent).partition(".")[2])
    left = left_after(possible_het(before), mate, normals)

    assert round(100 * left, places) == percent


def test_the_table_is_also_what_the_whole_pedigree_says() -> None:
    """The candidate and its mate as animals, the young as animals that were looked at."""
    for normals in range(12):
        kin = [Kin(animal=10 + nth, dam=1, sires=((2, 1.0),)) for nth in range(normals)]
        told = {1: Said(GeneTold.POSSIBLE, 66.0), 2: Said(GeneTold.HET)}
        told |= {each.animal: Said(GeneTold.NORMAL) for each in kin}
        found = gene_odds([*kin, Kin(animal=1)], GeneAsked(RECESSIVE, told)).odds[1].carries

        assert found == pytest.approx(left_after(possible_het(0.66), CARRIER, normals))


def test_young_needed_to_fall_under_five_percent() -> None:
    """2·½ⁿ < 1/19 and 2·¾ⁿ < 1/19: n > 5.25 and n > 12.6; ½ⁿ < 1/19: n > 4.25."""
    assert normals_needed(possible_het(2 / 3), TWO_COPIES) == 6
    assert normals_needed(possible_het(2 / 3), CARRIER) == 13
    assert normals_needed(possible_het(1 / 2), TWO_COPIES) == 5


# Two look-alike forms at two places


def test_two_look_alike_forms_that_are_not_allelic() -> None:
    """Visual by visual all normal-looking and double het; those intercrossed 9 : 3 : 3 : 1, of the
    normal-looking 4/9 het for both, of the hiding form 1/4 with two copies of the other and 1/2
    with one, of the hidden form 2/3 het for the hiding one."""
    loci = [locus("a"), locus("b", hidden_by="a")]
    (first,) = young_of({"a": TWO_COPIES}, {"b": TWO_COPIES}, loci)
    looks = {look.shows: look for look in young_of(hets("ab"), hets("ab"), loci)}
    called = {shows: {each.gene: each for each in look.may_carry} for shows, look in looks.items()}

    assert first.shows == ()
    assert [each.one for each in first.may_carry] == [1, 1]
    assert called[()]["a"].one * called[()]["b"].one == pytest.approx(4 / 9)
    assert (called["a",]["b"].two, called["a",]["b"].one) == (0.25, 0.5)
    assert called["b",]["a"].one == pytest.approx(2 / 3)
