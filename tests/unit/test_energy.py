"""Energy refuses what cannot be, and reckons rations in proportion."""

import pytest

from tests.energy import standard_metabolic_rate_kj_per_day, weekly_energy_kj


@pytest.mark.parametrize("mass_g", [0, -1, float("nan"), float("inf")])
def test_a_mass_that_cannot_be_is_refused(mass_g: float) -> None:
    with pytest.raises(ValueError, match="a mass must be more than 0 g"):
        standard_metabolic_rate_kj_per_day(mass_g, 28)


@pytest.mark.parametrize("temperature_c", [-1, 51, 82.4, float("nan")])
def test_a_temperature_no_snake_lives_at_is_refused(temperature_c: float) -> None:
    with pytest.raises(ValueError, match="between 0 and 50 °C"):
        standard_metabolic_rate_kj_per_day(100, temperature_c)


@pytest.mark.parametrize(
    ("meal_g", "interval_days", "kcal_per_g", "told"),
    [(0, 7, 1.7, "a meal"), (9, 0, 1.7, "an interval"), (9, 7, float("nan"), "prey energy")],
)
def test_a_ration_that_cannot_be_is_refused(
    meal_g: float, interval_days: float, kcal_per_g: float, told: str
) -> None:
    with pytest.raises(ValueError, match=told):
        weekly_energy_kj(meal_g, interval_days, kcal_per_g)


def test_a_meal_twice_as_often_brings_twice_the_energy() -> None:
    assert weekly_energy_kj(10, 7, 1.7) == pytest.approx(2 * weekly_energy_kj(10, 14, 1.7))


def test_a_week_of_one_gram_of_one_kcal_a_day_is_seven_kcal() -> None:
    assert weekly_energy_kj(1, 1, 1) == pytest.approx(7 * 4.184)
