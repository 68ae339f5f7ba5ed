"""Batches, taking back, correcting: nothing is overwritten and nothing is lost."""

import sqlite3
from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from keeper.husbandry.events import Remark, RemarkKind
from keeper.husbandry.when import on_day
from keeper.store.database import create_book, open_book
from keeper.store.errors import BookError, CannotWithdraw
from keeper.store.exchange import batch_keys, read_in, write_out
from keeper.store.journal import EntryKey, batch, withdraw_batch
from keeper.store.reading import animal_now, batch_row, board, entries_of, history, latest_batches
from keeper.store.rows import TABLES, from_row, insert_sql, select_columns, to_row
from keeper.store.schema import EVENT_TABLES, SPINE_TABLES
from keeper.store.state import differing
from tests.store.books import DAY, WRITTEN, a_weight, an_offer, tables_of, write
from tests.strategies import KINDS, events_of

INSERT_ONLY = (*SPINE_TABLES, *EVENT_TABLES)


def take_back(book, key):
    return withdraw_batch(book, key, verb="take back", keeper="Ro", written=WRITTEN)


def test_every_kind_of_event_has_a_table():
    assert set(TABLES) == set(KINDS)


@pytest.mark.parametrize("kind", KINDS)
def test_an_event_comes_back_from_its_row_as_it_went_in(kind):
    @settings(max_examples=50, deadline=None)
    @given(st.data())
    def comes_back(data):
        event = data.draw(events_of(kind, (11, 2**62), (12,)))
        connection = sqlite3.connect(":memory:")
        columns = select_columns(kind).replace("e.", "")
        connection.execute(f"CREATE TABLE {TABLES[kind]} ({columns})")

        connection.execute(insert_sql(kind), to_row(event, 1, 0))
        row = connection.execute(f"SELECT {columns} FROM {TABLES[kind]}").fetchone()
        connection.close()

        assert from_row(kind, row) == event
        assert from_row(kind, row).happened.at.utcoffset() == event.happened.at.utcoffset()

    comes_back()


@pytest.mark.parametrize("text", ["a\0b", "\ud800"])
def test_text_that_would_not_come_back_the_same_is_refused(book, animal, text):
    before = tables_of(book)

    with pytest.raises(ValueError, match="text cannot hold"):
        write(book, Remark(animal=animal, happened=on_day(DAY), kind=RemarkKind.NOTE, text=text))

    assert tables_of(book) == before


@pytest.mark.parametrize("grams", [0.0004, 1e300])
def test_a_weight_beyond_what_a_row_holds_is_refused(book, animal, grams):
    with pytest.raises(ValueError, match=r"too small|64 bits"):
        write(book, a_weight(animal, grams))


@pytest.mark.parametrize("grams", [1.001, 4.35, 16.1, 1.009])
def test_a_weight_is_kept_to_the_milligram_however_it_lies_in_binary(book, animal, grams):
    write(book, a_weight(animal, grams))

    assert animal_now(book, animal).weight_g == grams


def test_a_batch_that_fails_writes_nothing(book, animal):
    before = tables_of(book)

    with (
        pytest.raises(RuntimeError, match="power"),
        batch(book, verb="note", keeper="Ro", written=WRITTEN) as writer,
    ):
        writer.add(a_weight(writer.new_animal()))
        raise RuntimeError("power")

    assert tables_of(book) == before


def test_a_batch_inside_a_batch_is_a_fault_and_writes_nothing(book, animal):
    before = tables_of(book)

    with (
        pytest.raises(RuntimeError, match="already"),
        batch(book, verb="note", keeper="Ro", written=WRITTEN) as writer,
    ):
        writer.add(a_weight(animal))
        write(book, a_weight(animal))

    assert tables_of(book) == before


@pytest.mark.parametrize("table", INSERT_ONLY)
@pytest.mark.parametrize("verb", ["UPDATE {} SET batch = 1", "DELETE FROM {}"])
def test_what_is_written_cannot_be_changed_by_hand(book, table, verb):
    sql = verb.format(table) if table != "batch" else verb.format(table).replace("batch =", "id =")
    _one_row_of(book, table)

    with pytest.raises(sqlite3.IntegrityError, match=f"{table} is insert-only"):
        book.connection.execute(sql)


def _one_row_of(book, table):
    """Any row will do: the trigger asks for no more, so checks and references are left off."""
    connection = book.connection
    connection.execute("PRAGMA foreign_keys = OFF")
    connection.execute("PRAGMA ignore_check_constraints = ON")
    columns = connection.execute(f"PRAGMA table_info({table})").fetchall()
    values = {"INTEGER": "1", "TEXT": "'x'", "REAL": "1.0"}
    cells = ", ".join(values[column[2]] for column in columns)
    connection.execute(f"INSERT INTO {table} VALUES ({cells})")


