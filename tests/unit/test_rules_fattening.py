"""Fed too fast, or fat: what was weighed, measured and fed, held against a figure."""

from datetime import date, timedelta

import pytest

from keeper.husbandry.events import Measured
from keeper.husbandry.when import on_day
from keeper.rules.fattening import fast, high_score, no_longer
from keeper.rules.growth.condition import Body, conditions
from keeper.rules.growth.expectation import expectation
from tests.builders import a_curve

TODAY = date(2026, 9, 23)
EXPECTED = expectation(a_curve(), 270)
HEAVY_G = 1.6 * EXPECTED.m_g


def ago(days: int) -> date:
    return TODAY - timedelta(days=days)


def measured(days: int, svl_cm: float | None = None, score: float | None = None) -> Measured:
    return Measured(animal=1, happened=on_day(ago(days)), svl_cm=svl_cm, body_score=score)


def meals(percent_a_week: float):
    """Six weekly meals of that share of the heavy animal's weight."""
    return [(ago(7 * n + 1), HEAVY_G * percent_a_week / 100) for n in range(6)]


def test_heavy_and_fed_much_after_half_a_year_is_too_fast():
    found = fast((TODAY, HEAVY_G), 270, EXPECTED, meals(18))

    assert found is not None and found.by == "fast"
    assert [why.why for why in found.because] == [
        "above her kind", "much prey", "a frame not ready",
    ]  # fmt: skip
    assert found.because[1].figures["percent"] == 18


@pytest.mark.parametrize(
    ("grams", "age_days", "percent"),
    [(HEAVY_G, 270, 14), (HEAVY_G, 150, 18), (1.2 * EXPECTED.m_g, 270, 14)],
    ids=["little prey", "under half a year", "within the band"],
)
def test_one_of_the_three_alone_is_not_too_fast(grams, age_days, percent):
    assert fast((TODAY, grams), age_days, EXPECTED, meals(percent)) is None


def test_within_the_band_much_prey_is_not_too_fast():
    eaten = [(day, 0.18 * EXPECTED.m_g) for day, _ in meals(18)]

    assert fast((TODAY, EXPECTED.m_g), 270, EXPECTED, eaten) is None


def test_nothing_is_said_without_a_sex_or_where_a_meal_was_not_weighed():
    assert fast((TODAY, HEAVY_G), 270, None, meals(18)) is None
    assert fast((TODAY, HEAVY_G), 270, EXPECTED, [*meals(18), (ago(3), None)]) is None


def test_a_tenth_heavier_and_no_longer_in_half_a_year_is_fat():
    found = no_longer(
        [(ago(150), 200.0), (ago(2), 222.0)], [measured(150, 60.0), measured(0, 60.4)], TODAY
    )

    assert found is not None
    assert found.because[0].figures["percent"] == 11
    assert found.because[0].figures["days"] == 150


@pytest.mark.parametrize(
    ("then", "last_cm", "now_g"),
    [(150, 62.0, 222.0), (150, 60.4, 215.0), (200, 60.4, 222.0)],
    ids=["longer too", "not so much heavier", "over more than half a year"],
)
def test_growth_in_length_or_little_gain_is_not_fat(then, last_cm, now_g):
    weights, lengths = (
        [(ago(then), 200.0), (ago(2), now_g)],
        [measured(then, 60.0), measured(0, last_cm)],
    )

    assert no_longer(weights, lengths, TODAY) is None


def test_a_length_without_a_weight_near_it_says_nothing():
    assert no_longer([(ago(60), 222.0)], [measured(150, 60.0), measured(0, 60.0)], TODAY) is None
    assert no_longer([], [measured(150, 60.0), measured(0, 60.0)], TODAY) is None


def test_a_body_score_of_four_is_fat_until_it_is_too_old_or_a_newer_one_says_otherwise():
    assert high_score([measured(10, score=4.0)], TODAY) is not None
    assert high_score([measured(10, score=3.9)], TODAY) is None
    assert high_score([measured(91, score=4.5)], TODAY) is None
    assert high_score([measured(10, score=4.5), measured(2, score=3.5)], TODAY) is None


def bodies(count: int) -> list[Body]:
    """Animals of one build: mass goes as the cube of length."""
    return [
        Body(animal=n, on=TODAY, svl_cm=40.0 + n, mass_g=200 * ((40.0 + n) / 60) ** 3)
        for n in range(count)
    ]


def test_weight_for_length_is_told_against_all_that_were_measured():
    whole = bodies(20)
    whole[5] = Body(animal=5, on=TODAY, svl_cm=45.0, mass_g=0.8 * whole[5].mass_g)

    told = conditions(whole)

    assert told[5].figures["percent"] == pytest.approx(81, abs=2)
    assert told[12].figures["percent"] == pytest.approx(101, abs=2)
    assert told[5].figures["animals"] == 20


def test_too_few_measured_or_all_of_one_length_tell_no_condition():
    assert conditions(bodies(7)) == {}
    assert (
        conditions([Body(animal=n, on=TODAY, svl_cm=50.0, mass_g=100.0 + n) for n in range(9)])
        == {}
    )
