"""A file of readings taken back and put back: what lay beneath comes and goes, nothing is lost."""

import os
import random
import signal
import subprocess
import sys
import time
from contextlib import closing
from datetime import timedelta
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from keeper.store import reading_layers
from keeper.store.backups import back_up, restore
from keeper.store.checking import check
from keeper.store.database import Book, create_book, open_book
from keeper.store.journal import EntryKey, batch, supposed, withdraw_batch
from keeper.store.packing import EMPTY_DAY, SLOTS, filled, packed, rolled_up
from keeper.store.readings import PackedDay, put_in, read_file
from keeper.store.standing import reckon_all
from tests.store.books import WRITTEN, quick_folder, tables_of, tails
from tests.taken_readings import TAKEN, took_in

DAY = 20_500
WORKER = Path(__file__).with_name("layers_worker.py")

Values = dict[int, int]


def a_day(values: Values, day: int = DAY, probe: str = "K1") -> PackedDay:
    slots = packed(values)
    return PackedDay(probe=probe, day=day, slots=slots, hours=rolled_up(slots))


@given(st.dictionaries(st.integers(0, SLOTS - 1), st.integers(-32_767, 32_767)))
def test_a_bit_is_owned_for_each_filled_slot_and_no_other(values):
    owned = int.from_bytes(reading_layers.owned_by(packed(values)), "little")

    assert owned == sum(1 << slot for slot in values)


def days_of(book: Book) -> list[tuple]:
    return book.connection.execute("SELECT * FROM reading_day ORDER BY probe, day").fetchall()


def values_in(book: Book, day: int = DAY, probe: str = "K1") -> Values:
    row = book.connection.execute(
        "SELECT slots FROM reading_day WHERE probe = ? AND day = ?", (probe, day)
    ).fetchone()
    return filled(row[0]) if row else {}


def undo(book: Book, target: int) -> int:
    return withdraw_batch(book, target, verb="take back", keeper="Ro", written=WRITTEN)


def test_a_file_taken_back_leaves_the_readings_as_they_were_to_the_byte(book):
    put_in(book, {("K1", DAY): {0: 2100, 5: 2200}, ("K2", DAY): {9: 1800}})
    before = days_of(book)
    key = took_in(book, [a_day({5: 3000, 6: 3010}), a_day({0: 3100}, DAY + 1)])
    after = days_of(book)

    back = undo(book, key)
    taken_back = days_of(book)
    undo(book, back)

    assert before != after
    assert (taken_back, days_of(book)) == (before, after)


def test_a_day_that_only_the_file_had_has_no_row_without_it(book):
    key = took_in(book, [a_day(dict.fromkeys(range(SLOTS), 2500))])

    undo(book, key)

    assert days_of(book) == []


def test_a_file_taken_back_is_not_known_and_can_be_taken_in_again(book):
    first = took_in(book, [a_day({0: 2100})])
    undo(book, first)
    unknown = read_file(book, "ab")

    took_in(book, [a_day({0: 2100})])

    assert unknown is None
    assert read_file(book, "ab") is not None
    assert values_in(book) == {0: 2100}


def test_its_batch_and_the_taking_back_stay_told(book):
    key = took_in(book, [a_day({0: 2100})])
    undo(book, key)

    verbs = [verb for (verb,) in book.connection.execute("SELECT verb FROM batch ORDER BY id")]
    names = book.connection.execute("SELECT name, readings FROM readings_taken").fetchall()

    assert verbs == ["take in readings", "take back"]
    assert names == [("x.csv", 2)]


def test_files_over_one_another_can_be_taken_back_in_any_order(book):
    put_in(book, {("K1", DAY): {0: 1, 1: 1, 2: 1, 3: 1}})
    lower = took_in(book, [a_day({1: 2, 2: 2, 3: 2})])
    upper = took_in(book, [a_day({2: 3, 3: 3, 4: 3})])

    back = undo(book, lower)
    without_lower = values_in(book)
    undo(book, upper)
    without_both = values_in(book)
    undo(book, back)

    assert without_lower == {0: 1, 1: 1, 2: 3, 3: 3, 4: 3}
    assert without_both == {0: 1, 1: 1, 2: 1, 3: 1}
    assert values_in(book) == {0: 1, 1: 2, 2: 2, 3: 2}


def test_a_live_reading_that_came_later_stays_when_the_file_goes_and_when_it_comes(book):
    key = took_in(book, [a_day({0: 2000, 1: 2000})])
    put_in(book, {("K1", DAY): {1: 2500}})
    back = undo(book, key)
    without = values_in(book)
    put_in(book, {("K1", DAY): {0: 2600}})

    undo(book, back)

    assert without == {1: 2500}
    assert values_in(book) == {0: 2600, 1: 2500}


def test_the_entry_alone_taken_back_takes_its_readings_along(book):
    key = took_in(book, [a_day({0: 2100})])

    with batch(book, verb="take back", keeper="Ro", written=WRITTEN) as writer:
        writer.withdraw(EntryKey(key, 0))

    assert values_in(book) == {}


def test_a_supposition_leaves_the_readings_as_they_are(book):
    key = took_in(book, [a_day({0: 2100})])
    before = tables_of(book)

    with supposed(book, [EntryKey(key, 0)], (), WRITTEN):
        inside = values_in(book)

    assert inside == {}
    assert tables_of(book) == before


