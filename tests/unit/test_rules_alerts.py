"""The watch: one line an animal, worst first, excused and put aside, silence told as silence."""

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest

from keeper.husbandry.animal import Sex, Stage, Status
from keeper.husbandry.events import (
    Heat,
    HoldKind,
    RemarkKind,
    Result,
    ShedQuality,
    ShedStage,
    Snooze,
    Zone,
)
from keeper.husbandry.when import at_instant, on_day
from keeper.rules.alerts import WORST_KINDS, HouseFacts, Severity, WatchFacts, WatchLine, watch
from keeper.rules.causes import causes
from keeper.rules.growth.expectation import expectation
from keeper.rules.heat import cold_after_feeding, heat_verdicts
from keeper.rules.holds import Hold
from keeper.rules.refusals import CountedRefusals
from keeper.rules.refused_groups import RefusalInRow
from keeper.rules.sheds import shed_clock
from tests.builders import a_profile, a_remark, a_shed_sign, an_animal, day

PROFILE = a_profile()
TODAY = day("2026-09-23")
AT = datetime(2026, 9, 23, 20, 0, tzinfo=UTC)
QUIET = HouseFacts()


def ago(days: int) -> date:
    return TODAY - timedelta(days=days)


def calm(animal: int = 1, **changed: Any) -> WatchFacts:
    """An adult with nothing to say: weighed and fed this week."""
    now = {
        "animal": animal,
        "place": f"A1·{animal}",
        "weighed_on": ago(2),
        "weight_g": 200.0,
        "eaten_on": ago(5),
        "offered_on": ago(5),
        "offered_result": Result.TAKEN,
        "meals": 10,
        "first_entry_on": day("2024-04-01"),
        "last_entry_on": ago(2),
    }
    told = {
        "now": an_animal(**(now | changed.pop("now", {}))),
        "profile": PROFILE,
        "stage": Stage.ADULT,
        "empties": weights((60, 200.0), (30, 200.0), (2, 200.0)),
        "refusals": CountedRefusals(),
    }
    return WatchFacts(**(told | changed))


def weights(*readings: tuple[int, float]) -> list[tuple[date, float, bool]]:
    return [(ago(days), grams, False) for days, grams in readings]


LOST_9 = weights((60, 200.0), (30, 200.0), (9, 182.0), (2, 180.0))
LOST_12 = weights((60, 200.0), (30, 200.0), (9, 176.0), (2, 174.0))
LOST_22 = weights((60, 200.0), (30, 200.0), (2, 156.0))


def hold(kind: HoldKind, since: int = 3, **changed: Any) -> Hold:
    return Hold(kind=kind, since=ago(since), **changed)


def snooze(kind: str, set_ago: int = 2, until: int = 5) -> Snooze:
    return Snooze(
        animal=1,
        happened=on_day(ago(set_ago)),
        watch_kind=kind,
        until=TODAY + timedelta(days=until),
        reason="on the vet's list",
    )


def lines(*facts: WatchFacts, house: HouseFacts = QUIET) -> list[tuple[str, str]]:
    return [(line.kind, line.severity.value) for line in watch(facts, house, TODAY)]


def one(facts: WatchFacts) -> WatchLine:
    (line,) = watch([facts], QUIET, TODAY)
    return line


def whys(line: WatchLine) -> list[str]:
    return [reason.why for reason in line.because]


def test_an_animal_with_nothing_to_say_has_no_line() -> None:
    assert lines(calm()) == []


@pytest.mark.parametrize(
    ("empties", "severity"), [(LOST_9, "this week"), (LOST_12, "today"), (LOST_22, "today")]
)
def test_each_step_of_loss_has_its_urgency(empties: Any, severity: str) -> None:
    assert lines(calm(empties=empties)) == [("weight loss", severity)]


def test_a_fifth_lost_asks_for_a_vet_the_same_day() -> None:
    assert "ask a reptile vet the same day" in whys(one(calm(empties=LOST_22)))


def test_losing_while_eating_is_todays() -> None:
    meals = [(ago(days), 12.0) for days in (28, 20, 12, 5)]

    line = one(calm(empties=LOST_9, meals=meals))

    assert (line.kind, line.severity) == ("losing while eating", Severity.TODAY)
    assert "ask a reptile vet" in whys(line)


def test_one_weighing_of_nine_per_cent_less_raises_nothing() -> None:
    assert lines(calm(empties=weights((60, 200.0), (30, 200.0), (2, 182.0)))) == []


