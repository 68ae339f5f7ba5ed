"""The command line says one clear sentence and the right exit code; only open brings a window."""

import subprocess
import sys
from pathlib import Path

import pytest

from keeper.actions.csv_file import Wrong
from keeper.actions.expecting import expect
from keeper.husbandry.animal import Sex
from keeper.store.locks import claim, lock_path
from keeper.store.species_files import shipped_profiles
from tests.unit.command_line import Run, run

__all__ = ["run"]


def test_no_command_opens_the_last_book(run: Run) -> None:
    asked: list[Path | None] = []

    said = run(window=lambda path: asked.append(path) or 7)

    assert (said.code, asked) == (7, [None])


def test_open_takes_its_book_to_the_window(run: Run) -> None:
    asked: list[Path | None] = []

    run("open", "my.book", window=lambda path: asked.append(path) or 0)

    assert asked == [Path("my.book")]


def test_new_makes_a_book_that_holds(run: Run, tmp_path: Path) -> None:
    made, checked = run("new", tmp_path / "a.book"), run("check", tmp_path / "a.book")

    assert (made.code, checked.code) == (0, 0)
    assert "new, empty book" in made.out
    assert "hold" in checked.out


def test_new_never_writes_over_a_book(run: Run, tmp_path: Path) -> None:
    run("new", tmp_path / "a.book")
    before = (tmp_path / "a.book").read_bytes()

    again = run("new", tmp_path / "a.book")

    assert (again.code, again.out) == (2, "")
    assert "there already" in again.err
    assert (tmp_path / "a.book").read_bytes() == before


@pytest.mark.parametrize(
    ("arguments", "told"),
    [
        (["due"], "The following arguments are required: BOOK, --on."),
        (["due", "a.book", "--on", "30.02.2026"], "year-month-day, such as 2026-03-18, is right."),
        (["due", "a.book", "--on", "2026-02-30"], "2026-02 has 28 days."),
        (["watch", "a.book", "--on", "9999-12-31"], "too far ahead"),
        (["due", "no.book", "--on", "2026-03-18"], "There is no book at no.book"),
        (["take-in", "a.book"], "needs --animals FILE, --diary FILE or both."),
        (["feed", "a.book"], "Argument COMMAND: invalid choice: 'feed'"),
        (["expect", "--species", "wolf", "--sex", "male", "--age-days", "9"], "no species that"),
        (["expect", "--species", "corn snake", "--sex", "hen", "--age-days", "9"], "not a sex"),
        (
            ["expect", "--species", "corn snake", "--sex", "male", "--age-days", "-9"],
            "whole number",
        ),
        (["expect", "--species", "corn snake", "--sex", "male", "--age-days", "99999"], "no age"),
    ],
)
def test_what_is_wrong_is_one_sentence_on_stderr(run: Run, arguments: list[str], told: str) -> None:
    said = run(*arguments)

    assert (said.code, said.out) == (2, "")
    assert told in said.err
    assert said.err.count("\n") == 1


@pytest.mark.parametrize("weight", ["0", "-3", "41,2", "1e9", "412g", "nan", ""])
def test_a_weight_that_is_none_is_told(run: Run, weight: str) -> None:
    said = run(
        "expect", "--species", "corn snake", "--sex", "female", "--age-days", 94,
        f"--weight-g={weight}",
    )  # fmt: skip

    assert (said.code, said.out) == (2, "")
    assert "right." in said.err


def test_expect_tells_the_curve_and_where_a_weight_stands(run: Run) -> None:
    said = run(
        "expect", "--species", "Pantherophis guttatus", "--sex", "female", "--age-days", 94,
        "--weight-g", 27.4, "--json",
    ).json  # fmt: skip

    assert list(said) == [
        "l", "m", "s", "p3", "p10", "p50", "p90", "p97", "z", "centile", "basis", "source",
    ]  # fmt: skip
    assert said["p3"] < said["p10"] < said["p50"] == said["m"] < said["p90"] < said["p97"]
    assert said["z"] == pytest.approx(0, abs=0.05)
    assert said["centile"] == pytest.approx(50, abs=2)
    assert said["basis"] in ("published", "provisional")
    assert "Barnard" in said["source"]


def test_expect_without_a_weight_has_no_z(run: Run) -> None:
    said = run(
        "expect", "--species", "corn snake", "--sex", "male", "--age-days", 94, "--json"
    ).json

    assert (said["z"], said["centile"]) == (None, None)


