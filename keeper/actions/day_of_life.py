"""One day of one animal's life: every lane's figures on that day, as far as they are known."""

from bisect import bisect_left, bisect_right
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from math import inf

from keeper.actions.animal_page import AnimalPage, Weighed
from keeper.actions.life import CARE, EATEN, E
from keeper.actions.life_causes import Cause, cause_of
from keeper.actions.life_lanes import Counting, HoldSpan, RefusalMark, ShedCycle
from keeper.actions.life_places import HeatDay, Mate, Stay
from keeper.actions.own_entries import Struck
from keeper.husbandry.events import (
    AnimalEvent,
    Clutch,
    HoldSet,
    Measured,
    Moved,
    Offer,
    Paired,
    Regurgitation,
    Remark,
    Sexed,
    ShedSign,
    Stock,
    TotalLength,
    Weighing,
)
from keeper.husbandry.profile import practice
from keeper.rules.growth.expectation import Expectation, Standing

HEAT_SPEAKS_DAYS = practice(2)
"""A reading speaks for so many days after it."""

COLD_SHOWN_DAYS = practice(28)
"""The coldest hot end of so many days is shown where it left the wanted range."""


@dataclass(frozen=True, slots=True, kw_only=True)
class DayOfLife:
    """Figures on *day*; None and empty mean not known.

    weighed is the newest weighing by that day, fed_before the days between it and the meal
    before it. seen_that_day: entries of the day that no other figure tells.
    """

    day: date
    today: date
    age_days: int | None
    weighed: Weighed | None = None
    fed_before_days: int | None = None
    expected: Expectation | None = None
    standing: Standing | None = None
    eaten: Offer | None = None
    refused: tuple[RefusalMark, ...] = ()
    regurgitated_on: date | None = None
    holds: tuple[HoldSpan, ...] = ()
    cycle: ShedCycle | None = None
    shed: ShedCycle | None = None
    heat: HeatDay | None = None
    coldest: HeatDay | None = None
    stay: Stay | None = None
    mates: tuple[Mate, ...] = ()
    clutch: Clutch | None = None
    seen_that_day: tuple[AnimalEvent, ...] = ()
    offers_that_day: tuple[Offer, ...] = ()
    struck: tuple[Struck, ...] = ()
    cause: Cause | None = None

    @property
    def ahead(self) -> bool:
        """Whether the day is still to come."""
        return self.day > self.today

    def counted(self, counting: Counting) -> int:
        """Refusals since the last meal that count in this way."""
        return sum(mark.counting is counting for mark in self.refused)


def day_of_life(page: AnimalPage, day: date) -> DayOfLife:
    """The figures of *day*; of a day to come only what is expected."""
    age, expected = page.animal.age_days(day), page.expected(day)
    if day > page.today:
        return DayOfLife(day=day, today=page.today, age_days=age, expected=expected)
    weighed = page.last_weighed(day)
    eaten = _last([o for o in page.life.offers if o.result in EATEN], day)
    regurgitated = _last(page.life.regurgitations, day)
    return DayOfLife(
        day=day,
        today=page.today,
        age_days=age,
        weighed=weighed,
        fed_before_days=_fed_before(page, weighed),
        expected=expected,
        standing=page.standing(weighed) if weighed else None,
        eaten=eaten,
        refused=_refused_since(page, eaten, day),
        regurgitated_on=regurgitated.happened.day if regurgitated else None,
        holds=tuple(span for span in page.lanes.holds if span.covers(day)),
        cycle=_open_cycle(page.lanes.sheds, day),
        shed=_last_shed(page.lanes.sheds, day),
        heat=_heat(page.beside.heat, day),
        coldest=_coldest(page, day),
        stay=next((stay for stay in reversed(page.beside.stays) if stay.covers(day)), None),
        mates=tuple(mate for mate in page.beside.mates if mate.covers(day)),
        clutch=_last(page.life.clutches, day),
        seen_that_day=tuple(e for e in events_of(page) if _told_apart(e, day)),
        offers_that_day=tuple(o for o in page.life.offers if o.happened.day == day),
        struck=tuple(one for one in page.beside.struck if one.day == day),
        cause=cause_of(page, day),
    )


