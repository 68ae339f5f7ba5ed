"""The shed clock: where she stands, what is late, and when the record cannot say."""

from datetime import date, timedelta
from typing import Any

import pytest

from keeper.husbandry.animal import Stage
from keeper.husbandry.events import ShedSign, ShedStage
from keeper.husbandry.when import Happened, on_day
from keeper.rules.sheds import ShedClock, shed_clock
from tests.builders import a_profile, a_shed_sign, an_animal, day

PROFILE = a_profile()  # adult 42-84 d, opaque 10 d, cleared 7 d, cycle 14 d, first shed 14 d
TODAY = day("2026-09-23")


def ago(days: int) -> date:
    return TODAY - timedelta(days=days)


def sign(days_ago: int, stage: ShedStage = ShedStage.SHED, **changed: Any) -> ShedSign:
    return a_shed_sign(ago(days_ago).isoformat(), stage, **changed)


def clock_of(*signs: ShedSign, **changed: Any) -> ShedClock:
    """The clock of an adult with an entry yesterday."""
    now = an_animal(**({"last_entry_on": ago(1), "first_entry_on": day("2024-04-01")} | changed))
    return shed_clock(now, signs, PROFILE, Stage.ADULT, TODAY)


def whys(clock: ShedClock) -> list[str]:
    return [reason.why for reason in clock.because]


def test_between_sheds_the_next_is_within_the_expected_span() -> None:
    clock = clock_of(sign(30))

    assert (clock.verdict, clock.stage, clock.shed_days) == ("in step", None, 30)
    assert clock.next_low is not None and clock.next_high is not None
    assert 35 < (clock.next_low - ago(30)).days < (clock.next_high - ago(30)).days < 110


def test_without_own_gaps_overdue_is_past_the_95_per_cent_of_the_species() -> None:
    late = clock_of(sign(200)).spacing
    assert late is not None
    edge = int(late.quantile_days(0.95))

    assert clock_of(sign(edge)).verdict == "in step"
    assert clock_of(sign(edge + 1)).verdict == "overdue"
    assert clock_of(sign(edge + 1)).overdue_days == 1


def test_her_own_short_gaps_make_her_overdue_sooner() -> None:
    quick = [sign(days) for days in (260, 215, 170, 125, 80)]  # every 45 days

    assert clock_of(sign(80)).verdict == "in step"
    assert clock_of(*quick).verdict == "overdue"


def test_a_gap_that_two_sheds_explain_better_teaches_nothing() -> None:
    clock = clock_of(sign(150), sign(20))  # 130 d where 59 d are usual

    assert clock.spacing is not None
    assert clock.spacing.learned_from == 0
    assert "gaps left out" in whys(clock)


def test_a_truly_slow_shedder_is_believed() -> None:
    clock = clock_of(sign(110), sign(20))  # 90 d

    assert clock.spacing is not None
    assert clock.spacing.learned_from == 1
    assert clock.spacing.median_days > 62


def test_a_shed_known_to_a_week_is_learned_as_an_interval() -> None:
    vague = Happened(at=on_day(ago(70)).at, span=timedelta(days=7), day=ago(70))
    clock = clock_of(sign(130), sign(70, happened=vague))

    assert clock.shed_days == 64  # only so many days are certain
    assert clock.spacing is not None and clock.spacing.learned_from == 1


def test_a_pre_lay_shed_is_not_learned_from() -> None:
    clock = clock_of(sign(60), sign(20, pre_lay=True))

    assert clock.spacing is not None
    assert clock.spacing.learned_from == 0


def test_opaque_past_ten_days_is_too_long() -> None:
    assert clock_of(sign(60), sign(10, ShedStage.OPAQUE)).verdict == "in step"
    late = clock_of(sign(60), sign(11, ShedStage.OPAQUE))
    assert (late.verdict, late.overdue_days, late.stage) == (
        "opaque too long",
        1,
        ShedStage.OPAQUE,
    )


def test_opaque_since_an_uncertain_day_is_late_only_when_that_is_certain() -> None:
    seen = Happened(at=on_day(ago(12)).at, span=timedelta(days=4), day=ago(12))

    clock = clock_of(sign(60), sign(12, ShedStage.OPAQUE, happened=seen))

    assert clock.verdict == "in step"  # opaque for 9 to 12 days


