"""Open and create a book; the one door to its file.

Importing this module does not import sqlite_utils, which would bring numpy with it
before the window is painted; schema work imports it when it is needed.
"""

import os
import secrets
import sqlite3
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from keeper.store.errors import BookError, NewerBook, NotABook, ReadOnlyBook

APPLICATION_ID = 0x6B656570
SCHEMA_VERSION = 1
_MAGIC = b"SQLite format 3\x00"
_BUSY_MS = 5000


def _random_tail() -> int:
    return secrets.randbits(22)


@dataclass(frozen=True, slots=True)
class Book:
    """An open book. station names this machine in every batch that it writes.

    tail gives the 22 random bits of a batch key; a seeded one makes a book repeatable.
    """

    path: Path
    connection: sqlite3.Connection
    station: str
    writable: bool
    tail: Callable[[], int] = _random_tail

    def close(self) -> None:
        self.connection.close()


def create_book(path: Path, *, station: str, tail: Callable[[], int] = _random_tail) -> Book:
    """Make a new, empty book at *path*.

    Raises:
        NotABook: something is there already, or the folder is missing.
    """
    from keeper.store.migrations import migrate  # sqlite_utils: see the module's docstring

    if path.exists():
        raise NotABook(f"{path} is there already; a new book needs a name of its own.")
    if not path.parent.is_dir():
        raise NotABook(f"There is no folder {path.parent} for the new book; make it first.")
    descriptor = os.open(path, os.O_CREAT | os.O_EXCL | os.O_RDWR, 0o600)
    os.close(descriptor)
    connection = _connect(path, "rw")
    migrate(connection)
    return Book(path, connection, station, writable=True, tail=tail)


def open_book(
    path: Path,
    *,
    station: str,
    read_only: bool = False,
    tail: Callable[[], int] = _random_tail,
) -> Book:
    """Open the book at *path*, or say in one sentence why not. Never makes a file.

    Raises:
        NotABook: missing, empty, damaged or another program's file.
        NewerBook: written by a newer keeper; nothing in it was changed.
    """
    _refuse_what_is_no_book(path)
    writable = not read_only and os.access(path, os.W_OK) and os.access(path.parent, os.W_OK)
    connection = _connect(path, "rw" if writable else "ro")
    try:
        _refuse_foreign(path, connection)
    except BaseException:
        connection.close()
        raise
    return Book(path, connection, station, writable, tail)


def _refuse_what_is_no_book(path: Path) -> None:
    if not path.is_file():
        raise NotABook(f"There is no book at {path}; `new` makes one.")
    with path.open("rb") as file:
        head = file.read(len(_MAGIC))
    if not head:
        raise NotABook(f"{path} is an empty file, not a book; look for a backup beside it.")
    if head != _MAGIC:
        raise NotABook(f"{path} is not a keeper book: its first bytes are not a database's.")


def _refuse_foreign(path: Path, connection: sqlite3.Connection) -> None:
    try:
        (application,) = connection.execute("PRAGMA application_id").fetchone()
        (version,) = connection.execute("PRAGMA user_version").fetchone()
        (health,) = connection.execute("PRAGMA quick_check(1)").fetchone()
    except sqlite3.DatabaseError as error:
        raise NotABook(f"{path} cannot be read as a book: {error}. It was not changed.") from error
    if application != APPLICATION_ID:
        raise NotABook(f"{path} belongs to another program; it was not changed.")
    if version > SCHEMA_VERSION:
        raise NewerBook(
            f"{path} was written by a newer keeper (book version {version}, this program"
            f" reads up to {SCHEMA_VERSION}); it was not changed."
        )
    if health != "ok":
        raise NotABook(f"{path} is damaged ({health}); it was not changed. Restore a backup.")


def _connect(path: Path, mode: str) -> sqlite3.Connection:
    uri = f"{path.absolute().as_uri()}?mode={mode}"
    try:
        connection = sqlite3.connect(uri, uri=True, isolation_level=None)
        connection.execute(f"PRAGMA busy_timeout = {_BUSY_MS}")
        connection.execute("PRAGMA foreign_keys = ON")
        connection.execute("PRAGMA trusted_schema = OFF")
        connection.execute("PRAGMA cell_size_check = ON")
        if mode == "rw":
            connection.execute("PRAGMA journal_mode = TRUNCATE")
            connection.execute("PRAGMA synchronous = EXTRA")
    except sqlite3.OperationalError as error:
        raise BookError(f"{path} cannot be opened: {error}.") from error
    except sqlite3.DatabaseError as error:
        raise NotABook(f"{path} cannot be read as a book: {error}. It was not changed.") from error
    return connection


@contextmanager
def writing(book: Book) -> Iterator[sqlite3.Connection]:
    """One transaction: all of it is on disk when the block ends, or none of it is.

    Raises:
        ReadOnlyBook: the book was opened for reading.
        BookError: the disk is full, the file is locked, or the disk refused.
    """
    if not book.writable:
        raise ReadOnlyBook(f"{book.path} is open for reading only; nothing was written.")
    connection = book.connection
    try:
        connection.execute("BEGIN IMMEDIATE")
        try:
            yield connection
        except BaseException:
            if connection.in_transaction:
                connection.execute("ROLLBACK")
            raise
        connection.execute("COMMIT")
    except sqlite3.OperationalError as error:
        if connection.in_transaction:
            connection.execute("ROLLBACK")
        raise BookError(f"{book.path} could not be written: {error}. Nothing was lost.") from error
