"""The tables of a bundle as rows of a book's own: one prepared reader for each table.

A table is read some lines at a time and column by column, and each cell that was met is read
once: days, grades and weights come again and again. Lines that cannot be read so are read
once more one by one, so that the bad one is named.
"""

import csv
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from functools import cache, partial
from itertools import islice
from pathlib import Path
from typing import Any

import msgspec

from keeper.actions import bundle_cells as cells
from keeper.husbandry.reasons import Figure, because
from keeper.husbandry.when import Happened
from keeper.language import tr
from keeper.reports.words import sentence
from keeper.store.checksums import CELLS
from keeper.store.documents import NotADocument, fields_of, refuse_odd_head, withdrawal_target
from keeper.store.rows import (
    KINDS,
    Column,
    Decoded,
    checked_text,
    columns_of,
    day_number,
    from_rows,
    when_cells,
    when_of,
)
from keeper.store.tabled import head_row

Row = tuple[Any, ...]
Columns = Sequence[Sequence[Any]]
_Read = Callable[[str], Any]
_LINES_AT_ONCE = 4_000
_CELLS_KEPT, _LONG = 20_000, 200
"""How many cells of a column are remembered; long ones hardly come twice."""
_MOST_CHARACTERS = 2**24
"""Longest cell that is read; the csv module by itself stops at an eighth of a megabyte."""
_SOME_TIME = datetime(2000, 1, 1, tzinfo=UTC)
_BAD = (ValueError, OverflowError, msgspec.ValidationError, NotADocument)


@dataclass(frozen=True, slots=True, kw_only=True)
class Reader:
    """How a table is read.

    name: of its file; heading: its columns; read: what each cell of a column says, of those that
    are read; rows: of those columns, in their order, one row for each line; cells: what they hold.
    """

    name: str
    heading: tuple[str, ...]
    read: Mapping[str, _Read]
    rows: Callable[[Columns], list[Any]]
    cells: tuple[str, ...] = ()


def rows_in(folder: Path, reader: Reader) -> Iterator[list[Any]]:
    """The rows of one file, some at a time; none where the file is not there.

    Raises:
        NotADocument: a line cannot be read: which, and what is wrong with it.
    """
    path = folder / f"{reader.name}.csv"
    columns = [
        (reader.heading.index(name), _Cells(name, read)) for name, read in reader.read.items()
    ]

    def rows_of(lines: Sequence[Sequence[str]]) -> list[Any]:
        _refuse_other_widths(lines, len(reader.heading))
        told = list(zip(*lines, strict=True))
        return reader.rows([list(map(cells.__getitem__, told[at])) for at, cells in columns])

    for numbers, lines in _lines_in(folder, path, reader.heading):
        try:
            yield rows_of(lines)
        except _BAD:
            _name_the_bad_one(path, numbers, lines, rows_of)
            raise


@cache
def entries_reader(table: str) -> Reader:
    """Entries of one kind, as rows of the book's table."""
    kind = KINDS[table]
    hints, columns = fields_of(kind), columns_of(kind)
    head: dict[str, _Read] = {
        "at": _at,
        "span": _span,
        "day": _day,
        "batch": _number,
        "seq": _number,
    }
    fields = {each.field: partial(_field, hints[each.field], each) for each in columns}
    heading, rows = cells.entry_columns(table), partial(_entries, kind)
    return Reader(
        name=table, heading=heading, read={**head, **fields}, rows=rows, cells=CELLS[table]
    )


def batches_reader() -> Reader:
    """Batches: the own row of each, the animals, the rounds, how many entries and withdrawals."""
    read: dict[str, _Read] = {
        "batch": _number,
        **dict.fromkeys(("station", "keeper", "verb"), _text),
        "written": partial(_said, datetime),
        "reason": partial(_said, str | None),
        **dict.fromkeys(("animals", "rounds"), _keys),
        **dict.fromkeys(("entries", "withdrawals"), _number),
    }
    return Reader(name=cells.BATCHES, heading=cells.BATCH_COLUMNS, read=read, rows=_batches)


def withdrawals_reader() -> Reader:
    """Withdrawals, as rows of the book's table."""
    read: dict[str, _Read] = dict.fromkeys(cells.WITHDRAWAL_COLUMNS[:3], _number)
    columns: dict[str, _Read] = {**read, "target_seq": partial(_said, int | None)}
    return Reader(
        name=cells.WITHDRAWALS,
        heading=cells.WITHDRAWAL_COLUMNS,
        read=columns,
        rows=_withdrawals,
        cells=CELLS["withdrawal"],
    )


def readings_reader() -> Reader:
    """Days of probes, as documents that ``store.readings_out`` reads."""
    read: dict[str, _Read] = {
        "probe": partial(_said, str | None),
        "day": partial(_said, str | None),
        "hundredths": cells.hundredths_of,
        "batch": cells.whose_of,
    }
    return Reader(name=cells.READINGS, heading=cells.READING_COLUMNS, read=read, rows=_readings)


def cover_reader() -> Reader:
    """What form the bundle has, and how many batches and days of readings it holds."""
    texts: dict[str, _Read] = dict.fromkeys(("format", "version"), partial(_said, str | None))
    read = {**texts, "batches": _number, "readings": _number}
    return Reader(name=cells.COVER, heading=cells.COVER_COLUMNS, read=read, rows=_as_they_are)


