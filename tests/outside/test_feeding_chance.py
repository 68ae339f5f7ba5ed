"""Chance that so many refuse, against SciPy and against exact fractions.

Binomial: scipy.stats.binom (SciPy 1.15 or later), an independent implementation through the
regularised incomplete beta function. Unequal chances: scipy.stats.poisson_binom, by discrete
Fourier transform. Both also against sums of Python fractions, which do not round at all.
"""

from fractions import Fraction
from math import comb

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from keeper.rules.refusals import binomial_tail, poisson_binomial_tail


def exact_tail(k: int, n: int, p: Fraction) -> float:
    return float(sum(comb(n, i) * p**i * (1 - p) ** (n - i) for i in range(k, n + 1)))


@pytest.mark.parametrize(
    ("k", "n", "p", "printed"),
    [
        (9, 40, 0.08, 0.004),  # a rack of forty: nine refuse where three are usual
        (4, 10, 0.08, 0.006),  # a row of ten
    ],
)
def test_the_working_figures_of_the_trade_come_out(
    k: int, n: int, p: float, printed: float
) -> None:
    assert round(binomial_tail(k, n, p), 3) == printed
    assert binomial_tail(k, n, p) == pytest.approx(stats.binom.sf(k - 1, n, p), rel=1e-12)


@pytest.mark.parametrize("n", [1, 5, 14, 40, 300, 2000])
@pytest.mark.parametrize("p", [0.001, 0.08, 0.5, 0.93])
def test_every_tail_agrees_with_scipy(n: int, p: float) -> None:
    ks = range(0, n + 1, max(1, n // 40))

    ours = [binomial_tail(k, n, p) for k in ks]

    assert ours == pytest.approx([float(stats.binom.sf(k - 1, n, p)) for k in ks], rel=1e-9)


@pytest.mark.parametrize(("k", "n"), [(1, 7), (9, 40), (40, 40), (25, 60)])
def test_tails_agree_with_exact_fractions(k: int, n: int) -> None:
    assert binomial_tail(k, n, 0.08) == pytest.approx(exact_tail(k, n, Fraction(0.08)), rel=1e-12)


@given(st.lists(st.floats(0.01, 0.99), min_size=1, max_size=60), st.data())
def test_unequal_chances_agree_with_scipy(ps: list[float], data: st.DataObject) -> None:
    k = data.draw(st.integers(0, len(ps)))

    ours = poisson_binomial_tail(k, ps)

    assert ours == pytest.approx(float(stats.poisson_binom.sf(k - 1, ps)), abs=1e-12)
