"""The round while none is open: what tonight asks, rack by rack, and what the last one left."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from datetime import date

from PySide6.QtCore import QRectF
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from keeper.actions.due_board import DueRow
from keeper.actions.rounds import Walk
from keeper.actions.tubs import Tub, tub_name
from keeper.desktop.look import Look
from keeper.desktop.screens.round_view import meanings
from keeper.desktop.widgets.night_counts import CountRow, CountsTable, NightCounts
from keeper.desktop.widgets.pad import PadLegend
from keeper.desktop.widgets.words_line import HeadLine
from keeper.husbandry.events import Result
from keeper.husbandry.place import place_of
from keeper.reports.figures import counted, day

STATES = ("due", "hold", "not due", "cannot tell")
_DAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
_NAMED_MOST = 8
_tubs = counted("tub", "tubs")
_nights = counted("feed night", "feed nights")


def night_words(night: date) -> str:
    r"""The night as the keeper calls it.

    >>> night_words(date(2026, 11, 25)).replace("\u00a0", " ")
    'Wed 25 Nov'
    """
    return f"{_DAYS[night.weekday()]} {day(night, night)}"


def quiet_counts(
    rows: Sequence[DueRow], night: date, last: Walk | None, missing: int = 0
) -> NightCounts:
    """What the quiet page says of tonight, of the last round and of nights without a record."""
    by_rack: dict[str, Counter[str]] = {}
    for row in rows:
        by_rack.setdefault(_rack(row.animal.place), Counter())[row.plan.state.value] += 1
    total: Counter[str] = sum(by_rack.values(), Counter())
    call = f"Enter begins the round of {night_words(night)}"
    return NightCounts(
        call=call if rows else "No animal stands in a tub: take in your records first",
        columns=STATES,
        rows=tuple(_counted(name, counts) for name, counts in by_rack.items()),
        total=_counted("all", total),
        notes=(*(last_words(last) if last else ()), *missing_words(missing)),
    )


def missing_words(missing: int) -> tuple[str, ...]:
    """How many feed nights have no record, and where they are answered."""
    return (f"{_nights(missing)} without a record; Ctrl+Y.",) if missing else ()


def left_in(walk: Walk) -> list[Tub]:
    """Tubs of a round whose prey nobody has looked for."""
    return [t for t in walk.tubs if t.offer and t.offer.event.result is Result.LEFT_IN]


def last_words(last: Walk) -> tuple[str, ...]:
    """What the last round left open, in one or two sentences."""
    missed = [tub for tub in last.tubs if tub.open]
    waiting = left_in(last)
    told = f"Last round, {night_words(last.night)}:"
    if not missed and not waiting:
        return (f"{told} every tub was reached and looked at.",)
    said = []
    if missed:
        said.append(f"{told} {_tubs(len(missed))} not reached, still due: {_named(missed)}.")
    if waiting:
        said.append(f"{told} {_tubs(len(waiting))} left in, result open: {_named(waiting)}.")
        said.append("5 goes through the tubs left in and says gone or still there.")
    return tuple(said)


class QuietView(QWidget):
    """Head line, counts and pad, the pad where the walking page has it."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.look = look
        self.pad = PadLegend(look)
        self._head = HeadLine(look)
        self._table = CountsTable(look)
        self._body = QWidget()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self._head)
        column.addWidget(self._body, 1)
        for child in (self._table, self.pad):
            child.setParent(self._body)
        look.changed.connect(self._lay_out)

    def show_counts(self, counts: NightCounts, legend: Mapping[str, str]) -> None:
        """Show *counts* and what the pad does now."""
        due = dict(zip(counts.columns, counts.total.counts, strict=True)).get("due", 0)
        self._head.show_words("Round", (("none open", False),), (f"{due} due tonight",))
        self._table.show_counts(counts)
        self.pad.show_meanings(meanings(legend, frozenset()))
        self._lay_out()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._lay_out()

    def _lay_out(self) -> None:
        look, body = self.look, QRectF(self._body.rect())
        margin, gutter, side = look.u(7, 3.5), look.u(8.5, 4), look.u(102.5, 78)
        high = look.u(70, 60)
        left = body.width() - margin - side
        self._table.setGeometry(
            QRectF(margin, look.u(4), left - gutter - margin, body.height() - look.u(7)).toRect()
        )
        top = body.height() - look.u(3, 2) - high
        self.pad.setGeometry(QRectF(left, top, side, high).toRect())


def _counted(name: str, counts: Mapping[str, int]) -> CountRow:
    return CountRow(name=name, counts=tuple(counts.get(state, 0) for state in STATES))


def _named(tubs: Sequence[Tub]) -> str:
    names = ", ".join(tub_name(tub) for tub in tubs[:_NAMED_MOST])
    more = len(tubs) - _NAMED_MOST
    return f"{names} and {more} more" if more > 0 else names


def _rack(place: str | None) -> str:
    found = place_of(place or "")
    return found.rack if found else "other"
