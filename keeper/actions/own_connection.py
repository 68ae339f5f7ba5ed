"""The same book for another thread: a connection of its own, for reading only."""

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace

from keeper.actions.keeping import Keeping
from keeper.language import tr
from keeper.store.database import open_book


@contextmanager
def own_connection(keeping: Keeping) -> Iterator[Keeping]:
    """*keeping* with its own connection, usable in the thread that asks for it.

    The file was proved whole when *keeping* was opened; it is not read from end to end again.
    What *keeping* keeps of the book is not shared: a book's version counts for one connection.

    Raises:
        BookError: the book cannot be opened again, in one sentence.
    """
    path, station = keeping.book.path, keeping.book.station
    book = open_book(path, station=station, read_only=True, known_whole=True)
    try:
        told = tr("Opened for reading only.")
        yield replace(keeping, book=book, lock=None, told=told, _kept={})
    finally:
        book.close()
