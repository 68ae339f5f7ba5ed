"""An absence by keys alone: told back, kept, followed by the round, taken back and put back."""

from contextlib import closing
from datetime import UTC, datetime, timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from keeper.actions.absences import coming_absences
from keeper.actions.due_board import due_rows
from keeper.actions.settings import set_feed_nights
from keeper.desktop.background import AtOnce
from keeper.desktop.house import House
from keeper.desktop.look import Look
from keeper.desktop.screens.round import RoundScreen
from keeper.desktop.screens.settings import SettingsScreen
from keeper.desktop.screens.watch import WatchScreen
from keeper.husbandry.events import Clutch
from keeper.husbandry.when import on_day
from keeper.reports.figures import plain
from tests.feeding_room import NIGHT, Clock, make_book
from tests.pad_desk import said_on
from tests.unit.test_absence_board import tubs

CONTROL = Qt.KeyboardModifier.ControlModifier
THURSDAY = NIGHT + timedelta(days=1)


def clutch_laid(animal):
    on = on_day(THURSDAY - timedelta(days=50))
    return [Clutch(animal=animal, happened=on, good=7, slugs=1, code="26-40")]


@pytest.fixture
def keeping(tmp_path):
    clock = Clock()
    clock.at = datetime(2026, 11, 26, 20, 40, tzinfo=UTC)
    made = tubs()
    made[0] = type(made[0])(place="A1·1", name="Tansy", fed_days=5, more=clutch_laid)
    with closing(make_book(tmp_path / "house.book", made, clock)) as book:
        set_feed_nights(book, "wed sat")
        yield book


@pytest.fixture
def desk(qtbot, keeping):
    made = Hands(keeping)
    yield made
    made.leave()


class Hands:
    """The whole window with Round, Watch and House ways."""

    def __init__(self, keeping):
        makers = {
            "Round": lambda *its: RoundScreen(*its, worker=AtOnce()),
            "Watch": lambda *its: WatchScreen(*its, worker=AtOnce()),
            "House ways": SettingsScreen,
        }
        self.house = House(keeping, Look(), makers)
        self.window = self.house.window
        self.refused, self.noted = [], []
        self.house.notices.refused.connect(self.refused.append)
        self.house.notices.noted.connect(self.noted.append)
        self.window.resize(1440, 900)
        self.window.show()
        self.window.activateWindow()
        assert QTest.qWaitForWindowActive(self.window)
        self.press(Qt.Key.Key_F2)

    @property
    def page(self):
        return self.window.page("Round")

    @property
    def told(self):
        return plain(self.page.away.told.text()) if self.page.away.told.isVisible() else ""

    def press(self, key, modifier=Qt.KeyboardModifier.NoModifier):
        QTest.keyClick(self.window.focusWidget() or self.window, key, modifier)
        QApplication.processEvents()

    def type(self, text):
        QTest.keyClicks(self.window.focusWidget(), text)
        self.press(Qt.Key.Key_Return)

    def leave(self):
        self.window.close()
        self.window.deleteLater()


def plans(keeping):
    return [row.plan for row in due_rows(keeping, THURSDAY)]


def keep(desk, text="27 Nov to 6 Dec, Wren"):
    desk.press(Qt.Key.Key_H, CONTROL)
    desk.type(text)
    desk.press(Qt.Key.Key_Return)


def test_it_is_told_back_before_it_is_kept_and_changed_words_are_told_anew(desk, keeping):
    before = plans(keeping)
    desk.press(Qt.Key.Key_H, CONTROL)
    desk.type("27 Nov to 6 Dec, Wren")

    assert desk.told.startswith("Away 27 Nov 2026 to 6 Dec 2026, 10 days, covered by Wren.")
    assert "Fed early: 1 animal (A1: 5) on Thu 26 Nov 2026." in desk.told
    assert "26-40: May pip from " in desk.told
    assert desk.told.endswith("Enter again keeps it and prints the page.")
    assert plans(keeping) == before and coming_absences(keeping, THURSDAY) == []

    QTest.keyClicks(desk.window.focusWidget(), "e")
    assert desk.told == ""
    desk.press(Qt.Key.Key_Return)
    assert "covered by Wrene" in desk.told and plans(keeping) == before
    desk.press(Qt.Key.Key_Escape)
    assert desk.told == "" and plans(keeping) == before


def test_kept_the_round_walks_the_bent_plan_with_its_reason_and_ctrl_z_puts_it_back(desk, keeping):
    before = plans(keeping)
    keep(desk)
    bent = plans(keeping)

    assert (keeping.book.path.parent / "house.book.away-2026-11-27.pdf").is_file()
    assert bent != before
    desk.press(Qt.Key.Key_Z, CONTROL)
    assert plans(keeping) == before
    desk.press(Qt.Key.Key_Z, CONTROL | Qt.KeyboardModifier.ShiftModifier)
    assert plans(keeping) == bent

    desk.press(Qt.Key.Key_Enter, Qt.KeyboardModifier.KeypadModifier)
    walk = desk.page._stand.here.walk
    assert {tub.plan.place for tub in walk.tubs if tub.walked} >= {"A1·5"}
    for key in (Qt.Key.Key_9, Qt.Key.Key_5, Qt.Key.Key_Enter):
        desk.press(key, Qt.KeyboardModifier.KeypadModifier)
    assert "Offered 2 days early, on Thu 26 Nov 2026: away 27 Nov 2026 to 6 Dec 2026." in plain(
        spoken(desk.page)
    )


def spoken(page):
    parts = [said_on(page)]
    for child in page.findChildren(type(page).__mro__[1]):
        parts += [child.accessibleName(), child.accessibleDescription()]
    return "\n".join(parts)


def test_the_same_asked_again_is_printed_and_not_written_again(desk, keeping):
    keep(desk)
    desk.press(Qt.Key.Key_H, CONTROL)

    assert desk.page.away.field.text() == "2026-11-27 – 2026-12-06, Wren"
    desk.press(Qt.Key.Key_Return)
    assert desk.told.endswith("Enter again prints the page.")
    desk.press(Qt.Key.Key_Return)
    assert len(coming_absences(keeping, THURSDAY)) == 1


def test_house_ways_show_it_while_it_stands_and_its_key_is_the_way_back(desk, keeping):
    before = plans(keeping)
    desk.press(Qt.Key.Key_Comma, CONTROL)
    ways = desk.window.page("House ways")
    assert not ways.rows[-1].isVisible()
    desk.press(Qt.Key.Key_A)
    assert "Ctrl+H in Round asks for one" in desk.refused[-1]

    desk.press(Qt.Key.Key_F2)
    keep(desk)
    desk.press(Qt.Key.Key_Comma, CONTROL)
    assert ways.rows[-1].isVisible()
    assert plain(ways.rows[-1].face.value) == "27 Nov to 6 Dec, Wren"
    desk.press(Qt.Key.Key_A)
    assert not ways.rows[-1].isVisible() and plans(keeping) == before
    desk.press(Qt.Key.Key_Z, CONTROL)
    assert ways.rows[-1].isVisible() and plans(keeping) != before


def test_the_watch_tells_of_the_clutch_before_it_this_week(desk, keeping):
    keep(desk)
    desk.press(Qt.Key.Key_F7)

    watch = desk.window.page("Watch")
    told = plain(spoken(watch))
    assert "1 this week" in told and "26-40: may pip while the keeper is away" in told
    assert "covered by Wren: agree who sees to it" in told
