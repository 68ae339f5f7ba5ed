"""Rows swept, the check pass, closing, and what happens elsewhere meanwhile."""

from contextlib import closing
from dataclasses import replace
from datetime import timedelta

import pytest
from round_desk import ROW, desk, offers, stands_at, walk

from keeper.actions import undoing
from keeper.actions.noting import note
from keeper.actions.rounds import last_night, open_night
from keeper.desktop.screens.round import RoundScreen
from keeper.husbandry.events import (
    Evidence,
    HoldKind,
    Moved,
    Remark,
    RemarkKind,
    Result,
)
from keeper.husbandry.when import at_instant
from tests.feeding_room import (
    Clock,
    make_book,
    reopened,
    row,
)
from tests.pad_desk import Desk, said_on


@pytest.fixture
def keeping(tmp_path):
    with closing(make_book(tmp_path / "night.book", ROW, Clock(timedelta(seconds=5)))) as book:
        yield book


__all__ = ["desk"]


# --- a row swept -----------------------------------------------------------------------------


def test_a_swept_row_is_assumed_but_for_its_exceptions_and_what_nobody_planned(desk, keeping):
    desk.press("+ 2 0 3 7 1 Enter")

    told = {line: (o.result, o.evidence) for line, o in offers(keeping).items()}
    assert told == {
        1: (Result.TAKEN, Evidence.ASSUMED),
        2: (Result.REFUSED, Evidence.SEEN),
        3: (Result.NOT_OFFERED, Evidence.SEEN),
    }
    assert desk.written[-1].what == "1 as planned, 2 not"
    assert stands_at(desk, "Hob")
    assert [tub.line for tub in walk(keeping).tubs if tub.open] == [7, 8, 9]


def test_a_held_animal_of_the_row_can_be_named_as_an_exception(desk, keeping):
    desk.press("+ 4 7 9 Enter")

    assert offers(keeping)[4].withheld is HoldKind.OTHER


def test_a_tub_before_the_cursor_cannot_be_named_in_a_sweep(desk, keeping):
    desk.press("Enter + 1 0 Enter")

    assert desk.refused == []
    assert offers(keeping)[1].result is Result.TAKEN
    assert offers(keeping)[2].evidence is Evidence.ASSUMED


def test_a_sweep_given_up_writes_nothing(desk, keeping):
    desk.press("+ 2 0 +")

    assert offers(keeping) == {}
    assert stands_at(desk, "Tansy")


def test_in_a_row_of_more_than_ten_the_digits_begin_at_the_first_tub_that_waits(qtbot, tmp_path):
    with closing(make_book(tmp_path / "long.book", row("A", 1, 14))) as keeping:
        desk = Desk(RoundScreen, keeping)
        desk.press("Enter Enter Enter + 1 0 0 5 Enter")

        results = {line: offer.result for line, offer in offers(keeping).items()}
        assert results[3] is Result.REFUSED
        assert results[12] is Result.LEFT_IN
        assert len(results) == 14
        desk.close()


# --- the check pass and the end --------------------------------------------------------------


def test_the_check_pass_looks_only_where_prey_was_left_in_or_assumed(desk, keeping):
    desk.press("Enter 5 0 7 9 + Enter Enter")
    assert "0 of 3 looked at" in said_on(desk.page)
    desk.press("Enter 0 Enter")

    told = {line: (o.result, o.evidence) for line, o in offers(keeping).items()}
    assert told[1] == (Result.TAKEN, Evidence.SEEN)
    assert told[2] == (Result.TAKEN, Evidence.GONE)
    assert told[8] == (Result.REFUSED, Evidence.SEEN)
    assert told[9] == (Result.TAKEN, Evidence.GONE)


def test_nothing_can_be_gone_where_nothing_was_offered(desk, keeping):
    desk.press("7 1 5 9 0 Enter Enter 9 1 Enter Enter")

    assert desk.refused == ["Nothing was offered in this tub tonight."]
    assert offers(keeping)[1].result is Result.NOT_OFFERED


def test_a_check_swept_row_is_gone_but_for_what_is_still_there(desk, keeping):
    desk.press("+ Enter 9 0 Enter Enter + 2 0 Enter")

    told = {line: (o.result, o.evidence) for line, o in offers(keeping).items()}
    assert told == {
        1: (Result.TAKEN, Evidence.GONE),
        2: (Result.REFUSED, Evidence.SEEN),
        3: (Result.TAKEN, Evidence.GONE),
    }


def test_a_round_with_tubs_not_reached_is_closed_by_a_second_enter_and_they_stay_due(desk, keeping):
    desk.press("Enter 9 0 Enter Enter")

    assert desk.noted[-1] == (
        "5 not reached stay due, 0 not looked at. Enter again closes the round of Wed 25\u00a0Nov."
    )
    assert open_night(keeping) is not None
    desk.press("Enter")
    assert open_night(keeping) is None
    assert desk.written[-1].what == "round closed, 5 not reached"
    assert "all: 4 due, 2 hold, 2 not due, 1 cannot tell" in said_on(desk.page)


