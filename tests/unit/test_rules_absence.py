"""A plan bent round an absence, reckoned by hand on a calendar.

Feed nights are Wednesdays and Saturdays. The keeper is away from Friday 25 September to Sunday
4 October 2026 and back on Monday the 5th; the last evening before is Thursday the 24th.
The grown female eats every 11 days and may miss one meal; the hatchling every 6, never sooner
than 4 after a meal and at most 2 late.
"""

from dataclasses import replace

import pytest

from keeper.husbandry.animal import Sex, Stage
from keeper.husbandry.events import HoldKind
from keeper.rules.absence import Absence, Bending, apart, bent, meal_window
from keeper.rules.feeding import DueState, due
from keeper.rules.nights import feed_nights
from keeper.rules.timing import FAT_TIMES
from keeper.store.species_files import load_profiles
from tests.builders import a_hold, a_profile, day, fed, fed_then_refused

PROFILE = a_profile()
NIGHTS = feed_nights(["FREQ=WEEKLY;BYDAY=WE,SA"], day("2026-08-01"), day("2026-12-31"))
AWAY = Absence(day("2026-09-25"), day("2026-10-04"), who="Wren")
YOUNG = {"hatched_first": day("2026-07-15"), "hatched_last": day("2026-07-15")}


def bent_on(today, row, *absences, holds=(), nights=NIGHTS, score=None):
    """Her plan on *today* before and after it is bent."""
    if score is not None:
        row = replace(row, body_score=score, scored_on=row.eaten_on)
    on = day(today)
    told = due(row, PROFILE, nights, on, holds, last_record_on=on)
    return told, bent(told, row, PROFILE, Bending(apart(absences), nights, on))


def why(plan):
    return plan.because[0].why, plan.because[0].figures


def test_the_grown_wait_until_the_first_feed_night_after_it_within_their_limit():
    plain, plan = bent_on("2026-09-23", fed("2026-09-16"), AWAY)

    assert plain.due_on == day("2026-09-26")
    assert (plan.state, plan.due_on) == (DueState.NOT_DUE, day("2026-10-07"))
    told, figures = why(plan)
    assert told == "waits, away"
    assert figures["limit"] == day("2026-10-08")  # twice 11 days after the meal
    assert (figures["first"], figures["last"]) == (AWAY.first, AWAY.last)


def test_one_who_cannot_wait_for_the_feed_night_after_it_is_fed_on_the_evening_of_return():
    _, plan = bent_on("2026-09-23", fed("2026-09-14"), AWAY)

    assert plan.due_on == day("2026-10-05")  # her limit is the 6th, the next feed night the 7th


def test_during_it_the_waiting_are_not_due_and_after_it_they_are_due_since_its_end():
    assert bent_on("2026-09-30", fed("2026-09-16"), AWAY)[1].state is DueState.NOT_DUE
    assert bent_on("2026-10-07", fed("2026-09-16"), AWAY)[1].state is DueState.DUE
    _, late = bent_on("2026-10-10", fed("2026-09-16"), AWAY)

    assert (late.state, late.due_on) == (DueState.DUE, day("2026-10-07"))
    assert why(late)[0] == "waited, away"


def test_lateness_is_measured_against_the_interval_so_bent():
    plain, plan = bent_on("2026-10-07", fed("2026-09-16"), AWAY)

    assert plain.lateness == pytest.approx(21 / 11)
    assert plan.lateness == pytest.approx(1.0)


@pytest.mark.parametrize(
    ("today", "night", "state"),
    [
        ("2026-09-21", "2026-09-23", DueState.NOT_DUE),
        ("2026-09-23", "2026-09-23", DueState.DUE),
        ("2026-09-24", "2026-09-24", DueState.DUE),  # Wednesday was missed: the evening before
    ],
)
def test_who_cannot_wait_is_fed_early_on_the_last_feed_night_before(today, night, state):
    plain, plan = bent_on(today, fed("2026-09-19", **YOUNG), AWAY)

    assert plain.due_on == day("2026-09-26")
    assert (plan.due_on, plan.state) == (day(night), state)
    assert why(plan)[0] == "fed early, away"
    assert why(plan)[1]["days"] == (plain.due_on - plan.due_on).days


def test_within_the_gap_after_a_meal_nobody_is_fed_early_and_whoever_covers_feeds_it():
    plain, plan = bent_on("2026-09-24", fed("2026-09-23", **YOUNG), AWAY)

    assert (plain.due_on, plan.due_on) == (day("2026-09-30"), day("2026-09-30"))
    told, figures = why(plan)
    assert told == "fed meanwhile, away"
    assert (figures["who"], figures["limit"]) == ("Wren", day("2026-10-01"))


@pytest.mark.parametrize(
    ("agreed", "night"),
    [
        ("2026-09-28", "2026-09-28"),  # no feed night, and within her limits
        ("2026-09-26", "2026-09-30"),  # three days after her meal: too soon
        ("2026-10-03", "2026-09-30"),  # later than she may be fed
    ],
)
def test_an_agreed_night_is_taken_only_within_the_limits(agreed, night):
    away = replace(AWAY, nights=(day(agreed),))
    _, plan = bent_on("2026-09-24", fed("2026-09-23", **YOUNG), away)

    assert plan.due_on == day(night)


