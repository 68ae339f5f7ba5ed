"""Genes of a house read from its book: kin, sires in doubt, past days, cards out of date."""

from collections.abc import Iterator
from contextlib import closing
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path

import pytest

from keeper.actions.bundle_files import write_bundle
from keeper.actions.gene_cards import cards_out_of_date
from keeper.actions.gene_desk import GeneDesk
from keeper.actions.gene_page import genes_of, genes_of_one, sires_after_looks
from keeper.actions.gene_pairing import expected_young
from keeper.actions.joining import join, looked_at
from keeper.actions.keeping import new_keeping
from keeper.actions.noting import note
from keeper.actions.undoing import put_back, take_back
from keeper.husbandry.animal import Sex, SexedBy, Status
from keeper.husbandry.events import Described, Sexed, Stock
from keeper.husbandry.genes import GeneRead
from keeper.husbandry.when import at_instant
from keeper.reports.figures import plain
from keeper.store import reading
from tests.unit.gene_house import SPECIES, House


@pytest.fixture
def house(tmp_path: Path) -> Iterator[House]:
    made = House(tmp_path / "genes.book")
    with closing(made.keeping):
        made.name("chalk recessive")
        made.founder("Dam", Sex.FEMALE)
        made.founder("Sire", Sex.MALE)
        yield made


def carrying(house: House, *, dam: str = "het", sire: str = "het") -> None:
    house.reads("Dam", f"chalk {dam}")
    house.reads("Sire", f"chalk {sire}")


def test_normal_young_of_two_hets_are_66_per_cent(house: House) -> None:
    carrying(house)
    house.bred("Dam", "Sire", "23-1", "a", "b")
    house.reads("a", "chalk normal")

    assert house.word("a") == "66 % het"
    assert house.word("b") == "two copies 25 %, one 50 %"
    assert house.word("Dam") == "het"


def test_a_look_does_not_wipe_out_what_was_said_of_the_animal(house: House) -> None:
    house.reads("Dam", "chalk 66 %, from her breeder")
    house.after(400).reads("Dam", "chalk normal")
    house.reads("Sire", "chalk het")
    house.after(1).reads("Sire", "chalk visual")

    assert house.word("Dam") == "66 % het"
    assert house.word("Sire") == "visual"


def test_a_written_sire_is_sure_while_no_other_male_was_with_her(house: House) -> None:
    carrying(house)
    house.founder("Other", Sex.MALE)
    house.bred("Dam", "Sire", "23-1", "a")

    assert house.genes().kin[house.keys["a"]].sires == ((house.keys["Sire"], 1.0),)


def test_another_male_with_her_puts_a_written_sire_in_doubt(house: House) -> None:
    carrying(house)
    house.founder("Other", Sex.MALE)
    house.paired("Dam", "Other")
    house.after(3).bred("Dam", "Sire", "23-1", "a")
    house.reads("a", "chalk normal")

    males = dict(house.genes().kin[house.keys["a"]].sires)

    assert set(males) == {house.keys["Sire"], house.keys["Other"]}
    assert males[house.keys["Sire"]] > males[house.keys["Other"]]
    assert 50 < int(house.word("a").split()[0]) < 66


def test_a_male_of_long_ago_does_not_unsettle_a_written_sire(house: House) -> None:
    carrying(house)
    house.founder("Other", Sex.MALE)
    house.paired("Dam", "Other", locked=False)
    house.after(420).bred("Dam", "Sire", "24-1", "a")

    assert house.genes().kin[house.keys["a"]].sires == ((house.keys["Sire"], 1.0),)


def test_without_a_written_sire_those_in_her_tub_count(house: House) -> None:
    house.founder("Other", Sex.MALE, "B1·2")
    house.moved("Dam", "B1·1")
    house.moved("Sire", "B1·1")
    house.after(30).moved("Sire", "B1·3")
    house.after(60).laid("Dam", "23-1")
    house.after(62).young("Dam", "23-1", "a")

    assert [male for male, _ in house.genes().kin[house.keys["a"]].sires] == [house.keys["Sire"]]


def test_a_male_that_laid_is_no_sire_any_more(house: House) -> None:
    carrying(house)
    house.founder("Other", Sex.MALE)
    house.paired("Dam", "Other", locked=False)
    house.bred("Dam", "Sire", "23-1", "a")
    house.reads("a", "chalk normal")
    laid = {"sex": Sex.FEMALE, "sexed_by": SexedBy.LAID}
    house.after(10)
    sexed = Sexed(animal=house.keys["Sire"], happened=at_instant(house.at), **laid)
    note(house.keeping, "sex", sexed)

    genes = house.genes()

    assert genes.kin[house.keys["a"]].sires == ((house.keys["Other"], 1.0),)
    assert house.word("a") == "50 % het"


