"""The larder worked by its keys: looked at, counted, a bag opened, printed, and left for others."""

from __future__ import annotations

from contextlib import closing
from dataclasses import replace
from datetime import timedelta

import pypdfium2
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from keeper import app
from keeper.actions.kept_entries import count_prey
from keeper.desktop.look import Look
from keeper.desktop.screens.prey import PreyScreen
from keeper.desktop.widgets.prey_demand import GROUPS
from keeper.husbandry.house import BagOpened, PreyCounted
from keeper.rules.demand import WEEKS, Group, Stock
from keeper.store import reading
from tests.desktop.stalls import MOST_BESIDE_WORK_MS, Stalls
from tests.feeding_room import NIGHT, make_book, row

KEY, SHIFT = Qt.Key, Qt.KeyboardModifier.ShiftModifier
CTRL = Qt.KeyboardModifier.ControlModifier
FUZZY, ADULT = "mouse fuzzy", "mouse adult"


class Hand:
    """The window over a room, worked by its keys alone."""

    def __init__(self, keeping, qtbot):
        self.keeping, self.bot = keeping, qtbot
        self.house = app.build_house(keeping, Look())
        self.window = self.house.window
        qtbot.addWidget(self.window)
        self.window.resize(1440, 900)
        self.window.show()
        with qtbot.waitActive(self.window):
            self.window.activateWindow()

    @property
    def place(self):
        return self.window.place.name

    @property
    def page(self) -> PreyScreen:
        return self.window.page("Prey")

    @property
    def chosen(self):
        return self.page._row()

    @property
    def foot(self):
        return self.window.foot.text()

    def press(self, key, modifier=Qt.KeyboardModifier.NoModifier):
        QTest.keyClick(self.window.windowHandle(), key, modifier)
        QApplication.processEvents()

    def to_the_larder(self):
        self.press(KEY.Key_F2, SHIFT)
        self.bot.waitUntil(lambda: self.page.larder is not None, timeout=20_000)

    def answer(self, text):
        """Type *text* after what stands there, and Enter; wait until the book is read again."""
        before = self.page.larder
        field = self.page.asking.field
        QTest.keyClicks(field, text)
        QTest.keyClick(field, KEY.Key_Return)
        self.bot.waitUntil(lambda: self.page.larder is not before, timeout=20_000)

    def grade(self, prey):
        return next(each for each in self.page.larder.grades if each.prey == prey)


@pytest.fixture
def hand(qtbot, tmp_path, monkeypatch):
    monkeypatch.setenv("KEEPER_HOME", str(tmp_path / "home"))
    tubs = [replace(tub, weight_g=120.0) for tub in row("A", 1, 10)]
    with closing(make_book(tmp_path / "room.book", tubs)) as keeping:
        count_prey(keeping, f"{FUZZY}: 14: 90")
        count_prey(keeping, f"{ADULT}: 15: 12")
        made = Hand(keeping, qtbot)
        yield made
        made.window.close()


def test_the_larder_is_gone_to_by_its_key_and_walked_with_the_arrows(hand):
    hand.to_the_larder()

    assert hand.place == "Prey"
    assert [each.prey for each in hand.page.larder.grades] == [FUZZY, ADULT]
    assert hand.chosen.prey == FUZZY
    hand.press(KEY.Key_Down)
    assert hand.chosen.prey == ADULT
    assert "None is planned" in hand.page.demand.text()
    hand.press(KEY.Key_Up)
    assert hand.chosen.prey == FUZZY


def test_the_picture_has_its_numbers_in_words(hand):
    hand.to_the_larder()
    grade, words = hand.chosen, hand.page.demand.text()

    assert words.count("Week of") == WEEKS
    assert f"Week of 25 Nov: {round(grade.items[0], 1):g} items" in words.replace("\u00a0", " ")
    assert list(GROUPS) == [group.value for group in Group]


def test_prey_counted_is_written_with_the_grade_and_bag_typed_already(hand):
    hand.to_the_larder()
    hand.press(KEY.Key_S)

    assert hand.page.asking.field.text() == f"{FUZZY}: 14: "
    hand.answer("300")

    assert hand.grade(FUZZY).left == 300
    entries = reading.all_of(hand.keeping.book, PreyCounted)
    assert entries[-1].event.items == 300
    assert "Ctrl+Z" in hand.foot
    hand.press(KEY.Key_Z, CTRL)
    hand.bot.waitUntil(lambda: hand.grade(FUZZY).left == 90, timeout=20_000)


