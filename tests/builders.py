"""Builders with defaults: a test names only what its claim depends on.

The profile here is a small one of its own, so that a rule's test does not move when a
species file does. Figures are for trying the rules, not husbandry advice.
"""

from collections.abc import Mapping
from dataclasses import replace
from datetime import date
from typing import Any

from keeper.husbandry.animal import Sex, Stage
from keeper.husbandry.events import (
    HoldKind,
    HoldSet,
    Offer,
    Remark,
    RemarkKind,
    Result,
    ShedSign,
    ShedStage,
    Weighing,
)
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import (
    BreedingFigures,
    ClutchFigures,
    FeedingFigures,
    HeatFigures,
    HoldFigures,
    IncubatorFigures,
    LmsCurve,
    PreyGrade,
    RefusalFigures,
    ShedFigures,
    Sourced,
    SpeciesProfile,
    StageLimits,
    WeightFigures,
)
from keeper.husbandry.when import on_day

STAGES = tuple(Stage)


def day(text: str) -> date:
    """``day("2026-09-23")``"""
    return date.fromisoformat(text)


def figure(value: float) -> Sourced:
    return Sourced(value=value, source="example for tests")


def figures(values: Mapping[Stage, float]) -> dict[Stage, Sourced]:
    return {stage: figure(value) for stage, value in values.items()}


def by_stage(*values: float) -> dict[Stage, Sourced]:
    """One value for each stage, hatchling first."""
    return figures(dict(zip(STAGES, values, strict=True)))


# --- animals and what happens to them --------------------------------------------------------


def an_animal(**changed: Any) -> AnimalNow:
    """An adult female house snake in tub A1·1, hatched in 2024, with nothing else recorded."""
    told = {
        "animal": 1,
        "code": "HS-001",
        "species": "house_snake",
        "hatched_first": date(2024, 3, 1),
        "sex": Sex.FEMALE,
        "place": "A1·1",
    }
    return AnimalNow(**(told | changed))


def fed(on: str, **changed: Any) -> AnimalNow:
    """An animal whose last entry is a meal on that day."""
    eaten_on = day(on)
    told = {
        "eaten_on": eaten_on,
        "eaten_prey": "mouse hopper",
        "eaten_count": 1,
        "eaten_g": 9.0,
        "meals": 10,
        "offered_on": eaten_on,
        "offered_result": Result.TAKEN,
        "first_entry_on": date(2024, 4, 1),
        "last_entry_on": eaten_on,
    }
    return an_animal(**(told | changed))


def fed_then_refused(fed_on: str, refused_on: str, **changed: Any) -> AnimalNow:
    """An animal that refused on a day after its last meal."""
    told = {
        "offered_on": day(refused_on),
        "offered_result": Result.REFUSED,
        "last_entry_on": day(refused_on),
        "refused_since": 1,
    }
    return fed(fed_on, **(told | changed))


def an_offer(on: str = "2026-09-23", result: Result = Result.TAKEN, **changed: Any) -> Offer:
    told = {"animal": 1, "happened": on_day(day(on)), "prey": "mouse hopper", "count": 1}
    return Offer(result=result, **(told | changed))


def a_refusal(on: str = "2026-09-23", **changed: Any) -> Offer:
    return an_offer(on, Result.REFUSED, **changed)


def a_weighing(on: str = "2026-09-23", weight_g: float = 82.0, **changed: Any) -> Weighing:
    return Weighing(**({"animal": 1, "happened": on_day(day(on)), "weight_g": weight_g} | changed))


def a_shed_sign(
    on: str = "2026-09-23", stage: ShedStage = ShedStage.OPAQUE, **changed: Any
) -> ShedSign:
    return ShedSign(**({"animal": 1, "happened": on_day(day(on)), "stage": stage} | changed))


def a_hold(
    on: str = "2026-09-23", kind: HoldKind = HoldKind.VET, until: str | None = None, **changed: Any
) -> HoldSet:
    told = {"animal": 1, "happened": on_day(day(on)), "kind": kind}
    return HoldSet(until=day(until) if until else None, **(told | changed))


def a_remark(on: str = "2026-09-23", **changed: Any) -> Remark:
    told = {"animal": 1, "happened": on_day(day(on)), "kind": RemarkKind.NOTE, "text": "quiet"}
    return Remark(**(told | changed))


# --- a species profile -----------------------------------------------------------------------


def feeding_figures(**changed: float) -> FeedingFigures:
    """A juvenile's: weekly, 12 per cent of empty weight."""
    told = {
        "interval_days": 7.0,
        "early_days": 1.0,
        "late_days": 2.0,
        "gap_after_meal_days": 5.0,
        "retry_days": 5.0,
        "meal_percent_low": 10.0,
        "meal_percent": 12.0,
        "meal_percent_high": 15.0,
        "item_percent_most": 15.0,
    }
    return FeedingFigures(**{name: figure(value) for name, value in (told | changed).items()})


