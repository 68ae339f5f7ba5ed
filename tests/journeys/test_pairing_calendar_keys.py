"""The pairing calendar worked by its keys: turned to, walked, read out, asked, printed, left."""

from __future__ import annotations

from contextlib import closing
from datetime import date, timedelta

import pypdfium2
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from keeper import app
from keeper.actions.keeping import open_keeping
from keeper.actions.settings import own_figures
from keeper.desktop.look import Look
from keeper.desktop.page_keys import page_lines
from keeper.desktop.screens.females import FemalesScreen
from keeper.husbandry.events import Clutch
from keeper.husbandry.when import on_day
from keeper.rehearsal.collection import make_collection
from tests.desktop.stalls import MOST_BESIDE_WORK_MS, Stalls
from tests.pairing_room import NOW, TODAY, key, make_room, tell

KEY, CTRL = Qt.Key, Qt.KeyboardModifier.ControlModifier
NONE = Qt.KeyboardModifier.NoModifier


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
    def page(self) -> FemalesScreen:
        return self.window.page("Females")

    @property
    def view(self):
        return self.page.pairing.view

    @property
    def chosen(self):
        return self.view.chosen.female.animal.name

    @property
    def told(self):
        return self.view.beside.text().replace("\u00a0", " ")

    @property
    def foot(self):
        return self.window.foot.text().replace("\u00a0", " ")

    def press(self, pressed, modifier=NONE):
        QTest.keyClick(self.window.windowHandle(), pressed, modifier)
        QApplication.processEvents()

    def go(self):
        """To the place, and on to the calendar."""
        self.press(KEY.Key_F8)
        self.bot.waitUntil(lambda: bool(self.page.model.rows), timeout=20_000)
        self.press(KEY.Key_C)
        self.bot.waitUntil(lambda: bool(self.view.model.rows), timeout=20_000)


@pytest.fixture
def keeping(tmp_path, monkeypatch):
    monkeypatch.setenv("KEEPER_HOME", str(tmp_path / "home"))
    with closing(make_room(tmp_path / "room.book")) as made:
        yield made


@pytest.fixture
def hand(keeping, qtbot):
    made = Hand(keeping, qtbot)
    made.go()
    yield made
    made.window.close()


def test_one_key_turns_to_the_calendar_and_the_same_key_back(hand):
    assert hand.page.calendar_shown
    assert hand.view.isVisible()
    assert "pairing calendar" in hand.page.head.text()

    hand.press(KEY.Key_C)

    assert not hand.page.calendar_shown
    assert hand.page.list.hasFocus()
    assert "have every gate met" in hand.page.head.text()


def test_the_key_is_told_at_the_foot_of_the_page_and_in_the_key_sheet(hand):
    shown = {line.key for line in page_lines(hand.page)}
    assert {"C", "Left", "Right", "Space", "+", "-", "Ctrl+P"} <= shown
    assert "C back to the gates" in hand.view.legend.text()

    hand.press(KEY.Key_C)

    listed = {line.key: line.words for line in page_lines(hand.page)}
    assert listed["C"] == "the pairing calendar, and back"
    assert "Left" not in listed
    assert "C turns to the pairing calendar." in hand.page.legend.text()


def test_arrows_walk_weeks_and_females_and_each_is_read_out(hand):
    assert hand.chosen == "Tilda"
    assert "Week of 23 Nov, this week. Next: eggs by 10 Dec." in hand.told

    hand.press(KEY.Key_Right)
    assert "Week of 30 Nov, in 1 week" in hand.told
    assert "agree who sees to nest and eggs" in hand.told

    hand.press(KEY.Key_Down)
    assert hand.chosen == "Maud"
    assert "The first slit of 26-9 may come from 3 Dec to 18 Dec." in hand.told
    assert "The keeper is away from 1 Dec to 9 Dec 2026, covered by Ada." in hand.told

    for _ in range(9):
        hand.press(KEY.Key_Left)
    assert "Week of 28 Sep, 8 weeks ago" in hand.told
    assert "Told by earlier signs" in hand.told

    hand.press(KEY.Key_Space)
    assert "Week of 23 Nov, this week" in hand.told


def test_plus_and_minus_show_fewer_and_more_weeks(hand):
    for pressed, weeks in (
        (KEY.Key_Plus, 26),
        (KEY.Key_Plus, 13),
        (KEY.Key_Plus, 13),
        (KEY.Key_Minus, 26),
    ):
        hand.press(pressed)
        assert hand.view.weeks_shown == weeks


def test_the_chosen_female_stays_chosen_from_view_to_view(hand):
    hand.press(KEY.Key_Down)
    hand.press(KEY.Key_Down)
    name = hand.chosen

    hand.press(KEY.Key_C)
    assert hand.page._row().animal.name == name
    hand.press(KEY.Key_C)
    assert hand.chosen == name


