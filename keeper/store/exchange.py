"""Batches that travel: written out whole as JSON, read in whole in another book.

Joining two books is a union of batches by key. In whatever order and however often the
documents come, both books end with the same tables, state rows among them.
"""

import sqlite3
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from keeper.language import tr
from keeper.store.checksums import CELLS, HEAD_INSERT, INSERTS
from keeper.store.database import Book, writing
from keeper.store.documents import Document, NotADocument, from_json, to_json
from keeper.store.errors import BookError
from keeper.store.journal import BatchId, EntryKey, batch, touched_animals
from keeper.store.many import AMONG, keys_told
from keeper.store.reading import batch_row, entries_of
from keeper.store.schema import EVENT_TABLES
from keeper.store.standing import WHOLE, reckon
from keeper.store.state import refresh
from keeper.store.tabled import (
    BATCH_AT,
    Row,
    Tabled,
    animals_in,
    checksums,
    tabled,
    unlike,
    without,
)
from keeper.store.ticking import Counting, Step, Tick, silent

_THINGS = ("animal", "round")
_LINES_AT_ONCE = 5_000
_REFERRING = {"animal": "animal", "dam": "animal", "sire": "animal", "mate": "animal"} | {
    "round": "round"
}
_NAMED = {
    table: [(at, _REFERRING[name]) for at, name in enumerate(CELLS[table]) if name in _REFERRING]
    for table in EVENT_TABLES
}
"""Which cells of an entry name an animal or a round."""

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
    """Batches set beside the book; nothing is written.

    new: those that the book lacks, with no conflict among all; sums: the checksum of each.
    """

    taken: Taken
    new: Tabled
    sums: Mapping[BatchId, int]


def made_ready(book: Book, given: Tabled, tick: Tick = silent) -> Ready:
    """What ``read_in`` would do, up to the writing: all that takes time and no lock.

    Keys are compared, and the content where a key is in both.
    """
    counting = Counting(tick, Step.COMPARING, sum(map(len, given.rows.values())))
    both = given.heads.keys() & set(batch_keys(book))
    conflicts = unlike(book.connection, given, both, counting) | given.twice
    known = _keys(both - conflicts)
    if conflicts:
        taken = Taken(new=(), known=known, conflicts=_keys(conflicts))
        return Ready(taken=taken, new=Tabled(heads={}, rows={}), sums={})
    new = without(given, both)
    taken = Taken(new=_keys(new.heads), known=known, conflicts=())
    return Ready(taken=taken, new=new, sums=checksums(new))


def read_in(book: Book, documents: Tabled | Iterable[Given]) -> Taken:
    """Take in the batches of *documents*, all of them or none, in one transaction.

    Raises:
        NotADocument: one cannot be read, or builds on a batch that is neither here nor given.
        BookError: the book cannot be written.
    """
    given = documents if isinstance(documents, Tabled) else _tabled(documents)
    with writing(book) as connection:
        ready = made_ready(book, given)
        put_in(connection, ready)
    return ready.taken


def _tabled(documents: Iterable[Given]) -> Tabled:
    return tabled(each if isinstance(each, Document) else from_json(each) for each in documents)


def put_in(connection: sqlite3.Connection, ready: Ready, tick: Tick = silent) -> None:
    """Write what was made ready, in a transaction that is open already.

    Raises:
        NotADocument: it builds on a batch that is neither here nor among the documents.
        BookError: something of it came into the book meanwhile.
    """
    keys = keys_told(ready.new.heads)
    if connection.execute(f"SELECT 1 FROM batch WHERE id {AMONG} LIMIT 1", (keys,)).fetchone():
        raise BookError(tr("The book was written in meanwhile; look at the other one again."))
    _write(connection, ready, tick)


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


def _keys(keys: Iterable[BatchId]) -> tuple[BatchId, ...]:
    return tuple(sorted(keys))


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


