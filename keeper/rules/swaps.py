"""Two animals that may lie in each other's tubs: their weights go on along the other's curve.

Each pair of tubs that could have been mixed up, and each pair of weighings between which that
could have happened, is one test: how much likelier are the two next weights if the animals
had changed places than if they had not. If they had not, a ratio of k or more comes up at
most once in k tests, whatever the weights (Markov's inequality), so with n tests a line is
shown from n / ``FALSE_ALARM`` on: the chance that any line of a day is a false one is then
no larger than that, as long as weights scatter about their curves as is assumed here.

Assumed: log weight goes on along the curve of the kind; the rest follows Student's t with 5
degrees of freedom, so that an ill or a badly weighed animal is not beyond belief; and its
scale is widened to that of the room's own weights where those scatter more.

Sources: A. Wald, Sequential Analysis (1947), for the bound on a likelihood ratio; K. Lange,
R. Little & J. Taylor, J. Am. Stat. Assoc. 84 (1989) 881-896, for the t.
"""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import combinations, pairwise, product
from math import exp, log, log1p, sqrt
from statistics import median

from keeper.husbandry.animal import AnimalId, Sex
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import Place, place_of
from keeper.husbandry.profile import LmsCurve, SpeciesProfile, practice
from keeper.husbandry.reasons import Reason, because
from keeper.rules.growth.expectation import SOFT_AGE_DAYS, middle

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    (
        "may have been swapped",
        ("other", "place", "after", "on", "weight_g", "own_g", "other_g", "chance"),
    ),
    ("look at both animals", ()),
)
"""Every reason of this module with the figures it carries."""

FALSE_ALARM = 0.05
"""Chance that any line of a day is a false one: one day with new weights in twenty at most."""

TUBS_AT_ONCE = practice(6)
"""So many tubs of a row stand on the floor at once when a row is cleaned."""

LOOK_BACK_DAYS = practice(92)
"""How long weights since a swap keep it on the watch."""

KEPT_SHARE = 0.7
DRIFT_LOG_AGE = 1.0
"""Of the variance about a curve seven tenths are an animal's for life, the rest is forgotten
over a factor e in age: choices of the method, as for the forecast's stand-ins."""

NOISE = 0.03  # of the scale, the gut and the day, in log weight
ROUNDING_G = 0.3  # of a scale that reads in whole grams
T_FREEDOM = 5.0
T_MEDIAN = 0.7267  # median of |t| at that freedom
PRIOR_READINGS = 10  # as many ordinary weights the room's own scatter starts from
MISFIT_Z = 1.0  # who fits its own curve better than this was not swapped


@dataclass(frozen=True, slots=True, kw_only=True)
class Trail:
    """One animal's fasted weights, oldest first, one a day; *profile* with curves as here.

    cleaned: days on which its tub was cleaned whole.
    """

    now: AnimalNow
    profile: SpeciesProfile
    weights: Sequence[tuple[date, float]]
    cleaned: frozenset[date] = frozenset()


@dataclass(frozen=True, slots=True, kw_only=True)
class Swap:
    """One of two animals that may lie in each other's tubs."""

    animal: AnimalId
    other: AnimalId
    log_odds: float  # natural log of how much likelier the swap makes both weights
    after: date  # weighed as itself
    on: date  # first weighed as the other
    because: tuple[Reason, ...]


@dataclass(frozen=True, slots=True)
class _Step:
    """Two weighings of an animal in a row, and how far the second is from where it should be."""

    trail: Trail
    before: tuple[date, float]
    after: tuple[date, float]
    z: float


@dataclass(frozen=True, slots=True)
class _Found:
    one: _Step
    two: _Step
    log_odds: float


