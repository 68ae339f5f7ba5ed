"""A hatchling that does not start: which step next, how it has done in this line, until when."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum
from itertools import combinations
from statistics import median

from keeper.husbandry.animal import Stage
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile, practice
from keeper.husbandry.reasons import Reason, because

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("next step", ("step", "tried", "ate")),
    ("one change at a time", ("last", "days")),
    ("all steps tried", ("steps",)),
    ("steps failed", ("failed",)),
    ("lost since hatching", ("percent", "hatched_g", "now_g")),
    ("reserves end", ("hatched", "days")),
    ("weight runs out", ("slope", "floor", "on")),
    ("no deadline known", ()),
    ("live prey, check local law", ()),
    ("assisted feeding by experienced hands only", ()),
    ("tube or force only by or under a vet", ()),
    ("ask a reptile vet", ()),
)
"""Every reason of this module with the figures it carries (grams, grams a day, per cent)."""

BETWEEN_STEPS_DAYS = practice(3)
"""One change at a time, 3-4 days apart."""

FAILED_TO_ASSIST = practice(5)
"""After so many failed steps assisted feeding is talked of, by experienced hands."""


class LadderStep(StrEnum):
    """The steps in their order, each one change to how prey is offered."""

    CUP = "warm pinky overnight in a small dark cup with a hide"
    SMALLER = "a smaller or a cut pinky"
    WASHED = "a washed, unscented pinky"
    SCENTED = "lizard or frog scent, frozen first"
    PORTION = "a tail or a limb"
    TEASED = "tease at the hide with tongs"
    COOLED = "a short cool spell, then warm"
    LIVE = "a live newborn, only where lawful"


@dataclass(frozen=True, slots=True, kw_only=True)
class Tried:
    """One step tried with one hatchling; ate None: not yet known."""

    step: LadderStep
    on: date
    ate: bool | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class StepRecord:
    """How often a step was tried and how often the hatchling then ate."""

    tried: int = 0
    ate: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class Advice:
    """step None: none is left. deadline None: cannot tell. assist: past the steps alone."""

    step: LadderStep | None
    not_before: date
    record: StepRecord
    deadline: date | None
    assist: bool
    because: tuple[Reason, ...]
    cautions: tuple[Reason, ...]


def step_records(tried_in_line: Iterable[Tried]) -> dict[LadderStep, StepRecord]:
    """Successes by step over all hatchlings of a line; tries not yet known are left out."""
    records: dict[LadderStep, StepRecord] = {}
    for one in tried_in_line:
        if one.ate is None:
            continue
        before = records.get(one.step, StepRecord())
        records[one.step] = StepRecord(tried=before.tried + 1, ate=before.ate + one.ate)
    return records


def next_step(
    tried: Sequence[Tried],
    now: AnimalNow,
    profile: SpeciesProfile,
    today: date,
    weights: Sequence[tuple[date, float]] = (),
    in_line: Mapping[LadderStep, StepRecord] | None = None,
    live_lawful: bool = False,
) -> Advice:
    """The next step not yet tried with this hatchling, with its deadline and cautions.

    Args:
        tried: steps tried with her.
        weights: her days and empty grams since hatching; the first stands for the hatch weight.
        in_line: what ``step_records`` says of her line.
        live_lawful: the keeper has said that live prey is lawful where they are.
    """
    done = {one.step for one in tried}
    steps = [s for s in LadderStep if s is not LadderStep.LIVE or live_lawful]
    step = next((s for s in steps if s not in done), None)
    record = (in_line or {}).get(step, StepRecord()) if step else StepRecord()
    last_on = max((one.on for one in tried), default=None)
    deadline, until = _deadline(now, profile, weights)
    failed = sum(one.ate is False for one in tried)
    grave = _grave(failed, profile, weights)
    return Advice(
        step=step,
        not_before=_not_before(last_on, today),
        record=record,
        deadline=deadline,
        assist=bool(grave) or step is None,
        because=(*_next(step, record, len(steps)), *_paused(last_on), *grave, until),
        cautions=_cautions(step, bool(grave) or step is None),
    )


def slope_g_per_day(weights: Sequence[tuple[date, float]]) -> float | None:
    """Median slope between all pairs of weighings on different days; None: fewer than two.

    Source: P. K. Sen, J. Am. Stat. Assoc. 63 (1968) 1379-1389.

    >>> slope_g_per_day([(date(2026, 9, 1), 3.5), (date(2026, 9, 8), 3.36),
    ...                  (date(2026, 9, 15), 3.22)])
    -0.02
    """
    slopes = [
        (later[1] - first[1]) / (later[0] - first[0]).days
        for first, later in combinations(sorted(weights), 2)
        if later[0] != first[0]
    ]
    return round(median(slopes), 9) if slopes else None


def _next(step: LadderStep | None, record: StepRecord, steps: int) -> tuple[Reason, ...]:
    if step is None:
        return (because("all steps tried", steps=steps),)
    return (because("next step", step=step.value, tried=record.tried, ate=record.ate),)


def _not_before(last_on: date | None, today: date) -> date:
    if last_on is None:
        return today
    return max(today, last_on + timedelta(days=int(BETWEEN_STEPS_DAYS.value)))


def _paused(last_on: date | None) -> tuple[Reason, ...]:
    if last_on is None:
        return ()
    return (because("one change at a time", last=last_on, days=int(BETWEEN_STEPS_DAYS.value)),)


def _grave(
    failed: int, profile: SpeciesProfile, weights: Sequence[tuple[date, float]]
) -> tuple[Reason, ...]:
    """Why steps alone are no longer enough: too many failed, or too much lost."""
    why: list[Reason] = []
    if failed >= FAILED_TO_ASSIST.value:
        why.append(because("steps failed", failed=failed))
    limit = profile.weights.loss_act_percent.get(Stage.HATCHLING)
    if limit is not None and len(weights) > 1:
        (_, hatched_g), *_, (_, now_g) = sorted(weights)
        percent = round(100 * (hatched_g - now_g) / hatched_g, 6)
        if percent >= limit.value:
            lost = because("lost since hatching", percent=percent, hatched_g=hatched_g, now_g=now_g)
            why.append(lost)
    return tuple(why)


def _deadline(
    now: AnimalNow, profile: SpeciesProfile, weights: Sequence[tuple[date, float]]
) -> tuple[date | None, Reason]:
    """The earlier of the end of her reserves and the day her weight falls to the vet's line."""
    ends = [end for end in (_reserves(now, profile), _runs_out(profile, weights)) if end]
    if not ends:
        return None, because("no deadline known")
    return min(ends, key=lambda end: end[0])


