"""Exact odds over many things that hang together: one after another is summed out, then told.

Every weight is a leading term: (order, share) stands for share · qᵒʳᵈᵉʳ where q is a chance so
small that only the lowest order counts. A sum keeps the terms of the lowest order, a product
adds orders; so the answers are the limits for q to 0, not figures with a small q in them.

Going forward, each variable is summed out of the factors that name it, and what it is given
those that are left is kept. Going back, each gets its odds from those. (Variable elimination
and the tree of its cliques: Lauritzen and Spiegelhalter 1988, J R Stat Soc B 50:157-224, from
memory; the proof here is the comparison with plain enumeration in the tests.)
"""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from operator import itemgetter

from keeper.rules.genetics.summing_order import Scope, summing_order

Leading = tuple[int, float]
States = tuple[int, ...]

CERTAIN: Leading = (0, 1.0)

_ALONE: Mapping[States, float] = {(): 1.0}

TINY = 1e-60
"""A message whose largest share is under this is drawn up, so that shares never fade to 0."""


class Impossible(Exception):
    """The factors leave no state at all."""


@dataclass(frozen=True, slots=True)
class Factor:
    """Weights of the states of a few variables together; a state that is missing cannot be."""

    scope: Scope
    weights: Mapping[States, Leading]


@dataclass(slots=True)
class _Group:
    """States of a variable of the lowest order, with their shares of *whole*."""

    order: int
    whole: float
    parts: list[tuple[int, float]]


@dataclass(frozen=True, slots=True)
class _Summed:
    """What a variable is, by the states of those in *given*."""

    given: Scope
    groups: Mapping[States, _Group]


def posteriors(factors: Sequence[Factor], most: int) -> dict[int, dict[int, float]]:
    """Odds of every state of every variable; one that cannot be is missing.

    most: how many states all tables together may have. Raises Impossible, or TooWide where
    they have more.
    """
    order = summing_order([each.scope for each in factors], _sizes(factors), most)
    return _told(order, _summed_out(factors, order))


def joined(one: Factor, other: Factor) -> Factor:
    """The product of two factors, over the variables of both."""
    shared = [name for name in other.scope if name in one.scope]
    rest = [name for name in other.scope if name not in one.scope]
    its_shared, its_rest = _picked(other.scope, shared), _picked(other.scope, rest)
    matching: dict[States, list[tuple[States, int, float]]] = {}
    for states, (order, share) in other.weights.items():
        matching.setdefault(its_shared(states), []).append((its_rest(states), order, share))
    of_one = _picked(one.scope, shared)
    weights = {
        states + more: (order + its_order, share * its_share)
        for states, (order, share) in one.weights.items()
        for more, its_order, its_share in matching.get(of_one(states), ())
    }
    return Factor(one.scope + tuple(rest), weights)


def _picked(scope: Scope, names: Sequence[int]) -> Callable[[States], States]:
    """Takes the states of *names* out of those of *scope*."""
    places = [scope.index(name) for name in names]
    first = places[0] if places else 0
    if places == list(range(first, first + len(places))):
        return itemgetter(slice(first, first + len(places)))
    return itemgetter(*places)


def _sizes(factors: Sequence[Factor]) -> dict[int, int]:
    seen: dict[int, set[int]] = {}
    for each in factors:
        for at, name in enumerate(each.scope):
            seen.setdefault(name, set()).update(states[at] for states in each.weights)
    return {name: max(1, len(states)) for name, states in seen.items()}


def _summed_out(factors: Sequence[Factor], order: Sequence[int]) -> dict[int, _Summed]:
    turn = {name: at for at, name in enumerate(order)}
    waiting: dict[int, list[Factor]] = {name: [] for name in order}
    for each in factors:
        waiting[min(each.scope, key=turn.__getitem__)].append(each)
    found = {}
    for name in order:
        message, found[name] = _sum_out(_product(waiting.pop(name)), name)
        if message.scope:
            waiting[min(message.scope, key=turn.__getitem__)].append(message)
    return found


def _product(factors: Sequence[Factor]) -> Factor:
    """Small ones go into the smallest that holds them, so that large tables are walked seldom."""
    left = sorted(factors, key=lambda each: len(each.scope))
    while len(left) > 1:
        small = left.pop(0)
        names = set(small.scope)
        into = next((at for at, each in enumerate(left) if names.issubset(each.scope)), -1)
        left[into] = joined(left[into], small)
        left.sort(key=lambda each: len(each.scope))
    return left[0]


def _sum_out(whole: Factor, name: int) -> tuple[Factor, _Summed]:
    given = tuple(each for each in whole.scope if each != name)
    at, of_given = whole.scope.index(name), _picked(whole.scope, given)
    groups: dict[States, _Group] = {}
    for states, (order, share) in whole.weights.items():
        key = of_given(states)
        group = groups.get(key)
        if group is None or order < group.order:
            groups[key] = _Group(order, share, [(states[at], share)])
        elif order == group.order:
            group.whole += share
            group.parts.append((states[at], share))
    message = {key: (group.order, group.whole) for key, group in groups.items() if group.whole}
    if not message:
        raise Impossible
    return Factor(given, _drawn_up(message)), _Summed(given, groups)


def _drawn_up(sums: dict[States, Leading]) -> dict[States, Leading]:
    most = max(share for _, share in sums.values())
    if most > TINY:
        return sums
    return {states: (order, share / most) for states, (order, share) in sums.items()}


def _told(order: Sequence[int], summed: dict[int, _Summed]) -> dict[int, dict[int, float]]:
    """Empties *summed* on the way, for it may be large."""
    turn = {name: at for at, name in enumerate(order)}
    joint: dict[int, tuple[Scope, dict[States, float]]] = {}
    narrowed: dict[tuple[int, Scope], dict[States, float]] = {}
    found: dict[int, dict[int, float]] = {}
    for name in reversed(order):
        own = summed.pop(name)
        parent = min(own.given, key=turn.__getitem__, default=name)
        if own.given and (parent, own.given) not in narrowed:
            scope, table = joint[parent]
            narrowed[parent, own.given] = _narrowed(table, _picked(scope, own.given))
        before = narrowed[parent, own.given] if own.given else _ALONE
        table, found[name] = _joint(before, own)
        joint[name] = ((*own.given, name), table)
    return found


def _joint(
    before: Mapping[States, float], summed: _Summed
) -> tuple[dict[States, float], dict[int, float]]:
    joint: dict[States, float] = {}
    alone: dict[int, float] = {}
    for states, odds in before.items():
        group = summed.groups[states]
        each = odds / group.whole
        for state, part in group.parts:
            joint[(*states, state)] = part * each
            alone[state] = alone.get(state, 0.0) + part * each
    whole = sum(alone.values())
    return joint, {state: share / whole for state, share in sorted(alone.items())}


def _narrowed(
    joint: Mapping[States, float], picked: Callable[[States], States]
) -> dict[States, float]:
    found: dict[States, float] = {}
    for states, share in joint.items():
        key = picked(states)
        found[key] = found.get(key, 0.0) + share
    return found
