"""One animal's whole record up to a day, read once and shared by every page that needs it."""

from bisect import bisect_left, bisect_right
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, timedelta
from math import ceil
from typing import TypeVar

from keeper.actions.keeping import Keeping
from keeper.husbandry.animal import AnimalId, Sex
from keeper.husbandry.care import Dose, Eggs, EggsPlaced, FaecalTest, Medicine, Permit
from keeper.husbandry.events import (
    AnimalEvent,
    Cleaned,
    Clutch,
    HoldSet,
    Measured,
    Moved,
    Offer,
    Paired,
    Regurgitation,
    Remark,
    Result,
    ShedSign,
    TotalLength,
    Weighing,
)
from keeper.husbandry.genes import GeneRead, LookScored
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile
from keeper.rules.growth.expectation import Expectation, expectation, expectation_over
from keeper.rules.weights import Empty, EmptyWeight, Meal, empty_weight
from keeper.store import reading

E = TypeVar("E", bound=AnimalEvent)

CARE: tuple[type[AnimalEvent], ...] = (
    Medicine,
    Dose,
    FaecalTest,
    Permit,
    Eggs,
    EggsPlaced,
    Cleaned,
    GeneRead,
    LookScored,
)
EATEN = frozenset({Result.TAKEN, Result.PART})


@dataclass(frozen=True, slots=True, kw_only=True)
class Life:
    """Standing entries, oldest first."""

    weighings: tuple[Weighing, ...] = ()
    offers: tuple[Offer, ...] = ()
    regurgitations: tuple[Regurgitation, ...] = ()
    signs: tuple[ShedSign, ...] = ()
    holds: tuple[HoldSet, ...] = ()
    moves: tuple[Moved, ...] = ()
    clutches: tuple[Clutch, ...] = ()
    pairings: tuple[Paired, ...] = ()  # of either side
    measures: tuple[Measured, ...] = ()
    lengths: tuple[TotalLength, ...] = ()
    remarks: tuple[Remark, ...] = ()
    care: tuple[AnimalEvent, ...] = ()  # medicine, tests, permits, eggs, cleanings, genes, scores

    @property
    def meals(self) -> list[Meal]:
        """Days and grams of what was eaten."""
        return [(o.happened.day, o.mass_g) for o in self.offers if o.result in EATEN]


def life_of(keeping: Keeping, animal: AnimalId, on: date) -> Life:
    """Everything written about *animal* that had happened by the end of *on*."""

    def read(kind: type[E]) -> tuple[E, ...]:
        return _until(keeping, kind, animal, on)

    return Life(
        weighings=read(Weighing),
        offers=read(Offer),
        regurgitations=read(Regurgitation),
        signs=read(ShedSign),
        holds=read(HoldSet),
        moves=read(Moved),
        clutches=read(Clutch),
        pairings=tuple(
            paired
            for paired in reading.pairings_of(keeping.book, animal)
            if paired.happened.day <= on
        ),
        measures=read(Measured),
        lengths=read(TotalLength),
        remarks=read(Remark),
        care=tuple(event for kind in CARE for event in read(kind)),
    )


def weighed_life_of(keeping: Keeping, animal: AnimalId, on: date) -> Life:
    """Her weighings and offers alone, for a page that cannot wait for all the rest."""
    return Life(
        weighings=_until(keeping, Weighing, animal, on), offers=_until(keeping, Offer, animal, on)
    )


def _until(keeping: Keeping, kind: type[E], animal: AnimalId, on: date) -> tuple[E, ...]:
    entries = reading.history(keeping.book, kind, animal)
    return tuple(entry.event for entry in entries if entry.event.happened.day <= on)


def empties(
    weighings: Iterable[Weighing], meals: Iterable[Meal], profile: SpeciesProfile
) -> list[Empty]:
    """Each weighing freed of its meals; one that holds more meal than animal is left out."""
    fed = sorted(meals, key=lambda meal: meal[0])
    days = [day for day, _ in fed]
    reach = timedelta(days=ceil(profile.weights.digestion_days.value))
    found = []
    for weighing in weighings:
        day = weighing.happened.day
        near = fed[bisect_left(days, day - reach) : bisect_right(days, day)]
        empty = empty_weight(weighing.weight_g, day, near, profile)
        if isinstance(empty, EmptyWeight):
            found.append((day, empty.grams, empty.within_digestion))
    return found


def expected_on(row: AnimalNow, profile: SpeciesProfile, on: date) -> Expectation | None:
    """What is expected for its sex on the day *on*; None when sex or age cannot say."""
    curve = profile.growth.get(row.sex)
    if row.sex is Sex.UNKNOWN or curve is None or row.hatched_first is None:
        return None
    oldest = (on - row.hatched_first).days
    youngest = (on - (row.hatched_last or row.hatched_first)).days
    if oldest < 0:
        return None
    if oldest == youngest:
        return expectation(curve, oldest)
    return expectation_over(curve, max(youngest, 0), oldest)
