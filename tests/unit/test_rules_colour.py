"""Which score of an animal counts, generations, and what the young of a pair may score."""

from datetime import date, timedelta

import pytest

from keeper.husbandry.events import ShedStage
from keeper.rules.colour import (
    SIGN_HOLDS_DAYS,
    THIRD_SHED,
    YEAR,
    Score,
    above,
    bred_worth,
    clouded,
    counted_score,
    expected_young,
    generations,
    none_above,
    usual_age,
    young_for_one,
)

HATCHED = date(2025, 3, 1)


def a_score(score, age_days, *, clouded=False, written=None):
    on = HATCHED + timedelta(days=age_days or 0)
    return Score(score=score, on=on, written_on=written or on, age_days=age_days, clouded=clouded)


def test_the_score_nearest_to_the_age_counts():
    scores = [a_score(4, 45), a_score(6, 68), a_score(8, 110)]

    assert counted_score(scores, THIRD_SHED).score == 6


def test_each_age_takes_its_own_score():
    scores = [a_score(6, 68), a_score(8, 370)]

    assert counted_score(scores, YEAR).score == 8


def test_a_score_taken_while_the_skin_was_dull_counts_for_nothing():
    scores = [a_score(3, 65, clouded=True), a_score(6, 80)]

    assert counted_score(scores, THIRD_SHED).score == 6
    assert counted_score(scores[:1], THIRD_SHED) is None


def test_a_grown_parent_scored_while_dull_has_no_score():
    assert counted_score([a_score(6, 900, clouded=True)], THIRD_SHED) is None


def test_a_score_that_came_too_early_does_not_count():
    assert counted_score([a_score(6, 20)], THIRD_SHED) is None


def test_a_grown_animal_without_one_of_the_age_counts_by_a_later_and_it_is_told():
    found = counted_score([a_score(6, 900), a_score(8, 700)], THIRD_SHED)

    assert (found.score, found.like_age) == (8, False)


def test_an_animal_of_unknown_hatching_counts_as_of_another_age():
    assert not counted_score([a_score(6, None)], YEAR).like_age


def test_a_picture_scored_again_does_not_replace_the_first_score():
    again = a_score(8, 66, written=HATCHED + timedelta(days=300))

    assert counted_score([a_score(6, 66), again], THIRD_SHED).score == 6


def test_all_are_held_to_the_age_at_which_most_were_scored():
    young, grown = [a_score(5, 66)], [a_score(5, 366)]

    assert usual_age([young, young, grown]) is THIRD_SHED
    assert usual_age([young, grown, grown]) is YEAR


@pytest.mark.parametrize(
    ("stage", "days", "expected"),
    [
        (ShedStage.DULL, 2, True),
        (ShedStage.OPAQUE, 5, True),
        (ShedStage.CLEARED, 1, False),
        (ShedStage.SHED, 0, False),
        (ShedStage.OPAQUE, int(SIGN_HOLDS_DAYS.value) + 1, False),
    ],
)
def test_a_skin_is_clouded_from_dull_until_it_clears(stage, days, expected):
    assert clouded([(HATCHED, stage)], HATCHED + timedelta(days=days)) is expected


def test_a_sign_of_a_later_day_says_nothing_of_an_earlier():
    assert not clouded([(HATCHED, ShedStage.OPAQUE)], HATCHED - timedelta(days=1))


def test_young_are_one_generation_on_from_the_later_of_their_parents():
    found = generations({1: (), 2: (None, None), 3: (1, 2), 4: (3, 1), 5: (4, 99)})

    assert found == {1: 0, 2: 0, 3: 1, 4: 2, 5: 3}


def test_an_animal_that_is_its_own_ancestor_ends_no_reckoning():
    found = generations({1: (2, None), 2: (1, None), 3: (2, None)})

    assert set(found) == {1, 2, 3}


def test_a_line_of_thousands_of_generations_is_reckoned():
    line = {n: (n - 1, None) for n in range(5_000, 0, -1)}

    assert generations({0: (), **line})[5_000] == 5_000


def test_unselected_parents_are_expected_to_give_the_lines_mean():
    assert expected_young(5, 1.5, 0.4, 5).mean == 5


def test_a_band_does_not_leave_the_scale():
    young = expected_young(9, 2, 0.5, 10)

    assert (young.high, young.low >= 1) == (10.0, True)


def test_where_nothing_is_inherited_half_of_the_lines_young_are_above_its_mean():
    assert above(expected_young(5, 1.5, 0.0, 8), 5) == 0.5


@pytest.mark.parametrize("h2", [-0.1, 1.1])
def test_a_heritability_out_of_bounds_is_refused_with_its_value(h2):
    with pytest.raises(ValueError, match=str(h2)):
        expected_young(5, 1.5, h2, 8)


def test_a_spread_of_nothing_is_refused():
    with pytest.raises(ValueError, match="more than 0"):
        expected_young(5, 0, 0.4, 8)


def test_where_none_can_be_above_no_number_of_tubs_is_told():
    assert young_for_one(0.0) is None
    assert young_for_one(0.95) == 1


def test_of_ten_young_at_nine_in_a_hundred_none_is_above_in_two_of_five_clutches():
    assert none_above(0.09, 10) == pytest.approx(0.389, abs=0.001)


def test_only_a_part_of_a_youngs_lead_over_its_family_is_bred_on():
    young = expected_young(5, 1.5, 0.4, 8)

    assert bred_worth(young, 0.4, young.mean) == pytest.approx(young.mean)
    assert bred_worth(young, 0.4, young.mean + 2) == pytest.approx(young.mean + 0.5)
