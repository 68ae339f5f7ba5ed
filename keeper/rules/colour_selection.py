"""Is selection for a colour working, whom to hold back, and does the scorer's eye drift.

The differential of a generation is how far the parents that bred it stood above the generation
they came from, each clutch counting by its scored young; the response is how far the young stand
above that generation. Response over differential is the realised heritability (Falconer & Mackay,
chapter 11). Both are of looks scored by eye: a response may be the scorer's, which is why scores
given again are looked at too. Nothing here says of any animal that it should not live.
"""

import math
from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import pairwise
from statistics import fmean, stdev
from typing import Literal

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.profile import practice
from keeper.husbandry.reasons import Reason, because
from keeper.rules.colour import Score
from keeper.rules.colour_heredity import told_by

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("no clutch of scored parents", ()),
    ("few scored before", ("generation", "scored", "least")),
    ("few scored young", ("generation", "scored", "least")),
    ("parents no better", ("differential", "least")),
    ("response within chance", ("steps", "response", "error", "wanted")),
    ("response beyond chance", ("steps", "response", "error", "differential", "realised")),
    ("response missing", ("steps", "response", "error", "wanted")),
    ("response the other way", ("steps", "response", "error")),
    ("first in the clutch", ("rank", "of", "score", "line_mean")),
)
"""Every reason of this module with the figures it carries."""

LEAST_SCORED = practice(5)
"""A generation of fewer has no mean worth a difference."""

LEAST_DIFFERENTIAL = practice(0.3)
"""Parents less than so many points above their generation are hardly selected."""

CHANCE_ERRORS = 2.0
"""A difference within so many standard errors may be chance alone (about 5 in 100)."""

HOLD_SHARE = practice(0.15)
GROWN_DAYS, AGAIN_DAYS = practice(300), practice(400)
"""A grown animal scored again within so many days is taken to look the same."""

LEAST_AGAIN, LEAST_SHIFT = practice(5), practice(0.3)

State = Literal["rises", "falls", "stands", "cannot tell"]


