"""Which refusals count, what a run of them asks for, and their chance."""

import pytest

from keeper.husbandry.animal import Stage
from keeper.husbandry.events import Evidence, HoldKind, Offer, Result, ShedStage
from keeper.rules.refusals import (
    CountedRefusals,
    Step,
    binomial_tail,
    counted_refusals,
    offers_of_new_prey,
    poisson_binomial_tail,
    refusal_step,
)
from tests.builders import (
    a_hold,
    a_profile,
    a_refusal,
    a_shed_sign,
    an_offer,
    figures,
    refusal_figures,
)

PROFILE = a_profile()


def count(*offers: Offer, signs: object = (), holds: object = ()) -> CountedRefusals:
    return counted_refusals(offers, signs, holds, PROFILE)  # type: ignore[arg-type]


def step(stage: Stage, counted: int, days: int | None = 20) -> Step | None:
    told = refusal_step(stage, CountedRefusals(counted=counted), days, PROFILE)
    return told.step if told else None


def test_refusals_count_since_the_last_meal_only() -> None:
    told = count(
        a_refusal("2026-09-01"), an_offer("2026-09-05"), a_refusal("2026-09-12"),
        a_refusal("2026-09-19"),
    )  # fmt: skip

    assert told == CountedRefusals(counted=2)


def test_part_of_a_meal_ends_the_run() -> None:
    assert count(a_refusal("2026-09-01"), an_offer("2026-09-05", Result.PART)).counted == 0


def test_a_meal_only_assumed_does_not_end_the_run() -> None:
    assumed = an_offer("2026-09-05", evidence=Evidence.ASSUMED)

    assert count(a_refusal("2026-09-01"), assumed, a_refusal("2026-09-12")).counted == 2


def test_two_tries_on_one_night_are_one_refusal() -> None:
    assert count(a_refusal("2026-09-12"), a_refusal("2026-09-12", prey="mouse pinky")).counted == 1


def test_an_item_refused_on_the_night_she_ate_is_no_refusal() -> None:
    assert count(an_offer("2026-09-12"), a_refusal("2026-09-12")).counted == 0


def test_an_item_left_in_and_a_night_not_offered_are_no_refusals() -> None:
    told = count(an_offer("2026-09-05", Result.LEFT_IN), an_offer("2026-09-12", Result.NOT_OFFERED))

    assert told == CountedRefusals()


def test_a_refusal_while_opaque_is_excused() -> None:
    signs = [a_shed_sign("2026-09-10"), a_shed_sign("2026-09-18", ShedStage.SHED)]

    told = count(a_refusal("2026-09-12"), a_refusal("2026-09-19"), signs=signs)

    assert told == CountedRefusals(counted=1, excused=1)


def test_a_refusal_in_season_is_shown_and_not_counted() -> None:
    season = [a_hold("2026-09-01", HoldKind.SEASON)]

    assert count(a_refusal("2026-09-12"), holds=season) == CountedRefusals(half=1)


def test_a_new_arrivals_refusals_count_from_the_third() -> None:
    arrival = [a_hold("2026-09-01", HoldKind.NEW_ARRIVAL, until="2026-12-01")]
    nights = [a_refusal(f"2026-09-{night}") for night in (10, 15, 20, 25)]

    assert count(*nights, holds=arrival) == CountedRefusals(counted=2, excused=2)


# --- steps ------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("stage", "counted", "wanted"),
    [
        (Stage.HATCHLING, 1, None),
        (Stage.HATCHLING, 2, Step.HUSBANDRY),
        (Stage.HATCHLING, 3, Step.PRESENTATION),
        (Stage.HATCHLING, 4, Step.LADDER),
        (Stage.JUVENILE, 3, Step.PRESENTATION),
        (Stage.JUVENILE, 4, Step.VET),
        (Stage.ADULT, 2, None),
        (Stage.ADULT, 3, Step.HUSBANDRY),
        (Stage.ADULT, 9, Step.HUSBANDRY),
    ],
)
def test_the_step_follows_from_stage_and_count(
    stage: Stage, counted: int, wanted: Step | None
) -> None:
    assert step(stage, counted) is wanted


def test_an_adult_is_reviewed_by_days_and_not_by_count() -> None:
    assert step(Stage.ADULT, 1, 46) is Step.REVIEW
    assert step(Stage.ADULT, 1, 45) is None


def test_a_python_adult_is_reviewed_twice_as_late_because_its_profile_says_so() -> None:
    python = a_profile(refusals=refusal_figures(review_days=figures({Stage.ADULT: 90})))

    assert refusal_step(Stage.ADULT, CountedRefusals(counted=1), 80, python) is None
    told = refusal_step(Stage.ADULT, CountedRefusals(counted=1), 91, python)
    assert told is not None and told.step is Step.REVIEW


def test_a_long_gap_without_a_counted_refusal_asks_for_nothing() -> None:
    assert step(Stage.ADULT, 0, 200) is None


def test_excused_refusals_ask_for_nothing() -> None:
    told = CountedRefusals(excused=9, half=9)

    assert refusal_step(Stage.HATCHLING, told, 20, PROFILE) is None


