"""One animal's life on one time axis: everything that the life strip draws."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from keeper.actions.keeping import Keeping
from keeper.actions.life import Life, empties, expected_on, life_of
from keeper.husbandry.animal import AnimalId, Sex, Stage
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import LmsCurve
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
class AnimalPage:
    """today is the last day that the page knows of."""

    animal: AnimalNow
    today: date
    species: str
    stage: Stage | None
    age_days: int | None
    life: Life
    empties: tuple[Empty, ...]
    bands: dict[Sex, tuple[BandPoint, ...]]
    expected: Expectation | None  # today
    weighed_standing: tuple[Expectation, Standing] | None  # on the day of the last weighing
    clock: ShedClock
    parents: tuple[str | None, str | None]

    def expected_at(self, day: date) -> Expectation | None:
        """The band's nearest point to *day*, of her own sex."""
        points = self.bands.get(self.animal.sex, ())
        return min(points, key=lambda p: abs((p.day - day).days)).expected if points else None


def animal_page(keeping: Keeping, row: AnimalNow, on: date, ahead_days: int = 365) -> AnimalPage:
    """The page of *row* as of the day *on*; its band runs *ahead_days* beyond."""
    profile = keeping.profile(row)
    life = life_of(keeping, row.animal, on)
    freed = empties(life.weighings, life.meals, profile)
    expected = expected_on(row, profile, on)
    stage = stage_of(row, profile, on)
    entries_on = [e.happened.day for e in (*life.offers, *life.weighings)]
    return AnimalPage(
        animal=row,
        today=on,
        species=profile.english,
        stage=stage,
        age_days=row.age_days(on),
        life=life,
        empties=tuple(freed),
        bands=_bands(row, profile.growth, on, ahead_days),
        expected=expected,
        weighed_standing=_standing(freed, row, keeping),
        clock=shed_clock(row, life.signs, profile, stage, on, entries_on=entries_on),
        parents=(_code_of(keeping, row.dam), _code_of(keeping, row.sire)),
    )


def _bands(
    row: AnimalNow, growth: Mapping[Sex, LmsCurve], on: date, ahead_days: int
) -> dict[Sex, tuple[BandPoint, ...]]:
    """Her own sex's band; both where the sex is not known; none where the age is not."""
    if row.hatched_first is None:
        return {}
    first_age = -(row.age_days(row.hatched_first) or 0)
    last_age = max((row.age_days(on) or 0) + ahead_days, 1)
    sexes = growth if row.sex is Sex.UNKNOWN else {row.sex}
    step = last_age / (_BAND_POINTS - 1)
    ages = [round(n * step) for n in range(_BAND_POINTS)]
    hatched = row.hatched_first + timedelta(days=first_age)
    return {
        sex: tuple(
            BandPoint(day=hatched + timedelta(days=age), expected=expectation(growth[sex], age))
            for age in ages
        )
        for sex in sexes
        if sex in growth
    }


def _standing(
    freed: Sequence[Empty], row: AnimalNow, keeping: Keeping
) -> tuple[Expectation, Standing] | None:
    """How the last empty weight stood on its own day."""
    if not freed:
        return None
    day, grams, _ = freed[-1]
    expected = expected_on(row, keeping.profile(row), day)
    return None if expected is None else (expected, standing(expected, grams))


def _code_of(keeping: Keeping, animal: AnimalId | None) -> str | None:
    row = None if animal is None else reading.animal_now(keeping.book, animal)
    return None if row is None else row.name or row.code
