"""The watch: what needs a look, one line an animal, worst first, causes before symptoms."""

from collections.abc import Iterable, Sequence
from dataclasses import replace
from datetime import date

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import Snooze
from keeper.husbandry.house import PlaceAside
from keeper.husbandry.place import walking_key
from keeper.husbandry.profile import practice
from keeper.husbandry.reasons import Reason, because
from keeper.rules.watch_body import body_signals
from keeper.rules.watch_care import care_signals
from keeper.rules.watch_facts import (
    URGENCY,
    HouseFacts,
    Severity,
    Signal,
    WatchFacts,
    WatchLine,
    within_days,
)
from keeper.rules.watch_food import food_signals
from keeper.rules.watch_house import KIND_OF_CAUSE, house_lines
from keeper.rules.watch_medicine import medicine_signals
from keeper.rules.watch_seen import unseen_line
from keeper.rules.watch_tests import date_signals
from keeper.rules.watch_twins import twin_signals
from keeper.rules.watch_urgent import urgent_signals
from keeper.rules.watch_weights import weight_signals

__all__ = ["HouseFacts", "Severity", "WatchFacts", "WatchLine", "watch"]

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("two signals together", ("first", "second")),
    ("put aside twice", ("kind", "times")),
)
"""Every reason of this module with the figures it carries."""

SNOOZES_TO_ESCALATE = practice(2)
SNOOZE_MEMORY_DAYS = practice(90)

SILENCED_BY_REFUSALS = frozenset({"refusals", "not eaten for long"})
SILENCED_BY_HUMIDITY = frozenset({"stuck shed"})

WORST_KINDS = (
    "open mouth",
    "prolapse",
    "straining",
    "breathing",
    "laying overdue",
    "losing while eating",
    "weight loss",
    "regurgitated",
    "medicine",
    "not started",
    "under expectation",
    "cold after feeding",
    "cold row",
    "heat",
    *KIND_OF_CAUSE.values(),
    "sensor",
    "hatching slow",
    "due to pip",
    "mite step",
    "stuck shed",
    "wound",
    "mites",
    "refusals",
    "not eaten for long",
    "mixed sexes",
    "possible swap",
    "twin entries",
    "fed too fast",
    "weight stall",
    "getting fat",
    "opaque too long",
    "cleared too long",
    "first shed overdue",
    "shed overdue",
    "not seen",
    "laying near",
    "pipping while away",
    "laying while away",
    "due while away",
    "left in",
    "quarantine",
    "faecal test",
    "permit",
    "eggs do not balance",
    "prey low",
    "bag aged",
    "hold without end",
    "stale weight",
    "weight trend not known",
    "feeding not known",
    "shed not known",
)
"""Every kind of line, the graver first where severities are equal."""

NEVER_ASIDE = frozenset({"cold after feeding"})

_RANK = {kind: rank for rank, kind in enumerate(WORST_KINDS)}
_STEP_UP = {Severity.THIS_WEEK: Severity.TODAY}


def watch(facts: Sequence[WatchFacts], house: HouseFacts, today: date) -> tuple[WatchLine, ...]:
    """Lines worst first, then in walking order; animals that are not in the room have none."""
    silenced = _silenced(house)
    lines = [line for line in _of_house(house, today) if not is_aside(line, house.asides, today)]
    for each in facts:
        line = _line(each, silenced.get(each.now.animal, frozenset()), today)
        if line is not None:
            lines.append(line)
    return tuple(sorted(lines, key=_order))


def is_aside(line: WatchLine, asides: Iterable[PlaceAside], today: date) -> bool:
    """Whether the keeper put this line about a place aside until a day yet to come."""
    return may_rest(line) and any(
        (aside.place, aside.watch_kind) == (line.place, line.kind)
        and aside.happened.day <= today < aside.until
        for aside in asides
    )


def may_rest(line: WatchLine) -> bool:
    """Whether a line about a place can be put aside: not what is for now or endangers the fed."""
    return line.severity is not Severity.NOW and line.kind not in NEVER_ASIDE


