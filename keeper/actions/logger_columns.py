"""The columns of a logger file by the million: bytes to seconds and hundredths of a degree.

Lines are taken in blocks. Cells that are written alike (same separators, same number of
figures) share a layout and are read together, one figure's column at a time.
"""

import csv
import io
import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from keeper.actions.logger_shape import LoggerShape

Ints = NDArray[np.int64]
Flags = NDArray[np.bool_]
Bytes = NDArray[np.uint8]

NO_TIME = np.iinfo(np.int64).min
NO_NUMBER = np.nan
_BLOCK = 1 << 16
_WIDEST = 40
_MOST_LAYOUTS = 64
_SPACE, _NOUGHT, _NINE, _QUOTE, _NEWLINE = 32, 48, 57, 34, 10

_STAMP = re.compile(
    r"\s*(0{4}|0{1,2})[-./](0{1,2})[-./](0{4}|0{1,2})[ T]+"
    r"(0{1,2}):(00)(?::(00)(?:[.,]0+)?)?\s*([AaPp][Mm])?\s*(?:(Z)|([+-])(00):?(00))?\s*"
)
_NUMBER = re.compile(r"\s*([+-]?)(0{1,9})(?:[.,](0{1,9}))?\s*(?:(?:\xc2?\xb0)?\s*[CF])?\s*")


@dataclass(frozen=True, slots=True)
class Cells:
    """A column of a block: cells as figures of one byte, one row for a position in the cell."""

    text: Bytes  # (width, count), padded with spaces
    too_long: Flags


@dataclass(frozen=True, slots=True, kw_only=True)
class Block:
    """Some lines of a file that have as many cells as they should.

    lines: their numbers, from 1; stamps: local seconds since 1970 or NO_TIME; shifts: seconds
    east where the stamp says so, else NO_TIME; values: a column for each in the shape, as
    written, NO_NUMBER where there is none; blank: where the cell is empty.
    """

    lines: Ints
    stamps: Ints
    shifts: Ints
    values: list[NDArray[np.float64]]
    blank: list[Flags]
    probes: list[bytes]
    probe_of: Ints  # index into probes, of each line


@dataclass(frozen=True, slots=True)
class WrongLines:
    """Numbers of lines with too few or too many cells."""

    lines: Ints


def blocks_of(raw: bytes, shape: LoggerShape) -> Iterator[Block | WrongLines]:
    """The file in blocks of lines, and the lines that fit no block."""
    data, delimiter = _unquoted(raw, shape.delimiter)
    separators, row_ends = _separators(data, ord(delimiter))
    cells = np.diff(row_ends, prepend=-1)
    begins = np.concatenate(([0], separators[row_ends[:-1]] + 1))
    number = np.arange(len(row_ends), dtype=np.int64)
    inside = number >= shape.data_from
    fits = inside & (cells == shape.columns)
    blank = separators[row_ends] - begins <= 1
    wrong = number[inside & ~fits & ~blank]
    if wrong.size:
        yield WrongLines(wrong + 1)
    rows = number[fits]
    for start in range(0, len(rows), _BLOCK):
        chosen = rows[start : start + _BLOCK]
        yield _block(data, shape, chosen, separators, row_ends, begins)


def _block(
    data: Bytes,
    shape: LoggerShape,
    rows: Ints,
    separators: Ints,
    row_ends: Ints,
    begins: Ints,
) -> Block:
    first = row_ends[rows] - (shape.columns - 1)

    def cells(column: int) -> Cells:
        ends = separators[first + column]
        starts = begins[rows] if column == 0 else separators[first + column - 1] + 1
        return _cells(data, starts, ends)

    stamps, shifts = _stamps([cells(column) for column in shape.when], shape.order)
    numbers = [_numbers(cells(value.column)) for value in shape.values]
    names, probe_of = (
        _names(cells(shape.probe))
        if shape.probe is not None
        else ([b""], np.zeros(len(rows), np.int64))
    )
    return Block(
        lines=rows + 1,
        stamps=stamps,
        shifts=shifts,
        values=[each for each, _ in numbers],
        blank=[each for _, each in numbers],
        probes=names,
        probe_of=probe_of,
    )


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


def _separators(data: Bytes, delimiter: int) -> tuple[Ints, Ints]:
    """Where cells end, and which of those ends are ends of lines."""
    separators = np.flatnonzero((data == delimiter) | (data == _NEWLINE))
    return separators, np.flatnonzero(data[separators] == _NEWLINE)


def _cells(data: Bytes, starts: Ints, ends: Ints) -> Cells:
    lengths = ends - starts
    widest = int(min(_WIDEST, lengths.max(initial=0)))
    text = np.empty((widest, len(starts)), np.uint8)
    last = len(data) - 1
    for position in range(widest):
        text[position] = data[np.minimum(starts + position, last)]
        short = lengths <= position
        if short.any():
            text[position][short] = _SPACE
    text[text < _SPACE] = _SPACE
    return Cells(text, lengths > _WIDEST)


def _stamps(cells: list[Cells], order: str) -> tuple[Ints, Ints]:
    """Local seconds and the offset that the stamp itself names, NO_TIME where there is none."""
    between = np.full((1, cells[0].text.shape[1]), _SPACE, np.uint8)
    text = cells[0].text if len(cells) == 1 else np.vstack([cells[0].text, between, cells[1].text])
    stamps = np.full(text.shape[1], NO_TIME, np.int64)
    shifts = np.full(text.shape[1], NO_TIME, np.int64)
    usable = ~np.logical_or.reduce([cell.too_long for cell in cells])

    def take(layout: str, rows: Ints) -> None:
        found = _STAMP.fullmatch(layout)
        if found is None:
            return
        part = text if len(rows) == text.shape[1] else text[:, rows]
        stamps[rows], shifts[rows] = _stamps_alike(part, found, order)

    _by_layout(text, usable, take)
    return stamps, shifts


