"""Mixed models that are linear once a few shared parameters are given, by exact likelihood.

y = X(p) b + Z(p) u + noise within each animal, u normal over animals: the logistic with its
own asymptote, the Gompertz in log weight with its own asymptote and drop, a polynomial with
its own level and slope. As u enters linearly the likelihood is exactly Gaussian; b and the
noise are eliminated, and p with the spread of u is sought by quasi-Newton steps.

Source: D. Bates et al., Journal of Statistical Software 67 (2015), section 3.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np

from keeper.rules.growth.weighings import Floats

Design = Callable[[Floats, Floats], tuple[Floats, Floats]]
"""Shared parameters and one animal's x to its (n, fixed) and (n, random) columns."""

LOG_2PI = float(np.log(2.0 * np.pi))
MOST_TURNS = 300
GRADIENT_STEP = 1e-5
LONGEST_STEP = 0.5  # of a parameter, or of 1 where it is smaller


@dataclass(frozen=True, slots=True, kw_only=True)
class MixedFit:
    """The fit; *spread* is the covariance of the random effects, *noise* a deviation."""

    shared: Floats
    fixed: Floats
    spread: Floats
    noise: float
    log_likelihood: float


def fit_mixed(
    records: Sequence[tuple[Floats, Floats]],
    design: Design,
    start: Sequence[float],
    *,
    restricted: bool = False,
) -> MixedFit:
    """Fit to animals given as (x, y), by maximum likelihood or restricted likelihood.

    *start* are the shared parameters, none for a linear model.
    """
    shared = np.array(start, dtype=float)
    random = design(shared, records[0][0])[1].shape[1]
    rows, columns = np.tril_indices(random)
    root = np.where(rows == columns, 1.0, 0.0)

    def deviance(at: Floats) -> float:
        try:
            fit = _eliminated(records, design, at, len(shared), restricted)
        except np.linalg.LinAlgError:  # a step so far off that the columns no longer differ
            return float("inf")
        return -2.0 * fit.log_likelihood

    at = minimum(deviance, np.concatenate([shared, root]))
    return _eliminated(records, design, at, len(shared), restricted)


def _eliminated(
    records: Sequence[tuple[Floats, Floats]],
    design: Design,
    at: Floats,
    shared: int,
    restricted: bool,
) -> MixedFit:
    """Fixed effects and noise at given shared parameters and root of the relative spread."""
    root = _root(at[shared:])
    normal, log_det, count = _normal_equations(records, design, at[:shared], root)
    inner, right, square = normal[:-1, :-1], normal[:-1, -1], normal[-1, -1]
    fixed = np.asarray(np.linalg.solve(inner, right))
    free = count - (len(fixed) if restricted else 0)
    variance = float(square - right @ fixed) / free
    likely = -0.5 * (free * (LOG_2PI + np.log(variance) + 1.0) + log_det)
    if restricted:
        likely -= 0.5 * float(np.linalg.slogdet(inner)[1])
    return MixedFit(
        shared=at[:shared],
        fixed=fixed,
        spread=variance * root @ root.T,
        noise=float(np.sqrt(variance)),
        log_likelihood=float(likely),
    )


def _root(entries: Floats) -> Floats:
    size = int((np.sqrt(8 * len(entries) + 1) - 1) / 2)
    root = np.zeros((size, size))
    root[np.tril_indices(size)] = entries
    return root


def _normal_equations(
    records: Sequence[tuple[Floats, Floats]], design: Design, shared: Floats, root: Floats
) -> tuple[Floats, float, int]:
    """Sums of [X y]' V^-1 [X y] and of log det V, where V is in units of the noise."""
    total: Floats | None = None
    log_det, count = 0.0, 0
    for x, y in records:
        fixed, random = design(shared, x)
        both = np.column_stack([fixed, y])
        reach = random @ root
        inner = np.eye(root.shape[0]) + reach.T @ reach
        half = np.linalg.solve(np.linalg.cholesky(inner), reach.T @ both)
        part = both.T @ both - half.T @ half
        total = part if total is None else total + part
        log_det += float(np.linalg.slogdet(inner)[1])
        count += len(y)
    if total is None:
        raise ValueError("a mixed model needs at least one animal")
    return total, log_det, count


def minimum(function: Callable[[Floats], float], start: Floats) -> Floats:
    """Where a smooth function is least, by BFGS with central differences.

    Source: J. Nocedal & S. Wright, Numerical Optimization (2006), algorithm 6.1.
    """
    at, value = start.copy(), function(start)
    gradient = _gradient(function, at)
    inverse = np.eye(len(at))
    for _ in range(MOST_TURNS):
        moved = _line_search(function, at, value, gradient, -inverse @ gradient)
        if moved is None:
            break
        new, new_value = moved
        new_gradient = _gradient(function, new)
        inverse = _updated(inverse, new - at, new_gradient - gradient)
        small = abs(value - new_value) < 1e-12 * (1.0 + abs(value))
        at, value, gradient = new, new_value, new_gradient
        if small and float(np.abs(gradient).max()) < 1e-4:
            break
    return at


def _gradient(function: Callable[[Floats], float], at: Floats) -> Floats:
    gradient = np.empty_like(at)
    for index in range(len(at)):
        step = np.zeros_like(at)
        step[index] = GRADIENT_STEP * max(1.0, abs(float(at[index])))
        gradient[index] = (function(at + step) - function(at - step)) / (2.0 * step[index])
    return gradient


def _line_search(
    function: Callable[[Floats], float],
    at: Floats,
    value: float,
    gradient: Floats,
    direction: Floats,
) -> tuple[Floats, float] | None:
    """Halve the step until it brings enough (Armijo); None if none does."""
    slope = float(gradient @ direction)
    for direction_now, slope_now in ((direction, slope), (-gradient, -float(gradient @ gradient))):
        longest = float(np.max(np.abs(direction_now) / np.maximum(1.0, np.abs(at))))
        size = min(1.0, LONGEST_STEP / max(longest, 1e-300))
        while slope_now < 0 and size > 1e-14:
            tried = at + size * direction_now
            tried_value = function(tried)
            if np.isfinite(tried_value) and tried_value <= value + 1e-4 * size * slope_now:
                return tried, tried_value
            size /= 2.0
    return None


def _updated(inverse: Floats, step: Floats, change: Floats) -> Floats:
    along = float(step @ change)
    if along <= 1e-12:
        return inverse
    left = np.eye(len(step)) - np.outer(step, change) / along
    return np.asarray(left @ inverse @ left.T + np.outer(step, step) / along)
