"""Weights without meals, loss by two weighings, and what follows from them."""

from datetime import date, timedelta

import pytest

from keeper.husbandry.animal import Stage
from keeper.rules.weights import (
    CannotTell,
    EmptyWeight,
    LosingWhileEating,
    Loss,
    baseline,
    empty_weight,
    left_in_gut,
    losing_while_eating,
    loss,
)
from tests.builders import a_profile, by_stage, day, weight_figures

PROFILE = a_profile()  # half of a meal in 2 d, none after 4 d; loss steps 8, 10, 15, 20 %
TODAY = day("2026-09-23")


def fasted(*readings: tuple[int, float]) -> list[tuple[date, float, bool]]:
    """(days ago, grams) as fasted empty weights."""
    return [(TODAY - timedelta(days=ago), grams, False) for ago, grams in readings]


def lost(*readings: tuple[int, float], stage: Stage | None = Stage.ADULT) -> object:
    return loss(fasted(*readings), PROFILE, stage, TODAY)


@pytest.mark.parametrize(
    ("days", "left_g"), [(0, 10.0), (2, 5.0), (3, 10 * 0.5**1.5), (4, 0.0), (-1, 0.0)]
)
def test_a_meal_leaves_the_scale_by_halves_and_wholly(days: int, left_g: float) -> None:
    assert left_in_gut(10.0, days, PROFILE) == pytest.approx(left_g)


def test_meals_still_inside_are_taken_out() -> None:
    meals = [(day("2026-09-21"), 10.0), (day("2026-09-15"), 10.0)]

    assert empty_weight(100.0, TODAY, meals, PROFILE) == EmptyWeight(
        grams=95.0, within_digestion=True
    )


def test_a_meal_of_the_same_day_is_taken_as_eaten_after_the_weighing() -> None:
    assert empty_weight(100.0, TODAY, [(TODAY, 10.0)], PROFILE) == EmptyWeight(
        grams=100.0, within_digestion=False
    )


def test_a_meal_known_to_be_before_the_weighing_counts_whole() -> None:
    empty = empty_weight(100.0, TODAY, [(TODAY, 10.0)], PROFILE, same_day_inside=True)

    assert empty == EmptyWeight(grams=90.0, within_digestion=True)


def test_a_weight_is_fasted_once_the_days_of_digestion_are_over() -> None:
    empty = empty_weight(100.0, TODAY, [(day("2026-09-19"), 10.0)], PROFILE)

    assert empty == EmptyWeight(grams=100.0, within_digestion=False)


def test_a_meal_of_unknown_mass_makes_the_weight_an_estimate() -> None:
    empty = empty_weight(100.0, TODAY, [(day("2026-09-22"), None)], PROFILE)

    assert empty == EmptyWeight(grams=100.0, within_digestion=True)


def test_more_meal_than_animal_cannot_be_told() -> None:
    answer = empty_weight(5.0, TODAY, [(day("2026-09-22"), 20.0)], PROFILE)

    assert isinstance(answer, CannotTell)
    assert answer.missing.why == "more meal than animal"


def test_the_baseline_is_the_median_of_fasted_weights_of_three_months() -> None:
    readings = [*fasted((10, 90.0), (20, 100.0), (30, 104.0), (120, 300.0))]
    readings.append((TODAY, 200.0, True))

    assert baseline(readings, TODAY, PROFILE) == 100.0


def test_laying_resets_the_baseline() -> None:
    readings = fasted((40, 200.0), (30, 200.0), (10, 140.0))

    assert baseline(readings, TODAY, PROFILE, TODAY - timedelta(days=20)) == 140.0


def test_without_a_fasted_weight_there_is_no_baseline() -> None:
    assert baseline([(TODAY, 100.0, True)], TODAY, PROFILE) is None


def test_two_weighings_that_agree_raise_the_smaller_loss() -> None:
    answer = lost((40, 100.0), (30, 100.0), (10, 91.0), (0, 88.0))

    assert isinstance(answer, Loss)
    assert (answer.percent, answer.step, answer.readings) == (pytest.approx(9.0), "watch", 2)
    assert answer.since == TODAY - timedelta(days=10)


