"""When an animal will reach a weight, from its own weighings and those of its kind.

Imports numpy: the window imports this module only after it has been painted.
"""

from dataclasses import dataclass
from datetime import date, timedelta

from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.populations import AgedWeights, Fitter, aged_weights, fit_here, population_of
from keeper.husbandry.animal import Sex
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.reasons import Reason, because
from keeper.rules.growth.expectation import heaviest_g
from keeper.rules.growth.forecast import Forecast, forecasts
from keeper.rules.growth.weighings import reached_already

LEVEL = 0.8
HALF = 0.5
WEIGHED = "weighed"
"""Basis of a weight that stands in the animal's own record."""

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("no forecast without a hatch day", ()),
    ("no forecast without a sex", ()),
    ("no forecast: no growth curve for this sex", ("sex",)),
    ("no forecast without a weighing", ()),
    ("forecast reached", ("target_g", "on")),
    ("forecast from weighings", ("weighings", "last_g", "last_on", "target_g")),
    ("forecast basis own", ("animals",)),
    ("forecast basis mixed", ("animals",)),
    ("forecast basis provisional", ()),
    ("forecast basis published", ()),
    ("forecast end beyond the curve", ()),
    ("forecast beyond the kind", ("target_g", "most_g")),
)
"""Every reason of this module with the figures it carries."""


@dataclass(frozen=True, slots=True, kw_only=True)
class WeightForecast:
    """The day a weight is reached: middle, 8-in-10 and 5-in-10 limits.

    on is None where nothing can be told; high and half_high are None where the limit lies
    beyond what the kind's growth can speak of.
    """

    animal: AnimalNow
    target_g: float
    on: date | None
    low: date | None = None
    high: date | None = None
    half_low: date | None = None
    half_high: date | None = None
    level: float = LEVEL
    reached: bool = False
    basis: str = ""
    because: tuple[Reason, ...] = ()


class Forecaster:
    """Forecasts for one book as of one day; *fitter* fits a kind when it is first asked for."""

    def __init__(self, keeping: Keeping, on: date, fitter: Fitter = fit_here) -> None:
        self._keeping = keeping
        self._on = on
        self._fitter = fitter

    def weight(self, row: AnimalNow, target_g: float) -> WeightForecast:
        """When *row* will weigh *target_g* empty; the first question of a kind takes a fit."""
        missing = self._missing(row)
        if missing is not None:
            return WeightForecast(animal=row, target_g=target_g, on=None, because=(missing,))
        record = aged_weights(self._keeping, row, self._on)
        if not record:
            none = because("no forecast without a weighing")
            return WeightForecast(animal=row, target_g=target_g, on=None, because=(none,))
        reached = reached_already(record, target_g)
        if reached is not None:
            return self._reached(row, target_g, reached)
        if target_g > (most_g := self._most_g(row, target_g)):
            beyond = because("forecast beyond the kind", target_g=target_g, most_g=most_g)
            return WeightForecast(animal=row, target_g=target_g, on=None, because=(beyond,))
        population = population_of(self._keeping, row, self._on, self._fitter)
        age = float(row.age_days(self._on) or 0)
        wide, narrow = forecasts(
            record, target_g, population, levels=(LEVEL, HALF), now_age_days=age
        )
        return _told(row, target_g, record, wide, narrow)

    def _missing(self, row: AnimalNow) -> Reason | None:
        if row.hatched_first is None:
            return because("no forecast without a hatch day")
        if row.sex is Sex.UNKNOWN:
            return because("no forecast without a sex")
        if row.sex not in self._keeping.profile(row).growth:
            return because("no forecast: no growth curve for this sex", sex=row.sex.value)
        return None

    def _reached(self, row: AnimalNow, target_g: float, age_days: float) -> WeightForecast:
        day = _day(row, age_days)
        return WeightForecast(
            animal=row,
            target_g=target_g,
            on=day,
            low=day,
            high=day,
            half_low=day,
            half_high=day,
            reached=True,
            basis=WEIGHED,
            because=(because("forecast reached", target_g=target_g, on=day),),
        )

    def _most_g(self, row: AnimalNow, target_g: float) -> float:
        """The heaviest that the kind is known to grow, by its curve or by one that did here.

        The others here are looked at only where the curve does not go up to *target_g*.
        """
        profile = self._keeping.profile(row)
        if target_g <= (by_curve := heaviest_g(profile.growth[row.sex])):
            return by_curve
        kin = [
            other.weight_g or 0.0
            for other in animals_on(self._keeping, self._on)
            if other.sex is row.sex and self._keeping.profile(other).slug == profile.slug
        ]
        return max(by_curve, *kin)


def forecast_weight(keeping: Keeping, row: AnimalNow, target_g: float, on: date) -> WeightForecast:
    """When *row* will weigh *target_g* empty, as of the day *on*."""
    return Forecaster(keeping, on).weight(row, target_g)


def _told(
    row: AnimalNow, target_g: float, record: AgedWeights, wide: Forecast, narrow: Forecast
) -> WeightForecast:
    return WeightForecast(
        animal=row,
        target_g=target_g,
        on=_day(row, wide.median_age_days),
        low=_day(row, wide.low_age_days),
        high=_day(row, wide.high_age_days),
        half_low=_day(row, narrow.low_age_days),
        half_high=_day(row, narrow.high_age_days),
        reached=wide.reached,
        basis=wide.basis,
        because=_why(row, target_g, record, wide),
    )


def _day(row: AnimalNow, age_days: float | None) -> date | None:
    """The day on which *row* has that age."""
    if age_days is None or row.hatched_first is None:
        return None
    age_then = row.age_days(row.hatched_first) or 0
    return row.hatched_first + timedelta(days=round(age_days) - age_then)


def _why(
    row: AnimalNow, target_g: float, record: AgedWeights, told: Forecast
) -> tuple[Reason, ...]:
    if told.reached:
        on = _day(row, told.median_age_days)
        return (because("forecast reached", target_g=target_g, on=on),)
    last_age, last_g = record[-1]
    reasons = [
        because(
            "forecast from weighings",
            weighings=told.weighings_used,
            last_g=round(last_g, 1),
            last_on=_day(row, last_age),
            target_g=target_g,
        ),
        because(f"forecast basis {told.basis}", animals=told.animals_used)
        if told.basis in ("own", "mixed")
        else because(f"forecast basis {told.basis}"),
    ]
    if told.high_age_days is None:
        reasons.append(because("forecast end beyond the curve"))
    return tuple(reasons)
