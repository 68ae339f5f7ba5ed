"""An invented animal as the book must see it, kept in memory so that a night is quick to plan.

It is kept apart from the store on purpose: that the two agree is a test of both.
"""

from collections import deque
from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from typing import Any

from keeper.husbandry.events import (
    Clutch,
    Event,
    HoldSet,
    Measured,
    Moved,
    Offer,
    Regurgitation,
    Remark,
    RemarkKind,
    Result,
    Sexed,
    ShedSign,
    ShedStage,
    Stock,
    Weighing,
)
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile
from keeper.rules.feeding import Plan, due, plan
from keeper.rules.weights import EmptyWeight, empty_weight

ATE = frozenset({Result.TAKEN, Result.PART})
_LAST = 6
_COUNTED_MOST = 10


class Mirror:
    """One animal's present state and its last entries, moved on by each event."""

    def __init__(self, now: AnimalNow, profile: SpeciesProfile) -> None:
        self.now = now
        self.profile = profile
        self.offers: deque[Offer] = deque(maxlen=_LAST)
        self.signs: deque[ShedSign] = deque(maxlen=_LAST)
        self.holds: list[HoldSet] = []

    def planned(self, nights: Sequence[date], on: date, last_record_on: date | None) -> Plan:
        """What the program asks of this tub on the night *on*."""
        return plan(
            self.now,
            self.profile,
            nights,
            on,
            self._open_holds(on),
            tuple(self.offers),
            tuple(self.signs),
            self.empty_g(),
            last_record_on=last_record_on,
        )

    def due_on(self, nights: Sequence[date], on: date, last_record_on: date | None) -> date | None:
        """The next night it is due, as it looks on the day *on*; None: an event comes first."""
        found = due(
            self.now,
            self.profile,
            nights,
            on,
            self._open_holds(on),
            last_record_on=last_record_on,
            signs=tuple(self.signs),
        )
        return found.due_on

    def empty_g(self) -> float | None:
        now = self.now
        if now.weight_g is None or now.weighed_on is None:
            return None
        before = now.meal_before_weighing_on
        meals = [(before, now.meal_before_weighing_g)] if before is not None else []
        found = empty_weight(now.weight_g, now.weighed_on, meals, self.profile)
        return found.grams if isinstance(found, EmptyWeight) else None

    def take(self, event: Event) -> None:
        """Move on by what was written; of other animals' and house events nothing is kept."""
        match event:
            case Offer():
                self._offered(event)
            case Weighing():
                self._weighed(event)
            case ShedSign():
                self._shed_sign(event)
            case HoldSet():
                self.holds.append(event)
            case Regurgitation():
                self._regurgitated(event)
            case _:
                self._told(event)

    def _told(self, event: Event) -> None:
        match event:
            case Clutch():
                self.now = replace(self.now, clutch_on=event.happened.day)
            case Measured():
                self._measured(event)
            case Sexed():
                self.now = replace(self.now, sex=event.sex, sexed_by=event.sexed_by)
            case Moved():
                day = event.happened.day
                self.now = replace(self.now, place=event.place, place_since=day)
            case Stock():
                day = event.happened.day
                self.now = replace(self.now, status=event.status, status_on=day)
            case Remark(kind=RemarkKind.CAUTION):
                self.now = replace(self.now, caution=event.text)
            case _:
                pass

    def _open_holds(self, on: date) -> list[HoldSet]:
        return [held for held in self.holds if held.until is None or held.until >= on]

    def _offered(self, offer: Offer) -> None:
        self.offers.append(offer)
        day, now = offer.happened.day, self.now
        told: dict[str, Any] = {"first_entry_on": now.first_entry_on or day, "last_entry_on": day}
        if offer.result is not Result.NOT_OFFERED:
            told |= {"offered_on": day, "offered_result": offer.result}
        if offer.result in ATE:
            since = now.meals_since_regurgitation + (now.regurgitated_on is not None)
            told |= {
                "eaten_on": day,
                "eaten_prey": offer.prey,
                "eaten_count": offer.count,
                "eaten_g": offer.mass_g,
                "refused_since": 0,
                "meals": min(_COUNTED_MOST, now.meals + 1),
                "meals_since_regurgitation": min(_COUNTED_MOST, since),
            }
        elif offer.result is Result.REFUSED:
            told["refused_since"] = now.refused_since + 1
        self.now = replace(now, **told)

    def _weighed(self, weighing: Weighing) -> None:
        day, now = weighing.happened.day, self.now
        self.now = replace(
            now,
            first_entry_on=now.first_entry_on or day,
            last_entry_on=day,
            weight_before_g=now.weight_g,
            weighed_before_on=now.weighed_on,
            weight_g=weighing.weight_g,
            weighed_on=day,
            meal_before_weighing_g=now.eaten_g,
            meal_before_weighing_on=now.eaten_on,
        )

    def _shed_sign(self, sign: ShedSign) -> None:
        self.signs.append(sign)
        day, now = sign.happened.day, self.now
        if sign.stage is ShedStage.SHED:
            self.now = replace(
                now, shed_before_on=now.shed_on, shed_on=day, stage=None, stage_since=None
            )
        elif sign.stage is not now.stage:
            self.now = replace(now, stage=sign.stage, stage_since=day)

    def _regurgitated(self, event: Regurgitation) -> None:
        self.now = replace(
            self.now,
            regurgitated_before_on=self.now.regurgitated_on,
            regurgitated_on=event.happened.day,
            meals_since_regurgitation=0,
        )

    def _measured(self, event: Measured) -> None:
        told: dict[str, Any] = {}
        if event.svl_cm is not None:
            told["svl_cm"] = event.svl_cm
        if event.body_score is not None:
            told |= {"body_score": event.body_score, "scored_on": event.happened.day}
        self.now = replace(self.now, **told)
