"""Which prey and how many."""

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from keeper.husbandry.events import Offer
from keeper.reports.figures import plain
from keeper.reports.words import because_text
from keeper.rules.prey import PreyChoice, choose_prey
from tests.builders import a_grade, a_refusal, all_prey, an_offer, feeding_figures

PREY = all_prey()
JUVENILE = feeding_figures()  # 12 per cent, items up to 15


def meal(on: str, prey: str = "mouse fuzzy", count: int = 1, **changed: Any) -> Offer:
    return an_offer(on, prey=prey, count=count, **changed)


def choose(empty_g: float, *recent: Offer, **told: Any) -> PreyChoice:
    return choose_prey(empty_g, JUVENILE, PREY, recent, **told)


def offered(choice: PreyChoice) -> tuple[str, int] | None:
    return (choice.offer[0].prey, choice.offer[0].count) if choice.offer else None


def whys(choice: PreyChoice) -> list[str]:
    return [reason.why for reason in choice.because]


def test_one_item_near_the_target_is_the_meal() -> None:
    choice = choose(75)

    assert offered(choice) == ("mouse hopper", 1)
    assert choice.percent == pytest.approx(12)
    assert dict(choice.because[0].figures) == {
        "grams": 9.0,
        "percent": pytest.approx(12),
        "empty": 75,
        "target": 9.0,
    }


def test_two_items_are_taken_where_no_single_one_is_near() -> None:
    assert offered(choose(80, meal("2026-09-16"))) == ("mouse fuzzy", 2)


def test_the_fewest_items_win_over_the_closest_sum() -> None:
    grades = (a_grade("small", 1, 3.0, 4), a_grade("large", 7, 7.5, 9))

    choice = choose_prey(75, JUVENILE, grades, ())  # three small ones would be 9.0 exactly

    assert offered(choice) == ("mouse large", 1)


def test_she_keeps_to_the_grade_she_eats() -> None:
    choice = choose(45, meal("2026-09-16", "mouse pinky", 3))

    assert offered(choice) == ("mouse pinky", 3)
    assert "grade kept" in whys(choice)


def test_where_her_grade_is_left_for_one_that_fits_better_the_reason_says_so() -> None:
    grades = (a_grade("small", 4, 5.0, 6), a_grade("large", 14, 15.0, 16))
    ate_large = meal("2026-09-16", "mouse large")

    choice = choose_prey(83, JUVENILE, grades, [ate_large])  # 12 %: 10 g; one large would be 15 g

    assert offered(choice) == ("mouse small", 2)
    assert "grade kept" not in whys(choice)
    assert plain(because_text(choice.because)).endswith(
        "Last eaten: large mouse; now small mouse fits better."
    )


def test_where_her_grade_is_out_of_stock_the_reason_says_so() -> None:
    choice = choose(75, meal("2026-09-16", "mouse hopper"), in_stock={"mouse fuzzy"})

    assert offered(choice) == ("mouse fuzzy", 2)
    assert plain(because_text(choice.because)).endswith(
        "Last eaten: hopper mouse, which is not in stock, so fuzzy mouse."
    )


def test_after_two_small_meals_she_goes_up_one_grade() -> None:
    small = [meal("2026-09-09"), meal("2026-09-16")]

    choice = choose(75, *small)

    assert offered(choice) == ("mouse hopper", 1)
    assert "grade up" in whys(choice)


def test_one_small_meal_is_not_enough_to_go_up() -> None:
    choice = choose(75, meal("2026-09-09", count=2), meal("2026-09-16"))

    assert offered(choice) == ("mouse fuzzy", 2)


def test_she_goes_up_one_grade_only() -> None:
    choice = choose(200, meal("2026-09-09"), meal("2026-09-16"))

    assert offered(choice) == ("mouse hopper", 3)


def test_a_falling_weight_keeps_her_from_going_up() -> None:
    small = [meal("2026-09-09"), meal("2026-09-16")]

    assert offered(choose(75, *small, rising=False)) == ("mouse fuzzy", 2)
    assert offered(choose(75, *small, rising=True)) == ("mouse hopper", 1)


def test_two_refusals_of_a_larger_grade_send_her_back() -> None:
    small = [meal("2026-09-02"), meal("2026-09-09")]
    twice = [a_refusal("2026-09-16", prey="mouse hopper"), a_refusal("2026-09-21")]

    choice = choose(75, *small, *twice)

    assert offered(choice) == ("mouse fuzzy", 2)
    assert "grade refused" in whys(choice)


def test_she_is_not_sent_up_again_by_the_first_meal_after_going_back() -> None:
    small = [meal("2026-09-02"), meal("2026-09-09")]
    twice = [a_refusal("2026-09-14"), a_refusal("2026-09-19")]

    choice = choose(75, *small, *twice, meal("2026-09-24"))

    assert offered(choice) == ("mouse fuzzy", 2)


def test_one_refusal_of_a_larger_grade_is_forgiven() -> None:
    small = [meal("2026-09-02"), meal("2026-09-09")]

    assert offered(choose(75, *small, a_refusal("2026-09-16"))) == ("mouse hopper", 1)


