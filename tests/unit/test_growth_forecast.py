"""The forecast with few, bad and late data."""

import numpy as np
import pytest

from keeper.husbandry.profile import LmsCurve
from keeper.rules.growth.expectation import expectation
from keeper.rules.growth.forecast import forecast
from keeper.rules.growth.population import population
from keeper.rules.growth.stand_ins import population_for
from keeper.rules.growth.weighings import history
from tests.unit.stand_ins import stand_ins

AGES = (0.0, 14.0, 30.0, 60.0, 91.0, 120.0, 182.0, 270.0, 365.0, 547.0, 730.0, 1095.0)
CURVE = LmsCurve(
    age_days=AGES,
    l=(0.0,) * 12,
    m_g=(5.5, 5.8, 7.0, 12.7, 21.0, 31.0, 59.0, 105.0, 150.0, 205.0, 240.0, 260.0),
    s=(0.2,) * 12,
    basis="provisional",
    source="invented for tests",
)
STEADY = ((100.0, 25.0), (130.0, 36.0), (160.0, 47.0), (190.0, 62.0))


@pytest.fixture(scope="module")
def by_profile():
    return population_for(CURVE, [])


def test_without_a_weighing_it_cannot_tell(by_profile):
    found = forecast([], 200.0, by_profile)

    assert found.cannot_tell == "no weighing yet"
    assert (found.low_age_days, found.median_age_days, found.high_age_days) == (None, None, None)


def test_one_weighing_gives_a_date_with_the_width_of_the_population(by_profile):
    one, four = (forecast(some, 150.0, by_profile) for some in (STEADY[-1:], STEADY))

    assert one.low_age_days < one.median_age_days < one.high_age_days
    assert one.weighings_used == 1
    assert one.high_age_days - one.low_age_days > 0.5 * (four.high_age_days - four.low_age_days)


def test_an_animal_on_the_curve_is_forecast_near_the_curve(by_profile):
    weighings = [(age, expectation(CURVE, age).p50_g) for age in (90.0, 120.0, 150.0, 180.0)]

    found = forecast(weighings, expectation(CURVE, 330.0).p50_g, by_profile)

    assert found.median_age_days == pytest.approx(330.0, abs=25.0)
    assert found.low_age_days < 330.0 < found.high_age_days


def test_the_further_the_target_the_later_the_date(by_profile):
    dates = [forecast(STEADY, g, by_profile).median_age_days for g in (80.0, 110.0, 150.0, 190.0)]

    assert dates == sorted(dates)


@pytest.mark.parametrize("slip", [(145.0, 420.0), (145.0, 4.2), (200.0, 640.0)])
def test_one_weighing_ten_times_off_hardly_moves_the_date(by_profile, slip):
    clean = forecast(STEADY, 150.0, by_profile)

    found = forecast([*STEADY, slip], 150.0, by_profile)

    assert not found.reached
    assert found.weighings_used == 4
    assert found.median_age_days == pytest.approx(clean.median_age_days, abs=10.0)


def test_a_weight_that_stands_in_the_record_is_reached(by_profile):
    found = forecast([(300.0, 140.0), (330.0, 160.0)], 150.0, by_profile)

    assert found.reached
    assert 300.0 < found.median_age_days < 330.0
    assert found.low_age_days == found.high_age_days == found.median_age_days


@pytest.mark.parametrize("now_age_days", [200.0, 400.0, 900.0, 3000.0])
def test_no_date_lies_in_the_past(by_profile, now_age_days):
    found = forecast(STEADY, 150.0, by_profile, now_age_days=now_age_days)

    assert found.low_age_days >= now_age_days
    assert found.median_age_days >= found.low_age_days
    assert found.high_age_days is None or found.high_age_days >= found.median_age_days


def test_an_animal_that_loses_weight_is_forecast_later(by_profile):
    losing = ((100.0, 68.0), (130.0, 66.0), (160.0, 64.0), (190.0, 62.0))

    steady, thinner = (forecast(some, 150.0, by_profile) for some in (STEADY, losing))

    assert thinner.median_age_days > steady.median_age_days


def test_the_order_in_which_weighings_come_makes_no_difference(by_profile):
    assert forecast(STEADY[::-1], 150.0, by_profile) == forecast(STEADY, 150.0, by_profile)


def test_weighings_all_on_one_day_count_as_one(by_profile):
    found = forecast([(190.0, 60.0), (190.0, 62.0), (190.0, 64.0)], 150.0, by_profile)

    assert found.weighings_used == 1
    assert found == forecast([(190.0, 62.0)], 150.0, by_profile)


def test_the_same_seed_gives_the_same_forecast():
    again = population_for(CURVE, [], seed=3)

    assert forecast(STEADY, 150.0, again, seed=5) == forecast(
        STEADY, 150.0, population_for(CURVE, [], seed=3), seed=5
    )


def test_a_wider_level_gives_a_wider_interval(by_profile):
    narrow, wide = (forecast(STEADY, 130.0, by_profile, level=level) for level in (0.5, 0.9))

    assert wide.low_age_days <= narrow.low_age_days
    assert wide.high_age_days >= narrow.high_age_days


def test_own_animals_take_the_places_of_imagined_ones():
    own = stand_ins(CURVE, 10, seed=8)

    mixed = population_for(CURVE, own)

    assert (mixed.basis, mixed.animals) == ("mixed", 10)


def test_a_record_without_growth_teaches_nothing_and_is_not_counted():
    adult = history([(900.0 + 30 * n, 250.0) for n in range(6)])

    assert population_for(CURVE, [adult]).animals == 0


@pytest.mark.parametrize(
    ("weighings", "target_g", "message"),
    [
        ([(100.0, 0.0)], 150.0, r"above 0 g and finite, got 0\.0"),
        ([(-3.0, 20.0)], 150.0, r"0 days or more, got -3\.0"),
        ([(100.0, 20.0)], -1.0, r"target weight must be above 0 g and finite, got -1\.0"),
        ([(float("nan"), 20.0)], 150.0, "0 days or more, got nan"),
    ],
)
def test_impossible_figures_are_refused_with_their_value(by_profile, weighings, target_g, message):
    with pytest.raises(ValueError, match=message):
        forecast(weighings, target_g, by_profile)


def test_three_reference_animals_are_too_few():
    with pytest.raises(ValueError, match="needs 4 animals weighed 3 times or more, got 3"):
        population(stand_ins(CURVE, 3), basis="own")


def test_two_weighings_of_one_day_become_their_median():
    found = history([(20.0, 12.0), (10.0, 8.0), (20.0, 10.0), (20.0, 100.0)])

    assert found.age_days.tolist() == [10.0, 20.0]
    assert np.exp(found.log_g) == pytest.approx([8.0, 12.0])
