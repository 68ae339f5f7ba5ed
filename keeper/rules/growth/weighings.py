"""One animal's weighings, made ready for fitting: in order of age, one a day, in log grams."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import isfinite

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class History:
    """Ages in days, strictly increasing, and natural logs of weights in grams."""

    age_days: Floats
    log_g: Floats

    def __len__(self) -> int:
        return len(self.age_days)

    def last(self, count: int) -> "History":
        """The latest *count* weighings."""
        return History(self.age_days[-count:], self.log_g[-count:])

    def first(self, count: int) -> "History":
        """The earliest *count* weighings."""
        return History(self.age_days[:count], self.log_g[:count])

    def since(self, age_days: float) -> "History":
        """The weighings from an age on."""
        ahead = self.age_days >= age_days
        return History(self.age_days[ahead], self.log_g[ahead])

    def thinned(self, most: int) -> "History":
        """No more weighings than *most*, evenly taken, the first and the last among them."""
        if len(self) <= most:
            return self
        kept = np.linspace(0, len(self) - 1, most).round().astype(int)
        return History(self.age_days[kept], self.log_g[kept])

    def without(self, at: int) -> "History":
        """All weighings but one."""
        return History(np.delete(self.age_days, at), np.delete(self.log_g, at))

    def reaches(self, log_target: float) -> float | None:
        """Age at which the weighings, joined straight in log weight, first reach a weight."""
        over = np.flatnonzero(self.log_g >= log_target)
        if not len(over):
            return None
        at = int(over[0])
        if at == 0:
            return float(self.age_days[0])
        share = (log_target - self.log_g[at - 1]) / (self.log_g[at] - self.log_g[at - 1])
        before, after = self.age_days[at - 1], self.age_days[at]
        return float(before + share * (after - before))


def history(weighings: Iterable[tuple[float, float]]) -> History:
    """Weighings as (age in days, grams) in any order; several at one age become their median.

    Raises:
        ValueError: a weight not above 0 g, an age below 0, or either not finite.
    """
    by_age: dict[float, list[float]] = {}
    for age_days, weight_g in weighings:
        if not (weight_g > 0 and isfinite(weight_g)):
            raise ValueError(f"a weight must be above 0 g and finite, got {weight_g!r}")
        if not (age_days >= 0 and isfinite(age_days)):
            raise ValueError(f"an age must be 0 days or more, got {age_days!r}")
        by_age.setdefault(float(age_days), []).append(weight_g)
    ages = sorted(by_age)
    logs = [float(np.log(np.median(by_age[age]))) for age in ages]
    return History(np.array(ages, dtype=float), np.array(logs, dtype=float))


def reached_already(weighings: Iterable[tuple[float, float]], target_g: float) -> float | None:
    """Age at which a weight was surely reached and from which it is held; None: not so sure.

    Two weighings in a row must say so, and the last two, because one may be a slip; a record
    of one or two weighings has no more to say and is believed.
    """
    record = history(weighings)
    target = float(np.log(target_g))
    over = record.log_g >= target
    if len(record) <= 2:
        return record.reaches(target) if len(record) and over[-1] else None
    if not over[-2:].all():
        return None
    first = int(np.flatnonzero(over[:-1] & over[1:])[0])
    return record.since(float(record.age_days[max(0, first - 1)])).reaches(target)


def span_days(animals: Sequence[History]) -> float:
    """The usual length of an animal's record, the unit in which rates and horizons are thought."""
    return max(1e-6, float(np.median([one.age_days[-1] - one.age_days[0] for one in animals])))
