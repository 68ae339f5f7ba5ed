"""A rack through time on paper: its tubs by days in black and grey, then what is told of a tub."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from math import ceil

from PySide6.QtCore import QRectF, QSizeF
from PySide6.QtGui import QPainter

from keeper.actions.time_line_told import Told
from keeper.desktop.paper.flow import (
    A4_INSIDE_MM,
    AIR_MM,
    HEAD_MM,
    Artist,
    document_pages,
)
from keeper.desktop.paper.page import Drawing, inside_of
from keeper.desktop.paper.paper_look import PaperLook
from keeper.desktop.screens.racks_time_words import rack_called, time_legend
from keeper.desktop.widgets.time_line_legend import TimeKey, paint_key
from keeper.desktop.widgets.time_line_paint import paint_time
from keeper.desktop.widgets.time_line_sheet import Shown, time_sheet, used_height
from keeper.language import tr
from keeper.reports.figures import day, plain
from keeper.reports.paper_parts import Document, Facts, Heading, Part, Picture, Words

LEGEND, TUBS = "legend", "tubs"
LEGEND_COLUMNS, LEGEND_LINE_MM = 3, 6.4
_PX_A_MM = 96.0 / 25.4


@dataclass(frozen=True, slots=True, kw_only=True)
class TimePages:
    """What is printed: the rack as it is in view, what is told of the chosen tub, and when."""

    shown: Shown
    told: Told
    printed: str


def time_pages(told: TimePages) -> list[Drawing]:
    """The legend, every tub of the rack, and beneath them the sentences of the chosen one."""
    keys = time_legend(told.shown.told)
    legend_mm = ceil(len(keys) / LEGEND_COLUMNS) * LEGEND_LINE_MM + AIR_MM
    pictures: dict[str, Artist] = {LEGEND: _legend(keys)}
    parts: list[Part] = [_picture(LEGEND, legend_mm)]
    for number, (part, high_mm) in enumerate(_cut(told.shown, legend_mm), start=1):
        name = f"{TUBS} {number}"
        pictures[name] = _tubs(part)
        parts.append(_picture(name, high_mm))
    document = Document(
        title=rack_called(told.shown.told),
        aside=_span(told.shown),
        printed=told.printed,
        parts=(*parts, *_sentences(told.told)),
    )
    return document_pages(document, pictures)


def _picture(name: str, high_mm: float) -> Picture:
    """One that is so high on the paper in use."""
    share = min(1.0, inside_of().height / A4_INSIDE_MM)
    return Picture(name=name, high_mm=high_mm / share)


def _span(shown: Shown) -> str:
    first, last = plain(day(shown.view.first)), plain(day(shown.view.last))
    return tr("{first} to {last}", first=first, last=last)


def _sentences(told: Told) -> Iterator[Part]:
    yield Heading(words=f"{told.head}, {plain(told.aside)}")
    for para in told.paras:
        text = plain(para.text)
        yield Facts(rows=((para.head, text),)) if para.head else Words(words=text)


def _cut(shown: Shown, legend_mm: float) -> Iterator[tuple[Shown, float]]:
    """The tubs of the rack a page at a time, and how high each part stands."""
    inside = inside_of()
    first = 0
    while first < len(shown.told.tubs):
        room_mm = inside.height - HEAD_MM - (legend_mm if first == 0 else 0.0) - AIR_MM
        part = replace(shown, first=first, tub=first, exact=True)
        width, room = inside.width * _PX_A_MM, room_mm * _PX_A_MM
        sheet = time_sheet(PaperLook(), part, width, room)
        yield part, used_height(sheet) / _PX_A_MM + AIR_MM + 0.1
        first = sheet.page.last


def _tubs(part: Shown) -> Artist:
    def paint(painter: QPainter, size: QSizeF) -> None:
        look = PaperLook()
        paint_time(painter, look, part, time_sheet(look, part, size.width(), size.height()))

    return paint


def _legend(keys: Sequence[TimeKey]) -> Artist:
    """Three in a line."""

    def paint(painter: QPainter, size: QSizeF) -> None:
        look = PaperLook()
        wide, high = size.width() / LEGEND_COLUMNS, LEGEND_LINE_MM * _PX_A_MM
        for n, key in enumerate(keys):
            line, column = divmod(n, LEGEND_COLUMNS)
            paint_key(painter, QRectF(column * wide, line * high, wide, high), key, look)

    return paint
