"""Under expectation, stalled, and the day by which a hatchling's reserves are used."""

from datetime import date, timedelta

import pytest

from keeper.husbandry.animal import Sex, Stage
from keeper.reports.figures import plain
from keeper.reports.words import because_text
from keeper.rules.growth.expectation import expectation
from keeper.rules.shortfalls import Reserve, Stall, Under, reserve_date, stall, underweight
from keeper.rules.weights import CannotTell
from tests.builders import a_profile, day

PROFILE = a_profile()  # under at z -2, under 75 % of the clutch; reserves 42 d, act at 10 %
TODAY = day("2026-09-23")
AT_A_YEAR = expectation(PROFILE.growth[Sex.FEMALE], 365)  # median 120 g, s 0.2


def weighed(*readings: tuple[int, float]) -> list[tuple[date, float, bool]]:
    return [(TODAY - timedelta(days=ago), grams, False) for ago, grams in readings]


def fed(*days_ago: int) -> list[tuple[date, float | None]]:
    return [(TODAY - timedelta(days=ago), 6.0) for ago in days_ago]


def test_two_deviations_below_the_median_is_under_expectation() -> None:
    under = underweight(120 * 0.66, 365, AT_A_YEAR, None, None, PROFILE)

    assert isinstance(under, Under)
    assert (under.by, round(under.z or 0, 2)) == ("expectation", -2.08)


def test_above_two_deviations_below_nothing_is_said() -> None:
    assert underweight(120 * 0.68, 365, AT_A_YEAR, None, None, PROFILE) is None


def test_three_quarters_of_the_clutch_is_the_edge() -> None:
    assert underweight(3.75, 20, None, 5.0, None, PROFILE) is None
    under = underweight(3.7, 20, None, 5.0, None, PROFILE)
    assert isinstance(under, Under)
    assert under.by == "clutch"


def test_not_back_at_hatch_weight_after_four_weeks_is_under() -> None:
    under = underweight(4.9, 28, None, 5.0, 5.0, PROFILE)

    assert isinstance(under, Under)
    assert under.by == "hatch weight"


def test_below_hatch_weight_in_the_first_weeks_is_not_yet() -> None:
    assert underweight(4.9, 27, None, 5.0, 5.0, PROFILE) is None


@pytest.mark.parametrize(
    ("grams", "why"), [(None, "no weight"), (100.0, "age or expectation not known")]
)
def test_nothing_to_compare_with_cannot_be_told(grams: float | None, why: str) -> None:
    answer = underweight(grams, None, None, None, None, PROFILE)

    assert isinstance(answer, CannotTell)
    assert answer.missing.why == why


def test_under_two_per_cent_over_four_kept_meals_is_a_stall() -> None:
    answer = stall(
        weighed((30, 50.0), (0, 50.9)), fed(28, 21, 14, 7), PROFILE, Stage.JUVENILE, TODAY
    )

    assert isinstance(answer, Stall)
    assert (answer.meals, answer.days, round(answer.percent, 1)) == (4, 30, 1.8)


def test_what_fell_is_told_as_lost_and_never_as_a_gain_below_nothing() -> None:
    readings = weighed((30, 100.0), (0, 91.3))
    answer = stall(readings, fed(28, 21, 14, 7), PROFILE, Stage.JUVENILE, TODAY)

    assert isinstance(answer, Stall)
    assert answer.percent == pytest.approx(-8.7)
    assert [(r.why, r.figures["percent"]) for r in answer.because] == [("lost while growing", 8.7)]
    assert plain(because_text(answer.because)).startswith("Lost 8.7 % over 4 meals and 30 days")


def test_two_per_cent_gained_is_no_stall() -> None:
    readings = weighed((30, 50.0), (0, 51.0))

    assert stall(readings, fed(28, 21, 14, 7), PROFILE, Stage.JUVENILE, TODAY) is None


def test_three_meals_in_a_month_are_too_few_to_speak_of_a_stall() -> None:
    readings = weighed((30, 50.0), (0, 50.0))

    assert stall(readings, fed(28, 21, 14), PROFILE, Stage.JUVENILE, TODAY) is None


def test_six_weeks_without_gain_are_a_stall_with_any_meals() -> None:
    readings = weighed((42, 50.0), (0, 50.0))

    assert isinstance(stall(readings, [], PROFILE, Stage.JUVENILE, TODAY), Stall)


def test_an_adult_does_not_stall() -> None:
    assert stall(weighed((42, 50.0), (0, 50.0)), [], PROFILE, Stage.ADULT, TODAY) is None


def test_the_slope_of_her_weights_gives_the_deadline() -> None:
    readings = weighed((20, 5.0), (10, 4.9), (0, 4.8))

    reserve = reserve_date(readings, None, PROFILE, TODAY)

    assert isinstance(reserve, Reserve)
    assert reserve.basis == "slope"
    assert reserve.on == TODAY - timedelta(days=20) + timedelta(days=51)  # ln 0.9 / -0.002041 a day


def test_a_hatchling_that_gains_has_no_deadline_by_slope() -> None:
    reserve = reserve_date(weighed((10, 4.8), (0, 5.0)), day("2026-09-01"), PROFILE, TODAY)

    assert isinstance(reserve, Reserve)
    assert reserve.basis == "age"


def test_without_a_slope_the_reserves_count_from_hatching() -> None:
    reserve = reserve_date(weighed((3, 5.0)), day("2026-09-01"), PROFILE, TODAY)

    assert isinstance(reserve, Reserve)
    assert (reserve.basis, reserve.on) == ("age", day("2026-10-13"))


def test_the_earlier_of_slope_and_age_is_the_deadline() -> None:
    readings = weighed((10, 5.0), (0, 4.7))

    reserve = reserve_date(readings, day("2026-09-10"), PROFILE, TODAY)

    assert isinstance(reserve, Reserve)
    assert reserve.basis == "slope"


def test_no_day_of_hatching_and_no_weights_cannot_be_told() -> None:
    assert isinstance(reserve_date([], None, PROFILE, TODAY), CannotTell)
