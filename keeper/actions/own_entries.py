"""One animal's entries of a day with their keys, and what was struck through in its record."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any

from keeper.actions.keeping import Keeping
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import Offer, Weighing
from keeper.husbandry.genes import GeneRead
from keeper.store import reading
from keeper.store.corrections import corrections
from keeper.store.journal import EntryKey

Correctable = Weighing | Offer | GeneRead
CORRECTABLE: Sequence[type[Any]] = (Weighing, Offer, GeneRead)
"""Kinds whose value can be put right on an animal's page."""


@dataclass(frozen=True, slots=True, kw_only=True)
class OwnEntry:
    """A standing entry and the key by which it can be corrected."""

    event: Correctable
    key: EntryKey


@dataclass(frozen=True, slots=True, kw_only=True)
class Struck:
    """An entry that was put right: as it was, and the reason in the keeper's words."""

    event: Correctable
    reason: str
    by: str

    @property
    def day(self) -> date:
        return self.event.happened.day


def correctable_on(keeping: Keeping, animal: AnimalId, day: date) -> list[OwnEntry]:
    """The weighings, offers and genes of *animal* on *day*, weighings first."""
    return [
        OwnEntry(event=entry.event, key=entry.key)
        for kind in CORRECTABLE
        for entry in reading.history(keeping.book, kind, animal)
        if entry.event.happened.day == day
    ]


def struck_through(keeping: Keeping, animal: AnimalId, on: date) -> tuple[Struck, ...]:
    """What was put right among the weighings, offers and genes up to *on*."""
    return tuple(
        Struck(event=found.event, reason=found.by.reason or "", by=found.by.keeper)
        for kind in CORRECTABLE
        for found in corrections(keeping.book, kind, animal)
        if found.event.happened.day <= on
    )
