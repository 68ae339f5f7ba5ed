"""Prey in the coming weeks: items a week, who goes over to another grade, when to order."""

from dataclasses import replace
from datetime import date, timedelta
from itertools import islice
from math import exp
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from keeper.husbandry.animal import Sex
from keeper.husbandry.events import HoldKind
from keeper.rules.demand import (
    BEYOND_WEEKS,
    SOON_WEEKS,
    WEEKS,
    Demand,
    Group,
    Spares,
    Stock,
    demand,
    use_by,
)
from keeper.rules.feeding import DueState, Plan
from keeper.rules.holds import Hold
from keeper.rules.meals_ahead import Basis, Curves, Eater, Silent, basis_of, meals_ahead, silent
from keeper.rules.watch_prey import Bag
from tests.builders import a_curve, a_grade, a_profile, an_offer, day, fed, fed_every, figure

TODAY = day("2026-09-23")
HOPPER, WEANER, ADULT = "mouse hopper", "mouse weaner", "mouse adult"
NO_SPARE = Spares(hatchling=figure(0), others=figure(0))
FLAT = a_curve(m_g=(100.0, 100.0, 100.0))
STEEP = a_curve(age_days=(0.0, 900.0, 1000.0), m_g=(4.0, 100.0, 200.0))


def weekly(**changed: Any) -> Any:
    """A profile in which everybody is fed every 7 days and weighs what the curve says."""
    growth = changed.pop("growth", {Sex.FEMALE: FLAT, Sex.MALE: FLAT})
    return replace(fed_every(7), growth=growth, **changed)


def an_eater(due: int = 0, **changed: Any) -> Eater:
    """A female of 937 days, due in so many days, last fed one hopper; without a weight."""
    now = fed("2026-09-16", **changed.pop("now", {}))
    plan = Plan(
        animal=now.animal,
        state=DueState.DUE if due <= 0 else DueState.NOT_DUE,
        due_on=TODAY + timedelta(days=due),
        interval_days=7,
    )
    told = {"now": now, "profile": weekly(), "plan": replace(plan, **changed.pop("plan", {}))}
    return Eater(**(told | changed))


def a_bag(left: int, prey: str = HOPPER, since: date = TODAY, bag: str = "14") -> Bag:
    return Bag(prey=prey, bag=bag, since=since, left=left)


def ahead(*eaters: Eater, bags: Any = (), spares: Spares = NO_SPARE, nights: Any = ()) -> Demand:
    return demand(eaters, bags, nights, TODAY, spares)


def grade(told: Demand, prey: str = HOPPER) -> Any:
    return next(each for each in told.grades if each.prey == prey)


def nights_of(eater: Eater, nights: Any = ()) -> list[int]:
    last = TODAY + timedelta(weeks=WEEKS)
    meals = islice(meals_ahead(eater, nights, TODAY, last, Curves()), 100)
    return [(meal.on - TODAY).days for meal in meals]


def test_one_fed_every_seven_days_takes_one_item_a_week():
    told = grade(ahead(an_eater()))

    assert told.items == (1.0,) * WEEKS
    assert told.a_week == 1.0
    assert told.grams == (9.0,) * WEEKS
    assert told.animals == 1


def test_the_first_meal_is_on_the_day_it_is_due_and_an_overdue_one_tonight():
    assert nights_of(an_eater(due=3))[:2] == [3, 10]
    assert nights_of(an_eater(due=-9))[:2] == [0, 7]


def test_meals_fall_on_feed_nights():
    ahead_days = [TODAY + timedelta(days=n) for n in range(120)]
    wednesdays_and_saturdays = [each for each in ahead_days if each.weekday() in (2, 5)]

    assert nights_of(an_eater(due=1), wednesdays_and_saturdays)[:3] == [3, 10, 17]


def test_two_meals_never_fall_on_one_night():
    """Due a day after the last and allowed a day early: the nearest night is the last itself."""
    only_two = [TODAY, TODAY + timedelta(days=30)]
    eater = an_eater(profile=fed_every(1), plan={"interval_days": 1})

    assert nights_of(eater, only_two)[:2] == [0, 30]


def test_a_likely_refusal_is_passed_on_and_brings_the_next_offer_nearer():
    eater = an_eater(refusal_chance=0.5)

    told = grade(ahead(eater))

    assert nights_of(eater)[:3] == [0, 6, 12]  # half of 7 and of a retry after 5 days
    assert told.items[0] == pytest.approx(2 * 0.5)