def test_one_weighing_below_the_vet_step_is_not_a_loss_yet() -> None:
    assert lost((40, 100.0), (30, 100.0), (0, 86.0)) is None


def test_one_weighing_from_the_vet_step_on_counts_and_asks_for_another() -> None:
    answer = lost((40, 100.0), (30, 100.0), (0, 84.0))

    assert isinstance(answer, Loss)
    assert (answer.step, answer.readings) == ("vet", 1)
    assert [why.why for why in answer.because] == [
        "lost since baseline",
        "one reading, weigh again",
        "ask a reptile vet",
    ]


def test_a_fifth_lost_is_for_the_vet_the_same_day() -> None:
    answer = lost((40, 100.0), (0, 80.0))

    assert isinstance(answer, Loss)
    assert answer.step == "same day"
    assert answer.because[-1].why == "ask a reptile vet the same day"


def test_a_weight_within_digestion_is_no_reading_of_a_loss() -> None:
    readings = [*fasted((40, 100.0), (30, 100.0)), (TODAY, 75.0, True)]

    assert loss(readings, PROFILE, Stage.ADULT, TODAY) is None


def test_a_growing_animal_is_measured_against_its_last_weights_not_its_small_past() -> None:
    growing = ((70, 40.0), (60, 50.0), (50, 60.0), (40, 80.0), (30, 84.0), (20, 86.0))

    answer = lost(*growing, (10, 77.0), (0, 76.0), stage=Stage.JUVENILE)

    assert isinstance(answer, Loss)
    assert answer.baseline_g == 84.0


def test_the_drop_of_laying_is_no_loss() -> None:
    readings = fasted((40, 200.0), (30, 205.0), (10, 140.0), (0, 141.0))

    assert loss(readings, PROFILE, Stage.ADULT, TODAY, TODAY - timedelta(days=20)) is None


@pytest.mark.parametrize(
    ("readings", "why"),
    [
        ([], "no weight"),
        ([(TODAY, 100.0, True)], "no fasted weight"),
        (fasted((200, 100.0), (120, 70.0)), "stale weight"),
        (fasted((0, 100.0)), "too few weights"),
    ],
)
def test_what_the_weights_do_not_carry_cannot_be_told(
    readings: list[tuple[date, float, bool]], why: str
) -> None:
    answer = loss(readings, PROFILE, Stage.ADULT, TODAY)

    assert isinstance(answer, CannotTell)
    assert answer.missing.why == why


def test_an_unknown_stage_takes_the_strictest_steps() -> None:
    answer = lost((12, 100.0), (11, 100.0), (1, 94.5), (0, 94.0), stage=None)

    assert isinstance(answer, Loss)
    assert answer.step == "watch"


def test_a_profile_with_other_steps_moves_the_rule() -> None:
    lenient = a_profile(weights=weight_figures(loss_watch_percent=by_stage(9.5, 9.5, 9.5, 9.5)))
    readings = fasted((40, 100.0), (30, 100.0), (10, 91.0), (0, 91.0))

    assert loss(readings, lenient, Stage.ADULT, TODAY) is None


def test_losing_across_meals_is_worse_and_for_a_vet() -> None:
    readings = fasted((40, 100.0), (30, 100.0), (10, 91.0), (0, 90.0))
    meals = [(TODAY - timedelta(days=ago), 8.0) for ago in (25, 18, 6)]

    answer = losing_while_eating(readings, meals, PROFILE, Stage.ADULT, TODAY)

    assert isinstance(answer, LosingWhileEating)
    assert (answer.meals, answer.because[-1].why) == (3, "ask a reptile vet")


def test_losing_without_meals_is_not_losing_while_eating() -> None:
    readings = fasted((40, 100.0), (30, 100.0), (10, 91.0), (0, 90.0))

    assert losing_while_eating(readings, [], PROFILE, Stage.ADULT, TODAY) is None
