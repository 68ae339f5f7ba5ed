"""Live readings, files taken in and back, joins both ways: two stations end with the same."""

import gc
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from hypothesis.stateful import (
    RuleBasedStateMachine,
    invariant,
    precondition,
    rule,
    run_state_machine_as_test,
)

from keeper.actions.bundle_files import write_bundle
from keeper.actions.joining import Joining, join, looked_at
from keeper.actions.joining_words import joining_told
from keeper.actions.keeping import Keeping
from keeper.actions.undoing import put_back_batch, take_back_batch
from keeper.store.checking import check
from keeper.store.database import Book, create_book
from keeper.store.journal import withdraw_batch
from keeper.store.packing import filled, packed, rolled_up
from keeper.store.readings import PackedDay, put_in
from keeper.store.readings_join import pieces_out
from keeper.store.standing import reckon_all
from tests.store.books import WRITTEN, quick_folder, tables_of, tails
from tests.store.histories import COLLECT_AFTER
from tests.taken_readings import took_in

DAY = 20_500
NOW = datetime(2026, 4, 2, 9, tzinfo=UTC)
PATIENT = [HealthCheck.too_slow, HealthCheck.data_too_large, HealthCheck.filter_too_much]
SIDES = st.sampled_from((0, 1))
SLOTS = st.sets(st.sampled_from((0, 1, 11, 12, 287)), min_size=1)

Values = dict[int, int]


@pytest.fixture
def there(folder):
    with closing(create_book(folder / "there.book", station="there", tail=tails(1))) as made:
        yield made


def keeping_of(book: Book) -> Keeping:
    return Keeping(book, {}, lambda: NOW, "Ro")


def live(book: Book, values: Values) -> None:
    put_in(book, {("K1", DAY): values})


def a_file(book: Book, values: Values) -> int:
    slots = packed(values)
    return took_in(book, [PackedDay(probe="K1", day=DAY, slots=slots, hours=rolled_up(slots))])


def undo(book: Book, target: int) -> int:
    return withdraw_batch(book, target, verb="take back", keeper="Ro", written=WRITTEN)


def seen(book: Book) -> Values:
    rows = book.connection.execute("SELECT slots FROM reading_day").fetchall()
    return filled(rows[0][0]) if rows else {}


def joined(here: Book, there: Book, folder: Path) -> Joining:
    """What *there* holds comes to *here*, by the folder *folder*."""
    write_bundle(keeping_of(there), folder)
    looked = looked_at(keeping_of(here), folder)
    return join(keeping_of(here), looked)


def both_joined(one: Book, two: Book, folder: Path) -> None:
    """Each hears the other, twice."""
    for n in range(2):
        joined(two, one, folder.with_name(f"{folder.name} there {n}"))
        joined(one, two, folder.with_name(f"{folder.name} back {n}"))


def test_a_live_reading_over_a_files_slot_is_seen_at_the_other_station(book, there, folder):
    a_file(book, {0: 2000, 1: 2000})
    joined(there, book, folder / "first")
    live(book, {1: 2500})

    found = joined(there, book, folder / "second")

    assert seen(there) == seen(book) == {0: 2000, 1: 2500}
    assert found.shown == 1


def test_the_file_taken_back_at_either_leaves_it_at_both(book, there, folder):
    key = a_file(book, {0: 2000, 1: 2000})
    joined(there, book, folder / "first")
    live(book, {1: 2500})
    joined(there, book, folder / "second")

    back = undo(there, key)
    joined(book, there, folder / "third")
    without = [seen(each) for each in (book, there)]
    undo(book, back)
    joined(there, book, folder / "fourth")

    assert without == [{1: 2500}, {1: 2500}]
    assert [seen(each) for each in (book, there)] == [{0: 2000, 1: 2500}] * 2


def test_it_goes_with_the_join_that_brought_it_and_comes_back_with_it(book, there, folder):
    a_file(book, {0: 2000, 1: 2000})
    joined(there, book, folder / "first")
    live(book, {1: 2500})
    done = joined(there, book, folder / "second")

    take_back_batch(keeping_of(there), done.written.batch)
    without = seen(there)
    put_back_batch(keeping_of(there), done.written.batch)

    assert without == {0: 2000, 1: 2000}
    assert seen(there) == {0: 2000, 1: 2500}
    assert check(there) == ()


def test_what_is_heard_here_too_stays_when_that_join_is_taken_back(book, there, folder):
    a_file(book, {0: 2000, 1: 2000})
    joined(there, book, folder / "first")
    live(book, {1: 2500})
    done = joined(there, book, folder / "second")
    live(there, {1: 2600})
    at_once = seen(there)

    take_back_batch(keeping_of(there), done.written.batch)

    assert at_once == seen(there) == {0: 2000, 1: 2600}


def test_a_later_file_lies_over_what_was_heard_over_an_earlier_one(book, there, folder):
    a_file(book, {1: 2000})
    live(book, {1: 2500})
    later = a_file(there, {1: 2700})
    both_joined(book, there, folder / "first")
    over = [seen(each) for each in (book, there)]
    undo(there, later)
    both_joined(book, there, folder / "again")

    assert over == [{1: 2700}] * 2
    assert [seen(each) for each in (book, there)] == [{1: 2500}] * 2


