"""Make a sound copy of a book that is not sound; the book itself is left as it is.

The copy is a new book. It takes over every row that can be read and says something, from the
book and from its newest good backup; what was derived is made anew. A row of record never
changes once it is written, so where the two differ the backup is right: it was proved.
"""

import re
import sqlite3
from collections import Counter
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from keeper.language import tr
from keeper.store.backups import Backup, latest_good
from keeper.store.checking import Concern, Finding, check
from keeper.store.checksums import unlike
from keeper.store.database import Book, create_book, writing
from keeper.store.errors import BookError
from keeper.store.journal import milliseconds_of
from keeper.store.rows import KINDS, cell_names, from_row
from keeper.store.salvage import Row, Salvage
from keeper.store.schema import EVENT_TABLES, READING_TABLES, new_parts
from keeper.store.standing import WHOLE
from keeper.store.state import rebuild

FOUND_AGAIN = "found again"
"""The verb of a batch whose own line is lost while its entries are not."""
Given = dict[str, Any]
_SPINE = ("batch", "animal", "round")
_CANNOT = (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED, sqlite3.SQLITE_FULL)


@dataclass(frozen=True, slots=True, kw_only=True)
class Mended:
    """A mended copy and what became of the rows.

    brought: rows as *backup* has them. kept: rows that only the book itself had. left_out: what
    could not be taken over, in sentences. findings: what is wrong with the copy; as a rule nothing.
    """

    path: Path
    kept: int
    brought: int
    backup: Backup | None
    left_out: tuple[str, ...]
    findings: tuple[Finding, ...]


def mend(path: Path) -> Mended:
    """Write a mended copy of the book at *path* beside it, under a name of its own.

    Raises:
        BookError: neither the book nor a backup of it can be read, or the disk refused.
    """
    backup = latest_good(path)
    with _snapshot(path) as snapshot:
        if snapshot is None and backup is None:
            raise BookError(
                tr("{path} cannot be read at all, and no good backup lies beside it.", path=path)
            )
        book = create_book(_free_name(path), station="mend")
        try:
            taking = _Taking(book)
            with writing(book) as connection:
                _take_over(taking, snapshot, backup)
                taking.forget_checksums()
                rebuild(connection)
            findings = tuple(f for f in check(book) if f.concern is not Concern.BACKUPS)
        except BaseException:
            book.close()
            book.path.unlink()
            raise
        book.close()
    return Mended(
        path=book.path,
        kept=taking.kept,
        brought=taking.brought,
        backup=backup if taking.brought else None,
        left_out=taking.told(),
        findings=findings,
    )


@contextmanager
def _snapshot(path: Path) -> Iterator[Salvage | None]:
    """A copy of the file, page by page, so that nothing is done to the file; None if unreadable."""
    copy = path.with_name(f".{path.name}.mending")
    copy.unlink(missing_ok=True)
    copy.touch(mode=0o600)
    try:
        if not _copied(path, copy):
            yield None
            return
        with closing(Salvage(copy)) as salvage:
            yield salvage
    finally:
        copy.unlink(missing_ok=True)


def _copied(path: Path, copy: Path) -> bool:
    """By SQLite, which first rolls back what a crash left half written; False if it cannot."""
    for mode in ("rw", "ro"):  # the latter where the disk may only be read
        uri = f"{path.absolute().as_uri()}?mode={mode}"
        try:
            with (
                closing(sqlite3.connect(uri, uri=True)) as damaged,
                closing(sqlite3.connect(copy)) as target,
            ):
                damaged.execute("BEGIN")  # a copy would wait without end for one who writes
                damaged.execute("SELECT count(*) FROM sqlite_master").fetchone()
                damaged.backup(target)
                target.execute("SELECT count(*) FROM sqlite_master").fetchone()
            return True
        except (sqlite3.DatabaseError, UnicodeDecodeError) as error:
            if getattr(error, "sqlite_errorcode", 0) & 0xFF in _CANNOT:
                raise BookError(
                    tr("{path} cannot be copied just now: {error}.", path=path, error=error)
                ) from error
    return False


