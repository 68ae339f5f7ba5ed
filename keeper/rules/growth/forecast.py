"""When an animal will weigh so much, with an interval that is right as often as it says."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import partial

import numpy as np

from keeper.rules.growth.calibration import spread
from keeper.rules.growth.paths import set_aside
from keeper.rules.growth.population import LEAST_GAIN, Population
from keeper.rules.growth.stack import Question, expected_days
from keeper.rules.growth.weighings import History, history

HORIZON_SPANS = 3.0  # a limit further off than this many usual record lengths is not given


@dataclass(frozen=True, slots=True, kw_only=True)
class Forecast:
    """The age at which a weight is reached, in days since hatching.

    ``cannot_tell`` is a sentence where there is no forecast; the ages are None then.
    ``high_age_days`` is None where the upper limit lies beyond what the reference animals
    can speak of. ``reached``: the weight stands in the record, and the ages are that day.
    """

    median_age_days: float | None
    low_age_days: float | None
    high_age_days: float | None
    level: float
    basis: str
    animals_used: int
    weighings_used: int
    reached: bool
    cannot_tell: str | None


def forecast(
    weighings: Iterable[tuple[float, float]],
    target_g: float,
    population: Population,
    *,
    level: float = 0.8,
    now_age_days: float | None = None,
    seed: int = 0,
) -> Forecast:
    """Forecast the age at *target_g* from weighings as (age in days, empty weight in grams).

    *now_age_days* is the age today, if later than the last weighing: a day before it becomes
    today, for nobody has looked since. A weighing that the animal's others speak strongly
    against is left out.

    Raises:
        ValueError: a weight or the target not above 0 g, an age below 0, or a level that is
            not between 0 and 1.
    """
    (told,) = forecasts(
        weighings, target_g, population, levels=(level,), now_age_days=now_age_days, seed=seed
    )
    return told


def forecasts(
    weighings: Iterable[tuple[float, float]],
    target_g: float,
    population: Population,
    *,
    levels: Sequence[float],
    now_age_days: float | None = None,
    seed: int = 0,
) -> tuple[Forecast, ...]:
    """The same at several levels, for little more than the price of one.

    Raises:
        ValueError: as ``forecast``.
    """
    if not (target_g > 0 and np.isfinite(target_g)):
        raise ValueError(f"a target weight must be above 0 g and finite, got {target_g!r}")
    for level in levels:
        if not 0 < level < 1:
            raise ValueError(f"a level must lie between 0 and 1, got {level!r}")
    whole, target = history(weighings), float(np.log(target_g))
    told = partial(_answer, population, target=target)
    if not len(whole):
        return tuple(told(level, 0, cannot_tell="no weighing yet") for level in levels)
    record = set_aside(population.gompertz, whole)
    used = len(record)
    if record.log_g[-1] >= target:
        day = record.reaches(target)
        return tuple(told(level, used, ages=(day, day, day), reached=True) for level in levels)
    now = max(float(whole.age_days[-1]), now_age_days or 0.0)
    ages = _ages(population, record, target, levels, now, seed)
    return tuple(told(level, used, ages=at) for level, at in zip(levels, ages, strict=True))


def _ages(
    population: Population,
    record: History,
    target: float,
    levels: Sequence[float],
    now: float,
    seed: int,
) -> list[tuple[float, float, float | None]]:
    """Median, low and high age at each level, none before *now*.

    A target so near that the question is one about noise is answered from the nearest that
    could be asked of other animals: in proportion, and for the upper limit by the root of it,
    as noise grows.

    That no weighing since shows the weight does not say that it is not reached: days before
    now become now.
    """
    last, last_g = float(record.age_days[-1]), float(record.log_g[-1])
    asked = max(target, last_g + LEAST_GAIN)
    near = (target - last_g) / (asked - last_g)  # below 1 where noise decides
    skill = population.skill(len(record))
    answer = population.answers(Question(record, asked), seed)
    days = expected_days(answer, skill.coefficients)
    likely = spread(skill.errors, days, last / population.span_days)
    horizon = now + HORIZON_SPANS * population.span_days

    def age(share: float, error: float) -> float:
        return last + share * days * float(np.exp(answer.scale * error))

    point = min(max(age(near, likely.middle()), now), horizon)
    ages = []
    for level in levels:
        low = age(near, likely.low((1 - level) / 2))
        late = max(age(float(np.sqrt(near)), likely.high((1 + level) / 2)), point)
        ages.append((point, min(max(low, now), point), late if late < horizon else None))
    return ages


def _answer(
    population: Population,
    level: float,
    used: int,
    *,
    target: float,
    ages: tuple[float | None, float | None, float | None] = (None, None, None),
    reached: bool = False,
    cannot_tell: str | None = None,
) -> Forecast:
    return Forecast(
        median_age_days=ages[0],
        low_age_days=ages[1],
        high_age_days=ages[2],
        level=level,
        basis=population.basis_at(target),
        animals_used=population.animals,
        weighings_used=used,
        reached=reached,
        cannot_tell=cannot_tell,
    )