def test_enter_opens_her_page(hand):
    hand.press(KEY.Key_Down)
    hand.press(KEY.Key_Return)

    assert hand.window.place.name == "Animal"


def test_arrows_in_the_asked_line_move_in_its_text_and_not_the_weeks(hand):
    hand.press(KEY.Key_G)
    field = hand.page.asking.field
    hand.bot.waitUntil(field.hasFocus)
    before = hand.view.week

    for pressed in (KEY.Key_Left, KEY.Key_Right, KEY.Key_Minus, KEY.Key_C):
        QTest.keyClick(field, pressed)

    assert (hand.view.week, hand.page.calendar_shown) == (before, True)
    assert "c" in field.text()
    QTest.keyClick(field, KEY.Key_Escape)
    assert own_figures(hand.keeping) == []


def test_eggs_that_are_written_end_the_window_at_once(hand):
    tilda = key(hand.keeping, "F2")
    tell(hand.keeping, [Clutch(animal=tilda, happened=on_day(TODAY), good=6, code="26-10")])
    hand.page._notices.changed.emit()

    def laid():
        face = next(face for face in hand.view.model.faces if face.name == "Tilda")
        return face.laid == (TODAY,)

    hand.bot.waitUntil(laid, timeout=20_000)
    assert hand.chosen == "Tilda"
    assert "Where these lie is not written: 26-10." in hand.told
    hand.press(KEY.Key_Right)
    assert "Eggs may come" not in hand.told


def test_a_label_that_is_scanned_goes_to_her_row(hand):
    hand.page.scanned("F3")

    assert hand.chosen == "Ragna"


def test_it_prints_beside_the_book_and_says_where(hand):
    hand.press(KEY.Key_P, CTRL)
    hand.bot.waitUntil(lambda: ".pdf" in hand.foot, timeout=20_000)

    path = hand.keeping.book.path.with_name(
        f"{hand.keeping.book.path.name}.pairing-calendar-{TODAY.isoformat()}.pdf"
    )
    text = pypdfium2.PdfDocument(path)[0].get_textpage().get_text_range()
    assert "Pairing calendar" in text
    assert "Tilda" in text


def test_before_it_was_turned_to_there_is_nothing_to_print_and_it_says_so(keeping, qtbot):
    hand = Hand(keeping, qtbot)
    hand.press(KEY.Key_F8)
    hand.press(KEY.Key_P, CTRL)

    assert "C turns to it, then it prints." in hand.foot
    hand.window.close()


@pytest.mark.parametrize("size", [(1024, 600), (1440, 900)])
def test_nothing_of_it_is_cut_off_in_either_window(keeping, qtbot, size):
    hand = Hand(keeping, qtbot, size)
    hand.go()
    view = hand.view

    for piece in (view.head, view.list, view.foot, view.legend, view.beside):
        at = piece.mapTo(hand.page, piece.rect().bottomRight())
        assert hand.page.rect().contains(at), piece
        assert piece.height() >= piece.minimumSizeHint().height()
    assert view.legend.height() >= view.legend.natural_size()[1] - 1
    hand.window.close()


def test_the_invented_house_is_read_and_walked_without_a_stall(tmp_path, monkeypatch, qtbot):
    monkeypatch.setenv("KEEPER_HOME", str(tmp_path / "home"))
    path = tmp_path / "demo.book"
    make_collection(path, ends_on=TODAY - timedelta(days=1))
    with closing(open_keeping(path, station="s", now=lambda: NOW)) as keeping:
        hand = Hand(keeping, qtbot)
        hand.press(KEY.Key_F8)
        qtbot.waitUntil(lambda: bool(hand.page.model.rows), timeout=20_000)
        stalls = Stalls()
        stalls.part("turn")
        hand.press(KEY.Key_C)
        qtbot.waitUntil(lambda: bool(hand.view.model.rows), timeout=20_000)
        for pressed in (KEY.Key_Right, KEY.Key_Down, KEY.Key_Plus, KEY.Key_Left) * 3:
            stalls.part("walk")
            hand.press(pressed)
            QTest.qWait(20)
        stalls.stop()
        names = [face.name for face in hand.view.model.faces]
        bars = {bar.kind.name for face in hand.view.model.faces for bar in face.bars}
        hand.window.close()

    assert len(names) > 8
    assert {"MAY_LAY", "LIES", "MAY_PIP", "RECOVERING", "COOLED"} <= bars
    assert date(2026, 11, 25) == TODAY
    worst = {name: ms for name, ms in stalls.worst_ms.items() if name != "begin"}
    assert max(worst.values()) <= MOST_BESIDE_WORK_MS, worst
