"""Batches as rows of a book's tables: so they are compared and written, table by table."""

import sqlite3
from collections.abc import Iterable, Mapping, Sequence, Set
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import Any

from keeper.husbandry.animal import AnimalId
from keeper.store.checksums import CELLS, HEAD, row_hash
from keeper.store.documents import Document
from keeper.store.journal import BatchId
from keeper.store.rows import TABLES, Cell, to_row
from keeper.store.schema import ANIMAL_COLUMNS
from keeper.store.ticking import Counting

Row = tuple[Cell, ...]
_UNIX = datetime(1970, 1, 1, tzinfo=UTC)
_BITS_63 = 2**63 - 1
BATCH_AT = {table: cells.index("batch") for table, cells in CELLS.items()}
"""Which cell of a row is the key of its batch."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Tabled:
    """heads: each batch's own row by its key; rows: all others by table, in no order.

    twice: keys that were told twice, and differently.
    """

    heads: Mapping[BatchId, Row]
    rows: Mapping[str, Sequence[Row]]
    twice: frozenset[BatchId] = frozenset()


def tabled(documents: Iterable[Document]) -> Tabled:
    """*documents* as rows; one that says what another said before says nothing."""
    told: dict[BatchId, tuple[Row, dict[str, list[Row]]]] = {}
    twice = set()
    for document in documents:
        rows = (_head(document), _rows(document))
        if told.setdefault(document.batch, rows) != rows:
            twice.add(document.batch)
    together: dict[str, list[Row]] = {}
    for _, by_table in told.values():
        for table, rows_of_one in by_table.items():
            together.setdefault(table, []).extend(rows_of_one)
    heads = {key: head for key, (head, _) in told.items()}
    return Tabled(heads=heads, rows=together, twice=frozenset(twice))


def without(given: Tabled, keys: Set[BatchId]) -> Tabled:
    """What *given* tells of all other batches."""
    if not keys:
        return given
    rows = {
        table: [row for row in lines if row[BATCH_AT[table]] not in keys]
        for table, lines in given.rows.items()
    }
    heads = {key: head for key, head in given.heads.items() if key not in keys}
    return Tabled(heads=heads, rows=rows, twice=given.twice - keys)


def unlike(
    connection: sqlite3.Connection, given: Tabled, keys: Set[BatchId], counting: Counting
) -> set[BatchId]:
    """Those of *keys*, which are batches of both, that the book tells otherwise."""
    if not keys:
        return set()
    heads = connection.execute(f"SELECT {', '.join(HEAD)} FROM batch")
    found = {head[0] for head in heads if head[0] in keys and head != given.heads[head[0]]}
    for table, cells in CELLS.items():
        at = BATCH_AT[table]
        theirs = {row for row in given.rows.get(table, ()) if row[at] in keys}
        for row in connection.execute(f"SELECT {', '.join(cells)} FROM {table}"):
            if row in theirs:
                theirs.remove(row)
            elif row[at] in keys:
                found.add(row[at])
        found |= {row[at] for row in theirs}
        counting.more(len(given.rows.get(table, ())))
    return found


def animals_in(given: Tabled) -> set[AnimalId]:
    """Every animal that its entries are about."""
    return {animal for table in ANIMAL_COLUMNS for animal in days_by_animal(given, table)}


def days_by_animal(given: Tabled, table: str) -> dict[AnimalId, set[int]]:
    """The days since 1970 on which it tells something in *table* of an animal."""
    animal_at, day_at = (CELLS[table].index(name) for name in ("animal", "day"))
    found: dict[Any, set[Any]] = {}
    for row in given.rows.get(table, ()):
        found.setdefault(row[animal_at], set()).add(row[day_at])
    return found


def checksums(given: Tabled) -> dict[BatchId, int]:
    """The checksum of each batch, as ``store.checksums`` reckons it of one."""
    found = {key: row_hash("batch", head) for key, head in given.heads.items()}
    for table, lines in given.rows.items():
        at = BATCH_AT[table]
        for row in lines:
            found[row[at]] += row_hash(table, row)  # type: ignore[index]
    return {key: total & _BITS_63 for key, total in found.items()}


def head_row(
    key: BatchId, station: str, keeper: str, verb: str, written: datetime, reason: str | None
) -> Row:
    """The cells of a batch's own row, in the order of ``checksums.HEAD``."""
    offset = written.utcoffset() or timedelta(0)
    at_ms = (written - _UNIX) // timedelta(milliseconds=1)
    return key, station, keeper, verb, at_ms, offset // timedelta(minutes=1), reason


def _head(told: Document) -> Row:
    return head_row(told.batch, told.station, told.keeper, told.verb, told.written, told.reason)


def _rows(document: Document) -> dict[str, list[Row]]:
    """All other rows of the batch, by table."""
    batch = document.batch
    rows: dict[str, list[Row]] = {
        "animal": [(key, batch) for key in document.animals],
        "round": [(key, batch) for key in document.rounds],
        "withdrawal": [(batch, n, t.batch, t.seq) for n, t in enumerate(document.withdrawals)],
    }
    for seq, event in enumerate(document.entries):
        rows.setdefault(TABLES[type(event)], []).append(to_row(event, batch, seq))
    return rows
