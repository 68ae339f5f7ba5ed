"""The order in which files of tests are begun names files that there are."""

from pathlib import Path

TESTS = Path(__file__).resolve().parents[1]


def test_every_file_that_comes_first_is_there_once():
    named = (TESTS / "longest_first.txt").read_text(encoding="utf-8").split()

    assert [name for name in named if not (TESTS / name).is_file()] == []
    assert len(named) == len(set(named)) > 20
