"""How unlikely a group's refusals are in a quiet room, alone and together with a cool reading.

Refusals alone: the exact Poisson-binomial tail of the animals' own rates. With the heat of the
row: the chances of the refusals and of each night's reading are multiplied, and the chance of
so small a product of independent chances is Fisher's (R. A. Fisher, Statistical Methods for
Research Workers, 4th ed. 1932, section 21.1); since refusals are counts it errs to the careful
side. Both are held to a share of what a quiet room may err in a night, whatever the groups
share with each other.
"""

from collections.abc import Iterable, Mapping, Sequence
from datetime import date
from math import ceil, log, sqrt
from typing import NamedTuple

from keeper.rules.cooler_rows import Cooler
from keeper.rules.refused_groups import Group

FALSE_A_NIGHT = 0.008
"""Most false causes a feed night in a quiet room of any size; the promise is one in a hundred."""

SHARE_WITH_HEAT = 3 / 8
"""Of that for rows whose heat agrees, where any is known; the rest for refusals alone."""

SUSPECT_CHANCE = 0.05
"""For a group whose heat was read out of limits: two unlikely things that agree."""

COOLER_CHANCE = 0.1
"""Refusals less unlikely than this are none for the heat to explain."""

LEAST_REFUSERS = 3
"""Fewer are individuals, not a group."""

Coolers = Mapping[str, Mapping[date, Cooler]]
"""By row or rack, by night."""


class GroupChances(NamedTuple):
    """A group with the chances of at least 0, 1, 2 ... refusals, and its own number.

    cooler: the readings of its own nights that are cooler than they ever were, or not.
    """

    group: Group
    tails: tuple[float, ...]
    refused: int
    cooler: tuple[Cooler, ...]

    @property
    def chance(self) -> float:
        return self.tails[min(self.refused, len(self.tails) - 1)]

    @property
    def refusers(self) -> int:
        return len({offer.animal for offer in self.group.offers if offer.refused})

    @property
    def is_cooler(self) -> bool:
        """Whether the readings of its nights together are cooler than chance makes them."""
        chances = [cooler.chance for cooler in self.cooler]
        return bool(chances) and product_chance(chances) <= SUSPECT_CHANCE

    @property
    def with_heat(self) -> float:
        """Chance of refusals and readings together in a quiet room."""
        return product_chance([self.chance, *(cooler.chance for cooler in self.cooler)])


def chances_of(group: Group, coolers: Coolers) -> GroupChances:
    """What a quiet room would do in that group, held against what it did."""
    refused = sum(offer.refused for offer in group.offers)
    known = coolers.get(group.name, {}) if group.kind in ("row", "rack") else {}
    cooler = tuple(known[night] for night in group.nights if night in known)
    return GroupChances(
        group, refusal_tails(offer.own_rate for offer in group.offers), refused, cooler
    )


def raised(tests: Sequence[GroupChances], suspects: Iterable[str]) -> list[GroupChances]:
    """The groups that refused together. suspects: rows and racks read out of limits."""
    suspect = frozenset(suspects)
    joint = sum(bool(test.cooler) for test in tests)
    kept = FALSE_A_NIGHT * SHARE_WITH_HEAT if joint else 0.0
    level = _level(tests, FALSE_A_NIGHT - kept)
    return [
        test
        for test in tests
        if test.refusers >= LEAST_REFUSERS
        and (
            test.chance <= level
            or (_is_suspect(test, suspect) and test.chance <= SUSPECT_CHANCE)
            or (joint and _agrees(test, kept / joint))
        )
    ]


def _is_suspect(test: GroupChances, suspects: frozenset[str]) -> bool:
    return test.group.kind in ("row", "rack") and test.group.name in suspects


def _agrees(test: GroupChances, level: float) -> bool:
    return bool(test.cooler) and test.chance <= COOLER_CHANCE and test.with_heat <= level


def product_chance(chances: Sequence[float]) -> float:
    """Chance that as many independent chances have so small a product, or a smaller one.

    >>> round(product_chance([0.05]), 4), round(product_chance([0.05, 0.05]), 4)
    (0.05, 0.0175)
    """
    product = 1.0
    for chance in chances:
        product *= chance
    if product <= 0:
        return 0.0
    total = term = 1.0
    for number in range(1, len(chances)):
        term *= -log(product) / number
        total += term
    return min(1.0, product * total)


def refusal_tails(rates: Iterable[float]) -> tuple[float, ...]:
    """Chance of at least 0, 1, 2 ... refusals when each animal refuses at its own rate; exact.

    The list ends where it is past eight standard deviations and thus nought.

    >>> [round(chance, 4) for chance in refusal_tails([0.5, 0.5])]
    [1.0, 0.75, 0.25]
    """
    each = tuple(rates)
    spread = sqrt(sum(rate * (1 - rate) for rate in each))
    most = min(len(each), ceil(sum(each) + 8 * spread) + 8)
    exactly = [1.0]  # the last place holds *most* or more
    for rate in each:
        not_so, pairs = 1 - rate, zip([*exactly, 0.0], [0.0, *exactly], strict=True)
        exactly = [same * not_so + fewer * rate for same, fewer in pairs]
        if len(exactly) > most + 1:
            last = exactly.pop()
            exactly[-1] += last
    tails, above = [], 0.0
    for share in reversed(exactly):
        above += share
        tails.append(min(above, 1.0))
    return tuple(reversed(tails))


def _level(tests: Sequence[GroupChances], most: float) -> float:
    """The largest chance at which all groups together stay within *most* false causes.

    A group can only show certain chances, one for each number of refusals; raised at a level
    it errs with the largest of its own below that level. Those are summed over all groups,
    which holds whatever the groups share with each other.
    """
    steps = sorted(
        (tail, number)
        for number, test in enumerate(tests)
        for tail in test.tails[LEAST_REFUSERS:]
        if tail <= most
    )
    erring = [0.0] * len(tests)
    total = level = 0.0
    for tail, number in steps:
        total += tail - erring[number]
        erring[number] = tail
        if total > most:
            break
        level = tail
    return level
