"""How a logger writes its files: which column is what, found from the lines themselves.

No two loggers agree on order, separators, units or what stands above the heading; what was
found is shown to the keeper, may be changed, and is remembered for the next file.
"""

import csv
import re
from collections.abc import Iterable, Sequence
from dataclasses import asdict, dataclass, replace
from typing import Literal

import msgspec

from keeper.language import tr

Order = Literal["ymd", "dmy", "mdy"]
LOCAL = "local"

_DELIMITERS = (";", "\t", ",", "|")
_DATE = r"(\d{4}|\d{1,2})([-./])(\d{1,2})\2(\d{4}|\d{1,2})"
_CLOCK = r"\d{1,2}:\d{2}(?::\d{2}(?:[.,]\d+)?)?\s*(?:[AaPp][Mm])?\s*(?:Z|[+-]\d{2}:?\d{2})?"
_STAMP_CELL = re.compile(rf"{_DATE}[ T]+{_CLOCK}")
_DATE_CELL = re.compile(_DATE)
_CLOCK_CELL = re.compile(_CLOCK)
_NUMBER_CELL = re.compile(r"[+-]?\d+(?:[.,]\d+)?\s*(?:°?\s*[CF])?")
_TEMPERATURE = re.compile(r"temp|celsius|fahrenheit|°|deg|\([cf]\)|^[cf]$|^t\d*$", re.I)
_OTHER = re.compile(r"humid|\brh\b|%|dew|batt|volt|press|lux|light|signal", re.I)
_COUNTER = re.compile(r"^(#|no\.?|nr\.?|index|record|row|line)$", re.I)
_PROBE = re.compile(r"probe|sensor|channel|logger|device|serial|^(name|id|place)$", re.I)
_FAHRENHEIT = re.compile(r"°\s*F\b|\(F\)|\bF\b|fahrenheit", re.I)
_CELSIUS = re.compile(r"°\s*C\b|\(C\)|\bC\b|celsius", re.I)
_SERIAL = re.compile(r"^\W*(?:serial|s/n|logger|device|name)\b[^:;,\t=]*[:;,\t=]\s*(.+)$", re.I)
_FAHRENHEIT_FROM = 60.0
_SAMPLE = 300
_LEAST_LINES = 60
_HEAD_BYTES = 1 << 14
_KEY_LETTERS = 160


@dataclass(frozen=True, slots=True, kw_only=True)
class ValueColumn:
    """A column of temperatures; probe is empty where another column names the probe."""

    column: int
    probe: str


@dataclass(frozen=True, slots=True, kw_only=True)
class LoggerShape:
    """What stands where. Columns count from 0, lines of the file from 0.

    when: one column, or a date and a time of day. zone: of stamps that carry none: ``local``,
    an offset such as ``+01:00`` or the name of a zone.
    """

    heading: str
    delimiter: str
    data_from: int
    columns: int
    when: tuple[int, ...]
    values: tuple[ValueColumn, ...]
    probe: int | None = None
    fahrenheit: bool = False
    order: Order = "ymd"
    zone: str = LOCAL
    unsure: tuple[str, ...] = ()  # "order", "unit", "probe": what was taken without a sign of it

    @property
    def key(self) -> str:
        """The setting under which the shape is remembered."""
        return f"logger file {self.heading}"[:_KEY_LETTERS]


def shape_of(lines: Sequence[str], stem: str) -> LoggerShape:
    """What the *lines* of a file say of themselves; *stem* names the probe where they do not.

    >>> found = shape_of(["Time;Temp (°C)", "01.03.2026 12:00;21,5"], "B3")
    >>> found.delimiter, found.when, found.values[0].column, found.order
    (';', (0,), 1, 'dmy')

    Raises:
        ValueError: no line has both a time and a number, in one sentence.
    """
    start, delimiter, rows = _table(lines)
    heading = _heading(lines, start, delimiter, len(rows[0]))
    when = _when(rows)
    assert when is not None
    above = lines[:start]
    values, probe, named = _values(heading, rows, when, above, stem)
    if not values:
        raise ValueError(tr("No column of the file holds temperatures; one headed °C is right."))
    fahrenheit, unit_told = _unit([*above], rows, [value.column for value in values])
    order, order_told = _order([row[when[0]] for row in rows])
    told = {"unit": unit_told, "order": order_told, "probe": named}
    return LoggerShape(
        heading=_identity(above, heading),
        delimiter=delimiter,
        data_from=start,
        columns=len(rows[0]),
        when=when,
        values=values,
        probe=probe,
        fahrenheit=fahrenheit,
        order=order,
        unsure=tuple(what for what, is_told in told.items() if not is_told),
    )


def as_remembered(found: LoggerShape, kept: str | None) -> LoggerShape:
    """*found* with what the keeper decided on an earlier file of the same logger."""
    if kept is None:
        return found
    before = msgspec.json.decode(kept, type=LoggerShape)
    if before.columns != found.columns:
        return found
    return replace(before, data_from=found.data_from, delimiter=found.delimiter, unsure=())


def as_text(shape: LoggerShape) -> str:
    """The shape as a setting's value; what belongs to one file alone is left out."""
    return msgspec.json.encode(asdict(replace(shape, data_from=0, unsure=()))).decode()


def sample_of(raw: bytes) -> list[bytes]:
    """The first lines and some from all over the file."""
    size = _HEAD_BYTES
    while raw.count(b"\n", 0, size) < _LEAST_LINES and size < len(raw):
        size *= 4
    head = raw[:size].splitlines()[:_SAMPLE]
    if len(raw) <= size:
        return head
    step = len(raw) // _SAMPLE
    starts = [raw.find(b"\n", at) + 1 for at in range(size, len(raw), max(1, step))]
    ends = [raw.find(b"\n", start) for start in starts]
    pairs = zip(starts, ends, strict=True)
    return head[:-1] + [raw[start:end] for start, end in pairs if 0 < start < end]


