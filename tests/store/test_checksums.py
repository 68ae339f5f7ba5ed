"""Whatever of a batch changes by itself, its checksum says so, and says it of that batch alone."""

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from keeper.husbandry.events import Measured, Override, Remark, RemarkKind
from keeper.husbandry.when import on_day
from keeper.store.checking import Concern, check
from keeper.store.checksums import CELLS, HEAD, row_hash, unlike
from keeper.store.database import create_book
from keeper.store.exchange import batch_keys, read_in, write_out
from keeper.store.journal import batch
from keeper.store.schema import EVENT_TABLES, SPINE_TABLES
from tests.store.books import DAY, WRITTEN, a_weight, an_animal, quick_folder, tails, write
from tests.store.old_books import _live
from tests.store.test_checking import by_hand, unguarded

TABLES = {"batch": HEAD, **CELLS}


@pytest.fixture(scope="module")
def lived():
    """A book with rows in every table of record."""
    with quick_folder() as folder:
        made = create_book(Path(folder) / "shed.book", station="shed", tail=tails(0))
        _live(made)
        yield made.connection
        made.close()


@pytest.fixture
def copy(lived):
    """The same in memory, with nothing that guards it."""
    with closing(sqlite3.connect(":memory:", isolation_level=None)) as connection:
        lived.backup(connection)
        connection.execute("PRAGMA ignore_check_constraints = ON")
        for (name,) in connection.execute("SELECT name FROM sqlite_master WHERE type = 'trigger'"):
            connection.execute(f"DROP TRIGGER {name}")
        yield connection


def another(cell, declared):
    """What a cell could say after a bit has turned."""
    if cell is None:
        return "x" if declared == "TEXT" else 1
    if isinstance(cell, str):
        return chr(ord(cell[0]) ^ 1) + cell[1:] if cell else "x"
    return cell + 1_000_003


def changed(connection, table, name):
    """Change the cell *name* of one row of *table*; the batch of the row."""
    key = "id" if table == "batch" else "batch"
    (declared,) = connection.execute(
        "SELECT type FROM pragma_table_info(?) WHERE name = ?", (table, name)
    ).fetchone()
    names = "id" if table in ("batch", "animal", "round") else "batch, seq"
    where = f"({names}) = (SELECT {names} FROM {table} ORDER BY {key} DESC LIMIT 1)"
    owner, cell = connection.execute(f"SELECT {key}, {name} FROM {table} WHERE {where}").fetchone()
    connection.execute(f"UPDATE {table} SET {name} = ? WHERE {where}", (another(cell, declared),))
    return owner


def test_every_table_of_record_is_covered_with_every_column(lived):
    assert {"batch", *CELLS} == {*SPINE_TABLES, *EVENT_TABLES}
    for table, cells in {"batch": (*HEAD, "checksum"), **CELLS}.items():
        told = lived.execute("SELECT name FROM pragma_table_info(?)", (table,)).fetchall()
        assert {name for (name,) in told} == {*cells}, table


def test_a_book_with_entries_of_every_kind_adds_up(lived):
    assert unlike(lived) == []
    assert [t for t in CELLS if not lived.execute(f"SELECT 1 FROM {t} LIMIT 1").fetchone()] == []
    assert lived.execute("SELECT count(*) FROM batch WHERE checksum IS NULL").fetchone() == (0,)


@pytest.mark.parametrize("table", sorted(TABLES))
def test_any_cell_that_changed_by_itself_is_seen(copy, table):
    for name in TABLES[table]:
        copy.execute("BEGIN")
        owner = changed(copy, table, name)

        found = unlike(copy)

        copy.execute("ROLLBACK")
        assert found, name
        if name not in ("id", "batch"):
            assert found == [owner]


@pytest.mark.parametrize("table", sorted(CELLS))
def test_a_row_that_is_lost_is_seen(copy, table):
    (owner,) = copy.execute(f"SELECT max(batch) FROM {table}").fetchone()
    copy.execute(f"DELETE FROM {table} WHERE batch = ?", (owner,))

    assert unlike(copy) == [owner]


def test_a_row_that_came_from_nowhere_is_seen(copy):
    (owner,) = copy.execute("SELECT max(batch) FROM remark").fetchone()
    copy.execute(
        "INSERT INTO remark SELECT animal, at, span, utc_offset, day, batch, 900, note, kind, text"
        " FROM remark WHERE batch = ?",
        (owner,),
    )

    assert unlike(copy) == [owner]


def test_a_checksum_that_itself_changed_is_seen_and_one_that_is_not_known_is_passed_over(copy):
    copy.execute("UPDATE batch SET checksum = checksum + 1 WHERE id = (SELECT max(id) FROM batch)")
    assert len(unlike(copy)) == 1

    copy.execute("UPDATE batch SET checksum = NULL WHERE id = (SELECT max(id) FROM batch)")
    assert unlike(copy) == []


def test_the_sentence_names_the_batch(book, animal):
    key = write(book, a_weight(animal))
    by_hand(book, *unguarded("weighing", "UPDATE weighing SET weight_mg = weight_mg + 1"))

    told = [f.sentence for f in check(book) if f.concern is Concern.CHECKSUMS]

    assert told == [
        f"Batch {key} (note, 2026-03-01) is not as it was written: something in it has changed"
        " by itself."
    ]


def test_a_batch_read_in_elsewhere_has_the_same_checksum(book, animal, folder):
    write(book, a_weight(animal), Measured(animal=animal, happened=on_day(DAY), body_score=3))
    other = create_book(folder / "other.book", station="other", tail=tails(1))

    read_in(other, [write_out(book, key) for key in batch_keys(book)])

    sums = "SELECT id, checksum FROM batch ORDER BY id"
    assert other.connection.execute(sums).fetchall() == book.connection.execute(sums).fetchall()
    assert unlike(other.connection) == []
    other.close()


def test_words_and_numbers_of_other_kinds_are_hashed_as_they_lie_in_the_book(book):
    """A word of an enum where text is meant, a whole number where a fraction is: same cells."""
    animal = an_animal(book, RemarkKind.NOTE)
    with batch(book, verb=RemarkKind.NOTE, keeper="Ro", written=WRITTEN) as writer:
        writer.add(
            Measured(animal=animal, happened=on_day(DAY), body_score=3),
            Remark(animal=animal, happened=on_day(DAY), kind=RemarkKind.NOTE, text="Ä 🐍 '\\"),
        )

    assert unlike(book.connection) == []


def test_a_column_appended_later_changes_no_hash():
    assert row_hash("offer", (1, None, "x")) == row_hash("offer", (1, None, "x", None, None))
    assert row_hash("offer", (1, None, "x")) != row_hash("offer", (1, "x"))
    assert row_hash("offer", ("x, None",)) != row_hash("offer", ("x",))


def test_a_minus_before_a_nought_is_not_kept_and_is_no_change_by_itself():
    figure = Override(happened=on_day(DAY), species="house", key="rack", value=-0.0, reason="own")
    with (
        quick_folder() as folder,
        closing(create_book(Path(folder) / "shed.book", station="shed")) as book,
    ):
        with batch(book, verb="set own figure", keeper="A", written=WRITTEN) as writer:
            writer.add(figure)
        assert check(book) == ()
