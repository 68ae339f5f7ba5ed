"""Open and create a book; the one door to its file.

Importing this module does not import sqlite_utils, which would bring numpy with it
before the window is painted; schema work imports it when it is needed.
"""

import os
import secrets
import sqlite3
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass
from pathlib import Path

from keeper.language import tr, tr_table
from keeper.store.errors import BookError, DamagedBook, NewerBook, NotABook, ReadOnlyBook

APPLICATION_ID = 0x6B656570
SCHEMA_VERSION = 6
_BUSY_MS = 5000
_JOURNAL_BYTES = 1_000_000
"""What the journal may keep of its length after a large batch."""
_CACHE_KIB = 64_000
"""Pages that a board has read are still there when its tubs are walked one by one."""
_ENGLISH = {
    sqlite3.SQLITE_FULL: "Make room on its disk, then do it again.",
    sqlite3.SQLITE_BUSY: "Another program holds it: wait a moment, then do it again.",
    sqlite3.SQLITE_LOCKED: "Another program holds it: wait a moment, then do it again.",
    sqlite3.SQLITE_READONLY: "See that its file and folder may be written, then do it again.",
    sqlite3.SQLITE_CANTOPEN: "See that its file and folder may be written, then do it again.",
    sqlite3.SQLITE_PERM: "See that its file and folder may be written, then do it again.",
    sqlite3.SQLITE_IOERR: "See whether its disk is full or failing, then do it again.",
    sqlite3.SQLITE_CORRUPT: "Check the book, and mend a copy of it.",
    sqlite3.SQLITE_NOTADB: "Check the book, and mend a copy of it.",
    sqlite3.SQLITE_NOMEM: "Close other programs, then do it again.",
}
"""What a keeper may do about it."""
_ADVICE = tr_table(_ENGLISH)
_WORLD = frozenset(_ADVICE)


def random_tail() -> int:
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
    tail: Callable[[], int] = random_tail

    def close(self) -> None:
        """Close the file; of the journal, which says nothing any more, no file is left."""
        if self.writable:
            with suppress(sqlite3.Error):  # another window writes: the journal is its own
                self.connection.execute("PRAGMA journal_mode = DELETE")
        self.connection.close()


def create_book(path: Path, *, station: str, tail: Callable[[], int] = random_tail) -> Book:
    """Make a new, empty book at *path*; when that fails, nothing is left there.

    Raises:
        NotABook: something is there already, or the folder is missing.
        BookError: the folder refuses a new file, or the disk is full.
    """
    from keeper.store.migrations import make_tables  # sqlite_utils: see the module's docstring

    if path.exists():
        raise NotABook(
            tr("{path} is there already; a new book needs a name of its own.", path=path)
        )
    if not path.parent.is_dir():
        raise NotABook(
            tr("There is no folder {folder} for the new book; make it first.", folder=path.parent)
        )
    _reserve(path)
    try:
        connection = _connect(path, "rw")
        try:
            _make_durable(connection)
            make_tables(connection)
        except BaseException:
            connection.close()
            raise
    except sqlite3.OperationalError as error:
        _forget(path)
        raise BookError(
            tr("{path} could not be made: {error}. Nothing was left there.", path=path, error=error)
        ) from error
    except BaseException:
        _forget(path)
        raise
    return Book(path, connection, station, writable=True, tail=tail)


def open_book(
    path: Path,
    *,
    station: str,
    read_only: bool = False,
    known_whole: bool = False,
    tail: Callable[[], int] = random_tail,
) -> Book:
    """Open the book at *path*, or say in one sentence why not. Never makes a file.

    known_whole: this very file was proved whole and is unchanged since, so that it need not
    be read from end to end again, which takes seconds for a large one.

    Raises:
        NotABook: missing, empty, damaged or another program's file.
        NewerBook: written by a newer keeper; nothing in it was changed.
        BookError: the world refused; an older book that could not be brought up is unchanged.
    """
    _refuse_what_is_no_book(path)
    writable = not read_only and os.access(path, os.W_OK) and os.access(path.parent, os.W_OK)
    connection = _connect(path, "rw" if writable else "ro")
    try:
        _refuse_foreign(path, connection, known_whole=known_whole)
        connection.execute(f"PRAGMA cache_size = -{_CACHE_KIB}")  # this reads the file
        if writable:
            _make_durable(connection)
        if _version(connection) < SCHEMA_VERSION:
            connection = _brought_up(Book(path, connection, station, writable, tail))
    except (sqlite3.OperationalError, sqlite3.IntegrityError) as error:
        connection.close()
        raise BookError(
            tr("{path} cannot be opened: {error}. It was not changed.", path=path, error=error)
        ) from error
    except BaseException:
        connection.close()
        raise
    return Book(path, connection, station, writable, tail)


