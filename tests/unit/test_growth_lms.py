"""The LMS method at its edges."""

import math

import pytest

from keeper.rules.growth.lms import centile, weight_at_z, z_score


def test_the_box_cox_form_passes_smoothly_through_l_0():
    log_normal = z_score(120.0, 0.0, 100.0, 0.2)

    assert z_score(120.0, 1e-12, 100.0, 0.2) == pytest.approx(log_normal, rel=1e-11)
    assert z_score(120.0, -1e-12, 100.0, 0.2) == pytest.approx(log_normal, rel=1e-11)


@pytest.mark.parametrize("l", [-1.5, -1e-9, 0.0, 1e-9, 0.3, 1.0])
def test_a_weight_comes_back_from_its_z(l):  # noqa: E741
    assert weight_at_z(z_score(37.5, l, 50.0, 0.15), l, 50.0, 0.15) == pytest.approx(37.5)


def test_the_median_stands_at_the_fiftieth_centile():
    assert centile(z_score(50.0, -0.4, 50.0, 0.2)) == 50.0


@pytest.mark.parametrize("weight_g", [0.0, -3.0, math.nan, math.inf])
def test_an_impossible_weight_is_refused_with_its_value(weight_g):
    with pytest.raises(ValueError, match=f"above 0 g and finite, got {weight_g}"):
        z_score(weight_g, 0.0, 50.0, 0.2)


def test_a_z_that_no_weight_has_is_refused():
    with pytest.raises(ValueError, match="no weight stands at z -6"):
        weight_at_z(-6.0, 1.0, 50.0, 0.2)
