"""The place of lines worked by its keys: walked, genes named and told of, pairs tried, printed.

The house of the tests is scenario 13 of the trade: a possible het proves out after young of hers
were sold, so that the odds of those that stayed and the words of a card move.
"""

from __future__ import annotations

from contextlib import closing
from datetime import timedelta

import pypdfium2
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from keeper import app
from keeper.desktop.look import Look
from keeper.desktop.screens.lines import LinesScreen
from keeper.desktop.screens.lines_words import NO_LINES
from keeper.desktop.widgets.tile import TileState
from keeper.husbandry.animal import Sex
from tests.desktop.stalls import MOST_BESIDE_WORK_MS, Stalls
from tests.unit.gene_house import House

KEY, NONE = Qt.Key, Qt.KeyboardModifier.NoModifier
SHIFT, CTRL = Qt.KeyboardModifier.ShiftModifier, Qt.KeyboardModifier.ControlModifier


def plain(text):
    return text.replace("\u00a0", " ")


class Hand:
    """The window over a book, worked by its keys alone."""

    def __init__(self, keeping, qtbot, size=(1440, 900)):
        self.keeping, self.bot = keeping, qtbot
        self.house = app.build_house(keeping, Look())
        self.window = self.house.window
        qtbot.addWidget(self.window)
        self.window.resize(*size)
        self.window.show()
        with qtbot.waitActive(self.window):
            self.window.activateWindow()

    @property
    def place(self):
        return self.window.place.name

    @property
    def page(self) -> LinesScreen:
        return self.window.page("Lines")

    @property
    def foot(self):
        return plain(self.window.foot.text())

    @property
    def animals(self):
        """Name and word of each animal beside the gene."""
        return [(face.cells[1], plain(face.cells[3])) for _, face in self.page.gene.list.odds.pairs]

    def press(self, *keys, modifier=NONE):
        for key in keys:
            QTest.keyClick(self.window.windowHandle(), key, modifier)
            QApplication.processEvents()

    def go(self):
        self.press(KEY.Key_F9, modifier=SHIFT)
        self.whole()
        self.wait()

    def whole(self, before=None):
        """Until all is read, and is not what was read *before*."""
        self.bot.waitUntil(
            lambda: self.page.lines not in (None, before) and self.page.lines.cards is not None,
            timeout=20_000,
        )

    def wait(self):
        """Until what stands beside the chosen gene is read."""
        if self.page.lines.rows:
            self.bot.waitUntil(self.is_beside, timeout=20_000)

    def is_beside(self):
        """Whether what stands beside is of the row as it was read last."""
        detail = self.page.gene.detail
        return detail is not None and detail.line is self.page._row()

    def type(self, text):
        """Into the line at the foot, and what it tells back."""
        QTest.keyClicks(self.page.line.field, text)
        return plain(self.page.line._hint.text())

    def enter(self):
        """Enter in the line; wait until all is read again."""
        before = self.page.lines
        QTest.keyClick(self.page.line.field, KEY.Key_Return)
        self.whole(before)
        self.wait()

    def choose(self, name):
        """Walk to the animal called *name* with the arrows."""
        self.press(KEY.Key_Right, KEY.Key_Home)
        for _ in self.animals:
            if self.page.gene.animal.called == name:
                return
            self.press(KEY.Key_Down)
        raise AssertionError(name)

    def printed(self):
        """The text of the PDF that is made last."""
        self.press(KEY.Key_P, modifier=CTRL)
        self.bot.waitUntil(lambda: ".pdf" in self.foot, timeout=20_000)
        path = self.foot.split(": ", 1)[1].split(".pdf")[0] + ".pdf"
        with closing(pypdfium2.PdfDocument(path)) as document:
            pages = [page.get_textpage().get_text_range() for page in document]
        return plain(" ".join(" ".join(pages).split()))


@pytest.fixture
def house(tmp_path, monkeypatch):
    """Fen, 66 % het chalk, had three young by a clear male; one of them is sold."""
    monkeypatch.setenv("KEEPER_HOME", str(tmp_path / "home"))
    made = House(tmp_path / "room.book")
    made.name("chalk recessive")
    for number, (code, sex) in enumerate(
        (("Ash", Sex.FEMALE), ("Burr", Sex.MALE), ("Cob", Sex.MALE), ("Dun", Sex.MALE)), start=1
    ):
        made.founder(code, sex, f"A1·{number}", name=code)
    for text in ("Ash chalk het", "Burr chalk het", "Cob chalk clear", "Dun chalk visual"):
        made.reads(*text.split(" ", 1))
    kin = {"dam": made.keys["Ash"], "sire": made.keys["Burr"]}
    born = made.at.date()
    made.after(1)._come("Fen", hatched=born, sex=Sex.FEMALE, place="A1·5", name="Fen", **kin)
    made.reads("Fen", "chalk normal")
    made.after(700).bred("Fen", "Cob", "25-1", "c", "d", "e")
    made.after(60).sold("d")
    made.after(60)
    with closing(made.keeping):
        yield made


