"""Two real ball pythons, eight months as their keeper wrote them, through the command line.

Source: Laarhoven, personal communication, in the Add-my-Pet collection, file of Python regius
(data/ball_python_records). The days, grams and sheds asserted here are read off that diary;
intervals and meal shares are those of the shipped profile (common practice).
"""

from datetime import date, timedelta
from pathlib import Path
from typing import Any

import pytest

from keeper.actions.expecting import expect
from keeper.husbandry.animal import Sex
from keeper.store.species_files import shipped_profiles
from tests.unit.command_line import Run, run

__all__ = ["run"]

RECORDS = Path(__file__).parent / "data" / "ball_python_records"
FEMALE, MALE = "03", "05"


@pytest.fixture
def book(run: Run, tmp_path: Path) -> Path:
    path = tmp_path / "pythons.book"
    run("new", path)
    taken = run(
        "take-in", path, "--animals", RECORDS / "animals.csv", "--diary", RECORDS / "diary.csv",
        "--json",
    ).json  # fmt: skip
    assert taken == {"animals": 2, "entries": 61, "skipped": 0, "errors": []}
    return path


def rows(run: Run, verb: str, book: Path, on: str) -> dict[str, dict[str, Any]]:
    """Rows of a JSON answer by animal."""
    return {row["animal"]: row for row in run(verb, book, "--on", on, "--json").json["rows"]}


def test_on_the_first_day_nothing_can_be_told(run: Run, book: Path) -> None:
    due = rows(run, "due", book, "2010-04-10")

    assert {row["state"] for row in due.values()} == {"cannot tell"}
    assert due[FEMALE]["because"] == "No meal in the book since it begins on 10 Apr 2010."


def test_a_week_after_her_meal_the_young_female_is_due(run: Run, book: Path) -> None:
    female = rows(run, "due", book, "2010-06-11")[FEMALE]

    assert (female["state"], female["due_on"]) == ("due", "2010-06-11")
    assert (female["days_since_eaten"], female["interval_days"]) == (7, 7)
    assert female["place"] == "A-1-1"
    assert female["because"].startswith("7 days since eaten (interval 7). No holds.")


def test_the_day_before_she_is_not(run: Run, book: Path) -> None:
    female = rows(run, "due", book, "2010-06-10")[FEMALE]

    assert (female["state"], female["due_on"], female["offer"]) == ("not due", "2010-06-11", [])


def test_he_ate_today_and_waits_a_week(run: Run, book: Path) -> None:
    male = rows(run, "due", book, "2010-06-12")[MALE]

    assert (male["state"], male["days_since_eaten"], male["due_on"]) == ("not due", 0, "2010-06-19")


def test_her_meal_is_a_tenth_of_what_she_weighed_the_day_before(run: Run, book: Path) -> None:
    female = rows(run, "due", book, "2010-06-12")[FEMALE]

    grams = sum(item["grams"] for item in female["offer"])
    assert grams == pytest.approx(68.9, rel=0.2)  # 10 % of 689 g, weighed on 11 June
    assert female["offer_percent"] == pytest.approx(100 * grams / 689, abs=0.1)
    assert "689 g empty" in female["because"]


def test_past_her_first_birthday_the_interval_grows_to_ten_days(run: Run, book: Path) -> None:
    eve, birthday = (
        rows(run, "due", book, day)[FEMALE]["interval_days"] for day in ("2010-07-14", "2010-07-15")
    )

    assert (eve, birthday) == (7, 10)


def test_long_after_the_last_entry_the_book_does_not_speak_of_fasting(run: Run, book: Path) -> None:
    due = rows(run, "due", book, "2011-06-01")

    assert {row["state"] for row in due.values()} == {"cannot tell"}
    assert due[MALE]["because"].startswith("Nothing written for 180 days, since 3 Dec 2010")
    assert due[FEMALE]["offer"] == []


def test_in_the_middle_of_june_nothing_needs_a_look(run: Run, book: Path) -> None:
    assert rows(run, "watch", book, "2010-06-12") == {}


def test_the_gap_of_94_days_between_her_sheds_is_seen_before_it_ends(run: Run, book: Path) -> None:
    before, after = (rows(run, "watch", book, day) for day in ("2010-10-01", "2010-10-02"))

    assert (before[FEMALE]["kind"], before[FEMALE]["severity"]) == ("shed overdue", "this week")
    assert before[FEMALE]["because"].startswith("No shed for 93 days")
    assert "on 30 Jun 2010" in before[FEMALE]["because"]
    assert FEMALE not in after  # the diary has her shed on 2 October


