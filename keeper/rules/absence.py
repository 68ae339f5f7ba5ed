"""A plan bent round an absence: who may be fed before it, who may wait, who must be fed in it."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from keeper.husbandry.animal import Stage
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import FeedingFigures, SpeciesProfile, practice
from keeper.rules.feeding import Plan
from keeper.rules.stages import figures_of, stage_of

MAY_MISS = practice(1)
"""So many meals may be missed by a grown animal that eats and is in good condition."""

GROWN = frozenset({Stage.SUBADULT, Stage.ADULT})
GOOD_SCORE = practice(3)
"""A body score under this, of 1 to 5, is none to miss a meal on."""


@dataclass(frozen=True, slots=True)
class MealWindow:
    """The days between which a next meal lies within what the profile allows."""

    earliest: date
    latest: date

    def from_day(self, day: date) -> "MealWindow":
        """The same, and not before *day*."""
        return MealWindow(max(self.earliest, day), max(self.latest, day))

    def allows(self, night: date) -> bool:
        return self.earliest <= night <= self.latest


def meal_window(row: AnimalNow, told: Plan, profile: SpeciesProfile, on: date) -> MealWindow | None:
    """When the next meal of *row* may be given, by its plan *told* on the day *on*.

    Not within the profile's gap after a meal, and so much after the end of the interval as its
    ``late_days`` say; a grown animal that eats may miss one meal. A feed night that the plan
    itself names is always allowed. None: no night is due, or there are no figures.
    """
    stage = stage_of(row, profile, on)
    figures = figures_of(profile, stage, row.sex) if stage is not None else None
    if figures is None or told.due_on is None:
        return None
    due_on = told.due_on
    if row.eaten_on is None or told.interval_days is None or _put_off(row):
        late_on = due_on + timedelta(days=int(figures.late_days.value))
        return MealWindow(due_on, late_on)  # a retry or a first meal is not brought forward
    wanted = row.eaten_on + timedelta(days=told.interval_days)
    gap_on = row.eaten_on + timedelta(days=round(figures.gap_after_meal_days.value))
    spare_days = _spare_days(row, stage, figures, told.interval_days)
    return MealWindow(min(due_on, gap_on), max(due_on, wanted + timedelta(days=spare_days)))


def night_to_feed(windows: Iterable[MealWindow], nights: Sequence[date]) -> date | None:
    """The latest of *nights* by which one of *windows* has to be served; None: no window.

    Serving every window that is open on that night, and asking again, takes as few nights as
    any choice does. A window that no night lies in is served on the first night after it.

    >>> days = [date(2026, 12, n) for n in (2, 5, 9)]
    >>> night_to_feed([MealWindow(date(2026, 12, 1), date(2026, 12, 6))], days).day
    5
    """
    by = [_last_night(window, nights) for window in windows]
    return min((night for night in by if night is not None), default=None)


def _put_off(row: AnimalNow) -> bool:
    """Whether it refused, or an item was left in, since its last meal."""
    return row.refused_since > 0 or (row.offered_on is not None and row.offered_on != row.eaten_on)


def _spare_days(
    row: AnimalNow, stage: Stage | None, figures: FeedingFigures, interval_days: int
) -> int:
    """Days after the end of the interval for which it may wait."""
    thin = row.body_score is not None and row.body_score < GOOD_SCORE.value
    late_days = int(figures.late_days.value)
    if stage not in GROWN or thin:
        return late_days
    return max(late_days, round(MAY_MISS.value) * interval_days)


def _last_night(window: MealWindow, nights: Sequence[date]) -> date | None:
    inside = [night for night in nights if window.allows(night)]
    after = [night for night in nights if night > window.latest]
    return inside[-1] if inside else next(iter(after), None)
