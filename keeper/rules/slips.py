"""Whether a typed weight can be right, and which slip it may be; nothing is ever changed.

A weight is judged by what this animal is expected to weigh, never by a fixed range.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from math import log
from typing import Literal

from keeper.husbandry.animal import Sex
from keeper.husbandry.events import Weighing
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import LmsCurve, SpeciesProfile, practice
from keeper.husbandry.reasons import Reason, because
from keeper.rules.growth.expectation import Expectation, basis_figures, expectation
from keeper.rules.growth.lms import weight_at_z
from keeper.rules.weights import CannotTell, Meal, empty_weight, left_in_gut

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("weighed before", ("weight_g", "weighed_on", "percent")),
    ("growth since", ("days", "factor")),
    ("meals inside", ("gut_g",)),
    ("laid since", ("clutch_on", "percent")),
    ("expected for age", ("median_g", "age_days", "basis", "own_percent", "own_animals")),
    ("age not known, any age of the species", ()),
    ("nothing to compare with", ()),
    ("within expected", ("weight_g", "low_g", "high_g")),
    ("outside expected", ("weight_g", "low_g", "high_g")),
    ("typed twice", ("weight_g",)),
    ("scale too coarse", ("resolution_g", "percent")),
)
"""Every reason of this module with the figures it carries."""

LAYING_LOSS_PERCENT = practice(35.0)
COARSE_PERCENT = practice(5.0)

UNKNOWN_Z = 4.0
"""Without an own weight everything within four standard deviations of the species passes: a
slipped point moves a weight much further, an odd animal does not."""

SlipName = Literal[
    "kilograms for grams",
    "point slipped",
    "tare forgotten",
    "digits swapped",
    "row shifted by one",
    "neighbour's weight",
]


@dataclass(frozen=True, slots=True, kw_only=True)
class Range:
    """Scale weights taken in silence."""

    low_g: float
    high_g: float
    because: tuple[Reason, ...] = ()

    def holds(self, weight_g: float, slack_g: float = 0.0) -> bool:
        return self.low_g - slack_g <= weight_g <= self.high_g + slack_g


@dataclass(frozen=True, slots=True, kw_only=True)
class Slip:
    """A slip tried: the weight it would stand for, and whether that is inside the range."""

    name: SlipName
    grams: float
    inside: bool
    whose: str | None = None  # the neighbour


@dataclass(frozen=True, slots=True, kw_only=True)
class Verdict:
    accepted: bool
    typed_twice: bool
    guess_g: float | None  # to ask with, never to write
    slips: tuple[Slip, ...]
    because: tuple[Reason, ...]


def expected_range(
    now: AnimalNow,
    weighings: Sequence[Weighing],
    meals: Iterable[Meal],
    profile: SpeciesProfile,
    expected: Expectation | None,
    today: date,
) -> Range | None:
    """Scale weights that would surprise nobody today, meals and laying reckoned in.

    From the last weighing where there is one, else from what is expected at its age, else
    from the whole span of the species. None: the species has no growth curve.
    """
    before = [w for w in weighings if w.happened.day <= today]
    fed = list(meals)
    if before:
        last = max(before, key=lambda w: w.happened)
        return _from_last(now, last.weight_g, last.happened.day, fed, profile, today)
    if now.weight_g is not None and now.weighed_on is not None:
        return _from_last(now, now.weight_g, now.weighed_on, fed, profile, today)
    if expected is not None:
        return _from_expectation(expected, _gut_g(fed, profile, today))
    return _from_species(profile, _gut_g(fed, profile, today))


def judge(
    typed_g: float,
    range_: Range | None,
    resolution_g: float | None = None,
    neighbours: Sequence[tuple[str, Range]] = (),
    *,
    tare_g: float | None = None,
    shift: int = 0,
    typed_before_g: float | None = None,
) -> Verdict:
    """Take a weight in silence, or name what it may have been meant to be.

    neighbours: code and range of the tubs beside. tare_g: the empty bag or tub. shift: what
    ``row_shift`` found. typed_before_g: what was typed for this animal just before; the same
    again is taken, marked typed twice.

    Raises:
        ValueError: a weight not above 0 g.
    """
    if not 0 < typed_g < float("inf"):
        raise ValueError(f"a weight must be more than 0 g, got {typed_g!r}")
    coarse = _coarse(typed_g, resolution_g)
    if range_ is None:
        return _verdict(True, False, None, (), (because("nothing to compare with"), *coarse))
    inside = range_.holds(typed_g, (resolution_g or 0.0) / 2)
    why = because(
        "within expected" if inside else "outside expected",
        weight_g=typed_g,
        low_g=_tidy(range_.low_g),
        high_g=_tidy(range_.high_g),
    )
    if inside:
        return _verdict(True, False, None, (), (why, *coarse))
    slips = tuple(_slips(typed_g, range_, neighbours, tare_g, shift))
    if typed_before_g is not None and abs(typed_before_g - typed_g) < 1e-9:
        twice = because("typed twice", weight_g=typed_g)
        return _verdict(True, True, None, slips, (twice, why, *coarse))
    return _verdict(False, False, _guess(slips, range_), slips, (why, *coarse))


def row_shift(typed_g: Sequence[float], ranges: Sequence[Range | None], least: int = 3) -> int:
    """By how many tubs a run of weights seems to have slipped: 1, -1 or 0.

    The last *least* weights must each miss their own range and fit that of the tub that far
    further on (1: a tub was passed over).

    >>> row = [Range(low_g=g * 0.85, high_g=g * 1.15) for g in (40, 90, 55, 120)]
    >>> row_shift([90, 55, 120], row), row_shift([40, 90, 55], row)
    (1, 0)
    """
    last = range(max(0, len(typed_g) - least), len(typed_g))
    if len(last) < least:
        return 0
    own = [ranges[n] if n < len(ranges) else None for n in last]
    if any(
        own_range is None or own_range.holds(typed_g[n])
        for n, own_range in zip(last, own, strict=True)
    ):
        return 0
    return next((by for by in (1, -1) if _all_fit(typed_g, ranges, last, by)), 0)


def _all_fit(
    typed_g: Sequence[float], ranges: Sequence[Range | None], last: Iterable[int], by: int
) -> bool:
    places = [n + by for n in last]
    beside = [ranges[at] if 0 <= at < len(ranges) else None for at in places]
    return all(
        found is not None and found.holds(typed_g[at - by])
        for at, found in zip(places, beside, strict=True)
    )


def _from_last(
    now: AnimalNow,
    weight_g: float,
    weighed_on: date,
    meals: list[Meal],
    profile: SpeciesProfile,
    today: date,
) -> Range:
    earlier = [(day, grams) for day, grams in meals if day <= weighed_on]
    was = empty_weight(weight_g, weighed_on, earlier, profile)
    empty_g = weight_g if isinstance(was, CannotTell) else was.grams
    percent = profile.weights.silent_percent.value
    grown = _growth(now, profile, weighed_on, today)
    laid_share, laid = _laid(now, weighed_on, today)
    gut_g = _gut_g(meals, profile, today)
    days = (today - weighed_on).days
    reasons = [
        because("weighed before", weight_g=weight_g, weighed_on=weighed_on, percent=percent),
        because("growth since", days=days, factor=round(grown, 2)),
        because("meals inside", gut_g=_tidy(gut_g)),
        *laid,
    ]
    return Range(
        low_g=empty_g * (1 - percent / 100) * laid_share,
        high_g=empty_g * max(1.0, grown) * (1 + percent / 100) + gut_g,
        because=tuple(reasons),
    )


def _growth(now: AnimalNow, profile: SpeciesProfile, then: date, today: date) -> float:
    """How much heavier the expected animal is today than it was then."""
    first, last = now.age_days(then), now.age_days(today)
    if first is None or last is None:
        return 1.0
    curve = _curve(profile, now.sex)
    if curve is None:
        return 1.0
    grown = expectation(curve, max(0, last)).m_g / expectation(curve, max(0, first)).m_g
    return float(grown)


def _curve(profile: SpeciesProfile, sex: Sex) -> LmsCurve | None:
    return profile.growth.get(sex) or profile.growth.get(Sex.FEMALE)


def _laid(now: AnimalNow, weighed_on: date, today: date) -> tuple[float, list[Reason]]:
    """The share of her weight that may be left when she laid since."""
    if now.clutch_on is None or not weighed_on <= now.clutch_on <= today:
        return 1.0, []
    percent = LAYING_LOSS_PERCENT.value
    return 1 - percent / 100, [because("laid since", clutch_on=now.clutch_on, percent=percent)]


def _gut_g(meals: Iterable[Meal], profile: SpeciesProfile, today: date) -> float:
    """Grams of meals that may be inside today; those of today may have come before the scale."""
    return sum(left_in_gut(grams or 0.0, (today - day).days, profile) for day, grams in meals)


def _from_expectation(expected: Expectation, gut_g: float) -> Range:
    why = because(
        "expected for age",
        median_g=_tidy(expected.m_g),
        age_days=round(expected.age_days),
        **basis_figures(expected),
    )
    return Range(
        low_g=weight_at_z(-UNKNOWN_Z, expected.l, expected.m_g, expected.s),
        high_g=weight_at_z(UNKNOWN_Z, expected.l, expected.m_g, expected.s) + gut_g,
        because=(why,),
    )


def _from_species(profile: SpeciesProfile, gut_g: float) -> Range | None:
    """From the lightest hatchling to the heaviest adult that the curves know."""
    if not profile.growth:
        return None
    curves = profile.growth.values()
    lows = [_edge(curve, 0.0, -UNKNOWN_Z) for curve in curves]
    highs = [_edge(curve, curve.age_days[-1], UNKNOWN_Z) for curve in curves]
    why = because("age not known, any age of the species")
    return Range(low_g=min(lows), high_g=max(highs) + gut_g, because=(why,))


def _edge(curve: LmsCurve, age_days: float, z: float) -> float:
    expected = expectation(curve, age_days)
    return weight_at_z(z, expected.l, expected.m_g, expected.s)


def _slips(
    typed_g: float,
    range_: Range,
    neighbours: Sequence[tuple[str, Range]],
    tare_g: float | None,
    shift: int,
) -> Iterator[Slip]:
    """Every slip tried, likeliest first."""
    yield _slip("kilograms for grams", typed_g * 1000, range_)
    for factor in (10.0, 0.1, 100.0, 0.01):
        yield _slip("point slipped", typed_g * factor, range_)
    if tare_g is not None and typed_g > tare_g:
        yield _slip("tare forgotten", typed_g - tare_g, range_)
    for swapped_g in _swapped(typed_g):
        yield _slip("digits swapped", swapped_g, range_)
    if shift:
        yield Slip(name="row shifted by one", grams=typed_g, inside=True)
    for code, theirs in neighbours:
        fits = theirs.holds(typed_g)
        yield Slip(name="neighbour's weight", grams=typed_g, inside=fits, whose=code)


def _slip(name: SlipName, grams: float, range_: Range) -> Slip:
    return Slip(name=name, grams=_tidy(grams), inside=range_.holds(grams))


def _swapped(typed_g: float) -> list[float]:
    """The weight with each two digits beside each other changed about."""
    text = f"{typed_g:.10g}"
    swaps = [n for n in range(len(text) - 1) if (text[n] + text[n + 1]).isdigit()]
    made = [float(text[:n] + text[n + 1] + text[n] + text[n + 2 :]) for n in swaps]
    return [grams for grams in made if 0 < grams != typed_g]


def _guess(slips: Sequence[Slip], range_: Range) -> float | None:
    """The weight to ask for: of the slips that give this animal a fitting one the nearest."""
    own = [slip for slip in slips if slip.inside and slip.name not in _ANOTHERS]
    middle = (range_.low_g * range_.high_g) ** 0.5
    best = min(own, key=lambda slip: abs(log(slip.grams / middle)), default=None)
    return best.grams if best else None


_ANOTHERS = frozenset({"row shifted by one", "neighbour's weight"})


def _coarse(typed_g: float, resolution_g: float | None) -> tuple[Reason, ...]:
    """A scale whose steps are too wide for so light an animal."""
    if resolution_g is None or resolution_g / 2 <= typed_g * COARSE_PERCENT.value / 100:
        return ()
    percent = round(50 * resolution_g / typed_g)
    return (because("scale too coarse", resolution_g=resolution_g, percent=percent),)


def _verdict(
    accepted: bool,
    typed_twice: bool,
    guess_g: float | None,
    slips: tuple[Slip, ...],
    reasons: tuple[Reason, ...],
) -> Verdict:
    return Verdict(
        accepted=accepted, typed_twice=typed_twice, guess_g=guess_g, slips=slips, because=reasons
    )


def _tidy(grams: float) -> float:
    """Four significant digits or one decimal, whichever is finer."""
    return float(f"{grams:.4g}") if grams < 1000 else round(grams, 1)
