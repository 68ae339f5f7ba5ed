"""What is written out can be taken in again letter for letter, and no spreadsheet runs it."""

import csv
import random
from contextlib import closing
from pathlib import Path

import pytest

from keeper.actions.cells import guarded, is_dangerous, unguarded
from keeper.actions.keeping import new_keeping
from keeper.actions.records_out import write_out
from keeper.actions.taking_in import take_in
from keeper.rehearsal.collection import make_collection
from keeper.store.database import open_book
from keeper.store.errors import BookError
from keeper.store.reading import board
from tests.faults.figures import keep
from tests.faults.test_hostile_text import ATOMS, NOW, keeping, stored_exactly
from tests.unit.command_line import Run, run

__all__ = ["keeping", "run"]
RUN_BY_SPREADSHEETS = tuple("=+-@\t\r＝＋－＠")


def written(room, folder: Path, name: str) -> tuple[Path, Path]:
    animals, diary = folder / f"{name}-animals.csv", folder / f"{name}-diary.csv"
    write_out(room, animals=animals, diary=diary)
    return animals, diary


def taken_into_a_new_book(folder: Path, animals: Path, diary: Path):
    made = new_keeping(folder / f"{animals.stem}.book", station="b", now=lambda: NOW)
    assert take_in(made, animals=animals, diary=diary).faults == ()
    return made


def cells_of(path: Path) -> list[str]:
    with path.open(encoding="utf-8-sig", newline="") as file:
        return [cell for row in csv.reader(file, strict=True) for cell in row]


def is_run(cell: str) -> bool:
    """As a spreadsheet takes a cell: a sign before anything but a number."""
    if not cell.startswith(RUN_BY_SPREADSHEETS):
        return False
    try:
        float(cell.replace(",", "."))
    except ValueError:
        return True
    return False


def round_trip(room, folder: Path) -> tuple[int, int, int]:
    """Cells written out, those a spreadsheet would run, and those that come back otherwise."""
    first = written(room, folder, "first")
    with closing(taken_into_a_new_book(folder, *first)) as again:
        second = written(again, folder, "second")
        cells = [cell for path in first for cell in cells_of(path)]
        back = [cell for path in second for cell in cells_of(path)]
        assert len(cells) == len(back)
        otherwise = sum(a != b for a, b in zip(cells, back, strict=True))
    return len(cells), sum(map(is_run, cells)), otherwise


def test_hostile_notes_go_out_and_come_back_letter_for_letter(keeping, tmp_path) -> None:
    stored_exactly(keeping, tmp_path, cells=400, seed=11)

    cells, dangerous, otherwise = round_trip(keeping, tmp_path)

    assert (dangerous, otherwise) == (0, 0)
    assert cells > 1000


@pytest.mark.long
def test_ten_thousand_cells_go_out_and_come_back(keeping, tmp_path) -> None:
    stored_exactly(keeping, tmp_path, cells=2400, seed=12)

    cells, dangerous, otherwise = round_trip(keeping, tmp_path)

    keep("F15", cells=cells, dangerous=dangerous, otherwise=otherwise)
    assert (dangerous, otherwise) == (0, 0)
    assert cells >= 10_000


def test_a_guarded_cell_is_harmless_and_gives_back_what_it_was_given() -> None:
    draw = random.Random(13)
    texts = ["".join(draw.choices(ATOMS, k=draw.choice((0, 1, 2, 3)))) for _ in range(5000)]

    assert [unguarded(guarded(text)) for text in texts] == texts
    assert not any(is_run(guarded(text)) for text in texts)
    assert sum(is_dangerous(text) for text in texts) > 500


@pytest.mark.parametrize("number", ["-5.00", "+3", "-0,5", "41.2"])
def test_a_number_keeps_its_sign(number: str) -> None:
    assert guarded(number) == number


def test_the_files_of_a_collection_make_the_same_board_again(tmp_path) -> None:
    end = NOW.date()
    with closing(make_collection(tmp_path / "a.book", ends_on=end, animals=12, years=1)) as room:
        files = written(room, tmp_path, "out")
        before = {row.code: (row.weight_g, row.weighed_on, row.sex) for row in board(room.book)}

    with closing(taken_into_a_new_book(tmp_path, *files)) as again:
        after = {row.code: (row.weight_g, row.weighed_on, row.sex) for row in board(again.book)}
    assert after == before


def test_what_was_written_out_adds_nothing_to_its_own_book(keeping, tmp_path) -> None:
    stored_exactly(keeping, tmp_path, cells=100, seed=14)
    animals, diary = written(keeping, tmp_path, "own")

    taken = take_in(keeping, animals=animals, diary=diary)

    assert (taken.faults, taken.animals, taken.entries) == ((), 0, 0)
    assert taken.skipped > 50


def test_a_file_that_is_there_is_not_written_over(keeping, tmp_path) -> None:
    (tmp_path / "own-animals.csv").write_text("mine")

    with pytest.raises(BookError, match="is there already"):
        written(keeping, tmp_path, "own")

    assert (tmp_path / "own-animals.csv").read_text() == "mine"
    assert not list(tmp_path.glob(".*"))


def test_a_folder_that_refuses_is_told(keeping, tmp_path) -> None:
    with pytest.raises(BookError, match="could not be written"):
        write_out(keeping, animals=tmp_path / "none" / "a.csv", diary=None)


def test_export_on_the_command_line_says_what_it_left_out(run: Run, tmp_path: Path) -> None:
    book = tmp_path / "a.book"
    make_collection(book, ends_on=NOW.date(), animals=12, years=1).close()

    done = run("export", book, "--animals", tmp_path / "a.csv", "--diary", tmp_path / "d.csv")
    none = run("export", book)

    assert done.code == 0, done.err
    assert done.out.startswith("Wrote out 12 animals and ")
    assert "left out: neither taken nor refused. --whole FOLDER writes them too." in done.out
    assert none.code == 2
    assert "--animals FILE, --diary FILE or both" in none.err
    assert (tmp_path / "a.csv").stat().st_mode & 0o777 == 0o600
    open_book(book, station="look").close()
