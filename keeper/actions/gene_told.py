"""What an animal carries, in the words of the trade, with the reason; contradictions by name."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from keeper.actions.gene_odds import SpeciesGenes
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.genes import GeneNamed, GeneRead, Inheritance
from keeper.husbandry.reasons import Reason
from keeper.language import tr
from keeper.reports.gene_figures import percent_down, share_words
from keeper.reports.words import sentence
from keeper.rules.genetics.answers import Contradiction, CopyOdds

LEAST = 0.005
"""What is less likely carried is left out (common practice)."""
_NAMES_MOST = 6
_ANIMALS = frozenset({"young", "dam", "sire", "parent", "of", "sibling", "likeliest", "male"})
"""Figures of a reason that may name an animal by its key."""
_SHARES = frozenset({"odds", "dam_odds", "sire_odds", "written", "two"})


@dataclass(frozen=True, slots=True, kw_only=True)
class Carried:
    """One gene of one animal. odds: None where nothing can be told, and because says why.

    read: the word that stands of it. sure: not a matter of odds. rank: higher comes first.
    """

    gene: GeneNamed
    word: str
    odds: CopyOdds | None
    because: tuple[Reason, ...]
    read: GeneRead | None = None
    sure: bool = False
    rank: float = 0.0

    @property
    def named(self) -> str:
        """Gene and word: ``chalk: 66 % het``."""
        return tr("{gene}: {told}", gene=self.gene.gene, told=self.word)


def carried(genes: SpeciesGenes, animal: AnimalId, *, least: float = LEAST) -> tuple[Carried, ...]:
    """What *animal* shows or may carry, the strongest first; what it hardly can is left out."""
    found = (_carried(genes, named, animal) for named in genes.named)
    kept = [each for each in found if each is not None and each.rank >= least]
    return tuple(sorted(kept, key=lambda each: -each.rank))


def told_of(genes: SpeciesGenes, named: GeneNamed, animal: AnimalId) -> Carried | None:
    """One gene of one animal, however little it may carry of it; None of a stranger."""
    return _carried(genes, named, animal)


def odds_word(odds: CopyOdds, how: Inheritance) -> str:
    """What the trade calls it.

    >>> from keeper.reports.figures import plain
    >>> plain(odds_word(CopyOdds(1 / 3, 2 / 3, 0.0), Inheritance.RECESSIVE))
    '66 % het'
    >>> plain(odds_word(CopyOdds(0.25, 0.5, 0.25), Inheritance.RECESSIVE))
    'two copies 25 %, one 50 %'
    """
    if odds.sure is not None:
        return _sure_word(odds.sure, how)
    if how is Inheritance.DOMINANT and odds.none == 0:
        return tr("visual", sense="of a gene")
    if odds.two > 0 and odds.none == 0:
        return tr("{share} two copies, else one", share=share_words(odds.two))
    if odds.two >= LEAST:
        figures = {"two": share_words(odds.two), "one": share_words(odds.one)}
        return tr("two copies {two}, one {one}", **figures)
    if how is Inheritance.RECESSIVE:
        return tr("{share} het", share=share_words(odds.one / (odds.none + odds.one)))
    return tr("{share} one copy", share=share_words(odds.carries))


def reason_words(reason: Reason, genes: SpeciesGenes) -> str:
    """Its sentence, animals called by name."""
    figures = {name: _figure(name, value, genes) for name, value in reason.figures.items()}
    figures |= {name: None for name in ("young", "sires") if figures.get(name) == 1}
    return sentence(Reason(reason.why, figures))


def because_words(reasons: Iterable[Reason], genes: SpeciesGenes) -> str:
    """Every sentence once, in order."""
    return " ".join(dict.fromkeys(reason_words(each, genes) for each in reasons))


def contradiction_words(found: Contradiction, genes: SpeciesGenes) -> str:
    """Whole sentences that name whose words cannot all be true."""
    words = reason_words(found.because, genes)
    if any(found.because.figures.get(name) in genes.kin for name in _ANIMALS):
        return words
    return tr("{names}: {words}", names=_named(found.animals, genes), words=words)


def contradictions_of(genes: SpeciesGenes, animal: AnimalId) -> tuple[str, ...]:
    """Every contradiction that names *animal*, with its gene."""
    return tuple(
        tr("{gene}: {told}", gene=gene, told=contradiction_words(each, genes))
        for gene, answer in genes.answers.items()
        for each in answer.contradictions
        if animal in each.animals
    )


def _carried(genes: SpeciesGenes, named: GeneNamed, animal: AnimalId) -> Carried | None:
    answer = genes.answers.get(named.gene)
    if answer is None:
        return None
    read = genes.told.get(named.gene, {}).get(animal)
    if animal in answer.untold:
        why = (answer.untold[animal],)
        word = tr("no odds told")
        return Carried(gene=named, word=word, odds=None, because=why, read=read, rank=0.5)
    odds = answer.odds.get(animal)
    if odds is None:
        return None
    return Carried(
        gene=named,
        word=odds_word(odds, named.inheritance),
        odds=odds,
        because=answer.because.get(animal, ()),
        read=read,
        sure=odds.sure is not None,
        rank=odds.carries + odds.two,
    )


def _sure_word(copies: int, how: Inheritance) -> str:
    if copies == 0:
        return tr("does not carry it")
    if how is Inheritance.RECESSIVE:
        return tr("visual", sense="of a gene") if copies == 2 else tr("het", sense="of a gene")
    if how is Inheritance.INCOMPLETE:
        return tr("super form") if copies == 2 else tr("visual, one copy")
    return tr("visual, two copies") if copies == 2 else tr("visual, one copy")


def _figure(name: str, value: Any, genes: SpeciesGenes) -> Any:
    """Animals by name, shares of 1 and per cent as the trade writes them; counts as they are."""
    if name in _ANIMALS and value in genes.kin:
        return genes.called(value)
    if name in _SHARES:
        return share_words(value) if value < 1 else tr("for certain")
    return percent_down(value) if name == "percent" else value


def _named(animals: Iterable[AnimalId], genes: SpeciesGenes) -> str:
    names = [genes.called(each) for each in animals]
    more = len(names) - _NAMES_MOST
    if more > 0:
        return tr("{names} and {more} more", names=", ".join(names[:_NAMES_MOST]), more=more)
    return ", ".join(names)
