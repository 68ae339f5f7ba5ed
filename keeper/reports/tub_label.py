"""Tub labels in words: who is in the carrier, and which tub it stands in.

The label of an animal travels with it; the label of a tub's place stays on the tub.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from keeper.husbandry.animal import Sex
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import place_of
from keeper.language import tr, tr_table

SENTINEL = ";"
"""What a scanned label begins with, so that the window tells a scanner from a hand."""

_SEX = tr_table({Sex.FEMALE: "female", Sex.MALE: "male", Sex.UNKNOWN: "sex ?"})


@dataclass(frozen=True, slots=True, kw_only=True)
class TubLabel:
    """scanned: what its picture code holds. name is the code where there is no name."""

    name: str
    who: str
    kind: str
    caution: str
    digits: str
    scanned: str


@dataclass(frozen=True, slots=True, kw_only=True)
class PlaceLabel:
    """Where a tub stands: its place as it is walked to, the same in words, and its picture code."""

    place: str
    told: str
    scanned: str


Label = TubLabel | PlaceLabel


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


def place_label(written: str) -> PlaceLabel:
    """The label of the place *written*; of one in no rack its words alone.

    The picture code holds the place with hyphens, which every scanner can type.

    >>> place_label("A1·3").scanned, place_label("shelf by the window").told
    (';A1-3', '')
    """
    place = place_of(written)
    if place is None:
        return PlaceLabel(place=written, told="", scanned=f"{SENTINEL}{written}")
    told = tr("rack {rack}, row {row}, tub {tub}", rack=place.rack, row=place.row, tub=place.tub)
    scanned = f"{SENTINEL}{place.rack}{place.row}-{place.tub}"
    return PlaceLabel(place=str(place), told=told, scanned=scanned)


def label_pages(
    labels: Sequence[Label], a_page: int, first: int = 1
) -> list[tuple[Label | None, ...]]:
    """Labels cut into sheets of *a_page*, in their order; None: a label used up before.

    first: which label of the first sheet is still there, counted from 1.
    """
    slots = (*[None] * (first - 1), *labels)
    return [tuple(slots[n : n + a_page]) for n in range(0, len(slots), a_page)]


def next_label(count: int, a_page: int, first: int = 1) -> int:
    """Which label of the last sheet comes next after *count* from *first* on.

    >>> next_label(3, 27), next_label(27, 27), next_label(2, 27, first=27)
    (4, 1, 2)
    """
    return (first - 1 + count) % a_page + 1


def first_typed(text: str, a_page: int) -> int:
    """The first label that is free on a sheet of *a_page*, as it is typed; nothing: a whole sheet.

    Raises:
        ValueError: no label of the sheet.

    >>> first_typed("", 27), first_typed(" 4 ", 27)
    (1, 4)
    """
    wanted = text.strip()
    if not wanted:
        return 1
    if not (wanted.isascii() and wanted.isdecimal()) or not 1 <= int(wanted) <= a_page:
        raise ValueError(
            tr("{typed} is no label of a sheet; 1 to {last} is right.", typed=wanted, last=a_page)
        )
    return int(wanted)