def test_looks_of_the_young_rule_a_sire_out(house: House) -> None:
    carrying(house, sire="visual")
    house.founder("Other", Sex.MALE)
    house.reads("Other", "chalk clear")
    house.paired("Dam", "Other")
    house.bred("Dam", "Sire", "23-1", "a", "b", written=False)
    before = dict(house.genes().kin[house.keys["a"]].sires)
    house.reads("a", "chalk visual")
    house.reads("b", "chalk normal")

    after = sires_after_looks(house.genes(), house.keys["b"])

    assert set(before) == {house.keys["Sire"], house.keys["Other"]}
    assert dict(after)[house.keys["Sire"]] == pytest.approx(1.0)
    assert house.word("b") == "het"


def test_one_look_too_much_is_told_with_names(house: House) -> None:
    carrying(house, dam="visual", sire="visual")
    house.bred("Dam", "Sire", "23-1", "a", "b")
    house.reads("a", "chalk normal")

    told = genes_of_one(house.keeping, house.keys["a"])

    assert told is not None
    assert [plain(words) for words in told.contradictions] == [
        "chalk: Dam and Sire both show it, and a looks normal: another sire, or two genes of the"
        " same look on different places."
    ]
    assert told.genes[0].word == "no odds told"


def test_parents_that_go_in_a_round_are_told_and_reckoned_as_unknown(house: House) -> None:
    house.bred("Dam", "Sire", "23-1", "a")
    dam = reading.animal_now(house.keeping.book, house.keys["Dam"])
    assert dam is not None
    round_again = Described(
        animal=dam.animal,
        happened=at_instant(house.at),
        code=dam.code,
        species=SPECIES,
        dam=house.keys["a"],
    )
    note(house.keeping, "describe", round_again)

    told = genes_of_one(house.keeping, house.keys["a"])

    assert told is not None
    assert told.parents == (
        "Its parents as written go in a round; it is taken for one of unknown parents.",
    )


def test_inbreeding_is_told_with_how_far_back_it_is_known(house: House) -> None:
    house.bred("Dam", "Sire", "23-1", "a", "b")
    house.after(700).young("a", "25-1", "c", sire="b")

    told = genes_of(house.house(), house.keys["c"])

    assert told is not None and told.is_close
    assert plain(told.inbreeding) == (
        "F 25 %, as full sibs’ young or closer; its ancestors are known in full for 2 generations."
    )
    assert expected_young(house.genes(), house.keys["a"], house.keys["b"]).advice == "reason"


def test_a_gene_counts_for_its_own_species_alone_and_by_any_spelling(house: House) -> None:
    house.reads("Dam", "CHALK het")
    house.name("Chalk dominant")

    genes = house.genes()

    assert list(house.house().species) == [SPECIES]
    assert [(each.gene, each.inheritance.value) for each in genes.named] == [("Chalk", "dominant")]


# past days


def test_a_past_day_knows_only_what_was_written_by_then(house: House) -> None:
    carrying(house, sire="clear")
    house.bred("Dam", "Sire", "23-1", "a")
    day = house.at.date()
    house.after(100).reads("Sire", "chalk visual")

    assert house.word("a", as_at=day) == "50 % het"
    assert house.word("a") == "50 % two copies, else one"
    assert house.genes(day - timedelta(days=1)).kin.keys() == {
        house.keys["Dam"],
        house.keys["Sire"],
    }


def test_what_was_taken_back_since_still_stood_then(house: House) -> None:
    carrying(house)
    house.bred("Dam", "Sire", "23-1", "a")
    house.reads("a", "chalk normal")
    day = house.at.date()
    house.after(30)
    take_back(house.keeping)
    taken_on = house.at.date()
    house.after(30)
    put_back(house.keeping)

    assert house.word("a", as_at=day) == "66 % het"
    assert house.word("a", as_at=taken_on) == "two copies 25 %, one 50 %"
    assert house.word("a") == "66 % het"


# cards


def cards(house: House) -> list[tuple[str, str, str, str]]:
    found = cards_out_of_date(house.keeping, house.house())
    return [(c.animal.called, plain(c.before), plain(c.after), plain(c.changed_by)) for c in found]


