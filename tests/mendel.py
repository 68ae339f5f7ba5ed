"""Odds of a gene by plain enumeration in whole numbers: every state of every animal.

Nothing of the program's ways is used: no leading terms, no pruning, no trees. A founder carries
each copy with the chance 1 in *rare*, small and exact, and a parent that is not written passes one
on with that chance; so figures agree with the program's limit but for about 1 / RARE. Chances are
whole parts, of 4 for a birth and of RARE² for a founder, because an animal's whole cancels out.
"""

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction
from itertools import product
from math import prod

from keeper.husbandry.genes import GeneTold, Inheritance
from keeper.rules.genetics.pedigree import Kin
from keeper.rules.genetics.witness import GeneAsked

RARE = 10**12
State = dict[object, int]

LOOKS = {
    Inheritance.RECESSIVE: ("normal", "normal", "visual"),
    Inheritance.INCOMPLETE: ("normal", "visual", "super"),
    Inheritance.DOMINANT: ("normal", "visual", "visual"),
}


def enumerated(
    kin: Sequence[Kin], genes: Sequence[GeneAsked], rare: int = RARE
) -> tuple[list[dict[int, list[Fraction]]], dict[int, dict[int, Fraction]]] | None:
    """By gene and animal odds of 0, 1 and 2 copies; by young odds of its sires. None: cannot be."""
    told = {name for gene in genes for name in gene.told}
    names = sorted(told | {name for each in kin for name in _named(each)})
    copies = [{name: [0] * 3 for name in names} for _ in genes]
    sires = {each.animal: dict.fromkeys(dict(each.sires), 0) for each in kin}
    whole = 0
    for weight, chosen in _choices(kin):
        of_genes = [_states(names, kin, chosen, gene, rare) for gene in genes]
        sums = [sum(share for share, _ in each) for each in of_genes]
        whole += weight * prod(sums)
        for each in kin:
            if len(each.sires) > 1:
                sires[each.animal][chosen[each.animal]] += weight * prod(sums)
        for nth, states in enumerate(of_genes):
            others = weight * prod(sums[:nth] + sums[nth + 1 :])
            for share, state in states:
                for name in names:
                    copies[nth][name][state[name]] += share * others
    if not whole:
        return None
    return [
        {name: [Fraction(part, whole) for part in each] for name, each in by_name.items()}
        for by_name in copies
    ], {
        young: {male: Fraction(part, whole) for male, part in each.items()}
        for young, each in sires.items()
    }


def _named(kin: Kin) -> list[int]:
    dam = [] if kin.dam is None else [kin.dam]
    return [kin.animal, *dam, *(male for male, _ in kin.sires)]


def _brood(kin: Kin) -> object:
    return (kin.brood, kin.dam, kin.sires) if kin.brood is not None else ("alone", kin.animal)


def _choices(kin: Sequence[Kin]) -> Iterator[tuple[int, dict[int, int]]]:
    """Every way to say who sired each doubtful brood, and its weight; weights are whole."""
    broods = {_brood(each): each.sires for each in kin if len(each.sires) > 1}
    for picked in product(*broods.values()):
        who = dict(zip(broods, picked, strict=True))
        weight = prod(int(each) for _, each in who.values())
        yield weight, {each.animal: who[_brood(each)][0] for each in kin if _brood(each) in who}


def _states(
    names: Sequence[int],
    kin: Sequence[Kin],
    chosen: Mapping[int, int],
    gene: GeneAsked,
    rare: int,
) -> list[tuple[int, State]]:
    """Every state of all animals of one gene that the words allow, and its chance."""
    born = {each.animal: _parents(each, chosen) for each in kin}
    for each in kin:
        if _word_stands_for_parents(each, gene):
            born[each.animal] = None
    everyone: set[object] = set(names)
    everyone |= {who for parents in born.values() if parents for who in parents} - {None}
    left: list[tuple[int, State]] = [(1, {})]
    for who in _parents_first(everyone, born):
        left = [
            (share * chance, state | {who: copies})
            for share, state in left
            for copies in range(3)
            if (chance := _chance(who, copies, state, born, gene, rare))
        ]
    return left


