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
from typing import NamedTuple

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import Event
from keeper.language import tr
from keeper.store.checksums import INSERTS, insert_batch
from keeper.store.database import Book, writing
from keeper.store.errors import BookError, CannotWithdraw
from keeper.store.many import AMONG, keys_told
from keeper.store.rows import TABLES, Cell, checked_text, to_row
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
    must_stand: list[EntryKey] = field(default_factory=list)
    things: list[tuple[str, int]] = field(default_factory=list)

    def new_animal(self) -> AnimalId:
        """A key for an animal that the book does not hold yet."""
        return self._new_thing("animal")

    def new_round(self) -> int:
        """A key for a feeding night that begins."""
        return self._new_thing("round")

    def add(self, *events: Event) -> None:
        self.events.extend(events)

    def withdraw(self, target: EntryKey, *, may_be_gone: bool = False) -> None:
        """The entry *target* no longer stands once this batch is written.

        may_be_gone: it need not stand now; otherwise the batch is refused.
        """
        self.targets.append(target)
        if not may_be_gone:
            self.must_stand.append(target)

    def _new_thing(self, table: str) -> int:
        key = self.id + len(self.things) + 1
        self.things.append((table, key))
        return key


@contextmanager
def batch(
    book: Book, *, verb: str, keeper: str, written: datetime, reason: str | None = None
) -> Iterator[BatchWriter]:
    """Write one batch; on any error none of it is written.

    verb: the keeper's word for what was done. written: aware instant of writing.
    """
    said = _Said(book.station, keeper, verb, reason, written)
    with writing(book) as connection, _begun(book, connection, said) as writer:
        yield writer


@contextmanager
def batch_within(
    book: Book, connection: sqlite3.Connection, *, verb: str, keeper: str, written: datetime
) -> Iterator[BatchWriter]:
    """As ``batch``, in a transaction that is open already: it comes with all else there, or not."""
    with _begun(book, connection, _Said(book.station, keeper, verb, None, written)) as writer:
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
    said = _Said(book.station, "", "suppose", None, written)
    with suppress(_OnlySupposed), writing(book) as connection:
        with _begun(book, connection, said) as writer:
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


def first_key_at(instant: datetime) -> BatchId:
    """The least key of a batch that is written at *instant*."""
    return max((instant - _EPOCH) // _MILLISECOND, 0) << _TAIL_BITS


def touched_animals(connection: sqlite3.Connection, batches: set[BatchId]) -> set[AnimalId]:
    """Every animal that the entries of *batches* are about."""
    told = keys_told(batches)
    return {
        animal
        for table in ANIMAL_COLUMNS
        for (animal,) in connection.execute(
            f"SELECT DISTINCT animal FROM {table} WHERE batch {AMONG}", (told,)
        )
    }


class _OnlySupposed(Exception):
    """Ends a supposition, so that its transaction is rolled back."""


class _Said(NamedTuple):
    """What a batch's own row says beside its key."""

    station: str
    keeper: str
    verb: str
    reason: str | None
    written: datetime


@contextmanager
def _begun(book: Book, connection: sqlite3.Connection, said: _Said) -> Iterator[BatchWriter]:
    """A batch with its key; what it collected is in the tables when the block ends."""
    offset = said.written.utcoffset()
    if offset is None:
        raise ValueError(f"a time of writing needs its offset, got {said.written.isoformat()}")
    station, keeper, verb = (checked_text(text) for text in said[:3])
    reason = None if said.reason is None else checked_text(said.reason)
    writer = BatchWriter(_next_key(connection, said.written, book.tail), connection)
    yield writer
    at_ms = (said.written - _UNIX) // _MILLISECOND
    head = (writer.id, station, keeper, verb, at_ms, offset // _MINUTE, reason)
    _write(connection, writer, head)


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
            tr(
                "The clock of this machine says {now}; set it right, then write again."
                " Nothing was written.",
                now=written.date().isoformat(),
            )
        )
    return key


def _write(connection: sqlite3.Connection, writer: BatchWriter, head: tuple[Cell, ...]) -> None:
    """All that *writer* collected, under its own row, and the state that follows from it."""
    for target in writer.must_stand:
        _refuse_idle(connection, target, writer.id)
    rows = _rows(writer)
    insert_batch(connection, head, rows)
    for table, cells in rows.items():
        connection.executemany(INSERTS[table], cells)
    animals = {
        animal
        for event in writer.events
        if TABLES[type(event)] in ANIMAL_COLUMNS
        and (animal := getattr(event, "animal", None)) is not None
    }
    refresh_after(connection, animals, rows)
    if writer.targets:
        changed = reckon(connection, {target.batch for target in writer.targets})
        refresh(connection, touched_animals(connection, changed))


def _rows(writer: BatchWriter) -> dict[str, list[tuple[Cell, ...]]]:
    """The rows of a batch by table, in an order in which each finds what it refers to."""
    rows: dict[str, list[tuple[Cell, ...]]] = {}
    for table, key in writer.things:
        rows.setdefault(table, []).append((key, writer.id))
    for seq, event in enumerate(writer.events):
        rows.setdefault(TABLES[type(event)], []).append(to_row(event, writer.id, seq))
    for n, target in enumerate(writer.targets):
        rows.setdefault("withdrawal", []).append((writer.id, n, target.batch, target.seq))
    return rows


def _refuse_idle(connection: sqlite3.Connection, target: EntryKey, writing: BatchId) -> None:
    """A withdrawal must find something that stands, or the keeper is told of a change not made."""
    found = connection.execute("SELECT 1 FROM batch WHERE id = ?", (target.batch,)).fetchone()
    if found is None or target.batch >= writing:
        raise CannotWithdraw(
            tr("The book has no batch {batch}; nothing was taken back.", batch=target.batch)
        )
    if target.seq != WHOLE and not has_entry(connection, target):
        raise CannotWithdraw(
            tr(
                "Batch {batch} has no entry {number}; nothing was taken back.",
                batch=target.batch,
                number=target.seq,
            )
        )
    gone = connection.execute(
        "SELECT 1 FROM withdrawn WHERE batch = ? AND seq IN (?, ?)",
        (target.batch, target.seq, WHOLE),
    ).fetchone()
    if gone is not None:
        raise CannotWithdraw(
            tr("Batch {batch} is taken back already; nothing was changed.", batch=target.batch)
        )


def has_entry(connection: sqlite3.Connection, key: EntryKey) -> bool:
    """True if the batch wrote an entry of that number."""
    return any(
        connection.execute(
            f"SELECT 1 FROM {table} WHERE batch = ? AND seq = ?", (key.batch, key.seq)
        ).fetchone()
        for table in EVENT_TABLES
    )
