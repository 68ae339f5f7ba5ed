"""The same question put to the program, to plain SQL over naive tables, to polars and to Calc.

The question: of every animal in the room the day it is next due (last meal and interval) and its
last weight. Each answers from its own file on disk: the book, opened anew for each question; a
database of text dates with an index on the animal, which stays open; parquet files, looked into
anew; a sheet sorted by animal and time, so that Calc may search it by halves. Each reads the
columns asked for and no others, and the answers must be equal. What the book pays for is that
an entry keeps the board up to date: that cost is in the line of one entry durable.
"""

import csv
import importlib.util
import json
import sqlite3
import subprocess
import sys
from collections.abc import Callable, Iterable
from contextlib import ExitStack, closing
from dataclasses import dataclass
from datetime import date
from functools import partial
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from benches.books import FOLDER, NIGHT, STATION, Size, book_of, opened
from benches.measuring import Row, Timed, in_turns, ratio_row, skipped, timed
from keeper.actions.keeping import Keeping
from keeper.rules.stages import figures_of, stage_of
from keeper.store import reading
from keeper.store.database import open_book
from keeper.store.rows import EPOCH_DAY
from keeper.store.standing import stands

SUBJECT = "next due days and last weights, beside {}"
ATE = ("taken", "part taken")
CHILD = Path(__file__).with_name("polars_board.py")

Answer = dict[int, tuple[int | None, float | None]]
"""By animal the day it is next due, days since 1970, and its last weight in grams."""


@dataclass(frozen=True, slots=True)
class Records:
    """What a keeper would have written elsewhere: (animal, time as text, day, value)."""

    intervals: dict[int, int]
    meals: list[tuple[int, str, int]]
    weights: list[tuple[int, str, int, float]]


def rows(size: Size, rounds: int, polars_python: str, soffice: str | None) -> list[Row]:
    """One line a rival: the program's seconds divided by the rival's of the same round."""
    with ExitStack() as stack:
        keeping = stack.enter_context(opened(book_of(size)))
        folder = Path(stack.enter_context(TemporaryDirectory(dir=FOLDER)))
        records = _records(keeping)
        answers: dict[str, Callable[[], Answer]] = {
            "program": lambda: ask_program(keeping.book.path, records.intervals),
            "plain SQL": _naive(stack, folder, records),
        }
        missing: dict[str, str] = {}
        if has_polars(polars_python):
            answers["polars"] = _polars(stack, folder, records, polars_python)
        else:
            missing["polars"] = "polars is not installed here; --polars-python names another Python"
        _agree({name: ask() for name, ask in answers.items()})
        took = in_turns(rounds, answers, least_of=3)
        made = [_row(name, size, took) for name in answers if name != "program"]
        if soffice is None:
            missing["LibreOffice Calc"] = "LibreOffice Calc is not installed here"
        else:
            made.append(_beside_calc(folder, records, soffice, answers["program"], size))
    return made + [
        skipped(SUBJECT.format(name), str(size), why, most=1.0) for name, why in missing.items()
    ]


def ask_program(path: Path, intervals: dict[int, int]) -> Answer:
    """The two fields of the board that are asked for, from the book opened anew, and one sum."""
    book = open_book(path, station=STATION, read_only=True, known_whole=True)
    with closing(book):
        fields = reading.board_fields(book, "animal", "eaten_on", "weight_g")
        return {
            animal: (None if eaten_on is None else _day(eaten_on) + intervals[animal], grams)
            for animal, eaten_on, grams in fields
            if animal in intervals
        }


def _day(day: date) -> int:
    return day.toordinal() - EPOCH_DAY


def _records(keeping: Keeping) -> Records:
    intervals = {}
    for row in reading.board(keeping.book):
        profile = keeping.profile(row)
        stage = stage_of(row, profile, NIGHT)
        figures = figures_of(profile, stage, row.sex) if stage is not None else None
        if row.in_the_room and figures is not None:
            intervals[row.animal] = round(figures.interval_days.value)
    return Records(
        intervals=intervals,
        meals=_told(keeping, "offer", "1", f"e.result IN {ATE}", intervals),
        weights=_told(keeping, "weighing", "e.weight_mg / 1000.0", "1", intervals),
    )


def _told(
    keeping: Keeping, table: str, value: str, condition: str, animals: Iterable[int]
) -> list[Any]:
    """Standing entries by animal and time; the book's own order settles equal seconds."""
    found = keeping.book.connection.execute(
        f"""SELECT e.animal, datetime(e.at, 'unixepoch'), e.day, {value} FROM {table} e
            WHERE {condition} AND {stands("e")} ORDER BY e.animal, e.at, e.batch, e.seq"""
    )
    wanted = set(animals)
    return [told for told in found if told[0] in wanted]


def _row(name: str, size: Size, took: Timed) -> Row:
    return ratio_row(
        SUBJECT.format(name),
        str(size),
        {"floor": took[name], "program": took["program"]},
        most=1.0,
        floor=name,
    )