@pytest.mark.parametrize("kind", [HoldKind.GRAVID, HoldKind.PRE_LAY])
def test_eggs_excuse_any_loss(kind: HoldKind) -> None:
    told = lines(calm(empties=LOST_22, holds=[hold(kind)]))

    assert [kind for kind, _ in told if kind != "laying near"] == []


def test_cooling_excuses_a_loss_but_not_a_fifth() -> None:
    cooled = [hold(HoldKind.COOLING)]

    assert lines(calm(empties=LOST_12, holds=cooled)) == []
    assert lines(calm(empties=LOST_22, holds=cooled)) == [("weight loss", "today")]


def test_an_old_weight_is_noted_as_not_telling() -> None:
    line = one(calm(now={"weighed_on": ago(91)}))

    assert (line.kind, line.severity) == ("stale weight", Severity.NOTED)
    assert whys(line) == ["stale weight"]


def test_no_weight_at_all_is_never_fine() -> None:
    assert lines(calm(now={"weighed_on": None, "weight_g": None})) == [("stale weight", "noted")]


def test_weights_nobody_looked_up_are_not_judged_lost() -> None:
    assert lines(calm(empties=None)) == []


def test_under_expectation_is_this_weeks() -> None:
    expected = expectation(PROFILE.growth[Sex.FEMALE], 900)

    line = one(calm(expected=expected, empties=weights((60, 90.0), (30, 90.0), (2, 90.0))))

    assert (line.kind, line.severity) == ("under expectation", Severity.THIS_WEEK)


def test_counted_refusals_at_a_step_are_this_weeks() -> None:
    assert lines(calm(refusals=CountedRefusals(counted=2))) == []
    assert lines(calm(refusals=CountedRefusals(counted=3))) == [("refusals", "this week")]


def test_a_long_fast_with_refusals_asks_for_a_review() -> None:
    facts = calm(now={"eaten_on": ago(46)}, refusals=CountedRefusals(counted=2))

    assert lines(facts) == [("not eaten for long", "this week")]


def test_missing_nights_are_not_starvation() -> None:
    line = one(calm(now={"eaten_on": ago(46), "offered_on": ago(46)}))

    assert line.severity is Severity.NOTED
    assert whys(line) == ["not eaten, but not refused either"]


@pytest.mark.parametrize("kind", [HoldKind.COOLING, HoldKind.GRAVID, HoldKind.SEASON])
def test_a_hold_excuses_refusals_and_fasting(kind: HoldKind) -> None:
    facts = calm(now={"eaten_on": ago(60)}, refusals=CountedRefusals(counted=5), holds=[hold(kind)])

    assert lines(facts) == []


def test_quarantine_excuses_no_refusal() -> None:
    facts = calm(refusals=CountedRefusals(counted=3), holds=[hold(HoldKind.QUARANTINE, skip=False)])

    assert lines(facts) == [("refusals", "this week")]


def a_non_starter(**changed: Any) -> WatchFacts:
    now = {
        "hatched_first": ago(38),
        "first_entry_on": ago(36),
        "eaten_on": None,
        "meals": 0,
        "offered_result": Result.REFUSED,
    }
    told = {"now": now | changed.pop("now", {}), "stage": Stage.HATCHLING, "empties": None}
    return calm(**(told | changed))


def test_a_hatchling_that_never_ate_is_todays_near_its_deadline() -> None:
    line = one(a_non_starter())  # reserves of 42 days, 4 left

    assert (line.kind, line.severity) == ("not started", Severity.TODAY)
    assert "assisted feeding only by experienced hands or a reptile vet" in whys(line)


def test_further_from_its_deadline_it_is_this_weeks() -> None:
    assert lines(a_non_starter(now={"hatched_first": ago(36)})) == [("not started", "this week")]


def test_no_hold_excuses_a_hatchling_from_its_deadline() -> None:
    assert lines(a_non_starter(holds=[hold(HoldKind.OPAQUE)]))[0] == ("not started", "today")


def test_a_hatchling_whose_offers_nobody_wrote_is_only_noted() -> None:
    assert lines(a_non_starter(now={"offered_on": None, "offered_result": None})) == [
        ("not started", "noted")
    ]


def test_a_first_regurgitation_is_this_weeks_and_a_second_todays() -> None:
    first = {"regurgitated_on": ago(2)}
    second = first | {"regurgitated_before_on": ago(40)}

    assert lines(calm(now=first)) == [("regurgitated", "this week")]
    assert lines(calm(now=second)) == [("regurgitated", "today")]
    assert "ask a reptile vet" in whys(one(calm(now=second)))


def test_a_regurgitation_of_long_ago_is_past() -> None:
    assert lines(calm(now={"regurgitated_on": ago(12)})) == []


