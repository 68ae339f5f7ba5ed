"""Everything a forecast borrows from other animals: models, their joint worth, past errors."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from keeper.rules.growth.calibration import UNFINISHED_WORTH, Errors
from keeper.rules.growth.completion import Kind
from keeper.rules.growth.gompertz import GompertzPopulation, gompertz_population
from keeper.rules.growth.median_curve import MedianCurve, median_curve
from keeper.rules.growth.paths import paths, set_aside
from keeper.rules.growth.stack import Answers, Question, answers, expected_days, fitted
from keeper.rules.growth.weighings import Floats, History, span_days

LEAST_ANIMALS = 4
OWN = "own"
OWN_ANIMALS = 24
"""Own animals that do without imagined ones."""

MOST_ANIMALS = 36  # fitting more changes little and takes long
MOST_STARTS = 200  # records asked, of all animals together: the same holds
FOLDS = 12
ENOUGH = 3  # weighings from which every model can speak
STARTS, TARGETS = 8, 6  # questions asked of one reference record, at most
LEAST_GAIN = 0.03  # in log weight: a nearer target is a question about noise
TOP_SHARE = 0.5  # targets up to the weight that this share of the records stay under


@dataclass(frozen=True, slots=True)
class Skill:
    """For records of one length (1, 2, or 3 and more weighings): joint worth, past errors."""

    coefficients: Floats
    errors: Errors


@dataclass(frozen=True, slots=True)
class Population:
    """Reference animals of one kind, ready to forecast another of their kind."""

    median: MedianCurve
    gompertz: GompertzPopulation
    span_days: float
    skills: tuple[Skill, ...]  # for 1, 2, and 3 or more weighings
    animals: int
    basis: str
    kind: Kind | None
    reach: Floats  # log of the most that each own animal weighed so far

    def basis_at(self, log_target: float) -> str:
        """Own only where as many own animals have weighed the target as do without others."""
        spoke = int((self.reach >= log_target).sum())
        return "mixed" if self.basis == OWN and spoke < OWN_ANIMALS and self.kind else self.basis

    def skill(self, weighings: int) -> Skill:
        """The skill for a record of so many weighings."""
        return self.skills[min(weighings, ENOUGH) - 1]

    def answers(self, question: Question, seed: int) -> Answers:
        """The models' answers to one question."""
        moves = paths(self.gompertz, question.record, seed=seed)
        course = self.kind.expected(question.record) if self.kind else None
        return answers(self.median, moves, self.span_days, question, course)


@dataclass(frozen=True, slots=True)
class _Asked:
    """A question put to a reference animal by models that had not seen it, and the truth.

    Ages are None where the record ends first. The worth of the models is learned without
    weighings that do not fit; errors are counted against the record as it was written.
    """

    animal: int
    question: Question
    answer: Answers
    true_age: float | None
    written_age: float | None
    end_age: float

    def days(self, age: float | None) -> float:
        """Days from the last weighing to an age, or to the end of the record."""
        known = self.end_age if age is None else age
        return known - float(self.question.record.age_days[-1])


def population(
    animals: Sequence[History],
    *,
    basis: str,
    own: Sequence[History] | None = None,
    kind: Kind | None = None,
    seed: int = 0,
) -> Population:
    """Fit models on the animals, and learn their worth and errors by leaving animals out.

    *own*: the records as they were written, where *kind* carried them on to whole lives or
    imagined them; a weight not reached in a whole life never is.

    Raises:
        ValueError: fewer than four animals with three weighings or more.
    """
    usable = [one for one in animals if len(one) >= ENOUGH]
    if len(usable) < LEAST_ANIMALS:
        raise ValueError(
            f"a forecast needs {LEAST_ANIMALS} animals weighed {ENOUGH} times or more,"
            f" got {len(usable)}"
        )
    chosen = _evenly(usable, MOST_ANIMALS)
    gompertz = gompertz_population(chosen)
    asked = _asked_of_all(chosen, gompertz, kind, seed)
    span = span_days(chosen)
    return Population(
        median=median_curve(chosen),
        gompertz=gompertz,
        span_days=span,
        skills=tuple(_skill(some, span, len(chosen), kind is not None) for some in asked),
        animals=len(usable if own is None else own),
        basis=basis,
        kind=kind,
        reach=np.array([one.log_g.max() for one in (animals if own is None else own)]),
    )


def _evenly(animals: list[History], most: int) -> list[History]:
    if len(animals) <= most:
        return animals
    return [animals[at] for at in np.linspace(0, len(animals) - 1, most).astype(int)]


