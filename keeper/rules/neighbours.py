"""Who stood beside whom while mites were there, and what a shared tub means for the sires.

Mites go from tub to tub: who stood in the tub of a find, or in one that touches it, within the
days that a quarantine asks to be free of mites, is looked at too, wherever it is now. That the
tubs that touch are looked at first is common practice; the whole rack is treated as one.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from keeper.husbandry.animal import AnimalId, Sex
from keeper.husbandry.place import place_of
from keeper.husbandry.profile import ClutchFigures
from keeper.rules.quarantine import MITE_FREE_DAYS
from keeper.rules.sires import MONTH_DAYS, Exposure
from keeper.rules.stays import Shared, Side, Stay, touching

NEAR_DAYS = MITE_FREE_DAYS
"""So long before and after a find a stay beside it counts."""


@dataclass(frozen=True, slots=True, kw_only=True)
class MitesFound:
    """Mites on an animal on a day, in the tub in which it stood."""

    animal: AnimalId
    on: date
    place: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Near:
    """A stay near a find. side: where its tub touched that of the find; None: the same tub.

    first, last: its days within those that count.
    """

    stay: Stay
    found: MitesFound
    side: Side | None
    first: date
    last: date


@dataclass(frozen=True, slots=True, kw_only=True)
class Grown:
    """What of an animal decides whether it may breed; None: no day of hatching is known."""

    animal: AnimalId
    sex: Sex
    species: str
    hatched_on: date | None
    figures: ClutchFigures

    @property
    def mature_on(self) -> date:
        """From that day on it may be mated; an unknown age counts as old enough."""
        if self.hatched_on is None:
            return date.min
        return self.hatched_on + timedelta(days=round(self.figures.mature_days.value))


@dataclass(frozen=True, slots=True, kw_only=True)
class TubExposure:
    """A female and a male shared a tub. first: the first day on which both were old enough.

    days: as many count, none where first is after the last; until: so long she may keep sperm.
    """

    female: AnimalId
    male: AnimalId
    first: date
    last: date
    until: date

    @property
    def days(self) -> int:
        return max(0, (self.last - self.first).days + 1)

    @property
    def exposure(self) -> Exposure | None:
        """As candidate sires are told of; None where one was too young throughout."""
        if not self.days:
            return None
        return Exposure(male=self.male, first=self.first, last=self.last, how="tub")


def found_where(animal: AnimalId, on: date, stays: Iterable[Stay]) -> MitesFound | None:
    """The find in the tub in which the animal stood; None where the book knows of none."""
    here = (stay.place for stay in stays if stay.animal == animal and stay.covers(on))
    place = next(here, None)
    return None if place is None else MitesFound(animal=animal, on=on, place=place)


def near_a_find(found: MitesFound, stays: Sequence[Stay], today: date) -> tuple[Near, ...]:
    """Everyone who stood in the tub of a find or in one that touches it, about that time."""
    near = (near_of(stay, found, today) for stay in stays if stay.animal != found.animal)
    return tuple(each for each in near if each is not None)


def near_of(stay: Stay, found: MitesFound, today: date) -> Near | None:
    """How near a stay was to a find; None where it was not, or not about that time."""
    side = _side(stay.place, found.place)
    days = timedelta(days=NEAR_DAYS.value)
    first = max(stay.since, found.on - days)
    last = min(stay.last(today), found.on + days)
    if side == "far" or first > last:
        return None
    at = None if side == "same" else Side(side)
    return Near(stay=stay, found=found, side=at, first=first, last=last)


def tub_exposure(one: Grown, other: Grown, shared: Shared) -> TubExposure | None:
    """What a shared tub means; None unless a female met a male of her own species."""
    if one.species != other.species or {one.sex, other.sex} != {Sex.FEMALE, Sex.MALE}:
        return None
    female, male = (one, other) if one.sex is Sex.FEMALE else (other, one)
    months = female.figures.sire_months_most.value
    return TubExposure(
        female=female.animal,
        male=male.animal,
        first=max(shared.first, female.mature_on, male.mature_on),
        last=shared.last,
        until=shared.last + timedelta(days=round(months * MONTH_DAYS)),
    )


def _side(place: str, of: str) -> str:
    """Where *place* stands seen from *of*: the same, a side, or far."""
    if place == of:
        return "same"
    tub = place_of(of)
    sides = touching(tub) if tub is not None else {}
    return next((side.value for side, each in sides.items() if str(each) == place), "far")
