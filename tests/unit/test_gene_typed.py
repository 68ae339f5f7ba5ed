"""Genes typed in one line: what is read, what is refused and why, and a whole clutch at once."""

import json
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from keeper.actions.gene_typed import gene_typed, looks_typed, naming_typed
from keeper.husbandry.genes import GeneNamed, GeneRead, GeneTold, Inheritance
from keeper.husbandry.when import on_day
from keeper.reports.figures import plain
from tests.unit.test_language import python

DAY = on_day(date(2026, 3, 1))
CAPE = "house_snake"
NAMED: list[GeneNamed] = []
for _text in (
    "chalk recessive",
    "albino, Veld line recessive hidden by chalk",
    "ember incomplete dominant",
    "chalky ring dominant",
):
    NAMED.append(naming_typed(CAPE, DAY, _text, named=NAMED))
YOUNG = {"a": 1, "b": 2, "c": 3, "HS-61": 1}


def read(text: str, named: list[GeneNamed] = NAMED) -> GeneRead:
    event = gene_typed(7, DAY, text, named=named, species=CAPE).event
    assert isinstance(event, GeneRead)
    return event


def refused(text: str, named: list[GeneNamed] = NAMED) -> str:
    with pytest.raises(ValueError) as told:
        gene_typed(7, DAY, text, named=named, species=CAPE)
    return plain(str(told.value))


def refused_name(text: str) -> str:
    with pytest.raises(ValueError) as told:
        naming_typed(CAPE, DAY, text, named=NAMED)
    return plain(str(told.value))


@pytest.mark.parametrize(
    ("text", "gene", "told", "percent"),
    [
        ("chalk visual", "chalk", GeneTold.VISUAL, None),
        ("gene Chalk  NORMAL", "chalk", GeneTold.NORMAL, None),
        ("chalk het", "chalk", GeneTold.HET, None),
        ("chalk 66 %", "chalk", GeneTold.POSSIBLE, 66),
        ("chalk 66,6% het", "chalk", GeneTold.POSSIBLE, 66.6),
        ("chalk 50 percent", "chalk", GeneTold.POSSIBLE, 50),
        ("chalk 100 %", "chalk", GeneTold.HET, None),
        ("chalk clear", "chalk", GeneTold.CLEAR, None),
        ("chalk vis", "chalk", GeneTold.VISUAL, None),
        ("em super", "ember", GeneTold.SUPER, None),
        ("chalky ring visual", "chalky ring", GeneTold.VISUAL, None),
        ("albino, Veld line het", "albino, Veld line", GeneTold.HET, None),
        ("alb visual", "albino, Veld line", GeneTold.VISUAL, None),
    ],
)
def test_a_gene_is_read_by_its_name_and_what_is_said_of_it(
    text: str, gene: str, told: GeneTold, percent: float | None
) -> None:
    event = read(text)

    assert (event.gene, event.told, event.percent) == (gene, told, percent)


def test_a_note_stands_after_a_comma() -> None:
    assert read("chalk 66 %, from its breeder").note == "from its breeder"
    assert read("chalk het, as bought, with papers").note == "as bought, with papers"


def test_a_gene_that_is_not_named_is_refused_with_those_that_are_and_how_to_name_it() -> None:
    told = refused("moon visual")

    assert told.startswith("'moon' is no gene named for this species; chalk, albino, Veld line")
    assert told.endswith("new moon recessive names it.")
    assert refused("moon visual", []) == (
        "No gene is named for this species yet; new moon recessive names one."
    )


def test_what_the_inheritance_leaves_no_room_for_is_refused() -> None:
    assert "two copies of it have no look of their own" in refused("chalk super")
    assert "shows with one copy: visual or normal is right" in refused("ember 50 %")
    assert refused("chalk 0 %") == (
        "0 % is no likelihood of one copy; over 0 and under 100 is right, or clear for none."
    )
    assert refused("chalk blue").startswith("'blue' says nothing of a gene; visual, super, normal")
    assert refused("chalk").startswith("What is seen or said of chalk?")
    assert "may be chalk, chalky ring" in refused("chal visual")


def test_new_names_a_gene_with_its_inheritance_and_what_hides_it() -> None:
    typed = gene_typed(7, DAY, "new  marl recessive, hidden by Ember", named=NAMED, species=CAPE)

    assert typed.event == GeneNamed(
        happened=DAY,
        gene="marl",
        species=CAPE,
        inheritance=Inheritance.RECESSIVE,
        hidden_by="ember",
    )
    assert typed.what == "gene marl, recessive, hidden by ember"
    codominant = naming_typed(CAPE, DAY, "pearl codominant", named=NAMED)
    assert codominant.inheritance is Inheritance.INCOMPLETE


@pytest.mark.parametrize(
    "name", ["albino", "Amelanistic", "T+ albino", "red line", "anery", "the white gene"]
)
def test_a_look_that_several_genes_make_is_refused_as_a_name(name: str) -> None:
    told = refused_name(f"{name} recessive")

    assert "is a look that several genes make" in told
    assert told.endswith(f"Name the line too: {name}, Veld line.")


