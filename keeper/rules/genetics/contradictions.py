"""Words that cannot all be true: which, and of what kind the mistake is."""

from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass, replace

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.genes import GeneTold, Inheritance
from keeper.husbandry.reasons import Reason, because
from keeper.rules.genetics.answers import Contradiction
from keeper.rules.genetics.conflict import least_conflict
from keeper.rules.genetics.gene_net import GeneNet, gene_net
from keeper.rules.genetics.narrowing import narrowed
from keeper.rules.genetics.pedigree import Lineage
from keeper.rules.genetics.solving import Solver
from keeper.rules.genetics.transmission import single
from keeper.rules.genetics.witness import ANY, SHOWING, GeneAsked

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("young of two that show it does not", ("young", "dam", "sire", "sires")),
    ("shows it though a parent is clear", ("young", "parent")),
    ("words cannot all be true", ("words",)),
    ("no candidate fits every gene", ("candidates",)),
    ("words beside it cannot all be true", ("animals",)),
)
"""Every reason of this module with the figures it carries; animals are keys."""


@dataclass(frozen=True, slots=True)
class Barred:
    """A contradiction, and the places for which nothing is told because of it."""

    contradiction: Contradiction
    places: frozenset[int]

    @property
    def why(self) -> Reason:
        return because(
            "words beside it cannot all be true", animals=len(self.contradiction.animals)
        )


def barred_by_words(lineage: Lineage, asked: GeneAsked, net: GeneNet, piece: int) -> Barred:
    """What cannot be in a *piece* of a *net* whose masks are not narrowed."""
    places = {at for at in _places(net, piece) if lineage.animals[at] is not None}
    told = [name for name in _names(lineage, sorted(places)) if asked.possible(name) != ANY]
    births = lineage.births_of(_tells(net, piece))

    def impossible(part: Sequence[AnimalId]) -> bool:
        return _impossible(births, asked, part)

    names = least_conflict(told, impossible) if told and impossible(told) else tuple(told)
    disputed = {lineage.place[name] for name in names}
    return Barred(
        Contradiction(animals=names, because=_kind(lineage, asked, names)),
        frozenset(disputed | _open(net, _touching(net, disputed) | {piece})),
    )


def barred_by_sires(
    lineage: Lineage, net: GeneNet, sires: frozenset[int], pieces: frozenset[int]
) -> Barred:
    """What cannot be because each gene leaves candidates, and no candidate is left by all."""
    young = {at for at, sire in enumerate(lineage.sires) if sire in sires}
    males = {male for sire in sires for male, _ in lineage.doubts[sire]}
    return Barred(
        Contradiction(
            animals=tuple(_names(lineage, sorted(young | males))),
            because=because("no candidate fits every gene", candidates=len(males)),
        ),
        _open(net, pieces),
    )


def _touching(net: GeneNet, disputed: Collection[int]) -> set[int]:
    """The pieces that rest on a word which may be the wrong one."""
    return {
        piece
        for link, piece in zip(net.links, net.pieces, strict=True)
        if any(at in disputed for at in link.places)
    }


def _open(net: GeneNet, pieces: Iterable[int]) -> frozenset[int]:
    """Places of these pieces whose copies are not plain from their own word."""
    places = {at for piece in pieces for at in _places(net, piece)}
    return frozenset(at for at in places if not single(net.masks[at]))


def _places(net: GeneNet, piece: int) -> set[int]:
    of_piece = (link for link, its in zip(net.links, net.pieces, strict=True) if its == piece)
    return {at for link in of_piece for at in link.places}


def _tells(net: GeneNet, piece: int) -> set[int]:
    of_piece = (link for link, its in zip(net.links, net.pieces, strict=True) if its == piece)
    return {link.tells for link in of_piece}


def _names(lineage: Lineage, places: Sequence[int]) -> list[AnimalId]:
    return [name for at in places if (name := lineage.animals[at]) is not None]


def _impossible(lineage: Lineage, asked: GeneAsked, names: Sequence[AnimalId]) -> bool:
    only = replace(asked, told={name: asked.told[name] for name in names})
    within = lineage.with_ancestors(lineage.place[name] for name in names)
    net, failed = narrowed(gene_net(lineage, only, within))
    if failed:
        return True
    return bool(Solver(lineage, [net], (), [frozenset(within)]).solve().failed)


def _kind(lineage: Lineage, asked: GeneAsked, names: Sequence[AnimalId]) -> Reason:
    for young in names:
        at = lineage.place[young]
        others = {lineage.place[name] for name in names if name != young}
        dam, sire = lineage.dams[at], lineage.sires[at]
        if dam is None or sire is None:
            continue
        males = {male for male, _ in lineage.doubts.get(sire, ((sire, 1.0),))}
        if others == {dam, *males} and _two_show(lineage, asked, young, others):
            return because(
                "young of two that show it does not",
                young=young,
                dam=lineage.animals[dam],
                sire=lineage.animals[min(males)],
                sires=len(males),
            )
        if len(names) == 2 and others <= {dam, sire} and asked.told[young].told in SHOWING:
            (parent,) = _names(lineage, sorted(others))
            if asked.told[parent].told is GeneTold.CLEAR:
                return because("shows it though a parent is clear", young=young, parent=parent)
    return because("words cannot all be true", words=len(names))


def _two_show(lineage: Lineage, asked: GeneAsked, young: AnimalId, others: set[int]) -> bool:
    if asked.inheritance is not Inheritance.RECESSIVE:
        return False
    shown = all(asked.told[name].told in SHOWING for name in _names(lineage, sorted(others)))
    return shown and asked.told[young].told is GeneTold.NORMAL
