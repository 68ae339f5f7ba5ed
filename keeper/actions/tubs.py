"""The tubs of a night: the plan as it was frozen, and the offers that tell what became of it."""

import json
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date
from functools import cached_property

from keeper.actions.due_board import DueRow
from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.unwritten import ONE_OF
from keeper.husbandry.animal import Status
from keeper.husbandry.events import (
    Evidence,
    HoldKind,
    Offer,
    PlanLine,
    Regurgitation,
    Remark,
    Result,
)
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import place_of
from keeper.husbandry.profile import PreyGrade, practice
from keeper.husbandry.reasons import Reason
from keeper.husbandry.when import Happened
from keeper.language import tr
from keeper.reports.figures import grams
from keeper.reports.prey_words import prey_words
from keeper.reports.words import word
from keeper.rules.feeding import DueState, Plan
from keeper.rules.prey import prey_name
from keeper.store import reading
from keeper.store.nights import plan_lines
from keeper.store.reading import Entry

Prey = tuple[str | None, int | None, float | None]
"""Name, count and grams of all items together."""

OFFERED_STATES = (DueState.DUE, DueState.CANNOT_TELL)
"""States of tubs that the walk stops at; the others are shown and can be gone to."""


_WRITTEN = json.JSONEncoder(default=str)

COUNT_MOST = practice(9)
"""More items than this in one offer are a slip of the hand."""


@dataclass(frozen=True, kw_only=True)
class Tub:
    """One line of the night: its frozen plan and what the book says became of it.

    regurgitated: a regurgitation was found in it on the day of this night. one_of: tonight's
    result was seen of one of those in it, nobody knows of which.
    """

    plan: PlanLine
    animal: AnimalNow
    offer: Entry[Offer] | None = None
    regurgitated: bool = False
    one_of: bool = False

    @property
    def line(self) -> int:
        return self.plan.line

    @property
    def walked(self) -> bool:
        """The walk stops here in the offer pass."""
        return self.plan.state in OFFERED_STATES

    @property
    def missing(self) -> bool:
        """The animal is no longer in the room: not in its tub tonight, or found dead in it."""
        return not self.animal.in_the_room

    @property
    def gone(self) -> str:
        """What became of a missing animal, as a sentence goes on after its name."""
        dead = self.animal.status is Status.DIED
        return tr("was found dead") if dead else tr("is not in its tub")

    @property
    def open(self) -> bool:
        if self.offer is not None or self.brought_up:
            return False
        return self.walked and not self.missing and not self.one_of

    @property
    def brought_up(self) -> bool:
        """A regurgitation was found before anything was offered tonight: food must wait."""
        return self.regurgitated and self.offer is None

    @property
    def unproved(self) -> bool:
        """Left in, or only assumed: the check pass has to look."""
        if self.offer is None:
            return False
        event = self.offer.event
        return event.result is Result.LEFT_IN or event.evidence is Evidence.ASSUMED

    @cached_property
    def row(self) -> tuple[str, int]:
        place = place_of(self.plan.place or "")
        return (place.rack, place.row) if place else (self.plan.place or "", 0)

    @cached_property
    def because(self) -> tuple[Reason, ...]:
        return tuple(Reason(why, figures) for why, figures in json.loads(self.plan.because))


def plan_line(row: DueRow, round_: int, line: int, happened: Happened) -> PlanLine:
    """One line of the night, frozen from the board."""
    prey, count, mass_g = planned_prey(row.plan)
    return PlanLine(
        happened=happened,
        round=round_,
        line=line,
        animal=row.animal.animal,
        place=row.animal.place,
        state=row.plan.state,
        prey=prey,
        count=count,
        mass_g=mass_g,
        caution=row.plan.caution,
        because=_WRITTEN.encode([(r.why, dict(r.figures)) for r in row.plan.because]),
    )


def read_tubs(
    keeping: Keeping,
    round_: int,
    here: Sequence[AnimalNow] | None = None,
    before: Sequence[Tub] = (),
) -> tuple[Tub, ...]:
    """Every tub of a night in the order of its lines, with what the book says of it.

    here: the animals as they stand, where that is known. before: the tubs as they were read
    before: the plan of a round that stands is frozen and is not read again.
    """
    rows = animals_on(keeping, keeping.today) if here is None else here
    animals = {row.animal: row for row in rows}
    offers = read_offers(keeping, round_)
    ordered = _plans(keeping, round_, before)
    night = ordered[0].happened.day if ordered else keeping.today
    found, one_of = _regurgitated_on(keeping, night), _one_of_on(keeping, night)
    return tuple(
        Tub(
            plan=plan,
            animal=animals[plan.animal],
            offer=offers.get(plan.line),
            regurgitated=plan.animal in found,
            one_of=plan.animal in one_of,
        )
        for plan in ordered
        if plan.animal in animals
    )


