"""Eggs: each limit walked across by a series of readings, upwards and down, and its release."""

from datetime import UTC, datetime, timedelta

import pytest

from keeper.husbandry.events import Heat, Zone
from keeper.husbandry.when import at_instant
from keeper.reports.words import because_text
from keeper.rules.heat import HeatVerdict, heat_verdicts
from keeper.rules.heat_limits import EggLimits, egg_limits
from keeper.store.species_files import load_profiles
from tests.builders import a_profile, incubator_figures

BEGIN = datetime(2026, 9, 23, 6, 0, tzinfo=UTC)
STEP = 5
PROFILES = load_profiles()
HOUSE = PROFILES["house_snake"].incubator
PYTHON = PROFILES["ball_python"].incubator
HOUSE_LIMITS = egg_limits([HOUSE])
PYTHON_LIMITS = egg_limits([PYTHON])


def series(*spells: tuple[float, float]) -> list[Heat]:
    """Minutes and degrees one after another, read each five minutes."""
    found: list[Heat] = []
    for minutes, temp_c in spells:
        for _ in range(round(minutes / STEP)):
            at = BEGIN + timedelta(minutes=STEP * len(found))
            found.append(
                Heat(place="box", happened=at_instant(at), zone=Zone.INCUBATOR, temp_c=temp_c)
            )
    return found


def said(limits: EggLimits | None, *spells: tuple[float, float]) -> HeatVerdict:
    readings = series(*spells)
    now_at = readings[-1].happened.at
    (verdict,) = heat_verdicts(readings, a_profile(), now_at, eggs=limits)
    return verdict


def told(limits: EggLimits | None, *spells: tuple[float, float]) -> tuple[str, str]:
    verdict = said(limits, *spells)
    return verdict.state, verdict.urgency


def raised_after(limits: EggLimits | None, temp_c: float, wanted_c: float, urgency: str) -> float:
    """Minutes beyond a limit, first to last reading, until it is so urgent; inf: never in a day."""
    for minutes in range(STEP, 24 * 60, STEP):
        if told(limits, (60, wanted_c), (minutes, temp_c))[1] == urgency:
            return minutes - STEP
    return float("inf")


@pytest.mark.parametrize(
    ("limits", "wanted_c", "temp_c", "urgency", "minutes"),
    [
        (HOUSE_LIMITS, 28, 29.4, "today", float("inf")),
        (HOUSE_LIMITS, 28, 29.6, "today", 120),
        (HOUSE_LIMITS, 28, 26.1, "today", float("inf")),
        (HOUSE_LIMITS, 28, 25.9, "today", 120),
        (HOUSE_LIMITS, 28, 30.4, "now", float("inf")),
        (HOUSE_LIMITS, 28, 30.6, "now", 20),
        (HOUSE_LIMITS, 28, 22.1, "now", float("inf")),
        (HOUSE_LIMITS, 28, 21.9, "now", 360),
        (PYTHON_LIMITS, 31.5, 32.7, "today", float("inf")),
        (PYTHON_LIMITS, 31.5, 32.9, "today", 120),
        (PYTHON_LIMITS, 31.5, 29.9, "today", 120),
        (PYTHON_LIMITS, 31.5, 32.95, "now", float("inf")),
        (PYTHON_LIMITS, 31.5, 33.1, "now", 20),
        (PYTHON_LIMITS, 31.5, 28.1, "now", float("inf")),
        (PYTHON_LIMITS, 31.5, 27.9, "now", 360),
    ],
)
def test_beyond_each_limit_of_the_eggs_it_is_urgent_after_its_time_and_not_before(
    limits: EggLimits, wanted_c: float, temp_c: float, urgency: str, minutes: float
) -> None:
    assert raised_after(limits, temp_c, wanted_c, urgency) == minutes


