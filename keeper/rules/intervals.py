"""Lengths of time that are known only to lie between two bounds, and the log-normal behind them."""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from math import erfc, exp, inf, log, pi, sqrt
from statistics import NormalDist
from typing import NamedTuple

Bounds = tuple[float, float]
"""Days, at least and at most; equal when exact, ``inf`` when it had not ended yet."""

EVIDENCE_FOR_SPREAD = 5.0
"""How many intervals an expected spread is worth beside an animal's own: a choice of statistics,
not of husbandry. A spread seen in two or three intervals says little."""

_STANDARD = NormalDist()
_TINY = 1e-300


class LogNormalFit(NamedTuple):
    """mu and sigma of the logarithm of days, and the log-likelihood reached."""

    mu: float
    sigma: float
    loglik: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Spacing:
    """What is known of an animal's own interval: log-normal with an uncertain middle."""

    mu: float  # of log days
    sigma: float  # from one interval to the next
    mu_error: float  # of mu itself, small after many intervals
    learned_from: int  # own intervals

    @property
    def median_days(self) -> float:
        return exp(self.mu)

    def quantile_days(self, share: float, after_days: float = 0.0) -> float:
        """Days by which *share* of the next intervals end, given that *after_days* have passed."""
        spread = sqrt(self.sigma**2 + self.mu_error**2)
        passed = _below((log(after_days) - self.mu) / spread) if after_days > 0 else 0.0
        wanted = passed + (1 - passed) * share
        if wanted >= 1:
            return after_days
        return max(after_days, exp(self.mu + spread * _STANDARD.inv_cdf(wanted)))


def lognormal_fit(intervals: Sequence[Bounds]) -> LogNormalFit:
    """Maximum likelihood for exact, interval-censored and right-censored lengths.

    Expectation and maximisation in turn until nothing moves. An exact length adds its
    density to the log-likelihood, a bounded one its probability.

    Raises:
        ValueError: a bound out of order or below 0, or lengths that all allow one same
            value, so that no spread can be fitted.

    >>> [round(figure, 4) for figure in lognormal_fit([(30, 35), (40, 40), (36, float("inf"))])]
    [3.623, 0.0934, -4.3843]
    """
    bounds = [_checked(low, high) for low, high in intervals]
    if max(low for low, _ in bounds) <= min(high for _, high in bounds):
        raise ValueError("lengths that all allow one same value have no spread to fit")
    mu, sigma = _start(bounds)
    for _ in range(20_000):
        means, squares = _expected(bounds, mu, sigma)
        new_mu = sum(means) / len(bounds)
        new_sigma = sqrt(sum(squares) / len(bounds) - new_mu**2)
        moved = abs(new_mu - mu) + abs(new_sigma - sigma)
        mu, sigma = new_mu, new_sigma
        if moved < 1e-13:
            break
    return LogNormalFit(mu, sigma, sum(_loglik(low, high, mu, sigma) for low, high in bounds))


@lru_cache(maxsize=4096)
def learned(
    intervals: tuple[Bounds, ...], median_days: float, between_log: float, within_log: float
) -> Spacing:
    """An animal's own interval: what is expected, pulled over by weight of its own evidence.

    between_log: SD of the logarithm of the medians of different animals; within_log: SD of
    the logarithm of one animal's intervals. Without own intervals it is the expected.

    >>> expected = learned((), 40.0, 0.2, 0.2)
    >>> own = learned(((29.0, 31.0),) * 4, 40.0, 0.2, 0.2)
    >>> round(expected.median_days), round(own.median_days, 1)
    (40, 31.1)
    """
    mu, sigma = log(median_days), within_log
    count = len(intervals)
    for _ in range(200 if count else 0):
        means, squares = _expected(intervals, mu, sigma)
        new_mu = (log(median_days) / between_log**2 + sum(means) / sigma**2) / (
            1 / between_log**2 + count / sigma**2
        )
        around = sum(s - 2 * new_mu * m + new_mu**2 for m, s in zip(means, squares, strict=True))
        new_sigma = sqrt(
            (EVIDENCE_FOR_SPREAD * within_log**2 + around) / (EVIDENCE_FOR_SPREAD + count)
        )
        moved = abs(new_mu - mu) + abs(new_sigma - sigma)
        mu, sigma = new_mu, new_sigma
        if moved < 1e-6:
            break
    error = 1 / sqrt(1 / between_log**2 + count / sigma**2)
    return Spacing(mu=mu, sigma=sigma, mu_error=error, learned_from=count)


def _checked(low: float, high: float) -> Bounds:
    if not (0 <= low <= high and high > 0 and low < inf):
        raise ValueError(f"bounds must be 0 or more and in order, got {low!r} to {high!r}")
    return low, high


def _start(bounds: Sequence[Bounds]) -> tuple[float, float]:
    """Middle and spread of what the bounds suggest, to begin from."""
    logs = [log(_middle(low, high)) for low, high in bounds]
    mu = sum(logs) / len(logs)
    return mu, max(0.05, sqrt(sum((x - mu) ** 2 for x in logs) / len(logs)))


def _middle(low: float, high: float) -> float:
    if high == inf:
        return low or 1.0
    return sqrt(low * high) if low > 0 else high / 2


def _expected(bounds: Sequence[Bounds], mu: float, sigma: float) -> tuple[list[float], list[float]]:
    """Expected log length and expected square of it, of each, given its bounds."""
    pairs = [_moments(low, high, mu, sigma) for low, high in bounds]
    return [mean for mean, _ in pairs], [square for _, square in pairs]


def _moments(low: float, high: float, mu: float, sigma: float) -> tuple[float, float]:
    """First and second moment of a normal cut off at the logarithms of the bounds."""
    if low == high:
        return log(low), log(low) ** 2
    a, b = _scaled(low, mu, sigma), _scaled(high, mu, sigma)
    inside = _between(a, b)
    if inside < _TINY:
        nearest = log(low) if a > 0 else log(high)
        return nearest, nearest**2
    at_a, at_b = _density(a), _density(b)
    mean = mu + sigma * (at_a - at_b) / inside
    edge = (a * at_a if at_a else 0.0) - (b * at_b if at_b else 0.0)
    variance = sigma**2 * (1 + edge / inside - ((at_a - at_b) / inside) ** 2)
    return mean, max(variance, 0.0) + mean**2


def _loglik(low: float, high: float, mu: float, sigma: float) -> float:
    a = _scaled(low, mu, sigma)
    if low == high:
        return -0.5 * a * a - log(low * sigma * sqrt(2 * pi))
    return log(max(_between(a, _scaled(high, mu, sigma)), _TINY))


def _scaled(days: float, mu: float, sigma: float) -> float:
    if days <= 0:
        return -inf
    return inf if days == inf else (log(days) - mu) / sigma


def _between(a: float, b: float) -> float:
    """Probability between two standard normal values, exact in both tails."""
    return 0.5 * (erfc(a / sqrt(2)) - erfc(b / sqrt(2))) if a > 0 else _below(b) - _below(a)


def _below(z: float) -> float:
    return 0.5 * erfc(-z / sqrt(2))


def _density(z: float) -> float:
    return exp(-0.5 * z * z) / sqrt(2 * pi) if abs(z) < 38 else 0.0
