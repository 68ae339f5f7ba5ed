"""Growth curves fitted to one record by least squares.

Source: D. Marquardt, SIAM J. Appl. Math. 11 (1963) 431-441; derivatives by complex step,
W. Squire & G. Trapp, SIAM Review 40 (1998) 110-112.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

from keeper.rules.growth.weighings import Floats

Model = Callable[[Any, Floats], Any]
"""Parameters and x to y; analytic, so that it also takes complex parameters."""

MOST_STEPS = 2000
STEP = 1e-30
SETTLED = 1e-15


@dataclass(frozen=True, slots=True)
class CurveFit:
    """Least-squares parameters, their standard errors, and the residual sum of squares."""

    parameters: Floats
    standard_errors: Floats
    residual_squares: float


def gompertz(parameters: Any, x: Floats) -> Any:
    """a exp(-b exp(-k x))"""
    a, b, k = parameters
    return a * np.exp(-b * np.exp(-k * x))


def logistic(parameters: Any, x: Floats) -> Any:
    """a / (1 + exp(b - k x))"""
    a, b, k = parameters
    return a / (1.0 + np.exp(b - k * x))


def richards(parameters: Any, x: Floats) -> Any:
    """a / (1 + exp(b - k x)) ** (1 / m)"""
    a, b, k, m = parameters
    return a / (1.0 + np.exp(b - k * x)) ** (1.0 / m)


def von_bertalanffy(parameters: Any, x: Floats) -> Any:
    """a (1 - exp(-k x))"""
    a, k = parameters
    return -a * np.expm1(-k * x)


def fit_curve(model: Model, start: Sequence[float], x: Floats, y: Floats) -> CurveFit:
    """Least squares from *start* by damped Gauss-Newton steps.

    Raises:
        ValueError: fewer points than parameters and one more, or no finite fit at *start*.
    """
    at = np.array(start, dtype=float)
    if len(x) != len(y) or len(y) <= len(at):
        raise ValueError(f"{len(at)} parameters need {len(at) + 1} points or more, got {len(y)}")
    square = _squares(model, at, x, y)
    if not np.isfinite(square):
        raise ValueError(f"the curve has no finite value at the start {list(start)!r}")
    damping = 1e-3
    for _ in range(MOST_STEPS):
        step = _step(model, at, x, y, damping)
        tried = _squares(model, at + step, x, y)
        if tried <= square:
            done = np.all(np.abs(step) <= SETTLED * np.abs(at + step))
            at, square, damping = at + step, tried, max(damping / 10.0, 1e-14)
            if done:
                break
        elif damping > 1e12:
            break
        else:
            damping *= 4.0
    return _result(model, at, x, y, square)


def _squares(model: Model, at: Floats, x: Floats, y: Floats) -> float:
    with np.errstate(over="ignore", invalid="ignore", divide="ignore"):
        left = y - model(at, x)
        square = float(left @ left)
    return square if np.isfinite(square) else np.inf


def _jacobian(model: Model, at: Floats, x: Floats) -> Floats:
    columns = []
    for index in range(len(at)):
        moved = at.astype(complex)
        moved[index] += 1j * STEP
        columns.append(np.imag(model(moved, x)) / STEP)
    return np.column_stack(columns)


def _step(model: Model, at: Floats, x: Floats, y: Floats, damping: float) -> Floats:
    """The damped step, solved by least squares so that no digits are lost in squaring."""
    jacobian = _jacobian(model, at, x)
    size = np.maximum(np.sqrt((jacobian**2).sum(axis=0)), 1e-300)
    stacked = np.vstack([jacobian / size, np.sqrt(damping) * np.eye(len(at))])
    left = np.concatenate([y - model(at, x), np.zeros(len(at))])
    return np.asarray(np.linalg.lstsq(stacked, left, rcond=None)[0] / size)


def _result(model: Model, at: Floats, x: Floats, y: Floats, square: float) -> CurveFit:
    jacobian = _jacobian(model, at, x)
    size = np.maximum(np.sqrt((jacobian**2).sum(axis=0)), 1e-300)
    inverse = np.linalg.pinv(jacobian / size)
    variance = square / (len(y) - len(at))
    errors = np.sqrt((inverse**2).sum(axis=1) * variance) / size
    return CurveFit(at, errors, square)
