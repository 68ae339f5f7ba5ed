"""A tub that is on hold or not due, offered all the same: what it would be given tonight.

One key names the meal, the next says what became of it. How she eats under a hold is learned
from such offers (``actions/learned.py``); the hold itself stays as it is.
"""

from keeper.actions.due_board import empty_now_g
from keeper.actions.keeping import Keeping
from keeper.actions.tubs import Prey, Tub, planned_prey, tub_name
from keeper.husbandry.events import HoldKind, Offer
from keeper.language import tr
from keeper.reports.words import word
from keeper.rules.feeding import DueState, Judged, Plan, Table, with_meal
from keeper.store import reading

SPARES_THE_ANIMAL = frozenset(
    {HoldKind.REGURGITATED, HoldKind.VET, HoldKind.PRE_LAY, HoldKind.COOLING}
)
"""Holds that spare the animal, not the prey: no single key leads past them. Common practice."""

_LAST_OFFERS = 6


def can_be_offered(tub: Tub) -> bool:
    """The walk would pass *tub* by tonight, and nothing was given in it yet."""
    passed_by = not tub.walked and tub.offer is None
    return passed_by and not tub.missing and not tub.regurgitated


def meal_all_the_same(keeping: Keeping, tub: Tub) -> Prey:
    """What *tub* would be given tonight if nothing lay on it.

    Raises:
        LookupError: the hold spares the animal, or no meal can be told; one sentence.
    """
    night = tub.plan.happened.day
    spared = next((kind for kind in _holds(tub) if kind in SPARES_THE_ANIMAL), None)
    if spared is not None:
        raise LookupError(
            tr(
                "{tub} is spared food ({hold}); / names the prey if it is given all the same.",
                tub=tub_name(tub),
                hold=word(spared),
            )
        )
    recent = reading.recent(keeping.book, Offer, [tub.plan.animal], _LAST_OFFERS, until=night)
    profile = keeping.profile(tub.animal)
    table = Table(night, recent[tub.plan.animal], empty_now_g(tub.animal, profile))
    bare = Judged(Plan(animal=tub.plan.animal, state=DueState.DUE), ())
    prey = planned_prey(with_meal(bare, tub.animal, profile, table))
    if prey[0] is None:
        told = tr("No meal can be told for {tub}; / chooses the prey.", tub=tub_name(tub))
        raise LookupError(told)
    return prey


def _holds(tub: Tub) -> list[HoldKind]:
    kinds = {str(reason.figures.get("kind")) for reason in tub.because if reason.why == "hold"}
    return [kind for kind in HoldKind if kind.value in kinds]
