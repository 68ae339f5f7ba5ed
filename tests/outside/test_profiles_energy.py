"""Planned rations against published metabolism and published energies of prey.

Standard metabolism: Andrews & Pough 1985, Physiol. Zool. 58:214-231, equation 2
(mL O2 an hour = 0.013 g^0.80 10^(0.038 C), 20.1 J a mL). The values in TABLE were worked
out from that equation apart from this program.
Prey: Small Animal Clinical Nutrition, 5th ed. 2010, Table 71-5, kcal per gram as fed.
"""

from itertools import pairwise

import pytest

from keeper.husbandry.animal import Sex, Stage
from keeper.husbandry.profile import PreyGrade, SpeciesProfile
from keeper.rules.growth.expectation import expectation
from keeper.store.species_files import load_profiles
from tests.energy import standard_metabolic_rate_kj_per_day, weekly_energy_kj

PROFILES = load_profiles()
TABLE = [  # g, C, kJ a day
    (10, 28, 0.459),
    (50, 28, 1.662),
    (100, 25, 2.225),
    (100, 28, 2.893),
    (100, 30, 3.446),
    (250, 28, 6.021),
    (1000, 30, 21.745),
]
MOUSE_PUP_1_5_G, MOUSE_PUP_4_G, MOUSE_27_G, RAT_330_G = 0.8, 1.7, 1.7, 1.6
END_OF_CURVES_DAYS = 2190.0


@pytest.mark.parametrize(("mass_g", "temperature_c", "kj_per_day"), TABLE)
def test_standard_metabolism_is_that_of_andrews_and_pough(
    mass_g: float, temperature_c: float, kj_per_day: float
) -> None:
    found = standard_metabolic_rate_kj_per_day(mass_g, temperature_c)

    assert found == pytest.approx(kj_per_day, abs=0.0006)


@pytest.mark.parametrize("sex", [Sex.FEMALE, Sex.MALE, Sex.UNKNOWN])
@pytest.mark.parametrize("stage", Stage)
@pytest.mark.parametrize("slug", PROFILES)
def test_planned_energy_lies_between_one_and_ten_times_standard_metabolism(
    slug: str, stage: Stage, sex: Sex
) -> None:
    low, high = ration_multiples(PROFILES[slug], stage, sex)

    assert 1 < low <= high < 10


@pytest.mark.parametrize("slug", PROFILES)
def test_prey_energies_are_the_handbooks(slug: str) -> None:
    shipped = [(grade.kcal_per_g.value, handbook_kcal(grade)) for grade in PROFILES[slug].prey]

    assert [found for found, _ in shipped] == [table for _, table in shipped]


def ration_multiples(profile: SpeciesProfile, stage: Stage, sex: Sex) -> tuple[float, float]:
    """Least and most times standard metabolism that the stage's plan brings, by prey."""
    weight_g = typical_weight_g(profile, stage, sex)
    figures = profile.feeding[stage][sex]
    meal_g = weight_g * figures.meal_percent.value / 100
    burnt_kj = 7 * standard_metabolic_rate_kj_per_day(weight_g, profile.heat.keep_c.value)
    brought = [
        weekly_energy_kj(meal_g, figures.interval_days.value, handbook_kcal(grade)) / burnt_kj
        for grade in fitting(profile, meal_g)
    ]
    return min(brought), max(brought)


def typical_weight_g(profile: SpeciesProfile, stage: Stage, sex: Sex) -> float:
    """The curve's median half-way through the stage; for an unknown sex the heavier's."""
    ends = [0.0, *(limit.until_age_days.value for limit in profile.stages.values())]
    spans = dict(zip(Stage, pairwise([*ends, END_OF_CURVES_DAYS]), strict=True))
    middle_days = sum(spans[stage]) / 2
    sexes = (Sex.FEMALE, Sex.MALE) if sex is Sex.UNKNOWN else (sex,)
    return max(expectation(profile.growth[known], middle_days).p50_g for known in sexes)


def fitting(profile: SpeciesProfile, meal_g: float) -> list[PreyGrade]:
    """Grades that make the meal within a fifth in the fewest items, at most three."""
    by_count = (
        [g for g in profile.prey if 0.8 <= count * g.mean_g.value / meal_g <= 1.2]
        for count in (1, 2, 3)
    )
    return next(grades for grades in by_count if grades)


def handbook_kcal(grade: PreyGrade) -> float:
    """The table's nearest animal; a newborn rat, which it lacks, is read as a newborn mouse."""
    if grade.kind == "rat":
        return MOUSE_PUP_1_5_G if grade.name == "pinky" else RAT_330_G
    if grade.mean_g.value < 3:
        return MOUSE_PUP_1_5_G
    return MOUSE_PUP_4_G if grade.mean_g.value < 7 else MOUSE_27_G
