"""Copies of a book that have been proved, and the way back from one.

They lie beside the book in ``<name>.backups``, numbered: order is by number, so a clock set
back can neither reorder nor rotate them. A copy counts once it has its last name; until then
it is a ``.part``. Its sha256 lies beside it as ``sha256sum --check`` reads it, because a
flipped bit in a text is nothing that SQLite can notice.
"""

import os
import re
import sqlite3
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path

from keeper.store.backup_words import told
from keeper.store.database import SCHEMA_VERSION, Book, open_book
from keeper.store.durable import copy_durably, make_private_folder, sha256_of, sync
from keeper.store.errors import BookError
from keeper.store.locks import claim
from keeper.store.state import differing, rebuild

KEPT = 10
"""The latest so many are all kept; of older ones fewer the further back they lie."""

_NAME = re.compile(r"(\d{6,})-([a-z0-9-]+)\.book")
_NUMBER = re.compile(r"\d{6,}(?=-)")
_PAUSE = "rotation-paused"


@dataclass(frozen=True, slots=True, kw_only=True)
class Backup:
    """One copy of a book. why: what it was made before or after."""

    path: Path
    number: int
    why: str


def back_up(book: Book, why: str, *, second_place: Path | None = None) -> Backup:
    """Copy *book* as it now is, prove the copy, then rotate the old ones away.

    why: a few words that go into the name. second_place: a folder that gets the same file.

    Raises:
        BookError: the copy could not be made, or is not what the book is; or the copy stands
            and only the second place refused it.
    """
    folder = backup_folder(book.path)
    try:
        make_private_folder(folder)
        made = _made(book, folder, why)
    except (OSError, sqlite3.Error) as error:
        raise BookError(told("not made", path=book.path, error=error)) from error
    _rotate(book.path)
    if second_place is not None:
        _copy_to(made, second_place)
    return made


def backup_folder(book: Path) -> Path:
    """Where the backups of *book* lie, by whatever name it is opened."""
    real = book.resolve()
    return real.with_name(f"{real.name}.backups")


def backups_of(book: Path) -> list[Backup]:
    """Every backup of *book* that has its last name, the newest first."""
    return _backups_in(backup_folder(book))


def is_backed_up(book: Book) -> bool:
    """True if the newest backup holds every batch that *book* holds."""
    newest = next(iter(backups_of(book.path)), None)
    if newest is None:
        return False
    batches = "SELECT count(*), max(id) FROM batch"
    try:
        with closing(_reader(newest.path)) as copy:
            there = copy.execute(batches).fetchone()
    except sqlite3.Error:
        return False
    return bool(there == book.connection.execute(batches).fetchone())


def latest_good(book: Path) -> Backup | None:
    """The newest backup that can be proved; None when there is none."""
    return next((backup for backup in backups_of(book) if not prove(backup)), None)


def prove(backup: Backup) -> tuple[str, ...]:
    """Look *backup* over, byte by byte and as a book; empty when nothing is wrong."""
    try:
        if _recorded(backup.path) != sha256_of(backup.path):
            return (told("not as written", path=backup.path),)
    except (OSError, ValueError) as error:
        return (told("not proved", path=backup.path, error=error),)
    return _flaws(backup.path)


def restore(backup: Backup, to: Path) -> Path | None:
    """Put *backup* in the place of the book *to*; rotation pauses until ``resume_rotation``.

    Whatever lay at *to* is kept aside, and its name is returned (None if nothing was there).
    The copy is proved before it takes the place. Nobody may hold the book open for writing.

    Raises:
        BookInUse: another window writes in the book.
        BookError: the backup cannot be proved, or the disk refused; what lay at *to* is
            there still, or beside it under its kept name.
    """
    flaws = prove(backup)
    if flaws:
        raise BookError(told("nothing restored", flaw=flaws[0]))
    return put_in_place(backup.path, to, proved_sha256=_recorded(backup.path))


def put_in_place(fresh: Path, to: Path, *, proved_sha256: str = "") -> Path | None:
    """Put a copy of the book *fresh* in the place of *to*, as ``restore`` does with a backup.

    proved_sha256: of *fresh*, where it was proved just now; a copy with another is read through.
    """
    place = to.resolve()
    with claim(place, station="restore"):
        waiting = place.with_name(f".{place.name}.restoring")
        try:
            copy_durably(fresh, waiting)
            _refuse_flaws(waiting, is_proved=sha256_of(waiting) == proved_sha256)
            _pause_rotation(place)
            return _take_place(waiting, place)
        except (OSError, sqlite3.Error) as error:
            raise BookError(told("not restored", path=to, error=error, name=place.name)) from error
        finally:
            waiting.unlink(missing_ok=True)
            _journal(waiting).unlink(missing_ok=True)