def swaps(trails: Sequence[Trail], today: date) -> dict[AnimalId, Swap]:
    """Animals of which the latest weights say that they may have changed places.

    Only animals of known age, of one species, that lie in tubs a hand can mix up or came into
    them on one day, and have a fasted weight before and after. Each animal is told of with
    the likeliest other.
    """
    steps = [_steps(trail, today) for trail in trails]
    room = _scatter(step.z for each in steps for step in each)
    first = {each[0].trail.now.animal: each[0] for each in steps if each}
    tests, found = 0, []
    for one, two in _met(trails, steps):
        tests += 1
        odds = _log_odds(one, two, room)
        begun = (first[one.trail.now.animal], first[two.trail.now.animal])
        if odds > 0 and _still(one, two, room) and _still(*begun, room):  # not put right since
            found.append(_Found(one, two, odds))
    sure = [each for each in found if each.log_odds >= log(tests / FALSE_ALARM)]
    told: dict[AnimalId, Swap] = {}
    for each in sorted(sure, key=lambda found: -found.log_odds):
        for step, other in ((each.one, each.two), (each.two, each.one)):
            told.setdefault(step.trail.now.animal, _told(step, other, each.log_odds, tests))
    return told


def _steps(trail: Trail, today: date) -> list[_Step]:
    """Her weighings two by two, of the time that is looked back on; none across a laying."""
    first = today - timedelta(days=LOOK_BACK_DAYS.value)
    laid = trail.now.clutch_on or date.min
    return [
        _Step(trail, before, after, _z(trail, before, after))
        for before, after in pairwise(trail.weights)
        if after[0] >= first and not before[0] < laid <= after[0] and _ages(trail, before[0])
    ]


def _scatter(z: Iterable[float]) -> float:
    """How much wider than assumed the room's weights scatter; never narrower."""
    usual = [T_MEDIAN] * PRIOR_READINGS
    return max(1.0, median([abs(each) for each in z] + usual) / T_MEDIAN)


def _met(
    trails: Sequence[Trail], steps: Sequence[Sequence[_Step]]
) -> Iterator[tuple[_Step, _Step]]:
    """Steps of two animals between whose weighings a hand could have mixed them up.

    Where cleanings of both are written, that was on a day on which both were cleaned.
    """
    places = [place_of(trail.now.place or "") for trail in trails]
    for a, b in _in_reach(trails, steps, places):
        if trails[a].profile.slug != trails[b].profile.slug:
            continue
        days = _mixed_on(trails[a], trails[b], places[a], places[b])
        told = bool(trails[a].cleaned and trails[b].cleaned)
        beside = not told and _beside(places[a], places[b])
        if not beside and not days:
            continue
        for one, two in product(steps[a], steps[b]):
            after = max(one.before[0], two.before[0])
            until = min(one.after[0], two.after[0])
            if after < until and (beside or any(after < day <= until for day in days)):
                yield one, two


def _in_reach(
    trails: Sequence[Trail], steps: Sequence[Sequence[_Step]], places: Sequence[Place | None]
) -> list[tuple[int, int]]:
    """Pairs of one rack, and of those that moved on one day between two of their weighings."""
    groups: dict[str | date, list[int]] = defaultdict(list)
    for at, (trail, own, place) in enumerate(zip(trails, steps, places, strict=True)):
        moved = trail.now.place_since
        if own and place is not None:
            groups[place.rack].append(at)
        if moved and any(step.before[0] < moved <= step.after[0] for step in own):
            groups[moved].append(at)
    return sorted({pair for group in groups.values() for pair in combinations(group, 2)})


def _mixed_on(one: Trail, two: Trail, a: Place | None, b: Place | None) -> frozenset[date]:
    """Days on which both were out of their tubs: cleaned in one rack, or moved together."""
    moved = _moved_together(one.now, two.now)
    in_one_rack = a is not None and b is not None and a.rack == b.rack
    cleaned = one.cleaned & two.cleaned if in_one_rack else frozenset()
    return cleaned if moved is None else cleaned | {moved}


def _beside(a: Place | None, b: Place | None) -> bool:
    """Whether two tubs may stand on the floor together."""
    if a is None or b is None or a.rack != b.rack:
        return False
    if a.row == b.row:
        return abs(a.tub - b.tub) < TUBS_AT_ONCE.value
    return abs(a.row - b.row) == 1 and a.tub == b.tub


def _moved_together(one: AnimalNow, two: AnimalNow) -> date | None:
    return one.place_since if one.place_since == two.place_since else None


def _log_odds(one: _Step, two: _Step, room: float) -> float:
    """How much likelier both next weights are if the animals changed places, as a log."""
    if min(abs(one.z), abs(two.z)) < MISFIT_Z * room:
        return 0.0
    own = _fit(one.trail, one.before, one.after, room) + _fit(
        two.trail, two.before, two.after, room
    )
    other = _fit(two.trail, two.before, one.after, room) + _fit(
        one.trail, one.before, two.after, room
    )
    return other - own


