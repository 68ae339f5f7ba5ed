"""What the lanes of a life say: how refusals counted, sheds, tubs and company, heat, causes."""

from contextlib import closing
from datetime import date, timedelta

import pytest
from life_sample import TODAY, a_book, of_ten_years, unknown_sex, wren

from keeper.actions.animal_page import page_of
from keeper.actions.correcting import correct
from keeper.actions.day_of_life import day_of_life, event_days
from keeper.actions.due_board import due_rows
from keeper.actions.life_causes import HELD, REFUSED, SLOWED, TONIGHT, cold_spells
from keeper.actions.life_lanes import Counting
from keeper.actions.life_places import HeatDay
from keeper.actions.noting import note
from keeper.actions.own_entries import correctable_on
from keeper.actions.undoing import take_back
from keeper.husbandry.animal import Sex, Status
from keeper.husbandry.events import (
    Clutch,
    Heat,
    HoldEnded,
    HoldKind,
    HoldSet,
    Moved,
    Offer,
    Result,
    ShedStage,
    Stock,
    Weighing,
    Zone,
)
from keeper.husbandry.when import on_day


@pytest.fixture(scope="module")
def lived(tmp_path_factory):
    """One book with Wren and a hatchling in it, read by all these tests and written by none."""
    with closing(a_book(tmp_path_factory.mktemp("life") / "life.book")) as keeping:
        keys = {"wren": wren(keeping), "unknown": unknown_sex(keeping)}
        yield keeping, keys


@pytest.fixture
def page(lived):
    keeping, keys = lived
    return page_of(keeping, keys["wren"], TODAY)


@pytest.fixture
def own(tmp_path):
    """A book of one's own with Wren in it: (keeping, key)."""
    with closing(a_book(tmp_path / "own.book")) as keeping:
        yield keeping, wren(keeping)


def a_note(keeping, *events):
    note(keeping, "try", *events)


def test_weighings_within_digestion_are_told_from_fasted_ones(page):
    by_day = {weighed.day: weighed for weighed in page.weighed}
    fasted, fed = by_day[date(2026, 9, 2)], by_day[date(2026, 9, 26)]

    assert fasted.fasted and fasted.empty_g == fasted.scale_g
    assert not fed.fasted and fed.empty_g < fed.scale_g


def test_one_sex_has_one_band_and_an_unknown_one_has_both(lived):
    keeping, keys = lived
    first, last = TODAY - timedelta(days=60), TODAY + timedelta(days=60)

    hers = page_of(keeping, keys["wren"], TODAY).bands(first, last)
    both = page_of(keeping, keys["unknown"], TODAY).bands(first, last)

    assert set(hers) == {Sex.FEMALE}
    assert set(both) == {Sex.FEMALE, Sex.MALE}
    assert hers[Sex.FEMALE][-1].day == last


def test_a_band_says_nothing_of_days_before_hatching(page):
    before = page.animal.hatched_first - timedelta(days=30)

    points = page.bands(before, TODAY)[Sex.FEMALE]

    assert points[0].day >= page.animal.hatched_first


def test_refusals_in_the_warm_count_and_one_while_opaque_is_excused(own):
    keeping, key = own
    opaque = date(2026, 10, 17)  # between dull and shed of that month
    a_note(keeping, Offer(animal=key, happened=on_day(opaque), result=Result.REFUSED))

    marks = {mark.day: mark.counting for mark in page_of(keeping, key, TODAY).lanes.refusals}

    assert marks[date(2026, 8, 21)] is Counting.COUNTED
    assert marks[opaque] is Counting.EXCUSED


def test_a_second_try_of_the_same_night_is_one_cross(own):
    keeping, key = own
    again = Offer(animal=key, happened=on_day(date(2026, 8, 21)), result=Result.REFUSED)
    before = len(page_of(keeping, key, TODAY).lanes.refusals)

    a_note(keeping, again)

    assert len(page_of(keeping, key, TODAY).lanes.refusals) == before


def test_a_regurgitation_is_followed_by_its_days_without_food(page):
    span = page.lanes.holds[0]

    assert span.kind is HoldKind.REGURGITATED
    assert span.since == date(2026, 5, 18)
    assert (span.until - span.since).days == page.profile.holds[span.kind].days.value


