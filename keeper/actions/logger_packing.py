"""Readings of a logger file sorted out: what goes in, packed by the day, and what is kept aside."""

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass, field
from typing import Any

import numpy as np
from numpy.typing import NDArray

from keeper.actions.logger_columns import (
    BLANK,
    NO_NUMBER,
    NO_TIME,
    Block,
    Names,
    WrongLines,
    blocks_of,
)
from keeper.actions.logger_shape import LoggerShape
from keeper.actions.logger_zone import to_utc, zone_of
from keeper.store.readings import EMPTY, HOURS, SLOT_SECONDS, SLOTS, PackedDay

Ints = NDArray[np.integer[Any]]
Flags = NDArray[np.bool_]
Rows = Ints | Flags | slice

SHOWN_LINES = 3
FUTURE = "reading from the future"
NAMELESS = "?"
"""The probe of a line that names none."""

_TWO_DAYS = 172_800


@dataclass(slots=True)
class Aside:
    """Readings that are kept aside for one reason: how many, and the first lines of them."""

    count: int = 0
    lines: list[int] = field(default_factory=list)

    def take(self, lines: Ints) -> None:
        self.count += len(lines)
        room = SHOWN_LINES - len(self.lines)
        self.lines += [int(line) for line in lines[:room]] if room > 0 else []


@dataclass(frozen=True, slots=True, kw_only=True)
class Series:
    """The sound readings of one probe in the order of time, seconds of UTC and hundredths."""

    probe: str
    seconds: Ints
    values: Ints


@dataclass(frozen=True, slots=True, kw_only=True)
class Limits:
    """The span of a room and the last second there can be, in hundredths and seconds of UTC.

    failures: values outside the span that have a name of their own.
    """

    failures: tuple[int, ...]
    lowest: int
    highest: int
    latest: int


@dataclass(slots=True)
class Sorted:
    """Everything a file holds, sorted out."""

    series: list[Series] = field(default_factory=list)
    aside: dict[str, Aside] = field(default_factory=dict)
    unplaced: list[Series] = field(default_factory=list)
    thinned: int = 0

    def keep_aside(self, why: str, lines: Ints) -> None:
        if len(lines):
            self.aside.setdefault(why, Aside()).take(lines)


@dataclass(frozen=True, slots=True)
class _Cells:
    """Sound cells in the order of the file. shifts None: no stamp has one."""

    lines: Ints
    stamps: Ints
    shifts: Ints | None
    values: Ints

    def of(self, rows: Rows) -> "_Cells":
        shifts = None if self.shifts is None else self.shifts[rows]
        return _Cells(self.lines[rows], self.stamps[rows], shifts, self.values[rows])


_Gathered = dict[int, list[_Cells]]
"""The cells of each name, by its code, block by block."""


def sorted_out(raw: bytes, shape: LoggerShape, limits: Limits, placed: Collection[str]) -> Sorted:
    """The sound readings of each placed probe, and what is kept aside and why.

    Raises:
        ValueError: the shape names no zone that there is.
    """
    zone_of(shape.zone)
    found, names = Sorted(), Names()
    gathered: _Gathered = {}
    for block in blocks_of(raw, shape, names):
        if isinstance(block, WrongLines):
            found.keep_aside("wrong number of values", block.lines)
        else:
            _gather(block, shape, limits, names, found, gathered)
    for probe, cells in sorted(_joined(gathered, names), key=lambda each: each[0]):
        if probe in placed:
            found.series.append(_series(probe, cells, shape, limits, found))
        else:
            found.unplaced.append(_series(probe, cells, shape, limits, Sorted()))
            found.keep_aside("probe never placed", cells.lines)
    return found


def packed_days(series: Series) -> Iterator[PackedDay]:
    """One row for each day of UTC with any reading; of several in one slot the last is kept."""
    if not len(series.seconds):
        return
    slot = series.seconds // SLOT_SECONDS
    first, last = int(slot[0]) // SLOTS, int(slot[-1]) // SLOTS
    table = np.full((last - first + 1, SLOTS), EMPTY, np.int16)
    table.reshape(-1)[slot - first * SLOTS] = series.values
    days = np.arange(first, last + 1)
    filled = (table != EMPTY).any(axis=1)
    if not filled.all():
        table, days = table[filled], days[filled]
    hours = _rolled_up(table)
    slots_bytes, hours_bytes = table.astype("<i2").tobytes(), hours.astype("<i2").tobytes()
    wide, narrow = 2 * SLOTS, 2 * 3 * HOURS
    for n, number in enumerate(days.tolist()):
        yield PackedDay(
            probe=series.probe,
            day=number,
            slots=slots_bytes[n * wide : (n + 1) * wide],
            hours=hours_bytes[n * narrow : (n + 1) * narrow],
        )


def _gather(
    block: Block,
    shape: LoggerShape,
    limits: Limits,
    names: Names,
    found: Sorted,
    gathered: _Gathered,
) -> None:
    """Sort out what single cells say: time, number, failure values, span."""
    timed = block.stamps != NO_TIME
    if not timed.all():
        found.keep_aside("time not readable", block.lines[~timed])
    for column, told in zip(shape.values, block.values, strict=True):
        values = np.rint((told - 3200.0) / 1.8).astype(np.int64) if shape.fahrenheit else told
        sound = timed & (values >= limits.lowest) & (values <= limits.highest)
        if not sound.all():
            _keep_aside(block, told, values, timed, sound, limits, found)
        cells = _Cells(block.lines, block.stamps, block.shifts, values)
        codes = block.probe_of
        if shape.probe is None:
            codes = np.full(len(block.lines), names.code(column.probe.encode()), np.int64)
        if not sound.all():
            cells, codes = cells.of(sound), codes[sound]
        _hand_out(cells, codes.astype(np.uint16), gathered)


