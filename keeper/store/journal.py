"""Write in the book: batches, withdrawals, corrections. Nothing is overwritten.

A batch is one thing the keeper did. Its key is 41 bits of milliseconds since 2020 and
22 random bits, and always larger than any key in the book: it is the same on every
machine that exchanges it, and it orders batches by writing even if the clock is set back
(the milliseconds then count on from the largest key, and the random bits still keep two
copies of one book from choosing the same key).
"""

import sqlite3
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import Event
from keeper.store.database import Book, writing
from keeper.store.errors import BookError, CannotWithdraw
from keeper.store.rows import TABLES, checked_text, insert_sql, to_row
from keeper.store.schema import ANIMAL_COLUMNS, EVENT_TABLES
from keeper.store.standing import WHOLE, reckon
from keeper.store.state import refresh, refresh_after

_EPOCH = datetime(2020, 1, 1, tzinfo=UTC)
_UNIX = datetime(1970, 1, 1, tzinfo=UTC)
_MILLISECOND = timedelta(milliseconds=1)
_MINUTE = timedelta(minutes=1)
_TAIL_BITS = 22
KEY_END = 2**63 - 2**60
"""Keys stay below this, which is the year 2080; a book could otherwise run out of keys."""
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
    for text in (book.station, keeper, verb, reason or ""):
        checked_text(text)
    with writing(book) as connection, _begun(book, connection, written) as writer:
        _write_head(connection, book, writer.id, (keeper, verb, reason), written)
        yield writer


@contextmanager
def supposed(
    book: Book, old: Iterable[EntryKey], events: Iterable[Event], written: datetime
) -> Iterator[None]:
    """The book as it would read with *events* in place of the entries *old*.

    Nothing of it stays: the transaction is rolled back when the block ends. Write nothing in it.

    Raises:
        CannotWithdraw: one of *old* does not stand.
        BookError: the book cannot be written just now, so nothing can be supposed either.
    """
    with suppress(_OnlySupposed), writing(book) as connection:
        with _begun(book, connection, written) as writer:
            _write_head(connection, book, writer.id, ("", "suppose", None), written)
            for key in old:
                writer.withdraw(key)
            writer.add(*events)
        yield
        raise _OnlySupposed


def withdraw_batch(
    book: Book, target: BatchId, *, verb: str, keeper: str, written: datetime
) -> BatchId:
    """Take back the whole of *target*; taking that back again is redo.

    Raises:
        CannotWithdraw: the book has no such batch, or it does not stand.
    """
    with batch(book, verb=verb, keeper=keeper, written=written) as writer:
        writer.withdraw(EntryKey(target, WHOLE))
    return writer.id


def milliseconds_of(batch: BatchId) -> int:
    """When *batch* was written, in milliseconds since 1970, as far as its key tells."""
    return (batch >> _TAIL_BITS) + (_EPOCH - _UNIX) // _MILLISECOND


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


class _OnlySupposed(Exception):
    """Ends a supposition, so that its transaction is rolled back."""


@contextmanager
def _begun(book: Book, connection: sqlite3.Connection, written: datetime) -> Iterator[BatchWriter]:
    """A batch with its key; what it collected is in the tables when the block ends."""
    if written.utcoffset() is None:
        raise ValueError(f"a time of writing needs its offset, got {written.isoformat()}")
    writer = BatchWriter(_next_key(connection, written, book.tail), connection)
    yield writer
    _write_events(connection, writer)
    _write_withdrawals(connection, writer)


def _write_head(
    connection: sqlite3.Connection,
    book: Book,
    key: BatchId,
    said: tuple[str, str, str | None],
    written: datetime,
) -> None:
    """The batch's own row: station, keeper, verb and reason."""
    keeper, verb, reason = said
    offset = written.utcoffset() or timedelta(0)
    connection.execute(
        """INSERT INTO batch (id, station, keeper, verb, written, utc_offset, reason)
           VALUES (?, ?, ?, ?, ?, ?, ?)""",
        (
            key,
            book.station,
            keeper,
            verb,
            (written - _UNIX) // _MILLISECOND,
            offset // _MINUTE,
            reason,
        ),
    )


def _next_key(connection: sqlite3.Connection, written: datetime, tail: Callable[[], int]) -> int:
    clock = (written - _EPOCH) // _MILLISECOND
    (largest,) = connection.execute(
        """SELECT max(coalesce((SELECT max(id) FROM batch), 0),
                      coalesce((SELECT max(id) FROM animal), 0),
                      coalesce((SELECT max(id) FROM round), 0))"""
    ).fetchone()
    key = (max(clock, 0) << _TAIL_BITS) | tail()
    if key <= largest:
        key = ((largest >> _TAIL_BITS) + 1 << _TAIL_BITS) | tail()
    if key >= KEY_END:
        raise BookError(
            f"The clock of this machine says {written:%d %B %Y}; set it right, then write again."
            " Nothing was written."
        )
    return key


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
    refresh_after(connection, animals, {TABLES[kind] for kind in rows})


def _write_withdrawals(connection: sqlite3.Connection, writer: BatchWriter) -> None:
    if not writer.targets:
        return
    for target in writer.targets:
        _refuse_idle(connection, target, writer.id)
    connection.executemany(
        "INSERT INTO withdrawal (batch, seq, target_batch, target_seq) VALUES (?, ?, ?, ?)",
        [(writer.id, n, target.batch, target.seq) for n, target in enumerate(writer.targets)],
    )
    changed = reckon(connection, {target.batch for target in writer.targets})
    refresh(connection, touched_animals(connection, changed))


def _refuse_idle(connection: sqlite3.Connection, target: EntryKey, writing: BatchId) -> None:
    """A withdrawal must find something that stands, or the keeper is told of a change not made."""
    found = connection.execute("SELECT 1 FROM batch WHERE id = ?", (target.batch,)).fetchone()
    if found is None or target.batch >= writing:
        raise CannotWithdraw(f"The book has no batch {target.batch}; nothing was taken back.")
    if target.seq != WHOLE and not has_entry(connection, target):
        raise CannotWithdraw(
            f"Batch {target.batch} has no entry {target.seq}; nothing was taken back."
        )
    gone = connection.execute(
        "SELECT 1 FROM withdrawn WHERE batch = ? AND seq IN (?, ?)",
        (target.batch, target.seq, WHOLE),
    ).fetchone()
    if gone is not None:
        raise CannotWithdraw(f"Batch {target.batch} is taken back already; nothing was changed.")


def has_entry(connection: sqlite3.Connection, key: EntryKey) -> bool:
    """True if the batch wrote an entry of that number."""
    return any(
        connection.execute(
            f"SELECT 1 FROM {table} WHERE batch = ? AND seq = ?", (key.batch, key.seq)
        ).fetchone()
        for table in EVENT_TABLES
    )
