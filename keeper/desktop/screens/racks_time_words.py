"""The time-line's legend and head line."""

from __future__ import annotations

from collections import Counter

from keeper.actions.time_line import MarkKind, RackTime
from keeper.desktop.widgets.life_view import LifeView
from keeper.desktop.widgets.time_line_faces import FACES, MARK_WORDS, StayState
from keeper.desktop.widgets.time_line_legend import TimeKey
from keeper.language import tr
from keeper.reports.figures import GAP, counted, day

_STAYS = (
    StayState.CHOSEN,
    StayState.SHARED,
    StayState.OTHER,
    StayState.APART,
    StayState.EMPTY,
    StayState.UNKNOWN,
)
_days = counted("day", "days")


def time_legend(told: RackTime) -> list[TimeKey]:
    """Every look of a stay, and the marks that are in this rack with how often."""
    counts = Counter(mark.kind for mark in told.marks)
    stays = [TimeKey(look=state, words=FACES[state].words) for state in _STAYS]
    marks = [
        TimeKey(look=kind, words=MARK_WORDS[kind], count=counts[kind])
        for kind in MarkKind
        if counts[kind]
    ]
    return [*stays, *marks]


def rack_called(told: RackTime) -> str:
    """The rack in words."""
    if not told.letter:
        return tr("Time-line of those in no rack")
    return tr("Time-line of rack {rack}", rack=told.letter)


def span_words(view: LifeView) -> str:
    """The days in view, and the keys that change them."""
    return tr(
        "{first} to {last}, {days}   + − nearer and further   T the racks",
        first=day(view.first),
        last=day(view.last),
        days=_days(view.span_days + 1).replace(GAP, " "),
    )
