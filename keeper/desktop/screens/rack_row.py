"""A rack row as it stands: the number on each tub, and the empty tubs between."""

from __future__ import annotations

from collections.abc import Sequence

from keeper.desktop.widgets.drawer_shape import MOST_TUBS
from keeper.husbandry.place import place_of
from keeper.language import tr

GAPS_MOST = 12
"""More numbers than that between the tubs of a row are another numbering, not empty tubs."""


def row_key(place: str | None) -> tuple[str, int]:
    """Rack and row of a written place; a place that is not one is a row of its own."""
    found = place_of(place or "")
    return (found.rack, found.row) if found else (place or "", 0)


def row_words(key: tuple[str, int]) -> str:
    """The row as it is read out.

    >>> row_words(("B", 3)), row_words(("shelf", 0)), row_words(("", 0))
    ('rack B row 3', 'shelf', 'no place')
    """
    rack, number = key
    if not number:
        return rack or tr("no place")
    return tr("rack {rack} row {number}", rack=rack, number=number)


def tub_numbers(places: Sequence[str | None]) -> list[int]:
    """The number on each tub of a row: the label's, or its order where labels cannot say.

    >>> tub_numbers(["B3·2", "B3·4"]), tub_numbers(["B3·2", "B3·2"]), tub_numbers(["shelf"])
    ([2, 4], [1, 2], [1])
    """
    found = [place_of(place or "") for place in places]
    labels = [place.tub for place in found if place is not None]
    return labels if len(set(labels)) == len(places) else list(range(1, len(places) + 1))


def tub_words(places: Sequence[str | None], index: int) -> str:
    """The number on the tub at *index* of its row, and the last number where there are more.

    >>> tub_words(["B3·2", "B3·4"], 0), tub_words(["B3·2"], 0)
    ('2 of 4', '2')
    """
    numbers = tub_numbers(places)
    own = str(numbers[index])
    return own if len(numbers) == 1 else tr("{number} of {last}", number=own, last=max(numbers))


def with_gaps(places: Sequence[str | None]) -> list[tuple[int, int | None]]:
    """Tub numbers of a row in order, each with its index in *places*; None is an empty tub.

    >>> with_gaps(["B3·2", "B3·4"])
    [(2, 0), (3, None), (4, 1)]
    """
    by_number = {number: index for index, number in enumerate(tub_numbers(places))}
    first, last = min(by_number), max(by_number)
    if last - first + 1 - len(by_number) > GAPS_MOST:
        return sorted(by_number.items())
    return [(number, by_number.get(number)) for number in range(first, last + 1)]


def shown_from(count: int, at: int | None) -> int:
    """The first of *count* tubs to show so that the one at *at* is among them."""
    return max(0, min((at or 0) - MOST_TUBS // 2, count - MOST_TUBS))
