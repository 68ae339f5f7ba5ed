"""Which refusals count, what to do at the next, and how likely so many are by chance."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from math import comb, exp, log, log1p

from keeper.husbandry.animal import Stage
from keeper.husbandry.events import Evidence, HoldKind, HoldSet, Offer, Result, ShedSign
from keeper.husbandry.profile import Sourced, SpeciesProfile, practice
from keeper.husbandry.reasons import Reason, because
from keeper.rules.holds import Hold, excused, half_counted, holds_on

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("refused in a row", ("counted", "excused", "half", "switched", "step_at")),
    ("not eaten for", ("days", "limit")),
    ("check heat, hide and shed", ()),
    ("change presentation", ()),
    ("ask a reptile vet", ()),
    ("non-starter steps", ()),
)
"""Every reason of this module with the figures it carries."""

ARRIVAL_EXCUSED = practice(2)
"""A new arrival's refusals count from the one after these."""

CHANGE_REFUSALS = practice(2)
"""So many refusals straight after a change of prey are of the change and not of appetite; from
then on she is offered what she ate before, and a refusal counts."""

ATE = frozenset({Result.TAKEN, Result.PART})
_TOLD = ATE | {Result.REFUSED}


class Step(StrEnum):
    """What a run of refusals leads to, mildest first."""

    HUSBANDRY = "check husbandry"
    PRESENTATION = "change presentation"
    REVIEW = "review"
    LADDER = "non-starter ladder"
    VET = "vet"


@dataclass(frozen=True, slots=True, kw_only=True)
class CountedRefusals:
    """Nights refused since the last meal: those that count, excused ones, shown-only ones.

    switched: refused straight after a change of prey, from the kind *before* to the kind *now*;
    they say nothing of appetite.
    """

    counted: int = 0
    excused: int = 0
    half: int = 0
    switched: int = 0
    before: str | None = None
    now: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class RefusalStep:
    step: Step
    because: tuple[Reason, ...]


def counted_refusals(
    offers: Iterable[Offer],
    signs: Iterable[ShedSign],
    holds: Iterable[HoldSet],
    profile: SpeciesProfile,
) -> CountedRefusals:
    """Count one animal's refusals since it last ate.

    Nights count, not offers: a second try on the same night is the same refusal. A meal that
    is only assumed ends no run. holds: all ever set, an ended one with that day as its end.
    """
    signs, holds, offers = tuple(signs), tuple(holds), tuple(offers)
    refused = _refused_since_meal(offers)
    changed = prey_changes(offers, profile)
    switched = [day for day in refused if day in changed]
    half = excused_nights = arrival = 0
    for day, offer in refused.items():
        if day in changed:
            continue
        on_that_day = holds_on(day, holds, signs, profile)
        arrival += any(hold.kind is HoldKind.NEW_ARRIVAL for hold in on_that_day)
        weighing = _without_arrival(on_that_day) if _settled(arrival) else on_that_day
        if excused(offer, weighing):
            excused_nights += 1
        elif half_counted(offer, weighing):
            half += 1
    before, now = changed[switched[-1]] if switched else (None, None)
    return CountedRefusals(
        counted=len(refused) - excused_nights - half - len(switched),
        excused=excused_nights,
        half=half,
        switched=len(switched),
        before=before,
        now=now,
    )


def prey_changes(offers: Iterable[Offer], profile: SpeciesProfile) -> dict[date, tuple[str, str]]:
    """Nights refused straight after a change of prey, with the kind eaten before and the new."""
    changed = offers_of_new_prey(offers, profile)
    return {o.happened.day: kinds for o, kinds in changed if o.result is Result.REFUSED}


def offers_of_new_prey(
    offers: Iterable[Offer], profile: SpeciesProfile
) -> Iterator[tuple[Offer, tuple[str, str]]]:
    """Offers straight after a change of prey, refused or eaten, with both kinds.

    A kind is told from the profile's grades. What was eaten last is what was seen to be eaten.
    """
    kinds = {f"{grade.kind} {grade.name}": grade.kind for grade in profile.prey}
    eaten: str | None = None
    refused: set[date] = set()
    for offer in sorted(offers, key=lambda offer: (offer.happened.day, offer.happened.at)):
        kind, day = kinds.get(offer.prey or ""), offer.happened.day
        if kind is not None and eaten is not None and kind != eaten and offer.result in _TOLD:
            if len(refused - {day}) < CHANGE_REFUSALS.value:
                yield offer, (eaten, kind)
            if offer.result is Result.REFUSED:
                refused.add(day)
        if offer.result in ATE and offer.evidence is not Evidence.ASSUMED:
            eaten = kind
            refused.clear()


