"""One animal's life on one time axis: everything that the life strip draws."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date, timedelta

from keeper.actions.due_board import bending_on, empty_now_g
from keeper.actions.holds_ever import holds_ever
from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.learned import eaten_through
from keeper.actions.life import E, Life, empties, expected_on, life_of
from keeper.actions.life_lanes import Lanes, lanes_of
from keeper.actions.life_places import HeatDay, Mate, Stay, heat_of, mates_of, stays_of
from keeper.actions.own_entries import Struck, struck_through
from keeper.actions.own_growth import OwnGrowth
from keeper.actions.quarantine import open_holds
from keeper.husbandry.animal import AnimalId, Sex, Stage
from keeper.husbandry.events import HoldEnded, Sexed, Stock
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import BreedingFigures, LmsCurve, SpeciesProfile
from keeper.language import tr
from keeper.reports.growth_words import basis_words
from keeper.rules.absence import bent
from keeper.rules.feeding import DueState, Plan, plan
from keeper.rules.growth.expectation import Expectation, Standing, expectation, standing
from keeper.rules.sheds import ShedClock, shed_clock
from keeper.rules.stages import stage_of
from keeper.rules.weights import Empty
from keeper.store import reading

_BAND_POINTS = 160


@dataclass(frozen=True, slots=True, kw_only=True)
class BandPoint:
    """The expected band on one day, grams."""

    day: date
    expected: Expectation


@dataclass(frozen=True, slots=True, kw_only=True)
class Weighed:
    """One weighing. empty_g: without its meals, None where they would outweigh the animal."""

    day: date
    scale_g: float
    empty_g: float | None
    fasted: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Beside:
    """What is read beside the animal's own record."""

    stays: tuple[Stay, ...] = ()
    mates: tuple[Mate, ...] = ()
    heat: tuple[HeatDay, ...] = ()
    sexings: tuple[Sexed, ...] = ()
    stock: tuple[Stock, ...] = ()
    struck: tuple[Struck, ...] = ()
    parents: tuple[str | None, str | None] = (None, None)  # dam, sire
    partners: Mapping[AnimalId, str] = field(default_factory=dict)  # by name, of its pairings


@dataclass(frozen=True, slots=True, kw_only=True)
class AnimalPage:
    """today is the last day that the page knows of. plan: the next offer, where there is one.

    profile: with the growth curves of her kind and line drawn over to the keeper's own stock.
    """

    animal: AnimalNow
    today: date
    profile: SpeciesProfile
    stage: Stage | None
    life: Life
    weighed: tuple[Weighed, ...]
    lanes: Lanes
    clock: ShedClock
    plan: Plan
    beside: Beside = field(default_factory=Beside)

    @property
    def first_day(self) -> date:
        """Hatching, or the first entry where that is not known."""
        known = [self.animal.hatched_first, self.animal.first_entry_on, self._first_entry()]
        return min((day for day in known if day is not None), default=self.today)

    @property
    def age_days(self) -> int | None:
        return self.animal.age_days(self.today)

    @property
    def gate(self) -> BreedingFigures | None:
        """Her breeding gates; None while the sex is not known."""
        return self.profile.breeding.get(self.animal.sex)

    @property
    def gate_age_on(self) -> date | None:
        """The day the age gate opens, by the latest day of hatching."""
        hatched = self.animal.hatched_last or self.animal.hatched_first
        if hatched is None or self.gate is None:
            return None
        return hatched + timedelta(days=self.gate.age_days.value)

    @property
    def target_g(self) -> float | None:
        """The breeding weight, while it still lies ahead."""
        last = self.last_weighed(self.today)
        if self.gate is None or last is None or not self.animal.in_the_room:
            return None
        need = self.gate.weight_g.value
        return need if (last.empty_g or last.scale_g) < need else None

    def last_weighed(self, day: date) -> Weighed | None:
        """The newest weighing up to *day*."""
        return next((w for w in reversed(self.weighed) if w.day <= day), None)

    def expected(self, day: date) -> Expectation | None:
        """What is expected of her on *day*; None where sex or age cannot say."""
        return expected_on(self.animal, self.profile, day)

    def standing(self, weighed: Weighed) -> Standing | None:
        """How an empty weight stood to what was expected on its own day."""
        expected = self.expected(weighed.day)
        if expected is None or weighed.empty_g is None:
            return None
        return standing(expected, weighed.empty_g)

    @property
    def own_share(self) -> float:
        """How much of her band is own stock at her age today, 0 to 1; of both bands the less."""
        return min((band.own_share for band in self._here()), default=0.0)

    @property
    def own_animals(self) -> int:
        """How many own animals were heard for her band."""
        return sum(band.own_animals for band in self._here())

    @property
    def basis(self) -> str:
        """What her band is known by: ``own 79 %, 36 animals``; empty where there is none."""
        known = next((curve.basis for curve in self._curves().values()), "")
        return basis_words(known, self.own_share, self.own_animals) if known else ""

    def bands(self, first: date, last: date) -> Mapping[Sex, tuple[BandPoint, ...]]:
        """The band from *first* to *last*: of her own sex, of both where it is not known."""
        return {sex: self._band(curve, first, last) for sex, curve in self._curves().items()}

    def _curves(self) -> Mapping[Sex, LmsCurve]:
        """Her own sex's curve, or both where it is not known."""
        if self.animal.sex is Sex.UNKNOWN:
            return self.profile.growth
        return {s: c for s, c in self.profile.growth.items() if s is self.animal.sex}

    def _here(self) -> list[Expectation]:
        """What each of her curves says for her age today."""
        age = self.age_days
        return [
            expectation(c, age) for c in self._curves().values() if age is not None and age >= 0
        ]

    def _band(self, curve: LmsCurve, first: date, last: date) -> tuple[BandPoint, ...]:
        span = (last - first).days
        step = max(1.0, span / (_BAND_POINTS - 1))
        days = [first + timedelta(days=round(n * step)) for n in range(int(span / step) + 1)]
        if days and days[-1] < last:
            days.append(last)
        aged = [(day, self.animal.age_days(day)) for day in days]
        return tuple(
            BandPoint(day=day, expected=expectation(curve, age))
            for day, age in aged
            if age is not None and age >= 0
        )

    def _first_entry(self) -> date | None:
        life = self.life
        entries = (life.weighings, life.offers, life.signs, life.moves, life.remarks)
        return min((e[0].happened.day for e in entries if e), default=None)


