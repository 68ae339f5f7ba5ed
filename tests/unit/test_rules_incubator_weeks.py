"""Clutches in the incubator week by week, counted by hand and day by day."""

from datetime import date, timedelta

from hypothesis import given
from hypothesis import strategies as st

from keeper.rules.incubator_weeks import Lain, lain_by_week, monday_of, mondays_round

MONDAY = date(2026, 11, 23)


def day(n: int) -> date:
    return MONDAY + timedelta(days=n)


def counts(*lain: Lain, weeks: int = 3) -> list[tuple[int, int]]:
    found = lain_by_week(lain, [day(7 * n) for n in range(weeks)])
    return [(week.sure, week.may) for week in found]


def test_a_clutch_counts_in_the_weeks_of_its_first_and_last_day() -> None:
    assert counts(Lain(first=day(6), sure=day(7), last=day(7))) == [(1, 0), (1, 0), (0, 0)]


def test_a_clutch_that_may_be_out_is_no_longer_sure() -> None:
    assert counts(Lain(first=day(-40), sure=day(6), last=day(14))) == [(1, 0), (0, 1), (0, 1)]


def test_eggs_that_are_not_laid_yet_only_may_lie_there() -> None:
    assert counts(Lain(first=day(8), sure=None, last=day(90))) == [(0, 0), (0, 1), (0, 1)]


def test_several_clutches_add_up_and_none_counts_nothing() -> None:
    sure, may = (
        Lain(first=day(0), sure=day(20), last=day(20)),
        Lain(first=day(9), sure=None, last=day(10)),
    )
    assert counts(sure, sure, may) == [(2, 0), (2, 1), (2, 0)]
    assert counts() == [(0, 0)] * 3


def test_the_weeks_of_a_calendar_begin_on_mondays_round_today() -> None:
    found = mondays_round(date(2026, 11, 29), 26, 26)

    assert (len(found), found[26]) == (53, MONDAY)
    assert {monday.weekday() for monday in found} == {0}
    assert monday_of(day(7)) == day(7)


DAYS = st.integers(-30, 40)


@given(st.lists(st.tuples(DAYS, st.none() | st.integers(0, 30), st.integers(0, 30)), max_size=6))
def test_weeks_are_what_counting_every_day_says(told: list[tuple[int, int | None, int]]) -> None:
    lain = []
    for first, sure, more in told:
        certain = None if sure is None else day(first + sure)
        lain.append(Lain(first=day(first), sure=certain, last=(certain or day(first + more))))

    for week in lain_by_week(lain, [day(7 * n) for n in range(-2, 3)]):
        here = [week.monday + timedelta(days=n) for n in range(7)]
        sure = [x for x in lain if x.sure and any(x.first <= d <= x.sure for d in here)]
        every = [x for x in lain if any(x.first <= d <= x.last for d in here)]
        assert (week.sure, week.may) == (len(sure), len(every) - len(sure))
