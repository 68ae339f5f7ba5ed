"""Meals that stand in the book twice: two stations, a sheet and the round, a file and the book.

A round never gives two meals to one tub in a night, because a second result replaces the first.
"""

from collections import Counter
from collections.abc import Iterator
from datetime import date

from keeper.husbandry.profile import practice
from keeper.husbandry.reasons import because
from keeper.rules.watch_facts import Severity, Signal, WatchFacts, within_days

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("more than one meal in a night", ("on", "count")),
    ("ends when one of them is taken back", ()),
)
"""Every reason of this module with the figures it carries."""

TOLD_DAYS = practice(14)


def twin_signals(facts: WatchFacts, today: date) -> Iterator[Signal]:
    """The latest night of the last fortnight on which more than one meal is written."""
    meals = Counter(day for day, _ in facts.meals if within_days(day, today, TOLD_DAYS.value))
    twice = {day: count for day, count in meals.items() if count > 1}
    if twice:
        on = max(twice)
        yield Signal(
            kind="twin entries",
            severity=Severity.THIS_WEEK,
            because=(because("more than one meal in a night", on=on, count=twice[on]),),
            since=on,
            ends=because("ends when one of them is taken back"),
        )
