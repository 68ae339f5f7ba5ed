"""The figures as a table for a terminal, as JSON, and as the block of a page in Markdown."""

import json
import os
import platform
from collections.abc import Sequence
from dataclasses import asdict
from pathlib import Path

from benches.measuring import Row

BEGIN, END = "<!-- bench:begin -->", "<!-- bench:end -->"


def machine() -> str:
    """What was measured on, and how busy it is just now."""
    load = f"load {os.getloadavg()[0]:.1f} on {os.cpu_count()} processors"
    return f"{platform.platform()}, Python {platform.python_version()}, {load}"


def heading() -> str:
    """The heads of the columns for a terminal."""
    return _line(("", "size", "measured", "goal", "program", "floor"))


def told(row: Row) -> str:
    """One row for a terminal; what misses its goal says so."""
    mark = "  MISSES" if row.misses else ""
    told = "; ".join(part for part in (_spread(row), row.note) if part)
    return _line(_cells(row)) + mark + (f"  ({told})" if told else "")


def summary(made: Sequence[Row]) -> str:
    """How many rows missed their goal and how many could not be measured."""
    missed, left = sum(row.misses for row in made), sum(row.measured is None for row in made)
    return f"{missed} of {len(made)} miss their goal, {left} could not be measured here"


def write_json(path: Path, made: Sequence[Row]) -> None:
    """All figures, with the machine."""
    document = {
        "machine": platform.platform(),
        "python": platform.python_version(),
        "load": os.getloadavg(),
        "rows": [{**asdict(row), "misses": row.misses} for row in made],
    }
    path.write_text(json.dumps(document, indent=1, ensure_ascii=False) + "\n", encoding="utf-8")


def write_block(page: Path, made: Sequence[Row], command: str) -> None:
    """Put the table between the two markers of *page*, in place of what stood there.

    Raises:
        ValueError: the page has not both markers, in order.
    """
    text = page.read_text(encoding="utf-8")
    before, begin, rest = text.partition(BEGIN)
    _, end, after = rest.partition(END)
    if not begin or not end:
        raise ValueError(f"{page} has no lines {BEGIN} and {END} to put the table between.")
    page.write_text(f"{before}{BEGIN}\n{_block(made, command)}\n{END}{after}", encoding="utf-8")


def _block(made: Sequence[Row], command: str) -> str:
    lines = [
        f"Measured by `{command}` on {machine()} at the end; {summary(made)}.",
        "",
        "| what | size | measured | goal | program | floor |",
        "|---|---|---:|---:|---:|---|",
        *("| " + " | ".join(_page_cells(row)) + " |" for row in made),
    ]
    return "\n".join(lines)


def _page_cells(row: Row) -> list[str]:
    subject, size, measured, goal, ours, floor = (c.replace("|", "/") for c in _cells(row))
    measured = f"**{measured}, missed**" if row.misses else measured
    measured += f" ({_spread(row)})" if row.spread else ""
    note = f" ({row.note})" if row.note else ""
    return [subject + note, size, measured, goal, ours, floor]


def _cells(row: Row) -> tuple[str, str, str, str, str, str]:
    measured = "skipped" if row.measured is None else _figure(row.measured, row.unit)
    floor = f"{_ms(row.floor_ms)} {row.floor}" if row.floor_ms is not None else ""
    goal = _figure(row.most, row.unit)
    return row.subject, row.size, measured, goal, _ms(row.ours_ms), floor


def _spread(row: Row) -> str:
    """Between which two the middle half of the rounds lies."""
    return f"{row.spread[0]:.3g} to {row.spread[1]:.3g}" if row.spread else ""


def _line(cells: Sequence[str]) -> str:
    subject, size, measured, goal, ours, floor = cells
    return f"{subject:58} {size:>16} {measured:>10} {goal:>10}  {ours:>10}  {floor}"


def _figure(value: float, unit: str) -> str:
    shown = f"{value:.3g}" if value < 100 else f"{value:,.0f}"
    return f"{shown} ×" if unit == "x" else f"{shown} {unit}"


def _ms(value: float | None) -> str:
    if value is None:
        return ""
    return f"{value:.3g} ms" if value < 100 else f"{value:,.0f} ms"
