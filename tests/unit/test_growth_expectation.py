"""Expectation by age: knots, edges, vague ages and speed."""

import subprocess
import sys

import pytest
from hypothesis import given
from hypothesis import strategies as st

from keeper.husbandry.profile import LmsCurve
from keeper.rules.growth.expectation import expectation, expectation_over, standing

CURVE = LmsCurve(
    age_days=(0.0, 90.0, 365.0, 1000.0),
    l=(0.0, -0.2, -0.2, 0.0),
    m_g=(5.0, 20.0, 120.0, 200.0),
    s=(0.1, 0.25, 0.2, 0.2),
    basis="provisional",
    source="invented for tests",
)


def test_a_knot_is_met_exactly():
    expected = expectation(CURVE, 365.0)

    assert expected.p50_g == pytest.approx(120.0, rel=1e-12)
    assert (expected.l, expected.s) == (-0.2, 0.2)


def test_an_animal_older_than_the_curve_is_held_at_its_end_and_told_so():
    older = expectation(CURVE, 4000.0)

    assert older.p50_g == 200.0
    assert older.beyond_curve
    assert not expectation(CURVE, 1000.0).beyond_curve


@given(age_days=st.floats(0, 1500))
def test_centiles_never_cross(age_days):
    e = expectation(CURVE, age_days)

    assert e.p3_g < e.p10_g < e.p50_g < e.p90_g < e.p97_g


@given(st.floats(0, 1500), st.floats(0, 1500))
def test_the_median_never_falls_with_age(one, other):
    younger, older = sorted((one, other))

    assert expectation(CURVE, younger).p50_g <= expectation(CURVE, older).p50_g * (1 + 1e-12)


def test_a_standing_agrees_with_the_drawn_centiles():
    expected = expectation(CURVE, 200.0)

    drawn = (expected.p3_g, expected.p10_g, expected.p50_g, expected.p90_g, expected.p97_g)

    assert [standing(expected, weight_g).centile for weight_g in drawn] == pytest.approx(
        [3, 10, 50, 90, 97]
    )


def test_an_age_known_to_the_day_is_the_plain_expectation():
    vague, known = expectation_over(CURVE, 200.0, 200.0), expectation(CURVE, 200.0)

    assert vague.p3_g == pytest.approx(known.p3_g)
    assert vague.p97_g == pytest.approx(known.p97_g)


def test_the_vaguer_the_age_the_wider_the_expectation():
    spans = [expectation_over(CURVE, 200.0 - half, 200.0 + half) for half in (0, 15, 90, 180)]

    widths = [e.p97_g / e.p3_g for e in spans]

    assert widths == sorted(widths)
    assert widths[-1] > 1.5 * widths[0]


def test_a_vague_age_that_may_pass_the_end_of_the_curve_says_so():
    assert expectation_over(CURVE, 900.0, 1100.0).beyond_curve


@pytest.mark.parametrize("age_days", [-1.0, float("nan"), float("inf")])
def test_an_impossible_age_is_refused_with_its_value(age_days):
    with pytest.raises(ValueError, match=f"0 days or more, got {age_days}"):
        expectation(CURVE, age_days)


def test_ages_in_the_wrong_order_are_refused():
    with pytest.raises(ValueError, match=r"last age, 10\.0 days, lies before the first, 20\.0"):
        expectation_over(CURVE, 20.0, 10.0)


def test_a_curve_without_a_3rd_centile_is_refused():
    bent = LmsCurve(
        age_days=(0.0, 10.0), l=(2.0, 2.0), m_g=(5.0, 6.0), s=(0.4, 0.4), basis="x", source="x"
    )

    with pytest.raises(ValueError, match="no 3rd or 97th centile"):
        expectation(bent, 5.0)


def test_expectation_needs_no_arrays():
    code = (
        "import sys, keeper.rules.growth.expectation, keeper.rules.growth.own_stock;"
        "sys.exit('numpy' in sys.modules)"
    )

    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0
