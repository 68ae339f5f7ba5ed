"""How likely each animal carries a gene, from everything told of the whole pedigree at once.

Words on copies (het, clear) are certain, looks are witnesses through the inheritance, young
witness for their parents and they for them, loops and doubtful sires included. A founder of
which nothing is told counts as clear unless its young say otherwise (common practice). Words
that cannot all be true are named; no odds are given where they bear.
"""

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import replace

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.reasons import because
from keeper.rules.genetics.answers import CopyOdds, GeneAnswer, SireShare
from keeper.rules.genetics.contradictions import Barred, barred_by_sires, barred_by_words
from keeper.rules.genetics.gene_net import GeneNet, gene_net
from keeper.rules.genetics.narrowing import narrowed
from keeper.rules.genetics.odds_reasons import Told, reasons_by_animal
from keeper.rules.genetics.pedigree import Kin, Lineage, lineage_of
from keeper.rules.genetics.solving import WIDEST, Solved, Solver
from keeper.rules.genetics.transmission import single, states_of
from keeper.rules.genetics.witness import ANY, GeneAsked

TOO_WIDE = because("too many loops to tell exactly")


def gene_odds(kin: Iterable[Kin], asked: GeneAsked, *, widest: int = WIDEST) -> GeneAnswer:
    """One gene by itself."""
    return genes_odds(kin, {"": asked}, widest=widest)[""]


def genes_odds(
    kin: Iterable[Kin], genes: Mapping[str, GeneAsked], *, widest: int = WIDEST
) -> dict[str, GeneAnswer]:
    """All genes at once: what young show of one tells who sired them for the others too.

    widest: states that the tables of one part may have before "too many loops" is answered.
    Raises OwnAncestor, or ValueError where an animal is given twice.
    """
    lineage = lineage_of(_with_told(kin, genes))
    before = [gene_net(lineage, asked) for asked in genes.values()]
    nets, failed = [], []
    for gene, net in enumerate(before):
        after, pieces = narrowed(net)
        nets.append(after)
        failed += [(gene, piece) for piece in pieces]
    core = [_core(lineage, asked) for asked in genes.values()]
    solved = Solver(lineage, nets, failed, core, widest).solve()
    return {
        name: _answer(lineage, asked, gene, (before[gene], nets[gene]), solved)
        for gene, (name, asked) in enumerate(genes.items())
    }


def _with_told(kin: Iterable[Kin], genes: Mapping[str, GeneAsked]) -> list[Kin]:
    """Those too that something is told of and no kin is known of."""
    written = list(kin)
    told = {name for asked in genes.values() for name in asked.told}
    alone = told - {each.animal for each in written}
    return written + [Kin(animal=name) for name in sorted(alone)]


def _core(lineage: Lineage, asked: GeneAsked) -> frozenset[int]:
    told = (at for name, at in lineage.place.items() if asked.possible(name) != ANY)
    return frozenset(lineage.with_ancestors(told))


def _answer(
    lineage: Lineage, asked: GeneAsked, gene: int, nets: tuple[GeneNet, GeneNet], solved: Solved
) -> GeneAnswer:
    before, after = nets
    barred = _barred(lineage, asked, before, gene, solved)
    untold = {at: TOO_WIDE for its_gene, at in solved.wide if its_gene == gene}
    untold |= {at: each.why for each in barred for at in each.places}
    odds = {
        name: _copies(after.masks[at], solved.copies.get((gene, at)))
        for name, at in lineage.place.items()
        if at not in untold
    }
    logical = _logical(lineage, asked, untold.keys())
    sires = _sires(lineage, logical, gene, solved, untold.keys())
    return GeneAnswer(
        inheritance=asked.inheritance,
        odds=odds,
        sires=sires,
        by_rule=frozenset(
            name
            for name, each in odds.items()
            if each.sure is not None and not single(logical.masks[lineage.place[name]])
        ),
        apart=frozenset(name for name in sires if _sire_of(lineage, name) in solved.apart),
        contradictions=tuple(each.contradiction for each in barred),
        untold={name: untold[at] for name, at in lineage.place.items() if at in untold},
        because=reasons_by_animal(Told(lineage, asked, odds, sires, after.own_word)),
    )


def _logical(lineage: Lineage, asked: GeneAsked, untold: Collection[int]) -> GeneNet:
    """What undisputed words leave possible, where founders without word may be anything."""
    words = {name: word for name, word in asked.told.items() if lineage.place[name] not in untold}
    return narrowed(gene_net(lineage, replace(asked, told=words), all_open=True))[0]


def _barred(
    lineage: Lineage, asked: GeneAsked, net: GeneNet, gene: int, solved: Solved
) -> list[Barred]:
    found = [
        barred_by_words(lineage, asked, net, piece)
        for its_gene, piece in sorted(solved.failed)
        if its_gene == gene
    ]
    for sires, pieces in solved.quarrels:
        of_gene = frozenset(piece for its_gene, piece in pieces if its_gene == gene)
        if of_gene:
            found.append(barred_by_sires(lineage, net, sires, of_gene))
    return found


def _copies(mask: int, states: Mapping[int, float] | None) -> CopyOdds:
    if states is None:
        states = dict.fromkeys(states_of(mask), 1.0)
    return CopyOdds(states.get(0, 0.0), states.get(1, 0.0), states.get(2, 0.0))


def _sires(
    lineage: Lineage, logical: GeneNet, gene: int, solved: Solved, untold: Collection[int]
) -> dict[AnimalId, tuple[SireShare, ...]]:
    shares = {
        at: _shares(lineage, logical.masks, at, solved.sires[gene, at])
        for at in lineage.doubts
        if (gene, at) in solved.sires and not _rests_on(lineage, at, untold)
    }
    return {
        name: shares[sire]
        for name in lineage.place
        if (sire := _sire_of(lineage, name)) in shares and sire is not None
    }


def _rests_on(lineage: Lineage, sire: int, untold: Collection[int]) -> bool:
    return sire in untold or any(male in untold for male, _ in lineage.doubts[sire])


def _sire_of(lineage: Lineage, name: AnimalId) -> int | None:
    return lineage.sires[lineage.place[name]]


def _shares(
    lineage: Lineage, masks: Sequence[int], sire: int, odds: Mapping[int, float]
) -> tuple[SireShare, ...]:
    found = []
    for nth, (male, written) in enumerate(lineage.doubts[sire]):
        name = lineage.animals[male]
        if name is not None:
            fits = bool(masks[male] & masks[sire])
            share = odds.get(nth, 0.0)
            found.append(SireShare(male=name, written=written, odds=share, fits=fits))
    return tuple(sorted(found, key=lambda each: (-each.odds, each.male)))
