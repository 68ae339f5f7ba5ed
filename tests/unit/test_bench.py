"""The bench: a ratio is the median of the rounds' ratios, and a goal that is missed is told."""

import json
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]


@pytest.fixture
def demo(monkeypatch):
    monkeypatch.syspath_prepend(str(ROOT / "demo"))
    yield
    for name in [name for name in sys.modules if name.split(".")[0] in ("bench", "benches")]:
        del sys.modules[name]


def test_a_ratio_is_that_of_the_middle_round_and_not_of_the_middles(demo):
    from benches.measuring import ratio_row

    took = {"floor": [1.0, 2.0, 4.0], "program": [5.0, 2.0, 12.0]}
    row = ratio_row("x", "y", took, most=3.0, floor="z")

    assert row.measured == 3.0
    assert not row.misses
    assert ratio_row("x", "y", took, most=2.9, floor="z").misses


def test_the_spread_is_that_of_the_middle_half_of_the_rounds(demo):
    from benches import table
    from benches.measuring import ratio_row, time_row

    took = {"floor": [1.0] * 5, "program": [1.0, 2.0, 3.0, 4.0, 90.0]}
    row = ratio_row("x", "y", took, most=3.0, floor="z")

    assert row.spread == (2.0, 4.0)
    assert "2 to 4" in table.told(row)
    assert time_row("x", "y", [0.5], most_ms=9.0).spread is None


def test_every_candidate_runs_once_a_round_and_one_that_timed_itself_is_believed(demo):
    from benches.measuring import in_turns

    runs = []

    def told():
        runs.append("told")
        return 7.0

    took = in_turns(4, {"floor": lambda: runs.append("floor"), "program": told})

    assert took["program"] == [7.0] * 4
    assert all(seconds < 1 for seconds in took["floor"])
    assert runs.count("floor") == runs.count("told") == 5  # and once before, to warm up


def test_what_cannot_be_measured_misses_nothing(demo):
    from benches.measuring import skipped

    assert not skipped("x", "y", "not installed here", most=1.0).misses


@pytest.mark.parametrize(("goal", "code"), [(1_000.0, 0), (0.001, 1)])
def test_the_exit_code_says_whether_a_goal_was_missed(
    demo, monkeypatch, capsys, tmp_path, goal, code
):
    import bench
    from benches import profiles

    monkeypatch.setattr(profiles, "MOST", goal)
    told = tmp_path / "bench.json"

    assert bench.main(["--quick", "--only", "profiles", "--json", str(told)]) == code

    (row,) = json.loads(told.read_text(encoding="utf-8"))["rows"]
    assert row["misses"] == bool(code)
    assert row["measured"] > 1
    assert ("MISSES" in capsys.readouterr().out) == bool(code)


def test_the_table_takes_the_place_of_the_one_before_between_its_two_lines(
    demo, monkeypatch, tmp_path
):
    import bench
    from benches import profiles
    from benches.table import BEGIN, END

    monkeypatch.setattr(profiles, "MOST", 0.001)
    page = tmp_path / "PAGE.md"
    page.write_text(f"before\n{BEGIN}\nan old table\n{END}\nafter\n", encoding="utf-8")

    bench.main(["--quick", "--only", "profiles", "--markdown", str(page)])

    lines = page.read_text(encoding="utf-8").splitlines()
    assert (lines[0], lines[1], lines[-2], lines[-1]) == ("before", BEGIN, END, "after")
    assert "an old table" not in lines
    assert any("species profiles" in line and "missed" in line for line in lines)
    assert any("python demo/bench.py --quick --only profiles" in line for line in lines)


def test_a_page_without_the_two_lines_is_left_alone(demo, tmp_path):
    from benches.table import write_block

    page = tmp_path / "PAGE.md"
    page.write_text("text\n", encoding="utf-8")

    with pytest.raises(ValueError, match="bench:begin"):
        write_block(page, [], "command")
    assert page.read_text(encoding="utf-8") == "text\n"
