"""What will be eaten in the coming weeks grade by grade, how long the freezer lasts, when to order.

A week's need is reckoned as the thaw list reckons a night's: what is planned, with something to
spare, less what is likely refused and passed on.
"""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date, timedelta
from enum import Enum
from math import ceil
from typing import NamedTuple

from keeper.husbandry.animal import Stage
from keeper.husbandry.profile import Sourced
from keeper.husbandry.reasons import Reason, because
from keeper.rules.meals_ahead import (
    Basis,
    Curves,
    Eater,
    Meal,
    Silent,
    basis_of,
    eaten_grade,
    meals_ahead,
    silent,
)
from keeper.rules.watch_prey import BIN_DAYS, LEAD_WEEKS, SPARE_WEEKS, USE_DAYS, Bag

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("demand a week", ("a_week", "weeks", "animals", "planned", "spare", "passed")),
    ("prey needed from", ("on", "animals")),
    ("prey not planned", ("weeks",)),
    ("grade never counted", ()),
    ("stock lasts until", ("left", "on", "days")),
    ("stock lasts beyond", ("left", "weeks")),
    ("stock is gone", ()),
    ("order prey by", ("on", "lead_weeks", "spare_weeks")),
    ("order prey now", ("lead_weeks", "spare_weeks")),
    ("no order of prey yet", ("weeks",)),
    ("grade by last weight", ("animals",)),
    ("grade as last eaten", ("animals",)),
    ("held with no end", ("animals",)),
    ("next feed not known", ("animals",)),
    ("grade of none known", ("animals",)),
    ("goes over to", ("prey", "offered", "on", "weight_g")),
)
"""Every reason of this module with the figures it carries."""

WEEKS = 12
"""So far the picture looks: the longest of the 8 to 12 weeks that stores are planned for."""

SOON_WEEKS = 4
"""What is used a week is told as the mean over so many weeks to come."""

BEYOND_WEEKS = WEEKS + int(LEAD_WEEKS.value + SPARE_WEEKS.value)
"""Meals are looked at so far, so that an order day within the picture can be told."""

_WEEK = timedelta(days=7)


class Group(Enum):
    """Who eats it, as the bars of a week are parted."""

    HATCHLINGS = "hatchlings"
    GROWING = "growing"
    ADULTS = "adults"  # and those whose stage is not known


class Stock(Enum):
    """How it stands with a grade."""

    ORDER_NOW = "order now"
    ORDER_SOON = "order soon"  # within the weeks looked at
    NOT_COUNTED = "not counted"
    ENOUGH = "enough"


@dataclass(frozen=True, slots=True, kw_only=True)
class Spares:
    """Thawed beyond what is planned, as a share: per cent for hatchlings and for all others."""

    hatchling: Sourced
    others: Sourced


class Need(NamedTuple):
    """Items: planned, to spare, and passed on because somebody else refused them."""

    planned: float
    spare: float
    passed: float

    @property
    def items(self) -> float:
        return self.planned + self.spare - self.passed


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """An animal's first meal of another grade than the one before."""

    eater: Eater
    on: date
    before: str
    prey: str
    because: Reason


@dataclass(frozen=True, slots=True, kw_only=True)
class GradeDemand:
    """One grade. items and grams of each week; by_group parts the items of each week.

    left: None where it was never counted, then stock is empty. stock: what is left at the
    beginning of each week and at the end of the last; nightly: after each night, by days from
    today. out_on: the first day with less than is
    needed; order_by: the day from which the rest covers lead time and spare alone; None: not
    within the weeks looked at, or not counted. animals: fed it within those weeks.
    """

    prey: str
    state: Stock
    left: int | None
    items: tuple[float, ...]
    grams: tuple[float, ...]
    by_group: Mapping[Group, tuple[float, ...]]
    stock: tuple[float, ...]
    nightly: tuple[tuple[int, float], ...]
    animals: int
    a_week: float
    out_on: date | None
    order_by: date | None
    bags: tuple[Bag, ...]
    steps_in: tuple[Step, ...]
    steps_out: tuple[Step, ...]
    because: tuple[Reason, ...]

    @property
    def lacking(self) -> int | None:
        """Whole items missing at the end of the weeks looked at; None where it was not counted."""
        short = 0.0 if self.left is None else sum(self.items) - self.left
        return None if self.left is None else max(0, ceil(round(short, 9)))


@dataclass(frozen=True, slots=True, kw_only=True)
class Demand:
    """Every grade, what is to be ordered first at the top; because: of whom nothing is told."""

    on: date
    grades: tuple[GradeDemand, ...]
    because: tuple[Reason, ...]