def is_there(path: Path) -> bool:
    """A file lies at *path*.

    Raises:
        BookError: the folders above it may not be looked into.
    """
    try:
        return path.is_file()
    except OSError as error:
        raise BookError(
            tr("{path} cannot be looked at: {error}.", path=path, error=error.strerror)
        ) from error


def _reserve(path: Path) -> None:
    try:
        os.close(os.open(path, os.O_CREAT | os.O_EXCL | os.O_RDWR, 0o600))
    except OSError as error:
        raise BookError(
            tr("{path} could not be made: {error}.", path=path, error=error.strerror)
        ) from error


def _forget(path: Path) -> None:
    path.unlink(missing_ok=True)
    path.with_name(f"{path.name}-journal").unlink(missing_ok=True)


def _refuse_what_is_no_book(path: Path) -> None:
    """By name and size alone: opening the file here would drop SQLite's locks on it."""
    if not is_there(path):
        raise NotABook(tr("There is no book at {path}; `new` makes one.", path=path))
    if path.stat().st_size == 0:
        raise DamagedBook(
            tr("{path} is an empty file, not a book; look for a backup beside it.", path=path)
        )


def _refuse_foreign(path: Path, connection: sqlite3.Connection, *, known_whole: bool) -> None:
    """Only reads: a file that is refused keeps every byte."""
    try:
        (application,) = connection.execute("PRAGMA application_id").fetchone()
        version = _version(connection)
        health = "ok"
        if not known_whole:
            (health,) = connection.execute("PRAGMA quick_check(1)").fetchone()
    except (sqlite3.DatabaseError, UnicodeDecodeError) as error:
        if isinstance(error, sqlite3.OperationalError) and _is_of_the_world(error):
            raise  # a lock or a disk; what else is wrong lies in the file, its schema for one
        told = tr(
            "{path} cannot be read as a book: {error}. It was not changed.", path=path, error=error
        )
        raise DamagedBook(told) from error
    if application != APPLICATION_ID:
        raise NotABook(tr("{path} belongs to another program; it was not changed.", path=path))
    if version > SCHEMA_VERSION:
        raise NewerBook(
            tr(
                "{path} was written by a newer keeper (book version {version}, this program"
                " reads up to {most}); it was not changed.",
                path=path,
                version=version,
                most=SCHEMA_VERSION,
            )
        )
    if health != "ok":
        found = " ".join(health.replace("*** in database main ***", "").split())
        raise DamagedBook(
            tr(
                "{path} is damaged ({found}); it was not changed. Restore a backup.",
                path=path,
                found=found,
            )
        )
    _refuse_cut_short(path, connection)


def _version(connection: sqlite3.Connection) -> int:
    return int(connection.execute("PRAGMA user_version").fetchone()[0])


def _brought_up(older: Book) -> sqlite3.Connection:
    """A connection to *older* as a book of this version, backed up as it was first.

    Where it may only be read a copy in memory is brought up, and the file stays as it is.
    """
    from keeper.store.backups import back_up  # they stand on this module
    from keeper.store.migrations import bring_up

    if older.writable:
        back_up(older, f"before version {SCHEMA_VERSION}")
        bring_up(older.connection)
        return older.connection
    copy = sqlite3.connect(":memory:", isolation_level=None)
    older.connection.backup(copy)
    older.close()
    bring_up(copy)
    copy.execute("PRAGMA query_only = ON")
    return copy


