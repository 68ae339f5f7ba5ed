"""Back-test of the growth forecast on any file of weighings, beside two plain rivals.

    python demo/backtest.py --csv weighings.csv --cases 6:100,8:150 --reference 25 --splits 12

The file holds animal, group, age_days, weight_g. A case T0:W asks on day T0 when an animal
will weigh W. It is put to every animal with three weighings or more up to T0, none of them
at W yet, and one later. The truth is the first day its weighings, joined straight in log
weight, reach W. For each split the animals are shuffled (numpy default_rng(100 + split)); the
first N are the reference, from which everything is fitted, chosen and calibrated, and the
rest are asked. The point forecast is the median; point and limits are cut at the last
weighing up to T0 plus the clip. Errors and interval scores (width + 10 x miss) are over those
who reached W; coverage is over all, where one that never did counts as covered if the upper
limit lies past its last weighing. The group is read for show only: no model uses it.

The rivals: a straight line in weight through the last two weighings; the reference animals'
median curve shifted in time to the animal's weight. Their intervals come from their own
errors on the reference animals, in the same way as the model's; where none of these could be
asked, an interval is as wide as the clip. Where the reference animals are too few or grew too
little to fit the model, its answer is the shifted median's.
"""

import argparse
import csv
import json
import sys
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path

import numpy as np

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from keeper.rules.growth.calibration import (  # noqa: E402 - found by the line above
    UNFINISHED_WORTH,
    Errors,
    spread,
)
from keeper.rules.growth.forecast import forecast  # noqa: E402
from keeper.rules.growth.median_curve import median_curve  # noqa: E402
from keeper.rules.growth.population import population  # noqa: E402
from keeper.rules.growth.weighings import History, history, span_days  # noqa: E402

LEVEL = 0.8
LEAST_WEIGHINGS = 6  # of an animal to take part
LEAST_REFERENCE = 4
NOT_WEIGHED = ("", "NA")  # a row without a weight is no weighing
LEAST_BEFORE = 3  # weighings up to the day of asking
FIRST_SEED = 100


@dataclass(frozen=True, slots=True)
class Asked:
    """One forecast to make, and what became of it."""

    animal: int
    record: History
    target_g: float
    reached_age: float | None
    end_age: float


@dataclass(frozen=True, slots=True)
class Told:
    """One forecast made, in days since hatching, with the question it answers."""

    asked: Asked
    point: float
    low: float
    high: float


Rival = Callable[[Asked], float]
"""A plain forecast: the days from the last weighing until the target."""


def read(path: Path) -> list[History]:
    """Animals in the order in which the file first names them.

    Raises:
        ValueError: a column is missing, or a figure cannot be one.
    """
    weighings: dict[str, list[tuple[float, float]]] = {}
    with path.open(newline="", encoding="utf-8-sig") as file:
        head = file.readline()
        file.seek(0)
        rows = csv.DictReader(file, delimiter=";" if ";" in head else ",")
        missing = {"animal", "age_days", "weight_g"} - set(rows.fieldnames or ())
        if missing:
            raise ValueError(f"{path}: no column {', '.join(sorted(missing))}")
        for line, row in enumerate(rows, start=2):
            if (row["weight_g"] or "").strip() not in NOT_WEIGHED:
                weighings.setdefault(row["animal"], []).append(_weighing(path, line, row))
    animals = [history(own) for own in weighings.values()]
    return [one for one in animals if len(one) >= LEAST_WEIGHINGS]


def _weighing(path: Path, line: int, row: dict[str, str]) -> tuple[float, float]:
    told = f"got {row['age_days']!r} and {row['weight_g']!r}"
    try:
        age_days, weight_g = float(row["age_days"]), float(row["weight_g"])
    except (TypeError, ValueError):
        wrong = f"an age and a weight must be numbers, {told}"
        raise ValueError(f"{path}, line {line}: {wrong}") from None
    if not (0 <= age_days < np.inf and 0 < weight_g < np.inf):
        wrong = f"an age must be 0 days or more and a weight above 0 g, {told}"
        raise ValueError(f"{path}, line {line}: {wrong}")
    return age_days, weight_g


