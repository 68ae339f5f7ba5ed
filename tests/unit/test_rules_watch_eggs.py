"""Eggs: due to pip, the last still in, and balances that do not close."""

from datetime import UTC, datetime, timedelta

import pytest

from keeper.husbandry.care import EggFate, Eggs
from keeper.husbandry.events import Clutch
from keeper.husbandry.when import at_instant, on_day
from keeper.rules.watch_eggs import ClutchFacts, egg_lines
from keeper.rules.watch_facts import Severity
from tests.builders import a_profile, day

TODAY = day("2026-09-23")
NOW = datetime(2026, 9, 23, 20, tzinfo=UTC)
FIGURES = a_profile().incubator  # pipping usual from day 55 to 70
VEINED, PIPPED, HATCHED, FAILED, DIED = EggFate


def ago(days: int):
    return TODAY - timedelta(days=days)


def eggs(days: int, fate: EggFate, count: int) -> Eggs:
    return Eggs(animal=1, happened=on_day(ago(days)), fate=fate, count=count)


def clutch(laid: int, *told: Eggs, good: int = 8, young: tuple[int, ...] = (), figures=FIGURES):
    return ClutchFacts(
        name="26-9",
        dam=1,
        laid=Clutch(animal=1, happened=on_day(ago(laid)), good=good, slugs=2, code="26-9"),
        told=told,
        numbered=[ago(days) for days in young],
        figures=figures,
    )


def line(*given, now=NOW, **also):
    found = egg_lines([clutch(*given, **also)], now)
    return found[0] if found else None


def why(*given, **also) -> str | None:
    found = line(*given, **also)
    return found.because[0].why if found else None


@pytest.mark.parametrize(("days", "told"), [(54, None), (55, "due to pip"), (84, "due to pip")])
def test_a_clutch_is_due_to_pip_from_the_first_usual_day_of_its_kind(days, told):
    assert why(days) == told


def test_due_to_pip_is_todays_and_names_the_days_that_are_usual():
    found = line(60)

    assert (found.kind, found.severity, found.place) == ("due to pip", Severity.TODAY, "26-9")
    assert (found.since, found.members) == (ago(5), (1,))
    assert found.because[0].figures["still_in"] == 8


@pytest.mark.parametrize("told", [eggs(1, PIPPED, 2), eggs(1, HATCHED, 8)])
def test_what_pipped_or_hatched_ends_the_line(told):
    assert line(60, told) is None


def test_eggs_that_failed_leave_the_others_due():
    assert line(60, eggs(40, FAILED, 3)).because[0].figures["still_in"] == 5
    assert line(60, eggs(40, FAILED, 8)) is None


def test_young_that_were_written_in_end_it_as_well():
    assert line(60, young=(1,) * 8) is None


def test_a_kind_without_figures_is_not_judged_by_days():
    assert why(60, figures=None) is None


def out_at(hours: float, fate: EggFate = HATCHED, count: int = 3) -> Eggs:
    happened = at_instant(NOW - timedelta(hours=hours))
    return Eggs(animal=1, happened=happened, fate=fate, count=count)


@pytest.mark.parametrize(("hours", "told"), [(35, None), (36, "clutch-mates still in")])
def test_the_others_are_asked_after_36_hours_after_the_first_was_out(hours, told):
    assert why(60, out_at(hours)) == told


@pytest.mark.parametrize(("hours", "told"), [(47, None), (48, "pipped and none out")])
def test_one_that_slit_its_egg_should_be_out_within_two_days(hours, told):
    assert why(60, out_at(hours, PIPPED)) == told


def test_slow_hatching_is_todays_and_warns_of_cutting():
    found = line(60, out_at(40))

    assert (found.kind, found.severity) == ("hatching slow", Severity.TODAY)
    assert found.because[1].why == "no cutting but by experienced hands"
    assert found.because[0].figures["still_in"] == 5


def test_when_all_are_out_or_failed_nothing_is_slow():
    assert why(60, out_at(40), out_at(2, count=4), out_at(1, FAILED, 1)) is None


def test_more_out_than_good_eggs_does_not_balance():
    assert why(62, eggs(1, HATCHED, 8), eggs(1, FAILED, 1)) == "more out than good eggs"
    assert why(62, young=(1,) * 9) == "more out than good eggs"


def test_more_young_than_hatched_does_not_balance():
    assert why(62, eggs(2, HATCHED, 4), eggs(2, FAILED, 4), young=(2,) * 5) == (
        "more young than hatched"
    )
    assert why(62, eggs(2, HATCHED, 4), eggs(2, FAILED, 4), young=(2,) * 4) is None


def test_young_that_died_before_a_number_are_in_the_balance():
    told = (eggs(2, HATCHED, 8), eggs(1, DIED, 1))

    assert why(62, *told, young=(2,) * 7) is None
    assert why(62, *told, young=(2,) * 8) == "more young than hatched"


def test_eggs_of_which_nothing_is_told_do_not_balance_two_weeks_after_the_last_usual_day():
    assert why(85) == "good eggs untold"
    assert line(85).severity is Severity.THIS_WEEK
    assert why(80, eggs(15, HATCHED, 6)) == "good eggs untold"
    assert why(80, eggs(14, HATCHED, 6)) == "clutch-mates still in"
    assert why(80, eggs(15, HATCHED, 6), eggs(15, FAILED, 2)) is None


def test_young_need_a_page_within_a_month():
    told = (eggs(31, HATCHED, 6), eggs(31, FAILED, 2))

    assert why(95, *told, young=(31,) * 4) == "young without a number"
    assert why(95, *told, eggs(20, DIED, 2), young=(31,) * 4) is None


def test_of_a_clutch_of_more_than_a_year_ago_nothing_is_asked():
    assert why(365) == "good eggs untold"
    assert why(366) is None
