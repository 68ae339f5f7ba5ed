"""What a pairing is expected to give: looks over several genes, and what may lie under them.

Genes are taken as places on different chromosomes, which pass independently; linked ones would
not. The odds of the two parents are taken as independent: where both hang on one unproven
ancestor, `young_odds` reckons each gene from the whole pedigree instead.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import product
from math import prod

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.genes import Inheritance
from keeper.rules.genetics.answers import CLEAR, CopyOdds
from keeper.rules.genetics.odds import genes_odds
from keeper.rules.genetics.pedigree import Kin
from keeper.rules.genetics.witness import GeneAsked

Copies = tuple[int, ...]
"""How many of each gene, in the order of the loci."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Locus:
    """One gene of a cross. hidden_by: the gene whose visuals do not let this one be seen."""

    gene: str
    inheritance: Inheritance
    hidden_by: str | None = None

    def shown(self, copies: int) -> bool:
        """Whether so many copies show, where nothing hides them."""
        return copies >= (2 if self.inheritance is Inheritance.RECESSIVE else 1)

    def super_form(self, copies: int) -> bool:
        return self.inheritance is Inheritance.INCOMPLETE and copies == 2


@dataclass(frozen=True, slots=True, kw_only=True)
class Called:
    """What a look leaves open of a gene: odds of one copy and of two."""

    gene: str
    one: float
    two: float

    @property
    def carries(self) -> float:
        return self.one + self.two


@dataclass(frozen=True, slots=True, kw_only=True)
class Look:
    """One look among the young. shows: genes seen, *supers* among them as the super form.

    share: expected part of the young, 0 to 1. may_carry: of genes that this look leaves in doubt.
    """

    shows: tuple[str, ...]
    supers: tuple[str, ...]
    share: float
    may_carry: tuple[Called, ...]


def young_of(
    dam: Mapping[str, CopyOdds], sire: Mapping[str, CopyOdds], loci: Sequence[Locus]
) -> tuple[Look, ...]:
    """Every look that may come, the likeliest first; a gene not given of a parent is clear.

    >>> both = {"a": CopyOdds(0, 1, 0)}
    >>> [(look.shows, look.share) for look in young_of(both, both, [
    ...     Locus(gene="a", inheritance=Inheritance.RECESSIVE)])]
    [((), 0.75), (('a',), 0.25)]
    """
    each = [passed_on(_of(dam, locus), _of(sire, locus)) for locus in loci]
    looks: dict[tuple[tuple[str, ...], tuple[str, ...]], dict[Copies, float]] = {}
    for copies, share in _together(each):
        looks.setdefault(_seen(loci, copies), {})[copies] = share
    found = [_look(loci, seen, states) for seen, states in looks.items()]
    return tuple(sorted(found, key=lambda look: (-look.share, look.shows, look.supers)))


def at_least_one(
    dam: Mapping[str, CopyOdds],
    sire: Mapping[str, CopyOdds],
    loci: Sequence[Locus],
    shows: Iterable[str],
    young: int,
) -> float:
    """The chance that of so many *young* at least one shows all of *shows*.

    Young of a doubtful carrier hang together: either all may show it or none, so this is not
    1 - (1 - share)ⁿ.
    """
    wanted = frozenset(shows)
    hiding = {locus.hidden_by for locus in loci if locus.gene in wanted}
    loci = [locus for locus in loci if locus.gene in wanted | hiding]
    pairs = [_pairs(_of(dam, locus), _of(sire, locus)) for locus in loci]
    found = 0.0
    for parents in product(*pairs):
        each = [passed_on(_certain(one), _certain(other)) for one, other, _ in parents]
        hit = sum(
            share for copies, share in _together(each) if wanted <= set(_seen(loci, copies)[0])
        )
        found += prod(odds for _, _, odds in parents) * (1 - (1 - min(1.0, hit)) ** young)
    return found


