"""An invented animal that lives in the room: appetite, shed cycle, and when it is weighed."""

from datetime import date, timedelta
from math import exp, sqrt
from random import Random
from typing import NamedTuple

from keeper.husbandry.animal import AnimalId, Stage
from keeper.husbandry.events import (
    Measured,
    Offer,
    ShedQuality,
    ShedStage,
    Weighing,
)
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile
from keeper.husbandry.when import Happened
from keeper.rehearsal.body import Body
from keeper.rehearsal.character import Character
from keeper.rehearsal.mirror import ATE, Mirror
from keeper.rules.stages import YOUNG, stage_of
from keeper.rules.weights import Meal

WEIGH_DAYS = {Stage.HATCHLING: 7, Stage.JUVENILE: 14, Stage.SUBADULT: 28, Stage.ADULT: 42}
MEASURE_DAYS = 75
WAIT_DAYS = 21
"""Weighed with a meal inside sooner than put off for longer than this."""

BEFORE_EGGS_DAYS, AFTER_EGGS_DAYS = 50, 28
"""No shed of the usual clock from so long before eggs until so long after them."""


class Sign(NamedTuple):
    day: date
    stage: ShedStage
    quality: ShedQuality | None = None


class Resident:
    """Truth and what the book knows of it, side by side."""

    def __init__(
        self, character: Character, now: AnimalNow, profile: SpeciesProfile, seed: int
    ) -> None:
        self.who = character
        self.profile = profile
        self.rng = Random(f"{seed}/{character.code}")
        self.body = Body(character, profile, self.rng)
        self.mirror = Mirror(now, profile)
        self.place: str | None = None
        self.present = True
        self.meals: list[Meal] = []
        self.weigh_from = character.comes
        self.measured_on: date | None = None
        self._refuses = self.rng.uniform(0.01, 0.07)
        self._spacing = min(1.2, max(0.85, exp(self.rng.gauss(0, 0.08))))
        if character.script.steady_sheds:
            self._spacing = 0.9
        self._stubborn = self.rng.random() < 0.06

    @property
    def animal(self) -> AnimalId:
        return self.mirror.now.animal

    def stage(self, day: date) -> Stage:
        """Its true stage; the book may not know it."""
        told = self.mirror.now.hatched_first
        if told is not None:
            return stage_of(self.mirror.now, self.profile, day) or Stage.HATCHLING
        age = (day - self.who.born).days
        young = (s for s in YOUNG if age < self.profile.stages[s].until_age_days.value)
        return next(young, Stage.ADULT)

    def refuses(self, day: date) -> bool:
        """Whether it leaves tonight's prey."""
        script, now = self.who.script, self.mirror.now
        if script.never_eats or script.never_refuses:
            return script.never_eats
        most = 2 if self._stubborn or self.stage(day) is Stage.ADULT else 1
        return self.rng.random() < self._chance(day) and now.refused_since < most

    def ate(self, offer: Offer) -> None:
        """Keep a meal inside for as long as the scale can feel it."""
        if offer.result in ATE:
            self.meals = [*self.meals[-2:], (offer.happened.day, offer.mass_g)]

    def weighing(self, happened: Happened, written_for: AnimalId) -> Weighing:
        """What the scale shows of this animal, under the name on the tub."""
        grams = self.body.on_scale_g(happened.day, self.meals)
        return Weighing(
            animal=written_for,
            happened=happened,
            weight_g=grams,
            resolution_g=self.body.resolution_g(grams),
        )

    def measuring(self, happened: Happened) -> Measured:
        return Measured(
            animal=self.animal,
            happened=happened,
            svl_cm=self.body.length_cm(happened.day),
            body_score=self.body.score(),
        )

    def wants_weighing(self, day: date) -> bool:
        """Its turn has come and no meal is inside, or it has waited long enough."""
        if not self.present or day < self.weigh_from:
            return False
        eaten_on = self.mirror.now.eaten_on
        fasted_days = self.profile.weights.digestion_days.value
        fasted = eaten_on is None or (day - eaten_on).days >= fasted_days
        late = (day - self.weigh_from).days >= WAIT_DAYS
        return fasted or late or self.rng.random() < 0.04

    def wants_measuring(self, day: date) -> bool:
        """Length and body score are taken of those that are nearly grown."""
        if not self.who.script.measured or self.stage(day) not in (Stage.SUBADULT, Stage.ADULT):
            return False
        return self.measured_on is None or (day - self.measured_on).days >= MEASURE_DAYS

    def weighed(self, day: date) -> None:
        days = self.who.script.weigh_days or WEIGH_DAYS[self.stage(day)]
        self.weigh_from = day + timedelta(days=days - 2)

    def cycle_after(self, shed: date) -> list[Sign]:
        """The signs of the shed cycle that follows one on *shed*, as the keeper notes them."""
        script = self.who.script
        if script.last_shed is not None and shed >= script.last_shed:
            return []
        day = self._next_shed(shed)
        if script.opaque_from is not None and day >= script.opaque_from - timedelta(days=14):
            return (
                [] if shed >= script.opaque_from else [Sign(script.opaque_from, ShedStage.OPAQUE)]
            )
        return self._signs(day)

    def shed_before(self) -> date:
        """When one that did not hatch here shed last before it came."""
        most = round(0.6 * self._median_days(self.who.comes))
        return self.who.comes - timedelta(days=self.rng.randint(1, most))

    def first_shed(self) -> Sign:
        """A hatchling sheds for the first time within days."""
        most = self.profile.sheds.first_shed_days_most.value
        days = self.rng.randint(round(0.5 * most), round(0.75 * most))
        return Sign(self.who.born + timedelta(days=days), ShedStage.SHED, ShedQuality.WHOLE)

    def _chance(self, day: date) -> float:
        if self.mirror.now.eaten_on is None:
            return 0.15
        gravid = any(
            laying.swollen is not None and laying.swollen <= day <= laying.laid
            for laying in self.who.layings
        )
        return 0.3 if gravid else self._refuses

    def _median_days(self, day: date) -> float:
        stage, sheds = self.stage(day), self.profile.sheds
        return sqrt(sheds.interval_days_low[stage].value * sheds.interval_days_high[stage].value)

    def _next_shed(self, shed: date) -> date:
        half = timedelta(days=round(self._median_days(shed) / 2))
        spread = 0.0 if self.who.script.steady_sheds else self.rng.gauss(0, 0.07)
        days = round(self._median_days(shed + half) * self._spacing * exp(spread))
        return self._around_eggs(shed, self._scripted(shed, shed + timedelta(days=days)))

    def _scripted(self, shed: date, day: date) -> date:
        """Drawn to a planted day, where that is nearer than the shed after this one."""
        for planted in (self.who.script.shed_on, self.who.script.last_shed):
            if planted is not None and shed < planted < day + (day - shed) / 2:
                return planted
        return day

    def _around_eggs(self, shed: date, day: date) -> date:
        for laying in self.who.layings:
            first = laying.laid - timedelta(days=BEFORE_EGGS_DAYS)
            last = laying.laid + timedelta(days=AFTER_EGGS_DAYS)
            if first <= day < last:
                return first if (first - shed).days >= 30 else last
        return day

    def _signs(self, day: date) -> list[Sign]:
        """Opaque six to nine days before; now and then nothing at all is noted."""
        rng = self.rng
        if rng.random() < 0.004:
            return [Sign(day, ShedStage.SHED)]
        opaque = day - timedelta(days=rng.randint(6, 9))
        cleared = day - timedelta(days=rng.randint(2, 4))
        signs = [Sign(day, ShedStage.SHED, self._quality())]
        if rng.random() < 0.7:
            signs.insert(0, Sign(cleared, ShedStage.CLEARED))
        if rng.random() < 0.95:
            signs.insert(0, Sign(opaque, ShedStage.OPAQUE))
        if rng.random() < 0.3:
            signs.insert(0, Sign(opaque - timedelta(days=2), ShedStage.DULL))
        return signs

    def _quality(self) -> ShedQuality:
        drawn = self.rng.random()
        return ShedQuality.PIECES if drawn < 0.03 else ShedQuality.WHOLE
