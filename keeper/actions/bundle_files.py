"""A whole book as a folder: a CSV file for each kind of entry, the readings, and the photos.

The same folder serves a spreadsheet, an archive and another machine. Every file is named by
this program: nothing that a folder says is ever used as a path, links are not followed, and
files of other names are not looked at.
"""

import csv
import os
import shutil
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import chain
from pathlib import Path
from typing import Any

from keeper.actions import bundle_cells as cells
from keeper.actions.bundle_cells import BATCHES, COVER, READINGS, WITHDRAWALS, cell
from keeper.actions.bundle_rows import (
    Reader,
    batches_reader,
    cover_reader,
    entries_reader,
    readings_reader,
    rows_in,
    withdrawals_reader,
)
from keeper.actions.keeping import Keeping
from keeper.actions.photos import SUFFIX, photo_of, photos_folder
from keeper.husbandry.events import Remark, RemarkKind
from keeper.husbandry.reasons import Figure, because
from keeper.reports.words import sentence
from keeper.store import reading, whole
from keeper.store.copies import private_copy
from keeper.store.documents import NotADocument, entry_json, refuse_gaps
from keeper.store.durable import copy_durably, sync
from keeper.store.errors import BookError
from keeper.store.journal import BatchId
from keeper.store.readings_out import write_out_readings
from keeper.store.rows import TABLES
from keeper.store.standing import WHOLE
from keeper.store.tabled import Row, Tabled
from keeper.store.ticking import Counting, Step, Tick, silent
from keeper.store.whole import count_of

FORMAT, VERSION = "keeper bundle", 1
PHOTOS = "photos"


@dataclass(frozen=True, slots=True, kw_only=True)
class Bundle:
    """What a folder holds, each batch checked by itself. photos: the folder of its pictures."""

    batches: Tabled
    readings: tuple[dict[str, Any], ...]
    photos: Path


@dataclass(frozen=True, slots=True, kw_only=True)
class Bundled:
    """How much was written out."""

    folder: Path
    batches: int
    entries: int
    animals: int
    readings: int
    photos: int


def write_bundle(keeping: Keeping, folder: Path, tick: Tick = silent) -> Bundled:
    """Write all that the book holds now to the new folder *folder*; whole or not at all.

    Raises:
        BookError: something of that name is there, or the disk refuses it.
    """
    folder = folder.absolute()
    part = folder.with_name(f".{folder.name or 'book'}.part")
    if folder.exists() or folder.is_symlink():
        raise _wrong("bundle is there", path=str(folder))
    try:
        shutil.rmtree(part, ignore_errors=True)
        part.mkdir(mode=0o700)
        with private_copy(keeping.book) as still:
            at_once = replace(keeping, book=still)
            done = _written(at_once, part, folder, Counting(tick, Step.WRITING, count_of(still)))
        sync(part)
        part.rename(folder)
        sync(folder.parent)
    except OSError as error:
        raise _wrong("bundle refused", path=str(folder), told=error.strerror or "?") from error
    finally:
        shutil.rmtree(part, ignore_errors=True)
    return done


def read_bundle(folder: Path, tick: Tick = silent) -> Bundle:
    """Read the folder *folder*; whether a book can take it in is not asked.

    Raises:
        NotADocument: it is no such folder, or a file of it cannot be read, by file and line.
    """
    cover = [row for rows in rows_in(folder, cover_reader()) for row in rows]
    if len(cover) != 1 or cover[0][0] != FORMAT:
        raise _wrong("no bundle", path=str(folder))
    _, version, batches, days = cover[0]
    if version != str(VERSION):
        raise _wrong("bundle newer", path=str(folder), version=str(version)[:20])
    told = _batches(folder, tick)
    readings = tuple(day for rows in rows_in(folder, readings_reader()) for day in rows)
    for name, expected, found in ((BATCHES, batches, told.heads), (READINGS, days, readings)):
        _refuse_short(name, expected, len(found))
    return Bundle(batches=told, readings=readings, photos=folder / PHOTOS)


def _written(keeping: Keeping, part: Path, folder: Path, counting: Counting) -> Bundled:
    counts: dict[int, int] = {}
    book = keeping.book
    for kind in TABLES:
        _write_kind(keeping, part, kind, counts, counting)
    withdrawals = _write_withdrawals(keeping, part)
    batches = list(whole.every_batch(book))
    _write(
        part / f"{BATCHES}.csv",
        cells.BATCH_COLUMNS,
        (_batch_row(each, counts, withdrawals) for each in batches),
    )
    probes = whole.probes_read(book)
    days = [each for probe in probes for each in write_out_readings(book, probe)]
    _write(part / f"{READINGS}.csv", cells.READING_COLUMNS, map(cells.reading_row, days))
    cover = (FORMAT, str(VERSION), str(len(batches)), str(len(days)))
    _write(part / f"{COVER}.csv", cells.COVER_COLUMNS, [cover])
    return Bundled(
        folder=folder,
        batches=len(batches),
        entries=sum(counts.values()),
        animals=sum(len(each.animals) for each in batches),
        readings=sum(value is not None for each in days for value in each["hundredths"]),
        photos=_copy_photos(keeping, part / PHOTOS),
    )


def _write_kind(
    keeping: Keeping, part: Path, kind: type[Any], counts: dict[int, int], counting: Counting
) -> None:
    """The table of one kind, if it has a line; its lines are counted by batch."""
    table = TABLES[kind]
    fields = reading.board_fields(keeping.book, "animal", "name", "code")
    called = {animal: name or code for animal, name, code in fields}

    def lines() -> Iterator[tuple[str, ...]]:
        for entry in counting.each(whole.every_entry(keeping.book, kind)):
            batch, said = entry.key.batch, entry_json(entry.key.seq, entry.event)
            who = called.get(getattr(entry.event, "animal", 0), "")
            counts[batch] = counts.get(batch, 0) + 1
            yield cells.entry_row(table, batch, said, stands=entry.stands, called=who)

    told = lines()
    first = next(told, None)
    if first is not None:
        _write(part / f"{table}.csv", cells.entry_columns(table), chain([first], told))


