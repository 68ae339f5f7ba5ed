"""Readings of a logger file sorted out: what goes in, packed by the day, and what is kept aside."""

from collections.abc import Collection, Iterator
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


@dataclass(slots=True)
class _Gathered:
    """Sound cells as the blocks bring them, in the order of the file."""

    lines: list[Ints] = field(default_factory=list)
    stamps: list[Ints] = field(default_factory=list)
    shifts: list[Ints | None] = field(default_factory=list)
    values: list[Ints] = field(default_factory=list)
    codes: list[Ints] = field(default_factory=list)


@dataclass(frozen=True, slots=True)
class _Cells:
    """Cells of one probe or of all, in the order of the file. shifts None: no stamp has one.

    Lines are looked up when they are told: at is where the cells stand among *all_lines*.
    """

    all_lines: Ints
    at: Ints
    stamps: Ints
    shifts: Ints | None
    values: Ints

    def of(self, rows: Ints | Flags) -> "_Cells":
        shifts = None if self.shifts is None else self.shifts[rows]
        at, stamps, values = self.at[rows], self.stamps[rows], self.values[rows]
        return _Cells(self.all_lines, at, stamps, shifts, values)

    def lines(self, rows: Ints | Flags | slice = slice(None)) -> Ints:
        """Numbers of the lines on which they stand."""
        found: Ints = self.all_lines[self.at[rows]]
        return found


def sorted_out(raw: bytes, shape: LoggerShape, limits: Limits, placed: Collection[str]) -> Sorted:
    """The sound readings of each placed probe, and what is kept aside and why.

    Raises:
        ValueError: the shape names no zone that there is.
    """
    zone_of(shape.zone)
    found, gathered, names = Sorted(), _Gathered(), Names()
    for block in blocks_of(raw, shape, names):
        if isinstance(block, WrongLines):
            found.keep_aside("wrong number of values", block.lines)
        else:
            _gather(block, shape, limits, names, found, gathered)
    for probe, cells in sorted(_handed_out(gathered, names), key=lambda each: each[0]):
        if probe in placed:
            found.series.append(_series(probe, cells, shape, limits, found))
        else:
            found.unplaced.append(_series(probe, cells, shape, limits, Sorted()))
            found.keep_aside("probe never placed", cells.lines())
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
        rows = slice(None) if sound.all() else np.flatnonzero(sound)
        codes = block.probe_of
        if shape.probe is None:
            codes = np.full(len(block.lines), names.code(column.probe.encode()), np.int64)
        gathered.lines.append(block.lines[rows])
        gathered.stamps.append(block.stamps[rows])
        gathered.shifts.append(None if block.shifts is None else block.shifts[rows])
        gathered.values.append(values[rows])
        gathered.codes.append(codes[rows].astype(np.uint16))


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


def _handed_out(gathered: _Gathered, names: Names) -> Iterator[tuple[str, _Cells]]:
    """The cells of each probe, in the order of the file."""
    if not gathered.lines:
        return
    lines, stamps = np.concatenate(gathered.lines), np.concatenate(gathered.stamps)
    shifts = _joined(gathered.shifts, [len(part) for part in gathered.lines])
    values = np.concatenate(gathered.values)
    if len(names.known) == 1:
        yield _name(names.known[0]), _Cells(lines, np.arange(len(lines)), stamps, shifts, values)
        return
    codes = np.concatenate(gathered.codes)
    order = np.argsort(codes, kind="stable")
    ends = np.cumsum(np.bincount(codes, minlength=len(names.known)))
    for code, name in enumerate(names.known):
        own = order[ends[code - 1] if code else 0 : ends[code]]
        if own.size:
            moved = None if shifts is None else shifts.take(own)
            yield _name(name), _Cells(lines, own, stamps.take(own), moved, values.take(own))


def _name(cell: bytes) -> str:
    return cell.decode("utf-8", "replace") or NAMELESS


def _joined(parts: list[Ints | None], counts: list[int]) -> Ints | None:
    if all(part is None for part in parts):
        return None
    return np.concatenate(
        [
            np.full(count, NO_TIME, np.int64) if part is None else part
            for part, count in zip(parts, counts, strict=True)
        ]
    )


def _series(probe: str, cells: _Cells, shape: LoggerShape, limits: Limits, found: Sorted) -> Series:
    """One probe's readings in UTC and in order, without doubles and without the future."""
    far = cells.stamps > limits.latest + _TWO_DAYS  # not to reckon zones for, day by day
    if far.any():
        found.keep_aside(FUTURE, cells.lines(far))
        cells = cells.of(~far)
    seconds, sound = _in_utc(cells, shape, found)
    future = sound & (seconds > limits.latest)
    found.keep_aside(FUTURE, cells.lines(future))
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
        found.keep_aside("stamp written twice", cells.lines(again))
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
            found.keep_aside(why, cells.lines(at))
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
