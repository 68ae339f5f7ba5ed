"""The growth forecast tried on invented stocks whose later life is known.

    python demo/backtest_stock.py --stocks 4 --females 30 --json

A keeper's own records end today, most of them before the weight that is asked for, so their
ends say nothing about it. Here whole stocks are invented, each of its own tempo and size, of
mixed ages, weighed as is usual until today; every female below a weight is asked when she will
weigh it, and the answer is held against the curve that she was invented from. Families:

    steady    every animal along the profile's curve at an own z, with a slow wave
    drifting  the same, with a z that wanders
    gompertz  log w = a - b exp(-k t), with an own asymptote and rate
    logistic  w = a / (1 + c exp(-r t)), the same

A female who never reaches the weight counts as covered if the upper limit is not given or
lies 6 years off. Errors are over those who do: signed, in shares of the days to go.
"""

import argparse
import json
import sys
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path

import numpy as np

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from keeper.husbandry.profile import LmsCurve  # noqa: E402 - found by the line above
from keeper.rules.growth.expectation import expectation  # noqa: E402
from keeper.rules.growth.forecast import forecast  # noqa: E402
from keeper.rules.growth.population import Population  # noqa: E402
from keeper.rules.growth.stand_ins import population_for  # noqa: E402
from keeper.rules.growth.weighings import History  # noqa: E402

LEVEL = 0.8
TARGETS_G = (150.0, 200.0, 250.0)
OLDEST_DAYS, YOUNGEST_DAYS = 1460, 30
BOOK_DAYS = 1095  # the record book is three years old: older animals' youth is not in it
NEVER_DAYS = 2920.0
SURE_DAYS = 2190.0
LEAST_GO_DAYS = 14.0  # shares of fewer days to go say little
NOISE = 0.012

Grown = Callable[[np.ndarray], np.ndarray]
"""Log weight in grams at ages in days."""

KNOTS = (
    (0, 5.5, 0.12),
    (11, 5.6, 0.154),
    (30, 7.0, 0.195),
    (60, 12.7, 0.238),
    (91, 21.6, 0.27),
    (150, 44.6, 0.256),
    (240, 89.6, 0.242),
    (365, 154.4, 0.23),
    (450, 190.6, 0.229),
    (547, 220.8, 0.228),
    (730, 252.5, 0.226),
    (910, 265.1, 0.225),
    (1095, 270.1, 0.224),
    (1460, 272.6, 0.222),
)
"""Age in days, median in grams, S: invented for rehearsal, near a small colubrid's."""

CURVE = LmsCurve(
    age_days=tuple(age for age, _, _ in KNOTS),
    l=(0.0,) * len(KNOTS),
    m_g=tuple(m_g for _, m_g, _ in KNOTS),
    s=tuple(s for *_, s in KNOTS),
    basis="provisional",
    source="invented for rehearsal",
)


def steady(random: np.random.Generator) -> Callable[[], Grown]:
    """Animals at a z of their own for life."""

    def one() -> Grown:
        z = float(np.clip(random.normal(0.1, 0.5), -0.6, 1.1))
        phase, period = random.random(), random.uniform(150, 260)
        return lambda ages: (
            _on_curve(ages, np.full(len(ages), z))
            + 0.008 * np.sin(2 * np.pi * (ages / period + phase))
        )

    return one


def drifting(random: np.random.Generator) -> Callable[[], Grown]:
    """Animals whose z keeps part of itself and wanders smoothly for the rest."""
    shift = random.normal(0.0, 0.3)
    knots = np.linspace(np.log(30.0), np.log(NEVER_DAYS + 30.0), 40)
    covariance = np.exp(-0.5 * ((knots[:, None] - knots) / 0.6) ** 2) + 1e-6 * np.eye(40)
    lower = np.linalg.cholesky(covariance)

    def one() -> Grown:
        walk = shift + random.normal(0.0, 0.8) + 0.4 * (lower @ random.standard_normal(40))
        return lambda ages: _on_curve(ages, np.interp(np.log(ages + 30.0), knots, walk))

    return one


def gompertz(random: np.random.Generator) -> Callable[[], Grown]:
    """Gompertz growth; the stock's size and tempo are its own."""
    size, tempo = random.normal(np.log(270.0), 0.12), random.normal(np.log(0.0053), 0.12)

    def one() -> Grown:
        top, rate = random.normal(size, 0.18), np.exp(random.normal(tempo, 0.18))
        rise = top - random.normal(np.log(5.5), 0.1)
        return lambda ages: top - rise * np.exp(-rate * ages)

    return one


def logistic(random: np.random.Generator) -> Callable[[], Grown]:
    """Logistic growth; the stock's size and tempo are its own."""
    size, tempo = random.normal(np.log(270.0), 0.12), random.normal(np.log(0.0114), 0.12)

    def one() -> Grown:
        top, rate = random.normal(size, 0.18), np.exp(random.normal(tempo, 0.18))
        over = np.exp(top - random.normal(np.log(5.5), 0.1)) - 1.0
        return lambda ages: top - np.log1p(over * np.exp(-rate * ages))

    return one


FAMILIES = {"steady": steady, "drifting": drifting, "gompertz": gompertz, "logistic": logistic}


