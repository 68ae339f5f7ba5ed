"""What every animal of the house carries of its genes, today or by what a past day knew."""

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from functools import cached_property

from keeper.actions.gene_sires import Brood, SireBook, broods_of, kin_of
from keeper.actions.gene_world import (
    GeneKey,
    Read,
    World,
    after_day,
    gene_entries,
    gene_key,
    world_of,
)
from keeper.actions.keeping import Keeping
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.genes import GeneNamed, GeneRead
from keeper.husbandry.now import AnimalNow
from keeper.rules.genetics.answers import CopyOdds, GeneAnswer
from keeper.rules.genetics.crosses import Locus
from keeper.rules.genetics.inbreeding import Inbreeding
from keeper.rules.genetics.odds import genes_odds
from keeper.rules.genetics.pedigree import Kin, OwnAncestor
from keeper.rules.genetics.witness import GeneAsked, shown_by
from keeper.store import reading


@dataclass(frozen=True, kw_only=True)
class SpeciesGenes:
    """One species of the house: genes by the name they were given, animals by key.

    named: in the order in which they were named. rows: every animal ever, those who left too.
    told: the word that stands of each animal. looped: animals whose parents as written would
    make them their own ancestor; they are taken for founders. sires: who may have sired eggs.
    """

    species: str
    named: tuple[GeneNamed, ...]
    answers: Mapping[str, GeneAnswer]
    rows: Mapping[AnimalId, AnimalNow]
    kin: Mapping[AnimalId, Kin]
    told: Mapping[str, Mapping[AnimalId, GeneRead]]
    broods: Sequence[Brood] = ()
    sires: SireBook | None = None
    looped: tuple[AnimalId, ...] = ()

    def odds(self, animal: AnimalId) -> dict[str, CopyOdds]:
        """By gene; one of which nothing can be told is left out."""
        return {
            gene: answer.odds[animal]
            for gene, answer in self.answers.items()
            if animal in answer.odds
        }

    def called(self, animal: AnimalId) -> str:
        """Its name, or its code."""
        row = self.rows.get(animal)
        return row.called if row else "?"

    def brood(self, animal: AnimalId) -> Brood | None:
        """The clutch that it comes of, with its sires."""
        return self._by_young.get(animal)

    @cached_property
    def loci(self) -> tuple[Locus, ...]:
        """The genes as crosses are reckoned over them."""
        return tuple(
            Locus(gene=each.gene, inheritance=each.inheritance, hidden_by=_hider(self, each))
            for each in self.named
        )

    @cached_property
    def inbreeding(self) -> Inbreeding:
        return Inbreeding.of(self.kin.values())

    @cached_property
    def _by_young(self) -> dict[AnimalId, Brood]:
        return {young: brood for brood in self.broods for young in brood.young}


@dataclass(frozen=True, slots=True, kw_only=True)
class HouseGenes:
    """The species of which a gene is named or a parent is known, by slug."""

    on: date
    species: Mapping[str, SpeciesGenes] = field(default_factory=dict)

    def of(self, row: AnimalNow) -> SpeciesGenes | None:
        return self.species.get(row.species)


def house_genes(
    keeping: Keeping, as_at: date | None = None, *, of: AnimalId | None = None
) -> HouseGenes:
    """Reckoned over the whole pedigree of each species.

    as_at: by what was written by the end of that day, and nothing later. of: only the species
    of that animal.
    """
    last = None if as_at is None else after_day(keeping, as_at)
    world = world_of(gene_entries(keeping), last)
    rows = {row.animal: row for row in reading.board(keeping.book)}
    return HouseGenes(
        on=as_at or keeping.today,
        species={
            species: species_genes(keeping, world, species, animals, rows)
            for species, animals in animals_by_species(world).items()
            if of is None or species == world.species(of)
        },
    )


def animals_by_species(world: World) -> dict[str, list[AnimalId]]:
    """Every animal that was ever described."""
    found: dict[str, list[AnimalId]] = defaultdict(list)
    for animal, told in world.described.items():
        found[told.species].append(animal)
    return found