def test_an_opaque_sign_written_again_keeps_its_first_day() -> None:
    clock = clock_of(sign(60), sign(12, ShedStage.OPAQUE), sign(3, ShedStage.OPAQUE))

    assert clock.verdict == "opaque too long"
    assert clock.since == ago(12)


def test_cleared_past_a_week_without_a_shed_is_too_long() -> None:
    clock = clock_of(sign(60), sign(12, ShedStage.OPAQUE), sign(8, ShedStage.CLEARED))

    assert (clock.verdict, clock.overdue_days, clock.cycle_days) == ("cleared too long", 1, 12)


def test_dull_past_a_whole_cycle_is_overdue() -> None:
    assert clock_of(sign(60), sign(15, ShedStage.DULL)).verdict == "overdue"


def test_in_a_cycle_the_shed_is_expected_within_its_usual_days() -> None:
    clock = clock_of(sign(60), sign(2, ShedStage.CLEARED))

    assert (clock.next_low, clock.next_high) == (TODAY, TODAY + timedelta(days=5))


def test_a_sign_that_was_never_closed_cannot_be_told() -> None:
    clock = clock_of(sign(160), sign(60, ShedStage.OPAQUE))

    assert clock.verdict == "cannot tell"
    assert whys(clock) == ["sign never closed"]


def test_a_long_silence_is_not_a_late_shed() -> None:
    clock = clock_of(sign(120), last_entry_on=ago(60))

    assert clock.verdict == "cannot tell"
    assert whys(clock) == ["nothing written since"]
    assert clock.next_mid is None


def test_a_silence_inside_the_record_hides_a_shed() -> None:
    now = an_animal(last_entry_on=ago(1))
    entries = [ago(110), ago(105), ago(20), ago(1)]

    clock = shed_clock(now, [sign(112)], PROFILE, Stage.ADULT, TODAY, entries_on=entries)

    assert clock.verdict == "cannot tell"
    assert whys(clock) == ["no entries between"]


def test_a_hatchling_past_its_first_shed_is_overdue() -> None:
    hatchling = {"hatched_first": ago(15), "first_entry_on": ago(14)}
    clock = clock_of(**hatchling)

    assert (clock.verdict, clock.first_shed, clock.overdue_days) == ("overdue", True, 1)


def test_a_hatchling_before_its_first_shed_is_in_step() -> None:
    clock = clock_of(hatched_first=ago(14), first_entry_on=ago(13))

    assert (clock.verdict, clock.next_high) == ("in step", TODAY)


def test_a_bought_animal_without_a_shed_in_the_book_cannot_be_told() -> None:
    clock = clock_of(hatched_first=ago(60), first_entry_on=ago(20))

    assert whys(clock) == ["no shed in the book"]


def test_an_animal_whose_sheds_nobody_writes_cannot_be_told() -> None:
    clock = clock_of(hatched_first=ago(400), first_entry_on=ago(399))

    assert whys(clock) == ["no shed ever written"]


def test_the_shed_after_eggs_keeps_no_clock() -> None:
    clock = clock_of(sign(130), clutch_on=ago(120))

    assert clock.verdict == "cannot tell"
    assert whys(clock)[0] == "after laying"


def test_the_state_row_alone_tells_the_clock() -> None:
    clock = clock_of(
        shed_on=ago(20), shed_before_on=ago(75), stage=ShedStage.OPAQUE, stage_since=ago(3)
    )

    assert (clock.stage, clock.since, clock.shed_days) == (ShedStage.OPAQUE, ago(3), 20)


def test_a_sign_of_tomorrow_is_not_seen_today() -> None:
    assert clock_of(sign(20), sign(-1, ShedStage.OPAQUE)).stage is None


def test_a_shed_of_the_same_day_ends_the_opaque_sign() -> None:
    assert clock_of(sign(3), sign(3, ShedStage.OPAQUE)).stage is None


@pytest.mark.parametrize("stage", [None, *Stage])
def test_every_stage_and_none_has_a_clock(stage: Stage | None) -> None:
    now = an_animal(last_entry_on=ago(1))

    assert shed_clock(now, [sign(5)], PROFILE, stage, TODAY).verdict == "in step"
