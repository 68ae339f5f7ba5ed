"""When an animal is due, held, not due, or when nobody can tell."""

from dataclasses import replace

import pytest

from keeper.husbandry.animal import Sex, Status
from keeper.husbandry.events import HoldKind, Result, ShedStage
from keeper.rules.feeding import DueState, Plan, due
from keeper.rules.nights import feed_nights
from tests.builders import (
    a_hold,
    a_profile,
    an_animal,
    day,
    fed,
    fed_every,
    fed_then_refused,
)

WEEKLY = fed_every(7)
WED_SAT = feed_nights(["FREQ=WEEKLY;BYDAY=WE,SA"], day("2026-07-01"), day("2027-01-31"))


def whys(plan: Plan) -> list[str]:
    return [reason.why for reason in plan.because]


def test_an_interval_after_her_meal_she_is_due() -> None:
    plan = due(fed("2026-09-16"), WEEKLY, (), day("2026-09-23"))

    assert (plan.state, plan.due_on) == (DueState.DUE, day("2026-09-23"))
    assert (plan.days_since_eaten, plan.interval_days, plan.lateness) == (7, 7, 1.0)
    assert whys(plan) == ["since eaten", "no holds"]


def test_the_day_before_she_is_not_due() -> None:
    plan = due(fed("2026-09-16"), WEEKLY, (), day("2026-09-22"))

    assert (plan.state, plan.due_on) == (DueState.NOT_DUE, day("2026-09-23"))


def test_a_meal_is_moved_a_day_forward_to_the_nearest_feed_night() -> None:
    plan = due(fed("2026-09-17"), WEEKLY, WED_SAT, day("2026-09-23"))

    assert (plan.state, plan.due_on) == (DueState.DUE, day("2026-09-23"))
    assert "nearest feed night" in whys(plan)


def test_a_meal_is_moved_back_to_the_nearest_feed_night() -> None:
    plan = due(fed("2026-09-18"), WEEKLY, WED_SAT, day("2026-09-23"))

    assert (plan.state, plan.due_on) == (DueState.NOT_DUE, day("2026-09-26"))


def test_a_night_that_was_missed_leaves_her_due() -> None:
    plan = due(fed("2026-09-16"), WEEKLY, WED_SAT, day("2026-09-24"))

    assert (plan.state, plan.due_on) == (DueState.DUE, day("2026-09-23"))


def test_no_feed_night_brings_a_meal_inside_the_gap_after_the_last() -> None:
    nights = [day("2026-09-18"), day("2026-09-23"), day("2026-09-30")]

    plan = due(fed("2026-09-16"), fed_every(3), nights, day("2026-09-18"))

    assert (plan.state, plan.due_on) == (DueState.NOT_DUE, day("2026-09-23"))
    assert "gap after a meal" in whys(plan)


def test_a_refusal_does_not_make_the_next_feed_wait_a_whole_interval() -> None:
    plan = due(fed_then_refused("2026-09-16", "2026-09-23"), WEEKLY, WED_SAT, day("2026-09-24"))

    assert plan.due_on == day("2026-09-30")
    assert plan.days_since_eaten == 8


def test_nobody_is_offered_again_on_the_night_after_a_refusal() -> None:
    plan = due(fed_then_refused("2026-09-10", "2026-09-23"), WEEKLY, (), day("2026-09-24"))

    assert (plan.state, plan.due_on) == (DueState.NOT_DUE, day("2026-09-28"))
    assert "refused" in whys(plan)


def test_an_item_still_in_the_tub_keeps_her_from_a_second_one() -> None:
    waiting = fed_then_refused("2026-09-10", "2026-09-23", offered_result=Result.LEFT_IN)

    plan = due(waiting, WEEKLY, (), day("2026-09-24"))

    assert plan.state is DueState.NOT_DUE
    assert "left in" in whys(plan)


def test_a_hatchling_that_refused_is_offered_again_after_three_days() -> None:
    hatchling = fed_then_refused("2026-09-16", "2026-09-22", hatched_first=day("2026-08-10"))

    assert due(hatchling, a_profile(), (), day("2026-09-25")).state is DueState.DUE


