"""Genes by real keys: named and read on an animal's page, a clutch looked at, reasons turned to."""

from __future__ import annotations

from contextlib import closing
from datetime import UTC, datetime, timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from keeper import app
from keeper.actions.gene_typed import genes_named
from keeper.actions.keeping import animal_coded, new_keeping
from keeper.actions.noting import note
from keeper.actions.recording import Newcomer, receive
from keeper.desktop.look import Look
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import Clutch
from keeper.husbandry.genes import GeneRead, GeneTold
from keeper.husbandry.when import on_day
from keeper.store import reading

KEY, SHIFT = Qt.Key, Qt.KeyboardModifier.ShiftModifier
CTRL, NONE = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.NoModifier
NOW = datetime(2026, 11, 25, 20, tzinfo=UTC)
WAIT = 20_000


def ago(days):
    return NOW.date() - timedelta(days=days)


@pytest.fixture
def keeping(tmp_path, monkeypatch):
    """Maud and Alder, and four young of theirs with letters."""
    monkeypatch.setenv("KEEPER_HOME", str(tmp_path / "home"))
    with closing(new_keeping(tmp_path / "room.book", station="s", now=lambda: NOW)) as made:
        came = {"happened": on_day(ago(900)), "species": "house_snake", "hatched": ago(1500)}
        adults = [
            Newcomer(code="F1", name="Maud", sex=Sex.FEMALE, place="A1·1", **came),
            Newcomer(code="M1", name="Alder", sex=Sex.MALE, place="A1·2", **came),
        ]
        _, (dam, sire) = receive(made, adults)
        note(
            made,
            "clutch",
            Clutch(animal=dam, happened=on_day(ago(90)), good=5, code="26-9"),
        )
        born = {"happened": on_day(ago(28)), "species": "house_snake", "hatched": ago(28)}
        parents = {"dam": dam, "sire": sire, "clutch": "26-9"}
        young = [
            Newcomer(code=f"26-9 {letter}", place=f"A2·{at + 1}", **born, **parents)
            for at, letter in enumerate("abcd")
        ]
        receive(made, young)
        yield made


class Hand:
    """The window over a book, worked by its keys alone."""

    def __init__(self, keeping, qtbot, size=(1024, 600)):
        self.keeping, self.bot = keeping, qtbot
        self.house = app.build_house(keeping, Look())
        self.window = self.house.window
        qtbot.addWidget(self.window)
        self.window.resize(*size)
        self.window.show()
        with qtbot.waitActive(self.window):
            self.window.activateWindow()

    def page(self, name):
        return self.window.page(name)

    @property
    def animal(self):
        return self.page("Animal")

    @property
    def band(self):
        return self.animal.genes.band

    @property
    def foot(self):
        return self.window.foot.text().replace("\u00a0", " ")

    def press(self, key, modifier=NONE):
        QTest.keyClick(self.window.windowHandle(), key, modifier)
        QApplication.processEvents()

    def show(self, code):
        self.press(KEY.Key_F9)
        key = animal_coded(self.keeping, code).animal
        self.animal.show_animal(key)
        self.bot.waitUntil(lambda: self.shown == key, timeout=WAIT)
        self.told()

    @property
    def shown(self):
        return self.animal.page.animal.animal if self.animal.page else None

    def told(self):
        """Wait until the genes of the shown animal are read as the book is now."""
        self.bot.waitUntil(lambda: self.animal.genes.now() is not None, timeout=WAIT)
        self.bot.waitUntil(lambda: self.animal.genes.now().animal == self.shown, timeout=WAIT)

    def type(self, page, text):
        """Into the line at the foot; what it tells back."""
        QTest.keyClicks(page.line.field, text)
        return page.line._hint.text().replace("\u00a0", " ")

    def enter(self, page):
        before = len(reading.latest_batches(self.keeping.book, 500))
        QTest.keyClick(page.line.field, KEY.Key_Return)
        QApplication.processEvents()
        assert len(reading.latest_batches(self.keeping.book, 500)) == before + 1

    def read(self, text):
        """K, the line, Enter; then wait for what the page says of it."""
        self.press(KEY.Key_K)
        told = self.type(self.animal, text)
        self.enter(self.animal)
        self.bot.waitUntil(lambda: not self.animal.line.isVisible(), timeout=WAIT)
        self.told()
        return told

    def wait_for(self, words):
        self.bot.waitUntil(lambda: words in self.band.text().replace("\u00a0", " "), timeout=WAIT)


@pytest.fixture
def hand(qtbot, keeping):
    made = Hand(keeping, qtbot)
    yield made
    made.window.close()


def test_a_gene_is_named_and_read_and_its_kin_follow(hand):
    hand.show("F1")
    assert not hand.band.isVisible()

    assert hand.read("new chalk recessive") == "writes: gene chalk, recessive"
    assert hand.read("chalk het, as bought") == "writes: chalk: het"
    hand.wait_for("chalk het")
    assert hand.band.isVisible()

    hand.show("26-9 a")
    hand.wait_for("chalk 50 % het")


