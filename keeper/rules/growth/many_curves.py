"""Gompertz curves fitted to ten thousand records at once.

Source: elimination of the linear parameters, G. Golub & V. Pereyra, SIAM J. Numer. Anal. 10
(1973) 413-432, with the shorter derivative of L. Kaufman, BIT 15 (1975) 49-57.
"""

from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from keeper.rules.growth.weighings import Floats

START_RATES = np.geomspace(0.4, 14.0, 7)  # per length of the longest record
START_WEIGHINGS = 8  # of each record, to choose the start by
COARSE_TURNS, FINE_TURNS = 2, 1  # Gauss-Newton steps in single, then in double precision
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

    The rate starts from a parabola through the best of seven on eight weighings, then takes
    three Gauss-Newton steps; on ordinary records it is right to four digits or more.

    Raises:
        ValueError: shapes differ, or fewer than four weighings a row.
    """
    if age_days.shape != log_g.shape or age_days.ndim != 2 or age_days.shape[1] < 4:
        raise ValueError(f"need equal rows of 4 or more, got {age_days.shape} and {log_g.shape}")
    span = float(age_days.max() - age_days.min())
    parts = [
        _fitted(
            np.ascontiguousarray(age_days[first : first + BLOCK].T),
            np.ascontiguousarray(log_g[first : first + BLOCK].T),
            span,
        )
        for first in range(0, len(age_days), BLOCK)
    ]
    return GompertzFits(
        *(np.concatenate(values) for values in zip(*parts, strict=True)),
    )


def _fitted(ages: Floats, logs: Floats, span: float) -> tuple[Floats, Floats, Floats]:
    """Top, drop and rate of records given as columns."""
    coarse_ages, coarse_logs = ages.astype(np.float32), logs.astype(np.float32)
    log_rate = _start(coarse_ages, coarse_logs, span)
    mean_log = _mean(logs)
    coarse_mean = mean_log.astype(np.float32)
    log_rate = _stepped(coarse_ages, coarse_logs, coarse_mean, log_rate, COARSE_TURNS)
    rate = np.exp(_stepped(ages, logs, mean_log, log_rate, FINE_TURNS))
    sums = _sums(ages, logs, mean_log, rate, np.empty_like(ages))
    top = mean_log - sums.slope * sums.decay_mean
    return np.asarray(top), np.asarray(-sums.slope), np.asarray(rate)


def _stepped(ages: Reals, logs: Reals, mean_log: Reals, log_rate: Floats, turns: int) -> Floats:
    """Log rates after so many Gauss-Newton steps, in the precision of the records given."""
    decay, slide = np.empty_like(ages), np.empty_like(ages)
    for _ in range(turns):
        rate = np.exp(log_rate).astype(ages.dtype)
        sums = _sums(ages, logs, mean_log, rate, decay)
        np.multiply(ages, decay, out=slide)
        log_rate = log_rate + _newton(decay, slide, logs, mean_log, rate, sums)
    return log_rate


def _start(ages: Reals, logs: Reals, span: float) -> Floats:
    """Log rate at which a few weighings are fitted best, by a parabola through three rates."""
    rows = np.linspace(0, len(ages) - 1, START_WEIGHINGS).round().astype(int)
    few_ages, few_logs = ages[rows], logs[rows]
    mean_log, decay = _mean(few_logs), np.empty_like(few_ages)
    explained = np.empty((len(START_RATES), ages.shape[1]))
    for at, rate in enumerate((START_RATES / span).astype(ages.dtype)):
        sums = _sums(few_ages, few_logs, mean_log, rate, decay)
        explained[at] = sums.slope * sums.decay_log
    best = np.clip(explained.argmax(axis=0), 1, len(START_RATES) - 2)
    columns = np.arange(ages.shape[1])
    below, at_best, above = (explained[best + step, columns] for step in (-1, 0, 1))
    bend = np.minimum(below - 2.0 * at_best + above, -TINY)
    shift = np.clip(0.5 * (below - above) / bend, -1.0, 1.0)
    logs_of_rates = np.log(START_RATES / span)
    return np.asarray(logs_of_rates[best] + shift * (logs_of_rates[1] - logs_of_rates[0]))


def _sums(ages: Reals, logs: Reals, mean_log: Reals, rate: Any, decay: Reals) -> _Sums:
    """Fill *decay* with exp(-rate t) and sum it up."""
    np.multiply(ages, -rate, out=decay)
    np.exp(decay, out=decay)
    count = len(ages)
    mean = _mean(decay)
    return _Sums(
        mean, _dot(decay, decay) - count * mean**2, _dot(decay, logs) - count * mean * mean_log
    )


def _newton(
    decay: Reals, slide: Reals, logs: Reals, mean_log: Reals, rate: Reals, sums: _Sums
) -> Floats:
    """Gauss-Newton step in log rate; *slide* is t exp(-rate t)."""
    count = len(logs)
    mean = _mean(slide)
    decay_slide = _dot(decay, slide) - count * mean * sums.decay_mean
    slide_slide = _dot(slide, slide) - count * mean**2
    slide_log = _dot(slide, logs) - count * mean * mean_log
    pull = -sums.slope * rate
    gradient = pull * (slide_log - sums.slope * decay_slide)
    bend = pull**2 * (slide_slide - decay_slide**2 / np.maximum(sums.decay_decay, TINY))
    return np.asarray(np.clip(gradient / np.maximum(bend, TINY), -LARGEST_STEP, LARGEST_STEP))


def _dot(one: Reals, other: Reals) -> Reals:
    return np.asarray(np.einsum("ij,ij->j", one, other))


def _mean(columns: Reals) -> Reals:
    """Of each column; quicker than ``mean`` over the first axis."""
    return np.asarray(np.ones(len(columns), columns.dtype) @ columns / len(columns))