def is_rotation_paused(book: Path) -> bool:
    """True since a restore: all backups are kept, because the newest may be the worse ones."""
    return (backup_folder(book) / _PAUSE).exists()


def resume_rotation(book: Path) -> None:
    """The keeper is content with what was restored."""
    (backup_folder(book) / _PAUSE).unlink(missing_ok=True)


def kept_numbers(numbers: list[int]) -> set[int]:
    """Which of *numbers* outlive a rotation, by their distance from the latest.

    The latest KEPT all do; then every second up to 2 x KEPT back, every fourth up to
    4 x KEPT, and so on, which is about KEPT / 2 more for each doubling.

    >>> sorted(kept_numbers(list(range(1, 31))), reverse=True)[8:]
    [22, 21, 20, 18, 16, 14, 12, 8, 4]
    """
    latest = max(numbers, default=0)
    return {number for number in numbers if number % _spacing(latest - number) == 0}


def _spacing(distance: int) -> int:
    return 1 if distance < KEPT else 1 << (distance // KEPT).bit_length()


def _made(book: Book, folder: Path, why: str) -> Backup:
    number, path = _reserved(folder, _slug(why))
    part = folder / f".{path.name}.part"
    part.unlink(missing_ok=True)  # left by a crash before its number had a name
    try:
        os.close(os.open(part, os.O_CREAT | os.O_EXCL | os.O_RDWR, 0o600))
        _copy_proved(book, part)
        _write_sidecar(path, sha256_of(part))
        sync(part)
        sync(folder)  # the sidecar has its name before the copy gets its own
        part.rename(path)
        sync(folder)
    except BaseException:
        _sidecar(path).unlink(missing_ok=True)
        raise
    finally:
        part.unlink(missing_ok=True)
    return Backup(path=path, number=number, why=_slug(why))


def _reserved(folder: Path, slug: str) -> tuple[int, Path]:
    """A number that no file has: its empty sidecar keeps others from taking the same name."""
    taken = [int(match[0]) for file in folder.iterdir() if (match := _NUMBER.match(file.name))]
    number = max(taken, default=0) + 1
    while True:
        path = folder / f"{number:06d}-{slug}.book"
        try:
            os.close(os.open(_sidecar(path), os.O_CREAT | os.O_EXCL | os.O_WRONLY, 0o600))
            return number, path
        except FileExistsError:
            number += 1


def _slug(why: str) -> str:
    words = re.sub(r"[^a-z0-9]+", "-", why.lower()).strip("-")
    return words[:40].strip("-") or "copy"


def _copy_proved(book: Book, part: Path) -> None:
    """One snapshot is read, copied and counted, whatever others write meanwhile."""
    with closing(_reader(book.path)) as source, closing(_writer(part)) as copy:
        source.execute("BEGIN")
        expected = _row_counts(source)
        source.backup(copy)
        flaws = _health(copy)
        counts = _row_counts(copy)
    if flaws or counts != expected:
        found = flaws[0] if flaws else told("other rows", counts=counts, expected=expected)
        raise BookError(told("came out wrong", path=book.path, flaw=found))


def _reader(path: Path) -> sqlite3.Connection:
    connection = sqlite3.connect(f"{path.absolute().as_uri()}?mode=ro", uri=True)
    connection.isolation_level = None
    connection.execute("PRAGMA busy_timeout = 5000")
    return connection


def _writer(path: Path) -> sqlite3.Connection:
    connection = sqlite3.connect(f"{path.absolute().as_uri()}?mode=rw", uri=True)
    connection.isolation_level = None
    connection.execute("PRAGMA journal_mode = MEMORY")
    return connection


def _row_counts(connection: sqlite3.Connection) -> dict[str, int]:
    """Of every table that is there: an older book has fewer."""
    tables = connection.execute("SELECT name FROM sqlite_master WHERE type = 'table'").fetchall()
    return {
        table: connection.execute(f"SELECT count(*) FROM {table}").fetchone()[0]
        for (table,) in tables
    }


def _health(connection: sqlite3.Connection) -> list[str]:
    rows = connection.execute("PRAGMA integrity_check").fetchall()
    broken = connection.execute("PRAGMA foreign_key_check").fetchall()
    flaws = [text for (text,) in rows if text != "ok"]
    return flaws + [told("names nothing", table=row[0], parent=row[2]) for row in broken]


def _flaws(path: Path) -> tuple[str, ...]:
    try:
        book = open_book(path, station="proof", read_only=True, known_whole=True)  # seen to below
        with closing(book.connection):
            return tuple(_health(book.connection))
    except (BookError, sqlite3.Error) as error:
        return (str(error),)


def _refuse_flaws(path: Path, *, is_proved: bool) -> None:
    """Make sure of the copy's state rows, then that nothing is wrong with it.

    A copy of an older book stays so until it is opened: that makes a backup of it first.
    """
    with closing(_writer(path)) as connection:
        (version,) = connection.execute("PRAGMA user_version").fetchone()
        if version == SCHEMA_VERSION and differing(connection):
            connection.execute("BEGIN IMMEDIATE")
            rebuild(connection)
            connection.execute("COMMIT")
            is_proved = False
        flaws = [] if is_proved else _health(connection)
    if flaws:
        raise BookError(told("copy not sound", flaw=flaws[0]))


def _take_place(waiting: Path, place: Path) -> Path | None:
    """Swap in one rename where that is safe; the old file keeps a name at every moment.

    A journal that is not empty belongs to the old file: left behind it would be played into
    the new one, and without it the old file is half a batch. So it has its new name before
    the old file gets its own, and loses its old one before the new file comes.
    """
    journal = _journal(place)
    aside = _free_aside(place) if place.exists() else None
    if journal.exists() and journal.stat().st_size:
        _keep_aside(journal, _journal(aside or _free_aside(place)))
        sync(place.parent)
        if aside is not None:
            place.rename(aside)
            sync(place.parent)
        journal.unlink()
    elif aside is not None:
        _keep_aside(place, aside)
    sync(place.parent)
    waiting.replace(place)
    sync(place.parent)
    return aside


def _keep_aside(place: Path, aside: Path) -> None:
    try:
        os.link(place, aside)
    except OSError:  # a file system without hard links, such as a stick's
        copy_durably(place, aside)


def _journal(book: Path) -> Path:
    return book.with_name(f"{book.name}-journal")


def _free_aside(place: Path) -> Path:
    taken = re.compile(rf"{re.escape(place.name)}\.aside-(\d+)(-journal)?")
    numbers = [
        int(match[1]) for file in place.parent.iterdir() if (match := taken.fullmatch(file.name))
    ]
    return place.with_name(f"{place.name}.aside-{max(numbers, default=0) + 1}")


def _rotate(book: Path) -> None:
    if is_rotation_paused(book):
        return
    backups = backups_of(book)
    kept = kept_numbers([backup.number for backup in backups])
    for backup in backups:
        if backup.number not in kept:
            _throw_away(backup)


def _throw_away(backup: Backup) -> None:
    """The file first: a sidecar alone is nothing, a file alone could not be proved."""
    try:
        backup.path.unlink()
        _sidecar(backup.path).unlink(missing_ok=True)
    except OSError as error:
        raise BookError(told("old one stays", path=backup.path, error=error)) from error


def _pause_rotation(book: Path) -> None:
    folder = backup_folder(book)
    make_private_folder(folder)
    os.close(os.open(folder / _PAUSE, os.O_CREAT | os.O_WRONLY, 0o600))
    sync(folder)


def _copy_to(backup: Backup, folder: Path) -> None:
    try:
        make_private_folder(folder)
        there = folder / backup.path.name
        part = folder / f".{there.name}.part"
        copy_durably(backup.path, part)
        if sha256_of(part) != _recorded(backup.path):
            raise BookError(told("copy differs", folder=folder))
        _write_sidecar(there, _recorded(backup.path))
        part.replace(there)
        sync(folder)
    except OSError as error:
        raise BookError(told("no copy", path=backup.path, folder=folder, error=error)) from error


def _backups_in(folder: Path) -> list[Backup]:
    if not folder.is_dir():
        return []
    matches = ((file, _NAME.fullmatch(file.name)) for file in folder.iterdir())
    found = [
        Backup(path=file, number=int(match[1]), why=match[2]) for file, match in matches if match
    ]
    return sorted(found, key=lambda backup: backup.number, reverse=True)


def _sidecar(path: Path) -> Path:
    return path.with_name(f"{path.name}.sha256")


def _write_sidecar(path: Path, sha256: str) -> None:
    handle = os.open(_sidecar(path), os.O_CREAT | os.O_TRUNC | os.O_WRONLY, 0o600)
    with os.fdopen(handle, "w", encoding="utf-8") as file:
        file.write(f"{sha256}  {path.name}\n")
        file.flush()
        os.fsync(file.fileno())


def _recorded(path: Path) -> str:
    words = _sidecar(path).read_text(encoding="utf-8").split()
    return words[0] if words else ""
