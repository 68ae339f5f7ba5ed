"""Read a keeper's own records from CSV files: every row taken, or every fault named.

animals: animal,species,sex,hatched,place    diary: animal,date,what,grams,note
UTF-8 with or without BOM, comma or semicolon, ISO dates.
"""

import csv
import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from functools import partial
from pathlib import Path
from typing import Any

from keeper.husbandry.animal import Sex

ANIMAL_COLUMNS = ("animal", "species", "sex", "hatched", "place")
DIARY_COLUMNS = ("animal", "date", "what", "grams", "note")
WHATS = ("fed", "refused", "regurgitated", "weighed", "dull", "opaque", "cleared", "shed")
_WITH_GRAMS = ("fed", "refused", "weighed")
_GRAMS = re.compile(r"\d{1,6}(\.\d{1,3})?")
_MOST_GRAMS = 200_000.0
_MOST_BYTES = 64 * 1024 * 1024
_LONGEST_TEXT = 500
_EARLIEST = date(1900, 1, 1)

Parser = Callable[[str], Any]


@dataclass(frozen=True, slots=True, kw_only=True)
class Fault:
    """One value that cannot be taken: where it stands, what it is, what would be right."""

    file: str
    line: int
    column: str
    value: str
    message: str

    def __str__(self) -> str:
        column = f", {self.column}" if self.column else ""
        value = f" {self.value!r}" if self.value else ""
        return f"{self.file}, line {self.line}{column}:{value} {self.message}"


@dataclass(frozen=True, slots=True, kw_only=True)
class AnimalRow:
    line: int
    animal: str
    species: str
    sex: Sex
    hatched: tuple[date | None, date | None]
    place: str | None


@dataclass(frozen=True, slots=True, kw_only=True)
class DiaryRow:
    line: int
    animal: str
    date: date
    what: str
    grams: float | None
    note: str | None


def read_animals(
    path: Path, species_of: Callable[[str], str], today: date
) -> tuple[list[AnimalRow], list[Fault]]:
    """Rows of an animals file and the faults in it.

    species_of: from a written species name to a profile's slug; raises ValueError.
    """
    seen: dict[str, int] = {}
    parsers: dict[str, Parser] = {
        "animal": _code,
        "species": species_of,
        "sex": _sex,
        "hatched": partial(_hatched, today),
        "place": _text,
    }
    rows: list[AnimalRow] = []
    file = _CsvFile(path, ANIMAL_COLUMNS)
    for line, values in file.rows(parsers):
        row = AnimalRow(line=line, **values)
        if row.animal in seen:
            message = f"stands on line {seen[row.animal]} already; keep one of the two"
            file.fault(line, "animal", row.animal, message)
        seen.setdefault(row.animal, line)
        rows.append(row)
    return rows, file.faults


def read_diary(
    path: Path, hatched: Mapping[str, date | None], today: date
) -> tuple[list[DiaryRow], list[Fault]]:
    """Rows of a diary file and the faults in it.

    hatched: earliest hatching day of every animal that the diary may speak of.
    """
    parsers: dict[str, Parser] = {
        "animal": partial(_known, hatched),
        "date": partial(_day_not_after, today),
        "what": _what,
        "grams": _grams,
        "note": _text,
    }
    rows: list[DiaryRow] = []
    file = _CsvFile(path, DIARY_COLUMNS)
    for line, values in file.rows(parsers):
        row = DiaryRow(line=line, **values)
        for column, value, message in _contradictions(row, hatched.get(row.animal)):
            file.fault(line, column, value, message)
        rows.append(row)
    return rows, file.faults


def _contradictions(row: DiaryRow, hatched: date | None) -> Iterator[tuple[str, str, str]]:
    """What no single cell shows: a day before hatching, grams that are missing or misplaced."""
    if hatched is not None and row.date < hatched:
        yield "date", str(row.date), f"lies before {row.animal} hatched on {hatched}"
    if row.what == "weighed" and row.grams is None:
        yield "grams", "", "is missing; a weighing needs its grams"
    if row.what not in _WITH_GRAMS and row.grams is not None:
        words = ", ".join(_WITH_GRAMS)
        yield "grams", f"{row.grams:g}", f"does not belong to {row.what!r}; grams go with {words}"


