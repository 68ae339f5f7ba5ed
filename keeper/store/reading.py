"""Read the book: questions in, vocabulary out."""

import sqlite3
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta, timezone
from itertools import islice
from typing import Any, Generic, TypeVar

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import HoldSet, Override, Paired, Snooze
from keeper.husbandry.now import AnimalNow
from keeper.store.database import Book
from keeper.store.journal import BatchId, EntryKey
from keeper.store.many import AMONG, keys_told
from keeper.store.rows import (
    TABLES,
    columns_of,
    day_number,
    day_of,
    decoded,
    filled,
    from_row,
    from_rows,
    select_columns,
)
from keeper.store.schema import ANIMAL_COLUMNS
from keeper.store.standing import WHOLE, stands
from keeper.store.state import as_of

E = TypeVar("E")
_UNIX = datetime(1970, 1, 1, tzinfo=UTC)


@dataclass(frozen=True, slots=True)
class Entry(Generic[E]):
    """An event as it lies in the book."""

    event: E
    key: EntryKey
    stands: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Batch:
    """One thing the keeper did."""

    id: BatchId
    station: str
    keeper: str
    verb: str
    written: datetime
    reason: str | None
    stands: bool


_NOW = columns_of(AnimalNow, skip=())
_NOW_FIELDS = {column.field: column for column in _NOW}
_NOW_SQL = ", ".join(column.name for column in _NOW)


def _nows_from(rows: Sequence[Sequence[Any]]) -> list[AnimalNow]:
    made = [AnimalNow.__new__(AnimalNow) for _ in rows]
    if made:
        filled(made, _NOW, zip(*rows, strict=True))
    return made


def board(book: Book) -> list[AnimalNow]:
    """Every animal of the book as it stands now, in no particular order."""
    return _nows_from(book.connection.execute(f"SELECT {_NOW_SQL} FROM animal_now").fetchall())


def board_fields(book: Book, *names: str) -> Iterator[tuple[Any, ...]]:
    """Some fields of every animal as it stands now, in a fraction of the time of ``board``.

    names: fields of ``AnimalNow``.
    """
    columns = [_NOW_FIELDS[name] for name in names]
    wanted = ", ".join(column.name for column in columns)
    rows = book.connection.execute(f"SELECT {wanted} FROM animal_now").fetchall()
    return zip(*map(decoded, columns, zip(*rows, strict=True)), strict=True)


def version(book: Book) -> tuple[int, int]:
    """Another one whenever anything was written, by this connection or by any other."""
    (elsewhere,) = book.connection.execute("PRAGMA data_version").fetchone()
    return elsewhere, book.connection.total_changes


def is_empty(book: Book) -> bool:
    """No animal stands in the book."""
    return book.connection.execute("SELECT 1 FROM animal_now LIMIT 1").fetchone() is None


def board_on(book: Book, day: date) -> list[AnimalNow]:
    """Every animal as it stood at the end of *day*, by all that is known now."""
    return _nows_from(as_of(book.connection, day))


def animal_now(book: Book, animal: AnimalId) -> AnimalNow | None:
    rows = book.connection.execute(
        f"SELECT {_NOW_SQL} FROM animal_now WHERE animal = ?", (animal,)
    ).fetchall()
    return _nows_from(rows)[0] if rows else None


def animals_coded(book: Book, code: str) -> list[AnimalNow]:
    """Animals that bear *code*; more than one only after two books were joined."""
    rows = book.connection.execute(f"SELECT {_NOW_SQL} FROM animal_now WHERE code = ?", (code,))
    return _nows_from(rows.fetchall())


def history(
    book: Book, kind: type[E], animal: AnimalId, *, withdrawn_too: bool = False
) -> list[Entry[E]]:
    """One animal's entries of *kind*, oldest first."""
    where = "1" if withdrawn_too else stands("e")
    rows = book.connection.execute(
        f"""SELECT {select_columns(kind)}, {stands("e")} FROM {TABLES[kind]} e
            WHERE e.animal = ? AND {where} ORDER BY e.at, e.batch, e.seq""",
        (animal,),
    )
    return [entry_of_row(kind, row) for row in rows]


def on_days_of(book: Book, kind: type[E], animal: AnimalId, days: Iterable[int]) -> list[Entry[E]]:
    """One animal's standing entries of *kind* on some *days* since 1970, oldest first."""
    rows = book.connection.execute(
        f"""SELECT {select_columns(kind)} FROM {TABLES[kind]} e
            WHERE e.animal = ? AND e.day {AMONG} AND {stands("e")}
            ORDER BY e.at, e.batch, e.seq""",
        (animal, keys_told(days)),
    ).fetchall()
    keys = (EntryKey(row[4], row[5]) for row in rows)
    return [Entry(event, key, True) for event, key in zip(from_rows(kind, rows), keys, strict=True)]


