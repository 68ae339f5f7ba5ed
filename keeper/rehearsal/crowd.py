"""Animals without a story, as many as are wanted, for measuring how the program bears them."""

from collections.abc import Iterator
from datetime import date, timedelta
from random import Random
from string import ascii_uppercase

from keeper.husbandry.animal import Sex
from keeper.rehearsal.character import Character

TUBS, ROWS = 10, 6
YOUNG = 8
"""As many hatch together."""

KINDS = {"house_snake": 14, "corn_snake": 3, "ball_python": 2, "western_hognose": 1}
OLDEST_DAYS, YOUNGEST_DAYS = 900, 40
FIRST_RACK = 3


def crowd(count: int, first: date, last: date, seed: int) -> Iterator[Character]:
    """*count* animals hatched evenly before and during the years from *first* to *last*."""
    rng = Random(f"{seed}/crowd")
    oldest, span = first - timedelta(days=OLDEST_DAYS), (last - first).days
    for brood in range(0, count, YOUNG):
        species = rng.choices([*KINDS], [*KINDS.values()])[0]
        born = oldest + timedelta(days=rng.randrange(OLDEST_DAYS + span - YOUNGEST_DAYS))
        for number in range(brood, min(brood + YOUNG, count)):
            yield _one(number, species, born, first, rng)


def place(number: int) -> str:
    """Tub of the animal with this number, racks after those of the invented house.

    >>> place(0), place(59), place(60)
    ('D1·1', 'D6·10', 'E1·1')
    """
    row, tub = divmod(number, TUBS)
    rack, row = divmod(row, ROWS)
    return f"{_letters(rack + FIRST_RACK)}{row + 1}·{tub + 1}"


def _letters(number: int) -> str:
    """A to Z, then AA and on.

    >>> _letters(0), _letters(25), _letters(26)
    ('A', 'Z', 'AA')
    """
    high, low = divmod(number, len(ascii_uppercase))
    return (_letters(high - 1) if high else "") + ascii_uppercase[low]


def _one(number: int, species: str, born: date, first: date, rng: Random) -> Character:
    here = born >= first
    return Character(
        code=f"X-{number + 1:05}",
        species=species,
        sex=rng.choice((Sex.FEMALE, Sex.MALE)),
        born=born,
        stays=((max(born, first), place(number)),),
        clutch=f"{born.year % 100}-x{number // YOUNG + 1}" if here else None,
    )
