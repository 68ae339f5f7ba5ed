"""Holds set by hand and holds the facts imply, worst first."""

from keeper.husbandry.animal import Status
from keeper.husbandry.events import HoldKind, ShedStage
from keeper.husbandry.now import AnimalNow
from keeper.rules.holds import Hold, excused, half_counted, holds_of, holds_on
from tests.builders import (
    a_hold,
    a_profile,
    a_refusal,
    a_shed_sign,
    all_holds,
    an_animal,
    an_offer,
    day,
    fed,
    hold_figures,
)

TODAY = day("2026-09-23")
PROFILE = a_profile()


def only(now: AnimalNow, *by_hand: object, on: str = "2026-09-23") -> Hold:
    (hold,) = holds_of(now, by_hand, PROFILE, day(on))  # type: ignore[arg-type]
    return hold


def none(now: AnimalNow, *by_hand: object, on: str = "2026-09-23") -> bool:
    return holds_of(now, by_hand, PROFILE, day(on)) == ()  # type: ignore[arg-type]


def test_an_animal_without_anything_has_no_hold() -> None:
    assert none(fed("2026-09-16"))


def test_a_hold_lasts_up_to_but_not_including_its_last_day() -> None:
    vet = a_hold("2026-09-20", HoldKind.VET, until="2026-09-24")

    assert only(fed("2026-09-16"), vet).until == day("2026-09-24")
    assert none(fed("2026-09-16"), vet, on="2026-09-24")


def test_a_hold_that_begins_tomorrow_holds_nobody_today() -> None:
    assert none(fed("2026-09-16"), a_hold("2026-09-24", HoldKind.SHOW))


def test_a_hold_without_an_end_asks_to_be_renewed_after_a_month() -> None:
    vet = a_hold("2026-08-23", HoldKind.VET)

    assert not only(fed("2026-09-16"), vet, on="2026-09-22").asks_renewal
    assert only(fed("2026-09-16"), vet, on="2026-09-23").asks_renewal


def test_cooling_never_asks_to_be_renewed() -> None:
    assert not only(fed("2026-04-01"), a_hold("2026-05-01", HoldKind.COOLING)).asks_renewal


def test_a_quarantine_past_its_days_asks_and_is_not_released() -> None:
    holds = all_holds() | {HoldKind.QUARANTINE: hold_figures(skip=False, counts=True, days=90)}
    shut = a_hold("2026-06-01", HoldKind.QUARANTINE)

    (hold,) = holds_of(fed("2026-09-16"), [shut], a_profile(holds=holds), TODAY)

    assert (hold.until, hold.asks_renewal, hold.skip) == (None, True, False)


def test_opaque_holds_from_the_sign_until_the_shed() -> None:
    opaque = fed("2026-09-01", stage=ShedStage.OPAQUE, stage_since=day("2026-09-20"))
    cleared = fed("2026-09-01", stage=ShedStage.CLEARED, stage_since=day("2026-09-22"))

    assert (only(opaque).kind, only(opaque).ends_when) == (HoldKind.OPAQUE, "shed")
    assert only(cleared).skip
    assert none(fed("2026-09-01", stage=ShedStage.DULL, stage_since=day("2026-09-22")))


def test_an_opaque_sign_older_than_any_shed_cycle_forbids_nothing_and_asks() -> None:
    forgotten = fed("2026-09-01", stage=ShedStage.OPAQUE, stage_since=day("2026-09-08"))

    assert (only(forgotten).skip, only(forgotten).asks_renewal) == (False, True)


def test_just_shed_is_a_hold_under_which_she_is_offered() -> None:
    shed = fed("2026-09-01", shed_on=day("2026-09-22"))

    assert (only(shed).kind, only(shed).skip, only(shed).refusal_counts) == (
        HoldKind.JUST_SHED,
        False,
        True,
    )
    assert none(shed, on="2026-09-24")


def test_a_regurgitation_holds_for_its_days() -> None:
    sick = fed("2026-09-10", regurgitated_on=day("2026-09-12"))

    assert (only(sick).kind, only(sick).until) == (HoldKind.REGURGITATED, day("2026-09-24"))


def test_a_second_regurgitation_within_eight_weeks_holds_half_as_long_again() -> None:
    sick = fed(
        "2026-09-10",
        regurgitated_on=day("2026-09-12"),
        regurgitated_before_on=day("2026-07-20"),
    )

    assert (only(sick).until, only(sick).ends_when) == (day("2026-09-30"), "vet has seen her")


def test_a_regurgitation_nine_weeks_after_another_is_a_first_one() -> None:
    sick = fed(
        "2026-09-10",
        regurgitated_on=day("2026-09-12"),
        regurgitated_before_on=day("2026-07-10"),
    )

    assert only(sick).until == day("2026-09-24")


def test_meals_stay_small_until_three_are_kept_after_a_regurgitation() -> None:
    growing = fed("2026-09-20", regurgitated_on=day("2026-09-01"), meals_since_regurgitation=2)
    grown = fed("2026-09-20", regurgitated_on=day("2026-09-01"), meals_since_regurgitation=3)

    assert (only(growing).skip, only(growing).part_percent) == (False, 40)
    assert none(grown)


def test_a_new_arrival_rests_and_then_gets_one_small_meal() -> None:
    came = an_animal(status_on=day("2026-09-18"))

    rests, small = only(came), only(came, on="2026-09-24")

    assert (rests.kind, rests.skip, rests.until) == (HoldKind.NEW_ARRIVAL, True, day("2026-09-24"))
    assert (small.skip, small.part_percent, small.ends_when) == (False, 50, "first meal")


