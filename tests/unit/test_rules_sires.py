"""Odds over the males that were written with a female; weights worked by hand."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from keeper.rules.sires import Exposure, candidate_sires, cannot_tell
from tests.builders import clutch_figures

LAID = date(2026, 9, 1)
FIGURES = clutch_figures(sire_days_least=30, sire_months_most=24)


def met(male: int, days: int, how: str = "paired", *, until: int | None = None) -> Exposure:
    """*days* before laying, to *until* days before."""
    last = LAID - timedelta(days=days if until is None else until)
    return Exposure(male=male, first=LAID - timedelta(days=days), last=last, how=how)


def odds(*exposures: Exposure, mature_on: date | None = None) -> dict[int, float]:
    found = candidate_sires(exposures, LAID, FIGURES, mature_on)
    return {each.male: each.odds for each in found}


def test_a_lock_weighs_eight_a_pairing_three_and_a_shared_tub_one() -> None:
    """All on the latest useful day: 8 + 3 + 1 = 12."""
    found = odds(met(1, 30, "lock"), met(2, 30), met(3, 30, "tub"))

    assert found == pytest.approx({1: 8 / 12, 2: 3 / 12, 3: 1 / 12})


def test_what_was_seen_weighs_half_after_sixty_days() -> None:
    """30 and 90 days before laying: 60 days apart, so 2 to 1."""
    assert odds(met(1, 30), met(2, 90)) == pytest.approx({1: 2 / 3, 2: 1 / 3})


def test_one_that_came_too_late_to_sire_these_eggs_is_none_of_them() -> None:
    assert odds(met(1, 29), met(2, 30)) == {2: 1.0}


def test_a_tub_shared_until_laying_counts_to_the_latest_useful_day() -> None:
    assert odds(met(1, 200, "tub", until=0), met(2, 30, "tub")) == {1: 0.5, 2: 0.5}


def test_eight_months_after_the_last_pairing_kept_sperm_is_told_not_denied() -> None:
    (found,) = candidate_sires([met(7, 240, "lock")], LAID, FIGURES)

    assert (found.male, found.odds) == (7, 1.0)
    whys = [why.why for why in found.because]
    assert whys == ["lock seen before laying", "after so long from kept sperm"]
    assert found.because[0].figures["days"] == 240


def test_beyond_the_months_of_the_profile_nobody_counts_and_it_cannot_be_told() -> None:
    assert odds(met(1, 735)) == {}
    assert cannot_tell(FIGURES).figures == {"months": 24}


def test_before_she_could_be_mated_nobody_counts() -> None:
    mature_on = LAID - timedelta(days=100)

    assert odds(met(1, 101), met(2, 100), mature_on=mature_on) == {2: 1.0}


_MET = st.builds(
    met,
    st.integers(1, 4),
    st.integers(0, 900),
    st.sampled_from(["lock", "paired", "tub"]),
)


@given(st.lists(_MET, max_size=10))
def test_odds_are_shares_of_one_and_the_likeliest_stands_first(exposures) -> None:
    found = candidate_sires(exposures, LAID, FIGURES)

    assert not found or sum(each.odds for each in found) == pytest.approx(1.0)
    assert [each.odds for each in found] == sorted((e.odds for e in found), reverse=True)
    assert all(0 < each.odds <= 1 and each.because for each in found)
