"""Days from laying to hatching at known temperatures, against what was measured and published.

Du and Ji 2008, Acta Zoologica Sinica (the journal from memory): eggs of Elaphe taeniura took
101.7 days at 22 C, 86.0 at 24, 66.3 at 27, 53.9 at 30 and 50.5 at 32.
Boback et al. 2012, as the Add-my-Pet collection cites it: eggs of house snakes took 60 days at
28 C.
Platt 1969, University of Kansas Publications, Museum of Natural History 18:253-420: eggs of the
western hognose took 49 to 63 days, 56 in the mean.
"""

from dataclasses import replace
from datetime import date, timedelta

import numpy as np
import pytest

from keeper.rules.clutches import PipWindow, pip_window
from keeper.store.species_files import load_profiles
from tests.builders import a_profile, figure, incubator_figures

PROFILES = load_profiles()
LAID = date(2026, 1, 1)
TAENIURA = {22.0: 101.7, 24.0: 86.0, 27.0: 66.3, 30.0: 53.9}
"""Degrees Celsius and days: the range in which 1/days rises straight with the temperature."""

HOUSE_SNAKE = (28.0, 60)
HOGNOSE_DAYS = (49, 56, 63)
RAT_SNAKE = a_profile(
    incubator=incubator_figures(
        low_c=24, high_c=30, hot_now_c=33, pip_days_least=53.9, pip_days_most=86.0
    )
)


def window(profile, temp_c: float) -> PipWindow:
    """Eggs that lay at one temperature until long after they hatched."""
    days = {LAID + timedelta(days=n): temp_c for n in range(200)}
    return pip_window(LAID, profile, days, LAID + timedelta(days=200))


def days_of(found: PipWindow) -> tuple[int, int]:
    return (found.first - LAID).days, (found.last - LAID).days


@pytest.mark.parametrize("profile", PROFILES.values(), ids=PROFILES)
def test_embryos_stand_still_where_the_published_line_meets_naught(profile):
    """Least squares of 1/days over 22 to 30 C meets naught at 13.25 C."""
    temps, days = np.array(list(TAENIURA)), np.array(list(TAENIURA.values()))
    slope, at_naught = np.polyfit(temps, 1 / days, 1)

    assert profile.clutch.still_c.value == pytest.approx(-at_naught / slope, abs=0.1)


@pytest.mark.parametrize(("temp_c", "took"), [(24.0, 86.0), (27.0, 66.3), (30.0, 53.9)])
def test_a_window_from_both_ends_of_a_range_holds_what_was_measured_in_it(temp_c, took):
    """Given only the days at 24 and at 30 C, those at 27 C are foretold within two days."""
    first, last = days_of(window(RAT_SNAKE, temp_c))

    assert first - 2 <= took <= last + 1
    assert last - first <= 4


def test_house_snakes_at_28_degrees_hatch_within_their_window():
    temp_c, took = HOUSE_SNAKE

    first, last = days_of(window(PROFILES["house_snake"], temp_c))

    assert first <= took <= last
    assert last - first < 20  # the usual days without any heat: 55 to 75


def test_hognoses_have_the_days_that_were_published():
    least, mean, most = HOGNOSE_DAYS
    eggs = PROFILES["western_hognose"].incubator
    middle_c = (eggs.low_c.value + eggs.high_c.value) / 2

    assert (eggs.pip_days_least.value, eggs.pip_days_most.value) == (least, most)
    first, last = days_of(window(PROFILES["western_hognose"], middle_c))
    assert first <= mean <= last


@pytest.mark.parametrize("profile", PROFILES.values(), ids=PROFILES)
def test_within_the_usual_heat_no_shipped_window_leaves_the_usual_days(profile):
    eggs = profile.incubator
    for temp_c in (eggs.low_c.value, eggs.high_c.value):
        found = window(profile, temp_c)

        assert found.usual[0] <= found.first <= found.last <= found.usual[1]


def test_a_heat_at_which_to_act_is_not_foretold_to_be_quicker():
    """At 32 C the eggs took 50.5 days where the straight line would have had 48."""
    capped = replace(RAT_SNAKE.incubator, hot_now_c=figure(31.0))
    profile = replace(RAT_SNAKE, incubator=capped)

    first, _ = days_of(window(profile, 32.0))

    assert first >= 50