def test_expect_of_an_unknown_sex_names_both_medians(run: Run) -> None:
    said = run("expect", "--species", "corn snake", "--sex", "unknown", "--age-days", 94)

    assert said.code == 2
    assert "for a female and" in said.err
    assert "for a male" in said.err


def test_an_age_before_hatching_is_refused() -> None:
    with pytest.raises(Wrong, match="-1 days is no age"):
        expect(shipped_profiles(), species="corn snake", sex=Sex.MALE, age_days=-1)


def test_expect_in_words_says_sex_age_and_source(run: Run) -> None:
    said = run("expect", "--species", "corn snake", "--sex", "male", "--age-days", 365)

    assert said.out.startswith("A male corn snake of 12 months: median ")
    assert "\u00a0" not in said.out
    assert "Source: " in said.out


def test_check_names_each_flaw_and_fails(run: Run, tmp_path: Path) -> None:
    run("new", tmp_path / "a.book")
    whole = (tmp_path / "a.book").read_bytes()
    (tmp_path / "a.book").write_bytes(whole[: len(whole) // 2])

    said = run("check", tmp_path / "a.book")

    assert (said.code, said.out) == (1, "")
    assert "a.book" in said.err


def test_nothing_is_taken_in_while_another_window_writes_in_the_book(
    run: Run, tmp_path: Path
) -> None:
    run("new", tmp_path / "a.book")
    animals = tmp_path / "animals.csv"
    animals.write_text("animal,species,sex,hatched,place\nash,corn snake,female,,\n")

    with claim(tmp_path / "a.book", station="desk"):
        said = run("take-in", tmp_path / "a.book", "--animals", animals)
    later = run("take-in", tmp_path / "a.book", "--animals", animals)

    assert (said.code, later.code) == (2, 0)
    assert "open for writing at desk" in said.err


def test_reading_asks_nobody_and_holds_nobody_up(run: Run, tmp_path: Path) -> None:
    run("new", tmp_path / "a.book")

    with claim(tmp_path / "a.book", station="desk"):
        due = run("due", tmp_path / "a.book", "--on", "2026-03-18")
        checked = run("check", tmp_path / "a.book")
        holder = lock_path(tmp_path / "a.book").read_text()

    assert (due.code, checked.code) == (0, 0)
    assert "desk" in holder


def test_reading_takes_no_lock(run: Run, tmp_path: Path) -> None:
    run("new", tmp_path / "a.book")
    lock_path(tmp_path / "a.book").unlink()

    run("due", tmp_path / "a.book", "--on", "2026-03-18")

    assert not lock_path(tmp_path / "a.book").exists()


def test_an_empty_book_says_that_nothing_stands_in_it(run: Run, tmp_path: Path) -> None:
    run("new", tmp_path / "a.book")

    due = run("due", tmp_path / "a.book", "--on", "2026-03-18")
    as_json = run("due", tmp_path / "a.book", "--on", "2026-03-18", "--json").json

    assert due.out == "No animal stood in a tub on 18 Mar 2026.\n"
    assert as_json == {"on": "2026-03-18", "rows": []}


def test_the_machines_name_is_made_once_and_kept_outside_the_book(run: Run, tmp_path: Path) -> None:
    run("new", tmp_path / "a.book")
    first = (tmp_path / "home" / "station").read_text()
    run("new", tmp_path / "b.book")

    assert first.startswith("station-")
    assert (tmp_path / "home" / "station").read_text() == first


def test_an_empty_name_left_by_a_crash_is_made_anew(run: Run, tmp_path: Path) -> None:
    (tmp_path / "home").mkdir()
    (tmp_path / "home" / "station").touch()

    run("new", tmp_path / "a.book")

    assert (tmp_path / "home" / "station").read_text().startswith("station-")
    assert len(list((tmp_path / "home").iterdir())) == 1


def test_the_command_line_needs_no_qt() -> None:
    seen = subprocess.run(
        [sys.executable, "-c", "import keeper.__main__, sys; print(*sys.modules)"],
        capture_output=True, text=True, check=True,
    )  # fmt: skip

    assert [name for name in seen.stdout.split() if name.startswith(("PySide6", "shiboken6"))] == []


@pytest.mark.parametrize(
    "command",
    ["", "open", "new", "take-in", "due", "watch", "genes", "expect", "forecast", "check"],
)
def test_every_command_explains_itself(run: Run, command: str) -> None:
    said = run(*([command] if command else []), "--help")

    assert said.code == 0
    assert "usage: keeper" in said.out
