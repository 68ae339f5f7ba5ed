"""Fits as plain figures and back: what lies in an array, written as a list and read again."""

from typing import Any, get_args

import numpy as np


def listed(array: Any) -> list[Any]:
    """The figures of an array, row by row."""
    figures: list[Any] = array.tolist()
    return figures


def array_of(kind: Any, figures: list[Any]) -> Any:
    """*figures* as an array of *kind*.

    >>> from numpy.typing import NDArray
    >>> array_of(NDArray[np.float64], [1, 2])
    array([1., 2.])
    """
    (scalar,) = get_args(get_args(kind)[1])
    return np.array(figures, dtype=scalar)
