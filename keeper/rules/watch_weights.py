"""What an animal's weights put on the watch."""

from collections.abc import Iterator
from datetime import date

from keeper.husbandry.events import HoldKind
from keeper.husbandry.reasons import Reason, because
from keeper.rules.shortfalls import stall, underweight
from keeper.rules.watch_facts import Severity, Signal, WatchFacts, days_since
from keeper.rules.weights import (
    CannotTell,
    EmptyWeight,
    empty_weight,
    losing_while_eating,
    loss,
    stage_figure,
)

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("no weight", ()),
    ("stale weight", ("weighed_on", "days", "most")),
    ("ends with a weight above the baseline step", ()),
    ("ends with a weight", ()),
    ("ends with a weight in the expected span", ()),
    ("ends with a gain", ()),
    ("isolate", ()),
    ("check prey, heat, faeces, identity and scale", ()),
)
"""Every reason of this module with the figures it carries."""

CARRIES_EGGS = (HoldKind.GRAVID, HoldKind.PRE_LAY)

_SEVERITY = {
    "watch": Severity.THIS_WEEK,
    "act": Severity.TODAY,
    "vet": Severity.TODAY,
    "same day": Severity.TODAY,
}


def weight_signals(facts: WatchFacts, today: date) -> Iterator[Signal]:
    """Loss, losing while eating, under expectation, stall, and weights that cannot speak."""
    stale = _stale(facts, today)
    if stale is not None:
        yield _not_known("stale weight", stale, facts.now.weighed_on)
        return
    losing = _losing(facts, today)
    if losing is not None:
        yield losing
    under = _under(facts)
    if under is not None:
        yield under
    if losing is None:
        yield from _stalled(facts, today)


def _stale(facts: WatchFacts, today: date) -> Reason | None:
    """Why the last weight cannot speak for today; None when it can."""
    days = days_since(facts.now.weighed_on, today)
    if days is None:
        return because("no weight")
    most = stage_figure(facts.profile.weights.stale_days, facts.stage)
    if days <= most:
        return None
    return because("stale weight", weighed_on=facts.now.weighed_on, days=days, most=most)


def _not_known(kind: str, missing: Reason, since: date | None) -> Signal:
    return Signal(
        kind=kind,
        severity=Severity.NOTED,
        because=(missing,),
        since=since,
        ends=because("ends with a weight"),
    )


def _losing(facts: WatchFacts, today: date) -> Signal | None:
    """Loss, losing while eating, or why neither can be told.

    A cooled animal raises only the loss of the same day.
    """
    if facts.empties is None or facts.held(*CARRIES_EGGS):
        return None
    now, figures = facts.now, (facts.profile, facts.stage, today, facts.now.clutch_on)
    lost = loss(facts.empties, *figures)
    if isinstance(lost, CannotTell):
        return _not_known("weight trend not known", lost.missing, now.weighed_on)
    if lost is None:
        return None
    same_day = lost.step == "same day"
    if facts.held(HoldKind.COOLING) and not same_day:
        return None
    eating = losing_while_eating(facts.empties, facts.meals, *figures)
    if eating is None or isinstance(eating, CannotTell):
        reasons = (*lost.because, *_condition(facts))
        return _loss_signal("weight loss", _SEVERITY[lost.step], reasons, lost.since, same_day)
    reasons = (*eating.because, because("isolate"), *_condition(facts))
    since = now.clutch_on if eating.since < (now.clutch_on or date.min) else eating.since
    return _loss_signal("losing while eating", Severity.TODAY, reasons, since, same_day)


def _loss_signal(
    kind: str, severity: Severity, reasons: tuple[Reason, ...], since: date | None, always: bool
) -> Signal:
    return Signal(
        kind=kind,
        severity=severity,
        because=reasons,
        family="weight",
        since=since,
        ends=because("ends with a weight above the baseline step"),
        always=always,
    )


def _under(facts: WatchFacts) -> Signal | None:
    grams, weighed_on = _last_empty(facts), facts.now.weighed_on
    if grams is None or weighed_on is None:
        return None
    under = underweight(
        grams,
        facts.now.age_days(weighed_on),
        facts.expected,
        facts.clutch_median_g,
        facts.own_hatch_g,
        facts.profile,
    )
    if under is None or isinstance(under, CannotTell):
        return None
    return Signal(
        kind="under expectation",
        severity=Severity.THIS_WEEK,
        because=(*under.because, *_condition(facts)),
        family="weight",
        since=weighed_on,
        ends=because("ends with a weight in the expected span"),
    )


def _condition(facts: WatchFacts) -> tuple[Reason, ...]:
    """Weight for length, shown beside; it decides nothing: the starved may still lengthen."""
    return (facts.condition,) if facts.condition is not None else ()


def _last_empty(facts: WatchFacts) -> float | None:
    if facts.empties:
        return max(facts.empties)[1]
    now = facts.now
    if now.weight_g is None or now.weighed_on is None:
        return None
    before = now.meal_before_weighing_on
    meals = [(before, now.meal_before_weighing_g)] if before else []
    empty = empty_weight(now.weight_g, now.weighed_on, meals, facts.profile, same_day_inside=True)
    return empty.grams if isinstance(empty, EmptyWeight) else None


def _stalled(facts: WatchFacts, today: date) -> Iterator[Signal]:
    if facts.empties is None:
        return
    stalled = stall(facts.empties, facts.meals, facts.profile, facts.stage, today)
    if stalled is None or isinstance(stalled, CannotTell):
        return
    yield Signal(
        kind="weight stall",
        severity=Severity.THIS_WEEK,
        because=(*stalled.because, because("check prey, heat, faeces, identity and scale")),
        ends=because("ends with a gain"),
    )
