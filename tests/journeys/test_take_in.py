"""A keeper takes in records at the command line: wrong first, then right, then again."""

import hashlib
import json
import os
import sqlite3
import subprocess
import sys
from contextlib import closing
from pathlib import Path

import pytest

ANIMALS = """\
animal,species,sex,hatched,place
juno,African house snake,female,2024-05-01,A-1-1
moss,Boaedon capensis,male,2024-05,A-1-2
"""
DIARY = """\
animal;date;what;grams;note
juno;2026-03-01;weighed;182;
juno;2026-03-01;fed;18;"weaner; took it at once"
moss;2026-03-02;refused;;
moss;2026-03-03;opaque;;
"""


class House:
    """A folder with a book, worked through the real program in a process of its own."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.book = folder / "house.book"

    def keeper(self, *arguments: object) -> subprocess.CompletedProcess[str]:
        return subprocess.run(
            [sys.executable, "-m", "keeper", *map(str, arguments)],
            capture_output=True,
            text=True,
            encoding="utf-8",
            env={**os.environ, "KEEPER_HOME": str(self.folder / "home"), "PYTHONUTF8": "1"},
        )

    def write(self, name: str, text: str) -> Path:
        path = self.folder / name
        path.write_text(text, encoding="utf-8")
        return path

    def fingerprint(self) -> str:
        with closing(sqlite3.connect(f"{self.book.as_uri()}?mode=ro", uri=True)) as connection:
            return hashlib.sha256("\n".join(connection.iterdump()).encode()).hexdigest()


@pytest.fixture
def house(tmp_path: Path) -> House:
    made = House(tmp_path)
    assert made.keeper("new", made.book).returncode == 0
    return made


def test_wrong_records_then_right_ones_then_the_same_again(house: House) -> None:
    animals = house.write("animals.csv", ANIMALS)
    wrong = house.write("wrong.csv", DIARY.replace("182", "182g").replace("03-03", "02-30"))
    diary = house.write("diary.csv", DIARY)
    empty = house.fingerprint()

    refused = house.keeper("take-in", house.book, "--animals", animals, "--diary", wrong)
    after_refusal = house.fingerprint()
    taken = house.keeper("take-in", house.book, "--animals", animals, "--diary", diary)
    once = house.fingerprint()
    again = house.keeper("take-in", house.book, "--animals", animals, "--diary", diary)

    assert refused.returncode == 2
    assert refused.stderr.splitlines() == [
        "wrong.csv, line 2, grams: '182g' is not a number of grams;"
        " digits with a point, such as 41.2, are right.",
        "wrong.csv, line 5, date: '2026-02-30' is a day that no calendar has; 2026-02 has 28 days.",
        "Nothing was written: 2 faults to put right.",
    ]
    assert after_refusal == empty
    assert taken.stdout == "Took in 2 animals and 4 entries.\n"
    assert again.stdout == "Nothing new: all 6 rows stand in the book already.\n"
    assert house.fingerprint() == once != empty
    assert house.keeper("check", house.book).returncode == 0


def test_a_dry_run_says_what_would_be_and_json_says_it_to_a_script(house: House) -> None:
    animals = house.write("animals.csv", ANIMALS)
    diary = house.write("diary.csv", DIARY + "moss;29/02;shed;;\n")
    before = house.fingerprint()

    dry = house.keeper("take-in", house.book, "--animals", animals, "--dry-run", "--json")
    faulty = house.keeper(
        "take-in", house.book, "--animals", animals, "--diary", diary, "--json"
    )  # fmt: skip

    assert json.loads(dry.stdout) == {"animals": 2, "entries": 0, "skipped": 0, "errors": []}
    assert faulty.returncode == 2
    assert json.loads(faulty.stdout) == {
        "animals": 0,
        "entries": 0,
        "skipped": 0,
        "errors": [
            {
                "file": "diary.csv",
                "line": 6,
                "column": "date",
                "value": "29/02",
                "message": "'29/02' is not a date; year-month-day, such as 2026-03-18, is right.",
            }
        ],
    }
    assert house.fingerprint() == before


@pytest.mark.parametrize(
    ("content", "told"),
    [
        (b"", "is an empty file, not a book"),
        (b"PK\x03\x04" + b"spreadsheet" * 99, "cannot be read as a book"),
        (None, "There is no book at"),
    ],
    ids=["empty", "foreign", "missing"],
)
def test_what_is_no_book_is_left_as_it_is(house: House, content: bytes | None, told: str) -> None:
    other = house.folder / "other.book"
    if content is not None:
        other.write_bytes(content)

    said = house.keeper("due", other, "--on", "2026-03-18")

    assert (said.returncode, said.stdout) == (2, "")
    assert told in said.stderr
    assert (other.read_bytes() if other.exists() else None) == content


def test_a_book_of_a_newer_keeper_is_left_as_it_is(house: House) -> None:
    with closing(sqlite3.connect(house.book)) as connection:
        connection.execute("PRAGMA user_version = 999")
    before = house.book.read_bytes()

    said = house.keeper("take-in", house.book, "--animals", house.write("a.csv", ANIMALS))

    assert said.returncode == 2
    assert "written by a newer keeper" in said.stderr
    assert house.book.read_bytes() == before


def test_a_cut_off_book_is_left_as_it_is(house: House) -> None:
    house.book.write_bytes(house.book.read_bytes()[:-1000])
    before = house.book.read_bytes()

    said = house.keeper("take-in", house.book, "--animals", house.write("a.csv", ANIMALS))

    assert said.returncode == 2
    assert house.book.read_bytes() == before


def test_a_reader_that_stops_early_is_no_fault(house: House) -> None:
    house.keeper("take-in", house.book, "--animals", house.write("a.csv", ANIMALS))
    command = [sys.executable, "-m", "keeper", "due", str(house.book), "--on", "2026-03-18"]

    with subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE) as running:
        assert running.stdout is not None and running.stderr is not None
        running.stdout.close()
        told = running.stderr.read()

    assert told == b""
