"""Write in the book: batches, withdrawals, corrections. Nothing is overwritten.

A batch is one thing the keeper did. Its key is 41 bits of milliseconds since 2020 and
22 random bits, and always larger than any key in the book: it is the same on every
machine that exchanges it, and it orders batches by writing even if the clock is set back.
"""

import sqlite3
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import UTC, datetime

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import Event
from keeper.store.database import Book, writing
from keeper.store.errors import CannotWithdraw
from keeper.store.rows import TABLES, insert_sql, to_row
from keeper.store.schema import ANIMAL_COLUMNS
from keeper.store.standing import WHOLE, batch_stands, reckon
from keeper.store.state import refresh

_EPOCH_MS = int(datetime(2020, 1, 1, tzinfo=UTC).timestamp() * 1000)
UNDO_VERB = "take back"
REDO_VERB = "put back"

BatchId = int


@dataclass(frozen=True, slots=True)
class EntryKey:
    """Names one entry in any book: its batch and its number there."""

    batch: BatchId
    seq: int


@dataclass(slots=True)
class BatchWriter:
    """Collects what one batch says; written when its ``batch`` block ends."""

    id: BatchId
    connection: sqlite3.Connection
    events: list[Event] = field(default_factory=list)
    targets: list[EntryKey] = field(default_factory=list)
    _things: int = 0

    def new_animal(self) -> AnimalId:
        """A key for an animal that the book does not hold yet."""
        return self._new_thing("animal")

    def new_round(self) -> int:
        """A key for a feeding night that begins."""
        return self._new_thing("round")

    def add(self, *events: Event) -> None:
        self.events.extend(events)

    def withdraw(self, target: EntryKey) -> None:
        """The entry *target* no longer stands once this batch is written."""
        self.targets.append(target)

    def _new_thing(self, table: str) -> int:
        self._things += 1
        key = self.id + self._things
        self.connection.execute(f"INSERT INTO {table} (id, batch) VALUES (?, ?)", (key, self.id))
        return key


@contextmanager
def batch(
    book: Book, *, verb: str, keeper: str, written: datetime, reason: str | None = None
) -> Iterator[BatchWriter]:
    """Write one batch; on any error none of it is written.

    verb: the keeper's word for what was done. written: aware instant of writing.
    """
    offset = written.utcoffset()
    if offset is None:
        raise ValueError(f"a time of writing needs its offset, got {written.isoformat()}")
    with writing(book) as connection:
        key = _next_key(connection, written, book.tail)
        connection.execute(
            """INSERT INTO batch (id, station, keeper, verb, written, utc_offset, reason)
               VALUES (?, ?, ?, ?, ?, ?, ?)""",
            (
                key,
                book.station,
                keeper,
                verb,
                int(written.timestamp() * 1000),
                int(offset.total_seconds()) // 60,
                reason,
            ),
        )
        writer = BatchWriter(key, connection)
        yield writer
        _write_events(connection, writer)
        _write_withdrawals(connection, writer)


def withdraw_batch(
    book: Book, target: BatchId, *, verb: str, keeper: str, written: datetime
) -> BatchId:
    """Take back the whole of *target*; taking that back again is redo.

    Raises:
        CannotWithdraw: the book has no such batch, or it does not stand.
    """
    found = book.connection.execute("SELECT 1 FROM batch WHERE id = ?", (target,)).fetchone()
    if found is None:
        raise CannotWithdraw(f"The book has no batch {target}; nothing was taken back.")
    if not batch_stands(book.connection, target):
        raise CannotWithdraw(f"Batch {target} is taken back already.")
    with batch(book, verb=verb, keeper=keeper, written=written) as writer:
        writer.withdraw(EntryKey(target, WHOLE))
    return writer.id


def touched_animals(connection: sqlite3.Connection, batches: set[BatchId]) -> set[AnimalId]:
    """Every animal that the entries of *batches* are about."""
    return {
        animal
        for batch_id in batches
        for table in ANIMAL_COLUMNS
        for (animal,) in connection.execute(
            f"SELECT DISTINCT animal FROM {table} WHERE batch = ?", (batch_id,)
        )
    }


def _next_key(connection: sqlite3.Connection, written: datetime, tail: Callable[[], int]) -> int:
    candidate = (int(written.timestamp() * 1000) - _EPOCH_MS << 22) | tail()
    (largest,) = connection.execute(
        """SELECT max(coalesce((SELECT max(id) FROM batch), 0),
                      coalesce((SELECT max(id) FROM animal), 0),
                      coalesce((SELECT max(id) FROM round), 0))"""
    ).fetchone()
    return max(candidate, int(largest) + 1)


def _write_events(connection: sqlite3.Connection, writer: BatchWriter) -> None:
    rows: dict[type[Event], list[tuple[object, ...]]] = {}
    for seq, event in enumerate(writer.events):
        rows.setdefault(type(event), []).append(to_row(event, writer.id, seq))
    for kind, cells in rows.items():
        connection.executemany(insert_sql(kind), cells)
    animals = {
        animal
        for event in writer.events
        if TABLES[type(event)] in ANIMAL_COLUMNS
        and (animal := getattr(event, "animal", None)) is not None
    }
    refresh(connection, animals)


def _write_withdrawals(connection: sqlite3.Connection, writer: BatchWriter) -> None:
    if not writer.targets:
        return
    connection.executemany(
        "INSERT INTO withdrawal (batch, seq, target_batch, target_seq) VALUES (?, ?, ?, ?)",
        [(writer.id, n, target.batch, target.seq) for n, target in enumerate(writer.targets)],
    )
    changed = reckon(connection, {target.batch for target in writer.targets})
    refresh(connection, touched_animals(connection, changed))
