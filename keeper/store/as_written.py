"""What stood in the book when its batches up to some moment had been written here, and no more.

Unlike a past day asked of all that is known now, this leaves out what was written later about
earlier days. What was joined from another book counts from its join on.
"""

from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from keeper.store.database import Book
from keeper.store.journal import BatchId, EntryKey
from keeper.store.rows import TABLES, from_rows, select_columns
from keeper.store.standing import WHOLE
from keeper.store.stock_steps import arrivals

Kinds = tuple[type[Any], ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class AsWritten:
    """Every entry of some kinds, whether it stands or not, in the order in which they happened.

    withdrawals: batch, target and entry, youngest first. arrived: the join that a batch came with.
    """

    entries: Mapping[type[Any], Sequence[tuple[EntryKey, Any]]]
    withdrawals: Sequence[tuple[BatchId, BatchId, int]]
    arrived: Mapping[BatchId, BatchId]

    def before(self, last: BatchId | None) -> dict[type[Any], list[tuple[EntryKey, Any]]]:
        """Entries that stood when all that came here with a key under *last* had; None: now."""
        gone = self._gone(last)
        return {
            kind: [each for each in told if self._stood(each[0], last, gone)]
            for kind, told in self.entries.items()
        }

    def came(self, batch: BatchId) -> BatchId:
        """When *batch* came into this book, as a key: its own, or that of the join it came with."""
        return self.arrived.get(batch, batch)

    def _gone(self, last: BatchId | None) -> set[tuple[BatchId, int]]:
        """A batch is withdrawn only by a younger one, so the youngest are settled first."""
        gone: set[tuple[BatchId, int]] = set()
        for batch, target, seq in self.withdrawals:
            here = last is None or self.came(batch) < last
            if here and (batch, WHOLE) not in gone:
                gone.add((target, seq))
        return gone

    def _stood(self, key: EntryKey, last: BatchId | None, gone: set[tuple[BatchId, int]]) -> bool:
        if last is not None and self.came(key.batch) >= last:
            return False
        return (key.batch, key.seq) not in gone and (key.batch, WHOLE) not in gone


def as_written(book: Book, kinds: Kinds, joined: str) -> AsWritten:
    """The entries of *kinds*. joined: the setting in which a join names what came with it."""
    found: dict[type[Any], list[tuple[EntryKey, Any]]] = defaultdict(list)
    for kind in kinds:
        sql = f"SELECT {select_columns(kind)} FROM {TABLES[kind]} e"
        rows = book.connection.execute(sql).fetchall()
        keys = (EntryKey(row[4], row[5]) for row in rows)
        found[kind] = sorted(zip(keys, from_rows(kind, rows), strict=True), key=_when)
    sql = "SELECT batch, target_batch, target_seq FROM withdrawal ORDER BY batch DESC, seq"
    withdrawals = book.connection.execute(sql).fetchall()
    return AsWritten(entries=found, withdrawals=withdrawals, arrived=arrivals(book, joined))


def mark_of(book: Book, kinds: Kinds) -> tuple[int | None, ...]:
    """Another one whenever an entry of *kinds* was written, withdrawn or brought by a join."""
    found: list[int | None] = []
    for table in (*(TABLES[kind] for kind in kinds), "withdrawal"):
        found += book.connection.execute(f"SELECT max(batch), count(*) FROM {table}").fetchone()
    return tuple(found)


def _when(told: tuple[EntryKey, Any]) -> tuple[Any, ...]:
    key, event = told
    return event.happened, key.batch, key.seq
