"""Find animals by code, name or place while a keeper types."""

from collections.abc import Sequence

from keeper.actions.tub_labels import bears, is_label
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import place_of


def found(rows: Sequence[AnimalNow], text: str, most: int = 8) -> list[AnimalNow]:
    """The animals of *rows* that *text* may mean, best first; none for an empty text.

    The digits of a label mean its animal alone. A place may be typed any way a keeper writes
    one. Whole words come before beginnings, beginnings before what only holds the text.

    >>> wren = AnimalNow(animal=1, code="26-031", species="house_snake", name="Wren", place="B4·2")
    >>> [row.name for row in found([wren], "b4-2")], found([wren], "ingrid")
    (['Wren'], [])
    """
    wanted = text.strip().casefold()
    if not wanted:
        return []
    borne = [row for row in rows if bears(row.animal, wanted)] if is_label(wanted) else []
    if borne:
        return borne
    ranked = [(_rank(row, wanted), n) for n, row in enumerate(rows)]
    return [rows[n] for rank, n in sorted(r for r in ranked if r[0] is not None)][:most]


def _rank(row: AnimalNow, wanted: str) -> int | None:
    """0: is it, 1: begins so, 2: holds it; None: does not fit."""
    place = place_of(wanted)
    if place is not None and row.place is not None and place_of(row.place) == place:
        return 0
    words = [word.casefold() for word in (row.code, row.name, row.place) if word]
    bare = _bare(wanted)
    if wanted in words:
        return 0
    if any(word.startswith(wanted) or (bare and _bare(word).startswith(bare)) for word in words):
        return 1
    return 2 if any(wanted in word for word in words) else None


def _bare(word: str) -> str:
    """Without what only separates: ``b4·2`` and ``b4-2`` are typed alike."""
    return "".join(letter for letter in word if letter.isalnum())
