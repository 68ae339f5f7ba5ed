"""One animal's meals in the weeks to come: the nights it is offered, and the grade it has by then.

It is fed as the plan would feed it: at its own interval on the house's nights, each meal chosen by
the weight expected by then and by the meals before it. Each offer is taken to be eaten; where it
is likely refused, the next comes a little nearer to the retry night.
"""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import Enum
from functools import lru_cache
from math import sqrt
from typing import NamedTuple

from keeper.husbandry.animal import Sex, Stage
from keeper.husbandry.events import HoldKind, Offer, Result
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import FeedingFigures, LmsCurve, SpeciesProfile
from keeper.husbandry.when import on_day
from keeper.rules.feeding import FAT_PERCENT, DueState, Plan
from keeper.rules.growth.expectation import expectation
from keeper.rules.growth.lms import TAIL_Z, weight_at_z, z_score
from keeper.rules.holds import MEALS_TO_FULL, Hold
from keeper.rules.nights import next_night, snap
from keeper.rules.prey import PreyOffer, choose_prey, prey_name
from keeper.rules.stages import figures_of, stage_of
from keeper.rules.timing import FAT_TIMES, is_fat

_ONE_DAY = timedelta(days=1)
_Lms = tuple[float, float, float]

SAME_SHARE = 0.01
"""A meal that was chosen twice is chosen again until the weight has changed by so much. A choice of
reckoning, not of husbandry: by then it comes to no other meal, or to it one meal later."""


class Basis(Enum):
    """What the grade of the coming weeks is known by."""

    GROWTH = "growth"
    LAST_WEIGHT = "last weight"  # hatch day or curve are not known: the weight stays
    LAST_EATEN = "last eaten"  # no weight: the grade stays


class Silent(Enum):
    """Why no meal of an animal can be told."""

    HELD = "held"  # with no end known
    UNTOLD = "untold"  # when it is next fed cannot be told
    GRADELESS = "gradeless"  # neither its weight nor what it last ate is known


@dataclass(frozen=True, slots=True, kw_only=True)
class Eater:
    """One animal as it stands today. profile: with the growth curves as they are here.

    empty_g: at the last weighing. refusal_chance: of one offer. apart: what it refuses goes to
    nobody else.
    """

    now: AnimalNow
    profile: SpeciesProfile
    plan: Plan
    empty_g: float | None = None
    recent: Sequence[Offer] = ()
    refusal_chance: float = 0.0
    apart: bool = False


class Meal(NamedTuple):
    """One offer ahead. grams: all items together. weight_g: expected by then, None: not known."""

    on: date
    prey: str
    items: int
    grams: float
    stage: Stage | None
    weight_g: float | None


class Curves:
    """L, M and S by curve and age, looked up once for all animals of a kind."""

    def __init__(self) -> None:
        self._known: dict[int, tuple[LmsCurve, dict[int, _Lms]]] = {}

    def growth(self, curve: LmsCurve, from_days: int, empty_g: float) -> Callable[[int], float]:
        """How many times its weight an animal is at an age, that stays at its own centile.

        One beyond three deviations grows as one at three does.
        """
        ages = self._known.setdefault(id(curve), (curve, {}))[1]
        before = _lms(curve, from_days, ages)
        z = max(-TAIL_Z, min(TAIL_Z, z_score(empty_g, *before)))
        start_g = weight_at_z(z, *before)
        return lambda age_days: weight_at_z(z, *_lms(curve, age_days, ages)) / start_g


def _lms(curve: LmsCurve, age_days: int, known: dict[int, _Lms]) -> _Lms:
    found = known.get(age_days)
    if found is None:
        expected = expectation(curve, age_days)
        found = known[age_days] = (expected.l, expected.m_g, expected.s)
    return found


def eaten_grade(eater: Eater) -> str | None:
    """What it last ate, named as its profile names it; as written where no profile does."""
    written = eater.now.eaten_prey
    if written is None:
        return None
    plain = " ".join(written.split()).casefold()
    names = (prey_name(grade) for grade in eater.profile.prey)
    return next((name for name in names if name.casefold() == plain), written)


