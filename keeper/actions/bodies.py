"""Animals held against each other: weight for length, and weights that fit another's tub."""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import replace
from datetime import date

from keeper.actions.keeping import Keeping
from keeper.husbandry.animal import AnimalId, Sex
from keeper.husbandry.events import HoldKind, Measured
from keeper.husbandry.reasons import Reason
from keeper.rules.fattening import LENGTH_NEAR_DAYS
from keeper.rules.growth.condition import Body, conditions
from keeper.rules.swaps import Trail, swaps
from keeper.rules.watch_facts import WatchFacts
from keeper.store import reading


def measures_of(keeping: Keeping, on: date) -> dict[AnimalId, list[Measured]]:
    """Lengths and body scores of every animal up to a day, oldest first."""
    found: dict[AnimalId, list[Measured]] = defaultdict(list)
    for entry in reading.all_of(keeping.book, Measured):
        if entry.event.happened.day <= on:
            found[entry.event.animal].append(entry.event)
    return {a: sorted(each, key=lambda m: m.happened) for a, each in found.items()}


def compared(facts: Sequence[WatchFacts], on: date) -> list[WatchFacts]:
    """The same facts, with what only shows when animals are held against each other."""
    trails = [_trail(each) for each in facts if not _carries_eggs(each)]
    swapped = swaps(trails, on)
    condition = _conditions(facts)
    return [
        replace(each, swap=swapped.get(each.now.animal), condition=condition.get(each.now.animal))
        for each in facts
    ]


def _carries_eggs(facts: WatchFacts) -> bool:
    return facts.held(HoldKind.GRAVID, HoldKind.PRE_LAY)


def _trail(facts: WatchFacts) -> Trail:
    """Her fasted weights, the last of each day."""
    by_day = {day: grams for day, grams, inside in facts.empties or () if not inside}
    return Trail(
        now=facts.now,
        profile=facts.profile,
        weights=sorted(by_day.items()),
        cleaned=facts.cleaned,
    )


def _conditions(facts: Sequence[WatchFacts]) -> dict[AnimalId, Reason]:
    """Each kind has a line of its own: species and sex."""
    kinds: dict[tuple[str, Sex], list[Body]] = defaultdict(list)
    for each in facts:
        body = _body(each)
        if body is not None:
            kinds[each.profile.slug, each.now.sex].append(body)
    return {a: why for bodies in kinds.values() for a, why in conditions(bodies).items()}


def _body(facts: WatchFacts) -> Body | None:
    """The newest length and the fasted weight nearest to it, if one is near enough."""
    lengths = [(m.happened.day, m.svl_cm) for m in facts.measures if m.svl_cm is not None]
    fasted = [(day, grams) for day, grams, inside in facts.empties or () if not inside]
    if not lengths or not fasted:
        return None
    on, svl_cm = lengths[-1]
    apart, mass_g = min((abs((day - on).days), grams) for day, grams in fasted)
    if apart > LENGTH_NEAR_DAYS.value:
        return None
    return Body(animal=facts.now.animal, on=on, svl_cm=svl_cm, mass_g=mass_g)