def _table(lines: Sequence[str]) -> tuple[int, str, list[list[str]]]:
    """First line, delimiter and rows of the data: by the delimiter that gives most rows."""
    found = [
        (start, delimiter, rows)
        for delimiter in _DELIMITERS
        if any(delimiter in line for line in lines)
        for start, rows in (_data_rows(lines, delimiter),)
        if rows
    ]
    if not found:
        raise ValueError(
            tr(
                "No line of the file has both a time and a number beside it; a line such as"
                " 2026-03-01 12:00;21.5 is right."
            )
        )
    return max(found, key=lambda each: len(each[2]))


def _data_rows(lines: Sequence[str], delimiter: str) -> tuple[int, list[list[str]]]:
    """Where the data begin, and their rows: those of the most usual number of cells."""
    found: dict[int, list[tuple[int, list[str]]]] = {}
    for number, row in enumerate(_split(lines, delimiter)):
        when = _when([row])
        if when is not None and any(_is_number(c) for n, c in enumerate(row) if n not in when):
            found.setdefault(len(row), []).append((number, row))
    usual = max(found.values(), key=len, default=[])
    return (usual[0][0], [row for _, row in usual]) if usual else (0, [])


def _split(lines: Iterable[str], delimiter: str) -> Iterable[list[str]]:
    for line in lines:
        yield [cell.strip() for cell in _cells(line, delimiter)]


def _cells(line: str, delimiter: str) -> list[str]:
    """A line apart; one that no reader of CSV takes is a single cell."""
    if delimiter not in line:
        return [line]
    if '"' not in line:
        return line.split(delimiter)
    try:
        return next(csv.reader([line], delimiter=delimiter), [])
    except csv.Error:
        return [line]


def _is_number(cell: str) -> bool:
    return _NUMBER_CELL.fullmatch(cell) is not None


def _when(rows: Sequence[Sequence[str]]) -> tuple[int, ...] | None:
    """The column of stamps, or those of date and time of day."""
    first = rows[0]
    for column, cell in enumerate(first):
        if _STAMP_CELL.fullmatch(cell):
            return (column,)
    dates = [n for n, cell in enumerate(first) if _DATE_CELL.fullmatch(cell)]
    clocks = [n for n, cell in enumerate(first) if _CLOCK_CELL.fullmatch(cell)]
    return (dates[0], clocks[0]) if dates and clocks else None


def _heading(lines: Sequence[str], start: int, delimiter: str, columns: int) -> list[str]:
    """The nearest line above the data that has as many cells; blank names where none has."""
    for row in reversed(list(_split(lines[:start], delimiter))):
        if len(row) == columns:
            return row
    return [""] * columns


def _values(
    heading: Sequence[str],
    rows: Sequence[Sequence[str]],
    when: Sequence[int],
    above: Sequence[str],
    stem: str,
) -> tuple[tuple[ValueColumn, ...], int | None, bool]:
    """The columns of temperatures, the column that names the probe, and whether one is named."""
    numbers = [
        n
        for n, name in enumerate(heading)
        if n not in when
        and any(_is_number(row[n]) for row in rows)
        and not _OTHER.search(name)
        and not _COUNTER.match(name)
    ]
    probe = next(
        (
            n
            for n, name in enumerate(heading)
            if n not in when and _PROBE.search(name) and not _TEMPERATURE.search(name)
        ),
        None,
    )
    numbers = [n for n in numbers if n != probe]
    wanted = [n for n in numbers if _TEMPERATURE.search(heading[n])] or numbers[:1]
    if probe is not None:
        return tuple(ValueColumn(column=n, probe="") for n in wanted[:1]), probe, True
    if len(wanted) > 1:
        return tuple(ValueColumn(column=n, probe=heading[n]) for n in wanted), None, True
    serial = _serial(above)
    named = ValueColumn(column=wanted[0] if wanted else -1, probe=serial or stem)
    return (named,) if wanted else (), None, serial is not None


def _unit(
    above: Sequence[str], rows: Sequence[Sequence[str]], columns: Sequence[int]
) -> tuple[bool, bool]:
    """Whether the values are Fahrenheit, and whether the file says so."""
    told = " ".join([*above, *(rows[0][n] for n in columns)])
    if _FAHRENHEIT.search(told) or _CELSIUS.search(told):
        return _CELSIUS.search(told) is None, True
    numbers = [
        float(found[0].replace(",", "."))
        for row in rows
        for n in columns
        if (found := re.match(r"[+-]?\d+(?:[.,]\d+)?", row[n]))
    ]
    middle = sorted(numbers)[len(numbers) // 2] if numbers else 0.0
    return middle >= _FAHRENHEIT_FROM, False


def _order(cells: Sequence[str]) -> tuple[Order, bool]:
    """Year, day or month first: by four figures, by a number above twelve, else by the point."""
    parts = [m.groups() for cell in cells if (m := _DATE_CELL.match(cell))]
    if any(len(first) == 4 for first, *_ in parts):
        return "ymd", True
    if any(int(first) > 12 for first, *_ in parts):
        return "dmy", True
    if any(int(second) > 12 for _, _, second, _ in parts):
        return "mdy", True
    return "dmy", all(point == "." for _, point, *_ in parts)


def _serial(above: Sequence[str]) -> str | None:
    for line in above[:-1]:
        if found := _SERIAL.match(line):
            return found[1].strip(' ";,\t') or None
    return None


def _identity(above: Sequence[str], heading: Sequence[str]) -> str:
    """What is the same in every file of one logger: its serial and its heading."""
    return " ".join(filter(None, (_serial(above), "|".join(heading))))
