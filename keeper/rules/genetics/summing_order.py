"""In which order variables are summed out, so that no table on the way grows large.

Finding the best order is hard; two rules of thumb are tried, the quick one first.
"""

from collections.abc import Callable, Mapping, Sequence
from heapq import heapify, heappop, heappush
from itertools import combinations
from math import prod

Scope = tuple[int, ...]
_Near = dict[int, set[int]]
_Cost = Callable[[_Near, Mapping[int, int], int], tuple[int, int]]


class TooWide(Exception):
    """No order was found that keeps every table within what is allowed."""


def summing_order(scopes: Sequence[Scope], sizes: Mapping[int, int], most: int) -> list[int]:
    """Every variable once. Raises TooWide where a table of more than *most* states came up."""
    for cost in (_by_table, _by_links):
        order = _greedy(scopes, sizes, most, cost)
        if order is not None:
            return order
    raise TooWide


def _greedy(
    scopes: Sequence[Scope], sizes: Mapping[int, int], most: int, cost: _Cost
) -> list[int] | None:
    near = _beside_each_other(scopes)
    left = [(*cost(near, sizes, name), name) for name in near]
    heapify(left)
    order: list[int] = []
    while near:
        *claimed, name = heappop(left)
        if name not in near:
            continue
        now = cost(near, sizes, name)
        if tuple(claimed) != now:
            heappush(left, (*now, name))
            continue
        if _table(near, sizes, name) > most:
            return None
        for each in _taken_out(near, name):
            heappush(left, (*cost(near, sizes, each), each))
        order.append(name)
    return order


def _beside_each_other(scopes: Sequence[Scope]) -> _Near:
    near: _Near = {}
    for scope in scopes:
        for name in scope:
            near.setdefault(name, set()).update(scope)
    for name, others in near.items():
        others.discard(name)
    return near


def _taken_out(near: _Near, name: int) -> set[int]:
    """The neighbours of *name*, which are now beside each other."""
    others = near.pop(name)
    for each in others:
        near[each] |= others
        near[each] -= {each, name}
    return others


def _table(near: _Near, sizes: Mapping[int, int], name: int) -> int:
    return sizes[name] * prod(sizes[each] for each in near[name])


def _by_table(near: _Near, sizes: Mapping[int, int], name: int) -> tuple[int, int]:
    """The smallest table first."""
    return _table(near, sizes, name), 0


def _by_links(near: _Near, sizes: Mapping[int, int], name: int) -> tuple[int, int]:
    """The fewest new links first."""
    others = near[name]
    missing = sum(one not in near[other] for one, other in combinations(others, 2))
    return missing, _table(near, sizes, name)
