"""Hatchlings that have not begun to eat: the steps tried, the next one, and by when."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from keeper.actions.keeping import Keeping, Written, animals_on
from keeper.actions.life import empties, life_of
from keeper.actions.noting import note
from keeper.husbandry.animal import AnimalId, Stage
from keeper.husbandry.events import Evidence, Offer, Result, Setting, StartStep
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.when import at_instant
from keeper.language import tr
from keeper.reports.words import word
from keeper.rules.ladder import Advice, LadderStep, StepRecord, Tried, next_step, step_records
from keeper.rules.stages import stage_of
from keeper.store import reading

VERB = "starting step"
LAWFUL_VERB = "set live prey"
LIVE_LAWFUL = "live prey lawful"
"""Setting: the keeper says that live prey is lawful where they are."""

_ATE = frozenset({Result.TAKEN, Result.PART})
_KNOWN = _ATE | {Result.REFUSED}


@dataclass(frozen=True, slots=True, kw_only=True)
class Starting:
    """One hatchling that has not started, with what was tried and what comes next."""

    animal: AnimalNow
    on: date
    tried: tuple[Tried, ...]
    advice: Advice

    @property
    def due(self) -> bool:
        """Whether a step is left and enough days lie behind the last one."""
        return self.advice.step is not None and self.advice.not_before <= self.on

    @property
    def tonight(self) -> LadderStep | None:
        """The step that is tried on this very day, if one is."""
        last = self.tried[-1] if self.tried else None
        return last.step if last is not None and last.on == self.on else None


def try_step(
    keeping: Keeping, animal: AnimalId, step: LadderStep, night: date | None = None
) -> Written:
    """Write that *step* is tried with *animal*, from *night* on; None: from today on.

    Raises:
        ValueError: live prey, which the keeper has not said is lawful; nothing is written.
    """
    if step is LadderStep.LIVE and not live_is_lawful(keeping):
        raise ValueError(tr("Live prey: check local law, and say that it is lawful where you are."))
    row = reading.animal_now(keeping.book, animal)
    event = StartStep(animal=animal, happened=at_instant(keeping.now(), night), step=step.value)
    return note(keeping, VERB, event, where=row.called if row else "", what=word(step))


def say_live_is_lawful(keeping: Keeping, *, yes: bool) -> Written:
    """Write the keeper's word that live prey is lawful where they are, or that it is not."""
    told = "yes" if yes else "no"
    setting = Setting(happened=at_instant(keeping.now()), key=LIVE_LAWFUL, value=told)
    return note(
        keeping,
        LAWFUL_VERB,
        setting,
        what=tr("live prey lawful: {told}", told=tr("yes") if yes else tr("no")),
    )


def asks_whether_lawful(keeping: Keeping, young: Starting) -> bool:
    """Every other step was tried and settled; only live prey is left, and nobody said it may be."""
    tried = {one.step for one in young.tried}
    others = set(LadderStep) - {LadderStep.LIVE}
    return others <= tried and not live_is_lawful(keeping)


def live_is_lawful(keeping: Keeping) -> bool:
    return reading.settings(keeping.book).get(LIVE_LAWFUL) == "yes"


def starting(keeping: Keeping, animal: AnimalId, on: date) -> Starting:
    """What was tried with *animal* and the next untried step, with deadline and cautions.

    Raises:
        LookupError: the book has no such animal.
    """
    row = reading.animal_now(keeping.book, animal)
    if row is None:
        raise LookupError(tr("The book has no animal {animal}.", animal=animal))
    return _starting(keeping, row, on, line_records(keeping, row.line, row.species, on))


def starting_of(keeping: Keeping, row: AnimalNow, on: date) -> Starting | None:
    """The same of *row*, if it is a hatchling that was offered or tried with, and never ate."""
    if row.eaten_on is not None or not row.in_the_room:
        return None
    if stage_of(row, keeping.profile(row), on) is not Stage.HATCHLING:
        return None
    told = _starting(keeping, row, on, line_records(keeping, row.line, row.species, on))
    return told if told.tried or row.offered_on is not None else None


def not_started(keeping: Keeping, on: date) -> tuple[Starting, ...]:
    """Every hatchling of the room that was offered or tried with, and never ate."""
    rows = [row for row in animals_on(keeping, on) if row.in_the_room and row.eaten_on is None]
    young = [row for row in rows if stage_of(row, keeping.profile(row), on) is Stage.HATCHLING]
    lines = {(row.line, row.species) for row in young}
    records = {key: line_records(keeping, *key, on) for key in lines}
    told = [_starting(keeping, row, on, records[row.line, row.species]) for row in young]
    return tuple(each for each in told if each.tried or each.animal.offered_on is not None)


def line_records(
    keeping: Keeping, line: str | None, species: str, on: date
) -> dict[LadderStep, StepRecord]:
    """How often each step was tried in a line, and how often the hatchling then ate.

    Animals without a line of their own are held against each other.
    """
    steps = [e.event for e in reading.all_of(keeping.book, StartStep)]
    animals = list(dict.fromkeys(event.animal for event in steps))
    rows = [reading.animal_now(keeping.book, animal) for animal in animals]
    alike = [r for r in rows if r is not None and (r.line, r.species) == (line, species)]
    return step_records(t for row in alike for t in tried_with(keeping, row.animal, on))


def tried_with(keeping: Keeping, animal: AnimalId, on: date) -> tuple[Tried, ...]:
    """The steps tried with *animal* up to *on*, oldest first, each with whether it ate then."""
    steps = [e.event for e in reading.history(keeping.book, StartStep, animal)]
    offers = [e.event for e in reading.history(keeping.book, Offer, animal)]
    return outcomes(
        [s for s in steps if s.happened.day <= on], [o for o in offers if o.happened.day <= on]
    )


def outcomes(steps: Sequence[StartStep], offers: Sequence[Offer]) -> tuple[Tried, ...]:
    """Each step with what the offers until the next step tell of it.

    It ate if any was taken, it failed if all that are settled were refused; what was only
    assumed or left in settles nothing. A word that this version does not know is passed over.
    """
    known = {step.value: step for step in LadderStep}
    days = [step.happened.day for step in steps]
    ends = [*days, date.max][1:]
    return tuple(
        Tried(step=known[step.step], on=day, ate=_ate(offers, day, max(end, day + timedelta(1))))
        for step, day, end in zip(steps, days, ends, strict=True)
        if step.step in known
    )


def _ate(offers: Sequence[Offer], first: date, end: date) -> bool | None:
    during = [
        offer.result
        for offer in offers
        if first <= offer.happened.day < end
        and offer.result in _KNOWN
        and offer.evidence is not Evidence.ASSUMED
    ]
    return any(result in _ATE for result in during) if during else None


def _starting(
    keeping: Keeping, row: AnimalNow, on: date, records: dict[LadderStep, StepRecord]
) -> Starting:
    profile, life = keeping.profile(row), life_of(keeping, row.animal, on)
    tried = tried_with(keeping, row.animal, on)
    weights = [(day, grams) for day, grams, _ in empties(life.weighings, life.meals, profile)]
    advice = next_step(
        tried,
        row,
        profile,
        on,
        weights,
        in_line=records,
        live_lawful=live_is_lawful(keeping),
    )
    return Starting(animal=row, on=on, tried=tried, advice=advice)