def _agree(answers: dict[str, Answer]) -> None:
    """Raises ValueError where two of them tell an animal differently."""
    ours = answers["program"]
    for name, theirs in answers.items():
        wrong = [animal for animal in ours if not _same(ours[animal], theirs.get(animal))]
        if wrong or len(theirs) != len(ours):
            raise ValueError(f"{name} tells {len(wrong)} of {len(ours)} animals otherwise")


def _same(one: tuple[Any, Any], other: tuple[Any, Any] | None) -> bool:
    if other is None or one[0] != other[0]:
        return False
    if one[1] is None or other[1] is None:
        return one[1] is other[1]
    return bool(abs(one[1] - other[1]) < 1e-6)


NAIVE_TABLES = """
CREATE TABLE animals (animal INTEGER, interval_days INTEGER);
CREATE TABLE meals (animal INTEGER, at TEXT, day INTEGER);
CREATE TABLE weights (animal INTEGER, at TEXT, day INTEGER, grams REAL);
"""
NAIVE_INDEXES = """
CREATE INDEX meals_animal ON meals (animal);
CREATE INDEX weights_animal ON weights (animal);
"""
NAIVE_QUESTION = """
SELECT a.animal, m.day + a.interval_days, w.grams
FROM animals a
LEFT JOIN (SELECT animal, day, max(at) FROM meals GROUP BY animal) m ON m.animal = a.animal
LEFT JOIN (SELECT animal, grams, max(at) FROM weights GROUP BY animal) w ON w.animal = a.animal
"""


def _naive(stack: ExitStack, folder: Path, records: Records) -> Callable[[], Answer]:
    connection = stack.enter_context(closing(sqlite3.connect(folder / "naive.db")))
    connection.executescript(NAIVE_TABLES)
    connection.executemany("INSERT INTO animals VALUES (?, ?)", records.intervals.items())
    connection.executemany("INSERT INTO meals VALUES (?, ?, ?)", [m[:3] for m in records.meals])
    connection.executemany("INSERT INTO weights VALUES (?, ?, ?, ?)", records.weights)
    connection.executescript(NAIVE_INDEXES)
    connection.commit()
    return lambda: {a: (due, g) for a, due, g in connection.execute(NAIVE_QUESTION)}


def has_polars(python: str) -> bool:
    """Whether that Python can import polars."""
    if python == sys.executable:
        return importlib.util.find_spec("polars") is not None
    done = subprocess.run([python, "-c", "import polars"], capture_output=True, check=False)
    return done.returncode == 0


def _polars(stack: ExitStack, folder: Path, records: Records, python: str) -> Callable[[], Answer]:
    """A process with polars loaded; each question is one line in and one line out."""
    write_csv(folder / "animals.csv", ("animal", "interval_days"), records.intervals.items())
    write_csv(folder / "meals.csv", ("animal", "at", "day"), (m[:3] for m in records.meals))
    write_csv(folder / "weights.csv", ("animal", "at", "day", "grams"), records.weights)
    child = stack.enter_context(
        subprocess.Popen(
            [python, str(CHILD), str(folder)],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
        )
    )
    stack.callback(child.terminate)

    def ask() -> Any:
        assert child.stdin is not None and child.stdout is not None
        child.stdin.write("again\n")
        child.stdin.flush()
        told = json.loads(child.stdout.readline())
        return Told((animal, (due, grams)) for animal, due, grams in told["rows"]).after(
            told["seconds"]
        )

    return ask


class Told(Answer):
    """An answer with the seconds that its teller took, the passing of it left out."""

    seconds = 0.0

    def after(self, seconds: float) -> "Told":
        self.seconds = seconds
        return self


def write_csv(path: Path, head: Iterable[str], lines: Iterable[Iterable[object]]) -> None:
    """A file as any sheet or frame reads it."""
    with path.open("w", newline="", encoding="utf-8") as file:
        writer = csv.writer(file)
        writer.writerow(head)
        writer.writerows(lines)


def _beside_calc(
    folder: Path, records: Records, soffice: str, program: Callable[[], Answer], size: Size
) -> Row:
    """Calc opens the sheet, reckons it and writes the answer; once, because it takes long."""
    from benches.calc_sheet import answer_of, write_sheet

    sheet = folder / "sheet.csv"
    write_sheet(sheet, records.intervals, records.meals, records.weights)
    command = [
        soffice,
        "--headless",
        f"-env:UserInstallation={(folder / 'office').as_uri()}",
        *("--convert-to", "csv", "--outdir", str(folder / "answer"), str(sheet)),
    ]
    reckon = partial(subprocess.run, command, capture_output=True, check=True)
    subprocess.run([*command[:-1], str(_a_cell(folder))], capture_output=True, check=False)
    took = {"LibreOffice Calc": [timed(reckon)], "program": [timed(program)]}
    _agree({"program": program(), "LibreOffice Calc": answer_of(folder / "answer" / "sheet.csv")})
    return _row("LibreOffice Calc", size, took)


def _a_cell(folder: Path) -> Path:
    """A sheet to open first: Calc makes its folder of settings then, and ends with a fault."""
    cell = folder / "cell.csv"
    cell.write_text("1\n")
    return cell
