"""Slips at the scale: caught by expectation, named, never changed for the keeper."""

import pytest

from keeper.husbandry.animal import Sex
from keeper.rules.growth.expectation import expectation
from keeper.rules.slips import Range, SlipName, expected_range, judge, row_shift
from tests.builders import a_profile, a_weighing, an_animal, day

PROFILE = a_profile()
TODAY = day("2026-09-23")
HERS = Range(low_g=350.0, high_g=474.0)
TUBS = [Range(low_g=g * 0.85, high_g=g * 1.15) for g in (40.0, 90.0, 55.0, 120.0)]


def inside(typed_g: float, range_: Range = HERS, **more: float) -> list[SlipName]:
    return [slip.name for slip in judge(typed_g, range_, **more).slips if slip.inside]


def test_a_weight_within_expectation_is_taken_in_silence() -> None:
    verdict = judge(412.0, HERS)

    assert (verdict.accepted, verdict.guess_g, verdict.slips) == (True, None, ())


@pytest.mark.parametrize(
    ("typed_g", "slip"),
    [
        (0.412, "kilograms for grams"),
        (4120.0, "point slipped"),
        (41.2, "point slipped"),
        (4.12, "point slipped"),
        (142.0, "digits swapped"),
    ],
)
def test_a_slip_asks_for_412_g_and_changes_nothing(typed_g: float, slip: str) -> None:
    verdict = judge(typed_g, HERS)

    assert not verdict.accepted
    assert verdict.guess_g == 412.0
    assert slip in inside(typed_g)


def test_a_forgotten_tare_is_named_where_the_bag_is_known() -> None:
    verdict = judge(497.0, HERS, tare_g=85.0)

    assert "tare forgotten" in inside(497.0, tare_g=85.0)
    assert verdict.guess_g == 412.0


def test_without_the_weight_of_the_bag_no_tare_is_tried() -> None:
    assert "tare forgotten" not in [slip.name for slip in judge(497.0, HERS).slips]


def test_a_weight_that_fits_the_neighbour_is_named_and_not_guessed() -> None:
    verdict = judge(90.0, HERS, neighbours=[("HS-002", TUBS[1]), ("HS-003", TUBS[2])])

    assert [(slip.name, slip.whose) for slip in verdict.slips if slip.inside] == [
        ("neighbour's weight", "HS-002")
    ]
    assert verdict.guess_g is None


def test_typed_a_second_time_the_same_is_taken_and_marked() -> None:
    verdict = judge(300.0, HERS, typed_before_g=300.0)

    assert (verdict.accepted, verdict.typed_twice) == (True, True)


def test_another_weight_typed_second_is_asked_again() -> None:
    assert not judge(300.0, HERS, typed_before_g=301.0).accepted


def test_a_genuine_hatchling_of_3_4_g_passes() -> None:
    hatchling = an_animal(hatched_first=day("2026-09-20"))
    expected = expectation(PROFILE.growth[Sex.FEMALE], 3)

    range_ = expected_range(hatchling, [], [], PROFILE, expected, TODAY)

    assert judge(3.4, range_, 0.1).accepted


def test_an_unknown_age_still_catches_kilograms() -> None:
    stranger = an_animal(hatched_first=None)

    range_ = expected_range(stranger, [], [], PROFILE, None, TODAY)

    assert judge(212.0, range_).accepted
    assert not judge(0.212, range_).accepted


def test_a_species_without_a_curve_has_nothing_to_compare_with() -> None:
    range_ = expected_range(an_animal(), [], [], a_profile(growth={}), None, TODAY)

    assert range_ is None
    assert judge(0.4, None).because[0].why == "nothing to compare with"


def test_fifteen_per_cent_about_the_last_empty_weight_is_silent() -> None:
    adult = an_animal(hatched_first=None)

    range_ = expected_range(adult, [a_weighing("2026-09-01", 200.0)], [], PROFILE, None, TODAY)

    assert range_ is not None
    assert (range_.low_g, range_.high_g) == (pytest.approx(170.0), pytest.approx(230.0))


def test_a_meal_inside_widens_the_upper_end_only() -> None:
    adult = an_animal(hatched_first=None)
    before = [a_weighing("2026-09-01", 200.0)]

    range_ = expected_range(adult, before, [(day("2026-09-21"), 20.0)], PROFILE, None, TODAY)

    assert range_ is not None
    assert (range_.low_g, range_.high_g) == (pytest.approx(170.0), pytest.approx(240.0))


def test_a_hatchling_may_have_grown_since_its_last_weighing() -> None:
    young = an_animal(hatched_first=day("2026-05-01"))

    range_ = expected_range(young, [a_weighing("2026-06-01", 6.0)], [], PROFILE, None, TODAY)

    assert range_ is not None
    assert judge(18.0, range_).accepted
    assert not judge(180.0, range_).accepted


def test_a_female_that_laid_may_be_a_third_lighter() -> None:
    laid = an_animal(hatched_first=None, clutch_on=day("2026-09-10"))

    range_ = expected_range(laid, [a_weighing("2026-09-01", 200.0)], [], PROFILE, None, TODAY)

    assert judge(125.0, range_).accepted


def test_a_scale_of_whole_grams_is_too_coarse_for_a_hatchling() -> None:
    verdict = judge(4.0, Range(low_g=3.0, high_g=5.0), 1.0)

    assert verdict.because[-1].why == "scale too coarse"


@pytest.mark.parametrize("typed_g", [0.0, -3.0, float("nan"), float("inf")])
def test_no_weight_at_all_is_refused(typed_g: float) -> None:
    with pytest.raises(ValueError, match="a weight must be more than 0 g"):
        judge(typed_g, HERS)


def test_a_row_one_tub_ahead_is_seen_after_three() -> None:
    assert row_shift([90.0, 55.0], TUBS) == 0
    assert row_shift([90.0, 55.0, 120.0], TUBS) == 1


def test_a_row_one_tub_behind_is_seen() -> None:
    assert row_shift([41.0, 40.0, 90.0, 55.0], TUBS) == -1


def test_a_row_in_step_is_not_shifted() -> None:
    assert row_shift([40.0, 90.0, 55.0, 120.0], TUBS) == 0


def test_a_shifted_row_is_named_in_the_verdict() -> None:
    assert "row shifted by one" in [slip.name for slip in judge(90.0, HERS, shift=1).slips]
