"""What sheds, holds and remarks put on the watch."""

from collections.abc import Iterator, Sequence
from datetime import date

from keeper.husbandry.events import (
    HoldKind,
    Remark,
    RemarkKind,
    ShedQuality,
    ShedSign,
    ShedStage,
)
from keeper.husbandry.profile import practice
from keeper.husbandry.reasons import Figure, Reason, because
from keeper.rules.holds import Hold
from keeper.rules.shed_care import is_closed
from keeper.rules.watch_facts import Severity, Signal, WatchFacts, days_since, within_days

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("humidity and health look", ()),
    ("eye cap kept", ("shed_on",)),
    ("eye cap kept at two sheds", ("shed_on",)),
    ("never pick at an eye cap", ()),
    ("tail tip kept", ("shed_on", "days")),
    ("a ring on the tail tip cuts it off within days", ()),
    ("shed in pieces", ("shed_on",)),
    ("damp hide, look again after a day", ()),
    ("hold without an end", ("hold", "since", "days")),
    ("not laid since the pre-lay shed", ("since", "days")),
    ("eggs to be expected", ("since",)),
    ("quarantine ends", ("on", "days")),
    ("breathing noticed", ("on", "text")),
    ("a click just before a shed may be normal", ()),
    ("isolate, check heat", ()),
    ("ask a reptile vet", ()),
    ("ask a reptile vet the same day", ()),
    ("ask a reptile vet the same day if the mouth is open", ()),
    ("mites noticed", ("on", "text")),
    ("the whole rack is one, product and amount by a reptile vet", ()),
    ("wound noticed", ("on", "text")),
    ("ends with a shed", ()),
    ("ends when renewed or ended", ()),
    ("ends when released", ("on",)),
    ("ends when she lays", ()),
    ("ends after days", ("days",)),
    ("ends with entries", ()),
)
"""Every reason of this module with the figures it carries."""


PIECES_DAYS = practice(7)
TIP_DAYS = practice(7)
QUARANTINE_DAYS = practice(7)
REMARK_DAYS = practice(7)

SLOW_SHEDS = (HoldKind.COOLING, HoldKind.GRAVID, HoldKind.PRE_LAY)
"""Holds under which a late shed is not late."""


def care_signals(facts: WatchFacts, today: date) -> Iterator[Signal]:
    """Shed clock, stuck shed, holds that ask, breathing, mites and wounds."""
    clock = _clock_signal(facts)
    if clock is not None:
        yield clock
    stuck = _stuck_signal(facts, today)
    if stuck is not None:
        yield stuck
    for hold in facts.holds:
        asking = _hold_signal(hold, facts, today)
        if asking is not None:
            yield asking
    yield from _remark_signals(facts, today)


def _clock_signal(facts: WatchFacts) -> Signal | None:
    clock = facts.clock
    if clock is None or clock.verdict == "in step":
        return None
    if clock.verdict == "cannot tell":
        ends = because("ends with entries")
        return Signal(
            kind="shed not known", severity=Severity.NOTED, because=clock.because, ends=ends
        )
    if clock.verdict == "overdue" and facts.held(*SLOW_SHEDS):
        return None
    late = "first shed overdue" if clock.first_shed else "shed overdue"
    return Signal(
        kind=late if clock.verdict == "overdue" else clock.verdict,
        severity=Severity.THIS_WEEK,
        because=(*clock.because, because("humidity and health look")),
        since=clock.since,
        ends=because("ends with a shed"),
    )


def _stuck_signal(facts: WatchFacts, today: date) -> Signal | None:
    """What the last shed left behind."""
    sheds = sorted(
        (sign for sign in facts.signs if sign.stage is ShedStage.SHED),
        key=lambda sign: sign.happened,
    )
    if not sheds:
        return None
    shed_on = sheds[-1].happened.day
    days = days_since(shed_on, today)
    if days is None or is_closed(sheds[-1], facts.aftercare):
        return None
    if sheds[-1].quality is ShedQuality.TIP_KEPT and days <= TIP_DAYS.value:
        tip = because("tail tip kept", shed_on=shed_on, days=days)
        ring = because("a ring on the tail tip cuts it off within days")
        return _stuck(Severity.TODAY, (tip, ring, because("ask a reptile vet")), shed_on, True)
    if sheds[-1].quality is ShedQuality.CAP_KEPT:
        why = _why_cap(sheds, facts.aftercare)
        return _stuck(Severity.THIS_WEEK, why, shed_on, False)
    if sheds[-1].quality is ShedQuality.PIECES and days <= PIECES_DAYS.value:
        pieces = because("shed in pieces", shed_on=shed_on)
        damp = because("damp hide, look again after a day")
        return _stuck(Severity.THIS_WEEK, (pieces, damp), shed_on, False)
    return None