def basis_of(eater: Eater) -> Basis:
    """What the coming grades of *eater* are known by."""
    if eater.empty_g is None or eater.now.weighed_on is None:
        return Basis.LAST_EATEN
    age_days = eater.now.age_days(eater.now.weighed_on)
    if age_days is None or age_days < 0 or not _curves_of(eater):
        return Basis.LAST_WEIGHT
    return Basis.GROWTH


def silent(eater: Eater, today: date) -> Silent | None:
    """Why nothing can be told of *eater*; None where it can."""
    plan = eater.plan
    if first_on(eater, (), today) is None:
        return Silent.HELD if plan.state is DueState.HOLD else Silent.UNTOLD
    if plan.interval_days is None:
        return Silent.UNTOLD
    known = eater.empty_g is not None or eater.now.eaten_prey is not None
    return None if known else Silent.GRADELESS


def first_on(eater: Eater, nights: Sequence[date], today: date) -> date | None:
    """The next night it is fed; None where an event must come first or it cannot be told.

    An opaque animal is taken to have shed when the longest cycle of its kind is over.
    """
    plan, hold = eater.plan, eater.plan.hold
    due_on = None if plan.state is DueState.CANNOT_TELL else plan.due_on
    if plan.state is DueState.HOLD and due_on is None and hold and hold.kind is HoldKind.OPAQUE:
        cycle = timedelta(days=round(eater.profile.sheds.cycle_days_most.value))
        due_on = hold.since + cycle + _ONE_DAY
    return None if due_on is None else next_night(max(due_on, today), nights)


def meals_ahead(
    eater: Eater, nights: Sequence[date], today: date, last: date, curves: Curves
) -> Iterator[Meal]:
    """Its meals from *today* to *last*, in order; none where nothing can be told."""
    night = None if silent(eater, today) else first_on(eater, nights, today)
    table = _Table(eater, curves)
    while night is not None and night <= last:
        meal = table.serve(night)
        if meal is None:
            return
        yield meal
        night = table.next_after(night, nights)


class _Settled(NamedTuple):
    """A meal that was chosen again after two of it, and what it was chosen by."""

    weight_g: float
    figures: FeedingFigures
    share: float
    offer: PreyOffer

    def still(self, weight_g: float, figures: FeedingFigures, share: float) -> bool:
        same = self.figures is figures and self.share == share
        return same and abs(weight_g - self.weight_g) < SAME_SHARE * self.weight_g


class _Table:
    """One animal being fed meal after meal."""

    def __init__(self, eater: Eater, curves: Curves) -> None:
        self._eater = eater
        self._grown = _growth(eater, curves)
        self._small = _small_meals(eater)
        self._recent = list(eater.recent)
        self._last: _Settled | None = None
        self._figures: FeedingFigures | None = None
        self._first: FeedingFigures | None = None

    def serve(self, night: date) -> Meal | None:
        """The meal of *night*, which is then taken to be eaten."""
        eater = self._eater
        stage = stage_of(eater.now, eater.profile, night)
        figures = figures_of(eater.profile, stage, eater.now.sex) if stage is not None else None
        self._figures = figures or self._figures
        self._first = self._first or self._figures
        weight_g = self._weight(night)
        if weight_g is None or self._figures is None:
            return _as_last_eaten(eater, night, stage)
        offer = self._chosen(weight_g, self._figures, self._share(night))
        self._small -= 1
        if offer is None:
            return None
        self._recent = [*self._recent[-5:], _eaten(offer.prey, offer.count, offer.grams)]
        return Meal(night, offer.prey, offer.count, offer.grams, stage, weight_g)

    def next_after(self, night: date, nights: Sequence[date]) -> date:
        """The night after *night* on which it is next offered."""
        eater, figures = self._eater, self._figures
        interval = self._interval(night)
        if figures is None:
            return next_night(night + timedelta(days=max(1, round(interval))), nights)
        chance = eater.refusal_chance
        gap = round((1 - chance) * interval + chance * min(interval, figures.retry_days.value))
        early, late = int(figures.early_days.value), int(figures.late_days.value)
        return _night_after(night, max(1, gap), early, late, tuple(nights))

    def _interval(self, night: date) -> float:
        """Days between meals: today's own while she is in today's stage, then the next stage's."""
        told = float(self._eater.plan.interval_days or 1)
        if self._figures is None or self._figures is self._first:
            return told
        times = FAT_TIMES.value if is_fat(self._eater.now, night) else 1.0
        return self._figures.interval_days.value * times

    def _weight(self, night: date) -> float | None:
        """Empty grams expected on *night*."""
        eater = self._eater
        if eater.empty_g is None or not self._grown:
            return eater.empty_g
        age_days = eater.now.age_days(night) or 0
        times = [grown(age_days) for grown in self._grown]
        return eater.empty_g * (times[0] if len(times) == 1 else sqrt(times[0] * times[1]))

    def _share(self, night: date) -> float:
        hold = self._eater.plan.hold
        shares = [1.0]
        if hold is not None and _still_small(hold, night) and self._small > 0:
            shares.append((hold.part_percent or 100) / 100)
        if is_fat(self._eater.now, night):
            shares.append(FAT_PERCENT.value / 100)
        return min(shares)

    def _chosen(self, weight_g: float, figures: FeedingFigures, share: float) -> PreyOffer | None:
        """As the round chooses; the same meal again where hardly anything has changed since."""
        if self._last is not None and self._last.still(weight_g, figures, share):
            return self._last.offer
        grades, rising = self._eater.profile.prey, False if share < 1 else None
        chosen = choose_prey(weight_g, figures, grades, self._recent, share, rising=rising)
        if not chosen.offer:
            return None
        offer = chosen.offer[0]
        eaten = _eaten(offer.prey, offer.count, offer.grams)
        settled = len(self._recent) > 1 and all(each is eaten for each in self._recent[-2:])
        self._last = _Settled(weight_g, figures, share, offer) if settled else None
        return offer