def _refuse_cut_short(path: Path, connection: sqlite3.Connection) -> None:
    """SQLite reads the missing end of a last page as zeros and finds nothing wrong."""
    (pages,) = connection.execute("PRAGMA page_count").fetchone()
    (page_bytes,) = connection.execute("PRAGMA page_size").fetchone()
    size = path.stat().st_size
    if size < pages * page_bytes:
        raise DamagedBook(
            tr(
                "{path} is cut short ({size} bytes of {whole}); it was not changed."
                " Restore a backup.",
                path=path,
                size=size,
                whole=pages * page_bytes,
            )
        )


def _connect(path: Path, mode: str) -> sqlite3.Connection:
    uri = f"{path.absolute().as_uri()}?mode={mode}"
    try:
        connection = sqlite3.connect(uri, uri=True, isolation_level=None)
    except sqlite3.OperationalError as error:
        raise BookError(tr("{path} cannot be opened: {error}.", path=path, error=error)) from error
    connection.execute(f"PRAGMA busy_timeout = {_BUSY_MS}")
    connection.execute("PRAGMA foreign_keys = ON")
    connection.execute("PRAGMA trusted_schema = OFF")
    connection.execute("PRAGMA cell_size_check = ON")
    return connection


def _make_durable(connection: sqlite3.Connection) -> None:
    """After the file is known to be ours: the journal mode of a foreign file would change it."""
    (mode,) = connection.execute("PRAGMA journal_mode = PERSIST").fetchone()
    if mode != "persist":
        raise BookError(
            tr("The book is kept in journal mode {mode!r}; it must be 'persist'.", mode=mode)
        )
    connection.execute("PRAGMA synchronous = EXTRA")
    connection.execute(f"PRAGMA journal_size_limit = {_JOURNAL_BYTES}")


@contextmanager
def writing(book: Book) -> Iterator[sqlite3.Connection]:
    """One transaction: all of it is on disk when the block ends, or none of it is.

    Raises:
        ReadOnlyBook: the book was opened for reading.
        BookError: the disk is full, the file is locked, or the disk refused.
    """
    if not book.writable:
        raise ReadOnlyBook(
            tr("{path} is open for reading only; nothing was written.", path=book.path)
        )
    connection = book.connection
    if connection.in_transaction:
        raise RuntimeError("a batch is being written already; one ends before the next begins")
    try:
        connection.execute("BEGIN IMMEDIATE")
        try:
            yield connection
            connection.execute("COMMIT")
        except BaseException:
            if connection.in_transaction:
                connection.execute("ROLLBACK")
            raise
    except sqlite3.DatabaseError as error:
        if not _is_of_the_world(error):
            raise
        told = tr(
            "{path} could not be written: {error}. Nothing was lost. {advice}",
            path=book.path,
            error=error,
            advice=_advice(error),
        )
        raise BookError(told) from error


@contextmanager
def unsynced(book: Book) -> Iterator[None]:
    """Batches wait for no disk until the block ends: for a book that can be made again.

    If the power goes before that, the book may be lost whole. Afterwards it is on the disk.
    """
    book.connection.execute("PRAGMA synchronous = OFF")
    try:
        yield
    finally:
        book.connection.execute("PRAGMA synchronous = EXTRA")
        version = _version(book.connection)
        book.connection.execute(f"PRAGMA user_version = {version}")  # its sync takes all along


def world_told(error: BaseException) -> str | None:
    """A sentence for a reading that a disk, a lock or a damaged file refused; None for others."""
    if not isinstance(error, sqlite3.DatabaseError) or not _is_of_the_world(error):
        return None
    return tr(
        "The book could not be read: {error}. Nothing was lost. {advice}",
        error=error,
        advice=_advice(error),
    )


def _advice(error: sqlite3.DatabaseError) -> str:
    return _ADVICE.get(getattr(error, "sqlite_errorcode", 0) & 0xFF, "")


def _is_of_the_world(error: sqlite3.DatabaseError) -> bool:
    """A disk, a lock or a damaged file; anything else is a fault of the program."""
    return getattr(error, "sqlite_errorcode", 0) & 0xFF in _WORLD