def test_prey_left_in_last_night_is_todays_and_tonight_nobodys() -> None:
    left = {"offered_result": Result.LEFT_IN}

    assert lines(calm(now=left | {"offered_on": TODAY})) == []
    assert lines(calm(now=left | {"offered_on": ago(1)})) == [("left in", "today")]


def with_sheds(*signs: Any, **changed: Any) -> WatchFacts:
    facts = calm(signs=signs, **changed)
    clock = shed_clock(facts.now, signs, PROFILE, facts.stage, TODAY)
    return replace(facts, clock=clock)


def sign(days_ago: int, stage: ShedStage = ShedStage.SHED, **changed: Any) -> Any:
    return a_shed_sign(ago(days_ago).isoformat(), stage, **changed)


@pytest.mark.parametrize(
    ("signs", "kind"),
    [
        ([sign(60), sign(11, ShedStage.OPAQUE)], "opaque too long"),
        ([sign(60), sign(12, ShedStage.OPAQUE), sign(8, ShedStage.CLEARED)], "cleared too long"),
        ([sign(130)], "shed overdue"),
    ],
)
def test_what_the_shed_clock_finds_late_is_this_weeks(signs: list[Any], kind: str) -> None:
    assert lines(with_sheds(*signs)) == [(kind, "this week")]


def test_a_late_shed_of_a_cooled_animal_is_not_late() -> None:
    assert lines(with_sheds(sign(130), holds=[hold(HoldKind.COOLING)])) == []


def test_the_first_shed_has_its_own_line() -> None:
    young = {"hatched_first": ago(20), "first_entry_on": ago(19), "eaten_on": ago(3), "meals": 1}
    facts = with_sheds(now=young, stage=Stage.HATCHLING, empties=None)

    assert lines(facts) == [("first shed overdue", "this week")]


def test_an_unknown_shed_is_noted_not_fine() -> None:
    assert lines(with_sheds()) == [("shed not known", "noted")]


def test_a_cap_kept_twice_is_for_a_vet_and_never_picked_at() -> None:
    caps = [sign(50, quality=ShedQuality.CAP_KEPT), sign(3, quality=ShedQuality.CAP_KEPT)]

    line = one(with_sheds(*caps))

    assert line.kind == "stuck shed"
    assert {"never pick at an eye cap", "ask a reptile vet"} <= set(whys(line))


def test_a_ring_on_the_tail_tip_is_todays() -> None:
    assert lines(with_sheds(sign(1, quality=ShedQuality.TIP_KEPT))) == [("stuck shed", "today")]


def test_a_whole_shed_leaves_no_line() -> None:
    assert lines(with_sheds(sign(1, quality=ShedQuality.WHOLE))) == []


def test_a_hold_that_asks_to_be_renewed_has_a_line() -> None:
    asking = [hold(HoldKind.VET, since=31, asks_renewal=True)]

    assert lines(calm(holds=asking)) == [("hold without end", "this week")]


def test_eggs_not_laid_in_time_are_for_a_vet_the_same_day() -> None:
    line = one(calm(holds=[hold(HoldKind.PRE_LAY, since=19, asks_renewal=True)]))

    assert (line.kind, line.severity) == ("laying overdue", Severity.TODAY)
    assert "ask a reptile vet the same day" in whys(line)


def test_quarantine_speaks_in_its_last_week() -> None:
    ending = [hold(HoldKind.QUARANTINE, since=85, until=TODAY + timedelta(days=5), skip=False)]
    running = [hold(HoldKind.QUARANTINE, since=10, until=TODAY + timedelta(days=80), skip=False)]

    assert lines(calm(holds=ending)) == [("quarantine", "this week")]
    assert lines(calm(holds=running)) == []


def test_a_remark_on_breathing_is_todays_with_its_caution() -> None:
    wheeze = [a_remark(ago(1).isoformat(), kind=RemarkKind.BREATHING, text="wheeze")]

    line = one(calm(remarks=wheeze))

    assert (line.kind, line.severity) == ("breathing", Severity.TODAY)
    assert "ask a reptile vet the same day if the mouth is open" in whys(line)


def test_two_signals_of_different_kinds_go_one_step_up() -> None:
    line = one(calm(empties=LOST_9, refusals=CountedRefusals(counted=3)))

    assert (line.kind, line.severity) == ("weight loss", Severity.TODAY)
    assert "two signals together" in whys(line)


def test_two_signals_of_one_kind_stay_where_they_are() -> None:
    expected = expectation(PROFILE.growth[Sex.FEMALE], 900)
    thin = weights((60, 100.0), (30, 100.0), (9, 91.0), (2, 90.0))

    assert lines(calm(expected=expected, empties=thin)) == [("weight loss", "this week")]


