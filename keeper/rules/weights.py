"""What an animal weighs without its meals, and whether that is too little or going the wrong way.

Decisions use *empty weight*: scale weight less the meals still inside. An answer that the
records do not carry is a ``CannotTell`` with what is missing, never "fine".
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from statistics import median
from typing import Literal

from keeper.husbandry.animal import Stage
from keeper.husbandry.profile import Sourced, SpeciesProfile, practice
from keeper.husbandry.reasons import Reason, because

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("more meal than animal", ("weight_g", "gut_g")),
    ("no weight", ()),
    ("no fasted weight", ("digestion_days",)),
    ("stale weight", ("weighed_on", "days", "most")),
    ("too few weights", ("have", "need")),
    ("lost since baseline", ("percent", "baseline_g", "now_g", "readings", "limit_percent")),
    ("one reading, weigh again", ("percent", "weighed_on")),
    ("ask a reptile vet", ()),
    ("ask a reptile vet the same day", ()),
    ("ate while losing", ("meals", "percent", "since")),
)
"""Every reason of this module with the figures it carries."""

EATING_MEALS = practice(2.0)

GROWING = frozenset({Stage.HATCHLING, Stage.JUVENILE, Stage.SUBADULT})

Empty = tuple[date, float, bool]
"""A day, the empty weight in grams, and whether a meal was still being digested."""

Meal = tuple[date, float | None]
"""A day and the grams eaten; None when the mass is not known."""

Step = Literal["watch", "act", "vet", "same day"]


@dataclass(frozen=True, slots=True, kw_only=True)
class CannotTell:
    """The records do not carry the answer; *missing* says what they lack."""

    missing: Reason


@dataclass(frozen=True, slots=True, kw_only=True)
class EmptyWeight:
    grams: float
    within_digestion: bool  # a meal was still inside, so grams is an estimate


@dataclass(frozen=True, slots=True, kw_only=True)
class Loss:
    """Percent of the baseline that is gone; readings is how many weighings say so."""

    percent: float
    baseline_g: float
    now_g: float
    step: Step
    readings: int
    since: date  # the first weighing that shows it
    because: tuple[Reason, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class LosingWhileEating:
    percent: float
    meals: int
    since: date
    because: tuple[Reason, ...]


def left_in_gut(meal_g: float, days: float, profile: SpeciesProfile) -> float:
    """Grams of a meal still on the scale *days* after it.

    Halves each ``weights.gut_half_days``, nothing from ``weights.digestion_days`` on, and
    nothing of a meal yet to come (*days* below 0).
    """
    figures = profile.weights
    if days < 0 or days >= figures.digestion_days.value:
        return 0.0
    return float(meal_g * 0.5 ** (days / figures.gut_half_days.value))


def empty_weight(
    weight_g: float,
    weighed_on: date,
    meals: Iterable[Meal],
    profile: SpeciesProfile,
    *,
    same_day_inside: bool = False,
) -> EmptyWeight | CannotTell:
    """Scale weight less the meals still inside.

    Keepers weigh before they feed (common practice), so a meal of the weighing's own day is
    taken as eaten after it unless *same_day_inside* says that it was eaten before.
    """
    first = 0 if same_day_inside else 1
    ages = [((weighed_on - day).days, grams) for day, grams in meals]
    inside = [(d, g) for d, g in ages if first <= d < profile.weights.digestion_days.value]
    gut_g = sum(left_in_gut(grams or 0.0, days, profile) for days, grams in inside)
    if gut_g >= weight_g:
        missing = because("more meal than animal", weight_g=weight_g, gut_g=round(gut_g, 1))
        return CannotTell(missing=missing)
    return EmptyWeight(grams=weight_g - gut_g, within_digestion=bool(inside))


def baseline(
    empties: Sequence[Empty], on: date, profile: SpeciesProfile, reset_on: date | None = None
) -> float | None:
    """Median of the fasted weights of the last ``weights.baseline_days`` up to *on*, in grams.

    Weights of *reset_on* (the day of laying) and before do not count. None without any.
    """
    usable = fasted(empties, on, reset_on)
    first = on - timedelta(days=profile.weights.baseline_days.value)
    grams = [weight_g for day, weight_g in usable if day >= first]
    return median(grams) if grams else None


def loss(
    empties: Sequence[Empty],
    profile: SpeciesProfile,
    stage: Stage | None,
    today: date,
    reset_on: date | None = None,
) -> Loss | CannotTell | None:
    """The loss that two weighings agree on, or one so large that it cannot wait.

    Two weighings below the baseline count by the smaller loss of the two; one alone counts
    from the vet step on. The caller leaves out animals that carry eggs. None when nothing
    is lost beyond the watch step.
    """
    readings = fasted(empties, today, reset_on)
    missing = too_little(readings, empties, profile, stage, today)
    if missing is not None:
        return CannotTell(missing=missing)
    found = [
        lost
        for lost in (
            _loss_by(readings, 2, profile, stage),
            _loss_by(readings, 1, profile, stage),
        )
        if lost is not None
    ]
    return max(found, key=lambda lost: (lost.percent, lost.readings), default=None)


def losing_while_eating(
    empties: Sequence[Empty],
    meals: Iterable[Meal],
    profile: SpeciesProfile,
    stage: Stage | None,
    today: date,
    reset_on: date | None = None,
) -> LosingWhileEating | CannotTell | None:
    """A loss across which the animal ate: worse than refusing, and a vet's question."""
    lost = loss(empties, profile, stage, today, reset_on)
    if not isinstance(lost, Loss):
        return lost
    before = max((day for day, _, _ in empties if day < lost.since), default=lost.since)
    last = fasted(empties, today, reset_on)[-1][0]
    eaten = sum(1 for day, _ in meals if before <= day < last)
    if eaten < EATING_MEALS.value:
        return None
    why = because("ate while losing", meals=eaten, percent=round(lost.percent, 1), since=before)
    vet = because("ask a reptile vet")
    reasons = (why, *(reason for reason in lost.because if reason != vet), vet)
    return LosingWhileEating(percent=lost.percent, meals=eaten, since=before, because=reasons)


