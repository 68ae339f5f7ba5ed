"""What each word weighs in one animal's odds: the same question asked again without it.

Words of full siblings that say the same are left out together, for one of twelve normal young
changes little and all twelve much.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.genes import GeneTold
from keeper.rules.genetics.answers import CopyOdds
from keeper.rules.genetics.odds import genes_odds
from keeper.rules.genetics.pedigree import Kin
from keeper.rules.genetics.witness import GeneAsked

MOST = 12
"""So many words, the nearest in the pedigree, are tried; each costs the whole reckoning."""

_Group = tuple[GeneTold, tuple[AnimalId, ...]]


@dataclass(frozen=True, slots=True, kw_only=True)
class Leaning:
    """What was told of *animals*, and the odds without it; None: then they cannot be told."""

    animals: tuple[AnimalId, ...]
    told: GeneTold
    without: CopyOdds | None


def leanings(
    kin: Iterable[Kin],
    genes: Mapping[str, GeneAsked],
    gene: str,
    animal: AnimalId,
    most: int = MOST,
) -> tuple[Leaning, ...]:
    """Words of *gene* on which the odds of *animal* lean, the heaviest first; idle ones missing."""
    written = list(kin)
    now = genes_odds(written, genes)[gene].odds.get(animal)
    found = []
    for told, animals in _nearest_first(written, genes[gene], animal)[:most]:
        words = {name: word for name, word in genes[gene].told.items() if name not in animals}
        fewer = {**genes, gene: replace(genes[gene], told=words)}
        without = genes_odds(written, fewer)[gene].odds.get(animal)
        found.append((_moved(now, without), Leaning(animals=animals, told=told, without=without)))
    heaviest = sorted(found, key=lambda each: -each[0])
    return tuple(leaning for moved, leaning in heaviest if moved > 1e-9)


def _moved(now: CopyOdds | None, without: CopyOdds | None) -> float:
    if now is None or without is None:
        return 0.0 if now is without else 1.0
    return max(abs(now.none - without.none), abs(now.two - without.two))


def _nearest_first(kin: list[Kin], asked: GeneAsked, animal: AnimalId) -> list[_Group]:
    by_name = {each.animal: each for each in kin}
    groups: dict[object, list[AnimalId]] = {}
    steps = _steps_from(kin, animal)
    for name in sorted(asked.told.keys() & steps.keys(), key=lambda each: (steps[each], each)):
        own = by_name.get(name)
        litter: object = name
        if own is not None and own.dam is not None and own.sires and name != animal:
            litter = (own.dam, own.sires, own.brood if len(own.sires) > 1 else None)
        groups.setdefault((litter, asked.told[name].told), []).append(name)
    return [(asked.told[names[0]].told, tuple(names)) for names in groups.values()]


def _steps_from(kin: list[Kin], animal: AnimalId) -> dict[AnimalId, int]:
    """How many births lie between each animal and this one, whichever way."""
    near: dict[AnimalId, set[AnimalId]] = {animal: set()}
    for each in kin:
        for parent in (each.dam, *(male for male, _ in each.sires)):
            if parent is not None:
                near.setdefault(each.animal, set()).add(parent)
                near.setdefault(parent, set()).add(each.animal)
    steps = {animal: 0}
    waiting = [animal]
    for name in waiting:
        for other in sorted(near[name] - steps.keys()):
            steps[other] = steps[name] + 1
            waiting.append(other)
    return steps
