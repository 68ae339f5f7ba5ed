"""A tub label in words: who is in the carrier, and the digits beneath its picture code."""

from collections.abc import Sequence
from dataclasses import dataclass

from keeper.husbandry.animal import Sex
from keeper.husbandry.now import AnimalNow

SENTINEL = ";"
"""What a scanned label begins with, so that the window tells a scanner from a hand."""

COLUMNS, ROWS = 3, 9
A_PAGE = COLUMNS * ROWS

_SEX = {Sex.FEMALE: "female", Sex.MALE: "male", Sex.UNKNOWN: "sex ?"}


@dataclass(frozen=True, slots=True, kw_only=True)
class TubLabel:
    """scanned: what its picture code holds. name is the code where there is no name."""

    name: str
    who: str
    kind: str
    caution: str
    digits: str
    scanned: str


def tub_label(row: AnimalNow, *, species: str, number: str) -> TubLabel:
    """The label of *row*; *number* is the opaque one. No place: the carrier moves with her.

    The year of hatching stands first: where a line is cut, its end is lost.
    """
    hatched = f"{row.hatched_first.year} " if row.hatched_first else ""
    code = f"{row.code} · " if row.name else ""
    return TubLabel(
        name=row.called,
        who=f"{code}{_SEX[row.sex]}",
        kind=f"{hatched}{species}",
        caution=row.caution or "",
        digits=" ".join(number[n : n + 4] for n in range(0, len(number), 4)),
        scanned=f"{SENTINEL}{number}",
    )


def label_pages(labels: Sequence[TubLabel]) -> list[tuple[TubLabel, ...]]:
    """Labels cut into pages, in their order."""
    return [tuple(labels[n : n + A_PAGE]) for n in range(0, len(labels), A_PAGE)]
