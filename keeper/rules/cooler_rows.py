"""Rows that read cooler than they used to, beside the other rows of the same day.

What the room does all rows do: the middle of the day's rows is taken off each reading first.
How far a row strays from its own past is then held against how far all rows stray, with the
tails of Student's t with 5 degrees of freedom, so that a slip of the hand is not beyond belief
(K. Lange, R. Little & J. Taylor, J. Am. Stat. Assoc. 84 (1989) 881-896).
"""

from collections import defaultdict
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from math import atan, pi, sqrt
from statistics import median

from keeper.husbandry.profile import practice

PAST_DAYS = practice(28)
"""How far back a row's own past goes."""

LEAST_PAST = 4  # fewer earlier readings are no past
LEAST_ROWS = 3  # fewer rows of a day tell nothing of the room
LEAST_SPREAD_C = 0.5
"""No two readings of a hand agree better: a choice of the method, no source."""

TO_SPREAD = 1.4826  # from the middle deviation to a standard one, for ordinary errors
MIDDLE_COST = pi / 2  # how much less sure a median is than a mean

Readings = Mapping[str, Sequence[tuple[date, float]]]
"""By row or rack the days and degrees of its hot end, oldest first."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Cooler:
    """One night's reading of a row against its own past.

    usual_c: what the row would have read that day; chance: of reading so cool if nothing is
    amiss, near 1 where it is warmer.
    """

    place: str
    night: date
    read_on: date
    temp_c: float
    usual_c: float
    chance: float


def cooler_rows(readings: Readings, nights: Sequence[date]) -> dict[str, dict[date, Cooler]]:
    """What each row's readings about each of *nights* say, where it has a past of its own.

    A night takes the reading of its own day, else of the day after, else of the day before;
    no reading speaks for two nights.
    """
    apart, room = _apart(readings)
    known = {
        place: past for place, own in apart.items() if len(past := _past(own, nights)) >= LEAST_PAST
    }
    spread_c = _spread_c(known.values())
    return {
        place: {
            night: _cooler(place, night, day, room(day), apart[place][day], past, spread_c)
            for night, day in _read_on(apart[place], nights).items()
        }
        for place, past in known.items()
    }


def _cooler(
    place: str,
    night: date,
    day: date,
    room_c: float,
    apart_c: float,
    past: Sequence[float],
    spread_c: float,
) -> Cooler:
    usual = median(past)
    scale = spread_c * sqrt(1 + MIDDLE_COST / len(past))
    return Cooler(
        place=place,
        night=night,
        read_on=day,
        temp_c=round(apart_c + room_c, 1),
        usual_c=round(usual + room_c, 1),
        chance=t5_tail((usual - apart_c) / scale),
    )


def t5_tail(t: float) -> float:
    """Chance that Student's t with 5 degrees of freedom is *t* or more, in closed form.

    >>> round(t5_tail(2.015), 3), round(t5_tail(0.0), 3)
    (0.05, 0.5)
    """
    x = t / sqrt(5)
    inside = x / (1 + x * x) * (1 + 2 / (3 * (1 + x * x))) + atan(x)
    return min(1.0, max(1e-12, 0.5 - inside / pi))


Room = Callable[[date], float]


def _apart(readings: Readings) -> tuple[dict[str, dict[date, float]], Room]:
    """Degrees of each row above the room by day, and the room's own; the last of a day counts."""
    of_day: dict[date, list[float]] = defaultdict(list)
    rows = {place: dict(told) for place, told in readings.items()}
    for told in rows.values():
        for day, temp_c in told.items():
            of_day[day].append(temp_c)
    middles = {day: median(temps) for day, temps in of_day.items() if len(temps) >= LEAST_ROWS}
    usual = median(middles.values()) if middles else 0.0

    def room(day: date) -> float:
        return middles.get(day, usual)

    return {p: {day: c - room(day) for day, c in told.items()} for p, told in rows.items()}, room


def _past(own: Mapping[date, float], nights: Sequence[date]) -> list[float]:
    """A row's readings before the first of *nights* and not of it."""
    if not nights:
        return []
    first = min(nights)
    begin, end = first - timedelta(days=PAST_DAYS.value), first - timedelta(days=1)
    return [c for day, c in own.items() if begin <= day < end]


def _read_on(days: Mapping[date, float], nights: Sequence[date]) -> dict[date, date]:
    """For each night the day whose reading speaks for it."""
    taken: dict[date, date] = {}
    for night in sorted(nights):
        near = (night, night + timedelta(days=1), night - timedelta(days=1))
        free = [day for day in near if day in days and day not in taken.values()]
        if free:
            taken[night] = free[0]
    return taken


def _spread_c(pasts: Iterable[Sequence[float]]) -> float:
    """How far rows stray from their own middle, all rows together."""
    strays = [abs(c - median(past)) for past in pasts for c in past]
    return max(LEAST_SPREAD_C, TO_SPREAD * median(strays)) if strays else LEAST_SPREAD_C
