"""Tonight's board: what each animal is due, and why."""

from collections.abc import Callable, Container, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from functools import lru_cache
from typing import NamedTuple, TypeVar

from keeper.actions.absences import absences
from keeper.actions.bulk import made_at_once
from keeper.actions.holds_ever import holds_ever
from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.learned import eaten_through
from keeper.actions.quarantine import open_holds
from keeper.actions.unwritten import doubted, of_one_nights, unwritten_nights
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import AnimalEvent, HoldKind, HoldSet, Offer, ShedSign
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile
from keeper.rules.absence import Bending, bent
from keeper.rules.feeding import DueState, Judged, Plan, Table, judged, plan, with_meal
from keeper.rules.nights import feed_nights, rules_in
from keeper.rules.timing import House
from keeper.rules.weights import empty_weight
from keeper.store import reading

FEED_NIGHTS = "feed nights"
"""Setting: recurrence rules of RFC 5545, one a line; empty means every day."""

E = TypeVar("E", bound=AnimalEvent)

_LAST_OFFERS = 6
_LAST_SIGNS = 6
_NIGHTS_BACK = timedelta(days=60)
_NIGHTS_AHEAD = timedelta(days=90)
_NOTHING: frozenset[HoldKind] = frozenset()


@dataclass(frozen=True, slots=True, kw_only=True)
class DueRow:
    """One animal of the board. recent holds its last offers, oldest first, if it is due."""

    animal: AnimalNow
    plan: Plan
    recent: tuple[Offer, ...] = ()


def feed_nights_around(keeping: Keeping, on: date) -> tuple[date, ...]:
    """The keeper's feed nights around *on*; none where every day is one."""
    return _nights(reading.settings(keeping.book).get(FEED_NIGHTS, ""), on)


@lru_cache(maxsize=32)
def _nights(rules: str, on: date) -> tuple[date, ...]:
    """Reckoned once a day: a rule counts its nights from years back."""
    written = rules_in(rules)
    return feed_nights(written, on - _NIGHTS_BACK, on + _NIGHTS_AHEAD) if written else ()


def due_rows(keeping: Keeping, on: date, only: Container[AnimalId] | None = None) -> list[DueRow]:
    """Every animal in the room in walking order, with what it is due on the night *on*.

    Two steps keep a large room quick: all are judged by their state row, and only those
    that may be fed tonight have their recent offers read and prey chosen, their shed signs
    only where these can tell anything. only: these alone. Asked again before anything is
    written, the answer is the same and costs nothing.
    """
    if only is not None:
        return _with_meals(keeping, on, _reckoned(keeping, on, only))
    with made_at_once():
        board = _whole_board(keeping, on)
        asked = ("due", on, keeping.today)
        return list(keeping.once(asked, lambda: _with_meals(keeping, on, board)))


def judged_rows(keeping: Keeping, on: date) -> list[DueRow]:
    """As ``due_rows``, but those that are due have no meal and no offers yet: the first step."""
    with made_at_once():
        return list(_whole_board(keeping, on).rows)


class _Board(NamedTuple):
    """Every animal judged. unfed: those due, whose meal is not chosen; doubts: nights by animal."""

    rows: list[DueRow]
    unfed: Mapping[AnimalId, Judged]
    doubts: Callable[[AnimalId], Sequence[date]]


def _whole_board(keeping: Keeping, on: date) -> _Board:
    return keeping.once(("judged", on, keeping.today), lambda: _reckoned(keeping, on, None))


def _reckoned(keeping: Keeping, on: date, only: Container[AnimalId] | None) -> _Board:
    animals = [row for row in animals_on(keeping, on) if row.in_the_room]
    night = _night(keeping, on, animals)
    if only is not None:
        animals = [row for row in animals if row.animal in only]
    first = [night.judged(row, keeping.profile(row)) for row in animals]
    laying = reading.before_laying(keeping.book, on)
    again = {row.animal for row in animals if row.refused_since > 0 or row.animal in laying}
    due_now = {told.plan.animal: told for told in first if told.plan.state is DueState.DUE}
    offers = reading.recent(keeping.book, Offer, again, _LAST_OFFERS, until=on)
    signs = reading.recent(keeping.book, ShedSign, again, _LAST_SIGNS, until=on)
    past = holds_ever(keeping, again, on)
    doubts = _doubts(keeping, on, due_now)
    rows = []
    for row, told in zip(animals, first, strict=True):
        if row.animal not in again and row.animal not in due_now:
            rows.append(DueRow(animal=row, plan=told.plan))
            continue
        profile, planned, recent = keeping.profile(row), told.plan, offers.get(row.animal, [])
        if row.animal in again:
            empty_g = empty_now_g(row, profile)
            planned = night.plan(row, profile, recent, signs[row.animal], empty_g, past[row.animal])
        planned = doubted(planned, row, profile, doubts(row.animal), on)
        rows.append(DueRow(animal=row, plan=planned, recent=tuple(recent)))
    unfed = {animal: told for animal, told in due_now.items() if animal not in again}
    return _Board(rows, unfed, doubts)


