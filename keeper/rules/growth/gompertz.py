"""A hierarchical Gompertz model of growth: a population of curves, and one animal's place in it.

log w(t) = a + (b - a) (1 - exp(-k u)) / (1 - exp(-0.6 k)) + wobble + noise, where u is age
counted from the usual first weighing in units of the usual record length, a is the log
weight at u = 0, b the log weight at u = 0.6 and k the rate. Written so, the curve is linear
in (a, b) once k is given: every integral over (a, b) is exact, and the one over log k is a
sum over a fixed grid of rates. (a, b, log k) are normal over the population, with a wide
second component for animals unlike the rest; the wobble is an animal's own smooth departure
(Matern 3/2); the noise is Student t with 4 degrees of freedom, so that a bad weighing is
heard less.

Sources: B. Gompertz, Phil. Trans. R. Soc. 115 (1825) 513-583; the form for growth, C. P.
Winsor, PNAS 18 (1932) 1-8; expectation-maximisation for such models, N. Laird & J. Ware,
Biometrics 38 (1982) 963-974; C. Rasmussen & C. Williams, Gaussian Processes for Machine
Learning (2006), sections 2.7 and 4.2.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from keeper.rules.growth.weighings import Floats, History, span_days

LOG_RATES = np.linspace(np.log(0.15), np.log(25.0), 28)
"""Log of k per record length, from nearly straight growth to growth that is over at once."""
ANCHOR = 0.6
T_FREEDOM = 4.0
WIDE_SHARE, WIDE_TIMES = 0.2, 4.0  # share and variance of the second component
PRIOR_ANIMALS = 3.0  # what the prior spread of the population is worth
PRIOR_SPREAD = np.diag([0.006, 0.015, 0.09])
ROUNDS = 25
WARM_ROUNDS = 4
ABSENT = 1e6  # noise variance of a weighing that is not there


@dataclass(frozen=True, slots=True, kw_only=True)
class GompertzPopulation:
    """Mean and covariance of (a, b, log k), and the sizes of wobble and noise in log weight."""

    start_days: float
    span_days: float
    mean: Floats
    covariance: Floats
    wobble: float
    wobble_days: float
    noise: float

    def design(self, age_days: Floats) -> Floats:
        """Coefficients of (a, b) at ages (..., n), for every rate: (..., rates, n, 2)."""
        u = (age_days[..., None, :] - self.start_days) / self.span_days
        rate = np.exp(LOG_RATES)[:, None]
        share = np.expm1(-rate * u) / np.expm1(-rate * ANCHOR)
        return np.stack([1.0 - share, share], axis=-1)

    def wobble_covariance(self, ages: Floats, others: Floats) -> Floats:
        """Matern 3/2 covariance of the wobble between ages (..., n) and (..., m)."""
        distance = np.sqrt(3.0) * np.abs(ages[..., :, None] - others[..., None, :])
        distance /= self.wobble_days
        return np.asarray(self.wobble**2 * (1.0 + distance) * np.exp(-distance))

    def given_rate(self, times: float = 1.0) -> tuple[Floats, Floats, Floats]:
        """Mean (rates, 2) and covariance (2, 2) of (a, b) at each rate, and log share of rates."""
        spread = self.covariance * times
        slope = spread[:2, 2] / spread[2, 2]
        mean = self.mean[:2] + slope * (LOG_RATES[:, None] - self.mean[2])
        log_share = -0.5 * (LOG_RATES - self.mean[2]) ** 2 / spread[2, 2]
        log_share -= np.logaddexp.reduce(log_share)
        return mean, spread[:2, :2] - np.outer(slope, slope) * spread[2, 2], log_share


@dataclass(frozen=True, slots=True)
class _Batch:
    """Animals padded to one length."""

    ages: Floats  # (animals, n)
    logs: Floats
    there: NDArray[np.bool_]
    design: Floats  # (animals, rates, n, 2)
    trust: Floats  # weight of each weighing under the t noise


@dataclass(frozen=True, slots=True)
class _White:
    """A batch multiplied so that wobble and noise together have variance 1 at every weighing."""

    design: Floats  # (animals, rates, n, 2)
    across: Floats  # (animals, rates, 2, 2): its square
    logs: Floats  # (animals, 1, n)
    log_det: Floats  # (animals, 1)


@dataclass(frozen=True, slots=True)
class _Posterior:
    """Each animal's rate probabilities, and moments of (a, b) at each rate."""

    log_likelihood: Floats  # (animals,)
    rates: Floats  # (animals, rates)
    mean: Floats  # (animals, rates, 2)
    covariance: Floats  # (animals, rates, 2, 2)


