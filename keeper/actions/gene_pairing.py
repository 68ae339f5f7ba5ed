"""What a pairing would give, real or only thought of: looks, what lies under them, inbreeding."""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass

from keeper.actions.gene_odds import SpeciesGenes
from keeper.actions.gene_told import LEAST, odds_word
from keeper.husbandry.animal import AnimalId
from keeper.language import tr
from keeper.reports.figures import number
from keeper.reports.gene_figures import chance_words
from keeper.rules.genetics.answers import CLEAR, CopyOdds
from keeper.rules.genetics.crosses import Locus, Look, at_least_one, young_of
from keeper.rules.genetics.inbreeding import KnownDepth, closeness

Sires = Sequence[tuple[AnimalId, float]]
"""Males with their odds, which sum to 1."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ExpectedLook:
    """One look. share: its part of the young, 0 to 1. carries: ``66 % het chalk``.

    at_least: the chance of one or more among the eggs that were asked about.
    """

    words: str
    share: float
    carries: tuple[str, ...] = ()
    at_least: float | None = None
    shows: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Expected:
    """looks: the likeliest first, over genes that either parent may carry; none where no gene is.

    f: inbreeding of the young. advice: what breeders do about it: open, look, reason.
    """

    looks: tuple[ExpectedLook, ...]
    f: float
    depth: KnownDepth
    advice: str


def expected_young(
    genes: SpeciesGenes, dam: AnimalId, sire: AnimalId, eggs: int | None = None
) -> Expected:
    """Of these two. eggs: for the chance of at least one."""
    return expected_of(genes, dam, ((sire, 1.0),), eggs)


def expected_of(
    genes: SpeciesGenes, dam: AnimalId, sires: Sires, eggs: int | None = None
) -> Expected:
    """Of a dam and whoever of *sires* it was."""
    loci = _loci(genes, (dam, *(male for male, _ in sires)))
    inbreeding = genes.inbreeding
    f = sum(odds * inbreeding.f_of_young(dam, male) for male, odds in sires)
    depths = [inbreeding.known_depth(each) for each in (dam, *(male for male, _ in sires))]
    return Expected(
        looks=_looks(genes, loci, dam, sires, eggs) if loci and sires else (),
        f=f,
        depth=KnownDepth(
            full=min(each.full for each in depths) + 1,
            deepest=max(each.deepest for each in depths) + 1,
        ),
        advice=closeness(f).value,
    )


def eggs_words(look: ExpectedLook, eggs: int) -> str:
    """How many of so many eggs, and the chance of at least one.

    >>> from keeper.reports.figures import plain
    >>> plain(eggs_words(ExpectedLook(words="chalk", share=0.25, at_least=0.9), 8))
    '2 of 8, one or more in 90 %'
    """
    count = eggs * look.share
    many = tr("{count} of {eggs}", count=number(count), eggs=eggs)
    if abs(count - round(count)) > 0.05:
        many = tr("about {count} of {eggs}", count=number(count, 1), eggs=eggs)
    if look.at_least is None or look.at_least >= 1.0:
        return many
    return tr("{many}, one or more in {share}", many=many, share=chance_words(look.at_least))


def look_words(shows: Sequence[str], supers: Sequence[str]) -> str:
    """The genes that are seen, or that none is.

    >>> look_words(("chalk", "ember"), ("ember",)), look_words((), ())
    ('chalk, super ember', 'normal-looking')
    """
    if not shows:
        return tr("normal-looking")
    return ", ".join(tr("super {gene}", gene=each) if each in supers else each for each in shows)


def _loci(genes: SpeciesGenes, parents: Sequence[AnimalId]) -> tuple[Locus, ...]:
    """Genes that one of *parents* may carry."""
    held = [genes.odds(parent) for parent in parents]
    return tuple(
        locus
        for locus in genes.loci
        if any(odds.get(locus.gene, CLEAR).carries >= LEAST for odds in held)
    )


def _looks(
    genes: SpeciesGenes, loci: Sequence[Locus], dam: AnimalId, sires: Sires, eggs: int | None
) -> tuple[ExpectedLook, ...]:
    """Each sire's looks in the measure of his odds."""
    mixed: dict[tuple[tuple[str, ...], tuple[str, ...]], list[tuple[float, Look]]]
    mixed = defaultdict(list)
    of_dam = genes.odds(dam)
    for male, odds in sires:
        for look in young_of(of_dam, genes.odds(male), loci):
            mixed[look.shows, look.supers].append((odds, look))
    found = [
        ExpectedLook(
            words=look_words(*seen),
            share=sum(odds * look.share for odds, look in looks),
            carries=_carries(looks, loci),
            at_least=_at_least(genes, loci, dam, sires, seen[0], eggs),
            shows=seen[0],
        )
        for seen, looks in mixed.items()
    ]
    return tuple(sorted(found, key=lambda each: (-each.share, each.words)))


def _at_least(
    genes: SpeciesGenes,
    loci: Sequence[Locus],
    dam: AnimalId,
    sires: Sires,
    shows: Sequence[str],
    eggs: int | None,
) -> float | None:
    if eggs is None or not shows:
        return None
    of_dam = genes.odds(dam)
    return sum(
        odds * at_least_one(of_dam, genes.odds(male), loci, shows, eggs) for male, odds in sires
    )


def _carries(looks: Sequence[tuple[float, Look]], loci: Sequence[Locus]) -> tuple[str, ...]:
    """What may lie under a look, over the sires that may have given it."""
    whole = sum(odds * look.share for odds, look in looks)
    sums: dict[str, list[float]] = defaultdict(lambda: [0.0, 0.0])
    for odds, look in looks:
        for called in look.may_carry:
            sums[called.gene][0] += odds * look.share * called.one / whole
            sums[called.gene][1] += odds * look.share * called.two / whole
    told = []
    for locus in loci:
        one, two = sums.get(locus.gene, (0.0, 0.0))
        if one + two >= LEAST:
            copies = CopyOdds(max(0.0, 1 - one - two), one, two)
            word = odds_word(_tidied(copies), locus.inheritance)
            told.append(tr("{told} {gene}", told=word, gene=locus.gene))
    return tuple(told)


def _tidied(odds: CopyOdds) -> CopyOdds:
    """What adds up to nothing but a rounding is none."""
    states = (each if each > 1e-9 else 0.0 for each in (odds.none, odds.one, odds.two))
    return CopyOdds(*states)