def test_one_enter_too_many_after_closing_begins_no_second_round(desk, keeping):
    desk.press("Enter 9 0 Enter Enter Enter")
    closed = last_night(keeping)
    assert open_night(keeping) is None

    desk.press("Enter")
    assert open_night(keeping) is None
    assert desk.noted[-1].endswith("Enter again begins another of that night.")

    desk.press("Enter")
    assert open_night(keeping) is not None
    assert open_night(keeping).round != closed.round


def test_the_command_of_the_menu_asks_to_close_from_any_tub(desk, keeping):
    (close,) = [action for action in desk.page.actions() if action.text() == "Close the round"]
    close.trigger()
    assert desk.noted[-1].startswith("6 not reached stay due")
    assert open_night(keeping) is not None

    desk.press("Enter")

    assert open_night(keeping) is None


def test_any_other_key_does_not_close(desk, keeping):
    desk.press("Enter 9 0 Enter Enter .")

    assert open_night(keeping) is not None


def test_the_morning_look_goes_through_the_tubs_left_in_of_the_closed_round(desk, keeping):
    desk.press("5 5 9 0 Enter 0 Enter")
    assert "2\u00a0tubs left in, result open: A1·1 Tansy, A1·2 Bracken" in said_on(desk.page)

    desk.press("5 Enter 0 Enter")

    over = last_night(keeping)
    told = [(t.offer.event.result, t.offer.event.evidence) for t in over.tubs if t.offer]
    assert told == [(Result.TAKEN, Evidence.GONE), (Result.REFUSED, Evidence.SEEN)]
    assert "none open" in said_on(desk.page)


# --- what happens elsewhere ------------------------------------------------------------------


def test_what_is_taken_back_elsewhere_brings_the_cursor_back(desk, keeping):
    desk.press("Enter Enter")

    undoing.take_back(keeping)
    desk.notices.changed.emit()

    assert stands_at(desk, "Bracken")
    assert set(offers(keeping)) == {1}


def test_a_change_elsewhere_leaves_the_keeper_where_he_stands(desk, keeping):
    desk.press("9 8 Enter")
    animal = walk(keeping).tub(8).plan.animal
    shy = Remark(
        animal=animal,
        happened=at_instant(keeping.now()),
        kind=RemarkKind.CAUTION,
        text="SHY, leave it on the card",
    )

    note(keeping, "note", shy)
    desk.notices.changed.emit()

    assert stands_at(desk, "Linnet")
    assert "SHY, leave it on the card" in said_on(desk.page)


def test_an_animal_moved_in_mid_round_is_visited_once_at_its_old_line(desk, keeping):
    animal = walk(keeping).tub(8).plan.animal
    moved = Moved(animal=animal, happened=at_instant(keeping.now()), place="A1·6")
    note(keeping, "move", moved)
    desk.notices.changed.emit()
    desk.press("Enter Enter Enter 7 9")

    assert stands_at(desk, "Linnet")
    assert "female, now in A1·6" in said_on(desk.page)
    desk.press("Enter Enter")
    fed = [tub for tub in walk(keeping).tubs if tub.plan.animal == animal]
    assert [tub.offer.event.result for tub in fed] == [Result.TAKEN]


@pytest.mark.parametrize("code", ["HS-008", "hs-008", "B1·1", "b-1-1"])
def test_a_scan_goes_to_the_tub_at_any_moment(desk, code):
    desk.press("Enter 9 4")
    desk.page.scanned(code)

    assert stands_at(desk, "Linnet")


@pytest.mark.parametrize(
    ("keys", "name"), [("9 8 Enter Enter", "Wick"), ("3 8 Enter", "Bracken"), ("+ Enter", "Hob")]
)
def test_after_a_restart_the_walk_goes_on_behind_the_tub_written_last(
    qtbot, desk, keeping, keys, name
):
    desk.press(keys)
    again = reopened(keeping)
    later = Desk(RoundScreen, again)

    assert stands_at(later, name)
    later.close()
    again.close()


def test_a_scan_with_no_round_open_is_one_sentence(qtbot, keeping):
    desk = Desk(RoundScreen, keeping)
    desk.page.scanned("HS-008")

    assert desk.refused == ["No round is open, so 'HS-008' has no tub to go to; Enter begins one."]
    desk.close()


def test_an_unknown_code_is_one_sentence_and_the_cursor_stays(desk):
    desk.page.scanned("HS-999")

    assert desk.refused == ["No tub of tonight’s round bears 'HS-999'."]
    assert stands_at(desk, "Tansy")


def test_a_book_that_will_not_be_written_says_so_and_the_cursor_stays(desk, keeping):
    keeping.book.connection.execute("PRAGMA query_only = ON")

    desk.press("Enter")

    assert stands_at(desk, "Tansy")
    assert len(desk.refused) == 1
    keeping.book.connection.execute("PRAGMA query_only = OFF")
    assert offers(keeping) == {}


def test_two_in_one_tub_are_two_lines_with_numbers_of_their_own(qtbot, tmp_path):
    pair = [replace(ROW[0], name="Tansy"), replace(ROW[0], name="Bracken")]
    with closing(make_book(tmp_path / "pair.book", pair)) as keeping:
        desk = Desk(RoundScreen, keeping)
        desk.press("Enter + 2 0 Enter")

        results = [offers(keeping)[line].result for line in (1, 2)]
        assert results == [Result.TAKEN, Result.REFUSED]
        desk.close()
