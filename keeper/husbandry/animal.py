"""Who an animal is: sex and how it is known, stage of life, whether it is still here."""

from enum import StrEnum

AnimalId = int
"""Key of an animal inside one book. Between books an animal is known by its uid."""


class Sex(StrEnum):
    FEMALE = "female"
    MALE = "male"
    UNKNOWN = "unknown"


class SexedBy(StrEnum):
    """How a sex is known, weakest first."""

    WRITTEN = "written"  # stood in records that were taken in, method unknown
    TAIL = "tail"
    POPPED = "popped"
    PROBED = "probed"
    SIRED = "sired"
    LAID = "laid"


class Stage(StrEnum):
    """Stage of life; each species profile says where one ends and the next begins."""

    HATCHLING = "hatchling"
    JUVENILE = "juvenile"
    SUBADULT = "subadult"
    ADULT = "adult"


class Status(StrEnum):
    KEPT = "kept"
    ON_LOAN = "on loan"
    MISSING = "missing"
    SOLD = "sold"
    DIED = "died"


IN_THE_ROOM = frozenset({Status.KEPT})
"""Statuses of animals that stand in a tub here and are due feeds."""
