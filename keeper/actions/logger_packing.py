"""Readings of a logger file sorted out: what goes in, packed by the day, and what is kept aside."""

from collections.abc import Collection, Iterable, Iterator
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from keeper.actions.logger_columns import NO_TIME, Block, WrongLines
from keeper.actions.logger_shape import LoggerShape
from keeper.actions.logger_zone import to_utc, zone_of
from keeper.store.readings import EMPTY, HOURS, SLOT_SECONDS, SLOTS, PackedDay

Ints = NDArray[np.int64]
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
    """What no reading of a room can be: failure values in hundredths, a span, a last second."""

    failures: tuple[int, ...]
    lowest: int
    highest: int
    latest: int


@dataclass(slots=True)
class Sorted:
    """Everything a file holds, sorted out."""

    series: list[Series] = field(default_factory=list)
    aside: dict[str, Aside] = field(default_factory=dict)
    unplaced: dict[str, int] = field(default_factory=dict)
    thinned: int = 0

    def keep_aside(self, why: str, lines: Ints) -> None:
        if len(lines):
            self.aside.setdefault(why, Aside()).take(lines)


@dataclass(slots=True)
class _Gathered:
    """The parts of one probe as the blocks bring them."""

    lines: list[Ints] = field(default_factory=list)
    stamps: list[Ints] = field(default_factory=list)
    shifts: list[Ints] = field(default_factory=list)
    values: list[Ints] = field(default_factory=list)


def sorted_out(
    blocks: Iterable[Block | WrongLines],
    shape: LoggerShape,
    limits: Limits,
    placed: Collection[str],
) -> Sorted:
    """The sound readings of each placed probe, and what is kept aside and why.

    Raises:
        ValueError: the shape names no zone that there is.
    """
    zone_of(shape.zone)
    found = Sorted()
    gathered: dict[str, _Gathered] = {}
    for block in blocks:
        if isinstance(block, WrongLines):
            found.keep_aside("wrong number of values", block.lines)
        else:
            _gather(block, shape, limits, found, gathered)
    for probe, parts in sorted(gathered.items()):
        count = sum(len(part) for part in parts.lines)
        if probe in placed:
            found.series.append(_series(probe, parts, shape, limits, found))
        else:
            found.unplaced[probe] = count
            found.keep_aside("probe never placed", np.concatenate(parts.lines))
    return found


def packed_days(series: Series) -> Iterator[PackedDay]:
    """One row for each day of UTC with any reading; of several in one slot the last is kept."""
    if not len(series.seconds):
        return
    slot = series.seconds // SLOT_SECONDS
    day = slot // SLOTS
    days, row = _distinct(day)
    table = np.full((len(days), SLOTS), EMPTY, np.int16)
    table[row, slot - day * SLOTS] = series.values
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
    found: Sorted,
    gathered: dict[str, _Gathered],
) -> None:
    """Sort out what single cells say: time, number, failure values, span."""
    timed = block.stamps != NO_TIME
    found.keep_aside("time not readable", block.lines[~timed])
    for column, numbers, blank in zip(shape.values, block.values, block.blank, strict=True):
        told = timed & ~np.isnan(numbers)
        found.keep_aside("no value", block.lines[timed & blank])
        found.keep_aside("not a number", block.lines[timed & ~told & ~blank])
        celsius = (numbers - 32) / 1.8 if shape.fahrenheit else numbers
        hundredths = np.full(len(numbers), EMPTY, np.int64)
        hundredths[told] = np.clip(np.rint(celsius[told] * 100), -(10**9), 10**9)
        failed = told & np.isin(hundredths, limits.failures)
        beyond = told & ~failed & ((hundredths < limits.lowest) | (hundredths > limits.highest))
        found.keep_aside("failure value", block.lines[failed])
        found.keep_aside("no temperature of a room", block.lines[beyond])
        _hand_out(block, column.probe, told & ~failed & ~beyond, hundredths, gathered)


def _hand_out(
    block: Block, named: str, sound: Flags, hundredths: Ints, gathered: dict[str, _Gathered]
) -> None:
    """The sound rows of a block to their probes, in the order of the file."""
    rows = np.flatnonzero(sound)
    codes = block.probe_of[rows]
    if len(block.probes) > 1:
        order = np.argsort(codes.astype(np.uint16), kind="stable")
        rows, codes = rows[order], codes[order]
    begins = np.searchsorted(codes, np.arange(len(block.probes) + 1))
    for code, name in enumerate(block.probes):
        own = rows[begins[code] : begins[code + 1]]
        if own.size:
            probe = named or name.decode("utf-8", "replace") or NAMELESS
            parts = gathered.setdefault(probe, _Gathered())
            parts.lines.append(block.lines[own])
            parts.stamps.append(block.stamps[own])
            parts.shifts.append(block.shifts[own])
            parts.values.append(hundredths[own])


def _series(
    probe: str, parts: _Gathered, shape: LoggerShape, limits: Limits, found: Sorted
) -> Series:
    """One probe's readings in UTC and in order, without doubles and without the future."""
    lines, stamps = np.concatenate(parts.lines), np.concatenate(parts.stamps)
    shifts, values = np.concatenate(parts.shifts), np.concatenate(parts.values)
    seconds = stamps - shifts
    far = stamps > limits.latest + _TWO_DAYS  # kept from the reckoning of zones, day by day
    found.keep_aside(FUTURE, lines[far])
    sound = ~far
    local = sound & (shifts == NO_TIME)
    if local.any():
        told = to_utc(stamps[local], zone_of(shape.zone))
        seconds[local] = told.seconds
        rows = np.flatnonzero(local)
        for why, wrong in (("skipped hour", told.skipped), ("hour that came twice", told.twice)):
            found.keep_aside(why, lines[rows[wrong]])
            sound[rows[wrong]] = False
    future = sound & (seconds > limits.latest)
    found.keep_aside(FUTURE, lines[future])
    sound &= ~future
    seconds, values, lines = seconds[sound], values[sound], lines[sound]
    if np.any(np.diff(seconds) < 0):
        order = np.argsort(seconds, kind="stable")
        seconds, values, lines = seconds[order], values[order], lines[order]
    again = np.append(np.diff(seconds) == 0, False)
    found.keep_aside("stamp written twice", lines[again])
    seconds, values = seconds[~again], values[~again]
    found.thinned += int(np.count_nonzero(np.diff(seconds // SLOT_SECONDS) == 0))
    return Series(probe=probe, seconds=seconds, values=values)


def _distinct(ordered: Ints) -> tuple[Ints, Ints]:
    """The different numbers of an ordered array, and the index of each element's own."""
    new = np.concatenate(([True], ordered[1:] != ordered[:-1]))
    return ordered[new], np.cumsum(new) - 1


def _rolled_up(table: NDArray[np.int16]) -> NDArray[np.int16]:
    """Lowest, highest and mean of each hour, as ``store.readings.rolled_up`` has them."""
    hours = table.reshape(len(table), HOURS, -1).astype(np.int32)
    there = hours != EMPTY
    count = there.sum(axis=2)
    low = np.where(there, hours, 32767).min(axis=2)
    high = hours.max(axis=2)
    mean = np.rint(np.where(there, hours, 0).sum(axis=2) / np.maximum(count, 1))
    rolled = np.stack([low, high, mean], axis=1)
    rolled[np.broadcast_to(count[:, None, :] == 0, rolled.shape)] = EMPTY
    return rolled.reshape(len(table), 3 * HOURS).astype(np.int16)
