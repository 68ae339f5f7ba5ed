"""The lines of the stock register, and what they are made from."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import Any

from keeper.husbandry.animal import Sex

Key = tuple[int, int]


class Change(StrEnum):
    """What happened to the stock, or to what is written of it."""

    ENTERED = "entered"  # it was here, or hatched here, when it was written into the book
    CAME = "came in"
    BORN = "born"
    NUMBERED = "numbered"  # its birth stands already, without a number
    SOLD = "sold"
    LOAN = "on loan"
    DIED = "died"
    MISSING = "missing"
    FOUND = "found"
    RETURNED = "returned"
    HERE = "here"
    CODE = "number put right"
    SPECIES = "species put right"
    PERMIT = "permit written"
    GONE = "no longer stands"
    AGAIN = "stands again"


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """An entry under its batch and its number there."""

    key: Key
    event: Any


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """One batch as it came to be known. ceased: entries that no longer stand with it."""

    written_on: date
    reason: str | None
    ceased: Sequence[Key] = ()
    again: Sequence[Key] = ()
    told: Sequence[Told] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """One line of the register.

    code: the animal's number, or its clutch where it has none (unnumbered). change: by how many
    the animals of *species* here become more; total: how many they are then. count: of how many
    animals it speaks. refers: the number of the line that no longer stands, or stands again.
    permits: those known then, on lines of coming and going.
    """

    number: int
    written_on: date
    happened_on: date
    code: str
    species: str
    sex: Sex
    what: Change
    change: int
    total: int
    count: int = 1
    unnumbered: bool = False
    hatched: tuple[date, date] | None = None
    clutch: str | None = None
    dam: str | None = None
    bought: bool = False
    note: str | None = None
    reason: str | None = None
    permits: tuple[str, ...] = ()
    refers: int | None = None


def as_at(lines: Sequence[Line], day: date) -> list[Line]:
    """The lines that were written by the end of *day*."""
    return [line for line in lines if line.written_on <= day]


def totals(lines: Iterable[Line]) -> dict[str, int]:
    """How many animals of each species are here after *lines*."""
    return {line.species: line.total for line in lines}