def test_the_step_says_how_many_and_at_which_number_it_comes() -> None:
    told = refusal_step(Stage.JUVENILE, CountedRefusals(counted=2, excused=1), 20, PROFILE)

    assert told is not None
    assert dict(told.because[0].figures) == {
        "counted": 2,
        "excused": 1,
        "half": 0,
        "switched": None,
        "step_at": 2,
    }


# --- chance -----------------------------------------------------------------------------------


def test_none_or_more_is_certain_and_more_than_all_impossible() -> None:
    assert binomial_tail(0, 10, 0.1) == 1.0
    assert binomial_tail(11, 10, 0.1) == 0.0
    assert poisson_binomial_tail(0, [0.1]) == 1.0
    assert poisson_binomial_tail(2, [0.9]) == 0.0


def test_a_chance_of_none_or_of_certainty_is_exact() -> None:
    assert binomial_tail(1, 10, 0.0) == 0.0
    assert binomial_tail(10, 10, 1.0) == 1.0


@pytest.mark.parametrize("p", [-0.1, 1.1, float("nan")])
def test_a_chance_outside_nought_to_one_is_refused(p: float) -> None:
    with pytest.raises(ValueError, match="got"):
        binomial_tail(1, 10, p)
    with pytest.raises(ValueError, match="got"):
        poisson_binomial_tail(1, [p])


def test_equal_chances_give_the_binomial() -> None:
    assert poisson_binomial_tail(9, [0.08] * 40) == pytest.approx(binomial_tail(9, 40, 0.08))


def test_far_below_the_mean_so_many_or_more_is_certain() -> None:
    assert binomial_tail(50, 2000, 0.5) == 1.0


# --- refusals straight after a change of prey ------------------------------------------------

RAT = "rat fuzzy"


def test_the_first_refusals_after_a_change_of_prey_are_of_the_change_and_not_of_appetite() -> None:
    told = count(
        an_offer("2026-09-05"), a_refusal("2026-09-12", prey=RAT), a_refusal("2026-09-19", prey=RAT)
    )

    assert told == CountedRefusals(switched=2, before="mouse", now="rat")
    assert refusal_step(Stage.HATCHLING, told, 20, PROFILE) is None


def test_from_the_third_of_the_new_kind_on_a_refusal_counts() -> None:
    rats = [a_refusal(f"2026-09-{day}", prey=RAT) for day in (10, 14, 18, 22)]

    told = count(an_offer("2026-09-05"), *rats)

    assert (told.switched, told.counted) == (2, 2)


def test_two_tries_of_the_new_kind_on_one_night_are_one_of_the_two() -> None:
    rats = [a_refusal(f"2026-09-{day}", prey=RAT) for day in (10, 10, 14, 18)]

    told = count(an_offer("2026-09-05"), *rats)

    assert (told.switched, told.counted) == (2, 1)


def test_a_refusal_of_what_she_eats_counts_beside_those_of_the_change() -> None:
    told = count(an_offer("2026-09-05"), a_refusal("2026-09-12", prey=RAT), a_refusal("2026-09-19"))

    assert (told.switched, told.counted) == (1, 1)


@pytest.mark.parametrize(
    "meals",
    [
        [],
        [an_offer("2026-09-05", prey=RAT)],
        [an_offer("2026-09-05", prey="frog")],
        [an_offer("2026-09-01", prey=RAT), an_offer("2026-09-05", evidence=Evidence.ASSUMED)],
    ],
)
def test_where_no_change_of_prey_is_known_every_refusal_counts(meals: list[Offer]) -> None:
    told = count(*meals, a_refusal("2026-09-12", prey=RAT), a_refusal("2026-09-19", prey=RAT))

    assert (told.switched, told.counted) == (0, 2)


def test_eaten_or_refused_the_first_nights_of_a_new_kind_are_of_the_change_and_no_third() -> None:
    nights = [
        an_offer("2026-09-02"),
        a_refusal("2026-09-09", prey=RAT),
        a_refusal("2026-09-16", prey=RAT),
    ]

    def of_change(*more: Offer) -> list[int]:
        return [o.happened.day.day for o, _ in offers_of_new_prey([*nights, *more], PROFILE)]

    assert of_change(a_refusal("2026-09-23", prey=RAT)) == [9, 16]
    assert of_change(an_offer("2026-09-23", prey=RAT)) == [9, 16]
    assert of_change(an_offer("2026-09-16", prey=RAT)) == [9, 16, 16]
    assert [
        (o.result, kinds)
        for o, kinds in offers_of_new_prey([nights[0], an_offer("2026-09-09", prey=RAT)], PROFILE)
    ] == [(Result.TAKEN, ("mouse", "rat"))]


def test_once_the_new_kind_was_eaten_the_change_is_over() -> None:
    told = count(
        an_offer("2026-09-01"), a_refusal("2026-09-05", prey=RAT),
        an_offer("2026-09-09", prey=RAT), a_refusal("2026-09-16", prey=RAT),
    )  # fmt: skip

    assert told == CountedRefusals(counted=1)


def test_a_step_says_how_many_were_of_the_change() -> None:
    told = refusal_step(Stage.HATCHLING, CountedRefusals(counted=3, switched=2), 20, PROFILE)

    assert told is not None
    assert dict(told.because[0].figures)["switched"] == 2
