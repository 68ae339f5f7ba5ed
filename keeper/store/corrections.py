"""What was put right, and why: entries withdrawn one by one, each with the batch that did it."""

from dataclasses import dataclass
from typing import Any

from keeper.husbandry.animal import AnimalId
from keeper.store.database import Book
from keeper.store.journal import EntryKey
from keeper.store.reading import Batch, batch_row
from keeper.store.rows import TABLES, from_row, select_columns
from keeper.store.standing import WHOLE


@dataclass(frozen=True, slots=True, kw_only=True)
class Corrected:
    """An entry that no longer stands, and the batch that says why."""

    event: Any
    key: EntryKey
    by: Batch


def corrections(book: Book, kind: type[Any], animal: AnimalId) -> list[Corrected]:
    """One animal's entries of *kind* that a standing correction replaced, oldest first.

    What was taken back whole is not among them, nor what a night's check settled: neither
    has a reason.
    """
    rows = book.connection.execute(
        f"""SELECT {select_columns(kind)}, w.batch FROM {TABLES[kind]} e
            JOIN withdrawal w ON w.target_batch = e.batch AND w.target_seq = e.seq
            JOIN batch b ON b.id = w.batch
            WHERE e.animal = ? AND b.reason IS NOT NULL AND NOT EXISTS (
                SELECT 1 FROM withdrawn x WHERE x.batch = w.batch AND x.seq = {WHOLE})
            ORDER BY e.at, e.batch, e.seq""",
        (animal,),
    )
    found = []
    for row in rows:
        by = batch_row(book, row[-1])
        if by is not None:
            found.append(
                Corrected(event=from_row(kind, row[:-1]), key=EntryKey(row[4], row[5]), by=by)
            )
    return found