def test_without_feed_nights_the_last_day_within_the_limits_is_taken():
    _, plan = bent_on("2026-09-24", fed("2026-09-23", **YOUNG), AWAY, nights=())

    assert plan.due_on == day("2026-10-01")


def test_a_thin_one_does_not_miss_a_meal():
    assert bent_on("2026-09-23", fed("2026-09-16"), AWAY, score=3.0)[1].state is DueState.NOT_DUE
    _, thin = bent_on("2026-09-23", fed("2026-09-16"), AWAY, score=2.0)

    assert (thin.state, why(thin)[0]) == (DueState.DUE, "fed early, away")


def test_one_that_refused_is_neither_brought_forward_nor_told_to_wait_a_meal():
    row = fed_then_refused("2026-09-12", "2026-09-23")
    _, plan = bent_on("2026-09-24", row, AWAY)

    assert (plan.due_on, why(plan)[0]) == (day("2026-09-30"), "fed meanwhile, away")


def test_a_hold_stays_a_hold_and_its_meal_waits_if_it_may():
    vet = a_hold("2026-09-20", HoldKind.VET, until="2026-09-28")
    plain, plan = bent_on("2026-09-23", fed("2026-09-16"), AWAY, holds=[vet])

    assert (plain.state, plain.due_on) == (DueState.HOLD, day("2026-09-30"))
    assert (plan.state, plan.due_on) == (DueState.HOLD, day("2026-10-07"))


def test_a_hold_without_an_end_is_left_alone():
    plain, plan = bent_on("2026-09-23", fed("2026-09-16"), AWAY, holds=[a_hold("2026-09-20")])

    assert plan is plain


def test_who_is_due_before_it_is_due_before_it():
    plain, plan = bent_on("2026-09-23", fed("2026-09-12"), AWAY)

    assert plain.due_on == day("2026-09-23")
    assert plan is plain


def test_who_was_not_reached_before_it_waits_from_its_first_day_on_if_she_may():
    _, plan = bent_on("2026-09-26", fed("2026-09-13"), AWAY)

    assert (plan.state, plan.due_on) == (DueState.NOT_DUE, day("2026-10-05"))


def test_who_is_due_after_it_is_left_alone():
    plain, plan = bent_on("2026-09-24", fed("2026-09-23"), replace(AWAY, last=day("2026-10-02")))

    assert plain.due_on == day("2026-10-03")
    assert plan is plain


def test_who_was_due_meanwhile_and_has_no_entry_is_asked_about_afterwards():
    plain, plan = bent_on("2026-10-05", fed("2026-09-23", **YOUNG), AWAY)

    assert (plan.state, plan.due_on) == (DueState.DUE, plain.due_on)
    assert plan.lateness == plain.lateness
    assert why(plan) == (
        "was due while away",
        {"who": "Wren", "first": AWAY.first, "last": AWAY.last},
    )


def test_without_an_absence_a_plan_is_itself():
    plain, plan = bent_on("2026-09-23", fed("2026-09-16"))

    assert plan is plain


def test_one_who_waits_is_not_told_to_wait_for_a_night_of_the_next_absence():
    again = Absence(day("2026-10-07"), day("2026-10-09"))
    _, plan = bent_on("2026-09-23", fed("2026-09-16"), AWAY, again)

    assert plan.due_on == day("2026-10-05")


def test_absences_that_touch_are_one_with_both_names_and_all_nights():
    second = Absence(day("2026-10-05"), day("2026-10-08"), (day("2026-10-07"),), "Ash")
    (both,) = apart([second, replace(AWAY, nights=(day("2026-09-30"),))])

    assert (both.first, both.last, both.who) == (AWAY.first, second.last, "Wren, Ash")
    assert both.nights == (day("2026-09-30"), day("2026-10-07"))


def test_an_absence_that_ends_before_it_begins_bends_nothing():
    assert apart([Absence(day("2026-10-05"), day("2026-10-04"))]) == ()


def test_the_window_of_a_meal_is_the_same_with_the_pace_it_was_judged_by():
    row = fed("2026-09-16")
    told = due(row, PROFILE, NIGHTS, day("2026-09-23"))

    window = meal_window(row, told, PROFILE, day("2026-09-23"))

    assert window == (day("2026-09-21"), day("2026-10-08"))


def test_no_wait_by_the_plan_lasts_as_long_as_a_fast_that_the_watch_asks_about():
    """Even where fatness has stretched the interval: the plan alone never causes that line."""
    grown = (Stage.SUBADULT, Stage.ADULT)
    for profile in load_profiles().values():
        for stage in grown:
            limit = profile.refusals.review_days.get(stage)
            for sex in Sex if limit is not None else ():
                figures = profile.feeding[stage].get(sex)
                if figures is not None and limit is not None:
                    assert 2 * round(figures.interval_days.value * FAT_TIMES.value) <= limit.value
