"""How closely an animal, or young that are only thought of, would be bred.

F is the chance that both copies of any gene descend from one copy in a known ancestor (Wright
1922, Am Nat 56:330-338), reckoned from kinship: that of two animals is the mean of the one with
the other's parents, that of an animal with itself (1 + F)/2. Parents that nobody wrote down
count as unrelated, so F is a least figure: `known_depth` says how far back it looked. Where a
sire is in doubt, it is the mean over his candidates.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from enum import StrEnum

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.profile import practice
from keeper.rules.genetics.pedigree import Kin, Lineage, lineage_of

LOOK_FROM, REASON_FROM = practice(0.125), practice(0.25)

_Pair = tuple[int, int]


class Closeness(StrEnum):
    """What breeders do about an F."""

    OPEN = "open"
    LOOK = "look"  # from half-sibs on: look at the line first
    REASON = "reason"  # from full sibs on: only with a reason that is written down


def closeness(f: float) -> Closeness:
    """
    >>> closeness(0.125)
    <Closeness.LOOK: 'look'>
    """
    if f >= REASON_FROM.value:
        return Closeness.REASON
    return Closeness.LOOK if f >= LOOK_FROM.value else Closeness.OPEN


@dataclass(frozen=True, slots=True, kw_only=True)
class KnownDepth:
    """Generations of ancestors: so many *full* ones, of which all are known, and the *deepest*."""

    full: int
    deepest: int


class Inbreeding:
    """Kinship over one pedigree; what was reckoned for one question is kept for the next."""

    def __init__(self, lineage: Lineage) -> None:
        self._lineage = lineage
        self._known: dict[_Pair, float] = {}
        self._depths = _depths(lineage)

    @classmethod
    def of(cls, kin: Iterable[Kin]) -> "Inbreeding":
        """Raises OwnAncestor, or ValueError where an animal is given twice."""
        return cls(lineage_of(kin))

    def f(self, animal: AnimalId) -> float:
        """0 to 1; 0 too where a parent is not known."""
        at = self._lineage.place.get(animal)
        return 0.0 if at is None else 2 * self._kinship(at, at) - 1

    def f_of_young(self, dam: AnimalId, sire: AnimalId) -> float:
        """F of young that this pairing would give."""
        return self.kinship(dam, sire)

    def kinship(self, one: AnimalId, other: AnimalId) -> float:
        """The chance that a copy of either, drawn at random, descends from the same one."""
        place = self._lineage.place
        if one not in place or other not in place:
            return 0.5 if one == other else 0.0
        return self._kinship(place[one], place[other])

    def known_depth(self, animal: AnimalId) -> KnownDepth:
        at = self._lineage.place.get(animal)
        return KnownDepth(full=0, deepest=0) if at is None else self._depths[at]

    def shared_ancestors(self, one: AnimalId, other: AnimalId) -> tuple[AnimalId, ...]:
        """The nearest that both descend from, or that one is of the other; by key."""
        place = self._lineage.place
        if one not in place or other not in place:
            return ()
        of_one, of_other = (self._lineage.with_ancestors([place[each]]) for each in (one, other))
        both = of_one & of_other
        behind = self._lineage.with_ancestors(
            parent for at in both for parent in self._lineage.parents(at)
        )
        names = (self._lineage.animals[at] for at in both - behind)
        return tuple(sorted(name for name in names if name is not None))

    def _kinship(self, one: int, other: int) -> float:
        """By a stack of pairs that wait for others, for a pedigree may be deep."""
        asked = _pair(one, other)
        waiting = [] if asked in self._known else [asked]
        while waiting:
            pair = waiting[-1]
            base, terms = self._terms(pair)
            unknown = [each for each, _ in terms if each not in self._known]
            if unknown:
                waiting += unknown
                continue
            self._known[pair] = base + sum(share * self._known[each] for each, share in terms)
            waiting.pop()
        return self._known[asked]

    def _terms(self, pair: _Pair) -> tuple[float, list[tuple[_Pair, float]]]:
        """What kinship *pair* has by itself, and the pairs that add to it, with their shares."""
        older, younger = pair
        males = self._lineage.doubts.get(younger)
        if males is not None:
            same = older == younger
            return 0.0, [(_pair(male if same else older, male), share) for male, share in males]
        parents = self._lineage.parents(younger)
        if older != younger:
            return 0.0, [(_pair(older, parent), 0.5) for parent in parents]
        return 0.5, [(_pair(*parents), 0.5)] if len(parents) == 2 else []


def _pair(one: int, other: int) -> _Pair:
    return (one, other) if one <= other else (other, one)


def _depths(lineage: Lineage) -> list[KnownDepth]:
    found: list[KnownDepth] = []
    for at in range(len(lineage.animals)):
        if at in lineage.doubts:
            found.append(_over([found[male] for male, _ in lineage.doubts[at]]))
            continue
        parents = [each for each in (lineage.dams[at], lineage.sires[at]) if _known(lineage, each)]
        each = _over([found[parent] for parent in parents if parent is not None])
        full = each.full + 1 if len(parents) == 2 else 0
        found.append(KnownDepth(full=full, deepest=each.deepest + 1 if parents else 0))
    return found


def _known(lineage: Lineage, at: int | None) -> bool:
    return at is not None and (lineage.animals[at] is not None or at in lineage.doubts)


def _over(depths: Sequence[KnownDepth]) -> KnownDepth:
    return KnownDepth(
        full=min((each.full for each in depths), default=0),
        deepest=max((each.deepest for each in depths), default=0),
    )
