"""What the first place will show in the days to come, if nothing is written before."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import datetime, time, timedelta
from time import monotonic

from keeper.actions.keeping import Keeping
from keeper.actions.rounds import NIGHT_ENDS_HOUR, open_night
from keeper.desktop.first_sight import Sight
from keeper.desktop.screens.round_stand import RoundStand

DAYS = 7
SECONDS_MOST = 2.0
"""No further hour is reckoned after so long: nobody waits for it, but the machine works."""

_MORNING = time(int(NIGHT_ENDS_HOUR.value))
_A_DAY = timedelta(days=1)


def sights_ahead(keeping: Keeping, seconds: float = SECONDS_MOST) -> list[Sight]:
    """The quiet page for the hours of the coming days, the likeliest first; none in a round."""
    if open_night(keeping) is not None:
        return []
    found, until = [], monotonic() + seconds
    for begins, ends in _hours(keeping.now().replace(tzinfo=None)):
        if monotonic() > until:
            break
        found.append(_sight(keeping, begins, ends))
    return found


def _hours(now: datetime) -> Iterator[tuple[datetime, datetime]]:
    """Spans in which the night asked about and the calendar day both stay the same.

    Days and evenings come before the small hours, when few begin.
    """
    midnights = [datetime.combine(now.date() + n * _A_DAY, time()) for n in range(DAYS)]
    days = [(datetime.combine(m.date(), _MORNING), m + _A_DAY) for m in midnights]
    small = [(m, datetime.combine(m.date(), _MORNING)) for m in midnights]
    for begins, ends in (*days, *small):
        if now < ends:
            yield begins, ends


def _sight(keeping: Keeping, begins: datetime, ends: datetime) -> Sight:
    then = begins.replace(tzinfo=keeping.now().tzinfo)
    stand = RoundStand(replace(keeping, now=lambda: then))
    counts = stand.counts()
    return Sight(begins=begins, ends=ends, counts=counts, legend=stand.quiet_legend())
