"""Batches that travel: written out whole as JSON, read in whole in another book.

Joining two books is a union of batches by key. In whatever order and however often the
documents come, both books end with the same tables, state rows among them.
"""

import sqlite3
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import Any

from keeper.husbandry.events import Event
from keeper.language import tr
from keeper.store.checksums import INSERTS, insert_batch
from keeper.store.database import Book, writing
from keeper.store.documents import Document, NotADocument, from_json, to_json
from keeper.store.errors import BookError
from keeper.store.journal import BatchId, EntryKey, batch, has_entry, touched_animals
from keeper.store.reading import batch_row, entries_of
from keeper.store.rows import TABLES, Cell, to_row
from keeper.store.schema import EVENT_TABLES
from keeper.store.standing import WHOLE, reckon
from keeper.store.state import refresh
from keeper.store.ticking import Counting, Step, Tick, silent

_UNIX = datetime(1970, 1, 1, tzinfo=UTC)
_THINGS = ("animal", "round")
Rows = dict[str, list[tuple[Cell, ...]]]


Given = Document | Mapping[str, Any]
"""A document that was read already, or the values of its JSON."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Taken:
    """What became of the documents, as batch keys in order.

    conflicts: keys that both sides know with different content. Unless it is empty,
    nothing was taken in and ``new`` is empty.
    """

    new: tuple[BatchId, ...]
    known: tuple[BatchId, ...]
    conflicts: tuple[BatchId, ...]


def batch_keys(book: Book) -> tuple[BatchId, ...]:
    """Every batch of the book, oldest key first."""
    rows = book.connection.execute("SELECT id FROM batch ORDER BY id")
    return tuple(key for (key,) in rows)


def write_out(book: Book, key: BatchId) -> dict[str, Any]:
    """All that the batch *key* says, as values for a JSON writer.

    Raises:
        BookError: the book has no such batch.
    """
    return to_json(_document(book, key))


@dataclass(frozen=True, slots=True, kw_only=True)
class Ready:
    """Documents set beside the book, with the rows of the new ones made; nothing is written.

    lines: how many rows that is.
    """

    taken: Taken
    rows: tuple[tuple[Document, Rows], ...]
    lines: int


def made_ready(book: Book, documents: Iterable[Given], tick: Tick = silent) -> Ready:
    """What ``read_in`` would do, up to the writing: all that takes time and no lock.

    Raises:
        NotADocument: one cannot be read.
    """
    new, known, conflicts = _sorted_out(book, _read(documents), tick)
    if conflicts:
        taken = Taken(new=(), known=_keys(known), conflicts=_keys(conflicts))
        return Ready(taken=taken, rows=(), lines=0)
    rows = tuple((new[key], _rows(new[key])) for key in sorted(new))
    taken = Taken(new=_keys(new), known=_keys(known), conflicts=())
    lines = sum(len(cells) for _, by_table in rows for cells in by_table.values())
    return Ready(taken=taken, rows=rows, lines=lines)


def read_in(book: Book, documents: Iterable[Given]) -> Taken:
    """Take in the batches of *documents*, all of them or none, in one transaction.

    Raises:
        NotADocument: one cannot be read, or builds on a batch that is neither here nor given.
        BookError: the book cannot be written.
    """
    read = _read(documents)
    with writing(book) as connection:
        ready = made_ready(book, read)
        put_in(connection, ready)
    return ready.taken


def put_in(connection: sqlite3.Connection, ready: Ready, tick: Tick = silent) -> None:
    """Write what was made ready, in a transaction that is open already.

    Raises:
        NotADocument: it builds on a batch that is neither here nor among the documents.
        BookError: something of it came into the book meanwhile.
    """
    keys = [document.batch for document, _ in ready.rows]
    there = "SELECT 1 FROM batch WHERE id = ?"
    if any(connection.execute(there, (key,)).fetchone() for key in keys):
        raise BookError(tr("The book was written in meanwhile; look at the other one again."))
    _write(connection, ready.rows, Counting(tick, Step.WRITING, ready.lines))


def take_out(
    book: Book, batches: Iterable[BatchId], *, verb: str, keeper: str, written: datetime
) -> BatchId:
    """Withdraw *batches* in one batch, whether each of them stands or not; its key.

    What was withdrawn by one of them stands again, so the book reads as if none had come.

    Raises:
        BookError: the book has not all of them, or cannot be written.
    """
    targets = tuple(dict.fromkeys(batches))
    missing = next((key for key in targets if batch_row(book, key) is None), None)
    if missing is not None:
        raise BookError(tr("The book has no batch {batch}; nothing was taken back.", batch=missing))
    with batch(book, verb=verb, keeper=keeper, written=written) as writer:
        for target in targets:
            writer.withdraw(EntryKey(target, WHOLE), may_be_gone=True)
    return writer.id


def _read(documents: Iterable[Given]) -> list[Document]:
    return [each if isinstance(each, Document) else from_json(each) for each in documents]


def _keys(keys: Iterable[BatchId]) -> tuple[BatchId, ...]:
    return tuple(sorted(keys))


def _sorted_out(
    book: Book, read: Sequence[Document], tick: Tick
) -> tuple[dict[BatchId, Document], set[BatchId], set[BatchId]]:
    new: dict[BatchId, Document] = {}
    known: set[BatchId] = set()
    conflicts: set[BatchId] = set()
    counting = Counting(tick, Step.COMPARING, sum(len(each.entries) for each in read))
    for document in read:
        counting.more(len(document.entries))
        key = document.batch
        if batch_row(book, key) is not None:
            same = to_json(_document(book, key)) == to_json(document)
            (known if same else conflicts).add(key)
        elif key not in new:
            new[key] = document
        elif to_json(new[key]) != to_json(document):
            conflicts.add(key)
    return new, known, conflicts


def _document(book: Book, key: BatchId) -> Document:
    row = batch_row(book, key)
    if row is None:
        raise BookError(tr("The book has no batch {batch}; nothing was written out.", batch=key))
    select = book.connection.execute
    targets = select(
        "SELECT target_batch, target_seq FROM withdrawal WHERE batch = ? ORDER BY seq", (key,)
    )
    return Document(
        batch=key,
        station=row.station,
        keeper=row.keeper,
        verb=row.verb,
        written=row.written,
        reason=row.reason,
        animals=_things(book.connection, "animal", key),
        rounds=_things(book.connection, "round", key),
        entries=tuple(entry.event for entry in entries_of(book, key)),
        withdrawals=tuple(EntryKey(*target) for target in targets),
    )


def _things(connection: sqlite3.Connection, table: str, batch: BatchId) -> tuple[int, ...]:
    rows = connection.execute(f"SELECT id FROM {table} WHERE batch = ? ORDER BY id", (batch,))
    return tuple(key for (key,) in rows)


def _write(
    connection: sqlite3.Connection, written: Sequence[tuple[Document, Rows]], counting: Counting
) -> None:
    try:
        for document, rows in written:
            insert_batch(connection, _head(document), rows)
            _insert(connection, rows, _THINGS)
        for document, rows in written:
            _refuse_unknown_things(connection, document)
            _insert(connection, rows, EVENT_TABLES)
            counting.more(sum(map(len, rows.values())))
        for document, rows in written:
            for target in document.withdrawals:
                _refuse_unknown_target(connection, document, target)
            _insert(connection, rows, ("withdrawal",))
    except sqlite3.IntegrityError as error:
        raise NotADocument(
            tr("The book cannot hold these batches: {error}.", error=error)
        ) from error
    changed = reckon(connection, [document.batch for document, _ in written])
    refresh(connection, touched_animals(connection, changed))


def _head(document: Document) -> tuple[Cell, ...]:
    """The cells of the batch's own row."""
    offset = document.written.utcoffset() or timedelta(0)
    return (
        document.batch,
        document.station,
        document.keeper,
        document.verb,
        (document.written - _UNIX) // timedelta(milliseconds=1),
        offset // timedelta(minutes=1),
        document.reason,
    )


