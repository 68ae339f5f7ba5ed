"""Whether a temperature probe can be believed: stuck, leapt, silent or reporting a failure."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from itertools import pairwise
from math import ceil
from typing import Literal

from keeper.husbandry.events import Heat, Zone
from keeper.husbandry.profile import practice
from keeper.husbandry.reasons import Reason, because

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("sensor silent", ("minutes", "most_minutes")),
    ("sensor stuck", ("temp_c", "hours")),
    ("sensor leapt", ("from_c", "to_c", "minutes")),
    ("sensor reads a failure value", ("temp_c",)),
    ("nothing tells the heat there", ()),
)
"""Every reason of this module with the figures it carries."""


STUCK_HOURS = practice(3)
STUCK_WITHIN_C = practice(0.05)
STUCK_TIMES = practice(3)
LEAP_C = practice(5)
LEAP_MINUTES = practice(2)
SILENT_MINUTES = practice(30)

FAILURE_VALUES_C = (-127.0, 85.0)
"""What common digital probes report when disconnected, and at power-up. From memory."""

_COARSE_STEPS = ((1.0, 0.0, 0.5), (1.8, 32.0, 1.0))
"""Scale, zero and step in which a coarse logger tells degrees: half a Celsius, one Fahrenheit."""
_COARSE_WITHIN = 0.011

CLOSE_MINUTES = 60.0
"""Readings no further apart than this make a series that carries durations."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SensorFault:
    """A probe that cannot be believed. blind: nothing else tells the heat where it matters most."""

    place: str
    zone: Zone
    kind: Literal["stuck", "leap", "silent", "failure value"]
    because: tuple[Reason, ...]
    blind: bool = False


HEAT_AT_STAKE = (Zone.HOT, Zone.INCUBATOR)
"""Where a heater runs: a fault of the only probe there leaves it to itself."""


def blinded(fault: SensorFault) -> SensorFault:
    """*fault*, of the only probe there, as blind if its zone has a heater."""
    if fault.zone not in HEAT_AT_STAKE:
        return fault
    why = because("nothing tells the heat there")
    return replace(fault, blind=True, because=(*fault.because, why))


def sensor_fault(
    readings: Sequence[Heat], now_at: datetime, *, steady_hours: float | None = None
) -> SensorFault | None:
    """A series of one probe that cannot be believed; None for points typed by hand.

    Stuck: the same to a tenth for three hours, and three times as long as it ever was before;
    a logger of coarse steps in a steady room repeats itself and is not stuck. Leap: more than
    5 °C in two minutes, so more than 15 °C from one slot of five minutes to the next. Silent:
    nothing for half an hour from a probe that reads more often.

    steady_hours: the longest that the probe read the same before these readings, if known.
    """
    series = sorted((r for r in readings if r.happened.at <= now_at), key=lambda r: r.happened.at)
    if not series:
        return None
    last = series[-1]
    if last.temp_c in FAILURE_VALUES_C:
        why = because("sensor reads a failure value", temp_c=last.temp_c)
        return SensorFault(place=last.place, zone=last.zone, kind="failure value", because=(why,))
    if not is_series(series):
        return None
    return _silent(series, now_at) or _leap(series) or _stuck(series, steady_hours)


def is_series(readings: Sequence[Heat]) -> bool:
    """At least four readings whose usual distance is that of a logger, not of a person."""
    if len(readings) < 4:
        return False
    return _usual_gap(readings) <= CLOSE_MINUTES


def unchanged_since(readings: Sequence[Heat]) -> datetime:
    """When the last of *readings*, oldest first, was read for the first time without a change."""
    return readings[_first_unchanged(readings, len(readings))].happened.at


def minutes_between(first: datetime, last: datetime) -> float:
    """Elapsed minutes between two aware instants; a clock change adds nothing."""
    return (last.timestamp() - first.timestamp()) / 60


def hours_between(first: datetime, last: datetime) -> float:
    return minutes_between(first, last) / 60


def _silent(series: Sequence[Heat], now_at: datetime) -> SensorFault | None:
    last = series[-1]
    minutes = minutes_between(last.happened.at, now_at)
    most = SILENT_MINUTES.value
    if minutes <= most or _usual_gap(series) > most:
        return None
    why = because("sensor silent", minutes=round(minutes), most_minutes=most)
    return SensorFault(place=last.place, zone=last.zone, kind="silent", because=(why,))


def _leap(series: Sequence[Heat]) -> SensorFault | None:
    """A leap in the last hour of readings.

    Of readings further apart than two minutes the difference has to be so large that at least
    one of the stretches of two minutes between them holds a leap.
    """
    for before, after in reversed(list(pairwise(series))):
        if minutes_between(after.happened.at, series[-1].happened.at) > CLOSE_MINUTES:
            return None
        minutes = minutes_between(before.happened.at, after.happened.at)
        stretches = max(1, ceil(minutes / LEAP_MINUTES.value))
        if abs(after.temp_c - before.temp_c) > LEAP_C.value * stretches:
            why = because(
                "sensor leapt", from_c=before.temp_c, to_c=after.temp_c, minutes=round(minutes, 1)
            )
            return SensorFault(place=after.place, zone=after.zone, kind="leap", because=(why,))
    return None


def _stuck(series: Sequence[Heat], steady_hours: float | None) -> SensorFault | None:
    first = _first_unchanged(series, len(series))
    hours = hours_between(series[first].happened.at, series[-1].happened.at)
    if hours < STUCK_HOURS.value:
        return None
    steady = max(_longest_unchanged(series, first), steady_hours or 0.0)
    never_moved = first == 0 and steady_hours is None
    if hours < STUCK_TIMES.value * steady or (never_moved and _may_be_coarse(series[-1].temp_c)):
        return None
    last = series[-1]
    why = because("sensor stuck", temp_c=last.temp_c, hours=round(hours, 1))
    return SensorFault(place=last.place, zone=last.zone, kind="stuck", because=(why,))


def _first_unchanged(series: Sequence[Heat], end: int) -> int:
    """Where the stretch begins that reads the same as the last reading before *end*."""
    last_c, first = series[end - 1].temp_c, end - 1
    while first > 0 and abs(series[first - 1].temp_c - last_c) <= STUCK_WITHIN_C.value:
        first -= 1
    return first


def _longest_unchanged(series: Sequence[Heat], end: int) -> float:
    """Hours of the longest stretch before *end* that reads the same."""
    longest = 0.0
    while end > 0:
        first = _first_unchanged(series, end)
        hours = hours_between(series[first].happened.at, series[end - 1].happened.at)
        longest, end = max(longest, hours), first
    return longest


def _may_be_coarse(temp_c: float) -> bool:
    """Whether a logger of coarse steps could tell it so."""
    told = ((temp_c * scale + zero) / step for scale, zero, step in _COARSE_STEPS)
    return any(abs(steps - round(steps)) <= _COARSE_WITHIN for steps in told)


def _usual_gap(readings: Sequence[Heat]) -> float:
    """The middle of the minutes between readings."""
    seconds = [reading.happened.at.timestamp() for reading in readings]
    gaps = sorted(last - first for first, last in pairwise(seconds))
    return gaps[len(gaps) // 2] / 60
