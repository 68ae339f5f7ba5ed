"""Body condition as the scaled mass index: the weight an animal would have at a common length.

Sources: J. Peig & A. J. Green, Oikos 118 (2009) 1883-1891; in snakes, B. G. Falk et al.,
Journal of Herpetology 51 (2017) 118-126 (pages from memory).
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from math import exp, log
from statistics import fmean, stdev

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.reasons import Reason, because

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    (
        "body condition",
        ("percent", "scaled_g", "length_cm", "weight_g", "svl_cm", "measured_on", "animals"),
    ),
)
"""Every reason of this module with the figures it carries."""

LEAST_ANIMALS = 8
"""Animals of a kind from which a line is drawn: a choice of the method."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LengthMassLine:
    """Standardised major axis of ln mass on ln length over the animals it was drawn from."""

    slope: float
    intercept: float  # natural log of grams at a length of 1 cm
    mean_length_cm: float
    animals: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Body:
    """One animal's newest length, and its empty weight near that day."""

    animal: AnimalId
    on: date
    svl_cm: float
    mass_g: float


def conditions(bodies: Sequence[Body]) -> dict[AnimalId, Reason]:
    """How each of a kind stands to the line through all of them, as a reason to be shown.

    Nothing while fewer than eight were measured, or while all are of one length.
    """
    lengths, masses = [body.svl_cm for body in bodies], [body.mass_g for body in bodies]
    if len(bodies) < LEAST_ANIMALS or not stdev(lengths) > 0:
        return {}
    line = length_mass_line(lengths, masses)
    return {body.animal: _condition(line, body) for body in bodies}


def _condition(line: LengthMassLine, body: Body) -> Reason:
    return because(
        "body condition",
        percent=round(100 * body.mass_g / usual_mass_g(line, body.svl_cm)),
        scaled_g=round(scaled_mass_g(line, body.svl_cm, body.mass_g), 1),
        length_cm=round(line.mean_length_cm, 1),
        weight_g=round(body.mass_g, 1),
        svl_cm=body.svl_cm,
        measured_on=body.on,
        animals=line.animals,
    )


def length_mass_line(lengths_cm: Sequence[float], masses_g: Sequence[float]) -> LengthMassLine:
    """Draw the line through paired lengths and masses.

    Raises:
        ValueError: fewer than three pairs, unequal numbers, a figure not above 0, or all
            lengths alike.
    """
    if len(lengths_cm) != len(masses_g) or len(lengths_cm) < 3:
        raise ValueError(f"need 3 or more pairs, got {len(lengths_cm)} and {len(masses_g)}")
    log_lengths, log_masses = [_log(x) for x in lengths_cm], [_log(x) for x in masses_g]
    spread = stdev(log_lengths)
    if not spread > 0:
        raise ValueError(f"all lengths are {lengths_cm[0]!r} cm: no line can be drawn")
    slope = stdev(log_masses) / spread
    return LengthMassLine(
        slope=slope,
        intercept=fmean(log_masses) - slope * fmean(log_lengths),
        mean_length_cm=fmean(lengths_cm),
        animals=len(lengths_cm),
    )


def scaled_mass_g(line: LengthMassLine, length_cm: float, mass_g: float) -> float:
    """The mass this animal would have at the mean length of the line's animals."""
    return mass_g * exp(line.slope * (log(line.mean_length_cm) - _log(length_cm)))


def usual_mass_g(line: LengthMassLine, length_cm: float) -> float:
    """The mass the line gives for a length."""
    return exp(line.intercept + line.slope * _log(length_cm))


def _log(value: float) -> float:
    if not value > 0:
        raise ValueError(f"lengths and masses must be above 0, got {value!r}")
    return log(value)