def _write_withdrawals(keeping: Keeping, part: Path) -> dict[int, int]:
    counts: dict[int, int] = {}
    lines = []
    for batch, seq, target in whole.every_withdrawal(keeping.book):
        target_seq = None if target.seq == WHOLE else target.seq
        lines.append(tuple(map(cell, (batch, seq, target.batch, target_seq))))
        counts[batch] = counts.get(batch, 0) + 1
    _write(part / f"{WITHDRAWALS}.csv", cells.WITHDRAWAL_COLUMNS, lines)
    return counts


def _batch_row(
    each: whole.WholeBatch, entries: dict[int, int], withdrawals: dict[int, int]
) -> tuple[str, ...]:
    batch = each.batch
    told = (
        *(batch.id, batch.stands, batch.station, batch.keeper, batch.verb),
        batch.written.isoformat(timespec="milliseconds"),
        batch.reason,
    )
    brought = (" ".join(map(str, keys)) for keys in (each.animals, each.rounds))
    counts = (entries.get(batch.id, 0), withdrawals.get(batch.id, 0))
    return (*map(cell, told), *brought, *map(str, counts))


def _copy_photos(keeping: Keeping, there: Path) -> int:
    """The picture of every entry that names one, whether the entry stands or not."""
    if not photos_folder(keeping).is_dir():
        return 0
    there.mkdir(mode=0o700)
    copied = set()
    for entry in whole.every_entry(keeping.book, Remark):
        is_photo = entry.event.kind is RemarkKind.PHOTO
        path = photo_of(keeping, entry.event) if is_photo else None
        if path is not None and path.name not in copied:
            copy_durably(path, there / path.name)
            copied.add(path.name)
    return len(copied)


def photo_in(bundle: Bundle, digest: str) -> Path | None:
    """The picture of that SHA-256, given in hexadecimal digits, where the folder has it."""
    path = bundle.photos / f"{digest}{SUFFIX}"
    is_there = not bundle.photos.is_symlink() and not path.is_symlink() and path.is_file()
    return path if is_there else None


def _batches(folder: Path, tick: Tick) -> Tabled:
    """Every batch with its entries and withdrawals, each counted against its own row."""
    heads, rows, expected = _heads(folder)
    lines = sum(count for _, *counts in expected for count in counts)
    counting = Counting(tick, Step.READING, lines)
    told: dict[str, dict[BatchId, list[int]]] = {"entries": {}, "withdrawals": {}}
    for table in TABLES.values():
        reader = entries_reader(table)
        rows[table] = _told_by_batch(folder, reader, heads, told["entries"], counting)
    reader = withdrawals_reader()
    rows["withdrawal"] = _told_by_batch(folder, reader, heads, told["withdrawals"], counting)
    counting = Counting(tick, Step.CHECKING, lines)
    for batch, *counts in expected:
        counting.more(sum(counts))
        for (name, numbers), count in zip(told.items(), counts, strict=True):
            found = numbers.get(batch, [])
            _refuse_short(f"{BATCHES} {batch}", count, len(found))
            refuse_gaps(batch, name, found)
    return Tabled(heads=heads, rows=rows)


def _heads(folder: Path) -> tuple[dict[BatchId, Row], dict[str, list[Row]], list[Any]]:
    """Each batch's own row, the rows of what they brought, and how much each is to tell."""
    heads: dict[BatchId, Row] = {}
    rows: dict[str, list[Row]] = {"animal": [], "round": []}
    expected = []
    for some in rows_in(folder, batches_reader()):
        for head, animals, rounds, *counts in some:
            batch = head[0]
            heads[batch] = head
            rows["animal"] += [(key, batch) for key in animals]
            rows["round"] += [(key, batch) for key in rounds]
            expected.append((batch, *counts))
    return heads, rows, expected


def _told_by_batch(
    folder: Path,
    reader: Reader,
    heads: Mapping[BatchId, Row],
    numbers: dict[BatchId, list[int]],
    counting: Counting,
) -> list[Row]:
    """The rows of one table; the number of each is added to its batch's."""
    batch_at, seq_at = (reader.cells.index(name) for name in ("batch", "seq"))
    found: list[Row] = []
    for rows in rows_in(folder, reader):
        for row in rows:
            numbers.setdefault(row[batch_at], []).append(row[seq_at])
        stray = {row[batch_at] for row in rows} - heads.keys()
        if stray:
            raise _wrong("bundle stray line", file=f"{reader.name}.csv", batch=str(min(stray)))
        found += rows
        counting.more(len(rows))
    return found


def _refuse_short(name: str, expected: int, found: int) -> None:
    if expected != found:
        raise _wrong("bundle short", file=name, count=expected, found=found)


def _write(path: Path, columns: Sequence[str], lines: Iterable[Sequence[str]]) -> None:
    """UTF-8 with its mark, as spreadsheets expect, for its owner alone."""
    handle = os.open(path, os.O_CREAT | os.O_EXCL | os.O_WRONLY, 0o600)
    with os.fdopen(handle, "w", encoding="utf-8-sig", newline="") as file:
        writer = csv.writer(file)
        writer.writerow(columns)
        writer.writerows(lines)
        file.flush()
        os.fsync(file.fileno())


def _wrong(why: str, /, **figures: Figure) -> BookError:
    kind = BookError if why in ("bundle is there", "bundle refused") else NotADocument
    return kind(sentence(because(why, **figures)))