def hold_figures(skip: bool = True, counts: bool = False, **values: float) -> HoldFigures:
    """values: days, part_percent, renew_after_days where the hold has them."""
    told = {name: figure(value) for name, value in values.items()}
    return HoldFigures(**({"skip": skip, "days": None, "refusal_counts": counts} | told))


def all_holds() -> dict[HoldKind, HoldFigures]:
    return {
        HoldKind.OPAQUE: hold_figures(),
        HoldKind.JUST_SHED: hold_figures(skip=False, counts=True, days=2),
        HoldKind.REGURGITATED: hold_figures(days=12, part_percent=40),
        HoldKind.GRAVID: hold_figures(skip=False, renew_after_days=90),
        HoldKind.PRE_LAY: hold_figures(days=5, renew_after_days=30),
        HoldKind.SEASON: hold_figures(skip=False, renew_after_days=30),
        HoldKind.COOLING: hold_figures(),
        HoldKind.NEW_ARRIVAL: hold_figures(days=6, part_percent=50),
        HoldKind.QUARANTINE: hold_figures(skip=False, counts=True),
        HoldKind.VET: hold_figures(renew_after_days=30),
        HoldKind.HEAT: hold_figures(renew_after_days=30),
        HoldKind.STUCK_SHED: hold_figures(skip=False, part_percent=50, renew_after_days=30),
        HoldKind.SHOW: hold_figures(renew_after_days=30),
        HoldKind.OTHER: hold_figures(renew_after_days=30),
    }


def shed_figures(**changed: Any) -> ShedFigures:
    told = {
        "interval_days_low": by_stage(21, 28, 35, 42),
        "interval_days_high": by_stage(35, 42, 60, 84),
        "opaque_days_most": figure(10),
        "cleared_days_most": figure(7),
        "cycle_days_most": figure(14),
        "overdue_factor": figure(1.6),
        "first_shed_days_most": figure(14),
        "spread_log": figure(0.25),
    }
    return ShedFigures(**(told | changed))


def heat_figures(**changed: float) -> HeatFigures:
    told = {
        "hot_low_c": 30.0,
        "hot_high_c": 32.0,
        "hot_act_c": 38.0,
        "cool_low_c": 23.0,
        "cool_high_c": 25.0,
        "night_low_c": 20.0,
        "night_high_c": 23.0,
        "cold_now_c": 15.0,
        "keep_c": 28.0,
        "digest_hot_low_c": 28.0,
    }
    return HeatFigures(**{name: figure(value) for name, value in (told | changed).items()})


def incubator_figures(**changed: float) -> IncubatorFigures:
    told = {
        "low_c": 27.0,
        "high_c": 28.5,
        "off_c": 1.0,
        "off_hours": 2.0,
        "hot_now_c": 30.5,
        "hot_minutes": 20.0,
        "cold_now_c": 22.0,
        "cold_hours": 6.0,
        "lie_days_most": 75.0,
        "pip_days_least": 55.0,
        "pip_days_most": 70.0,
    }
    return IncubatorFigures(**{name: figure(value) for name, value in (told | changed).items()})


def clutch_figures(**changed: float) -> ClutchFigures:
    told = {
        "sire_months_most": 24,
        "sire_days_least": 30,
        "mature_days": 91,
        "candle_days_least": 5,
        "candle_days_most": 10,
        "candle_again_days": 30,
        "still_c": 13.2,
        "out_hours_least": 12,
        "out_hours_most": 48,
        "young_shed_days_least": 5,
        "young_shed_days_most": 10,
        "first_offer_days_least": 2,
        "first_offer_days_most": 5,
    }
    return ClutchFigures(**{name: figure(value) for name, value in (told | changed).items()})


def weight_figures(**changed: Any) -> WeightFigures:
    told = {
        "loss_watch_percent": by_stage(5, 5, 5, 8),
        "loss_act_percent": by_stage(10, 10, 10, 10),
        "loss_vet_percent": by_stage(15, 15, 15, 15),
        "loss_same_day_percent": figure(20),
        "under_z": figure(-2),
        "under_clutch_percent": figure(75),
        "baseline_days": figure(90),
        "digestion_days": figure(4),
        "gut_half_days": figure(2),
        "silent_percent": figure(15),
        "stale_days": by_stage(14, 45, 60, 90),
        "first_meal_days_most": figure(35),
        "reserve_days": figure(42),
    }
    return WeightFigures(**(told | changed))


