"""The refusal strip on paper: animals in rack order by feed nights, two columns a page."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import partial

from PySide6.QtCore import QPointF, QRectF, Qt

from keeper.desktop.paper.page import Box, Drawing, Page, inside_of
from keeper.desktop.paper.paper_look import PAPER
from keeper.desktop.widgets.rack_legend import LegendItem
from keeper.desktop.widgets.refusal_strip import StripBlock, StripLine, StripPicture
from keeper.desktop.widgets.tile import TileState, paint_small
from keeper.language import tr

COLUMNS = 2
HEAD_MM, LEGEND_MM, LINE_MM, FOOT_MM = 10.0, 7.0, 5.3, 13.0
TITLE_PT = 16.0
_GAP_MM, _LABEL_MM, _TOTAL_MM = 6.0, 35.0, 16.0
_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
_MIDDLE = Qt.AlignmentFlag.AlignCenter


@dataclass(frozen=True, slots=True, kw_only=True)
class RefusalPages:
    """What is printed: the picture as the window has it, its legend, and when."""

    title: str
    picture: StripPicture
    legend: Sequence[LegendItem]
    printed: str


def refusal_pages(told: RefusalPages) -> list[Drawing]:
    """One drawing a page. Raises LookupError where there is no night to show."""
    if not told.picture.nights or not told.picture.blocks:
        raise LookupError(tr("No feed night is in the book yet; there is nothing to print."))
    columns = list(_columns(told.picture.blocks, lines_a_column(inside_of().height)))
    sheets = [columns[n : n + COLUMNS] for n in range(0, len(columns), COLUMNS)]
    return [
        partial(_draw, told=told, columns=sheet, number=n, count=len(sheets))
        for n, sheet in enumerate(sheets, start=1)
    ]


_Column = list[StripBlock | StripLine]


def lines_a_column(high_mm: float) -> int:
    """How many lines stand between the legend and the totals of a page *high_mm* inside.

    >>> lines_a_column(271.0), lines_a_column(253.4)
    (43, 40)
    """
    return int((high_mm - HEAD_MM - 2 * LEGEND_MM - FOOT_MM - 2) / LINE_MM)


def _columns(blocks: Sequence[StripBlock], lines: int) -> Iterator[_Column]:
    """Lines filled down columns; the name of a row stands over one of its animals at least."""
    column: _Column = []
    for block in blocks:
        for n, line in enumerate(block.lines):
            if len(column) + (2 if n == 0 else 1) > lines:
                yield column
                column = []
            if n == 0 or not column:
                column.append(block)
            column.append(line)
    if column:
        yield column


def _draw(
    page: Page, told: RefusalPages, columns: Sequence[_Column], number: int, count: int
) -> None:
    inside = page.inside
    page.text(Box(inside.left, inside.top, inside.width, HEAD_MM - 2), told.title, pt=TITLE_PT)
    _legend(page, told.legend, inside.top + HEAD_MM - 1)
    width = (inside.width - (COLUMNS - 1) * _GAP_MM) / COLUMNS
    top = inside.top + HEAD_MM + 2 * LEGEND_MM
    for n, column in enumerate(columns):
        left = inside.left + n * (width + _GAP_MM)
        for row, line in enumerate(column):
            box = Box(left, top + row * LINE_MM, width, LINE_MM)
            if isinstance(line, StripBlock):
                _row_name(page, line, box)
            else:
                _animal(page, line, box)
    _totals(page, told.picture, inside.top + inside.height - FOOT_MM)
    page.foot(
        tr(
            "Printed {moment} · page {page} of {pages}",
            moment=told.printed,
            page=number,
            pages=count,
        )
    )


def _legend(page: Page, legend: Sequence[LegendItem], top: float) -> None:
    """Every kind of night, four in a line."""
    width = page.inside.width / 4
    for n, item in enumerate(legend):
        left, y = page.inside.left + n % 4 * width, top + n // 4 * LEGEND_MM
        _cell(page, Box(left, y + 1, 6, LEGEND_MM - 2.4), item.look)
        page.text(Box(left + 7.5, y, width - 8, LEGEND_MM - 0.6), f"{item.words} {item.count}")


def _row_name(page: Page, block: StripBlock, box: Box) -> None:
    page.text(box, block.name, bold=True)
    page.text(box, block.total, bold=block.loud, align=_RIGHT)
    page.rule(box)


def _animal(page: Page, line: StripLine, box: Box) -> None:
    page.text(Box(box.left, box.top, _LABEL_MM - 1, box.height), line.label)
    page.text(Box(box.left, box.top, box.width, box.height), line.total, align=_RIGHT)
    wide = (box.width - _LABEL_MM - _TOTAL_MM) / max(1, len(line.states))
    for n, state in enumerate(line.states):
        if state is not None:
            left = box.left + _LABEL_MM + n * wide
            _cell(page, Box(left, box.top + 0.6, wide - 0.5, box.height - 1.2), state)


def _cell(page: Page, box: Box, state: TileState) -> None:
    with page.picture(box) as (painter, size):
        paint_small(painter, QRectF(QPointF(0, 0), size), state, PAPER)


def _totals(page: Page, picture: StripPicture, top: float) -> None:
    """Refused of offered in the whole house, night by night."""
    inside = page.inside
    page.rule(Box(inside.left, top - 1, inside.width, 0), thick=0.4)
    wide = inside.width / (len(picture.nights) + 1)
    page.text(Box(inside.left, top + 5.5, wide, 6), tr("the house"))
    for n, (night, total) in enumerate(zip(picture.nights, picture.totals, strict=True), start=1):
        left = inside.left + n * wide
        page.text(Box(left, top, wide, 5.5), night, align=_MIDDLE)
        page.text(Box(left, top + 5.5, wide, 6), total, align=_MIDDLE)
