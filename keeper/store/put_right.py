"""Refusals that took the place of another result, with the instant at which that was written."""

from collections.abc import Iterable
from datetime import UTC, date, datetime, timedelta, timezone

from keeper.husbandry.animal import AnimalId
from keeper.store.database import Book
from keeper.store.rows import day_number, day_of
from keeper.store.standing import stands

_UNIX = datetime(1970, 1, 1, tzinfo=UTC)


def refusals_put_right(
    book: Book, animals: Iterable[AnimalId], until: date
) -> dict[AnimalId, list[tuple[date, datetime]]]:
    """Day and instant of writing of each standing refusal of a batch that withdrew an entry.

    One that stood in place of a refusal of that night, as with another prey, is none of them.
    until: the last day on which a refusal may have happened. Animals without one are left out.
    """
    sql = f"""SELECT e.day, b.written, b.utc_offset FROM offer e JOIN batch b ON b.id = e.batch
        WHERE e.animal = ? AND e.day <= ? AND e.result = 'refused' AND {stands("e")}
        AND EXISTS (SELECT 1 FROM withdrawal m WHERE m.batch = e.batch)
        AND NOT EXISTS (SELECT 1 FROM withdrawal m JOIN offer t
            ON t.batch = m.target_batch AND t.seq = m.target_seq
            WHERE m.batch = e.batch AND t.animal = e.animal AND t.day = e.day
            AND t.result = 'refused')
        ORDER BY e.at, e.batch, e.seq"""
    last = day_number(until)
    found: dict[AnimalId, list[tuple[date, datetime]]] = {}
    for animal in animals:
        for day, written_ms, offset in book.connection.execute(sql, (animal, last)):
            zone = timezone(timedelta(minutes=offset))
            written = (_UNIX + timedelta(milliseconds=written_ms)).astimezone(zone)
            found.setdefault(animal, []).append((day_of(day), written))
    return found