def _on_curve(ages: np.ndarray, z: np.ndarray) -> np.ndarray:
    expected = [expectation(CURVE, float(age)) for age in ages]
    return np.array([np.log(at.m_g) + own * at.s for at, own in zip(expected, z, strict=True)])


@dataclass(frozen=True, slots=True)
class Female:
    """One invented female: her record up to today, and her true curve."""

    record: History
    age_days: float
    grown: Grown


def stock(family: str, count: int, seed: int) -> list[Female]:
    """A stock of mixed ages, two thirds of it younger than a year and a half."""
    random = np.random.default_rng(seed)
    animal = FAMILIES[family](random)
    return [_female(animal(), random) for _ in range(count)]


def _female(grown: Grown, random: np.random.Generator) -> Female:
    oldest = OLDEST_DAYS if random.random() < 1 / 3 else 547
    now = float(round(random.uniform(YOUNGEST_DAYS, oldest)))
    step, ages = random.uniform(14.0, 35.0), [0.0]
    while ages[-1] < now:
        ages.append(round(ages[-1] + step * random.uniform(0.7, 1.4) * (1 + ages[-1] / 730)))
    kept = np.array([age for age in ages if now - BOOK_DAYS <= age <= now])
    return Female(
        History(kept, grown(kept) + NOISE * random.standard_normal(len(kept))), now, grown
    )


@dataclass(frozen=True, slots=True)
class Told:
    """One answer, in days from today; never is infinite."""

    true: float
    point: float
    low: float
    high: float


def answers(females: Sequence[Female], targets_g: Sequence[float]) -> list[Told]:
    """Every female below a weight asked for each weight."""
    fitted = population_for(CURVE, [one.record for one in females if len(one.record)])
    told = []
    for one in females:
        for target_g in targets_g:
            if len(one.record) and one.record.log_g.max() < np.log(target_g):
                told.append(_told(one, target_g, fitted))
    return told


def _told(one: Female, target_g: float, fitted: Population) -> Told:
    weighings = list(zip(one.record.age_days, np.exp(one.record.log_g), strict=True))
    found = forecast(weighings, target_g, fitted, level=LEVEL, now_age_days=one.age_days)
    ahead = np.arange(one.age_days, NEVER_DAYS)
    over = one.grown(ahead) >= np.log(target_g)
    true = float(over.argmax()) if over.any() else np.inf
    point, low, high = (
        np.inf if age is None else age - one.age_days
        for age in (found.median_age_days, found.low_age_days, found.high_age_days)
    )
    return Told(true, point, low, high)


def scores(told: Sequence[Told]) -> dict[str, float]:
    """Coverage, width, error and lean of the answers."""
    inside = [
        one.low <= one.true <= one.high or (one.high > SURE_DAYS and one.true == np.inf)
        for one in told
    ]
    never = [one for one in told if not np.isfinite(one.true)]
    ahead = [one for one in told if LEAST_GO_DAYS <= one.true < np.inf]
    shares = np.array([(one.point - one.true) / one.true for one in ahead])
    widths = np.array([one.high - one.low for one in ahead])
    return {
        "n": len(told),
        "never": len(never),
        "coverage": float(np.mean(inside)),
        "coverage_reached": float(
            np.mean([one.low <= one.true <= one.high for one in told if one.true < np.inf])
        ),
        "early": float(np.mean([one.true > one.high for one in ahead])),
        "late": float(np.mean([one.true < one.low for one in ahead])),
        "median_lean": float(np.median(shares)),
        "median_error_days": float(np.median([abs(one.point - one.true) for one in ahead])),
        "median_true_days": float(np.median([one.true for one in ahead])),
        "median_width_days": float(np.median(widths)),
        "open": float(np.mean(~np.isfinite(widths))),
    }


def main(arguments: Sequence[str] | None = None) -> int:
    parser = argparse.ArgumentParser(description=__doc__.split("\n", maxsplit=1)[0])
    parser.add_argument("--stocks", type=int, default=4, help="invented stocks a family")
    parser.add_argument("--females", type=int, default=30, help="females in a stock")
    parser.add_argument("--families", default=",".join(FAMILIES))
    parser.add_argument("--seed", type=int, default=0)
    parser.add_argument("--json", action="store_true", help="print the figures as JSON")
    chosen = parser.parse_args(arguments)
    found = {}
    for family in chosen.families.split(","):
        began = time.process_time()
        told = [
            one
            for turn in range(chosen.stocks)
            for one in answers(stock(family, chosen.females, chosen.seed + turn), TARGETS_G)
        ]
        found[family] = scores(told) | {"s": (time.process_time() - began) / chosen.stocks}
    print(json.dumps(found) if chosen.json else as_table(found))
    return 0


def as_table(found: dict[str, dict[str, float]]) -> str:
    """The figures as lines for a terminal."""
    names = list(next(iter(found.values())))
    lines = ["figure             " + "".join(f"{family:>12}" for family in found)]
    for name in names:
        lines.append(f"{name:<19}" + "".join(f"{own[name]:>12.3f}" for own in found.values()))
    return "\n".join(lines)


if __name__ == "__main__":
    sys.exit(main())
