"""The gun at the hot end of each row, every evening after feeding; and rows whose heater failed."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, time
from functools import lru_cache
from random import Random

from keeper.husbandry.events import Heat, Zone
from keeper.husbandry.place import place_of, walking_key
from keeper.rehearsal.resident import Resident
from keeper.rehearsal.room import Room

READ = time(22, 10)
COLD_C = 25.2
"""Well below what any profile asks of a hot end for digestion."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ColdSpell:
    """A row whose heater fails: read cold from *first* to *last*, and half of it will not eat."""

    row: str
    first: date
    last: date

    def holds(self, row: str | None, day: date) -> bool:
        return row == self.row and self.first <= day <= self.last


@lru_cache(maxsize=50_000)
def row_of(written: str | None) -> str | None:
    """``A1`` of ``A1·3``; None where no row is named."""
    place = place_of(written or "")
    return f"{place.rack}{place.row}" if place else None


def readings(room: Room, day: date, rng: Random, spells: Sequence[ColdSpell]) -> Iterator[Heat]:
    """One reading of each row in which animals live, in walking order."""
    for row, resident in sorted(_rows(room).items(), key=lambda each: walking_key(each[0])):
        heat = resident.profile.heat
        middle_c = (heat.hot_low_c.value + heat.hot_high_c.value) / 2
        cold = any(spell.holds(row, day) for spell in spells)
        temp_c = (COLD_C if cold else middle_c) + min(0.8, max(-0.8, rng.gauss(0, 0.3)))
        yield Heat(
            place=row,
            happened=room.happened(day, READ),
            zone=Zone.HOT,
            temp_c=round(temp_c, 1),
            read_with="gun",
        )


def _rows(room: Room) -> dict[str, Resident]:
    """The first animal of each row, by whose kind the row is kept warm."""
    found: dict[str, Resident] = {}
    for resident in room.present():
        row = row_of(resident.place)
        if row is not None:
            found.setdefault(row, resident)
    return found
