"""Out of many words that cannot all be true, a few that cannot, none of which is idle."""

from collections.abc import Callable, Sequence
from typing import TypeVar

Item = TypeVar("Item")


def least_conflict(
    items: Sequence[Item], impossible: Callable[[Sequence[Item]], bool]
) -> tuple[Item, ...]:
    """A smallest part of *items* that is impossible by itself; the whole must be.

    No item of it can be left out. About k·log(n/k) questions for k of n (divide and conquer,
    as in Junker 2004, "QuickXplain", AAAI; from memory).

    >>> least_conflict([1, 2, 3, 4], lambda part: {2, 4} <= set(part))
    (2, 4)
    """
    return tuple(_least((), False, tuple(items), impossible))


def _least(
    held: tuple[Item, ...],
    grew: bool,
    items: tuple[Item, ...],
    impossible: Callable[[Sequence[Item]], bool],
) -> tuple[Item, ...]:
    if grew and impossible(held):
        return ()
    if len(items) == 1:
        return items
    half = len(items) // 2
    first, second = items[:half], items[half:]
    of_second = _least(held + first, bool(first), second, impossible)
    of_first = _least(held + of_second, bool(of_second), first, impossible)
    return of_first + of_second
