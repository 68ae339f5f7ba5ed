"""An absence as it is typed, and the nights that lie before, in and after it."""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from keeper.actions.due_board import feed_nights_around
from keeper.actions.keeping import Keeping
from keeper.actions.typed_entries import day_typed
from keeper.actions.typed_names import either, keyword
from keeper.language import tr

MOST_DAYS = 42
"""A longer absence is refused: feed nights are known for 90 days, and a plan so far ahead says
little of animals that grow and shed meanwhile. A choice of planning, not of husbandry."""

FURTHEST_DAYS = 30
"""An absence begins within so many days; one further ahead is planned when it is nearer."""

_DAYS = re.compile(rf"(\d{{1,3}})\s*{either('d', 'day', 'days')}")
_BETWEEN = re.compile(
    rf"\s+{either('to', 'until', 'till')}\s+|\s*[,;–]\s*|\s+-\s+|(?<=\d{{4}}-\d\d-\d\d)\s+",
    re.IGNORECASE,
)
_NEAR = {
    way: days
    for name, days in (("today", 0), ("tonight", 0), ("tomorrow", 1))
    for way in keyword(name)
}


@dataclass(frozen=True, slots=True)
class Absence:
    """Days on which the keeper is away, the first and the last of them included."""

    first: date
    last: date

    @property
    def days(self) -> int:
        return (self.last - self.first).days + 1


@dataclass(frozen=True, slots=True)
class NightsAround:
    """Feed nights until the keeper leaves and while away; the last evening before, the first after.

    The evenings need be no feed nights: what is fed outside the rhythm is fed by the keeper.
    leaving: None where the keeper leaves today.
    """

    before: Sequence[date]
    leaving: date | None
    away: Sequence[date]
    back: date


def away_typed(text: str, today: date) -> Absence:
    """The absence that *text* gives: two days, a day and how many days, or days from tomorrow.

    >>> away_typed("5 Dec to 14 Dec", date(2026, 11, 25)).days
    10
    >>> away_typed("9 days", date(2026, 11, 25)).first.isoformat()
    '2026-11-26'

    Raises:
        ValueError: it cannot be read, lies in the past, ends before it begins or is too long.
    """
    parts = _BETWEEN.split(text.strip())
    if len(parts) == 1 and _DAYS.fullmatch(parts[0].casefold()):
        parts = ["tomorrow", parts[0]]
    if len(parts) != 2:
        raise ValueError(
            tr(
                "{typed} names no absence; 5 Dec to 14 Dec, 2026-12-05 to 2026-12-14 or 9 days is"
                " right.",
                typed=repr(text.strip()),
            )
        )
    first = _day(parts[0], today)
    counted = _DAYS.fullmatch(parts[1].casefold())
    last = first + timedelta(days=int(counted[1]) - 1) if counted else _day(parts[1], first)
    return _possible(Absence(first, last), today)


def nights_around(keeping: Keeping, absence: Absence) -> NightsAround:
    """The feed nights of the house about *absence*; every night where none are set."""
    today = keeping.today
    nights = [n for n in feed_nights_around(keeping, today) if n >= today]
    if not nights:
        ahead = (absence.last - today).days + 1
        nights = [today + timedelta(days=n) for n in range(ahead)]
    leaving = absence.first - timedelta(days=1)
    return NightsAround(
        before=[n for n in nights if n < absence.first],
        leaving=leaving if leaving >= today else None,
        away=[n for n in nights if absence.first <= n <= absence.last],
        back=absence.last + timedelta(days=1),
    )


def _day(text: str, since: date) -> date:
    near = _NEAR.get(text.strip().casefold())
    if near is not None:
        return since + timedelta(days=near)
    return day_typed(text, since - timedelta(days=1))  # the day itself may be meant


def _possible(absence: Absence, today: date) -> Absence:
    if absence.last < absence.first:
        raise ValueError(
            tr(
                "The absence ends on {last}, before it begins on {first}; the first day comes"
                " first.",
                last=absence.last.isoformat(),
                first=absence.first.isoformat(),
            )
        )
    if absence.first < today:
        raise ValueError(
            tr(
                "The absence begins on {first}, which is past; from {today} on is right.",
                first=absence.first.isoformat(),
                today=today.isoformat(),
            )
        )
    if absence.days > MOST_DAYS:
        raise ValueError(
            tr(
                "{days} days are more than can be planned; up to {most} are right.",
                days=absence.days,
                most=MOST_DAYS,
            )
        )
    if (absence.first - today).days > FURTHEST_DAYS:
        raise ValueError(
            tr(
                "The absence begins in {days} days; it can be planned from {most} days before on.",
                days=(absence.first - today).days,
                most=FURTHEST_DAYS,
            )
        )
    return absence
