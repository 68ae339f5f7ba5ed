"""Whether an animal may be bred: gates that are met, not yet met, or cannot be told.

Meeting every gate is permission to consider a pairing, not advice to make one. Straining
without an egg, or laying begun and not finished, is for a reptile vet the same day.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Literal

from keeper.husbandry.animal import Sex
from keeper.husbandry.events import ShedStage
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import BreedingFigures, SpeciesProfile, practice
from keeper.husbandry.reasons import Reason, because
from keeper.rules.sheds import ShedClock

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("hatching day not known", ()),
    ("old enough", ("age_days", "need_days")),
    ("too young", ("age_days", "need_days", "on")),
    ("no weight", ()),
    ("no gate for this sex", ("sex",)),
    ("heavy enough", ("weight_g", "need_g")),
    ("too light", ("weight_g", "need_g", "short_g")),
    ("not back to her weight before laying", ("weight_g", "need_g", "percent")),
    ("no length", ()),
    ("long enough", ("svl_cm", "need_cm")),
    ("too short", ("svl_cm", "need_cm")),
    ("no body score", ()),
    ("body score is old", ("scored_on", "days", "most")),
    ("body score in band", ("score", "low", "high")),
    ("body score out of band", ("score", "low", "high")),
    ("shed lately", ("shed_on", "days", "most")),
    ("not shed lately", ("shed_on", "days", "most")),
    ("not shed since laying", ("clutch_on",)),
    ("in a shed cycle", ("sign",)),
    ("shed not known", ()),
    ("kept meals", ("have", "need")),
    ("too few kept meals", ("have", "need")),
    ("kept meals not known", ()),
    ("straining or unfinished laying: ask a reptile vet the same day", ()),
)
"""Every reason of this module with the figures it carries."""

BACK_TO_WEIGHT_PERCENT = practice(95.0)
SCORE_DAYS = practice(90.0)

EGG_BINDING = because("straining or unfinished laying: ask a reptile vet the same day")
"""Stands beside every list of a female's gates."""