def _plans(keeping: Keeping, round_: int, before: Sequence[Tub]) -> Sequence[PlanLine]:
    """The lines of a night in their order; those of *before* if none of them is missing there."""
    if len(before) == plan_lines(keeping.book, round_):
        return [tub.plan for tub in before]
    plans = reading.all_of(keeping.book, PlanLine, "e.round = ?", round_)
    return sorted((entry.event for entry in plans), key=lambda plan: plan.line)


def read_tub(keeping: Keeping, tub: Tub) -> Tub:
    """The same tub as the book has it now."""
    animal = reading.animal_now(keeping.book, tub.plan.animal)
    found = reading.recent(keeping.book, Regurgitation, [tub.plan.animal], 1)[tub.plan.animal]
    remarks = reading.recent(keeping.book, Remark, [tub.plan.animal], 6)[tub.plan.animal]
    return replace(
        tub,
        animal=animal or tub.animal,
        offer=read_offers(keeping, tub.plan.round, tub.line).get(tub.line),
        regurgitated=any(event.happened.day == tub.plan.happened.day for event in found),
        one_of=any(_is_one_of(remark, tub.plan.happened.day) for remark in remarks),
    )


def read_offers(keeping: Keeping, round_: int, line: int | None = None) -> dict[int, Entry[Offer]]:
    """The standing offers of a night by line, or of one line alone."""
    condition = "e.round = ?" if line is None else "e.round = ? AND e.line = ?"
    values = (round_,) if line is None else (round_, line)
    found = reading.all_of(keeping.book, Offer, condition, *values)
    return {entry.event.line: entry for entry in found if entry.event.line is not None}


def row_around(tubs: Sequence[Tub], here: Tub) -> tuple[Tub, ...]:
    """The tubs of the rack row of *here*; their lines follow each other."""
    first = last = here.line
    while first > 1 and tubs[first - 2].row == here.row:
        first -= 1
    while last < len(tubs) and tubs[last].row == here.row:
        last += 1
    return tuple(tubs[first - 1 : last])


def last_written(tubs: Sequence[Tub]) -> int:
    """The line that was written last; 0 when none was."""
    keys = [(tub.offer.key.batch, tub.offer.key.seq, tub.line) for tub in tubs if tub.offer]
    return max(keys)[2] if keys else 0


def refuse_impossible(tub: Tub, result: Result, prey: Prey | None) -> None:
    """Raise LookupError, with one sentence, where *result* cannot have come of this tub."""
    if result is Result.NOT_OFFERED:
        return
    if tub.missing:
        raise LookupError(
            tr("{tub} {gone}; 7 and a reason goes on.", tub=tub_name(tub), gone=tub.gone)
        )
    if prey is None and tub.brought_up:
        raise LookupError(
            tr(
                "{tub} regurgitated and is on hold; 7 and 3 go on, / chooses the prey.",
                tub=tub_name(tub),
            )
        )
    if prey is None and tub.plan.prey is None and not tub.walked:
        raise LookupError(
            tr(
                "Nothing is planned for {tub}; 4 offers it all the same, / chooses the prey.",
                tub=tub_name(tub),
            )
        )


def refuse_unnamed(tub: Tub, result: Result, prey: Prey | None) -> None:
    """Raise LookupError where something was offered and nobody said what."""
    if result is not Result.NOT_OFFERED and lacks_prey(tub) and prey is None:
        raise LookupError(asks_for_prey(tub))


def lacks_prey(tub: Tub) -> bool:
    """Nothing is planned for *tub* and nothing was named tonight."""
    return tub.plan.prey is None and item_given(tub) is None


def asks_for_prey(tub: Tub) -> str:
    """The sentence that asks what was given."""
    return tr("Nothing is planned for {tub}; / names the prey that was given.", tub=tub_name(tub))


def item_given(tub: Tub) -> Prey | None:
    """What was offered in *tub* tonight; None where nothing was, or nobody said what."""
    event = tub.offer.event if tub.offer is not None else None
    return (event.prey, event.count, event.mass_g) if event is not None and event.prey else None