def test_a_hold_ended_by_hand_ends_that_day_and_an_open_one_runs_on(own):
    keeping, key = own
    since, ended = on_day(date(2026, 10, 1)), on_day(date(2026, 10, 9))
    a_note(
        keeping,
        HoldSet(animal=key, happened=since, kind=HoldKind.VET),
        HoldEnded(animal=key, happened=ended, kind=HoldKind.VET),
        HoldSet(animal=key, happened=since, kind=HoldKind.QUARANTINE),
    )

    spans = {span.kind: span for span in page_of(keeping, key, TODAY).lanes.holds}

    assert spans[HoldKind.VET].until == ended.day
    assert spans[HoldKind.QUARANTINE].until is None


def test_a_gravid_hold_ends_with_the_clutch_on_the_page_as_on_the_board(own):
    keeping, key = own
    held = HoldSet(animal=key, happened=on_day(date(2026, 10, 1)), kind=HoldKind.GRAVID)
    laid = Clutch(animal=key, happened=on_day(date(2026, 10, 20)), good=8, slugs=0)
    a_note(keeping, held, laid)

    (span,) = [s for s in page_of(keeping, key, TODAY).lanes.holds if s.kind is HoldKind.GRAVID]

    assert span.until == laid.happened.day
    row = next(row for row in due_rows(keeping, TODAY) if row.animal.animal == key)
    assert row.plan.hold is None or row.plan.hold.kind is not HoldKind.GRAVID


def test_signs_are_gathered_into_cycles_that_end_with_the_shed(page):
    cycle = page.lanes.sheds[4]

    assert (cycle.dull, cycle.shed) == (date(2026, 8, 6), date(2026, 8, 12))
    assert cycle.stage_on(date(2026, 8, 9)) is ShedStage.OPAQUE
    assert all(one.shed is not None for one in page.lanes.sheds)


def test_tub_mates_are_told_over_the_days_shared_alone(page):
    mate = page.beside.mates[0]

    assert mate.name == "Fen"
    assert (mate.since, mate.until) == (date(2026, 3, 18), date(2026, 5, 20))
    assert day_of_life(page, date(2026, 5, 19)).mates == (mate,)
    assert day_of_life(page, date(2026, 5, 20)).mates == ()


def test_leaving_the_room_ends_the_last_stay(own):
    keeping, key = own
    sold = on_day(date(2026, 11, 2))

    a_note(keeping, Stock(animal=key, happened=sold, status=Status.SOLD))

    page = page_of(keeping, key, TODAY)
    assert page.beside.stays[-1].until == sold.day
    assert day_of_life(page, TODAY).stay is None


def test_heat_is_that_of_her_tub_before_her_row_and_never_of_another(own):
    keeping, key = own
    on = on_day(date(2026, 11, 20))
    for place, temp_c in (("B4·2", 33.3), ("B5", 12.0), ("B4·3", 11.0)):
        a_note(keeping, Heat(place=place, happened=on, zone=Zone.HOT, temp_c=temp_c))

    page = page_of(keeping, key, TODAY)

    assert day_of_life(page, on.day).heat.hot_c == 33.3
    assert day_of_life(page, on.day - timedelta(days=1)).heat.hot_c < 32


def test_her_row_moves_with_her(page):
    rows = {stay.since: stay.place for stay in page.beside.stays}

    assert rows == {
        date(2026, 3, 18): "A2·7",
        date(2026, 5, 20): "A5·3",
        date(2026, 7, 21): "B4·2",
    }
    assert len(page.beside.heat) == (TODAY - date(2026, 3, 18)).days + 1


def test_an_old_reading_of_heat_does_not_speak_for_today(own):
    keeping, key = own
    a_note(keeping, Moved(animal=key, happened=on_day(date(2026, 11, 21)), place="D1·1"))

    told = day_of_life(page_of(keeping, key, TODAY), TODAY)

    assert told.heat is None


def test_cold_days_close_together_are_one_spell():
    days = [
        HeatDay(day=date(2026, 8, 14 + n), hot_c=temp_c)
        for n, temp_c in enumerate((26.0, 31.0, 25.4, None, 27.0, 31.0, 31.0, 31.0, 27.5))
    ]

    first, second = cold_spells(days, 28.0)

    assert (first.first, first.last, first.low_c) == (date(2026, 8, 14), date(2026, 8, 18), 25.4)
    assert second.first == second.last == date(2026, 8, 22)


