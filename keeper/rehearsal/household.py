"""The house lived through day by day, from the first to the last."""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date, time, timedelta
from random import Random

from keeper.actions.keeping import Keeping
from keeper.actions.recording import Newcomer, receive
from keeper.husbandry.animal import AnimalId, Sex, SexedBy, Status
from keeper.husbandry.events import AboutAnimal, Evidence, Offer, Result, ShedStage
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.when import Happened
from keeper.rehearsal.accounts import kept_account
from keeper.rehearsal.character import Character
from keeper.rehearsal.clutching import kept_eggs
from keeper.rehearsal.colouring import kept_scores
from keeper.rehearsal.diary import Clock, Diary
from keeper.rehearsal.feeding import Feeding
from keeper.rehearsal.gene_lines import kept_genes
from keeper.rehearsal.happenings import expect_all, expect_signs, settling, shed_sign
from keeper.rehearsal.heating import ColdSpell, readings
from keeper.rehearsal.resident import Resident, Sign
from keeper.rehearsal.room import Room
from keeper.rules.nights import next_night
from keeper.rules.prey import choose_prey
from keeper.rules.stages import figures_of

CAME, WEIGHED, NIGHT = time(17, 0), time(17, 20), time(23, 50)
MEASURE_DAYS = 75
ONE_DAY = timedelta(days=1)


@dataclass(frozen=True, slots=True, kw_only=True)
class Plot:
    """All that is invented before the first day is lived.

    unrecorded: feed nights of which nobody wrote a word. walked: feed nights that are walked
    by the program's own round. is_house: with all that its keeper keeps account of.
    daily_from: from that day on things are entered evening by evening, before it a month at a
    time.
    """

    characters: Sequence[Character]
    first: date
    last: date
    nights: Sequence[date]
    daily_from: date
    spells: Sequence[ColdSpell] = ()
    unrecorded: frozenset[date] = frozenset()
    walked: frozenset[date] = frozenset()
    is_house: bool = False


