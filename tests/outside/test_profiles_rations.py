"""Planned rations and meals against the published ones.

House snakes, growing: 20 % (low) and 50 % (high) of body mass a week, Byars, Ford,
    Sparkman & Bronikowski 2010, Herpetologica 66:456-463.
House snakes, adult females: meals of 25 % of body mass two to three times a month,
    Hopkins et al. 2004, Ecotoxicol. Environ. Saf. 58:285-293.
Corn snakes, hatchling: prey of 20 to 40 % of body mass, Penning 2012, MSc thesis, Univ.
    Central Missouri; the whole ration weekly, McBride, Krogman & Watson, SICB P1-148.
Ball pythons: eaten in 237 days at 28.5 C, Laarhoven, personal communication in the
    Add-my-Pet collection: female 516 to 1036 g on 1590 g, male 700 to 1109 g on 1753 g,
    female 1007 to 1530 g on 1991 g, male of 3.7 years 1342 to 1676 g on 1647 g.

Where a profile departs from them on purpose, a test says so and how far, so that a change
in either direction is seen.
"""

import pytest

from keeper.husbandry.animal import Sex, Stage
from keeper.husbandry.profile import FeedingFigures
from keeper.store.species_files import load_profiles

PROFILES = load_profiles()
BYARS_LOW, BYARS_HIGH = 20.0, 50.0  # per cent of body mass a week
HOPKINS_MEAL = 25.0  # per cent of body mass
HOPKINS_DAYS = (365.25 / 12 / 3, 365.25 / 12 / 2)  # three or two a month
PENNING = (20.0, 40.0)  # per cent of body mass
LAARHOVEN = [  # first g, last g, eaten g, days
    (516, 1036, 1590, 237),
    (700, 1109, 1753, 237),
    (1007, 1530, 1991, 237),
    (1342, 1676, 1647, 237),
]


def figures(slug: str, stage: Stage, sex: Sex) -> FeedingFigures:
    return PROFILES[slug].feeding[stage][sex]


def percent_a_week(slug: str, stage: Stage, sex: Sex) -> float:
    plan = figures(slug, stage, sex)
    return plan.meal_percent.value * 7 / plan.interval_days.value


def eaten_percent_a_week(record: tuple[int, int, int, int]) -> float:
    first_g, last_g, eaten_g, days = record
    return eaten_g / ((first_g + last_g) / 2) / days * 7 * 100


@pytest.mark.parametrize("sex", Sex)
@pytest.mark.parametrize("stage", [Stage.HATCHLING, Stage.JUVENILE])
def test_a_growing_house_snake_is_fed_inside_the_published_rations(stage: Stage, sex: Sex) -> None:
    assert BYARS_LOW <= percent_a_week("house_snake", stage, sex) <= BYARS_HIGH


@pytest.mark.parametrize("sex", [Sex.FEMALE, Sex.MALE])
def test_a_subadult_house_snake_is_fed_less_than_the_published_growing_ration(sex: Sex) -> None:
    # On purpose: the published rations brought first matings at 5 to 9 months.
    assert 0.4 * BYARS_LOW <= percent_a_week("house_snake", Stage.SUBADULT, sex) < BYARS_LOW


def test_an_adult_female_house_snake_is_fed_about_as_often_as_published() -> None:
    interval_days = figures("house_snake", Stage.ADULT, Sex.FEMALE).interval_days.value

    assert round(HOPKINS_DAYS[0]) <= interval_days <= HOPKINS_DAYS[1]


def test_an_adult_female_house_snakes_meal_is_less_than_half_the_published_one() -> None:
    # On purpose: the published meals kept females breeding; a resting one grows fat on them.
    plan = figures("house_snake", Stage.ADULT, Sex.FEMALE)

    assert 0.2 * HOPKINS_MEAL <= plan.meal_percent.value <= 0.5 * HOPKINS_MEAL
    assert plan.meal_percent_high.value < HOPKINS_MEAL


def test_a_hatchling_corn_snakes_meal_lies_inside_the_published_one() -> None:
    plan = figures("corn_snake", Stage.HATCHLING, Sex.FEMALE)

    assert PENNING[0] <= plan.meal_percent.value <= PENNING[1]
    assert plan.item_percent_most.value <= PENNING[1]


@pytest.mark.parametrize("stage", [Stage.HATCHLING, Stage.JUVENILE])
def test_a_growing_corn_snake_is_fed_weekly_as_published(stage: Stage) -> None:
    assert figures("corn_snake", stage, Sex.FEMALE).interval_days.value == 7


@pytest.mark.parametrize("sex", [Sex.FEMALE, Sex.MALE])
def test_a_subadult_ball_python_is_fed_what_four_of_them_ate(sex: Sex) -> None:
    eaten = [eaten_percent_a_week(record) for record in LAARHOVEN]

    assert min(eaten) <= percent_a_week("ball_python", Stage.SUBADULT, sex) <= max(eaten)


@pytest.mark.parametrize("sex", [Sex.FEMALE, Sex.MALE])
def test_an_adult_ball_python_is_fed_within_a_fifth_of_what_an_adult_ate(sex: Sex) -> None:
    oldest = eaten_percent_a_week(LAARHOVEN[-1])

    assert 0.8 * oldest <= percent_a_week("ball_python", Stage.ADULT, sex) <= 1.2 * oldest
