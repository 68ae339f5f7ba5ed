"""Imagined animals drawn from a profile's curve, to forecast by until there are own animals."""

from collections.abc import Sequence

import numpy as np

from keeper.husbandry.profile import LmsCurve
from keeper.rules.growth.expectation import SOFT_AGE_DAYS, expectation
from keeper.rules.growth.lms import weight_at_z
from keeper.rules.growth.population import ENOUGH, Population, population
from keeper.rules.growth.weighings import Floats, History

ENOUGH_ANIMALS = 24
"""Own animals from which none is imagined any more; each own animal takes one's place."""

LEAST_GROWTH = 0.3
"""In log weight: the record of an animal that hardly grew says nothing of how growth goes."""

KEPT_SHARE = 0.7  # of the variance in z is the animal's for life, the rest drifts
DRIFT_LOG_AGE = 1.0  # drift is forgotten over a factor e in age
NOISE = 0.03  # of the scale, the gut and the day, in log weight
MOST_AGE_DAYS = 1460.0


def population_for(curve: LmsCurve, own: Sequence[History], *, seed: int = 0) -> Population:
    """The population to forecast by: own animals, filled up with imagined ones on the curve.

    *basis* of the answer is ``own`` from 24 own animals on, ``mixed`` with some, else the
    curve's own basis. *animals* counts the own ones only.
    """
    usable = [one for one in own if len(one) > ENOUGH and np.ptp(one.log_g) > LEAST_GROWTH]
    imagined = stand_ins(curve, max(0, ENOUGH_ANIMALS - len(usable)), seed=seed)
    basis = "own" if not imagined else "mixed" if usable else curve.basis
    return population([*usable, *imagined], basis=basis, own_animals=len(usable), seed=seed)


def stand_ins(curve: LmsCurve, count: int, *, seed: int = 0) -> list[History]:
    """Animals that grow along the curve at an own z, which drifts slowly, weighed as is usual."""
    random = np.random.default_rng(seed)
    ages = _weighing_ages(min(curve.age_days[-1], MOST_AGE_DAYS))
    return [_stand_in(curve, ages, random) for _ in range(count)]


def _weighing_ages(end_days: float) -> Floats:
    """Every 3 weeks to 4 months, then every 6 weeks, then every 3 months from a year and a half."""
    ages = np.concatenate(
        [np.arange(0.0, 126.0, 21.0), np.arange(126.0, 540.0, 42.0), np.arange(546.0, 9999.0, 91.0)]
    )
    return np.asarray(ages[ages <= end_days])


def _stand_in(curve: LmsCurve, ages: Floats, random: np.random.Generator) -> History:
    z = np.sqrt(KEPT_SHARE) * random.standard_normal() + _drift(ages, random)
    logs = [_log_weight(curve, float(age), float(at)) for age, at in zip(ages, z, strict=True)]
    return History(ages, np.array(logs) + NOISE * random.standard_normal(len(ages)))


def _drift(ages: Floats, random: np.random.Generator) -> Floats:
    log_age = np.log(ages + SOFT_AGE_DAYS)
    covariance = np.exp(-np.abs(log_age[:, None] - log_age) / DRIFT_LOG_AGE)
    lower = np.linalg.cholesky(covariance)
    return np.asarray(np.sqrt(1.0 - KEPT_SHARE) * (lower @ random.standard_normal(len(ages))))


def _log_weight(curve: LmsCurve, age: float, z: float) -> float:
    expected = expectation(curve, age)
    return float(np.log(weight_at_z(z, expected.l, expected.m_g, expected.s)))
