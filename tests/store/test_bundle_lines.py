"""A bad cell of a bundle is named by its table, line, column and value, wherever it stands."""

import csv
from collections.abc import Callable
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path

import pytest

from keeper.actions import bundle_rows
from keeper.actions.bundle_files import read_bundle, write_bundle
from keeper.actions.keeping import Keeping
from keeper.husbandry.care import Medicine
from keeper.husbandry.events import HoldKind, HoldSet
from keeper.husbandry.when import at_instant, on_day
from keeper.store.database import create_book
from keeper.store.documents import NotADocument
from keeper.store.exchange import made_ready, read_in
from keeper.store.journal import EntryKey, batch
from keeper.store.readings import put_in
from tests.store.books import DAY, WRITTEN, a_weight, an_offer, tables_of, tails, write

NOW = datetime(2026, 4, 2, 9, tzinfo=UTC)
LAST = 7


@pytest.fixture
def out(book, animal, folder):
    """A bundle with seven lines of weighings in three batches, the last of them in line eight."""
    write(book, *(a_weight(animal, 40.0 + n) for n in range(5)))
    key = write(book, a_weight(animal, 45.0), an_offer(animal, count=2))
    write(book, HoldSet(animal=animal, happened=on_day(DAY), kind=HoldKind.VET, until=DAY))
    told = {"medicine": "ointment", "amount": "thin", "route": "skin", "every_days": 1}
    write(book, Medicine(animal=animal, happened=on_day(DAY), first_on=DAY, last_on=DAY, **told))
    with batch(book, verb="correct", keeper="Ro", written=WRITTEN, reason="misread") as writer:
        writer.withdraw(EntryKey(key, 0))
        writer.add(a_weight(animal, 46.0, happened=at_instant(NOW)))
    put_in(book, {("p1", 20_000): {0: 2950}})
    write_bundle(Keeping(book, {}, lambda: NOW, "Ro"), folder / "out")
    return folder / "out"


def changed(path: Path, line: int, column: str, told: str | Callable[[str], str]) -> None:
    with path.open(encoding="utf-8-sig", newline="") as file:
        lines = list(csv.reader(file))
    at = lines[0].index(column)
    before = lines[line - 1][at]
    lines[line - 1][at] = told if isinstance(told, str) else told(before)
    with path.open("w", encoding="utf-8-sig", newline="") as file:
        csv.writer(file).writerows(lines)


BAD = [
    ("weighing", 8, "weight_g", "heavy", "weight_g cannot be 'heavy'"),
    ("weighing", 8, "weight_g", "", "weight_g cannot be ''"),
    ("weighing", 8, "weight_g", "46.00004", "weight_g cannot be '46.00004': .* finer"),
    ("weighing", 8, "weight_g", "0.0004", "weight_g cannot be '0.0004': .* too small"),
    ("weighing", 8, "weight_g", "1e400", "weight_g cannot be '1e400': a number"),
    ("weighing", 3, "weight_g", "-41", "more than 0 g, got -41"),
    ("weighing", 8, "typed_twice", "maybe", "typed_twice cannot be 'maybe'"),
    ("weighing", 8, "note", "a\0b", "note cannot be .*NUL"),
    ("weighing", 8, "at", "2026-02-30T10:00:00Z", "at cannot be '2026-02-30"),
    ("weighing", 8, "at", "2026-02-03T10:00:00", "at cannot be .* needs the offset"),
    ("weighing", 8, "at", "2026-02-03T10:00:00.5Z", "at cannot be .* finer"),
    ("weighing", 8, "span", "-P1D", "span cannot be .* negative"),
    ("weighing", 8, "span", "a day", "span cannot be 'a day'"),
    ("weighing", 8, "day", "2026-13-01", "day cannot be '2026-13-01'"),
    ("weighing", 8, "animal", "9" * 19, "animal cannot be .*64 bits"),
    ("weighing", 8, "seq", "one", "seq cannot be 'one'"),
    ("offer", 2, "result", "spat out", "result cannot be 'spat out'"),
    ("offer", 2, "count", "0", "got 0"),
    ("hold_set", 2, "until", "tomorrow", "until cannot be 'tomorrow'"),
    ("medicine", 2, "every_days", "0", "got 0"),
    ("batches", 3, "written", "2026-03-01T20:00:00", "a time with its offset"),
    ("batches", 3, "written", "2026-03-01T20:00:00.0005Z", "whole milliseconds"),
    ("batches", 3, "batch", "-4", "a key before 2080"),
    ("batches", 3, "keeper", "R\0", "keeper cannot be .*NUL"),
    ("batches", 2, "animals", "12", "the keys after its own"),
    ("batches", 3, "entries", "few", "entries cannot be 'few'"),
    ("withdrawals", 2, "target_batch", "9" * 18, "target_batch .* an older batch"),
    ("withdrawals", 2, "target_seq", "-3", "target_seq .* an entry or null"),
    ("readings", 2, "hundredths", "2950 warm", "hundredths cannot be '2950 warm'"),
    ("readings", 2, "batch", "x", "batch cannot be 'x'"),
]


