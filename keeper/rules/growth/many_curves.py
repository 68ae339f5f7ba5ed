"""Gompertz curves fitted to ten thousand records at once.

Source: elimination of the linear parameters, G. Golub & V. Pereyra, SIAM J. Numer. Anal. 10
(1973) 413-432, with the shorter derivative of L. Kaufman, BIT 15 (1975) 49-57.
"""

from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from keeper.rules.growth.weighings import Floats

START_RATES = np.geomspace(0.4, 14.0, 5)  # per length of the longest record
START_WEIGHINGS = 8  # of each record, to choose the start by
MORE_TURNS, STILL = 3, 1e-3  # of Gauss-Newton, after two, for records whose log rate moved
LARGEST_STEP = 0.7  # in log rate
BLOCK = 2_000  # records worked on together: few turns of Python, and still near the processor
TINY = 1e-30

Reals = NDArray[np.floating[Any]]


@dataclass(frozen=True, slots=True)
class GompertzFits:
    """Each record's log w = top - drop exp(-rate t): arrays of one value a record."""

    top: Floats
    drop: Floats
    rate: Floats


@dataclass(frozen=True, slots=True)
class _Sums:
    """Sums over each record's weighings, about their means, at one rate a record."""

    decay_mean: Reals
    decay_decay: Reals
    decay_log: Reals

    @property
    def slope(self) -> Reals:
        return self.decay_log / np.maximum(self.decay_decay, TINY)


def fit_gompertz_each(age_days: Floats, log_g: Floats) -> GompertzFits:
    """Fit every row's record: ages and log weights as (records, weighings).

    The rate starts from a parabola through the best of five on eight weighings, then takes
    two Gauss-Newton steps in single precision or as many more as it needs; top and drop are
    reckoned in double. On ordinary records the answer is right to four digits or more.

    Raises:
        ValueError: shapes differ, or fewer than four weighings a row.
    """
    if age_days.shape != log_g.shape or age_days.ndim != 2 or age_days.shape[1] < 4:
        raise ValueError(f"need equal rows of 4 or more, got {age_days.shape} and {log_g.shape}")
    span = float(age_days.max() - age_days.min())
    parts = [
        _fitted(age_days[first : first + BLOCK], log_g[first : first + BLOCK], span)
        for first in range(0, len(age_days), BLOCK)
    ]
    return GompertzFits(*(np.concatenate(values) for values in zip(*parts, strict=True)))


def _fitted(ages: Floats, logs: Floats, span: float) -> tuple[Floats, Floats, Floats]:
    """Top, drop and rate of records given as rows."""
    count, mean_log = logs.shape[1], _row_sum(logs) / logs.shape[1]
    columns, off = _single_columns(ages), _single_columns(logs)
    off -= mean_log.astype(np.float32)
    rate = np.exp(_stepped(columns, off, _start(columns, off, span)))
    decay = np.multiply(ages, -rate[:, None])
    np.exp(decay, out=decay)
    decay_mean = _row_sum(decay) / count
    decay_decay = np.einsum("ij,ij->i", decay, decay) - count * decay_mean**2
    decay_log = np.einsum("ij,ij->i", decay, logs) - count * decay_mean * mean_log
    slope = decay_log / np.maximum(decay_decay, TINY)
    return np.asarray(mean_log - slope * decay_mean), np.asarray(-slope), np.asarray(rate)


def _row_sum(rows: Floats) -> Floats:
    return np.asarray(rows @ np.ones(rows.shape[1]))


def _single_columns(rows: Floats) -> Reals:
    """In single precision, a record a column."""
    return np.ascontiguousarray(rows.astype(np.float32).T)


def _stepped(ages: Reals, off: Reals, log_rate: Floats) -> Floats:
    """Log rates after Gauss-Newton steps; *off*: log weights less each record's mean.

    Two for all, more for those that still moved.
    """
    log_rate = log_rate + _step(ages, off, log_rate)
    step = _step(ages, off, log_rate)
    log_rate = log_rate + step
    for _ in range(MORE_TURNS):
        late = np.flatnonzero(np.abs(step) > STILL)
        if not len(late):
            break
        step = np.zeros_like(log_rate)
        step[late] = _step(ages[:, late], off[:, late], log_rate[late])
        log_rate = log_rate + step
    return log_rate


def _step(ages: Reals, off: Reals, log_rate: Floats) -> Floats:
    rate, decay = np.exp(log_rate).astype(ages.dtype), np.empty_like(ages)
    sums = _sums(ages, off, rate, decay)
    return _newton(decay, ages * decay, off, rate, sums)


def _start(ages: Reals, off: Reals, span: float) -> Floats:
    """Log rate at which a few weighings are fitted best, by a parabola through three rates."""
    rows = np.linspace(0, len(ages) - 1, START_WEIGHINGS).round().astype(int)
    few_ages, few_off = ages[rows], off[rows]
    few_off -= _mean(few_off)
    decay = np.empty_like(few_ages)
    explained = np.empty((len(START_RATES), ages.shape[1]))
    for at, rate in enumerate((START_RATES / span).astype(ages.dtype)):
        sums = _sums(few_ages, few_off, rate, decay)
        explained[at] = sums.slope * sums.decay_log
    best = np.clip(explained.argmax(axis=0), 1, len(START_RATES) - 2)
    columns = np.arange(ages.shape[1])
    below, at_best, above = (explained[best + step, columns] for step in (-1, 0, 1))
    bend = np.minimum(below - 2.0 * at_best + above, -TINY)
    shift = np.clip(0.5 * (below - above) / bend, -1.0, 1.0)
    logs_of_rates = np.log(START_RATES / span)
    return np.asarray(logs_of_rates[best] + shift * (logs_of_rates[1] - logs_of_rates[0]))


def _sums(ages: Reals, off: Reals, rate: Any, decay: Reals) -> _Sums:
    """Fill *decay* with exp(-rate t) and sum it up."""
    np.multiply(ages, -rate, out=decay)
    np.exp(decay, out=decay)
    mean = _mean(decay)
    return _Sums(mean, _dot(decay, decay) - len(ages) * mean**2, _dot(decay, off))


def _newton(decay: Reals, slide: Reals, off: Reals, rate: Reals, sums: _Sums) -> Floats:
    """Gauss-Newton step in log rate; *slide* is t exp(-rate t)."""
    count = len(off)
    mean = _mean(slide)
    decay_slide = _dot(decay, slide) - count * mean * sums.decay_mean
    slide_slide = _dot(slide, slide) - count * mean**2
    pull = -sums.slope * rate
    gradient = pull * (_dot(slide, off) - sums.slope * decay_slide)
    bend = pull**2 * (slide_slide - decay_slide**2 / np.maximum(sums.decay_decay, TINY))
    return np.asarray(np.clip(gradient / np.maximum(bend, TINY), -LARGEST_STEP, LARGEST_STEP))


def _dot(one: Reals, other: Reals) -> Reals:
    return np.asarray(np.einsum("ij,ij->j", one, other))


def _mean(columns: Reals) -> Reals:
    """Of each column; quicker than ``mean`` over the first axis."""
    return np.asarray(np.ones(len(columns), columns.dtype) @ columns / len(columns))
