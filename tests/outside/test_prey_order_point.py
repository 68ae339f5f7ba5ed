"""The order day against the reorder point of inventory theory.

Reorder point = demand over the lead time + safety stock, and safety stock held as a time of cover
is that time's demand: E. A. Silver, D. F. Pyke, R. Peterson, Inventory Management and Production
Planning and Scheduling, 3rd ed. (1998), chapter 7 (continuous review, order point). The formula is
cited from memory. The lead time and the cover are common practice, no source.
"""

from datetime import timedelta

import pytest

from keeper.rules.demand import Spares, demand
from keeper.rules.feeding import DueState, Plan
from keeper.rules.meals_ahead import Eater
from keeper.rules.watch_prey import LEAD_WEEKS, SPARE_WEEKS, Bag, order_point
from tests.builders import day, fed, fed_every, figure

TODAY = day("2026-09-23")
PREY = "mouse hopper"


def eaters(count):
    """So many animals that each take one item on the same day of every week."""
    profile = fed_every(7)
    for number in range(1, count + 1):
        plan = Plan(animal=number, state=DueState.DUE, due_on=TODAY, interval_days=7)
        yield Eater(now=fed("2026-09-16", animal=number), profile=profile, plan=plan)


@pytest.mark.parametrize("a_week", [1, 3, 20])
@pytest.mark.parametrize("weeks", [5, 9, 14])
def test_at_a_steady_demand_what_is_left_on_the_order_day_is_the_reorder_point(a_week, weeks):
    """D × L + D × cover: for 3 a week, 2 weeks of lead and 2 of cover it is 12 items."""
    reorder_point = a_week * LEAD_WEEKS.value + a_week * SPARE_WEEKS.value
    bag = Bag(prey=PREY, bag="14", since=TODAY, left=a_week * weeks)
    none = Spares(hatchling=figure(0), others=figure(0))

    (told,) = demand(list(eaters(a_week)), [bag], (), TODAY, none).grades

    assert order_point(told.a_week) == pytest.approx(reorder_point)
    assert told.order_by == TODAY + timedelta(weeks=weeks - 4)
    on_the_day = told.stock[(told.order_by - TODAY).days // 7]
    assert on_the_day == pytest.approx(reorder_point)