def _write(connection: sqlite3.Connection, ready: Ready, tick: Tick) -> None:
    """Batches first, then what they bring, entries and withdrawals: each finds what it names."""
    heads, rows = ready.new.heads, ready.new.rows
    counting = Counting(tick, Step.WRITING, sum(map(len, rows.values())))
    try:
        connection.executemany(HEAD_INSERT, ((*heads[k], ready.sums[k]) for k in sorted(heads)))
        _insert(connection, rows, _THINGS, counting)
        _refuse_unknown_things(connection, rows)
        _insert(connection, rows, EVENT_TABLES, counting)
        _refuse_unknown_targets(connection, rows.get("withdrawal", ()))
        _insert(connection, rows, ("withdrawal",), counting)
    except sqlite3.IntegrityError as error:
        raise NotADocument(
            tr("The book cannot hold these batches: {error}.", error=error)
        ) from error
    changed = reckon(connection, heads) - heads.keys()
    refresh(connection, animals_in(ready.new) | touched_animals(connection, changed))


def _insert(
    connection: sqlite3.Connection,
    rows: Mapping[str, Sequence[Row]],
    tables: Iterable[str],
    counting: Counting,
) -> None:
    for table in tables:
        lines = rows.get(table, ())
        for begin in range(0, len(lines), _LINES_AT_ONCE):
            some = lines[begin : begin + _LINES_AT_ONCE]
            connection.executemany(INSERTS[table], some)
            counting.more(len(some))


def _refuse_unknown_things(
    connection: sqlite3.Connection, rows: Mapping[str, Sequence[Row]]
) -> None:
    known = {thing: _ids(connection, thing) for thing in _THINGS}
    for table in EVENT_TABLES:
        for at, thing in _NAMED[table]:
            lines = rows.get(table, ())
            missing = {row[at] for row in lines} - known[thing] - {None}
            if missing:
                raise NotADocument(
                    _thing_told(table, thing, next(row for row in lines if row[at] in missing), at)
                )


def _ids(connection: sqlite3.Connection, table: str) -> set[Any]:
    return {key for (key,) in connection.execute(f"SELECT id FROM {table}")}


def _thing_told(table: str, thing: str, row: Row, at: int) -> str:
    return tr(
        "Batch {batch}, entry {number}: {table} {key} is neither in the book"
        " nor in these documents; the batch that brought it must come along.",
        batch=row[BATCH_AT[table]],
        number=row[CELLS[table].index("seq")],
        table=thing,
        key=row[at],
    )


def _refuse_unknown_targets(connection: sqlite3.Connection, lines: Sequence[Row]) -> None:
    """Of each withdrawal: the batch that it names is there, and the entry where it names one."""
    single = [row for row in lines if row[3] != WHOLE]
    batches, entries = _ids(connection, "batch"), _entries_in(connection, {r[2] for r in single})
    for batch_id, _, *target in lines:
        is_whole = target[1] == WHOLE
        if target[0] not in batches or not (is_whole or tuple(target) in entries):
            known = target[0] in batches
            raise NotADocument(_not_along(batch_id, target, is_whole=not known))


def _entries_in(connection: sqlite3.Connection, batches: Iterable[Any]) -> set[tuple[Any, ...]]:
    """Batch and number of every entry that *batches* wrote."""
    told = keys_told(batches)
    return {
        key
        for table in EVENT_TABLES
        for key in connection.execute(
            f"SELECT batch, seq FROM {table} WHERE batch {AMONG}", (told,)
        )
    }


def _not_along(batch_id: object, target: Sequence[object], *, is_whole: bool) -> str:
    if is_whole:
        return tr(
            "Batch {batch} withdraws batch {target}, which is neither in the book"
            " nor in these documents; it must come along.",
            batch=batch_id,
            target=target[0],
        )
    return tr(
        "Batch {batch} withdraws entry {number} of batch {target}, which is neither in the book"
        " nor in these documents; it must come along.",
        batch=batch_id,
        number=target[1],
        target=target[0],
    )
