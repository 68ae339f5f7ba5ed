"""What is a reptile vet's the same day: an open mouth, a prolapse, straining."""

from collections.abc import Iterator
from datetime import date

from keeper.husbandry.events import Remark, RemarkKind
from keeper.husbandry.profile import practice
from keeper.husbandry.reasons import because
from keeper.rules.watch_facts import Family, Severity, Signal, WatchFacts, days_since

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("open mouth noticed", ("on", "text")),
    ("prolapse noticed", ("on", "text")),
    ("straining noticed", ("on", "text")),
    ("ask a reptile vet the same day", ()),
    ("ends after days", ("days",)),
)
"""Every reason of this module with the figures it carries."""

NOW_DAYS = practice(1)
FOLLOWED_DAYS = practice(7)

_URGENT: dict[RemarkKind, tuple[str, Family]] = {
    RemarkKind.OPEN_MOUTH: ("open mouth noticed", "breath"),
    RemarkKind.PROLAPSE: ("prolapse noticed", "gut"),
    RemarkKind.STRAINING: ("straining noticed", "other"),
}


def urgent_signals(facts: WatchFacts, today: date) -> Iterator[Signal]:
    """The latest remark of each kind: for now on its day and the next, then for today."""
    latest = {remark.kind: remark for remark in sorted(facts.remarks, key=lambda r: r.happened)}
    for kind, remark in latest.items():
        days = days_since(remark.happened.day, today)
        if kind in _URGENT and days is not None and days <= FOLLOWED_DAYS.value:
            yield _urgent(remark, days)


def _urgent(remark: Remark, days: int) -> Signal:
    why, family = _URGENT[remark.kind]
    return Signal(
        kind=remark.kind.value,
        severity=Severity.NOW if days <= NOW_DAYS.value else Severity.TODAY,
        because=(
            because(why, on=remark.happened.day, text=remark.text),
            because("ask a reptile vet the same day"),
        ),
        family=family,
        since=remark.happened.day,
        ends=because("ends after days", days=FOLLOWED_DAYS.value),
        always=True,
    )