def test_reopened_and_rebuilt_and_restored_it_is_the_same(book, folder):
    kept = took_in(book, [a_day({0: 2100, 1: 2100})])
    gone = took_in(book, [a_day({1: 2200})])
    undo(book, gone)
    before = tables_of(book)
    backup = back_up(book, "readings")
    reckon_all(book.connection)
    rebuilt = tables_of(book)
    restore(backup, folder / "b.book")

    with closing(open_book(folder / "b.book", station="shed", tail=tails(0))) as other:
        restored = tables_of(other)
        undo(other, kept)
        assert values_in(other) == {}

    assert rebuilt == before
    assert restored == before


def test_readings_that_do_not_lie_as_their_entry_stands_are_found_and_put_right(book):
    key = took_in(book, [a_day({0: 2100})])
    book.connection.execute("INSERT INTO withdrawn VALUES (?, -1)", (key,))
    found = reading_layers.unsettled(book.connection)
    told = [finding.sentence for finding in check(book)]

    reading_layers.settle_all(book.connection)

    assert (found, reading_layers.unsettled(book.connection)) == ([key], [])
    assert f"The readings of batch {key} do not lie as its entry stands." in told
    assert values_in(book) == {}


def test_a_year_of_readings_keeps_few_bytes_for_its_taking_back(book):
    full = dict.fromkeys(range(SLOTS), 2500)

    took_in(book, [a_day(full, DAY + n) for n in range(365)])

    (size,) = book.connection.execute(
        "SELECT sum(length(owned) + length(held)) FROM reading_layer"
    ).fetchone()
    assert size == 365 * SLOTS // 8


SOME = st.dictionaries(st.sampled_from([0, 1, 2, 11, 12, 287]), st.integers(-50, 50), min_size=1)
STEPS = st.lists(
    st.one_of(
        st.tuples(st.just("live"), SOME),
        st.tuples(st.just("file"), SOME),
        st.tuples(st.just("turn"), st.integers(0, 7)),
    ),
    max_size=12,
)


def said_by(steps: list[tuple[str, Values | bool]]) -> Values:
    """The plain model: of each slot the last value that came live or of a file that stands."""
    found: Values = {}
    for kind, values, stands in steps:
        if kind == "live" or stands:
            found.update(values)
    return found


@settings(max_examples=200, deadline=None)
@given(STEPS)
def test_after_any_history_each_slot_holds_the_last_value_that_stands(steps):
    with quick_folder() as name:
        book = create_book(Path(name) / "a.book", station="s", tail=tails(0))
        told: list[list] = []
        files: list[list] = []
        for kind, given_ in steps:
            if kind == "live":
                put_in(book, {("K1", DAY): given_})
                told.append([kind, given_, True])
            elif kind == "file":
                told.append([kind, given_, True])
                files.append([told[-1], took_in(book, [a_day(given_)])])
            elif files:
                entry = files[given_ % len(files)]
                entry[0][2] = not entry[0][2]
                entry[1] = _turned(book, entry)
            expected = packed(said_by(told))
            rows = [] if expected == EMPTY_DAY else [("K1", DAY, expected, rolled_up(expected))]
            assert days_of(book) == rows
        assert check(book) == ()
        book.close()


def _turned(book: Book, entry: list) -> int:
    """Take back the file, or its taking-back; the key to turn next."""
    return undo(book, entry[1])


KILLS, KILLS_MOST = 12, 100
"""Kills, and as many as it may take until one has met either state: a quick disk is seldom idle."""


def test_killed_between_take_in_and_taking_back_the_readings_are_whole_or_untouched(book):
    """A worker takes in and back; at each kill the days are those of one of the two states."""
    draw = random.Random(20260301)
    states = set()
    for kill in range(KILLS_MOST):
        if kill >= KILLS and len(states) == 2:
            break
        worker = subprocess.Popen(
            [sys.executable, str(WORKER), str(book.path)], stdout=subprocess.PIPE, text=True
        )
        assert worker.stdout is not None
        for _ in range(1 + kill % 2):
            worker.stdout.readline()
        time.sleep(0 if kill < 4 else draw.uniform(0, 0.1))
        os.kill(worker.pid, signal.SIGKILL)
        worker.communicate()
        with closing(open_book(book.path, station="look")) as seen:
            (standing,) = seen.connection.execute(
                """SELECT count(*) FROM readings_taken e WHERE NOT EXISTS
                   (SELECT 1 FROM withdrawn w WHERE w.batch = e.batch)"""
            ).fetchone()
            days = seen.connection.execute("SELECT slots FROM reading_day").fetchall()
            assert len(days) == (60 if standing else 0)
            assert reading_layers.unsettled(seen.connection) == []
            assert check(seen) == ()
            states.add(bool(standing))
    assert states == {True, False}


def test_what_was_taken_in_later_is_told_first(book):
    took_in(book, [a_day({0: 1})], read_as="F")
    key = took_in(book, [a_day({0: 2})], read_as="C", at=TAKEN + timedelta(hours=1))
    undo(book, key)

    assert read_file(book, "ab").read_as == "F"


@pytest.mark.parametrize("values", [{}, {0: 1}, {287: 1}, {7: 1, 8: 1, 255: 0}])
def test_a_bit_for_each_filled_slot(values):
    bits = int.from_bytes(reading_layers.owned_by(packed(values)), "little")

    assert [n for n in range(SLOTS) if bits >> n & 1] == sorted(values)
