"""The steps for a hatchling that does not start."""

from datetime import date
from typing import Any

from keeper.rules.ladder import (
    Advice,
    LadderStep,
    StepRecord,
    Tried,
    next_step,
    slope_g_per_day,
    step_records,
)
from tests.builders import a_profile, an_animal, day

TODAY = day("2026-09-23")
HATCHLING = an_animal(hatched_first=day("2026-08-20"))
STEPS = list(LadderStep)


def failed(count: int) -> list[Tried]:
    return [Tried(step=step, on=day("2026-09-22"), ate=False) for step in STEPS[:count]]


def advice(tried: list[Tried], **told: Any) -> Advice:
    return next_step(tried, told.pop("now", HATCHLING), a_profile(), TODAY, **told)


def whys(told: Advice) -> set[str]:
    return {reason.why for reason in (*told.because, *told.cautions)}


def test_the_next_step_is_the_first_not_yet_tried() -> None:
    assert advice([]).step is LadderStep.CUP
    assert advice(failed(2)).step is LadderStep.WASHED


def test_a_step_skipped_is_still_to_come() -> None:
    later = [Tried(step=LadderStep.TEASED, on=day("2026-09-20"), ate=False)]

    assert advice(later).step is LadderStep.CUP


def test_one_change_at_a_time_three_days_apart() -> None:
    assert advice(failed(1)).not_before == day("2026-09-25")
    assert advice([]).not_before == TODAY


def test_a_live_newborn_is_no_step_until_the_keeper_says_it_is_lawful() -> None:
    assert advice(failed(7)).step is None
    lawful = advice(failed(7), live_lawful=True)
    assert lawful.step is LadderStep.LIVE
    assert "live prey, check local law" in whys(lawful)


def test_before_five_failures_nothing_is_said_of_assisted_feeding() -> None:
    told = advice(failed(4))

    assert (told.assist, told.cautions) == (False, ())


def test_after_five_failures_assisting_is_for_experienced_hands_and_a_vet_is_asked() -> None:
    told = advice(failed(5))

    assert told.assist
    assert {
        "assisted feeding by experienced hands only",
        "tube or force only by or under a vet",
        "ask a reptile vet",
    } <= whys(told)


def test_ten_per_cent_lost_is_as_grave_as_five_failures() -> None:
    weights = [(day("2026-08-20"), 4.0), (day("2026-09-20"), 3.6)]

    assert advice(failed(1), weights=weights).assist
    assert "lost since hatching" in whys(advice(failed(1), weights=weights))


def test_the_deadline_is_the_day_her_weight_falls_to_the_vets_line() -> None:
    weights = [(day("2026-09-01"), 4.0), (day("2026-09-11"), 3.9), (day("2026-09-21"), 3.8)]

    told = advice([], weights=weights)  # 15 per cent of 4.0 g lost is 3.4 g, at 0.01 g a day

    assert told.deadline == day("2026-10-01")  # 42 days of reserves end before 31 October
    assert "reserves end" in whys(told)


def test_a_quick_loss_brings_the_deadline_before_the_end_of_the_reserves() -> None:
    weights = [(day("2026-09-16"), 4.0), (day("2026-09-22"), 3.7)]

    told = advice([], weights=weights)

    assert told.deadline == day("2026-09-28")  # 0.3 g more at 0.05 g a day
    assert "weight runs out" in whys(told)


def test_without_hatch_date_and_weights_no_deadline_can_be_told() -> None:
    told = advice([], now=an_animal(hatched_first=None))

    assert (told.deadline, "no deadline known" in whys(told)) == (None, True)


def test_a_weight_that_rises_sets_no_deadline_of_its_own() -> None:
    rising: list[tuple[date, float]] = [(day("2026-09-01"), 3.8), (day("2026-09-20"), 4.0)]

    assert "reserves end" in whys(advice([], weights=rising))


def test_one_weighing_has_no_slope() -> None:
    assert slope_g_per_day([(TODAY, 4.0)]) is None
    assert slope_g_per_day([(TODAY, 4.0), (TODAY, 3.9)]) is None


def test_each_steps_success_in_the_line_is_counted_over_known_results() -> None:
    line = [
        Tried(step=LadderStep.CUP, on=TODAY, ate=True),
        Tried(step=LadderStep.CUP, on=TODAY, ate=False),
        Tried(step=LadderStep.CUP, on=TODAY),
    ]

    told = advice([], in_line=step_records(line))

    assert step_records(line) == {LadderStep.CUP: StepRecord(tried=2, ate=1)}
    assert told.record == StepRecord(tried=2, ate=1)
