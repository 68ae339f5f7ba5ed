"""The round where the plan says nothing: prey asked for, holds passed over, racks, another tub."""

from contextlib import closing

import pytest
from round_desk import ROW, desk, offers, stands_at, walk

from keeper.actions import rounds
from keeper.actions.past_nights import looks, past_night
from keeper.actions.round_entries import OtherResult
from keeper.actions.rounds import last_night, open_night
from keeper.actions.tubs import tub_name
from keeper.desktop.screens.round import RoundScreen
from keeper.desktop.screens.round_asking import Sweep
from keeper.desktop.screens.round_deeds import Deed, Refused, Verb
from keeper.desktop.screens.round_racks import Racks
from keeper.husbandry.events import Regurgitation, Result
from keeper.husbandry.when import at_instant
from keeper.store import reading
from tests.feeding_room import Clock, make_book
from tests.pad_desk import Desk, said_on

__all__ = ["desk"]

HOB, QUILL, SORREL, MERROW = 7, 4, 6, 5
CHOSEN = ("mouse hopper", 1)
NOTHING = "Nothing is planned for A1·8 Hob; / names the prey that was given."


@pytest.fixture
def keeping(tmp_path):
    with closing(make_book(tmp_path / "night.book", ROW, Clock())) as made:
        yield made


def to(desk, line):
    desk.press(" ".join(["9", *str(line), "Enter"]))


@pytest.mark.parametrize("key", ["Enter", "0", "5", "2"])
def test_where_nothing_is_planned_a_result_asks_for_the_prey_first(desk, keeping, key):
    to(desk, HOB)
    desk.press(key)

    assert desk.refused == [NOTHING]
    assert HOB not in offers(keeping)

    desk.press("3 1")
    desk.press(key)
    assert offers(keeping)[HOB].prey == "mouse fuzzy"


def test_where_nothing_is_planned_not_offered_needs_no_prey(desk, keeping):
    to(desk, HOB)
    desk.press("7 9")

    assert offers(keeping)[HOB].result is Result.NOT_OFFERED


def test_a_walk_writes_no_meal_without_prey_whoever_asks(keeping):
    night = rounds.begin_night(keeping, rounds.night_of(keeping.now()))
    night.go_to(HOB)

    with pytest.raises(LookupError, match="names the prey that was given"):
        night.record(Result.TAKEN)


def test_a_result_put_right_keeps_the_item_that_was_given(desk, keeping):
    desk.press("/ 4 1 Enter -")
    desk.press("0")

    assert (offers(keeping)[1].prey, offers(keeping)[1].count) == CHOSEN
    assert (walk(keeping).tub(1).plan.prey, walk(keeping).tub(1).plan.count) != CHOSEN


def test_one_key_offers_a_held_animal_all_the_same_and_the_next_says_the_result(desk, keeping):
    to(desk, QUILL)
    assert "on hold" in said_on(desk.page)

    desk.press("4")
    assert QUILL not in offers(keeping)
    desk.press("Enter")

    offer = offers(keeping)[QUILL]
    assert offer.result is Result.TAKEN
    assert offer.prey is not None


def test_one_key_offers_an_animal_that_is_not_due_all_the_same(desk, keeping):
    to(desk, MERROW)
    desk.press("4 0")

    assert offers(keeping)[MERROW].result is Result.REFUSED


def test_a_slip_of_enter_passes_over_no_hold(desk, keeping):
    to(desk, QUILL)
    desk.press("Enter")

    assert QUILL not in offers(keeping)
    assert "4 offers it all the same" in desk.refused[-1]


def test_a_hold_by_a_vets_word_takes_more_than_one_key(desk, keeping):
    to(desk, SORREL)
    desk.press("4 Enter")

    assert "A1·7 Sorrel is spared food" in desk.refused[0]
    assert SORREL not in offers(keeping)


def test_at_a_tub_that_is_due_four_is_dead(desk, keeping):
    desk.press("4")

    assert desk.refused == []
    assert offers(keeping) == {}


def test_a_sweep_says_place_then_result_where_the_result_comes_first():
    sweep = Sweep({"1": 1, "2": 2}, frozenset({1, 2}))

    told = sweep.press("0")

    assert isinstance(told, Refused)
    assert told.sentence == "First the place, then the result: 4 0 is tub 4 refused."
    assert told.then == sweep


def test_a_sweep_says_that_a_digit_is_no_tub_of_the_rest():
    told = Sweep({"1": 1}, frozenset({1})).press("8")

    assert isinstance(told, Refused)
    assert told.sentence == "There is no tub 8 in the rest of this row."


