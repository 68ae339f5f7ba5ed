"""Another book's readings taken in alone, as a join takes them in beside its batches."""

from collections.abc import Iterable, Mapping
from typing import Any

from keeper.store.database import Book, writing
from keeper.store.readings import Joined
from keeper.store.readings_join import put_in
from keeper.store.readings_out import pieces_told


def read_in_readings(book: Book, documents: Iterable[Mapping[str, Any]]) -> Joined:
    """Take in the days of *documents*, all of them or none."""
    pieces = pieces_told(documents)
    with writing(book) as connection:
        return put_in(book, connection, pieces)
