"""What an animal taught by eating when she was not meant to be offered, and the keeper's word."""

from bisect import bisect_right
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from keeper.actions.holds_ever import holds_ever
from keeper.actions.keeping import Keeping, Written, animals_on
from keeper.actions.noting import note
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import HoldKind, Offer, OfferedThrough, ShedSign
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.when import at_instant
from keeper.language import tr
from keeper.reports.words import word
from keeper.rules.holds import holds_of, holds_on
from keeper.rules.learning import Learned, learned_skip
from keeper.store import reading

VERB = "offered through"

LEARNABLE = frozenset({HoldKind.OPAQUE})
"""Holds that only spare prey. One that spares the animal, after a regurgitation or by a vet's
word, is never learned away."""


_SIGNS = 8


@dataclass(frozen=True, slots=True, kw_only=True)
class Question:
    """One animal to ask the keeper about, with what speaks for it."""

    animal: AnimalNow
    learned: Learned


def eaten_through(keeping: Keeping, on: date) -> Mapping[AnimalId, frozenset[HoldKind]]:
    """Holds under which each animal is offered all the same, by the keeper's latest word."""
    latest = _answers(keeping, on)
    kinds: dict[AnimalId, frozenset[HoldKind]] = {}
    for (animal, kind), answer in latest.items():
        if answer.yes:
            kinds[animal] = kinds.get(animal, frozenset()) | {kind}
    return kinds


def questions(keeping: Keeping, on: date) -> tuple[Question, ...]:
    """Animals held just now under a hold that they ate through before, in walking order.

    Only they are asked about: the question comes when the answer is of use.
    """
    by_hand = reading.open_holds(keeping.book, on)
    asked = []
    for row in animals_on(keeping, on):
        if not row.in_the_room:
            continue
        holds = holds_of(row, by_hand.get(row.animal, ()), keeping.profile(row), on)
        kinds = [hold.kind for hold in holds if hold.skip and hold.kind in LEARNABLE]
        found = (question_for(keeping, row, kind, on) for kind in kinds)
        asked += [question for question in found if question is not None]
    return tuple(asked)


def question_for(keeping: Keeping, row: AnimalNow, kind: HoldKind, on: date) -> Question | None:
    """Whether to ask to stop skipping *row* under *kind*; None: too little, or answered.

    After a no only what she was offered since speaks for asking again.
    """
    if kind not in LEARNABLE:
        return None
    answer = _answers(keeping, on).get((row.animal, kind))
    if answer is not None and answer.yes:
        return None
    since = answer.happened.day if answer is not None else date.min
    offers = [o for o in _offers_under(keeping, row, kind, on) if o.happened.day > since]
    learned = learned_skip(offers, kind)
    return Question(animal=row, learned=learned) if learned is not None else None


def say(
    keeping: Keeping, animal: AnimalId, kind: HoldKind, *, yes: bool, night: date | None = None
) -> Written:
    """Write the keeper's word: offer her under *kind* from now on, or keep skipping her.

    night: the night whose round it is said in; None: today.

    Raises:
        ValueError: a hold that may not be learned away; one sentence, nothing written.
    """
    if kind not in LEARNABLE:
        raise ValueError(
            tr("A hold of the kind {kind} spares the animal; it is always kept.", kind=word(kind))
        )
    happened = at_instant(keeping.now(), night)
    told = OfferedThrough(animal=animal, happened=happened, kind=kind, yes=yes)
    row = reading.animal_now(keeping.book, animal)
    name = row.called if row else ""
    what = (
        tr("offered while {hold}", hold=word(kind))
        if yes
        else tr("skipped while {hold}", hold=word(kind))
    )
    return note(keeping, VERB, told, where=name, what=what)


def _answers(keeping: Keeping, on: date) -> dict[tuple[AnimalId, HoldKind], OfferedThrough]:
    entries = reading.all_of(keeping.book, OfferedThrough)
    said = (entry.event for entry in entries if entry.event.happened.day <= on)
    return {(event.animal, event.kind): event for event in said}


def _offers_under(keeping: Keeping, row: AnimalNow, kind: HoldKind, on: date) -> Sequence[Offer]:
    """Her offers on days on which a hold of that kind lay on her."""
    profile = keeping.profile(row)
    offers = [e.event for e in reading.history(keeping.book, Offer, row.animal)]
    signs = [e.event for e in reading.history(keeping.book, ShedSign, row.animal)]
    holds = holds_ever(keeping, [row.animal], on)[row.animal]
    days = [sign.happened.day for sign in signs]
    found = []
    for offer in offers:
        day = offer.happened.day
        known = bisect_right(days, day)  # a hold of a day follows from the last signs before it
        then = holds_on(day, holds, signs[max(0, known - _SIGNS) : known], profile)
        if day <= on and any(hold.kind is kind for hold in then):
            found.append(offer)
    return found