def test_what_one_kept_apart_refuses_goes_to_nobody_else():
    told = grade(ahead(an_eater(refusal_chance=0.5, apart=True)))

    assert told.items[0] == pytest.approx(2.0)


def test_spare_is_thawed_beyond_what_is_planned_and_more_for_hatchlings():
    spares = Spares(hatchling=figure(10), others=figure(5))
    hatched = {"hatched_first": TODAY - timedelta(days=5)}

    grown, young = grade(ahead(an_eater(), spares=spares)), an_eater(now=hatched)
    hatchling = grade(ahead(young, spares=spares))

    assert grown.items[0] == pytest.approx(1.05)
    assert grown.by_group[Group.ADULTS][0] == pytest.approx(1.05)
    assert hatchling.items[0] == pytest.approx(1.10)
    assert hatchling.by_group[Group.HATCHLINGS][0] == pytest.approx(1.10)


def test_a_hatchling_is_counted_among_the_growing_once_it_is_one():
    young = an_eater(now={"hatched_first": TODAY - timedelta(days=90 - 14)})

    told = grade(ahead(young))

    assert [told.by_group[Group.HATCHLINGS][w] for w in (0, 1, 2)] == [1.0, 1.0, 0.0]
    assert [told.by_group[Group.GROWING][w] for w in (0, 1, 2)] == [0.0, 0.0, 1.0]


def test_a_hold_with_an_end_is_over_when_the_plan_says():
    held = an_eater(plan={"state": DueState.HOLD, "due_on": TODAY + timedelta(days=21)})

    assert nights_of(held)[0] == 21


def test_a_hold_without_an_end_is_not_counted_and_told():
    vet = Hold(kind=HoldKind.VET, since=TODAY)
    held = an_eater(plan={"state": DueState.HOLD, "due_on": None, "hold": vet})

    told = ahead(held, an_eater())

    assert grade(told).items[0] == 1.0
    assert [(w.why, w.figures) for w in told.because] == [("held with no end", {"animals": 1})]


def test_an_opaque_one_is_fed_again_when_the_longest_cycle_is_over():
    opaque = Hold(kind=HoldKind.OPAQUE, since=TODAY - timedelta(days=4))
    held = an_eater(plan={"state": DueState.HOLD, "due_on": None, "hold": opaque})

    assert nights_of(held)[0] == 14 - 4 + 1


def test_one_that_cannot_be_told_is_not_counted_and_told():
    dark = an_eater(plan={"state": DueState.CANNOT_TELL})

    told = ahead(dark)

    assert told.grades == ()
    assert silent(dark, TODAY) is Silent.UNTOLD
    assert told.because[0].why == "next feed not known"


def test_one_of_unknown_weight_and_meal_is_told():
    unknown = an_eater(now={"eaten_prey": None, "eaten_g": None})

    assert silent(unknown, TODAY) is Silent.GRADELESS
    assert ahead(unknown).because[0].why == "grade of none known"


def test_without_a_weight_the_grade_stays_and_says_so():
    told = grade(ahead(an_eater(), an_eater(now={"animal": 2})))

    assert told.because[-1].why == "grade as last eaten"
    assert told.because[-1].figures == {"animals": 2}


def test_without_a_hatch_day_the_weight_stays_and_says_so():
    eater = an_eater(
        now={"hatched_first": None, "weight_g": 112.0, "weighed_on": TODAY}, empty_g=112.0
    )

    assert basis_of(eater) is Basis.LAST_WEIGHT
    assert grade(ahead(eater)).because[-1].why == "grade by last weight"


def heavy(empty_g: float, **changed: Any) -> Eater:
    """Weighed today, at her last two meals one hopper each."""
    recent = (an_offer("2026-09-09"), an_offer("2026-09-16"))
    now = {"weight_g": empty_g, "weighed_on": TODAY} | changed.pop("now", {})
    return an_eater(now=now, empty_g=empty_g, recent=recent, **changed)


def test_at_a_steady_weight_nobody_goes_over():
    told = ahead(heavy(112.0))  # a hopper of 9 g is all of 8 per cent

    assert [each.prey for each in told.grades] == [HOPPER]
    assert grade(told).steps_out == ()


