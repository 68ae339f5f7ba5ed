"""Why an animal's odds are what they are: facts of its kin that hold, the strongest first.

Only what is certain by the answer itself is called so: a parent that carries is one whose odds
say so, young that prove are young whose sire is sure.
"""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.genes import GeneTold, Inheritance
from keeper.husbandry.reasons import Reason, because
from keeper.rules.genetics.answers import CopyOdds, SireShare
from keeper.rules.genetics.pedigree import Lineage
from keeper.rules.genetics.witness import SHOWING, GeneAsked

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("shows it", ()),
    ("shows two copies", ()),
    ("does not show it, so has none", ()),
    ("one copy or two", ("two",)),
    ("told het", ()),
    ("told clear", ()),
    ("young that show it", ("young", "of")),
    ("young that carry it, the other parent being clear", ("young", "of")),
    ("both parents show it", ("dam", "sire")),
    ("a parent shows it", ("parent",)),
    ("both parents carry it", ("dam", "sire")),
    ("one parent carries it, the other is clear", ("parent",)),
    ("one parent may carry it, the other is clear", ("parent", "odds")),
    ("parents may carry it", ("dam", "dam_odds", "sire", "sire_odds")),
    ("a parent carries it", ("parent",)),
    ("a parent may carry it", ("parent", "odds")),
    ("both parents are clear", ()),
    ("does not show it, a sibling does", ("sibling",)),
    ("normal young by one that shows it", ("young",)),
    ("normal young by a carrier", ("young",)),
    ("sire in doubt", ("candidates", "likeliest", "odds")),
    ("sire counted out, nothing tells that he carries it", ("male", "written")),
    ("told possible het", ("percent",)),
    ("told possible het, the parents say more", ("percent",)),
    ("another gene hides it", ()),
    ("young may have it from here", ("of", "odds")),
    ("nothing speaks for it, counts as clear", ()),
)
"""Every reason of this module with the figures it carries; dam, sire, parent, sibling, of and
likeliest are animals by key, odds are 0 to 1, young and candidates are counts."""


@dataclass(frozen=True, slots=True)
class Told:
    """All that a reason may rest on. sires: shares by young, where the sire is in doubt."""

    lineage: Lineage
    asked: GeneAsked
    odds: Mapping[AnimalId, CopyOdds]
    sires: Mapping[AnimalId, tuple[SireShare, ...]]
    own_word: frozenset[int]


@dataclass(frozen=True, slots=True)
class _Family:
    """Of one animal: its parents where they are sure, and its young with their other parent."""

    dam: AnimalId | None
    sire: AnimalId | None
    young: Sequence[tuple[AnimalId, AnimalId | None]]
    siblings: Sequence[AnimalId]


def reasons_by_animal(told: Told) -> dict[AnimalId, tuple[Reason, ...]]:
    """Of every animal with odds."""
    families = _families(told)
    return {
        name: tuple(reason for find in _FINDERS for reason in find(told, name, families[name]))
        or _of_founder(told, name, families[name])
        for name in told.odds
    }


def _of_founder(told: Told, name: AnimalId, family: _Family) -> tuple[Reason, ...]:
    """Of an animal of which nothing else is known."""
    young = [each for each, _ in family.young if each in told.odds]
    if not told.odds[name].carries or not young:
        return (because("nothing speaks for it, counts as clear"),)
    likeliest = max(young, key=lambda each: told.odds[each].carries)
    odds = told.odds[likeliest].carries
    return (because("young may have it from here", of=likeliest, odds=odds),)


def _families(told: Told) -> dict[AnimalId, _Family]:
    parents = {name: _sure_parents(told, name) for name in told.lineage.place}
    young: dict[AnimalId, list[tuple[AnimalId, AnimalId | None]]] = {}
    litters: dict[tuple[int, int], list[AnimalId]] = {}
    for name, (dam, sire) in parents.items():
        for parent, other in ((dam, sire), (sire, dam)):
            if parent is not None:
                young.setdefault(parent, []).append((name, other))
        litters.setdefault(_litter(told, name), []).append(name)
    return {
        name: _Family(dam, sire, young.get(name, ()), litters[_litter(told, name)])
        for name, (dam, sire) in parents.items()
    }


def _litter(told: Told, name: AnimalId) -> tuple[int, int]:
    """The same for full siblings, young of one clutch by an unknown sire among them."""
    at = told.lineage.place[name]
    dam, sire = told.lineage.dams[at], told.lineage.sires[at]
    return (-1, at) if dam is None or sire is None or at in told.own_word else (dam, sire)


def _sure_parents(told: Told, name: AnimalId) -> tuple[AnimalId | None, AnimalId | None]:
    at = told.lineage.place[name]
    if at in told.own_word:
        return None, None
    dam, sire = told.lineage.dams[at], told.lineage.sires[at]
    shares = told.sires.get(name, ())
    sure = next((each.male for each in shares if each.odds == 1), None)
    return (
        None if dam is None else told.lineage.animals[dam],
        sure if sire is None or shares else told.lineage.animals[sire],
    )


def _own_look(told: Told, name: AnimalId, family: _Family) -> Iterator[Reason]:
    word = told.asked.told.get(name)
    if word is None:
        return
    if word.told is GeneTold.HET:
        yield because("told het")
    elif word.told is GeneTold.CLEAR:
        yield because("told clear")
    elif word.told in SHOWING:
        twice = word.told is GeneTold.SUPER and told.asked.inheritance is Inheritance.INCOMPLETE
        yield because("shows two copies" if twice else "shows it")
        if told.odds[name].sure is None:
            yield because("one copy or two", two=told.odds[name].two)
    elif _looked_normal(told, name) and told.asked.inheritance is not Inheritance.RECESSIVE:
        yield because("does not show it, so has none")


