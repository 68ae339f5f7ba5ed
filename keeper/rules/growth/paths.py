"""One animal under the Gompertz population: which weighings do not fit, and where it goes next."""

from dataclasses import dataclass

import numpy as np

from keeper.rules.growth.gompertz import (
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
class _Curves:
    """Gaussian beliefs at every rate of one component, given one animal's weighings."""

    covariance: Floats  # of (a, b) at a rate, before the weighings
    mean: Floats  # (rates, 2), the same
    variance: Floats  # (rates, n, n) of the weighings
    solved: Floats  # (rates, n): variance^-1 (weighings - mean)
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
    curves = _believed(population, record)
    share = _shares(curves)
    design, old = population.design(ages), population.design(record.age_days)
    new_old = population.wobble_covariance(ages, record.age_days)
    new_new = population.wobble_covariance(ages, ages)
    normal = np.random.default_rng(seed).standard_normal((DRAWS, GRID))
    drawn, weights = [], []
    for at in np.argsort(-share)[:MOST_CURVES]:
        if share[at] < LEAST_SHARE:
            break
        part, rate = divmod(int(at), len(curves[0].log_share))
        belief = curves[part]
        cross = design[rate] @ belief.covariance @ old[rate].T + new_old
        mean = design[rate] @ belief.mean[rate] + cross @ belief.solved[rate]
        spread = design[rate] @ belief.covariance @ design[rate].T + new_new
        spread = spread - cross @ np.linalg.solve(belief.variance[rate], cross.T)
        lower = np.linalg.cholesky(spread + 1e-8 * np.eye(GRID))
        drawn.append(mean + normal @ lower.T)
        weights.append(np.full(DRAWS, share[at] / DRAWS))
    weight = np.concatenate(weights)
    return Paths(ages, np.concatenate(drawn), weight / weight.sum())


def _believed(population: GompertzPopulation, record: History) -> list[_Curves]:
    """Beliefs under both components, after three turns of weighing down what fits badly."""
    trust = np.ones(len(record))
    for _ in range(3):
        curves = [_conditioned(population, record, trust, *one) for one in COMPONENTS]
        solved = np.concatenate([belief.solved for belief in curves])
        left = (_shares(curves) @ solved) * population.noise / trust
        trust = t_trust(left)
    return [_conditioned(population, record, trust, *one) for one in COMPONENTS]


def _conditioned(
    population: GompertzPopulation,
    record: History,
    trust: Floats,
    times: float,
    log_weight: float,
) -> _Curves:
    mean, covariance, log_share = population.given_rate(times)
    design = population.design(record.age_days)
    wobble = population.wobble_covariance(record.age_days, record.age_days)
    variance = design @ covariance @ np.swapaxes(design, 1, 2) + wobble
    variance = variance + np.diag(population.noise**2 / trust)
    rest = record.log_g - (design @ mean[..., None])[..., 0]
    solved = np.asarray(np.linalg.solve(variance, rest[..., None])[..., 0])
    log_det = np.linalg.slogdet(variance)[1]
    fit = -0.5 * ((rest * solved).sum(axis=1) + log_det)
    return _Curves(covariance, mean, variance, solved, fit + log_share + log_weight)


def _shares(curves: list[_Curves]) -> Floats:
    logs = np.concatenate([belief.log_share for belief in curves])
    return np.asarray(np.exp(logs - np.logaddexp.reduce(logs)))


def _left_out_z(population: GompertzPopulation, record: History) -> Floats:
    """How far each weighing stands from what the others predict, in deviations."""
    curves = [_conditioned(population, record, np.ones(len(record)), *one) for one in COMPONENTS]
    precision = np.concatenate([np.linalg.inv(belief.variance) for belief in curves])
    solved = np.concatenate([belief.solved for belief in curves])
    z = solved / np.sqrt(np.diagonal(precision, axis1=1, axis2=2))
    return np.asarray(_shares(curves) @ z)
