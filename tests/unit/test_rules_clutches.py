"""The balance of a clutch, its pip window, and what comes next; numbers worked by hand."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from keeper.husbandry.care import EggFate, Eggs, EggsPlaced
from keeper.husbandry.events import Clutch
from keeper.husbandry.when import on_day
from keeper.reports.words import sentence
from keeper.rules.clutches import CAUTIONS, Young, balance, next_step, pip_window
from keeper.rules.watch_eggs import ClutchFacts
from tests.builders import a_profile, clutch_figures, incubator_figures

LAID = date(2026, 9, 1)
HOUSE = a_profile(
    incubator=incubator_figures(
        low_c=27, high_c=28.5, hot_now_c=30.5, pip_days_least=55, pip_days_most=75
    )
)
FIGURES = clutch_figures()


def a_clutch(
    good: int = 8,
    slugs: int = 0,
    told: tuple[tuple[EggFate, int, int], ...] = (),
    young: tuple[int, ...] = (),
) -> ClutchFacts:
    """told: fate, count and days after laying; young: days after laying on which each hatched."""
    return ClutchFacts(
        name="26-9",
        dam=1,
        laid=Clutch(animal=1, happened=on_day(LAID), good=good, slugs=slugs, code="26-9"),
        told=[
            Eggs(animal=1, happened=on_day(after(days)), fate=fate, count=count)
            for fate, count, days in told
        ],
        numbered=[after(days) for days in young],
        young=list(range(10, 10 + len(young))),
    )


def after(days: int) -> date:
    return LAID + timedelta(days=days)


def heat(temp_c: float, days: int) -> dict[date, float]:
    return {after(n): temp_c for n in range(days)}


def test_the_balance_is_that_of_the_keepers_sheet() -> None:
    """9 laid, 1 slug, 8 good; 1 failed, 6 hatched, 1 still in; 1 dead, 3 numbered, 2 not yet."""
    told = ((EggFate.FAILED, 1, 20), (EggFate.HATCHED, 6, 60), (EggFate.DIED, 1, 61))

    found = balance(a_clutch(good=8, slugs=1, told=told, young=(60, 60, 60)))

    assert (found.laid, found.slugs, found.good) == (9, 1, 8)
    assert (found.failed, found.hatched, found.still_in) == (1, 6, 1)
    assert (found.died, found.numbered, found.unnumbered, found.lived) == (1, 3, 2, 5)
    assert found.closes


_COUNTS = st.integers(min_value=0, max_value=20)
_TOLD = st.lists(
    st.tuples(st.sampled_from(EggFate), st.integers(1, 9), st.integers(0, 100)), max_size=6
)


@given(good=_COUNTS, slugs=_COUNTS, told=_TOLD, young=st.lists(st.integers(1, 100), max_size=12))
def test_the_three_sums_hold_whatever_was_written(good, slugs, told, young) -> None:
    found = balance(a_clutch(good=good, slugs=slugs, told=tuple(told), young=tuple(young)))

    assert found.laid == found.good + found.slugs
    assert found.good == found.hatched + found.failed + found.still_in
    assert found.hatched == found.unnumbered + found.died + found.numbered
    assert found.closes == (found.still_in >= 0 and found.unnumbered >= 0)


def test_a_hatchling_that_died_unnumbered_closes_the_balance_without_a_phantom() -> None:
    told = ((EggFate.HATCHED, 8, 60), (EggFate.DIED, 1, 61))

    found = balance(a_clutch(told=told, young=(60,) * 7))

    assert (found.closes, found.unnumbered, found.lived) == (True, 0, 7)


def test_more_young_than_hatched_do_not_close() -> None:
    told = ((EggFate.HATCHED, 2, 60),)

    assert not balance(a_clutch(told=told, young=(60, 60, 60))).closes


def test_without_heat_the_window_is_the_usual_one() -> None:
    window = pip_window(LAID, HOUSE, {}, after(10))

    assert (window.first, window.last) == (after(55), after(75)) == window.usual
    assert (window.read, window.mean_c) == (0, None)


def test_heat_read_every_day_narrows_the_window_to_what_it_says() -> None:
    """Need: 55 x (28.5 - 13.2) = 841.5 to 75 x (27 - 13.2) = 1035 degree-days above 13.2 C.

    At 28 C each day gives 14.8: 841.5 / 14.8 = 56.86, so day 57; 1035 / 14.8 = 69.93, so day 70.
    """
    window = pip_window(LAID, HOUSE, heat(28.0, 80), after(80))

    assert (window.first, window.last) == (after(57), after(70))


def test_half_way_the_days_to_come_may_be_either_end() -> None:
    """After 30 days at 28 C 444 are gathered: (841.5 - 444) / 15.3 = 25.98 and
    (1035 - 444) / 13.8 = 42.83 days are left."""
    window = pip_window(LAID, HOUSE, heat(28.0, 30), after(30))

    assert (window.first, window.last) == (after(56), after(73))
    assert (window.read, window.mean_c) == (30, 28.0)


def test_the_window_shrinks_as_days_within_the_usual_are_read() -> None:
    lengths = []
    for days in range(0, 71, 10):
        window = pip_window(LAID, HOUSE, heat(27.8, days), after(days))
        lengths.append((window.last - window.first).days)

    assert lengths == sorted(lengths, reverse=True)
    assert lengths[0] == 20 and lengths[-1] < 15


def test_a_cold_incubator_puts_the_window_off_beyond_the_usual() -> None:
    """At 24 C each day gives 10.8: 30 days give 324, (1035 - 324) / 13.8 = 51.5 days are left."""
    window = pip_window(LAID, HOUSE, heat(24.0, 30), after(30))

    assert window.last == after(82)


def test_no_egg_grows_faster_above_the_heat_at_which_to_act() -> None:
    hottest = pip_window(LAID, HOUSE, heat(30.5, 40), after(40))

    assert pip_window(LAID, HOUSE, heat(36.0, 40), after(40)).first == hottest.first


def test_colder_than_where_embryos_stand_still_they_stand_and_do_not_go_back() -> None:
    """Ten days at 5 C gather nothing: 55 and 75 days are left from then on."""
    window = pip_window(LAID, HOUSE, heat(5.0, 10), after(10))

    assert (window.first, window.last) == (after(65), after(85))


def test_a_day_that_is_not_over_is_not_looked_at() -> None:
    window = pip_window(LAID, HOUSE, {after(3): 24.0, after(4): 24.0}, after(3))

    assert window.read == 0


@given(
    st.lists(st.one_of(st.none(), st.floats(5.0, 40.0)), max_size=80),
)
def test_a_window_never_ends_before_it_begins(days) -> None:
    daily = {after(n): c for n, c in enumerate(days) if c is not None}

    window = pip_window(LAID, HOUSE, daily, after(len(days)))

    assert LAID < window.first <= window.last


STEPS = [
    (0, "candle for veins", after(5), after(10)),
    (10, "candle for veins", after(5), after(10)),
    (11, "candle again", after(30), after(30)),
    (30, "candle again", after(30), after(30)),
    (31, "wait for the first slit", after(55), after(75)),
    (55, "watch for the first slit", after(55), after(75)),
    (75, "watch for the first slit", after(55), after(75)),
    (76, "past its pip window", after(55), after(75)),
]


@pytest.mark.parametrize(("days", "why", "first", "last"), STEPS)
def test_eggs_are_candled_twice_and_then_waited_for(days, why, first, last) -> None:
    window = pip_window(LAID, HOUSE, {}, after(days))

    step = next_step(a_clutch(), window, FIGURES, (), after(days))

    assert (step.why.why, step.first, step.last, step.closed) == (why, first, last, False)


@pytest.mark.parametrize(
    ("seen", "days", "why"),
    [
        ((6,), 6, "candle again"),
        ((6,), 30, "candle again"),
        ((6, 30), 30, "wait for the first slit"),
        ((12,), 12, "candle again"),
        ((24,), 24, "wait for the first slit"),
    ],
)
def test_eggs_in_which_veins_were_seen_are_not_candled_for_that_again(seen, days, why) -> None:
    told = a_clutch(told=tuple((EggFate.VEINED, 7, day) for day in seen))
    window = pip_window(LAID, HOUSE, {}, after(days))

    assert next_step(told, window, FIGURES, (), after(days)).why.why == why


def test_veins_seen_change_no_balance_and_are_no_slit() -> None:
    before, after_it = a_clutch(), a_clutch(told=((EggFate.VEINED, 7, 6),))

    assert balance(before) == balance(after_it)
    assert after_it.out_on == [] and after_it.veined_on == after(6)


def test_after_the_first_slit_out_is_what_comes_next() -> None:
    told = a_clutch(told=((EggFate.PIPPED, 2, 60),))

    step = next_step(told, None, FIGURES, (), after(60))

    assert (step.why.why, step.first, step.last) == (
        "out after the first slit",
        after(60),
        after(62),
    )


def test_young_shed_first_and_then_eat_and_then_all_is_told() -> None:
    told = a_clutch(good=2, told=((EggFate.HATCHED, 2, 60),), young=(60, 60))

    def step(*young: Young):
        return next_step(told, None, FIGURES, young, after(90))

    unshed = Young(hatched_on=after(60))
    shed = Young(hatched_on=after(60), shed_on=after(68))
    eats = Young(hatched_on=after(60), shed_on=after(68), ate_on=after(72))
    sold = Young(hatched_on=after(60), here=False)
    assert step(unshed, shed).why.figures["count"] == 1
    assert (step(unshed, shed).first, step(unshed, shed).last) == (after(65), after(70))
    assert (step(shed, eats).first, step(shed, eats).last) == (after(70), after(73))
    assert step(eats, sold).closed


def test_young_without_a_page_come_before_their_sheds() -> None:
    told = a_clutch(good=3, told=((EggFate.HATCHED, 3, 60),), young=(60,))

    step = next_step(told, None, FIGURES, (Young(hatched_on=after(60)),), after(61))

    assert (step.why.why, step.why.figures["count"]) == ("young to be numbered", 2)


def test_a_clutch_of_slugs_is_closed_and_so_is_one_that_was_never_told_of() -> None:
    assert next_step(a_clutch(good=0, slugs=5), None, FIGURES, (), after(3)).closed
    forgotten = next_step(a_clutch(), None, FIGURES, (), after(366))
    assert (forgotten.why.why, forgotten.closed) == ("never told what became of them", True)


def test_where_the_eggs_lie_is_where_they_were_put_last() -> None:
    put = [
        EggsPlaced(animal=1, happened=on_day(after(0)), place="Incubator 1", box="2"),
        EggsPlaced(animal=1, happened=on_day(after(9)), place="Incubator 2"),
    ]
    out = EggsPlaced(animal=1, happened=on_day(after(60)), place=None)

    def lies(*placed: EggsPlaced):
        laid = Clutch(animal=1, happened=on_day(LAID), good=8)
        return ClutchFacts(name="26-9", dam=1, laid=laid, placed=placed).lies_in

    assert lies(*put) == put[1]
    assert lies(*put, out) is None
    assert lies() is None


def test_the_cautions_are_those_a_keeper_must_see() -> None:
    told = " ".join(sentence(each) for each in CAUTIONS)

    assert "Do not turn the eggs." in told
    assert "Cut no egg open." in told
    assert "a reptile vet the same day" in told
