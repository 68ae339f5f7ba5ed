"""The freezer bag by bag: the oldest first, when to order, to use first, to bin."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest

from keeper.husbandry.house import BagOpened, PreyCounted
from keeper.husbandry.when import at_instant
from keeper.rules.watch_facts import Severity
from keeper.rules.watch_prey import bags_left, order_point, prey_lines
from tests.builders import day

TODAY = day("2026-09-23")
FUZZY = "mouse fuzzy"


def at(days: int, hour: int = 12) -> datetime:
    on = TODAY - timedelta(days=days)
    return datetime(on.year, on.month, on.day, hour, tzinfo=UTC)


def counted(days: int, items: int, bag: str = "14", hour: int = 12) -> PreyCounted:
    return PreyCounted(happened=at_instant(at(days, hour)), prey=FUZZY, bag=bag, items=items)


def opened(days: int, bag: str) -> BagOpened:
    return BagOpened(happened=at_instant(at(days)), prey=FUZZY, bag=bag)


def used(days: int, items: int, hour: int = 20, prey: str = FUZZY):
    return (at(days, hour), prey, items)


def left(counts, uses=(), bags=()) -> dict[str, int]:
    return {bag.bag: bag.left for bag in bags_left(counts, bags, uses)}


def test_what_is_offered_after_the_count_is_taken_out_and_before_it_is_not():
    assert left([counted(10, 200)], [used(9, 12), used(2, 8)]) == {"14": 180}
    assert left([counted(10, 200)], [used(11, 12)]) == {"14": 200}
    assert left([counted(10, 200)], [used(10, 12, hour=9), used(10, 5)]) == {"14": 195}


def test_of_two_counts_in_one_hour_the_later_stands_also_where_it_is_the_smaller():
    first, later = (at_instant(at(10).replace(minute=m)) for m in (5, 40))
    counts = [replace(counted(10, 90), happened=first), replace(counted(10, 60), happened=later)]

    assert left(counts) == {"14": 60}
    assert left(reversed(counts)) == {"14": 60}


def test_another_grade_is_not_taken_out():
    assert left([counted(10, 200)], [used(9, 12, prey="mouse pinky")]) == {"14": 200}


def test_the_oldest_bag_is_used_first_and_the_next_when_it_is_empty():
    bags = [counted(20, 10, "12"), counted(10, 50, "14")]

    assert left(bags, [used(5, 7)]) == {"12": 3, "14": 50}
    assert left(bags, [used(5, 7), used(3, 7)]) == {"12": 0, "14": 46}


def test_a_bag_that_was_opened_is_used_before_an_older_one():
    bags = [counted(20, 10, "12"), counted(10, 50, "14")]

    assert left(bags, [used(5, 7)], [opened(8, "14")]) == {"12": 10, "14": 43}


def test_a_new_count_is_the_truth_and_nothing_falls_below_nought():
    assert left([counted(20, 10), counted(4, 6)], [used(10, 9), used(2, 1)]) == {"14": 5}
    assert left([counted(20, 10)], [used(10, 90)]) == {"14": 0}


def test_a_bag_is_as_old_as_the_day_it_came_and_one_filled_anew_is_new():
    (kept,) = bags_left([counted(200, 10), counted(4, 6)], [], [])
    (new,) = bags_left([counted(200, 10), counted(100, 0), counted(4, 60)], [], [])

    assert (TODAY - kept.since).days == 200
    assert (TODAY - new.since).days == 4


def lines(items: int, a_week: float, days: int = 1):
    bags = bags_left([counted(days, items)], [], [])
    return [(w.kind, w.place, w.because[0].why) for w in prey_lines(bags, {FUZZY: a_week}, TODAY)]


def test_below_four_weeks_of_use_a_grade_is_to_be_ordered():
    """One to two weeks until the order comes and two more: common practice, no source."""
    assert order_point(10) == 40
    assert lines(40, 10) == []
    assert lines(39, 10) == [("prey low", FUZZY, "prey below order point")]


def test_a_grade_that_nothing_is_planned_of_is_never_low():
    assert lines(0, 0) == []


@pytest.mark.parametrize(
    ("days", "told"),
    [(182, []), (183, "bag past use"), (364, "bag past use"), (365, "bag past keeping")],
)
def test_a_bag_is_used_first_after_six_months_and_binned_after_twelve(days, told):
    assert lines(40, 1, days) == ([("bag aged", "14", told)] if told else [])


def test_an_empty_bag_has_no_age():
    assert prey_lines(bags_left([counted(400, 0)], [], []), {}, TODAY) == ()


def test_what_the_freezer_says_is_this_weeks():
    (line,) = prey_lines(bags_left([counted(1, 1)], [], []), {FUZZY: 10.0}, TODAY)

    assert line.severity is Severity.THIS_WEEK
    assert line.because[0].figures["weeks"] == pytest.approx(0.1)
