"""What prey left the freezer: items of each grade by the hour, summed inside SQLite."""

from datetime import UTC, date, datetime, timedelta

from keeper.store.database import Book
from keeper.store.rows import day_number
from keeper.store.standing import stands

Used = tuple[datetime, str, int]
"""The hour (UTC), the grade as written, how many items."""


def prey_used(book: Book, first: date, last: date) -> list[Used]:
    """Items offered from *first* to *last*, oldest first; a vague day counts at its end.

    A refused item counts, because it is thawed and binned, unless it was passed on to another
    tub, where it is counted. An offer without a number is one item. Each animal's offers are
    sought from *first* on, not all there ever were.
    """
    rows = book.connection.execute(
        f"""SELECT (e.at + e.span) / 3600, e.prey, sum(coalesce(e.count, 1))
            FROM animal a CROSS JOIN offer e ON e.animal = a.id AND e.at >= ?
            JOIN batch b ON b.id = e.batch
            WHERE e.day BETWEEN ? AND ? AND e.prey IS NOT NULL AND e.result <> 'not offered'
            AND NOT (e.result = 'refused' AND b.verb = 'pass on') AND {stands("e")}
            GROUP BY 1, 2 ORDER BY 1, 2""",
        ((day_number(first) - 1) * 86_400, day_number(first), day_number(last)),
    )
    epoch = datetime(1970, 1, 1, tzinfo=UTC)
    return [(epoch + timedelta(hours=hour), prey, items) for hour, prey, items in rows]
