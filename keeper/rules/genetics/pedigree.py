"""Who came of whom: parents as the keeper wrote them, put in order of birth.

A clutch whose sire is in doubt gets a sire of its own, an animal nobody knows by name that is
one of the candidates: all young of the clutch share it. So do young of one clutch whose dam or
sire nobody wrote down.
"""

from collections.abc import Collection, Hashable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from math import isfinite

from keeper.husbandry.animal import AnimalId

BroodKey = int | str


@dataclass(frozen=True, slots=True, kw_only=True)
class Kin:
    """The parents of one animal.

    sires: males with weights that count beside one another; none: unknown, one: sure.
    brood: the same for all young of one clutch, which share their sire though he is in doubt.
    """

    animal: AnimalId
    dam: AnimalId | None = None
    sires: tuple[tuple[AnimalId, float], ...] = ()
    brood: BroodKey | None = None

    def __post_init__(self) -> None:
        if len({male for male, _ in self.sires}) < len(self.sires):
            raise ValueError(f"A sire of animal {self.animal} is given twice: {self.sires}")
        for male, weight in self.sires:
            if not (isfinite(weight) and weight > 0):
                raise ValueError(f"Sire {male} of animal {self.animal} weighs {weight}, not over 0")
            if male == self.dam:
                raise ValueError(f"Animal {male} is given as dam and as sire of {self.animal}")


class OwnAncestor(ValueError):
    """An animal would be born of itself. animals: the round of it, each the parent of the next."""

    def __init__(self, animals: tuple[AnimalId, ...]) -> None:
        chain = " of ".join(str(animal) for animal in (*animals, animals[0]))
        super().__init__(f"Animal {animals[0]} would be its own ancestor: {chain}")
        self.animals = animals


@dataclass(frozen=True, slots=True)
class Lineage:
    """All animals, those without a name among them, parents before their young.

    animals: the name of each place. dams, sires: places, by place. doubts: the place of a sire
    without a name, and its candidates with weights that sum to 1. place: of each named animal.
    """

    animals: tuple[AnimalId | None, ...]
    dams: tuple[int | None, ...]
    sires: tuple[int | None, ...]
    doubts: Mapping[int, tuple[tuple[int, float], ...]]
    place: Mapping[AnimalId, int]

    def parents(self, at: int) -> tuple[int, ...]:
        """Every place that *at* may come of."""
        if at in self.doubts:
            return tuple(male for male, _ in self.doubts[at])
        return tuple(each for each in (self.dams[at], self.sires[at]) if each is not None)

    def with_ancestors(self, places: Iterable[int]) -> set[int]:
        """These and everything they may come of."""
        found: set[int] = set()
        left = list(places)
        while left:
            at = left.pop()
            if at not in found:
                found.add(at)
                left.extend(self.parents(at))
        return found

    def births_of(self, places: Collection[int]) -> "Lineage":
        """The same animals, where only these came of anybody."""
        return replace(
            self,
            dams=tuple(dam if at in places else None for at, dam in enumerate(self.dams)),
            sires=tuple(sire if at in places else None for at, sire in enumerate(self.sires)),
            doubts={at: males for at, males in self.doubts.items() if at in places},
        )


_Who = Hashable
"""A named animal by its key, one without a name by what it is to whom."""


def lineage_of(kin: Iterable[Kin]) -> Lineage:
    """Parents without a `Kin` of their own are founders.

    Raises OwnAncestor, or ValueError where an animal is given twice.
    """
    written = _once_each(kin)
    dams = {animal: _dam_of(each) for animal, each in written.items()}
    sires = {animal: _sire_of(each) for animal, each in written.items()}
    doubts = {sires[animal]: each.sires for animal, each in written.items() if len(each.sires) > 1}
    order = _in_order(_parents_of(dams, sires, doubts))
    place = {who: at for at, who in enumerate(order)}
    return Lineage(
        animals=tuple(who if isinstance(who, int) else None for who in order),
        dams=tuple(_placed(place, dams.get(who)) for who in order),
        sires=tuple(_placed(place, sires.get(who)) for who in order),
        doubts={place[who]: _weighed(place, males) for who, males in doubts.items()},
        place={who: at for who, at in place.items() if isinstance(who, int)},
    )


def _once_each(kin: Iterable[Kin]) -> dict[_Who, Kin]:
    written: dict[_Who, Kin] = {}
    for each in kin:
        if written.setdefault(each.animal, each) != each:
            raise ValueError(f"Animal {each.animal} is given with two sets of parents")
    return written


def _dam_of(kin: Kin) -> _Who:
    if kin.dam is None and kin.brood is not None:
        return ("dam", kin.brood)
    return kin.dam


def _sire_of(kin: Kin) -> _Who:
    if len(kin.sires) == 1:
        return kin.sires[0][0]
    if kin.brood is not None:
        return ("sire", kin.brood, kin.dam, kin.sires)
    return ("sire", kin.animal) if kin.sires else None


def _parents_of(
    dams: Mapping[_Who, _Who],
    sires: Mapping[_Who, _Who],
    doubts: Mapping[_Who, Sequence[tuple[AnimalId, float]]],
) -> dict[_Who, list[_Who]]:
    found: dict[_Who, list[_Who]] = {
        animal: [who for who in (dams[animal], sires[animal]) if who is not None] for animal in dams
    }
    found |= {who: [male for male, _ in males] for who, males in doubts.items()}
    return found


def _in_order(parents: Mapping[_Who, Sequence[_Who]]) -> list[_Who]:
    """Parents before young. Raises OwnAncestor."""
    order: dict[_Who, None] = {}
    for first in parents:
        path: dict[_Who, Iterator[_Who]] = {}
        _enter(path, first, parents, order)
        while path:
            last = next(reversed(path))
            parent = next(path[last], None)
            if parent is None:
                del path[last]
                order[last] = None
            else:
                _enter(path, parent, parents, order)
    return list(order)


def _enter(
    path: dict[_Who, Iterator[_Who]],
    who: _Who,
    parents: Mapping[_Who, Sequence[_Who]],
    done: Mapping[_Who, None],
) -> None:
    if who in path:
        names = list(path)
        loop = [name for name in names[names.index(who) :] if isinstance(name, int)]
        raise OwnAncestor(tuple(loop))
    if who not in done:
        path[who] = iter(parents.get(who, ()))


def _placed(place: Mapping[_Who, int], who: _Who) -> int | None:
    return None if who is None else place[who]


def _weighed(
    place: Mapping[_Who, int], males: Sequence[tuple[AnimalId, float]]
) -> tuple[tuple[int, float], ...]:
    whole = sum(weight for _, weight in males)
    return tuple((place[male], weight / whole) for male, weight in males)