def test_two_other_readings_of_one_slot_over_one_file_are_told_and_none_comes(book, there, folder):
    a_file(book, {1: 2000})
    joined(there, book, folder / "first")
    live(book, {1: 2500})
    live(there, {1: 2600})

    found = joined(there, book, folder / "second")

    assert found.readings.conflicts == (("K1", DAY, 1),)
    assert seen(there) == {1: 2600}


def test_the_preview_counts_the_readings_that_will_be_seen(book, there, folder):
    live(book, {0: 100, 1: 101})
    key = a_file(there, {1: 2000, 2: 2000, 3: 2000})
    live(there, {3: 2100, 0: 100})
    gone = undo(there, a_file(there, {9: 2000}))
    write_bundle(keeping_of(there), folder / "out")

    looked = looked_at(keeping_of(book), folder / "out")
    before = seen(book)
    join(keeping_of(book), looked)
    after = seen(book)

    assert after == {0: 100, 1: 2000, 2: 2000, 3: 2100}
    assert looked.joining.shown == sum(before.get(n) != value for n, value in after.items()) == 3
    assert "and 3 readings" in joining_told(looked.joining)[0].replace("\u00a0", " ")
    assert key < gone


def test_readings_that_are_hidden_are_taken_along_and_none_is_counted(book, there, folder):
    undo(there, a_file(there, {9: 2000}))

    found = joined(book, there, folder / "out")

    assert (found.shown, seen(book)) == (0, {})
    assert pieces(book) == pieces(there)


def pieces(book: Book) -> list[tuple]:
    return list(pieces_out(book, "K1"))


class TwoProbeRooms(RuleBasedStateMachine):
    """Each station hears one probe and takes in its files; a slot heard live is heard alike."""

    def __init__(self) -> None:
        super().__init__()
        self.folder = quick_folder()
        place = Path(self.folder.name)
        self.books = [
            create_book(place / f"{n}.book", station=f"s{n}", tail=tails(n)) for n in (0, 1)
        ]
        self.files: list[list[int]] = [[], []]
        self.joins = 0

    @rule(side=SIDES, slots=SLOTS)
    def hear(self, side: int, slots: set[int]) -> None:
        live(self.books[side], {slot: 100 + slot for slot in slots})

    @rule(side=SIDES, slots=SLOTS, value=st.integers(-5, 5))
    def take_in(self, side: int, slots: set[int], value: int) -> None:
        self.files[side].append(a_file(self.books[side], dict.fromkeys(slots, value)))

    @precondition(lambda self: any(self.files))
    @rule(side=SIDES, number=st.integers(0, 9))
    def turn(self, side: int, number: int) -> None:
        """A file is taken back, or put back, at a station that knows it."""
        files = self.files[side]
        if files:
            at = number % len(files)
            if _stands(self.books[side], files[at]):
                files[at] = undo(self.books[side], files[at])

    @rule(into=SIDES)
    def join(self, into: int) -> None:
        here, there = self.books[into], self.books[1 - into]
        self.joins += 1
        found = joined(here, there, Path(self.folder.name) / f"out{self.joins}")
        assert found.conflicts == found.readings.conflicts == ()
        self.files[into] = sorted({*self.files[into], *self.files[1 - into]})

    @invariant()
    def readings_lie_as_the_entries_stand(self) -> None:
        for book in self.books:
            assert check(book) == ()

    def teardown(self) -> None:
        try:
            one, two = self.books
            both_joined(one, two, Path(self.folder.name) / "last")
            assert _days(one) == _days(two)
            self._nothing_is_left_to_hear(one, two)
            before = _days(one)
            reckon_all(one.connection)
            assert _days(one) == before
        finally:
            for book in self.books:
                book.close()
            self.folder.cleanup()
            if gc.get_count()[0] > COLLECT_AFTER:
                gc.collect()

    def _nothing_is_left_to_hear(self, one: Book, two: Book) -> None:
        before = tables_of(one)
        found = joined(one, two, Path(self.folder.name) / "idle")
        assert not found.is_new or found.shown == 0
        assert tables_of(one)["reading_day"] == before["reading_day"]


def _days(book: Book) -> list[tuple]:
    return book.connection.execute("SELECT * FROM reading_day ORDER BY probe, day").fetchall()


def _stands(book: Book, key: int) -> bool:
    return not book.connection.execute(
        "SELECT 1 FROM withdrawn WHERE batch = ? AND seq = -1", (key,)
    ).fetchone()


def test_two_stations_end_with_the_same_readings_whatever_was_heard_filed_and_joined() -> None:
    run_state_machine_as_test(
        TwoProbeRooms,
        settings=settings(
            max_examples=10, stateful_step_count=12, deadline=None, suppress_health_check=PATIENT
        ),
    )


@pytest.mark.long
def test_two_stations_end_with_the_same_readings_in_long_campaigns() -> None:
    run_state_machine_as_test(
        TwoProbeRooms,
        settings=settings(
            max_examples=400, stateful_step_count=25, deadline=None, suppress_health_check=PATIENT
        ),
    )
