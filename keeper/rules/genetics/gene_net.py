"""One gene over a lineage: who hangs together with whom, and how many copies each may have.

A link ties a young to its parents, or a sire without a name to his candidates. Links are of one
piece where they share an animal whose copies are not plain from its own word; pieces do not
speak to each other, so that a mistake in one leaves the others as they are.
"""

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import reduce
from itertools import product
from operator import or_

from keeper.rules.genetics.elimination import CERTAIN, Factor, Leading
from keeper.rules.genetics.pedigree import Lineage
from keeper.rules.genetics.transmission import (
    STRANGER_MASK,
    narrowed_birth,
    open_birth_weights,
    single,
    states_of,
)
from keeper.rules.genetics.witness import ANY, NONE, TWO, UNTOLD_FOUNDER, GeneAsked

Masks = list[int]


@dataclass(frozen=True, slots=True)
class Birth:
    """Places of a young and its parents. stranger: what a parent that is not written may be."""

    dam: int | None
    sire: int | None
    young: int
    stranger: int

    @property
    def tells(self) -> int:
        return self.young

    @property
    def places(self) -> tuple[int, ...]:
        return tuple(at for at in (self.dam, self.sire, self.young) if at is not None)

    def of_three(self, masks: Sequence[int]) -> tuple[int, int, int]:
        dam = self.stranger if self.dam is None else masks[self.dam]
        sire = self.stranger if self.sire is None else masks[self.sire]
        return dam, sire, masks[self.young]

    def narrowed(self, masks: Sequence[int]) -> list[tuple[int, int]]:
        """What each place may still be."""
        trio = zip(
            (self.dam, self.sire, self.young), narrowed_birth(*self.of_three(masks)), strict=True
        )
        return [(at, mask) for at, mask in trio if at is not None]

    def factors(self, masks: Sequence[int], base: int) -> list[Factor]:
        scope = tuple(base + at for at in self.places if not single(masks[at]))
        return [Factor(scope, open_birth_weights(*self.of_three(masks)))] if scope else []


@dataclass(frozen=True, slots=True)
class Choice:
    """A sire without a name is one of his candidates. number: the variable of which he is."""

    sire: int
    males: tuple[int, ...]
    number: int

    @property
    def tells(self) -> int:
        return self.sire

    @property
    def places(self) -> tuple[int, ...]:
        return (self.sire, *self.males)

    def fitting(self, masks: Sequence[int]) -> tuple[int, ...]:
        """Which candidates, counted from 0, may be he."""
        return tuple(nth for nth, male in enumerate(self.males) if masks[male] & masks[self.sire])

    def narrowed(self, masks: Sequence[int]) -> list[tuple[int, int]]:
        males = [self.males[nth] for nth in self.fitting(masks)]
        own = masks[self.sire] & reduce(or_, (masks[male] for male in males), 0)
        alone = [(male, masks[male] & own) for male in males] if len(males) == 1 else []
        return [(self.sire, own), *alone]

    def factors(self, masks: Sequence[int], base: int) -> list[Factor]:
        fitting = self.fitting(masks)
        found = [Factor((self.number,), {(nth,): CERTAIN for nth in fitting})]
        return found + [
            self._is_he(nth, fitting, masks, base)
            for nth in fitting
            if not (single(masks[self.sire]) and single(masks[self.males[nth]]))
        ]

    def _is_he(self, nth: int, fitting: Sequence[int], masks: Sequence[int], base: int) -> Factor:
        """If candidate *nth* is the one, the two have the same copies."""
        both = (self.sire, self.males[nth])
        kept = [at for at, place in enumerate(both) if not single(masks[place])]
        pairs = list(product(*(states_of(masks[place]) for place in both)))
        weights = {
            (which, *(pair[at] for at in kept)): CERTAIN
            for which in fitting
            for pair in pairs
            if which != nth or pair[0] == pair[1]
        }
        return Factor((self.number, *(base + both[at] for at in kept)), weights)


Link = Birth | Choice


@dataclass(frozen=True, slots=True)
class GeneNet:
    """Links of one gene. pieces: a number for each link, the same where they hang together.

    founders: what is reckoned of those without parents, by place. own_word: founders by word.
    """

    links: tuple[Link, ...]
    pieces: tuple[int, ...]
    masks: Masks
    founders: Mapping[int, Mapping[int, Leading]]
    own_word: frozenset[int]