def test_a_meal_grows_with_the_weight_expected_and_the_day_is_named():
    """From 100 g at 900 days to 200 g at 1,000; between, log weight runs with log(age + 30).

    Her last two meals of 9 g are under three quarters of 8 per cent from 150 g on, and 15 g are
    then nearer than 9. 150 g: (930 + d) / 930 = (1030 / 930) ** (ln 1.5 / ln 2), d = 57.3. She
    eats every seven days, so the first meal after that is on day 63, at
    100 g × 2 ** (ln(993 / 930) / ln(1030 / 930)) = 156.0 g.
    """
    grades = (a_grade("hopper", 7.0, 9.0, 12.0), a_grade("weaner", 12.0, 15.0, 18.0))
    steep = weekly(growth={Sex.FEMALE: STEEP}, prey=grades)
    born = TODAY - timedelta(days=900)

    told = ahead(heavy(100.0, profile=steep, now={"hatched_first": born}))

    (step,) = grade(told, WEANER).steps_in
    assert (step.on - TODAY).days == 63
    assert step.because.figures["weight_g"] == pytest.approx(156.0, abs=0.1)
    assert step.because.figures["prey"] == HOPPER
    assert grade(told).steps_out == (step,)
    assert grade(told).items == (1.0,) * 9 + (0.0,) * 3
    assert grade(told, WEANER).grams == (0.0,) * 9 + (15.0,) * 3


def test_an_animal_stays_at_its_own_centile():
    """At z = 1 a log-normal weight is m times exp(s): 120 exp(0.2) g becomes 240 exp(0.1) g."""
    curve = a_curve(m_g=(4.0, 120.0, 240.0), s=(0.15, 0.2, 0.1))
    own_g = 120.0 * exp(0.2)

    grown = Curves().growth(curve, 365, own_g)

    assert grown(365) == pytest.approx(1.0)
    assert own_g * grown(1095) == pytest.approx(240.0 * exp(0.1))


def test_one_far_outside_the_curve_grows_as_one_at_three_deviations():
    curve = a_curve(m_g=(4.0, 120.0, 240.0), s=(0.15, 0.2, 0.1))

    grown = Curves().growth(curve, 365, 120.0 * exp(0.2 * 5))

    assert grown(1095) == pytest.approx(240.0 * exp(0.3) / (120.0 * exp(0.6)))


def test_where_the_sex_is_not_known_growth_lies_midway():
    """Doubling as a female, the same as a male: the square root of two."""
    growth = {Sex.FEMALE: a_curve(m_g=(4.0, 100.0, 200.0)), Sex.MALE: FLAT}
    growth[Sex.FEMALE] = replace(growth[Sex.FEMALE], age_days=(0.0, 900.0, 901.0))
    born = {"hatched_first": TODAY - timedelta(days=900), "sex": Sex.UNKNOWN}
    eater = heavy(100.0, profile=weekly(growth=growth), now=born)

    meals = list(meals_ahead(eater, (), TODAY, TODAY + timedelta(days=7), Curves()))

    assert [m.weight_g for m in meals] == [pytest.approx(100.0), pytest.approx(141.4, abs=0.1)]


def test_a_grade_never_counted_shows_its_demand_and_cannot_tell_more():
    told = grade(ahead(an_eater()))

    assert (told.state, told.left, told.stock) == (Stock.NOT_COUNTED, None, ())
    assert told.because[0].why == "grade never counted"


def test_ten_items_of_one_a_week_are_gone_in_the_eleventh_week_and_ordered_four_before():
    told = grade(ahead(an_eater(), bags=[a_bag(10)]))

    assert told.stock == (10, 9, 8, 7, 6, 5, 4, 3, 2, 1, 0, 0, 0)
    assert told.out_on == TODAY + timedelta(days=70)
    assert told.order_by == TODAY + timedelta(days=70 - 28)
    assert told.state is Stock.ORDER_SOON
    assert told.nightly[:3] == ((0, 10), (0, 9), (7, 8))
    assert told.lacking == 2


def test_below_lead_time_and_spare_it_is_ordered_now():
    assert grade(ahead(an_eater(), bags=[a_bag(4)])).state is Stock.ORDER_NOW
    assert grade(ahead(an_eater(), bags=[a_bag(5)])).state is Stock.ORDER_SOON


