"""Whether two recessive genes that look alike lie at one place on the chromosome.

Two animals that show one each are paired: where they lie at two places every young looks normal
and carries both; where they are one, every young shows it. One normal-looking young settles it,
unless its sire is in doubt (common practice, no source).
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Literal

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.genes import GeneNamed, GeneRead, GeneTold, Inheritance
from keeper.rules.genetics.pedigree import Kin

Found = Literal["untested", "young not told", "sire in doubt", "may be one place", "two places"]

_SHOWN = (GeneTold.VISUAL, GeneTold.SUPER)


@dataclass(frozen=True, slots=True, kw_only=True)
class Crossed:
    """A pairing of two that show one gene each, and what its young show.

    normal: told of, and showing neither. showing: showing one or both. sire_sure: whether no other
    male may have sired them.
    """

    dam: AnimalId
    sire: AnimalId
    normal: int
    showing: int
    sire_sure: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class LookAlike:
    """Two genes of one species, the pairings that tried them, and what they found."""

    first: str
    second: str
    crossed: tuple[Crossed, ...]
    found: Found


def look_alikes(
    named: Sequence[GeneNamed],
    kin: Mapping[AnimalId, Kin],
    told: Mapping[str, Mapping[AnimalId, GeneRead]],
) -> tuple[LookAlike, ...]:
    """Every two recessive genes of *named*, in its order."""
    genes = [each.gene for each in named if each.inheritance is Inheritance.RECESSIVE]
    return tuple(
        _look_alike(first, second, kin, told)
        for n, first in enumerate(genes)
        for second in genes[n + 1 :]
    )


def _look_alike(
    first: str,
    second: str,
    kin: Mapping[AnimalId, Kin],
    told: Mapping[str, Mapping[AnimalId, GeneRead]],
) -> LookAlike:
    crossed = tuple(_crossed(told.get(first, {}), told.get(second, {}), kin))
    return LookAlike(first=first, second=second, crossed=crossed, found=_found(crossed))


def _found(crossed: Sequence[Crossed]) -> Found:
    sure = [each for each in crossed if each.sire_sure]
    if any(each.normal for each in sure):
        return "two places"
    if any(each.normal for each in crossed):
        return "sire in doubt"
    if any(each.showing for each in sure):
        return "may be one place"
    return "young not told" if crossed else "untested"


def _crossed(
    first: Mapping[AnimalId, GeneRead],
    second: Mapping[AnimalId, GeneRead],
    kin: Mapping[AnimalId, Kin],
) -> Iterator[Crossed]:
    """By pair, the young counted."""
    counts: dict[tuple[AnimalId, AnimalId, bool], list[int]] = {}
    for young in kin.values():
        for sire, _ in young.sires:
            dam = young.dam
            if dam is None or not _shows_one_each(dam, sire, first, second):
                continue
            count = counts.setdefault((dam, sire, len(young.sires) == 1), [0, 0])
            looks = [its[young.animal].told for its in (first, second) if young.animal in its]
            if looks:
                count[any(look in _SHOWN for look in looks)] += 1
    for (dam, sire, sure), (normal, showing) in counts.items():
        yield Crossed(dam=dam, sire=sire, normal=normal, showing=showing, sire_sure=sure)


def _shows_one_each(
    dam: AnimalId,
    sire: AnimalId,
    first: Mapping[AnimalId, GeneRead],
    second: Mapping[AnimalId, GeneRead],
) -> bool:
    """One shows the first gene alone, the other the second alone."""
    shown = tuple((_shows(each, first), _shows(each, second)) for each in (dam, sire))
    return shown in (((True, False), (False, True)), ((False, True), (True, False)))


def _shows(animal: AnimalId, told: Mapping[AnimalId, GeneRead]) -> bool:
    return animal in told and told[animal].told in _SHOWN
