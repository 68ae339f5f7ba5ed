"""Packed readings: merged slot by slot, the last wins."""

from contextlib import closing
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from keeper.husbandry.events import ProbePlaced, Zone
from keeper.husbandry.when import at_instant
from keeper.store.backups import back_up, prove
from keeper.store.checking import check
from keeper.store.database import create_book, open_book
from keeper.store.errors import ReadOnlyBook
from keeper.store.readings import (
    EMPTY,
    PackedDay,
    ReadFile,
    filled,
    hours_of,
    last_reading,
    merged_slots,
    packed,
    placings,
    put_in,
    read_file,
    rolled_up,
    state_of_others,
    values_of,
)
from tests.store.books import quick_folder, write
from tests.taken_readings import TAKEN, took_in

DAY_ONE = 20_500
BEGIN = datetime(1970, 1, 1, tzinfo=UTC) + timedelta(days=DAY_ONE)
SLOTS_OF_A_DAY = st.dictionaries(st.integers(0, 287), st.integers(-4000, 8000), max_size=30)


def a_day(values: dict[int, int], day: int = DAY_ONE, probe: str = "K1") -> PackedDay:
    slots = packed(values)
    return PackedDay(probe=probe, day=day, slots=slots, hours=rolled_up(slots))


def a_file(**changed) -> ReadFile:
    told = {"sha256": "ab", "read_as": "C", "name": "x.csv", "taken": TAKEN, "readings": 2}
    return ReadFile(**(told | {"aside": 0} | changed))


def test_a_later_reading_of_a_slot_takes_the_place_of_the_earlier(book):
    took_in(book, [a_day({0: 2150, 1: 2160})])
    took_in(book, [a_day({1: 2500, 2: 2600})])

    told = [value for _, value in values_of(book, "K1", BEGIN, BEGIN + timedelta(days=1))]

    assert told == [2150, 2500, 2600]


def test_a_merged_day_has_the_roll_up_of_all_its_slots(book):
    took_in(book, [a_day({0: 2000, 1: 2100})])
    took_in(book, [a_day({2: 2500, 287: -150})])

    first, last = hours_of(book, "K1", BEGIN, BEGIN + timedelta(days=1))

    assert (first.low_c, first.high_c, first.mean_c) == (20.0, 25.0, 22.0)
    assert (last.at, last.low_c) == (BEGIN + timedelta(hours=23), -1.5)


def test_a_day_given_twice_in_one_go_is_refused_and_nothing_goes_in(book):
    with pytest.raises(ValueError, match="once"):
        took_in(book, [a_day({0: 2000}), a_day({1: 2100})])

    assert list(values_of(book, "K1", BEGIN, BEGIN + timedelta(days=1))) == []


def test_a_file_that_an_older_book_read_is_still_known(book):
    row = ("cd", "F", "old.csv", 1_770_000_000_000, 7, 1)
    book.connection.execute("INSERT INTO reading_file VALUES (?, ?, ?, ?, ?, ?)", row)

    assert read_file(book, "cd").name == "old.csv"


@given(before=SLOTS_OF_A_DAY, after=SLOTS_OF_A_DAY)
def test_merging_is_the_union_in_which_the_later_wins(before, after):
    assert filled(merged_slots(packed(before), packed(after))) == {**before, **after}


