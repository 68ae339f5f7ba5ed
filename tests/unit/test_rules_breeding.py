"""Breeding gates: met, not yet, or cannot be told, and never ready on a guess."""

from dataclasses import replace
from typing import Any

import pytest

from keeper.husbandry.animal import Sex
from keeper.husbandry.events import ShedStage
from keeper.husbandry.now import AnimalNow
from keeper.rules.breeding import EGG_BINDING, Gate, female_gates, male_gates, together
from keeper.rules.sheds import ShedClock
from tests.builders import a_profile, an_animal, breeding_figures, day

PROFILE = a_profile()  # female: 450 d, 200 g, 60 cm, score 2.5-3.5, 6 meals, shed within 60 d
TODAY = day("2026-09-23")
CLOCK = ShedClock(
    stage=None,
    since=None,
    cycle_days=None,
    shed_days=20,
    next_low=None,
    next_mid=day("2026-11-01"),
    next_high=None,
    overdue_days=0,
    verdict="in step",
    first_shed=False,
    spacing=None,
    because=(),
)


def ready(**changed: Any) -> AnimalNow:
    told = {
        "hatched_first": day("2024-03-01"),
        "shed_on": day("2026-09-03"),
        "svl_cm": 64.0,
        "body_score": 3.0,
        "scored_on": day("2026-08-20"),
    }
    return an_animal(**(told | changed))


def gates(now: AnimalNow | None = None, **changed: Any) -> dict[str, Gate]:
    told: dict[str, Any] = {"empty_g": 220.0, "clock": CLOCK, "kept_meals": 6}
    told |= changed
    found = female_gates(
        now or ready(),
        told.pop("empty_g"),
        told.pop("clock"),
        told.pop("kept_meals"),
        PROFILE,
        TODAY,
        **told,
    )
    return {gate.name: gate for gate in found}


def test_a_female_that_meets_every_gate_is_met_as_a_whole() -> None:
    assert together(list(gates().values())) == "met"


@pytest.mark.parametrize(
    ("missing", "gate"),
    [
        ({"now": ready(hatched_first=None)}, "age"),
        ({"empty_g": None}, "weight"),
        ({"now": ready(svl_cm=None)}, "length"),
        ({"now": ready(body_score=None)}, "score"),
        ({"now": ready(scored_on=day("2026-05-01"))}, "score"),
        ({"clock": None}, "shed"),
        ({"clock": replace(CLOCK, verdict="cannot tell")}, "shed"),
        ({"kept_meals": None}, "meals"),
    ],
)
def test_a_gate_that_cannot_be_told_never_makes_her_ready(
    missing: dict[str, Any], gate: str
) -> None:
    found = gates(**missing)

    assert found[gate].state == "cannot tell"
    assert together(list(found.values())) == "cannot tell"


@pytest.mark.parametrize(
    ("short", "gate", "why"),
    [
        ({"now": ready(hatched_first=day("2025-09-01"))}, "age", "too young"),
        ({"empty_g": 199.9}, "weight", "too light"),
        ({"now": ready(svl_cm=59.0)}, "length", "too short"),
        ({"now": ready(body_score=4.0)}, "score", "body score out of band"),
        ({"now": ready(shed_on=day("2026-07-01"))}, "shed", "not shed lately"),
        ({"clock": replace(CLOCK, stage=ShedStage.OPAQUE)}, "shed", "in a shed cycle"),
        ({"now": ready(clutch_on=day("2026-09-10"))}, "shed", "not shed since laying"),
        ({"kept_meals": 5}, "meals", "too few kept meals"),
        (
            {"before_laying_g": 240.0},
            "weight",
            "not back to her weight before laying",
        ),
    ],
)
def test_a_gate_not_yet_met_says_what_is_short(short: dict[str, Any], gate: str, why: str) -> None:
    found = gates(**short)

    assert (found[gate].state, found[gate].missing.why) == ("not yet", why)
    assert together(list(found.values())) == "not yet"


def test_the_day_of_age_counts_from_the_latest_day_she_may_have_hatched() -> None:
    young = ready(hatched_first=day("2025-06-01"), hatched_last=day("2025-08-01"))

    assert gates(young)["age"].on == day("2026-10-25")


def test_a_forecast_day_stands_beside_a_weight_not_yet_reached() -> None:
    found = gates(empty_g=180.0, weight_on=day("2026-12-01"))

    assert found["weight"].on == day("2026-12-01")


def test_a_profile_without_a_length_has_no_length_gate() -> None:
    profile = a_profile(breeding={Sex.FEMALE: breeding_figures(svl_cm=None)})

    found = female_gates(ready(), 220.0, CLOCK, 6, profile, TODAY)

    assert "length" not in [gate.name for gate in found]


def test_a_profile_without_a_gate_for_the_sex_cannot_tell() -> None:
    found = male_gates(ready(), 90.0, CLOCK, 6, a_profile(breeding={}), TODAY)

    assert [gate.state for gate in found] == ["cannot tell"]


def test_egg_binding_is_left_to_a_reptile_vet() -> None:
    assert EGG_BINDING.why.endswith("ask a reptile vet the same day")
