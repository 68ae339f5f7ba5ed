"""How an expectation is known, in a few words beside a band."""

from keeper.language import tr
from keeper.reports.figures import counted, percent
from keeper.reports.words import word_of

MOSTLY = 0.5
LEAST = 0.005  # less of it would be told as 0 per cent


def basis_words(basis: str, own_share: float, own_animals: int) -> str:
    """What a curve is: the profile's, the keeper's own stock, or how much of each.

    >>> from keeper.reports.figures import plain
    >>> plain(basis_words("provisional", 0.79, 36)), plain(basis_words("provisional", 0.0, 0))
    ('own 79 %, 36 animals', 'provisional curve')
    >>> plain(basis_words("provisional", 0.2, 5))
    'provisional curve, own 20 %, 5 animals'
    """
    profile = word_of("basis", basis)
    if own_share < LEAST:
        return profile
    own = tr(
        "own {share}, {animals}",
        share=percent(round(100 * own_share)),
        animals=_animals(own_animals),
    )
    return own if own_share >= MOSTLY else f"{profile}, {own}"


_animals = counted("animal", "animals")