def _why_cap(sheds: list[ShedSign], aftercare: Sequence[Remark]) -> tuple[Reason, ...]:
    """A cap is left to the next shed; kept at two sheds, and not gone between, it is a vet's."""
    shed_on, never = sheds[-1].happened.day, because("never pick at an eye cap")
    kept = len(sheds) > 1 and sheds[-2].quality is ShedQuality.CAP_KEPT
    between = [look for look in aftercare if look.happened.at < sheds[-1].happened.at]
    if kept and not is_closed(sheds[-2], between):
        twice = because("eye cap kept at two sheds", shed_on=shed_on)
        return (twice, never, because("ask a reptile vet"))
    return (because("eye cap kept", shed_on=shed_on), never)


def _stuck(severity: Severity, reasons: tuple[Reason, ...], since: date, always: bool) -> Signal:
    return Signal(
        kind="stuck shed",
        severity=severity,
        because=reasons,
        since=since,
        ends=because("ends with a shed"),
        always=always,
    )


def _hold_signal(hold: Hold, facts: WatchFacts, today: date) -> Signal | None:
    days = (today - hold.since).days
    if hold.kind is HoldKind.QUARANTINE:
        return _quarantine(hold, facts.anew, facts.longer, today)
    if hold.kind is HoldKind.PRE_LAY and not hold.asks_renewal:
        return _laying_near(hold)
    if not hold.asks_renewal:
        return None
    if hold.kind is HoldKind.PRE_LAY:
        late = because("not laid since the pre-lay shed", since=hold.since, days=days)
        return Signal(
            kind="laying overdue",
            severity=Severity.TODAY,
            because=(late, because("ask a reptile vet the same day")),
            since=hold.since,
            ends=because("ends when she lays"),
            always=True,
        )
    return Signal(
        kind="hold without end",
        severity=Severity.THIS_WEEK,
        because=(
            because("hold without an end", hold=hold.kind.value, since=hold.since, days=days),
        ),
        since=hold.since,
        ends=because("ends when renewed or ended"),
    )


def _laying_near(hold: Hold) -> Signal:
    """From the pre-lay shed on eggs are to be expected: the nest is to be ready."""
    return Signal(
        kind="laying near",
        severity=Severity.THIS_WEEK,
        because=(because("eggs to be expected", since=hold.since),),
        since=hold.since,
        ends=because("ends when she lays"),
    )


def _quarantine(
    hold: Hold, anew: Reason | None, longer: Reason | None, today: date
) -> Signal | None:
    """A week before its end, faecals and mites are to be clear by then; a week after it began
    anew, with an animal that came into its room, that it did; and as long as mites lengthen it,
    that they do."""
    days = (hold.until - today).days if hold.until is not None else None
    ending = days is not None and days <= QUARANTINE_DAYS.value
    fresh = anew is not None and (today - hold.since).days <= QUARANTINE_DAYS.value
    if not (ending or fresh or longer):
        return None
    told = [because("quarantine ends", on=hold.until, days=days)] if hold.until else []
    if anew is not None:
        told.insert(0 if fresh else 1, anew)
    if longer is not None:
        told.append(longer)
    return Signal(
        kind="quarantine",
        severity=Severity.THIS_WEEK if ending else Severity.NOTED,
        because=tuple(told),
        since=hold.since,
        ends=because("ends when released", on=hold.until) if hold.until else None,
    )


def _remark_signals(facts: WatchFacts, today: date) -> Iterator[Signal]:
    """The latest remark of each kind that asks for a look; mites until the rack is treated."""
    latest = {
        remark.kind: remark
        for remark in sorted(facts.remarks, key=lambda remark: remark.happened)
        if within_days(remark.happened.day, today, REMARK_DAYS.value)
    }
    for kind, remark in latest.items():
        figures: dict[str, Figure] = {"on": remark.happened.day, "text": remark.text}
        if kind is RemarkKind.BREATHING:
            yield _breathing(facts, because("breathing noticed", **figures))
        if kind is RemarkKind.MITES and remark.happened.day > (facts.mites_met_on or date.min):
            whole = because("the whole rack is one, product and amount by a reptile vet")
            yield _remark(
                "mites", (because("mites noticed", **figures), whole), remark.happened.day
            )
        if kind is RemarkKind.WOUND:
            vet = because("ask a reptile vet")
            yield _remark("wound", (because("wound noticed", **figures), vet), remark.happened.day)


def _breathing(facts: WatchFacts, noticed: Reason) -> Signal:
    """Today's concern; within a shed cycle a click may be normal, an open mouth never is."""
    day = noticed.figures["on"]
    near_shed = facts.now.stage in (ShedStage.OPAQUE, ShedStage.CLEARED)
    reasons = (
        noticed,
        *((because("a click just before a shed may be normal"),) if near_shed else ()),
        because("isolate, check heat"),
        because("ask a reptile vet the same day if the mouth is open"),
    )
    return Signal(
        kind="breathing",
        severity=Severity.THIS_WEEK if near_shed else Severity.TODAY,
        because=reasons,
        family="breath",
        since=day if isinstance(day, date) else None,
        ends=because("ends after days", days=REMARK_DAYS.value),
        always=True,
    )


def _remark(kind: str, reasons: tuple[Reason, ...], since: date) -> Signal:
    return Signal(
        kind=kind,
        severity=Severity.TODAY,
        because=reasons,
        since=since,
        ends=because("ends after days", days=REMARK_DAYS.value),
    )
