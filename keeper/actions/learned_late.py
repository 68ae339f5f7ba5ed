"""Refusals that were only learned of on a later day: what the watch could not say in time."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from datetime import date

from keeper.actions.keeping import Keeping
from keeper.actions.rounds import night_of
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.now import AnimalNow
from keeper.rules.causes import Cause
from keeper.rules.learned_late import Late, told_late
from keeper.store.put_right import refusals_put_right


def learned_late(
    keeping: Keeping, rows: Iterable[AnimalNow], on: date
) -> dict[AnimalId, list[Late]]:
    """Refusals since the last meal by which another entry was put right on a later night.

    A look before the night's last hour belongs to the night, as the round has it.
    """
    eaten_on = {row.animal: row.eaten_on for row in rows if row.refused_since > 0}
    late: dict[AnimalId, list[Late]] = {}
    for animal, refusals in refusals_put_right(keeping.book, eaten_on, on).items():
        meal_on = eaten_on[animal] or date.min
        for night, written in refusals:
            if meal_on < night < night_of(written):
                late.setdefault(animal, []).append(Late(night, written.date()))
    return late


def with_late(causes: Iterable[Cause], late: Mapping[AnimalId, Sequence[Late]]) -> Sequence[Cause]:
    """*causes*, each with what was learned late of the refusals that raised it."""
    told = []
    for cause in causes:
        own = [
            each for key in cause.members for each in late.get(key, ()) if each.night >= cause.since
        ]
        told.append(replace(cause, because=(*cause.because, *told_late(own))))
    return told
