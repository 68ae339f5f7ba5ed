"""What one layer of the racks says of a tub: a state, a figure, and the reason.

A state is a plain word of its layer; ``STATES`` lists them loudest first, so of those who
share a tub the one that needs the keeper first is shown.
"""

from collections import Counter
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from enum import StrEnum

from keeper.actions.due_board import DueRow
from keeper.actions.racks import RackTub, Room, names_of
from keeper.actions.watch_board import tub_state
from keeper.husbandry.animal import AnimalId, Sex
from keeper.husbandry.events import HoldKind, ShedStage
from keeper.husbandry.reasons import Reason
from keeper.reports.figures import MINUS, tenths
from keeper.reports.writing import in_use
from keeper.rules.feeding import DueState, Plan
from keeper.rules.sheds import ShedClock, shed_clock
from keeper.rules.stages import stage_of


class Layer(StrEnum):
    """One thing shown of every tub at a time, in the order of their keys."""

    DUE = "due"
    RATIO = "days since eaten ÷ interval"
    WEIGHT = "weight trend"
    SHED = "shed stage"
    HOLD = "hold"
    SEX = "sex"
    HEAT = "heat"


EMPTY, CANNOT_TELL = "empty", "cannot tell"

STATES: Mapping[Layer, tuple[str, ...]] = {
    Layer.DUE: ("late", "due", CANNOT_TELL, "hold", "not due", EMPTY),
    Layer.RATIO: ("far behind", "behind", "due", CANNOT_TELL, "held", "in step", EMPTY),
    Layer.WEIGHT: ("vet", "act", "losing", "no gain", CANNOT_TELL, "eggs", "holding", EMPTY),
    Layer.SHED: ("late", "opaque", "dull", "cleared", "just shed", CANNOT_TELL, "resting", EMPTY),
    Layer.HOLD: (
        "vet",
        "regurgitated",
        "new arrival",
        "quarantine",
        "opaque",
        "carries eggs",
        "season",
        "just shed",
        "other",
        "none",
        EMPTY,
    ),
    Layer.SEX: ("together", "female", "male", CANNOT_TELL, EMPTY),
    Layer.HEAT: ("too hot", "too cold", "beyond wished", CANNOT_TELL, "within", EMPTY),
}

