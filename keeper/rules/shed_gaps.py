"""The gaps between sheds of one animal, and the interval of her own that they teach."""

from collections.abc import Sequence
from datetime import date, timedelta
from itertools import pairwise
from math import exp, log, sqrt
from typing import NamedTuple

from keeper.husbandry.animal import Stage
from keeper.husbandry.events import ShedSign, ShedStage
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile
from keeper.rules.intervals import Bounds, Spacing, learned
from keeper.rules.stages import stage_of

MISSED_SHARE = 0.1
"""Assumed share of sheds that nobody wrote down, by which a long gap is read as two."""

NINE_IN_TEN = 2 * 1.6448536269514722  # standard deviations that hold nine values in ten


class Seen(NamedTuple):
    """A sign, and the first and last day on which it may have been so."""

    stage: ShedStage
    first: date
    last: date
    pre_lay: bool


def own_spacing(
    now: AnimalNow,
    seen: Sequence[Seen],
    profile: SpeciesProfile,
    stage: Stage | None,
) -> tuple[Spacing, int]:
    """Her interval between sheds, learned from her own, and how many gaps were left out.

    A gap from another stage of life is carried over in proportion to the stages' medians.
    Left out are gaps that touch a pre-lay shed or a clutch, and those that two sheds explain
    better than one.
    """
    sheds = [sign for sign in seen if sign.stage is ShedStage.SHED]
    median_days, between = _expected_interval(profile, stage)
    within = profile.sheds.spread_log.value
    gaps = [
        _gap(now, before, after, profile, median_days)
        for before, after in pairwise(sheds)
        if not _around_laying(now, before, after)
    ]
    spread = sqrt(between**2 + within**2)
    kept = tuple(gap for gap in gaps if not _spans_two(gap, median_days, spread))
    return learned(kept, median_days, between, within), len(sheds) - 1 - len(kept) if sheds else 0


def seen_of(sign: ShedSign) -> Seen:
    """A sign with the days it may have been; within one day it is that day."""
    happened = sign.happened
    if happened.span <= timedelta(days=1):
        return Seen(sign.stage, happened.day, happened.day, sign.pre_lay)
    last = (happened.at + happened.span - timedelta(microseconds=1)).date()
    return Seen(sign.stage, happened.at.date(), last, sign.pre_lay)


def seen_in_state(now: AnimalNow) -> list[Seen]:
    """The signs that the state row carries."""
    rows = (
        (ShedStage.SHED, now.shed_before_on),
        (ShedStage.SHED, now.shed_on),
        (now.stage, now.stage_since),
    )
    return [Seen(stage, day, day, False) for stage, day in rows if stage and day]


def _expected_interval(profile: SpeciesProfile, stage: Stage | None) -> tuple[float, float]:
    """Median days and SD of its logarithm between animals; low to high holds nine in ten.

    While the stage cannot be told, the span over all stages.
    """
    lows, highs = profile.sheds.interval_days_low, profile.sheds.interval_days_high
    if stage is not None and stage in lows and stage in highs:
        low, high = lows[stage].value, highs[stage].value
    else:
        low = min(figure.value for figure in lows.values())
        high = max(figure.value for figure in highs.values())
    return sqrt(low * high), max(0.05, log(high / low) / NINE_IN_TEN)


def _gap(
    now: AnimalNow, before: Seen, after: Seen, profile: SpeciesProfile, median_days: float
) -> Bounds:
    """Days between two sheds, at least and at most, as if at the present stage of life."""
    then, _ = _expected_interval(profile, stage_of(now, profile, after.first))
    scale = median_days / then
    low = max(0.5, (after.first - before.last).days - 1)
    high = max(low + 0.5, (after.last - before.first).days + 1)
    return low * scale, high * scale


def _around_laying(now: AnimalNow, before: Seen, after: Seen) -> bool:
    laid = now.clutch_on is not None and before.first <= now.clutch_on <= after.last
    return laid or before.pre_lay or after.pre_lay


def _spans_two(gap: Bounds, median_days: float, spread: float) -> bool:
    """Whether a shed that nobody wrote down inside *gap* is likelier than one long interval."""
    days = sqrt(gap[0] * gap[1])
    half_spread = spread / sqrt(2)
    one = exp(-0.5 * (log(days / median_days) / spread) ** 2) / spread
    two = exp(-0.5 * (log(days / 2 / median_days) / half_spread) ** 2) / half_spread
    return MISSED_SHARE * two > (1 - MISSED_SHARE) * one
