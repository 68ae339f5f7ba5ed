"""What is possible: the most powerful test of a cold row by refusals alone, and exact tails.

Chances are held against scipy's binomial, Student's t and Fisher's combination of chances. The
bound is Neyman & Pearson's lemma (Phil. Trans. R. Soc. A 231, 1933, 289-337): of two exact
distributions the likelihood ratio is the most powerful test, here the number of refusals.
"""

from math import isclose

import pytest
from scipy.stats import binom, combine_pvalues, t

from keeper.rules.cooler_rows import t5_tail
from keeper.rules.group_chances import product_chance, refusal_tails

ROWS, TUBS, USUAL, COLD = 30, 10, 0.08, 0.32
FALSE_A_NIGHT = 0.01


def most_powerful(offers: int, level: float) -> float:
    """Power of the best test of *level*, drawing lots at its edge."""
    least = next(k for k in range(offers + 2) if binom.sf(k - 1, offers, USUAL) <= level)
    left = level - binom.sf(least - 1, offers, USUAL)
    lots = left / binom.pmf(least - 1, offers, USUAL)
    return float(binom.sf(least - 1, offers, COLD) + lots * binom.pmf(least - 1, offers, COLD))


def test_by_refusals_alone_no_rule_that_keeps_the_promise_finds_half_of_the_cold_rows():
    """All that a room may err in both nights spent on its rows, and both nights seen at once."""
    bound = most_powerful(2 * TUBS, 2 * FALSE_A_NIGHT / ROWS)

    assert isclose(bound, 0.471, abs_tol=0.001)


def test_not_even_if_it_were_known_which_row_to_look_at_would_nine_in_ten_be_found():
    bound = most_powerful(2 * TUBS, 2 * FALSE_A_NIGHT)

    assert isclose(bound, 0.821, abs_tol=0.001)


@pytest.mark.parametrize(("least", "offers"), [(9, 40), (4, 10), (3, 10), (8, 20)])
def test_tails_of_equal_rates_are_the_binomials(least, offers):
    assert refusal_tails([USUAL] * offers)[least] == pytest.approx(
        binom.sf(least - 1, offers, USUAL), rel=1e-9
    )


@pytest.mark.parametrize("value", [-3.0, -0.4, 0.0, 1.0, 2.015, 5.0, 9.3])
def test_the_tail_of_students_t_is_scipys(value):
    assert t5_tail(value) == pytest.approx(t.sf(value, 5), rel=1e-6)


@pytest.mark.parametrize("chances", [(0.04,), (0.07, 0.002), (0.07, 0.002, 0.001), (0.5, 0.9, 0.3)])
def test_chances_are_put_together_as_fisher_does(chances):
    assert product_chance(chances) == pytest.approx(combine_pvalues(chances).pvalue, rel=1e-9)
