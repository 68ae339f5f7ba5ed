"""Who is carried first when the room must be left or grows cold, and in what."""

from collections.abc import Collection
from datetime import date, timedelta
from enum import IntEnum, auto

from keeper.husbandry.animal import Stage
from keeper.husbandry.events import HoldKind
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile, practice
from keeper.rules.stages import stage_of

SMALL_BAG_G, BAG_G = practice(100), practice(1000)
"""Up to which weight a small bag does, and up to which a common one."""

APART = frozenset({HoldKind.QUARANTINE, HoldKind.NEW_ARRIVAL})
WITH_EGGS = frozenset({HoldKind.GRAVID, HoldKind.PRE_LAY})


class Order(IntEnum):
    """Eggs and fed animals bear the cold and the carrying worst; quarantine stays apart."""

    EGGS = 1
    FED = 2
    GRAVID = 3
    HATCHLING = 4
    OTHERS = 5
    APART = 6


class Carrier(IntEnum):
    """What one animal is carried in."""

    TUB = auto()
    SMALL_BAG = auto()
    BAG = auto()
    LARGE_BAG = auto()
    UNKNOWN = auto()  # a bag, of which no weight tells the size


def order_of(
    row: AnimalNow, profile: SpeciesProfile, held: Collection[HoldKind], on: date
) -> Order:
    """The order of an animal on the day *on*. held: kinds of the holds that run."""
    if APART & frozenset(held):
        return Order.APART
    if is_digesting(row, profile, on):
        return Order.FED
    if WITH_EGGS & frozenset(held):
        return Order.GRAVID
    young = stage_of(row, profile, on) is Stage.HATCHLING
    return Order.HATCHLING if young else Order.OTHERS


def is_digesting(row: AnimalNow, profile: SpeciesProfile, on: date) -> bool:
    """Whether it ate so lately that handling may bring the meal up."""
    within = timedelta(days=profile.weights.digestion_days.value)
    return row.eaten_on is not None and on - row.eaten_on < within


def carrier_of(order: Order, weight_g: float | None, *, digesting: bool = False) -> Carrier:
    """In its own tub what must not be lifted out; a bag of a size for all others."""
    if digesting or order in (Order.FED, Order.GRAVID, Order.HATCHLING):
        return Carrier.TUB
    if weight_g is None:
        return Carrier.UNKNOWN
    if weight_g <= SMALL_BAG_G.value:
        return Carrier.SMALL_BAG
    return Carrier.BAG if weight_g <= BAG_G.value else Carrier.LARGE_BAG
