"""Another book written into this one in one transaction: all that it brings, or nothing of it."""

import sqlite3
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from datetime import datetime

from keeper.husbandry.events import Event
from keeper.store import readings_join
from keeper.store.database import Book, writing
from keeper.store.exchange import Ready, Taken, put_in
from keeper.store.journal import BatchId, batch_within
from keeper.store.readings import Joined
from keeper.store.readings_join import Pieces, is_live
from keeper.store.ticking import Tick, silent


def join_in(
    book: Book,
    ready: Ready,
    pieces: Pieces,
    *,
    verb: str,
    keeper: str,
    written: datetime,
    told: Callable[[Taken, Joined], Iterable[Event]],
    tick: Tick = silent,
) -> BatchId:
    """Write the batches, then one of *verb* with what is *told* of them, then the readings.

    Of the readings those are told that are no file's: they become this last batch's own. The
    key is that batch's. Until the end of the transaction the file stays as it
    is, so that others may read it; only their writing waits.

    Raises:
        NotADocument: a batch builds on one that is neither here nor along.
        BookError: the book cannot be written, or was written in meanwhile.
    """
    with unspilled(book), writing(book) as connection:
        put_in(connection, ready, tick)
        joined = readings_join.compared(book, pieces)
        if not joined.conflicts:
            live = {key: values for key, values in pieces.items() if is_live(key)}
            joined = readings_join.compared(book, live)
        with batch_within(book, connection, verb=verb, keeper=keeper, written=written) as writer:
            writer.add(*told(ready.taken, joined))
        readings_join.put_in(book, connection, pieces, writer.id)
    return writer.id


@contextmanager
def unspilled(book: Book) -> Iterator[sqlite3.Connection]:
    """Changed pages wait in memory: written before the end, they would keep readers out."""
    connection = book.connection
    connection.execute("PRAGMA cache_spill = OFF")
    try:
        yield connection
    finally:
        connection.execute("PRAGMA cache_spill = ON")
