"""What holds of every plan bent round any absence, whatever the animal's history."""

from dataclasses import replace
from datetime import timedelta

from hypothesis import given
from hypothesis import strategies as st

from keeper.husbandry.events import Result
from keeper.rules import absence, feeding, prey, timing
from keeper.rules.absence import WAITS, Absence, Bending, apart, bent, meal_window
from keeper.rules.feeding import DueState, due
from keeper.rules.nights import feed_nights
from tests.builders import a_profile, day, fed
from tests.unit.test_rules_feeding_properties import NIGHTS, TODAY, histories

PROFILE = a_profile()
LISTED = {why for module in (absence, feeding, prey, timing) for why, _ in module.WHYS}
WED_SAT = feed_nights(["FREQ=WEEKLY;BYDAY=WE,SA"], day("2026-01-01"), day("2027-12-31"))


@st.composite
def absences(draw: st.DrawFn) -> Absence:
    """Up to six weeks, begun or to come, with some nights that were agreed."""
    first = TODAY + timedelta(days=draw(st.integers(-30, 30)))
    days = draw(st.integers(1, 42))
    agreed = draw(st.sets(st.integers(0, days - 1), max_size=4))
    nights = tuple(first + timedelta(days=n) for n in sorted(agreed))
    return Absence(first, first + timedelta(days=days - 1), nights)


several = st.lists(absences(), max_size=3).map(apart)


def both(row, nights, today, away):
    told = due(row, PROFILE, nights, today, last_record_on=today)
    return told, bent(told, row, PROFILE, Bending(away, nights, today))


@given(histories(), st.sampled_from(NIGHTS))
def test_without_an_absence_the_plan_is_the_same_object(row, nights):
    told, plan = both(row, nights, TODAY, ())

    assert plan is told


@given(histories(), st.sampled_from(NIGHTS), several)
def test_no_animal_is_moved_beyond_its_limits(row, nights, away):
    told, plan = both(row, nights, TODAY, away)
    if plan.due_on == told.due_on:
        return

    window = meal_window(row, told, PROFILE, TODAY)

    assert window.earliest <= plan.due_on <= window.latest
    assert plan.due_on >= TODAY or any(each.first <= plan.due_on for each in away)


@given(histories(), st.sampled_from(NIGHTS), several)
def test_a_hold_stays_and_of_all_others_the_night_alone_tells_the_state(row, nights, away):
    told, plan = both(row, nights, TODAY, away)

    if told.state in (DueState.HOLD, DueState.CANNOT_TELL) or plan is told:
        assert plan.state is told.state
    else:
        assert plan.state is (DueState.DUE if plan.due_on <= TODAY else DueState.NOT_DUE)


@given(histories(), st.sampled_from(NIGHTS), several)
def test_who_waits_waits_for_no_day_of_an_absence_and_who_is_brought_forward_for_none(
    row, nights, away
):
    _, plan = both(row, nights, TODAY, away)
    first = plan.because[0]

    if first.why == WAITS or (first.why == absence.FED_EARLY and plan.due_on < TODAY):
        assert not any(each.covers(plan.due_on) for each in away)
    assert {why.why for why in plan.because} <= LISTED


@given(histories(), st.sampled_from(NIGHTS), several)
def test_everything_but_night_state_lateness_and_one_more_reason_is_kept(row, nights, away):
    told, plan = both(row, nights, TODAY, away)

    again = replace(plan, due_on=told.due_on, state=told.state, lateness=told.lateness)
    if plan is not told:
        assert plan.because[1:] == told.because
    assert replace(again, because=told.because) == told


@given(st.integers(20, 1500), st.integers(1, 6), absences())
def test_fed_whenever_the_plan_says_so_each_meal_comes_by_its_limit(age_days, fed_days, away):
    """Ninety evenings: every meal by the end of its window, or by the night it was due anyway."""
    today = TODAY
    row = fed((today - timedelta(days=fed_days)).isoformat())
    row = replace(row, hatched_first=today - timedelta(days=age_days), hatched_last=None)
    for n in range(90):
        on = today + timedelta(days=n)
        told, plan = both(row, WED_SAT, on, (away,))
        if told.state is DueState.HOLD or told.due_on is None:
            return
        if plan.state is DueState.DUE:
            assert on <= max(told.due_on, meal_window(row, told, PROFILE, on).latest)
            assert (on - row.eaten_on).days >= 4
            row = replace(row, eaten_on=on, offered_on=on, offered_result=Result.TAKEN)
