"""Who stands where, for whoever must carry them out."""

from collections.abc import Collection, Sequence
from datetime import date

from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.kept_lines import clutch_facts
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.care import EggsPlaced
from keeper.husbandry.events import HoldKind
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import place_of
from keeper.language import tr
from keeper.reports.carry_out import Carried, CarryFacts, EggsLying
from keeper.rules.carrying import carrier_of, is_digesting, order_of
from keeper.store import reading


def carry_facts(keeping: Keeping) -> CarryFacts:
    """Everyone in the room and every clutch whose eggs are in, as of today.

    Raises:
        LookupError: nobody is there to be carried.
    """
    on = keeping.today
    everyone = animals_on(keeping, on)
    here = [row for row in everyone if row.in_the_room]
    eggs = _eggs(keeping, everyone, on)
    if not here and not eggs:
        raise LookupError(tr("No animal is in the room; there is nobody to carry."))
    held = _held(keeping, on)
    return CarryFacts(
        printed=keeping.now(),
        eggs=eggs,
        animals=[_carried(keeping, row, held.get(row.animal, ()), on) for row in here],
    )


def _held(keeping: Keeping, on: date) -> dict[AnimalId, set[HoldKind]]:
    """Kinds of the holds that run; one with a pre-lay shed and no clutch since carries eggs."""
    held = {
        animal: {hold.kind for hold in holds}
        for animal, holds in reading.open_holds(keeping.book, on).items()
    }
    for animal in reading.before_laying(keeping.book, on):
        row = reading.animal_now(keeping.book, animal)
        if row is not None and _is_to_lay(row):
            held.setdefault(animal, set()).add(HoldKind.PRE_LAY)
    return held


def _is_to_lay(row: AnimalNow) -> bool:
    return row.clutch_on is None or (row.shed_on is not None and row.clutch_on < row.shed_on)


def _carried(keeping: Keeping, row: AnimalNow, held: Collection[HoldKind], on: date) -> Carried:
    profile = keeping.profile(row)
    order = order_of(row, profile, held, on)
    digesting = is_digesting(row, profile, on)
    place = place_of(row.place or "")
    return Carried(
        place=row.place or "",
        rack=place.rack if place else "",
        name=row.called,
        weight_g=row.weight_g,
        order=order,
        carrier=carrier_of(order, row.weight_g, digesting=digesting),
        caution=row.caution or "",
    )


def _eggs(keeping: Keeping, everyone: Sequence[AnimalNow], on: date) -> list[EggsLying]:
    """Clutches with good eggs of which nothing is known yet; newest laid last."""
    return [
        EggsLying(clutch=clutch.name, count=clutch.still_in, where=_lies(clutch.lies_in))
        for clutch in clutch_facts(keeping, everyone, on)
        if clutch.still_in > 0
    ]


def _lies(placed: EggsPlaced | None) -> str:
    if placed is None or placed.place is None:
        return ""
    if placed.box:
        return tr("{place}, box {box}", place=placed.place, box=placed.box)
    return placed.place
