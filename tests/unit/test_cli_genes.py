"""``keeper genes``: what animals carry and cards out of date, as text and as JSON."""

from contextlib import closing
from pathlib import Path

import pytest

from keeper.husbandry.animal import Sex
from tests.unit.command_line import Run, run
from tests.unit.gene_house import House

__all__ = ["run"]


@pytest.fixture
def book(tmp_path: Path) -> Path:
    house = House(tmp_path / "genes.book")
    with closing(house.keeping):
        house.name("chalk recessive")
        house.founder("Dam", Sex.FEMALE)
        house.founder("Sire", Sex.MALE)
        house.founder("Plain", Sex.MALE)
        house.reads("Dam", "chalk visual")
        house.reads("Sire", "chalk 50 %")
        house.bred("Dam", "Sire", "23-1", "a", "b")
        house.reads("a", "chalk normal")
        house.sold("a")
        house.after(30).reads("Dam", "chalk het")
    return house.path


def test_each_animal_that_carries_a_gene_has_a_line_with_its_reason(run: Run, book: Path) -> None:
    said = run("genes", book)

    lines = said.out.splitlines()
    assert said.code == 0
    assert lines[2].startswith("Dam  chalk: het  Written as het.")
    assert not any(line.startswith("Plain") for line in lines)
    assert lines[-2] == "Cards that are out of date:"
    assert lines[-1].startswith("23-1 a  chalk: het → 5")
    assert lines[-1].endswith("changed 1 Jun 2023 by Dam: chalk: het")


def test_the_same_as_json_with_odds_of_copies(run: Run, book: Path) -> None:
    told = run("genes", book, "--animal", "Sire", "--json").json

    (animal,) = told["animals"]
    (gene,) = animal["genes"]
    assert (gene["gene"], gene["two"]) == ("chalk", 0.0)
    assert gene["none"] + gene["one"] == pytest.approx(1.0)
    assert 0 < gene["one"] < 0.5
    assert told["cards_out_of_date"] == []


def test_an_animal_without_genes_tells_its_inbreeding(run: Run, book: Path) -> None:
    said = run("genes", book, "--animal", "Plain")

    assert said.out == "Plain  F 0 %, as far as is known: its parents are not both written.\n"


def test_a_code_that_is_nobodys_is_one_sentence(run: Run, book: Path) -> None:
    said = run("genes", book, "--animal", "X9")

    assert said.code == 2
    assert said.err == "No animal in this book has the code 'X9'.\n"


def test_a_book_without_genes_says_so(run: Run, tmp_path: Path) -> None:
    run("new", tmp_path / "new.book")

    assert run("genes", tmp_path / "new.book").out == "Nothing is told of genes in this book.\n"
