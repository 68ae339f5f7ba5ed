"""Files, searches and clocks that mean no good: stored exactly, refused by line, never half."""

import csv
import os
import random
import subprocess
import sys
from contextlib import closing
from datetime import UTC, date, datetime, timedelta, timezone
from pathlib import Path

import pytest

from keeper.actions.cells import unguarded
from keeper.actions.finding import found
from keeper.actions.keeping import animal_coded, new_keeping
from keeper.actions.taking_in import take_in
from keeper.husbandry.events import Weighing
from keeper.husbandry.when import at_instant
from keeper.rehearsal.collection import make_collection
from keeper.store.backups import back_up, backups_of
from keeper.store.exchange import batch_keys
from keeper.store.journal import batch
from keeper.store.reading import board, history
from tests.faults.figures import keep
from tests.store.books import tables_of

ROOT = Path(__file__).resolve().parents[2]
NOW = datetime(2026, 11, 25, 14, 30, tzinfo=UTC)
ATOMS = (
    *("=1+1", "+cmd|' /C calc'!A0", "-5.00", "@SUM(A1)", "＝1", "\t=1", "\r", "'", "''", '"', '""'),
    *("'; DROP TABLE animal; --", "%", "_", "\\", "\ufeff", "\u202e", "\u200b", "é", "🐍", "NULL"),
    *("1e999", "31.12.2025", "12/31/25", "2026-02-30", "NaN", "-0", "0", "∞", "٣", "  ", ";", ","),
    *("A", "x" * 600, "\x01", "\x7f", "None", "true", "../../etc/passwd", "\n", "﹣1", "－1"),
)
COLUMNS = ("animal", "date", "what", "grams", "note")
GOOD = {"animal": "A-1", "date": "2026-03-01", "what": "weighed", "grams": "41.2", "note": ""}


def hostile_rows(draw: random.Random, count: int, *, notes_only: bool) -> list[dict[str, str]]:
    """Rows of a diary in which some cells are of the atoms."""
    rows = []
    for number in range(count):
        row = GOOD | {"date": (date(2020, 1, 1) + timedelta(days=number)).isoformat()}
        for name in ("note",) if notes_only else draw.sample(COLUMNS, draw.randint(1, 3)):
            row[name] = "".join(draw.choices(ATOMS, k=draw.choice((1, 1, 2))))
        rows.append(row)
    return rows


def diary_of(path: Path, rows: list[dict[str, str]]) -> Path:
    with path.open("w", encoding="utf-8", newline="") as file:
        writer = csv.DictWriter(file, COLUMNS)
        writer.writeheader()
        writer.writerows(rows)
    return path


@pytest.fixture
def keeping(tmp_path):
    animals = tmp_path / "animals.csv"
    animals.write_text("animal,species,sex,hatched,place\nA-1,house snake,female,2019,\n")
    with closing(new_keeping(tmp_path / "a.book", station="a", now=lambda: NOW)) as made:
        take_in(made, animals=animals, diary=None)
        yield made


def fuzzed(keeping, folder: Path, files: int, seed: int) -> dict[str, int]:
    """Take in *files* hostile diaries, each all or nothing; counts what became of them."""
    draw = random.Random(seed)
    counts = {"cells": 0, "taken": 0, "refused": 0, "half": 0, "untold": 0, "otherwise": 0}
    for _ in range(files):
        rows = hostile_rows(draw, 20, notes_only=False)
        diary = diary_of(folder / "diary.csv", rows)
        before = len(batch_keys(keeping.book))
        looked = take_in(keeping, animals=None, diary=diary, dry_run=True)
        taken = take_in(keeping, animals=None, diary=diary)
        written = len(batch_keys(keeping.book)) - before
        counts["cells"] += len(rows) * len(COLUMNS)
        counts["taken" if written else "refused"] += 1
        counts["half"] += bool(written and taken.faults)
        told = all(fault.line and fault.message for fault in taken.faults)
        counts["untold"] += not (written or (taken.faults and told) or taken.skipped)
        same = (looked.entries, len(looked.faults)) == (taken.entries, len(taken.faults))
        counts["otherwise"] += not same
    return counts


def meant(cell: str) -> str:
    """What a cell says: without outer blanks and without the mark of a guarded one."""
    return unguarded(cell.strip())


def stored_exactly(keeping, folder: Path, cells: int, seed: int) -> tuple[int, int]:
    """Hostile notes one by one: how many were taken, and how many of them read back otherwise."""
    draw = random.Random(seed)
    rows = hostile_rows(draw, cells, notes_only=True)
    kept = {}
    for begin in range(0, cells, 200):
        some = rows[begin : begin + 200]
        faults = take_in(
            keeping, animals=None, diary=diary_of(folder / "d.csv", some), dry_run=True
        ).faults
        bad = {fault.line for fault in faults}
        lines, good = 2, []
        for row in some:
            if lines not in bad:
                good.append(row)
            breaks = row["note"].replace("\r\n", "\n").replace("\r", "\n").count("\n")
            lines += 1 + breaks
        assert take_in(keeping, animals=None, diary=diary_of(folder / "d.csv", good)).faults == ()
        kept |= {row["date"]: row["note"] for row in good}
    animal = board(keeping.book)[0].animal
    read = {
        entry.event.happened.day.isoformat(): entry.event.note
        for entry in history(keeping.book, Weighing, animal)
    }
    return len(kept), sum((read[on] or "") != meant(note) for on, note in kept.items())