@pytest.mark.parametrize("status", [Status.SOLD, Status.DIED, Status.MISSING, Status.ON_LOAN])
def test_an_animal_that_is_not_in_the_room_is_never_due(status: Status) -> None:
    plan = due(fed("2026-01-01", status=status), WEEKLY, (), day("2026-09-23"))

    assert (plan.state, whys(plan)) == (DueState.NOT_DUE, ["not in the room"])


def test_an_opaque_animal_is_held_until_she_sheds() -> None:
    opaque = fed("2026-09-10", stage=ShedStage.OPAQUE, stage_since=day("2026-09-20"))

    plan = due(opaque, WEEKLY, (), day("2026-09-23"))

    assert (plan.state, plan.due_on) == (DueState.HOLD, None)
    assert plan.hold is not None and plan.hold.kind is HoldKind.OPAQUE
    assert whys(plan)[0] == "hold"


def test_an_opaque_animal_that_has_shown_she_eats_is_due_all_the_same() -> None:
    opaque = fed("2026-09-10", stage=ShedStage.OPAQUE, stage_since=day("2026-09-20"))

    plan = due(opaque, WEEKLY, (), day("2026-09-23"), learned={HoldKind.OPAQUE})

    assert plan.state is DueState.DUE
    assert plan.hold is not None and not plan.hold.skip


def test_a_hold_with_an_end_says_the_feed_night_after_it() -> None:
    vet = a_hold("2026-09-20", HoldKind.VET, until="2026-09-24")

    plan = due(fed("2026-09-10"), WEEKLY, WED_SAT, day("2026-09-23"), [vet])

    assert (plan.state, plan.due_on) == (DueState.HOLD, day("2026-09-26"))


def test_of_two_holds_the_later_end_decides() -> None:
    holds = [
        a_hold("2026-09-20", HoldKind.VET, until="2026-09-24"),
        a_hold("2026-09-20", HoldKind.HEAT, until="2026-10-01"),
    ]

    plan = due(fed("2026-09-10"), WEEKLY, WED_SAT, day("2026-09-23"), holds)

    assert plan.due_on == day("2026-10-03")


def test_a_male_in_season_is_offered_once_a_fortnight() -> None:
    season = a_hold("2026-09-01", HoldKind.SEASON)

    plan = due(fed("2026-09-16", sex=Sex.MALE), WEEKLY, (), day("2026-09-23"), [season])

    assert (plan.interval_days, plan.due_on) == (14, day("2026-09-30"))


def test_a_fat_animal_waits_half_as_long_again() -> None:
    fat = fed("2026-09-16", body_score=4.0, scored_on=day("2026-09-01"))

    plan = due(fat, fed_every(10), (), day("2026-09-23"))

    assert (plan.interval_days, "interval stretched" in whys(plan)) == (15, True)


def test_a_body_score_of_last_year_stretches_nothing() -> None:
    fat = fed("2026-09-16", body_score=4.0, scored_on=day("2025-09-01"))

    assert due(fat, fed_every(10), (), day("2026-09-23")).interval_days == 10


def test_her_own_caution_stands_before_that_of_a_hold() -> None:
    shed = {"shed_on": day("2026-09-22")}

    bites = due(fed("2026-09-16", caution="BITES", **shed), WEEKLY, (), day("2026-09-23"))
    plain = due(fed("2026-09-16", **shed), WEEKLY, (), day("2026-09-23"))

    assert (bites.caution, plain.caution) == ("BITES", "just shed")


# --- a record that does not say ---------------------------------------------------------------


def test_an_adult_of_whom_nothing_is_written_cannot_be_told() -> None:
    plan = due(an_animal(), WEEKLY, (), day("2026-09-23"))

    assert (plan.state, whys(plan)) == (DueState.CANNOT_TELL, ["nothing known"])


def test_an_adult_only_ever_weighed_cannot_be_told() -> None:
    weighed = an_animal(first_entry_on=day("2026-09-01"), last_entry_on=day("2026-09-20"))

    plan = due(weighed, WEEKLY, (), day("2026-09-23"))

    assert (plan.state, whys(plan)) == (DueState.CANNOT_TELL, ["no meal known"])


def test_unrecorded_nights_never_read_as_starvation() -> None:
    plan = due(fed("2026-06-01"), WEEKLY, (), day("2026-09-23"))

    assert (plan.state, whys(plan)) == (DueState.CANNOT_TELL, ["record silent"])


