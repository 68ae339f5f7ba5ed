"""Own stock pulls the profile's curve over by weight of evidence."""

import itertools

import pytest
from hypothesis import given
from hypothesis import strategies as st

from keeper.husbandry.profile import LmsCurve
from keeper.rules.growth.expectation import expectation
from keeper.rules.growth.own_stock import OwnWeighing, blended

CURVE = LmsCurve(
    age_days=(0.0, 30.0, 90.0, 200.0, 365.0, 730.0, 1500.0),
    l=(0.0,) * 7,
    m_g=(5.0, 8.0, 20.0, 60.0, 120.0, 180.0, 200.0),
    s=(0.2,) * 7,
    basis="provisional",
    source="invented for tests",
)


def heavy_animals(count, line=None, by=1.3, first_id=0):
    """Animals that all weigh *by* times the profile at 90, 200 and 365 days."""
    return [
        OwnWeighing(
            animal_id=first_id + n,
            line=line,
            age_days=age,
            weight_g=by * expectation(CURVE, age).p50_g,
        )
        for n in range(count)
        for age in (90.0, 200.0, 365.0)
    ]


def test_without_own_stock_the_curve_is_the_profiles():
    blend = blended(CURVE, [])

    assert blend.curve == CURVE
    assert (blend.own_share, blend.animals) == (0.0, 0)


def test_each_animal_moves_the_curve_less_than_the_one_before():
    medians = [blended(CURVE, heavy_animals(n)).curve.m_g[3] for n in range(1, 8)]

    steps = [later - earlier for earlier, later in itertools.pairwise(medians)]

    assert all(step > 0 for step in steps)
    assert steps == sorted(steps, reverse=True)


def test_many_own_animals_take_the_curve_nearly_whole():
    blend = blended(CURVE, heavy_animals(200))

    assert blend.curve.m_g[3] == pytest.approx(1.3 * CURVE.m_g[3], rel=0.01)
    assert blend.own_share > 0.95


def test_weighing_one_animal_often_is_not_having_many():
    often = heavy_animals(1) * 50

    assert blended(CURVE, often).curve.m_g[3] == pytest.approx(
        blended(CURVE, heavy_animals(1)).curve.m_g[3]
    )


def test_ages_no_own_animal_reached_stay_with_the_profile():
    blend = blended(CURVE, heavy_animals(20))

    assert blend.own_share_at_knots[-1] < 0.05
    assert blend.curve.m_g[-1] == pytest.approx(CURVE.m_g[-1], rel=0.02)


def test_a_line_of_six_borrows_from_its_species():
    own = heavy_animals(40, by=1.0) + heavy_animals(6, line="amber", by=1.4, first_id=100)

    species, line = blended(CURVE, own), blended(CURVE, own, line="amber")

    assert species.curve.m_g[3] < line.curve.m_g[3] < 1.4 * CURVE.m_g[3]
    assert line.own_share > species.own_share


def test_a_weighing_ten_times_too_heavy_moves_the_curve_no_more_than_three_spreads():
    slip = [OwnWeighing(animal_id=1, line=None, age_days=200.0, weight_g=600.0)]
    heavy = [OwnWeighing(animal_id=1, line=None, age_days=200.0, weight_g=60.0 * 2.718281828**0.6)]

    assert blended(CURVE, slip).curve.m_g == pytest.approx(blended(CURVE, heavy).curve.m_g)


@given(
    weights=st.lists(st.floats(1.0, 400.0), min_size=1, max_size=12),
    ages=st.lists(st.floats(0.0, 2500.0), min_size=12, max_size=12),
)
def test_no_stock_makes_centiles_cross_or_the_median_fall(weights, ages):
    own = [
        OwnWeighing(animal_id=n, line=None, age_days=age, weight_g=weight_g)
        for n, (age, weight_g) in enumerate(zip(ages, weights, strict=False))
    ]

    curve = blended(CURVE, own).curve

    assert list(curve.m_g) == sorted(curve.m_g)
    assert all(0 < s < 1 for s in curve.s)


@given(st.floats(20.0, 400.0), st.floats(0.0, 1600.0))
def test_a_small_change_of_one_weighing_is_a_small_change_of_the_curve(weight_g, age_days):
    before, after = (
        blended(CURVE, [OwnWeighing(animal_id=1, line=None, age_days=age_days, weight_g=w)])
        for w in (weight_g, weight_g * 1.001)
    )

    assert after.curve.m_g == pytest.approx(before.curve.m_g, rel=1e-3)


def test_a_weight_of_nothing_is_refused():
    with pytest.raises(ValueError, match=r"above 0 g, got 0\.0"):
        blended(CURVE, [OwnWeighing(animal_id=1, line=None, age_days=10.0, weight_g=0.0)])
