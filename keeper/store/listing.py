"""The batches of the book page by page, with what each wrote and withdrew."""

from collections import defaultdict
from collections.abc import Sequence
from typing import Any

from keeper.husbandry.animal import AnimalId
from keeper.store.database import Book
from keeper.store.journal import BatchId, EntryKey
from keeper.store.reading import Batch, Entry, batch_of_row, entry_of_row
from keeper.store.rows import KINDS, TABLES, select_columns
from keeper.store.schema import ANIMAL_COLUMNS
from keeper.store.standing import WHOLE, stands

Counts = dict[str, int]


def batches_before(
    book: Book, most: int, *, before: BatchId | None = None, animal: AnimalId | None = None
) -> list[Batch]:
    """The newest *most* batches older than *before*, newest first, withdrawals among them.

    animal: only those that wrote something about it.
    """
    about, values = _about(animal)
    rows = book.connection.execute(
        f"""SELECT b.id, b.station, b.keeper, b.verb, b.written, b.utc_offset, b.reason,
            NOT EXISTS (SELECT 1 FROM withdrawn w WHERE w.batch = b.id AND w.seq = {WHOLE})
            FROM batch b WHERE (? IS NULL OR b.id < ?) AND {about}
            ORDER BY b.id DESC LIMIT ?""",
        (before, before, *values, most),
    )
    return [batch_of_row(row) for row in rows]


def counts_between(book: Book, oldest: BatchId, newest: BatchId) -> dict[BatchId, Counts]:
    """How many entries of each table the batches from *oldest* to *newest* wrote."""
    counts: dict[BatchId, Counts] = defaultdict(dict)
    for table in TABLES.values():
        rows = book.connection.execute(
            f"SELECT batch, count(*) FROM {table} WHERE batch BETWEEN ? AND ? GROUP BY batch",
            (oldest, newest),
        )
        for batch, count in rows:
            counts[batch][table] = count
    return counts


def entries_in(book: Book, batch: BatchId, tables: Sequence[str], most: int) -> list[Entry[Any]]:
    """The first *most* entries that *batch* wrote in *tables*, in its own order."""
    found: list[Entry[Any]] = []
    for table in tables:
        kind = KINDS[table]
        rows = book.connection.execute(
            f"""SELECT {select_columns(kind)}, {stands("e")} FROM {table} e
                WHERE e.batch = ? ORDER BY e.seq LIMIT ?""",
            (batch, most),
        )
        found += [entry_of_row(kind, row) for row in rows]
    return sorted(found, key=lambda entry: entry.key.seq)[:most]


def withdrawn_by(book: Book, batch: BatchId, most: int) -> list[EntryKey]:
    """The first *most* things that *batch* withdrew; ``seq`` is WHOLE for a whole batch."""
    rows = book.connection.execute(
        "SELECT target_batch, target_seq FROM withdrawal WHERE batch = ? ORDER BY seq LIMIT ?",
        (batch, most),
    )
    return [EntryKey(*row) for row in rows]


def entry_at(book: Book, key: EntryKey) -> Entry[Any] | None:
    """The entry under *key*, whether it stands or not."""
    for table, kind in KINDS.items():
        row = book.connection.execute(
            f"""SELECT {select_columns(kind)}, {stands("e")} FROM {table} e
                WHERE e.batch = ? AND e.seq = ?""",
            (key.batch, key.seq),
        ).fetchone()
        if row is not None:
            return entry_of_row(kind, row)
    return None


def _about(animal: AnimalId | None) -> tuple[str, tuple[AnimalId, ...]]:
    if animal is None:
        return "1", ()
    each = " UNION ".join(f"SELECT batch FROM {t} WHERE animal = ?" for t in ANIMAL_COLUMNS)
    return f"b.id IN ({each})", (animal,) * len(ANIMAL_COLUMNS)