def _free_name(path: Path) -> Path:
    taken = re.compile(rf"{re.escape(path.name)}\.mended-(\d+)")
    numbers = [int(match[1]) for f in path.parent.iterdir() if (match := taken.fullmatch(f.name))]
    return path.with_name(f"{path.name}.mended-{max(numbers, default=0) + 1}")


def _take_over(taking: "_Taking", snapshot: Salvage | None, backup: Backup | None) -> None:
    """Rows of record from the backup first, readings from the book first: those are merged."""
    proved = None if backup is None else Salvage(backup.path)
    try:
        known = None if snapshot is None else _batches_if_whole(snapshot)
        for table in (*_SPINE, *EVENT_TABLES, "withdrawal", *READING_TABLES):
            from_both = [(proved, known), (snapshot, None)]
            for source, only in reversed(from_both) if table in READING_TABLES else from_both:
                if source is not None:
                    taking.take(table, source, only, of_book=source is snapshot)
    finally:
        if proved is not None:
            proved.close()


def _batches_if_whole(snapshot: Salvage) -> set[int] | None:
    """Every batch of the book, if all can be read: then a backup may not bring others back.

    A keeper may have gone back to an earlier backup, and newer ones still lie there.
    """
    batches = {key for (key,) in snapshot.rows("batch", ["id"])}
    return None if "batch" in snapshot.partly or not batches else batches