_HOLDS = {
    HoldKind.VET: "vet",
    HoldKind.REGURGITATED: "regurgitated",
    HoldKind.NEW_ARRIVAL: "new arrival",
    HoldKind.QUARANTINE: "quarantine",
    HoldKind.OPAQUE: "opaque",
    HoldKind.GRAVID: "carries eggs",
    HoldKind.PRE_LAY: "carries eggs",
    HoldKind.SEASON: "season",
    HoldKind.COOLING: "season",
    HoldKind.JUST_SHED: "just shed",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Shown:
    """state: one of the layer's ``STATES``; figure: short text, empty where the state says all."""

    state: str
    figure: str = ""
    because: tuple[Reason, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class LayerShown:
    """One layer of a room: what is shown of each tub, by rack and row."""

    layer: Layer
    racks: tuple[tuple[tuple[Shown, ...], ...], ...]

    def counts(self) -> dict[str, int]:
        """How many tubs show each state, in the order of ``STATES``."""
        found = Counter(tub.state for rack in self.racks for row in rack for tub in row)
        return {state: found[state] for state in STATES[self.layer]}


NOBODY = Shown(state=EMPTY)
UNREAD = Shown(state=CANNOT_TELL)

Trends = Mapping[AnimalId, Shown]
"""What the weights of each animal say; read apart, since it takes its history."""


def shown_in(tub: RackTub, room: Room, layer: Layer, trends: Trends | None = None) -> Shown:
    """What *layer* says of a tub. trends are needed for the weights alone."""
    if layer is Layer.HEAT:
        return _heat(tub, room)
    if not tub.living:
        return NOBODY
    if layer is Layer.SEX:
        return _sexes(tub)
    told = [shown_of(living, room, layer, trends) for living in tub.living]
    return min(told, key=lambda shown: STATES[layer].index(shown.state))


def shown_of(living: DueRow, room: Room, layer: Layer, trends: Trends | None = None) -> Shown:
    """What *layer* says of one animal."""
    if layer is Layer.WEIGHT:
        return UNREAD if trends is None else trends.get(living.animal.animal, UNREAD)
    if layer is Layer.SEX:
        return _SEXES[living.animal.sex]
    return _OF_ONE[layer](living, room)


def layer_of(room: Room, layer: Layer, trends: Trends | None = None) -> LayerShown:
    """What *layer* says of every tub of *room*."""
    return LayerShown(
        layer=layer,
        racks=tuple(
            tuple(
                tuple(shown_in(tub, room, layer, trends) for tub in row.tubs) for row in rack.rows
            )
            for rack in room.racks
        ),
    )


def signed(percent: float) -> str:
    """A change in per cent without its unit.

    >>> signed(4.4), signed(-6.2), signed(-0.2)
    ('+4', '−6', '0')
    """
    whole = round(percent)
    return f"{whole:+d}".replace("-", MINUS) if whole else "0"


def _due(living: DueRow, room: Room) -> Shown:
    plan = living.plan
    if plan.state is DueState.HOLD:
        return Shown(state="hold", because=plan.because)
    if plan.state is DueState.CANNOT_TELL:
        return Shown(state=CANNOT_TELL, because=plan.because)
    if plan.due_on is None:
        return Shown(state="not due", because=plan.because)
    days = (plan.due_on - room.on).days
    if plan.state is DueState.NOT_DUE:
        return Shown(state="not due", figure=str(max(days, 0)), because=plan.because)
    if days < 0:
        return Shown(state="late", figure=str(-days), because=plan.because)
    return Shown(state="due", because=plan.because)


def _ratio(living: DueRow, room: Room) -> Shown:
    """Nights that were not recorded are not nights without food."""
    plan = living.plan
    state = CANNOT_TELL if plan.state is DueState.CANNOT_TELL else tub_state(plan)
    figure = "" if state in (CANNOT_TELL, "held") else _share(plan)
    return Shown(state=state, figure=figure, because=plan.because)


def _share(plan: Plan) -> str:
    late = plan.lateness or 0.0
    return f"{late:.1f}".replace(".", in_use().point) if late < 9.95 else f"{late:.0f}"


def _hold(living: DueRow, room: Room) -> Shown:
    hold = living.plan.hold
    if hold is None:
        return Shown(state="none", because=living.plan.because)
    figure = str((hold.until - room.on).days) if hold.until else ""
    state = _HOLDS.get(hold.kind, "other")
    return Shown(state=state, figure=figure, because=living.plan.because)


def _shed(living: DueRow, room: Room) -> Shown:
    animal, on = living.animal, room.on
    profile = room.profiles[animal.animal]
    clock = shed_clock(animal, (), profile, stage_of(animal, profile, on), on)
    if clock.verdict == "cannot tell":
        return Shown(state=CANNOT_TELL, because=clock.because)
    if clock.verdict != "in step":
        return Shown(state="late", figure=str(clock.overdue_days), because=clock.because)
    fresh = profile.holds.get(HoldKind.JUST_SHED)
    fresh_days = fresh.days.value if fresh and fresh.days else 0
    state, days = _shed_stage(clock, room, fresh_days)
    figure = "" if days is None else str(days)
    return Shown(state=state, figure=figure, because=clock.because)


def _shed_stage(clock: ShedClock, room: Room, fresh_days: float) -> tuple[str, int | None]:
    if clock.stage in (ShedStage.DULL, ShedStage.OPAQUE, ShedStage.CLEARED):
        days = (room.on - clock.since).days if clock.since else None
        return clock.stage.value, days
    if clock.shed_days is not None and clock.shed_days <= fresh_days:
        return "just shed", clock.shed_days
    return "resting", clock.shed_days


def _heat(tub: RackTub, room: Room) -> Shown:
    """The tub's own reading, else its row's, else its rack's."""
    read = next((room.heat[name] for name in names_of(tub.name) if name in room.heat), None)
    if read is None:
        return UNREAD if tub.living else NOBODY
    state = read.state if read.fresh else CANNOT_TELL
    return Shown(state=state, figure=tenths(read.temp_c), because=read.because)


_SEXES = {
    Sex.FEMALE: Shown(state="female"),
    Sex.MALE: Shown(state="male"),
    Sex.UNKNOWN: UNREAD,
}


def _sexes(tub: RackTub) -> Shown:
    """A female and a male in one tub are told of before anything else."""
    found = {living.animal.sex for living in tub.living}
    if {Sex.FEMALE, Sex.MALE} <= found:
        return Shown(state="together")
    return min((_SEXES[sex] for sex in found), key=lambda s: s.state != CANNOT_TELL)


_OF_ONE: Mapping[Layer, Callable[[DueRow, Room], Shown]] = {
    Layer.DUE: _due,
    Layer.RATIO: _ratio,
    Layer.SHED: _shed,
    Layer.HOLD: _hold,
}
