"""Readings of probes, packed: one row for a probe and a day of UTC, merged slot by slot.

A day has 288 slots of five minutes. A slot holds hundredths of a degree Celsius as a signed
16-bit number, lowest byte first; EMPTY is none. Beside the slots lies their roll-up: the
lowest, the highest and the mean of each hour, 24 numbers each. Readings are no entries: they
belong to no batch and are not taken back; reading a file again puts its slots in place of
what was there.
"""

import sqlite3
import struct
import sys
from collections.abc import Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from keeper.husbandry.events import ProbePlaced
from keeper.store.database import Book, writing
from keeper.store.errors import BookError
from keeper.store.reading import all_of

SLOTS = 288
SLOT_SECONDS = 300
HOURS = 24
EMPTY = -32768
DAY_SECONDS = 86_400

_SLOTS = struct.Struct(f"<{SLOTS}h")
_HOURS = struct.Struct(f"<{3 * HOURS}h")
_AN_HOUR = SLOTS // HOURS
_NO_SLOTS = struct.pack("<h", EMPTY) * SLOTS
_NO_HOURS = struct.pack("<h", EMPTY) * 3 * HOURS
_UNIX = datetime(1970, 1, 1, tzinfo=UTC)
_MERGE = """
    INSERT INTO reading_day (probe, day, slots, hours) VALUES (?, ?, ?, ?)
    ON CONFLICT (probe, day) DO UPDATE SET slots = excluded.slots, hours = excluded.hours"""


@dataclass(frozen=True, slots=True, kw_only=True)
class PackedDay:
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


def merge_days(book: Book, days: Iterable[PackedDay], file: ReadFile | None = None) -> None:
    """Put *days* in, all or none: a filled slot takes the place of what was there.

    Raises:
        BookError: the book cannot be written.
    """
    with writing(book) as connection:
        connection.executemany(_MERGE, _merged(connection, days))
        if file is not None:
            _keep_file(connection, file)


def put_in(book: Book, days: Mapping[tuple[str, int], Mapping[int, int]]) -> int:
    """Put single readings in, all or none: by probe and day, slot number to hundredths.

    Only the hours that they touch are rolled up again: a room of live probes is put in often.
    Returns how many took the place of an earlier one.

    Raises:
        BookError: the book cannot be written.
    """
    with writing(book) as connection:
        there = {key: _day_of(connection, *key) for key in days}
        rows = [(*key, *_with(there[key], values)) for key, values in days.items()]
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


def join(book: Book, days: Mapping[tuple[str, int], Mapping[int, int]]) -> Joined:
    """Put *days* in where the book has nothing: its union with another book's, in any order.

    Raises:
        BookError: the book cannot be written.
    """
    with writing(book) as connection:
        found = compared(book, days)
        if not found.conflicts:
            there = {key: _day_of(connection, *key) for key in days}
            rows = [(*key, *_with(there[key], _not_in(there[key], days[key]))) for key in days]
            connection.executemany(_MERGE, rows)
    return found


def compared(book: Book, days: Mapping[tuple[str, int], Mapping[int, int]]) -> Joined:
    """What ``join`` would do with *days*; nothing is written."""
    new, known, conflicts = 0, 0, []
    for key, values in days.items():
        here = filled(_day_of(book.connection, *key)[0])
        known += sum(here.get(slot) == value for slot, value in values.items())
        conflicts += [(*key, n) for n, v in values.items() if here.get(n, v) != v]
        new += sum(slot not in here for slot in values)
    return Joined(new=0 if conflicts else new, known=known, conflicts=tuple(conflicts))


def _not_in(there: tuple[bytes, bytes], values: Mapping[int, int]) -> dict[int, int]:
    here = filled(there[0])
    return {slot: value for slot, value in values.items() if slot not in here}


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
        raise BookError(f"{book.path} could not be read: {error}.") from error


