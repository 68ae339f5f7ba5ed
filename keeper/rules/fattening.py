"""Growing too fast, or fat: what may let a female be bred before her frame is ready.

Never a verdict of health: what was weighed, measured and fed, held against a figure.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Literal

from keeper.husbandry.events import Measured
from keeper.husbandry.profile import practice
from keeper.husbandry.reasons import Reason, because
from keeper.rules.growth.expectation import Expectation, basis_figures, standing
from keeper.rules.weights import Meal

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    (
        "above her kind",
        ("weight_g", "centile", "limit_centile", "median_g", "basis", "own_percent", "own_animals"),
    ),
    ("much prey", ("percent", "limit_percent", "prey_g", "days")),
    ("a frame not ready", ()),
    ("heavier and no longer", ("percent", "limit_percent", "svl_cm", "since", "days")),
    ("body score is high", ("score", "limit_score", "scored_on")),
    ("less or smaller prey", ()),
)
"""Every reason of this module with the figures it carries."""

FAST_CENTILE = practice(95.0)
FAST_FROM_AGE_DAYS = practice(182.0)
MUCH_PREY_PERCENT = practice(15.0)  # of empty weight a week
PREY_OVER_DAYS = practice(42.0)
HEAVIER_PERCENT = practice(10.0)
HEAVIER_OVER_DAYS = practice(182.0)
SAME_LENGTH_PERCENT = practice(1.0)  # a tape tells no closer
FAT_SCORE = practice(4.0)
SCORE_DAYS = practice(90.0)
LENGTH_NEAR_DAYS = practice(30.0)
"""How near to a length a weight must lie to be held against it."""

Weighed = tuple[date, float]
"""A day and a fasted weight in grams."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Fattening:
    """What speaks for too much food; since is the day from which it does."""

    by: Literal["fast", "no longer", "score"]
    since: date
    because: tuple[Reason, ...]


def fast(
    weighed: Weighed, age_days: int | None, expected: Expectation | None, meals: Iterable[Meal]
) -> Fattening | None:
    """Heavy for its own sex and line, and fed much, after half a year.

    *expected*: for the day of the weighing, of its own sex; without it, or where a meal's
    grams are not known, nothing is said. Prey is counted over the six weeks before.
    """
    day, weight_g = weighed
    if expected is None or age_days is None or age_days < FAST_FROM_AGE_DAYS.value:
        return None
    centile = standing(expected, weight_g).centile
    prey_g = _eaten_g(meals, day)
    if centile <= FAST_CENTILE.value or prey_g is None:
        return None
    percent = 100 * prey_g / weight_g * 7 / PREY_OVER_DAYS.value
    if percent <= MUCH_PREY_PERCENT.value:
        return None
    heavy = because(
        "above her kind",
        weight_g=round(weight_g, 1),
        centile=round(centile, 1),
        limit_centile=FAST_CENTILE.value,
        median_g=round(expected.m_g, 1),
        **basis_figures(expected),
    )
    much = because(
        "much prey",
        percent=round(percent, 1),
        limit_percent=MUCH_PREY_PERCENT.value,
        prey_g=round(prey_g, 1),
        days=PREY_OVER_DAYS.value,
    )
    return Fattening(by="fast", since=day, because=(heavy, much, because("a frame not ready")))


def no_longer(
    weights: Sequence[Weighed], measures: Iterable[Measured], today: date
) -> Fattening | None:
    """A tenth heavier within half a year and not longer, by two lengths that were measured.

    *weights*: fasted, none from before the last laying. A length older than half a year says
    nothing of today.
    """
    lengths = [(m.happened.day, m.svl_cm) for m in measures if m.svl_cm is not None]
    if not lengths or not weights:
        return None
    last, last_cm = lengths[-1]
    now_g = _near(weights, last)
    if (today - last).days > HEAVIER_OVER_DAYS.value:
        return None
    earliest = last - timedelta(days=HEAVIER_OVER_DAYS.value)
    for day, svl_cm in lengths[:-1]:
        then_g = _near(weights, day)
        if day < earliest or then_g is None or now_g is None:
            continue
        gained = 100 * (now_g / then_g - 1)
        longer = 100 * (last_cm / svl_cm - 1)
        if gained >= HEAVIER_PERCENT.value and longer <= SAME_LENGTH_PERCENT.value:
            why = because(
                "heavier and no longer",
                percent=round(gained, 1),
                limit_percent=HEAVIER_PERCENT.value,
                svl_cm=last_cm,
                since=day,
                days=(last - day).days,
            )
            return _fat("no longer", last, why)
    return None


def high_score(measures: Iterable[Measured], today: date) -> Fattening | None:
    """The newest body score, where it is 4 or more of 5 and not too old to count."""
    scores = [(m.happened.day, m.body_score) for m in measures if m.body_score is not None]
    if not scores:
        return None
    day, score = scores[-1]
    if score < FAT_SCORE.value or (today - day).days > SCORE_DAYS.value:
        return None
    why = because("body score is high", score=score, limit_score=FAT_SCORE.value, scored_on=day)
    return _fat("score", day, why)


def _fat(by: Literal["no longer", "score"], since: date, why: Reason) -> Fattening:
    return Fattening(by=by, since=since, because=(why, because("less or smaller prey")))


def _eaten_g(meals: Iterable[Meal], until: date) -> float | None:
    """Grams eaten in the six weeks before a day; None where a meal's are not known."""
    first = until - timedelta(days=PREY_OVER_DAYS.value)
    grams = [mass_g for day, mass_g in meals if first <= day < until]
    return None if any(g is None for g in grams) else sum(g or 0.0 for g in grams)


def _near(weights: Sequence[Weighed], day: date) -> float | None:
    """The fasted weight nearest to a day, if any is near enough."""
    apart, grams = min((abs((on - day).days), grams) for on, grams in weights)
    return grams if apart <= LENGTH_NEAR_DAYS.value else None