def test_an_order_is_told_up_to_the_last_day_of_the_picture():
    last, past = (grade(ahead(an_eater(), bags=[a_bag(n)])) for n in (15, 16))

    assert last.order_by == TODAY + timedelta(days=7 * 15 - 28)
    assert (past.order_by, past.state) == (None, Stock.ENOUGH)
    assert past.because[1].figures["weeks"] == BEYOND_WEEKS


def test_a_grade_that_nobody_eats_any_more_stands_there_while_some_is_left():
    told = ahead(an_eater(), bags=[a_bag(30, WEANER), a_bag(0, ADULT)])

    assert [each.prey for each in told.grades] == [HOPPER, WEANER]
    assert grade(told, WEANER).because[-1].why == "prey not planned"


def test_what_is_to_be_ordered_first_stands_first():
    eaters = [an_eater(), an_eater(now={"animal": 2, "eaten_prey": WEANER, "eaten_g": 15.0})]

    told = ahead(*eaters, bags=[a_bag(9), a_bag(2, WEANER)])

    assert [each.prey for each in told.grades] == [WEANER, HOPPER]


def test_a_grade_written_in_another_way_is_the_same_grade():
    told = ahead(an_eater(now={"eaten_prey": "Mouse  hopper"}))

    assert [each.prey for each in told.grades] == [HOPPER]


def test_a_bag_is_used_first_after_six_months_and_binned_after_twelve():
    assert use_by(a_bag(1, since=day("2026-01-01"))) == (day("2026-07-03"), day("2027-01-01"))


# --- what always holds -----------------------------------------------------------------------

grams = st.floats(20.0, 300.0)
some_eaters = st.lists(
    st.builds(
        lambda n, due, weight_g, chance, age: heavy(
            weight_g,
            due=due,
            refusal_chance=chance,
            profile=a_profile(),
            now={"animal": n, "hatched_first": TODAY - timedelta(days=age)},
        ),
        st.integers(1, 10**6),
        st.integers(-5, 40),
        grams,
        st.floats(0.0, 0.9),
        st.integers(20, 1500),
    ),
    min_size=1,
    max_size=5,
    unique_by=lambda eater: eater.now.animal,
)
SPARES = Spares(hatchling=figure(10), others=figure(5))


def items_of(told: Demand) -> dict[str, tuple[float, ...]]:
    return {each.prey: each.items for each in told.grades}


@settings(max_examples=40, deadline=None)
@given(some_eaters)
def test_the_items_of_all_are_the_sum_of_each(eaters: list[Eater]):
    together = items_of(ahead(*eaters, spares=SPARES))
    alone = [items_of(ahead(eater, spares=SPARES)) for eater in eaters]

    for prey, weeks in together.items():
        for week in range(WEEKS):
            each = sum(one[prey][week] for one in alone if prey in one)
            assert weeks[week] == pytest.approx(each)


@settings(max_examples=40, deadline=None)
@given(some_eaters, st.integers(0, 60))
def test_more_animals_never_need_less_nor_order_later(eaters: list[Eater], left: int):
    bags = [a_bag(left), a_bag(left, WEANER), a_bag(left, ADULT)]
    fewer = {g.prey: g for g in ahead(*eaters[1:], bags=bags, spares=SPARES).grades}
    more = {g.prey: g for g in ahead(*eaters, bags=bags, spares=SPARES).grades}

    assert set(fewer) <= set(more)
    for prey, less in fewer.items():
        pairs = zip(more[prey].items, less.items, strict=True)
        assert all(a >= b - 1e-9 for a, b in pairs)
        assert (more[prey].out_on or date.max) <= (less.out_on or date.max)
        assert (more[prey].order_by or date.max) <= (less.order_by or date.max)


@settings(max_examples=40, deadline=None)
@given(some_eaters, st.integers(0, 60))
def test_between_counts_the_stock_only_falls_and_groups_sum_up(eaters: list[Eater], left: int):
    for each in ahead(*eaters, bags=[a_bag(left)], spares=SPARES).grades:
        assert list(each.stock) == sorted(each.stock, reverse=True)
        assert all(rest >= 0 for rest in each.stock)
        for week, items in enumerate(each.items):
            assert items == pytest.approx(sum(weeks[week] for weeks in each.by_group.values()))
        assert each.a_week == pytest.approx(sum(each.items[:SOON_WEEKS]) / SOON_WEEKS)
