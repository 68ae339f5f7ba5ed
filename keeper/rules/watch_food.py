"""What an animal's appetite and gut put on the watch."""

from collections.abc import Iterator
from datetime import date, timedelta

from keeper.husbandry.animal import Stage
from keeper.husbandry.events import HoldKind, Result
from keeper.husbandry.profile import practice
from keeper.husbandry.reasons import Reason, because
from keeper.rules.holds import SECOND_TIMES, SECOND_WITHIN_DAYS
from keeper.rules.learned_late import told_late
from keeper.rules.refusals import CountedRefusals, Step, refusal_step
from keeper.rules.shortfalls import reserve_date
from keeper.rules.watch_facts import Severity, Signal, WatchFacts, days_since, within_days
from keeper.rules.weights import CannotTell, stage_figure

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("never eaten", ("age_days", "most")),
    ("days until the deadline", ("days", "on")),
    ("assisted feeding only by experienced hands or a reptile vet", ()),
    ("no offers written", ("since",)),
    ("not eaten, but not refused either", ("days", "limit")),
    ("regurgitated", ("on", "days")),
    ("second regurgitation", ("on", "before_on", "days")),
    ("water, heat check, no handling", ()),
    ("ask a reptile vet", ()),
    ("left in and never closed", ("on", "days")),
    ("ends with a meal", ()),
    ("ends with the hold", ("on",)),
    ("ends when closed", ()),
)
"""Every reason of this module with the figures it carries."""

DEADLINE_DAYS = practice(5)
LEFT_IN_DAYS = practice(2)


def food_signals(facts: WatchFacts, today: date) -> Iterator[Signal]:
    """Not started, refusals, not eaten for long, regurgitated, left in."""
    regurgitated = _regurgitated(facts, today)
    if regurgitated is not None:
        yield regurgitated
    left_in = _left_in(facts, today)
    if left_in is not None:
        yield left_in
    not_started = _not_started(facts, today)
    if not_started is not None:
        yield not_started
        return
    if _excused(facts):
        return
    refusing = _refusing(facts, today) or _not_eaten(facts, today)
    if refusing is not None:
        yield refusing


def _excused(facts: WatchFacts) -> bool:
    """Whether a hold explains that the animal does not eat; never that it has not begun to.

    Of a new arrival past its days of quiet only the first refusals are explained, as counted.
    """
    quiet = (HoldKind.JUST_SHED, HoldKind.QUARANTINE, HoldKind.NEW_ARRIVAL)
    return any(hold.skip or hold.kind not in quiet for hold in facts.holds)


def _not_started(facts: WatchFacts, today: date) -> Signal | None:
    """A hatchling of this house that never ate, with the day by which something must happen."""
    now, age = facts.now, facts.now.age_days(today)
    most = facts.profile.weights.first_meal_days_most.value
    if facts.stage is not Stage.HATCHLING or now.meals or now.eaten_on or age is None:
        return None
    began = now.age_days(now.first_entry_on) if now.first_entry_on else None
    if age <= most or (began is not None and began > most):
        return None
    never = because("never eaten", age_days=age, most=most)
    if now.offered_on is None:
        since = now.first_entry_on or now.hatched_first
        reasons: tuple[Reason, ...] = (because("no offers written", since=since), never)
        return _appetite("not started", Severity.NOTED, reasons, now.hatched_first)
    deadline = reserve_date(facts.empties or (), now.hatched_first, facts.profile, today)
    if isinstance(deadline, CannotTell):
        return _appetite("not started", Severity.THIS_WEEK, (never, deadline.missing), None)
    left = (deadline.on - today).days
    severity = Severity.TODAY if left <= DEADLINE_DAYS.value else Severity.THIS_WEEK
    reasons = (
        never,
        because("days until the deadline", days=left, on=deadline.on),
        *deadline.because,
        because("assisted feeding only by experienced hands or a reptile vet"),
    )
    return _appetite("not started", severity, reasons, now.hatched_first)


def _appetite(
    kind: str, severity: Severity, reasons: tuple[Reason, ...], since: date | None
) -> Signal:
    return Signal(
        kind=kind,
        severity=severity,
        because=reasons,
        family="appetite",
        since=since,
        ends=because("ends with a meal"),
    )


def _refusing(facts: WatchFacts, today: date) -> Signal | None:
    """The step that counted refusals have reached.

    A stage that cannot be told takes the subadult's steps, stricter than the adult's.
    """
    counted = facts.refusals or CountedRefusals(counted=facts.now.refused_since)
    eaten_days = days_since(facts.now.eaten_on, today)
    step = refusal_step(facts.stage or Stage.SUBADULT, counted, eaten_days, facts.profile)
    if step is None:
        return None
    kind = "not eaten for long" if step.step is Step.REVIEW else "refusals"
    reasons = (*step.because, *told_late(facts.late))
    return _appetite(kind, Severity.THIS_WEEK, reasons, facts.now.eaten_on)


def _not_eaten(facts: WatchFacts, today: date) -> Signal | None:
    """A long gap without a counted refusal is a silent record, not a fast: it is only noted."""
    now, days = facts.now, days_since(facts.now.eaten_on, today)
    limit = stage_figure(facts.profile.refusals.review_days, facts.stage)
    if days is None:
        if now.offered_on is not None:
            return None
        why = because("no offers written", since=now.first_entry_on)
        return _appetite("feeding not known", Severity.NOTED, (why,), now.first_entry_on)
    if days <= limit:
        return None
    why = because("not eaten, but not refused either", days=days, limit=limit)
    return _appetite("not eaten for long", Severity.NOTED, (why,), now.eaten_on)


def _regurgitated(facts: WatchFacts, today: date) -> Signal | None:
    """The first while its hold lasts; a second within eight weeks is the dangerous one."""
    on, before = facts.now.regurgitated_on, facts.now.regurgitated_before_on
    figures = facts.profile.holds.get(HoldKind.REGURGITATED)
    days = days_since(on, today)
    if on is None or days is None or figures is None or figures.days is None:
        return None
    second = before is not None and within_days(before, on, SECOND_WITHIN_DAYS.value)
    hold_days = figures.days.value * (SECOND_TIMES.value if second else 1.0)
    if days >= hold_days:
        return None
    why = because("regurgitated", on=on, days=days)
    reasons = (why, because("water, heat check, no handling"))
    if second:
        again = because("second regurgitation", on=on, before_on=before, days=days)
        reasons = (again, because("ask a reptile vet"))
    return Signal(
        kind="regurgitated",
        severity=Severity.TODAY if second else Severity.THIS_WEEK,
        because=reasons,
        family="gut",
        since=on,
        ends=because("ends with the hold", on=on + timedelta(days=round(hold_days))),
        always=second,
    )


def _left_in(facts: WatchFacts, today: date) -> Signal | None:
    """Prey left in on an earlier night, its end never written."""
    now, days = facts.now, days_since(facts.now.offered_on, today)
    if now.offered_result is not Result.LEFT_IN or not days:
        return None
    fresh = days <= LEFT_IN_DAYS.value
    return Signal(
        kind="left in",
        severity=Severity.TODAY if fresh else Severity.THIS_WEEK,
        because=(because("left in and never closed", on=now.offered_on, days=days),),
        since=now.offered_on,
        ends=because("ends when closed"),
    )