@dataclass(slots=True)
class _Tally:
    """What is summed up of one grade, by days from today."""

    days: dict[int, float] = field(default_factory=dict)
    grams: list[float] = field(default_factory=lambda: [0.0] * WEEKS)
    groups: dict[Group, list[float]] = field(
        default_factory=lambda: {group: [0.0] * WEEKS for group in Group}
    )
    soon: list[Need] = field(default_factory=list)
    eaters: dict[int, Basis] = field(default_factory=dict)
    steps_in: list[Step] = field(default_factory=list)
    steps_out: list[Step] = field(default_factory=list)


def demand(
    eaters: Sequence[Eater],
    bags: Sequence[Bag],
    nights: Sequence[date],
    today: date,
    spares: Spares,
) -> Demand:
    """What *eaters* will be fed from *today* on, beside what lies in the freezer.

    nights: feed nights for as many weeks as ``BEYOND_WEEKS``; empty where every day is one.
    bags: as ``watch_prey.bags_left`` gives them.
    """
    last, curves = today + BEYOND_WEEKS * _WEEK - timedelta(days=1), Curves()
    tallies: dict[str, _Tally] = defaultdict(_Tally)
    for eater in eaters:
        _sum_up(eater, meals_ahead(eater, nights, today, last, curves), today, spares, tallies)
    for bag in bags:
        tallies.setdefault(bag.prey, _Tally())  # one that nobody is fed stands there as well
    grades = (_grade(prey, tally, bags, today) for prey, tally in tallies.items())
    told = (grade for grade in grades if grade.left or any(grade.items))
    return Demand(
        on=today,
        grades=tuple(sorted(told, key=_first_to_order)),
        because=tuple(_untold(eaters, today)),
    )


def need_of(meal: Meal, eater: Eater, spares: Spares) -> Need:
    """What one offer ahead takes from the freezer, in the mean."""
    spare = spares.hatchling if meal.stage is Stage.HATCHLING else spares.others
    passed = 0.0 if eater.apart else meal.items * eater.refusal_chance
    return Need(float(meal.items), meal.items * spare.value / 100, passed)


def aged(bag: Bag, today: date) -> bool:
    """Whether it is to be used first, or binned."""
    return bag.left > 0 and (today - bag.since).days >= USE_DAYS.value


def use_by(bag: Bag) -> tuple[date, date]:
    """The day from which it is used first, and that from which it is binned."""
    return (
        bag.since + timedelta(days=round(USE_DAYS.value)),
        bag.since + timedelta(days=round(BIN_DAYS.value)),
    )


def _sum_up(
    eater: Eater,
    meals: Iterable[Meal],
    today: date,
    spares: Spares,
    tallies: dict[str, _Tally],
) -> None:
    before, basis = eaten_grade(eater), basis_of(eater)
    for meal in meals:
        tally = tallies[meal.prey]
        _count(meal, need_of(meal, eater, spares), today, tally)
        at = (meal.on - today).days
        if at < 7 * WEEKS:
            tally.eaters[eater.now.animal] = basis
            if before is not None and before != meal.prey:
                step = _step(eater, meal, before)
                tally.steps_in.append(step)
                tallies[before].steps_out.append(step)
        before = meal.prey


def _count(meal: Meal, need: Need, today: date, tally: _Tally) -> None:
    at = (meal.on - today).days
    tally.days[at] = tally.days.get(at, 0.0) + need.items
    week = at // 7
    if week < SOON_WEEKS:
        tally.soon.append(need)
    if week < WEEKS:
        tally.groups[_group(meal.stage)][week] += need.items
        tally.grams[week] += need.items * meal.grams / meal.items


def _group(stage: Stage | None) -> Group:
    if stage is Stage.HATCHLING:
        return Group.HATCHLINGS
    return Group.GROWING if stage in (Stage.JUVENILE, Stage.SUBADULT) else Group.ADULTS


def _step(eater: Eater, meal: Meal, before: str) -> Step:
    why = because(
        "goes over to", prey=before, offered=meal.prey, on=meal.on, weight_g=meal.weight_g
    )
    return Step(eater=eater, on=meal.on, before=before, prey=meal.prey, because=why)


def _grade(prey: str, tally: _Tally, bags: Sequence[Bag], today: date) -> GradeDemand:
    mine = tuple(bag for bag in bags if bag.prey == prey)
    left = sum(bag.left for bag in mine) if mine else None
    items = tuple(sum(group[week] for group in tally.groups.values()) for week in range(WEEKS))
    out_on = None if left is None else _out_on(left, tally.days, today)
    order_by = None if out_on is None else _order_by(out_on, today)
    a_week = sum(need.items for need in tally.soon) / SOON_WEEKS
    state = _state(left, order_by, today)
    return GradeDemand(
        prey=prey,
        state=state,
        left=left,
        items=items,
        grams=tuple(tally.grams),
        by_group={group: tuple(weeks) for group, weeks in tally.groups.items()},
        stock=() if left is None else tuple(_stock(left, items)),
        nightly=() if left is None else tuple(_nightly(left, tally.days)),
        animals=len(tally.eaters),
        a_week=a_week,
        out_on=out_on,
        order_by=order_by,
        bags=mine,
        steps_in=_in_order(tally.steps_in),
        steps_out=_in_order(tally.steps_out),
        because=tuple(_why(tally, a_week, any(items), left, out_on, order_by, today)),
    )


