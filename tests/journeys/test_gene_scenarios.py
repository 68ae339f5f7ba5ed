"""Genes from entries in a book to the text of the paper: stored sperm, a het that proves out."""

from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

import pytest

from keeper.actions.animal_page import page_of
from keeper.actions.animal_papers import buyers_card_of
from keeper.actions.clutch_desk import ClutchDesk
from keeper.actions.clutch_genes import ClutchGenes, clutch_genes
from keeper.actions.clutch_paper import record_of
from keeper.actions.clutch_rows import ClutchRow
from keeper.actions.gene_cards import cards_out_of_date
from keeper.actions.noting import note
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import Remark, RemarkKind
from keeper.husbandry.when import at_instant
from keeper.reports.buyers_card import ODDS
from keeper.reports.figures import plain
from keeper.reports.gene_statement import UNTESTED
from keeper.reports.paper_parts import Document, Heading, Table, Words
from tests.unit.gene_house import House


@pytest.fixture
def house(tmp_path: Path) -> Iterator[House]:
    made = House(tmp_path / "genes.book")
    with closing(made.keeping):
        made.name("chalk recessive")
        yield made


def card(house: House, who: str) -> list[str]:
    """The words of the card between its genes and its feeding record."""
    keeping = house.keeping
    document = buyers_card_of(keeping, page_of(keeping, house.keys[who], keeping.today))
    return _told(document, "Genes")


def _told(document: Document, head: str) -> list[str]:
    words: list[str] = []
    within = False
    for part in document.parts:
        if isinstance(part, Heading):
            within = part.words.startswith(head)
        if within and isinstance(part, Words | Heading):
            words.append(plain(part.words))
    return words


def clutch(house: House, code: str) -> tuple[ClutchRow, ClutchGenes, Document]:
    desk = ClutchDesk(house.keeping)
    rows = desk.clutches(house.keeping.today).rows
    row = next(each for each in rows if each.facts.name == code)
    detail = desk.detail(row, house.keeping.today)
    found = clutch_genes(house.house(), row)
    assert found is not None
    desk.close()
    return row, found, record_of(detail, house.at, found)


# a clutch eight months after the last pairing


@pytest.fixture
def from_kept_sperm(house: House) -> House:
    """Paired with one and then with another; eggs come eight months after the second."""
    house.founder("Dam", Sex.FEMALE)
    house.founder("First", Sex.MALE)
    house.founder("Second", Sex.MALE)
    house.reads("Dam", "chalk het")
    house.reads("First", "chalk visual")
    house.reads("Second", "chalk clear")
    house.paired("Dam", "First", locked=False)
    house.after(14).paired("Dam", "Second", locked=False)
    house.after(243).laid("Dam", "23-1", good=6)
    return house


def test_a_clutch_from_kept_sperm_has_candidate_sires_and_young_to_expect(
    from_kept_sperm: House,
) -> None:
    _, found, record = clutch(from_kept_sperm, "23-1")

    shares = {look.words: round(look.share, 3) for look in found.looks}
    told = [" ".join(row) for part in record.parts if isinstance(part, Table) for row in part.rows]

    assert shares == {"normal-looking": 0.77, "chalk": 0.23}
    assert any(row.startswith("chalk 23 % about 1.4 of 6, one or more in") for row in told)


def test_labels_of_its_young_widen_over_the_sires(from_kept_sperm: House) -> None:
    house = from_kept_sperm
    house.after(62).young("Dam", "23-1", "a", "b")
    house.reads("a", "chalk normal")
    house.reads("b", "chalk normal")

    words = card(house, "a")

    assert words[0] == f"Genes, as reckoned on {house.at.day} {house.at:%b %Y}"
    # First 0.46 by half-lives of 60 days; two normal young of a visual by a het: 1 in 4
    first = 0.46 / 4 / (0.46 / 4 + 0.54)
    assert int(100 * (first + (1 - first) / 2)) == 58
    assert words[1].startswith("chalk: 58 % het. Dam carries it. The sire is in doubt between 2")
    assert words[2].startswith("No sire is written; by who was with the dam: Second 8")
    assert words[3:] == [UNTESTED, ODDS]


def test_a_visual_young_names_the_sire_and_rules_the_other_out(from_kept_sperm: House) -> None:
    house = from_kept_sperm
    house.after(62).young("Dam", "23-1", "a", "b")
    house.reads("a", "chalk normal")
    house.reads("b", "chalk visual")

    _, found, record = clutch(house, "23-1")

    assert plain(found.sire_words) == "First for certain, Second ruled out"
    assert "First for certain, Second ruled out" in " ".join(_told(record, "Candidate sires"))
    assert card(house, "a")[1].startswith("chalk: het. First shows it and hands on one copy.")


