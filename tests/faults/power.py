"""Campaigns of power cuts: record a scene, draw what the disk may hold, look at every book."""

import hashlib
import shutil
import sqlite3
from collections.abc import Callable
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from keeper.store.backups import backups_of, prove
from keeper.store.checking import Concern, check
from keeper.store.database import SCHEMA_VERSION, create_book, open_book
from keeper.store.errors import BookError
from keeper.store.schema import schema_parts
from tests.faults.deeds import BOOK, a_book
from tests.faults.disk import State, cuts, lay_down
from tests.faults.system_calls import recorded

DEEDS = Path(__file__).with_name("deeds.py")
Rows = frozenset[tuple[Any, ...]]


@dataclass(slots=True)
class Tally:
    """What became of the drawn states. Every number but the first two must be nought."""

    states: int = 0
    different: int = 0
    corrupt: int = 0
    half: int = 0
    lost: int = 0
    told: str = ""

    @property
    def harm(self) -> tuple[int, int, int]:
        return self.corrupt, self.half, self.lost

    def add(self, found: "Found", said: tuple[str, ...]) -> None:
        self.states += 1
        self.corrupt += bool(found.flaw)
        self.half += found.half
        self.lost += not found.flaw and bool(set(said) - found.kept)
        if found.flaw and not self.told:
            self.told = found.flaw


@dataclass(frozen=True, slots=True)
class Found:
    """What a book said after a cut. kept: the acknowledgements that hold."""

    flaw: str = ""
    half: bool = False
    kept: frozenset[str] = frozenset()


Look = Callable[[Path], Found]


def campaign(
    scene: str, folder: Path, look_for: Callable[[Path], Look], *, count: int, seed: int = 2026
) -> Tally:
    """Record *scene* on the book in *folder* and look at *count* states after power cuts.

    look_for: gets the folder as the scene left it, and gives what looks at one state.
    """
    before = folder.with_name(f"{folder.name}-before")
    shutil.copytree(folder, before)
    calls = recorded([str(DEEDS), scene, str(folder)], folder, folder.with_name("trace"))
    look = look_for(folder)
    after = folder.with_name(f"{folder.name}-after")
    folder.rename(after)
    before.rename(folder)  # the calls name files by this path
    tally, seen = Tally(), dict[bytes, Found]()
    for state, said in cuts(folder, calls, count, seed):
        print_of = _print(state)
        if print_of not in seen:
            seen[print_of] = _look_at(state, folder, look)
        tally.add(seen[print_of], said)
    tally.different = len(seen)
    return tally


def begun(folder: Path) -> Path:
    """A folder with a closed book of a few animals."""
    folder.mkdir()
    book = create_book(folder / BOOK, station="shed")
    a_book(book)
    book.close()
    return folder


def whole_batches(after: Path) -> Look:
    """Every batch that is there is as it came out in the end; backups with a name are good."""
    with closing(open_book(after / BOOK, station="look", read_only=True).connection) as end:
        right = rows_by_batch(end)

    def look(folder: Path) -> Found:
        book = open_book(folder / BOOK, station="look")
        with closing(book.connection):
            flaws = [f.sentence for f in check(book) if f.concern is not Concern.BACKUPS]
            there = rows_by_batch(book.connection)
        good = [b.path.name for b in backups_of(folder / BOOK) if not prove(b)]
        if flaws:
            return Found(flaw=flaws[0])
        half = any(rows != right.get(key) for key, rows in there.items())
        kept = {f"batch {key}" for key in there} | {f"backup {name}" for name in good}
        return Found(half=half, kept=frozenset(kept))

    return look


def rows_by_batch(connection: sqlite3.Connection) -> dict[int, Rows]:
    """Every row of record, by the batch that wrote it."""
    found: dict[int, set[tuple[Any, ...]]] = {}
    for name, sql in schema_parts(connection).items():
        table = name.removeprefix("table ")
        if table == name or table == "withdrawn" or not (table == "batch" or " batch INT" in sql):
            continue
        key = "id" if table == "batch" else "batch"
        for batch, *row in connection.execute(f"SELECT {key}, * FROM {table}"):
            found.setdefault(batch, set()).add((table, *row))
    return {batch: frozenset(rows) for batch, rows in found.items()}


def older_or_newer(before: Path) -> Callable[[Path], Look]:
    """The book is of the old version or of the new one, whole, with every row of record."""
    with closing(sqlite3.connect(before / BOOK)) as old:
        old_parts, records = schema_parts(old), rows_by_batch(old)
        (old_version,) = old.execute("PRAGMA user_version").fetchone()

    def look_for(after: Path) -> Look:
        with closing(sqlite3.connect(after / BOOK)) as new:
            new_parts = schema_parts(new)
        told = {old_version: old_parts, SCHEMA_VERSION: new_parts}

        def look(folder: Path) -> Found:
            with closing(sqlite3.connect(folder / BOOK)) as raw:
                (version,) = raw.execute("PRAGMA user_version").fetchone()
                half = told.get(version) != schema_parts(raw) or records != rows_by_batch(raw)
            book = open_book(folder / BOOK, station="look")
            with closing(book.connection):
                flaws = [f.sentence for f in check(book) if f.concern is not Concern.BACKUPS]
                half = half or rows_by_batch(book.connection) != records
            if flaws:
                return Found(flaw=flaws[0])
            said = {"brought up"} if version == SCHEMA_VERSION else set()
            return Found(half=half, kept=frozenset(said))

        return look

    return look_for


def old_or_restored(before: Path, old: dict[int, Rows]) -> Callable[[Path], Look]:
    """The book says what it said before or what the backup says; the old one has a name still.

    old: what the book says when it is opened as it lay before.
    """

    def look_for(after: Path) -> Look:
        new = _said_in(after / BOOK)

        def look(folder: Path) -> Found:
            places = [folder / BOOK, *sorted(folder.glob(f"{BOOK}.aside-*[0-9]"))]
            told = [_said_in(place) for place in places if place.exists()]
            if old not in told or not all(each in (old, new) for each in told):
                return Found(half=True)
            is_done = (folder / BOOK).exists() and told[0] == new
            return Found(kept=frozenset({"restored"} if is_done else ()))

        return look

    return look_for


def _said_in(path: Path) -> dict[int, Rows]:
    book = open_book(path, station="look")
    with closing(book.connection):
        return rows_by_batch(book.connection)


def _look_at(state: State, folder: Path, look: Look) -> Found:
    there = folder.with_name("cut")
    shutil.rmtree(there, ignore_errors=True)
    there.mkdir()
    lay_down(state, folder, there)
    try:
        return look(there)
    except (BookError, sqlite3.DatabaseError) as error:
        return Found(flaw=str(error))


def _print(state: State) -> bytes:
    digest = hashlib.blake2b()
    for path, content in sorted(state.items()):
        digest.update(path.encode() + b"\0" + str(len(content)).encode() + b"\0" + content)
    return digest.digest()