def test_nights_recorded_without_her_leave_her_due() -> None:
    plan = due(fed("2026-06-01"), WEEKLY, (), day("2026-09-23"), last_record_on=day("2026-09-19"))

    assert (plan.state, plan.days_since_eaten) == (DueState.DUE, 114)


def test_refusals_written_down_keep_a_long_fast_from_being_silent() -> None:
    fasting = fed_then_refused("2026-06-01", "2026-09-16")

    assert due(fasting, WEEKLY, (), day("2026-09-23")).state is DueState.DUE


def test_a_never_eater_that_was_offered_lately_is_offered_again() -> None:
    unfed = an_animal(
        first_entry_on=day("2026-09-16"),
        last_entry_on=day("2026-09-16"),
        offered_on=day("2026-09-16"),
        offered_result=Result.REFUSED,
    )

    plan = due(unfed, WEEKLY, (), day("2026-09-23"))

    assert (plan.state, plan.due_on) == (DueState.DUE, day("2026-09-21"))


def test_a_species_without_a_profile_cannot_be_told() -> None:
    plan = due(fed("2026-09-10"), None, (), day("2026-09-23"))

    assert (plan.state, whys(plan)) == (DueState.CANNOT_TELL, ["no profile"])


def test_a_meal_after_the_day_asked_about_cannot_be_told() -> None:
    plan = due(fed("2026-09-24"), WEEKLY, (), day("2026-09-23"))

    assert (plan.state, whys(plan)) == (DueState.CANNOT_TELL, ["record runs ahead"])
    assert plan.days_since_eaten is None


def test_of_unknown_age_and_weight_she_is_due_when_every_stage_says_so() -> None:
    ageless = fed("2026-09-10", hatched_first=None)

    states = [
        due(ageless, a_profile(), (), day(on)).state
        for on in ("2026-09-14", "2026-09-18", "2026-09-21")
    ]

    assert states == [DueState.NOT_DUE, DueState.CANNOT_TELL, DueState.DUE]


# --- hatchlings -------------------------------------------------------------------------------


def test_a_hatchling_waits_for_its_first_shed() -> None:
    new = an_animal(hatched_first=day("2026-09-15"))

    plan = due(new, a_profile(), (), day("2026-09-23"))

    assert (plan.state, whys(plan)[0]) == (DueState.NOT_DUE, "waiting for first shed")


def test_the_first_offer_comes_two_days_after_the_first_shed() -> None:
    shed = an_animal(hatched_first=day("2026-09-12"), shed_on=day("2026-09-21"))

    before, then = (due(shed, a_profile(), (), day(on)) for on in ("2026-09-22", "2026-09-23"))

    assert (before.state, then.state) == (DueState.NOT_DUE, DueState.DUE)


def test_a_hatchling_whose_first_shed_nobody_saw_is_offered_all_the_same() -> None:
    unseen = an_animal(hatched_first=day("2026-09-01"))

    plan = due(unseen, a_profile(), (), day("2026-09-23"))

    assert (plan.state, whys(plan)[0]) == (DueState.DUE, "first shed not seen")


def test_a_hatchling_too_old_to_be_new_without_an_entry_cannot_be_told() -> None:
    silent = an_animal(hatched_first=day("2026-07-25"))

    assert due(silent, a_profile(), (), day("2026-09-23")).state is DueState.CANNOT_TELL


def test_a_profile_without_figures_for_any_stage_cannot_tell() -> None:
    bare = replace(a_profile(), feeding={})

    plan = due(fed("2026-09-10"), bare, (), day("2026-09-23"))

    assert (plan.state, whys(plan)) == (DueState.CANNOT_TELL, ["no figures"])


def test_a_refusal_before_its_time_does_not_bring_the_first_offer_forward() -> None:
    early = an_animal(
        hatched_first=day("2026-09-08"),
        first_entry_on=day("2026-09-18"),
        last_entry_on=day("2026-09-18"),
        offered_on=day("2026-09-18"),
        offered_result=Result.REFUSED,
    )

    plan = due(early, a_profile(), (), day("2026-09-23"))  # unseen first shed: due 22 September

    assert plan.due_on == day("2026-09-22")