def test_what_is_refused_stays_in_the_line_with_its_reason(hand):
    hand.show("F1")
    hand.press(KEY.Key_K)

    told = hand.type(hand.animal, "chalk visual")
    QTest.keyClick(hand.animal.line.field, KEY.Key_Return)

    assert told == "No gene is named for this species yet; new chalk recessive names one."
    assert hand.animal.line.isVisible()
    assert reading.all_of(hand.keeping.book, GeneRead) == []


def test_shift_k_turns_to_the_reasons_and_back(hand):
    hand.show("F1")
    hand.read("new chalk recessive")
    hand.read("chalk visual")
    hand.show("26-9 a")
    hand.wait_for("chalk het")

    hand.press(KEY.Key_K, SHIFT)
    sheet = hand.animal.genes.sheet
    assert sheet.isVisible() and not hand.animal.read_out.isVisible()
    assert "Maud shows it and hands on one copy." in sheet.text()

    hand.press(KEY.Key_K, SHIFT)
    assert hand.animal.read_out.isVisible() and not sheet.isVisible()


def test_taking_back_and_putting_back_a_reading_moves_its_kin(hand):
    hand.show("F1")
    hand.read("new chalk recessive")
    hand.read("chalk visual")
    hand.wait_for("chalk visual")

    hand.press(KEY.Key_Z, CTRL)
    hand.bot.waitUntil(lambda: not hand.band.isVisible(), timeout=WAIT)
    hand.press(KEY.Key_Z, CTRL | SHIFT)
    hand.wait_for("chalk visual")


def test_a_whole_clutch_is_looked_at_in_one_line_that_can_be_taken_back_at_once(hand):
    hand.show("F1")
    hand.read("new chalk recessive")
    hand.press(KEY.Key_F8, SHIFT)
    clutches = hand.page("Clutches")
    hand.bot.waitUntil(lambda: clutches.beside.detail is not None, timeout=WAIT)

    hand.press(KEY.Key_K)
    assert hand.type(clutches, "chalk b d") == "writes: chalk: 2 of 4 show it"
    hand.enter(clutches)

    told = {e.event.animal: e.event.told for e in reading.all_of(hand.keeping.book, GeneRead)}
    by_letter = {c: told[animal_coded(hand.keeping, f"26-9 {c}").animal] for c in "abcd"}
    assert by_letter == {
        "a": GeneTold.NORMAL,
        "b": GeneTold.VISUAL,
        "c": GeneTold.NORMAL,
        "d": GeneTold.VISUAL,
    }
    expected = "normal-looking: 75 %, about 3.8 of 5; 66 % het chalk."
    panel = clutches.beside.panel
    hand.bot.waitUntil(lambda: expected in panel.text().replace("\u00a0", " "), timeout=WAIT)

    hand.press(KEY.Key_Z, CTRL)
    assert reading.all_of(hand.keeping.book, GeneRead) == []


def test_what_a_clutch_may_give_can_stand_first(hand):
    hand.show("F1")
    hand.read("new chalk recessive")
    hand.read("chalk visual")
    hand.press(KEY.Key_F8, SHIFT)
    clutches = hand.page("Clutches")
    panel = clutches.beside.panel
    hand.bot.waitUntil(lambda: "Expected young" in panel.text(), timeout=WAIT)
    assert not panel.text().startswith("Expected young")

    hand.press(KEY.Key_K, SHIFT)

    assert panel.text().startswith("Expected young: normal-looking: 100")


def test_genes_are_of_the_species_they_were_named_for(hand):
    hand.show("F1")
    hand.read("new chalk recessive")

    assert [gene.gene for gene in genes_named(hand.keeping, "house_snake")] == ["chalk"]
    assert genes_named(hand.keeping, "corn_snake") == ()


def test_a_reading_is_put_right_and_stays_struck_through(hand):
    hand.show("F1")
    hand.read("new chalk recessive")
    hand.read("chalk visual")
    hand.press(KEY.Key_E)
    assert hand.animal.line._prompt.text().startswith("correct chalk: visual of")

    told = hand.type(hand.animal, "normal, seen in bad light")
    hand.enter(hand.animal)

    assert told == "writes: chalk: looks normal, because: seen in bad light"
    (entry,) = reading.all_of(hand.keeping.book, GeneRead)
    assert entry.event.told is GeneTold.NORMAL
    hand.bot.waitUntil(lambda: "put right" in hand.animal.read_out.text(), timeout=WAIT)
    assert "chalk: visual, seen in bad light" in hand.animal.read_out.text()


def test_a_correction_without_a_reason_is_refused(hand):
    hand.show("F1")
    hand.read("new chalk recessive")
    hand.read("chalk visual")
    hand.press(KEY.Key_E)

    assert hand.type(hand.animal, "normal") == (
        "A correction needs what is right and a reason: normal, seen in bad light."
    )