@pytest.fixture
def hand(qtbot, house):
    made = Hand(house.keeping, qtbot)
    yield made
    made.window.close()


def test_the_place_tells_who_shows_who_surely_carries_and_who_may(hand):
    hand.go()

    assert hand.place == "Lines"
    face = hand.page.model.index(0).data(Qt.ItemDataRole.UserRole)
    assert (face.name, face.under) == ("chalk", "house snake, recessive")
    assert [value for value, _ in face.figures] == ["1", "2", "3"]
    assert hand.animals == [
        ("Dun", "visual"),
        ("Ash", "het"),
        ("Burr", "het"),
        ("Fen", "66 % het"),
        ("c", "33 % het"),
        ("e", "33 % het"),
    ]
    said = hand.page.gene.list.odds.index(3).data(Qt.ItemDataRole.AccessibleTextRole)
    assert "A1·5, Fen, female, 66 % het." in plain(said)
    assert "Ash and Burr both carry it" in said


def test_the_likelihood_stands_in_the_tile_and_what_is_sure_has_a_letter(hand):
    hand.go()

    faces = [face for _, face in hand.page.gene.list.odds.pairs]
    assert [(f.state, f.text) for f in faces[2:5]] == [
        (TileState.CARRIES, None),
        (TileState.MAY_CARRY, "66"),
        (TileState.MAY_CARRY, "33"),
    ]


def test_the_pairing_that_tells_most_is_named_with_what_young_would_leave(hand):
    hand.go()

    told = plain(hand.page.gene.panel.text())
    assert "Fen, 66 % het, with Dun, who shows it: one young that shows it proves Fen" in told
    table = plain(hand.page.gene.proofs.text())
    assert "Fen, 66 % het, with Dun: 50 % after 1, 33 % after 2, 11 % after 4, 3 % after 6" in table
    assert "6 normal-looking young take it under 5 %" in table
    pair = hand.page.gene.pair.face
    assert pair.head == "Fen × Dun"
    assert [(plain(b.figure), b.words) for b in pair.bars] == [
        ("67 %", "normal-looking"),
        ("33 %", "chalk"),
    ]
    assert "62 % with 4 eggs, 66 % with 8 eggs, 67 % with 12 eggs" in plain(pair.sentences[0])


def test_space_takes_two_animals_and_another_of_the_same_sex_takes_the_first_one_s_place(hand):
    hand.go()
    hand.choose("Ash")
    hand.press(KEY.Key_Space)
    hand.choose("Dun")
    hand.press(KEY.Key_Space)
    hand.bot.waitUntil(lambda: hand.page.gene.pair.face.head == "Ash × Dun", timeout=20_000)

    assert hand.page.gene.pair.face.aside == "tried with Space"
    assert {b.words: plain(b.figure) for b in hand.page.gene.pair.face.bars} == {
        "chalk": "50 %",
        "normal-looking": "50 %",
    }
    seats = {face.cells[1]: face.seat for _, face in hand.page.gene.list.odds.pairs if face.seat}
    assert seats == {"Ash": "dam", "Dun": "sire"}

    hand.choose("Burr")
    hand.press(KEY.Key_Space)
    hand.bot.waitUntil(lambda: hand.page.gene.pair.face.head == "Ash × Burr", timeout=20_000)


def test_a_pair_of_kin_is_told_with_its_inbreeding_and_the_keeper_decides(hand):
    hand.go()
    hand.choose("Burr")
    hand.press(KEY.Key_Space)
    hand.choose("Fen")
    hand.press(KEY.Key_Space)
    hand.bot.waitUntil(lambda: hand.page.gene.pair.face.head == "Fen × Burr", timeout=20_000)

    told = plain(hand.page.gene.pair.face.sentences[1])
    assert told.startswith("Inbreeding of the young 25 %")
    assert " are kin through " in plain(hand.page.gene.pair.face.sentences[2])
    assert told.endswith("a quarter or more wants a reason; the keeper decides.")


def test_a_proven_young_makes_its_dam_certain_and_a_sold_card_out_of_date(hand, house):
    house.bred("Fen", "Dun", "25-2", "k")
    hand.go()
    assert hand.page.lines.cards == ()
    hand.choose("c")
    hand.press(KEY.Key_K)
    assert hand.type("25-2 k: visual") == "writes: k: chalk: visual"
    hand.enter()

    assert dict(hand.animals)["Fen"] == "het"
    assert dict(hand.animals)["c"] == "50 % het"
    assert hand.page.gene.animal.called == "c"  # is chosen still
    assert "1 card out of date" in plain(hand.page.head.text())

    hand.press(KEY.Key_C)
    ((_, face),) = hand.page.gene.list.odds.pairs
    assert [plain(cell) for cell in face.cells[1:]] == ["d", "chalk", "33 % het → 50 % het"]
    assert "k: chalk: visual" in face.reason
    text = hand.printed()
    assert "Cards out of date" in text and "33 % het 50 % het" in text

    hand.press(KEY.Key_C)
    assert dict(hand.animals)["Fen"] == "het"
    hand.press(KEY.Key_Z, modifier=CTRL)
    hand.bot.waitUntil(lambda: dict(hand.animals).get("Fen") == "66 % het", timeout=20_000)


