"""Where a tub stands: rack, row and tub, read from what keepers write on labels."""

import re
from dataclasses import dataclass
from functools import lru_cache

_PLACE = re.compile(r"^\s*([^\W\d_]{1,3})\s*[-. ·/]?\s*(\d{1,3})\s*[-. ·/:]\s*(\d{1,3})\s*$")


@dataclass(frozen=True, slots=True, order=True)
class Place:
    """A tub's position; sorts in walking order: rack, then row, then tub."""

    rack: str
    row: int
    tub: int

    def __str__(self) -> str:
        return f"{self.rack}{self.row}·{self.tub}"


@lru_cache(maxsize=20_000)
def place_of(text: str) -> Place | None:
    """Read a written place; None when *text* does not name rack, row and tub.

    >>> place_of("A-1-2"), str(place_of("b3·6"))
    (Place(rack='A', row=1, tub=2), 'B3·6')
    >>> place_of("shelf by the window") is None
    True
    """
    match = _PLACE.match(text)
    if match is None:
        return None
    rack, row, tub = match.groups()
    return Place(rack.upper(), int(row), int(tub))


@lru_cache(maxsize=20_000)
def walking_key(text: str | None) -> tuple[int, str, int, int, str]:
    """Sort key of a written place: known tubs in walking order, then other places, then none."""
    if not text:
        return (2, "", 0, 0, "")
    place = place_of(text)
    if place is None:
        return (1, text.casefold(), 0, 0, text)
    return (0, place.rack, place.row, place.tub, text)