def _in_order(steps: Iterable[Step]) -> tuple[Step, ...]:
    return tuple(sorted(steps, key=lambda step: (step.on, step.eater.now.code)))


def _out_on(left: int, days: Mapping[int, float], today: date) -> date | None:
    """The first day on which less is left than is needed."""
    rest = float(left)
    for at in sorted(days):
        rest -= days[at]
        if rest < -1e-9:
            return today + timedelta(days=at)
    return None


def _order_by(out_on: date, today: date) -> date | None:
    """Lead time and spare before it is gone; None: not within the weeks looked at."""
    day = out_on - timedelta(weeks=LEAD_WEEKS.value + SPARE_WEEKS.value)
    return max(day, today) if day < today + WEEKS * _WEEK else None


def _state(left: int | None, order_by: date | None, today: date) -> Stock:
    if left is None:
        return Stock.NOT_COUNTED
    if order_by is None:
        return Stock.ENOUGH
    return Stock.ORDER_NOW if order_by <= today else Stock.ORDER_SOON


def _stock(left: int, items: Sequence[float]) -> Iterator[float]:
    rest = float(left)
    yield rest
    for used in items:
        rest = max(0.0, rest - used)
        yield rest


def _nightly(left: int, days: Mapping[int, float]) -> Iterator[tuple[int, float]]:
    rest = float(left)
    yield 0, rest
    for at in sorted(day for day in days if day < 7 * WEEKS):
        rest = max(0.0, rest - days[at])
        yield at, rest


def _why(
    tally: _Tally,
    a_week: float,
    wanted: bool,
    left: int | None,
    out_on: date | None,
    order_by: date | None,
    today: date,
) -> Iterator[Reason]:
    """What decides comes first."""
    yield _told_order(left, order_by, today)
    if left is not None:
        yield _told_stock(left, out_on, today)
    if not wanted:
        yield because("prey not planned", weeks=WEEKS)
        return
    if not tally.soon:
        first = today + timedelta(days=min(tally.days))
        yield because("prey needed from", on=first, animals=len(tally.eaters))
        return
    yield because(
        "demand a week",
        a_week=a_week,
        weeks=SOON_WEEKS,
        animals=len(tally.eaters),
        planned=sum(need.planned for need in tally.soon) / SOON_WEEKS,
        spare=sum(need.spare for need in tally.soon) / SOON_WEEKS,
        passed=sum(need.passed for need in tally.soon) / SOON_WEEKS,
    )
    known_by = list(tally.eaters.values())
    if by_weight := known_by.count(Basis.LAST_WEIGHT):
        yield because("grade by last weight", animals=by_weight)
    if by_meal := known_by.count(Basis.LAST_EATEN):
        yield because("grade as last eaten", animals=by_meal)


def _told_order(left: int | None, order_by: date | None, today: date) -> Reason:
    lead, spare = LEAD_WEEKS.value, SPARE_WEEKS.value
    if left is None:
        return because("grade never counted")
    if order_by is None:
        return because("no order of prey yet", weeks=WEEKS)
    if order_by <= today:
        return because("order prey now", lead_weeks=lead, spare_weeks=spare)
    return because("order prey by", on=order_by, lead_weeks=lead, spare_weeks=spare)


def _told_stock(left: int, out_on: date | None, today: date) -> Reason:
    if left == 0:
        return because("stock is gone")
    if out_on is None:
        return because("stock lasts beyond", left=left, weeks=BEYOND_WEEKS)
    return because("stock lasts until", left=left, on=out_on, days=(out_on - today).days)


def _first_to_order(told: GradeDemand) -> tuple[int, date, float, str]:
    return list(Stock).index(told.state), told.out_on or date.max, -told.a_week, told.prey


def _untold(eaters: Iterable[Eater], today: date) -> Iterator[Reason]:
    found = [silent(eater, today) for eater in eaters]
    if held := found.count(Silent.HELD):
        yield because("held with no end", animals=held)
    if untold := found.count(Silent.UNTOLD):
        yield because("next feed not known", animals=untold)
    if gradeless := found.count(Silent.GRADELESS):
        yield because("grade of none known", animals=gradeless)
