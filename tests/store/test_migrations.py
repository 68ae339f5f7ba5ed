"""A book of every earlier version becomes one of this version, whole, or stays as it was."""

import sqlite3
from contextlib import closing

import pytest

from keeper.store.backups import backups_of, prove, restore
from keeper.store.checking import check
from keeper.store.checksums import unlike
from keeper.store.database import SCHEMA_VERSION, open_book
from keeper.store.durable import sha256_of
from keeper.store.errors import BookError, ReadOnlyBook
from keeper.store.migrations import STEPS, bring_up
from keeper.store.schema import CACHES, new_parts, schema_parts
from tests.store.books import a_weight, an_animal, write
from tests.store.golden import golden, schema_text
from tests.store.old_books import old_book

OLDER = range(1, SCHEMA_VERSION)
ADDED = {("batch", "checksum")}
"""Columns of a table of record that a step has added."""


@pytest.fixture(params=OLDER)
def older(request, folder):
    """Path of a book of an earlier version."""
    return laid_down(request.param, folder / "old.book")


def laid_down(version, path):
    with closing(sqlite3.connect(path)) as book:
        book.executescript(old_book(version).read_text(encoding="utf-8"))
    return path


def records(path):
    """Rows of every table of record that holds any, without what is derived or added."""
    with closing(sqlite3.connect(path)) as book:
        names = {name.removeprefix("table ") for name in schema_parts(book) if "table " in name}
        tables = {name: set(rows_of(book, name)) for name in names - {*CACHES}}
    return {name: rows for name, rows in tables.items() if rows}


def rows_of(book, table):
    told = book.execute("SELECT name FROM pragma_table_info(?)", (table,)).fetchall()
    names = [name for (name,) in told if (table, name) not in ADDED]
    return book.execute(f"SELECT {', '.join(names)} FROM {table}")


def test_the_books_of_earlier_versions_have_a_past(older):
    assert sum(map(len, records(older).values())) > 1000


def test_an_earlier_book_becomes_one_of_this_version_with_every_row(older):
    before = records(older)

    with closing(open_book(older, station="shed").connection) as book:
        assert schema_text(book) == golden(SCHEMA_VERSION).read_text("utf-8")
        assert book.execute("PRAGMA user_version").fetchone() == (SCHEMA_VERSION,)
        assert book.execute("PRAGMA foreign_keys").fetchone() == (1,)
    assert records(older) == before


def test_an_earlier_book_is_sound_and_can_be_written_in_afterwards(older):
    book = open_book(older, station="shed")

    write(book, a_weight(an_animal(book, "new")))

    assert check(book) == ()
    book.close()


def test_the_book_as_it_was_is_backed_up_first_and_can_be_gone_back_to(older, folder):
    before = records(older)
    open_book(older, station="shed").close()

    (backup,) = backups_of(older)
    assert (backup.why, prove(backup)) == (f"before-version-{SCHEMA_VERSION}", ())
    restore(backup, folder / "gone-back.book")
    assert records(folder / "gone-back.book") == before
    with closing(sqlite3.connect(folder / "gone-back.book")) as book:
        assert book.execute("PRAGMA user_version").fetchone()[0] < SCHEMA_VERSION


def test_an_earlier_book_that_may_only_be_read_is_read_and_keeps_every_byte(older):
    before = sha256_of(older)

    book = open_book(older, station="shed", read_only=True)

    assert schema_parts(book.connection) == dict(new_parts())
    assert check(book) == ()
    with pytest.raises(ReadOnlyBook):
        an_animal(book)
    with pytest.raises(sqlite3.OperationalError, match="readonly"):
        book.connection.execute("DELETE FROM animal_now")
    book.close()
    assert sha256_of(older) == before
    assert list(older.parent.iterdir()) == [older]


def test_of_what_was_written_before_there_were_checksums_none_is_made_up(folder):
    book = open_book(laid_down(1, folder / "old.book"), station="shed")
    new = write(book, a_weight(an_animal(book, "new")))

    known = {key for (key,) in book.connection.execute("SELECT id FROM batch WHERE checksum > 0")}

    assert new in known
    assert len(known) == 2
    assert unlike(book.connection) == []
    book.close()


def test_a_second_process_finds_the_work_done(older):
    first = open_book(older, station="shed")

    before = list(first.connection.iterdump())

    bring_up(first.connection, {SCHEMA_VERSION - 1: refuse})

    assert list(first.connection.iterdump()) == before
    first.close()


def refuse(connection):
    connection.execute("DELETE FROM animal_now")
    raise RuntimeError("half way")


def a_column_too_many(connection):
    connection.execute("ALTER TABLE remark ADD COLUMN extra TEXT")


def without_triggers(connection):
    """What a table looks like after it was made anew by copying: its triggers are gone."""
    for number, step in STEPS.items():
        assert number < SCHEMA_VERSION
        step(connection)
    for verb in ("update", "delete"):
        connection.execute(f"DROP TRIGGER IF EXISTS remark_no_{verb}")


@pytest.mark.parametrize(
    ("step", "told"), [(refuse, "half way"), (a_column_too_many, "no step makes these")]
)
def test_a_step_that_goes_wrong_changes_nothing(older, step, told):
    with closing(sqlite3.connect(older, isolation_level=None)) as book:
        before = (list(book.iterdump()), book.execute("PRAGMA user_version").fetchone())

        with pytest.raises((RuntimeError, AssertionError), match=told):
            bring_up(book, {SCHEMA_VERSION - 1: step})

        assert (list(book.iterdump()), book.execute("PRAGMA user_version").fetchone()) == before


def test_triggers_that_a_step_loses_are_put_back(older):
    with closing(sqlite3.connect(older, isolation_level=None)) as book:
        bring_up(book, {SCHEMA_VERSION - 1: without_triggers})

        assert schema_parts(book) == dict(new_parts())


def test_an_earlier_book_with_a_row_that_names_nothing_is_refused_unchanged(older):
    with closing(sqlite3.connect(older)) as book:
        book.execute("INSERT INTO animal (id, batch) VALUES (5, 4)")
        book.commit()
    before = sha256_of(older)

    with pytest.raises(BookError, match="names a batch that is not there"):
        open_book(older, station="shed")

    assert sha256_of(older) == before


def test_every_earlier_version_has_its_book_and_its_schema():
    for version in OLDER:
        assert old_book(version).exists(), version
        assert golden(version).exists(), version