CLEAN = {"half": 0, "untold": 0, "otherwise": 0}


def test_a_hostile_diary_is_taken_whole_or_refused_by_line(keeping, tmp_path) -> None:
    counts = fuzzed(keeping, tmp_path, files=20, seed=5)

    assert {name: counts[name] for name in CLEAN} == CLEAN
    assert counts["refused"] > 5


def test_hostile_notes_are_stored_letter_for_letter(keeping, tmp_path) -> None:
    taken, otherwise = stored_exactly(keeping, tmp_path, cells=400, seed=6)

    assert otherwise == 0
    assert taken > 200


@pytest.mark.long
def test_ten_thousand_hostile_cells(keeping, tmp_path) -> None:
    counts = fuzzed(keeping, tmp_path, files=100, seed=7)
    taken, otherwise = stored_exactly(keeping, tmp_path, cells=2000, seed=8)

    keep("F12", **counts, notes_taken=taken, notes_read_otherwise=otherwise)
    assert {name: counts[name] for name in CLEAN} == CLEAN
    assert otherwise == 0


SEARCHES = [
    "".join(random.Random(n).choices(ATOMS + tuple("ab'\"%_*()[]{}^~:-"), k=1 + n % 5))
    for n in range(1000)
]


def test_a_thousand_hostile_searches_find_or_do_not_and_change_nothing(keeping) -> None:
    rows, before = board(keeping.book), tables_of(keeping.book)

    for search in SEARCHES:
        assert all(row in rows for row in found(rows, search))
        try:
            assert animal_coded(keeping, search).code == search
        except LookupError as error:
            assert str(error.args[0]).startswith("No animal")

    assert tables_of(keeping.book) == before


def at_fold(minutes: int, offset_hours: int) -> datetime:
    """Half past two in the night on which the clocks go back, told by its offset."""
    return datetime(2026, 10, 25, 2, minutes, tzinfo=timezone(timedelta(hours=offset_hours)))


def test_the_hour_that_comes_twice_is_two_hours_in_the_book(keeping) -> None:
    animal = board(keeping.book)[0].animal
    with batch(keeping.book, verb="n", keeper="", written=NOW) as writer:
        for offset, grams in ((2, 50.0), (1, 51.0)):
            at = at_instant(at_fold(30, offset))
            writer.add(Weighing(animal=animal, happened=at, weight_g=grams))

    entries = history(keeping.book, Weighing, animal)
    assert [entry.event.weight_g for entry in entries] == [50.0, 51.0]
    assert entries[1].event.happened.at - entries[0].event.happened.at == timedelta(hours=1)
    assert board(keeping.book)[0].weight_g == 51.0


@pytest.mark.parametrize("back", [timedelta(days=1), timedelta(days=3650), -timedelta(days=400)])
def test_a_clock_set_back_or_ahead_loses_and_doubles_nothing(tmp_path, back) -> None:
    with closing(new_keeping(tmp_path / "c.book", station="a", now=lambda: NOW)) as made:
        keys = []
        for written in (NOW, NOW + timedelta(minutes=1), NOW - back, NOW - back, NOW):
            with batch(made.book, verb="n", keeper="", written=written) as writer:
                writer.new_animal()
            keys.append(writer.id)
            back_up(made.book, "close")

        assert sorted(set(keys)) == keys
        assert list(batch_keys(made.book)) == keys
        assert [b.number for b in backups_of(made.book.path)] == [5, 4, 3, 2, 1]


ZONES = ("UTC", "Pacific/Kiritimati", "America/St_Johns", "Pacific/Pago_Pago", "Europe/Berlin")


def test_due_days_are_days_of_the_calendar_in_every_zone(tmp_path) -> None:
    make_collection(tmp_path / "z.book", ends_on=date(2026, 11, 24), animals=12, years=1).close()
    own = os.environ | {"KEEPER_HOME": str(tmp_path / "home")}
    line = [sys.executable, "-m", "keeper", "due", str(tmp_path / "z.book"), "--on", "2026-11-25"]

    told = {
        zone: subprocess.run(
            [*line, "--json"], cwd=ROOT, env=own | {"TZ": zone}, capture_output=True, check=True
        ).stdout
        for zone in ZONES
    }

    assert len(set(told.values())) == 1
    assert len(told["UTC"]) > 1000
