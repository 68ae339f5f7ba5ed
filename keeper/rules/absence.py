"""A plan bent round an absence: who may be fed before it, who may wait, who must be fed in it.

What can wait until the keeper is back waits; what cannot, and may be given before, is given on
the last night before; only the rest stays due meanwhile, for whoever covers. Of one animal all
follows from its own plan and the absence alone, so every place that asks is told the same.
"""

from bisect import bisect_left, bisect_right
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from datetime import date, timedelta
from functools import lru_cache
from typing import NamedTuple

from keeper.husbandry.animal import Stage
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import FeedingFigures, SpeciesProfile, practice
from keeper.husbandry.reasons import Reason, because
from keeper.rules.feeding import DueState, Plan
from keeper.rules.stages import figures_of, stage_of
from keeper.rules.timing import Pace

FED_EARLY, WAITS, WAITED = "fed early, away", "waits, away", "waited, away"
MEANWHILE, WAS_DUE = "fed meanwhile, away", "was due while away"

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("fed early, away", ("night", "days", "first", "last")),
    ("waits, away", ("night", "limit", "first", "last")),
    ("waited, away", ("night", "first", "last")),
    ("fed meanwhile, away", ("night", "limit", "who", "first", "last")),
    ("was due while away", ("who", "first", "last")),
)
"""Every reason of this module with the figures it carries."""

MAY_MISS = practice(1)
"""So many meals may be missed by a grown animal that eats and is in good condition."""

GROWN = frozenset({Stage.SUBADULT, Stage.ADULT})
GOOD_SCORE = practice(3)
"""A body score under this, of 1 to 5, is none to miss a meal on."""


@dataclass(frozen=True, slots=True)
class Absence:
    """Days on which the keeper is away, the first and the last of them included.

    nights: those on which whoever covers has agreed to feed, in order. who: they, if known.
    """

    first: date
    last: date
    nights: tuple[date, ...] = ()
    who: str = ""

    @property
    def days(self) -> int:
        return (self.last - self.first).days + 1

    @property
    def leaving(self) -> date:
        """The last evening before."""
        return self.first - timedelta(days=1)

    @property
    def back(self) -> date:
        """The first evening after."""
        return self.last + timedelta(days=1)

    def covers(self, night: date) -> bool:
        return self.first <= night <= self.last


class MealWindow(NamedTuple):
    """The days between which a next meal lies within what the profile allows."""

    earliest: date
    latest: date

    def from_day(self, day: date) -> "MealWindow":
        """The same, and not before *day*."""
        return MealWindow(max(self.earliest, day), max(self.latest, day))

    def allows(self, night: date) -> bool:
        return self.earliest <= night <= self.latest


class Moved(NamedTuple):
    """Where an absence moves a night, and what is told of it."""

    night: date
    why: Reason


@dataclass(frozen=True, slots=True)
class Bending:
    """What a plan is bent round on *today*: absences as ``apart`` gives them, and feed nights.

    nights: in order; empty where every day is one. Of animals that are fed alike the answer is
    worked out once.
    """

    absences: Sequence[Absence]
    nights: Sequence[date]
    today: date
    _known: dict[tuple[bool, bool, date, MealWindow], Moved | None] = field(
        default_factory=dict, compare=False, repr=False
    )
    _touched: dict[date, bool] = field(default_factory=dict, compare=False, repr=False)

    def on(self, day: date) -> "Bending":
        """The same as of another day."""
        return Bending(self.absences, self.nights, day)

    def touches(self, due_on: date) -> bool:
        """Whether a night falls to an absence, or fell before one that has begun."""
        found = self._touched.get(due_on)
        if found is None:
            found = self._touched[due_on] = any(
                due_on < absence.back and (due_on >= absence.first or self.today >= absence.first)
                for absence in self.absences
            )
        return found

    def moved(self, state: DueState, due_on: date, window: "MealWindow") -> Moved | None:
        """Where a meal goes that may be given within *window*; None: it stays as it is."""
        key = (state is DueState.HOLD, state is DueState.NOT_DUE, due_on, window)
        if key not in self._known:
            self._known[key] = _moved(state, due_on, window, self)
        return self._known[key]


def apart(absences: Iterable[Absence]) -> tuple[Absence, ...]:
    """*absences* in order; those that overlap, or follow each other at once, as one.

    >>> first, second = Absence(date(2026, 12, 1), date(2026, 12, 4)), Absence(
    ...     date(2026, 12, 3), date(2026, 12, 9))
    >>> [absence.days for absence in apart([second, first])]
    [9]
    """
    found: list[Absence] = []
    for each in sorted(absences, key=lambda absence: (absence.first, absence.last)):
        if each.last < each.first:
            continue
        if found and each.first <= found[-1].back:
            found[-1] = _joined(found[-1], each)
        else:
            found.append(each)
    return tuple(found)


def bent(
    told: Plan,
    row: AnimalNow,
    profile: SpeciesProfile,
    bending: Bending,
    pace: Pace | None = None,
) -> Plan:
    """*told*, the plan of *row* on that day, bent round the absences within the safe limits.

    Without a night that falls to an absence, or was waited for through one, it is *told* itself.
    A hold stays a hold, and one of whom nothing can be told stays so. pace: as it was judged by,
    if that is known.
    """
    due_on = told.due_on
    if due_on is None or told.state is DueState.CANNOT_TELL or not bending.touches(due_on):
        return told
    window = meal_window(row, told, profile, bending.today, pace)
    moved = None if window is None else bending.moved(told.state, due_on, window)
    return told if moved is None else _told(told, row, moved, bending.today)