def gompertz_population(
    animals: Sequence[History], start: GompertzPopulation | None = None
) -> GompertzPopulation:
    """Fit the population by expectation-maximisation, cold from the data.

    *start*: a fit to nearly the same animals; its wobble and noise are kept, and few rounds do.

    Raises:
        ValueError: no animal has two weighings.
    """
    usable = [one for one in animals if len(one) >= 2]
    if not usable:
        raise ValueError("a growth population needs an animal with two weighings or more")
    population = start or _start(usable)
    batch = _batch(population, usable)
    step = 0.4
    for turn in range(WARM_ROUNDS if start else ROUNDS):
        if turn >= 3 or start:
            batch = replace(batch, trust=_trust(population, batch))
        white = _white(population, batch)
        for _ in range(3):
            population = _population_of(population, batch, _posterior(population, white))
        if turn % 2 == 0 and not start:
            population = _better_sizes(population, batch, step)
            step *= 0.75 if turn > 6 else 1.0
    return population


def _start(animals: Sequence[History]) -> GompertzPopulation:
    span = span_days(animals)
    start = float(np.median([one.age_days[0] for one in animals]))
    at_start, at_anchor = (
        float(np.median([np.interp(start + u * span, one.age_days, one.log_g) for one in animals]))
        for u in (0.0, ANCHOR)
    )
    return GompertzPopulation(
        start_days=start,
        span_days=span,
        mean=np.array([at_start, at_anchor, float(LOG_RATES.mean())]),
        covariance=np.diag([0.05, 0.1, 1.0]),
        wobble=0.06,
        wobble_days=0.25 * span,
        noise=0.04,
    )


def _batch(population: GompertzPopulation, animals: Sequence[History]) -> _Batch:
    longest = max(len(one) for one in animals)
    ages = np.array([_padded(one.age_days, longest, one.age_days[-1]) for one in animals])
    logs = np.array([_padded(one.log_g, longest, 0.0) for one in animals])
    there = np.arange(longest) < np.array([len(one) for one in animals])[:, None]
    return _Batch(ages, logs, there, population.design(ages), np.ones_like(ages))


def _padded(values: Floats, length: int, fill: float) -> Floats:
    return np.concatenate([values, np.full(length - len(values), fill)])


def _noise_variance(population: GompertzPopulation, batch: _Batch) -> Floats:
    return np.where(batch.there, population.noise**2 / batch.trust, ABSENT)


def _white(population: GompertzPopulation, batch: _Batch) -> _White:
    """Depends on the sizes of wobble and noise, and not on the mean of the population."""
    variance = population.wobble_covariance(batch.ages, batch.ages)
    variance = variance + _noise_variance(population, batch)[:, :, None] * np.eye(
        batch.ages.shape[1]
    )
    lower = np.linalg.cholesky(variance)
    whiten = np.linalg.inv(lower)
    design = whiten[:, None] @ batch.design
    log_det = 2.0 * np.log(np.diagonal(lower, axis1=1, axis2=2)).sum(axis=1)[:, None]
    logs = (whiten @ batch.logs[..., None])[:, None, :, 0]
    return _White(design, np.swapaxes(design, 2, 3) @ design, logs, log_det)


