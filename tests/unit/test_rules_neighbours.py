"""Neighbours of a find of mites, and what a shared tub means for the sires."""

from datetime import date, timedelta

import pytest

from keeper.husbandry.animal import Sex
from keeper.rules.neighbours import (
    NEAR_DAYS,
    Grown,
    MitesFound,
    found_where,
    near_a_find,
    near_of,
    tub_exposure,
)
from keeper.rules.sires import candidate_sires
from keeper.rules.stays import Shared, Side, Stay
from tests.builders import clutch_figures

TODAY = date(2026, 11, 25)
FOUND = MitesFound(animal=9, on=TODAY - timedelta(days=40), place="B2·4")
FIGURES = clutch_figures(mature_days=91, sire_months_most=24, sire_days_least=30)


def day(ago: int) -> date:
    return TODAY - timedelta(days=ago)


def stay(place: str, since: int, until: int | None = None, animal: int = 1) -> Stay:
    end = None if until is None else day(until)
    return Stay(animal=animal, place=place, since=day(since), until=end)


@pytest.mark.parametrize(
    ("place", "side"),
    [
        ("B2·3", Side.LEFT),
        ("B2·5", Side.RIGHT),
        ("B1·4", Side.ABOVE),
        ("B3·4", Side.BELOW),
        ("B2·4", None),
    ],
)
def test_the_four_tubs_that_touch_are_near_and_so_is_the_same(
    place: str, side: Side | None
) -> None:
    near = near_of(stay(place, 200), FOUND, TODAY)

    assert near is not None and near.side is side


@pytest.mark.parametrize("place", ["B2·6", "B1·3", "B3·5", "C2·4", "the shelf"])
def test_a_tub_that_does_not_touch_is_not_near(place: str) -> None:
    assert near_of(stay(place, 200), FOUND, TODAY) is None


def test_one_that_left_before_the_find_is_near_within_the_days_and_no_longer() -> None:
    """Found 40 days ago; thirty days are the figure of a quarantine free of mites."""
    assert NEAR_DAYS.value == 30

    (left,) = near_a_find(FOUND, [stay("B2·3", 200, 70)], TODAY)

    assert (left.first, left.last) == (day(70), day(70))
    assert near_a_find(FOUND, [stay("B2·3", 200, 71)], TODAY) == ()


def test_one_that_came_after_the_find_is_near_within_the_days_and_no_longer() -> None:
    (came,) = near_a_find(FOUND, [stay("B2·3", 10)], TODAY)

    assert (came.first, came.last) == (day(10), day(10))
    assert near_a_find(FOUND, [stay("B2·3", 9)], TODAY) == ()


def test_the_animal_of_the_find_is_not_its_own_neighbour() -> None:
    assert near_a_find(FOUND, [stay("B2·4", 200, animal=9)], TODAY) == ()


def test_a_find_lies_in_the_tub_in_which_its_animal_stood_on_that_day() -> None:
    stays = [stay("A1·1", 90, 40, animal=9), stay("B2·4", 40, animal=9)]

    assert found_where(9, day(40), stays) == FOUND
    assert found_where(9, day(41), stays) == MitesFound(animal=9, on=day(41), place="A1·1")
    assert found_where(9, day(91), stays) is None


# --- sires -----------------------------------------------------------------------------------


def grown(animal: int, sex: Sex, age: int | None = 900, species: str = "house_snake") -> Grown:
    hatched = None if age is None else day(age)
    return Grown(animal=animal, sex=sex, species=species, hatched_on=hatched, figures=FIGURES)


HER, HIM = grown(1, Sex.FEMALE), grown(2, Sex.MALE)
SHARED = Shared(other=2, first=day(60), last=day(51))


def test_ten_days_together_are_ten_days_of_exposure_for_as_long_as_she_may_keep_sperm() -> None:
    met = tub_exposure(HER, HIM, SHARED)

    assert met is not None
    assert (met.female, met.male, met.days) == (1, 2, 10)
    assert (met.until - day(51)).days == round(24 * 30.44)
    assert tub_exposure(HIM, HER, SHARED) == met


def test_days_count_from_the_one_on_which_both_were_old_enough() -> None:
    """Ninety-one days old 55 days ago: hatched 146 days ago."""
    met = tub_exposure(HER, grown(2, Sex.MALE, 146), SHARED)

    assert met is not None and (met.first, met.days) == (day(55), 5)


def test_young_that_grew_up_together_were_not_exposed() -> None:
    met = tub_exposure(grown(1, Sex.FEMALE, 120), grown(2, Sex.MALE, 120), SHARED)

    assert met is not None and (met.days, met.exposure) == (0, None)


def test_an_unknown_age_counts_as_old_enough() -> None:
    met = tub_exposure(grown(1, Sex.FEMALE, None), grown(2, Sex.MALE, None), SHARED)

    assert met is not None and met.days == 10


@pytest.mark.parametrize(
    "other",
    [
        grown(2, Sex.FEMALE),
        grown(2, Sex.UNKNOWN),
        grown(2, Sex.MALE, species="corn_snake"),
    ],
)
def test_only_a_female_and_a_male_of_one_species_are_exposed(other: Grown) -> None:
    assert tub_exposure(HER, other, SHARED) is None


def test_what_is_told_of_a_tub_is_what_candidate_sires_are_reckoned_from() -> None:
    met = tub_exposure(HER, HIM, SHARED)
    assert met is not None and met.exposure is not None

    (sire,) = candidate_sires([met.exposure], TODAY, FIGURES)

    assert (sire.male, sire.odds) == (2, 1.0)
    assert sire.because[0].figures["first"] == day(60)
