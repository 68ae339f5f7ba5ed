"""An animal found dead in the round: asked for twice, planned for no more, taken back by undo."""

from contextlib import closing

import pytest

from keeper.desktop.screens.round import RoundScreen
from keeper.desktop.screens.weigh_in import WeighInScreen
from keeper.husbandry.animal import Status
from keeper.reports.figures import plain
from keeper.store import reading
from tests.desktop.round_desk import offers
from tests.feeding_room import make_book, row
from tests.pad_desk import Desk, said_on


@pytest.fixture
def keeping(tmp_path):
    with closing(make_book(tmp_path / "night.book", row("A", 1, 3))) as book:
        yield book


@pytest.fixture
def desk(qtbot, keeping):
    made = Desk(RoundScreen, keeping)
    made.press("Enter")
    yield made
    made.close()


def status(keeping, name):
    return next(row.status for row in reading.board(keeping.book) if row.name == name)


def test_a_slip_to_the_mark_and_the_minus_beside_it_writes_nothing(desk, keeping):
    desk.press("* -")

    assert status(keeping, "Tansy") is Status.KEPT
    assert "FOUND DEAD, minus again writes it; it is planned for no more" in said_on(desk.page)
    desk.press(". Enter")
    assert sorted(offers(keeping)) == [1]


def test_found_dead_is_written_of_the_tub_that_is_open(desk, keeping):
    desk.press("* - -")

    assert (status(keeping, "Tansy"), status(keeping, "Bracken")) == (Status.DIED, Status.KEPT)
    assert (desk.written[-1].where, desk.written[-1].what) == ("A1·1 Tansy", "found dead")
    said = said_on(desk.page)
    assert "nothing planned, FOUND DEAD" in said
    assert "FOUND DEAD, keep it cool, not frozen, for a reptile vet; undo takes it back" in said


def test_the_dead_are_offered_nothing_and_swept_past(desk, keeping):
    desk.press("* - - Enter")
    assert [plain(said) for said in desk.refused] == [
        "A1·1 Tansy was found dead; 7 and a reason goes on."
    ]

    desk.press("+ Enter")
    assert sorted(offers(keeping)) == [2, 3]
    desk.press("0 Enter")

    assert desk.written[-1].what == "round closed, 0 not reached"


def test_no_refused_item_is_passed_on_to_the_dead(desk):
    desk.press("* - - 9 2 Enter 3 1 Enter")

    assert [plain(said) for said in desk.refused] == ["A1·1 Tansy was found dead."]


def test_at_the_scale_nobody_is_marked_dead(qtbot, keeping):
    scale = Desk(WeighInScreen, keeping)
    scale.press("*")
    assert "8: wound" in said_on(scale.page)
    assert "found dead" not in said_on(scale.page)
    scale.press("- -")

    assert status(keeping, "Tansy") is Status.KEPT
    scale.close()


def test_undo_takes_the_death_back(desk, keeping):
    desk.press("* - - .")

    assert status(keeping, "Tansy") is Status.KEPT
    desk.press("Enter")
    assert sorted(offers(keeping)) == [1]
