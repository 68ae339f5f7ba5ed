"""The order list: what stands of each grade, and the bags that are past their time."""

from datetime import timedelta

from keeper.reports.order_list import order_list
from keeper.reports.paper_parts import Heading, Table, Words
from keeper.rules.demand import Demand, GradeDemand, Group, Stock
from keeper.rules.watch_prey import Bag
from tests.builders import day

TODAY = day("2026-11-25")


def a_grade(state=Stock.ORDER_SOON, left=20, **changed):
    items = (2.5,) * 12
    told = {
        "prey": "mouse fuzzy",
        "items": items,
        "grams": (12.5,) * 12,
        "by_group": {Group.ADULTS: items},
        "stock": (),
        "nightly": (),
        "animals": 2,
        "a_week": 2.5,
        "out_on": TODAY + timedelta(days=56),
        "order_by": TODAY + timedelta(days=28),
        "bags": (),
        "steps_in": (),
        "steps_out": (),
        "because": (),
    }
    return GradeDemand(state=state, left=left, **(told | changed))


def printed(*grades):
    return order_list(Demand(on=TODAY, grades=grades, because=()), "25 Nov 2026, 20:15").parts


def rows(*grades):
    (table,) = (part for part in printed(*grades) if isinstance(part, Table))
    return table.rows


def test_whole_items_are_needed_and_lacking_after_twelve_weeks():
    """2.5 a week are 10 in 4 weeks and 30 in 12; of 20 that are left 10 are lacking."""
    assert rows(a_grade()) == (("fuzzy mouse", "20", "10", "30", "10", "23 Dec", ""),)


def test_what_is_not_counted_is_not_guessed():
    (row,) = rows(a_grade(Stock.NOT_COUNTED, None, out_on=None, order_by=None))

    assert row[1:] == ("?", "10", "30", "?", "count it first", "")


def test_now_and_enough_are_said():
    now, enough = rows(
        a_grade(Stock.ORDER_NOW, 5, order_by=TODAY), a_grade(Stock.ENOUGH, 99, order_by=None)
    )

    assert (now[4:6], enough[4:6]) == (("25", "now"), ("0", "enough"))


def test_bags_past_their_time_are_listed_to_be_ticked_and_others_are_not():
    old = Bag(prey="mouse fuzzy", bag="3", since=TODAY - timedelta(days=190), left=12)
    new = Bag(prey="mouse fuzzy", bag="4", since=TODAY, left=8)

    parts = printed(a_grade(bags=(old, new)))

    told = [part.words for part in parts if isinstance(part, Words) and part.boxed]
    assert told == ["fuzzy mouse, bag 3: 12 left, came 19 May 2026"]
    heads = [part.words for part in parts if isinstance(part, Heading)]
    assert "Bags to use first, or to bin" in heads
    heads = [part.words for part in printed(a_grade(bags=(new,))) if isinstance(part, Heading)]
    assert "Bags to use first, or to bin" not in heads
