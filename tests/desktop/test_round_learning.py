"""What a tub asks beside its meal: a hold she eats through, the next step of a non-starter."""

from contextlib import closing
from datetime import UTC, datetime, timedelta

import pytest
from round_desk import offers, stands_at, walk

from keeper.actions.due_board import due_rows
from keeper.actions.starting import tried_with
from keeper.desktop.screens.round import RoundScreen
from keeper.husbandry.events import OfferedThrough, Result, StartStep
from keeper.reports.figures import plain
from keeper.rules.feeding import DueState
from keeper.rules.ladder import LadderStep
from keeper.store import reading
from tests.feeding_room import (
    NIGHT,
    Clock,
    Tub,
    ate_while_opaque,
    began_with_the_cup,
    hatchling,
    make_book,
    opaque,
)
from tests.pad_desk import Desk, said_on

TUBS = [
    Tub(place="A1·1", name="Tansy"),
    Tub(place="A1·2", name="Ingrid", more=ate_while_opaque(1, 14)),
    Tub(place="A1·3", name="Quill", more=opaque),
    Tub(place="A1·4", name="Wee", fed_days=None, weight_g=None, more=hatchling),
    Tub(place="A1·5", name="Mite", fed_days=None, weight_g=None, more=began_with_the_cup),
]
INGRID, QUILL, WEE = 2, 3, 4
ATE = "Ate 13 of 14 offers while opaque"
CUP = "overnight in a small dark cup with a hide (in this line tried with 1, of which 1 ate)"


@pytest.fixture
def keeping(tmp_path):
    with closing(make_book(tmp_path / "night.book", TUBS, Clock(timedelta(seconds=5)))) as book:
        yield book


@pytest.fixture
def quiet(qtbot, keeping):
    made = Desk(RoundScreen, keeping)
    yield made
    made.close()


@pytest.fixture
def desk(quiet):
    """A round just begun."""
    quiet.press("Enter")
    return quiet


def said(desk):
    return plain(said_on(desk.page))


def answers(keeping):
    return [entry.event.yes for entry in reading.all_of(keeping.book, OfferedThrough)]


def steps(keeping):
    return [entry.event for entry in reading.all_of(keeping.book, StartStep)]


def state_of(keeping, name):
    return next(r.plan.state for r in due_rows(keeping, NIGHT) if r.animal.name == name)


# --- a hold she eats through -----------------------------------------------------------------


def test_the_tub_of_an_animal_that_eats_through_its_hold_says_so_and_has_a_key(desk):
    desk.press(f"9 {INGRID} Enter")

    assert ATE in said(desk)
    assert "6: eats through" in said(desk)


def test_a_yes_is_one_word_of_the_keeper_and_puts_her_on_the_next_board(desk, keeping):
    desk.press(f"9 {INGRID} Enter 6")
    assert "ate 13 of 14; Enter yes, 0 no" in said(desk)
    assert answers(keeping) == []
    desk.press("Enter")

    assert answers(keeping) == [True]
    assert state_of(keeping, "Ingrid") is DueState.DUE
    assert (desk.written[-1].where, desk.written[-1].what) == (
        "A1·2 Ingrid",
        "offered while opaque",
    )
    assert ATE not in said(desk)
    assert "6: no meaning now" in said(desk)


def test_the_answer_is_taken_back_by_the_point_and_asked_again(desk, keeping):
    desk.press(f"9 {INGRID} Enter 6 Enter 9 1 Enter .")

    assert answers(keeping) == []
    assert state_of(keeping, "Ingrid") is DueState.HOLD
    assert ATE in said(desk)
    assert desk.written[-1].what == "taken back: offered through"


def test_a_no_goes_on_skipping_and_the_point_while_asked_writes_nothing(desk, keeping):
    desk.press(f"9 {INGRID} Enter 6 .")
    assert answers(keeping) == []
    desk.press("6 0")

    assert answers(keeping) == [False]
    assert state_of(keeping, "Ingrid") is DueState.HOLD
    assert ATE not in said(desk)


