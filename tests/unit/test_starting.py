"""Non-starters: the steps tried with each hatchling, what they led to in its line, what is next."""

from contextlib import closing
from datetime import UTC, date, datetime, timedelta

import pytest

from keeper.actions.keeping import new_keeping
from keeper.actions.recording import Newcomer, receive, write_up
from keeper.actions.starting import (
    line_records,
    not_started,
    outcomes,
    say_live_is_lawful,
    starting,
    try_step,
)
from keeper.husbandry.events import Evidence, Offer, Result, StartStep, Weighing
from keeper.husbandry.when import on_day
from keeper.reports.figures import plain
from keeper.reports.words import because_text
from keeper.rules.ladder import LadderStep, StepRecord

HATCHED = date(2026, 9, 1)


class Days:
    """Noon of a day that the test turns on."""

    def __init__(self) -> None:
        self.day = HATCHED + timedelta(days=16)

    def __call__(self) -> datetime:
        return datetime(self.day.year, self.day.month, self.day.day, 12, tzinfo=UTC)


@pytest.fixture
def days():
    return Days()


@pytest.fixture
def keeping(tmp_path, days):
    made = new_keeping(tmp_path / "young.book", station="trolley", now=days, keeper="Ro")
    with closing(made) as book:
        yield book


@pytest.fixture
def young(keeping):
    """Three hatchlings of one line and one of another."""
    comers = [
        Newcomer(
            happened=on_day(HATCHED),
            code=f"26-0{n}",
            species="house_snake",
            hatched=HATCHED,
            clutch="26-01",
            line="copper" if n < 3 else "ash",
            place=f"H1·{n + 1}",
        )
        for n in range(4)
    ]
    _, animals = receive(keeping, comers)
    weights = [Weighing(animal=a, happened=on_day(HATCHED), weight_g=3.5) for a in animals]
    write_up(keeping, weights)
    return animals


def offer(keeping, animal, day, result, evidence=Evidence.SEEN):
    told = Offer(
        animal=animal, happened=on_day(day), result=result, evidence=evidence, prey="mouse pinky"
    )
    write_up(keeping, [told])


def trial(keeping, days, animal, step, result):
    """One step with what came of it, then the days until the next may be tried."""
    try_step(keeping, animal, step)
    offer(keeping, animal, days.day, result)
    days.day += timedelta(days=4)


def test_the_first_step_is_the_first_of_the_ladder_with_its_deadline(keeping, young, days):
    offer(keeping, young[0], days.day, Result.REFUSED)

    (told,) = not_started(keeping, days.day)

    assert told.animal.animal == young[0]
    assert told.advice.step is LadderStep.CUP
    assert told.advice.deadline is not None
    assert HATCHED < told.advice.deadline < HATCHED + timedelta(days=60)


def test_the_next_step_is_the_first_untried_and_not_before_some_days(keeping, young, days):
    try_step(keeping, young[0], LadderStep.CUP)
    offer(keeping, young[0], days.day, Result.REFUSED)

    told = starting(keeping, young[0], days.day)

    assert [(t.step, t.ate) for t in told.tried] == [(LadderStep.CUP, False)]
    assert told.advice.step is LadderStep.SMALLER
    assert told.advice.not_before == days.day + timedelta(days=3)


def test_success_is_counted_by_step_in_this_line_alone(keeping, young, days):
    trial(keeping, days, young[0], LadderStep.CUP, Result.TAKEN)
    trial(keeping, days, young[1], LadderStep.CUP, Result.REFUSED)
    trial(keeping, days, young[3], LadderStep.CUP, Result.TAKEN)

    told = starting(keeping, young[2], days.day).advice

    assert line_records(keeping, "copper", "house_snake", days.day) == {
        LadderStep.CUP: StepRecord(tried=2, ate=1)
    }
    assert "in this line tried with 2, of which 1 ate" in plain(because_text(told.because))


def test_after_many_failed_steps_the_cautions_stand_beside_the_advice(keeping, young, days):
    for step in list(LadderStep)[:5]:
        trial(keeping, days, young[0], step, Result.REFUSED)

    advice = starting(keeping, young[0], days.day).advice

    assert advice.assist
    assert plain(because_text(advice.cautions)) == (
        "Assisted feeding by experienced hands only."
        " Tube or force feeding only by a reptile vet or under one’s instruction."
        " Ask a reptile vet."
    )


def test_falling_weight_brings_the_deadline_nearer(keeping, young, days):
    before = starting(keeping, young[0], days.day).advice.deadline
    write_up(keeping, [Weighing(animal=young[0], happened=on_day(days.day), weight_g=3.1)])

    after = starting(keeping, young[0], days.day).advice.deadline

    assert after < before


def test_live_prey_is_no_step_until_the_keeper_says_it_is_lawful(keeping, young, days):
    with pytest.raises(ValueError, match="Live prey: check local law"):
        try_step(keeping, young[0], LadderStep.LIVE)
    assert starting(keeping, young[0], days.day).tried == ()

    say_live_is_lawful(keeping, yes=True)
    for step in list(LadderStep)[:7]:
        trial(keeping, days, young[0], step, Result.REFUSED)

    advice = starting(keeping, young[0], days.day).advice
    assert advice.step is LadderStep.LIVE
    assert "Live prey: check local law." in because_text(advice.cautions)


def test_a_hatchling_that_ate_is_no_non_starter(keeping, young, days):
    trial(keeping, days, young[0], LadderStep.CUP, Result.TAKEN)

    assert not_started(keeping, days.day) == ()


def a_step(day, step=LadderStep.CUP):
    return StartStep(animal=1, happened=on_day(day), step=step.value)


def told_of(day, result, evidence=Evidence.SEEN):
    return Offer(animal=1, happened=on_day(day), result=result, evidence=evidence)


@pytest.mark.parametrize(
    ("offers", "ate"),
    [
        ([], None),
        ([told_of(HATCHED, Result.LEFT_IN)], None),
        ([told_of(HATCHED, Result.TAKEN, Evidence.ASSUMED)], None),
        ([told_of(HATCHED, Result.TAKEN, Evidence.GONE)], True),
        ([told_of(HATCHED, Result.REFUSED)], False),
        ([told_of(HATCHED - timedelta(days=1), Result.REFUSED)], None),
        ([told_of(HATCHED + timedelta(days=4), Result.TAKEN)], None),
    ],
)
def test_a_step_is_told_by_the_settled_offers_until_the_next(offers, ate):
    steps = [a_step(HATCHED), a_step(HATCHED + timedelta(days=4), LadderStep.SMALLER)]

    assert outcomes(steps, offers)[0].ate is ate


def test_a_step_of_another_version_is_passed_over():
    unknown = StartStep(animal=1, happened=on_day(HATCHED), step="sing to it")

    assert outcomes([unknown], []) == ()