def test_n_names_a_gene_of_the_species_and_it_stands_in_the_list(hand):
    hand.go()
    hand.press(KEY.Key_N)
    assert "gene ember, recessive, hidden by chalk" in hand.type("ember recessive hidden by chalk")
    hand.enter()

    names = [row.named.gene for row in hand.page.lines.rows]
    assert names == ["chalk", "ember"]
    assert "ember" in hand.foot
    assert "not tried" in hand.page.gene.panel.text()
    hand.press(KEY.Key_Down)
    hand.wait()
    assert "No animal in the room shows it or may carry it" in hand.page.gene.heads.text()


@pytest.mark.parametrize("typed", ["albino recessive", "chalk recessive", "ember", ""])
def test_a_name_that_is_none_is_refused_in_one_sentence_and_the_line_stays(hand, typed):
    hand.go()
    hand.press(KEY.Key_N)
    hand.type(typed)
    QTest.keyClick(hand.page.line.field, KEY.Key_Return)

    assert hand.page.line.isVisible()
    assert hand.foot.endswith(".")
    assert len(hand.page.lines.rows) == 1


def test_enter_opens_the_page_of_the_chosen_animal(hand):
    hand.go()
    hand.choose("Fen")
    hand.press(KEY.Key_Return)

    assert hand.place == "Animal"
    animal = hand.window.page("Animal")
    hand.bot.waitUntil(lambda: "Fen" in animal.head.text(), timeout=20_000)


def test_the_sheet_of_a_gene_says_every_animal_with_its_word_and_its_reason(hand):
    hand.go()
    text = hand.printed()

    assert "Gene chalk" in text
    assert "A1·5 Fen female 66 % het" in text
    assert "never a promise" in text
    assert "Fen 66 % het Dun 50 % 33 % 11 % 3 % 6" in text
    assert "Not listed, as none is known to carry it: 1." in text


def test_a_scanned_label_chooses_the_animal_and_an_unknown_one_is_told(hand):
    hand.go()
    hand.page.scanned("A1·5")
    assert hand.page.gene.animal.called == "Fen"
    hand.page.scanned("Z9·9")

    assert hand.page.gene.animal.called == "Fen"
    assert "No animal listed here is" in hand.foot


def test_right_and_left_go_between_the_lists(hand):
    hand.go()
    assert hand.page.list.hasFocus()
    hand.press(KEY.Key_Right)
    assert hand.page.gene.list.hasFocus()
    hand.press(KEY.Key_Left)
    assert hand.page.list.hasFocus()


def test_without_a_gene_one_sentence_says_what_to_do_first(qtbot, tmp_path, monkeypatch):
    monkeypatch.setenv("KEEPER_HOME", str(tmp_path / "home"))
    empty = House(tmp_path / "empty.book")
    empty.founder("Ash", Sex.FEMALE, "A1·1", name="Ash")
    with closing(empty.keeping):
        hand = Hand(empty.keeping, qtbot)
        hand.go()
        assert hand.page.none.isVisible()
        assert hand.page.none.text() == NO_LINES
        for key in (KEY.Key_K, KEY.Key_C, KEY.Key_Space, KEY.Key_Right, KEY.Key_Return):
            hand.press(key)
        hand.press(KEY.Key_N)
        hand.type("chalk recessive")
        hand.enter()
        assert not hand.page.none.isVisible()
        assert [row.named.gene for row in hand.page.lines.rows] == ["chalk"]
        hand.window.close()


def test_no_key_of_the_place_holds_the_window_up(hand):
    hand.go()
    stalls = Stalls()
    for key in (KEY.Key_Right, KEY.Key_Down, KEY.Key_Space, KEY.Key_C, KEY.Key_C, KEY.Key_Left):
        stalls.part(str(key))
        hand.press(key)
        hand.bot.wait(60)
    stalls.stop()

    assert {part: ms for part, ms in stalls.worst_ms.items() if ms > MOST_BESIDE_WORK_MS} == {}


def test_on_another_day_it_is_read_again(hand, house):
    hand.go()
    before = hand.page.lines
    hand.press(KEY.Key_F8)
    house.at += timedelta(days=1)
    hand.press(KEY.Key_F9, modifier=SHIFT)
    hand.bot.waitUntil(lambda: hand.page.lines is not before, timeout=20_000)

    assert hand.page.lines.on == before.on + timedelta(days=1)