State = Literal["met", "not yet", "cannot tell"]
GateName = Literal["age", "weight", "length", "score", "shed", "meals"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Gate:
    """One condition; missing says what stands in the way, or why it is met."""

    name: GateName
    state: State
    missing: Reason
    on: date | None = None  # the day it is met by itself, where that can be told


def female_gates(
    now: AnimalNow,
    empty_g: float | None,
    clock: ShedClock | None,
    kept_meals: int | None,
    profile: SpeciesProfile,
    today: date,
    *,
    before_laying_g: float | None = None,
    weight_on: date | None = None,
) -> tuple[Gate, ...]:
    """The gates of a female, in the order in which keepers ask them.

    kept_meals: not regurgitated, since the last clutch if she laid. before_laying_g: her
    empty weight before the last clutch, to which she must come back. weight_on: the day a
    forecast has her at the weight.
    """
    return _gates(
        now, Sex.FEMALE, empty_g, clock, kept_meals, profile, today, before_laying_g, weight_on
    )


def male_gates(
    now: AnimalNow,
    empty_g: float | None,
    clock: ShedClock | None,
    kept_meals: int | None,
    profile: SpeciesProfile,
    today: date,
) -> tuple[Gate, ...]:
    """The gates of a male."""
    return _gates(now, Sex.MALE, empty_g, clock, kept_meals, profile, today, None, None)


def together(gates: Sequence[Gate]) -> State:
    """All gates as one: met only when every gate is, and there is one.

    >>> age = Gate(name="age", state="met", missing=because("old enough"))
    >>> score = Gate(name="score", state="cannot tell", missing=because("no body score"))
    >>> together([age]), together([age, score]), together([])
    ('met', 'cannot tell', 'cannot tell')
    """
    states = {gate.state for gate in gates}
    if "not yet" in states:
        return "not yet"
    return "met" if states == {"met"} else "cannot tell"


def _gates(
    now: AnimalNow,
    sex: Sex,
    empty_g: float | None,
    clock: ShedClock | None,
    kept_meals: int | None,
    profile: SpeciesProfile,
    today: date,
    before_laying_g: float | None,
    weight_on: date | None,
) -> tuple[Gate, ...]:
    figures = profile.breeding.get(sex)
    if figures is None:
        return (_gate("weight", "cannot tell", because("no gate for this sex", sex=sex.value)),)
    gates = [
        _age_gate(now, figures, today),
        _weight_gate(empty_g, figures, before_laying_g, weight_on),
        _score_gate(now, figures, today),
        _shed_gate(now, clock, figures, today),
        _meals_gate(kept_meals, figures),
    ]
    if figures.svl_cm is not None:
        gates.insert(2, _length_gate(now.svl_cm, figures.svl_cm.value))
    return tuple(gates)


def _gate(name: GateName, state: State, missing: Reason, on: date | None = None) -> Gate:
    return Gate(name=name, state=state, missing=missing, on=on)


def _age_gate(now: AnimalNow, figures: BreedingFigures, today: date) -> Gate:
    """By the latest day she may have hatched, so that she is never thought too old."""
    hatched = now.hatched_last or now.hatched_first
    if hatched is None:
        return _gate("age", "cannot tell", because("hatching day not known"))
    need = figures.age_days.value
    age = (today - hatched).days
    if age >= need:
        return _gate("age", "met", because("old enough", age_days=age, need_days=need))
    on = hatched + timedelta(days=need)
    return _gate("age", "not yet", because("too young", age_days=age, need_days=need, on=on), on)


def _weight_gate(
    empty_g: float | None,
    figures: BreedingFigures,
    before_laying_g: float | None,
    weight_on: date | None,
) -> Gate:
    if empty_g is None:
        return _gate("weight", "cannot tell", because("no weight"))
    need, grams = figures.weight_g.value, round(empty_g, 1)
    if empty_g < need:
        short = round(need - empty_g, 1)
        why = because("too light", weight_g=grams, need_g=need, short_g=short)
        return _gate("weight", "not yet", why, weight_on)
    percent = BACK_TO_WEIGHT_PERCENT.value
    if before_laying_g is not None and 100 * empty_g < percent * before_laying_g:
        back_g = round(before_laying_g * percent / 100, 1)
        why = because(
            "not back to her weight before laying", weight_g=grams, need_g=back_g, percent=percent
        )
        return _gate("weight", "not yet", why, weight_on)
    return _gate("weight", "met", because("heavy enough", weight_g=grams, need_g=need))


def _length_gate(svl_cm: float | None, need: float) -> Gate:
    if svl_cm is None:
        return _gate("length", "cannot tell", because("no length"))
    if svl_cm < need:
        return _gate("length", "not yet", because("too short", svl_cm=svl_cm, need_cm=need))
    return _gate("length", "met", because("long enough", svl_cm=svl_cm, need_cm=need))


def _score_gate(now: AnimalNow, figures: BreedingFigures, today: date) -> Gate:
    """A body score speaks for three months; fatter than the band is no more ready than thin."""
    if now.body_score is None or now.scored_on is None:
        return _gate("score", "cannot tell", because("no body score"))
    days = (today - now.scored_on).days
    if days > SCORE_DAYS.value:
        why = because(
            "body score is old", scored_on=now.scored_on, days=days, most=SCORE_DAYS.value
        )
        return _gate("score", "cannot tell", why)
    low, high = figures.score_low.value, figures.score_high.value
    inside = low <= now.body_score <= high
    word = "body score in band" if inside else "body score out of band"
    why = because(word, score=now.body_score, low=low, high=high)
    return _gate("score", "met" if inside else "not yet", why)


def _shed_gate(
    now: AnimalNow, clock: ShedClock | None, figures: BreedingFigures, today: date
) -> Gate:
    """Shed lately, since any clutch, and not in the next cycle."""
    if clock is None or clock.verdict == "cannot tell" or now.shed_on is None:
        return _gate("shed", "cannot tell", because("shed not known"))
    if clock.stage not in (None, ShedStage.SHED):
        why = because("in a shed cycle", sign=clock.stage.value if clock.stage else None)
        return _gate("shed", "not yet", why, clock.next_mid)
    if now.clutch_on is not None and now.shed_on <= now.clutch_on:
        why = because("not shed since laying", clutch_on=now.clutch_on)
        return _gate("shed", "not yet", why, clock.next_mid)
    days, most = (today - now.shed_on).days, figures.shed_within_days.value
    word = "shed lately" if days <= most else "not shed lately"
    why = because(word, shed_on=now.shed_on, days=days, most=most)
    if days <= most:
        return _gate("shed", "met", why)
    return _gate("shed", "not yet", why, clock.next_mid)


def _meals_gate(kept_meals: int | None, figures: BreedingFigures) -> Gate:
    need = int(figures.kept_meals.value)
    if kept_meals is None:
        return _gate("meals", "cannot tell", because("kept meals not known"))
    if kept_meals < need:
        why = because("too few kept meals", have=kept_meals, need=need)
        return _gate("meals", "not yet", why)
    return _gate("meals", "met", because("kept meals", have=kept_meals, need=need))
