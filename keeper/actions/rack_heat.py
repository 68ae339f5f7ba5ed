"""The hot end of each row, rack or tub as it was read last, and whether that is in range."""

from collections import defaultdict
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Literal

from keeper.actions.keeping import Keeping
from keeper.husbandry.events import Heat, Zone
from keeper.husbandry.profile import SpeciesProfile, practice
from keeper.husbandry.reasons import Reason
from keeper.rules.heat import heat_verdicts
from keeper.store import reading
from keeper.store.rows import day_number

FRESH_DAYS = practice(2)
"""A reading older than this is shown with its day and says nothing of today."""

SHOWN_DAYS = 28

HeatState = Literal["within", "beyond wished", "too cold", "too hot"]


@dataclass(frozen=True, slots=True, kw_only=True)
class PlaceHeat:
    """The last hot end reading of a place, judged as on the day it was read.

    low_c, high_c: the wished range. fresh: young enough to speak for today.
    """

    place: str
    temp_c: float
    on: date
    state: HeatState
    low_c: float
    high_c: float
    fresh: bool
    because: tuple[Reason, ...] = ()

    @property
    def out_of_range(self) -> bool:
        """Beyond what is safe or digests, not only beyond the wished range."""
        return self.state in ("too cold", "too hot")


def heat_at(
    keeping: Keeping, profiles: Mapping[str, SpeciesProfile], on: date
) -> dict[str, PlaceHeat]:
    """The last reading at each place of *profiles*, which gives the limits there.

    Places are read as keepers write them: ``b3`` is ``B3``. Few days are read where all
    places were read lately.
    """
    found: dict[str, list[Heat]] = {}
    for days in (FRESH_DAYS.value, SHOWN_DAYS):
        missing = profiles.keys() - found.keys()
        if missing:
            found |= _readings(keeping, missing, on - timedelta(days=days), on)
    return {place: _judged(place, read, profiles[place], on) for place, read in found.items()}


def _readings(
    keeping: Keeping, places: Collection[str], first: date, last: date
) -> dict[str, list[Heat]]:
    """Hot end readings by place from *first* to *last*, oldest first."""
    by_key = {_key(place): place for place in places}
    condition = "e.zone = ? AND e.day BETWEEN ? AND ?"
    days = (day_number(first), day_number(last))
    found: dict[str, list[Heat]] = defaultdict(list)
    for entry in reading.all_of(keeping.book, Heat, condition, Zone.HOT.value, *days):
        place = by_key.get(_key(entry.event.place))
        if place is not None:
            found[place].append(entry.event)
    for read in found.values():
        read.sort(key=lambda heat: heat.happened.at)
    return dict(found)


def _judged(place: str, read: Sequence[Heat], profile: SpeciesProfile, on: date) -> PlaceHeat:
    last = read[-1]
    own = [heat for heat in read if heat.place == last.place]
    verdict = heat_verdicts(own, profile, last.happened.at)
    because = verdict[0].because if verdict else ()
    return PlaceHeat(
        place=place,
        temp_c=last.temp_c,
        on=last.happened.day,
        state=_state(verdict[0].state, verdict[0].urgency) if verdict else "within",
        low_c=profile.heat.hot_low_c.value,
        high_c=profile.heat.hot_high_c.value,
        fresh=(on - last.happened.day).days <= FRESH_DAYS.value,
        because=because,
    )


def _state(state: str, urgency: str) -> HeatState:
    if state not in ("too cold", "too hot"):
        return "within"
    if urgency == "noted":
        return "beyond wished"
    return "too cold" if state == "too cold" else "too hot"


def _key(place: str) -> str:
    return "".join(letter for letter in place.casefold() if letter.isalnum())