@given(SLOTS_OF_A_DAY)
def test_an_hour_without_readings_is_empty_and_the_others_hold_theirs(values):
    told = memoryview(rolled_up(packed(values))).cast("h")
    hours = {slot // 12 for slot in values}

    assert [hour for hour in range(24) if told[hour] != EMPTY] == sorted(hours)
    assert [hour for hour in range(24) if told[48 + hour] != EMPTY] == sorted(hours)
    assert all(told[hour] <= told[48 + hour] <= told[24 + hour] for hour in hours)


def test_only_what_lies_in_the_time_asked_for_is_given(book):
    took_in(book, [a_day({0: 1, 100: 2, 200: 3}), a_day({0: 4}, DAY_ONE + 1)])

    asked = values_of(book, "K1", BEGIN + timedelta(hours=1), BEGIN + timedelta(days=1))

    assert [value for _, value in asked] == [2, 3, 4]


def test_the_last_reading_of_a_probe_is_known(book):
    took_in(book, [a_day({0: 1, 12: 2})])

    tomorrow = BEGIN + timedelta(days=1)
    assert last_reading(book, "K1", tomorrow) == (BEGIN + timedelta(hours=1), 0.02)
    assert last_reading(book, "K1", BEGIN + timedelta(minutes=30)) == (BEGIN, 0.01)
    assert last_reading(book, "K2", tomorrow) is None


def test_a_file_is_known_by_its_sha256_with_all_that_was_said_of_it(book):
    took_in(book, [a_day({0: 1})], aside=3)

    assert read_file(book, "ab") == a_file(aside=3)
    assert read_file(book, "cd") is None


def test_of_a_file_read_in_two_ways_the_later_is_told(book):
    took_in(book, [a_day({0: 1})], read_as="F")
    took_in(book, [a_day({0: 2})], read_as="C", at=TAKEN + timedelta(hours=1))

    assert read_file(book, "ab").read_as == "C"


def test_a_fault_half_way_leaves_no_reading_behind(book):
    def days():
        yield a_day({0: 1})
        raise RuntimeError("cut")

    with pytest.raises(RuntimeError, match="cut"):
        took_in(book, days())

    assert last_reading(book, "K1", BEGIN + timedelta(days=1)) is None
    assert read_file(book, "ab") is None


def test_a_book_open_for_reading_takes_no_readings(book):
    other = open_book(book.path, station="b", read_only=True)

    with pytest.raises(ReadOnlyBook):
        took_in(other, [a_day({0: 1})])

    other.close()


def test_readings_are_in_the_backup_and_the_check_finds_nothing(book):
    took_in(book, [a_day({0: 1})])

    backup = back_up(book, "readings")

    assert prove(backup) == ()
    assert check(book) == ()


def test_where_a_probe_hung_is_told_in_the_order_of_time(book):
    later, earlier = BEGIN + timedelta(days=2), BEGIN
    for at, place in ((later, "B4"), (earlier, "B3")):
        happened = at_instant(at)
        write(book, ProbePlaced(happened=happened, probe="K1", zone=Zone.HOT, place=place))

    assert [event.place for event in placings(book)["K1"]] == ["B3", "B4"]


def test_a_probe_without_a_name_cannot_be_placed():
    with pytest.raises(ValueError, match="needs a name"):
        ProbePlaced(happened=at_instant(BEGIN), probe="", zone=Zone.HOT, place="B3")


@given(st.lists(SLOTS_OF_A_DAY.filter(bool), min_size=1, max_size=4))
@settings(deadline=None, max_examples=50)
def test_readings_put_in_one_by_one_lie_as_a_whole_day_would(parts):
    whole: dict[int, int] = {}
    with quick_folder() as at, closing(create_book(Path(at) / "a.book", station="s")) as book:
        for part in parts:
            put_in(book, {("K1", DAY_ONE): part})
            whole |= part
        row = book.connection.execute("SELECT slots, hours FROM reading_day").fetchone()

    assert row == (packed(whole), rolled_up(packed(whole)))


def test_readings_of_many_probes_are_put_in_all_or_none(book):
    with pytest.raises(IndexError):
        put_in(book, {("K1", DAY_ONE): {0: 2100}, ("K2", DAY_ONE): {288: 2100}})

    assert list(values_of(book, "K1", BEGIN, BEGIN + timedelta(days=1))) == []


def test_readings_that_took_the_place_of_another_are_counted(book):
    assert put_in(book, {("K1", DAY_ONE): {0: 2100, 1: 2100}}) == 0
    assert put_in(book, {("K1", DAY_ONE): {1: 2200, 2: 2300}, ("K2", DAY_ONE): {1: 2200}}) == 1


def test_what_another_connection_writes_is_noticed(book):
    with closing(open_book(book.path, station="s")) as other:
        before = state_of_others(book)
        put_in(book, {("K1", DAY_ONE): {0: 2100}})
        assert state_of_others(book) == before
        put_in(other, {("K1", DAY_ONE): {0: 2200}})

    assert state_of_others(book) != before
