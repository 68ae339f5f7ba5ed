"""What the house breeds for, read from a real book: where animals stand, pairs, look-alikes."""

from contextlib import closing

import pytest

from keeper.actions.lines_desk import (
    LinesDesk,
    Standing,
    gene_detail,
    standing,
    try_pair,
)
from keeper.actions.noting import note
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import Described
from keeper.husbandry.genes import Inheritance
from keeper.husbandry.when import at_instant
from keeper.rules.genetics.answers import CopyOdds, GeneAnswer
from tests.unit.gene_house import House


@pytest.fixture
def house(tmp_path):
    made = House(tmp_path / "room.book")
    for number, (code, sex) in enumerate(
        (("Ash", Sex.FEMALE), ("Ivy", Sex.FEMALE), ("Burr", Sex.MALE), ("Dun", Sex.MALE)), start=1
    ):
        made.founder(code, sex, f"A1·{number}", name=code)
    with closing(made.keeping):
        yield made


def lines_of(house):
    """Genes, then all of it, as the place reads them."""
    desk = LinesDesk(house.keeping)
    try:
        first = desk.lines(house.keeping.today)
        return first, desk.whole(first)
    finally:
        desk.close()


def detail(house, gene="chalk"):
    _, lines = lines_of(house)
    line = next(each for each in lines.rows if each.named.gene == gene)
    return gene_detail(line, lines.cards)


@pytest.mark.parametrize(
    ("how", "odds", "stands"),
    [
        (Inheritance.RECESSIVE, CopyOdds(0, 0, 1), Standing.SHOWS),
        (Inheritance.RECESSIVE, CopyOdds(0, 1, 0), Standing.CARRIES),
        (Inheritance.RECESSIVE, CopyOdds(0, 0.5, 0.5), Standing.CARRIES),
        (Inheritance.RECESSIVE, CopyOdds(1 / 3, 2 / 3, 0), Standing.MAY),
        (Inheritance.RECESSIVE, CopyOdds(0.997, 0.003, 0), Standing.CLEAR),
        (Inheritance.INCOMPLETE, CopyOdds(0, 1, 0), Standing.SHOWS),
        (Inheritance.INCOMPLETE, CopyOdds(0, 0, 1), Standing.SUPER),
        (Inheritance.INCOMPLETE, CopyOdds(0.5, 0.5, 0), Standing.MAY),
        (Inheritance.DOMINANT, CopyOdds(0, 0.5, 0.5), Standing.SHOWS),
        (Inheritance.DOMINANT, CopyOdds(1, 0, 0), Standing.CLEAR),
    ],
)
def test_where_an_animal_stands_follows_from_its_odds_and_from_how_copies_show(how, odds, stands):
    assert standing(GeneAnswer(inheritance=how, odds={1: odds}), 1) is stands


def test_of_a_stranger_and_without_an_answer_nothing_can_be_told():
    empty = GeneAnswer(inheritance=Inheritance.RECESSIVE, odds={})

    assert standing(empty, 1) is Standing.UNTOLD
    assert standing(None, 1) is Standing.UNTOLD


def test_words_that_cannot_all_be_true_stand_first_and_are_named(house):
    house.name("chalk recessive")
    house.bred("Ash", "Burr", "25-1", "c")
    house.reads("Ash", "chalk clear")
    house.reads("25-1 c", "chalk visual")
    found = detail(house)

    assert found.animals[0].standing is Standing.CONTRADICTED
    assert {each.row.called for each in found.animals[:2]} == {"c", "Ash"}
    (told,) = found.contradictions
    assert "Ash" in told and "c shows it" in told
    assert found.line.contradictions == 1


def test_parents_that_go_in_a_round_are_told_as_what_does_not_fit(house):
    """Ash is the dam of c, and is written anew as its young."""
    house.name("chalk recessive")
    house.reads("Ash", "chalk het")
    house.bred("Ash", "Burr", "25-1", "c")
    assert detail(house).contradictions == ()
    anew = Described(
        animal=house.keys["Ash"],
        happened=at_instant(house.at),
        code="Ash",
        species="house_snake",
        name="Ash",
        dam=house.keys["25-1 c"],
    )
    note(house.keeping, "describe", anew)
    found = detail(house)

    (told,) = found.contradictions
    assert "go in a round" in told and "Ash" in told
    assert found.line.contradictions == 1


def test_the_clear_of_the_room_are_counted_and_not_listed(house):
    house.name("chalk recessive")
    house.reads("Ash", "chalk het")
    found = detail(house)

    assert [each.row.called for each in found.animals] == ["Ash"]
    assert found.clear == 3


def test_a_pair_seats_its_female_as_the_dam_whichever_was_named_first(house):
    house.name("chalk recessive")
    house.reads("Ash", "chalk het")
    house.reads("Burr", "chalk het")
    line = detail(house).line
    ash, burr = house.keys["Ash"], house.keys["Burr"]

    for one, other in ((ash, burr), (burr, ash)):
        pair = try_pair(line, one, other)
        assert (pair.dam.called, pair.sire.called) == ("Ash", "Burr")
        # one in four of each egg, so 1 - 0.75**n
        assert [eggs for eggs, _ in pair.at_least] == [4, 8, 12]
        assert [odds for _, odds in pair.at_least] == pytest.approx(
            [1 - 0.75**n for n in (4, 8, 12)]
        )


def test_a_gene_of_which_one_copy_shows_has_nothing_to_be_proved(house):
    house.name("grit incomplete dominant")
    house.reads("Ash", "grit visual")
    found = detail(house, "grit")

    assert found.proofs == ()
    assert found.pair is None


def test_look_alikes_paired_with_normal_young_are_two_genes(house):
    for text in ("chalk recessive", "ember recessive"):
        house.name(text)
    house.reads("Ash", "chalk visual")
    house.reads("Burr", "ember visual")
    assert [each.found for each in detail(house).tried] == ["untested"]
    house.bred("Ash", "Burr", "25-1", "c", "d")
    assert [each.found for each in detail(house).tried] == ["young not told"]
    house.reads("25-1 c", "chalk normal")

    assert [each.found for each in detail(house, "ember").tried] == ["two places"]


def test_genes_come_first_and_the_rest_when_it_is_read(house):
    house.name("chalk recessive")
    first, whole = lines_of(house)

    assert first.cards is None
    assert whole.cards == ()
    assert first.rows == whole.rows