class Household:
    """Lives the plot in a book."""

    def __init__(self, keeping: Keeping, clock: Clock, plot: Plot, seed: int) -> None:
        self._keeping = keeping
        self._clock = clock
        self._plot = plot
        self._seed = seed
        self._heat = Random(f"{seed}/heat")
        self._eggs = Random(f"{seed}/eggs")
        self._diary = Diary(keeping, clock)
        self.room = Room(self._diary)
        self._feeding = Feeding(self.room, plot.nights, plot.spells, plot.unrecorded)
        self._weigh_day = next_night(plot.first, plot.nights).weekday()
        self._next = plot.first
        self._coming = _by_day(plot.characters)

    def live(self) -> None:
        """What is left, up to the last day."""
        for _ in self.days():
            pass

    def days(self) -> Iterator[date]:
        """Live day after day; each is handed out at its end, the book perhaps a month behind."""
        while self._next <= self._plot.last:
            day = self._next
            self._next += ONE_DAY
            self._live(day)
            if day == self._plot.last:
                self.enter(day)
            yield day

    def enter(self, day: date) -> None:
        """Bring the book up to the evening of *day*, and the clock with it."""
        self._diary.enter_all(day)
        self._clock.set(day, NIGHT)

    def _live(self, day: date) -> None:
        plot = self._plot
        if day in self._coming:
            self._receive(day, self._coming.pop(day))
        self.room.live(day)
        if plot.is_house:
            kept_account(self.room, day, plot.last)
            kept_eggs(self.room, day, plot.last, self._eggs)
            kept_scores(self.room, day, plot.last)
            kept_genes(self.room, day, plot.last)
        if day.weekday() == self._weigh_day:
            self._weigh(day)
        if day in plot.walked:
            self._diary.enter_evening(day)
            self._feeding.walk(self._keeping, self._clock, day)
        else:
            self._feeding.feed(day)
        self._diary.keep("read heat", *readings(self.room, day, self._heat, plot.spells))
        if day >= plot.daily_from:
            self._diary.enter_evening(day)
        elif (day + ONE_DAY).day == 1 or day + ONE_DAY == plot.daily_from:
            self._diary.enter_all(day)

    def _receive(self, day: date, characters: Sequence[Character]) -> None:
        self._clock.set(day, CAME)
        happened = self.room.happened(day, CAME)
        newcomers = [self._newcomer(who, happened) for who in characters]
        _, animals = receive(self._keeping, newcomers)
        for who, newcomer, animal in zip(characters, newcomers, animals, strict=True):
            now = _now(newcomer, animal)
            profile = self._keeping.shipped[who.species]
            resident = Resident(who, now, profile, self._seed)
            resident.place = newcomer.place
            self.room.add(resident)
            self._settle(resident, day)

    def _newcomer(self, who: Character, happened: Happened) -> Newcomer:
        return Newcomer(
            happened=happened,
            code=who.code,
            species=who.species,
            name=who.name,
            line=who.line,
            hatched=who.born if who.age_known else None,
            dam=self._animal(who.dam),
            sire=self._animal(who.sire),
            clutch=who.clutch,
            sex=Sex.UNKNOWN if who.hatched_here else who.sex,
            sexed_by=SexedBy.PROBED if who.bought else SexedBy.WRITTEN,
            place=who.stays[0][1],
            bought=who.bought,
        )

    def _animal(self, code: str | None) -> AnimalId | None:
        return None if code is None else self.room.residents[code].animal

    def _settle(self, resident: Resident, day: date) -> None:
        """First weight, and for one from elsewhere what was told of its last meal and shed."""
        room, happened = self.room, self.room.happened(day, WEIGHED)
        if not resident.who.hatched_here:
            self._told_of(resident, day)
        events: list[AboutAnimal] = [*settling(resident, happened)]
        events.append(resident.weighing(happened, resident.animal))
        room.tell(resident, "weigh", events)
        resident.weighed(day)
        expect_all(room, resident)
        self._feeding.expect(resident, day)

    def _told_of(self, resident: Resident, day: date) -> None:
        fed_on = day - timedelta(days=resident.rng.randint(4, 9))
        meal = _last_meal(resident, self.room.happened(fed_on, CAME))
        shed_on = resident.shed_before()
        shed = Sign(shed_on, ShedStage.SHED)
        signed = shed_sign(resident, self.room.happened(shed_on, CAME), shed)
        told: list[AboutAnimal] = [meal, signed]
        self.room.tell(resident, "take in", told)
        resident.ate(meal)
        expect_signs(self.room, resident, resident.cycle_after(shed_on))

    def _weigh(self, day: date) -> None:
        """Before feeding; now and then length and body score as well."""
        at = self.room.happened(day, WEIGHED)
        for resident in self.room.present():
            if resident.wants_weighing(day):
                self.room.tell(resident, "weigh", self._weighed(resident, at))
                resident.weighed(day)

    def _weighed(self, resident: Resident, happened: Happened) -> list[AboutAnimal]:
        lies_there = self._lies_in(resident, happened.day)
        seen = lies_there.weighing(happened, resident.animal)
        if not resident.wants_measuring(happened.day):
            return [seen]
        resident.measured_on = happened.day
        return [seen, resident.measuring(happened)]

    def _lies_in(self, resident: Resident, day: date) -> Resident:
        """Which animal lies in the tub of *resident*; another since two were swapped."""
        swapped = resident.who.script.swapped
        if swapped is None or day < swapped[1]:
            return resident
        return self.room.residents[swapped[0]]


def _by_day(characters: Iterable[Character]) -> dict[date, list[Character]]:
    found: dict[date, list[Character]] = defaultdict(list)
    for who in characters:
        found[who.comes].append(who)
    return found


def _now(newcomer: Newcomer, animal: AnimalId) -> AnimalNow:
    """What the book knows of a newcomer."""
    day = newcomer.happened.day
    return AnimalNow(
        animal=animal,
        code=newcomer.code,
        species=newcomer.species,
        name=newcomer.name,
        line=newcomer.line,
        clutch=newcomer.clutch,
        dam=newcomer.dam,
        sire=newcomer.sire,
        hatched_first=newcomer.hatched,
        hatched_last=newcomer.hatched,
        sex=newcomer.sex,
        sexed_by=newcomer.sexed_by,
        status=Status.KEPT,
        status_on=day if newcomer.bought else None,
        place=newcomer.place,
        place_since=day,
    )


def _last_meal(resident: Resident, happened: Happened) -> Offer:
    """A meal of the right size, told by whoever kept the animal before."""
    day, grams = happened.day, resident.body.empty_g(happened.day)
    figures = figures_of(resident.profile, resident.stage(day), resident.who.sex)
    assert figures is not None
    meal = choose_prey(grams, figures, resident.profile.prey, ()).offer[0]
    return Offer(
        animal=resident.animal,
        happened=happened,
        result=Result.TAKEN,
        evidence=Evidence.REPORTED,
        prey=meal.prey,
        count=meal.count,
        mass_g=meal.grams,
    )
