"""Several growth models' answers joined into one, by what they were worth on reference animals.

A question is a record so far and a target weight. Each model answers in days from the last
weighing; what is learned is the log of true days over the days the median animal takes
between the two weights, as a straight combination of the models' own logs over the same:

* the animal's tempo against the median animal, over its whole record and lately;
* the hierarchical Gompertz model's median;
* a straight line in log weight through the last three weighings.

The fit is least absolute error with a ridge that pulls towards the median animal, so with
little to learn from the answer is the median curve, shifted. An answer for one or two
weighings has its own fit, with the models that can speak.

Sources: L. Breiman, Stacked Regressions, Machine Learning 24 (1996) 49-64; the weighing by
1/|residual|, E. Schlossmacher, J. Am. Stat. Assoc. 68 (1973) 857-859.
"""

from dataclasses import dataclass

import numpy as np

from keeper.rules.growth.completion import Course
from keeper.rules.growth.median_curve import MedianCurve
from keeper.rules.growth.paths import Paths
from keeper.rules.growth.weighings import Floats, History

CLIP = 1.2  # a model is believed up to e**1.2, about 3.3 times slower or faster than the median
LINE_POINTS = 3
RECENT_STEPS = 2
RIDGE = 20.0
ANIMAL_WORTH = 4.0  # independent questions one animal's record is taken to hold
TURNS = 40
SMALL = 0.05


@dataclass(frozen=True, slots=True)
class Question:
    """When will this record reach the target?"""

    record: History
    log_target: float


@dataclass(frozen=True, slots=True)
class Answers:
    """What the models say: days of the base model, and log ratios of the others to it."""

    base_days: float
    ratios: Floats
    scale: float  # in which log errors are counted: larger where weight says little of the day


def answers(
    median: MedianCurve, paths: Paths, span: float, question: Question, course: Course | None
) -> Answers:
    """The models' answers, in the order the fits expect; fewer for one or two weighings.

    *course*: how the kind expects the record to go on, where there is a kind. Its days are
    then what the others are held against, and the median animal's are one of the others.
    """
    record, target = question.record, question.log_target
    last, least = float(record.age_days[-1]), 1e-3 * span
    usual = float(np.clip(median.days_between(record.log_g[-1], target), least, 2.0 * span))
    base = usual if course is None else max(course.days(target), least)
    gompertz = min(paths.reaching_age(target, 0.5), paths.age_days[-1] + span)
    ratios = [1.0, _log_ratio(gompertz - last, base, least)]
    if course is not None:
        ratios.append(_log_ratio(usual, base, least))
    if len(record) >= 2:
        ratios += [
            _log_ratio(_line_days(record, target), base, least),
            _tempo(median, record, span),
        ]
    if len(record) >= 3:
        ratios.append(_tempo(median, record.last(RECENT_STEPS + 1), span))
    scale = 1.0 if course is None else course.log_days_spread(base)
    return Answers(base, np.array(ratios), scale)


def _log_ratio(days: float, base: float, least: float) -> float:
    return float(np.clip(np.log(max(days, least) / base), -CLIP, CLIP))


def _line_days(record: History, log_target: float) -> float:
    late = record.last(LINE_POINTS)
    ages = late.age_days - late.age_days.mean()
    slope = float(ages @ late.log_g / (ages @ ages))
    return float(log_target - late.log_g[-1]) / slope if slope > 0 else np.inf


def _tempo(median: MedianCurve, record: History, span: float) -> float:
    """Log of days this record took over days the median animal takes for the same gain."""
    took = float(record.age_days[-1] - record.age_days[0])
    usual = median.days_between(record.log_g[0], record.log_g[-1])
    least = 0.15 * took + 0.02 * span
    return float(np.clip(np.log(took / max(usual, least)), -CLIP, CLIP))


def fitted(ratios: Floats, log_true: Floats, worth: Floats, animals: int) -> Floats:
    """Coefficients by least absolute error with a ridge; *worth* weighs the questions."""
    coefficients: Floats = np.zeros(ratios.shape[1])
    if not len(worth):
        return coefficients
    worth = worth / worth.sum() * animals * ANIMAL_WORTH
    ridge = RIDGE * np.eye(ratios.shape[1])
    left = log_true
    for _ in range(TURNS):
        scale = float(worth @ np.abs(left) / worth.sum()) + 1e-9
        weight = worth / np.maximum(np.abs(left), SMALL) / scale
        curvature = ratios.T @ (weight[:, None] * ratios) + ridge
        coefficients = np.asarray(np.linalg.solve(curvature, ratios.T @ (weight * log_true)))
        left = log_true - ratios @ coefficients
    return coefficients


def expected_days(answer: Answers, coefficients: Floats) -> float:
    """Days from the last weighing until the target."""
    return answer.base_days * float(np.exp(np.clip(answer.ratios @ coefficients, -1.5, 1.5)))