def test_a_sold_animal_whose_odds_moved_has_a_card_out_of_date(house: House) -> None:
    carrying(house, dam="66 %", sire="clear")
    house.bred("Dam", "Sire", "23-1", "a", "b", "c")
    house.sold("b")
    house.after(300).founder("Proof", Sex.MALE)
    house.reads("Proof", "chalk visual")
    house.bred("Dam", "Proof", "24-1", "d")
    assert cards(house) == []

    house.reads("d", "chalk visual")

    assert cards(house) == [("b", "33 % het", "50 % het", "d: chalk: visual")]


def test_a_gene_named_after_the_sale_was_not_told_on_the_card(house: House) -> None:
    house.bred("Dam", "Sire", "23-1", "a", "b")
    house.sold("a")
    house.after(60).name("marl recessive")
    house.reads("Dam", "marl visual")

    assert cards(house) == [("a", "", "het", "Dam: marl: visual")]


def test_what_happened_before_the_sale_and_was_written_after_it_counts_as_after(
    house: House,
) -> None:
    carrying(house, sire="clear")
    house.bred("Dam", "Sire", "23-1", "a")
    house.reads("a", "chalk normal")
    house.sold("a")
    sold_on = house.at
    house.after(40)
    late = at_instant(sold_on - timedelta(days=5))
    told = reading.all_of(house.keeping.book, GeneRead)[0].event
    note(house.keeping, "gene", replace(told, animal=house.keys["Sire"], happened=late))

    assert [card[:3] for card in cards(house)] == [("a", "50 % het", "66 % het")]


def test_an_animal_that_came_back_has_no_card_out_there(house: House) -> None:
    carrying(house, dam="66 %", sire="clear")
    house.bred("Dam", "Sire", "23-1", "a")
    house.sold("a")
    house.after(35)
    home = Stock(animal=house.keys["a"], happened=at_instant(house.at), status=Status.KEPT)
    note(house.keeping, "standing", home)
    house.reads("Dam", "chalk het")

    assert cards(house) == []


# other books


def test_genes_go_with_a_book_written_out_whole_and_joined(house: House, tmp_path: Path) -> None:
    carrying(house)
    house.bred("Dam", "Sire", "23-1", "a")
    house.reads("a", "chalk normal")
    write_bundle(house.keeping, tmp_path / "whole")
    other = new_keeping(tmp_path / "other.book", station="t", now=lambda: house.at)
    with closing(other):
        join(other, looked_at(other, tmp_path / "whole"))

        told = genes_of_one(other, house.keys["a"])

        assert told is not None
        assert [plain(each.named) for each in told.genes] == ["chalk 66 % het"]


def test_a_joined_book_counts_from_its_join(house: House, tmp_path: Path) -> None:
    carrying(house)
    house.bred("Dam", "Sire", "23-1", "a")
    written_on = house.at.date()
    write_bundle(house.keeping, tmp_path / "whole")
    house.after(50)
    other = House(tmp_path / "other.book", at=house.at, keys=house.keys)
    with closing(other.keeping):
        join(other.keeping, looked_at(other.keeping, tmp_path / "whole"))

        assert other.house(written_on).species == {}
        assert house.keys["a"] in other.genes(other.at.date()).kin


def test_the_desk_reckons_anew_only_where_genes_may_differ(house: House) -> None:
    carrying(house)
    desk = GeneDesk(house.keeping)
    first = desk.genes()
    house.after(1)
    again = desk.genes()
    house.reads("Dam", "chalk visual")

    assert again.species is first.species
    assert again.on == date(2023, 1, 11)
    assert desk.genes().species is not first.species
    desk.close()


def test_one_that_nobody_looked_at_is_told_as_that(house: House) -> None:
    carrying(house)
    house.bred("Dam", "Sire", "23-1", "a", "b")
    house.reads("b", "chalk normal")

    seen, unseen = (genes_of(house.house(), house.keys[each]) for each in "ba")

    assert unseen is not None and seen is not None
    assert unseen.genes[0].because == (
        "Dam and Sire both carry it. Nobody has written yet what it shows of it."
    )
    assert seen.genes[0].because == "Dam and Sire both carry it."


def test_a_male_in_doubt_is_told_which_looks_are_weighed(house: House) -> None:
    carrying(house, sire="66 %")
    house.founder("Other", Sex.MALE)
    house.paired("Dam", "Other")
    house.bred("Dam", "Sire", "23-1", "a")
    house.reads("a", "chalk normal")

    told = genes_of(house.house(), house.keys["Sire"])

    assert told is not None
    assert told.genes[0].because.endswith("He may be the sire of 23-1, whose looks are weighed.")
