"""The JSON documents that scripts may rely on, key by key."""

from collections.abc import Mapping
from datetime import date
from typing import TYPE_CHECKING, Any

from keeper.actions.due_board import DueRow
from keeper.actions.expecting import Expected
from keeper.actions.joining import Joining
from keeper.actions.taking_in import TakenIn
from keeper.husbandry.animal import Sex
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.reasons import because
from keeper.husbandry.stock_lines import Line, totals
from keeper.reports.figures import plain
from keeper.reports.stock_register import COLUMNS, RegisterFacts, register_cells
from keeper.reports.words import because_text
from keeper.rules.watch_facts import WatchLine

if TYPE_CHECKING:  # numpy: only the verb that forecasts waits for it
    from keeper.actions.forecasting import WeightForecast


def due_document(row: DueRow) -> dict[str, Any]:
    plan = row.plan
    return {
        "animal": row.animal.code,
        "place": row.animal.place,
        "state": plan.state.value,
        "due_on": _iso(plan.due_on),
        "days_since_eaten": plan.days_since_eaten,
        "interval_days": plan.interval_days,
        "hold": plan.hold.kind.value if plan.hold else None,
        "offer": [
            {"prey": item.prey, "count": item.count, "grams": round(item.grams, 1)}
            for item in plan.offer
        ],
        "offer_percent": _rounded(plan.offer_percent, 1),
        "because": plain(because_text(plan.because, row.animal.sex)),
    }


def watch_document(line: WatchLine, animals: Mapping[int, AnimalNow]) -> dict[str, Any]:
    """A line of a place or a cause has no animal; its reasons then begin with where."""
    now = None if line.animal is None else animals[line.animal]
    where = (because("where", place=line.place),) if now is None and line.place else ()
    sex = now.sex if now else Sex.UNKNOWN
    return {
        "animal": now.code if now else None,
        "kind": line.kind,
        "severity": line.severity.value,
        "because": plain(because_text((*where, *line.because), sex)),
    }


def expected_document(expected: Expected) -> dict[str, Any]:
    found, stands = expected.expectation, expected.standing
    return {
        "l": found.l,
        "m": found.m_g,
        "s": found.s,
        "p3": found.p3_g,
        "p10": found.p10_g,
        "p50": found.p50_g,
        "p90": found.p90_g,
        "p97": found.p97_g,
        "z": stands.z if stands else None,
        "centile": stands.centile if stands else None,
        "basis": found.basis,
        "source": " ".join(found.source.split()),
    }


def taken_document(taken: TakenIn) -> dict[str, Any]:
    return {
        "animals": taken.animals,
        "entries": taken.entries,
        "skipped": taken.skipped,
        "errors": [
            {
                "file": fault.file,
                "line": fault.line,
                "column": fault.column,
                "value": fault.value,
                "message": plain(fault.message),
            }
            for fault in taken.faults
        ],
    }


def joining_document(found: Joining) -> dict[str, Any]:
    return {
        "animals": found.animals,
        "entries": found.entries,
        "batches": found.batches,
        "known": found.known,
        "conflicts": [str(key) for key in found.conflicts],
        "readings": found.readings.new,
        "readings_differing": len(found.readings.conflicts),
        "photos": found.photos,
        "clashes": [
            {"kind": clash.kind.value, "about": clash.about, "told": [*map(plain, clash.told)]}
            for clash in found.clashes
        ],
        "written": found.written is not None,
    }


def register_document(found: RegisterFacts) -> dict[str, Any]:
    """Every line under the columns of the file; figures as numbers, what is not known as null."""
    return {
        "as_at": found.on.isoformat(),
        "day_is_over": found.is_over,
        "totals": totals(found.lines),
        "lines": [_register_line(line, found.species) for line in found.lines],
    }


def _register_line(line: Line, species: Mapping[str, str]) -> dict[str, Any]:
    cells = dict(zip(COLUMNS, register_cells(line, species), strict=True))
    numbers = {name: int(cells[name]) if cells[name] else None for name in _NUMBERS}
    return {name: cell or None for name, cell in cells.items()} | numbers


_NUMBERS = ("entry", "unnumbered", "refers_to", "change", "total")


def forecast_document(found: "WeightForecast") -> dict[str, Any]:
    return {
        "animal": found.animal.code,
        "target_g": found.target_g,
        "date": _iso(found.on),
        "low": _iso(found.low),
        "high": _iso(found.high),
        "level": found.level,
        "basis": found.basis,
        "because": plain(because_text(found.because, found.animal.sex)),
    }


def _iso(day: date | None) -> str | None:
    return None if day is None else day.isoformat()


def _rounded(value: float | None, decimals: int) -> float | None:
    return None if value is None else round(value, decimals)
