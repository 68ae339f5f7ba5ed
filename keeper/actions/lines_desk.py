"""What the house breeds for as its place shows it: genes and lines of colour, read off to the side.

Everything of ``LinesDesk`` is called in one thread, the one that first asks.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from enum import Enum, auto
from typing import TYPE_CHECKING

from keeper.actions.gene_cards import CardOutOfDate
from keeper.actions.gene_desk import GeneDesk
from keeper.actions.gene_odds import HouseGenes, SpeciesGenes
from keeper.actions.gene_pairing import Expected, expected_young
from keeper.actions.gene_told import because_words, contradiction_words, odds_word, told_of
from keeper.actions.keeping import Keeping
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.genes import GeneNamed, Inheritance
from keeper.husbandry.now import AnimalNow
from keeper.language import tr
from keeper.reports.words import short_species_words
from keeper.rules.genetics.answers import CLEAR, CopyOdds, GeneAnswer
from keeper.rules.genetics.crosses import at_least_one
from keeper.rules.genetics.proving import left_after, normals_needed
from keeper.rules.look_alikes import LookAlike as LookAlike
from keeper.rules.look_alikes import look_alikes
from keeper.rules.proving_pairs import ProvingPair, best_of_each, proving_pairs

if TYPE_CHECKING:
    from keeper.actions.colour_desk import ColourDesk
    from keeper.reports.colour_facts import ColourChoice, ColourFacts

LEAST = 0.005
"""Less likely carriers are counted as clear; common practice, no source."""
EGGS = (4, 8, 12)
"""Clutches for which it is told how likely one young at least shows the gene."""
LEFT_AFTER = (1, 2, 4, 6)
"""Normal-looking young after which it is told how likely a carrier is left."""


class Standing(Enum):
    """Where an animal stands to a gene: what does not fit first, then the surest."""

    CONTRADICTED = auto()
    SUPER = auto()
    SHOWS = auto()
    CARRIES = auto()
    MAY = auto()
    UNTOLD = auto()
    CLEAR = auto()


@dataclass(frozen=True, slots=True, kw_only=True)
class GeneAnimal:
    """word: what is told of it, such as 66 % het. reason: one sentence why."""

    row: AnimalNow
    standing: Standing
    odds: CopyOdds | None
    word: str
    reason: str = ""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class GeneLine:
    """One gene in a row: who of the room shows, surely carries or may carry it, counted."""

    named: GeneNamed
    genes: SpeciesGenes
    species: str
    counts: Mapping[Standing, int]
    contradictions: int

    @property
    def key(self) -> tuple[str, str]:
        return self.named.species, self.named.gene

    @property
    def answer(self) -> GeneAnswer | None:
        return self.genes.answers.get(self.named.gene)


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class ColourLine:
    """One look of one line, scored over generations."""

    choice: "ColourChoice"
    facts: "ColourFacts"

    @property
    def key(self) -> tuple[str, str]:
        return f"{self.choice.species} {self.choice.line}", self.choice.trait


Line = GeneLine | ColourLine


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Lines:
    """All of them on a day. cards: those given out that say something else by now; None while they
    and the lines of colour are still to be read."""

    on: date
    house: HouseGenes
    rows: tuple[Line, ...]
    cards: tuple[CardOutOfDate, ...] | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Proof:
    """A pairing that tests one of the two. left: by normal-looking young, how likely a carrier is
    left; needed: so many take it under 5 %, None where none ever do."""

    pair: ProvingPair
    tested: AnimalNow
    mate: AnimalNow
    word: str
    left: tuple[tuple[int, float], ...]
    needed: int | None


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class PairTried:
    """What the young of two may look like. at_least: by eggs, how likely one or more shows the
    gene that was asked about. shared: the nearest ancestors of both, by name."""

    dam: AnimalNow
    sire: AnimalNow
    expected: Expected
    at_least: tuple[tuple[int, float], ...]
    shared: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class GeneDetail:
    """All that stands beside one gene. clear: how many of the room are not listed."""

    line: GeneLine
    animals: tuple[GeneAnimal, ...]
    clear: int
    contradictions: tuple[str, ...]
    proofs: tuple[Proof, ...]
    pair: PairTried | None
    tried: tuple[LookAlike, ...]
    cards: tuple[CardOutOfDate, ...]


class LinesDesk:
    """Reads the book with connections of its own."""

    def __init__(self, keeping: Keeping) -> None:
        self._keeping = keeping
        self._genes = GeneDesk(keeping)
        self._colour: ColourDesk | None = None

    def lines(self, on: date) -> Lines:
        """The genes as of *on*, from the book as it is now; the rest takes longer.

        Raises:
            BookError: the book cannot be opened again.
        """
        house = self._genes.genes()
        return Lines(on=on, house=house, rows=tuple(gene_lines(self._keeping, house)))

    def whole(self, lines: Lines) -> Lines:
        """*lines* with those scored for colour, and with the cards out of date."""
        rows = (*lines.rows, *self._colours(lines.on))
        return replace(lines, rows=rows, cards=tuple(self._genes.cards()))

    def close(self) -> None:
        """Let go of the book; in the thread that used it."""
        self._genes.close()
        if self._colour is not None:
            self._colour.close()

    def _colours(self, on: date) -> Iterator[ColourLine]:
        from keeper.actions.colour_desk import ColourDesk

        desk = self._colour = self._colour or ColourDesk(self._keeping)
        for choice in desk.choices(on):
            yield ColourLine(choice=choice, facts=desk.facts(choice, on))


def gene_lines(keeping: Keeping, house: HouseGenes) -> Iterator[GeneLine]:
    """The genes of each species, in the order in which they were named."""
    for slug, genes in house.species.items():
        profile = keeping.shipped.get(slug)  # read without the book, which is another thread's
        words = short_species_words(profile) if profile else slug
        for named in genes.named:
            answer = genes.answers.get(named.gene)
            counts = dict.fromkeys(Standing, 0)
            for row in _here(genes):
                counts[standing(answer, row.animal)] += 1
            yield GeneLine(
                named=named,
                genes=genes,
                species=words,
                counts=counts,
                contradictions=bool(genes.looped) + (len(answer.contradictions) if answer else 0),
            )


def standing(answer: GeneAnswer | None, animal: AnimalId) -> Standing:
    """Where *animal* stands to a gene by its *answer*; None: nothing could be reckoned."""
    odds = answer.odds.get(animal) if answer else None
    if answer is None or odds is None:
        clashing = answer is not None and any(animal in c.animals for c in answer.contradictions)
        return Standing.CONTRADICTED if clashing else Standing.UNTOLD
    if odds.carries < LEAST:
        return Standing.CLEAR
    return _standing(odds, answer.inheritance)


def _standing(odds: CopyOdds, how: Inheritance) -> Standing:
    if odds.none:
        return Standing.MAY
    if how is Inheritance.RECESSIVE:
        return Standing.CARRIES if odds.one else Standing.SHOWS
    twice = how is Inheritance.INCOMPLETE and not odds.one
    return Standing.SUPER if twice else Standing.SHOWS


def gene_detail(line: GeneLine, cards: Sequence[CardOutOfDate] | None) -> GeneDetail:
    """Animals, proofs, the pairing that tells most, look-alikes, cards of one gene."""
    genes, gene, answer = line.genes, line.named.gene, line.answer
    proofs = tuple(_proofs(line))
    first = proofs[0] if proofs else None
    found = [contradiction_words(each, genes) for each in answer.contradictions] if answer else []
    alike = look_alikes(genes.named, genes.kin, genes.told)
    return GeneDetail(
        line=line,
        animals=tuple(_animals(line)),
        clear=line.counts[Standing.CLEAR],
        contradictions=(*_in_a_round(genes), *found),
        proofs=proofs,
        pair=try_pair(line, first.tested.animal, first.mate.animal) if first else None,
        tried=tuple(each for each in alike if gene in (each.first, each.second)),
        cards=tuple(each for each in cards or () if _same(each, line)),
    )


def _in_a_round(genes: SpeciesGenes) -> Iterator[str]:
    if genes.looped:
        yield tr(
            "{names}: their parents as written go in a round; they are taken for animals of unknown"
            " parents.",
            names=", ".join(genes.called(each) for each in genes.looped),
        )


def try_pair(line: GeneLine, one: AnimalId, other: AnimalId) -> PairTried:
    """What the young of the two may look like; the female of them is the dam."""
    genes = line.genes
    dam, sire = _seats(genes.rows[one], genes.rows[other])
    shared = genes.inbreeding.shared_ancestors(dam.animal, sire.animal)
    return PairTried(
        dam=dam,
        sire=sire,
        expected=expected_young(genes, dam.animal, sire.animal),
        at_least=tuple(_at_least(line, dam.animal, sire.animal)),
        shared=tuple(genes.called(each) for each in shared),
    )


def _at_least(line: GeneLine, dam: AnimalId, sire: AnimalId) -> Iterator[tuple[int, float]]:
    genes, gene = line.genes, line.named.gene
    odds = genes.odds(dam), genes.odds(sire)
    loci = [
        locus
        for locus in genes.loci
        if any(each.get(locus.gene, CLEAR).carries >= LEAST for each in odds)
    ]
    for eggs in EGGS:
        yield eggs, at_least_one(*odds, loci, (gene,), eggs)


def _seats(one: AnimalNow, other: AnimalNow) -> tuple[AnimalNow, AnimalNow]:
    """Dam and sire; where no sex tells, as they were named."""
    turned = one.sex.value == "male" or other.sex.value == "female"
    return (other, one) if turned else (one, other)


def _here(genes: SpeciesGenes) -> Iterable[AnimalNow]:
    return (row for row in genes.rows.values() if row.in_the_room)


def _animals(line: GeneLine) -> list[GeneAnimal]:
    """All but the clear of the room: what does not fit, the likeliest, what cannot be told."""
    listed = (_animal(line, row) for row in _here(line.genes))
    return sorted((each for each in listed if each.standing is not Standing.CLEAR), key=_rank)


def _rank(each: GeneAnimal) -> tuple[int, float, str]:
    return each.standing.value, -(each.odds.carries if each.odds else 0.0), each.row.called


def _animal(line: GeneLine, row: AnimalNow) -> GeneAnimal:
    stands = standing(line.answer, row.animal)
    told = None
    if stands is not Standing.CLEAR:
        told = told_of(line.genes, line.named, row.animal)
    if told is None:
        return GeneAnimal(row=row, standing=stands, odds=None, word="")
    because = because_words(told.because[:2], line.genes)
    return GeneAnimal(row=row, standing=stands, odds=told.odds, word=told.word, reason=because)


def _proofs(line: GeneLine) -> Iterator[Proof]:
    answer, rows = line.answer, line.genes.rows
    if answer is None or line.named.inheritance is not Inheritance.RECESSIVE:
        return
    here = {row.animal: row for row in _here(line.genes)}
    odds = {animal: answer.odds[animal] for animal in here if animal in answer.odds}
    pairs = proving_pairs(odds, {animal: row.sex for animal, row in here.items()})
    for pair in best_of_each(pairs):
        before, mate = odds[pair.tested], odds[pair.mate]
        yield Proof(
            pair=pair,
            tested=rows[pair.tested],
            mate=rows[pair.mate],
            word=odds_word(before, answer.inheritance),
            left=tuple((n, left_after(before, mate, n)) for n in LEFT_AFTER),
            needed=normals_needed(before, mate),
        )


def _same(card: CardOutOfDate, line: GeneLine) -> bool:
    return card.animal.species == line.named.species and card.gene == line.named.gene