def _rows(document: Document) -> Rows:
    """All other rows of the batch, by table."""
    batch = document.batch
    rows: Rows = {
        "animal": [(key, batch) for key in document.animals],
        "round": [(key, batch) for key in document.rounds],
        "withdrawal": [(batch, n, t.batch, t.seq) for n, t in enumerate(document.withdrawals)],
    }
    for seq, event in enumerate(document.entries):
        rows.setdefault(TABLES[type(event)], []).append(to_row(event, batch, seq))
    return rows


def _insert(connection: sqlite3.Connection, rows: Rows, tables: Iterable[str]) -> None:
    for table in tables:
        connection.executemany(INSERTS[table], rows.get(table, ()))


def _refuse_unknown_things(connection: sqlite3.Connection, document: Document) -> None:
    found: set[tuple[str, int]] = set()
    for seq, event in enumerate(document.entries):
        for table, key in _references(event):
            if (table, key) in found:
                continue
            if not connection.execute(f"SELECT 1 FROM {table} WHERE id = ?", (key,)).fetchone():
                raise NotADocument(
                    tr(
                        "Batch {batch}, entry {number}: {table} {key} is neither in the book"
                        " nor in these documents; the batch that brought it must come along.",
                        batch=document.batch,
                        number=seq,
                        table=table,
                        key=key,
                    )
                )
            found.add((table, key))


def _references(event: Event) -> list[tuple[str, int]]:
    animals = (("animal", field) for field in ("animal", "dam", "sire", "mate"))
    named = (*animals, ("round", "round"))
    keys = ((table, getattr(event, field, None)) for table, field in named)
    return [(table, key) for table, key in keys if key is not None]


def _refuse_unknown_target(
    connection: sqlite3.Connection, document: Document, target: EntryKey
) -> None:
    found = connection.execute("SELECT 1 FROM batch WHERE id = ?", (target.batch,)).fetchone()
    if found is None or (target.seq != WHOLE and not has_entry(connection, target)):
        raise NotADocument(_not_along(document, target, is_whole=found is None))


def _not_along(document: Document, target: EntryKey, *, is_whole: bool) -> str:
    if is_whole:
        return tr(
            "Batch {batch} withdraws batch {target}, which is neither in the book"
            " nor in these documents; it must come along.",
            batch=document.batch,
            target=target.batch,
        )
    return tr(
        "Batch {batch} withdraws entry {number} of batch {target}, which is neither in the book"
        " nor in these documents; it must come along.",
        batch=document.batch,
        number=target.seq,
        target=target.batch,
    )
