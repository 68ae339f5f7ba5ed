"""The one time axis of a page: days linear, months named at the left of their line, year bold."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import date, timedelta

from keeper.reports.figures import day as day_words

_MONTH_STEPS = (1, 2, 3, 6, 12, 24, 60, 120)


@dataclass(frozen=True, slots=True, kw_only=True)
class Tick:
    """A line of the grid; year is set where a year is named under it."""

    day: date
    words: str
    year: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class TimeAxis:
    """Days *first* to *last* between two places in device-independent px."""

    first: date
    last: date
    left: float
    right: float
    px_a_day: float = field(init=False)  # kept: a long life asks for it tens of thousands of times

    def __post_init__(self) -> None:
        px = (self.right - self.left) / max(1, (self.last - self.first).days)
        object.__setattr__(self, "px_a_day", px)

    def x(self, day: date) -> float:
        """Where *day* lies; beyond the ends for days out of view."""
        return self.left + (day - self.first).days * self.px_a_day

    def day_at(self, x: float) -> date:
        """The nearest day in view."""
        days = round((x - self.left) / self.px_a_day)
        return min(max(self.first + timedelta(days=days), self.first), self.last)

    def shows(self, first: date, last: date | None = None) -> bool:
        """Whether any of *first* to *last* is in view."""
        return first <= self.last and (last or first) >= self.first

    def ticks(self, label_px: float) -> list[Tick]:
        """The lines of the grid, *label_px* apart at least."""
        step = next((n for n in (1, 7) if n * self.px_a_day >= label_px), None)
        if step is not None:
            return list(self._days(step))
        month_px = 30.44 * self.px_a_day
        months = next((n for n in _MONTH_STEPS if n * month_px >= label_px), _MONTH_STEPS[-1])
        return list(self._months(months))

    def _days(self, step: int) -> Iterator[Tick]:
        """Each day or each Monday; the year under the first, and under the first of a new one."""
        day = self.first + timedelta(days=-self.first.weekday() % 7 if step == 7 else 0)
        year = 0
        while day <= self.last:
            new = f"{day:%Y}" if day.year != year else ""
            yield Tick(day=day, words=day_words(day, on=day), year=new)
            year, day = day.year, day + timedelta(days=step)

    def _months(self, step: int) -> Iterator[Tick]:
        """Firsts of months, *step* apart; from a year on the years alone."""
        month = (self.first.year * 12 + self.first.month - 1) // step * step
        named = 0
        while (day := date(month // 12, month % 12 + 1, 1)) <= self.last:
            month += step
            if day < self.first:
                continue
            new = f"{day:%Y}" if day.year != named else ""
            named = day.year
            words = "" if step >= 12 else day_words(day, on=day)[2:]
            yield Tick(day=day, words=words, year=new)
