"""The columns of a logger file by the million: bytes to seconds and hundredths of a degree.

Lines written alike (the same separators at the same places, figures where figures are) are
read together: the first of them is taken apart by itself, the others at the same places.
"""

import csv
import io
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from keeper.actions.logger_lines import Cell, Line, NumberParts, StampParts, taken_apart
from keeper.actions.logger_shape import LoggerShape

Ints = NDArray[np.integer[Any]]
Bytes = NDArray[np.uint8]
Words = NDArray[np.uint64]
Flags = NDArray[np.bool_]
Rows = Ints | slice

NO_TIME = np.iinfo(np.int64).min
NO_NUMBER = np.iinfo(np.int32).min
BLANK = NO_NUMBER + 1

_BLOCK_BYTES = 1 << 19
_NEAR_END = 1 << 11
_MOST_ODD = 16
_NOUGHT, _NINE, _QUOTE, _NEWLINE = 48, 57, 34, 10
_WORD = 8
_YEARS = (1970, 2200)
_SHORTEST_MONTH = 28
_DAY = 86_400
_SELDOM = 8
"""A date on this many lines, on average, is worth being read once for all of them."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Block:
    """Lines with as many cells as they should have.

    lines: their numbers, from 1; stamps: local seconds since 1970 or NO_TIME; shifts: seconds
    east where the stamps say so, else NO_TIME; None: none does. values: one array for each
    column of the shape, hundredths of the unit as written, NO_NUMBER or BLANK. probe_of:
    index into ``Names.known`` of each line.
    """

    lines: Ints
    stamps: Ints
    shifts: Ints | None
    values: list[Ints]
    probe_of: Ints


@dataclass(frozen=True, slots=True)
class WrongLines:
    """Numbers of lines with too few or too many cells."""

    lines: Ints


@dataclass(slots=True)
class Names:
    """The names that a column has shown so far, in the order of their first line."""

    known: list[bytes] = field(default_factory=list)
    _words: Words = field(default_factory=lambda: np.empty(0, np.uint64))
    _codes: Ints = field(default_factory=lambda: np.empty(0, np.int64))

    def codes(self, cells: Bytes) -> Ints:
        """The index of each row's name; a row holds the bytes of one cell."""
        if cells.shape[1] > _WORD:
            return self._long(cells)
        padded = np.full((len(cells), _WORD), 32, np.uint8)
        padded[:, : cells.shape[1]] = cells
        words = padded.view(np.uint64)[:, 0]
        turn = _turn(words)
        turns = -(-len(words) // turn)
        return np.tile(self._codes_of(words[:turn]), turns)[: len(words)]

    def _codes_of(self, words: Words) -> Ints:
        at = np.searchsorted(self._words, words)
        at[at == len(self._words)] = 0
        strange = (
            np.ones(len(words), np.bool_) if not len(self._words) else self._words[at] != words
        )
        if strange.any():
            for word in np.unique(words[strange]):
                self._learn(word)
            at = np.searchsorted(self._words, words)
        return self._codes[at]

    def code(self, name: bytes) -> int:
        if name not in self.known:
            self.known.append(name)
        return self.known.index(name)

    def _learn(self, word: np.uint64) -> None:
        code = self.code(word.tobytes().strip())
        at = int(np.searchsorted(self._words, word))
        self._words = np.insert(self._words, at, word)
        self._codes = np.insert(self._codes, at, code)

    def _long(self, cells: Bytes) -> Ints:
        heads = np.concatenate(([0], np.flatnonzero((cells[1:] != cells[:-1]).any(axis=1)) + 1))
        codes = [self.code(cells[head].tobytes().strip()) for head in heads]
        return np.repeat(np.array(codes, np.int64), np.diff(np.append(heads, len(cells))))


def _turn(words: Words) -> int:
    """After how many lines the names come again in the same order; all of them if they do not."""
    again = np.flatnonzero(words[1:] == words[0])
    turn = int(again[0]) + 1 if again.size else len(words)
    return turn if np.array_equal(words[turn:], words[:-turn]) else len(words)


def blocks_of(raw: bytes, shape: LoggerShape, names: Names) -> Iterator[Block | WrongLines]:
    """The file in blocks of lines, and the lines that fit no block."""
    data, delimiter = _unquoted(raw, shape.delimiter)
    if delimiter != shape.delimiter:
        shape = replace(shape, delimiter=delimiter)
    line = 1
    for begin, end in _cuts(data):
        ends = np.flatnonzero(data[begin:end] == _NEWLINE)
        starts = np.concatenate(([0], ends[:-1] + 1))
        skipped = max(0, shape.data_from + 1 - line)
        lines = np.arange(line, line + len(ends), dtype=np.int32)[skipped:]
        line += len(ends)
        if lines.size:
            lengths = (ends - starts)[skipped:]
            reader = _Reader(_room(data, begin, end, int(lengths.max())), shape, names, lines)
            yield from reader.read(starts[skipped:], lengths)


def _cuts(data: Bytes) -> Iterator[tuple[int, int]]:
    """Stretches of the file that end with a line and are small enough to stay near the hand."""
    begin = 0
    while begin < len(data):
        end = min(begin + _BLOCK_BYTES, len(data))
        if end < len(data):
            end = _line_end(data, begin, end)
        yield begin, end
        begin = end


def _line_end(data: Bytes, begin: int, end: int) -> int:
    """Where the last line ends that ends before *end*; else the first one after it."""
    for first in (end - _NEAR_END, begin):
        found = np.flatnonzero(data[max(begin, first) : end] == _NEWLINE)
        if found.size:
            return max(begin, first) + int(found[-1]) + 1
    while True:
        found = np.flatnonzero(data[end : end + _BLOCK_BYTES] == _NEWLINE)
        if found.size:
            return end + int(found[0]) + 1
        end += _BLOCK_BYTES


def _room(data: Bytes, begin: int, end: int, longest: int) -> Bytes:
    """A stretch with room behind it to read its last line by whole words."""
    wanted = end + longest
    if wanted <= len(data):
        return data[begin:wanted]
    return np.concatenate([data[begin:], np.zeros(wanted - len(data), np.uint8)])


class _Reader:
    """Reads one block of lines."""

    def __init__(self, data: Bytes, shape: LoggerShape, names: Names, lines: Ints) -> None:
        self._data, self._shape, self._names, self._lines = data, shape, names, lines
        self._stamps = np.full(len(lines), NO_TIME, np.int64)
        self._shifts: Ints | None = None
        self._values = [np.full(len(lines), NO_NUMBER, np.int32) for _ in shape.values]
        self._probe_of = np.zeros(len(lines), np.int64)
        self._whole = np.ones(len(lines), np.bool_)
        self._wrong = np.zeros(len(lines), np.bool_)

    def read(self, starts: Ints, lengths: Ints) -> Iterator[Block | WrongLines]:
        equal = lengths.min() == lengths.max()
        for length in lengths[:1] if equal else np.unique(lengths):
            rows = slice(None) if equal else np.flatnonzero(lengths == length)
            if length:
                self._read_equal(rows, starts[rows], int(length))
            else:
                self._whole[rows] = False
        if self._wrong.any():
            yield WrongLines(self._lines[self._wrong])
        kept = slice(None) if self._whole.all() else np.flatnonzero(self._whole)
        yield Block(
            lines=self._lines[kept],
            stamps=self._stamps[kept],
            shifts=None if self._shifts is None else self._shifts[kept],
            values=[values[kept] for values in self._values],
            probe_of=self._probe_of[kept],
        )

    def _read_equal(self, rows: Rows, starts: Ints, length: int) -> None:
        """Lines of one length: as long as any are left, the first with all that are alike."""
        columns, odd = self._columns(starts, length), 0
        while columns.shape[1]:
            line = columns[:, 0].tobytes()
            parts = taken_apart(line, self._shape)
            sound = parts is not None and parts.stamp is not None and None not in parts.values
            odd += not sound
            alike = np.arange(columns.shape[1]) == 0
            if sound or odd <= _MOST_ODD:
                alike = _alike(columns, line, parts, self._shape)
            if alike.all():
                self._take(rows, columns, parts, line)
                return
            if isinstance(rows, slice):
                rows = np.arange(columns.shape[1])
            self._take(rows[alike], columns[:, alike], parts, line)
            if sound or odd <= _MOST_ODD:
                rows, columns = rows[~alike], columns[:, ~alike]
            else:
                rows, columns = rows[1:], columns[:, 1:]

    def _columns(self, starts: Ints, length: int) -> Bytes:
        """The lines that begin at *starts*, one row for each place in the line."""
        windows = np.lib.stride_tricks.sliding_window_view(self._data, length)
        apart = length + 1
        if len(starts) * apart == starts[-1] - starts[0] + apart:  # one straight after another
            return np.ascontiguousarray(windows[starts[0] :: apart][: len(starts)].T)
        return np.ascontiguousarray(windows[starts].T)

    def _take(self, rows: Rows, columns: Bytes, parts: Line | None, line: bytes) -> None:
        """What the lines *rows*, written alike, say at the places of *parts*."""
        if parts is None:
            self._whole[rows] = False
            self._wrong[rows] = bool(line.strip())
            return
        if parts.stamp is not None:
            self._stamps[rows] = _stamps(columns, parts.stamp)
            self._take_shifts(rows, columns, parts.stamp)
        for values, number, blank in zip(self._values, parts.values, parts.blank, strict=True):
            if number is not None:
                values[rows] = _hundredths(columns, number)
            elif blank:
                values[rows] = BLANK
        if self._shape.probe is not None:
            cell = parts.cells[self._shape.probe]
            self._probe_of[rows] = self._names.codes(columns[cell.low : cell.high].T)

    def _take_shifts(self, rows: Rows, columns: Bytes, stamp: StampParts) -> None:
        if not stamp.utc and stamp.shift is None:
            return
        if self._shifts is None:
            self._shifts = np.full(len(self._lines), NO_TIME, np.int64)
        self._shifts[rows] = 0
        if stamp.shift is not None:
            sign, hours, minutes = stamp.shift
            east = _figures(columns, hours) * 3600 + _figures(columns, minutes) * 60
            self._shifts[rows] = sign * east


def _alike(columns: Bytes, line: bytes, parts: Line | None, shape: LoggerShape) -> Flags:
    """Which lines are written as *line* is; the name of a probe may be any."""
    letters = np.frombuffer(line, np.uint8)
    figure = (letters >= _NOUGHT) & (letters <= _NINE)
    fixed = ~figure
    if parts is not None and shape.probe is not None:
        cell = parts.cells[shape.probe]
        figure[cell.low : cell.high] = fixed[cell.low : cell.high] = False
        named = columns[cell.low : cell.high] != ord(shape.delimiter)
    else:
        named = np.ones((1, columns.shape[1]), np.bool_)
    same = columns[fixed] == letters[fixed, None]
    figures = columns[figure] - np.uint8(_NOUGHT) <= 9
    if same.all() and figures.all() and named.all():
        return np.ones(columns.shape[1], np.bool_)
    alike: Flags = same.all(axis=0) & figures.all(axis=0) & named.all(axis=0)
    return alike


def _stamps(columns: Bytes, parts: StampParts) -> Ints:
    """Local seconds of stamps written alike; NO_TIME where there is no such date or time."""
    days, clock = _days(columns, parts), _clock(columns, parts)
    stamps: Ints = days.astype(np.int64) * _DAY + clock
    if days.min() == NO_NUMBER or clock.min() < 0:
        stamps[(days == NO_NUMBER) | (clock < 0)] = NO_TIME
    return stamps


def _days(columns: Bytes, parts: StampParts) -> Ints:
    """Days since 1970, NO_NUMBER where there is no such date; a date is read once for its lines."""
    cells = (parts.year, parts.month, parts.day)
    date = columns[min(cell.low for cell in cells) : max(cell.high for cell in cells)]
    heads = np.flatnonzero((date[:, 1:] != date[:, :-1]).any(axis=0)) + 1
    if len(heads) > columns.shape[1] // _SELDOM:
        return _days_of(columns, parts)
    heads = np.concatenate(([0], heads))
    lengths = np.diff(np.append(heads, columns.shape[1]))
    return np.repeat(_days_of(columns[:, heads], parts), lengths)


def _days_of(columns: Bytes, parts: StampParts) -> Ints:
    year, month, day = (_figures(columns, cell) for cell in (parts.year, parts.month, parts.day))
    if parts.short_year:
        year += 2000
    spans = ((year, *_YEARS), (month, 1, 13), (day, 1, 32))
    wrong = _outside(spans)
    months = (year - _YEARS[0]) * 12 + (month - 1)
    for rows in wrong:
        months[rows] = 0
    begins = _MONTHS[months]
    if day.max() > _SHORTEST_MONTH:
        wrong.append(day > _MONTHS[months + 1] - begins)
    days: Ints = begins + (day - 1)
    for rows in wrong:
        days[rows] = NO_NUMBER
    return days


def _clock(columns: Bytes, parts: StampParts) -> Ints:
    """Seconds since midnight, below 0 where there is no such time of day."""
    hour, minute = _figures(columns, parts.hour), _figures(columns, parts.minute)
    if parts.half:
        hour = hour % 12 + (12 if parts.half == "p" else 0)
    spans = [(hour, 0, 24), (minute, 0, 60)]
    clock = (hour * 60 + minute) * 60
    if parts.second:
        second = _figures(columns, parts.second)
        spans.append((second, 0, 60))
        clock += second
    for rows in _outside(spans):
        clock[rows] = -1
    return clock


def _outside(spans: Iterable[tuple[Ints, int, int]]) -> list[Flags]:
    """Where numbers are not from their low up to before their high; nothing where all are."""
    return [
        (numbers < low) | (numbers >= high)
        for numbers, low, high in spans
        if numbers.min() < low or numbers.max() >= high
    ]


_MONTHS = (
    np.arange(0, (_YEARS[1] - _YEARS[0]) * 12 + 1).astype("M8[M]").astype("M8[D]").astype(np.int32)
)
"""Days since 1970 on which months begin."""


def _hundredths(columns: Bytes, parts: NumberParts) -> Ints:
    """Numbers written alike in hundredths; a third decimal is rounded."""
    number = _figures(columns, parts.whole) * 100
    if parts.part is not None:
        low, high = parts.part.low, min(parts.part.high, parts.part.low + 3)
        part = _figures(columns, Cell(low, high))
        scale = {1: 10, 2: 1}.get(high - low)
        number += (part + 5) // 10 if scale is None else part * scale
    if parts.negative:
        number *= -1
    return number


def _figures(columns: Bytes, cell: Cell) -> Ints:
    """The whole number that stands at *cell* in rows alike, at most nine figures."""
    if cell.high - cell.low == 2:  # fits a byte, whatever overflows on the way
        pair: Bytes = columns[cell.low] * np.uint8(10) + columns[cell.low + 1]
        small: NDArray[np.int32] = (pair - np.uint8(_NOUGHT * 11 % 256)).astype(np.int32)
        return small
    number: NDArray[np.int32] = columns[cell.low].astype(np.int32)
    for place in range(cell.low + 1, cell.high):
        number *= 10
        number += columns[place]
    number -= _NOUGHT * int("1" * (cell.high - cell.low))
    return number


def _unquoted(raw: bytes, delimiter: str) -> tuple[Bytes, str]:
    """The bytes without quotes; rewritten where quotes hold a separator."""
    if not raw.endswith(b"\n"):
        raw += b"\n"
    data = np.frombuffer(raw, np.uint8)
    if b'"' not in raw:
        return data, delimiter
    quotes = np.flatnonzero(data == _QUOTE)
    separators = np.flatnonzero((data == ord(delimiter)) | (data == _NEWLINE))
    if not np.any(np.searchsorted(quotes, separators) & 1):
        return data[data != _QUOTE], delimiter
    text = io.StringIO(raw.decode("latin-1"), newline="")
    rows = csv.reader(text, delimiter=delimiter)
    lines = ("\x1f".join(cell.replace("\n", " ") for cell in row) for row in rows)
    return np.frombuffer(("\n".join(lines) + "\n").encode("latin-1"), np.uint8), "\x1f"
