"""Interval-censored log-normal fits against other engines, closed forms and scipy."""

from math import inf, log, sqrt
from statistics import NormalDist

import numpy as np
import pytest
from scipy.optimize import minimize
from scipy.stats import norm

from keeper.rules.intervals import lognormal_fit

# Eight gaps known between two looks. Fitted with lifelines 0.30.3 (LogNormalFitter,
# fit_interval_censoring) and R 4.2.2 survival 3.5.3 (survreg, interval2), which agree:
# mu 3.645770, sigma 0.266950, log-likelihood -13.789719, 95 % point 59.433854 days.
LOW = (30, 35, 0, 40, 28, 45, 33, 50)
HIGH = (35, 42, 30, inf, 36, 52, 33, inf)


def test_the_toy_intervals_give_what_lifelines_and_r_give() -> None:
    fit = lognormal_fit(list(zip(LOW, HIGH, strict=True)))

    assert fit.mu == pytest.approx(3.645770, abs=1e-5)
    assert fit.sigma == pytest.approx(0.266950, abs=1e-5)
    assert fit.loglik == pytest.approx(-13.789719, abs=1e-6)


def test_the_toy_overdue_day_is_theirs() -> None:
    fit = lognormal_fit(list(zip(LOW, HIGH, strict=True)))

    late_days = float(np.exp(fit.mu + fit.sigma * NormalDist().inv_cdf(0.95)))
    assert late_days == pytest.approx(59.433854, abs=1e-3)


def test_exact_lengths_give_the_closed_form() -> None:
    """Mean and population SD of the logarithms: 3.740138099, 0.123407381."""
    days = (38, 41, 44, 35, 52, 40, 47)

    fit = lognormal_fit([(each, each) for each in days])

    assert fit.mu == pytest.approx(3.740138099, abs=1e-9)
    assert fit.sigma == pytest.approx(0.123407381, abs=1e-9)


def test_a_larger_censored_sample_reaches_the_optimum_that_scipy_finds() -> None:
    rng = np.random.default_rng(7)
    true_days = rng.lognormal(log(45), 0.25, 120)
    looks = np.sort(rng.uniform(0, 4, (120, 2)), axis=1)
    low = np.maximum(true_days - looks[:, 1], 0.5)
    high = np.where(np.arange(120) % 5 == 0, inf, true_days + looks[:, 0])

    fit = lognormal_fit(list(zip(low.tolist(), high.tolist(), strict=True)))

    def minus_loglik(at: np.ndarray) -> float:
        mu, sigma = at[0], float(np.exp(at[1]))
        inside = norm.cdf((np.log(high) - mu) / sigma) - norm.cdf((np.log(low) - mu) / sigma)
        return float(-np.log(inside).sum())

    best = minimize(minus_loglik, [log(45), log(0.3)], method="Nelder-Mead", tol=1e-10)
    assert fit.loglik == pytest.approx(-best.fun, abs=1e-6)
    assert (fit.mu, fit.sigma) == pytest.approx((best.x[0], float(np.exp(best.x[1]))), abs=1e-4)


def test_a_fit_recovers_the_figures_that_made_the_sample() -> None:
    """To three standard errors, sigma / sqrt(n) and sigma / sqrt(2 n)."""
    rng = np.random.default_rng(11)
    days = rng.lognormal(log(40), 0.2, 400)

    fit = lognormal_fit([(each - 1, each + 1) for each in days.tolist()])

    assert abs(fit.mu - log(40)) < 3 * 0.2 / sqrt(400)
    assert abs(fit.sigma - 0.2) < 3 * 0.2 / sqrt(800)