class _Cells(Decoded):
    """What the cells of one column say; what cannot be read is told with the column's name."""

    def __init__(self, name: str, read: Callable[[str], Any]) -> None:
        super().__init__(read)
        self._name = name

    def __missing__(self, text: str) -> Any:
        if len(self) > _CELLS_KEPT:
            self.clear()
        try:
            return super().__missing__(text) if len(text) < _LONG else self._decode(text)
        except cells.NotRead as error:
            raise cells.not_read(self._name, text) from error
        except _BAD as error:
            told = tr("{name} cannot be {given!r}: {error}.", **self._told(text, error))
            raise NotADocument(told) from error

    def _told(self, text: str, error: Exception) -> dict[str, Any]:
        return {"name": self._name, "given": text[:60], "error": str(error).rstrip(".")}


def _lines_in(
    folder: Path, path: Path, heading: Sequence[str]
) -> Iterator[tuple[list[int], list[list[str]]]]:
    """Some lines at a time, with their numbers."""
    if folder.is_symlink() or path.is_symlink() or not path.is_file():
        return
    with _long_cells(), path.open(encoding="utf-8-sig", newline="") as file:
        lines = csv.reader(file, strict=True)
        try:
            if tuple(next(lines, ())) != tuple(heading):
                raise NotADocument(_told("bundle heading", right=",".join(heading)))
            while some := [(lines.line_num, line) for line in islice(lines, _LINES_AT_ONCE)]:
                yield [number for number, _ in some], [line for _, line in some]
        except (NotADocument, csv.Error, UnicodeDecodeError) as error:
            raise _of_line(path, lines.line_num, error) from error


def _name_the_bad_one(
    path: Path,
    numbers: Sequence[int],
    lines: Sequence[Sequence[str]],
    rows_of: Callable[[Sequence[Sequence[str]]], object],
) -> None:
    for number, line in zip(numbers, lines, strict=True):
        try:
            rows_of([line])
        except _BAD as error:
            raise _of_line(path, number, error) from error


def _of_line(path: Path, number: int, error: Exception) -> NotADocument:
    return NotADocument(_told("bundle line", file=path.name, line=number, told=str(error)))


def _refuse_other_widths(lines: Sequence[Sequence[str]], width: int) -> None:
    other = next((len(line) for line in lines if len(line) != width), None)
    if other is not None:
        raise NotADocument(_told("bundle cells", need=width, have=other))


@contextmanager
def _long_cells() -> Iterator[None]:
    before = csv.field_size_limit(_MOST_CHARACTERS)
    try:
        yield
    finally:
        csv.field_size_limit(before)


def _told(why: str, **figures: Figure) -> str:
    return sentence(because(why, **figures))


def _said(hint: Any, text: str) -> Any:
    """What a cell says where a value of type *hint* belongs; ValueError for what is none."""
    return msgspec.convert(cells.value_of(hint, text), hint)


def _number(text: str) -> Any:
    return _said(int, text)


def _text(text: str) -> str:
    return checked_text(_said(str | None, text) or "")


def _keys(text: str) -> tuple[int, ...]:
    return tuple(_number(each) for each in text.split())


def _field(hint: Any, column: Column, text: str) -> Any:
    """The book's own cell for what a field says."""
    value = _said(hint, text)
    if value is None:
        return None
    cell = column.encode(value)
    return _kept(cell, value, column.decode(cell))


def _at(text: str) -> Any:
    """An instant: its second, and the offset of its place in minutes."""
    told = Happened(at=_said(datetime, text), day=_SOME_TIME.date())
    at, _, offset, day = when_cells(told)
    return _kept((at, offset), told.at, when_of(at, 0, offset, day).at)


def _span(text: str) -> Any:
    told = Happened(at=_SOME_TIME, span=_said(timedelta, text), day=_SOME_TIME.date())
    _, span, _, _ = when_cells(told)
    return _kept(span, told.span, timedelta(seconds=span))


def _day(text: str) -> int:
    return day_number(_said(date, text))


def _kept(cell: Any, said: object, kept: object) -> Any:
    if kept != said:
        raise ValueError(tr("it is finer than a book keeps, which would be {kept}", kept=kept))
    return cell


def _entries(kind: type[Any], columns: Columns) -> list[Row]:
    """Rows as the book holds them, of entries that could have been written in it."""
    instants, spans, days, batches, seqs, *fields = columns
    ats, offsets = zip(*instants, strict=True)
    rows = list(zip(ats, spans, offsets, days, batches, seqs, *fields, strict=True))
    if hasattr(kind, "__post_init__"):
        for event in from_rows(kind, rows):
            event.__post_init__()
    return rows


def _batches(columns: Columns) -> list[Row]:
    found = []
    for batch, station, keeper, verb, written, reason, animals, rounds, *counts in zip(
        *columns, strict=True
    ):
        refuse_odd_head(batch, written, reason, (*animals, *rounds))
        head = head_row(batch, station, keeper, verb, written, reason)
        found.append((head, animals, rounds, *counts))
    return found


def _withdrawals(columns: Columns) -> list[Row]:
    return [
        (batch, seq, *withdrawal_target(batch, target, target_seq))
        for batch, seq, target, target_seq in zip(*columns, strict=True)
    ]


def _readings(columns: Columns) -> list[dict[str, Any]]:
    return [dict(zip(cells.READING_COLUMNS, row, strict=True)) for row in _as_they_are(columns)]


def _as_they_are(columns: Columns) -> list[Row]:
    return list(zip(*columns, strict=True))
