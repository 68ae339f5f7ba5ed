"""A species profile: every figure a rule may use, each beside where it comes from."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from keeper.husbandry.animal import Sex, Stage
from keeper.husbandry.events import HoldKind

COMMON_PRACTICE = "common practice"


@dataclass(frozen=True, slots=True, kw_only=True)
class Sourced:
    """A number and how it is known; *shipped* is the profile's own where a keeper changed it."""

    value: float
    source: str
    shipped: float | None = None


def practice(value: float) -> Sourced:
    """A figure that keepers use and no source is known for."""
    return Sourced(value=value, source=COMMON_PRACTICE)


@dataclass(frozen=True, slots=True, kw_only=True)
class LmsCurve:
    """Expected empty weight against age for one sex.

    Median m_g, coefficient of variation s and Box-Cox power l at age_days, which
    begin at 0 and increase. basis is ``published`` or ``provisional``.
    """

    age_days: tuple[float, ...]
    l: tuple[float, ...]  # noqa: E741  the method's own letter
    m_g: tuple[float, ...]
    s: tuple[float, ...]
    basis: str
    source: str


@dataclass(frozen=True, slots=True, kw_only=True)
class OwnCurve(LmsCurve):
    """A profile's curve drawn over towards the keeper's own stock; never read from a file.

    own_share: how much of it is own at each of age_days, 0 to 1. own_animals: how many
    animals were heard; basis and source stay those of the profile's part.
    """

    own_share: tuple[float, ...]
    own_animals: int


@dataclass(frozen=True, slots=True, kw_only=True)
class StageLimits:
    """Where a stage of life ends: at an age, or by weight where the age is not known."""

    until_age_days: Sourced
    until_weight_g: Sourced


@dataclass(frozen=True, slots=True, kw_only=True)
class FeedingFigures:
    """For one stage, or one sex of a stage. Percentages are of empty weight for a whole meal."""

    interval_days: Sourced
    early_days: Sourced  # a feed may be given this much before it is due
    late_days: Sourced
    gap_after_meal_days: Sourced  # never sooner than this after a meal
    retry_days: Sourced  # after a counted refusal
    meal_percent_low: Sourced
    meal_percent: Sourced
    meal_percent_high: Sourced
    item_percent_most: Sourced  # one item's largest share of empty weight


@dataclass(frozen=True, slots=True, kw_only=True)
class HoldFigures:
    """What one hold does: how long it lasts, and whether a refusal under it counts."""

    skip: bool
    days: Sourced | None  # None: ends by an event or by hand
    refusal_counts: bool
    part_percent: Sourced | None = None  # offered at this share of the usual meal
    renew_after_days: Sourced | None = None  # asks to be renewed


@dataclass(frozen=True, slots=True, kw_only=True)
class ShedFigures:
    interval_days_low: Mapping[Stage, Sourced]
    interval_days_high: Mapping[Stage, Sourced]
    opaque_days_most: Sourced
    cleared_days_most: Sourced
    cycle_days_most: Sourced  # dull to shed
    overdue_factor: Sourced  # times the own median interval
    first_shed_days_most: Sourced  # after hatching
    spread_log: Sourced  # SD of log interval between sheds


@dataclass(frozen=True, slots=True, kw_only=True)
class HeatFigures:
    hot_low_c: Sourced
    hot_high_c: Sourced
    hot_act_c: Sourced
    cool_low_c: Sourced
    cool_high_c: Sourced
    night_low_c: Sourced
    night_high_c: Sourced
    cold_now_c: Sourced
    keep_c: Sourced  # the temperature energy reckonings use
    digest_hot_low_c: Sourced


@dataclass(frozen=True, slots=True, kw_only=True)
class IncubatorFigures:
    """The incubator: what eggs want, how far off for how long, and when to act at once."""

    low_c: Sourced
    high_c: Sourced
    off_c: Sourced  # so far below low_c or above high_c for off_hours is today's concern
    off_hours: Sourced
    hot_now_c: Sourced
    hot_minutes: Sourced
    cold_now_c: Sourced
    cold_hours: Sourced
    lie_days_most: Sourced  # so long after laying a clutch may still lie there
    pip_days_least: Sourced  # usual days from laying to the first slit
    pip_days_most: Sourced


