"""Holds set by hand, past ones too, each with the day it was ended as its end."""

from collections.abc import Iterable
from dataclasses import replace
from datetime import date

from keeper.actions.keeping import Keeping
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import HoldEnded, HoldSet
from keeper.store import reading

MOST = 12


def holds_ever(
    keeping: Keeping, animals: Iterable[AnimalId], until: date
) -> dict[AnimalId, list[HoldSet]]:
    """The latest holds of each animal, oldest first, as they had been set and ended by a day."""
    keys = list(animals)
    holds = reading.recent(keeping.book, HoldSet, keys, MOST, until=until)
    ends = reading.recent(keeping.book, HoldEnded, keys, MOST, until=until)
    return {key: [_ended(hold, ends[key]) for hold in holds[key]] for key in keys}


def _ended(hold: HoldSet, ends: Iterable[HoldEnded]) -> HoldSet:
    """*hold* until the first ending of its kind after it, if that comes before its own end."""
    days = (
        end.happened.day
        for end in ends
        if end.kind is hold.kind and end.happened.at >= hold.happened.at
    )
    first = min(days, default=None)
    if first is None or (hold.until is not None and hold.until <= first):
        return hold
    return replace(hold, until=first)
