"""A regurgitation found before the tub was offered anything: no key gives it food by the way."""

from contextlib import closing

import pytest

from keeper.actions.due_board import due_rows
from keeper.desktop.screens.round import RoundScreen
from keeper.husbandry.events import HoldKind, Result
from keeper.reports.figures import plain
from keeper.rules.feeding import DueState
from tests.desktop.round_desk import offers, stands_at
from tests.feeding_room import make_book, row
from tests.pad_desk import Desk, said_on


@pytest.fixture
def keeping(tmp_path):
    with closing(make_book(tmp_path / "night.book", row("A", 1, 4))) as book:
        yield book


@pytest.fixture
def desk(qtbot, keeping):
    made = Desk(RoundScreen, keeping)
    made.press("Enter 8")
    yield made
    made.close()


@pytest.mark.parametrize("key", ["Enter", "0", "5", "2"])
def test_no_key_of_a_result_writes_the_planned_meal(desk, keeping, key):
    desk.press(key)

    assert offers(keeping) == {}
    assert "A1·1, Tansy, female" in said_on(desk.page)
    assert [plain(said) for said in desk.refused] == [
        "A1·1 Tansy regurgitated and is on hold; 7 and 3 go on, / chooses the prey."
    ]


def test_the_panel_offers_nothing_and_the_reason_says_why(desk):
    said = plain(said_on(desk.page))

    assert "house snake, 2 years 2 months, on hold, REGURGITATED" in said
    assert "Because: Regurgitation found tonight: hold to 9 Dec; water, heat, no handling." in said
    assert "No holds." not in said


def test_not_offered_goes_on(desk, keeping):
    desk.press("7 3")

    told = offers(keeping)[1]
    assert (told.result, told.withheld) == (Result.NOT_OFFERED, HoldKind.REGURGITATED)
    assert stands_at(desk, "Bracken")


def test_a_sweep_of_her_row_leaves_her_out(desk, keeping):
    desk.press("+ Enter")

    assert sorted(offers(keeping)) == [2, 3, 4]
    assert desk.written[-1].what == "3 as planned, 0 not"


def test_nothing_of_the_night_waits_for_her(desk):
    desk.press("+ Enter 0 Enter")

    assert desk.written[-1].what == "round closed, 0 not reached"


def test_prey_chosen_by_the_keeper_is_written_all_the_same(desk, keeping):
    desk.press("/ 2 1 Enter")

    assert (offers(keeping)[1].result, offers(keeping)[1].prey) == (Result.TAKEN, "mouse pinky")


def test_the_regurgitation_taken_back_brings_her_meal_back(desk, keeping):
    desk.press(". Enter")

    assert offers(keeping)[1].result is Result.TAKEN


def test_a_meal_of_tonight_that_came_up_can_still_be_put_right(desk, keeping):
    desk.press(". Enter - 8 5")

    assert offers(keeping)[1].result is Result.LEFT_IN
    assert due_rows(keeping, keeping.today)[0].plan.state is DueState.HOLD
