"""A file's readings travel with their batch: taken back at one station, they go at the other."""

from contextlib import closing
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from keeper.store.checking import check
from keeper.store.database import Book, create_book
from keeper.store.documents import NotADocument
from keeper.store.exchange import batch_keys, read_in, write_out
from keeper.store.journal import withdraw_batch
from keeper.store.readings import PackedDay, packed, put_in, read_file, rolled_up
from keeper.store.readings_join import pieces_out
from keeper.store.readings_out import write_out_readings
from keeper.store.whole import probes_read
from tests.store.books import WRITTEN, quick_folder, tails
from tests.store.readings_read_in import read_in_readings
from tests.taken_readings import took_in

DAY = 20_500


@pytest.fixture
def other(folder):
    with closing(create_book(folder / "other.book", station="other", tail=tails(1))) as made:
        yield made


def a_day(values: dict[int, int]) -> PackedDay:
    slots = packed(values)
    return PackedDay(probe="K1", day=DAY, slots=slots, hours=rolled_up(slots))


def undo(book: Book, target: int) -> int:
    return withdraw_batch(book, target, verb="take back", keeper="Ro", written=WRITTEN)


def sent(one: Book, two: Book, *, readings_first: bool = False) -> None:
    """All that *one* knows comes to *two*."""
    batches = [write_out(one, key) for key in batch_keys(one)]
    readings = [each for probe in probes_read(one) for each in write_out_readings(one, probe)]
    if readings_first:
        assert read_in_readings(two, readings).conflicts == ()
    assert read_in(two, batches).conflicts == ()
    assert read_in_readings(two, readings).conflicts == ()


def days_of(book: Book) -> list[tuple]:
    return book.connection.execute("SELECT * FROM reading_day").fetchall()


def pieces(book: Book) -> list[tuple]:
    return [each for probe in probes_read(book) for each in pieces_out(book, probe)]


@pytest.mark.parametrize("readings_first", [False, True])
def test_a_file_taken_in_elsewhere_can_be_taken_back_here(book, other, readings_first):
    put_in(book, {("K1", DAY): {0: 1}})
    key = took_in(book, [a_day({0: 2, 1: 2})])
    sent(book, other, readings_first=readings_first)
    arrived = days_of(other)

    undo(other, key)

    assert arrived == days_of(book)
    assert days_of(other) == [("K1", DAY, packed({0: 1}), rolled_up(packed({0: 1})))]


def test_what_was_taken_back_elsewhere_goes_here_and_does_not_come_back_from_here(book, other):
    key = took_in(book, [a_day({0: 2})])
    sent(book, other)
    undo(book, key)

    sent(book, other)
    sent(other, book)

    assert (days_of(book), days_of(other)) == ([], [])
    assert read_file(other, "ab") is None


def test_a_file_that_is_taken_back_travels_and_can_be_put_back_there(book, other):
    back = undo(book, took_in(book, [a_day({0: 2})]))
    sent(book, other)
    before = days_of(other)

    undo(other, back)

    assert before == []
    assert days_of(other) == [("K1", DAY, packed({0: 2}), rolled_up(packed({0: 2})))]


def test_a_live_reading_of_elsewhere_comes_beneath_a_file_of_here(book, other):
    put_in(other, {("K1", DAY): {0: 1, 5: 5}})
    key = took_in(book, [a_day({0: 2})])

    sent(other, book)
    with_file = days_of(book)
    undo(book, key)

    assert with_file[0][2] == packed({0: 2, 5: 5})
    assert days_of(book)[0][2] == packed({0: 1, 5: 5})


def test_a_key_that_is_none_is_refused(book):
    took_in(book, [a_day({0: 2})])
    (told,) = write_out_readings(book, "K1")

    for key in ("x", 0, True, "9" * 19, 1.5):
        with pytest.raises(NotADocument, match="must be a key"):
            read_in_readings(book, [told | {"batch": key}])


SLOTS = st.sets(st.sampled_from([0, 1, 11, 12, 287]), min_size=1)
STEPS = st.lists(
    st.tuples(st.sampled_from(["live", "file", "turn"]), SLOTS, st.integers(0, 5)), max_size=6
)


def lived(book: Book, steps: list[tuple]) -> None:
    """Live readings first, alike wherever they are read; then files, taken back and put back."""
    slots = {slot for kind, told, _ in steps if kind == "live" for slot in told}
    if slots:
        put_in(book, {("K1", DAY): {slot: 100 + slot for slot in slots}})
    files: list[int] = []
    for kind, told, number in steps:
        if kind == "file":
            files.append(took_in(book, [a_day(dict.fromkeys(told, number))]))
        elif kind == "turn" and files:
            at = number % len(files)
            files[at] = undo(book, files[at])


@settings(max_examples=60, deadline=None)
@given(STEPS, STEPS, st.booleans())
def test_two_stations_that_hear_each_other_end_with_the_same_readings(
    first, second, readings_first
):
    with quick_folder() as at:
        one = create_book(Path(at) / "1.book", station="one", tail=tails(0))
        two = create_book(Path(at) / "2.book", station="two", tail=tails(1))
        with closing(one), closing(two):
            lived(one, first)
            lived(two, second)
            sent(one, two, readings_first=readings_first)
            sent(two, one)
            sent(one, two)

            assert days_of(one) == days_of(two)
            assert pieces(one) == pieces(two)
            assert check(one) == check(two) == ()