def events_of(page: AnimalPage) -> Sequence[AnimalEvent]:
    """Everything that happened to her up to the page's day, in no particular order."""
    life, beside = page.life, page.beside
    return (
        *life.weighings,
        *life.offers,
        *life.regurgitations,
        *life.signs,
        *life.holds,
        *life.moves,
        *life.clutches,
        *life.pairings,
        *life.measures,
        *life.lengths,
        *life.remarks,
        *life.care,
        *(sexed for sexed in beside.sexings if sexed.happened.day <= page.today),
        *(stock for stock in beside.stock if stock.happened.day <= page.today),
    )


def event_days(page: AnimalPage) -> list[date]:
    """Days on which anything happened, in order."""
    return sorted({event.happened.day for event in events_of(page)})


TOLD_APART = (
    Sexed,
    Stock,
    Moved,
    Measured,
    TotalLength,
    Remark,
    HoldSet,
    ShedSign,
    Clutch,
    Paired,
    Regurgitation,
    *CARE,
)
"""What no lane tells in a figure of its own."""


def _told_apart(event: AnimalEvent, day: date) -> bool:
    if event.happened.day != day:
        return False
    noted = isinstance(event, Weighing | Offer) and event.note
    return isinstance(event, TOLD_APART) or bool(noted)


def _last(events: Sequence[E], day: date) -> E | None:
    return next((event for event in reversed(events) if event.happened.day <= day), None)


def _fed_before(page: AnimalPage, weighed: Weighed | None) -> int | None:
    if weighed is None:
        return None
    before = [day for day, _ in page.life.meals if day < weighed.day]
    return (weighed.day - max(before)).days if before else None


def _refused_since(page: AnimalPage, eaten: Offer | None, day: date) -> tuple[RefusalMark, ...]:
    since = eaten.happened.day if eaten else date.min
    return tuple(mark for mark in page.lanes.refusals if since < mark.day <= day)


def _open_cycle(cycles: Sequence[ShedCycle], day: date) -> ShedCycle | None:
    """The cycle that had begun by *day* and not yet ended in a shed."""
    begun = [cycle for cycle in cycles if cycle.first <= day]
    if not begun or (begun[-1].shed is not None and begun[-1].shed <= day):
        return None
    return begun[-1]


def _last_shed(cycles: Sequence[ShedCycle], day: date) -> ShedCycle | None:
    shed = [cycle for cycle in cycles if cycle.shed is not None and cycle.shed <= day]
    return shed[-1] if shed else None


def _heat(days: Sequence[HeatDay], day: date) -> HeatDay | None:
    """The newest hot end and night low that still speak for *day*."""
    reach = timedelta(days=HEAT_SPEAKS_DAYS.value)
    end = bisect_right(days, day, key=lambda heat: heat.day)
    near = [
        h for h in days[max(0, end - 1 - int(HEAT_SPEAKS_DAYS.value)) : end] if h.day >= day - reach
    ]
    hot = next((h.hot_c for h in reversed(near) if h.hot_c is not None), None)
    night = next((h.night_c for h in reversed(near) if h.night_c is not None), None)
    return HeatDay(day=near[-1].day, hot_c=hot, night_c=night) if near else None


def _coldest(page: AnimalPage, day: date) -> HeatDay | None:
    """The coldest hot end of the last weeks, where it was below what is wanted."""
    days = page.beside.heat
    first = bisect_left(days, day - timedelta(days=COLD_SHOWN_DAYS.value), key=lambda h: h.day)
    wanted_c = page.profile.heat.hot_low_c.value
    cold: HeatDay | None = None
    for heat in days[first : bisect_right(days, day, key=lambda h: h.day)]:
        if heat.hot_c is not None and heat.hot_c < min(wanted_c, _hot(cold)):
            cold = heat
    return cold


def _hot(heat: HeatDay | None) -> float:
    return inf if heat is None or heat.hot_c is None else heat.hot_c
