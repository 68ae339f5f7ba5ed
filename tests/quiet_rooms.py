"""Invented rooms of 300 animals in 30 rows of ten: their offers, and the heat read of each row.

A row's hot end lies about 31 degrees by 0.8; the whole room drifts by 0.7 from night to night,
and each row strays by 0.7 (the tub, the hand and the gun together). Each row is read once a
feed night, and was so on eight nights before. Invented figures, of no source.
"""

import random
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from keeper.rules.causes import causes
from keeper.rules.cooler_rows import Cooler, cooler_rows
from keeper.rules.refused_groups import RefusalInRow

FIRST = date(2026, 9, 23)
ROWS = 30
USUAL, COLD = 0.08, 0.32
BEFORE = 8

Readings = dict[str, list[tuple[date, float]]]


@dataclass(frozen=True, slots=True)
class Room:
    """Nights three days apart, each a list of offers, and every reading up to the last."""

    nights: tuple[tuple[RefusalInRow, ...], ...]
    readings: Readings

    def two(self, at: int) -> tuple[RefusalInRow, ...]:
        """The offers of the night *at* and of the one before it."""
        return (*self.nights[at - 1], *self.nights[at])

    def cooler(self, at: int) -> Mapping[str, Mapping[date, Cooler]]:
        """What was known of the rows' heat on the night *at*."""
        days = [night[0].night for night in self.nights[at - 1 : at + 1]]
        known = {p: [r for r in told if r[0] <= days[-1]] for p, told in self.readings.items()}
        return cooler_rows(known, days)


def a_row(number: int) -> str:
    return f"{'ABCDEFGH'[number // 4]}{number % 4 + 1}"


def a_room(seed: int, nights: int, *, cold_row: int | None = None, drop_c: float = 0.0) -> Room:
    """A room; from its second night on *cold_row* refuses four times as much, so much cooler."""
    rng = random.Random(seed)
    usual = [31 + rng.gauss(0, 0.8) for _ in range(ROWS)]
    readings: Readings = {a_row(row): [] for row in range(ROWS)}
    told = []
    for number in range(-BEFORE, nights):
        day = FIRST + timedelta(days=3 * number)
        cold = cold_row if number >= 1 else None
        drift = rng.gauss(0, 0.7)
        for row in range(ROWS):
            temp_c = usual[row] + drift + rng.gauss(0, 0.7) - (drop_c if row == cold else 0)
            readings[a_row(row)].append((day, temp_c))
        if number >= 0:
            told.append(_night(rng, day, cold))
    return Room(tuple(told), readings)


def _night(rng: random.Random, day: date, cold: int | None) -> tuple[RefusalInRow, ...]:
    return tuple(
        RefusalInRow(
            animal=animal,
            place=f"{a_row(animal // 10)}·{animal % 10 + 1}",
            night=day,
            refused=rng.random() < (COLD if animal // 10 == cold else USUAL),
            own_rate=USUAL,
            bag=f"bag {animal % 3}",
            keeper="first" if animal < 150 else "second",
        )
        for animal in range(10 * ROWS)
    )


def found_within_two_nights(rooms: Sequence[Room], row: str, *, heat_read: bool) -> int:
    """Rooms in which a cause names *row* on its first or its second cold night."""
    return sum(
        any(
            cause.name == row
            for at in (1, 2)
            for cause in causes(room.two(at), None, room.cooler(at) if heat_read else None)
        )
        for room in rooms
    )
