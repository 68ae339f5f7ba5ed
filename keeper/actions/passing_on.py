"""A refused item offered to another: where it must not go."""

from keeper.actions.keeping import Keeping
from keeper.actions.quarantine import open_holds
from keeper.actions.tubs import Tub, tub_name
from keeper.husbandry.events import HoldKind, Remark, RemarkKind, Result
from keeper.language import tr
from keeper.reports.words import word
from keeper.rules.holds import Hold, holds_of
from keeper.store import reading

APART = frozenset({HoldKind.QUARANTINE, HoldKind.NEW_ARRIVAL, HoldKind.VET, HoldKind.REGURGITATED})
"""Animals that share no prey with others; their refused items are binned. Common practice."""

CATCHING = frozenset({RemarkKind.MITES, RemarkKind.BREATHING})

_EATEN = frozenset({Result.TAKEN, Result.PART, Result.LEFT_IN})


def refusal_to_pass(keeping: Keeping, giver: Tub, taker: Tub) -> str | None:
    """Why the item of *giver* must not go to *taker*, in one sentence; None when it may."""
    if giver.line == taker.line:
        return tr("Line {line} is this tub; give the line that took the item.", line=taker.line)
    if taker.missing:
        return tr("{tub} {gone}.", tub=tub_name(taker), gone=taker.gone)
    if taker.offer is not None and taker.offer.event.result in _EATEN:
        done = word(taker.offer.event.result)
        return tr(
            "{tub} has had an item tonight ({done}); a second one is a double feed.",
            tub=tub_name(taker),
            done=done,
        )
    for tub in (giver, taker):
        apart = _apart(keeping, tub)
        if apart is not None:
            return tr(
                "{tub} is kept apart ({apart}): bin the item, it goes to no other tub.",
                tub=tub_name(tub),
                apart=apart,
            )
    return None


def _apart(keeping: Keeping, tub: Tub) -> str | None:
    """The word for why this animal shares no prey tonight."""
    night = tub.plan.happened.day
    by_hand = open_holds(keeping, night).holds.get(tub.plan.animal, [])
    holds = holds_of(tub.animal, by_hand, keeping.profile(tub.animal), night)
    kept = next((hold.kind for hold in holds if hold.kind in APART and _lasts(hold)), None)
    if kept is not None:
        return word(kept)
    marks = reading.recent(keeping.book, Remark, [tub.plan.animal], 6)[tub.plan.animal]
    tonight = (m.kind for m in marks if m.happened.day == night and m.kind in CATCHING)
    seen = next(tonight, None)
    return word(seen) if seen is not None else None


def _lasts(hold: Hold) -> bool:
    """Meals that stay small after a regurgitation keep nobody apart."""
    return hold.skip or hold.kind is not HoldKind.REGURGITATED
