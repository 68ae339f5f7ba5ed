"""One CSV file a keeper hands over: its cells by line, and every fault in it named.

UTF-8 with or without BOM, comma or semicolon, any line ends, quotes as RFC 4180 has them.
"""

import csv
import io
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from keeper.husbandry.reasons import Figure, Reason, because
from keeper.reports.words import sentence

_MOST_MB = 256
_BYTES_A_MB = 1024 * 1024
_UTF16_MARKS = (b"\xff\xfe", b"\xfe\xff")


class Wrong(ValueError):
    """A value that cannot be taken: the name of its sentence, and the figures of it."""

    def __init__(self, why: str, /, **figures: Figure) -> None:
        super().__init__(why)
        self.why = why
        self.figures = figures

    def __str__(self) -> str:
        return sentence(Reason(self.why, self.figures))


@dataclass(frozen=True, slots=True, kw_only=True)
class Fault:
    """Where a value stands that cannot be taken, and the sentence that says what would be right.

    column and value are empty where the fault is the whole line's or the file's.
    """

    file: str
    line: int
    column: str
    value: str
    message: str

    def __str__(self) -> str:
        why = "fault at a column" if self.column else "fault of a line"
        return sentence(
            because(why, file=self.file, line=self.line, column=self.column, message=self.message)
        )


class CsvFile:
    """Reads one file; faults gather in *faults*. whole: it could be read to its end."""

    def __init__(self, path: Path, columns: Sequence[str]) -> None:
        self._path = path
        self._columns = columns
        self.faults: list[Fault] = []
        self.whole = True

    def fault(self, line: int, column: str, value: str, why: str, /, **figures: Figure) -> None:
        message = sentence(Reason(why, {**figures, "value": value}))
        self.faults.append(
            Fault(file=self._path.name, line=line, column=column, value=value, message=message)
        )

    def cells(self) -> Iterator[tuple[int, dict[str, str]]]:
        """First line and stripped cells of every row that has as many as the heading."""
        text = self._text()
        if text is None:
            return
        delimiter = ";" if ";" in text.partition("\n")[0] else ","
        reader = csv.reader(io.StringIO(text, newline=""), delimiter=delimiter, strict=True)
        begins = 1
        try:
            heading = [name.strip().casefold() for name in next(reader, [])]
            if not self._is_heading(heading):
                return
            begins = reader.line_num + 1
            for row in reader:
                cells = [cell.strip() for cell in row]
                if len(cells) == len(heading) and any(cells):
                    yield begins, dict(zip(heading, cells, strict=True))
                elif any(cells):
                    self._wrong_count(begins, len(cells), delimiter)
                begins = reader.line_num + 1
        except csv.Error as error:
            self._unreadable(begins, "", "not CSV", why=str(error))

    def parsed(
        self, line: int, cells: Mapping[str, str], parsers: Mapping[str, Callable[[str], Any]]
    ) -> dict[str, Any] | None:
        """The values of a row; None, with every fault of it told, when one cannot be taken."""
        values: dict[str, Any] = {}
        for column, parser in parsers.items():
            try:
                values[column] = parser(cells[column])
            except Wrong as wrong:
                self.fault(line, column, cells[column], wrong.why, **wrong.figures)
        return values if len(values) == len(parsers) else None

    def _wrong_count(self, line: int, have: int, delimiter: str) -> None:
        name = "semicolon" if delimiter == ";" else "comma"
        need = len(self._columns)
        self.fault(line, "", "", "wrong number of values", have=have, need=need, delimiter=name)

    def _is_heading(self, heading: Sequence[str]) -> bool:
        if sorted(heading) == sorted(self._columns):
            return True
        right, written = ",".join(self._columns), ",".join(heading)
        self._unreadable(1, written, "wrong heading" if written else "file empty", right=right)
        return False

    def _unreadable(self, line: int, value: str, why: str, /, **figures: Figure) -> None:
        self.whole = False
        self.fault(line, "", value, why, **figures)

    def _text(self) -> str | None:
        """The text of the file, or None with a fault that says why it is not UTF-8 text."""
        raw = self._bytes()
        if raw is None:
            return None
        if raw.startswith(_UTF16_MARKS) or _is_wide(raw[:1000]):
            self._unreadable(1, "", "file in UTF-16")
            return None
        if b"\x00" in raw:
            self._unreadable(_line_of(raw, raw.index(b"\x00")), "", "file with NUL")
            return None
        try:
            return raw.decode("utf-8-sig")
        except UnicodeDecodeError as error:
            line, byte = _line_of(raw, error.start), raw[error.start]
            guess = _guess(byte)
            self._unreadable(line, "", "file not UTF-8", byte=f"{byte:02X}", guess=guess)
            return None

    def _bytes(self) -> bytes | None:
        try:
            if self._path.exists() and not self._path.is_file():
                self._unreadable(1, "", "file cannot be read", why="it is not a file")
                return None
            if self._path.stat().st_size > _MOST_MB * _BYTES_A_MB:
                self._unreadable(1, "", "file too large", most_mb=_MOST_MB)
                return None
            return self._path.read_bytes()
        except OSError as error:
            self._unreadable(1, "", "file cannot be read", why=error.strerror)
            return None


def _is_wide(raw: bytes) -> bool:
    """UTF-16 without its mark: every second byte of plain text is nought, the others are not."""
    noughts = sorted((raw[0::2].count(0), raw[1::2].count(0)))
    return len(raw) >= 4 and noughts[1] > 0.4 * len(raw) and noughts[0] < 0.1 * len(raw)


def _line_of(raw: bytes, offset: int) -> int:
    return raw.count(b"\n", 0, offset) + 1


def _guess(byte: int) -> str | None:
    """What the byte would be in the code page that many spreadsheets still save in."""
    try:
        return bytes([byte]).decode("cp1252")
    except UnicodeDecodeError:
        return None