@lru_cache(maxsize=8192)
def _night_after(
    night: date, days: int, early_days: int, late_days: int, nights: tuple[date, ...]
) -> date:
    """So many days later on a feed night, and on no night twice."""
    snapped = snap(night + timedelta(days=days), nights, early_days, late_days)
    return max(snapped, next_night(night + _ONE_DAY, nights))


def _curves_of(eater: Eater) -> tuple[LmsCurve, ...]:
    """Her sex's curve; both where the sex is not known, to go midway between them."""
    growth, sex = eater.profile.growth, eater.now.sex
    if sex in growth:
        return (growth[sex],)
    both = tuple(growth[each] for each in (Sex.FEMALE, Sex.MALE) if each in growth)
    return both if len(both) == 2 else ()


def _growth(eater: Eater, curves: Curves) -> tuple[Callable[[int], float], ...]:
    """How it grows from its last weighing on; none where that is not known."""
    if basis_of(eater) is not Basis.GROWTH or eater.empty_g is None:
        return ()
    age_days = eater.now.age_days(eater.now.weighed_on or date.max) or 0
    return tuple(curves.growth(c, age_days, eater.empty_g) for c in _curves_of(eater))


def _small_meals(eater: Eater) -> float:
    """How many meals stay small after a change; inf where time or an event must end it."""
    hold = eater.plan.hold
    if hold is None or hold.kind is HoldKind.NEW_ARRIVAL:
        return 1
    if hold.kind is HoldKind.REGURGITATED:
        return MEALS_TO_FULL.value - eater.now.meals_since_regurgitation
    return float("inf")


def _still_small(hold: Hold, night: date) -> bool:
    """Whether a hold that cuts meals, or will once its days without food are over, is in force."""
    grows_into = hold.kind in (HoldKind.NEW_ARRIVAL, HoldKind.REGURGITATED)
    return grows_into or (not hold.skip and (hold.until is None or night < hold.until))


def _as_last_eaten(eater: Eater, night: date, stage: Stage | None) -> Meal | None:
    prey, now = eaten_grade(eater), eater.now
    if prey is None:
        return None
    return Meal(night, prey, now.eaten_count or 1, now.eaten_g or 0.0, stage, None)


@lru_cache(maxsize=1024)
def _eaten(prey: str, count: int, grams: float) -> Offer:
    """A meal as the choice of the next one looks at it; the day is told by its place in the row."""
    return Offer(
        animal=0,
        happened=on_day(date.max - timedelta(days=2)),
        result=Result.TAKEN,
        prey=prey,
        count=count,
        mass_g=grams,
    )
