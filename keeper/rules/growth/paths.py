"""One animal under the Gompertz population: which weighings do not fit, and where it goes next."""

from dataclasses import dataclass

import numpy as np

from keeper.rules.growth.gompertz import (
    LOG_RATES,
    WIDE_SHARE,
    WIDE_TIMES,
    GompertzPopulation,
    t_trust,
)
from keeper.rules.growth.weighings import Floats, History

COMPONENTS = ((1.0, np.log(1.0 - WIDE_SHARE)), (WIDE_TIMES, np.log(WIDE_SHARE)))
MOST_CURVES = 16  # rates followed: the likeliest of both components
LEAST_SHARE = 1e-3
DRAWS = 48  # of each curve
HORIZON_SPANS = 1.5  # how far a path is followed, in record lengths
GRID = 36
BAD_Z = 5.0  # a weighing further than this from what the others say is set aside


@dataclass(frozen=True, slots=True)
class Paths:
    """Simulated log weights at ages from the last weighing on, and each path's probability."""

    age_days: Floats  # (grid,)
    log_g: Floats  # (paths, grid)
    share: Floats  # (paths,)

    def reaching_age(self, log_target: float, quantile: float) -> float:
        """Age by which this share of the paths has reached a weight; infinite if too few do."""
        over = self.log_g >= log_target
        first = over.argmax(axis=1)
        before = np.maximum(first - 1, 0)
        rows = np.arange(len(over))
        low, high = self.log_g[rows, before], self.log_g[rows, first]
        part = np.clip((log_target - low) / np.where(high > low, high - low, 1.0), 0.0, 1.0)
        ages = self.age_days[before] + part * (self.age_days[first] - self.age_days[before])
        ages = np.where(over.any(axis=1), ages, np.inf)
        order = np.argsort(ages)
        reached = np.cumsum(self.share[order]) - 0.5 * self.share[order]
        return float(ages[order][min(int(np.searchsorted(reached, quantile)), len(ages) - 1)])


@dataclass(frozen=True, slots=True)
class _Weighed:
    """One animal's weighings in the light of wobble and noise, the same for every curve."""

    design: Floats  # (rates, n, 2)
    inverse: Floats  # (n, n): of the covariance of wobble and noise
    solved_design: Floats  # (rates, n, 2): inverse @ design
    log_det: float


@dataclass(frozen=True, slots=True)
class _Curves:
    """Gaussian beliefs in (a, b) at every rate of one component, given one animal's weighings."""

    mean: Floats  # (rates, 2)
    covariance: Floats  # (rates, 2, 2)
    left: Floats  # (rates, n): weighings less the mean curve
    solved: Floats  # (rates, n): inverse @ left
    log_share: Floats  # (rates,)


def set_aside(population: GompertzPopulation, record: History) -> History:
    """The record without weighings that the animal's other weighings speak strongly against.

    One at a time, the worst first, and never so many that fewer than two thirds remain.
    """
    kept = record
    while len(kept) > 2 and 3 * (len(kept) - 1) >= 2 * len(record):
        z = np.abs(_left_out_z(population, kept))
        if z.max() < BAD_Z:
            break
        kept = kept.without(int(z.argmax()))
    return kept