def questions(
    animals: Sequence[History], who: Sequence[int], cases: Sequence[tuple[float, float]]
) -> list[Asked]:
    """The cases put to the animals they can be put to."""
    asked = []
    for at in who:
        whole = animals[at]
        for day, target_g in cases:
            count = int((whole.age_days <= day).sum())
            record = whole.first(count)
            target = float(np.log(target_g))
            if LEAST_BEFORE <= count < len(whole) and record.log_g.max() < target:
                end = float(whole.age_days[-1])
                asked.append(Asked(at, record, target_g, whole.reaches(target), end))
    return asked


def line_days(asked: Asked) -> float:
    """Straight line in weight through the last two weighings."""
    before_g, last_g = np.exp(asked.record.log_g[-2:])
    slope = (last_g - before_g) / np.diff(asked.record.age_days)[-1]
    return float((asked.target_g - last_g) / slope) if slope > 0 else np.inf


def median_days(animals: Sequence[History]) -> Rival:
    """The median curve of these animals, shifted in time to the animal's weight."""
    curve = median_curve(animals)
    return lambda asked: curve.days_between(
        float(asked.record.log_g[-1]), float(np.log(asked.target_g))
    )


def split(
    animals: Sequence[History],
    reference: Sequence[int],
    asked: Sequence[Asked],
    cases: Sequence[tuple[float, float]],
    clip_days: float,
) -> dict[str, list[Told]]:
    """Forecasts of the model and the rivals for one split."""
    known = [animals[at] for at in reference]
    span = span_days(known)
    practice = questions(animals, reference, cases)
    leave_out = {
        at: median_days([animals[other] for other in reference if other != at]) for at in reference
    }
    rivals = {
        "line": (line_days, [line_days(one) for one in practice]),
        "median": (median_days(known), [leave_out[one.animal](one) for one in practice]),
    }
    told: dict[str, list[Told]] = {}
    for name, (rival, practised) in rivals.items():
        errors = practice_errors(practice, np.array(practised), span, clip_days)
        told[name] = [plain(one, rival(one), errors, span, clip_days) for one in asked]
    try:
        return {**told, "model": model(known, asked, clip_days)}
    except ValueError:
        return {**told, "model": told["median"]}


def model(known: Sequence[History], asked: Sequence[Asked], clip_days: float) -> list[Told]:
    """The program's own forecast, from a population fitted to the reference animals.

    Raises:
        ValueError: they are too few, or grew too little.
    """
    fitted = population(known, basis="own")
    told = []
    for one in asked:
        weighings = zip(one.record.age_days, np.exp(one.record.log_g), strict=True)
        found = forecast(weighings, one.target_g, fitted, level=LEVEL)
        told.append(
            cut(
                one,
                known_age(found.median_age_days),
                known_age(found.low_age_days),
                known_age(found.high_age_days),
                clip_days,
            )
        )
    return told


def known_age(age: float | None) -> float:
    """An age, or never where the forecast gives none."""
    return np.inf if age is None else age


def practice_errors(
    practice: Sequence[Asked], days: np.ndarray, span: float, clip_days: float
) -> Errors | None:
    """A rival's errors on the reference animals, each animal counting alike; None without any."""
    if not len(practice):
        return None
    days = np.clip(days, 1e-3 * span, clip_days)
    last = np.array([float(one.record.age_days[-1]) for one in practice])
    known = np.array([min(known_age(one.reached_age), one.end_age) for one in practice])
    animal = np.array([one.animal for one in practice])
    reached = np.array([one.reached_age is not None for one in practice])
    return Errors(
        log_error=np.log(np.maximum(known - last, 1e-3 * span) / days),
        reached=reached,
        log_days=np.log(days),
        age=last / span,
        worth=np.where(reached, 1.0, UNFINISHED_WORTH) / np.bincount(animal)[animal],
    )


def plain(asked: Asked, days: float, errors: Errors | None, span: float, clip_days: float) -> Told:
    """A rival's forecast with its interval."""
    last = float(asked.record.age_days[-1])
    if errors is None:
        return cut(asked, last + days, last, np.inf, clip_days)
    used = float(np.clip(days, 1e-3 * span, clip_days))
    likely = spread(errors, used, last / span)
    low, high = likely.low((1 - LEVEL) / 2), likely.high((1 + LEVEL) / 2)
    return cut(asked, last + days, last + used * np.exp(low), last + used * np.exp(high), clip_days)


def cut(asked: Asked, point: float, low: float, high: float, clip_days: float) -> Told:
    end = float(asked.record.age_days[-1]) + clip_days
    return Told(asked, *(float(min(age, end)) for age in (point, low, high)))