@pytest.mark.parametrize("name", ["albino, Veld line", "red ember", "marl", "Ansa’s white"])
def test_a_look_with_its_line_is_a_name(name: str) -> None:
    assert naming_typed(CAPE, DAY, f"{name} recessive", named=[]).gene == name


def test_what_is_no_name_is_refused() -> None:
    assert "How is 'marl' handed on?" in refused_name("marl")
    assert refused_name("recessive").startswith("A gene needs a name")
    assert refused_name("het recessive").endswith("it cannot be its name.")
    assert "up to 40 characters" in refused_name(f"{'m' * 41} recessive")
    assert refused_name("chalk recessive") == "gene chalk, recessive is named so already."
    assert "'moon' can hide nothing" in refused_name("marl recessive hidden by moon")
    assert "'marl' can hide nothing" in refused_name("marl recessive hidden by marl")


def test_a_gene_named_anew_may_be_handed_on_otherwise() -> None:
    assert naming_typed(CAPE, DAY, "chalk dominant", named=NAMED).inheritance is (
        Inheritance.DOMINANT
    )


def looks(text: str, young: dict[str, int] = YOUNG) -> dict[int, GeneTold]:
    typed = looks_typed(DAY, text, young=young, named=NAMED)
    events = (typed.event, *typed.also)
    assert all(isinstance(event, GeneRead) for event in events)
    return {event.animal: event.told for event in events if isinstance(event, GeneRead)}


def test_the_letters_that_are_typed_show_it_and_the_rest_look_normal() -> None:
    visual, normal = GeneTold.VISUAL, GeneTold.NORMAL

    assert looks("chalk a C") == {1: visual, 2: normal, 3: visual}
    assert looks("chalk none") == {1: normal, 2: normal, 3: normal}
    assert looks("chalk all") == {1: visual, 2: visual, 3: visual}
    assert looks("chalk HS-61") == {1: visual, 2: normal, 3: normal}
    assert looks("ember visual a super b") == {1: visual, 2: GeneTold.SUPER, 3: normal}


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("chalk z", "'z' is no young of this clutch; a, b, c are."),
        ("chalk", "Which of them show chalk? Their letters are right, or none."),
        ("ember a super HS-61", "'HS-61' is told of twice."),
        ("moon a", "'moon' is no gene named"),
        ("chalk super a", "two copies of it have no look of their own"),
    ],
)
def test_looks_that_cannot_be_read_are_refused_whole(text: str, told: str) -> None:
    with pytest.raises(ValueError) as refusal:
        looks_typed(DAY, text, young=YOUNG, named=NAMED)

    assert told in plain(str(refusal.value))


def test_a_clutch_without_pages_has_no_looks() -> None:
    with pytest.raises(ValueError, match="No young of this clutch has a page yet"):
        looks_typed(DAY, "chalk none", young={}, named=NAMED)


@given(st.text(max_size=60))
def test_whatever_is_typed_is_an_entry_or_one_sentence(text: str) -> None:
    readers = (
        lambda: gene_typed(7, DAY, text, named=NAMED, species=CAPE),
        lambda: gene_typed(7, DAY, f"chalk {text}", named=NAMED, species=CAPE),
        lambda: gene_typed(7, DAY, f"new {text} recessive", named=NAMED, species=CAPE),
        lambda: looks_typed(DAY, f"chalk {text}", young=YOUNG, named=NAMED),
    )
    for reader in readers:
        try:
            assert reader().what
        except ValueError as refusal:
            assert str(refusal)


GERMAN = """
import json
from datetime import date
from keeper.desktop.chosen_language import choose
choose()
from keeper.actions.gene_typed import gene_typed, looks_typed, naming_typed
from keeper.husbandry.when import on_day
day, named = on_day(date(2026, 3, 1)), []
for text in ("Kreide rezessiv", "Glut intermediär", "Rauch recessive verdeckt von Glut"):
    named.append(naming_typed("house_snake", day, text, named=named))
def event(text):
    return str(gene_typed(1, day, text, named=named, species="house_snake").event)
same = [event("Kreide sichtbar") == event("kreide visual"), event("gen Kreide frei") == event(
    "Kreide clear"), event("Kreide 66 Prozent") == event("Kreide 66 %")]
typed = looks_typed(day, "Kreide keines", young={"a": 1}, named=named)
refused = []
for text in ("neu Albino rezessiv", "neu weiße Linie rezessiv", "Mond sichtbar"):
    try:
        refused.append(event(text))
    except ValueError as error:
        refused.append(str(error))
print(json.dumps([[str(each.inheritance) for each in named], named[2].hidden_by, same,
    str(typed.event), refused]))
"""


def test_german_words_are_taken_beside_the_english() -> None:
    how, hider, same, looked, refused = json.loads(python(GERMAN))

    assert how == ["recessive", "incomplete dominant", "recessive"]
    assert hider == "Glut"
    assert same == [True, True, True]
    assert "'normal'" in looked
    assert "ist ein Aussehen, das mehrere Gene" in refused[0]
    assert refused[2].startswith("'Mond' ist kein für diese Art benanntes Gen; benannt sind Kreide")
