"""What past errors count for, and several levels asked at once."""

import numpy as np
import pytest

from keeper.rules.growth.calibration import UNFINISHED_WORTH
from keeper.rules.growth.forecast import forecast, forecasts
from keeper.rules.growth.median_curve import median_curve
from keeper.rules.growth.population import Population, population
from keeper.rules.growth.weighings import History


def animals(count: int, apart_days: float = 0.0) -> list[History]:
    """Gompertz growth at a pace of its own each, weighed every four days from a day of its own."""
    random = np.random.default_rng(11)
    found = []
    for n in range(count):
        rate = 0.06 * np.exp(0.3 * random.standard_normal())
        ages = np.arange(0.0, 46.0, 4.0)
        logs = 6.0 - 2.3 * np.exp(-rate * ages) + 0.02 * random.standard_normal(len(ages))
        found.append(History(ages + n * apart_days, logs))
    return found


@pytest.fixture(scope="module")
def known() -> Population:
    return population(animals(8), basis="own")


def test_a_record_that_ended_before_the_target_counts_half(known):
    errors = known.skill(3).errors

    by_worth = {round(worth, 9) for worth in errors.worth[~errors.reached]}
    of_reached = {round(UNFINISHED_WORTH * worth, 9) for worth in errors.worth[errors.reached]}

    assert 0 < (~errors.reached).sum() < len(errors.reached)
    assert by_worth <= of_reached


def test_several_levels_at_once_are_told_as_one_by_one(known):
    weighings = [(0.0, 41.0), (4.0, 62.0), (8.0, 88.0)]

    together = forecasts(weighings, 160.0, known, levels=(0.8, 0.5))

    assert together == tuple(forecast(weighings, 160.0, known, level=at) for at in (0.8, 0.5))
    assert together[0].low_age_days <= together[1].low_age_days


def test_one_level_that_is_none_refuses_them_all(known):
    with pytest.raises(ValueError, match="level must lie between 0 and 1, got 1"):
        forecasts([(0.0, 41.0)], 160.0, known, levels=(0.8, 1.0))


@pytest.mark.parametrize("apart_days", [15.0, 60.0])
def test_a_median_is_drawn_through_records_that_hardly_meet(apart_days):
    curve = median_curve(animals(8, apart_days))

    assert np.all(np.diff(curve.log_g) > 0)
    assert np.isfinite([curve.age_at(log_g) for log_g in (3.0, 4.5, 7.0)]).all()
