"""Whose odds have moved between two answers: cards given with an animal may be out of date."""

from dataclasses import dataclass

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.profile import practice
from keeper.rules.genetics.answers import CopyOdds, GeneAnswer

LEAST = practice(0.005)
"""Odds that moved by less read the same in whole percent, or nearly."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Moved:
    """before, after: None where the odds could not be told."""

    animal: AnimalId
    before: CopyOdds | None
    after: CopyOdds | None


def changed(before: GeneAnswer, after: GeneAnswer, least: float = LEAST.value) -> tuple[Moved, ...]:
    """Animals of both answers whose odds differ by *least* or more, or became told or untold."""
    everyone = (before.odds.keys() | before.untold.keys()) & (
        after.odds.keys() | after.untold.keys()
    )
    found = (
        Moved(animal=animal, before=before.odds.get(animal), after=after.odds.get(animal))
        for animal in sorted(everyone)
    )
    return tuple(each for each in found if _differ(each.before, each.after, least))


def _differ(before: CopyOdds | None, after: CopyOdds | None, least: float) -> bool:
    if before is None or after is None:
        return before is not after
    apart = (before.none - after.none, before.one - after.one, before.two - after.two)
    return max(map(abs, apart)) >= least
