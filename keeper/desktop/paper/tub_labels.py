"""Tub labels on paper: many to a page in rack order, each with a picture code to scan.

The code is a QR code of ISO/IEC 18004, version 1 at level M: fourteen bytes hold the
sentinel and twelve digits, or a place of a rack, and a seventh of it may be soiled.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

import segno

from keeper.desktop.paper.page import Box, Drawing, Page, inside_of
from keeper.language import tr
from keeper.reports.tub_label import Label, PlaceLabel, TubLabel, label_pages

COLUMNS = 3
GAP_MM = 2.0
LEAST_MM = 27.5
"""A label is no lower than this: its four lines of 12 points and the digits need the room."""

QUIET_MODULES = 4  # ISO/IEC 18004: white of so many modules on every side
CODE_MM = 23.0
NAME_PT, PLACE_PT = 15.0, 34.0
_LINE_MM = 5.4


def labels_a_page() -> int:
    """How many labels stand on a sheet of the paper in use."""
    return COLUMNS * _rows(inside_of())


def tub_label_pages(labels: Sequence[Label], printed: str, first: int = 1) -> list[Drawing]:
    """One drawing a page. first: the first label of the first sheet that is still there."""
    pages = label_pages(labels, labels_a_page(), first)
    return [
        partial(_draw, labels=page, foot=_foot_words(printed, number, len(pages)))
        for number, page in enumerate(pages, start=1)
    ]


def _foot_words(printed: str, number: int, pages: int) -> str:
    return tr("Printed {moment} · page {page} of {pages}", moment=printed, page=number, pages=pages)


def _rows(inside: Box) -> int:
    return int((inside.height + GAP_MM) / (LEAST_MM + GAP_MM))


def _draw(page: Page, labels: Sequence[Label | None], foot: str) -> None:
    inside, rows = page.inside, _rows(page.inside)
    width = (inside.width - (COLUMNS - 1) * GAP_MM) / COLUMNS
    height = (inside.height - (rows - 1) * GAP_MM) / rows
    for n, label in enumerate(labels):
        row, column = divmod(n, COLUMNS)
        left = inside.left + column * (width + GAP_MM)
        top = inside.top + row * (height + GAP_MM)
        box = Box(left, top, width, height)
        if isinstance(label, TubLabel):
            _label(page, label, box)
        elif isinstance(label, PlaceLabel):
            _place(page, label, box)
    page.foot(foot)


def _label(page: Page, label: TubLabel, box: Box) -> None:
    """Words at the left, the code at the right, a frame to cut along."""
    left, room = _begun(page, label.scanned, box)
    top = box.top + 1
    page.text(Box(left, top, room, _LINE_MM + 1), label.name, pt=NAME_PT, bold=True)
    for n, (words, bold) in enumerate(
        ((label.who, False), (label.kind, False), (label.caution, True))
    ):
        line = Box(left, top + _LINE_MM + 1 + n * _LINE_MM, room, _LINE_MM)
        page.text(line, words, bold=bold)
    page.text(_foot(left, box), label.digits)


def _place(page: Page, label: PlaceLabel, box: Box) -> None:
    """The place as large as it goes, to be read from where the keeper stands."""
    left, room = _begun(page, label.scanned, box)
    page.text(Box(left, box.top + 3, room, 15), label.place, pt=PLACE_PT, bold=True)
    page.text(_foot(left, box), label.told)


def _begun(page: Page, scanned: str, box: Box) -> tuple[float, float]:
    """The frame and the code; returns where words begin and their room."""
    page.frame(box, thick=0.2)
    code = Box(box.left + box.width - CODE_MM, box.top, CODE_MM, CODE_MM)
    draw_code(page, scanned, code)
    return box.left + 2, box.width - CODE_MM - 2


def _foot(left: float, box: Box) -> Box:
    return Box(left, box.top + box.height - _LINE_MM - 0.6, box.width - 4, _LINE_MM)


def draw_code(page: Page, words: str, box: Box) -> None:
    """A QR code that holds *words*, with its quiet margin inside *box*."""
    code = segno.make(words, error="m", micro=False, boost_error=False)
    page.code(box, [list(row) for row in code.matrix], QUIET_MODULES)
