"""Pages laid over the round, past nights walked on its own page, and papers: by real keys."""

from contextlib import closing
from datetime import date, timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from keeper.actions.past_nights import Correction, missing_nights, past_night
from keeper.actions.rounds import begin_night, open_night
from keeper.actions.settings import set_feed_nights
from keeper.actions.sheets import round_code
from keeper.desktop.paper.desk import TO_PRINTER
from keeper.desktop.screens.all_but import EXCEPTIONS
from keeper.desktop.screens.round import RoundScreen
from keeper.husbandry.events import Result
from keeper.reports.figures import plain
from keeper.store import reading
from tests.feeding_room import NIGHT, Clock, make_book, row
from tests.pad_desk import Desk, said_on

CTRL = Qt.KeyboardModifier.ControlModifier
LATER = date(2026, 12, 9)
BANNER = "ENTERING FOR WED 25 NOV 2026"


@pytest.fixture
def clock():
    return Clock()


@pytest.fixture
def keeping(tmp_path, clock):
    """Two weeks after a round of three tubs: taken, left in, not reached."""
    with closing(make_book(tmp_path / "night.book", row("A", 1, 3), clock)) as book:
        set_feed_nights(book, "FREQ=WEEKLY;BYDAY=WE,SA")
        walk = begin_night(book, NIGHT)
        walk.record(Result.TAKEN)
        walk.record(Result.LEFT_IN)
        walk.close()
        clock.at += timedelta(days=14)
        yield book


@pytest.fixture
def desk(qtbot, keeping):
    made = Desk(RoundScreen, keeping, size=(1024, 600))
    made.window.activateWindow()
    qtbot.waitUntil(made.page.hasFocus)
    yield made
    made.close()


def strike(desk, key, modifier=Qt.KeyboardModifier.NoModifier):
    """A key where the keyboard is, as the hand strikes it."""
    QTest.keyClick(desk.window.focusWidget(), key, modifier)


def type_line(desk, text):
    QTest.keyClicks(desk.window.focusWidget(), text)
    strike(desk, Qt.Key.Key_Return)


def to_past_night(desk, later=3):
    """Ctrl+Y, down past the later nights without a record, Enter."""
    strike(desk, Qt.Key.Key_Y, CTRL)
    for _ in range(later):
        strike(desk, Qt.Key.Key_Down)
    strike(desk, Qt.Key.Key_Return)


def results(keeping, night=NIGHT):
    walk = past_night(keeping, night) or open_night(keeping)
    return {tub.line: tub.offer.event.result for tub in walk.tubs if tub.offer is not None}


def reasons(keeping):
    return [batch.reason for batch in reading.latest_batches(keeping.book, 1)]


# --- a night on which nothing is due ---------------------------------------------------------


def test_when_all_have_eaten_the_page_says_so_and_when_next_something_is_due(desk, keeping):
    desk.press("Enter Enter Enter Enter")
    desk.press("Enter")

    said = plain(said_on(desk.page))
    assert "Nothing is due on Wed 9 Dec" in said
    assert "Next: Sat 19 Dec, 3 due. Last round, Wed 9 Dec: every tub" in said


# --- all but ---------------------------------------------------------------------------------


def test_all_but_is_typed_over_the_round_and_its_enter_writes_nothing_in_the_walk(desk, keeping):
    desk.press("Enter")
    strike(desk, Qt.Key.Key_A, CTRL)
    assert desk.page.over.all_but.isVisible()

    type_line(desk, "A1")
    type_line(desk, "2 0")
    type_line(desk, "")
    assert results(keeping, LATER) == {}
    type_line(desk, "")

    assert results(keeping, LATER) == {1: Result.TAKEN, 2: Result.REFUSED, 3: Result.TAKEN}
    assert [written.verb for written in desk.written] == ["all but"]


