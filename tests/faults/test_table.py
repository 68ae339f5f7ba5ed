"""The table of faults is what the campaigns found, and every test that it names is there."""

import json
import re

from tests.faults.figures import FIGURES
from tests.faults.table import PAGE, ROOT, ROWS, page_with, read, table


def test_the_page_shows_the_figures_of_the_last_campaigns() -> None:
    text = PAGE.read_text(encoding="utf-8")

    assert text == page_with(text, table(read())), "run tests/faults/table.py"


def test_every_fault_has_its_line_and_its_tests() -> None:
    numbers = re.findall(r"F\d+", " ".join(row.number for row in ROWS))

    assert set(numbers) == {f"F{n}" for n in range(1, 23)}
    assert [t for row in ROWS for t in row.tests if not (ROOT / t).exists()] == []


def test_a_campaign_that_did_not_run_is_said_to_be_so() -> None:
    assert "campaign not run" in table({})


def test_the_kept_figures_say_when_and_on_what_they_were_found() -> None:
    figures = json.loads(FIGURES.read_text(encoding="utf-8"))

    assert all("on" in each and "SQLite" in each["machine"] for each in figures.values())


def test_no_campaign_found_harm() -> None:
    figures = read()
    tallies = [figures["F2"], *(each for each in figures["F3"].values() if "harm" in each)]

    assert all(tally["harm"] == [0, 0, 0] for tally in tallies)
