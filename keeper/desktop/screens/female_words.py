"""Females put into faces: weights, gates, days and what is missing. Nothing is decided here."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from typing import TYPE_CHECKING

from keeper.actions.female_desk import Gate, target_g, wants_forecast
from keeper.actions.females import FemaleRow
from keeper.desktop.widgets.calendar_strip import Marks, Window, months_round
from keeper.desktop.widgets.gate_row import FemaleFace, GateFace
from keeper.desktop.widgets.tile import FACES, TileState
from keeper.language import tr
from keeper.reports.figures import ago, centimetres, day, days, grams, mass_unit, number, span
from keeper.reports.words import because_text, word_of

if TYPE_CHECKING:
    from keeper.actions.forecasting import WeightForecast

S = TileState
OF_GATE = {"met": S.GATE_MET, "not yet": S.GATE_NOT_YET, "cannot tell": S.GATE_CANNOT_TELL}
RECKONING = tr("reckoning a day")
_TOLD_DAYS = 365  # for so long a clutch is told on her row; her page has them all


def female_face(row: FemaleRow, forecast: WeightForecast | None, on: date) -> FemaleFace:
    """Her row; without a forecast that she wants, it says that one is being reckoned."""
    marks = _with_breeding(gate_marks(row, forecast, on), row, on)
    weight = grams(row.empty_g) if row.empty_g is not None else f"? {mass_unit()}"
    beside = _beside(row, on)
    gates = tuple(GateFace(name=gate.name, state=OF_GATE[gate.state]) for gate in row.gates)
    said = ", ".join(f"{word_of('gate', g.name)} {FACES[g.state].words}" for g in gates)
    name = row.animal.called
    return FemaleFace(
        place=row.animal.place or "",
        name=name,
        kind=_kind(row),
        weight=weight,
        beside=beside,
        share=None if row.empty_g is None else row.empty_g / target_g(row),
        gates=gates,
        marks=marks,
        said=f"{row.animal.place or ''} {name}, {_kind(row)}: {weight}, {beside}; {said};"
        f" {marks.told}; {marks.beneath}",
    )


def _kind(row: FemaleRow) -> str:
    """Her line first: where a column is narrow the end is cut, and the kind is known anyway."""
    return f"{row.animal.line}, {row.species_by_line}" if row.animal.line else row.species


def _beside(row: FemaleRow, on: date) -> str:
    if row.empty_g is not None:
        return tr("gate {weight}", weight=grams(target_g(row)))
    if row.animal.weighed_on is None:
        return tr("never weighed")
    return tr("last {days} ago", days=days((on - row.animal.weighed_on).days))


def gate_marks(row: FemaleRow, forecast: WeightForecast | None, on: date) -> Marks:
    missing = tr("missing: {gates}", gates=_missing(row, on) or tr("nothing"))
    if row.ready == "met":
        return Marks(at=on, told=tr("every gate is met"), beneath=missing)
    age_on = next((g.on for g in row.gates if g.name == "age" and g.state == "not yet"), None)
    if wants_forecast(row):
        return _by_weight(forecast, age_on, missing, on)
    return _by_others(row, age_on, missing, on)


def _with_breeding(marks: Marks, row: FemaleRow, on: date) -> Marks:
    """When she was paired and laid, on the calendar and in words."""
    told = _bred(row, on)
    beneath = marks.beneath
    if told:
        beneath = told if row.ready == "met" else f"{marks.beneath}; {told}"
    return replace(
        marks,
        beneath=beneath,
        paired=tuple((pairing.happened.day, pairing.locked) for pairing in row.pairings),
        laid=tuple(clutch.happened.day for clutch in row.clutches),
    )


def _bred(row: FemaleRow, on: date) -> str:
    """Her last pairing where she has not laid since, else a clutch of the last year."""
    laid = row.clutches[-1].happened.day if row.clutches else date.min
    pairings = [one for one in row.pairings if one.happened.day > laid]
    if pairings:
        last = pairings[-1]
        when, since = day(last.happened.day, on=on), ago((on - last.happened.day).days)
        if last.locked:
            return tr("paired {day}, {ago}, lock seen", day=when, ago=since)
        return tr("paired {day}, {ago}", day=when, ago=since)
    if row.clutches and (on - laid).days <= _TOLD_DAYS:
        return tr("laid {day}, {ago}", day=day(laid, on=on), ago=ago((on - laid).days))
    return ""


def _by_weight(
    forecast: WeightForecast | None, age_on: date | None, missing: str, on: date
) -> Marks:
    if forecast is None:
        return Marks(from_on=age_on, told=RECKONING, beneath=missing)
    if forecast.on is None:
        told = tr("cannot tell: {why}", why=because_text(forecast.because))
        return Marks(from_on=age_on, unknown=True, told=told, beneath=missing)
    if forecast.reached:
        told = tr("weight reached on {day}, and lost since", day=day(forecast.on, on=on))
        return Marks(from_on=age_on, told=told, beneath=missing)
    return Marks(
        window=_window(forecast), from_on=age_on, told=_dates(forecast, on), beneath=missing
    )


def _window(forecast: WeightForecast) -> Window | None:
    if forecast.on is None or forecast.low is None:
        return None
    return Window(
        on=forecast.on,
        low=forecast.low,
        high=forecast.high,
        half_low=forecast.half_low or forecast.low,
        half_high=forecast.half_high,
    )


def _dates(forecast: WeightForecast, on: date) -> str:
    """The middle day, then the 8 in 10 between which it lies."""
    if forecast.on is None or forecast.low is None:
        return ""
    if forecast.high is None:
        return tr(
            "{day}   from {first}, no latest day",
            day=day(forecast.on, on=on),
            first=day(forecast.low, on=on),
        )
    last = forecast.high if forecast.high.year != on.year else on
    between = span(day(forecast.low, on=last), day(forecast.high, on=on))
    return f"{day(forecast.on, on=last)}   {between}"


def _by_others(row: FemaleRow, age_on: date | None, missing: str, on: date) -> Marks:
    """Her weight is no matter; the latest day that can be told, or that none can."""
    open_gates = [gate for gate in row.gates if gate.state == "not yet"]
    dated = [gate for gate in open_gates if gate.on is not None]
    if not open_gates or len(dated) < len(open_gates):
        return Marks(from_on=age_on, unknown=True, told=tr("cannot tell a day"), beneath=missing)
    last = max(dated, key=lambda gate: gate.on or on)
    when = day(last.on or on, on=on)
    told = tr("sheds about {day}", day=when)
    if last.name == "age":
        told = tr("old enough on {day}", day=when)
    at = next((gate.on for gate in dated if gate.name != "age"), None)
    return Marks(from_on=age_on, at=at, told=told, beneath=missing)


def _missing(row: FemaleRow, on: date) -> str:
    """What stands in the way, gate by gate; what cannot be told stands last."""
    lacking = [_lacks(gate, on) for gate in row.gates if gate.state == "not yet"]
    unknown = [_unknown(gate) for gate in row.gates if gate.state == "cannot tell"]
    return ", ".join((*lacking, *unknown))


def _lacks(gate: Gate, on: date) -> str:
    figures = gate.missing.figures
    match gate.name:
        case "weight":
            short = float(str(figures["need_g"])) - float(str(figures["weight_g"]))
            return grams(short)
        case "length":
            return centimetres(float(str(figures["need_cm"])) - float(str(figures["svl_cm"])))
        case "score":
            wanted = span(
                number(float(str(figures["low"])), 1), number(float(str(figures["high"])), 1)
            )
            is_now = number(float(str(figures["score"])), 1)
            return tr("score {wanted}, is {score}", wanted=wanted, score=is_now)
        case "meals":
            lacking = int(str(figures["need"])) - int(str(figures["have"]))
            return tr("{count} kept meals", count=lacking)
        case "age":
            in_view = gate.on is None or months_round(on, 0.0, 1.0).shows(gate.on)
            if gate.on is None or in_view:
                return tr("age")
            return tr("age ({day})", day=day(gate.on, on=on))
        case "shed":
            return tr("a clear shed")


def _unknown(gate: Gate) -> str:
    return {
        "age": tr("a hatching day"),
        "weight": tr("a weight"),
        "length": tr("a length"),
        "score": tr("a body score"),
        "shed": tr("a shed noted"),
        "meals": tr("meals noted"),
    }[gate.name]