def test_escape_comes_back_from_all_but_and_the_pad_walks_again(desk, keeping):
    desk.press("Enter")
    strike(desk, Qt.Key.Key_A, CTRL)
    type_line(desk, "A1")

    strike(desk, Qt.Key.Key_Escape)
    assert desk.page.over.all_but.isVisible()
    strike(desk, Qt.Key.Key_Escape)
    assert not desk.page.over.all_but.isVisible()
    strike(desk, Qt.Key.Key_0)

    assert results(keeping, LATER) == {1: Result.REFUSED}


@pytest.mark.parametrize("asked", [True, False])
def test_a_scanned_sheet_code_opens_its_sheet_from_either_page(desk, keeping, asked):
    desk.press("Enter")
    if asked:
        strike(desk, Qt.Key.Key_A, CTRL)

    desk.page.scanned(round_code(open_night(keeping).round).replace(" ", ""))

    assert desk.page.over.all_but.isVisible()
    assert desk.page.over.all_but.field.accessibleName() == EXCEPTIONS
    assert desk.refused == []


# --- nights that are over --------------------------------------------------------------------


def test_a_past_night_is_walked_under_its_banner_and_escape_goes_back_to_tonight(desk):
    to_past_night(desk)
    assert BANNER in plain(said_on(desk.page))

    strike(desk, Qt.Key.Key_Escape)

    said = plain(said_on(desk.page))
    assert BANNER not in said
    assert "Enter begins the round of Wed 9 Dec" in said


def test_the_same_key_goes_back_to_the_tub_of_tonight(desk, keeping):
    desk.press("Enter Enter")
    to_past_night(desk)
    desk.press("0")
    strike(desk, Qt.Key.Key_Y, CTRL)

    desk.press("5")

    assert results(keeping, LATER) == {1: Result.TAKEN, 2: Result.LEFT_IN}
    assert results(keeping) == {1: Result.TAKEN, 2: Result.LEFT_IN, 3: Result.REFUSED}


def test_what_was_never_written_is_written_without_asking_why(desk, keeping):
    to_past_night(desk)
    desk.press("0")

    assert results(keeping)[3] is Result.REFUSED
    assert reasons(keeping) == [Correction.TYPED_LATE.value]


def test_what_follows_is_told_and_why_is_asked_before_an_entry_is_overwritten(desk, keeping):
    to_past_night(desk)
    night = past_night(keeping, NIGHT)
    night.go_to(1)
    before = reading.latest_batches(keeping.book, 1)

    desk.press("9 1 Enter 0")

    assert reading.latest_batches(keeping.book, 1) == before
    assert "Tansy" in desk.noted[-1]
    said = said_on(desk.page)
    assert desk.noted[-1] in said
    assert all(why.value in said for why in Correction)

    desk.press("2")

    assert results(keeping)[1] is Result.REFUSED
    assert reasons(keeping) == [Correction.WRONG_TUB.value]
    assert desk.noted[-1] == ""


@pytest.mark.parametrize("key", [Qt.Key.Key_Period, Qt.Key.Key_Escape])
def test_giving_up_the_reason_writes_nothing(desk, keeping, key):
    to_past_night(desk)
    desk.press("9 1 Enter 0 8")

    strike(desk, key)

    assert results(keeping)[1] is Result.TAKEN
    assert desk.written == []
    assert desk.noted[-1] == ""


def test_the_point_takes_back_what_was_put_right_and_no_more(desk, keeping):
    to_past_night(desk)
    desk.press("9 1 Enter 0 1 . .")

    assert results(keeping) == {1: Result.TAKEN, 2: Result.LEFT_IN}
    assert desk.refused == ["Nothing of this round is left to take back."]


def test_an_undo_elsewhere_is_seen_and_the_past_night_stays_open(desk, keeping):
    to_past_night(desk)
    desk.press("0")
    desk.notices.changed.emit()

    assert BANNER in plain(said_on(desk.page))
    desk.press(".")
    assert 3 not in results(keeping)


