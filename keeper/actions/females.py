"""When each female may be bred: her gates one by one, and what is missing."""

from dataclasses import dataclass
from datetime import date, timedelta

from keeper.actions.due_board import empty_now_g
from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.life import Life, empties, life_of
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import Clutch, Paired
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile
from keeper.reports.words import short_species_words, species_words
from keeper.rules.breeding import Gate, State, female_gates, together
from keeper.rules.sheds import ShedClock, shed_clock
from keeper.rules.stages import stage_of
from keeper.rules.weights import baseline

KEPT_AFTER = timedelta(days=4)
"""A meal counts as kept when it was not brought up by its fourth day: common practice."""


@dataclass(frozen=True, slots=True, kw_only=True)
class FemaleRow:
    """One female. short_g is what her weight gate still lacks, 0 when it is met.

    pairings and clutches: all of hers up to the day, oldest first.
    """

    animal: AnimalNow
    species: str
    species_by_line: str
    empty_g: float | None
    gate_g: float
    gates: tuple[Gate, ...]
    ready: State
    clock: ShedClock
    pairings: tuple[Paired, ...] = ()
    clutches: tuple[Clutch, ...] = ()

    @property
    def short_g(self) -> float | None:
        return None if self.empty_g is None else max(0.0, self.gate_g - self.empty_g)


def female_rows(keeping: Keeping, on: date) -> list[FemaleRow]:
    """Every female in the room, the nearest to her gates first."""
    rows = [
        _row(keeping, animal, on)
        for animal in animals_on(keeping, on)
        if animal.in_the_room and animal.sex is Sex.FEMALE
    ]
    return sorted(rows, key=_nearest_first)


def kept_meals(life: Life, on: date) -> int:
    """Meals since the last clutch that were not brought up."""
    since = life.clutches[-1].happened.day if life.clutches else date.min
    eaten = [day for day, _ in life.meals if since < day <= on - KEPT_AFTER]
    brought_up = [r for r in life.regurgitations if r.happened.day > since]
    return max(0, len(eaten) - len(brought_up))


def measures(
    keeping: Keeping, animal: AnimalNow, life: Life, on: date
) -> tuple[ShedClock, float | None]:
    """Shed clock, and empty grams unless they are too old, as the gates ask for them."""
    profile = keeping.profile(animal)
    clock = shed_clock(
        animal,
        life.signs,
        profile,
        stage_of(animal, profile, on),
        on,
        entries_on=[e.happened.day for e in (*life.offers, *life.weighings)],
    )
    return clock, _fresh_empty_g(animal, profile, on)


def _row(keeping: Keeping, animal: AnimalNow, on: date) -> FemaleRow:
    profile = keeping.profile(animal)
    life = life_of(keeping, animal.animal, on)
    clock, empty_g = measures(keeping, animal, life, on)
    gates = female_gates(
        animal,
        empty_g,
        clock,
        kept_meals(life, on) if life.offers else None,
        profile,
        on,
        before_laying_g=_before_laying_g(life, profile),
    )
    return FemaleRow(
        animal=animal,
        species=species_words(profile),
        species_by_line=short_species_words(profile),
        empty_g=empty_g,
        gate_g=profile.breeding[Sex.FEMALE].weight_g.value,
        gates=gates,
        ready=together(gates),
        clock=clock,
        pairings=life.pairings,
        clutches=life.clutches,
    )


def _fresh_empty_g(animal: AnimalNow, profile: SpeciesProfile, on: date) -> float | None:
    """Her empty weight, unless the last weighing is too old to speak for today."""
    stage = stage_of(animal, profile, on)
    if stage is None or animal.weighed_on is None:
        return empty_now_g(animal, profile)
    stale = (on - animal.weighed_on).days > profile.weights.stale_days[stage].value
    return None if stale else empty_now_g(animal, profile)


def _before_laying_g(life: Life, profile: SpeciesProfile) -> float | None:
    """Her baseline at the last clutch; she must come back to it."""
    if not life.clutches:
        return None
    laid = life.clutches[-1].happened.day
    before = [e for e in empties(life.weighings, life.meals, profile) if e[0] < laid]
    return baseline(before, laid, profile)


def _nearest_first(row: FemaleRow) -> tuple[int, float, str]:
    order: dict[State, int] = {"met": 0, "not yet": 1, "cannot tell": 2}
    share = (row.empty_g or 0.0) / row.gate_g
    return (order[row.ready], -share, row.animal.code)
