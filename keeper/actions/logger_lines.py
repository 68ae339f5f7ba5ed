"""One line of a logger's file, read by itself: what any line of the file says.

Files are read by the block (logger_columns); a line here is the measure of it.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass

from keeper.actions.logger_shape import LoggerShape

STAMP = re.compile(
    r"\s*(\d{4}|\d{1,2})[-./](\d{1,2})[-./](\d{4}|\d{1,2})[ T]+"
    r"(\d{1,2}):(\d\d)(?::(\d\d)(?:[.,]\d+)?)?\s*([AaPp][Mm])?\s*(?:(Z)|([+-])(\d\d):?(\d\d))?\s*"
)
"""First, second and third part of the date; hour, minute, second; half of the day; zone."""

NUMBER = re.compile(r"\s*([+-]?)(\d{1,7})(?:[.,](\d{1,9}))?\s*(?:(?:\xc2?\xb0)?\s*[CF])?\s*")
"""Sign, whole and part."""


@dataclass(frozen=True, slots=True)
class Cell:
    """Where a cell of a line stands: from *low* up to before *high*."""

    low: int
    high: int


@dataclass(frozen=True, slots=True)
class StampParts:
    """Where the figures of a stamp stand, and what its letters say. None: not in the stamp."""

    year: Cell
    month: Cell
    day: Cell
    hour: Cell
    minute: Cell
    second: Cell | None
    short_year: bool
    half: str  # "", "a" or "p"
    utc: bool
    shift: tuple[int, Cell, Cell] | None  # sign, hours, minutes


@dataclass(frozen=True, slots=True)
class NumberParts:
    negative: bool
    whole: Cell
    part: Cell | None


@dataclass(frozen=True, slots=True)
class Line:
    """A line taken apart. stamp, and each of values: None where the text is none.

    blank: which of the values are empty cells.
    """

    cells: tuple[Cell, ...]
    stamp: StampParts | None
    values: tuple[NumberParts | None, ...]
    blank: tuple[bool, ...]


def taken_apart(line: bytes, shape: LoggerShape) -> Line | None:
    """The parts of *line*; None where it has not as many cells as the heading."""
    cells = _cells(line, shape.delimiter)
    if len(cells) != shape.columns:
        return None
    text = line.decode("latin-1")
    values = [cells[value.column] for value in shape.values]
    return Line(
        cells=cells,
        stamp=_stamp(text, [cells[column] for column in shape.when], shape.order),
        values=tuple(_number(text, cell) for cell in values),
        blank=tuple(not text[cell.low : cell.high].strip() for cell in values),
    )


def _cells(line: bytes, delimiter: str) -> tuple[Cell, ...]:
    cells, low = [], 0
    for cell in line.split(delimiter.encode()):
        cells.append(Cell(low, low + len(cell)))
        low += len(cell) + 1
    return tuple(cells)


def _stamp(text: str, cells: Sequence[Cell], order: str) -> StampParts | None:
    joined = " ".join(text[cell.low : cell.high] for cell in cells)
    found = STAMP.fullmatch(joined)
    if found is None:
        return None
    places = [place for cell in cells for place in (*range(cell.low, cell.high), -1)]

    def part(number: int) -> Cell:
        low, high = found.span(number)
        return Cell(places[low], places[low] + high - low)

    first, second, third = part(1), part(2), part(3)
    year_first = len(found[1]) == 4
    day, month = (first, second) if order == "dmy" else (second, first)
    year, month, day = (first, second, third) if year_first else (third, month, day)
    return StampParts(
        year=year,
        month=month,
        day=day,
        hour=part(4),
        minute=part(5),
        second=part(6) if found[6] else None,
        short_year=not year_first and len(found[3]) < 4,
        half=(found[7] or "")[:1].casefold(),
        utc=found[8] is not None,
        shift=(-1 if found[9] == "-" else 1, part(10), part(11)) if found[9] else None,
    )


def _number(text: str, cell: Cell) -> NumberParts | None:
    found = NUMBER.fullmatch(text[cell.low : cell.high])
    if found is None:
        return None

    def part(number: int) -> Cell:
        low, high = found.span(number)
        return Cell(cell.low + low, cell.low + high)

    return NumberParts(found[1] == "-", part(2), part(3) if found[3] else None)