def recent(
    book: Book,
    kind: type[E],
    animals: Iterable[AnimalId],
    most: int,
    *,
    until: date = date.max,
) -> dict[AnimalId, list[E]]:
    """The newest *most* standing events of *kind* of each animal up to a day, oldest first."""
    sql = f"""SELECT {select_columns(kind)} FROM {TABLES[kind]} e
        WHERE e.animal = ? AND e.day <= ? AND {stands("e")}
        ORDER BY e.at DESC, e.batch DESC, e.seq DESC LIMIT ?"""
    last = day_number(until)
    with _snapshot(book) as execute:
        found = {animal: execute(sql, (animal, last, most)).fetchall() for animal in animals}
    events = iter(from_rows(kind, [row for rows in found.values() for row in reversed(rows)]))
    return {animal: list(islice(events, len(rows))) for animal, rows in found.items()}


def before_laying(book: Book, until: date = date.max) -> set[AnimalId]:
    """Animals with a pre-lay shed on or before the day *until*, whatever came after it."""
    rows = book.connection.execute(
        f"""SELECT e.animal FROM shed_sign e
            WHERE e.pre_lay = 1 AND e.day <= ? AND {stands("e")}""",
        (day_number(until),),
    )
    return {animal for (animal,) in rows}


def fasted_weights(
    book: Book, animals: Iterable[AnimalId], fasted_days: int
) -> dict[AnimalId, list[tuple[date, float]]]:
    """Days and grams of each animal's weighings with no meal in the *fasted_days* before."""
    sql = f"""SELECT e.day, e.weight_mg FROM weighing e
        WHERE e.animal = ? AND {stands("e")} AND NOT EXISTS (SELECT 1 FROM offer x
            WHERE x.animal = e.animal AND x.at BETWEEN e.at - ? AND e.at
            AND x.result IN ('taken', 'part taken') AND {stands("x")})
        ORDER BY e.at, e.batch, e.seq"""
    seconds = fasted_days * 86_400
    with _snapshot(book) as execute:
        found = {animal: execute(sql, (animal, seconds)).fetchall() for animal in animals}
    return {
        animal: [(day_of(day), mg / 1000) for day, mg in rows] for animal, rows in found.items()
    }


@contextmanager
def _snapshot(book: Book) -> Iterator[Callable[..., sqlite3.Cursor]]:
    """Gives ``execute`` for many readings of one moment, for which the file is locked once."""
    connection = book.connection
    if connection.in_transaction:
        yield connection.execute
        return
    connection.execute("BEGIN")
    try:
        yield connection.execute
    finally:
        if connection.in_transaction:  # a disk that fails has ended it already
            connection.execute("COMMIT")


def all_of(book: Book, kind: type[E], condition: str = "1", *values: Any) -> list[Entry[E]]:
    """Standing entries of *kind* in the order of writing; *condition* is SQL of the store's own."""
    rows = book.connection.execute(
        f"""SELECT {select_columns(kind)}, 1 FROM {TABLES[kind]} e
            WHERE {condition} AND {stands("e")} ORDER BY e.batch, e.seq""",
        values,
    ).fetchall()
    events = from_rows(kind, [row[:-1] for row in rows])
    keys = (EntryKey(row[4], row[5]) for row in rows)
    return [Entry(event, key, True) for event, key in zip(events, keys, strict=True)]


def on_days(book: Book, kind: type[E], first: date, last: date) -> list[E]:
    """Standing events of *kind* from *first* to *last*, in the order of writing."""
    days = (day_number(first), day_number(last))
    return [entry.event for entry in all_of(book, kind, "e.day BETWEEN ? AND ?", *days)]


def pairings_of(book: Book, animal: AnimalId) -> list[Paired]:
    """Standing pairings of *animal* on either side, by the day on which they began."""
    found = all_of(book, Paired, "(e.animal = ? OR e.mate = ?)", animal, animal)
    return sorted((entry.event for entry in found), key=lambda event: event.happened)


def open_holds(
    book: Book, on: date, *, ends_from: date | None = None
) -> dict[AnimalId, list[HoldSet]]:
    """Holds set by hand that still run on the day *on*.

    ends_from: those too that nobody ended and that were to end on that earlier day or since.
    """
    ended = f"""NOT EXISTS (SELECT 1 FROM hold_ended x WHERE x.animal = e.animal
        AND x.kind = e.kind AND (x.at, x.batch, x.seq) > (e.at, e.batch, e.seq)
        AND {stands("x")})"""
    condition = f"(e.until IS NULL OR e.until >= ?) AND e.day <= ? AND {ended}"
    holds: dict[AnimalId, list[HoldSet]] = {}
    days = (day_number(ends_from or on), day_number(on))
    for entry in all_of(book, HoldSet, condition, *days):
        holds.setdefault(entry.event.animal, []).append(entry.event)
    return holds


