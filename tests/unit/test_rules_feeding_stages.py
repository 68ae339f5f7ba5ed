"""Stage of life by age, by weight where the age is not known, or not at all."""

import pytest

from keeper.husbandry.animal import Sex, Stage
from keeper.rules.stages import figures_of, stage_of
from tests.builders import a_profile, an_animal, day, feeding_figures

TODAY = day("2026-09-23")


@pytest.mark.parametrize(
    ("hatched", "stage"),
    [
        ("2026-09-23", Stage.HATCHLING),
        ("2026-06-26", Stage.HATCHLING),
        ("2026-06-25", Stage.JUVENILE),
        ("2025-12-27", Stage.SUBADULT),
        ("2025-04-01", Stage.ADULT),
    ],
)
def test_a_stage_ends_on_the_day_of_its_age(hatched: str, stage: Stage) -> None:
    assert stage_of(an_animal(hatched_first=day(hatched)), a_profile(), TODAY) is stage


def test_age_is_believed_before_weight() -> None:
    heavy = an_animal(hatched_first=day("2026-08-23"), weight_g=300.0, weighed_on=TODAY)

    assert stage_of(heavy, a_profile(), TODAY) is Stage.HATCHLING


def test_without_an_age_the_weight_tells() -> None:
    ageless = an_animal(hatched_first=None, weight_g=40.0, weighed_on=day("2026-09-01"))

    assert stage_of(ageless, a_profile(), TODAY) is Stage.JUVENILE


def test_an_old_weight_of_a_growing_animal_cannot_tell() -> None:
    ageless = an_animal(hatched_first=None, weight_g=40.0, weighed_on=day("2026-06-01"))

    assert stage_of(ageless, a_profile(), TODAY) is None


def test_an_adult_weight_stays_one_however_old() -> None:
    ageless = an_animal(hatched_first=None, weight_g=140.0, weighed_on=day("2024-06-01"))

    assert stage_of(ageless, a_profile(), TODAY) is Stage.ADULT


def test_with_neither_age_nor_weight_nobody_can_tell() -> None:
    assert stage_of(an_animal(hatched_first=None), a_profile(), TODAY) is None


def test_before_the_day_of_hatching_nobody_can_tell() -> None:
    assert stage_of(an_animal(hatched_first=day("2026-10-01")), a_profile(), TODAY) is None


def test_an_unknown_sex_without_figures_of_its_own_eats_as_a_female() -> None:
    female, male = feeding_figures(interval_days=10), feeding_figures(interval_days=14)
    profile = a_profile(feeding={Stage.ADULT: {Sex.FEMALE: female, Sex.MALE: male}})

    assert figures_of(profile, Stage.ADULT, Sex.UNKNOWN) is female
    assert figures_of(profile, Stage.ADULT, Sex.MALE) is male
    assert figures_of(profile, Stage.JUVENILE, Sex.MALE) is None
