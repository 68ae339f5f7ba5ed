"""What growth too fast, fat and mixed-up weights put on the watch."""

from collections.abc import Iterator
from datetime import date

from keeper.husbandry.events import HoldKind
from keeper.husbandry.reasons import because
from keeper.rules.fattening import Fattening, fast, high_score, no_longer
from keeper.rules.watch_facts import Severity, Signal, WatchFacts
from keeper.rules.weights import fasted

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("ends with a weight or prey under the limit", ()),
    ("ends with a length or score that says otherwise", ()),
    ("ends with weights that fit their own curves", ()),
)
"""Every reason of this module with the figures it carries."""

CARRIES_EGGS = (HoldKind.GRAVID, HoldKind.PRE_LAY)


def body_signals(facts: WatchFacts, today: date) -> Iterator[Signal]:
    """Fed too fast, getting fat, and a possible swap."""
    if facts.swap is not None:
        yield Signal(
            kind="possible swap",
            severity=Severity.THIS_WEEK,
            because=facts.swap.because,
            since=facts.swap.on,
            ends=because("ends with weights that fit their own curves"),
        )
    if facts.held(*CARRIES_EGGS):
        return
    latest = max(facts.empties) if facts.empties else None
    if latest is not None and latest[0] == facts.now.weighed_on:
        age_days = facts.now.age_days(latest[0])
        yield from _told(facts, fast(latest[:2], age_days, facts.expected, facts.meals))
    weights = fasted(facts.empties or (), today, facts.now.clutch_on)
    yield from _told(facts, no_longer(weights, facts.measures, today))
    yield from _told(facts, high_score(facts.measures, today))


def _told(facts: WatchFacts, found: Fattening | None) -> Iterator[Signal]:
    if found is None:
        return
    fast_one = found.by == "fast"
    until = (
        "a weight or prey under the limit" if fast_one else "a length or score that says otherwise"
    )
    yield Signal(
        kind="fed too fast" if fast_one else "getting fat",
        severity=Severity.NOTED if found.by == "no longer" else Severity.THIS_WEEK,
        because=(*found.because, *([facts.condition] if facts.condition else [])),
        since=found.since,
        ends=because(f"ends with {until}"),
    )
