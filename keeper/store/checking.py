"""Look a book over: each thing that is not as it must be, in one sentence. Writes nothing."""

import sqlite3
from collections.abc import Callable, Iterator
from dataclasses import dataclass, fields
from datetime import UTC, datetime
from enum import StrEnum
from typing import Any, get_args, get_type_hints

from keeper.language import tr
from keeper.store.backups import backups_of, latest_good, prove
from keeper.store.checksums import unlike
from keeper.store.database import Book
from keeper.store.journal import milliseconds_of
from keeper.store.reading import batch_row
from keeper.store.reading_layers import unsettled
from keeper.store.rows import TABLES
from keeper.store.schema import EVENT_TABLES, SPINE_TABLES, new_parts, schema_parts
from keeper.store.standing import WHOLE, reckoned
from keeper.store.state import differing

_SHOWN = 20


class Concern(StrEnum):
    """What a finding is about."""

    STRUCTURE = "structure"
    REFERENCES = "references"
    PARTS = "parts"
    WORDS = "words"
    BATCHES = "batches"
    WITHDRAWN = "withdrawn"
    STATE = "state"
    BACKUPS = "backups"
    CHANGED = "changed"
    CHECKSUMS = "checksums"


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing that is wrong. sentence: what, and where."""

    concern: Concern
    sentence: str


def check(book: Book) -> tuple[Finding, ...]:
    """Everything that is wrong with *book* and its backups; empty when all holds."""
    return tuple(
        Finding(concern, sentence)
        for concern, looks in _CHECKS.items()
        for sentence in _told(book, looks)
    )


def _told(book: Book, looks: Callable[[Book], Iterator[str]]) -> list[str]:
    """What one check says; a damaged file is a finding of the check that met it."""
    try:
        return list(looks(book))
    except (sqlite3.DatabaseError, UnicodeDecodeError) as error:
        return [tr("The file cannot be read through: {error}.", error=error)]


def _structure(book: Book) -> Iterator[str]:
    for (text,) in book.connection.execute(f"PRAGMA integrity_check({_SHOWN})"):
        if text != "ok":
            yield tr("The file is damaged: {found}.", found=text)


def _references(book: Book) -> Iterator[str]:
    for table, _, parent, _ in book.connection.execute("PRAGMA foreign_key_check"):
        yield tr(
            "A row of {table} names a {parent} that the book does not have.",
            table=table,
            parent=parent,
        )


def _parts(book: Book) -> Iterator[str]:
    expected = new_parts()
    found = schema_parts(book.connection)
    for name in sorted(expected.keys() - found.keys()):
        yield tr("The {part} is missing.", part=name)
    for name in sorted(found.keys() - expected.keys()):
        yield tr("The {part} is not part of a book of this version.", part=name)
    for name in sorted(expected.keys() & found.keys()):
        if expected[name] != found[name]:
            yield tr("The {part} is not as this version makes it.", part=name)


def _words(book: Book) -> Iterator[str]:
    for kind, table in TABLES.items():
        for column, words in _worded(kind):
            rows = book.connection.execute(
                f"SELECT DISTINCT {column} FROM {table} WHERE {column} IS NOT NULL"
            )
            for (found,) in rows:
                if found not in words:
                    yield tr(
                        "The column {column} holds {found!r}, none of its words.",
                        column=f"{table}.{column}",
                        found=found,
                    )


def _worded(kind: Any) -> Iterator[tuple[str, set[str]]]:
    hints = get_type_hints(kind)
    for field in fields(kind):
        for hint in get_args(hints[field.name]) or (hints[field.name],):
            if isinstance(hint, type) and issubclass(hint, StrEnum):
                yield field.name, {str(word) for word in hint}


def _batches(book: Book) -> Iterator[str]:
    entries = " UNION ALL ".join(f"SELECT batch, seq FROM {table}" for table in EVENT_TABLES)
    for table in (*EVENT_TABLES, "withdrawal", "animal", "round"):
        sql = f"SELECT count(*) FROM {table} WHERE batch NOT IN (SELECT id FROM batch)"
        (orphans,) = book.connection.execute(sql).fetchone()
        if orphans:
            yield tr("{count} rows of {table} belong to no batch.", count=orphans, table=table)
    twice = f"SELECT batch, seq FROM ({entries}) GROUP BY batch, seq HAVING count(*) > 1"
    for batch, seq in book.connection.execute(f"{twice} LIMIT {_SHOWN}"):
        yield tr("Batch {batch} has two entries with the number {number}.", batch=batch, number=seq)
    idle = f"""SELECT batch, target_batch, target_seq FROM withdrawal WHERE target_seq <> {WHOLE}
        AND (target_batch, target_seq) NOT IN ({entries}) LIMIT {_SHOWN}"""
    for batch, target, seq in book.connection.execute(idle):
        yield tr(
            "Batch {batch} withdraws entry {number} of batch {target}, which has no such entry.",
            batch=batch,
            number=seq,
            target=target,
        )


def _withdrawn(book: Book) -> Iterator[str]:
    kept = set(book.connection.execute("SELECT batch, seq FROM withdrawn").fetchall())
    right = reckoned(book.connection)
    for batch, seq in sorted(right - kept)[:_SHOWN]:
        yield tr("{entry} was taken back, but the book still counts it.", entry=_entry(batch, seq))
    for batch, seq in sorted(kept - right)[:_SHOWN]:
        yield tr("{entry} stands, but the book does not count it.", entry=_entry(batch, seq))
    for batch in unsettled(book.connection)[:_SHOWN]:
        yield tr("The readings of batch {batch} do not lie as its entry stands.", batch=batch)


def _entry(batch: int, seq: int) -> str:
    if seq == WHOLE:
        return tr("Batch {batch}", batch=batch)
    return tr("Entry {number} of batch {batch}", number=seq, batch=batch)


def _state(book: Book) -> Iterator[str]:
    for animal in differing(book.connection):
        rows = book.connection.execute("SELECT code FROM animal_now WHERE animal = ?", (animal,))
        (code,) = rows.fetchone() or (animal,)
        yield tr("The present state of {code} is not what its history says.", code=code)


def _backups(book: Book) -> Iterator[str]:
    for backup in backups_of(book.path):
        yield from prove(backup)


def _changed(book: Book) -> Iterator[str]:
    """A row of record never changes, so it must be in the book as it is in a proved backup.

    A flipped letter is nothing that SQLite could notice. Only batches that both have are
    compared: the keeper may have gone back to an earlier backup.
    """
    backup = latest_good(book.path)
    if backup is None:
        return
    execute = book.connection.execute
    execute("ATTACH ? AS proved", (f"{backup.path.absolute().as_uri()}?mode=ro",))
    try:
        for table in (*SPINE_TABLES, *EVENT_TABLES):
            count = execute(_differing_rows(execute, table)).fetchone()[0]
            if count:
                yield tr(
                    "{count} rows of {table} are not as the backup {backup} has them.",
                    count=count,
                    table=table,
                    backup=backup.path.name,
                )
    finally:
        execute("DETACH proved")


def _checksums(book: Book) -> Iterator[str]:
    """Where no backup says otherwise, a batch's own checksum does."""
    for key in unlike(book.connection)[:_SHOWN]:
        batch = batch_row(book, key)
        verb = "" if batch is None else batch.verb
        day = datetime.fromtimestamp(milliseconds_of(key) / 1000, UTC).date()
        yield tr(
            "Batch {key} ({verb}, {day}) is not as it was written: something in it has changed"
            " by itself.",
            key=str(key),
            verb=verb,
            day=day.isoformat(),
        )


def _differing_rows(execute: Callable[[str], sqlite3.Cursor], table: str) -> str:
    """Counts rows of the backup that the book has otherwise or not; an older one lacks columns."""
    told = execute(f"SELECT name FROM pragma_table_info('{table}', 'proved')").fetchall()
    if not told:
        return "SELECT 0"
    names = ", ".join(name for (name,) in told)
    batch = "id" if table == "batch" else "batch"
    return f"""SELECT count(*) FROM (SELECT {names} FROM proved.{table}
        WHERE {batch} IN (SELECT id FROM main.batch)
        EXCEPT SELECT {names} FROM main.{table})"""


_CHECKS: dict[Concern, Callable[[Book], Iterator[str]]] = {
    Concern.STRUCTURE: _structure,
    Concern.REFERENCES: _references,
    Concern.PARTS: _parts,
    Concern.WORDS: _words,
    Concern.BATCHES: _batches,
    Concern.WITHDRAWN: _withdrawn,
    Concern.STATE: _state,
    Concern.BACKUPS: _backups,
    Concern.CHANGED: _changed,
    Concern.CHECKSUMS: _checksums,
}
