"""Whether two recessive genes that look alike were tried against each other, and what it told."""

from datetime import date

from keeper.husbandry.genes import GeneNamed, GeneRead, GeneTold, Inheritance
from keeper.husbandry.when import on_day
from keeper.rules.genetics.pedigree import Kin
from keeper.rules.look_alikes import look_alikes

HAPPENED = on_day(date(2026, 3, 1))
DAM, SIRE, OTHER, ONE, TWO, THREE = 1, 2, 3, 11, 12, 13
VISUAL, NORMAL = GeneTold.VISUAL, GeneTold.NORMAL


def named(gene, how=Inheritance.RECESSIVE):
    return GeneNamed(happened=HAPPENED, gene=gene, species="house_snake", inheritance=how)


def read(gene, told):
    return {
        animal: GeneRead(animal=animal, happened=HAPPENED, gene=gene, told=its)
        for animal, its in told.items()
    }


def asked(chalk, ember, *young):
    told = {
        "chalk": read("chalk", {DAM: VISUAL, **chalk}),
        "ember": read("ember", {SIRE: VISUAL, **ember}),
    }
    kin = {each.animal: each for each in young}
    (found,) = look_alikes([named("chalk"), named("ember")], kin, told)
    return found


def child(animal, *sires):
    return Kin(animal=animal, dam=DAM, sires=tuple((sire, 1.0) for sire in sires or (SIRE,)))


def test_without_a_pairing_of_one_that_shows_each_they_are_untested():
    assert asked({}, {}).found == "untested"
    assert asked({}, {}, child(ONE, OTHER)).found == "untested"


def test_one_normal_looking_young_shows_two_places():
    found = asked({ONE: NORMAL}, {}, child(ONE), child(TWO))

    assert found.found == "two places"
    (crossed,) = found.crossed
    assert (crossed.dam, crossed.sire, crossed.normal, crossed.showing) == (DAM, SIRE, 1, 0)


def test_a_normal_looking_young_whose_sire_is_in_doubt_settles_nothing():
    found = asked({ONE: NORMAL}, {}, child(ONE, SIRE, OTHER))

    assert found.found == "sire in doubt"
    assert not found.crossed[0].sire_sure


def test_a_sure_young_settles_it_whatever_stands_beside_it_in_doubt():
    assert asked({ONE: NORMAL, TWO: NORMAL}, {}, child(ONE, SIRE, OTHER), child(TWO)).found == (
        "two places"
    )


def test_young_that_all_show_it_may_be_one_place_and_are_never_proof():
    found = asked({ONE: VISUAL}, {TWO: VISUAL}, child(ONE), child(TWO))

    assert found.found == "may be one place"
    assert found.crossed[0].showing == 2


def test_young_of_which_nothing_is_told_leave_it_open():
    assert asked({}, {}, child(ONE)).found == "young not told"


def test_genes_that_are_not_recessive_are_not_tried():
    genes = [named("chalk"), named("grit", Inheritance.INCOMPLETE), named("ember")]

    assert [(f.first, f.second) for f in look_alikes(genes, {}, {})] == [("chalk", "ember")]