def test_a_new_arrival_that_has_eaten_here_is_new_no_longer() -> None:
    assert none(fed("2026-09-21", status_on=day("2026-09-10")))


def test_an_animal_bred_here_never_arrived() -> None:
    assert none(an_animal(status_on=day("2026-09-18"), dam=7))


def test_an_animal_bred_here_that_came_back_did_arrive() -> None:
    back = fed("2026-05-01", status=Status.KEPT, status_on=day("2026-09-20"), dam=7)

    assert only(back).kind is HoldKind.NEW_ARRIVAL


def test_a_gravid_hold_ends_when_she_lays() -> None:
    gravid = a_hold("2026-08-01", HoldKind.GRAVID)

    assert only(fed("2026-09-01"), gravid).ends_when == "laid"
    assert none(fed("2026-09-01", clutch_on=day("2026-09-20")), gravid)


def test_a_clutch_before_the_gravid_hold_does_not_end_it() -> None:
    gravid = a_hold("2026-08-01", HoldKind.GRAVID)

    assert only(fed("2026-09-01", clutch_on=day("2026-06-20")), gravid).kind is HoldKind.GRAVID


def test_a_pre_lay_shed_holds_until_some_days_after_laying() -> None:
    signs = [a_shed_sign("2026-09-10", ShedStage.SHED, pre_lay=True)]

    def on(now: AnimalNow) -> tuple[Hold, ...]:
        return holds_of(now, [], PROFILE, TODAY, signs=signs)

    assert on(fed("2026-09-01"))[0].kind is HoldKind.PRE_LAY
    assert on(fed("2026-09-01", clutch_on=day("2026-09-19")))[0].until == day("2026-09-24")
    assert on(fed("2026-09-01", clutch_on=day("2026-09-18"))) == ()


def test_a_hold_set_by_hand_replaces_the_one_the_facts_imply() -> None:
    sick = fed("2026-09-10", regurgitated_on=day("2026-09-12"))

    hold = only(sick, a_hold("2026-09-12", HoldKind.REGURGITATED, until="2026-10-12"))

    assert hold.until == day("2026-10-12")


def test_the_holds_that_forbid_feeding_lead_and_the_worst_of_them_first() -> None:
    sick = fed("2026-09-10", regurgitated_on=day("2026-09-20"), shed_on=day("2026-09-22"))
    by_hand = [a_hold("2026-09-20", HoldKind.QUARANTINE), a_hold("2026-09-20", HoldKind.OTHER)]

    kinds = [hold.kind for hold in holds_of(sick, by_hand, PROFILE, TODAY)]

    assert kinds == [
        HoldKind.REGURGITATED,
        HoldKind.OTHER,
        HoldKind.QUARANTINE,
        HoldKind.JUST_SHED,
    ]


def test_a_hold_of_a_kind_the_profile_does_not_know_is_kept() -> None:
    (hold,) = holds_of(fed("2026-09-16"), [a_hold(kind=HoldKind.VET)], a_profile(holds={}), TODAY)

    assert (hold.skip, hold.until) == (True, None)


# --- holds that lay on a past day --------------------------------------------------------------


def test_a_refusal_between_opaque_and_shed_is_excused() -> None:
    signs = [a_shed_sign("2026-09-10"), a_shed_sign("2026-09-18", ShedStage.SHED)]

    inside = holds_on(day("2026-09-14"), [], signs, PROFILE)

    assert excused(a_refusal("2026-09-14"), inside)
    assert holds_on(day("2026-09-09"), [], signs, PROFILE) == ()
    assert holds_on(day("2026-09-18"), [], signs, PROFILE) == ()


def test_an_opaque_hold_set_by_hand_lay_until_the_shed() -> None:
    by_hand = [a_hold("2026-09-10", HoldKind.OPAQUE)]
    signs = [a_shed_sign("2026-09-08", ShedStage.SHED), a_shed_sign("2026-09-18", ShedStage.SHED)]

    before, after = (
        holds_on(day(on), by_hand, signs, PROFILE) for on in ("2026-09-17", "2026-09-18")
    )

    assert [(hold.kind, hold.until) for hold in before] == [(HoldKind.OPAQUE, day("2026-09-18"))]
    assert after == ()


def test_an_opaque_sign_never_followed_up_excuses_for_one_cycle_only() -> None:
    signs = [a_shed_sign("2026-09-01")]

    assert holds_on(day("2026-09-15"), [], signs, PROFILE) != ()
    assert holds_on(day("2026-09-16"), [], signs, PROFILE) == ()


def test_a_refusal_in_quarantine_counts() -> None:
    lying = holds_on(TODAY, [a_hold("2026-09-01", HoldKind.QUARANTINE)], [], PROFILE)

    assert lying and not excused(a_refusal("2026-09-23"), lying)


def test_a_refusal_in_season_is_half_counted_and_not_excused() -> None:
    lying = holds_on(TODAY, [a_hold("2026-09-01", HoldKind.SEASON)], [], PROFILE)

    assert half_counted(a_refusal(), lying)
    assert not excused(a_refusal(), lying)


def test_a_meal_taken_under_a_hold_needs_no_excuse() -> None:
    lying = holds_on(TODAY, [a_hold("2026-09-01", HoldKind.VET)], [], PROFILE)

    assert excused(a_refusal(), lying)
    assert not excused(an_offer(), lying)


def test_on_its_last_day_a_past_hold_lay_no_longer() -> None:
    vet = [a_hold("2026-09-01", HoldKind.VET, until="2026-09-23")]

    assert holds_on(day("2026-09-22"), vet, [], PROFILE) != ()
    assert holds_on(TODAY, vet, [], PROFILE) == ()