def gene_net(
    lineage: Lineage,
    asked: GeneAsked,
    within: Collection[int] | None = None,
    *,
    all_open: bool = False,
) -> GeneNet:
    """within: the places that count, with their ancestors; all where none are given. all_open:
    leave open too what is clear only because nothing is told of it.
    """
    places = range(len(lineage.animals)) if within is None else sorted(within)
    masks = [ANY if name is None else asked.possible(name) for name in lineage.animals]
    priors = _own_priors(lineage, asked, places, masks)
    parents = {at: _parents(lineage, at, priors) for at in places}
    seeds = places if all_open else (at for at in places if not masks[at] & NONE)
    witnessed = _with_ancestors(lineage, parents, seeds)
    _clear_what_nothing_speaks_for(lineage, parents, masks, witnessed | priors.keys())
    links = [_link(lineage, at, parents[at], at in witnessed) for at in places]
    founders = {
        at: priors.get(at, UNTOLD_FOUNDER)
        for at in places
        if parents[at] == (None, None) and at not in lineage.doubts and masks[at] != NONE
    }
    for at, prior in founders.items():
        masks[at] &= sum(1 << state for state in prior)
    tied = tuple(link for link in links if link is not None)
    return GeneNet(tied, _pieces(tied, masks), masks, founders, frozenset(priors))


def _own_priors(
    lineage: Lineage, asked: GeneAsked, places: Iterable[int], masks: Masks
) -> dict[int, Mapping[int, Leading]]:
    found = {}
    for at in places:
        name = lineage.animals[at]
        prior = None if name is None else asked.own_prior(name)
        if prior is not None and _stands_in(lineage, at, masks, prior):
            found[at] = prior
    return found


def _stands_in(lineage: Lineage, at: int, masks: Masks, prior: Mapping[int, Leading]) -> bool:
    """Whether a word takes the place of the parents: not where both are written, nor where the
    one that is gives a copy for certain; and only founders' looks do."""
    written = [each for each in (lineage.dams[at], lineage.sires[at]) if _written(lineage, each)]
    if 0 not in prior:
        return not written
    return len(written) < 2 and not any(masks[each] == TWO for each in written if each is not None)


def _written(lineage: Lineage, at: int | None) -> bool:
    return at is not None and (lineage.animals[at] is not None or at in lineage.doubts)


def _parents(
    lineage: Lineage, at: int, priors: Mapping[int, object]
) -> tuple[int | None, int | None]:
    return (None, None) if at in priors else (lineage.dams[at], lineage.sires[at])


def _with_ancestors(
    lineage: Lineage,
    parents: Mapping[int, tuple[int | None, int | None]],
    seeds: Iterable[int],
) -> set[int]:
    found: set[int] = set()
    left = list(seeds)
    while left:
        at = left.pop()
        if at not in found:
            found.add(at)
            left += [each for each in parents[at] if each is not None]
            left += [male for male, _ in lineage.doubts.get(at, ())]
    return found


def _clear_what_nothing_speaks_for(
    lineage: Lineage,
    parents: Mapping[int, tuple[int | None, int | None]],
    masks: Masks,
    carrying: Collection[int],
) -> None:
    """Of a copy in an animal that no carrier comes of, and that comes of none, the chance is
    smaller by one order than of none: taking it away leaves every other word as true."""
    maybe = set(carrying)
    for at in parents:
        males = [male for male, _ in lineage.doubts.get(at, ())]
        if at in maybe or any(each in maybe for each in (*parents[at], *males)):
            maybe.add(at)
        else:
            masks[at] = NONE


def _link(
    lineage: Lineage, at: int, parents: tuple[int | None, int | None], witnessed: bool
) -> Link | None:
    if at in lineage.doubts:
        males = tuple(male for male, _ in lineage.doubts[at])
        return Choice(at, males, -1 - at)
    if parents == (None, None):
        return None
    return Birth(*parents, at, STRANGER_MASK if witnessed else NONE)


def _pieces(links: Sequence[Link], masks: Sequence[int]) -> tuple[int, ...]:
    """A number for each link; those that share an open animal have the same."""
    root = list(range(len(links)))

    def top(nth: int) -> int:
        while root[nth] != nth:
            root[nth] = root[root[nth]]
            nth = root[nth]
        return nth

    first: dict[int, int] = {}
    for nth, link in enumerate(links):
        for at in link.places:
            if not single(masks[at]):
                root[top(nth)] = top(first.setdefault(at, nth))
    return tuple(top(nth) for nth in range(len(links)))