def _parents(kin: Kin, chosen: Mapping[int, int]) -> tuple[object, object]:
    dam: object = kin.dam
    sire: object = chosen.get(kin.animal, kin.sires[0][0] if kin.sires else None)
    if dam is None and kin.brood is not None:
        dam = ("dam", kin.brood)
    if sire is None and kin.brood is not None:
        sire = ("sire", kin.brood, kin.dam)
    return dam, sire


def _word_stands_for_parents(kin: Kin, gene: GeneAsked) -> bool:
    word = gene.told.get(kin.animal)
    if word is None:
        return False
    written = [*([] if kin.dam is None else [kin.dam]), *([kin.sires] if kin.sires else [])]
    if word.told is GeneTold.POSSIBLE and word.percent is not None:
        sure = [kin.dam, *(male for male, _ in kin.sires if len(kin.sires) == 1)]
        shown = any(each is not None and _only_two(gene, each) for each in sure)
        return len(written) < 2 and not shown
    shows = word.told in (GeneTold.VISUAL, GeneTold.SUPER)
    return gene.inheritance is Inheritance.DOMINANT and shows and not written


def _only_two(gene: GeneAsked, name: int) -> bool:
    word = gene.told.get(name)
    if word is None or gene.inheritance is Inheritance.DOMINANT:
        return False
    if word.told is GeneTold.SUPER:
        return True
    return gene.inheritance is Inheritance.RECESSIVE and word.told is GeneTold.VISUAL


def _parents_first(
    everyone: set[object], born: Mapping[int, tuple[object, object] | None]
) -> list[object]:
    order: list[object] = []

    def enter(who: object) -> None:
        if who not in order:
            for parent in born.get(who) or ():  # type: ignore[call-overload]
                if parent is not None:
                    enter(parent)
            order.append(who)

    for who in sorted(everyone, key=str):
        enter(who)
    return order


def _chance(
    who: object,
    copies: int,
    state: State,
    born: Mapping[int, tuple[object, object] | None],
    gene: GeneAsked,
    rare: int,
) -> int:
    if not _allowed(who, copies, gene):
        return 0
    parents = born.get(who)  # type: ignore[call-overload]
    if parents is None:
        return _of_founder(who, copies, gene, rare)
    (one, of), (other, its) = (
        (1, rare) if parent is None else (state[parent], 2) for parent in parents
    )
    one_only = one * (its - other) + other * (of - one)
    return ((of - one) * (its - other), one_only, one * other)[copies]


def _of_founder(who: object, copies: int, gene: GeneAsked, rare: int) -> int:
    word = gene.told.get(who) if isinstance(who, int) else None
    if word is not None and word.told is GeneTold.POSSIBLE and word.percent is not None:
        return (100 - int(word.percent), int(word.percent), 0)[copies]
    shows = word is not None and word.told in (GeneTold.VISUAL, GeneTold.SUPER)
    if shows and gene.inheritance is Inheritance.DOMINANT:
        return (0, 2, 1)[copies]
    return ((rare - 1) ** 2, 2 * (rare - 1), 1)[copies]


def _allowed(who: object, copies: int, gene: GeneAsked) -> bool:
    word = gene.told.get(who) if isinstance(who, int) else None
    if word is None or (word.told is GeneTold.POSSIBLE and word.percent is None):
        return True
    if word.told is GeneTold.HET:
        return copies == 1
    if word.told is GeneTold.CLEAR:
        return copies == 0
    unseen = who in gene.hidden
    if word.told is GeneTold.POSSIBLE:
        return unseen or copies < 2
    look = LOOKS[gene.inheritance][copies]
    if word.told is GeneTold.NORMAL:
        return unseen or look == "normal"
    if gene.inheritance is Inheritance.INCOMPLETE:
        return look == word.told
    return look == "visual"
