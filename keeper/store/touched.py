"""What the newest batches are about, without reading what they say."""

from collections.abc import Iterable
from datetime import date

from keeper.store.database import Book
from keeper.store.journal import BatchId
from keeper.store.rows import day_of


def first_day_touched(book: Book, since: BatchId, tables: Iterable[str]) -> date | None:
    """The earliest day of what batches after *since* wrote, took back or wrote again in *tables*.

    tables: of ``EVENT_TABLES``. None: they touched nothing there.
    """
    days = [
        book.connection.execute(
            f"""WITH RECURSIVE touched (batch) AS (
                SELECT id FROM batch WHERE id > ?
                UNION SELECT m.target_batch FROM withdrawal m JOIN touched t USING (batch))
            SELECT min(e.day) FROM touched t CROSS JOIN {table} e USING (batch)""",
            (since,),
        ).fetchone()[0]
        for table in tables
    ]
    return min((day_of(day) for day in days if day is not None), default=None)
