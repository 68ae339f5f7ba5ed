"""The night's plan with its prey."""

from typing import Any

import pytest

from keeper.husbandry.events import HoldKind
from keeper.husbandry.now import AnimalNow
from keeper.rules.feeding import DueState, Plan, plan
from tests.builders import (
    a_hold,
    a_profile,
    a_refusal,
    an_animal,
    an_offer,
    day,
    fed,
    fed_every,
    fed_then_refused,
)

TODAY = day("2026-09-23")
MEALS = tuple(an_offer(f"2026-09-{night:02}") for night in (2, 9, 16))


def tonight(now: AnimalNow, **told: Any) -> Plan:
    profile = told.pop("profile", fed_every(7))
    return plan(now, profile, (), TODAY, **({"recent": MEALS, "empty_g": 112.0} | told))


def whys(told: Plan) -> list[str]:
    return [reason.why for reason in told.because]


def figure_of(told: Plan, why: str, figure: str) -> object:
    return next(r.figures[figure] for r in told.because if r.why == why)


def test_the_plan_says_what_why_and_the_sum() -> None:
    told = tonight(fed("2026-09-15"))

    assert (told.offer[0].prey, told.offer[0].count, told.offer[0].grams) == ("mouse hopper", 1, 9)
    assert told.offer_percent == pytest.approx(100 * 9 / 112)
    assert whys(told) == ["since eaten", "no holds", "meal share", "grade kept"]
    assert figure_of(told, "since eaten", "days") == 8


def test_an_animal_not_due_is_offered_nothing() -> None:
    told = tonight(fed("2026-09-20"))

    assert (told.state, told.offer) == (DueState.NOT_DUE, ())


def test_an_animal_on_hold_is_offered_nothing() -> None:
    told = tonight(fed("2026-09-10"), open_holds=[a_hold(kind=HoldKind.VET)])

    assert (told.state, told.offer) == (DueState.HOLD, ())


def test_without_a_weight_she_is_offered_what_she_last_ate() -> None:
    told = tonight(fed("2026-09-15"), empty_g=None)

    assert (told.offer[0].prey, told.offer[0].count, told.offer_percent) == (
        "mouse hopper",
        1,
        None,
    )
    assert whys(told)[-2:] == ["no weight", "as last eaten"]


def test_without_a_weight_or_a_known_meal_nothing_is_guessed() -> None:
    told = tonight(fed("2026-09-15", eaten_prey=None), empty_g=None)

    assert (told.state, told.offer, whys(told)[-1]) == (DueState.DUE, (), "no weight")


def test_without_a_weight_a_meal_that_must_be_small_is_not_guessed() -> None:
    growing = fed("2026-09-15", regurgitated_on=day("2026-09-01"), meals_since_regurgitation=1)

    assert tonight(growing, empty_g=None).offer == ()


def test_the_first_meal_after_a_regurgitation_is_small_and_a_grade_down() -> None:
    growing = fed("2026-09-01", regurgitated_on=day("2026-09-02"), meals_since_regurgitation=0)

    told = tonight(growing, recent=[an_offer("2026-08-25"), an_offer("2026-09-01")])

    assert (told.offer[0].prey, told.offer[0].count) == ("mouse pinky", 2)
    assert figure_of(told, "part of a meal", "percent") == 40
    assert figure_of(told, "grade down", "after") == "regurgitated"


def test_the_second_meal_after_a_regurgitation_is_not_another_grade_down() -> None:
    growing = fed("2026-09-15", regurgitated_on=day("2026-08-01"), meals_since_regurgitation=1)

    told = tonight(growing, recent=[an_offer("2026-09-15", prey="mouse fuzzy")], empty_g=140)

    assert told.offer[0].prey == "mouse fuzzy"
    assert "grade down" not in whys(told)


def test_a_gravid_female_is_offered_one_grade_down() -> None:
    gravid = [a_hold("2026-09-18", HoldKind.GRAVID)]

    told = tonight(fed("2026-09-15"), open_holds=gravid)

    assert (told.offer[0].prey, told.offer[0].count) == ("mouse fuzzy", 2)
    assert figure_of(told, "grade down", "after") == "gravid"


def test_a_fat_animal_gets_a_smaller_meal() -> None:
    fat = fed("2026-09-01", body_score=4.5, scored_on=day("2026-09-10"))

    told = tonight(fat)

    assert "meal cut, fat" in whys(told)
    assert figure_of(told, "meal share", "target") == pytest.approx(112 * 0.08 * 0.775)


def test_a_new_arrivals_first_meal_is_half() -> None:
    came = an_animal(
        status_on=day("2026-09-10"),
        first_entry_on=day("2026-09-16"),
        offered_on=day("2026-09-16"),
        offered_result=a_refusal().result,
    )

    told = tonight(came, recent=[a_refusal("2026-09-16")])

    assert told.state is DueState.DUE
    assert figure_of(told, "meal share", "target") == pytest.approx(112 * 0.08 * 0.5)


def test_excused_refusals_are_told_from_counted_ones() -> None:
    opaque_then = [a_hold("2026-09-10", HoldKind.OTHER, until="2026-09-14")]
    refused = [a_refusal("2026-09-12"), a_refusal("2026-09-17")]

    told = tonight(
        fed_then_refused("2026-09-05", "2026-09-17", refused_since=2),
        recent=refused,
        open_holds=opaque_then,
    )

    assert figure_of(told, "refused", "counted") == 1


def test_a_hold_that_is_over_excuses_the_refusals_of_its_days_and_holds_nobody() -> None:
    over = [a_hold("2026-09-10", HoldKind.OTHER, until="2026-09-14")]
    refused = [a_refusal("2026-09-12"), a_refusal("2026-09-17")]
    now = fed_then_refused("2026-09-05", "2026-09-17", refused_since=2)

    told = tonight(now, recent=refused, past_holds=over)

    assert figure_of(told, "refused", "counted") == 1
    assert (told.state, told.hold) == (DueState.DUE, None)


def test_an_animal_of_unknown_stage_is_offered_what_she_last_ate() -> None:
    ageless = fed("2026-09-10", hatched_first=None)

    told = tonight(ageless, profile=a_profile())

    assert told.state is DueState.DUE
    assert told.offer[0].prey == "mouse hopper"


def test_a_fat_animal_is_not_taken_up_a_grade() -> None:
    fat = fed("2026-09-05", body_score=4.5, scored_on=day("2026-09-10"))
    small = [an_offer(f"2026-09-0{night}", prey="mouse fuzzy") for night in (1, 5)]

    assert tonight(fat, recent=small, empty_g=125).offer[0].prey == "mouse fuzzy"
    assert tonight(fed("2026-09-05"), recent=small, empty_g=125).offer[0].prey == "mouse hopper"
