"""Is selection working, whom to hold back, does the eye drift, and when own figures count."""

from datetime import date, timedelta

import pytest

from keeper.rules.colour import Score
from keeper.rules.colour_heredity import (
    OWN_CLUTCHES,
    OWN_YOUNG,
    PLACEHOLDER_H2,
    Family,
    heritability,
    own_slope,
    told_by,
)
from keeper.rules.colour_selection import (
    Again,
    ScoredClutch,
    drifts,
    hold_back,
    scored_again,
    steps,
    verdict,
)

DAY = date(2026, 5, 4)


def a_family(mid_parent, mean, young=10):
    scores = [mean - 0.5, mean + 0.5] * (young // 2)
    return Family(mid_parent=mid_parent, scores=tuple(scores))


def a_clutch(mid_parent, *scores, generation=1, base=5.0, bases=40):
    return ScoredClutch(
        generation=generation, mid_parent=mid_parent, base=base, bases=bases, scores=scores
    )


def test_without_own_clutches_the_placeholder_stands():
    found = heritability([])

    assert (found.value, found.share, found.own) == (PLACEHOLDER_H2.value, 0.0, None)


def test_mid_parents_that_do_not_differ_give_no_slope():
    assert own_slope([a_family(6, 5), a_family(6, 6), a_family(6, 7)]) is None


def test_two_clutches_give_no_slope_because_its_error_is_unknown():
    assert own_slope([a_family(4, 5), a_family(6, 6)]) is None


def test_from_eight_clutches_and_eighty_young_the_own_figure_counts_alone():
    told = [a_family(3 + n / 2, 4 + 0.35 * n) for n in range(int(OWN_CLUTCHES.value))]

    found = heritability(told)

    assert found.young == OWN_YOUNG.value
    assert (found.share, found.value) == (1.0, pytest.approx(0.7))


def test_with_fewer_it_is_pulled_over_in_part():
    told = [a_family(3 + n / 2, 4 + 0.35 * n) for n in range(5)]

    found = heritability(told)

    assert found.share == pytest.approx(0.5)
    assert found.value == pytest.approx(0.55)


def test_few_young_in_many_clutches_count_little():
    told = [a_family(3 + n / 2, 4 + 0.35 * n, young=2) for n in range(10)]

    assert heritability(told).share == pytest.approx(20 / 80)


def test_a_slope_of_a_wide_error_counts_little_however_many_there_are():
    told = [a_family(4.9 + 0.2 * (n % 2), 4 + 1.5 * (n % 3)) for n in range(12)]

    found = heritability(told)

    assert found.own.error > 0.5
    assert found.share == pytest.approx(0.25 / found.own.error)


def test_a_slope_beyond_one_counts_as_one():
    told = [a_family(3 + n / 4, 4 + n / 2) for n in range(9)]

    assert heritability(told).value == 1.0


def test_sibs_tell_less_of_a_mean_than_strangers():
    assert told_by([10], 0.4) < 5 < told_by([1] * 10, 0.4)


def test_response_and_differential_are_weighed_by_young():
    (step,) = steps([a_clutch(7, 6, 6, 6, 6), a_clutch(6, 5, 5)], 0.4, 1.5)

    assert step.differential == pytest.approx((4 * 2 + 2 * 1) / 6)
    assert step.response == pytest.approx(4 / 6)
    assert step.realised == pytest.approx(0.4)


def test_a_generation_of_four_scored_founders_has_no_mean_to_compare_with():
    found = steps([a_clutch(7, 6, 6, 6, 6, 6, bases=4)], 0.4, 1.5)

    assert found[0].untold.why == "few scored before"
    assert verdict(found, 0.4).state == "cannot tell"


def test_four_scored_young_tell_nothing():
    (step,) = steps([a_clutch(7, 6, 6, 6, 6)], 0.4, 1.5)

    assert step.untold.why == "few scored young"


def test_without_a_clutch_it_cannot_be_told():
    assert verdict((), 0.4).because.why == "no clutch of scored parents"


def many(mean, mid_parent):
    return [a_clutch(mid_parent, *[mean] * 10) for _ in range(8)]


@pytest.mark.parametrize(
    ("mean", "mid_parent", "state"),
    [
        (6.5, 8.0, "rises"),
        (3.8, 8.0, "falls"),
        (5.0, 8.0, "stands"),
        (5.5, 6.0, "cannot tell"),
        (7.0, 5.1, "cannot tell"),
    ],
)
def test_selection_is_judged_by_what_chance_can_do(mean, mid_parent, state):
    found = steps(many(mean, mid_parent), 0.4, 1.5)

    assert verdict(found, 0.4).state == state


def test_parents_that_are_hardly_better_have_no_realised_heritability():
    (step,) = steps(many(6.0, 5.2), 0.4, 1.5)

    assert step.realised is None


def test_of_a_usual_clutch_the_best_may_be_held_back():
    found = hold_back([(1, 6), (2, 8), (3, 7)], line_mean=5)

    assert [(each.animal, each.rank, each.of) for each in found] == [(2, 1, 3)]


def test_of_twenty_the_best_three():
    found = hold_back([(n, n / 2) for n in range(20)], line_mean=1)

    assert [each.animal for each in found] == [19, 18, 17]


def test_all_who_share_the_place_are_told():
    found = hold_back([(1, 8), (2, 8), (3, 7)], line_mean=5)

    assert [(each.animal, each.rank) for each in found] == [(1, 1), (2, 1)]


def test_the_best_of_a_clutch_below_the_lines_mean_is_not_proposed():
    assert hold_back([(1, 4), (2, 3)], line_mean=5) == ()
    assert hold_back([], line_mean=5) == ()


def a_score(score, on, *, written=None, age_days=400, clouded=False):
    return Score(score=score, on=on, written_on=written or on, age_days=age_days, clouded=clouded)


def test_an_old_picture_scored_on_a_later_day_checks_the_eye():
    later = DAY + timedelta(days=200)

    found = scored_again(7, [a_score(6, DAY, age_days=66), a_score(7, DAY, written=later)])

    assert found == [Again(animal=7, first=6, again=7, on=later)]


def test_two_scores_written_on_one_day_are_no_check():
    assert scored_again(7, [a_score(6, DAY), a_score(7, DAY)]) == []


def test_a_young_that_grew_between_two_scores_says_nothing_of_the_eye():
    later = DAY + timedelta(days=300)

    assert scored_again(7, [a_score(6, DAY, age_days=66), a_score(7, later)]) == []


def test_a_grown_animal_scored_again_within_a_year_does():
    later = DAY + timedelta(days=200)

    assert len(scored_again(7, [a_score(6, DAY), a_score(7, later)])) == 1


def test_a_score_of_a_dull_skin_says_nothing_of_the_eye():
    later = DAY + timedelta(days=20)

    assert scored_again(7, [a_score(6, DAY), a_score(3, later, clouded=True)]) == []


def again(n, shift, on=DAY):
    return Again(animal=n, first=5, again=5 + shift, on=on)


def test_a_shift_of_many_is_asked_about_by_quarter():
    found = drifts(again(n, 0.5 + 0.5 * (n % 2)) for n in range(8))

    assert [(each.since, each.count, each.shift) for each in found] == [(date(2026, 4, 1), 8, 0.75)]
    assert found[0].asks


def test_a_shift_of_few_and_one_within_chance_are_not():
    few = drifts(again(n, 1.0) for n in range(4))
    scattered = drifts(again(n, 3.0 if n % 2 else -2.4) for n in range(8))

    assert not few[0].asks
    assert not scattered[0].asks


def test_quarters_are_told_apart():
    found = drifts([again(1, 1), again(2, 0, on=date(2026, 12, 31))])

    assert [each.since for each in found] == [date(2026, 4, 1), date(2026, 10, 1)]
