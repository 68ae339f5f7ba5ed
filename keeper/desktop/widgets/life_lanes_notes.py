"""The lane of what was seen and written in words: a tick a day, the words where there is room."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from itertools import groupby

from PySide6.QtCore import QRectF

from keeper.desktop.type import Use
from keeper.desktop.widgets.life_canvas import Canvas
from keeper.husbandry.events import Remark, RemarkKind
from keeper.language import tr
from keeper.reports.words import word

_LEAST_ROOM_UNITS = (11.0, 9.0)
_CALM = frozenset(
    {RemarkKind.NOTE, RemarkKind.FAECES, RemarkKind.WATER, RemarkKind.SHED_GONE, RemarkKind.PHOTO}
)
"""Everyday things; any other kind is drawn bold, because it may be trouble or a caution."""


@dataclass(frozen=True, slots=True, kw_only=True)
class NotedDay:
    """What was written of one day, as it stands in the lane. loud: not an everyday thing."""

    day: date
    words: str
    loud: bool


def paint_notes(canvas: Canvas) -> None:
    """Ticks and words from left to right; a word is cut before the next tick, never over it."""
    lane, look = canvas.layout.notes, canvas.look
    canvas.lane(lane, tr("notes"))
    remarks = canvas.page.life.remarks
    if not remarks:
        words = tr("none in the book")
        canvas.words(lane.left() + look.u(3, 2), canvas.middle(lane), words, ink="ink3")
    shown = [noted for noted in noted_days(remarks) if canvas.axis.shows(noted.day)]
    for n, noted in enumerate(shown):
        after = canvas.axis.x(shown[n + 1].day) if n + 1 < len(shown) else canvas.axis.right
        _paint_day(canvas, lane, noted, after)


def noted_days(remarks: Sequence[Remark]) -> list[NotedDay]:
    """One for each day that has a remark, in order."""
    days = groupby(sorted(remarks, key=_day), key=_day)
    return [_noted(day, list(told)) for day, told in days]


def _day(remark: Remark) -> date:
    return remark.happened.day


def _noted(day: date, told: Sequence[Remark]) -> NotedDay:
    loud = [remark for remark in told if remark.kind not in _CALM]
    words = "; ".join(_words(remark) for remark in (*loud, *(r for r in told if r not in loud)))
    return NotedDay(day=day, words=words, loud=bool(loud))


def _words(remark: Remark) -> str:
    plain = remark.kind in (RemarkKind.NOTE, RemarkKind.CAUTION)
    kind = "" if plain else f"{word(remark.kind)}: "
    return f"{kind}{remark.text}"


def _paint_day(canvas: Canvas, lane: QRectF, noted: NotedDay, after: float) -> None:
    look, x = canvas.look, canvas.axis.x(noted.day)
    width, top = (3.0, 0.2) if noted.loud else (1.6, 0.42)
    canvas.line("ink", width, x, lane.top() + top * lane.height(), x, lane.bottom())
    left = x + look.u(1.5, 1.2)
    room = after - left - look.u(1)
    if room >= look.u(*_LEAST_ROOM_UNITS):
        use = Use.TABLE_STRONG if noted.loud else Use.TABLE
        ink = "ink" if noted.loud else "ink2"
        canvas.words(left, canvas.middle(lane), noted.words, use=use, ink=ink, room=room)
