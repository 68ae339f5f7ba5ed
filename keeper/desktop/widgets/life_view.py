"""Which days of a life are in view and where the cursor stands: moves and zooms, all pure."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta

from dateutil.relativedelta import relativedelta

SPANS_DAYS = (7, 14, 31, 92, 183, 365, 730, 1826, 3652)
"""Steps of the zoom, a week to ten years; the whole life lies beyond them."""

_KEPT_AHEAD = 0.25  # of the span stays in view ahead of a cursor that leaves it


@dataclass(frozen=True, slots=True, kw_only=True)
class LifeView:
    """first to last is in view, life_first to life_last all there is; both ends included."""

    life_first: date
    life_last: date
    today: date
    cursor: date
    first: date
    last: date

    @property
    def whole(self) -> bool:
        """Whether the whole life is in view."""
        return (self.first, self.last) == (self.life_first, self.life_last)

    @property
    def span_days(self) -> int:
        return (self.last - self.first).days

    def to(self, day: date) -> LifeView:
        """The cursor on *day*, kept within the life, and in view."""
        kept = min(max(day, self.life_first), self.life_last)
        moved = replace(self, cursor=kept)
        return moved if self.first <= kept <= self.last else moved._around(self.span_days)

    def by_days(self, days: int) -> LifeView:
        return self.to(self.cursor + timedelta(days=days))

    def by_months(self, months: int) -> LifeView:
        return self.to(self.cursor + relativedelta(months=months))

    def to_event(self, days: Sequence[date], step: int) -> LifeView:
        """To the next of *days*, or with a *step* below 0 the one before; else stay."""
        if step > 0:
            at = bisect_right(days, self.cursor)
            return self.to(days[at]) if at < len(days) else self
        at = bisect_left(days, self.cursor)
        return self.to(days[at - 1]) if at else self

    def zoomed(self, step: int) -> LifeView:
        """A step nearer (above 0) or further, around the cursor."""
        whole_days = (self.life_last - self.life_first).days
        spans = [span for span in SPANS_DAYS if span < whole_days] + [whole_days]
        if step > 0:
            nearer = [span for span in spans if span < self.span_days]
            return self._around(nearer[-1]) if nearer else self
        further = [span for span in spans if span > self.span_days]
        return self._around(further[0]) if further else self

    def reaching(self, life_last: date) -> LifeView:
        """The same view of a life that ends elsewhere; the whole stays whole."""
        longer = replace(self, life_last=life_last, cursor=min(self.cursor, life_last))
        if self.whole or self.last > life_last:
            return replace(longer, first=self.life_first, last=life_last)
        return longer

    def _around(self, span_days: int) -> LifeView:
        """*span_days* in view, the cursor within them, nothing beyond the life."""
        span = timedelta(days=min(span_days, (self.life_last - self.life_first).days))
        first = self.cursor - span * (1 - _KEPT_AHEAD)
        first = min(max(first, self.life_first), self.life_last - span)
        return replace(self, first=first, last=first + span)


def view_of(life_first: date, life_last: date, today: date, cursor: date) -> LifeView:
    """The whole life in view."""
    return LifeView(
        life_first=life_first,
        life_last=life_last,
        today=today,
        cursor=min(max(cursor, life_first), life_last),
        first=life_first,
        last=life_last,
    )
