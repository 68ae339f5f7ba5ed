"""Readings of probes, packed: one row for a probe and a day of UTC, merged slot by slot.

How a day lies packed is ``packing``'s. Readings are no entries: what is heard live belongs to no
batch and stays. What a file brought is its batch's, and can be taken back (``reading_layers``).
"""

import sqlite3
from collections.abc import Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import NamedTuple

from keeper.husbandry.events import ProbePlaced
from keeper.language import tr
from keeper.store.database import Book, writing
from keeper.store.errors import BookError
from keeper.store.journal import BatchWriter
from keeper.store.packing import (
    AS_HOURS,
    AS_SLOTS,
    DAY_SECONDS,
    EMPTY,
    EMPTY_DAY,
    EMPTY_HOURS,
    HOURS,
    SLOT_SECONDS,
    SLOTS,
    filled,
    merged_slots,
    packed,
    rolled_up,
    with_values,
)
from keeper.store.reading import all_of
from keeper.store.reading_layers import lay_over, put_live
from keeper.store.standing import stands

__all__ = [
    "DAY_SECONDS",
    "EMPTY",
    "HOURS",
    "SLOTS",
    "SLOT_SECONDS",
    "filled",
    "merged_slots",
    "packed",
    "rolled_up",
]

_UNIX = datetime(1970, 1, 1, tzinfo=UTC)
_MERGE = """
    INSERT INTO reading_day (probe, day, slots, hours) VALUES (?, ?, ?, ?)
    ON CONFLICT (probe, day) DO UPDATE SET slots = excluded.slots, hours = excluded.hours"""


class PackedDay(NamedTuple):
    """One probe's day. day: days of UTC since 1970; slots: 576 bytes; hours: 144 bytes."""

    probe: str
    day: int
    slots: bytes
    hours: bytes


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadFile:
    """A logger file that was read. read_as: how, so that another way of reading is another."""

    sha256: str
    read_as: str
    name: str
    taken: datetime
    readings: int
    aside: int


@dataclass(frozen=True, slots=True, kw_only=True)
class HourRange:
    """One hour of a probe in degrees Celsius."""

    at: datetime
    low_c: float
    high_c: float
    mean_c: float


def merge_days(writer: BatchWriter, days: Iterable[PackedDay]) -> None:
    """Put *days* in as what the batch of *writer* brought; it has to say ``ReadingsTaken``.

    A filled slot takes the place of what was there, which comes back with the batch taken back.

    Raises:
        ValueError: a day of a probe comes twice.
    """
    connection, layers = writer.connection, []
    known: dict[str, set[int]] = {}
    for day in days:
        if day.probe not in known:
            rows = connection.execute("SELECT day FROM reading_day WHERE probe = ?", (day.probe,))
            known[day.probe] = {number for (number,) in rows}
        before = EMPTY_DAY
        if day.day in known[day.probe]:
            before, _ = _day_of(connection, day.probe, day.day)
        layers.append((day, before))
    if len({(day.probe, day.day) for day, _ in layers}) < len(layers):
        raise ValueError("A day of a probe is put in once; put its readings together before.")
    connection.executemany(_MERGE, (_merged(day, before) for day, before in layers))
    lay_over(connection, writer.id, ((d.probe, d.day, d.slots, held) for d, held in layers))


def put_in(book: Book, days: Mapping[tuple[str, int], Mapping[int, int]]) -> int:
    """Put single readings in, all or none: by probe and day, slot number to hundredths.

    Only the hours that they touch are rolled up again: a room of live probes is put in often.
    Returns how many took the place of an earlier one.

    Raises:
        BookError: the book cannot be written.
    """
    with writing(book) as connection:
        there = {key: _day_of(connection, *key) for key in days}
        alone = {
            key: values for key, values in days.items() if not put_live(connection, *key, values)
        }
        rows = [(*key, *with_values(there[key], values)) for key, values in alone.items()]
        connection.executemany(_MERGE, rows)
    return sum(_count_filled(there[key][0], values) for key, values in days.items())


@dataclass(frozen=True, slots=True, kw_only=True)
class Joined:
    """What became of slots that came from another book: how many were new, and known already.

    conflicts: probe, day and slot of those that hold another value here. Unless it is empty,
    nothing was put in and ``new`` is 0.
    """

    new: int
    known: int
    conflicts: tuple[tuple[str, int, int], ...]


def state_of_others(book: Book) -> int:
    """A number that changes when another connection wrote in the book."""
    return int(book.connection.execute("PRAGMA data_version").fetchone()[0])


@contextmanager
def asking(book: Book) -> Iterator[None]:
    """Questions that may be asked again later.

    Raises:
        BookError: the file is locked, or the disk refused.
    """
    try:
        yield
    except sqlite3.OperationalError as error:
        told = tr("{path} could not be read: {error}.", path=book.path, error=error)
        raise BookError(told) from error


