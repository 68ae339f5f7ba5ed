"""All but at the table, by real keys: typed, named, accepted once."""

from contextlib import closing

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from keeper.actions.rounds import begin_night, read_again
from keeper.actions.sheets import round_code
from keeper.desktop.screens.all_but import ACCEPT, DONE, WHAT_FOR, WHICH, AllButScreen
from keeper.desktop.screens.all_but_typing import typed_exceptions
from keeper.husbandry.events import HoldKind, Result
from keeper.reports.figures import plain
from tests.feeding_room import NIGHT, Clock, make_book, row
from tests.pad_desk import Desk


@pytest.fixture
def keeping(tmp_path):
    tubs = [*row("A", 1, 5), *row("B", 3, 5, first=8)]
    with closing(make_book(tmp_path / "night.book", tubs, Clock())) as book:
        yield book


@pytest.fixture
def walk(keeping):
    return begin_night(keeping, NIGHT)


@pytest.fixture
def desk(qtbot, keeping, walk):
    made = Desk(AllButScreen, keeping, size=(1024, 600))
    yield made
    made.close()


@pytest.fixture
def page(desk):
    return desk.page


def enter(page, *texts):
    for text in texts:
        QTest.keyClicks(page.field, text)
        QTest.keyClick(page.field, Qt.Key.Key_Return)


def results(keeping, walk):
    tubs = read_again(walk, keeping).tubs
    return {tub.line: tub.offer.event.result for tub in tubs if tub.offer is not None}


def test_the_page_says_what_it_is_for_before_anything_is_typed(page):
    assert page._head.text() == f"All but {WHAT_FOR}"


def test_a_row_is_named_before_it_is_accepted_and_written_once(page, keeping, walk):
    enter(page, "b3", "7 0", "")

    assert page.rest.text() == "4 taken as planned (6, 8–10), 1 below"
    assert page.below.text() == "line 7, B3·2 Wick: refused"
    assert results(keeping, walk) == {}

    enter(page, "")

    told = results(keeping, walk)
    assert told.pop(7) is Result.REFUSED
    assert told == dict.fromkeys((6, 8, 9, 10), Result.TAKEN)


def test_a_sheet_is_typed_by_its_code_and_the_second_time_adds_nothing(desk, page, keeping, walk):
    code = round_code(walk.round)
    enter(page, code, "2 7 1, 3 5", "", "")
    assert len(results(keeping, walk)) == 10

    enter(page, code.replace(" ", ""), "2 0", "")

    assert plain(page.rest.text()).startswith("The sheet was typed before: 2 lines differ")
    assert page.field.accessibleName() == DONE
    enter(page, "")
    assert "typed before" in desk.refused[-1]
    assert results(keeping, walk)[2] is Result.NOT_OFFERED


@pytest.mark.parametrize(
    ("typed", "sentence"),
    [
        ("12", "'12' is no exception; line and result are right, such as 12 0 or 12 7 1."),
        ("7 4", "Line 7: 4 is no result; 0 refused, 5 left in, 2 part, 7 not offered."),
        ("7 7", "Line 7 was not offered: why? 7 and a reason, such as 7 1."),
        ("40 0", "Line 40 is not in Row B3; its lines are 6–10."),
        ("-9", "Line 9 is not among the exceptions."),
    ],
)
def test_what_cannot_be_is_one_sentence_and_its_text_stays(desk, page, typed, sentence):
    enter(page, "B3", typed)

    assert desk.refused == [sentence]
    assert page.field.text() == typed


@pytest.mark.parametrize("typed", ["B9", "Q", "123 456 789"])
def test_a_place_or_code_that_is_not_of_this_night_is_refused(desk, page, typed):
    enter(page, typed)

    assert len(desk.refused) == 1
    assert page.field.accessibleName() == WHICH


def test_an_exception_can_be_taken_out_and_escape_goes_back_without_writing(page, keeping, walk):
    enter(page, "B3", "7 0", "8 5", "-7", "")
    assert page.field.accessibleName() == ACCEPT
    assert page.rest.text().endswith("1 below")

    QTest.keyClick(page.field, Qt.Key.Key_Escape)
    QTest.keyClick(page.field, Qt.Key.Key_Escape)

    assert page.field.accessibleName() == WHICH
    assert results(keeping, walk) == {}


def test_exceptions_are_read_with_their_reasons():
    first, second = typed_exceptions("12 7 1, 15 2")

    assert (first.line, first.result, first.withheld) == (12, Result.NOT_OFFERED, HoldKind.OPAQUE)
    assert (second.line, second.result) == (15, Result.PART)


def test_a_whole_sheets_exceptions_stay_in_sight_on_a_small_screen(qtbot, tmp_path):
    tubs = [tub for number in range(1, 13) for tub in row("A", number, 10)]
    with closing(make_book(tmp_path / "many.book", tubs, Clock())) as keeping:
        code = round_code(begin_night(keeping, NIGHT).round)
        desk = Desk(AllButScreen, keeping, size=(1024, 600))
        enter(desk.page, code, ", ".join(f"{3 * n} 0" for n in range(1, 37)), "")

        assert desk.page.rest.text().endswith("36 below")
        assert desk.page.below.geometry().bottom() <= desk.page.height()
        assert desk.window.height() == 600
        desk.close()
