"""Read a keeper's own records from CSV files: every row taken, or every fault named.

animals: animal,species,sex,hatched,place    diary: animal,date,what,grams,note
UTF-8 with or without BOM, comma or semicolon, ISO dates; hatched may be a month or a year.
"""

import re
import unicodedata
from calendar import monthrange
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from datetime import date
from functools import lru_cache, partial
from pathlib import Path
from typing import Any

from keeper.actions.cells import unguarded
from keeper.actions.csv_file import CsvFile, Fault, Wrong
from keeper.husbandry.animal import Sex

ANIMAL_COLUMNS = ("animal", "species", "sex", "hatched", "place")
DIARY_COLUMNS = ("animal", "date", "what", "grams", "note")
WHATS = ("fed", "refused", "regurgitated", "weighed", "dull", "opaque", "cleared", "shed")
_WITH_GRAMS = ("fed", "refused", "weighed")
_GRAMS = re.compile(r"[0-9]{1,6}(\.[0-9]{1,3})?")
_SIGNED = re.compile(r"[-+\u2212][0-9.]+")
_DAY = re.compile(r"([0-9]{4})-([0-9]{2})-([0-9]{2})")
_MONTH = re.compile(r"([0-9]{4})-([0-9]{2})")
_YEAR = re.compile(r"[0-9]{4}")
_MOST_GRAMS = 200_000.0
_LONGEST_TEXT = 500
_LONGEST_CODE = 40
_EARLIEST = date(1900, 1, 1)

Hatched = tuple[date | None, date | None]


@dataclass(frozen=True, slots=True, kw_only=True)
class AnimalRow:
    line: int
    animal: str
    species: str
    sex: Sex
    hatched: Hatched
    place: str | None


@dataclass(frozen=True, slots=True, kw_only=True)
class DiaryRow:
    line: int
    animal: str
    date: date
    what: str
    grams: float | None
    note: str | None


@dataclass(frozen=True, slots=True, kw_only=True)
class AnimalsRead:
    """An animals file. codes: every code in it, those of faulty rows too.

    whole: it was read to its end, so a code that is not in codes is not in the file.
    """

    rows: list[AnimalRow] = field(default_factory=list)
    faults: list[Fault] = field(default_factory=list)
    codes: Mapping[str, int] = field(default_factory=dict)
    whole: bool = True


@dataclass(frozen=True, slots=True, kw_only=True)
class Spoken:
    """Which animals a diary may speak of.

    hatched: earliest hatching day by code, None where not known. all_known: other codes are
    faults. ambiguous: codes that several animals of the book bear, with how many.
    """

    hatched: Mapping[str, date | None]
    all_known: bool = True
    ambiguous: Mapping[str, int] = field(default_factory=dict)


def read_animals(path: Path, species_of: Callable[[str], str], today: date) -> AnimalsRead:
    """Rows of an animals file and the faults in it.

    species_of: from a written species name to a profile's slug; raises Wrong.
    """
    file = CsvFile(path, ANIMAL_COLUMNS)
    parsers: dict[str, Callable[[str], Any]] = {
        "animal": code_of,
        "species": species_of,
        "sex": sex_of,
        "hatched": partial(_hatched, today),
        "place": _place,
    }
    rows: list[AnimalRow] = []
    codes: dict[str, int] = {}
    for line, cells in _plain(file):
        values = file.parsed(line, cells, parsers)
        code = unicodedata.normalize("NFC", cells["animal"])
        if code in codes:
            file.fault(line, "animal", code, "twice", line=codes[code])
        elif values is not None:
            rows.append(AnimalRow(line=line, **values))
        codes.setdefault(code, line)
    return AnimalsRead(rows=rows, faults=file.faults, codes=codes, whole=file.whole)


def read_diary(path: Path, spoken: Spoken, today: date) -> tuple[list[DiaryRow], list[Fault]]:
    """Rows of a diary file and the faults in it."""
    file = CsvFile(path, DIARY_COLUMNS)
    parsers: dict[str, Callable[[str], Any]] = {
        "animal": partial(_known, spoken),
        "date": partial(_day_not_after, today),
        "what": _what,
        "grams": grams_of,
        "note": _note,
    }
    rows: list[DiaryRow] = []
    for line, cells in _plain(file):
        values = file.parsed(line, cells, parsers)
        if values is None:
            continue
        row = DiaryRow(line=line, **values)
        for column, wrong in _contradictions(row, spoken.hatched.get(row.animal)):
            file.fault(line, column, cells[column], wrong.why, **wrong.figures)
        rows.append(row)
    return rows, file.faults


