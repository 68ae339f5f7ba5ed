"""An invented animal's body: what it weighs empty, what the scale says, how long it is."""

from bisect import bisect_right
from datetime import date
from math import exp, pi, sin
from random import Random

from keeper.husbandry.animal import Sex
from keeper.husbandry.profile import SpeciesProfile
from keeper.rehearsal.character import Character
from keeper.rules.growth.expectation import expectation
from keeper.rules.weights import Meal, left_in_gut

EGGS_SHARE, EGGS_DAYS = 0.32, 35
SPENT_SHARE, RECOVERY_DAYS = 0.90, 60
HEAVY_G = 100.0
"""Heavier animals go on the coarse scale."""

LENGTHS_CM = {
    ("house_snake", Sex.FEMALE): (21.0, 75.0),
    ("house_snake", Sex.MALE): (21.0, 60.0),
    ("corn_snake", Sex.FEMALE): (26.0, 112.0),
    ("corn_snake", Sex.MALE): (26.0, 108.0),
    ("ball_python", Sex.FEMALE): (38.0, 122.0),
    ("ball_python", Sex.MALE): (38.0, 112.0),
    ("western_hognose", Sex.FEMALE): (15.0, 55.0),
    ("western_hognose", Sex.MALE): (15.0, 42.0),
}
"""Snout to vent at hatching and full grown: invented, for rehearsal only."""


class Body:
    """Truth that the keeper only sees through the scale."""

    def __init__(self, character: Character, profile: SpeciesProfile, rng: Random) -> None:
        self._who = character
        self._profile = profile
        self._curve = profile.growth[character.sex]
        self._rng = rng
        z = min(1.1, max(-0.6, rng.gauss(0.1, 0.5)))
        self.z = z if character.script.z is None else character.script.z
        self._phase, self._period_days = rng.random(), rng.uniform(150, 260)

    def empty_g(self, day: date) -> float:
        """Without meals, eggs included while she carries them."""
        expected = expectation(self._curve, max(0, (day - self._who.born).days))
        slow = 1 + 0.008 * sin(2 * pi * (day.toordinal() / self._period_days + self._phase))
        grown = expected.m_g * exp(self.z * expected.s)
        return grown * slow * self._worn(day) * self._eggs(day)

    def on_scale_g(self, day: date, meals: list[Meal]) -> float:
        """As the scale shows it on *day*, meals of days before still inside, rounded."""
        inside = sum(
            left_in_gut(grams or 0.0, (day - on).days, self._profile) * self._rng.uniform(0.9, 1.1)
            for on, grams in meals
        )
        grams = self.empty_g(day) * self._rng.gauss(1, 0.003) + inside
        return max(0.1, round(grams, 1) if grams < HEAVY_G else float(round(grams)))

    def resolution_g(self, grams: float) -> float:
        return 0.1 if grams < HEAVY_G else 1.0

    def length_cm(self, day: date) -> float:
        hatched, grown = LENGTHS_CM[self._who.species, self._who.sex]
        years = (day - self._who.born).days / 365.25
        return round(grown - (grown - hatched) * exp(-1.6 * years), 1)

    def score(self) -> float:
        return self._rng.choice((3.0, 3.0, 3.25, 3.5))

    def _worn(self, day: date) -> float:
        points = self._who.script.worn
        at = bisect_right([on for on, _ in points], day)
        if at == 0:
            return 1.0
        if at == len(points):
            return points[-1][1]
        (first, a), (last, b) = points[at - 1], points[at]
        return a + (b - a) * (day - first).days / (last - first).days

    def _eggs(self, day: date) -> float:
        share = 1.0
        for laying in self._who.layings:
            left = (laying.laid - day).days
            if 0 < left <= EGGS_DAYS:
                share = 1 + EGGS_SHARE * (1 - left / EGGS_DAYS)
            elif -RECOVERY_DAYS < left <= 0:
                share = SPENT_SHARE + (1 - SPENT_SHARE) * -left / RECOVERY_DAYS
        return share
