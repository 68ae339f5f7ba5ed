"""Two in one tub: what was seen of one of these is said, and counts against neither."""

from contextlib import closing
from dataclasses import replace
from datetime import timedelta

import pytest
from round_desk import desk, offers, stands_at, walk

from keeper.actions.all_but import remainder, sheet_scope
from keeper.actions.due_board import due_rows
from keeper.actions.life import life_of
from keeper.actions.refusal_strip import Cell, refusal_strip
from keeper.desktop.screens.round import RoundScreen
from keeper.husbandry.events import Remark
from keeper.reports.figures import plain
from keeper.reports.words import because_text
from keeper.rules.feeding import DueState
from keeper.store import reading
from keeper.store.state import differing
from tests.feeding_room import NIGHT, Clock, Tub, make_book, row
from tests.pad_desk import Desk, said_on

ASH = Tub(place="A1·1", name="Ash")


@pytest.fixture
def clock():
    return Clock()


@pytest.fixture
def keeping(tmp_path, clock):
    """Tansy and Ash in one tub, Bracken and Orrin alone; all are due."""
    tubs = row("A", 1, 3)
    with closing(make_book(tmp_path / "pair.book", [tubs[0], ASH, *tubs[1:]], clock)) as book:
        yield book


__all__ = ["desk"]


def plans(keeping, on):
    return {r.animal.name: r.plan for r in due_rows(keeping, on)}


def remarks(keeping):
    return {e.event.animal: e.event.text for e in reading.all_of(keeping.book, Remark)}


def test_a_shared_tub_says_with_whom_and_has_a_key_for_one_of_these(desk):
    assert "SHARED, with Ash; feed apart" in said_on(desk.page)
    assert "1: one of these" in said_on(desk.page)


def test_in_a_tub_of_her_own_the_key_is_dead(desk, keeping):
    desk.press("9 3 Enter 1 Enter")

    assert remarks(keeping) == {}
    assert offers(keeping)[3].result.value == "taken"


@pytest.mark.parametrize(("key", "seen"), [("Enter", "took it"), ("0", "refused it")])
def test_a_meal_of_one_of_these_counts_for_neither_and_the_walk_goes_on(desk, keeping, key, seen):
    before = plans(keeping, NIGHT)
    desk.press(f"1 {key}")

    assert offers(keeping) == {}
    assert set(remarks(keeping).values()) == {
        f"one of these: one of Tansy and Ash {seen}, 2 fuzzy mouse"
    }
    assert len(remarks(keeping)) == 2
    assert stands_at(desk, "Bracken")
    assert "2 one of these" in said_on(desk.page)
    after = plans(keeping, NIGHT)
    for name in ("Tansy", "Ash"):
        assert after[name].days_since_eaten == before[name].days_since_eaten
        animal = walk(keeping).tub(1 if name == "Tansy" else 2).plan.animal
        assert life_of(keeping, animal, NIGHT).offers[-1].happened.day < NIGHT
    assert differing(keeping.book.connection) == []


def test_it_is_one_step_that_the_point_takes_back(desk, keeping):
    desk.press("1 0 .")

    assert remarks(keeping) == {}
    assert stands_at(desk, "Tansy")
    assert desk.written[-1].what == "taken back: one of these"


def test_so_soon_after_it_nobody_can_tell_whether_either_is_due(desk, keeping, clock):
    desk.press("1 Enter 9 0 Enter Enter Enter")
    clock.at += timedelta(days=2)
    soon = plans(keeping, NIGHT + timedelta(days=2))
    later = plans(keeping, NIGHT + timedelta(days=9))

    assert {soon[name].state for name in ("Tansy", "Ash")} == {DueState.CANNOT_TELL}
    assert soon["Bracken"].state is DueState.DUE
    assert later["Ash"].state is DueState.DUE
    assert "so this may not be so long a gap" in plain(because_text(later["Ash"].because))


def test_a_tub_with_a_result_of_its_own_is_not_said_to_be_one_of_these(desk, keeping):
    desk.press("Enter 9 2 Enter 1 0")

    assert desk.refused == ["A1·1 Tansy has a result of her own tonight; take it back first."]
    assert remarks(keeping) == {}


def test_what_came_up_of_one_of_these_is_noted_of_both_and_the_tub_stays(desk, keeping):
    desk.press("1 8")

    assert set(remarks(keeping).values()) == {"one of Tansy and Ash brought a meal up"}
    assert stands_at(desk, "Tansy")
    desk.press("Enter")
    assert offers(keeping)[1].result.value == "taken"


def test_another_prey_is_the_one_that_is_named(desk, keeping):
    desk.press("/ 4 1 1 Enter")

    assert set(remarks(keeping).values()) == {
        "one of these: one of Tansy and Ash took it, 1 hopper mouse"
    }


def test_a_later_result_of_one_of_them_is_hers_alone(desk, keeping):
    desk.press("1 0 9 2 Enter Enter")

    assert {line: o.result.value for line, o in offers(keeping).items()} == {2: "taken"}
    assert walk(keeping).cursor == 3


def test_the_round_closes_without_calling_them_not_reached(desk, keeping):
    desk.press("1 0 Enter Enter")

    assert "0 not reached" in said_on(desk.page)
    desk.press("Enter")
    assert desk.written[-1].what == "round closed, 0 not reached"


def test_at_the_table_and_on_the_strip_they_are_neither_taken_nor_not_reached(desk, keeping):
    desk.press("1 0")
    here = walk(keeping)

    meant = remainder(keeping, here, sheet_scope(here), [])
    assert [tub.animal.name for tub in meant.planned] == ["Bracken", "Orrin"]
    desk.press("9 0 Enter Enter Enter")

    strip = refusal_strip(keeping, NIGHT)
    cells = {each.animal.name: each.cells[-1] for row in strip.rows for each in row.animals}
    assert cells == {
        "Tansy": None,
        "Ash": None,
        "Bracken": Cell.NOT_REACHED,
        "Orrin": Cell.NOT_REACHED,
    }


def test_animals_without_a_place_do_not_share_one(qtbot, tmp_path):
    tubs = [replace(tub, place="") for tub in row("A", 1, 2)]
    with closing(make_book(tmp_path / "loose.book", tubs, Clock())) as keeping:
        desk = Desk(RoundScreen, keeping)
        desk.press("Enter")

        assert "SHARED" not in said_on(desk.page)
        desk.close()