def young_odds(
    kin: Iterable[Kin], genes: Mapping[str, GeneAsked], dam: AnimalId, sire: AnimalId
) -> dict[str, CopyOdds]:
    """Odds of one young of this pairing by gene, from the whole pedigree; untold ones missing.

    Raises as `genes_odds`.
    """
    written = list(kin)
    unborn = min((min(each.animal, *_parents(each)) for each in written), default=0)
    unborn = min(unborn, dam, sire, 0) - 1
    answers = genes_odds([*written, Kin(animal=unborn, dam=dam, sires=((sire, 1.0),))], genes)
    return {gene: answer.odds[unborn] for gene, answer in answers.items() if unborn in answer.odds}


def passed_on(dam: CopyOdds, sire: CopyOdds) -> CopyOdds:
    """Copies of a young of two parents.

    >>> passed_on(CopyOdds(0, 1, 0), CopyOdds(0, 1, 0))
    CopyOdds(none=0.25, one=0.5, two=0.25)
    """
    one, other = dam.one / 2 + dam.two, sire.one / 2 + sire.two
    return CopyOdds((1 - one) * (1 - other), one * (1 - other) + other * (1 - one), one * other)


def _parents(kin: Kin) -> list[AnimalId]:
    return [0 if kin.dam is None else kin.dam, *(male for male, _ in kin.sires)]


def _of(parent: Mapping[str, CopyOdds], locus: Locus) -> CopyOdds:
    return parent.get(locus.gene, CLEAR)


def _states(odds: CopyOdds) -> tuple[float, float, float]:
    return odds.none, odds.one, odds.two


def _certain(copies: int) -> CopyOdds:
    return CopyOdds(*(float(copies == each) for each in range(3)))


def _pairs(dam: CopyOdds, sire: CopyOdds) -> list[tuple[int, int, float]]:
    return [
        (one, other, odds * its_odds)
        for one, odds in enumerate(_states(dam))
        for other, its_odds in enumerate(_states(sire))
        if odds * its_odds
    ]


def _together(each: Sequence[CopyOdds]) -> Iterator[tuple[Copies, float]]:
    """Every state of all loci that can be, and its share."""
    open_to = [[(n, odds) for n, odds in enumerate(_states(one)) if odds] for one in each]
    for states in product(*open_to):
        yield tuple(copies for copies, _ in states), prod(odds for _, odds in states)


def _seen(loci: Sequence[Locus], copies: Copies) -> tuple[tuple[str, ...], tuple[str, ...]]:
    shown = {locus.gene for locus, n in zip(loci, copies, strict=True) if locus.shown(n)}
    seen = [
        (locus, n)
        for locus, n in zip(loci, copies, strict=True)
        if locus.gene in shown and locus.hidden_by not in shown
    ]
    supers = tuple(locus.gene for locus, n in seen if locus.super_form(n))
    return tuple(locus.gene for locus, _ in seen), supers


def _look(
    loci: Sequence[Locus],
    seen: tuple[tuple[str, ...], tuple[str, ...]],
    states: Mapping[Copies, float],
) -> Look:
    whole = sum(states.values())
    called = [_called(locus.gene, nth, states, whole) for nth, locus in enumerate(loci)]
    open_to = tuple(each for each in called if each.carries and not _told_by(loci, each, seen))
    return Look(shows=seen[0], supers=seen[1], share=whole, may_carry=open_to)


def _called(gene: str, nth: int, states: Mapping[Copies, float], whole: float) -> Called:
    one, two = (
        sum(share for copies, share in states.items() if copies[nth] == n) / whole for n in (1, 2)
    )
    return Called(gene=gene, one=one, two=two)


def _told_by(
    loci: Sequence[Locus], called: Called, seen: tuple[tuple[str, ...], tuple[str, ...]]
) -> bool:
    """Whether the look itself says how many copies there are."""
    shown = called.gene in seen[0]
    dominant = any(
        locus.gene == called.gene and locus.inheritance is Inheritance.DOMINANT for locus in loci
    )
    return shown and not dominant
