"""The time-line worked by its keys: opened at a stay, walked, followed, printed, and left again."""

from __future__ import annotations

from contextlib import closing
from datetime import UTC, date, datetime

import pypdfium2
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from keeper import app
from keeper.actions.keeping import open_keeping
from keeper.actions.noting import note
from keeper.actions.recording import Newcomer, receive
from keeper.desktop.look import Look
from keeper.desktop.screens.animal import AnimalScreen
from keeper.desktop.screens.racks import RacksScreen
from keeper.husbandry.events import Moved
from keeper.husbandry.when import on_day
from keeper.rehearsal.collection import make_collection
from tests.desktop.stalls import MOST_BESIDE_WORK_MS, Stalls
from tests.feeding_room import make_book
from tests.feeding_room import room as big_room
from tests.time_room import TODAY, ago, room

KEY, SHIFT = Qt.Key, Qt.KeyboardModifier.ShiftModifier
CTRL, NONE = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.NoModifier


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
    def page(self) -> RacksScreen:
        return self.window.page("Racks")

    @property
    def animals(self) -> AnimalScreen:
        return self.window.page("Animal")

    @property
    def shown(self):
        return self.page.time.shown[0]

    @property
    def at(self):
        """Tub, name of whose stay is chosen, and how many days ago the cursor stands."""
        shown = self.shown
        row = shown.told.who.get(shown.animal)
        days = (shown.told.on - shown.view.cursor).days
        return shown.told.tubs[shown.tub].name, row.called if row else None, days

    @property
    def told(self):
        return self.page.view.time.told.text().replace("\u00a0", " ")

    @property
    def foot(self):
        return self.window.foot.text().replace("\u00a0", " ")

    def press(self, key, modifier=NONE, times=1):
        for _ in range(times):
            QTest.keyClick(self.window.windowHandle(), key, modifier)
            QApplication.processEvents()

    def go(self):
        self.press(KEY.Key_F6)
        self.bot.waitUntil(lambda: self.page.room is not None, timeout=20_000)

    def through_time(self):
        """T, and wait until the rack is read."""
        self.press(KEY.Key_T)
        self.bot.waitUntil(lambda: self.page.view.time_shown, timeout=20_000)


@pytest.fixture
def hand(qtbot, tmp_path, monkeypatch):
    monkeypatch.setenv("KEEPER_HOME", str(tmp_path / "home"))
    with room(tmp_path / "room.book") as keeping:
        made = Hand(keeping, qtbot)
        yield made
        made.window.close()


def test_t_opens_the_rack_at_the_stay_of_the_chosen_animal_and_goes_back_to_it(hand):
    hand.go()
    hand.press(KEY.Key_Right, times=2)
    hand.through_time()

    assert hand.at == ("B1·3", "Wren", 0)
    assert hand.page.view.head.text().startswith("Time-line of rack B")
    assert not hand.page.view.lines.isVisible()

    hand.press(KEY.Key_T)

    assert not hand.page.view.time_shown and hand.page.view.lines.isVisible()
    assert hand.page.chosen.tub.name == "B1·3"


def test_arrows_walk_tubs_and_days_and_stop_at_changes(hand):
    hand.go()
    hand.through_time()
    assert hand.at == ("B1·1", "Alder", 0)

    hand.press(KEY.Key_Down)
    hand.press(KEY.Key_Left)
    assert hand.at == ("B1·2", "Maud", 1)

    hand.press(KEY.Key_Left, SHIFT, times=4)
    assert hand.at == ("B1·2", "Maud", 40)  # past looks for mites and the washing

    hand.press(KEY.Key_Left)
    hand.press(KEY.Key_Down)
    assert hand.at == ("B1·2", "Alder", 41)
    assert "It exposed Maud to Alder" in hand.told

    hand.press(KEY.Key_Space)
    assert hand.at == ("B1·2", "Maud", 41)

    hand.press(KEY.Key_End)
    assert hand.at == ("B1·2", "Maud", 0)
    hand.press(KEY.Key_Home)
    assert hand.at == ("B1·2", "Maud", 200)


def test_an_animal_is_followed_from_tub_to_tub_and_into_another_rack(hand):
    hand.go()
    hand.through_time()
    hand.press(KEY.Key_Down, times=3)
    assert hand.at == ("B1·4", "Pell", 0)

    hand.press(KEY.Key_Up, CTRL)
    hand.bot.waitUntil(lambda: hand.shown.told.letter == "Q", timeout=20_000)
    assert hand.at == ("Q1·2", "Pell", 61)
    assert "Quarantine of Pell: from 28 Jul 2026 to 26 Oct 2026." in hand.told

    hand.press(KEY.Key_Up, CTRL)
    assert hand.foot.startswith("No tub before this one is in the book.")

    hand.press(KEY.Key_Down, CTRL)
    hand.bot.waitUntil(lambda: hand.shown.told.letter == "B", timeout=20_000)
    assert hand.at == ("B1·4", "Pell", 60)


