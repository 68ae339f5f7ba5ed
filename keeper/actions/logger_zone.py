"""Local time of a logger to UTC, with the hour that a clock change skips or brings twice."""

import re
from bisect import bisect_left
from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta, timezone, tzinfo
from functools import lru_cache
from typing import Any
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

import numpy as np
from numpy.typing import NDArray

from keeper.actions.logger_shape import LOCAL
from keeper.language import tr

Ints = NDArray[np.integer[Any]]
Flags = NDArray[np.bool_]

_OFFSET = re.compile(r"([+-])(\d{2}):?(\d{2})")
_EPOCH = datetime(1970, 1, 1)
_DAY = 86_400


@dataclass(frozen=True, slots=True, kw_only=True)
class InUtc:
    """Seconds of UTC; skipped: no such local time; twice: which of two hours cannot be told.

    Both None where no clock change lies between.
    """

    seconds: Ints
    skipped: Flags | None = None
    twice: Flags | None = None


def zone_of(name: str) -> tzinfo | None:
    """The zone of that name; None for the machine's own.

    Raises:
        ValueError: there is no such zone, with what would be right.
    """
    if name == LOCAL:
        return None
    if name.upper() in ("UTC", "Z"):
        return UTC
    if found := _OFFSET.fullmatch(name):
        minutes = int(found[2]) * 60 + int(found[3])
        return timezone(timedelta(minutes=-minutes if found[1] == "-" else minutes))
    try:
        return ZoneInfo(name)
    except (ZoneInfoNotFoundError, ValueError, OSError):
        raise ValueError(
            tr(
                "{name!r} is no zone; local, UTC, +01:00 or a name such as Africa/Harare are"
                " right.",
                name=name,
            )
        ) from None


def to_utc(local: Ints, zone: tzinfo | None) -> InUtc:
    """Local seconds since 1970 of one probe, in the order of its file."""
    if not len(local):
        return InUtc(seconds=local)
    first, last = int(local.min()) // _DAY, int(local.max()) // _DAY
    offsets = np.array([_offset_at(day * _DAY, zone) for day in range(first, last + 2)], np.int64)
    changes = np.flatnonzero(offsets[1:] != offsets[:-1])
    if not changes.size:
        return InUtc(seconds=local - offsets[0])
    days = local // _DAY
    seconds = local - offsets[days - first]
    skipped, twice = np.zeros(len(local), np.bool_), np.zeros(len(local), np.bool_)
    for index in changes:
        rows = np.flatnonzero(days == first + index)
        if rows.size:
            change = _change((first + int(index)) * _DAY, zone)
            _around(local, seconds, skipped, twice, rows, change)
    return InUtc(seconds=seconds, skipped=skipped, twice=twice)


@dataclass(frozen=True, slots=True)
class _Change:
    """A clock change: the second of UTC, and the offsets before and after."""

    at: int
    before: int
    after: int


def _around(
    local: Ints, seconds: Ints, skipped: Flags, twice: Flags, rows: Ints, change: _Change
) -> None:
    """The day of a clock change; the hour that comes twice is told by the step back in it."""
    here = local[rows]
    low = change.at + min(change.before, change.after)
    high = change.at + max(change.before, change.after)
    inside = (here >= low) & (here < high)
    seconds[rows] = np.where(here < low, here - change.before, here - change.after)
    if change.after > change.before:
        skipped[rows[inside]] = True
        return
    repeated = rows[inside]
    back = np.flatnonzero(np.diff(local[repeated]) < 0)
    if len(back) == 1:
        seconds[repeated[: back[0] + 1]] = local[repeated[: back[0] + 1]] - change.before
    else:
        twice[repeated] = True


def _change(begins: int, zone: tzinfo | None) -> _Change:
    """The clock change in the local day that *begins* at a local second."""
    before, after = _offset_at(begins, zone), _offset_at(begins + _DAY, zone)
    first, last = begins - before, begins + _DAY - after
    ask: Callable[[int], bool] = lambda at: _offset_of(at, zone) != before  # noqa: E731
    return _Change(first + bisect_left(range(first, last), True, key=ask), before, after)


@lru_cache(maxsize=20_000)
def _offset_at(local: int, zone: tzinfo | None) -> int:
    """Seconds east at a local second."""
    naive = _EPOCH + timedelta(seconds=local)
    told = naive.astimezone() if zone is None else naive.replace(tzinfo=zone)
    return (told.utcoffset() or timedelta(0)) // timedelta(seconds=1)


def _offset_of(at: int, zone: tzinfo | None) -> int:
    """Seconds east at a second of UTC."""
    told = datetime.fromtimestamp(at, UTC).astimezone(zone)
    return (told.utcoffset() or timedelta(0)) // timedelta(seconds=1)
