"""Write the book's records out as the two CSV files that can be taken in again."""

import csv
import io
import os
from collections.abc import Iterable, Iterator, Sequence
from contextlib import suppress
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from keeper.actions.cells import guarded
from keeper.actions.keeping import Keeping
from keeper.actions.records_csv import ANIMAL_COLUMNS, DIARY_COLUMNS
from keeper.husbandry.events import Offer, Regurgitation, Result, ShedSign, Weighing
from keeper.husbandry.now import AnimalNow
from keeper.language import tr
from keeper.store import reading
from keeper.store.errors import BookError

_WORDS = {Result.TAKEN: "fed", Result.REFUSED: "refused"}


@dataclass(frozen=True, slots=True, kw_only=True)
class WrittenOut:
    """How much was written. left_out: offers that were neither taken nor refused."""

    animals: int
    entries: int
    left_out: int


def write_out(keeping: Keeping, *, animals: Path | None, diary: Path | None) -> WrittenOut:
    """Write what stands in the book to new files; of a diary day, kind, grams and note.

    Raises:
        BookError: a file of that name is there, or the disk refuses it.
    """
    rows = sorted(reading.board(keeping.book), key=lambda row: row.code)
    left_out: list[Offer] = []
    lines = sorted(line for row in rows for line in _diary_of(keeping, row, left_out))
    if animals is not None:
        _write(animals, ANIMAL_COLUMNS, map(_animal_line, rows))
    if diary is not None:
        _write(diary, DIARY_COLUMNS, ((code, *rest) for _, code, *rest in lines))
    return WrittenOut(
        animals=len(rows) if animals else 0,
        entries=len(lines) if diary else 0,
        left_out=len(left_out) if diary else 0,
    )


def _animal_line(row: AnimalNow) -> tuple[str, ...]:
    return (row.code, row.species, row.sex.value, _hatched(row), row.place or "")


def _hatched(row: AnimalNow) -> str:
    """A day, a month or a year, whatever holds the span in which it may have hatched."""
    first, last = row.hatched_first, row.hatched_last or row.hatched_first
    if first is None or last is None:
        return ""
    if first == last:
        return first.isoformat()
    is_month = (first.year, first.month) == (last.year, last.month)
    return f"{first:%Y-%m}" if is_month else f"{first:%Y}"


Line = tuple[date, str, str, str, str, str]


def _diary_of(keeping: Keeping, row: AnimalNow, left_out: list[Offer]) -> Iterator[Line]:
    book, animal = keeping.book, row.animal
    for offer in (entry.event for entry in reading.history(book, Offer, animal)):
        if offer.result in _WORDS:
            yield _line(row, offer, _WORDS[offer.result], offer.mass_g)
        else:
            left_out.append(offer)
    for weighing in (entry.event for entry in reading.history(book, Weighing, animal)):
        yield _line(row, weighing, "weighed", weighing.weight_g)
    for back in (entry.event for entry in reading.history(book, Regurgitation, animal)):
        yield _line(row, back, "regurgitated", None)
    for sign in (entry.event for entry in reading.history(book, ShedSign, animal)):
        yield _line(row, sign, sign.stage.value, None)


def _line(
    row: AnimalNow,
    event: Offer | Weighing | Regurgitation | ShedSign,
    what: str,
    grams: float | None,
) -> Line:
    told = "" if grams is None else f"{grams:.3f}".rstrip("0").rstrip(".")
    day = event.happened.day
    return (day, row.code, day.isoformat(), what, told, event.note or "")


def _write(path: Path, columns: Sequence[str], lines: Iterable[Sequence[str]]) -> None:
    """UTF-8 with its mark, as spreadsheets expect; whole or not at all, for its owner alone."""
    text = io.StringIO(newline="")
    writer = csv.writer(text)
    writer.writerow(columns)
    writer.writerows([guarded(cell) for cell in line] for line in lines)
    part = path.with_name(f".{path.name}.part")
    try:
        with suppress(FileNotFoundError):
            part.unlink()
        with os.fdopen(os.open(part, os.O_CREAT | os.O_EXCL | os.O_WRONLY, 0o600), "wb") as file:
            file.write(text.getvalue().encode("utf-8-sig"))
            file.flush()
            os.fsync(file.fileno())
        _name(part, path)
    except FileExistsError as error:
        raise BookError(
            tr("{path} is there already; a new file needs a name of its own.", path=path)
        ) from error
    except OSError as error:
        raise BookError(
            tr("{path} could not be written: {error}.", path=path, error=error.strerror)
        ) from error
    finally:
        with suppress(OSError):
            part.unlink()


def _name(part: Path, path: Path) -> None:
    """Give the written file its name, never in place of another."""
    try:
        path.hardlink_to(part)
    except FileExistsError:
        raise
    except OSError:  # a file system without hard links, such as a stick's
        if path.exists():
            raise FileExistsError from None
        part.rename(path)
