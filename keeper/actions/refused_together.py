"""The offers of the last two feed nights, with all that the animals share, and their causes."""

from collections.abc import Iterable, Mapping, Sequence
from datetime import date, datetime, timedelta

from keeper.actions.cooler import cooler_of
from keeper.actions.keeping import Keeping
from keeper.actions.life import EATEN
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import Cleaned, HoldSet, Offer, Result, ShedSign
from keeper.husbandry.house import BagOpened, Cleaning
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile, practice
from keeper.rules.cause_says import HeatReading
from keeper.rules.causes import Cause, causes
from keeper.rules.holds import excused, holds_on
from keeper.rules.refusals import offers_of_new_prey
from keeper.rules.refused_groups import RefusalInRow
from keeper.store import reading
from keeper.store.hands import hands_of

NIGHTS_OF = timedelta(days=7)
_CLEANINGS = 4

CLEANED_DAYS = practice(3)
"""So long a tub that was cleaned whole smells strange to who lives in it."""

USUAL_REFUSAL_RATE = 0.08
USUAL_WORTH_OFFERS = 8
"""An animal's own refusal rate starts from one offer in twelve and is its own after a few
dozen offers: common practice, no source."""

Told = Mapping[AnimalId, Sequence[Offer]]
Signs = Mapping[AnimalId, Sequence[ShedSign]]
Holds = Mapping[AnimalId, Sequence[HoldSet]]


def refusal_causes(
    keeping: Keeping,
    offers: Sequence[RefusalInRow],
    heat: Mapping[str, HeatReading],
    on: date,
) -> tuple[Cause, ...]:
    """What the refusals among *offers* have in common, with the heat of rows beside their past."""
    nights = sorted({offer.night for offer in offers})
    return causes(offers, heat, cooler_of(keeping, nights, on))


def counted_offers(
    keeping: Keeping, rows: Sequence[AnimalNow], offers: Told, signs: Signs, holds: Holds, on: date
) -> list[RefusalInRow]:
    """The counted offers of the last two recorded nights of the last week.

    offers, signs, holds: what is known of each animal of *rows*, oldest first.
    """
    days = {o.happened.day for row in rows for o in offers[row.animal]}
    nights = sorted(day for day in days if on - NIGHTS_OF <= day)[-2:]
    if not nights:
        return []
    animals = [row.animal for row in rows]
    hands = hands_of(keeping.book, animals, nights[0], nights[-1])
    bags = sorted(_bags(keeping), key=lambda bag: bag.happened)
    cleaned = reading.recent(keeping.book, Cleaned, animals, _CLEANINGS, until=on)
    new_prey = _of_new_prey(keeping, rows, offers, nights)
    return [
        RefusalInRow(
            animal=row.animal,
            place=row.place,
            night=offer.happened.day,
            refused=offer.result is Result.REFUSED,
            own_rate=own_rate(offers[row.animal], before=nights[0]),
            bag=_bag_of(offer, bags),
            keeper=hands.get((row.animal, offer.happened.day)) or None,
            cleaned=_cleaned_before(offer, cleaned[row.animal]),
            changed=new_prey.get((row.animal, offer.happened.day)),
        )
        for row in rows
        for offer in offers[row.animal]
        if offer.happened.day in nights
        and (offer.result in EATEN or offer.result is Result.REFUSED)
        and not _excused(offer, signs, holds, keeping.profile(row))
    ]


def _of_new_prey(
    keeping: Keeping, rows: Sequence[AnimalNow], offers: Told, nights: Sequence[date]
) -> dict[tuple[AnimalId, date], tuple[str, str]]:
    """Of each animal the nights on which a new kind of prey was offered, with both kinds."""
    return {
        (row.animal, offer.happened.day): kinds
        for row in rows
        if len({offer.prey for offer in offers[row.animal]}) > 1
        for offer, kinds in offers_of_new_prey(offers[row.animal], keeping.profile(row))
        if offer.happened.day in nights
    }


def own_rate(offers: Sequence[Offer], before: date) -> float:
    """The share of offers that this animal refuses, drawn towards the usual while few."""
    told = [o for o in offers if o.happened.day < before]
    refused = sum(o.result is Result.REFUSED for o in told)
    known = refused + sum(o.result in EATEN for o in told)
    return (refused + USUAL_REFUSAL_RATE * USUAL_WORTH_OFFERS) / (known + USUAL_WORTH_OFFERS)


def _bags(keeping: Keeping) -> list[BagOpened]:
    return [entry.event for entry in reading.all_of(keeping.book, BagOpened)]


def _bag_of(offer: Offer, bags: Sequence[BagOpened]) -> str | None:
    """The bag of that grade opened last before the offer, None while none was told."""
    name = None
    for bag in bags:
        if bag.prey == offer.prey and bag.happened.day <= offer.happened.day:
            name = bag.bag
    return name


def _cleaned_before(offer: Offer, cleanings: Iterable[Cleaned]) -> date | None:
    """The day of the last whole cleaning shortly before the offer."""
    days = [
        each.happened.day
        for each in cleanings
        if each.extent is Cleaning.WHOLE and _instant(each) <= _instant(offer)
    ]
    last = max(days, default=None)
    if last is None or (offer.happened.day - last).days > CLEANED_DAYS.value:
        return None
    return last


def _instant(event: Cleaned | Offer) -> datetime:
    return event.happened.at


def _excused(offer: Offer, signs: Signs, holds: Holds, profile: SpeciesProfile) -> bool:
    key = offer.animal
    return excused(offer, holds_on(offer.happened.day, holds[key], signs[key], profile))
