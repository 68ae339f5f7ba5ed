"""How wrong forecasts of this kind have been, so that an interval is right as often as it says.

Errors are logs of true days over forecast days, in units of the spread that the model itself
expects where it does (see ``Answers.scale``), made on reference animals by models that had
not seen them. An animal whose record ended before the target is late as far as the low limit
goes, and counts at the day its record ended as far as the high limit goes: that is all that
can be checked of it, and it counts half. Forecasts over a like number of days, made at a like
age, count most, and each animal counts alike.

Sources: split-conformal prediction, V. Vovk, A. Gammerman & G. Shafer, Algorithmic Learning
in a Random World (2005), section 4.1; in units of an expected spread, H. Papadopoulos, A.
Gammerman & V. Vovk, AIA 2008, 64-69; weighed by likeness, L. Guan, Biometrika 110 (2023)
33-50.
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from keeper.rules.growth.weighings import Floats

NEAR_LOG_DAYS = 0.35
NEAR_AGE = 0.1  # of a usual record
MIDDLE_WORTH = 30.0  # forecasts that the model's own middle is taken to be worth
UNFINISHED_WORTH = 0.5  # of a forecast whose animal's record ended before the target
FAR_WORTH = 1e-3  # of a forecast unlike this one, so that there is always something to go by


@dataclass(frozen=True, slots=True, kw_only=True)
class Errors:
    """Log errors of reference forecasts, one entry a forecast."""

    log_error: Floats
    reached: NDArray[np.bool_]  # False: the error is at least this
    log_days: Floats  # of the forecast
    age: Floats  # when it was made, in usual record lengths
    worth: Floats


@dataclass(frozen=True, slots=True)
class Spread:
    """Errors to expect of one forecast."""

    log_error: Floats
    reached: NDArray[np.bool_]
    worth: Floats  # sums to 1

    def low(self, level: float) -> float:
        """Log error not fallen short of with probability 1 - *level*; infinite if records end."""
        return _quantile(np.where(self.reached, self.log_error, np.inf), self.worth, level)

    def high(self, level: float) -> float:
        """Log error not exceeded with probability *level*."""
        return _quantile(self.log_error, self.worth, level)

    def middle(self) -> float:
        """Median log error of those that reached their target, drawn to 0 where they are few."""
        worth = self.worth * self.reached
        if not worth.sum() > 0:
            return 0.0
        worth = worth / worth.sum()
        count = 1.0 / float(worth @ worth)
        return _quantile(self.log_error, worth, 0.5) * count / (count + MIDDLE_WORTH)


def spread(errors: Errors, days: float, age: float) -> Spread:
    """Errors to expect of a forecast over so many days, made at an age in record lengths."""
    far_days = (errors.log_days - np.log(days)) / NEAR_LOG_DAYS
    far_age = (errors.age - age) / NEAR_AGE
    worth = errors.worth * (np.exp(-0.5 * (far_days**2 + far_age**2)) + FAR_WORTH)
    return Spread(errors.log_error, errors.reached, worth / worth.sum())


def _quantile(values: Floats, worth: Floats, level: float) -> float:
    order = np.argsort(values)
    at = int(np.searchsorted(np.cumsum(worth[order]), level))
    return float(values[order][min(at, len(values) - 1)])