@pytest.mark.parametrize(("table", "line", "column", "value", "told"), BAD)
def test_a_bad_cell_is_named_by_table_line_column_and_value(out, table, line, column, value, told):
    changed(out / f"{table}.csv", line, column, value)

    with pytest.raises(NotADocument, match=f"{table}.csv, line {line}: .*{told}"):
        read_bundle(out)


@pytest.mark.parametrize("at_once", [1, 2, 3, LAST, 100])
def test_it_is_named_whatever_stands_before_it_and_however_many_lines_are_read_at_once(
    out, monkeypatch, at_once
):
    monkeypatch.setattr(bundle_rows, "_LINES_AT_ONCE", at_once)
    changed(out / "weighing.csv", 2, "note", "two\nlines")
    changed(out / "weighing.csv", 7, "weight_g", "heavy")

    with pytest.raises(NotADocument, match=r"weighing.csv, line 8: weight_g cannot be 'heavy'"):
        read_bundle(out)


@pytest.mark.parametrize("remembered", [0, 1, 20_000])
def test_what_is_remembered_of_cells_changes_nothing(out, monkeypatch, remembered):
    whole = read_bundle(out).batches
    monkeypatch.setattr(bundle_rows, "_CELLS_KEPT", remembered)

    assert read_bundle(out).batches == whole


@pytest.mark.parametrize("value", ["1", "0", "9"])
def test_an_entry_numbered_twice_or_not_at_all_is_refused_with_its_batch(out, value):
    changed(out / "weighing.csv", 5, "seq", value)

    with pytest.raises(NotADocument, match=r"Batch [0-9]+: entries is .* numbered from 0 to 4"):
        read_bundle(out)


def test_a_line_of_a_batch_that_is_not_there_is_refused(out):
    changed(out / "weighing.csv", 5, "batch", "77")

    with pytest.raises(NotADocument, match=r"weighing.csv: a line belongs to batch 77"):
        read_bundle(out)


def test_rows_are_read_as_the_book_holds_them(out, book):
    told = read_bundle(out).batches
    held = tables_of(book)

    assert {table: sorted(rows, key=repr) for table, rows in told.rows.items() if rows} == {
        table: [row[: len(told.rows[table][0])] for row in _as_hashed(book, table)]
        for table in told.rows
        if held[table]
    }


def _as_hashed(book, table):
    cells = ", ".join(bundle_rows.CELLS[table])
    return sorted(book.connection.execute(f"SELECT {cells} FROM {table}"), key=repr)


def test_the_other_text_of_one_known_entry_alone_is_a_conflict(out, book):
    changed(out / "weighing.csv", 8, "weight_g", "46.1")
    given = read_bundle(out).batches

    taken = made_ready(book, given).taken

    assert len(taken.conflicts) == 1 and taken.new == ()
    assert len(taken.known) == len(given.heads) - 1


@pytest.mark.parametrize("table", ["weighing", "withdrawal"])
def test_a_line_that_only_one_side_has_is_a_conflict(out, book, table):
    whole = read_bundle(out).batches
    fewer = {**whole.rows, table: whole.rows[table][:-1]}
    lacking = bundle_rows_with(whole, fewer)
    more = bundle_rows_with(whole, {**whole.rows, table: [*whole.rows[table], _next(whole, table)]})

    assert len(made_ready(book, lacking).taken.conflicts) == 1
    assert len(made_ready(book, more).taken.conflicts) == 1


def bundle_rows_with(whole, rows):
    return type(whole)(heads=whole.heads, rows=rows)


def _next(whole, table):
    row = list(whole.rows[table][-1])
    row[bundle_rows.CELLS[table].index("seq")] += 1
    return tuple(row)


def test_a_bundle_read_into_an_empty_book_gives_the_same_checksums(out, book, folder):
    with closing(create_book(folder / "two.book", station="two", tail=tails(1))) as two:
        read_in(two, read_bundle(out).batches)

        assert tables_of(two)["batch"] == tables_of(book)["batch"]


def test_an_entry_about_an_animal_that_nobody_brought_is_named(out, folder):
    changed(out / "offer.csv", 2, "animal", "77")
    with (
        closing(create_book(folder / "two.book", station="two", tail=tails(1))) as two,
        pytest.raises(NotADocument, match=r"Batch [0-9]+, entry 1: animal 77 is neither in the"),
    ):
        read_in(two, read_bundle(out).batches)
