"""What a clutch may give and what its young tell of their sire: genes beside a clutch."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

from keeper.actions.clutch_rows import ClutchRow
from keeper.actions.gene_odds import HouseGenes, SpeciesGenes
from keeper.actions.gene_page import inbreeding_words, sires_after_looks
from keeper.actions.gene_pairing import Expected, ExpectedLook, Sires, eggs_words, expected_of
from keeper.actions.gene_told import contradictions_of
from keeper.husbandry.animal import AnimalId
from keeper.language import tr
from keeper.reports.figures import percent
from keeper.reports.gene_figures import chance_words
from keeper.rules.genetics.inbreeding import Closeness

LOOKS_MOST = 6


@dataclass(frozen=True, slots=True, kw_only=True)
class SireByLooks:
    """A candidate by name. written, odds: his share of 1 before the looks of the young, after."""

    name: str
    written: float
    odds: float


@dataclass(frozen=True, slots=True, kw_only=True)
class ClutchGenes:
    """expected: of so many good eggs as were laid, over whoever the sire was.

    sires: only where the looks of the young, or the sire on their pages, moved the odds.
    contradictions: words of dam, sires and young that cannot all be true.
    """

    on: date
    eggs: int
    expected: Expected
    sires: tuple[SireByLooks, ...] = ()
    contradictions: tuple[str, ...] = ()

    @property
    def looks(self) -> tuple[ExpectedLook, ...]:
        """Looks to be told: none where all young look normal and carry nothing."""
        plain = len(self.expected.looks) == 1 and not self.expected.looks[0].carries
        return () if plain and not self.expected.looks[0].shows else self.expected.looks

    @property
    def expected_words(self) -> str:
        """Each look in how many of the eggs, and what may lie under it."""
        told = [_look(look, self.eggs) for look in self.looks[:LOOKS_MOST]]
        return " ".join(told)

    @property
    def sire_words(self) -> str:
        """Odds of the sires after the looks; empty where nothing is added."""
        return ", ".join(_sire(each) for each in self.sires)

    @property
    def inbreeding(self) -> str:
        """F of the young, where that is close."""
        if self.expected.advice == Closeness.OPEN.value:
            return ""
        return inbreeding_words(self.expected.f, self.expected.depth)


def clutch_genes(house: HouseGenes, row: ClutchRow) -> ClutchGenes | None:
    """Of the clutch *row*; None where no male is known or its species is not."""
    genes, dam = house.of(row.dam), row.dam.animal
    if genes is None or dam not in genes.kin:
        return None
    sires = _sires(genes, row)
    if not sires:
        return None
    return ClutchGenes(
        on=house.on,
        eggs=row.facts.laid.good,
        expected=expected_of(genes, dam, sires, row.facts.laid.good),
        sires=tuple(_by_looks(genes, row)),
        contradictions=tuple(_contradictions(genes, row)),
    )


def _sires(genes: SpeciesGenes, row: ClutchRow) -> Sires:
    """After the looks of its young; without young those that were with her."""
    for young in row.young:
        if young.animal in genes.kin and genes.kin[young.animal].dam == row.dam.animal:
            return sires_after_looks(genes, young.animal)
    if genes.sires is None:
        return ()
    found = genes.sires.candidates(row.dam.animal, row.laid_on)
    return tuple((each.male, each.odds) for each in found)


def _by_looks(genes: SpeciesGenes, row: ClutchRow) -> Iterator[SireByLooks]:
    """Nothing where the sire is not in doubt, or only what the list of sires says already."""
    young = next((each.animal for each in row.young if genes.brood(each.animal)), None)
    brood = genes.brood(young) if young is not None else None
    if young is None or brood is None or not brood.in_doubt:
        return
    before = dict(brood.sires)
    whole = sum(before.values())
    after = sires_after_looks(genes, young)
    moved = any(abs(odds - before.get(male, 0.0) / whole) >= 0.005 for male, odds in after)
    if moved or brood.written is not None:
        for male, odds in after:
            yield SireByLooks(
                name=genes.called(male), written=before.get(male, 0.0) / whole, odds=odds
            )


def _contradictions(genes: SpeciesGenes, row: ClutchRow) -> Iterator[str]:
    asked: list[AnimalId] = [row.dam.animal, *(young.animal for young in row.young)]
    told = [words for animal in asked[1:] for words in contradictions_of(genes, animal)]
    yield from dict.fromkeys(told)


def share_of(look: ExpectedLook) -> str:
    """Its part of the young in per cent."""
    return percent(100 * look.share)


def _look(look: ExpectedLook, eggs: int) -> str:
    figures = {"look": look.words, "share": share_of(look), "many": eggs_words(look, eggs)}
    if look.carries:
        carries = ", ".join(look.carries)
        return tr("{look}: {share}, {many}; {carries}.", carries=carries, **figures)
    return tr("{look}: {share}, {many}.", **figures)


def _sire(each: SireByLooks) -> str:
    if each.odds <= 0:
        return tr("{name} ruled out", name=each.name)
    odds = chance_words(each.odds) if each.odds < 1 else tr("for certain")
    return tr("{name} {odds}", name=each.name, odds=odds)