def test_within_a_rack_the_other_tub_is_gone_to_at_once(hand):
    hand.go()
    hand.through_time()
    hand.press(KEY.Key_Up, CTRL)
    assert hand.at == ("B1·2", "Alder", 41)

    hand.press(KEY.Key_Down, CTRL)
    assert hand.at == ("B1·1", "Alder", 40)


def test_plus_and_minus_take_the_days_nearer_and_further(hand):
    hand.go()
    hand.through_time()
    spans = [hand.shown.view.span_days]
    hand.press(KEY.Key_Plus)
    spans.append(hand.shown.view.span_days)
    hand.press(KEY.Key_Minus, times=3)
    spans.append(hand.shown.view.span_days)

    assert spans == [92, 31, 200]


def test_the_racks_are_gone_through_and_empty_tubs_are_told(hand):
    hand.go()
    hand.through_time()
    hand.press(KEY.Key_PageDown)
    hand.bot.waitUntil(lambda: hand.shown.told.letter == "Q", timeout=20_000)
    assert hand.at == ("Q1·1", "Sage", 0)

    hand.press(KEY.Key_Down)
    assert hand.at == ("Q1·2", None, 0)
    assert (
        "Nobody is written in Q1·2 on 25 Nov 2026: empty. Before that Pell was in it" in hand.told
    )
    hand.press(KEY.Key_Return)
    assert "Nobody is in this tub on that day." in hand.foot


def test_enter_opens_the_animal_and_w_on_her_page_goes_back_to_the_stay_of_her_day(hand):
    hand.go()
    hand.through_time()
    hand.press(KEY.Key_Down)
    hand.press(KEY.Key_Return)
    hand.bot.waitUntil(lambda: hand.animals.page is not None, timeout=20_000)
    assert hand.window.place.name == "Animal"
    assert hand.animals.page.animal.name == "Maud"

    hand.press(KEY.Key_Left, times=42)
    hand.press(KEY.Key_W)
    hand.bot.waitUntil(lambda: hand.window.place.name == "Racks", timeout=20_000)
    hand.bot.waitUntil(lambda: hand.at == ("B1·2", "Maud", 42), timeout=20_000)


def test_w_goes_there_before_the_racks_were_ever_looked_at(hand):
    hand.press(KEY.Key_F9)
    hand.bot.waitUntil(lambda: hand.animals.page is not None, timeout=20_000)
    name = hand.animals.page.animal.name
    hand.press(KEY.Key_W)

    hand.bot.waitUntil(lambda: hand.page.view.time_shown, timeout=20_000)
    assert hand.at[1] == name
    hand.bot.waitUntil(lambda: hand.page.room is not None, timeout=20_000)
    assert hand.page.view.time_shown


def test_r_and_digits_leave_it_and_their_keys_are_those_of_the_view_in_sight(hand):
    hand.go()
    fronts = keys_of(hand.page)
    hand.through_time()
    time = keys_of(hand.page)
    hand.press(KEY.Key_R)
    hand.bot.waitUntil(lambda: hand.page.view.nights_shown, timeout=20_000)

    assert {"M", "X", "D"} <= fronts and not {"M", "X", "D"} & time
    assert {"Ctrl+Up", "Shift+Left"} <= time and keys_of(hand.page) == fronts

    hand.through_time()
    hand.press(KEY.Key_1)
    assert not hand.page.view.time_shown and not hand.page.view.nights_shown


def keys_of(page):
    return {key.toString() for action in page.actions() for key in action.shortcuts()}


def test_o_shows_one_row_alone_and_walking_on_shows_the_next(hand):
    hand.go()
    hand.through_time()
    hand.press(KEY.Key_O)
    hand.press(KEY.Key_Down)
    assert [tub.name for tub in hand.shown.told.tubs] == ["B1·1", "B1·2", "B1·3", "B1·4"]
    assert hand.at == ("B1·2", "Maud", 0)
    assert "below B2·2: cannot tell" in hand.told

    hand.press(KEY.Key_Down, times=3)
    assert hand.at == ("B2·1", None, 0)
    assert len(hand.shown.told.tubs) == 5

    hand.press(KEY.Key_O)
    assert hand.at == ("B2·1", None, 0) and len(hand.shown.told.tubs) == 9


def test_a_label_scanned_shows_its_animal_or_its_tub(hand):
    hand.go()
    hand.through_time()
    hand.page.scanned("F2")
    hand.bot.waitUntil(lambda: hand.at == ("B1·3", "Wren", 0), timeout=20_000)
    hand.page.scanned("Q1-1")
    hand.bot.waitUntil(lambda: hand.at == ("Q1·1", "Sage", 0), timeout=20_000)


