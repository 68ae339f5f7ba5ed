"""What lies in the freezer, bag by bag, and when to order, to use first, or to bin.

Bags are counted in and counted anew; in between the items that were offered are taken out, from
the bag that was opened, else from the oldest that still holds some.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime
from typing import NamedTuple

from keeper.husbandry.house import BagOpened, PreyCounted
from keeper.husbandry.profile import practice
from keeper.husbandry.reasons import Reason, because
from keeper.rules.watch_facts import Severity, WatchLine

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("prey below order point", ("prey", "left", "point", "a_week", "weeks", "lead_weeks")),
    ("bag past use", ("prey", "bag", "left", "since", "days")),
    ("bag past keeping", ("prey", "bag", "left", "since", "days")),
    ("ends with a bag counted in", ()),
    ("ends when the bag is empty", ()),
)
"""Every reason of this module with the figures it carries."""

LEAD_WEEKS, SPARE_WEEKS = (
    practice(2),
    practice(2),
)
"""Order when less is left than is used until the order comes (one to two weeks) and two more."""

USE_DAYS, BIN_DAYS = (
    practice(183),
    practice(365),
)
"""Six months after it came a bag is used first, after twelve it is binned."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Bag:
    """One bag that was counted in. since: the day it came. left: items by all that was written."""

    prey: str
    bag: str
    since: date
    left: int


class _Step(NamedTuple):
    """What changed the freezer, in the order of time: a count, an opened bag, items used."""

    at: datetime
    rank: int
    prey: str
    bag: str
    items: int
    on: date


_COUNTED, _OPENED, _USED = range(3)


def bags_left(
    counted: Iterable[PreyCounted],
    opened: Iterable[BagOpened],
    used: Iterable[tuple[datetime, str, int]],
) -> tuple[Bag, ...]:
    """Every bag ever counted, by grade and the oldest first, with what is left in it."""
    bags: dict[tuple[str, str], Bag] = {}
    from_bag: dict[str, str] = {}
    for step in sorted((*_counts(counted), *_opened(opened), *_uses(used)), key=_in_time):
        if step.rank == _OPENED:
            from_bag[step.prey] = step.bag
        elif step.rank == _COUNTED:
            key = (step.prey, step.bag)
            before = bags.get(key)
            came = before.since if before is not None and before.left else step.on
            bags[key] = Bag(prey=step.prey, bag=step.bag, since=came, left=step.items)
        else:
            _take(bags, step, from_bag.get(step.prey))
    return tuple(sorted(bags.values(), key=lambda bag: (bag.prey, bag.since, bag.bag)))


def prey_lines(
    bags: Sequence[Bag], a_week: Mapping[str, float], today: date
) -> tuple[WatchLine, ...]:
    """Grades below their order point, and bags past their time.

    a_week: planned items of each grade. A grade that was never counted is not judged.
    """
    left: dict[str, int] = {}
    for bag in bags:
        left[bag.prey] = left.get(bag.prey, 0) + bag.left
    low = (_low(prey, items, a_week.get(prey, 0.0)) for prey, items in left.items())
    aged = (_aged(bag, today) for bag in bags if bag.left)
    return tuple(line for line in (*low, *aged) if line is not None)


def order_point(a_week: float) -> float:
    """Items below which to order."""
    return a_week * (LEAD_WEEKS.value + SPARE_WEEKS.value)


def _low(prey: str, left: int, a_week: float) -> WatchLine | None:
    point = order_point(a_week)
    if left >= point:
        return None
    why = because(
        "prey below order point",
        prey=prey,
        left=left,
        point=point,
        a_week=a_week,
        weeks=left / a_week,
        lead_weeks=LEAD_WEEKS.value,
    )
    return _line("prey low", prey, why, None)


def _aged(bag: Bag, today: date) -> WatchLine | None:
    days = (today - bag.since).days
    if days < USE_DAYS.value:
        return None
    past = "bag past keeping" if days >= BIN_DAYS.value else "bag past use"
    why = because(past, prey=bag.prey, bag=bag.bag, left=bag.left, since=bag.since, days=days)
    return _line("bag aged", bag.bag, why, bag.since)


def _line(kind: str, place: str, why: Reason, since: date | None) -> WatchLine:
    told = "ends when the bag is empty" if since else "ends with a bag counted in"
    return WatchLine(
        animal=None,
        place=place,
        kind=kind,
        severity=Severity.THIS_WEEK,
        since=since,
        ends=because(told),
        because=(why,),
    )


def _take(bags: dict[tuple[str, str], Bag], step: _Step, opened: str | None) -> None:
    """Items out of the opened bag, then out of the oldest; more than is there leaves nothing."""
    wanted = step.items
    holding = [key for key, bag in bags.items() if bag.prey == step.prey and bag.left]
    holding.sort(key=lambda key: (key[1] != opened, bags[key].since, key[1]))
    for key in holding:
        taken = min(wanted, bags[key].left)
        bags[key] = replace(bags[key], left=bags[key].left - taken)
        wanted -= taken


def _in_time(step: _Step) -> tuple[datetime, int]:
    """By the hour; of one hour first what was counted, in its own order."""
    return step.at, step.rank


def _counts(counted: Iterable[PreyCounted]) -> Iterable[_Step]:
    for each in sorted(counted, key=lambda told: told.happened.at):
        yield _Step(_hour(each.happened.at), _COUNTED, each.prey, each.bag, each.items, _on(each))


def _opened(opened: Iterable[BagOpened]) -> Iterable[_Step]:
    for each in sorted(opened, key=lambda told: told.happened.at):
        yield _Step(_hour(each.happened.at), _OPENED, each.prey, each.bag, 0, _on(each))


def _uses(used: Iterable[tuple[datetime, str, int]]) -> Iterable[_Step]:
    for at, prey, items in used:
        yield _Step(at, _USED, prey, "", items, at.date())


def _on(each: PreyCounted | BagOpened) -> date:
    return each.happened.day


def _hour(at: datetime) -> datetime:
    return at.astimezone(UTC).replace(minute=0, second=0, microsecond=0)
