"""Nights that are over, by real keys: asked about, answered, opened on their own lines."""

from contextlib import closing
from datetime import date, timedelta

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from keeper.actions.past_nights import missing_nights, past_night
from keeper.actions.rounds import begin_night
from keeper.actions.settings import set_feed_nights
from keeper.desktop.dress import dress
from keeper.desktop.screens.past_nights import PastNightsScreen
from keeper.husbandry.events import Result
from keeper.reports.figures import plain
from tests.feeding_room import NIGHT, Clock, make_book, row
from tests.pad_desk import Desk

SATURDAY = date(2026, 11, 28)


@pytest.fixture
def keeping(tmp_path):
    clock = Clock()
    with closing(make_book(tmp_path / "night.book", row("A", 1, 3), clock)) as book:
        set_feed_nights(book, "FREQ=WEEKLY;BYDAY=WE,SA")
        walk = begin_night(book, NIGHT)
        walk.record(Result.LEFT_IN)
        walk.close()
        clock.at += timedelta(days=4)
        yield book


@pytest.fixture
def desk(qtbot, keeping):
    made = Desk(PastNightsScreen, keeping, size=(1024, 600))
    made.opened = []
    made.page.night_asked.connect(made.opened.append)
    yield made
    made.close()


def shown(desk):
    nights = desk.page.nights
    return [plain(nights.item(n).text()) for n in range(nights.count())]


def press(desk, *keys):
    for key in keys:
        QTest.keyClick(desk.page, key)


def test_nights_are_listed_newest_first_with_what_is_left_to_say(desk):
    assert shown(desk)[:2] == [
        "Sat 28 Nov 2026   nothing written: no round, forgot to record, done, not recorded?",
        "Wed 25 Nov 2026   1 left in, 2 not reached",
    ]


def test_the_nights_stand_under_their_head(desk):
    page, margin = desk.page, round(desk.page._look.u(7, 3.5))

    assert page._head.mapTo(page, QPoint(0, 0)) == QPoint(0, 0)
    assert page.nights.mapTo(page, QPoint(0, 0)).x() == margin


def test_the_chosen_night_stands_out_in_a_window_that_was_dressed_before(qtbot, desk):
    """A light's style sheet reaches the list after the list was made."""
    page, look = desk.page, desk.page._look
    dress(page.window(), look.palette)
    row = page.nights.visualItemRect(page.nights.item(page.nights.currentRow()))

    picture = page.nights.viewport().grab(row).toImage()

    assert picture.pixelColor(picture.width() - 3, picture.height() // 2) == look.colour("point")


def test_a_digit_answers_and_the_night_is_asked_about_no_more(desk, keeping):
    before = missing_nights(keeping, keeping.today)

    press(desk, Qt.Key.Key_1)

    assert missing_nights(keeping, keeping.today) == before[:-1]
    assert plain(desk.written[-1].what) == "no round"
    assert shown(desk)[0].startswith("Wed 25 Nov")


def test_a_forgotten_night_opens_on_its_lines(desk, keeping):
    press(desk, Qt.Key.Key_2)

    (night,) = desk.opened
    assert (night.night, len(night.tubs)) == (SATURDAY, 3)
    assert past_night(keeping, SATURDAY) is not None


def test_enter_opens_the_chosen_night_and_the_arrows_choose(desk):
    press(desk, Qt.Key.Key_Down, Qt.Key.Key_Return)

    assert [night.night for night in desk.opened] == [NIGHT]


def test_keys_that_mean_nothing_there_are_one_sentence_and_write_nothing(desk):
    press(desk, Qt.Key.Key_Return, Qt.Key.Key_Down, Qt.Key.Key_3)

    assert [plain(sentence) for sentence in desk.refused] == [
        "Nothing is written of Sat 28 Nov 2026; 1, 2 or 3 says why.",
        "Wed 25 Nov 2026 has a round; Enter opens it.",
    ]
    assert desk.written == []