def stage_figure(figures: Mapping[Stage, Sourced], stage: Stage | None) -> float:
    """A figure for a stage; the strictest of all while the stage cannot be told."""
    if stage is not None and stage in figures:
        return figures[stage].value
    return min(figure.value for figure in figures.values())


def fasted(
    empties: Sequence[Empty], until: date, reset_on: date | None
) -> list[tuple[date, float]]:
    """Fasted weights up to a day and after laying, oldest first."""
    return [
        (day, weight_g)
        for day, weight_g, within_digestion in sorted(empties)
        if not within_digestion and day <= until and (reset_on is None or day > reset_on)
    ]


def too_little(
    readings: list[tuple[date, float]],
    empties: Sequence[Empty],
    profile: SpeciesProfile,
    stage: Stage | None,
    today: date,
) -> Reason | None:
    """What is missing before two weights can be compared today; None when nothing is."""
    if not empties:
        return because("no weight")
    if not readings:
        days = profile.weights.digestion_days.value
        return because("no fasted weight", digestion_days=days)
    most = stage_figure(profile.weights.stale_days, stage)
    last = readings[-1][0]
    if (today - last).days > most:
        return because("stale weight", weighed_on=last, days=(today - last).days, most=most)
    if len(readings) < 2:
        return because("too few weights", have=len(readings), need=2)
    return None


def _loss_by(
    readings: list[tuple[date, float]], count: int, profile: SpeciesProfile, stage: Stage | None
) -> Loss | None:
    """Loss shown by each of the last *count* weighings against what lies before them."""
    before, after = readings[:-count], readings[-count:]
    base_g = _base(before, after[0][0], profile, stage)
    if base_g is None:
        return None
    percent = min(100 * (1 - weight_g / base_g) for _, weight_g in after)
    step = _step(percent, profile, stage)
    if step is None or (count == 1 and step[0] not in ("vet", "same day")):
        return None
    return Loss(
        percent=percent,
        baseline_g=base_g,
        now_g=after[-1][1],
        step=step[0],
        readings=count,
        since=after[0][0],
        because=_why_lost(percent, base_g, after, step),
    )


def _base(
    before: list[tuple[date, float]], on: date, profile: SpeciesProfile, stage: Stage | None
) -> float | None:
    """The baseline; for a growing animal the last three weights where they are heavier.

    A median of three months lies behind an animal that grows, and would hide its loss.
    """
    base_g = baseline([(day, grams, False) for day, grams in before], on, profile)
    if base_g is None or stage not in GROWING:
        return base_g
    return max(base_g, median(grams for _, grams in before[-3:]))


def _step(
    percent: float, profile: SpeciesProfile, stage: Stage | None
) -> tuple[Step, float] | None:
    figures = profile.weights
    limits: tuple[tuple[Step, float], ...] = (
        ("same day", figures.loss_same_day_percent.value),
        ("vet", stage_figure(figures.loss_vet_percent, stage)),
        ("act", stage_figure(figures.loss_act_percent, stage)),
        ("watch", stage_figure(figures.loss_watch_percent, stage)),
    )
    return next(((name, limit) for name, limit in limits if percent >= limit - 1e-9), None)


def _why_lost(
    percent: float, base_g: float, after: list[tuple[date, float]], step: tuple[Step, float]
) -> tuple[Reason, ...]:
    reasons = [
        because(
            "lost since baseline",
            percent=round(percent, 1),
            baseline_g=round(base_g, 1),
            now_g=round(after[-1][1], 1),
            readings=len(after),
            limit_percent=step[1],
        )
    ]
    if len(after) == 1:
        day = after[0][0]
        reasons.append(
            because("one reading, weigh again", percent=round(percent, 1), weighed_on=day)
        )
    if step[0] == "vet":
        reasons.append(because("ask a reptile vet"))
    if step[0] == "same day":
        reasons.append(because("ask a reptile vet the same day"))
    return tuple(reasons)