@pytest.mark.parametrize(
    ("beyond_c", "minutes", "just_inside_c", "well_inside_c", "urgency"),
    [
        (30.6, 60, 29.9, 29.4, "now"),
        (21.9, 400, 22.6, 26.1, "now"),
        (29.8, 180, 28.9, 28.7, "today"),
        (25.5, 180, 26.6, 26.8, "today"),
    ],
)
def test_an_alarm_of_the_eggs_stands_until_a_quarter_of_an_hour_well_inside_its_limit(
    beyond_c: float, minutes: float, just_inside_c: float, well_inside_c: float, urgency: str
) -> None:
    beyond = ((60, 28), (minutes, beyond_c))

    assert told(HOUSE_LIMITS, *beyond)[1] == urgency
    assert told(HOUSE_LIMITS, *beyond, (120, just_inside_c))[1] == urgency
    assert told(HOUSE_LIMITS, *beyond, (15, well_inside_c))[1] == urgency
    assert told(HOUSE_LIMITS, *beyond, (20, well_inside_c))[1] != urgency


def test_an_alarm_at_once_that_is_over_leaves_what_is_today_s_concern() -> None:
    after_heat = ((60, 28), (60, 31), (120, 29.7))

    assert told(HOUSE_LIMITS, *after_heat) == ("too hot", "today")


def test_a_python_s_incubator_would_cook_the_eggs_of_a_house_snake() -> None:
    assert told(PYTHON_LIMITS, (120, 31.5)) == ("within limits", "noted")
    assert told(HOUSE_LIMITS, (120, 31.5)) == ("too hot", "now")


def test_of_two_kinds_of_eggs_only_what_is_wrong_for_both_is_told_and_it_is_said_so() -> None:
    both = egg_limits([HOUSE, PYTHON, HOUSE])

    assert both is not None and both.kinds == 2
    assert told(both, (600, 31.5)) == ("within limits", "noted")
    assert told(both, (600, 27.5)) == ("within limits", "noted")
    assert told(both, (60, 33.1)) == ("too hot", "now")
    assert told(both, (400, 21.9)) == ("too cold", "now")
    assert "2 kinds" in because_text(said(both, (60, 33.1)).because)


def test_the_keeper_s_own_limits_stand_in_place_of_the_usual_and_what_they_may_be_off() -> None:
    own = egg_limits([HOUSE], (27.5, 28.0))

    assert told(own, (150, 28.2)) == ("too hot", "today")
    assert told(HOUSE_LIMITS, (150, 28.2)) == ("within limits", "noted")
    assert told(own, (60, 30.6)) == ("too hot", "now")


def test_own_limits_tell_of_two_kinds_whose_eggs_lie_there() -> None:
    own = egg_limits([HOUSE, PYTHON], (31.0, 32.0))

    assert own is not None
    assert (own.kinds, own.hot_c, own.cold_c) == (1, 33.0, 28.0)


def test_a_keeper_who_wants_it_warmer_is_not_alarmed_by_what_was_wanted() -> None:
    own = egg_limits([HOUSE], (29.0, 31.0))

    assert told(own, (120, 30.8)) == ("within limits", "noted")
    assert told(own, (60, 31.1)) == ("too hot", "now")


def test_a_span_narrower_than_two_releases_is_left_for_its_middle() -> None:
    own = egg_limits([HOUSE], (28.0, 28.4))

    assert told(own, (60, 28.2), (180, 28.6), (20, 28.2)) == ("within limits", "noted")
    assert told(own, (60, 28.2), (180, 28.6), (20, 28.3)) == ("too hot", "today")


def test_without_any_eggs_an_incubator_has_no_limits() -> None:
    assert egg_limits([]) is None
    assert told(None, (60, 40))[0] == "cannot tell"


def test_a_figure_that_the_keeper_changed_is_the_one_that_counts() -> None:
    changed = egg_limits([incubator_figures(hot_now_c=31.5)])

    assert raised_after(changed, 31.4, 28, "now") == float("inf")
    assert raised_after(changed, 31.6, 28, "now") == 20


def test_one_reading_typed_by_hand_is_enough_to_act_on() -> None:
    assert told(HOUSE_LIMITS, (5, 30.6)) == ("too hot", "now")
    assert told(HOUSE_LIMITS, (5, 21.0)) == ("too cold", "now")