def scores(told: Sequence[Told]) -> dict[str, float]:
    """The figures of one forecaster over all splits."""
    reached = [(one, one.asked.reached_age) for one in told if one.asked.reached_age is not None]
    errors = [abs(one.point - age) for one, age in reached]
    inside = [one.low <= age <= one.high for one, age in reached]
    late = [one.high > one.asked.end_age for one in told if one.asked.reached_age is None]
    score = [
        one.high - one.low + 10 * max(one.low - age, age - one.high, 0.0) for one, age in reached
    ]
    return {
        "n": len(told),
        "median_error_days": float(np.median(errors)),
        "mean_error_days": float(np.mean(errors)),
        "coverage_all": float(np.mean(inside + late)),
        "coverage_reached": float(np.mean(inside)),
        "interval_score": float(np.mean(score)),
    }


def backtest(
    animals: Sequence[History],
    cases: Sequence[tuple[float, float]],
    *,
    reference: int,
    splits: int,
    clip_days: float,
) -> dict[str, dict[str, float]]:
    """Scores of the model and the rivals over the splits.

    Raises:
        ValueError: no animals are left to ask, or none that was asked reached its target.
    """
    if len(animals) <= LEAST_REFERENCE:
        raise ValueError(
            f"a back-test needs more than {LEAST_REFERENCE} animals with {LEAST_WEIGHINGS}"
            f" weighings or more, the file holds {len(animals)}"
        )
    if splits < 1:
        raise ValueError(f"--splits must be 1 or more, got {splits}")
    if not LEAST_REFERENCE <= reference < len(animals):
        raise ValueError(
            f"--reference must be {LEAST_REFERENCE} to {len(animals) - 1} of the {len(animals)}"
            f" animals with {LEAST_WEIGHINGS} weighings or more, got {reference}"
        )
    told: dict[str, list[Told]] = {"model": [], "line": [], "median": []}
    for turn in range(splits):
        order = np.random.default_rng(FIRST_SEED + turn).permutation(len(animals))
        known, others = sorted(order[:reference]), sorted(order[reference:])
        asked = questions(animals, others, cases)
        for name, some in split(animals, known, asked, cases, clip_days).items():
            told[name] += some
    if not any(one.asked.reached_age is not None for one in told["model"]):
        raise ValueError("no animal that could be asked reached its target: no error can be told")
    return {name: scores(all_told) for name, all_told in told.items()}


def parsed_cases(text: str) -> list[tuple[float, float]]:
    """``6:100,8:150`` as (day, grams)."""
    try:
        pairs = [part.split(":") for part in text.split(",")]
        cases = [(float(day), float(grams)) for day, grams in pairs]
    except ValueError:
        cases = []
    if cases and all(0 <= day < np.inf and 0 < grams < np.inf for day, grams in cases):
        return cases
    raise argparse.ArgumentTypeError(
        f"cases are DAY:GRAMS, parted by commas, as 6:100,8:150; got {text!r}"
    )


def main(arguments: Sequence[str] | None = None) -> int:
    parser = argparse.ArgumentParser(description=__doc__.split("\n", maxsplit=1)[0])
    parser.add_argument("--csv", type=Path, required=True, help="animal,group,age_days,weight_g")
    parser.add_argument("--cases", type=parsed_cases, required=True, help="T0:W,...")
    parser.add_argument("--reference", type=int, default=25, help="animals to learn from")
    parser.add_argument("--splits", type=int, default=12)
    parser.add_argument("--clip-days", type=float, default=30.0)
    parser.add_argument("--json", action="store_true", help="print the figures as JSON")
    chosen = parser.parse_args(arguments)
    try:
        found = backtest(
            read(chosen.csv),
            chosen.cases,
            reference=chosen.reference,
            splits=chosen.splits,
            clip_days=chosen.clip_days,
        )
    except (OSError, ValueError) as problem:
        print(problem, file=sys.stderr)
        return 2
    print(json.dumps(found) if chosen.json else as_table(found))
    return 0


def as_table(found: dict[str, dict[str, float]]) -> str:
    """The figures as lines for a terminal."""
    names = list(next(iter(found.values())))
    lines = ["          " + "".join(f"{name:>19}" for name in names)]
    for who, figures in found.items():
        lines.append(f"{who:<10}" + "".join(f"{figures[name]:>19.3f}" for name in names))
    return "\n".join(lines)


if __name__ == "__main__":
    sys.exit(main())