def _still(one: _Step, two: _Step, room: float) -> bool:
    """Whether the newest weights fit the other's earlier ones better than their own."""
    own = [(step.trail, step.before, step.trail.weights[-1]) for step in (one, two)]
    other = [(a[0], a[1], b[2]) for a, b in zip(own, reversed(own), strict=True)]
    return sum(_fit(*each, room) for each in other) > sum(_fit(*each, room) for each in own)


def _fit(trail: Trail, before: tuple[date, float], after: tuple[date, float], room: float) -> float:
    """Log likelihood of a weight as what follows on an animal's earlier one, less a constant."""
    mean, spread = _onward(trail, before, after)
    z = (log(after[1]) - mean) / (spread * room)
    return -log(spread * room) - (T_FREEDOM + 1) / 2 * log1p(z * z / T_FREEDOM)


def _z(trail: Trail, before: tuple[date, float], after: tuple[date, float]) -> float:
    mean, spread = _onward(trail, before, after)
    return (log(after[1]) - mean) / spread


def _onward(
    trail: Trail, before: tuple[date, float], after: tuple[date, float]
) -> tuple[float, float]:
    """Mean and scale of log weight on a later day, given an earlier weight.

    Where sex or day of hatching are not known every likelihood counts alike, and how they
    differ is added to the scale.
    """
    day, grams = before
    grown, drift = [], []
    for curve in _curves(trail):
        for first, last in _aged(trail, day, after[0]):
            (start_g, _), (end_g, s) = middle(curve, first), middle(curve, last)
            grown.append(log(end_g / start_g))
            apart = abs(log((last + SOFT_AGE_DAYS) / (first + SOFT_AGE_DAYS))) / DRIFT_LOG_AGE
            drift.append(2 * (1 - KEPT_SHARE) * (1 - exp(-apart)) * s**2)
    rounding = (ROUNDING_G / grams) ** 2 + (ROUNDING_G / after[1]) ** 2
    mean = sum(grown) / len(grown)
    between = sum((each - mean) ** 2 for each in grown) / len(grown)
    variance = sum(drift) / len(drift) + between + 2 * NOISE**2 + rounding
    return log(grams) + mean, sqrt(variance)


def _curves(trail: Trail) -> list[LmsCurve]:
    growth = trail.profile.growth
    if trail.now.sex is Sex.UNKNOWN or trail.now.sex not in growth:
        return list(growth.values())
    return [growth[trail.now.sex]]


def _ages(trail: Trail, day: date) -> tuple[int, ...]:
    """Youngest and oldest age on a day; none where hatching is not known or not yet."""
    now = trail.now
    if now.hatched_first is None or not trail.profile.growth:
        return ()
    oldest = (day - now.hatched_first).days
    if oldest < 0:
        return ()
    youngest = max(0, (day - (now.hatched_last or now.hatched_first)).days)
    return (oldest,) if youngest == oldest else (youngest, oldest)


def _aged(trail: Trail, first: date, last: date) -> Iterator[tuple[int, int]]:
    """Youngest and oldest age on two days, the span of hatching days taken at its ends."""
    days = (last - first).days
    for age in _ages(trail, first):
        yield age, max(0, age + days)


def _told(step: _Step, other: _Step, log_odds: float, tests: int) -> Swap:
    """What is said of the animal of *step*: its tub's weight, her own and the other's way on."""
    now, theirs = step.trail.now, other.trail.now
    own, _ = _onward(step.trail, step.before, step.after)
    swapped, _ = _onward(other.trail, other.before, step.after)
    why = because(
        "may have been swapped",
        other=theirs.called,
        place=theirs.place,
        after=max(step.before[0], other.before[0]),
        on=step.after[0],
        weight_g=round(step.after[1], 1),
        own_g=round(exp(own), 1),
        other_g=round(exp(swapped), 1),
        chance=min(1.0, tests * exp(-log_odds)),
    )
    return Swap(
        animal=now.animal,
        other=theirs.animal,
        log_odds=log_odds,
        after=max(step.before[0], other.before[0]),
        on=step.after[0],
        because=(why, because("look at both animals")),
    )