def test_a_sweep_gives_a_regurgitated_tub_no_result_and_keeps_what_was_typed(desk, keeping):
    bracken = walk(keeping).tub(2)
    walk(keeping).go_to(2)
    at = at_instant(keeping.now(), walk(keeping).night)
    night = walk(keeping)
    night.go_to(2)
    night.mark(Regurgitation(animal=bracken.plan.animal, happened=at), what="regurgitation")
    desk.notices.changed.emit()
    to(desk, 1)

    desk.press("+ 3 5 2 0")
    assert desk.refused == [
        "A1·2 Bracken regurgitated and is on hold; 7 and 3 go on, / chooses the prey."
    ]
    desk.press("Enter")

    written = offers(keeping)
    assert 2 not in written
    assert written[3].result is Result.LEFT_IN


def test_the_walk_itself_refuses_such_a_sweep(keeping):
    night = rounds.begin_night(keeping, rounds.night_of(keeping.now()))
    with pytest.raises(LookupError, match="Nothing is planned for A1·4 Quill"):
        night.sweep([OtherResult(line=QUILL, result=Result.REFUSED)])
    assert all(tub.offer is None for tub in night.tubs)


def test_a_chosen_prey_outlives_a_kill(desk, keeping, qtbot):
    desk.press("/ 4 1")

    again = Desk(RoundScreen, keeping)
    assert "1 × hopper mouse" in said_on(again.page)
    again.press("Enter")
    assert (offers(keeping)[1].prey, offers(keeping)[1].count) == CHOSEN
    again.close()


def test_a_chosen_prey_is_gone_once_its_tub_is_written(desk, keeping, qtbot):
    desk.press("/ 4 1 Enter")

    again = Desk(RoundScreen, keeping)
    again.press("Enter")
    assert (offers(keeping)[1].prey, offers(keeping)[1].count) == CHOSEN
    assert (offers(keeping)[2].prey, offers(keeping)[2].count) != CHOSEN
    again.close()


def test_a_round_of_chosen_racks_walks_those_and_leaves_the_others_due(qtbot, keeping):
    made = Desk(RoundScreen, keeping)
    made.press("+")
    assert "Which racks are walked?" in said_on(made.page)
    made.press("2 Enter")

    night = open_night(keeping)
    assert [tub_name(tub) for tub in night.tubs] == ["B1·1 Linnet", "B1·2 Wick"]
    assert stands_at(made, "Linnet")
    made.press("Enter Enter 0 0 Enter")
    made.close()

    assert open_night(keeping) is None
    again = rounds.begin_night(keeping, night.night)
    due = {tub.animal.called for tub in again.tubs if tub.walked}
    assert "Tansy" in due
    assert not due & {"Linnet", "Wick"}


def test_each_round_of_a_night_is_looked_at_again_on_its_own_lines(qtbot, keeping):
    made = Desk(RoundScreen, keeping)
    made.press("+ 2 Enter 5 5 0 0 Enter")
    made.press("+ 1 Enter 0")
    walk(keeping).close()
    made.close()

    second, first = looks(keeping)
    assert (second.racks, first.racks) == ("A", "B")
    assert first.left_in == 2
    opened = past_night(keeping, first.night, first.round)
    assert [tub_name(tub) for tub in opened.tubs] == ["B1·1 Linnet", "B1·2 Wick"]
    assert last_night(keeping).round == second.round


def test_racks_are_chosen_and_left_out_by_digit_and_nothing_begins_without_one():
    asking = Racks(("A", "B", "C"))

    assert asking.press("Enter") is None
    chosen = asking.press("1").press("3")
    assert chosen.press("Enter") == Deed(verb=Verb.BEGIN, racks=("A", "C"))
    assert chosen.press("1").press("Enter") == Deed(verb=Verb.BEGIN, racks=("C",))


def test_a_tenth_rack_lies_behind_the_slash():
    names = tuple("ABCDEFGHIJ")

    chosen = Racks(names).press("/").press("1")

    assert chosen.press("Enter") == Deed(verb=Verb.BEGIN, racks=("J",))


def test_what_was_written_of_a_past_night_is_moved_to_the_tub_it_was(desk, keeping):
    desk.press("0 Enter")
    walk(keeping).close()
    night = past_night(keeping, last_night(keeping).night)
    desk.page._open_past(night)
    to(desk, 1)

    desk.press("1 3 Enter")

    (right,) = [t for t in last_night(keeping).tubs if t.line == 3]
    (wrong,) = [t for t in last_night(keeping).tubs if t.line == 1]
    assert right.offer.event.result is Result.REFUSED
    assert wrong.offer is None
    batch = reading.latest_batches(keeping.book, 1)[0]
    assert (batch.verb, batch.reason) == ("correct", "wrong tub")


def test_a_tub_with_an_entry_of_its_own_takes_no_other(desk, keeping):
    desk.press("0 Enter")
    walk(keeping).close()
    desk.page._open_past(past_night(keeping, last_night(keeping).night))
    to(desk, 1)

    desk.press("1 2 Enter")

    assert "has an entry that night" in desk.refused[-1]
