"""Colour that many genes make: which score of an animal counts, and what a pair's young may score.

A score from 1 to 10 is judged by eye and is comparable only at a like age. The expected young of
a pair lie between the line's mean and their mid-parent, by the share of the difference that is
inherited: line mean + h2 x (mid-parent - line mean). Full sibs spread about their family's mean
with the line's standard deviation x sqrt(1 - h2 / 2). Looks tell only in part what parents carry,
so that families of one mid-parent differ too: before there are young, these spread about what is
foretold with the standard deviation x sqrt(1 - h2^2 / 2).

Source: D. S. Falconer & T. F. C. Mackay, Introduction to Quantitative Genetics, 4th ed. 1996,
chapters 9 to 11. Nothing here is a ratio: such a colour is never stated as carried or not.
"""

import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Literal

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import ShedStage
from keeper.husbandry.profile import Sourced, practice

AgeName = Literal["third shed", "12 months"]


@dataclass(frozen=True, slots=True, kw_only=True)
class ScoringAge:
    """A customary age for scoring: a score counts as of it from *least_days* to *most_days*."""

    name: AgeName
    at_days: Sourced
    least_days: Sourced
    most_days: Sourced


THIRD_SHED = ScoringAge(
    name="third shed", at_days=practice(65), least_days=practice(40), most_days=practice(120)
)
"""A first shed at about 8 days and four weeks between the next."""

YEAR = ScoringAge(
    name="12 months", at_days=practice(365), least_days=practice(300), most_days=practice(480)
)
AGES = (THIRD_SHED, YEAR)

SIGN_HOLDS_DAYS = practice(21)
"""A dull or opaque skin with no later sign is taken to have cleared after so long."""

SURE = practice(0.9)
"""How sure a keeper wants to be of one young above its parents."""

_CLOUDED = frozenset({ShedStage.DULL, ShedStage.OPAQUE})


@dataclass(frozen=True, slots=True, kw_only=True)
class Score:
    """One score of one look. clouded: the skin was dull or opaque, so that it counts for nothing.

    age_days: None where the animal's hatching is not known. written_on: when it was entered,
    later than *on* where an old picture was scored again.
    """

    score: float
    on: date
    written_on: date
    age_days: int | None
    clouded: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Counted:
    """The score that stands for an animal. like_age: it is of the age that all are held to."""

    score: float
    on: date
    age_days: int | None
    like_age: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Expected:
    """The young of one pair, in points of the score.

    spread: of full sibs about their family's mean; foretold: of young about what their parents'
    looks foretell, families' differences in it. beats: the share, 0 to 1, above the mid-parent in
    a family that is as foretold. Nine in ten young lie from low to high, families' differences in.
    """

    mean: float
    spread: float
    foretold: float
    beats: float

    @property
    def low(self) -> float:
        return max(1.0, self.mean - NINE_IN_TEN * self.foretold)

    @property
    def high(self) -> float:
        return min(10.0, self.mean + NINE_IN_TEN * self.foretold)


NINE_IN_TEN = 1.6449
"""Standard deviations to either side that hold nine in ten of a normal distribution."""


def clouded(signs: Iterable[tuple[date, ShedStage]], on: date) -> bool:
    """Whether the skin was dull or opaque on that day, by the latest sign before it.

    >>> clouded([(date(2026, 5, 1), ShedStage.OPAQUE)], date(2026, 5, 4))
    True
    """
    before = [sign for sign in signs if sign[0] <= on]
    if not before:
        return False
    since, stage = max(before, key=lambda sign: sign[0])
    return stage in _CLOUDED and on - since <= timedelta(days=round(SIGN_HOLDS_DAYS.value))


def counted_score(scores: Sequence[Score], age: ScoringAge) -> Counted | None:
    """The score that stands for an animal at *age*, of *scores* in the order of writing.

    The nearest to the age, of several of one day the first: what was scored again from a picture
    checks the eye and replaces nothing. Without one of that age the nearest later one, or one of
    an animal whose hatching is unknown, stands as of another age; one that is too young does not.
    """
    clear = [each for each in scores if not each.clouded]
    like = [each for each in clear if _is_like(each, age)]
    grown = [each for each in clear if _is_grown(each, age)]
    found = min(like or grown, key=lambda each: _days_off(each, age), default=None)
    if found is None:
        return None
    return Counted(score=found.score, on=found.on, age_days=found.age_days, like_age=bool(like))


def usual_age(scores: Iterable[Sequence[Score]]) -> ScoringAge:
    """The customary age at which most animals were scored; of two alike the earlier."""
    everyone = list(scores)
    return max(AGES, key=lambda age: sum(any(_is_like(s, age) for s in each) for each in everyone))


