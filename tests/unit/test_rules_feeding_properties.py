"""What holds of every plan, whatever the history."""

from dataclasses import replace
from datetime import timedelta

from hypothesis import given
from hypothesis import strategies as st

from keeper.husbandry.events import Result
from keeper.husbandry.now import AnimalNow
from keeper.rules import feeding, prey, timing
from keeper.rules.feeding import DueState, due, plan
from keeper.rules.nights import feed_nights
from tests.builders import a_profile, a_refusal, an_animal, an_offer, day

TODAY = day("2026-09-23")
PROFILE = a_profile()
RULES = ["FREQ=WEEKLY;BYDAY=WE,SA", "FREQ=WEEKLY;BYDAY=SU", "FREQ=DAILY;INTERVAL=3"]
NIGHTS = [(), *(feed_nights([rule], day("2025-09-01"), day("2027-12-31")) for rule in RULES)]
LISTED = {why for module in (feeding, timing, prey) for why, _ in module.WHYS}

days_ago = st.integers(0, 120).map(lambda days: TODAY - timedelta(days=days))


@st.composite
def histories(draw: st.DrawFn) -> AnimalNow:
    """An animal of any age, that may have eaten, been offered, shed or regurgitated."""
    hatched_on = TODAY - timedelta(days=draw(st.integers(0, 1500)))
    since = st.none() | st.dates(max(hatched_on, TODAY - timedelta(days=120)), TODAY)
    eaten_on = draw(since)
    offered = eaten_on and (eaten_on, Result.TAKEN)
    last_on = offered[0] if offered else None
    return an_animal(
        hatched_first=draw(st.sampled_from([hatched_on, None])),
        eaten_on=eaten_on,
        eaten_prey="mouse hopper" if eaten_on else None,
        eaten_g=9.0 if eaten_on else None,
        offered_on=last_on,
        offered_result=offered[1] if offered else None,
        first_entry_on=last_on,
        last_entry_on=last_on,
        shed_on=draw(since),
        regurgitated_on=draw(st.none() | since),
        body_score=draw(st.sampled_from([None, 3.0, 4.5])),
        scored_on=TODAY,
        weight_g=draw(st.sampled_from([None, 5.0, 40.0, 150.0])),
        weighed_on=TODAY,
    )


def refused(now: AnimalNow, on: object) -> AnimalNow:
    return replace(
        now,
        offered_on=on,
        offered_result=Result.REFUSED,
        last_entry_on=on,
        first_entry_on=now.first_entry_on or on,
        refused_since=now.refused_since + 1,
    )


@given(histories(), days_ago, st.sampled_from(NIGHTS))
def test_adding_a_refusal_never_moves_the_due_night_earlier(
    now: AnimalNow, refused_on: object, nights: tuple[object, ...]
) -> None:
    if now.offered_on is not None and refused_on < now.offered_on:  # type: ignore[operator]
        refused_on = now.offered_on
    before = due(now, PROFILE, nights, TODAY, last_record_on=TODAY)  # type: ignore[arg-type]
    after = due(
        refused(now, refused_on),
        PROFILE,
        nights,
        TODAY,
        last_record_on=TODAY,  # type: ignore[arg-type]
    )

    if before.due_on is not None and after.due_on is not None:
        assert after.due_on >= before.due_on


@given(histories(), st.sampled_from(NIGHTS), st.none() | st.floats(1, 2000))
def test_a_plan_is_the_same_each_time_and_gives_only_listed_reasons(
    now: AnimalNow, nights: tuple[object, ...], empty_g: float | None
) -> None:
    recent = [an_offer("2026-09-10"), a_refusal("2026-09-16")]

    told = plan(now, PROFILE, nights, TODAY, (), recent, (), empty_g)  # type: ignore[arg-type]

    assert told == plan(now, PROFILE, nights, TODAY, (), recent, (), empty_g)  # type: ignore[arg-type]
    assert {reason.why for reason in told.because} <= LISTED
    assert told.because


@given(histories(), st.sampled_from(NIGHTS))
def test_the_state_agrees_with_the_night(now: AnimalNow, nights: tuple[object, ...]) -> None:
    told = due(now, PROFILE, nights, TODAY)  # type: ignore[arg-type]

    if told.state is DueState.DUE:
        assert told.due_on is not None and told.due_on <= TODAY
    if told.state is DueState.NOT_DUE and told.due_on is not None:
        assert told.due_on > TODAY
    if told.state is DueState.HOLD:
        assert told.hold is not None and told.hold.skip
    if told.state is DueState.CANNOT_TELL:
        assert told.due_on is None


@given(histories(), st.sampled_from(NIGHTS))
def test_nobody_is_due_within_the_gap_after_a_meal(
    now: AnimalNow, nights: tuple[object, ...]
) -> None:
    told = due(now, PROFILE, nights, TODAY)  # type: ignore[arg-type]

    if told.state is DueState.DUE and now.eaten_on is not None:
        assert (TODAY - now.eaten_on).days >= 4