class _Taking:
    """Takes rows over into a new book, one at a time, and counts what it could not take."""

    def __init__(self, book: Book) -> None:
        self._connection = book.connection
        self.kept = self.brought = 0
        self._refused: Counter[tuple[str, str]] = Counter()
        self._partly: set[str] = set()
        self._changed = 0
        self._connection.execute(
            "CREATE TEMP TABLE said (batch INTEGER, seq INTEGER, PRIMARY KEY (batch, seq))"
        )

    def take(self, table: str, source: Salvage, only: set[int] | None, *, of_book: bool) -> None:
        """Rows of *table* from *source*; those of batches not in *only* are passed over."""
        columns = _columns(self._connection, table)
        batch = "id" if table == "batch" else "batch"
        for row in source.rows(table, columns):
            given = dict(zip(columns, row, strict=True))
            if only is None or table in READING_TABLES or given[batch] in only:
                self._take_row(table, given, of_book=of_book)
        if of_book and table in source.partly:
            self._partly.add(table)

    def forget_checksums(self) -> None:
        """Batches that are not as they were written keep what is left, and no checksum."""
        changed = unlike(self._connection)
        self._connection.execute("DROP TRIGGER batch_no_update")
        self._connection.executemany(
            "UPDATE batch SET checksum = NULL WHERE id = ?", [(key,) for key in changed]
        )
        self._connection.execute(new_parts()["trigger batch_no_update"])
        self._changed = len(changed)

    def told(self) -> tuple[str, ...]:
        """What could not be taken over, in sentences."""
        partly = [
            tr("The table {table} could be read only in part.", table=table)
            for table in self._partly
        ]
        refused = [
            _told_left_out(count, table, why)
            for (table, why), count in sorted(self._refused.items())
        ]
        changed = [_told_changed(self._changed)] if self._changed else []
        return (*sorted(partly), *refused, *changed)

    def _take_row(self, table: str, given: Given, *, of_book: bool) -> None:
        try:
            is_new = self._taken(table, given)
        except (ValueError, LookupError, TypeError, OverflowError, sqlite3.Error) as error:
            if isinstance(error, sqlite3.OperationalError):
                raise  # the disk of the copy
            self._refused[table, _why(error)] += 1
            return
        self.kept += is_new and of_book
        self.brought += is_new and not of_book

    def _taken(self, table: str, given: Given) -> bool:
        """False if the very same row is there; ValueError if another has its name."""
        there = self._there(table, given)
        if there is not None:
            if there != tuple(given.values()) and table not in READING_TABLES:
                raise ValueError(tr("the backup, which was proved, says otherwise"))
            return False
        if table in EVENT_TABLES:
            self._refuse_senseless(table, given)
            self._stand_in(given)
        if table == "withdrawal" and not self._is_there(*self._target(given)):
            raise ValueError(tr("what they withdraw is not in the book"))
        marks = ", ".join(f":{name}" for name in given)
        self._connection.execute(
            f"INSERT INTO {table} ({', '.join(given)}) VALUES ({marks})", given
        )
        if table in EVENT_TABLES:
            self._connection.execute("INSERT INTO said VALUES (:batch, :seq)", given)
        return True

    def _there(self, table: str, given: Given) -> Row | None:
        """The row of the same name: its primary key, or its batch and its number there."""
        where = " AND ".join(f"{name} = :{name}" for name in _KEYS.get(table, ("batch", "seq")))
        found: Row | None = self._connection.execute(
            f"SELECT {', '.join(given)} FROM {table} WHERE {where}", given
        ).fetchone()
        return found

    def _refuse_senseless(self, table: str, given: Given) -> None:
        """A row that the program could not read back, or whose number is another entry's."""
        kind = KINDS[table]
        from_row(kind, [given[name] for name in cell_names(kind)])
        if self._is_there("said", given["batch"], given["seq"]):
            raise ValueError(tr("another entry of their batch has their number"))

    def _stand_in(self, given: Given) -> None:
        """Lines of the spine that are lost while an entry names them."""
        if not self._is_there("batch", given["batch"]):
            self._connection.execute(
                """INSERT INTO batch (id, station, keeper, verb, written, utc_offset, reason)
                   VALUES (?, 'mend', '', ?, ?, 0, 'its own line could not be read')""",
                (given["batch"], FOUND_AGAIN, milliseconds_of(given["batch"])),
            )
        for table in ("animal", "round"):
            key = given.get(table)
            if key is not None and not self._is_there(table, key):
                self._connection.execute(
                    f"INSERT INTO {table} SELECT :key, max(id) FROM batch WHERE id < :key",
                    {"key": key},
                )

    def _target(self, given: Given) -> tuple[Any, ...]:
        batch, seq = given["target_batch"], given["target_seq"]
        return ("batch", batch) if seq == WHOLE else ("said", batch, seq)

    def _is_there(self, table: str, *key: Any) -> bool:
        where = "id = ?" if len(key) == 1 else "batch = ? AND seq = ?"
        found = self._connection.execute(f"SELECT 1 FROM {table} WHERE {where}", key).fetchone()
        return found is not None


_KEYS = {
    "batch": ("id",),
    "animal": ("id",),
    "round": ("id",),
    "reading_day": ("probe", "day"),
    "reading_layer": ("probe", "day", "batch"),
    "reading_over": ("probe", "day", "batch", "over"),
    "reading_file": ("sha256", "read_as"),
}


def _told_left_out(count: int, table: str, why: str) -> str:
    if count == 1:
        return tr("1 row of {table} left out: {why}.", table=table, why=why)
    return tr("{count} rows of {table} left out: {why}.", count=count, table=table, why=why)


def _told_changed(count: int) -> str:
    if count == 1:
        return tr("1 batch is not as it was written, and is taken over as it is now.")
    return tr(
        "{count} batches are not as they were written, and are taken over as they are now.",
        count=count,
    )


def _columns(connection: sqlite3.Connection, table: str) -> list[str]:
    return [row[1] for row in connection.execute(f"PRAGMA table_info({table})")]


def _why(error: Exception) -> str:
    if isinstance(error, sqlite3.IntegrityError):
        return tr("the book’s own rules refuse them ({error})", error=error)
    return str(error).removesuffix(".") or type(error).__name__
