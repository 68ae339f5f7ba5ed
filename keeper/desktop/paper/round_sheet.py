"""The round sheet on paper: one line a tub, a stroke in one box for what was not as planned."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Qt

from keeper.desktop.paper.page import Box, Drawing, Page
from keeper.language import tr
from keeper.reports.round_sheet import BOXES, HEADS, LEGEND, RoundSheet, RowEnd, SheetLine

HEAD_MM, LEGEND_MM, NAMES_MM = 11.0, 6.5, 6.5
LINE_MOST_MM = 8.0
CODE_PT = 16.0
_WIDTHS_MM = (9.0, 14.0, 22.0, 7.5, 13.5, 57.0, 12.0, 6.8, 6.8, 6.8, 6.8, 12.5)
"""Every column but the last, the note, which takes what is left."""

_EATEN, _PLAN, _TAKEN = 4, 5, 6
_GAP, _CAUTION_GAP = 1.0, 2.0
_LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
_MIDDLE = Qt.AlignmentFlag.AlignCenter


def round_sheet_pages(sheet: RoundSheet) -> list[Drawing]:
    """One drawing a page."""
    return [partial(_draw, sheet=sheet, number=n) for n in range(1, len(sheet.pages) + 1)]


def _draw(page: Page, sheet: RoundSheet, number: int) -> None:
    inside = page.inside
    _head(page, sheet)
    top = inside.top + HEAD_MM + LEGEND_MM
    columns = _columns(inside)
    _names(page, columns, top)
    top += NAMES_MM
    room = inside.top + inside.height - top
    parts = sheet.pages[number - 1]
    crowded = max(len(part) for part in sheet.pages)
    height = min(LINE_MOST_MM, room / crowded)
    for part in parts:
        strip = Box(inside.left, top, inside.width, height)
        if isinstance(part, SheetLine):
            _line(page, part, columns, strip)
        else:
            _row_end(page, part, strip)
        top += height
    page.foot(sheet.foot(number))


def _head(page: Page, sheet: RoundSheet) -> None:
    inside = page.inside
    head = Box(inside.left, inside.top, inside.width, HEAD_MM - 2)
    page.text(head, sheet.title, pt=CODE_PT, bold=True)
    page.text(head, sheet.code, pt=CODE_PT, bold=True, align=_RIGHT)
    legend = Box(inside.left, inside.top + HEAD_MM - 2, inside.width, LEGEND_MM)
    page.text(legend, tr("One stroke in a box: {legend}.", legend=LEGEND))
    page.text(legend, sheet.keeper, align=_RIGHT)


def _columns(inside: Box) -> list[tuple[float, float]]:
    """Left edge and width of each column."""
    left, columns = inside.left, []
    for width in (*_WIDTHS_MM, inside.width - sum(_WIDTHS_MM)):
        columns.append((left, width))
        left += width
    return columns


def _names(page: Page, columns: list[tuple[float, float]], top: float) -> None:
    for n, ((left, width), name) in enumerate(zip(columns, HEADS, strict=True)):
        boxed = _TAKEN <= n < _TAKEN + len(BOXES)
        cell = Box(left, top, width - (0 if boxed else _GAP), NAMES_MM)
        page.text(cell, name, bold=boxed, align=_MIDDLE if boxed else _LEFT)
    (left, _), (last, width) = columns[0], columns[-1]
    page.rule(Box(left, top, last + width - left, NAMES_MM), thick=0.4)


def _line(page: Page, line: SheetLine, columns: list[tuple[float, float]], strip: Box) -> None:
    if not line.walked:
        page.fill(strip)
    for n, words in enumerate(line.cells):
        left, width = columns[n]
        gap = _CAUTION_GAP if n == _EATEN else _GAP
        cell = Box(left, strip.top, width - gap, strip.height)
        page.text(cell, words, bold=n == 0, align=_RIGHT if n == _EATEN else _LEFT)
    _plan(page, line, Box(columns[_PLAN][0], strip.top, columns[_PLAN][1] - _GAP, strip.height))
    if line.walked:
        for left, width in columns[_TAKEN : _TAKEN + len(BOXES)]:
            page.frame(_square(left, width, strip))
    page.rule(strip)


def _plan(page: Page, line: SheetLine, cell: Box) -> None:
    """The plan, and behind it the caution, which is never the one to be cut short."""
    caution = page.width_of(line.caution, bold=True) if line.caution else 0.0
    room = max(cell.width - (caution + _CAUTION_GAP if caution else 0.0), 0.0)
    used = page.text(Box(cell.left, cell.top, room, cell.height), line.plan)
    left = cell.left + (used + _CAUTION_GAP if used else 0.0)
    rest = Box(left, cell.top, cell.left + cell.width - left, cell.height)
    page.text(rest, line.caution, bold=True)


def _square(left: float, width: float, strip: Box) -> Box:
    side = min(width, strip.height) - 1.2
    return Box(left + (width - side) / 2, strip.top + (strip.height - side) / 2, side, side)


def _row_end(page: Page, end: RowEnd, strip: Box) -> None:
    side = strip.height - 1.2
    box = Box(strip.left + strip.width - side - 1, strip.top + 0.6, side, side)
    page.frame(box, thick=0.6)
    words = Box(strip.left, strip.top, strip.width - side - 4, strip.height)
    page.text(words, end.words, bold=True, align=_RIGHT)
    page.rule(strip, thick=0.5)