def test_w_of_an_animal_in_no_tub_says_so(hand):
    who = Newcomer(happened=on_day(TODAY), code="N1", species="house_snake", place=None)
    hand.house.notices.tell_written(receive(hand.keeping, [who])[0])
    hand.press(KEY.Key_F9)
    hand.bot.waitUntil(lambda: hand.animals.page is not None, timeout=20_000)
    hand.animals.scanned("N1")
    hand.bot.waitUntil(lambda: hand.animals.page.animal.code == "N1", timeout=20_000)
    hand.press(KEY.Key_W)

    told = "No tub of this animal is in the book: there is no time-line."
    hand.bot.waitUntil(lambda: told in hand.foot, timeout=20_000)


def test_what_is_written_meanwhile_is_shown_at_the_same_stay(hand):
    hand.go()
    hand.through_time()
    hand.press(KEY.Key_Down)
    before = hand.shown.told
    wren = next(row.animal for row in before.who.values() if row.name == "Wren")
    moved = Moved(animal=wren, happened=on_day(TODAY), place="B1·2")
    hand.house.notices.tell_written(note(hand.keeping, "move", moved))

    hand.bot.waitUntil(lambda: hand.shown.told is not before, timeout=20_000)
    hand.bot.waitUntil(lambda: "Wren, female, has shared it since" in hand.told, timeout=20_000)
    assert hand.at == ("B1·2", "Maud", 0)


def test_it_is_printed_with_every_tub_and_all_that_is_told(hand, tmp_path):
    hand.go()
    hand.through_time()
    hand.press(KEY.Key_Down, times=2)
    hand.press(KEY.Key_Left, times=20)
    hand.press(KEY.Key_P, CTRL)

    (path,) = tmp_path.glob("room.book.time-line-B-2026-11-05.pdf")
    document = pypdfium2.PdfDocument(path)
    words = " ".join(" ".join(p.get_textpage().get_text_range().split()) for p in document)
    assert "Time-line of rack B" in words and "page 1 of 1" in words
    for name in ("B1·1", "B1·2", "B2·5", "Maud", "Alder", "cannot tell", "mites seen 1"):
        assert name in words, name
    assert "Sage (B2·3 then, now Q1·1)" in words


def test_the_swap_that_the_watch_suspects_is_marked_and_told(qtbot, tmp_path, monkeypatch):
    monkeypatch.setenv("KEEPER_HOME", str(tmp_path / "home"))
    book = tmp_path / "demo.book"
    make_collection(book, ends_on=date(2026, 11, 24)).close()
    now = datetime(2026, 11, 25, 8, tzinfo=UTC)
    with closing(open_keeping(book, station="s", now=lambda: now)) as keeping:
        hand = Hand(keeping, qtbot, size=(1024, 600))
        hand.press(KEY.Key_F9)
        qtbot.waitUntil(lambda: hand.animals.page is not None, timeout=20_000)
        hand.window.page("Animal").scanned("HS-39")
        qtbot.waitUntil(lambda: hand.animals.page.animal.code == "HS-39", timeout=20_000)
        hand.press(KEY.Key_W)
        qtbot.waitUntil(lambda: hand.page.time.shown is not None, timeout=20_000)
        qtbot.waitUntil(lambda: "May have been swapped" in hand.told, timeout=20_000)

        assert "7 tubs of 27 lived in were washed, this one among them" in hand.told
        marks = [(mark.kind.value, mark.tub) for mark in hand.shown.told.marks]
        assert marks.count(("W", None)) == 1
        assert ("S", "B2·4") in marks and ("S", "B2·5") in marks
        hand.window.close()


def test_two_thousand_tubs_make_no_key_wait(qtbot, tmp_path, monkeypatch):
    monkeypatch.setenv("KEEPER_HOME", str(tmp_path / "home"))
    with closing(make_book(tmp_path / "room.book", big_room(20))) as keeping:
        hand = Hand(keeping, qtbot)
        hand.go()
        stalls = Stalls()
        stalls.part("opened")
        hand.through_time()
        stalls.part("walked")
        hand.press(KEY.Key_Down, times=30)
        hand.press(KEY.Key_Left, times=5)
        stalls.part("another rack")
        hand.press(KEY.Key_PageDown)
        qtbot.waitUntil(lambda: hand.shown.told.letter == "B", timeout=20_000)
        stalls.stop()

        assert len(hand.shown.told.tubs) == 100
        assert max(stalls.worst_ms.values()) < MOST_BESIDE_WORK_MS, stalls.worst_ms
        hand.window.close()


def test_a_day_long_ago_is_opened_in_a_quarter_around_it(hand):
    hand.go()
    hand.through_time()
    maud = next(row.animal for row in hand.shown.told.who.values() if row.name == "Maud")
    hand.house.notices.stay_asked.emit(maud, ago(150))

    hand.bot.waitUntil(lambda: hand.at == ("B1·2", "Maud", 150), timeout=20_000)
    assert hand.shown.view.first <= ago(150) <= hand.shown.view.last
    assert hand.shown.view.span_days == 92
