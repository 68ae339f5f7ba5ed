"""The pairing calendar on paper: the year as it is drawn in the window, and all of it in words."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from functools import partial
from math import ceil
from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, QSizeF
from PySide6.QtGui import QPainter

from keeper.actions.keeping import Keeping
from keeper.actions.pairing_calendar import PairingCalendar
from keeper.actions.pairing_told import told_of
from keeper.desktop.paper.flow import HEAD_MM, Artist, document_pages
from keeper.desktop.paper.page import inside_of
from keeper.desktop.paper.paper_look import PaperLook
from keeper.desktop.paper.printing import Sheets, printed_words
from keeper.desktop.screens.pairing_faces import Shown, ground_of, shown_rows, week_faces
from keeper.desktop.screens.pairing_words import away_words, gates_told, weeks_told
from keeper.desktop.widgets.pairing_frame import (
    foot_height,
    head_height,
    paint_calendar_foot,
    paint_calendar_head,
)
from keeper.desktop.widgets.pairing_legend import legend_height, paint_legend
from keeper.desktop.widgets.pairing_row import paint_row
from keeper.desktop.widgets.pairing_shape import CalendarColumns, row_height
from keeper.language import tr
from keeper.reports.figures import day, plain
from keeper.reports.paper_parts import Document, Heading, Part, Picture, Words

if TYPE_CHECKING:
    from keeper.actions.forecasting import WeightForecast

_PX_A_MM = 96.0 / 25.4


def calendar_sheets(
    keeping: Keeping, calendar: PairingCalendar, forecasts: Mapping[int, WeightForecast]
) -> Sheets:
    """The whole calendar, upright. Raises LookupError where no female stands on it."""
    shown = shown_rows(calendar, forecasts)
    if not shown:
        raise LookupError(tr("No female stands on the calendar; there is nothing to print."))
    blocks = _blocks(shown)
    document = Document(
        title=tr("Pairing calendar"),
        aside=plain(tr("{first} to {last}", first=day(calendar.first), last=day(calendar.last))),
        printed=printed_words(keeping),
        parts=(
            *(_picture(number, block) for number, block in enumerate(blocks)),
            *_words(calendar, shown, forecasts),
        ),
    )
    artists: dict[str, Artist] = {
        f"rows {number}": partial(_draw_rows, calendar=calendar, block=block)
        for number, block in enumerate(blocks)
    }
    stem = f"pairing-calendar-{calendar.on.isoformat()}"
    return Sheets(title=document.title, stem=stem, pages=document_pages(document, artists))


def _blocks(shown: Sequence[Shown]) -> list[Sequence[Shown]]:
    """As many rows as stand on a page with head, foot and legend, about as many on each."""
    most = int((inside_of().height - HEAD_MM - _high_mm(0)) * _PX_A_MM / row_height(PaperLook()))
    pages = ceil(len(shown) / most)
    each = ceil(len(shown) / pages)
    return [shown[n : n + each] for n in range(0, len(shown), each)]


def _high_mm(rows: int) -> float:
    """Of so many rows with their head, foot and legend."""
    look = PaperLook()
    high = head_height(look) + rows * row_height(look) + foot_height(look)
    return high / _PX_A_MM + legend_height(look, inside_of().width * _PX_A_MM) / _PX_A_MM


def _picture(number: int, block: Sequence[Shown]) -> Picture:
    return Picture(name=f"rows {number}", high_mm=_high_mm(len(block)))


def _draw_rows(
    painter: QPainter, size: QSizeF, *, calendar: PairingCalendar, block: Sequence[Shown]
) -> None:
    """Head, some of the rows, foot and legend, as wide as the page and as high as asked."""
    look, ground, wide = PaperLook(), ground_of(calendar), size.width()
    columns = CalendarColumns.of(look, wide, calendar.first, len(calendar.weeks), left=0.0)
    painter.scale(1.0, min(1.0, size.height() / (_high_mm(len(block)) * _PX_A_MM)))
    top = head_height(look)
    paint_calendar_head(painter, QRectF(0, 0, wide, top), columns, ground, look)
    for _, face in block:
        paint_row(painter, QRectF(0, top, wide, row_height(look)), face, columns, ground, look)
        top += row_height(look)
    foot = QRectF(0, top, wide, foot_height(look))
    paint_calendar_foot(painter, foot, week_faces(calendar), columns, ground, look)
    paint_legend(painter, QRectF(0, foot.bottom(), wide, legend_height(look, wide)), look)


def _words(
    calendar: PairingCalendar,
    shown: Sequence[Shown],
    forecasts: Mapping[int, WeightForecast],
) -> Iterator[Part]:
    """Each female in sentences, the absences, and the figures of the weeks."""
    for absence in calendar.absences:
        yield Words(words=plain(away_words(absence)))
    yield Words(words=plain(weeks_told(calendar)))
    for row, _ in shown:
        animal = row.female.animal
        yield Heading(words=plain(animal.place_and_name))
        within = [
            told.words
            for told in told_of(row, calendar)
            if told.meets(calendar.first, calendar.last)
        ]
        gates = gates_told(row, forecasts.get(row.animal), calendar.on)
        yield Words(words=plain(" ".join((*dict.fromkeys(within), f"{gates.head}: {gates.words}"))))
