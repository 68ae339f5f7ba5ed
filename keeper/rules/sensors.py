"""Whether a temperature probe can be believed: stuck, leapt, silent or reporting a failure."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from itertools import pairwise
from typing import Literal

from keeper.husbandry.events import Heat, Zone
from keeper.husbandry.profile import COMMON_PRACTICE, Sourced
from keeper.husbandry.reasons import Reason, because
from keeper.husbandry.when import utc

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("sensor silent", ("minutes", "most_minutes")),
    ("sensor stuck", ("temp_c", "hours")),
    ("sensor leapt", ("from_c", "to_c", "minutes")),
    ("sensor reads a failure value", ("temp_c",)),
)
"""Every reason of this module with the figures it carries."""


def _practice(value: float) -> Sourced:
    return Sourced(value=value, source=COMMON_PRACTICE)


STUCK_HOURS = _practice(3)
STUCK_WITHIN_C = _practice(0.05)
LEAP_C = _practice(5)
LEAP_MINUTES = _practice(2)
SILENT_MINUTES = _practice(30)

FAILURE_VALUES_C = (-127.0, 85.0)
"""What common digital probes report when disconnected, and at power-up. From memory."""

CLOSE_MINUTES = 60.0
"""Readings no further apart than this make a series that carries durations."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SensorFault:
    place: str
    zone: Zone
    kind: Literal["stuck", "leap", "silent", "failure value"]
    because: tuple[Reason, ...]


def sensor_fault(readings: Sequence[Heat], now_at: datetime) -> SensorFault | None:
    """A series of one probe that cannot be believed; None for points typed by hand.

    Stuck: the same to a tenth for three hours. Leap: more than 5 °C in two minutes. Silent:
    nothing for half an hour from a probe that reads more often.
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
    return _silent(series, now_at) or _leap(series) or _stuck(series)


def is_series(readings: Sequence[Heat]) -> bool:
    """At least four readings whose usual distance is that of a logger, not of a person."""
    if len(readings) < 4:
        return False
    gaps = sorted(minutes_between(a.happened.at, b.happened.at) for a, b in pairwise(readings))
    return gaps[len(gaps) // 2] <= CLOSE_MINUTES


def minutes_between(first: datetime, last: datetime) -> float:
    """Elapsed minutes between two aware instants; a clock change adds nothing."""
    return (utc(last) - utc(first)) / timedelta(minutes=1)


def hours_between(first: datetime, last: datetime) -> float:
    return minutes_between(first, last) / 60


def _silent(series: Sequence[Heat], now_at: datetime) -> SensorFault | None:
    last = series[-1]
    minutes = minutes_between(last.happened.at, now_at)
    most = SILENT_MINUTES.value
    gaps = sorted(minutes_between(a.happened.at, b.happened.at) for a, b in pairwise(series))
    if minutes <= most or gaps[len(gaps) // 2] > most:
        return None
    why = because("sensor silent", minutes=round(minutes), most_minutes=most)
    return SensorFault(place=last.place, zone=last.zone, kind="silent", because=(why,))


def _leap(series: Sequence[Heat]) -> SensorFault | None:
    """A leap in the last hour of readings."""
    for before, after in reversed(list(pairwise(series))):
        if minutes_between(after.happened.at, series[-1].happened.at) > CLOSE_MINUTES:
            return None
        minutes = minutes_between(before.happened.at, after.happened.at)
        if abs(after.temp_c - before.temp_c) > LEAP_C.value and minutes <= LEAP_MINUTES.value:
            why = because(
                "sensor leapt", from_c=before.temp_c, to_c=after.temp_c, minutes=round(minutes, 1)
            )
            return SensorFault(place=after.place, zone=after.zone, kind="leap", because=(why,))
    return None


def _stuck(series: Sequence[Heat]) -> SensorFault | None:
    last = series[-1]
    first = last
    for reading in reversed(series):
        if abs(reading.temp_c - last.temp_c) > STUCK_WITHIN_C.value:
            break
        first = reading
    hours = hours_between(first.happened.at, last.happened.at)
    if hours < STUCK_HOURS.value:
        return None
    why = because("sensor stuck", temp_c=last.temp_c, hours=round(hours, 1))
    return SensorFault(place=last.place, zone=last.zone, kind="stuck", because=(why,))
