"""The lane of what was seen, given and written: a tick a day, the words where there is room."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from itertools import groupby

from PySide6.QtCore import QRectF

from keeper.actions.care_words import care_words
from keeper.actions.gene_words import gene_words
from keeper.desktop.type import Use
from keeper.desktop.widgets.life_canvas import Canvas
from keeper.husbandry.about import AnimalEvent
from keeper.husbandry.care import Dose, DoseTold, FaecalResult, FaecalTest, Medicine
from keeper.husbandry.events import Cleaned, Remark, RemarkKind
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
    life = canvas.page.life
    told = [*life.remarks, *(each for each in life.care if not isinstance(each, Cleaned))]
    if not told:
        words = tr("none in the book")
        canvas.words(lane.left() + look.u(3, 2), canvas.middle(lane), words, ink="ink3")
    shown = [noted for noted in noted_days(told) if canvas.axis.shows(noted.day)]
    for n, noted in enumerate(shown):
        after = canvas.axis.x(shown[n + 1].day) if n + 1 < len(shown) else canvas.axis.right
        _paint_day(canvas, lane, noted, after)


def noted_days(told: Sequence[AnimalEvent]) -> list[NotedDay]:
    """One for each day that has a remark or something of care, in order."""
    days = groupby(sorted(told, key=_day), key=_day)
    return [_noted(day, list(found)) for day, found in days]


def _day(event: AnimalEvent) -> date:
    return event.happened.day


def _noted(day: date, told: Sequence[AnimalEvent]) -> NotedDay:
    loud = [event for event in told if not _is_calm(event)]
    words = "; ".join(_words(event) for event in (*loud, *(e for e in told if e not in loud)))
    return NotedDay(day=day, words=words, loud=bool(loud))


def _is_calm(event: AnimalEvent) -> bool:
    match event:
        case Remark():
            return event.kind in _CALM
        case Dose():
            return event.told is DoseTold.GIVEN
        case FaecalTest():
            return event.result is not FaecalResult.FOUND
    return not isinstance(event, Medicine)


def _words(event: AnimalEvent) -> str:
    if not isinstance(event, Remark):
        return care_words(event) or gene_words(event)
    plain = event.kind in (RemarkKind.NOTE, RemarkKind.CAUTION)
    kind = "" if plain else f"{word(event.kind)}: "
    return f"{kind}{event.text}"


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