def _hand_out(cells: _Cells, codes: NDArray[np.uint16], gathered: _Gathered) -> None:
    """To each name its cells, in the order of the file."""
    counts = np.bincount(codes)
    there, ends = np.flatnonzero(counts), np.cumsum(counts)
    if len(there) > 1:
        cells = cells.of(np.argsort(codes, kind="stable"))
    for code in there.tolist():
        own = slice(ends[code] - counts[code], ends[code])
        gathered.setdefault(code, []).append(cells.of(own))


def _keep_aside(
    block: Block,
    told: Ints,
    values: Ints,
    timed: Flags,
    sound: Flags,
    limits: Limits,
    found: Sorted,
) -> None:
    """Why cells of a column are not sound; of one cell the first reason counts."""
    left = timed & ~sound
    for why, wrong in (
        ("no value", told == BLANK),
        ("not a number", told == NO_NUMBER),
        ("failure value", np.isin(values, limits.failures)),
        ("no temperature of a room", left),
    ):
        found.keep_aside(why, block.lines[left & wrong])
        left = left & ~wrong


def _joined(gathered: _Gathered, names: Names) -> Iterator[tuple[str, _Cells]]:
    """The cells of each probe."""
    for code, parts in gathered.items():
        name = names.known[code].decode("utf-8", "replace") or NAMELESS
        lines = np.concatenate([part.lines for part in parts])
        stamps = np.concatenate([part.stamps for part in parts])
        values = np.concatenate([part.values for part in parts])
        yield name, _Cells(lines, stamps, _joined_shifts(parts), values)


def _joined_shifts(parts: Sequence[_Cells]) -> Ints | None:
    if all(part.shifts is None for part in parts):
        return None
    return np.concatenate(
        [
            np.full(len(part.stamps), NO_TIME, np.int64) if part.shifts is None else part.shifts
            for part in parts
        ]
    )


def _series(probe: str, cells: _Cells, shape: LoggerShape, limits: Limits, found: Sorted) -> Series:
    """One probe's readings in UTC and in order, without doubles and without the future."""
    far = cells.stamps > limits.latest + _TWO_DAYS  # not to reckon zones for, day by day
    if far.any():
        found.keep_aside(FUTURE, cells.lines[far])
        cells = cells.of(~far)
    seconds, sound = _in_utc(cells, shape, found)
    future = sound & (seconds > limits.latest)
    found.keep_aside(FUTURE, cells.lines[future])
    sound &= ~future
    if not sound.all():
        seconds, cells = seconds[sound], cells.of(sound)
    steps = np.diff(seconds)
    if np.any(steps < 0):
        order = np.argsort(seconds, kind="stable")
        seconds, cells = seconds[order], cells.of(order)
        steps = np.diff(seconds)
    values = cells.values
    if np.any(steps == 0):
        again = np.append(steps == 0, False)
        found.keep_aside("stamp written twice", cells.lines[again])
        seconds, values = seconds[~again], values[~again]
        steps = np.diff(seconds)
    if np.any(steps < SLOT_SECONDS):
        found.thinned += int(np.count_nonzero(np.diff(seconds // SLOT_SECONDS) == 0))
    return Series(probe=probe, seconds=seconds, values=values)


def _in_utc(cells: _Cells, shape: LoggerShape, found: Sorted) -> tuple[Ints, Flags]:
    """Seconds of UTC, and which are sound; local time as the zone of the shape has it."""
    sound = np.ones(len(cells.stamps), np.bool_)
    if cells.shifts is None:
        local, rows = cells.stamps, None
    else:
        rows = np.flatnonzero(cells.shifts == NO_TIME)
        local = cells.stamps[rows]
    told = to_utc(local, zone_of(shape.zone))
    for why, wrong in (("skipped hour", told.skipped), ("hour that came twice", told.twice)):
        if wrong is not None:
            at = np.flatnonzero(wrong) if rows is None else rows[wrong]
            found.keep_aside(why, cells.lines[at])
            sound[at] = False
    if rows is None or cells.shifts is None:
        return told.seconds, sound
    seconds = cells.stamps - cells.shifts
    seconds[rows] = told.seconds
    return seconds, sound


def _rolled_up(table: NDArray[np.int16]) -> NDArray[np.int16]:
    """Lowest, highest and mean of each hour, as ``store.readings.rolled_up`` has them."""
    hours = np.ascontiguousarray(table.reshape(len(table), HOURS, -1).transpose(2, 0, 1))
    there = hours != EMPTY
    full = there.all()
    high = hours.max(axis=0)
    low = hours.min(axis=0) if full else np.where(there, hours, np.int16(32767)).min(axis=0)
    total = (hours if full else np.where(there, hours, np.int16(0))).sum(axis=0, dtype=np.int32)
    count = there.sum(axis=0, dtype=np.int32)
    mean = np.rint(total / np.maximum(count, 1)).astype(np.int16)
    rolled = np.stack([low, high, mean], axis=1)
    if not full:
        rolled[np.broadcast_to(count[:, None, :] == 0, rolled.shape)] = EMPTY
    return rolled.reshape(len(table), 3 * HOURS)