def refusal_figures(**changed: Any) -> RefusalFigures:
    told = {
        "husbandry_step": by_stage(2, 2, 2, 3),
        "presentation_step": figures({Stage.HATCHLING: 3, Stage.JUVENILE: 3, Stage.SUBADULT: 3}),
        "vet_step": figures({Stage.HATCHLING: 4, Stage.JUVENILE: 4, Stage.SUBADULT: 4}),
        "review_days": figures({Stage.ADULT: 45}),
    }
    return RefusalFigures(**(told | changed))


def breeding_figures(**changed: Any) -> BreedingFigures:
    told = {
        "age_days": figure(450),
        "weight_g": figure(200),
        "svl_cm": figure(60),
        "score_low": figure(2.5),
        "score_high": figure(3.5),
        "kept_meals": figure(6),
        "shed_within_days": figure(60),
    }
    return BreedingFigures(**(told | changed))


def a_curve(**changed: Any) -> LmsCurve:
    told = {
        "age_days": (0.0, 365.0, 1095.0),
        "l": (0.0, 0.0, 0.0),
        "m_g": (4.0, 120.0, 250.0),
        "s": (0.15, 0.2, 0.2),
        "basis": "provisional",
        "source": "example for tests",
    }
    return LmsCurve(**(told | changed))


def a_grade(
    name: str, low_g: float, mean_g: float, high_g: float, kind: str = "mouse"
) -> PreyGrade:
    return PreyGrade(
        name=name,
        kind=kind,
        low_g=figure(low_g),
        high_g=figure(high_g),
        mean_g=figure(mean_g),
        kcal_per_g=figure(1.7),
    )


def all_prey() -> tuple[PreyGrade, ...]:
    return (
        a_grade("pinky", 1.0, 2.0, 3.0),
        a_grade("fuzzy", 3.0, 4.5, 6.0),
        a_grade("hopper", 7.0, 9.0, 12.0),
        a_grade("weaner", 12.0, 15.0, 18.0),
        a_grade("adult", 18.0, 23.0, 28.0),
        a_grade("pinky", 4.0, 6.0, 8.0, kind="rat"),
        a_grade("fuzzy", 9.0, 14.0, 19.0, kind="rat"),
    )


def all_feeding() -> dict[Stage, dict[Sex, FeedingFigures]]:
    hatchling = feeding_figures(
        interval_days=6,
        retry_days=3,
        gap_after_meal_days=4,
        meal_percent=15,
        meal_percent_high=20,
        item_percent_most=20,
    )
    subadult = feeding_figures(
        interval_days=9, meal_percent_low=8, meal_percent=10, meal_percent_high=12
    )
    male = feeding_figures(
        interval_days=12, meal_percent_low=5, meal_percent=6.5, meal_percent_high=8
    )
    female = feeding_figures(
        interval_days=11, meal_percent_low=6, meal_percent=8, meal_percent_high=10
    )
    return {
        Stage.HATCHLING: dict.fromkeys(Sex, hatchling),
        Stage.JUVENILE: {sex: feeding_figures() for sex in Sex},
        Stage.SUBADULT: dict.fromkeys(Sex, subadult),
        Stage.ADULT: {Sex.FEMALE: female, Sex.MALE: male, Sex.UNKNOWN: female},
    }


def a_profile(**changed: Any) -> SpeciesProfile:
    """House-snake-like: hatchling to 90 d or 12 g, juvenile to 270 d or 60 g, subadult to 540 d."""
    limits = {Stage.HATCHLING: (90, 12), Stage.JUVENILE: (270, 60), Stage.SUBADULT: (540, 120)}
    told = {
        "slug": "house_snake",
        "scientific": "Boaedon capensis",
        "english": "African house snake",
        "also": ("house snake",),
        "cautions": (),
        "stages": {
            stage: StageLimits(until_age_days=figure(days), until_weight_g=figure(weight_g))
            for stage, (days, weight_g) in limits.items()
        },
        "feeding": all_feeding(),
        "holds": all_holds(),
        "sheds": shed_figures(),
        "heat": heat_figures(),
        "incubator": incubator_figures(),
        "clutch": clutch_figures(),
        "weights": weight_figures(),
        "refusals": refusal_figures(),
        "breeding": {Sex.FEMALE: breeding_figures(), Sex.MALE: breeding_figures(svl_cm=None)},
        "growth": {Sex.FEMALE: a_curve(), Sex.MALE: a_curve(m_g=(4.0, 70.0, 110.0))},
        "prey": all_prey(),
    }
    return SpeciesProfile(**(told | changed))


def fed_every(interval_days: float, profile: SpeciesProfile | None = None) -> SpeciesProfile:
    """The profile with one interval for all stages and sexes."""
    of = profile or a_profile()
    one = {
        stage: {s: replace(f, interval_days=figure(interval_days)) for s, f in by_sex.items()}
        for stage, by_sex in of.feeding.items()
    }
    return replace(of, feeding=one)