def _posterior(population: GompertzPopulation, white: _White) -> _Posterior:
    prior_mean, prior_covariance, log_share = population.given_rate()
    rest = white.logs - (white.design @ prior_mean[:, :, None])[..., 0]
    precision = white.across + np.linalg.inv(prior_covariance)
    pull = (rest[..., None, :] @ white.design)[..., 0, :]
    covariance = np.linalg.inv(precision)
    shift = (covariance @ pull[..., None])[..., 0]
    log_det = white.log_det + np.linalg.slogdet(precision)[1]
    log_det = log_det + np.linalg.slogdet(prior_covariance)[1]
    square = (rest**2).sum(axis=-1) - (pull * shift).sum(axis=-1)
    joint = log_share - 0.5 * (square + log_det)
    total = np.logaddexp.reduce(joint, axis=1)
    return _Posterior(total, np.exp(joint - total[:, None]), prior_mean + shift, covariance)


def _population_of(
    population: GompertzPopulation, batch: _Batch, found: _Posterior
) -> GompertzPopulation:
    """The maximisation step for mean and covariance, with a weak prior on the spread."""
    count = len(batch.ages)
    rate = np.broadcast_to(LOG_RATES[None, :, None], (*found.rates.shape, 1))
    each = np.concatenate([found.mean, rate], axis=-1)
    mean = np.tensordot(found.rates, each, axes=2) / count
    away = each - mean
    scatter = np.tensordot(found.rates[..., None] * away, away, axes=((0, 1), (0, 1)))
    scatter[:2, :2] += np.tensordot(found.rates, found.covariance, axes=2)
    covariance = (scatter + PRIOR_ANIMALS * PRIOR_SPREAD) / (count + PRIOR_ANIMALS)
    return replace(population, mean=mean, covariance=covariance)


def _trust(population: GompertzPopulation, batch: _Batch) -> Floats:
    """Weights of the weighings under t noise, from what curve and wobble leave over."""
    found = _posterior(population, _white(population, batch))
    each = (batch.design @ found.mean[..., None])[..., 0]
    curve = (found.rates[:, :, None] * each).sum(axis=1)
    wobble = population.wobble_covariance(batch.ages, batch.ages)
    noise = _noise_variance(population, batch)[:, :, None] * np.eye(batch.ages.shape[1])
    rest = batch.logs - curve
    left = rest - (wobble @ np.linalg.solve(wobble + noise, rest[..., None]))[..., 0]
    return t_trust(left / population.noise)


def t_trust(standardised: Floats) -> Floats:
    """Weight of a weighing so many noise deviations off, under Student t noise."""
    return np.asarray((T_FREEDOM + 1.0) / (T_FREEDOM + standardised**2))


def _better_sizes(population: GompertzPopulation, batch: _Batch, step: float) -> GompertzPopulation:
    """Try wobble, wobble length and noise a step up and down; keep what is likelier."""
    best = population
    score = _score(best, batch)
    for name in ("wobble", "wobble_days", "noise"):
        for factor in (np.exp(step), np.exp(-step)):
            tried = _resized(best, name, float(factor))
            tried_score = _score(tried, batch)
            if tried_score > score:
                best, score = tried, tried_score
                break
    return best


def _resized(population: GompertzPopulation, name: str, factor: float) -> GompertzPopulation:
    return replace(
        population,
        wobble=population.wobble * (factor if name == "wobble" else 1.0),
        wobble_days=population.wobble_days * (factor if name == "wobble_days" else 1.0),
        noise=population.noise * (factor if name == "noise" else 1.0),
    )


def _score(population: GompertzPopulation, batch: _Batch) -> float:
    """Log likelihood and weak log-normal priors on the three sizes."""
    sizes = np.log([population.wobble, population.wobble_days / population.span_days])
    away = (sizes - np.log([0.05, 0.2])) / np.array([1.0, 0.7])
    noise_away = np.log(population.noise / 0.03)
    likely = float(_posterior(population, _white(population, batch)).log_likelihood.sum())
    return likely - 0.5 * float(away @ away + noise_away**2)
