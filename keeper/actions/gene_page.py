"""What an animal's own page, its papers and the command line say of its genes."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date

from keeper.actions.gene_odds import HouseGenes, SpeciesGenes, house_genes
from keeper.actions.gene_told import Carried, because_words, carried, contradictions_of
from keeper.actions.keeping import Keeping
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.genes import Inheritance
from keeper.language import tr
from keeper.reports.figures import counted, day
from keeper.reports.gene_figures import chance_words, percent_down, share_words
from keeper.reports.gene_statement import GeneStatement
from keeper.reports.words import word
from keeper.rules.genetics.inbreeding import LOOK_FROM, Closeness, KnownDepth, closeness

UNSEEN = tr("Nobody has written yet what it shows of it.")
_GENERATIONS = counted("generation", "generations")


@dataclass(frozen=True, slots=True, kw_only=True)
class GeneLine:
    """One gene: its name, the word of the trade, and why, in sentences. on: the day it stands for.

    read: the day on which something was written of it. odds: of no copy, one and two.
    """

    gene: str
    word: str
    because: str
    read: str
    sure: bool
    odds: tuple[float, float, float] | None = None

    @property
    def named(self) -> str:
        return tr("{gene} {told}", gene=self.gene, told=self.word)


@dataclass(frozen=True, slots=True, kw_only=True)
class GenesOfAnimal:
    """genes: those it shows or may carry. clear: names of those it does not carry, as far as known.

    contradictions: words that cannot all be true, it among them. parents: a sire in doubt, or
    parents in a round. f: inbreeding, 0 to 1.
    """

    animal: AnimalId
    on: date
    genes: tuple[GeneLine, ...]
    clear: tuple[str, ...]
    contradictions: tuple[str, ...]
    parents: tuple[str, ...]
    f: float
    depth: KnownDepth

    @property
    def is_close(self) -> bool:
        """Whether its inbreeding is worth a look."""
        return self.f >= LOOK_FROM.value

    @property
    def says_something(self) -> bool:
        return bool(self.genes or self.contradictions or self.is_close)

    @property
    def f_words(self) -> str:
        """F alone."""
        return f_words(self.f)

    @property
    def inbreeding(self) -> str:
        """F and how far back its ancestors are known."""
        return inbreeding_words(self.f, self.depth)


def genes_of(house: HouseGenes, animal: AnimalId) -> GenesOfAnimal | None:
    """What *animal* carries today; None of one that the house does not know."""
    genes = next((each for each in house.species.values() if animal in each.kin), None)
    if genes is None:
        return None
    found = carried(genes, animal)
    held = {each.gene.gene for each in found}
    return GenesOfAnimal(
        animal=animal,
        on=house.on,
        genes=tuple(_line(each, genes, animal) for each in found),
        clear=tuple(each.gene for each in genes.named if each.gene not in held),
        contradictions=contradictions_of(genes, animal),
        parents=tuple(_of_parents(genes, animal)),
        f=genes.inbreeding.f(animal),
        depth=genes.inbreeding.known_depth(animal),
    )


def genes_of_one(keeping: Keeping, animal: AnimalId) -> GenesOfAnimal | None:
    """The same of one animal alone, its species reckoned for it; as of today."""
    return genes_of(house_genes(keeping, of=animal), animal)


def statement_of(told: GenesOfAnimal) -> GeneStatement | None:
    """For a paper; None where the house reckons with no gene and nothing else is to be said."""
    close = told.inbreeding if told.is_close else ""
    doubts = (*told.contradictions, *told.parents) if told.genes or told.contradictions else ()
    if not (told.genes or told.clear or close):
        return None
    return GeneStatement(
        on=told.on,
        lines=tuple((each.gene, each.word, each.because) for each in told.genes),
        clear=told.clear,
        doubts=doubts,
        inbreeding=close,
    )


def f_words(f: float) -> str:
    """F, and what it is like where that is close.

    >>> from keeper.reports.figures import plain
    >>> plain(f_words(0.25)), plain(f_words(0))
    ('F 25 %, as full sibs’ young or closer', 'F 0 %')
    """
    if f <= 0:
        return tr("F {share}", share=percent_down(0))
    share = share_words(f) if f < 1 else percent_down(100)
    close = closeness(f)
    if close is Closeness.OPEN:
        return tr("F {share}", share=share)
    return tr("F {share}, {like}", share=share, like=word(close))


def inbreeding_words(f: float, depth: KnownDepth) -> str:
    """F with the known depth: founders are not known to be unrelated."""
    if depth.full < 1:
        return tr("{f}, as far as is known: its parents are not both written.", f=f_words(f))
    known = _GENERATIONS(depth.full)
    return tr("{f}; its ancestors are known in full for {known}.", f=f_words(f), known=known)


def _line(each: Carried, genes: SpeciesGenes, animal: AnimalId) -> GeneLine:
    weighed = "" if each.sure else _weighed_too(genes, each.gene.gene, animal)
    unseen = UNSEEN if _would_show(each) else ""
    read = ""
    if each.read is not None:
        read = day(each.read.happened.day)
    return GeneLine(
        gene=each.gene.gene,
        word=each.word,
        because=" ".join(filter(None, (because_words(each.because, genes), weighed, unseen))),
        read=read,
        sure=each.sure,
        odds=(each.odds.none, each.odds.one, each.odds.two) if each.odds else None,
    )


def _would_show(each: Carried) -> bool:
    """Whether a look at it would tell more, and nobody has looked."""
    if each.read is not None or each.sure or each.odds is None:
        return False
    recessive = each.gene.inheritance is Inheritance.RECESSIVE
    return each.odds.two > 0 if recessive else each.odds.none > 0


def _weighed_too(genes: SpeciesGenes, gene: str, animal: AnimalId) -> str:
    """That young of which he may be the sire speak for him or against him, where they do."""
    told = genes.told.get(gene, {})
    clutches = [
        genes.rows[brood.young[0]].clutch
        for brood in genes.broods
        if brood.in_doubt
        and animal in (male for male, _ in brood.sires)
        and any(young in told for young in brood.young)
        and brood.young[0] in genes.rows
    ]
    names = ", ".join(dict.fromkeys(clutch for clutch in clutches if clutch))
    return (
        tr("He may be the sire of {names}, whose looks are weighed.", names=names) if names else ""
    )


def sires_after_looks(genes: SpeciesGenes, animal: AnimalId) -> tuple[tuple[AnimalId, float], ...]:
    """Who may have sired it, by what was written and what its clutch shows; likeliest first."""
    for answer in genes.answers.values():
        if shares := answer.sires.get(animal):
            return tuple((each.male, each.odds) for each in shares)
    kin = genes.kin.get(animal)
    whole = sum(weight for _, weight in kin.sires) if kin else 0.0
    found = [(male, weight / whole) for male, weight in kin.sires] if kin and whole else []
    return tuple(sorted(found, key=lambda each: -each[1]))


def sire_words(genes: SpeciesGenes, sires: Sequence[tuple[AnimalId, float]]) -> str:
    """``Gorse 92 %, Bracken 7 %``; one that the looks exclude is told as that."""
    return ", ".join(
        tr("{name} {share}", name=genes.called(male), share=_odds(odds)) for male, odds in sires
    )


def _odds(odds: float) -> str:
    if odds <= 0:
        return tr("ruled out by looks")
    return tr("for certain") if odds >= 1 else chance_words(odds)


def _of_parents(genes: SpeciesGenes, animal: AnimalId) -> Iterator[str]:
    if animal in genes.looped:
        yield tr("Its parents as written go in a round; it is taken for one of unknown parents.")
    brood = genes.brood(animal)
    if brood is None or not brood.in_doubt:
        return
    odds = sire_words(genes, sires_after_looks(genes, animal))
    if brood.written is None:
        yield tr("No sire is written; by who was with the dam: {odds}.", odds=odds)
    else:
        name = genes.called(brood.written)
        yield tr(
            "{name} is written as sire, and the book shows another male with the dam: {odds}.",
            name=name,
            odds=odds,
        )
