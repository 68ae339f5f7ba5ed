"""Too light, not growing, or living on reserves: what a weight says beside a plain loss."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from math import log
from typing import Literal

from keeper.husbandry.animal import Stage
from keeper.husbandry.profile import SpeciesProfile, practice
from keeper.husbandry.reasons import Reason, because
from keeper.rules.growth.expectation import Expectation, basis_figures, standing
from keeper.rules.weights import (
    GROWING,
    CannotTell,
    Empty,
    Meal,
    fasted,
    stage_figure,
    too_little,
)

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("no weight", ()),
    ("age or expectation not known", ()),
    ("no hatching day and no weights", ()),
    (
        "below expectation",
        ("z", "limit_z", "centile", "weight_g", "median_g", "basis", "own_percent", "own_animals"),
    ),
    ("below clutch mates", ("percent", "limit_percent", "weight_g", "clutch_median_g")),
    ("below hatch weight", ("weight_g", "hatch_g", "age_days", "limit_days")),
    ("hardly gained", ("percent", "limit_percent", "meals", "days")),
    ("lost while growing", ("percent", "limit_percent", "meals", "days")),
    ("reserves by slope", ("on", "percent", "lost_percent", "grams_a_week")),
    ("reserves by age", ("on", "reserve_days", "hatched_on")),
)
"""Every reason of this module with the figures it carries."""

STALL_GAIN_PERCENT = practice(2.0)
STALL_MEALS = practice(4.0)
STALL_DAYS = practice(42.0)
HATCH_WEIGHT_BACK_DAYS = practice(28.0)


@dataclass(frozen=True, slots=True, kw_only=True)
class Under:
    """Lighter than it should be, and by which of the three measures."""

    by: Literal["expectation", "clutch", "hatch weight"]
    z: float | None
    because: tuple[Reason, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Stall:
    percent: float  # gained, may be below 0
    meals: int
    days: int
    because: tuple[Reason, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Reserve:
    """The day by which a hatchling that does not eat has used what it may use."""

    on: date
    basis: Literal["slope", "age"]
    because: tuple[Reason, ...]


def underweight(
    now_empty_g: float | None,
    age_days: int | None,
    expected: Expectation | None,
    clutch_median_g: float | None,
    own_hatch_g: float | None,
    profile: SpeciesProfile,
) -> Under | CannotTell | None:
    """Whether an empty weight is low for age and sex, for the clutch, or for its own hatching."""
    if now_empty_g is None:
        return CannotTell(missing=because("no weight"))
    answers = (
        _under_expectation(now_empty_g, expected, profile),
        _under_clutch(now_empty_g, clutch_median_g, profile),
        _under_hatch(now_empty_g, own_hatch_g, age_days),
    )
    under = next((answer for answer in answers if answer is not None), None)
    if under is None and expected is None and clutch_median_g is None:
        return CannotTell(missing=because("age or expectation not known"))
    return under


def stall(
    empties: Sequence[Empty],
    meals: Iterable[Meal],
    profile: SpeciesProfile,
    stage: Stage | None,
    today: date,
) -> Stall | CannotTell | None:
    """A growing animal that gained next to nothing over four kept meals or six weeks."""
    if stage not in GROWING:
        return None
    readings = fasted(empties, today, None)
    missing = too_little(readings, empties, profile, stage, today)
    if missing is not None:
        return CannotTell(missing=missing)
    last, now_g = readings[-1]
    fed = [day for day, _ in meals]
    for day, then_g in reversed(readings[:-1]):
        count = sum(1 for fed_on in fed if day <= fed_on < last)
        if count >= STALL_MEALS.value or (last - day).days >= STALL_DAYS.value:
            return _stall(100 * (now_g / then_g - 1), count, (last - day).days)
    return None


def reserve_date(
    empties: Sequence[Empty], hatched_on: date | None, profile: SpeciesProfile, today: date
) -> Reserve | CannotTell:
    """The day by which a hatchling that has never eaten has lost its act step at its own slope.

    Without two weights, or while it does not lose, hatching plus ``weights.reserve_days``.
    """
    readings = [(day, weight_g) for day, weight_g, _ in sorted(empties) if day <= today]
    dates = [
        reserve
        for reserve in (_by_slope(readings, profile), _by_age(hatched_on, profile))
        if reserve is not None
    ]
    if not dates:
        return CannotTell(missing=because("no hatching day and no weights"))
    return min(dates, key=lambda reserve: reserve.on)


def _under_expectation(
    weight_g: float, expected: Expectation | None, profile: SpeciesProfile
) -> Under | None:
    if expected is None:
        return None
    stands = standing(expected, weight_g)
    limit = profile.weights.under_z.value
    if stands.z > limit:
        return None
    why = because(
        "below expectation",
        z=round(stands.z, 2),
        limit_z=limit,
        centile=round(stands.centile, 1),
        weight_g=round(weight_g, 1),
        median_g=round(expected.m_g, 1),
        **basis_figures(expected),
    )
    return Under(by="expectation", z=stands.z, because=(why,))


def _under_clutch(
    weight_g: float, clutch_median_g: float | None, profile: SpeciesProfile
) -> Under | None:
    limit = profile.weights.under_clutch_percent.value
    if clutch_median_g is None or 100 * weight_g >= limit * clutch_median_g:
        return None
    why = because(
        "below clutch mates",
        percent=round(100 * weight_g / clutch_median_g),
        limit_percent=limit,
        weight_g=round(weight_g, 1),
        clutch_median_g=round(clutch_median_g, 1),
    )
    return Under(by="clutch", z=None, because=(why,))


def _under_hatch(weight_g: float, hatch_g: float | None, age_days: int | None) -> Under | None:
    limit = HATCH_WEIGHT_BACK_DAYS.value
    if hatch_g is None or age_days is None or age_days < limit or weight_g >= hatch_g:
        return None
    why = because(
        "below hatch weight",
        weight_g=round(weight_g, 1),
        hatch_g=round(hatch_g, 1),
        age_days=age_days,
        limit_days=limit,
    )
    return Under(by="hatch weight", z=None, because=(why,))


def _stall(percent: float, meals: int, days: int) -> Stall | None:
    limit = STALL_GAIN_PERCENT.value
    if percent >= limit:
        return None
    told = round(percent, 1)
    why = because(
        "lost while growing" if told < 0 else "hardly gained",
        percent=abs(told),
        limit_percent=limit,
        meals=meals,
        days=days,
    )
    return Stall(percent=percent, meals=meals, days=days, because=(why,))


def _by_slope(readings: list[tuple[date, float]], profile: SpeciesProfile) -> Reserve | None:
    """Straight line in log weight through all weights, from the first of them."""
    if len({day for day, _ in readings}) < 2:
        return None
    start, start_g = readings[0]
    ages = [(day - start).days for day, _ in readings]
    logs = [log(grams / start_g) for _, grams in readings]
    mid_age, mid_log = sum(ages) / len(ages), sum(logs) / len(logs)
    spread = sum((age - mid_age) ** 2 for age in ages)
    slope = sum((a - mid_age) * (y - mid_log) for a, y in zip(ages, logs, strict=True)) / spread
    if slope >= 0:
        return None
    percent = stage_figure(profile.weights.loss_act_percent, Stage.HATCHLING)
    on = start + timedelta(days=int(log(1 - percent / 100) / slope))
    why = because(
        "reserves by slope",
        on=on,
        percent=percent,
        lost_percent=round(100 * (1 - readings[-1][1] / start_g), 1),
        grams_a_week=round(7 * slope * readings[-1][1], 2),
    )
    return Reserve(on=on, basis="slope", because=(why,))


def _by_age(hatched_on: date | None, profile: SpeciesProfile) -> Reserve | None:
    if hatched_on is None:
        return None
    days = profile.weights.reserve_days.value
    on = hatched_on + timedelta(days=days)
    why = because("reserves by age", on=on, reserve_days=days, hatched_on=hatched_on)
    return Reserve(on=on, basis="age", because=(why,))
