"""What young get of a gene: Mendel's first law between two parents and one animal.

A parent that nobody wrote down, of whom nothing but this one young is known, is no variable: it
is the state STRANGER, which gives a copy with the founders' small chance.
"""

from collections.abc import Mapping
from functools import cache

from keeper.rules.genetics.elimination import Leading, States

STRANGER = 3
STRANGER_MASK = 1 << STRANGER

_GIVES: Mapping[int, Leading | None] = {0: None, 1: (0, 0.5), 2: (0, 1.0), STRANGER: (1, 1.0)}
_KEEPS: Mapping[int, Leading | None] = {0: (0, 1.0), 1: (0, 0.5), 2: None, STRANGER: (0, 1.0)}


@cache
def states_of(mask: int) -> tuple[int, ...]:
    """
    >>> states_of(5)
    (0, 2)
    """
    return tuple(state for state in range(4) if mask >> state & 1)


def single(mask: int) -> bool:
    return mask & (mask - 1) == 0


@cache
def birth_weights(dam: int, sire: int, young: int) -> Mapping[States, Leading]:
    """Weights of (dam, sire, young) within their masks.

    >>> birth_weights(2, 2, 7)
    {(1, 1, 0): (0, 0.25), (1, 1, 1): (0, 0.5), (1, 1, 2): (0, 0.25)}
    """
    found: dict[States, Leading] = {}
    for one in states_of(dam):
        for other in states_of(sire):
            for copies in states_of(young):
                weight = _of_pair(one, other, copies)
                if weight is not None:
                    found[one, other, copies] = weight
    return found


@cache
def open_birth_weights(dam: int, sire: int, young: int) -> Mapping[States, Leading]:
    """The same over those of the three alone that have more than one state."""
    kept = [at for at, mask in enumerate((dam, sire, young)) if not single(mask)]
    return {
        tuple(states[at] for at in kept): weight
        for states, weight in birth_weights(dam, sire, young).items()
    }


@cache
def narrowed_birth(dam: int, sire: int, young: int) -> tuple[int, int, int]:
    """What each of the three may still be, given what the others may be; 0: none fits.

    >>> narrowed_birth(7, 7, 4)
    (6, 6, 4)
    """
    masks = [0, 0, 0]
    for states in birth_weights(dam, sire, young):
        for at, state in enumerate(states):
            masks[at] |= 1 << state
    return masks[0], masks[1], masks[2]


def _of_pair(dam: int, sire: int, copies: int) -> Leading | None:
    if copies == 0:
        return _times(_KEEPS[dam], _KEEPS[sire])
    if copies == 2:
        return _times(_GIVES[dam], _GIVES[sire])
    return _plus(_times(_GIVES[dam], _KEEPS[sire]), _times(_KEEPS[dam], _GIVES[sire]))


def _times(one: Leading | None, other: Leading | None) -> Leading | None:
    if one is None or other is None:
        return None
    return one[0] + other[0], one[1] * other[1]


def _plus(one: Leading | None, other: Leading | None) -> Leading | None:
    if one is None or other is None:
        return one or other
    if one[0] != other[0]:
        return min(one, other)
    return one[0], one[1] + other[1]