def test_a_look_that_settles_what_was_left_in_asks_for_no_reason(desk, keeping):
    to_past_night(desk)
    desk.press("0 Enter Enter")

    assert results(keeping)[2] is Result.TAKEN
    assert reasons(keeping) == [None]


def test_a_sweep_over_a_written_line_asks_why_and_then_writes_it(desk, keeping):
    to_past_night(desk)
    desk.press("9 1 Enter + 2 0 Enter")
    assert "Bracken: now refusal 1, not 0." in plain(desk.noted[-1])
    assert results(keeping)[2] is Result.LEFT_IN

    desk.press("1")

    assert results(keeping)[2] is Result.REFUSED
    assert reasons(keeping) == [Correction.FOUND_UNEATEN.value]


# --- papers, the quiet page, the menu --------------------------------------------------------


def test_the_round_sheet_stands_beside_the_book_and_the_foot_says_where(desk, keeping):
    desk.press("Enter")
    strike(desk, Qt.Key.Key_P, CTRL)

    path = keeping.book.path.with_name("night.book.round-2026-12-09.pdf")
    assert path.read_bytes().startswith(b"%PDF")
    title = "Round sheet, night of Wed 9 Dec 2026"
    assert plain(desk.noted[-1]) == f"{title}, 1 page: {path}. {TO_PRINTER}"


def test_without_a_round_no_sheet_is_printed_and_the_book_is_unharmed(desk, keeping):
    before = keeping.book.path.read_bytes()

    strike(desk, Qt.Key.Key_P, CTRL)

    assert "No round is begun" in desk.refused[-1]
    assert list(keeping.book.path.parent.glob("*.pdf")) == []
    assert keeping.book.path.read_bytes() == before


def test_the_thaw_list_is_of_the_next_feed_night(desk, keeping, clock):
    clock.at += timedelta(days=1)
    strike(desk, Qt.Key.Key_T, CTRL)

    path = keeping.book.path.with_name("night.book.thaw-2026-12-12.pdf")
    assert path.read_bytes().startswith(b"%PDF")
    assert str(path) in desk.noted[-1]


def test_a_paper_that_cannot_be_written_is_one_sentence(desk, keeping):
    keeping.book.path.with_name("night.book.thaw-2026-12-09.pdf").mkdir()

    strike(desk, Qt.Key.Key_T, CTRL)

    assert "night.book.thaw-2026-12-09.pdf" in desk.refused[-1]


def test_the_page_for_a_holiday_is_made_without_a_round(qtbot, desk, keeping):
    strike(desk, Qt.Key.Key_H, CTRL)
    type_line(desk, "10 Dec to 14 Dec")
    qtbot.waitUntil(desk.page.away.told.isVisible)
    strike(desk, Qt.Key.Key_Return)

    path = keeping.book.path.with_name("night.book.away-2026-12-10.pdf")
    assert path.read_bytes().startswith(b"%PDF")
    assert str(path) in desk.noted[-1]


def test_the_quiet_page_names_feed_nights_without_a_record(desk, keeping):
    count = len(missing_nights(keeping, LATER))
    assert f"{count} feed nights without a record; Ctrl+Y." in plain(said_on(desk.page))

    strike(desk, Qt.Key.Key_Y, CTRL)
    strike(desk, Qt.Key.Key_1)
    strike(desk, Qt.Key.Key_Escape)

    assert f"{count - 1} feed nights without a record" in plain(said_on(desk.page))


def test_the_actions_stand_in_the_menu_of_the_place_with_their_keys(desk):
    told = {action.text(): action.shortcut().toString() for action in desk.page.actions()}
    assert told == {
        "Close the round": "Ctrl+Return",
        "All but, at the table": "Ctrl+A",
        "Nights that are over": "Ctrl+Y",
        "Print the round sheet": "Ctrl+P",
        "Print the thaw list": "Ctrl+T",
        "Away: bend the plan and print the page": "Ctrl+H",
        "The last PDF on a printer": "Ctrl+Shift+P",
    }
