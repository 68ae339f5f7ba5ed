"""Books written out and joined from the command line: what is said, what is written, exit codes."""

from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path

import pytest

from keeper.actions.keeping import Keeping, open_keeping
from keeper.husbandry.events import Weighing
from keeper.husbandry.when import on_day
from keeper.reports.figures import plain
from keeper.store import reading
from keeper.store.journal import batch
from tests.unit.command_line import Run, run

__all__ = ["run"]
NOW = datetime(2026, 11, 25, 20, tzinfo=UTC)
ANIMALS = "animal,species,sex,hatched,place\nN-1,house snake,female,2025-04-01,D1-1\n"


@pytest.fixture
def book(run: Run, tmp_path: Path) -> Path:
    (tmp_path / "animals.csv").write_text(ANIMALS, encoding="utf-8")
    path = tmp_path / "house.book"
    run("new", path)
    run("take-in", path, "--animals", tmp_path / "animals.csv")
    return path


def opened(path: Path) -> Keeping:
    return open_keeping(path, station="other", now=lambda: NOW)


def weigh(path: Path, grams: float) -> None:
    with closing(opened(path)) as keeping:
        (row,) = reading.board(keeping.book)
        with batch(keeping.book, verb="weigh", keeper="", written=NOW) as writer:
            weighing = Weighing(animal=row.animal, happened=on_day(NOW.date()), weight_g=grams)
            writer.add(weighing)


def weights(path: Path) -> list[float]:
    with closing(opened(path)) as keeping:
        return [entry.event.weight_g for entry in reading.all_of(keeping.book, Weighing)]


def test_a_book_written_out_is_joined_to_another(run: Run, book: Path, tmp_path: Path) -> None:
    weigh(book, 41.2)
    told = run("export", book, "--whole", tmp_path / "out")
    assert told.code == 0
    assert "1 animal, 4 entries" in plain(told.out)

    run("new", tmp_path / "two.book")
    joined = run("join", tmp_path / "two.book", tmp_path / "out")

    assert joined.code == 0
    assert "New: 1 animal, 4 entries in 2 lines" in plain(joined.out)
    assert weights(tmp_path / "two.book") == [41.2]


def test_a_dry_run_says_the_same_and_writes_nothing(run: Run, book: Path, tmp_path: Path) -> None:
    run("export", book, "--whole", tmp_path / "out")
    run("new", tmp_path / "two.book")

    told = run("join", tmp_path / "two.book", tmp_path / "out", "--dry-run")

    assert told.out.endswith("Nothing was written.\n")
    with closing(opened(tmp_path / "two.book")) as keeping:
        assert reading.board(keeping.book) == []


def test_clashes_stand_in_the_json(run: Run, book: Path, tmp_path: Path) -> None:
    run("export", book, "--whole", tmp_path / "first")
    run("new", tmp_path / "two.book")
    run("join", tmp_path / "two.book", tmp_path / "first")
    weigh(book, 41.2)
    weigh(tmp_path / "two.book", 412.0)
    run("export", tmp_path / "two.book", "--whole", tmp_path / "out")

    told = run("join", book, tmp_path / "out", "--json").json

    (clash,) = told["clashes"]
    assert (clash["kind"], clash["about"]) == ("weight", "N-1")
    assert told["written"]
    assert sorted(weights(book)) == [41.2, 412.0]


def test_one_animal_goes_alone(run: Run, book: Path, tmp_path: Path) -> None:
    told = run("export", book, "--whole", tmp_path / "out", "--animal", "N-1")

    assert told.code == 0
    assert "1 animal" in plain(told.out)
    nobody = run("export", book, "--whole", tmp_path / "other", "--animal", "N-9")
    assert (nobody.code, nobody.out) == (2, "")
    assert "'N-9'" in nobody.err


@pytest.mark.parametrize(
    ("options", "told"),
    [
        (("--animal", "N-1", "--animals", "a.csv"), "--animal goes with --whole FOLDER"),
        (("--whole", "out", "--diary", "d.csv"), "give it without --animals and --diary"),
    ],
)
def test_options_that_contradict_each_other_are_refused(
    run: Run, book: Path, tmp_path: Path, options: tuple[str, ...], told: str
) -> None:
    said = run("export", book, *options)

    assert said.code == 2
    assert told in said.err


def test_a_folder_of_other_things_joins_nothing(run: Run, book: Path, tmp_path: Path) -> None:
    (tmp_path / "things").mkdir()

    said = run("join", book, tmp_path / "things")

    assert said.code == 2
    assert "is no book written out" in said.err
