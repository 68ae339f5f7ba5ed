"""Where everything lies on the pairing calendar: columns of a row, weeks in view, the axis."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from keeper.desktop.look import Look
from keeper.desktop.widgets.life_axis import TimeAxis

ZOOMS = (13, 26, 53)
"""Weeks in view: a quarter, half a year, a year."""

_WEEK = timedelta(days=7)


@dataclass(frozen=True, slots=True, kw_only=True)
class WeeksInView:
    """*count* weeks from the one at *first* on, counted along all *every* weeks."""

    first: int
    count: int
    every: int

    def with_week(self, week: int) -> WeeksInView:
        """Moved no further than to have *week* in view.

        >>> half = WeeksInView(first=10, count=26, every=53)
        >>> half.with_week(20).first, half.with_week(3).first, half.with_week(50).first
        (10, 3, 25)
        """
        first = min(max(self.first, week - self.count + 1), week)
        return self._at(first)

    def zoomed(self, count: int, week: int) -> WeeksInView:
        """*count* weeks with *week* where it stood, as nearly as the ends allow.

        >>> WeeksInView(first=0, count=53, every=53).zoomed(13, 26)
        WeeksInView(first=20, count=13, every=53)
        """
        share = (week - self.first) / max(1, self.count)
        made = WeeksInView(first=0, count=count, every=self.every)
        return made._at(week - round(share * count)).with_week(week)

    def _at(self, first: int) -> WeeksInView:
        last = max(0, self.every - self.count)
        kept = min(max(0, first), last)
        return WeeksInView(first=kept, count=self.count, every=self.every)


@dataclass(frozen=True, slots=True, kw_only=True)
class CalendarColumns:
    """Columns of a row in device-independent px, and the axis of its weeks."""

    place: float
    name: float
    name_end: float
    axis: TimeAxis

    @classmethod
    def of(
        cls, look: Look, width: float, monday: date, weeks: int, *, left: float | None = None
    ) -> CalendarColumns:
        """For rows *width* wide over *weeks* from *monday* on; left: px before the first column."""
        place = look.u(2.2, 1.2) if left is None else left
        start = place + look.u(62, 47)
        axis = TimeAxis(
            first=monday,
            last=monday + weeks * _WEEK,
            left=start,
            right=width - look.u(2.5, 1.5),
        )
        return cls(
            place=place, name=place + look.u(15, 11.4), name_end=start - look.u(2), axis=axis
        )


def row_height(look: Look) -> float:
    """Of one female: a line for males, one for eggs, one for gates."""
    return look.u(16.5, 13.4)


def months_in(axis: TimeAxis) -> Iterator[date]:
    """The first day in view, then the firsts of the months after it.

    >>> axis = TimeAxis(first=date(2026, 11, 23), last=date(2027, 1, 11), left=0.0, right=1.0)
    >>> [str(day) for day in months_in(axis)]
    ['2026-11-23', '2026-12-01', '2027-01-01']
    """
    day = axis.first
    while day < axis.last:
        yield day
        months = day.year * 12 + day.month
        day = date(months // 12, months % 12 + 1, 1)


def mondays_in(axis: TimeAxis) -> Sequence[date]:
    """The Mondays in view, the first of which begins it."""
    return [axis.first + n * _WEEK for n in range((axis.last - axis.first).days // 7)]