@pytest.mark.parametrize("line", ["1", str(QUILL)])
def test_where_nothing_was_learned_the_key_is_dead(desk, keeping, line):
    desk.press(f"9 {line} Enter 6 Enter")

    assert answers(keeping) == []
    assert "6: no meaning now" in said(desk)


def test_before_the_round_begins_what_was_learned_is_asked_and_the_night_follows_it(quiet, keeping):
    assert "6: eaten through?" in said(quiet)
    quiet.press("6")
    assert "A1·2 Ingrid, opaque: offer all the same?" in said(quiet)
    assert ATE in said(quiet)
    quiet.press("Enter Enter")

    assert answers(keeping) == [True]
    assert walk(keeping).tub(INGRID).plan.state == "due"


def test_with_nobody_left_to_ask_about_the_key_says_so(quiet, keeping):
    quiet.press("6 0 6")

    assert answers(keeping) == [False]
    assert quiet.noted[-1] == "Nobody held tonight has eaten often enough under such a hold."


# --- the starting ladder ---------------------------------------------------------------------


def test_the_tub_of_a_non_starter_names_the_next_untried_step_and_its_success_in_this_line(desk):
    desk.press(f"9 {WEE} Enter")

    assert CUP in said(desk)
    assert "NOT STARTED, a warm pinky overnight" in said(desk)
    assert "4: try next step" in said(desk)


def test_one_key_writes_that_the_step_is_tried_tonight_and_the_tub_stays(desk, keeping):
    before = len(steps(keeping))
    desk.press(f"9 {WEE} Enter 4")

    (tried,) = steps(keeping)[before:]
    assert (tried.step, tried.happened.day) == (LadderStep.CUP.value, NIGHT)
    assert stands_at(desk, "Wee")
    assert desk.written[-1].where == "A1·4 Wee"
    assert "Tried tonight: a warm pinky overnight in a small dark cup with a hide." in said(desk)
    assert "The last change was on 25 Nov 2026; one change at a time, 3 days" in said(desk)
    assert "Next step" not in said(desk)
    desk.press("4")
    assert len(steps(keeping)) == before + 1


def test_what_the_tub_then_took_is_the_outcome_of_the_step(desk, keeping):
    desk.press(f"9 {WEE} Enter 4 Enter")

    wee = walk(keeping).tub(WEE).plan.animal
    assert [(t.step, t.ate) for t in tried_with(keeping, wee, NIGHT)] == [(LadderStep.CUP, True)]


def test_the_outcome_counts_though_the_round_goes_on_past_midnight(qtbot, tmp_path):
    late = Clock()
    late.at = datetime(2026, 11, 26, 0, 40, tzinfo=UTC)
    with closing(make_book(tmp_path / "late.book", TUBS, late)) as keeping:
        desk = Desk(RoundScreen, keeping)
        desk.press(f"Enter 9 {WEE} Enter 4 0")

        wee = walk(keeping).tub(WEE).plan.animal
        assert [t.ate for t in tried_with(keeping, wee, NIGHT)] == [False]
        desk.close()


def test_the_point_takes_the_step_back(desk, keeping):
    before = len(steps(keeping))
    desk.press(f"9 {WEE} Enter 4 9 1 Enter .")

    assert len(steps(keeping)) == before
    assert stands_at(desk, "Wee")
    assert desk.written[-1].what == "taken back: starting step"


def test_a_slip_on_the_dead_keys_of_a_grown_animal_writes_nothing(desk, keeping):
    before = len(steps(keeping))
    desk.press("1 4 6")

    assert len(steps(keeping)) == before
    assert offers(keeping) == {}
    assert desk.refused == []


def test_a_sweep_settles_the_young_one_as_planned_and_tells_no_step(desk, keeping):
    before = len(steps(keeping))
    desk.press("+ Enter")

    assert offers(keeping)[WEE].result is Result.TAKEN
    assert len(steps(keeping)) == before