def snoozes(book: Book, on: date) -> list[Snooze]:
    """Lines of the watch that are put aside on the day *on*."""
    return [entry.event for entry in all_of(book, Snooze, "e.until >= ?", day_number(on))]


def overrides(book: Book) -> list[Override]:
    """The keeper's own figures, the latest for each key last."""
    return [entry.event for entry in all_of(book, Override)]


def places_ever(book: Book) -> list[str]:
    """Every place into which an animal was ever moved, as written, in no particular order."""
    rows = book.connection.execute(
        f"SELECT DISTINCT e.place FROM moved e WHERE e.place IS NOT NULL AND {stands('e')}"
    )
    return [place for (place,) in rows]


def settings(book: Book) -> dict[str, str]:
    """The latest value of each setting."""
    rows = book.connection.execute(
        f"SELECT e.key, e.value FROM setting e WHERE {stands('e')} ORDER BY e.batch, e.seq"
    )
    return dict(rows.fetchall())


def latest_batches(book: Book, most: int = 50) -> list[Batch]:
    """The newest batches, newest first, withdrawals among them."""
    rows = book.connection.execute(
        f"""SELECT b.id, b.station, b.keeper, b.verb, b.written, b.utc_offset, b.reason,
            NOT EXISTS (SELECT 1 FROM withdrawn w WHERE w.batch = b.id AND w.seq = {WHOLE})
            FROM batch b ORDER BY b.id DESC LIMIT ?""",
        (most,),
    )
    return [batch_of_row(row) for row in rows]


def batch_row(book: Book, batch: BatchId) -> Batch | None:
    rows = book.connection.execute(
        f"""SELECT b.id, b.station, b.keeper, b.verb, b.written, b.utc_offset, b.reason,
            NOT EXISTS (SELECT 1 FROM withdrawn w WHERE w.batch = b.id AND w.seq = {WHOLE})
            FROM batch b WHERE b.id = ?""",
        (batch,),
    ).fetchall()
    return batch_of_row(rows[0]) if rows else None


def withdrawer_of(book: Book, batch: BatchId) -> BatchId | None:
    """The standing batch that withdraws the whole of *batch*; None while it stands."""
    row = book.connection.execute(
        f"""SELECT m.batch FROM withdrawal m WHERE m.target_batch = ? AND m.target_seq = {WHOLE}
            AND NOT EXISTS (SELECT 1 FROM withdrawn w WHERE w.batch = m.batch AND w.seq = {WHOLE})
            ORDER BY m.batch DESC LIMIT 1""",
        (batch,),
    ).fetchone()
    return None if row is None else int(row[0])


def entries_of(book: Book, batch: BatchId) -> list[Entry[Any]]:
    """Everything *batch* wrote, in its own order, whether it stands or not."""
    found: list[Entry[Any]] = []
    for kind, table in TABLES.items():
        rows = book.connection.execute(
            f"SELECT {select_columns(kind)}, {stands('e')} FROM {table} e WHERE e.batch = ?",
            (batch,),
        )
        found += [entry_of_row(kind, row) for row in rows]
    return sorted(found, key=lambda entry: entry.key.seq)


def entry_of_row(kind: type[Any], row: Sequence[Any]) -> Entry[Any]:
    return Entry(from_row(kind, row[:-1]), EntryKey(row[4], row[5]), bool(row[-1]))


def batch_of_row(row: Sequence[Any]) -> Batch:
    key, station, keeper, verb, written_ms, utc_offset, reason, standing = row
    zone = timezone(timedelta(minutes=utc_offset)) if utc_offset else UTC
    return Batch(
        id=key,
        station=station,
        keeper=keeper,
        verb=verb,
        written=(_UNIX + timedelta(milliseconds=written_ms)).astimezone(zone),
        reason=reason,
        stands=bool(standing),
    )


def animals_of(book: Book, batch: BatchId, most: int) -> list[AnimalId]:
    """Up to *most* animals that the entries of *batch* are about."""
    found: dict[AnimalId, None] = {}
    for table in ANIMAL_COLUMNS:
        rows = book.connection.execute(
            f"SELECT DISTINCT animal FROM {table} WHERE batch = ? LIMIT ?", (batch, most)
        )
        found |= dict.fromkeys(animal for (animal,) in rows)
    return list(found)[:most]