@dataclass(frozen=True, slots=True)
class _Models:
    """What one fold's animals are asked of."""

    median: MedianCurve
    gompertz: GompertzPopulation
    kind: Kind | None
    seed: int
    starts: int


def _asked_of_all(
    animals: list[History], whole: GompertzPopulation, kind: Kind | None, seed: int
) -> list[list[_Asked]]:
    """Questions by record length, each answered by the models of the other folds.

    Those start from the fit to all: it only saves rounds.
    """
    asked: list[list[_Asked]] = [[] for _ in range(ENOUGH)]
    top = float(np.quantile([one.log_g.max() for one in animals], TOP_SHARE))
    starts = min(STARTS, max(2, MOST_STARTS // len(animals)))
    for fold in range(min(FOLDS, len(animals))):
        others = [one for at, one in enumerate(animals) if at % FOLDS != fold]
        gompertz = gompertz_population(others, whole)
        models = _Models(median_curve(others), gompertz, kind, seed, starts)
        for at in range(fold, len(animals), FOLDS):
            for one in _asked_of(at, animals[at], models, top):
                asked[min(len(one.question.record), ENOUGH) - 1].append(one)
    return asked


def _asked_of(at: int, whole: History, models: _Models, top: float) -> Iterator[_Asked]:
    clean = set_aside(models.gompertz, whole)
    end = float(whole.age_days[-1])
    for so_far in _records(whole, models.starts):
        record = set_aside(models.gompertz, so_far)
        targets = _targets(float(so_far.log_g.max()) + LEAST_GAIN, top)
        if not targets:
            continue
        moves = paths(models.gompertz, record, seed=models.seed)
        course = models.kind.expected(record) if models.kind else None
        for target in targets:
            question = Question(record, target)
            answer = answers(models.median, moves, models.gompertz.span_days, question, course)
            true_age, written_age = (
                one.since(so_far.age_days[-1]).reaches(target) for one in (clean, whole)
            )
            yield _Asked(at, question, answer, true_age, written_age, end)


def _records(whole: History, starts: int) -> list[History]:
    """Records as they stood at several ages, in full and cut to the last one or two weighings."""
    ends = np.unique(np.linspace(ENOUGH, len(whole) - 1, starts).round().astype(int))
    full = [whole.first(int(end)) for end in ends if ENOUGH <= end < len(whole)]
    return full + [record.last(size) for record in full[::2] for size in range(1, ENOUGH)]


def _targets(low: float, top: float) -> list[float]:
    if top <= low:
        return []
    return [float(a + b) / 2 for a, b in pairwise(np.linspace(low, top, TARGETS + 1))]


def _skill(asked: list[_Asked], span: float, animals: int, whole_lives: bool) -> Skill:
    """Worth of the models over all questions, errors by folds that the worth had not seen."""
    ratios = np.array([one.answer.ratios for one in asked])
    base = np.array([one.answer.base_days for one in asked])
    fold = np.array([one.animal % FOLDS for one in asked])
    reached = np.array([one.true_age is not None for one in asked])
    if not reached.any():
        raise ValueError("no reference animal's record goes on to a weight that could be forecast")
    log_true = np.log(_days([one.days(one.true_age) for one in asked], span) / base)
    log_true, worth = np.clip(log_true, -2.0, 2.0), np.minimum(base, span)
    forecast = np.empty(len(asked))
    for out in range(FOLDS):
        kept = reached & (fold != out)
        unseen = fitted(ratios[kept], log_true[kept], worth[kept], animals)
        forecast[fold == out] = [
            expected_days(one.answer, unseen) for one in asked if one.animal % FOLDS == out
        ]
    whole = fitted(ratios[reached], log_true[reached], worth[reached], animals)
    return Skill(whole, _errors(asked, forecast, span, whole_lives))


def _errors(asked: list[_Asked], forecast: Floats, span: float, whole_lives: bool) -> Errors:
    animal = np.array([one.animal for one in asked])
    made = np.array([one.question.record.age_days[-1] for one in asked])
    reached = np.array([one.written_age is not None for one in asked])
    known = np.log(_days([one.days(one.written_age) for one in asked], span) / forecast)
    known = known / np.array([one.answer.scale for one in asked])
    return Errors(
        log_error=np.where(reached | (not whole_lives), known, np.inf),
        reached=reached,
        log_days=np.log(forecast),
        age=made / span,
        worth=np.where(reached | whole_lives, 1.0, UNFINISHED_WORTH) / np.bincount(animal)[animal],
    )


def _days(days: list[float], span: float) -> Floats:
    return np.asarray(np.maximum(np.array(days), 1e-3 * span))
