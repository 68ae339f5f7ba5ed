"""Real shed gaps of ball pythons against what the shed clock expects of their stage.

Source: Laarhoven, personal communication in the Add-my-Pet collection, file of Python regius:
captive animals at 28.5 C. Clean gaps, without an undated shed between, 36 to 59 days; the
stage column is read from the ages given there by the shipped profile's age limits (young
animals of ten months to a year and a half, a female of about two years, adults).
"""

import csv
from datetime import date, timedelta
from pathlib import Path

import pytest

from keeper.husbandry.animal import Stage
from keeper.husbandry.events import ShedStage
from keeper.rules.intervals import Spacing
from keeper.rules.sheds import shed_clock
from keeper.store.species_files import load_profiles
from tests.builders import a_shed_sign, an_animal

PROFILE = load_profiles()["ball_python"]
with (Path(__file__).parent / "data" / "shed_gaps_ball_python.csv").open(encoding="utf-8") as file:
    GAPS = [(row["animal"], row["stage"], int(row["days"])) for row in csv.DictReader(file)]

# The two animals of the eight months' diary, sheds as written.
YOUNG_FEMALE = (date(2009, 7, 15), ("2010-05-19", "2010-06-30", "2010-10-02"))
YOUNG_MALE = (date(2009, 6, 15), ("2010-04-19", "2010-05-25", "2010-08-29", "2010-10-20"))


def spacing_of(hatched: date, sheds: tuple[str, ...], stage: Stage | None, on: date) -> Spacing:
    now = an_animal(species="ball_python", hatched_first=hatched, last_entry_on=on)
    signs = [a_shed_sign(shed, ShedStage.SHED) for shed in sheds]
    spacing = shed_clock(now, signs, PROFILE, stage, on).spacing
    assert spacing is not None
    return spacing


@pytest.mark.parametrize(("animal", "stage", "days"), GAPS)
def test_every_clean_gap_lies_in_the_central_95_per_cent(
    animal: str, stage: str, days: int
) -> None:
    spacing = spacing_of(date(2010, 1, 1), ("2010-05-01",), Stage(stage), date(2010, 5, 2))

    assert spacing.quantile_days(0.025) <= days <= spacing.quantile_days(0.975), animal


@pytest.mark.parametrize(("animal", "stage", "days"), GAPS)
def test_no_clean_gap_was_called_overdue(animal: str, stage: str, days: int) -> None:
    spacing = spacing_of(date(2010, 1, 1), ("2010-05-01",), Stage(stage), date(2010, 5, 2))

    assert days <= spacing.quantile_days(0.95), animal


@pytest.mark.parametrize(("animal", "learned_from"), [(YOUNG_FEMALE, 1), (YOUNG_MALE, 2)])
def test_a_gap_that_spans_an_undated_shed_is_left_out(
    animal: tuple[date, tuple[str, ...]], learned_from: int
) -> None:
    """94 and 96 days, marked in the source as spanning a shed without a date."""
    hatched, sheds = animal
    on = date.fromisoformat(sheds[-1]) + timedelta(days=1)

    assert spacing_of(hatched, sheds, Stage.SUBADULT, on).learned_from == learned_from
