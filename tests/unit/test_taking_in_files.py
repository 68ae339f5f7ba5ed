"""Every way a keeper's files can be wrong gets one sentence, and nothing is written."""

from pathlib import Path

import pytest

from keeper.actions.keeping import Keeping
from keeper.actions.taking_in import take_in
from keeper.reports.figures import plain
from tests.unit.taking_in import ANIMALS, ASH, DIARY, keeping, taken, the_fault, told_by

__all__ = ["keeping"]

CELLS = [
    # file, the row that is wrong, column, value, what would be right
    ("diary", "ash,2026-02-30,fed,3,\n", "date", "2026-02-30", "2026-02 has 28 days"),
    ("diary", "ash,29/02,fed,3,\n", "date", "29/02", "such as 2026-03-18"),
    ("diary", "ash,2026-13-01,fed,3,\n", "date", "2026-13-01", "01 to 12"),
    ("diary", "ash,2026-3-1,fed,3,\n", "date", "2026-3-1", "such as 2026-03-18"),
    ("diary", "ash,,fed,3,\n", "date", "", "such as 2026-03-18"),
    ("diary", "ash,2026-03-19,fed,3,\n", "date", "2026-03-19", "after today, 18 Mar 2026"),
    ("diary", "ash,2025-06-30,fed,3,\n", "date", "2025-06-30", "1 Jul 2025 at the earliest"),
    ("diary", "ash,0026-03-01,fed,3,\n", "date", "0026-03-01", "check the year"),
    ("diary", "ash,2026-03-01,weighed,0,\n", "grams", "0", "more than 0 g"),
    ("diary", "ash,2026-03-01,weighed,-5,\n", "grams", "-5", "more than 0 g"),
    ("diary", 'ash,2026-03-01,weighed,"41,2",\n', "grams", "41,2", "such as 41.2"),
    ("diary", "ash,2026-03-01,weighed,1e9,\n", "grams", "1e9", "such as 41.2"),
    ("diary", "ash,2026-03-01,weighed,412g,\n", "grams", "412g", "such as 41.2"),
    ("diary", "ash,2026-03-01,weighed,nan,\n", "grams", "nan", "such as 41.2"),
    ("diary", "ash,2026-03-01,weighed,٤١,\n", "grams", "٤١", "such as 41.2"),
    ("diary", "ash,2026-03-01,weighed,999999,\n", "grams", "999999", "up to 200,000 g"),
    ("diary", "ash,2026-03-01,weighed,,\n", "grams", "", "needs its grams"),
    ("diary", "ash,2026-03-01,shed,4,\n", "grams", "4", "fed, refused, weighed"),
    ("diary", "ash,2026-03-01,ate,4,\n", "what", "ate", "fed, refused, regurgitated"),
    ("diary", "asch,2026-03-01,fed,4,\n", "animal", "asch", "correct its code"),
    ("diary", ",2026-03-01,fed,4,\n", "animal", "", "every animal needs one"),
    ("diary", "ash,2026-03-01,fed,4,a\x07b\n", "note", "a\x07b", "type it anew"),
    ("animals", "elm,hedgehog,male,2025-07-01,\n", "species", "hedgehog", "corn snake"),
    ("animals", "elm,corn snake,hen,2025-07-01,\n", "sex", "hen", "female, male or unknown"),
    ("animals", "elm,corn snake,male,2026-07-01,\n", "hatched", "2026-07-01", "after today"),
    ("animals", "elm,corn snake,male,30.02.2025,\n", "hatched", "30.02.2025", "year-month-day"),
    ("animals", "ash,corn snake,female,2025-07-01,\n", "animal", "ash", "on line 2 already"),
    ("animals", ",corn snake,female,2025-07-01,\n", "animal", "", "every animal needs one"),
    ("animals", f"{'x' * 41},corn snake,female,,\n", "animal", "x" * 41, "up to 40"),
]


@pytest.mark.parametrize(("file", "row", "column", "value", "right"), CELLS)
def test_a_value_that_cannot_be_taken_is_told_and_nothing_written(
    keeping: Keeping, file: str, row: str, column: str, value: str, right: str
) -> None:
    before = told_by(keeping)
    animals = ANIMALS + ASH + (row if file == "animals" else "")
    diary = DIARY + "ash,2026-03-01,fed,4,\n" + (row if file == "diary" else "")

    fault = the_fault(taken(keeping, animals, diary))

    assert (fault.file, fault.line, fault.column) == (f"{file}.csv", 3, column)
    assert fault.value == value
    assert right in plain(fault.message)
    assert told_by(keeping) == before


