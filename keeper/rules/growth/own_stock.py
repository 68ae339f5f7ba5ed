"""The profile's curve drawn over towards the keeper's own stock, by weight of evidence.

At each knot every animal counts once at most, however often it was weighed. The own
stock's mean departure from the profile (in log weight) is taken with the share
n / (n + worth), where n is the number of animals that speak for that age and *worth* is
how many animals the profile's curve is taken to be worth; a line departs from its species
by the same rule. There is no threshold: with no animal the answer is the profile, and each
one moves it a little less than the one before.

Source: partial pooling by a conjugate normal prior, A. Gelman & J. Hill, Data Analysis
Using Regression and Multilevel/Hierarchical Models (2007), chapter 12.
"""

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import accumulate
from math import exp, log, sqrt

from keeper.husbandry.profile import LmsCurve, OwnCurve
from keeper.rules.growth.expectation import SOFT_AGE_DAYS, middle

PROFILE_WORTH_ANIMALS = {"published": 10.0, "provisional": 5.0}
SPECIES_WORTH_ANIMALS = 10.0
"""How many animals of a line its species is worth. With the figures above they are choices
of the method: twenty own animals then hold two thirds to four fifths of the curve."""

NEAR_IN_LOG_AGE = 0.35
MOST_SPREADS = 3.0  # a weighing further out counts as this far: one slip must not move a curve


@dataclass(frozen=True, slots=True, kw_only=True)
class OwnWeighing:
    """An empty weight of an animal of the curve's species and sex."""

    animal_id: int
    line: str | None
    age_days: float
    weight_g: float


@dataclass(frozen=True, slots=True, kw_only=True)
class OwnStockCurve:
    """A blended curve, and how much of it is the keeper's own stock.

    curve: an ``OwnCurve`` as soon as one animal speaks, else the profile's own.
    """

    curve: LmsCurve
    own_share: float  # 0 to 1 where the own animals are; 0 is all profile
    own_share_at_knots: tuple[float, ...]
    animals: int


@dataclass(frozen=True, slots=True)
class _Voice:
    """What one animal says at one knot: its departure, and how near to the knot it speaks."""

    departure: float
    weight: float


def blended(
    curve: LmsCurve, own: Sequence[OwnWeighing], *, line: str | None = None
) -> OwnStockCurve:
    """The curve for a species and sex, or for one *line* of it, given own weighings.

    *own* holds weighings of every line; those of *line* pull twice, as members of the
    species and as the line. Ages past the curve are read at its last knot.

    Raises:
        ValueError: a weight not above 0 g, or an age below 0 or not finite.
    """
    departures = _departures_by_animal(curve, own)
    line_animals = {row.animal_id for row in own if line is not None and row.line == line}
    knots = [_knot(curve, at, departures, line_animals) for at in range(len(curve.age_days))]
    shares = tuple(share for _, _, share, _ in knots)
    evidence = sum(weight for *_, weight in knots)
    share = sum(share * weight for _, _, share, weight in knots) / evidence if evidence else 0.0
    return OwnStockCurve(
        curve=_drawn_over(curve, knots, len(departures)) if departures else curve,
        own_share=share,
        own_share_at_knots=shares,
        animals=len(departures),
    )


def _drawn_over(
    curve: LmsCurve, knots: Sequence[tuple[float, float, float, float]], animals: int
) -> OwnCurve:
    return OwnCurve(
        age_days=curve.age_days,
        l=curve.l,
        m_g=tuple(accumulate((m_g for m_g, *_ in knots), max)),
        s=tuple(s for _, s, *_ in knots),
        basis=curve.basis,
        source=curve.source,
        own_share=tuple(share for _, _, share, _ in knots),
        own_animals=animals,
    )


def _departures_by_animal(
    curve: LmsCurve, own: Iterable[OwnWeighing]
) -> dict[int, list[tuple[float, float]]]:
    """For each animal, (log age, log weight over median) of its weighings."""
    end_days = curve.age_days[-1]
    found: dict[int, list[tuple[float, float]]] = defaultdict(list)
    for row in own:
        if not row.weight_g > 0:
            raise ValueError(f"a weight must be above 0 g, got {row.weight_g!r}")
        m_g, s = middle(curve, row.age_days)
        most = MOST_SPREADS * s
        departure = max(-most, min(most, log(row.weight_g / m_g)))
        log_age = log(min(row.age_days, end_days) + SOFT_AGE_DAYS)
        found[row.animal_id].append((log_age, departure))
    return found


def _knot(
    curve: LmsCurve,
    at: int,
    departures: dict[int, list[tuple[float, float]]],
    line_animals: set[int],
) -> tuple[float, float, float, float]:
    """Median, spread, own share and number of animals that speak at one knot."""
    log_age = log(curve.age_days[at] + SOFT_AGE_DAYS)
    voices = {animal: _voice(points, log_age) for animal, points in departures.items()}
    of_line = [voice for animal, voice in voices.items() if animal in line_animals]
    worth = PROFILE_WORTH_ANIMALS[curve.basis]
    shift, share = _pulled(0.0, voices.values(), worth)
    shift, line_share = _pulled(shift, of_line, SPECIES_WORTH_ANIMALS)
    s = _spread(curve.s[at], shift, voices.values(), worth)
    own_share = 1.0 - (1.0 - share) * (1.0 - line_share)
    return curve.m_g[at] * exp(shift), s, own_share, sum(v.weight for v in voices.values())


def _voice(points: Sequence[tuple[float, float]], log_age: float) -> _Voice:
    """One loop, written out because hundreds of animals speak at every knot."""
    total = spoken = nearest = 0.0
    for age, departure in points:
        away = (age - log_age) / NEAR_IN_LOG_AGE
        near = exp(-0.5 * (away * away))
        total += near
        spoken += near * departure
        if near > nearest:
            nearest = near
    return _Voice(spoken / total, nearest) if total else _Voice(0.0, 0.0)


def _pulled(prior: float, voices: Iterable[_Voice], worth: float) -> tuple[float, float]:
    """Departure after hearing *voices*, starting from *prior*, and the share they took."""
    count = spoken = 0.0
    for voice in voices:
        count += voice.weight
        spoken += voice.weight * voice.departure
    return (worth * prior + spoken) / (worth + count), count / (worth + count)


def _spread(s: float, shift: float, voices: Iterable[_Voice], worth: float) -> float:
    """S pooled with the own animals' spread about the blended median."""
    count, squares = worth, worth * s * s
    for voice in voices:
        count += voice.weight
        squares += voice.weight * (voice.departure - shift) ** 2
    return sqrt(squares / count)
