"""Lines of the watch put aside until something happens: told as asides with the day it did."""

from collections.abc import Collection, Iterator
from datetime import date

from keeper.actions.keeping import Keeping
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import (
    AnimalEvent,
    AsideUntil,
    Clutch,
    Offer,
    Result,
    ShedSign,
    ShedStage,
    Snooze,
    Weighing,
)
from keeper.husbandry.house import Awaited
from keeper.store import reading

NO_END = date.max
"""The end of an aside whose awaited event has not happened."""

_KINDS: dict[Awaited, type[AnimalEvent]] = {
    Awaited.SHED: ShedSign,
    Awaited.MEAL: Offer,
    Awaited.WEIGHING: Weighing,
    Awaited.EGGS: Clutch,
}


def asides_until(
    keeping: Keeping, animals: Collection[AnimalId], on: date
) -> Iterator[tuple[reading.Entry[AsideUntil], Snooze]]:
    """Each aside of *animals* up to *on* with what it comes to: it ends when the awaited was."""
    for entry in reading.all_of(keeping.book, AsideUntil):
        aside = entry.event
        if aside.animal in animals and aside.happened.day <= on:
            yield entry, _ended(keeping, aside, on)


def _ended(keeping: Keeping, aside: AsideUntil, on: date) -> Snooze:
    entries = reading.history(keeping.book, _KINDS[aside.awaited], aside.animal)
    ends = (
        entry.event.happened.day
        for entry in entries
        if entry.event.happened.at > aside.happened.at and entry.event.happened.day <= on
        if _is_awaited(entry.event)
    )
    return Snooze(
        animal=aside.animal,
        happened=aside.happened,
        watch_kind=aside.watch_kind,
        until=next(ends, NO_END),
        reason=aside.reason,
    )


def _is_awaited(event: AnimalEvent) -> bool:
    if isinstance(event, ShedSign):
        return event.stage is ShedStage.SHED
    if isinstance(event, Offer):
        return event.result in (Result.TAKEN, Result.PART)
    return True
