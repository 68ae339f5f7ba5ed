"""Another book's readings put beside this one's: a union by slot, and by the file they came with.

What a file put there is joined to what the same file put there in this book, so that it is taken
back here when its batch is; what is no file's is joined to what is no file's here. Where a join
brings it, it is the join's, and goes when the join is taken back.
"""

import sqlite3
from collections.abc import Iterator, Mapping

from keeper.store.database import Book, writing
from keeper.store.packing import filled, packed
from keeper.store.reading_layers import add_layer, joined_batches, pieces_of, put_beneath
from keeper.store.readings import Joined

Key = tuple[str, int, int | None]
"""A probe, a day of UTC since 1970, and the batch whose file it was, None for no file."""

Pieces = Mapping[Key, Mapping[int, int]]
"""Slot number to hundredths of a degree."""


def join(book: Book, pieces: Pieces) -> Joined:
    """Put *pieces* in where the book has nothing: its union with another book's, in any order.

    Raises:
        BookError: the book cannot be written.
    """
    with writing(book) as connection:
        return put_in(book, connection, pieces)


def put_in(
    book: Book, connection: sqlite3.Connection, pieces: Pieces, joining: int | None = None
) -> Joined:
    """As ``join``, in a transaction that is open already.

    joining: the batch whose own that becomes which is no file's; None: nobody's.
    """
    found = compared(book, pieces)
    if not found.conflicts:
        for key, values in pieces.items():
            _put(connection, key, values, joining)
    return found


def compared(book: Book, pieces: Pieces) -> Joined:
    """What ``join`` would do with *pieces*; nothing is written."""
    new, known, conflicts = 0, 0, []
    for key, values in pieces.items():
        here = _here(book.connection, key)
        known += sum(here.get(slot) == value for slot, value in values.items())
        conflicts += [(*key[:2], n) for n, v in values.items() if here.get(n, v) != v]
        new += len(_missing(here, key, values))
    return Joined(new=0 if conflicts else new, known=known, conflicts=tuple(conflicts))


def pieces_out(book: Book, probe: str) -> Iterator[tuple[Key, Mapping[int, int]]]:
    """Every piece of *probe*, day by day, its own readings before those of files."""
    days = book.connection.execute(
        """SELECT day FROM reading_day WHERE probe = :probe
           UNION SELECT day FROM reading_layer WHERE probe = :probe ORDER BY day""",
        {"probe": probe},
    ).fetchall()
    for (day,) in days:
        found = pieces_of(book.connection, probe, day)
        for batch in sorted(found, key=lambda key: key or 0):
            values = filled(found[batch])
            if values:
                yield (probe, day, batch), values


def _here(connection: sqlite3.Connection, key: Key) -> dict[int, int]:
    """What stands there under *key*; what joins brought of others counts as no file's."""
    probe, day, batch = key
    found = pieces_of(connection, probe, day)
    brought = joined_batches(connection, probe, day) if batch is None else set()
    here: dict[int, int] = {}
    for each in (*brought, batch):
        here |= filled(found[each]) if each in found else {}
    return here


def _missing(here: Mapping[int, int], key: Key, values: Mapping[int, int]) -> dict[int, int]:
    """Those of *values* to be put in: of a file that is known here none, what it lacks it lost."""
    if key[2] is not None and here:
        return {}
    return {slot: value for slot, value in values.items() if slot not in here}


def _put(
    connection: sqlite3.Connection, key: Key, values: Mapping[int, int], joining: int | None
) -> None:
    probe, day, batch = key
    missing = _missing(_here(connection, key), key, values)
    if not missing:
        return
    owner = joining if batch is None else batch
    if owner is None:
        put_beneath(connection, probe, day, packed(missing))
    else:
        add_layer(connection, owner, probe, day, packed(missing))
