"""What the round tells: how far back it goes, who is not due, what follows from a look."""

from contextlib import closing
from datetime import timedelta

import pytest
from round_desk import ROW, desk, offers, walk

from keeper.actions import undoing
from keeper.actions.past_nights import past_night
from keeper.actions.rounds import begin_night
from keeper.app import build_house
from keeper.desktop.look import Look
from keeper.desktop.screens.round import RoundScreen
from keeper.husbandry.events import Evidence, Offer, Result
from keeper.reports.figures import plain
from keeper.store import reading
from tests.feeding_room import NIGHT, Clock, make_book, row
from tests.pad_desk import KEYS, Desk, said_on


@pytest.fixture
def clock():
    return Clock()


@pytest.fixture
def keeping(tmp_path, clock):
    with closing(make_book(tmp_path / "night.book", ROW, clock)) as book:
        yield book


__all__ = ["desk"]


# --- how far back the point goes -------------------------------------------------------------


def test_each_step_written_can_be_taken_back_and_the_page_says_how_many(desk):
    assert desk.page.reach == ""
    desk.press("Enter")
    assert plain(desk.page.reach) == "1 step can be taken back"
    desk.press("* 2 0")
    assert plain(desk.page.reach) == "3 steps can be taken back"
    desk.press(". .")
    assert plain(desk.page.reach) == "1 step can be taken back"


def test_a_sweep_is_one_step_and_a_key_that_is_refused_none(desk):
    desk.press("+ Enter 9 9 9 Enter")

    assert plain(desk.page.reach) == "1 step can be taken back"


def test_after_a_restart_all_steps_of_the_round_are_still_told(qtbot, desk, keeping):
    desk.press("Enter 0 5")
    again = Desk(RoundScreen, keeping)
    again.press("7 9")

    assert plain(again.page.reach) == "4 steps can be taken back"
    again.close()


def test_the_foot_of_the_window_says_it(qtbot, keeping):
    from PySide6.QtCore import Qt
    from PySide6.QtTest import QTest

    house = build_house(keeping, Look(red_lamp=True))
    qtbot.addWidget(house.window)
    house.window.show()
    page = house.window.page("Round")
    for key in ("Enter", "Enter", "0"):
        QTest.keyClick(page, KEYS[key], Qt.KeyboardModifier.KeypadModifier)

    told = plain(house.window.foot.text())
    assert told.endswith(".  takes it back, 2 steps can be taken back")


def test_where_an_undo_of_the_window_led_outlives_the_program_too(desk, keeping):
    desk.press("Enter 9 8 Enter Enter")
    undoing.take_back(keeping)
    desk.notices.changed.emit()
    assert "Linnet, now" in said_on(desk.page)

    again = Desk(RoundScreen, keeping)

    assert "Linnet, now" in said_on(again.page)
    again.close()


# --- who is not due --------------------------------------------------------------------------


def test_a_tub_that_is_not_due_is_drawn_and_tallied_as_that_and_not_as_not_offered(desk):
    said = said_on(desk.page)

    assert "tub 5, Merrow, not due" in said
    assert "1 not due" in said
    assert "not offered," not in said
    assert "1 not offered" not in said


def test_what_was_not_offered_is_tallied_beside_it(desk):
    desk.press("7 6")

    assert "1 not offered" in said_on(desk.page)
    assert "1 not due" in said_on(desk.page)


# --- the morning look ------------------------------------------------------------------------


@pytest.fixture
def morning(qtbot, tmp_path, clock):
    """A night with two tubs left in, closed; the window the morning after."""
    with closing(make_book(tmp_path / "morning.book", row("A", 1, 4), clock)) as keeping:
        night = begin_night(keeping, NIGHT)
        for result in (Result.LEFT_IN, Result.TAKEN, Result.LEFT_IN, Result.TAKEN):
            night.record(result)
        night.close()
        clock.at += timedelta(hours=11)
        desk = Desk(RoundScreen, keeping)
        desk.press("5")
        yield desk, keeping
        desk.close()


def results(keeping):
    night = past_night(keeping, NIGHT)
    return {t.line: (t.offer.event.result, t.offer.event.evidence) for t in night.tubs if t.offer}


def test_what_the_morning_look_finds_uneaten_says_at_the_foot_what_follows(morning):
    desk, keeping = morning
    desk.press("0")

    assert results(keeping)[1] == (Result.REFUSED, Evidence.SEEN)
    told = plain(desk.written[-1].what)
    assert told == "still there, removed. Tansy: now refusal 1, not 0."


def test_gone_turned_into_found_uneaten_asks_why_and_tells_first_what_follows(morning):
    desk, keeping = morning
    desk.press("Enter - 0")

    assert results(keeping)[1] == (Result.TAKEN, Evidence.GONE)
    assert "PUT RIGHT" in said_on(desk.page)
    told = plain(said_on(desk.page))
    assert "Tansy: now refusal 1, not 0." in told
    assert "Tansy: due Mon 30 Nov 2026, not Sat 5 Dec 2026." in told
    desk.press("1")

    assert results(keeping)[1] == (Result.REFUSED, Evidence.SEEN)
    tansy = past_night(keeping, NIGHT).tub(1).plan.animal
    entries = reading.history(keeping.book, Offer, tansy, withdrawn_too=True)
    assert [e.event.evidence for e in entries if not e.stands and e.event.round][-1:] == [
        Evidence.GONE
    ]


def test_a_look_that_proves_the_meal_says_nothing_about_refusals(morning):
    desk, _ = morning
    desk.press("Enter")

    assert "refusal" not in desk.written[-1].what


def test_the_point_in_the_look_takes_back_the_look_and_not_the_evening(morning):
    desk, keeping = morning
    desk.press("0 .")
    assert results(keeping)[1] == (Result.LEFT_IN, Evidence.SEEN)
    desk.press(".")

    assert len(results(keeping)) == 4
    assert desk.refused == ["Nothing of this round is left to take back."]


def test_tonights_check_pass_tells_no_consequences(desk, keeping):
    desk.press("5 9 0 Enter Enter 0")

    assert offers(keeping)[1].result is Result.REFUSED
    assert desk.written[-1].what == "still there, removed"
    assert walk(keeping).night == NIGHT
