"""Everyone in the room fed in thought, night after night, by the plan that the board follows."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from datetime import date, timedelta
from typing import NamedTuple

from keeper.actions.absences import absences
from keeper.actions.due_board import empty_now_g, feed_nights_around
from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.learned import eaten_through
from keeper.actions.quarantine import open_holds
from keeper.husbandry.events import Offer, Result, ShedSign
from keeper.rules.absence import (
    MEANWHILE,
    Absence,
    Bending,
    MealWindow,
    apart,
    bent,
    meal_window,
    night_to_feed,
)
from keeper.rules.feeding import DueState, Plan, plan
from keeper.rules.nights import next_night
from keeper.store import reading

_LAST = 6
_DAY = timedelta(days=1)


class Fed(NamedTuple):
    """One night of the walk ahead: who is fed in thought, by their row, with their plans."""

    night: date
    plans: Mapping[int, Plan]


class Ahead:
    """The room as it will be if every meal is taken. rows: in walking order, fed in thought."""

    def __init__(self, keeping: Keeping, on: date, absence: Absence) -> None:
        self.on = on
        self.rows = [row for row in animals_on(keeping, on) if row.in_the_room]
        self.nights = feed_nights_around(keeping, on)
        self._bending = Bending(apart([*absences(keeping, on), absence]), self.nights, on)
        self._keeping = keeping
        keys = [row.animal for row in self.rows]
        fed_on = max((row.offered_on for row in self.rows if row.offered_on), default=None)
        self._silence = None if fed_on is None else on - fed_on
        self._holds = open_holds(keeping, on).holds
        self._offers = reading.recent(keeping.book, Offer, keys, _LAST, until=on)
        self._signs = reading.recent(keeping.book, ShedSign, keys, _LAST, until=on)
        self._learned = eaten_through(keeping, on)

    def plan(self, index: int, night: date, *, as_it_is: bool = False) -> Plan:
        """What one is due on *night*; as_it_is: before it is bent round any absence."""
        row = self.rows[index]
        profile, bending = self._keeping.profile(row), self._bending.on(night)
        return plan(
            row,
            profile,
            self.nights,
            night,
            self._holds.get(row.animal, ()),
            self._offers[row.animal],
            self._signs[row.animal],
            empty_now_g(row, profile),
            last_record_on=None if self._silence is None else night - self._silence,
            learned=self._learned.get(row.animal, frozenset()),
            bend=None if as_it_is else lambda told: bent(told, row, profile, bending),
        )

    def fed_until(
        self, first: date, last: date, only: Iterable[int] | None = None
    ) -> Iterator[Fed]:
        """Nights from *first* to *last* on which any are fed, each fed as it is told.

        only: these alone; None: everyone.
        """
        asked = range(len(self.rows)) if only is None else only
        coming = {n: self._next(n, first, last) for n in asked}
        while True:
            waiting = {n: night for n, night in coming.items() if night is not None}
            if not waiting:
                return
            night = min(waiting.values())
            fed: dict[int, Plan] = {}
            for n in (n for n, at in waiting.items() if at == night):
                told = self.plan(n, night)
                if told.state is DueState.DUE:
                    fed[n] = told
                    self._feed(n, night)
                coming[n] = self._next(n, night + _DAY, last)
            if fed:
                yield Fed(night, fed)

    def windows(
        self, nights: Sequence[date], absence: Absence, only: Iterable[int]
    ) -> dict[int, MealWindow]:
        """Of those who must be fed on *nights* of *absence*, between which days.

        A hold without a day for its end is asked about night by night.
        """
        found = {}
        for n in only:
            row, told = self.rows[n], self._free(n, nights)
            if told is None or told.due_on is None or told.due_on >= absence.back:
                continue
            window = meal_window(row, told, self._keeping.profile(row), nights[0])
            if window is not None and window.latest < absence.back:
                held = self.plan(n, nights[0], as_it_is=True).state is DueState.HOLD
                found[n] = window.from_day(told.due_on) if held else window
        return found

    def agree(self, absence: Absence) -> Absence:
        """*absence* with as few nights as can be on which those who must be fed are fed.

        Everyone is fed in thought until its end.
        """
        start = max(absence.first, self.on)
        left = [night for night in self.nights if start <= night <= absence.last]
        if not self.nights:
            left = [start + timedelta(days=n) for n in range((absence.last - start).days + 1)]
        for _ in self.fed_until(self.on, absence.leaving):
            pass
        found: list[date] = []
        must: Iterable[int] = range(len(self.rows))
        while left:
            windows = self.windows(left, absence, must)
            night = night_to_feed(windows.values(), left)
            if night is None:
                break
            found.append(night)
            must = set(windows)
            for n, window in windows.items():
                if window.earliest <= night:
                    self._feed(n, night)
            left = [each for each in left if each > night]
        return replace(absence, nights=tuple(found))

    def _free(self, index: int, nights: Sequence[date]) -> Plan | None:
        """The plan, before it is bent, of the first of *nights* that tells when it is due."""
        for night in nights:
            told = self.plan(index, night, as_it_is=True)
            if told.due_on is not None or told.state is not DueState.HOLD:
                return told
        return None

    def _next(self, index: int, first: date, last: date) -> date | None:
        """The next night, *first* at the soonest, on which one may be fed; None: by *last* none."""
        if first > last:
            return None
        told = self.plan(index, first)
        night = told.due_on
        if told.state is DueState.HOLD and night is None:
            night = next_night(first, self.nights)  # asked again on that night
        if night is None or told.state is DueState.CANNOT_TELL:
            return None
        if night < first:
            night = min(next_night(first, self.nights), last)
        return night if night <= last else None

    def _feed(self, index: int, night: date) -> None:
        """As if it had eaten: the next nights are reckoned from there."""
        row = self.rows[index]
        self.rows[index] = replace(
            row,
            eaten_on=night,
            offered_on=night,
            offered_result=Result.TAKEN,
            refused_since=0,
            meals=row.meals + 1,
        )


def left_to_cover(told: Plan) -> bool:
    """Whether a plan is of one that whoever covers has to feed."""
    return any(why.why == MEANWHILE for why in told.because)
