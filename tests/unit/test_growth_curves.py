"""Curve fits, batch fits and condition refuse what they cannot do."""

import numpy as np
import pytest

from keeper.rules.growth.condition import length_mass_line, scaled_mass_g, usual_mass_g
from keeper.rules.growth.curves import fit_curve, gompertz
from keeper.rules.growth.many_curves import fit_gompertz_each


def test_a_curve_without_noise_comes_back():
    x = np.linspace(0, 600, 12)

    fit = fit_curve(gompertz, (200, 4, 0.01), x, gompertz((250.0, 3.8, 0.006), x))

    assert fit.parameters == pytest.approx((250.0, 3.8, 0.006), rel=1e-9)


def test_three_parameters_need_four_points():
    with pytest.raises(ValueError, match="3 parameters need 4 points or more, got 3"):
        fit_curve(gompertz, (200, 4, 0.01), np.arange(3.0), np.arange(3.0))


def test_a_batch_gives_each_record_its_own_curve():
    ages = np.tile(np.linspace(0.0, 700.0, 20), (3, 1))
    top, drop = np.array([[5.0], [5.3], [5.6]]), np.array([[3.3], [3.5], [3.9]])
    rate = np.array([[0.004], [0.006], [0.009]])

    fits = fit_gompertz_each(ages, top - drop * np.exp(-rate * ages))

    assert fits.top == pytest.approx(top[:, 0], rel=1e-4)
    assert fits.drop == pytest.approx(drop[:, 0], rel=1e-4)
    assert fits.rate == pytest.approx(rate[:, 0], rel=1e-3)


def test_a_record_that_does_not_grow_gives_finite_figures():
    ages = np.tile(np.linspace(0.0, 700.0, 20), (2, 1))

    fits = fit_gompertz_each(ages, np.full_like(ages, 5.0))

    assert np.isfinite([fits.top, fits.drop, fits.rate]).all()
    assert fits.top == pytest.approx([5.0, 5.0], abs=1e-3)


def test_batch_records_of_unequal_shape_are_refused():
    with pytest.raises(ValueError, match="equal rows of 4 or more"):
        fit_gompertz_each(np.zeros((2, 5)), np.zeros((2, 6)))


def test_an_animal_of_the_mean_length_keeps_its_mass():
    line = length_mass_line([20.0, 40.0, 60.0], [5.0, 35.0, 130.0])

    assert scaled_mass_g(line, line.mean_length_cm, 33.0) == pytest.approx(33.0)


def test_every_animal_on_the_line_has_one_scaled_mass():
    line = length_mass_line([20.0, 40.0, 60.0], [5.0, 35.0, 130.0])

    scaled = [scaled_mass_g(line, cm, usual_mass_g(line, cm)) for cm in (18.0, 44.0, 90.0)]

    assert scaled == pytest.approx([usual_mass_g(line, line.mean_length_cm)] * 3)


@pytest.mark.parametrize(
    ("lengths", "masses", "message"),
    [
        ([20.0, 30.0], [5.0, 9.0], "need 3 or more pairs, got 2 and 2"),
        ([20.0, 20.0, 20.0], [5.0, 6.0, 7.0], r"all lengths are 20\.0 cm"),
        ([20.0, 0.0, 30.0], [5.0, 6.0, 7.0], r"above 0, got 0\.0"),
    ],
)
def test_a_length_mass_line_is_refused_with_the_reason(lengths, masses, message):
    with pytest.raises(ValueError, match=message):
        length_mass_line(lengths, masses)
