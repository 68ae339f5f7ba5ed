"""The tables of a book do not drift unnoticed: a change of schema is a change of a file here."""

from dataclasses import fields

import pytest

from keeper.husbandry.now import AnimalNow
from keeper.store.database import APPLICATION_ID, SCHEMA_VERSION
from keeper.store.migrations import missing_parts
from keeper.store.rows import TABLES, select_columns
from keeper.store.schema import EVENT_TABLES, SPINE_TABLES
from tests.store.golden import golden, schema_text


def test_a_new_book_has_the_schema_of_the_golden_file(book):
    told = "the schema changed: old_books.py first, raise SCHEMA_VERSION, then golden.py"

    assert schema_text(book.connection) == golden(SCHEMA_VERSION).read_text("utf-8"), told


def test_a_new_book_says_whose_and_which_version_it_is(book):
    assert book.connection.execute("PRAGMA application_id").fetchone() == (APPLICATION_ID,)
    assert book.connection.execute("PRAGMA user_version").fetchone() == (SCHEMA_VERSION,)


@pytest.mark.parametrize("table", [*SPINE_TABLES, *EVENT_TABLES])
def test_every_table_of_record_is_strict_and_insert_only(book, table):
    strict = dict(book.connection.execute("SELECT name, strict FROM pragma_table_list"))

    assert strict[table] == 1
    assert not missing_parts(book.connection)


@pytest.mark.parametrize("kind", TABLES)
def test_every_field_of_an_event_has_its_column_and_no_column_is_spare(book, kind):
    columns = {row[1] for row in book.connection.execute(f"PRAGMA table_info({TABLES[kind]})")}

    assert columns == set(select_columns(kind).replace("e.", "").split(", "))


def test_every_field_of_the_state_row_has_its_column(book):
    columns = book.connection.execute("PRAGMA table_info(animal_now)").fetchall()

    assert len(columns) == len(fields(AnimalNow))


def test_a_dropped_guard_is_missed(book):
    book.connection.execute("DROP TRIGGER offer_no_update")

    assert missing_parts(book.connection) == {"offer_no_update"}
