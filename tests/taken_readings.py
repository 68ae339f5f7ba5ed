"""Readings put into a book as a file of a logger puts them: one batch, which can be taken back."""

from collections.abc import Iterable
from datetime import UTC, datetime

from keeper.husbandry.house import ReadingsTaken
from keeper.husbandry.when import at_instant
from keeper.store.database import Book
from keeper.store.journal import batch
from keeper.store.readings import PackedDay, merge_days

TAKEN = datetime(2026, 3, 1, 12, tzinfo=UTC)


def took_in(
    book: Book, days: Iterable[PackedDay], *, at: datetime = TAKEN, **changed: object
) -> int:
    """Put *days* in as one file; the key of its batch. changed: what its entry says."""
    told = {"name": "x.csv", "sha256": "ab", "read_as": "C", "readings": 2, "aside": 0}
    with batch(book, verb="take in readings", keeper="Ro", written=at) as writer:
        writer.add(ReadingsTaken(happened=at_instant(at), **(told | changed)))
        merge_days(writer, days)
    return writer.id