def _reserves(now: AnimalNow, profile: SpeciesProfile) -> tuple[date, Reason] | None:
    if now.hatched_first is None:
        return None
    days = round(profile.weights.reserve_days.value)
    return now.hatched_first + timedelta(days=days), because(
        "reserves end", hatched=now.hatched_first, days=days
    )


def _runs_out(
    profile: SpeciesProfile, weights: Sequence[tuple[date, float]]
) -> tuple[date, Reason] | None:
    slope = slope_g_per_day(weights)
    limit = profile.weights.loss_vet_percent.get(Stage.HATCHLING)
    if slope is None or slope >= 0 or limit is None:
        return None
    (_, hatched_g), *_, (last_on, now_g) = sorted(weights)
    floor_g = hatched_g * (1 - limit.value / 100)
    on = last_on + timedelta(days=max(0, int((floor_g - now_g) / slope)))
    return on, because("weight runs out", slope=slope, floor=floor_g, on=on)


def _cautions(step: LadderStep | None, assist: bool) -> tuple[Reason, ...]:
    told: list[Reason] = []
    if step is LadderStep.LIVE:
        told.append(because("live prey, check local law"))
    if assist:
        told.append(because("assisted feeding by experienced hands only"))
        told.append(because("tube or force only by or under a vet"))
        told.append(because("ask a reptile vet"))
    return tuple(told)