def read_file(book: Book, sha256: str) -> ReadFile | None:
    """The last reading of the file with that *sha256* that stands, however it was read."""
    row = book.connection.execute(
        f"""SELECT sha256, read_as, name, 1000 * at AS taken, readings, aside
            FROM readings_taken e WHERE sha256 = :file AND {stands("e")}
            UNION ALL SELECT sha256, read_as, name, taken, readings, aside
            FROM reading_file WHERE sha256 = :file ORDER BY taken DESC LIMIT 1""",
        {"file": sha256},
    ).fetchone()
    if row is None:
        return None
    taken = _UNIX + timedelta(milliseconds=row[3])
    return ReadFile(
        sha256=row[0], read_as=row[1], name=row[2], taken=taken, readings=row[4], aside=row[5]
    )


def values_of(
    book: Book, probe: str, first_at: datetime, last_at: datetime
) -> Iterator[tuple[int, int]]:
    """Filled slots of *probe* from *first_at* to *last_at*, oldest first.

    Each as the second of UTC since 1970 at which its five minutes begin, and hundredths of
    a degree.
    """
    first, last = _second(first_at), _second(last_at)
    for day, slots in _rows(book, "slots", probe, first, last):
        begins = day * DAY_SECONDS
        for slot, value in enumerate(AS_SLOTS.unpack(slots)):
            at = begins + slot * SLOT_SECONDS
            if value != EMPTY and first <= at <= last:
                yield at, value


def hours_of(book: Book, probe: str, first_at: datetime, last_at: datetime) -> list[HourRange]:
    """Hours of *probe* with any reading, from *first_at* to *last_at*, oldest first."""
    first, last = _second(first_at), _second(last_at)
    found = []
    for day, hours in _rows(book, "hours", probe, first, last):
        values = AS_HOURS.unpack(hours)
        for hour in range(HOURS):
            at = day * DAY_SECONDS + 3600 * hour
            low, high, mean = values[hour::HOURS]
            if low != EMPTY and first <= at <= last:
                when = datetime.fromtimestamp(at, UTC)
                found.append(
                    HourRange(at=when, low_c=low / 100, high_c=high / 100, mean_c=mean / 100)
                )
    return found


def last_reading(book: Book, probe: str, until: datetime) -> tuple[datetime, float] | None:
    """The last reading of *probe* up to *until* and its degrees Celsius; None when never."""
    last = _second(until)
    rows = book.connection.execute(
        """SELECT day, slots FROM reading_day WHERE probe = ? AND day <= ?
           ORDER BY day DESC LIMIT 2""",
        (probe, last // DAY_SECONDS),
    )
    for day, slots in rows.fetchall():
        for slot, value in reversed(list(enumerate(AS_SLOTS.unpack(slots)))):
            at = day * DAY_SECONDS + slot * SLOT_SECONDS
            if value != EMPTY and at <= last:
                return datetime.fromtimestamp(at, UTC), value / 100
    return None


Days = Mapping[tuple[str, int], bytes]


def days_seen(book: Book) -> Days:
    """The slots of every day of every probe, as they are seen now."""
    rows = book.connection.execute("SELECT probe, day, slots FROM reading_day")
    return {(probe, day): slots for probe, day, slots in rows}


def seen_anew(before: Days, after: Days) -> int:
    """How many slots of *after* show a reading that is not the one of *before*."""
    return sum(
        value not in (old, EMPTY)
        for key, slots in after.items()
        if slots != before.get(key)
        for value, old in zip(
            AS_SLOTS.unpack(slots), AS_SLOTS.unpack(before.get(key, EMPTY_DAY)), strict=True
        )
    )


def placings(book: Book) -> dict[str, list[ProbePlaced]]:
    """Where each probe was placed, oldest first."""
    found: dict[str, list[ProbePlaced]] = {}
    events = (entry.event for entry in all_of(book, ProbePlaced))
    for event in sorted(events, key=lambda event: event.happened.at):
        found.setdefault(event.probe, []).append(event)
    return found


def _day_of(connection: sqlite3.Connection, probe: str, day: int) -> tuple[bytes, bytes]:
    """Slots and hours of a day; all of them empty where there is none."""
    row = connection.execute(
        "SELECT slots, hours FROM reading_day WHERE probe = ? AND day = ?", (probe, day)
    ).fetchone()
    return row or (EMPTY_DAY, EMPTY_HOURS)


def _count_filled(slots: bytes, numbers: Iterable[int]) -> int:
    return sum(slots[2 * n : 2 * n + 2] != EMPTY_DAY[:2] for n in numbers)


def _merged(day: PackedDay, before: bytes) -> tuple[str, int, bytes, bytes]:
    if before == EMPTY_DAY:
        return day
    slots = merged_slots(before, day.slots)
    return day.probe, day.day, slots, rolled_up(slots)


def _rows(
    book: Book, column: str, probe: str, first: int, last: int
) -> Sequence[tuple[int, bytes]]:
    return book.connection.execute(
        f"""SELECT day, {column} FROM reading_day
            WHERE probe = ? AND day BETWEEN ? AND ? ORDER BY day""",
        (probe, first // DAY_SECONDS, last // DAY_SECONDS),
    ).fetchall()


def _second(at: datetime) -> int:
    return (at - _UNIX) // timedelta(seconds=1)
