"""The columns of a logger file by the million: bytes to seconds and hundredths of a degree.

Lines written alike (the same separators at the same places, figures where figures are) are
read together: the first of them is taken apart by itself, the others at the same places.
"""

import csv
import io
from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from keeper.actions.logger_lines import Cell, Line, NumberParts, StampParts, taken_apart
from keeper.actions.logger_shape import LoggerShape

Ints = NDArray[np.integer[Any]]
Bytes = NDArray[np.uint8]
Words = NDArray[np.uint64]

NO_TIME = np.iinfo(np.int64).min
NO_NUMBER = np.iinfo(np.int32).min
BLANK = NO_NUMBER + 1

_BLOCK_BYTES = 1 << 18
_MOST_ODD = 16
_NOUGHT, _NINE, _QUOTE, _NEWLINE = 48, 57, 34, 10
_WORD = 8
_HIGH_HALF, _ALL = 0xF0, 0xFF
_LOW_HALVES, _SIXES, _CARRIES = (
    np.uint64(int.from_bytes(bytes([byte]) * 8, "little")) for byte in (0x0F, 0x06, 0x10)
)
_YEARS = (1970, 2200)


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


def blocks_of(raw: bytes, shape: LoggerShape, names: Names) -> Iterator[Block | WrongLines]:
    """The file in blocks of lines, and the lines that fit no block."""
    data, delimiter = _unquoted(raw, shape.delimiter)
    if delimiter != shape.delimiter:
        shape = replace(shape, delimiter=delimiter)
    ends = np.flatnonzero(data == _NEWLINE)
    starts = np.concatenate(([0], ends[:-1] + 1))
    lengths = ends - starts
    padded = np.concatenate([data, np.zeros(int(lengths.max()) + _WORD, np.uint8)])
    size = max(256, _BLOCK_BYTES // max(1, int(np.median(lengths))))
    for first in range(shape.data_from, len(starts), size):
        rows = np.arange(first, min(first + size, len(starts)))
        lines = (rows + 1).astype(np.int32)
        yield from _Reader(padded, shape, names, lines).read(starts[rows], lengths[rows])


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
            rows = np.flatnonzero(lengths == length)
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

    def _read_equal(self, rows: Ints, starts: Ints, length: int) -> None:
        """Lines of one length: as long as any are left, the first with all that are alike."""
        width = -(-length // _WORD) * _WORD
        table = np.lib.stride_tricks.sliding_window_view(self._data, width)[starts]
        words = table.view(np.uint64)
        left = np.arange(len(rows))
        odd = 0
        while left.size:
            line = table[left[0], :length].tobytes()
            parts = taken_apart(line, self._shape)
            sound = parts is not None and parts.stamp is not None and None not in parts.values
            odd += not sound
            if sound or odd <= _MOST_ODD:
                every = len(left) == len(rows)
                alike = _alike(words if every else words[left], line, parts, self._shape)
            else:
                alike = np.arange(len(left)) == 0
            taken = left[alike]
            whole = len(taken) == len(rows)
            self._take(rows[taken], table if whole else table[taken], parts, line)
            left = left[~alike]

    def _take(self, rows: Ints, table: Bytes, parts: Line | None, line: bytes) -> None:
        """What the lines *rows*, written alike, say at the places of *parts*."""
        if parts is None:
            self._whole[rows] = False
            self._wrong[rows] = bool(line.strip())
            return
        columns = np.ascontiguousarray(table.T)
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
            self._probe_of[rows] = self._names.codes(table[:, cell.low : cell.high])

    def _take_shifts(self, rows: Ints, columns: Bytes, stamp: StampParts) -> None:
        if not stamp.utc and stamp.shift is None:
            return
        if self._shifts is None:
            self._shifts = np.full(len(self._lines), NO_TIME, np.int64)
        self._shifts[rows] = 0
        if stamp.shift is not None:
            sign, hours, minutes = stamp.shift
            east = _figures(columns, hours) * 3600 + _figures(columns, minutes) * 60
            self._shifts[rows] = sign * east


def _alike(words: Words, line: bytes, parts: Line | None, shape: LoggerShape) -> NDArray[np.bool_]:
    """Which rows are written as *line* is; the name of a probe may be any."""
    figure = [_NOUGHT <= byte <= _NINE for byte in line]
    mask = bytearray(_HIGH_HALF if is_figure else _ALL for is_figure in figure)
    free: range | tuple[()] = ()
    if parts is not None and shape.probe is not None:
        cell = parts.cells[shape.probe]
        free = range(cell.low, cell.high)
    for place in free:
        mask[place], figure[place] = 0, False
    masks, wanted = (
        _words(bytes(mask)),
        _words(bytes(m & b for m, b in zip(mask, line, strict=True))),
    )
    figures = _words(bytes(0x10 * is_figure for is_figure in figure))
    alike = np.ones(len(words), np.bool_)
    for n, (keep, like, places) in enumerate(zip(masks, wanted, figures, strict=True)):
        column = words[:, n]
        alike &= (column & keep) == like
        if places:
            alike &= ((column & _LOW_HALVES) + _SIXES) & places == 0
    if free:
        cells = words.view(np.uint8)[:, free.start : free.stop]
        alike &= ~(cells == ord(shape.delimiter)).any(axis=1)
    return alike


def _words(line: bytes) -> Words:
    return np.frombuffer(line.ljust(-(-len(line) // _WORD) * _WORD, b"\0"), np.uint64)


def _stamps(columns: Bytes, parts: StampParts) -> Ints:
    """Local seconds of stamps written alike; NO_TIME where there is no such date or time."""
    year, month, day = (_figures(columns, cell) for cell in (parts.year, parts.month, parts.day))
    hour, minute = _figures(columns, parts.hour), _figures(columns, parts.minute)
    second = _figures(columns, parts.second) if parts.second else np.zeros_like(hour)
    if parts.short_year:
        year += 2000
    if parts.half:
        hour = hour % 12 + (12 if parts.half == "p" else 0)
    spans = (
        (year, *_YEARS),
        (month, 1, 13),
        (day, 1, 32),
        (hour, 0, 24),
        (minute, 0, 60),
        (second, 0, 60),
    )
    real: NDArray[np.bool_] = np.ones(len(year), np.bool_)
    for numbers, low, high in spans:
        if numbers.min() < low or numbers.max() >= high:
            real &= (numbers >= low) & (numbers < high)
    months = np.where(real, (year - _YEARS[0]) * 12 + month - 1, 0)
    days = _MONTHS[months] + day - 1
    real = real & (days < _MONTHS[months + 1])
    clock = (hour * 60 + minute) * 60 + second
    stamps = days.astype(np.int64) * 86_400 + clock
    if not real.all():
        stamps[~real] = NO_TIME
    return stamps


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
