"""Growth curves fitted by the thousand, and one forecast after a weigh-in."""

import importlib
import importlib.util
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from benches.books import NIGHT, Size, book_of, written_in
from benches.measuring import Row, in_turns, ratio_row, skipped, time_row, timed
from keeper.actions.forecasting import Forecaster
from keeper.actions.keeping import Keeping
from keeper.actions.recording import write_up
from keeper.actions.undoing import take_back_batch
from keeper.husbandry.events import Weighing
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.when import at_instant
from keeper.rules.growth.many_curves import fit_gompertz_each
from keeper.store import reading

Floats = NDArray[np.float64]

WEIGHINGS = 60
ONE_BY_ONE = 100
"""Records that scipy fits; its time for all is told from these."""
EXP_MOST, LOOP_MOST, FORECAST_MS = 30.0, 1 / 20, 20.0


def fit_rows(animals: int, rounds: int) -> list[Row]:
    """The fit of all records beside one pass of numpy.exp, and beside a loop of curve_fit."""
    ages, logs = records(animals)
    size = f"{animals:,} × {WEIGHINGS}"
    took = in_turns(
        rounds,
        {"floor": lambda: np.exp(logs), "program": lambda: fit_gompertz_each(ages, logs)},
        least_of=3,
        reckoning=True,
    )
    one = ratio_row(
        "Gompertz curves fitted", size, took, most=EXP_MOST, floor="one pass of numpy.exp"
    )
    return [one, _beside_a_loop(ages, logs, size)]


def records(animals: int) -> tuple[Floats, Floats]:
    """Ages and log weights of invented growth, 3 per cent of noise on each weighing."""
    random = np.random.default_rng(7)
    ages = np.sort(random.uniform(10, 1100, (animals, WEIGHINGS)), axis=1)
    top = random.normal(5.3, 0.2, (animals, 1))
    drop = random.normal(3.3, 0.2, (animals, 1))
    rate = np.exp(random.normal(-5.2, 0.25, (animals, 1)))
    logs = top - drop * np.exp(-rate * ages) + random.normal(0, 0.03, ages.shape)
    return ages, logs


def _beside_a_loop(ages: Floats, logs: Floats, size: str) -> Row:
    subject = "Gompertz curves fitted, beside scipy's curve_fit"
    if importlib.util.find_spec("scipy") is None:
        return skipped(subject, size, "scipy is not installed here", most=LOOP_MOST)
    few = min(ONE_BY_ONE, len(ages))
    fit: Callable[..., Any] = importlib.import_module("scipy.optimize").curve_fit

    def loop() -> float:
        seconds = timed(lambda: [_one(fit, ages[n], logs[n]) for n in range(few)])
        return seconds * len(ages) / few

    took = in_turns(3, {"floor": loop, "program": lambda: fit_gompertz_each(ages, logs)})
    floor = f"a loop of curve_fit, told from {few} records"
    return ratio_row(subject, size, took, most=LOOP_MOST, floor=floor)


def _one(fit: Callable[..., Any], ages: Floats, logs: Floats) -> Any:
    return fit(
        lambda t, top, drop, rate: top - drop * np.exp(-rate * t),
        ages,
        logs,
        p0=(float(logs.max()), float(np.ptp(logs)), 3 / float(ages.max())),
        maxfev=2000,
    )[0]


def forecast_rows(size: Size, rounds: int) -> list[Row]:
    """One animal weighed and its day of a weight told anew, its kind being fitted already."""
    with written_in(book_of(size)) as keeping:
        row = _growing(keeping)
        forecaster = Forecaster(keeping, NIGHT)
        first = timed(lambda: forecaster.weight(row, 1.5 * (row.weight_g or 0)))

        def again() -> float:
            happened = at_instant(keeping.now(), NIGHT)
            grams = 1.001 * (row.weight_g or 0)
            weighed = Weighing(animal=row.animal, happened=happened, weight_g=grams)
            written = write_up(keeping, [weighed], verb="weigh")
            seconds = timed(lambda: forecaster.weight(row, 1.5 * (row.weight_g or 0)))
            take_back_batch(keeping, written.batch)
            return seconds

        seconds = in_turns(rounds, {"program": again})["program"]
    told = time_row("one forecast after a weigh-in", str(size), seconds, most_ms=FORECAST_MS)
    kind = f"the first of its kind, fitted with it: {1000 * first:.0f} ms"
    return [replace(told, note=kind)]


def _growing(keeping: Keeping) -> AnimalNow:
    """A young animal with a weight, a hatch day and a sex that has a curve."""
    return next(
        row
        for row in reading.board(keeping.book)
        if row.in_the_room
        and row.weight_g
        and row.sex in keeping.profile(row).growth
        and 200 < (row.age_days(NIGHT) or 0) < 500
    )
