"""What proving out costs: how young that do not show a recessive gene lower the odds of it.

One young that shows it ends the question; these figures are of litters in which none did. The
mate's odds count too: a mate that may be clear proves less, and never more than it carries.
"""

from keeper.husbandry.profile import practice
from keeper.rules.genetics.answers import CopyOdds

PROVEN_BELOW = practice(0.05)
"""A possible het under this counts as good as clear."""

MOST_YOUNG = 400
"""More than one pairing ever gives; a question that needs as many is answered by None."""


def normals_chance(candidate: CopyOdds, mate: CopyOdds, young: int) -> float:
    """The chance that none of so many *young* shows it."""
    return sum(
        odds * its_odds * (1 - copies * its_copies / 4) ** young
        for copies, odds in enumerate((candidate.none, candidate.one, candidate.two))
        for its_copies, its_odds in enumerate((mate.none, mate.one, mate.two))
    )


def left_after(candidate: CopyOdds, mate: CopyOdds, normals: int) -> float:
    """The chance that it carries the gene, after so many young of which none shows it.

    >>> from keeper.rules.genetics.answers import TWO_COPIES
    >>> [round(left_after(possible_het(2 / 3), TWO_COPIES, n), 3) for n in (1, 2, 3, 4)]
    [0.5, 0.333, 0.2, 0.111]
    """
    without = candidate.none
    whole = normals_chance(candidate, mate, normals)
    return 1 - without / whole if whole else candidate.carries


def normals_needed(
    candidate: CopyOdds, mate: CopyOdds, below: float = PROVEN_BELOW.value
) -> int | None:
    """The fewest young, none of which shows it, that leave less than *below*; None: too many."""
    return next((n for n in range(MOST_YOUNG) if left_after(candidate, mate, n) < below), None)


def possible_het(chance: float) -> CopyOdds:
    """An animal that carries one copy with this chance, and never two."""
    return CopyOdds(1 - chance, chance, 0.0)