def test_a_bag_opened_is_written_for_the_chosen_grade(hand):
    hand.to_the_larder()
    hand.press(KEY.Key_B)

    assert hand.page.asking.field.text() == f"{FUZZY}: "
    hand.answer("14")

    (bag,) = reading.all_of(hand.keeping.book, BagOpened)
    assert (bag.event.prey, bag.event.bag) == (FUZZY, "14")


def test_a_count_that_cannot_be_read_is_refused_and_stays_to_be_mended(hand):
    hand.to_the_larder()
    hand.press(KEY.Key_S)
    field = hand.page.asking.field
    field.selectAll()
    QTest.keyClicks(field, "whale: 1: 2")
    QTest.keyClick(field, KEY.Key_Return)

    assert "no grade of prey" in hand.foot
    assert hand.page.asking.isVisible()


def test_enter_opens_the_first_animal_that_changes_its_grade(hand):
    """All last ate a weaner; at 120 g two fuzzies are nearer to the meal."""
    hand.to_the_larder()
    first = min(hand.chosen.steps_in, key=lambda step: step.on)

    hand.press(KEY.Key_Return)

    assert hand.place == "Animal"
    hand.bot.waitUntil(lambda: first.eater.now.code in hand.window.page("Animal").head.text())


def test_enter_where_nobody_changes_says_so(hand):
    hand.to_the_larder()
    hand.press(KEY.Key_Down)
    hand.press(KEY.Key_Return)

    assert hand.place == "Prey"
    assert "No animal goes over to this grade" in hand.foot


def test_the_order_list_on_paper_says_what_the_place_says(hand, tmp_path):
    hand.to_the_larder()
    hand.press(KEY.Key_P, CTRL)

    (path,) = tmp_path.glob("room.book.order-*.pdf")
    (page,) = pypdfium2.PdfDocument(path)
    words = " ".join(page.get_textpage().get_text_range().split())
    grade = hand.grade(FUZZY)
    assert "Order list for prey, 25 Nov 2026" in words
    for head in ("grade", "left", "4 weeks", "12 weeks", "lacks", "to order by", "came"):
        assert head in words
    assert grade.state is Stock.ORDER_SOON
    needed = [sum(grade.items[:4]), sum(grade.items)]
    soon, all_weeks = (-(-round(items, 6) // 1) for items in needed)
    order_by = grade.order_by.strftime("%-d %b")
    assert f"fuzzy mouse 90 {soon:g} {all_weeks:g} {all_weeks - 90:g} {order_by}" in words
    assert "adult mouse 12 0 0 0 enough" in words


def test_the_watch_leads_to_the_grade_that_is_low(hand):
    count_prey(hand.keeping, f"{FUZZY}: 14: 1")
    hand.to_the_larder()
    hand.press(KEY.Key_Down)
    assert hand.chosen.prey == ADULT
    hand.press(KEY.Key_F7)
    watch = hand.window.page("Watch")
    hand.bot.waitUntil(lambda: bool(watch.model.rows), timeout=20_000)
    low = [n for n, r in enumerate(watch.model.rows) if getattr(r.about, "kind", "") == "prey low"]
    while watch.list.currentIndex().row() != low[0]:
        hand.press(KEY.Key_Down)
    assert "goes to the prey" in [words for _, words in watch.detail._face.keys]
    hand.press(KEY.Key_Return)

    assert hand.place == "Prey"
    assert hand.chosen.prey == FUZZY


def test_the_book_is_read_beside_the_window(hand):
    """At the change of a count the window comes round as ever."""
    hand.to_the_larder()
    stalls = Stalls()
    for items in (40, 50, 60):
        hand.press(KEY.Key_S)
        hand.answer(f"{items}")
    stalls.stop()

    assert hand.grade(FUZZY).left == 60
    assert max(stalls.worst_ms.values()) < MOST_BESIDE_WORK_MS


def test_a_new_day_is_read_anew(hand, monkeypatch):
    hand.to_the_larder()
    before = hand.page.larder
    tomorrow = hand.keeping.now() + timedelta(days=1)
    hand.press(KEY.Key_F7)
    hand.keeping.now.at = tomorrow
    hand.press(KEY.Key_F2, SHIFT)

    hand.bot.waitUntil(lambda: hand.page.larder is not before, timeout=20_000)
    assert hand.page.larder.on == NIGHT + timedelta(days=1)
