"""One writer for each book: a lock beside it that the system takes back from a dead process.

The lock is on a file of its own, never on the book: closing any handle on a database file
drops the locks that SQLite holds on it in the same process.
"""

import json
import os
import sys
from dataclasses import dataclass
from pathlib import Path

from keeper.language import tr
from keeper.store.database import Book, is_there, open_book
from keeper.store.errors import BookError

_MOST_BYTES = 4096

if sys.platform == "win32":
    import msvcrt

    _FAR = 1 << 30  # the byte that is locked: the holder's name in front of it stays readable

    def _lock(handle: int) -> None:
        """Raises OSError when another open file holds it."""
        os.lseek(handle, _FAR, os.SEEK_SET)
        msvcrt.locking(handle, msvcrt.LK_NBLCK, 1)

else:
    import fcntl

    def _lock(handle: int) -> None:
        """Raises OSError when another open file holds it."""
        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)


class BookInUse(BookError):
    """Another process writes in the book: station and pid as far as it wrote them down."""

    def __init__(self, book: Path, station: str | None, pid: int | None) -> None:
        self.station = station
        self.pid = pid
        told = tr(
            "{book} is open for writing in another window; here it can be read only.", book=book
        )
        if station:
            told = tr(
                "{book} is open for writing at {station} (process {pid}); here it can be read"
                " only.",
                book=book,
                station=station,
                pid=pid,
            )
        super().__init__(told)


@dataclass(slots=True)
class WriterLock:
    """The right to write in one book, held until ``release`` or the end of the process."""

    path: Path
    _handle: int | None

    def release(self) -> None:
        """Let others write; safe to call twice."""
        if self._handle is None:
            return
        handle, self._handle = self._handle, None
        os.ftruncate(handle, 0)
        os.close(handle)

    def __enter__(self) -> "WriterLock":
        return self

    def __exit__(self, *_: object) -> None:
        self.release()


@dataclass(frozen=True, slots=True)
class Opened:
    """A book, the right to write in it (None when it is for reading), and why not if not."""

    book: Book
    lock: WriterLock | None
    told: str | None

    def close(self) -> None:
        self.book.close()
        if self.lock is not None:
            self.lock.release()


def claim(book: Path, *, station: str) -> WriterLock:
    """Take the right to write in *book*.

    Raises:
        BookInUse: another process has it.
        BookError: the folder refuses the lock file.
    """
    path = lock_path(book)
    try:
        handle = os.open(path, os.O_CREAT | os.O_RDWR, 0o600)
    except OSError as error:
        told = tr(
            "{path} cannot be made: {error}; the book can be read only.",
            path=path,
            error=error.strerror,
        )
        raise BookError(told) from error
    try:
        _lock(handle)
    except OSError as error:
        station_there, pid = _holder(handle)
        os.close(handle)
        raise BookInUse(book, station_there, pid) from error
    try:
        _sign(handle, station)
    except OSError as error:
        os.close(handle)
        told = tr(
            "{path} cannot be written: {error}; the book can be read only.",
            path=path,
            error=error.strerror,
        )
        raise BookError(told) from error
    return WriterLock(path, handle)


def open_alone(path: Path, *, station: str, known_whole: bool = False) -> Opened:
    """Open *path* for writing if nobody else does, for reading otherwise.

    known_whole: as for ``open_book``.

    Raises what ``open_book`` raises when the file is no book.
    """
    try:
        lock = claim(path, station=station) if is_there(path) else None
    except BookError as error:
        book = open_book(path, station=station, read_only=True)
        return Opened(book, None, str(error))
    try:
        book = open_book(path, station=station, known_whole=known_whole)
    except BaseException:
        if lock is not None:
            lock.release()
        raise
    if book.writable:
        return Opened(book, lock, None)
    return Opened(book, lock, tr("{path} can be read only: its file or folder says so.", path=path))


def lock_path(book: Path) -> Path:
    """The lock's file, one for a book whatever name it is opened by."""
    real = book.resolve()
    return real.with_name(f"{real.name}.lock")


def _sign(handle: int, station: str) -> None:
    words = json.dumps({"station": station, "pid": os.getpid()}).encode()
    os.ftruncate(handle, 0)
    os.lseek(handle, 0, os.SEEK_SET)
    os.write(handle, words)


def _holder(handle: int) -> tuple[str | None, int | None]:
    os.lseek(handle, 0, os.SEEK_SET)
    try:
        words = json.loads(os.read(handle, _MOST_BYTES))
        return str(words["station"]), int(words["pid"])
    except (OSError, ValueError, KeyError, TypeError):
        return None, None
