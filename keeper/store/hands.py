"""Whose hands gave what: the keeper of the round of an offer, else of the batch that told it."""

from collections.abc import Iterable
from datetime import date

from keeper.husbandry.animal import AnimalId
from keeper.store.database import Book
from keeper.store.rows import day_number, day_of
from keeper.store.standing import stands

Hands = dict[tuple[AnimalId, date], str]
"""By animal and day."""


def hands_of(book: Book, animals: Iterable[AnimalId], first: date, last: date) -> Hands:
    """Who fed each animal on the days from *first* to *last*; the last offer of a day tells."""
    sql = f"""SELECT e.day, coalesce((SELECT r.keeper FROM round_opened r WHERE r.round = e.round
            AND {stands("r")} LIMIT 1), b.keeper)
        FROM offer e JOIN batch b ON b.id = e.batch
        WHERE e.animal = ? AND e.at >= ? AND e.day BETWEEN ? AND ? AND {stands("e")}
        ORDER BY e.at, e.batch, e.seq"""
    begin, end = day_number(first), day_number(last)
    seconds = (begin - 1) * 86_400  # a night's entries may lie on the day after, never before
    return {
        (animal, day_of(day)): keeper
        for animal in animals
        for day, keeper in book.connection.execute(sql, (animal, seconds, begin, end))
    }
