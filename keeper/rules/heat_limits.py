"""The limits of each zone: how warm or cold for how long is how urgent, and when it is over.

Those of an incubator are of the eggs that lie in it: of their species, or the keeper's own.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Literal, NamedTuple

from keeper.husbandry.events import Zone
from keeper.husbandry.profile import HeatFigures, IncubatorFigures, SpeciesProfile, practice

Urgency = Literal["now", "today", "noted"]


HOT_LOOK_MINUTES = practice(10)
COOL_LOOK_MINUTES = practice(60)
NIGHT_LOOK_MINUTES = practice(240)
COLD_NOW_MINUTES = practice(480)
ROOM_NOW_C = practice(32)
ROOM_NOW_MINUTES = practice(15)
RELEASE_C = practice(0.7)


class Limit(NamedTuple):
    """Beyond limit_c for so many minutes is so urgent; hot: above, else below.

    release_c: so far inside the limit it is over.
    """

    hot: bool
    limit_c: float
    minutes: float
    urgency: Urgency
    release_c: float = RELEASE_C.value


@dataclass(frozen=True, slots=True, kw_only=True)
class EggLimits:
    """What the eggs in an incubator bear, in degrees Celsius and minutes.

    low_c to high_c: today's concern when left for off_minutes. cold_c, hot_c: at once after
    their minutes. kinds: of how many species, whose widest limits these are.
    """

    low_c: float
    high_c: float
    off_minutes: float
    cold_c: float
    cold_minutes: float
    hot_c: float
    hot_minutes: float
    kinds: int


def egg_limits(
    eggs: Iterable[IncubatorFigures], own_c: tuple[float, float] | None = None
) -> EggLimits | None:
    """The limits of an incubator with *eggs* of one or several species; None for no eggs.

    Of several species nobody said whose eggs lie where: a limit is then the widest of theirs,
    so that what is told is wrong for all of them. own_c: the keeper's low and high, in place
    of the wanted degrees and what they may be off; of several species it is then the one that
    wants the nearest.
    """
    figures = list(dict.fromkeys(eggs))
    if not figures:
        return None
    if own_c is not None:
        figures = [min(figures, key=lambda each: abs(_middle_c(each) - sum(own_c) / 2))]
    low_c, high_c = own_c or (
        min(each.low_c.value - each.off_c.value for each in figures),
        max(each.high_c.value + each.off_c.value for each in figures),
    )
    return EggLimits(
        low_c=low_c,
        high_c=high_c,
        off_minutes=60 * min(each.off_hours.value for each in figures),
        cold_c=min(low_c, *(each.cold_now_c.value for each in figures)),
        cold_minutes=60 * min(each.cold_hours.value for each in figures),
        hot_c=max(high_c, *(each.hot_now_c.value for each in figures)),
        hot_minutes=min(each.hot_minutes.value for each in figures),
        kinds=len(figures),
    )


def limits_of(zone: Zone, profile: SpeciesProfile, eggs: EggLimits | None) -> tuple[Limit, ...]:
    """Limits of a zone, most urgent first; leaving the wished band alone is only noted."""
    heat = profile.heat
    cold = Limit(False, heat.cold_now_c.value, COLD_NOW_MINUTES.value, "now")
    if zone is Zone.HOT:
        return (cold, *_hot_limits(heat))
    if zone is Zone.COOL:
        return (cold, *_cool_limits(heat))
    if zone is Zone.NIGHT:
        return (cold, *_night_limits(heat))
    if zone is Zone.ROOM:
        return (cold, Limit(True, ROOM_NOW_C.value, ROOM_NOW_MINUTES.value, "now"))
    return () if eggs is None else _egg_limits(eggs)


def inside_c(temp_c: float, limit: Limit) -> float:
    """Degrees inside the limit; below 0 beyond it."""
    return limit.limit_c - temp_c if limit.hot else temp_c - limit.limit_c


def _middle_c(eggs: IncubatorFigures) -> float:
    return (eggs.low_c.value + eggs.high_c.value) / 2


def _egg_limits(eggs: EggLimits) -> tuple[Limit, ...]:
    """A span narrower than both releases is left for its middle, or it would never be over."""
    release_c = min(RELEASE_C.value, (eggs.high_c - eggs.low_c) / 2)
    return (
        Limit(True, eggs.hot_c, eggs.hot_minutes, "now", release_c),
        Limit(False, eggs.cold_c, eggs.cold_minutes, "now", release_c),
        Limit(True, eggs.high_c, eggs.off_minutes, "today", release_c),
        Limit(False, eggs.low_c, eggs.off_minutes, "today", release_c),
    )


def _hot_limits(heat: HeatFigures) -> tuple[Limit, ...]:
    return (
        Limit(True, heat.hot_act_c.value, HOT_LOOK_MINUTES.value, "now"),
        Limit(False, heat.digest_hot_low_c.value, COOL_LOOK_MINUTES.value, "today"),
        Limit(True, heat.hot_high_c.value, HOT_LOOK_MINUTES.value, "noted"),
        Limit(False, heat.hot_low_c.value, COOL_LOOK_MINUTES.value, "noted"),
    )


def _cool_limits(heat: HeatFigures) -> tuple[Limit, ...]:
    """A cool end as warm as a hot end should be leaves no retreat."""
    return (
        Limit(True, heat.hot_low_c.value, COOL_LOOK_MINUTES.value, "today"),
        Limit(True, heat.cool_high_c.value, COOL_LOOK_MINUTES.value, "noted"),
        Limit(False, heat.cool_low_c.value, COOL_LOOK_MINUTES.value, "noted"),
    )


def _night_limits(heat: HeatFigures) -> tuple[Limit, ...]:
    """Half-way from the night low to the urgent cold is today's concern."""
    half_way_c = (heat.night_low_c.value + heat.cold_now_c.value) / 2
    return (
        Limit(False, half_way_c, NIGHT_LOOK_MINUTES.value, "today"),
        Limit(False, heat.night_low_c.value, NIGHT_LOOK_MINUTES.value, "noted"),
        Limit(True, heat.night_high_c.value, NIGHT_LOOK_MINUTES.value, "noted"),
    )
