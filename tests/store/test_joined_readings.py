"""What a join brought of readings goes when it is taken back and comes when it is put back."""

from contextlib import closing
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from keeper.actions.bundle_files import write_bundle
from keeper.actions.joining import join, looked_at
from keeper.actions.keeping import Keeping
from keeper.actions.records import entry_lines, record_rows
from keeper.actions.undoing import put_back, put_back_batch, take_back, take_back_batch
from keeper.store.checking import check
from keeper.store.database import Book, create_book
from keeper.store.journal import withdraw_batch
from keeper.store.readings import PackedDay, packed, put_in, rolled_up
from keeper.store.species_files import shipped_profiles
from tests.store.books import WRITTEN, quick_folder, tables_of, tails
from tests.taken_readings import took_in

DAY = 20_500
NOW = datetime(2026, 4, 2, 9, tzinfo=UTC)


@pytest.fixture
def there(folder):
    with closing(create_book(folder / "there.book", station="there", tail=tails(1))) as made:
        yield made


def keeping_of(book: Book, now: datetime = NOW) -> Keeping:
    return Keeping(book, shipped_profiles(), lambda: now, "Ro")


def live(book: Book, values: dict[int, int]) -> None:
    put_in(book, {("K1", DAY): values})


def a_file(book: Book, values: dict[int, int]) -> int:
    slots = packed(values)
    return took_in(book, [PackedDay(probe="K1", day=DAY, slots=slots, hours=rolled_up(slots))])


def shown(book: Book) -> list[tuple]:
    return book.connection.execute("SELECT * FROM reading_day ORDER BY probe, day").fetchall()


def a_day(values: dict[int, int]) -> list[tuple]:
    return [("K1", DAY, packed(values), rolled_up(packed(values)))]


def joined(here: Book, there: Book, folder: Path, name: str = "out"):
    write_bundle(keeping_of(there), folder / name)
    return join(keeping_of(here), looked_at(keeping_of(here), folder / name))


def test_live_readings_that_a_join_brought_go_with_it_and_come_back_with_it(book, there, folder):
    live(book, {0: 100})
    live(there, {5: 500, 6: 600})
    joined(book, there, folder)
    both = shown(book)

    take_back(keeping_of(book))
    alone = shown(book)
    put_back(keeping_of(book))

    assert both == a_day({0: 100, 5: 500, 6: 600})
    assert alone == a_day({0: 100})
    assert shown(book) == both
    assert check(book) == ()


def test_a_file_that_a_join_brought_goes_with_it_and_uncovers_what_was_there(book, there, folder):
    live(book, {0: 100, 1: 101})
    a_file(there, {1: 1, 2: 2})
    joined(book, there, folder)
    both = shown(book)

    take_back(keeping_of(book))
    alone = shown(book)
    put_back(keeping_of(book))

    assert both == a_day({0: 100, 1: 1, 2: 2})
    assert alone == a_day({0: 100, 1: 101})
    assert shown(book) == both


def test_a_file_of_here_lies_over_what_a_join_brought(book, there, folder):
    key = a_file(book, {0: 2})
    live(there, {0: 1, 5: 5})
    done = joined(book, there, folder)
    over = shown(book)

    withdraw_batch(book, key, verb="take back", keeper="Ro", written=WRITTEN)
    beneath = shown(book)
    take_back_batch(keeping_of(book), done.written.batch)

    assert over == a_day({0: 2, 5: 5})
    assert beneath == a_day({0: 1, 5: 5})
    assert shown(book) == []


def test_what_is_heard_here_after_the_join_stays_when_it_is_taken_back(book, there, folder):
    live(there, {5: 500, 6: 600})
    joined(book, there, folder)
    live(book, {5: 505})

    take_back(keeping_of(book))

    assert shown(book) == a_day({5: 505})


def test_readings_alone_are_a_line_of_records_too(book, there, folder):
    live(there, {5: 500})

    done = joined(book, there, folder)

    assert done.written is not None
    (row,) = record_rows(keeping_of(book))
    told = [line.told for line in entry_lines(keeping_of(book), row)]
    assert [words.replace("\u00a0", " ") for words in told] == ["1 reading of out taken in"]


def test_the_same_readings_are_known_the_second_time_taken_back_or_not(book, there, folder):
    live(there, {5: 500})
    joined(book, there, folder)
    before = tables_of(book)
    assert not looked_at(keeping_of(book), folder / "out").joining.is_new

    take_back(keeping_of(book))
    assert not looked_at(keeping_of(book), folder / "out").joining.is_new
    put_back(keeping_of(book))
    assert shown(book) == a_day({5: 500})
    assert before["reading_day"] == tables_of(book)["reading_day"]


def test_readings_that_went_there_and_back_stand_at_both(book, there, folder):
    live(book, {5: 500})
    live(there, {7: 700})
    first = joined(there, book, folder, "to-there")
    joined(book, there, folder, "to-here")
    both = a_day({5: 500, 7: 700})
    assert shown(book) == shown(there) == both

    take_back(keeping_of(book))
    assert shown(book) == a_day({5: 500})
    take_back_batch(keeping_of(there), first.written.batch)
    assert shown(there) == a_day({7: 700})
    assert check(book) == check(there) == ()


SLOTS = st.dictionaries(st.sampled_from([0, 1, 11, 12, 287]), st.just(0), min_size=1)
STEPS = st.lists(st.tuples(st.booleans(), SLOTS, st.integers(0, 5), st.booleans()), max_size=5)


def lived(book: Book, steps: list[tuple]) -> None:
    """Live readings that are alike wherever they are heard, and files; some taken back again."""
    for is_file, slots, number, gone in steps:
        if not is_file:
            live(book, {slot: 100 + slot for slot in slots})
            continue
        key = a_file(book, dict.fromkeys(slots, number))
        if gone:
            withdraw_batch(book, key, verb="take back", keeper="Ro", written=WRITTEN)


@settings(max_examples=60, deadline=None)
@given(STEPS, STEPS)
def test_any_join_taken_back_leaves_the_readings_of_before_and_put_back_those_of_after(
    first, second
):
    with quick_folder() as at:
        folder = Path(at)
        one = create_book(folder / "1.book", station="one", tail=tails(0))
        two = create_book(folder / "2.book", station="two", tail=tails(1))
        with closing(one), closing(two):
            lived(one, first)
            lived(two, second)
            before = shown(one)
            done = joined(one, two, folder)
            after = shown(one)
            if done.written is None:
                return
            take_back_batch(keeping_of(one), done.written.batch)
            assert shown(one) == before
            put_back_batch(keeping_of(one, NOW + timedelta(days=1)), done.written.batch)
            assert shown(one) == after
            assert check(one) == ()