def _plain(file: CsvFile) -> Iterator[tuple[int, dict[str, str]]]:
    """Cells without the mark that keeps a spreadsheet from running them."""
    for line, cells in file.cells():
        yield line, {column: unguarded(cell) for column, cell in cells.items()}


def _contradictions(row: DiaryRow, hatched: date | None) -> Iterator[tuple[str, Wrong]]:
    """What no single cell shows: a day before hatching, grams that are missing or misplaced."""
    if hatched is not None and row.date < hatched:
        yield "date", Wrong("before hatching", animal=row.animal, hatched=hatched)
    if row.what == "weighed" and row.grams is None:
        yield "grams", Wrong("grams missing")
    if row.what not in _WITH_GRAMS and row.grams is not None:
        yield "grams", Wrong("grams misplaced", what=row.what, right=", ".join(_WITH_GRAMS))


def code_of(written: str) -> str:
    """An animal's code; composed, so that two ways to type one letter are one code."""
    if not written:
        raise Wrong("no code")
    return unicodedata.normalize("NFC", _seen(_short(written, _LONGEST_CODE)))


def sex_of(written: str) -> Sex:
    """A sex; an empty cell is not known."""
    try:
        return Sex(written.casefold() or "unknown")
    except ValueError:
        raise Wrong("unknown sex") from None


def grams_of(written: str) -> float | None:
    """Grams to a milligram; None for an empty cell."""
    if not written:
        return None
    if _SIGNED.fullmatch(written):
        raise Wrong("impossible grams", most=_MOST_GRAMS)
    if not _GRAMS.fullmatch(written):
        raise Wrong("not grams")
    if not 0 < float(written) <= _MOST_GRAMS:
        raise Wrong("impossible grams", most=_MOST_GRAMS)
    return float(written)


@lru_cache(maxsize=20_000)
def day_of(written: str) -> date:
    """A day of the calendar, year-month-day."""
    match = _DAY.fullmatch(written)
    if match is None:
        raise Wrong("not a day")
    year, month, day = map(int, match.groups())
    try:
        found = date(year, month, day)
    except ValueError:
        raise _no_such_day(year, month) from None
    if found < _EARLIEST:
        raise Wrong("too early", earliest=_EARLIEST)
    return found


def _no_such_day(year: int, month: int) -> Wrong:
    if not (1 <= month <= 12 and year):
        return Wrong("no such day")
    return Wrong("no such day", month=f"{year:04}-{month:02}", count=monthrange(year, month)[1])


def _short(written: str, most: int) -> str:
    if len(written) > most:
        raise Wrong("too long", length=len(written), most=most)
    return written


def _seen(written: str) -> str:
    if not written.isprintable():
        raise Wrong("unseen character")
    return written


def _place(written: str) -> str | None:
    return _seen(_short(written, _LONGEST_CODE)) or None


def _note(written: str) -> str | None:
    """Line breaks and tabs are a keeper's own; other control characters are an accident."""
    for character in _short(written, _LONGEST_TEXT):
        if unicodedata.category(character) == "Cc" and character not in "\n\r\t":
            raise Wrong("unseen character")
    return written or None


def _known(spoken: Spoken, written: str) -> str:
    code = code_of(written)
    if code in spoken.ambiguous:
        raise Wrong("code borne twice", count=spoken.ambiguous[code])
    if spoken.all_known and code not in spoken.hatched:
        raise Wrong("unknown animal")
    return code


def _what(written: str) -> str:
    word = written.casefold()
    if word not in WHATS:
        raise Wrong("unknown what", right=", ".join(WHATS))
    return word


def _day_not_after(today: date, written: str) -> date:
    day = day_of(written)
    if day > today:
        raise Wrong("in the future", today=today)
    return day


def _hatched(today: date, written: str) -> Hatched:
    """First and last day on which it may have hatched: a day, a month, a year, or not known."""
    if not written:
        return None, None
    first, last = _span(written)
    if first > today:
        raise Wrong("in the future", today=today)
    return first, min(last, today)


def _span(written: str) -> tuple[date, date]:
    if _YEAR.fullmatch(written):
        return day_of(f"{written}-01-01"), day_of(f"{written}-12-31")
    if _MONTH.fullmatch(written):
        first = day_of(f"{written}-01")
        return first, first.replace(day=monthrange(first.year, first.month)[1])
    return day_of(written), day_of(written)
