"""Refusals found when the night was long over: the watch says so, and only then."""

from contextlib import closing
from datetime import date, timedelta

import pytest

from keeper.actions.past_nights import past_night
from keeper.actions.rounds import begin_night
from keeper.actions.watching import watch_lines
from keeper.husbandry.events import Result
from keeper.reports.figures import plain
from keeper.reports.words import because_text
from tests.feeding_room import NIGHT, Clock, Tub, make_book, refused_twice, row

LATE = "learned later"


@pytest.fixture
def clock():
    return Clock()


@pytest.fixture
def keeping(tmp_path, clock):
    """Ten tubs in a row; the first refused twice before this night."""
    tubs = [Tub(place="A1·1", name="Tansy", more=refused_twice), *row("A", 1)[1:]]
    with closing(make_book(tmp_path / "late.book", tubs, clock)) as book:
        yield book


def walked(keeping, first=Result.TAKEN):
    """The night walked and closed, every tub but the first taken."""
    walk = begin_night(keeping, NIGHT)
    walk.record(first)
    for _ in range(9):
        walk.record(Result.TAKEN)
    walk.close()


def still_there(keeping, *lines):
    night = past_night(keeping, NIGHT)
    for line in lines:
        night.go_to(line)
        night.found(gone=False)


def said(keeping, on, kind):
    """What the line of *kind* says on a day; nothing where there is none."""
    lines = [line for line in watch_lines(keeping, on) if line.kind == kind]
    return plain(because_text(lines[0].because)) if lines else ""


def test_a_third_refusal_found_two_mornings_later_is_told_with_the_day_it_was_written(
    keeping, clock
):
    walked(keeping)
    clock.at += timedelta(days=1, hours=12)
    assert said(keeping, keeping.today, "refusals") == ""

    still_there(keeping, 1)

    told = said(keeping, keeping.today, "refusals")
    assert told.startswith("3 refusals counted")
    assert ("Refused on 25 Nov 2026, which was learned later: written on 27 Nov 2026.") in told


def test_the_watch_of_the_past_day_says_that_it_could_not_know(keeping, clock):
    walked(keeping)
    clock.at += timedelta(days=1, hours=12)
    still_there(keeping, 1)

    assert "learned later: written on 27 Nov 2026" in said(
        keeping, NIGHT + timedelta(days=1), "refusals"
    )


@pytest.mark.parametrize("hours", [0, 5, 12])
def test_a_look_on_the_same_night_or_its_morning_is_in_time(keeping, clock, hours):
    walked(keeping, Result.LEFT_IN)
    clock.at += timedelta(hours=hours)
    still_there(keeping, 1)

    told = said(keeping, keeping.today, "refusals")
    assert told.startswith("3 refusals counted")
    assert LATE not in told


def test_a_refusal_written_on_its_night_is_in_time(keeping, clock):
    walked(keeping, Result.REFUSED)
    clock.at += timedelta(days=2)

    told = said(keeping, keeping.today, "refusals")
    assert told.startswith("3 refusals counted")
    assert LATE not in told


def test_a_refusal_put_right_only_in_its_prey_was_known_in_time(keeping, clock):
    walked(keeping, Result.REFUSED)
    clock.at += timedelta(days=2)
    night = past_night(keeping, NIGHT)
    night.go_to(1)
    night.record(Result.REFUSED, prey=("mouse hopper", 1, 9.0))

    told = said(keeping, keeping.today, "refusals")
    assert told.startswith("3 refusals counted")
    assert LATE not in told


def test_what_was_learned_late_before_the_last_meal_is_told_no_more(keeping, clock):
    walked(keeping)
    clock.at += timedelta(days=1, hours=12)
    still_there(keeping, 1)
    for result in (Result.TAKEN, Result.REFUSED, Result.REFUSED, Result.REFUSED):
        clock.at += timedelta(days=14)
        walk = begin_night(keeping, keeping.today)
        walk.record(result)
        walk.close()

    told = said(keeping, keeping.today, "refusals")
    assert told.startswith("3 refusals counted")
    assert LATE not in told


def test_a_row_found_uneaten_two_mornings_later_is_told_with_the_day_it_was_written(keeping, clock):
    walked(keeping)
    clock.at += timedelta(days=1, hours=12)
    still_there(keeping, 2, 3, 4, 5, 6, 7)

    told = said(keeping, date(2026, 11, 27), "refusals in the room")
    assert "6 of 10 refused" in told
    assert (
        "6 refusals since 25 Nov 2026 were learned later, the last written on 27 Nov 2026."
    ) in told
