"""The population's median growth curve, read backwards: at what age is a weight usual?"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from keeper.rules.growth.weighings import Floats, History

MOST_KNOTS = 24
SHARES = (0.5, 0.25, 0.0)  # of the animals, who must speak at an age
LEAST_SLOPE = 0.05  # of the mean slope: a curve that stands still could not be read backwards
LEAST_END_SLOPE = 0.15  # the same where it is drawn on past its ends
END_SHARE = 0.3  # the part of the curve whose slope is drawn on


@dataclass(frozen=True, slots=True)
class MedianCurve:
    """Log median weight at knots of age, rising throughout, drawn on straight past its ends."""

    age_days: Floats
    log_g: Floats
    start_slope: float
    end_slope: float

    def age_at(self, log_g: float) -> float:
        """Age in days at which the median animal weighs this; may lie outside the knots."""
        if log_g <= self.log_g[0]:
            return float(self.age_days[0] + (log_g - self.log_g[0]) / self.start_slope)
        if log_g >= self.log_g[-1]:
            return float(self.age_days[-1] + (log_g - self.log_g[-1]) / self.end_slope)
        return float(np.interp(log_g, self.log_g, self.age_days))

    def days_between(self, from_log_g: float, to_log_g: float) -> float:
        """Days the median animal takes from one weight to another."""
        return self.age_at(to_log_g) - self.age_at(from_log_g)


def median_curve(animals: Sequence[History]) -> MedianCurve:
    """Median over animals of their weighings, joined straight, at up to 24 ages.

    An age counts where at least half of the animals were weighed before and after it; where
    their records hardly overlap, where a quarter or at least one of them was.
    """
    ages = np.unique(np.concatenate([one.age_days for one in animals]))
    if len(ages) > MOST_KNOTS:
        ages = np.quantile(ages, np.linspace(0, 1, MOST_KNOTS))
    for share in SHARES:
        values = np.array([_median_at(animals, age, share) for age in ages])
        known = ~np.isnan(values)
        if known.sum() >= 2:
            break
    return _rising(ages[known], values[known])


def _median_at(animals: Sequence[History], age: float, share: float) -> float:
    there = [
        np.interp(age, one.age_days, one.log_g)
        for one in animals
        if one.age_days[0] <= age <= one.age_days[-1]
    ]
    return float(np.median(there)) if len(there) >= max(1.0, share * len(animals)) else np.nan


def _rising(ages: Floats, values: Floats) -> MedianCurve:
    if len(ages) < 2:
        raise ValueError("the reference animals share no span of ages to draw a median through")
    steps = np.diff(ages)
    mean_slope = max(1e-9, float((values[-1] - values[0]) / (ages[-1] - ages[0])))
    rises = np.maximum(np.diff(values), LEAST_SLOPE * mean_slope * steps)
    rising = values[0] + np.concatenate(([0.0], np.cumsum(rises)))
    least = LEAST_END_SLOPE * mean_slope
    late = min(int(np.searchsorted(ages, ages[0] + (1 - END_SHARE) * np.ptp(ages))), len(ages) - 2)
    early = max(int(np.searchsorted(ages, ages[0] + END_SHARE * np.ptp(ages), side="right")) - 1, 1)
    return MedianCurve(
        age_days=ages,
        log_g=rising,
        start_slope=max(least, float((rising[early] - rising[0]) / (ages[early] - ages[0]))),
        end_slope=max(least, float((rising[-1] - rising[late]) / (ages[-1] - ages[late]))),
    )
