"""What the first place will show at the next start, kept from the last closing of the window.

A start paints this at once and reads the book after it. It is shown only while it is known to be
right: the book's file is the very one that was closed, the program is the same, and the hour is
one that it was reckoned for.
"""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Any

from PySide6.QtCore import QTimer, Signal
from PySide6.QtGui import QPaintEvent

import keeper
from keeper.actions.station import home_dir
from keeper.desktop.look import Look
from keeper.desktop.remembered import print_of
from keeper.desktop.screens.quiet_view import QuietView
from keeper.desktop.widgets.night_counts import CountRow, NightCounts

_FILE = "first sight"


@dataclass(frozen=True, slots=True, kw_only=True)
class Sight:
    """The quiet page of the round from the local time *begins* up to *ends*."""

    begins: datetime
    ends: datetime
    counts: NightCounts
    legend: Mapping[str, str]


class SightPage(QuietView):
    """A sight as a page. ``painted`` is emitted once, when it is on the screen."""

    painted = Signal()

    def __init__(self, look: Look, sight: Sight) -> None:
        super().__init__(look)
        self._told = False
        self.show_counts(sight.counts, sight.legend)

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if not self._told:
            self._told = True
            QTimer.singleShot(0, self, self.painted.emit)


def keep_sights(book: Path, sights: Sequence[Sight]) -> None:
    """Keep *sights* of the *book* just closed; none: nothing is shown before it is read.

    On a disk that takes no such file the next start only waits longer.
    """
    try:
        path = home_dir() / _FILE
        path.unlink(missing_ok=True)
        if sights:
            told = {"of": _print_of(book), "sights": [_written(sight) for sight in sights]}
            path.touch(mode=0o600)
            path.write_text(json.dumps(told, ensure_ascii=False), encoding="utf-8")
    except OSError:
        return


def sight_of(book: Path, at: datetime) -> Sight | None:
    """What the first place of *book* shows *at* this local time, where that is known."""
    try:
        told = json.loads((home_dir() / _FILE).read_text(encoding="utf-8"))
        if told["of"] != _print_of(book):
            return None
        sights = [_read(sight) for sight in told["sights"]]
    except (OSError, ValueError, KeyError, TypeError, AttributeError):
        return None
    here = at.replace(tzinfo=None)
    return next((sight for sight in sights if sight.begins <= here < sight.ends), None)


def _print_of(book: Path) -> str:
    """Of the book's file and of the program, which a new release replaces."""
    return f"{keeper.__version__} {Path(__file__).stat().st_mtime_ns} {print_of(book)}"


def _written(sight: Sight) -> dict[str, object]:
    counts = sight.counts
    return {
        "begins": sight.begins.isoformat(),
        "ends": sight.ends.isoformat(),
        "legend": dict(sight.legend),
        "call": counts.call,
        "columns": counts.columns,
        "rows": [(row.name, row.counts) for row in (counts.total, *counts.rows)],
        "notes": counts.notes,
    }


def _read(told: Mapping[str, Any]) -> Sight:
    """Raises KeyError, TypeError, ValueError or AttributeError where it is no sight."""
    total, *rows = [CountRow(name=name, counts=tuple(counts)) for name, counts in told["rows"]]
    return Sight(
        begins=datetime.fromisoformat(str(told["begins"])),
        ends=datetime.fromisoformat(str(told["ends"])),
        legend=dict(told["legend"]),
        counts=NightCounts(
            call=str(told["call"]),
            columns=tuple(told["columns"]),
            rows=tuple(rows),
            total=total,
            notes=tuple(told["notes"]),
        ),
    )