def meal_window(
    row: AnimalNow, told: Plan, profile: SpeciesProfile, on: date, pace: Pace | None = None
) -> MealWindow | None:
    """When the next meal of *row* may be given, by its plan *told* on the day *on*.

    Not within the profile's gap after a meal, and so much after the end of the interval as its
    ``late_days`` say; a grown animal that eats may miss one meal. A feed night that the plan
    itself names is always allowed. None: no night is due, or there are no figures.
    """
    stage = stage_of(row, profile, on) if pace is None else pace.stage
    figures = figures_of(profile, stage, row.sex) if stage is not None else None
    if figures is None or told.due_on is None:
        return None
    if row.eaten_on is None or told.interval_days is None or _put_off(row):
        late_on = told.due_on + timedelta(days=int(figures.late_days.value))
        return MealWindow(told.due_on, late_on)  # a retry or a first meal is not brought forward
    spare_days = _spare_days(row, stage, figures, told.interval_days)
    latest_days = told.interval_days + spare_days
    return _within(told.due_on, row.eaten_on, figures.gap_after_meal_days.value, latest_days)


@lru_cache(maxsize=4096)
def _within(due_on: date, eaten_on: date, gap_days: float, latest_days: int) -> MealWindow:
    gap_on = eaten_on + timedelta(days=round(gap_days))
    latest_on = eaten_on + timedelta(days=latest_days)
    return MealWindow(min(due_on, gap_on), max(due_on, latest_on))


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


def _joined(one: Absence, other: Absence) -> Absence:
    return Absence(
        one.first,
        max(one.last, other.last),
        tuple(sorted({*one.nights, *other.nights})),
        ", ".join(dict.fromkeys(who for who in (one.who, other.who) if who)),
    )


def _moved(state: DueState, due_on: date, window: MealWindow, bending: Bending) -> Moved | None:
    """Round each absence in turn; the last that moved the night is told."""
    found: Moved | None = None
    for absence in bending.absences:
        if due_on >= absence.back:
            continue
        if due_on < absence.first and bending.today < absence.first:
            break
        found = _round_one(state, due_on, window, absence, bending)
        due_on = found.night
    return found


def _round_one(
    state: DueState, due_on: date, window: MealWindow, absence: Absence, bending: Bending
) -> Moved:
    """Round an absence that the night falls to, or was due before and in."""
    if window.latest >= absence.back:
        return _waiting(window, absence, bending)
    early = _night_before(window, absence, bending) if state is DueState.NOT_DUE else None
    if early is not None:
        return Moved(early, _why(FED_EARLY, absence, night=early, days=(due_on - early).days))
    if bending.today > absence.last:
        return Moved(due_on, _why(WAS_DUE, absence, who=absence.who or None))
    if state is DueState.HOLD:
        window = window.from_day(due_on)
    agreed = _agreed_night(window, absence, bending)
    night = agreed or _last_night_in(window, absence, bending) or due_on
    who, limit = absence.who or None, window.latest
    return Moved(night, _why(MEANWHILE, absence, night=night, limit=limit, who=who))


def _waiting(window: MealWindow, absence: Absence, bending: Bending) -> Moved:
    """Until the first feed night after it that is soon enough, else until the evening after."""
    night = absence.back
    for each in bending.nights[bisect_left(bending.nights, absence.back) :]:
        if each > window.latest:
            break
        if not any(other.covers(each) for other in bending.absences):
            night = each
            break
    if bending.today > night:
        return Moved(night, _why(WAITED, absence, night=night))
    return Moved(night, _why(WAITS, absence, night=night, limit=window.latest))


def _night_before(window: MealWindow, absence: Absence, bending: Bending) -> date | None:
    """The last feed night before the absence on which the meal may be given, else the evening."""
    soonest, leaving = max(bending.today, window.earliest), absence.leaving
    if soonest > leaving:
        return None
    at = bisect_right(bending.nights, leaving)
    night = bending.nights[at - 1] if at else leaving
    return night if night >= soonest else leaving


def _agreed_night(window: MealWindow, absence: Absence, bending: Bending) -> date | None:
    """The first night that whoever covers has agreed to and that is within the limits."""
    soonest = max(bending.today, window.earliest)
    return next((night for night in absence.nights if soonest <= night <= window.latest), None)


def _last_night_in(window: MealWindow, absence: Absence, bending: Bending) -> date | None:
    """The last feed night of the absence, from today on, that is within the limits."""
    soonest = max(bending.today, absence.first, window.earliest)
    latest = min(absence.last, window.latest)
    if not bending.nights:
        return latest if latest >= soonest else None
    at = bisect_right(bending.nights, latest)
    night = bending.nights[at - 1] if at else None
    return night if night is not None and night >= soonest else None


def _why(why: str, absence: Absence, **figures: int | str | date | None) -> Reason:
    return because(why, **figures, first=absence.first, last=absence.last)


def _told(told: Plan, row: AnimalNow, moved: Moved, today: date) -> Plan:
    """*told* on the night it moves to; its lateness is measured against the interval so bent.

    All fields by name: ``replace`` takes four times as long, and a room asks it of every tub.
    """
    night, state, lateness = moved.night, told.state, told.lateness
    if state is not DueState.HOLD:
        state = DueState.DUE if night <= today else DueState.NOT_DUE
    if row.eaten_on is not None and told.days_since_eaten is not None and night != told.due_on:
        span = (night - row.eaten_on).days
        lateness = told.days_since_eaten / span if span > 0 else lateness
    return Plan(
        animal=told.animal,
        state=state,
        due_on=night,
        days_since_eaten=told.days_since_eaten,
        interval_days=told.interval_days,
        hold=told.hold,
        offer=told.offer,
        offer_percent=told.offer_percent,
        caution=told.caution,
        lateness=lateness,
        because=(moved.why, *told.because),
    )


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