def _with_meals(keeping: Keeping, on: date, board: _Board) -> list[DueRow]:
    offers = reading.recent(keeping.book, Offer, board.unfed, _LAST_OFFERS, until=on)
    rows = []
    for row in board.rows:
        now = row.animal
        if now.animal in board.unfed:
            profile, recent = keeping.profile(now), offers[now.animal]
            table = Table(on, recent, empty_now_g(now, profile))
            planned = with_meal(board.unfed[now.animal], now, profile, table)
            planned = doubted(planned, now, profile, board.doubts(now.animal), on)
            row = DueRow(animal=now, plan=planned, recent=tuple(recent))
        rows.append(row)
    return rows


def _doubts(
    keeping: Keeping, on: date, due_now: Container[AnimalId]
) -> Callable[[AnimalId], Sequence[date]]:
    """Nights on which an animal may have been fed, and it was not written."""
    unwritten, of_one = unwritten_nights(keeping, on), of_one_nights(keeping, due_now, on)
    return lambda animal: (*unwritten, *of_one.get(animal, ()))


@dataclass(frozen=True, slots=True, kw_only=True)
class _Night:
    """What is the same for every tub of a night, and what was said of single animals."""

    house: House
    holds: Mapping[AnimalId, Sequence[HoldSet]]
    learned: Mapping[AnimalId, frozenset[HoldKind]]
    bending: Bending

    def judged(self, row: AnimalNow, profile: SpeciesProfile) -> Judged:
        told = judged(row, profile, self.house, *self._said(row))
        if not self.bending.absences:
            return told
        return told._replace(plan=bent(told.plan, row, profile, self.bending, told.pace))

    def plan(
        self,
        row: AnimalNow,
        profile: SpeciesProfile,
        recent: Sequence[Offer],
        signs: Sequence[ShedSign],
        empty_g: float | None,
        past: Sequence[HoldSet],
    ) -> Plan:
        """With her refusals counted under her *past* holds, and a pre-lay shed among her signs."""
        nights, today, last_record_on, _ = self.house
        holds, learned = self._said(row)
        return plan(
            row,
            profile,
            nights,
            today,
            holds,
            recent,
            signs,
            empty_g,
            last_record_on=last_record_on,
            learned=learned,
            past_holds=past,
            bend=lambda told: bent(told, row, profile, self.bending),
        )

    def _said(self, row: AnimalNow) -> tuple[Sequence[HoldSet], frozenset[HoldKind]]:
        return self.holds.get(row.animal, ()), self.learned.get(row.animal, _NOTHING)


def _night(keeping: Keeping, on: date, animals: Sequence[AnimalNow]) -> _Night:
    nights = feed_nights_around(keeping, on)
    last_record = max((row.offered_on for row in animals if row.offered_on), default=None)
    return _Night(
        house=House(nights, on, last_record),
        holds=open_holds(keeping, on).holds,
        learned=eaten_through(keeping, on),
        bending=bending_on(keeping, on),
    )


def bending_on(keeping: Keeping, on: date) -> Bending:
    """What plans of the night *on* are bent round."""
    return Bending(absences(keeping, on), feed_nights_around(keeping, on), on)


def empty_now_g(row: AnimalNow, profile: SpeciesProfile) -> float | None:
    """Empty weight at the last weighing; None when there is none."""
    if row.weight_g is None or row.weighed_on is None:
        return None
    meals = (
        [(row.meal_before_weighing_on, row.meal_before_weighing_g)]
        if row.meal_before_weighing_on is not None
        else []
    )
    found = empty_weight(row.weight_g, row.weighed_on, meals, profile)
    return getattr(found, "grams", None)