def species_genes(
    keeping: Keeping,
    world: World,
    species: str,
    animals: Sequence[AnimalId],
    rows: Mapping[AnimalId, AnimalNow],
) -> SpeciesGenes:
    """One species of *world*."""
    sires = SireBook(world, keeping.profiles)
    broods = broods_of(world, sires, animals)
    named = tuple(gene for (of, _), gene in world.named.items() if of == species)
    kin = kin_of(broods, animals)
    asked = genes_asked(world, species, named)
    looped, answers = _answers(kin, asked)
    return SpeciesGenes(
        species=species,
        named=named,
        answers=answers,
        rows={animal: rows[animal] for animal in animals if animal in rows},
        kin=kin,
        told={
            each.gene: {animal: read.event for animal, read in _read(world, species, each).items()}
            for each in named
        },
        broods=broods,
        sires=sires,
        looped=looped,
    )


def answers_for(
    keeping: Keeping, world: World, species: str, wanted: Iterable[AnimalId]
) -> dict[str, GeneAnswer]:
    """Of *wanted* alone, which is quicker: with their kin, and with all that is a witness."""
    named = tuple(gene for (of, _), gene in world.named.items() if of == species)
    asked = genes_asked(world, species, named)
    animals = [animal for animal, told in world.described.items() if told.species == species]
    kin = kin_of(broods_of(world, SireBook(world, keeping.profiles), animals), animals)
    read = {animal for each in asked.values() for animal in each.told}
    needed = _with_ancestors(kin, {*wanted, *read} & kin.keys())
    return _answers({animal: kin[animal] for animal in kin if animal in needed}, asked)[1]


def _with_ancestors(kin: Mapping[AnimalId, Kin], animals: Iterable[AnimalId]) -> set[AnimalId]:
    found: set[AnimalId] = set()
    left = list(animals)
    while left:
        animal = left.pop()
        if animal not in found and animal in kin:
            found.add(animal)
            one = kin[animal]
            left += [male for male, _ in one.sires] + ([] if one.dam is None else [one.dam])
    return found


def genes_asked(world: World, species: str, named: Sequence[GeneNamed]) -> dict[str, GeneAsked]:
    """Each gene with the words that stand of it; one that hides another spoils its witnesses."""
    told = {each.gene: _read(world, species, each) for each in named}
    words = {gene: {a: read.event for a, read in found.items()} for gene, found in told.items()}
    by_key = {gene_key(species, each.gene): each.gene for each in named}
    asked = {}
    for each in named:
        hider = by_key.get(gene_key(species, each.hidden_by)) if each.hidden_by else None
        hidden = shown_by(words[hider]) if hider and hider != each.gene else frozenset()
        asked[each.gene] = GeneAsked(
            inheritance=each.inheritance, told=words[each.gene], hidden=frozenset(hidden)
        )
    return asked


def _read(world: World, species: str, named: GeneNamed) -> Mapping[AnimalId, Read]:
    key: GeneKey = gene_key(species, named.gene)
    return world.read.get(key, {})


def _hider(genes: SpeciesGenes, named: GeneNamed) -> str | None:
    """The name by which the gene that hides it is reckoned."""
    if named.hidden_by is None:
        return None
    wanted = gene_key(genes.species, named.hidden_by)
    names = (each.gene for each in genes.named if each.gene != named.gene)
    return next((name for name in names if gene_key(genes.species, name) == wanted), None)


def _answers(
    kin: dict[AnimalId, Kin], asked: Mapping[str, GeneAsked]
) -> tuple[tuple[AnimalId, ...], dict[str, GeneAnswer]]:
    """Who was taken for a founder because of a round of parents, and the answers."""
    looped: list[AnimalId] = []
    while True:
        try:
            return tuple(looped), genes_odds(kin.values(), asked)
        except OwnAncestor as loop:
            for animal in loop.animals:
                kin[animal] = replace(kin[animal], dam=None, sires=(), brood=None)
            looped += loop.animals
