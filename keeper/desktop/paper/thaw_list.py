"""The thaw list on paper: how much of each grade, the times, and the cautions."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import partial

from PySide6.QtCore import Qt

from keeper.desktop.paper.page import Box, Drawing, Page
from keeper.language import tr
from keeper.reports.thaw_list import HEADS, ThawLine, ThawList

TITLE_MM, NAMES_MM, LINE_MM, GAP_MM = 12.0, 7.0, 9.0, 5.0
GRADES_A_PAGE = 12
TITLE_PT, THAW_PT = 16.0, 16.0
_WIDTHS_MM = (40.0, 20.0, 16.0, 26.0, 18.0, 32.0)
_THAW = 4
_LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter


def thaw_list_pages(listed: ThawList) -> list[Drawing]:
    """One drawing a page: the grades, and on the last the times and cautions."""
    cuts = range(0, max(len(listed.lines), 1), GRADES_A_PAGE)
    return [partial(_draw, listed=listed, first=n, pages=len(cuts)) for n in cuts]


@dataclass(slots=True)
class _Pen:
    """Where the next line goes."""

    page: Page
    top: float

    def text(self, words: str, height: float, *, pt: float = 12.0, bold: bool = False) -> None:
        inside = self.page.inside
        cell = Box(inside.left, self.top, inside.width, height)
        self.page.text(cell, words, pt=pt, bold=bold)
        self.top += height

    def wrapped(self, words: str, mark: str = "") -> None:
        inside, indent = self.page.inside, 6.0 if mark else 0.0
        height = self.page.height_of(words, inside.width - indent)
        if mark:
            self.page.frame(Box(inside.left, self.top + 1, 3.6, 3.6))
        cell = Box(inside.left + indent, self.top, inside.width - indent, height)
        self.page.text(cell, words, wrap=True)
        self.top += height + 1.5


def _draw(page: Page, listed: ThawList, first: int, pages: int) -> None:
    pen = _Pen(page, page.inside.top)
    pen.text(listed.title, TITLE_MM, pt=TITLE_PT, bold=True)
    _table(pen, listed.lines[first : first + GRADES_A_PAGE])
    number = first // GRADES_A_PAGE + 1
    if number == pages:
        _rest(pen, listed)
    page.foot(listed.foot(number, pages))


def _table(pen: _Pen, lines: Sequence[ThawLine]) -> None:
    inside = pen.page.inside
    _cells(pen.page, pen.top, NAMES_MM, HEADS, bold=False)
    pen.page.rule(Box(inside.left, pen.top, inside.width, NAMES_MM), thick=0.4)
    pen.top += NAMES_MM
    for line in lines:
        _cells(pen.page, pen.top, LINE_MM, line.cells, bold=True)
        pen.page.rule(Box(inside.left, pen.top, inside.width, LINE_MM))
        pen.top += LINE_MM
    if not lines:
        pen.text(tr("Nothing is planned for this night."), LINE_MM)
    pen.top += GAP_MM


def _cells(page: Page, top: float, height: float, words: Sequence[str], *, bold: bool) -> None:
    left = page.inside.left
    widths = (*_WIDTHS_MM, page.inside.width - sum(_WIDTHS_MM))
    for n, (width, said) in enumerate(zip(widths, words, strict=True)):
        strong = bold and n in (0, _THAW)
        number = 0 < n < len(_WIDTHS_MM)
        page.text(
            Box(left + (4 if n == len(_WIDTHS_MM) else 0), top, width - 2, height),
            said,
            pt=THAW_PT if bold and n == _THAW else 12.0,
            bold=strong,
            align=_RIGHT if number else _LEFT,
        )
        left += width


def _rest(pen: _Pen, listed: ThawList) -> None:
    for note in listed.notes:
        pen.wrapped(note)
    pen.top += GAP_MM
    pen.text(tr("Times"), 8.0, bold=True)
    for each in listed.times:
        pen.wrapped(each, mark="box")
    pen.top += GAP_MM
    pen.text(tr("Caution (common practice)"), 8.0, bold=True)
    for each in listed.cautions:
        pen.wrapped(each)
