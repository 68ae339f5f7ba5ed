"""Feed nights from recurrence rules, and the night a due day falls to."""

import pytest

from keeper.rules.nights import feed_nights, next_night, snap
from tests.builders import day

WED, SAT, NEXT_WED = day("2026-09-23"), day("2026-09-26"), day("2026-09-30")
NIGHTS = (WED, SAT, NEXT_WED)


def test_two_rules_give_each_night_once() -> None:
    rules = ["FREQ=WEEKLY;BYDAY=WE", "FREQ=WEEKLY;BYDAY=WE,SA"]

    assert feed_nights(rules, WED, NEXT_WED) == NIGHTS


def test_every_second_week_means_the_same_weeks_whenever_it_is_asked() -> None:
    rule = ["FREQ=WEEKLY;INTERVAL=2;BYDAY=WE"]

    early = feed_nights(rule, day("2026-09-01"), day("2026-12-31"))
    late = feed_nights(rule, day("2026-09-10"), day("2026-12-31"))

    assert early[-len(late) :] == late


def test_a_house_without_rules_has_no_nights_and_every_day_serves() -> None:
    assert feed_nights([], WED, NEXT_WED) == ()
    assert snap(day("2026-09-24"), (), 1, 2) == day("2026-09-24")


def test_a_rule_may_bring_its_own_first_night() -> None:
    rule = ["DTSTART:20260923\nRRULE:FREQ=DAILY;INTERVAL=3;COUNT=2"]

    assert feed_nights(rule, day("2026-09-01"), day("2026-12-31")) == (WED, SAT)


@pytest.mark.parametrize(
    "rule",
    [
        "",
        "Wednesdays",
        "FREQ=FORTNIGHTLY",
        "FREQ=WEEKLY;BYDAY=XX",
        "FREQ=HOURLY",
        "FREQ=DAILY;INTERVAL=0",
        "FREQ=DAILY;INTERVAL=-2",
        "FREQ=DAILY;INTERVAL=",
        "FREQ=WEEKLY;COUNT=3",
        "FREQ=WEEKLY;UNTIL=soon",
        "DTSTART:2026\nFREQ=DAILY",
        "FREQ=WEEKLY;WKST=QQ",
        "FREQ=WEEKLY\x00",
    ],
)
def test_a_rule_that_cannot_be_read_is_named_in_one_sentence(rule: str) -> None:
    with pytest.raises(ValueError, match="is not a rule for feed nights such as") as told:
        feed_nights([rule], WED, NEXT_WED)

    assert repr(rule) in str(told.value)
    assert "\n" not in str(told.value)


def test_the_nearest_night_within_the_allowance_is_taken() -> None:
    assert snap(day("2026-09-24"), NIGHTS, 1, 2) == WED
    assert snap(day("2026-09-25"), NIGHTS, 1, 2) == SAT


def test_of_two_nights_as_near_the_earlier_is_taken() -> None:
    assert snap(day("2026-09-28"), NIGHTS, 2, 2) == SAT


def test_with_no_night_in_the_allowance_it_is_the_next_one() -> None:
    assert snap(day("2026-09-28"), NIGHTS, 1, 1) == NEXT_WED


def test_a_night_allowed_early_is_taken_when_the_next_is_too_late() -> None:
    assert snap(day("2026-09-27"), (SAT, day("2026-10-03")), 1, 2) == SAT


def test_past_the_last_night_known_the_day_itself_is_given() -> None:
    assert next_night(day("2026-10-01"), NIGHTS) == day("2026-10-01")


def test_an_until_day_is_the_last_feed_night() -> None:
    rule = ["FREQ=WEEKLY;BYDAY=WE;UNTIL=20260930"]

    assert feed_nights(rule, WED, day("2026-12-31")) == (WED, NEXT_WED)


def test_a_nearer_night_that_is_too_late_loses_to_one_allowed_early() -> None:
    assert snap(day("2026-09-24"), (day("2026-09-21"), SAT), 4, 1) == day("2026-09-21")
