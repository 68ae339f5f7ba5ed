"""Colour by keys: an animal scored on its page, a clutch in one line, the line looked at."""

from __future__ import annotations

from contextlib import closing

import pypdfium2
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from keeper import app
from keeper.actions.keeping import animal_coded
from keeper.desktop.look import Look
from keeper.husbandry.genes import LookScored
from keeper.store import reading
from tests.colour_line import laid, pair, scored_book

KEY, SHIFT = Qt.Key, Qt.KeyboardModifier.ShiftModifier
CTRL, NONE = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.NoModifier


class Hand:
    """The window over a book, worked by its keys alone."""

    def __init__(self, keeping, qtbot):
        self.keeping, self.bot = keeping, qtbot
        self.window = app.build_house(keeping, Look()).window
        qtbot.addWidget(self.window)
        self.window.resize(1024, 600)
        self.window.show()
        with qtbot.waitActive(self.window):
            self.window.activateWindow()

    def press(self, key, modifier=NONE):
        QTest.keyClick(self.window.windowHandle(), key, modifier)
        QApplication.processEvents()

    def page(self, name):
        return self.window.page(name)

    def type(self, name, text):
        """Into the line of a place; what it tells back."""
        line = self.page(name).line
        QTest.keyClicks(line.field, text)
        return line._hint.text().replace("\u00a0", " ")

    def enter(self, name):
        QTest.keyClick(self.page(name).line.field, KEY.Key_Return)
        QApplication.processEvents()

    def open_animal(self, code):
        self.press(KEY.Key_F9)
        page = self.page("Animal")
        self.bot.waitUntil(lambda: page.page is not None, timeout=20_000)
        self.press(KEY.Key_Slash)
        self.type("Animal", code)
        self.enter("Animal")
        self.bot.waitUntil(lambda: page.page.animal.code == code, timeout=20_000)

    def open_clutch(self, code):
        self.press(KEY.Key_F8, SHIFT)
        page = self.page("Clutches")
        self.bot.waitUntil(lambda: bool(page.model.rows), timeout=20_000)
        page.show_clutch(code)

    @property
    def foot(self):
        return self.window.foot.text().replace("\u00a0", " ")

    def scores(self, code):
        animal = animal_coded(self.keeping, code).animal
        return [e.event.score for e in reading.history(self.keeping.book, LookScored, animal)]


@pytest.fixture
def keeping(tmp_path, monkeypatch):
    monkeypatch.setenv("KEEPER_HOME", str(tmp_path / "home"))
    with closing(scored_book(tmp_path / "colour.book")) as made:
        laid(made, "A1", 160, "26-2")
        pair(made, "A3", "A2", 20)
        yield made


@pytest.fixture
def hand(qtbot, keeping):
    made = Hand(keeping, qtbot)
    yield made
    made.window.close()


def test_an_animal_is_scored_on_its_page_blind_and_it_can_be_taken_back(hand):
    hand.open_animal("B1")
    hand.press(KEY.Key_R)
    hint = hand.page("Animal").line._hint.text()
    assert "scored so far: red" in hint and "8" not in hint

    assert hand.type("Animal", "colour red 9, evening sun") == (
        "writes: red 9 of 10, noted: evening sun"
    )
    hand.enter("Animal")

    assert hand.scores("B1") == [8, 9]
    assert "red 9 of 10" in hand.foot
    hand.press(KEY.Key_Z, CTRL)
    assert hand.scores("B1") == [8]


def test_a_score_of_twelve_is_refused_and_stays_in_the_field(hand):
    hand.open_animal("B1")
    hand.press(KEY.Key_R)

    assert "between 1 and 10, got 12" in hand.type("Animal", "red 12")
    hand.enter("Animal")

    assert hand.page("Animal").line.field.text() == "red 12"
    assert hand.scores("B1") == [8]


def test_a_clutch_is_scored_in_one_line_along_its_tubs(hand):
    hand.open_clutch("26-2")
    hand.press(KEY.Key_R)

    assert hand.type("Clutches", "red 7 6") == "2 of 3; next is A1·3 Bel 3"
    assert hand.type("Clutches", ",5 -") == "writes: red: Bel 1 7, Bel 2 6.5"
    hand.enter("Clutches")

    assert [hand.scores(code) for code in ("B1", "B2", "B3")] == [[8, 7], [7, 6.5], [6]]
    assert "26-2" in hand.foot
    hand.press(KEY.Key_Z, CTRL)
    assert hand.scores("B2") == [7]


def test_the_line_shows_its_generations_and_is_printed(hand, tmp_path, monkeypatch):
    hand.press(KEY.Key_F9, SHIFT)
    page = hand.page("Lines")
    hand.bot.waitUntil(lambda: page.colour.picture.isVisible(), timeout=20_000)

    words = page.colour.picture.text().replace("\u00a0", " ")
    assert "generation 2: mean 7 of 3 scored, their mid-parents 7.5." in words
    assert "A Ara 3 × Ara 2" in words
    hand.press(KEY.Key_W)
    assert not page.colour.picture.isVisible()
    hand.press(KEY.Key_W)
    hand.press(KEY.Key_P, CTRL)
    hand.bot.waitUntil(lambda: bool(list(tmp_path.rglob("*.pdf"))), timeout=20_000)
    (path,) = tmp_path.rglob("*.pdf")
    text = pypdfium2.PdfDocument(path)[0].get_textpage().get_text_range()
    assert "Families" in text and "Ara 3 × Ara 2" in text