FILES = [
    # name, content, line, words of the sentence
    ("empty", b"", 1, "must read animal,date,what,grams,note"),
    ("UTF-16 with its mark", (DIARY + "ash,2026-03-01,fed,4,\n").encode("utf-16"), 1, "UTF-16"),
    ("UTF-16 without", (DIARY + "ash,2026-03-01,fed,4,\n").encode("utf-16-le"), 1, "UTF-16"),
    ("cp1252", (DIARY + "ash,2026-03-01,fed,4,für sie\n").encode("cp1252"), 2, "ü in Windows-1252"),
    ("no code page", DIARY.encode() + b"ash,2026-03-01,fed,4,\x81\n", 2, "Byte 81 is no UTF-8"),
    ("NUL", DIARY.encode() + b"ash,2026-03-01,fed,4,\n\nash\x00", 4, "NUL"),
    ("a foreign heading", b"name;day\nash;2026-03-01\n", 1, "'name,day' is not the heading"),
    ("too many values", (DIARY + "ash,2026-03-01,fed,41,2,\n").encode(), 2, "6 values where 5"),
    ("too few values", (DIARY + "ash,2026-03-01,fed\n").encode(), 2, "3 values where 5"),
    ("a quote left open", (DIARY + 'ash,2026-03-01,fed,4,"big\n').encode(), 2, "quote"),
    ("text after a quote", (DIARY + 'ash,2026-03-01,fed,4,"big"x\n').encode(), 2, "quote"),
    ("a book", b"SQLite format 3\x00" + b"\x00" * 200, 1, "NUL"),
]


@pytest.mark.parametrize(
    ("content", "line", "told"), [f[1:] for f in FILES], ids=[f[0] for f in FILES]
)
def test_a_file_that_cannot_be_read_is_told_by_its_line(
    keeping: Keeping, content: bytes, line: int, told: str
) -> None:
    before = told_by(keeping)

    fault = the_fault(taken(keeping, ANIMALS + ASH, content))

    assert (fault.file, fault.line) == ("diary.csv", line)
    assert told in plain(fault.message)
    assert told_by(keeping) == before


def test_a_file_that_is_not_there_is_told(keeping: Keeping, tmp_path: Path) -> None:
    fault = the_fault(take_in(keeping, animals=None, diary=tmp_path / "none.csv"))

    assert "No such file or directory" in fault.message


def test_a_folder_is_no_file(keeping: Keeping, tmp_path: Path) -> None:
    fault = the_fault(take_in(keeping, animals=tmp_path, diary=None))

    assert "not a file" in fault.message


def test_every_fault_is_named_at_once(keeping: Keeping) -> None:
    found = taken(
        keeping,
        ANIMALS + "ash,hedgehog,hen,2025-07-01,A\n",
        DIARY + "ash,2026-02-30,ate,x,\nelm,2026-03-01,fed,4,\n",
    )

    assert [(f.file, f.line, f.column) for f in found.faults] == [
        ("animals.csv", 2, "species"),
        ("animals.csv", 2, "sex"),
        ("diary.csv", 2, "date"),
        ("diary.csv", 2, "what"),
        ("diary.csv", 2, "grams"),
        ("diary.csv", 3, "animal"),
    ]


def test_the_diary_of_an_animal_whose_own_row_is_faulty_is_not_unknown(keeping: Keeping) -> None:
    found = taken(keeping, ANIMALS + "ash,hedgehog,female,,\n", DIARY + "ash,2026-03-01,fed,4,\n")

    assert the_fault(found).column == "species"


def test_no_animal_is_unknown_while_the_animals_file_cannot_be_read(keeping: Keeping) -> None:
    found = taken(keeping, b"", DIARY + "ash,2026-03-01,fed,4,\nash,2026-02-30,fed,4,\n")

    assert [(f.file, f.column) for f in found.faults] == [
        ("animals.csv", ""),
        ("diary.csv", "date"),
    ]


@pytest.mark.parametrize(("hatched", "faults"), [("2025-07", 0), ("2025", 0), ("2025-08", 1)])
def test_a_hatching_month_is_contradicted_only_before_its_first_day(
    keeping: Keeping, hatched: str, faults: int
) -> None:
    found = taken(
        keeping,
        ANIMALS + f"ash,corn snake,female,{hatched},\n",
        DIARY + "ash,2025-07-01,weighed,7,\n",
    )

    assert len(found.faults) == faults


def test_the_29th_of_february_is_a_day_of_leap_years_alone(keeping: Keeping) -> None:
    leap = taken(
        keeping,
        ANIMALS + "ash,corn snake,female,2024-02-29,\n",
        DIARY + "ash,2024-02-29,weighed,7,\n",
    )
    plain_year = taken(keeping, None, DIARY + "ash,2025-02-29,weighed,9,\n")

    assert leap.entries == 1
    assert "2025-02 has 28 days" in plain(the_fault(plain_year).message)


def test_a_fault_after_a_note_of_several_lines_keeps_its_line_number(keeping: Keeping) -> None:
    diary = DIARY + 'ash,2026-03-01,fed,4,"left it,\nthen took it"\nash,2026-02-30,fed,4,\n'

    fault = the_fault(taken(keeping, ANIMALS + ASH, diary))

    assert fault.line == 4


def test_a_line_separator_inside_a_note_ends_no_row(keeping: Keeping) -> None:
    diary = DIARY + "ash,2026-03-01,fed,4,one\u2028two\x85three\x0cfour\n"

    fault = the_fault(taken(keeping, ANIMALS + ASH, diary))

    assert (fault.line, fault.column) == (2, "note")


def test_the_sentence_names_file_line_column_value_and_what_is_right(keeping: Keeping) -> None:
    fault = the_fault(taken(keeping, ANIMALS + ASH, DIARY + "ash,29/02,fed,4,\n"))

    assert plain(str(fault)) == (
        "diary.csv, line 2, date: '29/02' is not a date;"
        " year-month-day, such as 2026-03-18, is right."
    )
