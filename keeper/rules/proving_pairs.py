"""Which pairing of two animals would tell most of whether one of them carries a recessive gene.

An animal in doubt is put to one that shows the gene, or surely carries it: one young that shows
it proves the animal, and each that does not makes it less likely.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from math import log2
from typing import Literal

from keeper.husbandry.animal import AnimalId, Sex
from keeper.rules.genetics.answers import CopyOdds

CLUTCH = 8
"""Young by which pairings are compared; common practice, no source."""

LEAST, MOST = 0.01, 0.99
"""Less and more likely carriers than this are no longer asked about; common practice, no source."""

_PLAIN = {"visual": 0.5, "het": 0.75}
"""Of a carrier's young by such a mate, how many do not show it: two and three in four."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ProvingPair:
    """tested: the one in doubt, *before* how likely a carrier. tells: bits that a clutch of
    ``CLUTCH`` young is expected to tell of it."""

    tested: AnimalId
    mate: AnimalId
    mate_is: Literal["visual", "het"]
    before: float
    tells: float


def proving_pairs(
    odds: Mapping[AnimalId, CopyOdds], sexes: Mapping[AnimalId, Sex]
) -> tuple[ProvingPair, ...]:
    """Every pairing of a female and a male of *odds* that tests one of them, most telling first.

    Where the two would tell as much, the likelier carrier comes first, then the older key.
    """
    found = (
        pair
        for tested, its in odds.items()
        if its.sure is None
        for pair in _pairs(tested, its.het or 0.0, odds, sexes)
    )
    return tuple(sorted(found, key=lambda p: (-p.tells, -p.before, p.tested, p.mate)))


def best_of_each(pairs: tuple[ProvingPair, ...]) -> tuple[ProvingPair, ...]:
    """The most telling pairing of each animal in doubt, in the order of *pairs*."""
    best: dict[AnimalId, ProvingPair] = {}
    for pair in pairs:
        best.setdefault(pair.tested, pair)
    return tuple(best.values())


def tells(before: float, mate_is: Literal["visual", "het"], young: int = CLUTCH) -> float:
    """Bits by which *young* seen leave less doubt of a carrier of odds *before*.

    >>> round(tells(0.5, "visual"), 3), round(tells(0.5, "het"), 3)
    (0.982, 0.758)
    """
    plain = _PLAIN[mate_is] ** young
    all_plain = before * plain + 1.0 - before
    return _doubt(before) - all_plain * _doubt(before * plain / all_plain)


def _pairs(
    tested: AnimalId,
    before: float,
    odds: Mapping[AnimalId, CopyOdds],
    sexes: Mapping[AnimalId, Sex],
) -> Iterator[ProvingPair]:
    wanted = _OTHER.get(sexes.get(tested, Sex.UNKNOWN))
    if wanted is None or not LEAST <= before <= MOST:
        return
    for mate, its in odds.items():
        mate_is = _KINDS.get(its.sure)
        if mate_is is not None and sexes.get(mate) is wanted:
            yield ProvingPair(
                tested=tested,
                mate=mate,
                mate_is=mate_is,
                before=before,
                tells=tells(before, mate_is),
            )


def _doubt(odds: float) -> float:
    """Bits of doubt of yes or no."""
    return -sum(p * log2(p) for p in (odds, 1.0 - odds) if p > 0)


_OTHER = {Sex.FEMALE: Sex.MALE, Sex.MALE: Sex.FEMALE}
_KINDS: Mapping[int | None, Literal["visual", "het"]] = {2: "visual", 1: "het"}
