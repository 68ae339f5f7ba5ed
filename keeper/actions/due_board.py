"""Tonight's board: what each animal is due, and why."""

from collections.abc import Container
from dataclasses import dataclass
from datetime import date, timedelta
from functools import lru_cache
from typing import TypeVar

from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.learned import eaten_through
from keeper.actions.unwritten import doubted, unwritten_nights
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import AnimalEvent, Offer, ShedSign
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile
from keeper.rules.feeding import DueState, Plan, due, plan
from keeper.rules.nights import feed_nights, rules_in
from keeper.rules.weights import empty_weight
from keeper.store import reading

E = TypeVar("E", bound=AnimalEvent)

FEED_NIGHTS = "feed nights"
"""Setting: recurrence rules of RFC 5545, one a line; empty means every day."""

_LAST_OFFERS = 6
_LAST_SIGNS = 6
_NIGHTS_BACK = timedelta(days=60)
_NIGHTS_AHEAD = timedelta(days=90)


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
    only where these can tell anything. only: these alone.
    """
    nights = feed_nights_around(keeping, on)
    holds = reading.open_holds(keeping.book, on)
    animals = [row for row in animals_on(keeping, on) if row.in_the_room]
    last_record = max((row.offered_on for row in animals if row.offered_on), default=None)
    learned = eaten_through(keeping, on)
    unwritten = unwritten_nights(keeping, on)
    if only is not None:
        animals = [row for row in animals if row.animal in only]
    first = {
        row.animal: due(
            row,
            keeping.profile(row),
            nights,
            on,
            holds.get(row.animal, ()),
            last_record_on=last_record,
            learned=learned.get(row.animal, frozenset()),
        )
        for row in animals
    }
    refusing = {row.animal for row in animals if row.refused_since > 0}
    may_eat = [key for key, told in first.items() if told.state is not DueState.NOT_DUE]
    laying = reading.before_laying(keeping.book, may_eat, _LAST_SIGNS, until=on)
    due_now = {key for key in may_eat if first[key].state is DueState.DUE}
    offers = reading.recent(
        keeping.book, Offer, refusing | laying | due_now, _LAST_OFFERS, until=on
    )
    signs = reading.recent(keeping.book, ShedSign, refusing | laying, _LAST_SIGNS, until=on)
    rows = []
    for row in animals:
        if row.animal in offers:
            profile = keeping.profile(row)
            planned = plan(
                row,
                profile,
                nights,
                on,
                holds.get(row.animal, ()),
                offers[row.animal],
                signs.get(row.animal, ()),
                empty_now_g(row, profile),
                last_record_on=last_record,
                learned=learned.get(row.animal, frozenset()),
            )
            planned = doubted(planned, row, profile, unwritten, on)
            rows.append(DueRow(animal=row, plan=planned, recent=tuple(offers[row.animal])))
        else:
            rows.append(DueRow(animal=row, plan=first[row.animal]))
    return rows


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