def paths(population: GompertzPopulation, record: History, *, seed: int) -> Paths:
    """Where the animal's true weight may go, given its weighings; the same for the same seed."""
    ages = record.age_days[-1] + HORIZON_SPANS * population.span_days * (
        np.linspace(0.0, 1.0, GRID) ** 1.5
    )
    weighed, curves = _believed(population, record)
    share = _shares(curves)
    kept = np.argsort(-share)[:MOST_CURVES]
    kept = kept[share[kept] >= LEAST_SHARE]
    rates = kept % len(LOG_RATES)
    wobble = population.wobble_covariance(ages, record.age_days)
    gain = wobble @ weighed.inverse  # of an animal's wobble from what the curve leaves over
    design = population.design(ages)[rates]
    mean, covariance, left = (
        np.concatenate([getattr(belief, name) for belief in curves])[kept]
        for name in ("mean", "covariance", "left")
    )
    middle = (design @ mean[..., None])[..., 0] + left @ gain.T
    moved = design - gain @ weighed.design[rates]
    spread = moved @ covariance @ np.swapaxes(moved, 1, 2)
    spread = spread + population.wobble_covariance(ages, ages) - gain @ wobble.T
    lower = np.linalg.cholesky(spread + 1e-8 * np.eye(GRID))
    normal = np.random.default_rng(seed).standard_normal((DRAWS, GRID))
    drawn = middle[:, None] + normal @ np.swapaxes(lower, 1, 2)
    weight = np.repeat(share[kept], DRAWS)
    return Paths(ages, drawn.reshape(-1, GRID), weight / weight.sum())


def _believed(population: GompertzPopulation, record: History) -> tuple[_Weighed, list[_Curves]]:
    """Beliefs under both components, after three turns of weighing down what fits badly."""
    trust = np.ones(len(record))
    for _ in range(3):
        weighed = _weighed(population, record, trust)
        curves = _beliefs(population, record, weighed)
        solved = np.concatenate([belief.solved for belief in curves])
        left = (_shares(curves) @ solved) * population.noise / trust
        trust = t_trust(left)
    weighed = _weighed(population, record, trust)
    return weighed, _beliefs(population, record, weighed)


def _weighed(population: GompertzPopulation, record: History, trust: Floats) -> _Weighed:
    design = population.design(record.age_days)
    variance = population.wobble_covariance(record.age_days, record.age_days)
    variance = variance + np.diag(population.noise**2 / trust)
    inverse = np.asarray(np.linalg.inv(variance), dtype=float)
    return _Weighed(design, inverse, inverse @ design, float(np.linalg.slogdet(variance)[1]))


def _beliefs(population: GompertzPopulation, record: History, weighed: _Weighed) -> list[_Curves]:
    return [_conditioned(population, record, weighed, *one) for one in COMPONENTS]


def _conditioned(
    population: GompertzPopulation,
    record: History,
    weighed: _Weighed,
    times: float,
    log_weight: float,
) -> _Curves:
    mean, prior, log_share = population.given_rate(times)
    across = np.swapaxes(weighed.solved_design, 1, 2)
    precision = across @ weighed.design + np.linalg.inv(prior)
    covariance = np.linalg.inv(precision)
    rest = record.log_g - (weighed.design @ mean[..., None])[..., 0]
    pull = (across @ rest[..., None])[..., 0]
    shift = (covariance @ pull[..., None])[..., 0]
    left = rest - (weighed.design @ shift[..., None])[..., 0]
    solved = left @ weighed.inverse
    log_det = np.linalg.slogdet(precision)[1] + np.linalg.slogdet(prior)[1] + weighed.log_det
    fit = -0.5 * ((rest * solved).sum(axis=1) + log_det)
    return _Curves(mean + shift, covariance, left, solved, fit + log_share + log_weight)


def _shares(curves: list[_Curves]) -> Floats:
    logs = np.concatenate([belief.log_share for belief in curves])
    return np.asarray(np.exp(logs - np.logaddexp.reduce(logs)))


def _left_out_z(population: GompertzPopulation, record: History) -> Floats:
    """How far each weighing stands from what the others predict, in deviations."""
    weighed = _weighed(population, record, np.ones(len(record)))
    curves = _beliefs(population, record, weighed)
    covariance, solved = (
        np.concatenate([getattr(belief, name) for belief in curves])
        for name in ("covariance", "solved")
    )
    design = np.concatenate([weighed.solved_design] * len(curves))
    known = np.diagonal(weighed.inverse) - ((design @ covariance) * design).sum(axis=-1)
    return np.asarray(_shares(curves) @ (solved / np.sqrt(known)))