def test_a_grade_down_is_told_with_its_reason() -> None:
    choice = choose(75, meal("2026-09-16", "mouse hopper"), share=0.4, step_down="regurgitated")

    assert offered(choice) == ("mouse pinky", 2)
    assert "grade down" in whys(choice)


def test_below_the_smallest_grade_there_is_no_grade_to_go_down_to() -> None:
    choice = choose(20, meal("2026-09-16", "mouse pinky"), step_down="regurgitated")

    assert offered(choice) == ("mouse pinky", 1)


def test_she_keeps_her_kind_of_prey() -> None:
    assert offered(choose(50, meal("2026-09-16", "rat pinky"))) == ("rat pinky", 1)


def test_another_kind_is_offered_when_told_and_says_what_it_was() -> None:
    choice = choose(50, meal("2026-09-16", "rat pinky"), kind="mouse")

    assert offered(choice) == ("mouse pinky", 3)
    assert "other kind" in whys(choice)


def test_prey_that_is_not_in_the_freezer_is_not_offered() -> None:
    assert offered(choose(75, in_stock={"mouse fuzzy"})) == ("mouse fuzzy", 2)
    assert whys(choose(75, in_stock=set())) == ["no prey in stock"]


def test_no_item_is_larger_than_she_may_have() -> None:
    capped = feeding_figures(item_percent_most=5)

    assert offered(choose_prey(90, capped, PREY, ())) == ("mouse fuzzy", 2)


def test_a_small_hatchling_gets_a_light_one_of_the_smallest_grade() -> None:
    choice = choose(9)

    assert (offered(choice), choice.offer[0].grams) == (("mouse pinky", 1), pytest.approx(1.08))
    assert "pick small" in whys(choice)


def test_no_prey_is_offered_that_is_too_large_even_at_its_lightest() -> None:
    choice = choose(5)

    assert (choice.offer, choice.percent, whys(choice)[0]) == ((), None, "no prey fits")


def test_a_snake_too_large_for_three_of_the_largest_gets_them_and_it_is_said() -> None:
    choice = choose(900, kind="mouse")

    assert offered(choice) == ("mouse adult", 3)
    assert "under target" in whys(choice)


@pytest.mark.parametrize("empty_g", [0.0, -1.0, float("nan"), float("inf")])
def test_an_impossible_weight_is_refused(empty_g: float) -> None:
    with pytest.raises(ValueError, match="empty weight above 0 g"):
        choose(empty_g)


@pytest.mark.parametrize("share", [0.0, 1.01, float("nan")])
def test_an_impossible_share_is_refused(share: float) -> None:
    with pytest.raises(ValueError, match="a share up to 1"):
        choose(75, share=share)


def test_a_written_prey_is_read_whatever_its_capitals_and_spaces() -> None:
    assert "grade kept" in whys(choose(80, meal("2026-09-16", "  Mouse   FUZZY ")))


@pytest.mark.parametrize("written", ["gecko", None])
def test_a_prey_that_names_no_grade_leaves_her_grade_unknown(written: str | None) -> None:
    assert "grade not known" in whys(choose(80, an_offer("2026-09-16", prey=written)))


def test_grades_that_change_are_looked_at_again() -> None:
    bags = [a_grade("small", 4, 4.5, 5)]
    before = offered(choose_prey(75, JUVENILE, bags, ()))
    bags[0] = a_grade("large", 8, 9.0, 10)

    assert before == ("mouse small", 2)
    assert offered(choose_prey(75, JUVENILE, bags, ())) == ("mouse large", 1)


@given(st.floats(2, 2000), st.floats(0.2, 1))
def test_a_meal_is_never_more_than_a_fifth_above_its_target_nor_an_item_above_its_cap(
    empty_g: float, share: float
) -> None:
    choice = choose(empty_g, share=share)
    allowed_g = max(0.12 * 1.2, 0.15) * empty_g * share

    whole = sum(item.grams for item in choice.offer if "pick small" not in whys(choice))
    assert whole <= allowed_g * (1 + 1e-9)
    assert all(item.grams / item.count <= 0.15 * empty_g * (1 + 1e-9) for item in choice.offer)
    assert all(1 <= item.count <= 3 for item in choice.offer)


def test_a_meal_outside_its_target_but_inside_the_stages_band_says_so() -> None:
    grades = (a_grade("hopper", 7.0, 9.0, 12.0),)

    choice = choose_prey(61, JUVENILE, grades, ())  # 9 g is 123 per cent of 7.3 g, 14.8 of her

    assert offered(choice) == ("mouse hopper", 1)
    assert "over target" in whys(choice)


def test_meals_a_little_below_the_target_are_no_reason_to_go_up() -> None:
    nearly = [meal("2026-09-09", count=2), meal("2026-09-16", count=2)]  # 9 g of 9.6 g

    assert offered(choose(80, *nearly)) == ("mouse fuzzy", 2)
