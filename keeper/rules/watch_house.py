"""What rows, racks and rooms put on the watch, one line for each cause."""

from collections.abc import Iterator
from datetime import date

from keeper.husbandry.events import Zone
from keeper.husbandry.reasons import because
from keeper.rules.causes import Cause
from keeper.rules.heat import ColdAfterFeeding, HeatVerdict
from keeper.rules.sensors import SensorFault
from keeper.rules.watch_facts import HouseFacts, Severity, WatchLine

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("ends when they eat again", ()),
    ("ends with a whole shed", ()),
    ("ends with a reading inside the limits", ()),
    ("regurgitation to be feared", ()),
    ("clutches lie there", ("clutches",)),
)
"""Every reason of this module with the figures it carries."""

KIND_OF_CAUSE = {
    "row": "refusals in a row of tubs",
    "rack": "refusals in a rack",
    "bag": "refusals from one bag of prey",
    "keeper": "refusals from one keeper's hands",
    "cleaning": "refusals after a cleaning",
    "prey": "refusals after a change of prey",
    "room": "refusals in the room",
    "humidity": "bad sheds in a row of tubs",
}

_URGENCY = {"now": Severity.NOW, "today": Severity.TODAY, "noted": Severity.NOTED}


def house_lines(house: HouseFacts) -> Iterator[WatchLine]:
    """Causes, cold after feeding, heat and sensors; heat that a cause names is told once."""
    yield from (_cause_line(cause, house) for cause in house.causes)
    yield from (_cold_line(cold) for cold in house.cold_after_feeding)
    told = {cold.place for cold in house.cold_after_feeding}
    told |= {cause.name for cause in house.causes if _cold_there(cause, house)}
    for verdict in house.heat:
        if verdict.state == "within limits":
            continue
        if verdict.urgency == "now" or verdict.place not in told or verdict.zone is not Zone.HOT:
            yield _heat_line(verdict, house)
    for fault in house.faults:
        yield WatchLine(
            animal=None,
            place=fault.place,
            kind="sensor",
            severity=_of_a_fault(fault, house),
            since=None,
            ends=because("ends with a reading inside the limits"),
            because=fault.because,
        )


def _of_a_fault(fault: SensorFault, house: HouseFacts) -> Severity:
    """At once where nothing tells the heat any more."""
    return Severity.NOW if fault.blind or fault.place in house.cut_off else Severity.TODAY


def _cold_there(cause: Cause, house: HouseFacts) -> HeatVerdict | None:
    """A hot end read too cold in the row or rack of a cause."""
    return next(
        (
            verdict
            for verdict in house.heat
            if verdict.place == cause.name
            and verdict.zone is Zone.HOT
            and verdict.state == "too cold"
        ),
        None,
    )


def _cause_line(cause: Cause, house: HouseFacts) -> WatchLine:
    """A cause; a row that refuses and was read cold is a cold row."""
    cold = _cold_there(cause, house)
    is_cold = cause.kind == "row" and (cold is not None or cause.cooler)
    kind = "cold row" if is_cold else KIND_OF_CAUSE[cause.kind]
    word = "ends with a whole shed" if cause.kind == "humidity" else "ends when they eat again"
    return WatchLine(
        animal=None,
        place=cause.name or None,
        kind=kind,
        severity=Severity.THIS_WEEK if cause.kind == "humidity" else Severity.TODAY,
        since=cause.since,
        ends=because(word),
        because=(*cause.because, *cause.ranked, *cause.unfit, *(cold.because if cold else ())),
        members=cause.members,
    )


def _cold_line(cold: ColdAfterFeeding) -> WatchLine:
    return WatchLine(
        animal=None,
        place=cold.place,
        kind="cold after feeding",
        severity=Severity.TODAY,
        since=cold.since_at.date(),
        ends=because("ends with a reading inside the limits"),
        because=(*cold.because, because("regurgitation to be feared")),
        members=cold.animals,
    )


def _heat_line(verdict: HeatVerdict, house: HouseFacts) -> WatchLine:
    """An incubator out of its limits names the clutches that lie in it, and leads to their dams."""
    lying = house.lying.get(verdict.place, ()) if verdict.zone is Zone.INCUBATOR else ()
    named = ", ".join(each.called for each in lying)
    there = (because("clutches lie there", clutches=named),) if lying else ()
    cold_row = verdict.zone is Zone.HOT and verdict.state == "too cold"
    since: date | None = verdict.since_at.date() if verdict.since_at else None
    return WatchLine(
        animal=None,
        place=verdict.place,
        kind="cold row" if cold_row else "heat",
        severity=_URGENCY[verdict.urgency],
        since=since,
        ends=because("ends with a reading inside the limits"),
        because=(*verdict.because, *there),
        members=tuple(dict.fromkeys(each.dam for each in lying if each.dam is not None)),
    )
