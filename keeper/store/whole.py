"""Everything the book holds, table by table, whether it stands or not: for writing it all out."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from keeper.store.database import Book
from keeper.store.journal import BatchId, EntryKey
from keeper.store.reading import Batch, Entry, batch_of_row
from keeper.store.rows import TABLES, from_rows, select_columns
from keeper.store.standing import WHOLE, stands

_MANY = 20_000


@dataclass(frozen=True, slots=True, kw_only=True)
class WholeBatch:
    """A batch, and the animals and rounds that it brought."""

    batch: Batch
    animals: tuple[int, ...]
    rounds: tuple[int, ...]


def every_batch(book: Book) -> Iterator[WholeBatch]:
    """Every batch, oldest first."""
    brought = {table: _brought(book, table) for table in ("animal", "round")}
    rows = book.connection.execute(
        f"""SELECT b.id, b.station, b.keeper, b.verb, b.written, b.utc_offset, b.reason,
            NOT EXISTS (SELECT 1 FROM withdrawn w WHERE w.batch = b.id AND w.seq = {WHOLE})
            FROM batch b ORDER BY b.id"""
    )
    for row in rows:
        found = batch_of_row(row)
        yield WholeBatch(
            batch=found,
            animals=tuple(brought["animal"].get(found.id, ())),
            rounds=tuple(brought["round"].get(found.id, ())),
        )


def every_entry(book: Book, kind: type[Any]) -> Iterator[Entry[Any]]:
    """Every entry of *kind*, in the order of writing."""
    rows = book.connection.execute(
        f"SELECT {select_columns(kind)}, {stands('e')} FROM {TABLES[kind]} e ORDER BY batch, seq"
    )
    while some := rows.fetchmany(_MANY):
        for event, row in zip(from_rows(kind, [row[:-1] for row in some]), some, strict=True):
            yield Entry(event, EntryKey(row[4], row[5]), bool(row[-1]))


def count_of(book: Book) -> int:
    """How many entries the book holds, whether they stand or not."""
    counts = " + ".join(f"(SELECT count(*) FROM {table})" for table in TABLES.values())
    return int(book.connection.execute(f"SELECT {counts}").fetchone()[0])


def every_withdrawal(book: Book) -> Iterator[tuple[BatchId, int, EntryKey]]:
    """Each withdrawal: its batch, its number there, and what it withdraws."""
    rows = book.connection.execute(
        "SELECT batch, seq, target_batch, target_seq FROM withdrawal ORDER BY batch, seq"
    )
    return ((key, seq, EntryKey(*target)) for key, seq, *target in rows)


def probes_read(book: Book) -> tuple[str, ...]:
    """Every probe that a reading was ever kept of, by name."""
    rows = book.connection.execute(
        """SELECT probe FROM reading_day UNION SELECT probe FROM reading_layer
           UNION SELECT probe FROM reading_over ORDER BY probe"""
    )
    return tuple(probe for (probe,) in rows)


def _brought(book: Book, table: str) -> dict[BatchId, list[int]]:
    found: dict[BatchId, list[int]] = {}
    for key, batch in book.connection.execute(f"SELECT id, batch FROM {table} ORDER BY id"):
        found.setdefault(batch, []).append(key)
    return found