def generations(parents: Mapping[AnimalId, Sequence[AnimalId | None]]) -> dict[AnimalId, int]:
    """Founders are 0, young one more than the later of their parents' generations.

    The later, not the mean, so that every animal stands in a whole generation; the young of an
    animal with its own grandparent therefore count as a generation further on than they are by
    the mean. Parents outside *parents* and unknown ones count as founders, and an animal that is
    written as its own ancestor counts as one too.

    >>> generations({3: (1, 2), 4: (3, 1), 5: (None, None)})
    {3: 1, 4: 2, 5: 0}
    """
    found: dict[AnimalId, int] = {}
    for animal in parents:
        _settle(animal, parents, found)
    return {animal: found[animal] for animal in parents}


def expected_young(line_mean: float, sd: float, h2: float, mid_parent: float) -> Expected:
    """What the young of a pair may be expected to score.

    sd: standard deviation of the score in the line, unselected; h2: 0 to 1.

    >>> young = expected_young(5, 1.5, 0.4, 8)
    >>> round(young.mean, 2), round(young.spread, 2), round(young.beats, 2)
    (6.2, 1.34, 0.09)

    Raises:
        ValueError: h2 not in 0 to 1, or a standard deviation that is not above 0.
    """
    if not 0 <= h2 <= 1:
        raise ValueError(f"h2 lies between 0 and 1, got {h2!r}")
    if not sd > 0:
        raise ValueError(f"a standard deviation is more than 0, got {sd!r}")
    mean = line_mean + h2 * (mid_parent - line_mean)
    spread = sd * math.sqrt(1 - h2 / 2)
    return Expected(
        mean=mean,
        spread=spread,
        foretold=sd * math.sqrt(1 - h2**2 / 2),
        beats=_above((mid_parent - mean) / spread),
    )


def above(expected: Expected, score: float) -> float:
    """The share of the young, 0 to 1, that may be expected above *score*."""
    return _above((score - expected.mean) / expected.spread)


def none_above(beats: float, young: int) -> float:
    """The chance, 0 to 1, that not one of *young* scores above its parents.

    >>> round(none_above(0.09, 10), 2)
    0.39
    """
    return (1 - beats) ** young


def young_for_one(beats: float, sure: float = SURE.value) -> int | None:
    """The least young, each in its tub, of which with that chance one at least is above.

    None where none can be.

    >>> young_for_one(0.09, 0.5), young_for_one(0.09)
    (8, 25)
    """
    if beats <= 0:
        return None
    return 1 if beats >= sure else math.ceil(math.log(1 - sure) / math.log(1 - beats))


def bred_worth(expected: Expected, h2: float, score: float) -> float:
    """What a young's own score says of the young it may give: its family's mean, and of what it
    is above it the share that is inherited within a family, (h2 / 2) / (1 - h2 / 2).

    >>> round(bred_worth(expected_young(5, 1.5, 0.4, 8), 0.4, 8.6), 2)
    6.8

    Source: Falconer & Mackay, table 13.4, full sibs.
    """
    within = (h2 / 2) / (1 - h2 / 2)
    return expected.mean + within * (score - expected.mean)


def _is_like(score: Score, age: ScoringAge) -> bool:
    days = score.age_days
    return (
        not score.clouded
        and days is not None
        and age.least_days.value <= days <= age.most_days.value
    )


def _is_grown(score: Score, age: ScoringAge) -> bool:
    return score.age_days is None or score.age_days > age.most_days.value


def _days_off(score: Score, age: ScoringAge) -> float:
    return math.inf if score.age_days is None else abs(score.age_days - age.at_days.value)


def _above(z: float) -> float:
    """The upper tail of the normal distribution."""
    return 0.5 * math.erfc(z / math.sqrt(2))


def _settle(
    animal: AnimalId,
    parents: Mapping[AnimalId, Sequence[AnimalId | None]],
    found: dict[AnimalId, int],
) -> None:
    """Fill *found* for *animal* and all its ancestors; without recursion, for long lines."""
    path, open_ = [animal], {animal}
    while path:
        here = path[-1]
        known = [each for each in parents.get(here, ()) if each is not None and each in parents]
        wanted = next((each for each in known if each not in found and each not in open_), None)
        if wanted is not None:
            path.append(wanted)
            open_.add(wanted)
            continue
        path.pop()
        open_.discard(here)
        told = [found.get(each, 0) for each in parents.get(here, ()) if each is not None]
        found.setdefault(here, 1 + max(told) if told else 0)
