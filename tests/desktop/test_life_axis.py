"""One axis for a whole life: where days lie, how the view moves and zooms, how weights scale."""

from datetime import date, timedelta
from itertools import pairwise

import pytest
from PySide6.QtCore import QRectF

from keeper.desktop.widgets.growth_forecast import Fan, words_end
from keeper.desktop.widgets.growth_plot import weight_scale
from keeper.desktop.widgets.life_axis import TimeAxis
from keeper.desktop.widgets.life_canvas import Free
from keeper.desktop.widgets.life_view import view_of

HATCHED, TODAY, LAST = date(2024, 3, 18), date(2026, 11, 25), date(2027, 10, 1)
PLOT = QRectF(100, 20, 800, 400)


def an_axis(first=HATCHED, last=LAST):
    return TimeAxis(first=first, last=last, left=130.0, right=1110.0)


def a_view(cursor=TODAY):
    return view_of(HATCHED, LAST, TODAY, cursor)


@pytest.mark.parametrize("day", [HATCHED, date(2025, 2, 28), TODAY, LAST])
def test_a_place_on_the_axis_names_the_day_that_lies_there(day):
    axis = an_axis()

    assert axis.day_at(axis.x(day)) == day


def test_beyond_the_axis_lies_its_last_day():
    assert an_axis().day_at(5000) == LAST
    assert an_axis().day_at(-5000) == HATCHED


@pytest.mark.parametrize("days", [7, 31, 92, 365, 1290, 9000])
def test_names_on_the_axis_never_crowd(days):
    axis = an_axis(TODAY - timedelta(days=days), TODAY)

    places = [axis.x(tick.day) for tick in axis.ticks(50)]

    assert 2 <= len(places) <= 20
    assert all(right - left >= 46 for left, right in pairwise(places))


def test_each_year_is_named_once_and_a_week_names_its_days():
    years = [tick.year for tick in an_axis().ticks(50) if tick.year]
    week = an_axis(date(2026, 12, 28), date(2027, 1, 4)).ticks(50)

    assert years == ["2024", "2025", "2026", "2027"]
    assert [tick.words for tick in week][:2] == ["28\u00a0Dec", "29\u00a0Dec"]
    assert [tick.year for tick in week if tick.year] == ["2026", "2027"]


def test_the_cursor_stays_within_the_life():
    assert a_view().by_days(-5000).cursor == HATCHED
    assert a_view().by_months(600).cursor == LAST


def test_a_month_is_a_calendar_month():
    assert a_view(date(2026, 1, 31)).by_months(1).cursor == date(2026, 2, 28)


def test_the_cursor_goes_from_entry_to_entry_and_stays_at_the_last():
    days = [date(2026, 5, 1), date(2026, 6, 1)]
    view = a_view(date(2026, 5, 20))

    assert view.to_event(days, 1).cursor == days[1]
    assert view.to_event(days, -1).cursor == days[0]
    assert view.to_event(days, 1).to_event(days, 1).cursor == days[1]


def test_zoom_goes_in_steps_from_the_life_to_a_week_and_back():
    view, spans = a_view(), []
    for _ in range(12):
        view = view.zoomed(1)
        spans.append(view.span_days)
    out = view
    for _ in range(12):
        out = out.zoomed(-1)

    assert spans[:8] == [730, 365, 183, 92, 31, 14, 7, 7]
    assert view.first <= view.cursor <= view.last
    assert out.whole


def test_a_cursor_that_leaves_the_view_takes_it_along():
    near = a_view().zoomed(1).zoomed(1)

    moved = near.by_months(-14)

    assert moved.first <= moved.cursor <= moved.last
    assert moved.span_days == near.span_days
    assert near.by_days(-1).first == near.first


def test_a_later_forecast_lengthens_the_whole_view_and_leaves_a_near_one():
    near = a_view().zoomed(1).zoomed(1)
    later = LAST + timedelta(days=200)

    assert a_view().reaching(later).whole
    assert (near.reaching(later).first, near.reaching(later).last) == (near.first, near.last)


def test_equal_ratios_are_equal_distances():
    scale = weight_scale([3.0, 400.0], PLOT)

    one, other = scale.y(5) - scale.y(10), scale.y(100) - scale.y(200)

    assert one == pytest.approx(other)
    assert PLOT.top() < scale.y(400) < scale.y(3) < PLOT.bottom()


@pytest.mark.parametrize("weights", [[3.0, 400.0], [724.0, 731.0], [82.0], [2.1, 2.4], []])
def test_any_weights_have_round_figures_beside_them(weights):
    ticks = weight_scale(weights, PLOT).ticks()

    assert 3 <= len(ticks) <= 12
    assert ticks == sorted(ticks)


def a_fan(median):
    return Fan(start=TODAY, start_g=80.0, target_g=200.0, median=median)


@pytest.mark.parametrize("median", [lambda day: None, lambda day: 100.0 + (day - TODAY).days])
def test_every_edge_of_the_fan_begins_at_her_weight_and_ends_at_the_target(median):
    path = a_fan(median).path_to(LAST)

    assert path[0] == (TODAY, pytest.approx(80.0))
    assert path[-1] == (LAST, pytest.approx(200.0))
    assert [grams for _, grams in path] == sorted(grams for _, grams in path)


def test_the_fan_bends_as_the_expected_curve_does():
    slowing = a_fan(lambda day: 300.0 - 200.0 * 0.99 ** (day - TODAY).days)
    even = a_fan(lambda day: None)

    middle = len(even.path_to(LAST)) // 2
    assert slowing.path_to(LAST)[middle][1] > 1.1 * even.path_to(LAST)[middle][1]


def test_a_name_finds_no_room_where_something_stands():
    lane = Free(0, 100)
    lane.take(40, 50)

    assert not lane.claim(45, 60)
    assert not lane.claim(90, 101)
    assert lane.claim(50, 90)
    assert not lane.claim(80, 85)


@pytest.mark.parametrize(
    ("beside", "ends"), [(400.0, 400.0), (900.0, 590.0), (20.0, 160.0)], ids=str
)
def test_a_forecast_is_told_within_the_plot_wherever_its_day_lies(beside, ends):
    assert words_end(QRectF(50, 0, 550, 300), beside, 100.0, 10.0) == ends
