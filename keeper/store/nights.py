"""On which days anything was written of feeding, what was answered of others, what was planned."""

from datetime import UTC, date, datetime, time, timedelta

from keeper.husbandry.events import NightAnswer, NightTold
from keeper.store.database import Book
from keeper.store.reading import all_of
from keeper.store.rows import day_number, day_of
from keeper.store.standing import stands

_EPOCH = datetime(1970, 1, 1, tzinfo=UTC)
_SLACK = timedelta(days=2)
"""An entry's instant lies within so much of the day that it counts for."""


def offer_days(book: Book, first: date, last: date) -> set[date]:
    """Days from *first* to *last* that any standing offer counts for.

    Seeks each animal's newest entries, so that a long history costs nothing.
    """
    begin = datetime.combine(first, time.min, UTC) - _SLACK
    rows = book.connection.execute(
        f"""SELECT DISTINCT e.day FROM animal a CROSS JOIN offer e
            WHERE e.animal = a.id AND e.at >= ? AND e.day BETWEEN ? AND ? AND {stands("e")}""",
        ((begin - _EPOCH) // timedelta(seconds=1), day_number(first), day_number(last)),
    )
    return {day_of(day) for (day,) in rows}


def first_offer_day(book: Book) -> date | None:
    """The day of the first offer of any animal; None: there is none."""
    (day,) = book.connection.execute(
        """SELECT min((SELECT e.day FROM offer e WHERE e.animal = a.id ORDER BY e.at LIMIT 1))
           FROM animal a"""
    ).fetchone()
    return None if day is None else day_of(day)


def night_answers(book: Book) -> dict[date, NightTold]:
    """The latest answer for each night that was asked about."""
    return {entry.event.happened.day: entry.event.told for entry in all_of(book, NightAnswer)}


def plan_lines(book: Book, round_: int) -> int:
    """How many lines the plan of a round has; they stand as long as the round does."""
    asked = "SELECT count(*) FROM plan_line WHERE round = ?"
    return int(book.connection.execute(asked, (round_,)).fetchone()[0])
