"""The tubs of a night: the plan as it was frozen, and the offers that tell what became of it."""

import json
from dataclasses import dataclass, replace

from keeper.actions.due_board import DueRow
from keeper.actions.keeping import Keeping, animals_on
from keeper.husbandry.events import Evidence, HoldKind, Offer, PlanLine, Result
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import place_of
from keeper.husbandry.reasons import Reason
from keeper.husbandry.when import Happened
from keeper.rules.feeding import DueState, Plan
from keeper.store import reading
from keeper.store.reading import Entry

Prey = tuple[str | None, int | None, float | None]
"""Name, count and grams of all items together."""

OFFERED_STATES = (DueState.DUE, DueState.CANNOT_TELL)
"""States of tubs that the walk stops at; the others are shown and can be gone to."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Tub:
    """One line of the night: its frozen plan and what the book says became of it."""

    plan: PlanLine
    animal: AnimalNow
    offer: Entry[Offer] | None = None

    @property
    def line(self) -> int:
        return self.plan.line

    @property
    def walked(self) -> bool:
        """The walk stops here in the offer pass."""
        return self.plan.state in OFFERED_STATES

    @property
    def open(self) -> bool:
        return self.walked and self.offer is None

    @property
    def unproved(self) -> bool:
        """Left in, or only assumed: the check pass has to look."""
        if self.offer is None:
            return False
        event = self.offer.event
        return event.result is Result.LEFT_IN or event.evidence is Evidence.ASSUMED

    @property
    def row(self) -> tuple[str, int]:
        place = place_of(self.plan.place or "")
        return (place.rack, place.row) if place else (self.plan.place or "", 0)

    @property
    def because(self) -> tuple[Reason, ...]:
        return tuple(Reason(why, figures) for why, figures in json.loads(self.plan.because))


def plan_line(row: DueRow, round_: int, line: int, happened: Happened) -> PlanLine:
    """One line of the night, frozen from the board."""
    prey, count, mass_g = _prey_of(row.plan)
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
        because=json.dumps([(r.why, dict(r.figures)) for r in row.plan.because], default=str),
    )


def read_tubs(keeping: Keeping, round_: int) -> tuple[Tub, ...]:
    """Every tub of a night in the order of its lines, with what the book says of it."""
    plans = reading.all_of(keeping.book, PlanLine, "e.round = ?", round_)
    animals = {row.animal: row for row in animals_on(keeping, keeping.today)}
    offers = read_offers(keeping, round_)
    ordered = sorted((entry.event for entry in plans), key=lambda plan: plan.line)
    return tuple(
        Tub(plan=plan, animal=animals[plan.animal], offer=offers.get(plan.line))
        for plan in ordered
        if plan.animal in animals
    )


def read_offers(keeping: Keeping, round_: int, line: int | None = None) -> dict[int, Entry[Offer]]:
    """The standing offers of a night by line, or of one line alone."""
    condition = "e.round = ?" if line is None else "e.round = ? AND e.line = ?"
    values = (round_,) if line is None else (round_, line)
    found = reading.all_of(keeping.book, Offer, condition, *values)
    return {entry.event.line: entry for entry in found if entry.event.line is not None}


def offer_in(
    tub: Tub,
    happened: Happened,
    result: Result,
    evidence: Evidence,
    *,
    withheld: HoldKind | None = None,
    prey: Prey | None = None,
) -> Offer:
    """The offer that says *result* of a tub, as planned or with other *prey*."""
    planned = (tub.plan.prey, tub.plan.count, tub.plan.mass_g)
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
    if tub.offer is None:
        raise LookupError("Nothing was offered in this tub tonight.")
    result = Result.TAKEN if gone else Result.REFUSED
    evidence = Evidence.GONE if gone else Evidence.SEEN
    return replace(tub.offer.event, result=result, evidence=evidence)


def _prey_of(plan: Plan) -> Prey:
    """What the plan offers; several kinds are named together."""
    if not plan.offer:
        return None, None, None
    name = " and ".join(offer.prey for offer in plan.offer)
    grams = sum(offer.grams for offer in plan.offer)
    return name, sum(offer.count for offer in plan.offer), grams