def test_a_cold_row_and_missed_offers_are_told_as_cause(page):
    cause = day_of_life(page, date(2026, 9, 2)).cause

    fell, again = cause.because
    assert cause.kind == SLOWED
    assert fell.figures["row"] == "B4" and fell.figures["missed"] == 2
    assert fell.figures["low_c"] == pytest.approx(25.4, abs=0.05)
    assert again.figures["on"] == date(2026, 9, 4)


def test_without_missed_offers_the_cold_explains_nothing(own):
    keeping, key = own
    for on in (date(2026, 8, 14), date(2026, 8, 21)):
        offer = correctable_on(keeping, key, on)[-1]
        correct(keeping, offer.key, [], "never offered")

    cause = day_of_life(page_of(keeping, key, TODAY), date(2026, 9, 2)).cause

    assert cause.kind == REFUSED


def test_a_regurgitation_is_the_cause_while_its_hold_lasts(page):
    assert day_of_life(page, date(2026, 5, 25)).cause.kind == HELD
    assert day_of_life(page, date(2026, 6, 3)).cause is None


def test_today_without_trouble_tells_the_next_offer(page):
    assert day_of_life(page, TODAY).cause.kind == TONIGHT


def test_a_day_knows_nothing_that_was_written_of_later_days(page):
    told = day_of_life(page, date(2026, 8, 24))

    assert told.eaten.happened.day == date(2026, 8, 7)
    assert [mark.day for mark in told.refused] == [date(2026, 8, 14), date(2026, 8, 21)]
    assert told.weighed.day == date(2026, 8, 21)


def test_a_day_to_come_has_expectation_and_nothing_else(page):
    told = day_of_life(page, TODAY + timedelta(days=40))

    assert told.ahead
    assert told.expected.m_g > page.expected(TODAY).m_g
    assert (told.weighed, told.eaten, told.stay, told.cause) == (None, None, None, None)


def test_what_was_put_right_keeps_its_old_value_and_its_reason(own):
    keeping, key = own
    on = date(2026, 9, 2)
    entry = correctable_on(keeping, key, on)[0]
    right = Weighing(animal=key, happened=entry.event.happened, weight_g=41.2)

    correct(keeping, entry.key, [right], "read the wrong tub")

    page = page_of(keeping, key, TODAY)
    (struck,) = day_of_life(page, on).struck
    assert day_of_life(page, on).weighed.scale_g == 41.2
    assert (struck.event.weight_g, struck.reason) == (entry.event.weight_g, "read the wrong tub")


def test_a_correction_of_a_correction_keeps_both_old_values(own):
    keeping, key = own
    on, before = date(2026, 9, 2), []
    for grams in (41.2, 42.1):
        entry = correctable_on(keeping, key, on)[0]
        before.append(entry.event.weight_g)
        right = Weighing(animal=key, happened=entry.event.happened, weight_g=grams)
        correct(keeping, entry.key, [right], "again")

    struck = page_of(keeping, key, TODAY).beside.struck

    assert [one.event.weight_g for one in struck] == before


def test_a_correction_taken_back_is_not_struck_through_any_more(own):
    keeping, key = own
    entry = correctable_on(keeping, key, date(2026, 9, 2))[0]
    right = Weighing(animal=key, happened=entry.event.happened, weight_g=41.2)
    correct(keeping, entry.key, [right], "read the wrong tub")

    take_back(keeping)

    page = page_of(keeping, key, TODAY)
    assert page.beside.struck == ()
    assert day_of_life(page, date(2026, 9, 2)).weighed.scale_g == entry.event.weight_g


def test_the_age_gate_opens_by_the_latest_day_of_hatching(page):
    need = page.gate.age_days.value

    assert page.gate_age_on == page.animal.hatched_last + timedelta(days=need)
    assert page.target_g == page.gate.weight_g.value


def test_events_come_in_order_and_each_day_once(page):
    days = event_days(page)

    assert days == sorted(set(days))
    assert days[0] == page.animal.hatched_first
    assert days[-1] <= TODAY


def test_ten_years_are_read_whole(tmp_path):
    with closing(a_book(tmp_path / "old.book")) as keeping:
        page = page_of(keeping, of_ten_years(keeping), TODAY)

    assert len(page.weighed) == 522
    assert len(page.beside.heat) == 3653
    assert page.target_g is None