@dataclass(frozen=True, slots=True, kw_only=True)
class ScoredClutch:
    """A clutch of two scored parents.

    base: mean of the generations its parents come from, scored by *bases* animals.
    """

    generation: int
    mid_parent: float
    base: float
    bases: int
    scores: tuple[float, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """From the parents' generation to this one; None where it cannot be told, and why.

    error: the standard error of the response.
    """

    generation: int
    clutches: int
    young: int
    differential: float | None = None
    response: float | None = None
    error: float | None = None
    realised: float | None = None
    untold: Reason | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Verdict:
    """Is selection working, and why it is said so."""

    state: State
    because: Reason


@dataclass(frozen=True, slots=True, kw_only=True)
class Proposal:
    """One young that may be held back; rank in its clutch, 1 the highest, ties alike."""

    animal: AnimalId
    score: float
    rank: int
    of: int
    line_mean: float
    because: Reason


@dataclass(frozen=True, slots=True, kw_only=True)
class Again:
    """An animal scored twice at one look. on: when it was scored again."""

    animal: AnimalId
    first: float
    again: float
    on: date


@dataclass(frozen=True, slots=True, kw_only=True)
class Drift:
    """How scores given again in a quarter of the year differ from the first, in points.

    asks: whether the shift is large enough to be put to the scorer as a question.
    """

    since: date
    count: int
    shift: float
    error: float | None
    asks: bool


def steps(clutches: Iterable[ScoredClutch], h2: float, sd: float) -> tuple[Step, ...]:
    """Differential and response of each generation that was bred, the earliest first."""
    by_generation: dict[int, list[ScoredClutch]] = defaultdict(list)
    for each in clutches:
        if each.scores:
            by_generation[each.generation].append(each)
    return tuple(_step(n, by_generation[n], h2, sd) for n in sorted(by_generation))


def verdict(found: Sequence[Step], h2: float) -> Verdict:
    """Whether the steps that can be told rise together by more than chance.

    h2: by which the parents' lead would be expected in their young.
    """
    told = [step for step in found if step.untold is None]
    if not told:
        why = found[-1].untold if found else None
        return Verdict(state="cannot tell", because=why or because("no clutch of scored parents"))
    differential = sum(step.differential or 0.0 for step in told)
    response = sum(step.response or 0.0 for step in told)
    error = math.sqrt(sum((step.error or 0.0) ** 2 for step in told))
    return _verdict(len(told), differential, response, error, h2)


def hold_back(clutch: Sequence[tuple[AnimalId, float]], line_mean: float) -> tuple[Proposal, ...]:
    """The best of a clutch by score at one age, if above the line's mean.

    One in a clutch of up to thirteen, the best 15 % of a larger; all who share the last place.
    """
    if not clutch:
        return ()
    ranked = sorted(clutch, key=lambda young: -young[1])
    kept = max(1, int(HOLD_SHARE.value * len(ranked)))
    least = ranked[kept - 1][1]
    return tuple(
        _proposal(animal, score, ranked, line_mean)
        for animal, score in ranked
        if score >= least and score > line_mean
    )


def scored_again(animal: AnimalId, scores: Sequence[Score]) -> list[Again]:
    """Pairs of scores of one look: an old picture scored on a later day, or a grown animal again.

    scores: in the order of writing.
    """
    found = []
    for first, again in pairwise(each for each in scores if not each.clouded):
        if _one_look(first, again):
            on = max(again.on, again.written_on)
            found.append(Again(animal=animal, first=first.score, again=again.score, on=on))
    return found


def drifts(pairs: Iterable[Again]) -> tuple[Drift, ...]:
    """The mean shift of each quarter of a year in which animals were scored again."""
    quarters: dict[date, list[float]] = defaultdict(list)
    for each in pairs:
        first = date(each.on.year, 3 * ((each.on.month - 1) // 3) + 1, 1)
        quarters[first].append(each.again - each.first)
    return tuple(_drift(since, quarters[since]) for since in sorted(quarters))


def _step(generation: int, clutches: Sequence[ScoredClutch], h2: float, sd: float) -> Step:
    young = sum(len(each.scores) for each in clutches)
    few = Step(generation=generation, clutches=len(clutches), young=young)
    bases = min(each.bases for each in clutches)
    least = LEAST_SCORED.value
    if bases < least:
        why = because("few scored before", generation=generation, scored=bases, least=least)
        return _untold(few, why)
    if young < least:
        why = because("few scored young", generation=generation, scored=young, least=least)
        return _untold(few, why)
    differential = sum(len(e.scores) * (e.mid_parent - e.base) for e in clutches) / young
    response = sum(sum(e.scores) - len(e.scores) * e.base for e in clutches) / young
    free = told_by([len(each.scores) for each in clutches], h2)
    return Step(
        generation=generation,
        clutches=len(clutches),
        young=young,
        differential=differential,
        response=response,
        error=sd * math.sqrt(1 / free + 1 / bases),
        realised=_realised(response, differential),
    )


def _untold(step: Step, why: Reason) -> Step:
    return Step(generation=step.generation, clutches=step.clutches, young=step.young, untold=why)


def _realised(response: float, differential: float) -> float | None:
    return response / differential if differential >= LEAST_DIFFERENTIAL.value else None


def _verdict(bred: int, differential: float, response: float, error: float, h2: float) -> Verdict:
    realised = _realised(response, differential)
    if realised is None:
        least = LEAST_DIFFERENTIAL.value
        why = because("parents no better", differential=differential, least=least)
        return Verdict(state="cannot tell", because=why)
    chance, wanted = CHANCE_ERRORS * error, h2 * differential
    told = {"steps": bred, "response": response, "error": error}
    if response > chance:
        more = {"differential": differential, "realised": realised}
        return Verdict(state="rises", because=because("response beyond chance", **told, **more))
    if response < -chance:
        return Verdict(state="falls", because=because("response the other way", **told))
    if wanted - response > chance:
        return Verdict(state="stands", because=because("response missing", **told, wanted=wanted))
    why = because("response within chance", **told, wanted=wanted)
    return Verdict(state="cannot tell", because=why)


def _proposal(
    animal: AnimalId, score: float, ranked: Sequence[tuple[AnimalId, float]], line_mean: float
) -> Proposal:
    rank, of = 1 + sum(other > score for _, other in ranked), len(ranked)
    figures = {"rank": rank, "of": of, "score": score, "line_mean": line_mean}
    why = because("first in the clutch", **figures)
    return Proposal(animal=animal, score=score, rank=rank, of=of, line_mean=line_mean, because=why)


def _one_look(first: Score, again: Score) -> bool:
    if again.on == first.on:
        return again.written_on > first.written_on
    grown = first.age_days is not None and first.age_days >= GROWN_DAYS.value
    return grown and timedelta(0) < again.on - first.on <= timedelta(days=AGAIN_DAYS.value)


def _drift(since: date, shifts: Sequence[float]) -> Drift:
    count, shift = len(shifts), fmean(shifts)
    error = stdev(shifts) / math.sqrt(count) if count > 1 else None
    enough = count >= LEAST_AGAIN.value and abs(shift) >= LEAST_SHIFT.value
    asks = enough and error is not None and abs(shift) > CHANCE_ERRORS * error
    return Drift(since=since, count=count, shift=shift, error=error, asks=asks)