def _proof(told: Told, name: AnimalId, family: _Family) -> Iterator[Reason]:
    """Young that prove it a carrier, where its own look does not."""
    word = told.asked.told.get(name)
    if told.odds[name].none > 0 or (word is not None and word.told in SHOWING):
        return
    recessive = told.asked.inheritance is Inheritance.RECESSIVE
    shown = [young for young, _ in family.young if recessive and _shows(told, young)]
    if shown:
        yield because("young that show it", young=len(shown), of=shown[0])
        return
    passed = [
        young
        for young, other in family.young
        if _sure_to_carry(told, young) and _sure(told, other) == 0
    ]
    if passed:
        why = "young that carry it, the other parent being clear"
        yield because(why, young=len(passed), of=passed[0])


def _parents_say(told: Told, name: AnimalId, family: _Family) -> Iterator[Reason]:
    dam, sire = family.dam, family.sire
    if dam is None or sire is None:
        yield from _one_parent_says(told, dam if sire is None else sire)
        return
    both = (_sure(told, dam), _sure(told, sire))
    if both == (0, 0):
        yield because("both parents are clear")
    elif both == (2, 2):
        yield because("both parents show it", dam=dam, sire=sire)
    elif 2 in both:
        yield because("a parent shows it", parent=dam if both[0] == 2 else sire)
    elif both == (1, 1):
        yield because("both parents carry it", dam=dam, sire=sire)
    elif 0 in both:
        yield from _with_clear_mate(told, sire if both[0] == 0 else dam)
    elif dam in told.odds and sire in told.odds:
        odds = {"dam_odds": told.odds[dam].carries, "sire_odds": told.odds[sire].carries}
        yield because("parents may carry it", dam=dam, sire=sire, **odds)


def _with_clear_mate(told: Told, parent: AnimalId) -> Iterator[Reason]:
    if _sure(told, parent) == 1:
        yield because("one parent carries it, the other is clear", parent=parent)
    elif parent in told.odds:
        why = "one parent may carry it, the other is clear"
        yield because(why, parent=parent, odds=told.odds[parent].carries)


def _one_parent_says(told: Told, parent: AnimalId | None) -> Iterator[Reason]:
    """Where the other is not known, or is in doubt."""
    if parent is None or parent not in told.odds:
        return
    copies, carries = _sure(told, parent), told.odds[parent].carries
    if copies == 2:
        yield because("a parent shows it", parent=parent)
    elif copies == 1:
        yield because("a parent carries it", parent=parent)
    elif carries:
        yield because("a parent may carry it", parent=parent, odds=carries)


def _sibling_says(told: Told, name: AnimalId, family: _Family) -> Iterator[Reason]:
    if told.asked.inheritance is not Inheritance.RECESSIVE or not _looked_normal(told, name):
        return
    showing = [each for each in family.siblings if each != name and _shows(told, each)]
    if showing:
        yield because("does not show it, a sibling does", sibling=showing[0])


def _normal_young(told: Told, name: AnimalId, family: _Family) -> Iterator[Reason]:
    """Young that speak against it, as long as it is in doubt."""
    if told.odds[name].sure is not None or told.asked.inheritance is not Inheritance.RECESSIVE:
        return
    normal = [other for young, other in family.young if _looked_normal(told, young)]
    for why, copies in (("normal young by one that shows it", 2), ("normal young by a carrier", 1)):
        count = sum(_sure(told, other) == copies for other in normal)
        if count:
            yield because(why, young=count)


def _doubtful_sire(told: Told, name: AnimalId, family: _Family) -> Iterator[Reason]:
    shares = [each for each in told.sires.get(name, ()) if each.odds]
    if len(shares) > 1:
        first = shares[0]
        yield because(
            "sire in doubt", candidates=len(shares), likeliest=first.male, odds=first.odds
        )


def _sire_counted_out(told: Told, name: AnimalId, family: _Family) -> Iterator[Reason]:
    """The weightiest whom the looks would leave."""
    out = [each for each in told.sires.get(name, ()) if each.fits and not each.odds]
    if out:
        first = max(out, key=lambda each: each.written)
        why = "sire counted out, nothing tells that he carries it"
        yield because(why, male=first.male, written=first.written)


def _own_doubt(told: Told, name: AnimalId, family: _Family) -> Iterator[Reason]:
    word = told.asked.told.get(name)
    if word is None:
        return
    if word.told is GeneTold.POSSIBLE and word.percent is not None:
        used = told.lineage.place[name] in told.own_word
        why = "told possible het" if used else "told possible het, the parents say more"
        yield because(why, percent=word.percent)
    if word.told is GeneTold.NORMAL and name in told.asked.hidden:
        yield because("another gene hides it")


_FINDERS: Sequence[Callable[[Told, AnimalId, _Family], Iterator[Reason]]] = (
    _own_look,
    _proof,
    _parents_say,
    _sibling_says,
    _normal_young,
    _doubtful_sire,
    _sire_counted_out,
    _own_doubt,
)


def _sure(told: Told, name: AnimalId | None) -> int | None:
    return None if name is None or name not in told.odds else told.odds[name].sure


def _sure_to_carry(told: Told, name: AnimalId) -> bool:
    return name in told.odds and told.odds[name].none == 0


def _shows(told: Told, name: AnimalId) -> bool:
    word = told.asked.told.get(name)
    return word is not None and word.told in SHOWING


def _looked_normal(told: Told, name: AnimalId) -> bool:
    """Whether it was seen not to show it; one that is said to be het shows nothing either."""
    word = told.asked.told.get(name)
    if word is None or (name in told.asked.hidden and word.told is GeneTold.NORMAL):
        return False
    return word.told is GeneTold.NORMAL
