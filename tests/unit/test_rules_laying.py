"""When a female may lay, sign by sign; days worked by hand."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from keeper.husbandry.events import HoldKind
from keeper.husbandry.reasons import because
from keeper.rules.absence import Absence
from keeper.rules.breeding import Gate
from keeper.rules.laying import (
    LayingSigns,
    LayingWindow,
    Season,
    falling_into,
    kept_sperm,
    laying_seasons,
    recovering,
)
from keeper.rules.sires import Exposure
from tests.builders import a_profile, all_holds, clutch_figures, hold_figures

TODAY = date(2026, 11, 25)
HOLDS = {**all_holds(), HoldKind.PRE_LAY: hold_figures(renew_after_days=18)}
PROFILE = a_profile(clutch=clutch_figures(sire_days_least=30, sire_months_most=24), holds=HOLDS)


def ago(days: int) -> date:
    return TODAY - timedelta(days=days)


def met(days: int, until: int | None = None, how: str = "lock") -> Exposure:
    last = ago(days if until is None else until)
    return Exposure(male=7, first=ago(days), last=last, how=how)  # type: ignore[arg-type]


def seasons(**signs: object) -> tuple[Season, ...]:
    return laying_seasons(LayingSigns(**signs), PROFILE, TODAY)  # type: ignore[arg-type]


def now(**signs: object) -> tuple[LayingWindow, ...]:
    return seasons(**signs)[-1].windows


def days(window: LayingWindow) -> tuple[date, date | None]:
    return window.first, window.last


def test_without_a_sign_no_window_is_told() -> None:
    assert seasons() == (Season(since=None, laid_on=None, windows=()),)
    assert seasons()[0].expected is None


def test_a_meeting_gives_a_first_day_and_no_last() -> None:
    (window,) = now(met=[met(40)])

    assert (window.sign, window.seen_on) == ("meeting", ago(40))
    assert days(window) == (ago(10), None)
    assert window.because == because("may lay after a meeting", since=ago(40), days=30, months=24)


def test_of_several_meetings_the_first_counts() -> None:
    assert now(met=[met(20), met(40), met(70, 60, "tub")])[0].first == ago(40)


def test_a_meeting_of_which_no_sperm_is_kept_any_more_is_none() -> None:
    assert now(met=[met(732)]) == ()
    assert len(now(met=[met(731)])) == 1


def test_held_as_gravid_replaces_the_meeting_and_still_has_no_last_day() -> None:
    meeting, gravid = now(met=[met(45)], gravid=[(ago(6), None)])

    assert (meeting.sign, gravid.sign) == ("meeting", "gravid")
    assert days(gravid) == (ago(6), None)


def test_eggs_come_no_sooner_than_the_first_male_allows_though_she_is_held_as_gravid() -> None:
    assert now(met=[met(20)], gravid=[(ago(2), None)])[-1].first == TODAY + timedelta(days=10)


def test_kept_sperm_of_the_season_before_lets_a_gravid_one_lay_at_once() -> None:
    found = now(met=[met(300), met(20)], laid=[ago(200)], gravid=[(ago(2), None)])

    assert [window.first for window in found] == [TODAY + timedelta(days=10), ago(2)]


def test_a_hold_as_gravid_that_was_ended_says_nothing_more() -> None:
    assert now(gravid=[(ago(20), ago(5))]) == ()
    assert now(gravid=[(ago(20), TODAY)]) == ()
    assert len(now(gravid=[(ago(20), TODAY + timedelta(days=1))])) == 1


def test_the_pre_lay_shed_gives_both_days_and_replaces_all_before_it() -> None:
    found = now(met=[met(45)], gravid=[(ago(15), None)], pre_lay=[ago(3)])

    assert [window.sign for window in found] == ["meeting", "gravid", "pre-lay shed"]
    assert days(found[-1]) == (ago(3), ago(3) + timedelta(days=18))
    assert seasons(pre_lay=[ago(3)])[-1].expected == found[-1]


def test_a_profile_without_that_figure_has_no_last_day_either() -> None:
    bare = a_profile(holds={**HOLDS, HoldKind.PRE_LAY: hold_figures()})
    (season,) = laying_seasons(LayingSigns(pre_lay=[ago(3)]), bare, TODAY)

    assert days(season.windows[0]) == (ago(3), None)
    assert season.windows[0].because.why == "may lay after the pre-lay shed, no latest day"


def test_a_hold_that_ended_after_the_shed_was_there_before_it() -> None:
    found = now(gravid=[(ago(20), ago(2))], pre_lay=[ago(3)])

    assert [window.sign for window in found] == ["gravid", "pre-lay shed"]


def test_each_clutch_ends_a_season_and_the_next_begins_without_signs() -> None:
    first, second, third = seasons(
        met=[met(200), met(90)], pre_lay=[ago(150), ago(55)], laid=[ago(140), ago(49)]
    )

    assert (first.since, first.laid_on) == (None, ago(140))
    assert (second.since, second.laid_on) == (ago(140), ago(49))
    assert (third.since, third.laid_on, third.windows) == (ago(49), None, ())
    assert [window.sign for window in second.windows] == ["meeting", "pre-lay shed"]
    assert second.expected is None


def test_a_male_who_stayed_with_her_counts_anew_from_the_day_after_she_laid() -> None:
    assert now(met=[met(200, 0, "tub")], laid=[ago(49)])[0].seen_on == ago(48)


def kept(**signs: object) -> tuple[date, date] | None:
    found = kept_sperm(LayingSigns(**signs), PROFILE, TODAY)  # type: ignore[arg-type]
    return found[:2] if found else None


def test_after_a_clutch_she_may_lay_again_from_kept_sperm_for_the_months_of_the_profile() -> None:
    """24 months of 30.44 days are 731 days from the last meeting on."""
    until = ago(90) + timedelta(days=731)

    assert kept(met=[met(200), met(90)], laid=[ago(140), ago(49)]) == (ago(49), until)
    assert kept(met=[met(731)], laid=[ago(49)]) == (ago(49), TODAY)


def test_kept_sperm_is_not_told_of_one_that_never_laid_met_a_male_since_or_has_none_left() -> None:
    assert kept(met=[met(90)]) is None
    assert kept(met=[met(90), met(20)], laid=[ago(49)]) is None
    assert kept(met=[met(732)], laid=[ago(49)]) is None
    assert kept(laid=[ago(49)]) is None


def test_why_she_is_not_back_from_her_eggs_is_told_and_no_other_gate() -> None:
    meals = because("too few kept meals", have=2, need=5)
    shed = because("not shed since laying", clutch_on=ago(49))
    gates = [
        Gate(name="age", state="not yet", missing=because("too young", age_days=1, need_days=2)),
        Gate(name="meals", state="not yet", missing=meals),
        Gate(name="shed", state="not yet", missing=shed),
        Gate(name="weight", state="met", missing=because("heavy enough", weight_g=1, need_g=1)),
    ]

    assert recovering(gates) == (meals, shed)
    assert recovering(gates[:1]) == ()


AWAY = Absence(TODAY + timedelta(days=5), TODAY + timedelta(days=9), who="Ada")


@pytest.mark.parametrize(
    ("first", "last", "falls"),
    [(-9, 4, 0), (-9, 5, 1), (9, 12, 1), (10, 12, 0), (-9, None, 1), (10, None, 0)],
)
def test_days_fall_into_an_absence_when_they_share_one_day(
    first: int, last: int | None, falls: int
) -> None:
    end = TODAY + timedelta(days=last) if last is not None else None
    found = falling_into("pipping", TODAY + timedelta(days=first), end, [AWAY], TODAY)

    assert len(found) == falls


def test_an_absence_that_is_over_is_not_told_and_nobody_covering_is() -> None:
    over = Absence(ago(9), ago(1))
    alone = Absence(TODAY, TODAY)
    (why,) = falling_into("laying", ago(20), None, [over, alone], TODAY)

    assert why == because("laying falls into an absence", first=TODAY, last=TODAY, who=None)


BACK = st.integers(0, 900)


@given(
    meetings=st.lists(BACK, max_size=4),
    gravid=st.lists(BACK, max_size=3),
    sheds=st.lists(BACK, max_size=3),
    laid=st.lists(BACK, max_size=3),
)
def test_no_sign_ever_moves_the_last_day_out_and_a_window_never_ends_before_it_begins(
    meetings: list[int], gravid: list[int], sheds: list[int], laid: list[int]
) -> None:
    found = seasons(
        met=[met(n) for n in meetings],
        gravid=[(ago(n), None) for n in gravid],
        pre_lay=[ago(n) for n in sheds],
        laid=[ago(n) for n in laid],
    )

    assert len(found) == len(set(laid)) + 1
    for season in found:
        lasts = [window.last or date.max for window in season.windows]
        assert lasts == sorted(lasts, reverse=True)
        for window in season.windows:
            assert window.first <= (window.last or date.max)
            assert season.since is None or window.seen_on > season.since
