"""Rows of one tub, and rows that do not begin with tub 1, as the head line tells them."""

from contextlib import ExitStack, closing

import pytest

from keeper.desktop.screens.round import RoundScreen
from keeper.desktop.screens.weigh_in import WeighInScreen
from keeper.reports.figures import plain
from tests.feeding_room import Tub, make_book
from tests.pad_desk import Desk, said_on


@pytest.fixture
def at_desk(qtbot, tmp_path):
    """Sits down at one screen in a room of animals at the places named."""
    with ExitStack() as stack:

        def sit(screen, *places):
            tubs = [Tub(place=place, name=f"N{n}") for n, place in enumerate(places)]
            keeping = stack.enter_context(closing(make_book(tmp_path / "one.book", tubs)))
            desk = Desk(screen, keeping)
            stack.callback(desk.close)
            return desk

        yield sit


def head(desk):
    return plain(said_on(desk.page))


def test_a_round_of_one_tub_is_begun_with_one_tub_to_walk(at_desk):
    desk = at_desk(RoundScreen, "A1·2")
    desk.press("Enter")

    assert [plain(said) for said in desk.noted] == [
        "The round of Wed 25 Nov is begun: 1 tub to walk."
    ]


def test_a_round_of_two_tubs_is_begun_with_two_tubs_to_walk(at_desk):
    desk = at_desk(RoundScreen, "A1·2", "A1·4")
    desk.press("Enter")

    assert "2 tubs to walk" in plain(desk.noted[0])


@pytest.mark.parametrize("screen", [RoundScreen, WeighInScreen])
def test_the_only_tub_of_a_row_is_told_by_its_number_alone(at_desk, screen):
    desk = at_desk(screen, "A1·2")
    desk.press("Enter")

    assert "rack A row 1 tub 2" in head(desk)
    assert "tub 2 of" not in head(desk)


@pytest.mark.parametrize("screen", [RoundScreen, WeighInScreen])
def test_a_tub_is_told_with_the_last_number_of_its_row(at_desk, screen):
    desk = at_desk(screen, "A1·2", "A1·4")
    desk.press("Enter")

    assert "tub 2 of 4" in head(desk)