# a het that proves out


@pytest.fixture
def sold_sibs(house: House) -> House:
    """A male bought as 66 % het, a clean female, and young of which two were sold."""
    house.founder("Clean", Sex.FEMALE)
    house.founder("Bought", Sex.MALE)
    house.founder("Visual", Sex.FEMALE)
    house.reads("Clean", "chalk clear")
    house.reads("Bought", "chalk 66 %, as bought")
    house.reads("Visual", "chalk visual")
    house.bred("Clean", "Bought", "23-1", "a", "b", "c")
    for young in "abc":
        house.reads(young, "chalk normal")
    house.after(70).sold("b")
    house.after(1).sold("c")
    return house


def test_before_the_proof_a_sib_is_sold_as_33_per_cent(sold_sibs: House) -> None:
    told = card(sold_sibs, "a")[1]

    assert told == "chalk: 33 % het. Bought may carry it (66 %), the other parent does not."


def test_one_proven_young_makes_the_parent_certain_and_the_sibs_50(sold_sibs: House) -> None:
    house = sold_sibs
    house.after(300).bred("Visual", "Bought", "24-1", "d", "e")
    house.reads("d", "chalk normal")
    house.reads("e", "chalk visual")

    found = cards_out_of_date(house.keeping, house.house())

    assert house.word("Bought") == "het"
    assert card(house, "a")[1] == (
        "chalk: 50 % het. Bought carries it, the other parent does not: one young in two."
    )
    assert [(each.animal.called, plain(each.before), plain(each.after)) for each in found] == [
        ("b", "33 % het", "50 % het"),
        ("c", "33 % het", "50 % het"),
    ]
    assert {plain(each.changed_by) for each in found} == {"e: chalk: visual"}
    assert house.word("b", as_at=found[0].left_on) == "33 % het"


def test_where_both_parents_were_certain_a_proven_sib_changes_no_other(house: House) -> None:
    house.founder("Dam", Sex.FEMALE)
    house.founder("Sire", Sex.MALE)
    house.founder("Proof", Sex.MALE)
    house.reads("Dam", "chalk het")
    house.reads("Sire", "chalk het")
    house.reads("Proof", "chalk visual")
    house.bred("Dam", "Sire", "23-1", "a", "b")
    house.reads("a", "chalk normal")
    house.reads("b", "chalk normal")
    house.after(70).sold("b")
    house.after(700).bred("a", "Proof", "25-1", "d")
    house.reads("d", "chalk visual")

    assert house.word("a") == "het"
    assert house.word("b") == "66 % het"
    assert cards_out_of_date(house.keeping, house.house()) == ()


def test_where_the_sire_is_in_doubt_a_proof_is_weighed(sold_sibs: House) -> None:
    house = sold_sibs
    house.founder("Other", Sex.MALE)
    house.reads("Other", "chalk 50 %")
    house.after(300).paired("Visual", "Other")
    house.after(2).bred("Visual", "Bought", "24-1", "d", written=False)
    house.reads("d", "chalk visual")

    share = int(house.word("a").split()[0])

    assert house.word("Bought") != "het"
    assert 33 < share < 50


# the card


def test_the_keepers_own_statement_stands_below_what_is_reckoned(sold_sibs: House) -> None:
    house = sold_sibs
    own = Remark(
        animal=house.keys["a"],
        happened=at_instant(house.at),
        kind=RemarkKind.NOTE,
        text="genes: sold as possible het chalk",
    )
    note(house.keeping, "note", own)

    words = card(house, "a")

    assert words[-3] == "Genes, as written"
    assert words[-2].endswith("genes: sold as possible het chalk")
    assert words[-1] == ODDS


def test_a_house_without_genes_has_the_card_as_it_was(tmp_path: Path) -> None:
    house = House(tmp_path / "plain.book")
    with closing(house.keeping):
        house.founder("Dam", Sex.FEMALE)

        assert card(house, "Dam") == [
            "Genes, as written",
            "No statement of genes is written in the book.",
        ]


def test_a_hostile_name_of_a_gene_is_printed_as_it_is(house: House) -> None:
    house.founder("Dam", Sex.FEMALE)
    house.name("=1+1|cmd' {x} <b>&amp; %s recessive")
    house.reads("Dam", "=1+1|cmd' {x} <b>&amp; %s het, {told} =x")

    assert card(house, "Dam")[1] == "=1+1|cmd' {x} <b>&amp; %s: het. Written as het."