def test_taking_back_and_putting_back_leaves_the_state_as_it_was(book, animal):
    key = write(book, a_weight(animal), an_offer(animal))
    before = board(book)

    undo = take_back(book, key)
    without = board(book)
    take_back(book, undo)

    assert without != before
    assert board(book) == before


def test_taking_back_survives_closing_the_book(book, animal):
    undo = take_back(book, write(book, a_weight(animal)))
    book.close()

    again = open_book(book.path, station="shed")
    gone = animal_now(again, animal).weight_g
    take_back(again, undo)
    back = animal_now(again, animal).weight_g
    again.close()

    assert (gone, back) == (None, 41.2)


def test_a_hundred_steps_of_undo_and_redo_end_where_they_began(book, animal):
    key = write(book, a_weight(animal))
    for _ in range(100):
        key = take_back(book, key)

    assert animal_now(book, animal).weight_g == 41.2
    assert differing(book.connection) == []


def test_a_correction_keeps_the_old_entry_and_its_reason(book, animal):
    key = write(book, a_weight(animal, 412))
    with batch(book, verb="correct", keeper="Ro", written=WRITTEN, reason="misread") as writer:
        writer.withdraw(EntryKey(key, 0))
        writer.add(a_weight(animal, 41.2))

    kept = history(book, type(a_weight(animal)), animal, withdrawn_too=True)
    assert [(entry.event.weight_g, entry.stands) for entry in kept] == [(412, False), (41.2, True)]
    assert batch_row(book, writer.id).reason == "misread"


def test_a_correction_strikes_one_entry_of_a_batch_and_no_other(book, animal):
    key = write(book, a_weight(animal, 412), an_offer(animal))
    with batch(book, verb="correct", keeper="Ro", written=WRITTEN) as writer:
        writer.withdraw(EntryKey(key, 0))

    assert [entry.stands for entry in entries_of(book, key)] == [False, True]


@pytest.mark.parametrize("seq", [-1, 0])
def test_what_is_taken_back_already_cannot_be_taken_back_again(book, animal, seq):
    key = write(book, a_weight(animal))
    take_back(book, key)
    before = tables_of(book)

    with (
        pytest.raises(CannotWithdraw, match="already"),
        batch(book, verb="correct", keeper="Ro", written=WRITTEN) as writer,
    ):
        writer.withdraw(EntryKey(key, seq))

    assert tables_of(book) == before


@pytest.mark.parametrize(("key", "seq"), [(7, -1), (None, 1)])
def test_what_is_not_there_cannot_be_taken_back(book, animal, key, seq):
    written = write(book, a_weight(animal))

    with (
        pytest.raises(CannotWithdraw, match="has no"),
        batch(book, verb="correct", keeper="Ro", written=WRITTEN) as writer,
    ):
        writer.withdraw(EntryKey(key or written, seq))


def test_batches_keep_their_order_when_the_clock_is_set_back_ten_years(book, animal):
    first = write(book, a_weight(animal, 40))
    second = write(book, a_weight(animal, 41), written=WRITTEN - timedelta(days=3653))

    assert second > first
    assert animal_now(book, animal).weight_g == 41
    assert latest_batches(book, 1)[0].id == second


def test_two_copies_with_a_clock_set_back_do_not_choose_the_same_keys(book, animal, folder):
    early = datetime(1999, 1, 1, tzinfo=UTC)
    copies = [create_book(folder / name, station=name) for name in ("a", "b")]
    for copy in copies:
        read_in(copy, [write_out(book, key) for key in batch_keys(book)])

    keys = [write(copy, written=early) for copy in copies for _ in range(20)]

    for copy in copies:
        copy.close()
    assert len(set(keys)) == 40


def test_a_clock_far_in_the_future_is_told_and_nothing_is_written(book, animal):
    before = tables_of(book)

    with pytest.raises(BookError, match="clock of this machine says 2100-01-01"):
        write(book, a_weight(animal), written=datetime(2100, 1, 1, tzinfo=UTC))

    assert tables_of(book) == before


def test_a_batch_remembers_when_and_where_it_was_written(book):
    written = datetime.fromisoformat("2026-10-25T02:30:00.123+01:00")
    key = write(book, written=written)

    row = batch_row(book, key)

    assert (row.written, row.written.utcoffset()) == (written, timedelta(hours=1))
    assert (row.station, row.keeper, row.verb) == ("shed", "Ro", "note")
