"""In which stage of life an animal stands, and which feeding figures go with it."""

from datetime import date

from keeper.husbandry.animal import Sex, Stage
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import FeedingFigures, SpeciesProfile

YOUNG = (Stage.HATCHLING, Stage.JUVENILE, Stage.SUBADULT)
"""Stages that end, in order; what remains is adult."""


def stage_of(now: AnimalNow, profile: SpeciesProfile, today: date) -> Stage | None:
    """Stage of life by age, or by weight when the age is unknown; None: cannot tell.

    A weight speaks for the stage only as long as it is not stale for it, because the young
    grow out of a stage; an adult weight stays one. A hatch day after *today* tells nothing.
    """
    age_days = now.age_days(today)
    if age_days is not None:
        return _by_age(profile, age_days) if age_days >= 0 else None
    if now.weight_g is None:
        return None
    stage = _by_weight(profile, now.weight_g)
    return stage if stage is Stage.ADULT or _fresh(now, profile, stage, today) else None


def figures_of(profile: SpeciesProfile, stage: Stage, sex: Sex) -> FeedingFigures | None:
    """Feeding figures of a stage and sex.

    Without figures for the sex itself those for an unknown sex serve, then the female's
    (whose meals are never further apart than the male's); None: the profile has none.
    """
    by_sex = profile.feeding.get(stage)
    if not by_sex:
        return None
    return by_sex.get(sex) or by_sex.get(Sex.UNKNOWN) or by_sex.get(Sex.FEMALE)


def _by_age(profile: SpeciesProfile, age_days: int) -> Stage:
    for stage in YOUNG:
        limits = profile.stages.get(stage)
        if limits is not None and age_days < limits.until_age_days.value:
            return stage
    return Stage.ADULT


def _by_weight(profile: SpeciesProfile, weight_g: float) -> Stage:
    for stage in YOUNG:
        limits = profile.stages.get(stage)
        if limits is not None and weight_g < limits.until_weight_g.value:
            return stage
    return Stage.ADULT


def _fresh(now: AnimalNow, profile: SpeciesProfile, stage: Stage, today: date) -> bool:
    stale_days = profile.weights.stale_days.get(stage)
    if now.weighed_on is None or stale_days is None:
        return False
    return 0 <= (today - now.weighed_on).days <= stale_days.value
