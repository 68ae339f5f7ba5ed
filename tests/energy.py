"""Energy: what a resting snake burns, and what its planned meals bring."""

from math import isfinite

HOURS_PER_DAY = 24
DAYS_PER_WEEK = 7
KJ_PER_LITRE_O2 = 20.1
KJ_PER_KCAL = 4.184


def standard_metabolic_rate_kj_per_day(mass_g: float, temperature_c: float) -> float:
    """What a fasting, resting squamate of *mass_g* burns in a day at *temperature_c*.

    Oxygen in mL an hour is 0.013 g^0.80 10^(0.038 C), and 20.1 J a mL. It is a floor:
    moving, digesting, growing and laying come on top.

    Raises:
        ValueError: a mass that is not above 0 g, or a temperature outside 0 to 50 °C.

    Source: Andrews & Pough 1985, Physiol. Zool. 58:214-231, equation 2.

    >>> round(standard_metabolic_rate_kj_per_day(100, 28), 3)
    2.893
    """
    _check_above_0("a mass", mass_g, "g")
    if not 0 <= temperature_c <= 50:
        raise ValueError(f"a temperature must lie between 0 and 50 °C, got {temperature_c!r}")
    oxygen_ml_per_hour: float = 0.013 * mass_g**0.80 * 10 ** (0.038 * temperature_c)
    return oxygen_ml_per_hour * HOURS_PER_DAY * KJ_PER_LITRE_O2 / 1000


def weekly_energy_kj(meal_g: float, interval_days: float, kcal_per_g: float) -> float:
    """Energy of the prey in a week's meals, as fed; what of it is digested is not taken off.

    Args:
        meal_g: grams of prey in one meal, as fed.
        interval_days: days from meal to meal.
        kcal_per_g: energy of that prey per gram as fed, never per gram of dry matter.

    Raises:
        ValueError: an argument is not above 0.

    >>> round(weekly_energy_kj(20, 14, 1.7), 2)
    71.13
    """
    _check_above_0("a meal", meal_g, "g")
    _check_above_0("an interval", interval_days, "days")
    _check_above_0("prey energy", kcal_per_g, "kcal a gram")
    return meal_g * kcal_per_g * KJ_PER_KCAL * DAYS_PER_WEEK / interval_days


def _check_above_0(name: str, value: float, unit: str) -> None:
    if not (value > 0 and isfinite(value)):
        raise ValueError(f"{name} must be more than 0 {unit}, got {value!r}")