def page_of(
    keeping: Keeping,
    animal: AnimalId,
    on: date,
    last_record_on: date | None = None,
    growth: OwnGrowth | None = None,
) -> AnimalPage:
    """The page of the animal with this key; *growth* as for ``animal_page``.

    Raises:
        LookupError: the book has no such animal.
    """
    row = reading.animal_now(keeping.book, animal)
    if row is None:
        raise LookupError(tr("That animal is not in this book."))
    return animal_page(keeping, row, on, last_record_on, growth)


def animal_page(
    keeping: Keeping,
    row: AnimalNow,
    on: date,
    last_record_on: date | None = None,
    growth: OwnGrowth | None = None,
) -> AnimalPage:
    """The page of *row* as of the day *on*.

    last_record_on: last day on which the house recorded any feeding, as for the board.
    growth: curves already drawn over for that day; read afresh where there are none.
    """
    growth = growth or OwnGrowth(keeping, animals_on(keeping, on), on)
    profile = growth.profile(row)
    life = life_of(keeping, row.animal, on)
    ended = _history(keeping, HoldEnded, row.animal)
    stage = stage_of(row, profile, on)
    entries_on = [e.happened.day for e in (*life.offers, *life.weighings)]
    return AnimalPage(
        animal=row,
        today=on,
        profile=profile,
        stage=stage,
        life=life,
        weighed=_weighed(life, empties(life.weighings, life.meals, profile)),
        lanes=lanes_of(life, ended, profile),
        clock=shed_clock(row, life.signs, profile, stage, on, entries_on=entries_on),
        plan=_next_offer(keeping, row, life, on, last_record_on),
        beside=_beside(keeping, row, life, on),
    )


def _beside(keeping: Keeping, row: AnimalNow, life: Life, on: date) -> Beside:
    stock = _history(keeping, Stock, row.animal)
    stays = stays_of(life.moves, stock)
    if not stays and row.place is not None:
        stays = [Stay(place=row.place, since=row.place_since or on)]
    return Beside(
        stays=tuple(stays),
        mates=tuple(mates_of(keeping, row.animal, stays)),
        heat=tuple(heat_of(keeping, stays, on)),
        sexings=tuple(_history(keeping, Sexed, row.animal)),
        stock=tuple(stock),
        struck=struck_through(keeping, row.animal, on),
        parents=(_name_of(keeping, row.dam), _name_of(keeping, row.sire)),
        partners=_partners(keeping, row.animal, life),
    )


def _history(keeping: Keeping, kind: type[E], animal: AnimalId) -> list[E]:
    return [entry.event for entry in reading.history(keeping.book, kind, animal)]


def _weighed(life: Life, freed: Sequence[Empty]) -> tuple[Weighed, ...]:
    """Each weighing beside what is left of it without its meals."""
    left = iter(freed)
    ahead = next(left, None)
    found = []
    for weighing in life.weighings:
        day, empty = weighing.happened.day, None
        if ahead is not None and ahead[0] == day:
            empty, ahead = ahead, next(left, None)
        found.append(
            Weighed(
                day=day,
                scale_g=weighing.weight_g,
                empty_g=empty[1] if empty else None,
                fasted=empty is not None and not empty[2],
            )
        )
    return tuple(found)


def _next_offer(
    keeping: Keeping, row: AnimalNow, life: Life, on: date, last_record_on: date | None
) -> Plan:
    """The board's plan for tonight, or where nothing is due the one of the night it is."""
    profile = keeping.profile(row)
    bending = bending_on(keeping, on)
    holds = open_holds(keeping, on).holds.get(row.animal, [])
    past = holds_ever(keeping, [row.animal], on)[row.animal]
    learned = eaten_through(keeping, on).get(row.animal, frozenset())

    def planned(day: date) -> Plan:
        return plan(
            row,
            profile,
            bending.nights,
            day,
            holds,
            life.offers[-6:],
            life.signs[-6:],
            empty_now_g(row, profile),
            last_record_on=last_record_on,
            past_holds=past,
            learned=learned,
            bend=lambda told: bent(told, row, profile, bending.on(day)),
        )

    tonight = planned(on)
    if tonight.state is DueState.NOT_DUE and tonight.due_on is not None and tonight.due_on > on:
        return planned(tonight.due_on)
    return tonight


def _partners(keeping: Keeping, animal: AnimalId, life: Life) -> dict[AnimalId, str]:
    both = {one for pairing in life.pairings for one in (pairing.animal, pairing.mate)}
    return {one: _name_of(keeping, one) or "?" for one in both - {animal}}


def _name_of(keeping: Keeping, animal: AnimalId | None) -> str | None:
    row = None if animal is None else reading.animal_now(keeping.book, animal)
    return None if row is None else row.called