def test_after_the_record_ends_each_line_is_noted_and_says_what_is_missing(
    run: Run, book: Path
) -> None:
    watch = rows(run, "watch", book, "2011-06-01")

    assert {row["severity"] for row in watch.values()} == {"noted"}
    assert "Last weighed 180 days ago, on 3 Dec 2010" in watch[MALE]["because"]
    assert "no refusal was written" in watch[FEMALE]["because"]


def test_no_day_of_the_eight_months_calls_a_growing_animal_a_loser(run: Run, book: Path) -> None:
    """They gained 101 % and 58 %; no weighing lies more than 5 % below one before it."""
    first = date(2010, 4, 10)

    kinds = {
        row["kind"]
        for week in range(0, 238, 14)
        for row in rows(run, "watch", book, str(first + timedelta(days=week))).values()
    }

    assert kinds & {"losing while eating", "under expectation"} == set()


def forecast(run: Run, book: Path, animal: str, weight_g: float, on: str) -> dict[str, Any]:
    told: dict[str, Any] = run(
        "forecast", book, "--animal", animal, "--weight-g", weight_g, "--on", on, "--json"
    ).json
    return told


def test_a_weight_she_has_is_told_with_its_day(run: Run, book: Path) -> None:
    told = forecast(run, book, FEMALE, 700, "2010-12-03")

    assert told["date"] == told["low"] == told["high"] == "2010-07-02"  # weighed 700 g that day
    assert told["because"] == "Reached 700 g on 2 Jul 2010."


def test_a_weight_to_come_has_a_day_inside_its_interval_and_says_from_what(
    run: Run, book: Path
) -> None:
    told = forecast(run, book, FEMALE, 1500, "2010-12-03")

    assert list(told) == [
        "animal", "target_g", "date", "low", "high", "level", "basis", "because",
    ]  # fmt: skip
    assert "2010-12-03" < told["low"] < told["date"] < told["high"]
    assert (told["animal"], told["target_g"], told["level"]) == (FEMALE, 1500, 0.8)
    assert "From 9 weighings, the last 1,036 g on 3 Dec 2010" in told["because"]


def test_a_forecast_on_a_past_day_knows_nothing_of_later_weighings(run: Run, book: Path) -> None:
    told = forecast(run, book, MALE, 1200, "2010-08-01")

    assert "From 5 weighings, the last 875 g on 1 Aug 2010" in told["because"]
    assert told["low"] > "2010-08-01"


def test_before_the_first_weighing_there_is_no_forecast(run: Run, book: Path) -> None:
    told = forecast(run, book, FEMALE, 1500, "2010-04-09")

    assert (told["date"], told["low"], told["high"]) == (None, None, None)
    assert told["because"] == "No forecast: no weight in the book."


def test_an_animal_that_is_not_there_is_told(run: Run, book: Path) -> None:
    said = run("forecast", book, "--animal", "07", "--weight-g", 900, "--on", "2010-12-03")

    assert (said.code, said.err) == (2, "No animal in this book has the code '07'.\n")


@pytest.mark.parametrize(
    ("sex", "hatched", "weighed_on", "weight_g"),
    [
        (Sex.FEMALE, date(2009, 7, 15), date(2010, 4, 10), 516),
        (Sex.FEMALE, date(2009, 7, 15), date(2010, 12, 3), 1036),
        (Sex.MALE, date(2009, 6, 15), date(2010, 4, 10), 700),
        (Sex.MALE, date(2009, 6, 15), date(2010, 12, 3), 1109),
    ],
)
def test_their_weights_lie_inside_the_provisional_band(
    sex: Sex, hatched: date, weighed_on: date, weight_g: float
) -> None:
    """The band is provisional, so no more is asked than that real animals fit into it."""
    found = expect(
        shipped_profiles(),
        species="Python regius",
        sex=sex,
        age_days=(weighed_on - hatched).days,
        weight_g=weight_g,
    )

    assert found.standing is not None
    assert abs(found.standing.z) < 2.5


def test_the_book_holds_after_all_of_it(run: Run, book: Path) -> None:
    assert run("check", book).code == 0
