"""A meal that stands in the book twice is asked about."""

from datetime import timedelta

from keeper.rules.alerts import watch
from keeper.rules.watch_facts import HouseFacts, Severity, WatchFacts
from tests.builders import a_profile, an_animal, day

TODAY = day("2026-09-23")


def lines(*days_ago: int):
    now = an_animal(weighed_on=TODAY, weight_g=300.0, eaten_on=TODAY)
    meals = [(TODAY - timedelta(days=days), 12.0) for days in days_ago]
    found = watch([WatchFacts(now=now, profile=a_profile(), meals=meals)], HouseFacts(), TODAY)
    return [line for line in found if line.kind == "twin entries"]


def test_two_meals_in_one_night_are_asked_about_this_week():
    (line,) = lines(20, 9, 9, 3)

    assert (line.severity, line.since) == (Severity.THIS_WEEK, TODAY - timedelta(days=9))
    assert line.because[0].figures["count"] == 2


def test_meals_of_different_nights_are_no_twins():
    assert lines(16, 9, 8, 3) == []


def test_after_a_fortnight_nothing_is_asked():
    assert lines(14, 14) != []
    assert lines(15, 15) == []