def _of_house(house: HouseFacts, today: date) -> Iterable[WatchLine]:
    yield from house_lines(house)
    yield from house.shared
    yield from house.kept
    for found in house.unseen:
        yield unseen_line(found, today)


def _order(line: WatchLine) -> tuple[int, int, tuple[int, str, int, int, str], int]:
    return (
        URGENCY[line.severity],
        _RANK[line.kind],
        walking_key(line.place),
        line.animal or 0,
    )


def _silenced(house: HouseFacts) -> dict[AnimalId, frozenset[str]]:
    """Kinds that a standing cause already tells, for each of its animals."""
    kinds: dict[AnimalId, frozenset[str]] = {}
    for cause in house.causes:
        told = SILENCED_BY_HUMIDITY if cause.kind == "humidity" else SILENCED_BY_REFUSALS
        for member in cause.members:
            kinds[member] = kinds.get(member, frozenset()) | told
    return kinds


def _line(facts: WatchFacts, silenced: frozenset[str], today: date) -> WatchLine | None:
    if not facts.now.in_the_room:
        return None
    signals = [
        signal
        for signal in _signals(facts, today)
        if signal.always
        or not (signal.kind in silenced or _put_aside(signal.kind, facts.snoozes, today))
    ]
    if not signals:
        return None
    signals = [_escalated(signal, facts.snoozes, today) for signal in signals]
    signals.sort(key=lambda signal: (URGENCY[signal.severity], _RANK[signal.kind]))
    worst = _stepped_up(signals)
    return WatchLine(
        animal=facts.now.animal,
        place=facts.now.place,
        kind=worst.kind,
        severity=worst.severity,
        since=worst.since,
        ends=worst.ends,
        because=_all_reasons((worst, *signals[1:])),
    )


def _signals(facts: WatchFacts, today: date) -> Iterable[Signal]:
    yield from urgent_signals(facts, today)
    yield from weight_signals(facts, today)
    yield from food_signals(facts, today)
    yield from care_signals(facts, today)
    yield from body_signals(facts, today)
    yield from medicine_signals(facts, today)
    yield from date_signals(facts, today)
    yield from twin_signals(facts, today)


def _put_aside(kind: str, snoozes: Iterable[Snooze], today: date) -> bool:
    """Whether the keeper put this kind aside until a day yet to come."""
    return any(
        snooze.watch_kind == kind and snooze.happened.day <= today < snooze.until
        for snooze in snoozes
    )


def _escalated(signal: Signal, snoozes: Iterable[Snooze], today: date) -> Signal:
    """A kind put aside twice and back again goes one step up."""
    times = sum(
        snooze.watch_kind == signal.kind
        and within_days(snooze.happened.day, today, SNOOZE_MEMORY_DAYS.value)
        for snooze in snoozes
    )
    if times < SNOOZES_TO_ESCALATE.value or signal.severity not in _STEP_UP:
        return signal
    why = because("put aside twice", kind=signal.kind, times=times)
    return replace(signal, severity=_STEP_UP[signal.severity], because=(*signal.because, why))


def _stepped_up(signals: Sequence[Signal]) -> Signal:
    """The worst signal; one step up when two of different families agree."""
    worst = signals[0]
    agreeing = {
        signal.family: signal.kind
        for signal in reversed(signals)
        if signal.family != "other" and signal.severity is not Severity.NOTED
    }
    if len(agreeing) < 2 or worst.severity not in _STEP_UP:
        return worst
    second, first = list(agreeing.values())[-2:]
    why = because("two signals together", first=first, second=second)
    return replace(worst, severity=_STEP_UP[worst.severity], because=(*worst.because, why))


def _all_reasons(signals: Iterable[Signal]) -> tuple[Reason, ...]:
    """Every reason once, in the order of the signals."""
    reasons: list[Reason] = []
    for signal in signals:
        reasons += [why for why in signal.because if why not in reasons]
    return tuple(reasons)