def refusal_step(
    stage: Stage, refusals: CountedRefusals, days_since_eaten: int | None, profile: SpeciesProfile
) -> RefusalStep | None:
    """What the run of refusals asks for now, the gravest that applies; None: nothing yet.

    Only counted refusals lead to a step, by number or, where the profile gives days, by the
    days since eaten; without a counted refusal a long gap is a silent record, not a fast.
    """
    if refusals.counted == 0:
        return None
    by_days = _by_days(stage, days_since_eaten, profile)
    for step, figures in _steps(stage, profile):
        if step is Step.REVIEW and by_days is not None:
            return RefusalStep(step=step, because=(by_days, _run(refusals, None)))
        at = figures.get(stage)
        if step is not Step.REVIEW and at is not None and refusals.counted >= at.value:
            return RefusalStep(step=step, because=(_run(refusals, at), because(_ADVICE[step])))
    return None


def binomial_tail(k: int, n: int, p: float) -> float:
    """Probability of *k* or more of *n*, each with chance *p* on its own.

    Raises:
        ValueError: *n* below 0 or *p* outside 0 to 1.

    >>> round(binomial_tail(9, 40, 0.08), 4)  # a rack of forty, nine refuse
    0.0037
    """
    if n < 0 or not 0 <= p <= 1:
        raise ValueError(f"a chance needs 0 or more tries and lies in 0 to 1, got {n!r} and {p!r}")
    if k <= 0 or p == 1:
        return 1.0 if k <= n else 0.0
    if k > n or p == 0:
        return 0.0
    if k > n * p:
        return _beyond(k, n, p)
    return 1.0 - _beyond(n - k + 1, n, 1 - p)  # fewer than k is n - k + 1 or more of the others


def poisson_binomial_tail(k: int, ps: Sequence[float]) -> float:
    """Probability of *k* or more when each try has a chance of its own.

    Raises:
        ValueError: a chance outside 0 to 1.

    >>> round(poisson_binomial_tail(2, [0.5, 0.5, 0.1]), 3)
    0.3
    """
    if any(not 0 <= p <= 1 for p in ps):
        raise ValueError(f"a chance lies between 0 and 1, got {tuple(ps)!r}")
    if k <= 0:
        return 1.0
    exactly = [1.0] + [0.0] * k  # the last place holds k or more
    for p in ps:
        exactly[k] += exactly[k - 1] * p
        for hits in range(k - 1, 0, -1):
            exactly[hits] = exactly[hits] * (1 - p) + exactly[hits - 1] * p
        exactly[0] *= 1 - p
    return min(1.0, exactly[k])


def _beyond(k: int, n: int, p: float) -> float:
    """The tail above the mean, summed from its largest term on."""
    term = exp(log(comb(n, k)) + k * log(p) + (n - k) * log1p(-p))
    total = term
    for hits in range(k, n):
        term *= (n - hits) / (hits + 1) * (p / (1 - p))
        total += term
    return total


_ADVICE = {
    Step.HUSBANDRY: "check heat, hide and shed",
    Step.PRESENTATION: "change presentation",
    Step.LADDER: "non-starter steps",
    Step.VET: "ask a reptile vet",
}


def _refused_since_meal(offers: Iterable[Offer]) -> dict[date, Offer]:
    """One refusal a night, after the night of the last meal."""
    refused: dict[date, Offer] = {}
    ate_on: date | None = None
    for offer in sorted(offers, key=lambda offer: (offer.happened.day, offer.happened.at)):
        if offer.result in ATE and offer.evidence is not Evidence.ASSUMED:
            refused.clear()
            ate_on = offer.happened.day
        elif offer.result is Result.REFUSED and offer.happened.day != ate_on:
            refused[offer.happened.day] = offer
    return refused


def _settled(arrival_refusals: int) -> bool:
    return arrival_refusals > ARRIVAL_EXCUSED.value


def _without_arrival(holds: Iterable[Hold]) -> tuple[Hold, ...]:
    return tuple(hold for hold in holds if hold.kind is not HoldKind.NEW_ARRIVAL)


def _steps(
    stage: Stage, profile: SpeciesProfile
) -> tuple[tuple[Step, Mapping[Stage, Sourced]], ...]:
    """The profile's steps, gravest first; a hatchling has the non-starter ladder before a vet."""
    figures = profile.refusals
    last = Step.LADDER if stage is Stage.HATCHLING else Step.VET
    return (
        (last, figures.vet_step),
        (Step.REVIEW, {}),
        (Step.PRESENTATION, figures.presentation_step),
        (Step.HUSBANDRY, figures.husbandry_step),
    )


def _by_days(stage: Stage, days: int | None, profile: SpeciesProfile) -> Reason | None:
    limit = profile.refusals.review_days.get(stage)
    if limit is None or days is None or days <= limit.value:
        return None
    return because("not eaten for", days=days, limit=limit.value)


def _run(refusals: CountedRefusals, at: Sourced | None) -> Reason:
    return because(
        "refused in a row",
        counted=refusals.counted,
        excused=refusals.excused,
        half=refusals.half,
        switched=refusals.switched or None,
        step_at=at.value if at else None,
    )
