"""In which order variables are summed out, so that no table on the way grows large.

Finding the best order is hard; three rules of thumb are tried, the quick one first.
"""

from collections.abc import Callable, Mapping, Sequence
from heapq import heapify, heappop, heappush
from math import prod

Scope = tuple[int, ...]
_Near = dict[int, set[int]]
_Cost = Callable[[_Near, Mapping[int, int], int], tuple[int, int]]


SMALL = 100_000
"""Up to so many states the quick rule's order is not worth bettering."""


class TooWide(Exception):
    """No order was found that keeps every table within what is allowed."""


def summing_order(scopes: Sequence[Scope], sizes: Mapping[int, int], most: int) -> list[int]:
    """Every variable once. Raises TooWide where the tables would have over *most* states in all."""
    states, order = _greedy(scopes, sizes, _by_table)
    if states > SMALL:
        others = (_greedy(scopes, sizes, cost) for cost in (_by_links, _by_weighed_links))
        states, order = min((states, order), *others)
    if states > most:
        raise TooWide
    return order


def _greedy(
    scopes: Sequence[Scope], sizes: Mapping[int, int], cost: _Cost
) -> tuple[int, list[int]]:
    """The cheapest next, again and again. Returns the states of all tables, and the order."""
    near = _beside_each_other(scopes)
    left = [(*cost(near, sizes, name), name) for name in near]
    heapify(left)
    order: list[int] = []
    states = 0
    while near:
        *claimed, name = heappop(left)
        if name not in near:
            continue
        now = cost(near, sizes, name)
        if tuple(claimed) != now:
            heappush(left, (*now, name))
            continue
        states += _table(near, sizes, name)
        for each in _taken_out(near, name):
            heappush(left, (*cost(near, sizes, each), each))
        order.append(name)
    return states, order


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
    there = sum(len(near[each] & others) for each in others)
    return len(others) * (len(others) - 1) - there, _table(near, sizes, name)


def _by_weighed_links(near: _Near, sizes: Mapping[int, int], name: int) -> tuple[int, int]:
    """The same, where a link between many states counts for more."""
    others = near[name]
    whole = sum(sizes[each] for each in others)
    missing = sum(
        sizes[each] * (whole - sizes[each] - sum(sizes[other] for other in near[each] & others))
        for each in others
    )
    return missing, _table(near, sizes, name)
