"""Found uneaten two mornings later, put right by real keys in the window on a book on disk."""

from contextlib import closing
from datetime import timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from keeper.actions.due_board import due_rows
from keeper.actions.life import life_of
from keeper.actions.own_entries import struck_through
from keeper.actions.past_nights import past_night
from keeper.desktop.screens.round import RoundScreen
from keeper.husbandry.events import Evidence, Result
from keeper.reports.figures import plain
from keeper.store.state import differing
from tests.feeding_room import NIGHT, Clock, make_book, row
from tests.pad_desk import Desk, said_on


@pytest.fixture
def clock():
    return Clock()


@pytest.fixture
def keeping(tmp_path, clock):
    with closing(make_book(tmp_path / "night.book", row("A", 1, 3), clock)) as book:
        yield book


@pytest.fixture
def desk(qtbot, keeping, clock):
    """The night walked by sweep and closed unlooked at; the window two mornings later."""
    made = Desk(RoundScreen, keeping)
    made.press("Enter + Enter 0 Enter")
    assert made.written[-1].what == "round closed, 0 not reached"
    clock.at += timedelta(days=1, hours=12)
    yield made
    made.close()


def open_the_night(desk, left="3 assumed"):
    QTest.keyClick(desk.page, Qt.Key.Key_Y, Qt.KeyboardModifier.ControlModifier)
    nights = desk.page.over.past_nights
    assert plain(nights.nights.item(0).text()) == f"Wed 25 Nov 2026   {left}"
    QTest.keyClick(nights, Qt.Key.Key_Return)


def bracken(keeping):
    return next(r for r in due_rows(keeping, keeping.today) if r.animal.name == "Bracken")


def offer_of(keeping):
    return past_night(keeping, NIGHT).tub(2).offer.event


def test_what_follows_stands_on_the_page_before_anything_is_written(desk, keeping):
    due_before = bracken(keeping).plan.due_on
    open_the_night(desk)
    desk.press("9 2 Enter 0")

    said = plain(said_on(desk.page))
    assert "ENTERING FOR WED 25 NOV 2026" in said
    assert "PUT RIGHT" in said
    assert "Bracken: now refusal 1, not 0." in said
    assert "Bracken: last eaten 13 Nov 2026, not 25 Nov 2026." in said
    assert offer_of(keeping).result is Result.TAKEN
    assert bracken(keeping).plan.due_on == due_before


def test_the_reason_writes_it_as_of_that_night_and_the_old_entry_stays_struck_through(
    desk, keeping
):
    due_before = bracken(keeping).plan.due_on
    open_the_night(desk)
    desk.press("9 2 Enter 0 1")

    told = offer_of(keeping)
    assert (told.result, told.evidence, told.happened.day) == (
        Result.REFUSED,
        Evidence.SEEN,
        NIGHT,
    )
    (struck,) = struck_through(keeping, bracken(keeping).animal.animal, keeping.today)
    assert (struck.reason, struck.by) == ("found uneaten", "Ro")
    assert bracken(keeping).plan.due_on < due_before
    assert bracken(keeping).plan.days_since_eaten == 14
    assert differing(keeping.book.connection) == []


def test_exceptions_of_a_row_tell_for_each_tub_what_follows(desk, keeping):
    open_the_night(desk)
    desk.press("9 1 Enter + 2 0 3 0 Enter")

    said = plain(said_on(desk.page))
    assert "Bracken: now refusal 1, not 0." in said
    assert "Orrin: now refusal 1, not 0." in said
    assert offer_of(keeping).result is Result.TAKEN
    desk.press("1")
    assert offer_of(keeping).result is Result.REFUSED


def test_an_item_passed_on_tells_what_follows_for_the_giver(desk, keeping):
    night = past_night(keeping, NIGHT)
    night.go_to(3)
    night.record(Result.NOT_OFFERED)
    open_the_night(desk, "2 assumed")
    desk.press("9 2 Enter 3 3 Enter")

    said = plain(said_on(desk.page))
    assert "PUT RIGHT" in said
    assert "Bracken: now refusal 1, not 0." in said
    assert "Orrin: last eaten 25 Nov 2026, not 13 Nov 2026." in said


def test_giving_up_leaves_everything_as_it_was(desk, keeping):
    open_the_night(desk)
    desk.press("9 2 Enter 0 .")

    assert offer_of(keeping).result is Result.TAKEN
    assert "PUT RIGHT" not in said_on(desk.page)


def test_the_point_brings_the_meal_and_the_due_day_back(desk, keeping):
    due_before = bracken(keeping).plan.due_on
    open_the_night(desk)
    desk.press("9 2 Enter 0 1 .")

    assert bracken(keeping).plan.due_on == due_before
    animal = bracken(keeping).animal.animal
    assert life_of(keeping, animal, keeping.today).offers[-1].result is Result.TAKEN


def test_the_end_of_the_night_offers_the_look_and_names_it(desk):
    open_the_night(desk)
    desk.press("9 0 Enter Enter")

    assert "Morning look" in said_on(desk.page)
    assert "gone" in said_on(desk.page)
