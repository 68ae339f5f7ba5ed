"""Imagined animals, and own ones carried on past their records, to forecast by."""

from collections.abc import Sequence

import numpy as np

from keeper.husbandry.profile import LmsCurve
from keeper.rules.growth.completion import Kind, kind_of
from keeper.rules.growth.population import ENOUGH, OWN, OWN_ANIMALS, Population, population
from keeper.rules.growth.weighings import Floats, History

LEAST_GROWTH = 0.3
"""In log weight: the record of an animal that hardly grew says nothing of how growth goes."""

MOST_WEIGHINGS = 18  # of one record: more changes little and takes long
MOST_AGE_DAYS = 1460.0
NOTHING = History(np.array([]), np.array([]))


def population_for(curve: LmsCurve, own: Sequence[History], *, seed: int = 0) -> Population:
    """The population to forecast by: own animals, filled up with imagined ones on the curve.

    Every own record is carried on to the age of four years, and back to hatching, as its animal
    may have grown: so an own animal takes an imagined one's place only where it speaks.
    *basis* of an answer is ``own`` where 24 own animals have weighed the target, ``mixed`` with
    fewer, else the curve's own basis. *animals* counts the own ones only.
    """
    usable = [
        one.thinned(MOST_WEIGHINGS)
        for one in own
        if len(one) > ENOUGH and np.ptp(one.log_g) > LEAST_GROWTH
    ]
    kind = kind_of(curve, own)
    missing = max(0, OWN_ANIMALS - len(usable))
    basis = OWN if not missing else "mixed" if usable else curve.basis
    whole = [
        completed(kind, one, np.random.default_rng([seed, at]))
        for at, one in enumerate([*usable, *[NOTHING] * missing])
    ]
    return population(whole, basis=basis, own=usable, kind=kind, seed=seed)


def completed(kind: Kind, record: History, random: np.random.Generator) -> History:
    """The record, and weighings at the usual ages before and after it as they may have been."""
    ages = _weighing_ages(min(kind.curve.age_days[-1], MOST_AGE_DAYS))
    if len(record):
        ages = ages[(ages < record.age_days[0]) | (ages > record.age_days[-1] + 7.0)]
    if not len(ages):
        return record
    logs = kind.drawn(record, ages, random)
    all_ages = np.concatenate([record.age_days, ages])
    order = np.argsort(all_ages)
    return History(all_ages[order], np.concatenate([record.log_g, logs])[order])


def _weighing_ages(end_days: float) -> Floats:
    """Every 3 weeks to 4 months, then every 6 weeks, then every 3 months from a year and a half."""
    ages = np.concatenate(
        [np.arange(0.0, 126.0, 21.0), np.arange(126.0, 540.0, 42.0), np.arange(546.0, 9999.0, 91.0)]
    )
    return np.asarray(ages[ages <= end_days])
