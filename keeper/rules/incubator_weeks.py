"""How many clutches lie in the incubator week by week: for sure, and such as may."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

_WEEK = timedelta(days=7)
_DAY = timedelta(days=1)


@dataclass(frozen=True, slots=True, kw_only=True)
class Lain:
    """One clutch: in the incubator from *first*, surely up to *sure*, and *last* at the latest.

    sure None: it may never lie there, as eggs that are not laid yet.
    """

    first: date
    sure: date | None
    last: date


@dataclass(frozen=True, slots=True, kw_only=True)
class WeekCount:
    """The week that begins on *monday*: clutches in it for sure, and further ones that may be."""

    monday: date
    sure: int
    may: int


def monday_of(day: date) -> date:
    """The Monday of its week.

    >>> monday_of(date(2026, 11, 26))
    datetime.date(2026, 11, 23)
    """
    return day - timedelta(days=day.weekday())


def mondays_round(today: date, back: int, ahead: int) -> tuple[date, ...]:
    """Of *back* weeks before that of *today*, of its own, and of *ahead* after it."""
    here = monday_of(today)
    return tuple(here + n * _WEEK for n in range(-back, ahead + 1))


def lain_by_week(lain: Iterable[Lain], mondays: Sequence[date]) -> tuple[WeekCount, ...]:
    """A clutch counts in every week on one day of which it lies there, once.

    >>> one = Lain(first=date(2026, 11, 2), sure=date(2026, 11, 9), last=date(2026, 11, 16))
    >>> [(week.sure, week.may) for week in lain_by_week([one], mondays_round(one.sure, 2, 2))]
    [(0, 0), (1, 0), (1, 0), (0, 1), (0, 0)]
    """
    known = tuple(lain)
    return tuple(_count(known, monday) for monday in mondays)


def _count(lain: Sequence[Lain], monday: date) -> WeekCount:
    last = monday + _WEEK - _DAY
    sure = sum(
        each.sure is not None and each.first <= last and each.sure >= monday for each in lain
    )
    every = sum(each.first <= last and each.last >= monday for each in lain)
    return WeekCount(monday=monday, sure=sure, may=every - sure)