def test_one_line_an_animal_carries_all_its_reasons() -> None:
    line = one(calm(empties=LOST_12, refusals=CountedRefusals(counted=3)))

    assert {"lost since baseline", "refused in a row"} <= set(whys(line))


def test_the_worst_comes_first_then_walking_order() -> None:
    found = watch(
        [
            calm(2, now={"place": "B1·1"}, refusals=CountedRefusals(counted=3)),
            calm(3, now={"place": "A9·1"}, refusals=CountedRefusals(counted=3)),
            calm(4, empties=LOST_22),
        ],
        QUIET,
        TODAY,
    )

    assert [line.animal for line in found] == [4, 3, 2]


def test_a_snooze_silences_its_kind_until_its_day() -> None:
    refusing = CountedRefusals(counted=3)

    assert lines(calm(refusals=refusing, snoozes=[snooze("refusals")])) == []
    assert lines(calm(refusals=refusing, snoozes=[snooze("weight loss")])) != []
    assert lines(calm(refusals=refusing, snoozes=[snooze("refusals", until=0)])) != []


def test_a_snooze_does_not_silence_the_vets_same_day() -> None:
    assert lines(calm(empties=LOST_22, snoozes=[snooze("weight loss")])) != []


def test_put_aside_twice_it_comes_back_one_step_up() -> None:
    twice = [snooze("refusals", 40, -30), snooze("refusals", 20, -10)]

    assert lines(calm(refusals=CountedRefusals(counted=3), snoozes=twice)) == [
        ("refusals", "today")
    ]


@pytest.mark.parametrize("status", [Status.SOLD, Status.DIED, Status.MISSING, Status.ON_LOAN])
def test_an_animal_that_is_not_here_has_no_line(status: Status) -> None:
    assert lines(calm(now={"status": status}, empties=LOST_22)) == []


def a_row_refusing() -> HouseFacts:
    offers = [
        RefusalInRow(
            animal=n,
            place=f"{'AB'[n // 40]}{n % 40 // 10 + 1}·{n % 10 + 1}",
            night=ago(1),
            refused=70 <= n < 78,
            own_rate=0.08,
        )
        for n in range(80)
    ]
    return HouseFacts(causes=causes(offers))


def test_a_cause_holds_its_animals_and_silences_their_refusals() -> None:
    facts = [calm(n, refusals=CountedRefusals(counted=3)) for n in (71, 5)]

    found = watch(facts, a_row_refusing(), TODAY)

    assert [(line.kind, line.animal) for line in found] == [
        ("refusals in a row of tubs", None),
        ("refusals", 5),
    ]
    assert found[0].members == tuple(range(70, 78))


def test_a_cause_does_not_silence_a_loss() -> None:
    found = watch([calm(71, empties=LOST_12)], a_row_refusing(), TODAY)

    assert ("weight loss", 71) in [(line.kind, line.animal) for line in found]


def reading(temp_c: float, zone: Zone = Zone.HOT, place: str = "B4") -> Heat:
    return Heat(place=place, happened=at_instant(AT), zone=zone, temp_c=temp_c)


def test_a_cold_row_that_refuses_is_one_line() -> None:
    house = replace(a_row_refusing(), heat=heat_verdicts([reading(24.0)], PROFILE, AT))

    (line,) = watch([], house, TODAY)

    assert (line.kind, line.place, line.severity) == ("cold row", "B4", Severity.TODAY)
    assert {"refused together", "too cold"} <= set(whys(line))


def test_cold_after_feeding_names_the_fed_once() -> None:
    readings = [reading(24.0)]
    cold = cold_after_feeding(readings, [(7, AT - timedelta(hours=20))], PROFILE, AT)
    assert cold is not None
    house = HouseFacts(heat=heat_verdicts(readings, PROFILE, AT), cold_after_feeding=[cold])

    (line,) = watch([], house, TODAY)

    assert (line.kind, line.members) == ("cold after feeding", (7,))


def test_an_overheated_place_is_now_and_first() -> None:
    house = HouseFacts(heat=heat_verdicts([reading(39.0)], PROFILE, AT))

    assert lines(calm(empties=LOST_22), house=house)[0] == ("heat", "now")


def test_a_place_within_limits_has_no_line() -> None:
    assert lines(house=HouseFacts(heat=heat_verdicts([reading(31.0)], PROFILE, AT))) == []


def test_every_kind_of_line_stands_in_the_order_once() -> None:
    assert len(set(WORST_KINDS)) == len(WORST_KINDS)