class _CsvFile:
    """One CSV file: gives its parsed rows by line number and gathers its faults."""

    def __init__(self, path: Path, columns: Sequence[str]) -> None:
        self._path = path
        self._columns = columns
        self.faults: list[Fault] = []

    def fault(self, line: int, column: str, value: str, message: str) -> None:
        self.faults.append(
            Fault(file=self._path.name, line=line, column=column, value=value, message=message)
        )

    def rows(self, parsers: Mapping[str, Parser]) -> Iterator[tuple[int, dict[str, Any]]]:
        """Line number and values of every row without a fault."""
        for line, cells in self._cells():
            before = len(self.faults)
            values = {column: self._parsed(line, column, cells, parsers) for column in parsers}
            if len(self.faults) == before:
                yield line, values

    def _parsed(
        self, line: int, column: str, cells: Mapping[str, str], parsers: Mapping[str, Parser]
    ) -> Any:
        try:
            return parsers[column](cells[column])
        except ValueError as error:
            self.fault(line, column, cells[column], str(error))
            return None

    def _cells(self) -> Iterator[tuple[int, dict[str, str]]]:
        text = self._decoded()
        if text is None:
            return
        delimiter = ";" if ";" in text.partition("\n")[0] else ","
        reader = csv.reader(text.splitlines(keepends=True), delimiter=delimiter, strict=True)
        try:
            header = [name.strip().casefold() for name in next(reader, [])]
            if not self._header_fits(header):
                return
            for row in reader:
                if len(row) == len(header):
                    yield reader.line_num, dict(zip(header, map(str.strip, row), strict=True))
                elif any(cell.strip() for cell in row):
                    message = f"has {len(row)} values; {len(header)} are right"
                    self.fault(reader.line_num, "", "", message)
        except csv.Error as error:
            self.fault(max(reader.line_num, 1), "", "", f"cannot be read as CSV ({error})")

    def _header_fits(self, header: Sequence[str]) -> bool:
        if sorted(header) == sorted(self._columns):
            return True
        right = ",".join(self._columns)
        self.fault(1, "", ",".join(header), f"is not the heading; {right} is right")
        return False

    def _decoded(self) -> str | None:
        """The text of the file, or None with a fault that says why it is not UTF-8 text."""
        try:
            if self._path.stat().st_size > _MOST_BYTES:
                self.fault(1, "", "", "is larger than 64 MB; split the file")
                return None
            raw = self._path.read_bytes()
        except OSError as error:
            self.fault(1, "", "", f"cannot be read ({error.strerror}); name an existing file")
            return None
        if raw.startswith((b"\xff\xfe", b"\xfe\xff")):
            self.fault(1, "", "", "is UTF-16 text; save the file as UTF-8")
            return None
        if b"\x00" in raw:
            line = raw[: raw.index(b"\x00")].count(b"\n") + 1
            self.fault(line, "", "", "holds a NUL byte; save the file as plain UTF-8 text")
            return None
        try:
            return raw.decode("utf-8-sig")
        except UnicodeDecodeError as error:
            line = raw[: error.start].count(b"\n") + 1
            value = raw[error.start : error.start + 1].hex()
            self.fault(line, "", f"byte {value}", "is not UTF-8; save the file as UTF-8")
            return None


def _text(written: str) -> str | None:
    if len(written) > _LONGEST_TEXT:
        raise ValueError(f"is {len(written)} characters long; up to {_LONGEST_TEXT} are right")
    return written or None


def _code(written: str) -> str:
    if not written:
        raise ValueError("is missing; every animal needs a code")
    if len(written) > 40:
        raise ValueError("is too long; a code has up to 40 characters")
    return written


def _known(codes: Mapping[str, date | None], written: str) -> str:
    if written not in codes:
        raise ValueError("is not an animal of the animals file or of this book")
    return written


def _sex(written: str) -> Sex:
    try:
        return Sex(written.casefold() or "unknown")
    except ValueError:
        raise ValueError("is not a sex; female, male or unknown is right") from None


def _what(written: str) -> str:
    if written not in WHATS:
        raise ValueError(f"is not something a diary tells; one of {', '.join(WHATS)} is right")
    return written


def _grams(written: str) -> float | None:
    if not written:
        return None
    if not _GRAMS.fullmatch(written):
        raise ValueError("is not a number of grams; digits with a point, such as 41.2, are right")
    if not 0 < float(written) <= _MOST_GRAMS:
        raise ValueError(f"is no possible weight; more than 0 and up to {_MOST_GRAMS:.0f} is right")
    return float(written)


def _iso_day(written: str) -> date:
    if not re.fullmatch(r"\d{4}-\d{2}-\d{2}", written):
        raise ValueError("is not a date; year-month-day such as 2026-03-18 is right")
    try:
        day = date.fromisoformat(written)
    except ValueError:
        raise ValueError("is a day that no calendar has") from None
    if day < _EARLIEST:
        raise ValueError(f"lies before {_EARLIEST}; check the year")
    return day


def _day_not_after(today: date, written: str) -> date:
    day = _iso_day(written)
    if day > today:
        raise ValueError(f"lies in the future of {today}")
    return day


def _hatched(today: date, written: str) -> tuple[date | None, date | None]:
    """First and last day on which it may have hatched: a day, a month, a year, or not known."""
    if not written:
        return None, None
    first, last = _span(written)
    if first > today:
        raise ValueError(f"lies in the future of {today}")
    return first, min(last, today)


def _span(written: str) -> tuple[date, date]:
    if re.fullmatch(r"\d{4}", written):
        return _iso_day(f"{written}-01-01"), date(int(written), 12, 31)
    if re.fullmatch(r"\d{4}-\d{2}", written):
        first = _iso_day(f"{written}-01")
        return first, (first + timedelta(days=31)).replace(day=1) - timedelta(days=1)
    return _iso_day(written), _iso_day(written)