@dataclass(frozen=True, slots=True, kw_only=True)
class ClutchFigures:
    """A clutch from who may have sired it to the first meals of its young.

    still_c: the temperature at which embryos stand still; above it development goes as fast as
    the degrees above it are many.
    """

    sire_months_most: Sourced  # so long a female may keep sperm
    sire_days_least: Sourced  # from meeting a male to laying, at the very least
    mature_days: Sourced  # from that age on a male in her tub counts
    candle_days_least: Sourced  # days after laying in which veins are first looked for
    candle_days_most: Sourced
    candle_again_days: Sourced
    still_c: Sourced
    out_hours_least: Sourced  # from the first slit to out
    out_hours_most: Sourced
    young_shed_days_least: Sourced  # from hatching to the first shed
    young_shed_days_most: Sourced
    first_offer_days_least: Sourced  # after that shed
    first_offer_days_most: Sourced


@dataclass(frozen=True, slots=True, kw_only=True)
class WeightFigures:
    """Loss steps in per cent of the baseline, and what counts as underweight."""

    loss_watch_percent: Mapping[Stage, Sourced]
    loss_act_percent: Mapping[Stage, Sourced]
    loss_vet_percent: Mapping[Stage, Sourced]
    loss_same_day_percent: Sourced
    under_z: Sourced  # at or below: look
    under_clutch_percent: Sourced  # of the clutch median
    baseline_days: Sourced
    digestion_days: Sourced  # a weighing sooner after a meal holds food
    gut_half_days: Sourced  # days until half of a meal has left the scale
    silent_percent: Sourced  # a weighing within this of the expected is taken in silence
    stale_days: Mapping[Stage, Sourced]  # an older weighing cannot speak for today
    first_meal_days_most: Sourced  # a hatchling that has not eaten by then is a non-starter
    reserve_days: Sourced  # hatchling reserves


@dataclass(frozen=True, slots=True, kw_only=True)
class RefusalFigures:
    """Counted refusals in a row at which each step is taken, and days for adults."""

    husbandry_step: Mapping[Stage, Sourced]
    presentation_step: Mapping[Stage, Sourced]
    vet_step: Mapping[Stage, Sourced]
    review_days: Mapping[Stage, Sourced]  # days since eaten


@dataclass(frozen=True, slots=True, kw_only=True)
class BreedingFigures:
    """Gates for one sex."""

    age_days: Sourced
    weight_g: Sourced
    svl_cm: Sourced | None
    score_low: Sourced
    score_high: Sourced
    kept_meals: Sourced
    shed_within_days: Sourced


@dataclass(frozen=True, slots=True, kw_only=True)
class PreyGrade:
    """A size class of prey by mean mass; own bag means replace it."""

    name: str
    kind: str  # mouse, rat ...
    low_g: Sourced
    high_g: Sourced
    mean_g: Sourced
    kcal_per_g: Sourced


@dataclass(frozen=True, slots=True, kw_only=True)
class SpeciesProfile:
    """Everything the rules ask of a species."""

    slug: str
    scientific: str
    english: str
    also: tuple[str, ...]  # other names under which records call it
    cautions: tuple[str, ...]
    stages: Mapping[Stage, StageLimits]  # hatchling, juvenile, subadult; adult is what remains
    feeding: Mapping[Stage, Mapping[Sex, FeedingFigures]]
    holds: Mapping[HoldKind, HoldFigures]
    sheds: ShedFigures
    heat: HeatFigures
    incubator: IncubatorFigures
    clutch: ClutchFigures
    weights: WeightFigures
    refusals: RefusalFigures
    breeding: Mapping[Sex, BreedingFigures]
    growth: Mapping[Sex, LmsCurve]
    prey: tuple[PreyGrade, ...] = field(default=())