def read_file(book: Book, sha256: str) -> ReadFile | None:
    """The last reading of the file with that *sha256*, however it was read."""
    row = book.connection.execute(
        """SELECT sha256, read_as, name, taken, readings, aside FROM reading_file
           WHERE sha256 = ? ORDER BY taken DESC LIMIT 1""",
        (sha256,),
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
        for slot, value in enumerate(_SLOTS.unpack(slots)):
            at = begins + slot * SLOT_SECONDS
            if value != EMPTY and first <= at <= last:
                yield at, value


def hours_of(book: Book, probe: str, first_at: datetime, last_at: datetime) -> list[HourRange]:
    """Hours of *probe* with any reading, from *first_at* to *last_at*, oldest first."""
    first, last = _second(first_at), _second(last_at)
    found = []
    for day, hours in _rows(book, "hours", probe, first, last):
        values = _HOURS.unpack(hours)
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
        for slot, value in reversed(list(enumerate(_SLOTS.unpack(slots)))):
            at = day * DAY_SECONDS + slot * SLOT_SECONDS
            if value != EMPTY and at <= last:
                return datetime.fromtimestamp(at, UTC), value / 100
    return None


def placings(book: Book) -> dict[str, list[ProbePlaced]]:
    """Where each probe was placed, oldest first."""
    found: dict[str, list[ProbePlaced]] = {}
    events = (entry.event for entry in all_of(book, ProbePlaced))
    for event in sorted(events, key=lambda event: event.happened.at):
        found.setdefault(event.probe, []).append(event)
    return found


def merged_slots(before: bytes, after: bytes) -> bytes:
    """*before* with every filled slot of *after* in its place.

    >>> old = packed({0: 2150, 1: 2160})
    >>> filled(merged_slots(old, packed({1: 2200, 287: 2300})))
    {0: 2150, 1: 2200, 287: 2300}
    """
    pairs = zip(_SLOTS.unpack(before), _SLOTS.unpack(after), strict=True)
    return _SLOTS.pack(*(old if new == EMPTY else new for old, new in pairs))


def rolled_up(slots: bytes) -> bytes:
    """Lowest, highest and mean of each hour: 3 times 24 numbers, an hour without any EMPTY."""
    values = _SLOTS.unpack(slots)
    lows, highs, means = [], [], []
    for hour in range(HOURS):
        inside = values[hour * _AN_HOUR : (hour + 1) * _AN_HOUR]
        read = [value for value in inside if value != EMPTY]
        lows.append(min(read, default=EMPTY))
        highs.append(max(read, default=EMPTY))
        means.append(round(sum(read) / len(read)) if read else EMPTY)
    return _HOURS.pack(*lows, *highs, *means)


def _day_of(connection: sqlite3.Connection, probe: str, day: int) -> tuple[bytes, bytes]:
    """Slots and hours of a day; all of them empty where there is none."""
    row = connection.execute(
        "SELECT slots, hours FROM reading_day WHERE probe = ? AND day = ?", (probe, day)
    ).fetchone()
    return row or (_NO_SLOTS, _NO_HOURS)


def _with(before: tuple[bytes, bytes], values: Mapping[int, int]) -> tuple[bytes, bytes]:
    """Slots and hours with *values* in their slots."""
    slots, hours = (memoryview(bytearray(part)).cast("h") for part in map(_native, before))
    for slot, value in values.items():
        slots[slot] = value
    for hour in {slot // _AN_HOUR for slot in values}:
        read = [v for v in slots[hour * _AN_HOUR : (hour + 1) * _AN_HOUR] if v != EMPTY]
        hours[hour], hours[HOURS + hour] = min(read), max(read)
        hours[2 * HOURS + hour] = round(sum(read) / len(read))
    return _native(slots.tobytes()), _native(hours.tobytes())


def _count_filled(slots: bytes, numbers: Iterable[int]) -> int:
    return sum(slots[2 * n : 2 * n + 2] != _NO_SLOTS[:2] for n in numbers)


def _native(numbers: bytes) -> bytes:
    """16-bit numbers from lowest byte first to the machine's own order, or back."""
    if sys.byteorder == "little":
        return numbers
    return struct.pack(f"<{len(numbers) // 2}h", *struct.unpack(f"={len(numbers) // 2}h", numbers))


def packed(values: dict[int, int]) -> bytes:
    """The slots of a day from slot number to hundredths of a degree."""
    return _SLOTS.pack(*(values.get(slot, EMPTY) for slot in range(SLOTS)))


def filled(slots: bytes) -> dict[int, int]:
    """Slot number to hundredths of a degree, the filled ones."""
    return {n: value for n, value in enumerate(_SLOTS.unpack(slots)) if value != EMPTY}


def _merged(
    connection: sqlite3.Connection, days: Iterable[PackedDay]
) -> Iterator[tuple[str, int, bytes, bytes]]:
    known: dict[str, set[int]] = {}
    for day in days:
        if day.probe not in known:
            rows = connection.execute("SELECT day FROM reading_day WHERE probe = ?", (day.probe,))
            known[day.probe] = {number for (number,) in rows}
        if day.day not in known[day.probe]:
            known[day.probe].add(day.day)
            yield day.probe, day.day, day.slots, day.hours
            continue
        (before,) = connection.execute(
            "SELECT slots FROM reading_day WHERE probe = ? AND day = ?", (day.probe, day.day)
        ).fetchone()
        slots = merged_slots(before, day.slots)
        yield day.probe, day.day, slots, rolled_up(slots)


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


def _keep_file(connection: sqlite3.Connection, file: ReadFile) -> None:
    taken_ms = (file.taken - _UNIX) // timedelta(milliseconds=1)
    connection.execute(
        """INSERT INTO reading_file (sha256, read_as, name, taken, readings, aside)
           VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT (sha256, read_as) DO UPDATE SET
           name = excluded.name, taken = excluded.taken,
           readings = excluded.readings, aside = excluded.aside""",
        (file.sha256, file.read_as, file.name, taken_ms, file.readings, file.aside),
    )
