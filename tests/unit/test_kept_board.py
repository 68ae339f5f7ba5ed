"""A board asked for again is not reckoned again; nothing that was written is missed by it."""

from dataclasses import replace
from datetime import timedelta

import pytest

from keeper.actions import due_board
from keeper.actions.due_board import due_rows
from keeper.actions.keeping import animals_on, open_keeping
from keeper.actions.recording import write_up
from keeper.actions.settings import set_own_figure
from keeper.actions.undoing import put_back, take_back
from keeper.husbandry.events import HoldKind, HoldSet, Offer, Result
from keeper.husbandry.when import on_day
from keeper.rules.feeding import DueState
from keeper.store.journal import supposed
from tests.feeding_room import NIGHT, Clock, make_book, row


@pytest.fixture
def keeping(tmp_path):
    made = make_book(tmp_path / "room.book", row("A", 1, 3))
    yield made
    made.close()


@pytest.fixture
def reckoned(monkeypatch):
    """How often a board was really reckoned."""
    times = []
    own = due_board._reckoned
    monkeypatch.setattr(due_board, "_reckoned", lambda *asked: times.append(asked) or own(*asked))
    return times


def due_now(keeping):
    return {r.animal.name for r in due_rows(keeping, NIGHT) if r.plan.state is DueState.DUE}


def hold(keeping, name):
    animal = next(r.animal for r in animals_on(keeping, NIGHT) if r.name == name)
    return HoldSet(animal=animal, happened=on_day(NIGHT), kind=HoldKind.VET)


def test_a_board_asked_for_twice_is_reckoned_once_and_is_the_asker_s_own(keeping, reckoned):
    first = due_rows(keeping, NIGHT)
    first.pop()

    assert len(due_rows(keeping, NIGHT)) == 3
    assert len(reckoned) == 1


def test_another_night_or_another_today_is_reckoned_anew(keeping, reckoned):
    due_rows(keeping, NIGHT)
    due_rows(keeping, NIGHT + timedelta(days=1))
    later = replace(keeping, now=lambda: keeping.now() + timedelta(days=1))
    due_rows(later, NIGHT)

    assert len(reckoned) == 3


def test_what_is_written_taken_back_and_put_back_is_on_the_next_board(keeping):
    before = due_now(keeping)
    write_up(keeping, [hold(keeping, "Bracken")])
    assert due_now(keeping) == before - {"Bracken"}
    take_back(keeping)
    assert due_now(keeping) == before
    put_back(keeping)
    assert due_now(keeping) == before - {"Bracken"}


def test_what_another_window_writes_is_on_the_next_board(tmp_path):
    path = tmp_path / "room.book"
    writer = make_book(path, row("A", 1, 3))
    reader = open_keeping(path, station="desk", now=Clock(), read_only=True)
    before = due_now(reader)

    write_up(writer, [hold(writer, "Bracken")])

    assert due_now(reader) == before - {"Bracken"}
    reader.close()
    writer.close()


def test_nothing_is_kept_of_a_book_as_it_is_only_supposed_to_be(keeping):
    before = due_now(keeping)
    with supposed(keeping.book, [], [hold(keeping, "Bracken")], keeping.now()):
        assert due_now(keeping) == before - {"Bracken"}

    assert due_now(keeping) == before
    assert {r.name for r in animals_on(keeping, NIGHT)} >= before


def test_a_figure_of_the_keeper_s_own_counts_at_once(keeping):
    before = {r.animal.name: r.plan.interval_days for r in due_rows(keeping, NIGHT)}
    set_own_figure(
        keeping, "house_snake", "feeding.adult.female.interval_days", 60, "a claim put to the test"
    )
    keeping.forget_figures()

    assert {r.animal.name: r.plan.interval_days for r in due_rows(keeping, NIGHT)} != before


def test_the_round_of_a_night_begins_with_the_board_that_was_shown(keeping, reckoned):
    from keeper.actions.rounds import begin_night

    shown = [(r.animal.animal, r.plan.state) for r in due_rows(keeping, NIGHT)]
    walk = begin_night(keeping, NIGHT)

    assert [(tub.plan.animal, tub.plan.state) for tub in walk.tubs] == shown
    assert len(reckoned) == 1
    walk.record(Result.TAKEN)
    assert isinstance(walk.tubs[0].offer.event, Offer)
