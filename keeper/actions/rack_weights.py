"""The weight trend of every animal of the room: losing, not gaining, holding, or cannot tell."""

from collections.abc import Sequence
from datetime import date

from keeper.actions.due_board import DueRow
from keeper.actions.keeping import Keeping
from keeper.actions.life import EATEN, empties
from keeper.actions.rack_layers import CANNOT_TELL, Shown, signed
from keeper.husbandry.animal import Stage
from keeper.husbandry.events import HoldKind, Offer, Weighing
from keeper.husbandry.profile import SpeciesProfile
from keeper.rules.shortfalls import Stall, stall
from keeper.rules.stages import stage_of
from keeper.rules.weights import CannotTell, Empty, Meal, baseline, fasted, loss
from keeper.store import reading

_WEIGHINGS, _OFFERS = 16, 30
_STEPS = {"watch": "losing", "act": "act", "vet": "vet", "same day": "vet"}
_EGGS = (HoldKind.GRAVID, HoldKind.PRE_LAY)


def trends_of(keeping: Keeping, rows: Sequence[DueRow], on: date) -> dict[int, Shown]:
    """What the weights of each animal of *rows* say on the day *on*."""
    keys = [row.animal.animal for row in rows]
    weighings = reading.recent(keeping.book, Weighing, keys, _WEIGHINGS)
    offers = reading.recent(keeping.book, Offer, keys, _OFFERS)
    found = {}
    for row in rows:
        key, profile = row.animal.animal, keeping.profile(row.animal)
        meals = [(o.happened.day, o.mass_g) for o in offers[key] if o.result in EATEN]
        weighed = [w for w in weighings[key] if w.happened.day <= on]
        freed = empties(weighed, meals, profile)
        found[key] = _trend(row, freed, meals, profile, stage_of(row.animal, profile, on), on)
    return found


def _trend(
    row: DueRow,
    freed: Sequence[Empty],
    meals: Sequence[Meal],
    profile: SpeciesProfile,
    stage: Stage | None,
    on: date,
) -> Shown:
    """Eggs weigh, so one that carries them is not held against her baseline."""
    if row.plan.hold is not None and row.plan.hold.kind in _EGGS:
        return Shown(state="eggs")
    laid_on = row.animal.clutch_on
    lost = loss(freed, profile, stage, on, laid_on)
    if isinstance(lost, CannotTell):
        return Shown(state=CANNOT_TELL, because=(lost.missing,))
    if lost is not None:
        return Shown(state=_STEPS[lost.step], figure=signed(-lost.percent), because=lost.because)
    stalled = stall(freed, meals, profile, stage, on)
    if isinstance(stalled, Stall):
        return Shown(state="no gain", figure=signed(stalled.percent), because=stalled.because)
    return Shown(state="holding", figure=_change(freed, profile, on, laid_on))


def _change(freed: Sequence[Empty], profile: SpeciesProfile, on: date, laid_on: date | None) -> str:
    """The last fasted weight against the median of those before it."""
    readings = fasted(freed, on, laid_on)
    last_on, last_g = readings[-1]
    before = [empty for empty in freed if empty[0] < last_on]
    base_g = baseline(before, last_on, profile, laid_on)
    return "" if base_g is None else signed(100 * (last_g / base_g - 1))
