"""What the book says of kin and genes: as it stands now, or as it was written by a past day."""

from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from typing import Any, TypeVar

from keeper.actions.joined import JOINED
from keeper.actions.keeping import Keeping
from keeper.husbandry.about import AnimalEvent
from keeper.husbandry.animal import IN_THE_ROOM, AnimalId, Sex
from keeper.husbandry.events import Clutch, Described, Moved, Paired, Sexed, Stock
from keeper.husbandry.genes import GeneNamed, GeneRead, GeneTold, Inheritance
from keeper.store.as_written import AsWritten, as_written
from keeper.store.journal import BatchId, EntryKey, first_key_at

KINDS = (Described, Sexed, Stock, Moved, Paired, Clutch, GeneNamed, GeneRead)
GeneKey = tuple[str, str]
"""Species and the gene's name, casefolded."""

E = TypeVar("E", bound=AnimalEvent)
Keyed = Sequence[tuple[EntryKey, Any]]

_QUALIFIED = frozenset({GeneTold.HET, GeneTold.POSSIBLE, GeneTold.CLEAR})
"""Words of a recessive gene that say of an animal that it looks normal, and more."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Read:
    """The word that stands of one animal and gene, with its entry's name in the book."""

    key: EntryKey
    event: GeneRead


@dataclass(frozen=True, slots=True, kw_only=True)
class World:
    """described: the newest of each animal. named: the newest of each gene, in order of naming.

    left: the day on which an animal that is not here left, by what was written.
    """

    described: Mapping[AnimalId, Described]
    sexes: Mapping[AnimalId, Sex]
    left: Mapping[AnimalId, date]
    moves: Mapping[AnimalId, Sequence[Moved]]
    pairings: Mapping[AnimalId, Sequence[Paired]]
    clutches: Mapping[AnimalId, Sequence[Clutch]]
    named: Mapping[GeneKey, GeneNamed]
    read: Mapping[GeneKey, Mapping[AnimalId, Read]]

    def sex(self, animal: AnimalId) -> Sex:
        return self.sexes.get(animal, Sex.UNKNOWN)

    def species(self, animal: AnimalId) -> str | None:
        """Its species; None for one that is not described."""
        described = self.described.get(animal)
        return described.species if described else None


def gene_key(species: str, gene: str) -> GeneKey:
    """The same for a gene however its name is spelled.

    >>> gene_key("cape", "Chalk ") == gene_key("cape", "chalk")
    True
    """
    return species, " ".join(gene.split()).casefold()


def gene_entries(keeping: Keeping) -> AsWritten:
    """All entries from which kin and genes are told, read once until anything is written."""
    return keeping.once("gene entries", lambda: as_written(keeping.book, KINDS, JOINED))


def after_day(keeping: Keeping, day: date) -> BatchId:
    """The key under which everything lies that was written by the end of *day*."""
    return first_key_at(datetime.combine(day + timedelta(days=1), time(), keeping.now().tzinfo))


def world_of(entries: AsWritten, last: BatchId | None = None) -> World:
    """The world by everything that came with a key under *last*; None: by all that stands now."""
    told = entries.before(last)
    described = {each: event for each, (_, event) in _newest(told[Described]).items()}
    sexes = {each: event.sex for each, (_, event) in _newest(told[Sexed]).items()}
    stock = {each: event for each, (_, event) in _newest(told[Stock]).items()}
    named = _named(told[GeneNamed])
    return World(
        described=described,
        sexes=sexes,
        left={a: s.happened.day for a, s in stock.items() if s.status not in IN_THE_ROOM},
        moves=_by_animal(told[Moved]),
        pairings=_paired(told[Paired]),
        clutches=_by_animal(told[Clutch]),
        named=named,
        read=_read(told[GeneRead], described, named),
    )


def _newest(told: Keyed) -> dict[AnimalId, tuple[EntryKey, Any]]:
    return {each[1].animal: each for each in told}


def _by_animal(told: Keyed) -> dict[AnimalId, list[Any]]:
    found: dict[AnimalId, list[Any]] = defaultdict(list)
    for _, event in told:
        found[event.animal].append(event)
    return found


def _paired(told: Keyed) -> dict[AnimalId, list[Paired]]:
    """By either side of the pairing."""
    found: dict[AnimalId, list[Paired]] = defaultdict(list)
    for _, event in told:
        found[event.animal].append(event)
        found[event.mate].append(event)
    return found


def _named(told: Keyed) -> dict[GeneKey, GeneNamed]:
    return {gene_key(event.species, event.gene): event for _, event in told}


def _read(
    told: Keyed, described: Mapping[AnimalId, Described], named: Mapping[GeneKey, GeneNamed]
) -> dict[GeneKey, dict[AnimalId, Read]]:
    found: dict[GeneKey, dict[AnimalId, Read]] = defaultdict(dict)
    for key, event in told:
        of = described.get(event.animal)
        gene = gene_key(of.species, event.gene) if of else None
        if gene is not None and gene in named:
            before = found[gene].get(event.animal)
            if before is None or not still_says(before.event, event, named[gene].inheritance):
                found[gene][event.animal] = Read(key=key, event=event)
    return found


def still_says(before: GeneRead, after: GeneRead, how: Inheritance) -> bool:
    """Whether the earlier word stands: it says that the animal looks normal, and more than that.

    One bought as "66 % het" that is looked at and found normal-looking is 66 % het still.
    """
    is_look = after.told is GeneTold.NORMAL or (
        after.told is GeneTold.POSSIBLE and after.percent is None
    )
    return how is Inheritance.RECESSIVE and is_look and before.told in _QUALIFIED
