"""From which day the records of a planted trouble allow it to be seen.

Reckoned here from the profiles' figures and plain medians, apart from the rules of the watch,
so that the two can be held against each other.
"""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import pairwise
from math import ceil, log
from statistics import median
from typing import Literal

from keeper.actions.keeping import Keeping, animal_coded
from keeper.actions.life import Life, empties, life_of
from keeper.husbandry.animal import Stage
from keeper.husbandry.events import HoldKind, ShedStage
from keeper.husbandry.now import AnimalNow
from keeper.rehearsal import planted
from keeper.rehearsal.household import Plot
from keeper.rules.growth.expectation import expectation

Weighed = tuple[date, float]
ONE_DAY = timedelta(days=1)
MONTHS_DAYS = 90
REMINDED = timedelta(days=7)
"""The end of a quarantine is announced a week before (common practice)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Planted:
    """code: of an animal or a row; empty for the whole house. what: a kind of line where the
    watch shows it. on: the first day on which the data allow it to be seen.
    """

    code: str
    what: str
    on: date
    or_as: str | None = None  # another kind of line that tells the same
    shown_by: Literal["watch", "females", "board"] = "watch"


def all_planted(keeping: Keeping, plot: Plot) -> tuple[Planted, ...]:
    """Everything planted in the invented house, once it is lived."""
    return (
        *_by_heat(plot),
        *_by_days(keeping, plot.last),
        *_by_weights(keeping, plot.last),
        *_on_the_board(plot),
        *_among_females(plot.last),
    )


def _by_heat(plot: Plot) -> Iterator[Planted]:
    for spell in plot.spells:
        what, fed = "cold row", "cold after feeding"
        yield Planted(code=spell.row, what=what, or_as=fed, on=spell.first)


def _by_days(keeping: Keeping, last: date) -> Iterator[Planted]:
    """What a number of days makes plain."""
    for code, what, seen in _DAYS:
        animal = animal_coded(keeping, code)
        on = seen(keeping, animal, life_of(keeping, animal.animal, last))
        if on is not None:
            yield Planted(code=code, what=what, on=on)


def _unstarted(keeping: Keeping, animal: AnimalNow, life: Life) -> date | None:
    most = keeping.profile(animal).weights.first_meal_days_most.value
    return animal.hatched_last and animal.hatched_last + timedelta(days=most) + ONE_DAY


def _long_opaque(keeping: Keeping, animal: AnimalNow, life: Life) -> date | None:
    most = keeping.profile(animal).sheds.opaque_days_most.value
    return life.signs[-1].happened.day + timedelta(days=most) + ONE_DAY


def _late_shed(keeping: Keeping, animal: AnimalNow, life: Life) -> date | None:
    """After so many times its own median interval at the latest."""
    sheds = [s.happened.day for s in life.signs if s.stage is ShedStage.SHED]
    own_days = median((after - before).days for before, after in pairwise(sheds))
    factor = keeping.profile(animal).sheds.overdue_factor.value
    return sheds[-1] + timedelta(days=ceil(factor * own_days))


def _brought_up(keeping: Keeping, animal: AnimalNow, life: Life) -> date | None:
    return animal.regurgitated_on


def _quarantine_ends(keeping: Keeping, animal: AnimalNow, life: Life) -> date | None:
    ends = [hold.until for hold in life.holds if hold.kind is HoldKind.QUARANTINE]
    return ends[-1] - REMINDED if ends and ends[-1] else None


_Seen = Callable[[Keeping, AnimalNow, Life], date | None]
_DAYS: tuple[tuple[str, str, _Seen], ...] = (
    (planted.LATE_STARTER, "not started", _unstarted),
    (planted.LONG_OPAQUE, "opaque too long", _long_opaque),
    (planted.LATE_SHED, "shed overdue", _late_shed),
    (planted.BROUGHT_UP, "regurgitated", _brought_up),
    (planted.ARRIVED, "quarantine", _quarantine_ends),
)


def _by_weights(keeping: Keeping, last: date) -> Iterator[Planted]:
    """What weights make plain, on the day of the weighing that does."""
    for code, what, or_as, seen in _WEIGHTS:
        animal = animal_coded(keeping, code)
        life = life_of(keeping, animal.animal, last)
        freed = empties(life.weighings, life.meals, keeping.profile(animal))
        on = seen(keeping, animal, [(day, grams) for day, grams, inside in freed if not inside])
        if on is not None:
            yield Planted(code=code, what=what, or_as=or_as, on=on)


def _far_below(keeping: Keeping, animal: AnimalNow, weights: Sequence[Weighed]) -> date | None:
    """At or under the profile's z on the curve of its own kind, which is log-normal."""
    profile = keeping.profile(animal)
    for day, grams in weights:
        expected = expectation(profile.growth[animal.sex], animal.age_days(day) or 0)
        if log(grams / expected.m_g) / expected.s <= profile.weights.under_z.value:
            return day
    return None


def _adult_loses(keeping: Keeping, animal: AnimalNow, weights: Sequence[Weighed]) -> date | None:
    return _loses(keeping, animal, weights, Stage.ADULT)


def _grower_loses(keeping: Keeping, animal: AnimalNow, weights: Sequence[Weighed]) -> date | None:
    return _loses(keeping, animal, weights, Stage.SUBADULT)


def _loses(
    keeping: Keeping, animal: AnimalNow, weights: Sequence[Weighed], stage: Stage
) -> date | None:
    """Two weights below the watch step, or one below the vet's."""
    figures = keeping.profile(animal).weights
    watch, vet = figures.loss_watch_percent[stage].value, figures.loss_vet_percent[stage].value
    for count in range(3, len(weights) + 1):
        before, pair, one = weights[: count - 2], weights[count - 2 : count], weights[count - 1]
        smaller = min(_lost_percent(before, each, stage) for each in pair)
        if smaller >= watch or _lost_percent(weights[: count - 1], one, stage) >= vet:
            return one[0]
    return None


def _lost_percent(before: Sequence[Weighed], now: Weighed, stage: Stage) -> float:
    """Of the median of three months, or of the last three weights where it grows."""
    recent = [grams for day, grams in before if (now[0] - day).days <= MONTHS_DAYS]
    usual_g = median(recent or [grams for _, grams in before])
    if stage is not Stage.ADULT:
        usual_g = max(usual_g, median(grams for _, grams in before[-3:]))
    return 100 * (1 - now[1] / usual_g)


_WEIGHTS = (
    (planted.SLIGHT, "under expectation", None, _far_below),
    (planted.LOSING, "losing while eating", "weight loss", _adult_loses),
    (planted.HEAVIER, "losing while eating", "weight loss", _grower_loses),
)
"""A loss is a plain one until two meals lie between the weights that show it."""


def _on_the_board(plot: Plot) -> Iterator[Planted]:
    for night in sorted(plot.unrecorded):
        yield Planted(code="", what="night not recorded", on=night, shown_by="board")
    for who in plot.characters:
        for laying in who.layings:
            if laying.pending and laying.pre_lay is not None:
                on = laying.pre_lay
                yield Planted(code=who.code, what="pre-lay shed", on=on, shown_by="board")


def _among_females(last: date) -> Iterator[Planted]:
    stands = {
        planted.READY: "met",
        planted.NEAR: "near",
        planted.FAR: "far",
        planted.UNTOLD: "cannot tell",
    }
    for code, what in stands.items():
        yield Planted(code=code, what=what, on=last, shown_by="females")
