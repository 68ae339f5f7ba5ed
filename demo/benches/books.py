"""The books that are measured: invented collections, made once and kept in demo/out/books.

A book's name holds its size, its seed and a print of the schema. A book of an older schema is
not measured as it is: it is brought up by the same steps as a keeper's. Delete the folder to
have all of them made anew.
"""

import hashlib
import shutil
import sqlite3
import sys
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from tempfile import TemporaryDirectory

from keeper.actions.keeping import Keeping, open_keeping
from keeper.rehearsal.collection import make_collection
from keeper.store.database import SCHEMA_VERSION
from keeper.store.locks import lock_path
from keeper.store.migrations import bring_up
from keeper.store.rows import day_number
from keeper.store.schema import fresh_schema, new_parts, schema_parts
from keeper.store.state import rebuild

OUT = Path(__file__).resolve().parents[1] / "out"
FOLDER = OUT / "books"
ENDS_ON = date(2026, 6, 13)
NIGHT = date(2026, 6, 17)
"""The last day lived is a Saturday; the night asked is the Wednesday after it."""
SEED = 1
STATION = "bench"
_CUT = ("offer", "weighing", "shed_sign")
"""The tables that grow with every year."""


@dataclass(frozen=True, slots=True, order=True)
class Size:
    """So many animals lived with for so many years."""

    animals: int
    years: int

    def __str__(self) -> str:
        return f"{self.animals:,} × {self.years}"


def evening() -> datetime:
    """The instant at which every book is measured."""
    return datetime(NIGHT.year, NIGHT.month, NIGHT.day, 20, tzinfo=UTC)


def evening_clock() -> Callable[[], datetime]:
    """A clock that stands at the evening and goes on by a second with each look."""
    at = evening()

    def now() -> datetime:
        nonlocal at
        at += timedelta(seconds=1)
        return at

    return now


def book_of(size: Size) -> Path:
    """The book of that size; made when it is not there yet, which takes from seconds to long."""
    begins = f"{size.animals}x{size.years}-{SEED}"
    path = FOLDER / f"{begins}-{hashlib.sha256(fresh_schema().encode()).hexdigest()[:8]}.book"
    if path.exists():
        return path
    FOLDER.mkdir(parents=True, exist_ok=True)
    older = sorted(FOLDER.glob(f"{begins}-????????.book"), key=lambda book: book.stat().st_mtime)
    with TemporaryDirectory(dir=FOLDER) as folder:
        made = Path(folder) / path.name
        if not (older and _brought_up(older[-1], made)):
            made.unlink(missing_ok=True)
            print(f"Making {path.name}; it is kept for later runs.", file=sys.stderr, flush=True)
            make_collection(
                made, animals=size.animals, years=size.years, seed=SEED, ends_on=ENDS_ON
            ).close()
        made.replace(path)
    for book in older:
        book.unlink(missing_ok=True)
    return path


def _brought_up(older: Path, made: Path) -> bool:
    """Whether *older*, which becomes *made*, could be brought to the present schema."""
    older.replace(made)
    with closing(sqlite3.connect(made, isolation_level=None)) as connection:
        connection.execute("PRAGMA synchronous = OFF")
        _drop_what_is_otherwise(connection)
        connection.execute(f"PRAGMA user_version = {SCHEMA_VERSION - 1}")
        try:
            bring_up(connection)
        except (sqlite3.Error, AssertionError):
            return False
    return True


def _drop_what_is_otherwise(connection: sqlite3.Connection) -> None:
    """Indexes, triggers and empty tables that a new book has not, or has otherwise."""
    wanted = new_parts()
    for part, sql in schema_parts(connection).items():
        kind, _, name = part.partition(" ")
        if wanted.get(part) == sql:
            continue
        if kind != "table" or not connection.execute(f"SELECT 1 FROM {name} LIMIT 1").fetchone():
            connection.execute(f"DROP {kind} IF EXISTS {name}")


@contextmanager
def opened(path: Path) -> Iterator[Keeping]:
    """The book at *path* for reading, on its evening."""
    with closing(
        open_keeping(path, station=STATION, now=evening_clock(), read_only=True)
    ) as keeping:
        yield keeping


@contextmanager
def copied(path: Path) -> Iterator[Path]:
    """A copy of the book to write in, on the same disk; gone afterwards."""
    with TemporaryDirectory(dir=FOLDER) as folder:
        copy = Path(folder) / path.name
        shutil.copy(path, copy)
        yield copy


@contextmanager
def written_in(path: Path) -> Iterator[Keeping]:
    """A copy of the book, open for writing on its evening; gone afterwards."""
    with (
        copied(path) as copy,
        closing(open_keeping(copy, station=STATION, now=evening_clock(), keeper="Ansa")) as keeping,
    ):
        yield keeping
        lock_path(copy).unlink(missing_ok=True)


def shorten(path: Path, years: int) -> None:
    """Take from the copy at *path* all feeds, weights and sheds but those of the last *years*.

    The animals stay the same, so that nothing but the length of the history differs.
    """
    first = day_number(ENDS_ON - timedelta(days=365 * years))
    with closing(sqlite3.connect(path, isolation_level=None)) as connection:
        connection.execute("BEGIN")
        for table in _CUT:
            connection.execute(f"DROP TRIGGER {table}_no_delete")
            connection.execute(f"DELETE FROM {table} WHERE day < ?", (first,))
        rebuild(connection)
        connection.execute("COMMIT")
        connection.execute("VACUUM")