def _stamps_alike(text: Bytes, found: re.Match[str], order: str) -> tuple[Ints, Ints]:
    """Stamps of one layout."""

    def group(number: int) -> Ints:
        low, high = found.span(number)
        return _figures(text, low, high)

    count = text.shape[1]
    first, second, third = group(1), group(2), group(3)
    is_year_first = len(found[1]) == 4
    day, month = (first, second) if order == "dmy" else (second, first)
    year = third
    if is_year_first:
        year, month, day = first, second, third
    if not is_year_first and len(found[3]) <= 2:
        year = year + 2000
    hour = group(4)
    if found[7]:
        hour = hour % 12 + (12 if found[7][0] in "Pp" else 0)
    minute, second_ = group(5), group(6) if found[6] else np.zeros(count, np.int64)
    days, real = _days(year, month, day)
    real &= (hour < 24) & (minute < 60) & (second_ < 60)
    stamps = np.where(real, days * 86_400 + hour * 3600 + minute * 60 + second_, NO_TIME)
    if found[8]:
        return stamps, np.zeros(count, np.int64)
    if found[9]:
        sign = -1 if found[9] == "-" else 1
        return stamps, sign * (group(10) * 3600 + group(11) * 60)
    return stamps, np.full(count, NO_TIME, np.int64)


def _days(year: Ints, month: Ints, day: Ints) -> tuple[Ints, Flags]:
    """Days since 1970 of a date of the Gregorian calendar, and whether there is such a date."""
    real = (month >= 1) & (month <= 12) & (day >= 1) & (day <= 31) & (year >= 1970)
    months = (np.where(real, year, 1970) - 1970) * 12 + np.where(real, month, 1) - 1
    begins = months.astype("M8[M]").astype("M8[D]").astype(np.int64)
    ends = (months + 1).astype("M8[M]").astype("M8[D]").astype(np.int64)
    days = begins + day - 1
    return days, real & (days < ends)


def _numbers(cells: Cells) -> tuple[NDArray[np.float64], Flags]:
    """Numbers as written, NO_NUMBER where there is none, and which cells are empty."""
    text = cells.text
    values = np.full(text.shape[1], NO_NUMBER)
    empty = ~cells.too_long & (text == _SPACE).all(axis=0)

    def take(layout: str, rows: Ints) -> None:
        found = _NUMBER.fullmatch(layout)
        if found is None:
            return
        part = text if len(rows) == text.shape[1] else text[:, rows]
        whole = _figures(part, *found.span(2)).astype(np.float64)
        if found[3]:
            whole += _figures(part, *found.span(3)) / 10.0 ** len(found[3])
        values[rows] = -whole if found[1] == "-" else whole

    _by_layout(text, ~cells.too_long & ~empty, take)
    return values, empty


def _figures(text: Bytes, low: int, high: int) -> Ints:
    """The whole number that stands in the columns *low* to *high* of cells alike."""
    number = np.zeros(text.shape[1], np.int64)
    for position in range(low, high):
        number *= 10
        number += text[position]
    return number - _NOUGHT * int("1" * (high - low) or "0")


def _by_layout(text: Bytes, usable: Flags, take: Callable[[str, Ints], None]) -> None:
    """Call *take* with each layout (every figure a 0) and the rows that have it."""
    shapes = np.where((text >= _NOUGHT) & (text <= _NINE), np.uint8(_NOUGHT), text)
    left = np.flatnonzero(usable)
    for _ in range(_MOST_LAYOUTS):
        if not left.size:
            return
        layout = shapes[:, left[0]]
        alike = np.ones(len(left), np.bool_)
        every = len(left) == text.shape[1]
        for position, letter in enumerate(layout):
            row = shapes[position] if every else shapes[position][left]
            alike &= row == letter
        take(layout.tobytes().decode("latin-1"), left[alike])
        left = left[~alike]
    for row in left:  # a file of odd cells: the sound ones among them one by one
        take(shapes[:, row].tobytes().decode("latin-1"), np.array([row]))


def _names(cells: Cells) -> tuple[list[bytes], Ints]:
    """The different cells of a column, and which each line has."""
    width, count = cells.text.shape
    padded = np.full((-(-max(width, 1) // 8) * 8, count), _SPACE, np.uint8)
    padded[:width] = cells.text
    words = np.ascontiguousarray(padded.T).view(np.uint64)
    changes = np.flatnonzero(np.any(words[1:] != words[:-1], axis=1)) + 1
    heads = np.concatenate(([0], changes))
    firsts, codes = _alike(words[heads])
    names = [words[heads[first]].tobytes().strip() for first in firsts]
    return names, np.repeat(codes, np.diff(np.append(heads, count)))


def _alike(words: NDArray[np.uint64]) -> tuple[Ints, Ints]:
    """The first row of each kind, and of which kind each row is."""
    factors = np.array([(0x9E3779B97F4A7C15 * (2 * n + 1)) % 2**64 for n in range(words.shape[1])])
    mixed = (words * factors.astype(np.uint64)).sum(axis=1, dtype=np.uint64)
    _, firsts, codes = np.unique(mixed, return_index=True, return_inverse=True)
    if np.array_equal(words[firsts][codes], words):
        return firsts, codes
    _, firsts, codes = np.unique(words, axis=0, return_index=True, return_inverse=True)
    return firsts, codes.reshape(-1)
