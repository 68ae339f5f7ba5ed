"""Holds set by hand, past ones too, each with the day it was ended as its end.

One that lasts until she lays is ended by her clutch as well as by hand.
"""

from collections.abc import Iterable
from dataclasses import replace
from datetime import date

from keeper.actions.keeping import Keeping
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import Clutch, HoldEnded, HoldKind, HoldSet
from keeper.store import reading

MOST = 12
_UNTIL_SHE_LAYS = frozenset({HoldKind.GRAVID, HoldKind.PRE_LAY})


def holds_ever(
    keeping: Keeping, animals: Iterable[AnimalId], until: date
) -> dict[AnimalId, list[HoldSet]]:
    """The latest holds of each animal, oldest first, as they had been set and ended by a day."""
    keys = list(animals)
    holds = reading.recent(keeping.book, HoldSet, keys, MOST, until=until)
    held = [key for key in keys if holds[key]]
    ends = reading.recent(keeping.book, HoldEnded, held, MOST, until=until)
    awaited = [key for key in held if any(h.kind in _UNTIL_SHE_LAYS for h in holds[key])]
    laid = reading.recent(keeping.book, Clutch, awaited, MOST, until=until)
    return {
        key: [as_ended(hold, ends[key], laid.get(key, ())) for hold in holds[key]] for key in keys
    }


def as_ended(hold: HoldSet, ends: Iterable[HoldEnded], laid: Iterable[Clutch]) -> HoldSet:
    """*hold* until the first that ended it after it was set, if that is before its own end."""
    ending: list[HoldEnded | Clutch] = [end for end in ends if end.kind is hold.kind]
    if hold.kind in _UNTIL_SHE_LAYS:
        ending += laid
    days = (end.happened.day for end in ending if end.happened.at >= hold.happened.at)
    first = min(days, default=None)
    if first is None or (hold.until is not None and hold.until <= first):
        return hold
    return replace(hold, until=first)
