"""The book as it is at one moment, for long work beside those who write in it."""

import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import replace

from keeper.store.database import Book

_PAGES_AT_ONCE = 1_000
_REST_SECONDS = 0.002
"""The file is locked for some pages at a time only, so that nobody waits to write."""


@contextmanager
def private_copy(book: Book) -> Iterator[Book]:
    """A copy of *book* that nobody else sees; it may be written in, and is gone after the block.

    SQLite keeps it in memory and, what does not fit there, in a nameless file.
    """
    with closing(sqlite3.connect("", isolation_level=None)) as copy:
        book.connection.backup(copy, pages=_PAGES_AT_ONCE, sleep=_REST_SECONDS)
        copy.execute("PRAGMA foreign_keys = ON")
        copy.execute("PRAGMA synchronous = OFF")
        yield replace(book, connection=copy, writable=True)