def offer_in(
    tub: Tub,
    happened: Happened,
    result: Result,
    evidence: Evidence,
    *,
    withheld: HoldKind | None = None,
    prey: Prey | None = None,
) -> Offer:
    """The offer that says *result* of a tub: of the item that was given, or with other *prey*."""
    planned = item_given(tub) or (tub.plan.prey, tub.plan.count, tub.plan.mass_g)
    name, count, mass_g = (None, None, None) if result is Result.NOT_OFFERED else prey or planned
    return Offer(
        animal=tub.plan.animal,
        happened=happened,
        result=result,
        evidence=evidence,
        prey=name,
        count=count,
        mass_g=mass_g,
        withheld=withheld,
        round=tub.plan.round,
        line=tub.line,
    )


def checked(tub: Tub, *, gone: bool) -> Offer:
    """The same offer as a look into the tub settles it.

    Raises:
        LookupError: nothing was offered there.
    """
    if tub.offer is None or tub.offer.event.result is Result.NOT_OFFERED:
        raise LookupError(tr("Nothing was offered in this tub tonight."))
    result = Result.TAKEN if gone else Result.REFUSED
    evidence = Evidence.GONE if gone else Evidence.SEEN
    return replace(tub.offer.event, result=result, evidence=evidence)


def offers_before(keeping: Keeping, tub: Tub, most: int = 6) -> tuple[Offer, ...]:
    """The last *most* offers of the animal before this night's, oldest first."""
    found = reading.recent(keeping.book, Offer, [tub.plan.animal], most + 2)[tub.plan.animal]
    return tuple(offer for offer in found if offer.round != tub.plan.round)[-most:]


def regurgitated_days(keeping: Keeping, tub: Tub) -> frozenset[date]:
    """The last days on which a regurgitation of this animal was found."""
    found = reading.recent(keeping.book, Regurgitation, [tub.plan.animal], 3)[tub.plan.animal]
    return frozenset(event.happened.day for event in found)


def prey_of_grade(grade: PreyGrade, count: int) -> Prey:
    """*count* items of *grade* at its mean mass.

    Raises:
        ValueError: no item, or more than anybody offers at once.
    """
    if not 1 <= count <= COUNT_MOST.value:
        raise ValueError(
            tr(
                "{count} items is no offer; 1 to {most} are right.",
                count=count,
                most=COUNT_MOST.value,
            )
        )
    return prey_name(grade), count, count * grade.mean_g.value


def tub_name(tub: Tub) -> str:
    """Place and name, as the foot and every sentence call a tub."""
    return f"{tub.plan.place or ''} {tub.animal.called}".strip()


def offer_words(offer: Offer) -> str:
    """What is written, for the foot line.

    >>> from keeper.husbandry.when import on_day
    >>> offer_words(Offer(animal=1, happened=on_day(date(2026, 3, 1)), result=Result.LEFT_IN,
    ...                   prey="mouse hopper", count=1))
    'left in, 1 hopper mouse'
    """
    result = word(offer.result)
    if offer.result is Result.TAKEN and offer.evidence is not Evidence.SEEN:
        result = f"{result}, {word(offer.evidence)}"
    said = prey_words(offer.prey) if offer.prey else None
    what = " ".join(str(part) for part in (offer.count, said) if part)
    mass = grams(offer.mass_g) if offer.mass_g is not None else ""
    why = word(offer.withheld) if offer.withheld else ""
    return ", ".join(part for part in (result, why, what, mass) if part)


def _regurgitated_on(keeping: Keeping, night: date) -> set[int]:
    """Animals of which a regurgitation was found on the day of the night."""
    return {event.animal for event in reading.on_days(keeping.book, Regurgitation, night, night)}


def _one_of_on(keeping: Keeping, night: date) -> set[int]:
    """Animals of whose tub a result is written that is one of theirs, nobody knows whose."""
    remarks = reading.on_days(keeping.book, Remark, night, night)
    return {remark.animal for remark in remarks if _is_one_of(remark, night)}


def _is_one_of(remark: Remark, night: date) -> bool:
    return remark.happened.day == night and remark.text.startswith(ONE_OF)


def planned_prey(plan: Plan) -> Prey:
    """What the plan offers; several kinds are named together."""
    if not plan.offer:
        return None, None, None
    name = " and ".join(offer.prey for offer in plan.offer)
    grams = sum(offer.grams for offer in plan.offer)
    return name, sum(offer.count for offer in plan.offer), grams
