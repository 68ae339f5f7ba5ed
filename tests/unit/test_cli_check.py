"""The check from the command line, and the mended copy that it writes when asked."""

import sqlite3
from contextlib import closing
from pathlib import Path

from tests.unit.command_line import Run, run

__all__ = ["run"]


def test_check_with_mend_writes_a_sound_copy_and_leaves_the_book(run: Run, tmp_path: Path) -> None:
    run("new", tmp_path / "a.book")
    with closing(sqlite3.connect(tmp_path / "a.book")) as book:
        book.execute("DROP TRIGGER offer_no_delete")
        book.commit()
    before = (tmp_path / "a.book").read_bytes()

    told, mended = run("check", tmp_path / "a.book"), run("check", tmp_path / "a.book", "--mend")

    assert (told.code, mended.code) == (1, 0)
    assert "--mend writes a mended copy" in told.err
    assert "a.book.mended-1 is a mended copy" in mended.out
    assert "The copy is sound; the book was not changed." in mended.out
    assert run("check", tmp_path / "a.book.mended-1").code == 0
    assert (tmp_path / "a.book").read_bytes() == before


def test_a_sound_book_is_not_mended(run: Run, tmp_path: Path) -> None:
    run("new", tmp_path / "a.book")

    said = run("check", tmp_path / "a.book", "--mend")

    assert said.code == 0
    assert not (tmp_path / "a.book.mended-1").exists()


def test_another_programs_file_is_not_mended(run: Run, tmp_path: Path) -> None:
    with closing(sqlite3.connect(tmp_path / "other.db")) as other:
        other.execute("CREATE TABLE animal (id INTEGER)")
        other.commit()

    said = run("check", tmp_path / "other.db", "--mend")

    assert said.code == 2
    assert "belongs to another program" in said.err
    assert [f.name for f in tmp_path.glob("other.db*")] == ["other.db"]


def test_what_could_not_be_taken_over_makes_mending_fail(run: Run, tmp_path: Path) -> None:
    run("new", tmp_path / "a.book")
    (tmp_path / "animals.csv").write_text("animal,species,sex,hatched,place\nash,corn snake,,,\n")
    run("take-in", tmp_path / "a.book", "--animals", tmp_path / "animals.csv")
    with closing(sqlite3.connect(tmp_path / "a.book")) as book:
        book.executescript(
            "PRAGMA ignore_check_constraints = ON; DROP TRIGGER described_no_update;"
            "UPDATE described SET code = '';"
        )

    said = run("check", tmp_path / "a.book", "--mend")

    assert said.code == 1
    assert "1 row of described left out" in said.out
