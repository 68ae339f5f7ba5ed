"""Another book's readings put beside this one's: a union by slot, and by the file they came with.

What a file put there is joined to what the same file put there in this book, so that it is taken
back here when its batch is; what is no file's is joined to what is no file's here. Where a join
brings it, it is the join's, and goes when the join is taken back.
"""

import sqlite3
from collections.abc import Iterator, Mapping

from keeper.store.database import Book
from keeper.store.packing import filled, packed
from keeper.store.reading_layers import (
    HEARD,
    NOBODY,
    Whose,
    add_layer,
    pieces_of,
    place_of,
    put_beneath,
)
from keeper.store.readings import Joined

Key = tuple[str, int, Whose]
"""A probe, a day of UTC since 1970, and whose the readings are; of a batch alone over is 0."""

Pieces = Mapping[Key, Mapping[int, int]]
"""Slot number to hundredths of a degree."""


def put_in(
    book: Book, connection: sqlite3.Connection, pieces: Pieces, joining: int = NOBODY
) -> Joined:
    """Put *pieces* in where the book has nothing, in a transaction that is open already.

    The book then holds its union with another book's, in whatever order they came.

    joining: the batch whose own that becomes which is no file's; NOBODY: nobody's.
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


def is_live(key: Key) -> bool:
    """The readings are no file's and came by no join that is named."""
    return key[2].batch == NOBODY


def pieces_out(book: Book, probe: str) -> Iterator[tuple[Key, Mapping[int, int]]]:
    """Every piece of *probe*, day by day, the lowest first."""
    days = book.connection.execute(
        """SELECT day FROM reading_day WHERE probe = :probe
           UNION SELECT day FROM reading_layer WHERE probe = :probe
           UNION SELECT day FROM reading_over WHERE probe = :probe ORDER BY day""",
        {"probe": probe},
    ).fetchall()
    for (day,) in days:
        for whose, slots in sorted(pieces_of(book.connection, probe, day).items()):
            if values := filled(slots):
                yield (probe, day, _told(whose)), values


def _told(whose: Whose) -> Whose:
    """A batch tells where it lies by itself: as a file's, or as a join's."""
    return Whose(whose.batch, 0) if whose.over == whose.batch else whose


def _here(connection: sqlite3.Connection, key: Key) -> dict[int, int]:
    """What lies there under *key*; what joins brought of others counts as heard there too."""
    probe, day, wanted = key
    here: dict[int, int] = {}
    for whose, slots in reversed(pieces_of(connection, probe, day).items()):
        by_joins = wanted.batch == NOBODY and whose.over == wanted.over != whose.batch
        if by_joins or _told(whose) == wanted:
            here |= filled(slots)
    return here


def _missing(here: Mapping[int, int], key: Key, values: Mapping[int, int]) -> dict[int, int]:
    """Those of *values* to be put in: of a batch that is known here none, what it lacks it lost."""
    if key[2].batch != NOBODY and here:
        return {}
    return {slot: value for slot, value in values.items() if slot not in here}


def _put(connection: sqlite3.Connection, key: Key, values: Mapping[int, int], joining: int) -> None:
    probe, day, (batch, over) = key
    missing = _missing(_here(connection, key), key, values)
    if not missing:
        return
    whose = Whose(batch or joining, over or place_of(connection, batch))
    if whose == HEARD:
        put_beneath(connection, probe, day, packed(missing))
    else:
        add_layer(connection, whose, probe, day, packed(missing))
