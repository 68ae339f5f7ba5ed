"""Feed nights: which evenings the house feeds on, and which of them a due day falls to."""

import re
from bisect import bisect_left
from collections.abc import Sequence
from datetime import date, datetime, time
from functools import lru_cache

from dateutil.rrule import rrule, rruleset, rrulestr

from keeper.language import tr

ANCHOR = datetime(2001, 1, 1, 12)
"""Rules without a DTSTART count from this Monday, so that *every second week* means the same
weeks whenever it is asked."""

BY_DAYS = frozenset({"DAILY", "WEEKLY", "MONTHLY", "YEARLY"})
DAYS = re.compile(r"\d{8}(T\d{6}Z?)?(,\d{8}(T\d{6}Z?)?)*")


def feed_nights(rules: Sequence[str], first: date, last: date) -> tuple[date, ...]:
    """Feed nights from *first* to *last*, both included, in order.

    rules: recurrence rules of RFC 5545 such as ``FREQ=WEEKLY;BYDAY=WE,SA``; one that counts
    occurrences, or in steps of its own, may carry a line ``DTSTART:20260107`` before it.
    No rules at all: no nights set, which ``snap`` reads as every day.

    Raises:
        ValueError: a rule that cannot be read, or that repeats within a day.

    >>> [night.isoformat() for night in
    ...  feed_nights(["FREQ=WEEKLY;BYDAY=WE,SA"], date(2026, 9, 21), date(2026, 9, 30))]
    ['2026-09-23', '2026-09-26', '2026-09-30']
    """
    start, end = datetime.combine(first, time.min), datetime.combine(last, time.max)
    nights = {night.date() for rule in rules for night in _read(rule).between(start, end, inc=True)}
    return tuple(sorted(nights))


def rules_in(text: str) -> list[str]:
    """The rules of a text that holds one a line; a line DTSTART belongs to the rule after it.

    >>> len(rules_in("FREQ=DAILY DTSTART:20261124 RRULE:FREQ=DAILY;INTERVAL=4"))
    2
    """
    found = re.findall(r"(?:DTSTART\S*\s+)?\S+", text)
    return ["\n".join(rule.split()) for rule in found]


def snap(due: date, nights: Sequence[date], early_days: int, late_days: int) -> date:
    """The feed night nearest to *due*, at most so much earlier or later, else the next one.

    Of two as near the earlier is taken. nights in order; without any, or past the last of
    them, the day itself is returned.

    >>> wed, sat = date(2026, 9, 23), date(2026, 9, 26)
    >>> snap(date(2026, 9, 24), [wed, sat], 1, 2) == wed
    True
    >>> snap(date(2026, 9, 25), [wed, sat], 1, 2) == sat
    True
    """
    after = next_night(due, nights)
    at = bisect_left(nights, due)
    if at == 0:
        return after
    before = nights[at - 1]
    early, late = (due - before).days, (after - due).days
    if early > early_days:
        return after
    return before if late > late_days or early <= late else after


def next_night(day: date, nights: Sequence[date]) -> date:
    """The first feed night on *day* or after it; the day itself where none is known.

    >>> next_night(date(2026, 9, 24), [date(2026, 9, 23), date(2026, 9, 26)])
    datetime.date(2026, 9, 26)
    """
    at = bisect_left(nights, day)
    return nights[at] if at < len(nights) else day


@lru_cache(maxsize=64)
def _read(text: str) -> rrule | rruleset:
    rule = text.strip().upper()
    wrong = _fault(rule)
    if wrong is not None:
        raise ValueError(_not_a_rule(text, wrong))
    rule = _at_noon(rule)
    try:
        return rrulestr(rule, dtstart=None if "DTSTART" in rule else ANCHOR, ignoretz=True)
    except (ValueError, TypeError, AttributeError, IndexError) as fault:
        raise ValueError(_not_a_rule(text, fault)) from fault


def _at_noon(rule: str) -> str:
    """The rule for nights of the house: any time of day and zone is dropped from its days.

    An UNTIL with a time keeps it, so that midnight still shuts out the night that follows.
    """
    rule = re.sub(r"(DTSTART|EXDATE|RDATE)[^:\n]*:", r"\1:", rule)
    lines = (
        line if "FREQ=" in line else re.sub(r"(\d{8})(T\d{6}Z?)?", r"\1T120000", line)
        for line in rule.split("\n")
    )
    return re.sub(r"UNTIL=(\d{8})(?!T|\d)", r"UNTIL=\1T235959", "\n".join(lines))


def _fault(rule: str) -> str | None:
    """What the reader of rules itself would take without a word, or never come back from."""
    repeats = re.findall(r"FREQ=(\w*)", rule)
    if not repeats or not set(repeats) <= BY_DAYS:
        return tr("it must say how it repeats: daily, weekly, monthly or yearly")
    steps = re.findall(r"INTERVAL=([^;\s]*)", rule)
    if any(not step.isdecimal() or int(step) < 1 for step in steps):
        return tr("its INTERVAL must be a whole number from 1")
    dates = re.findall(r"UNTIL=([^;\s]*)|(?:DTSTART|EXDATE|RDATE)[^:\n]*:(\S*)", rule)
    if any(not DAYS.fullmatch(until or days) for until, days in dates):
        return tr("its days must be written like 20260923")
    if "COUNT=" in rule and "DTSTART" not in rule:
        return tr("a COUNT needs a DTSTART line to count from")
    return None


def _not_a_rule(text: str, fault: object) -> str:
    return tr(
        "{text!r} is not a rule for feed nights such as FREQ=WEEKLY;BYDAY=WE,SA: {fault}",
        text=text,
        fault=fault,
    )
