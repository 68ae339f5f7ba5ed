"""Tub labels on paper: many to a page in rack order, each with a picture code to scan.

The code is a QR code of ISO/IEC 18004, version 1 at level M: fourteen bytes hold the
sentinel and twelve digits, and a seventh of it may be soiled.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

import segno

from keeper.desktop.paper.page import Box, Drawing, Page
from keeper.reports.tub_label import COLUMNS, ROWS, TubLabel, label_pages

GAP_MM = 2.0
QUIET_MODULES = 4  # ISO/IEC 18004: white of so many modules on every side
CODE_MM = 23.0
NAME_PT = 15.0
_LINE_MM = 5.4


def tub_label_pages(labels: Sequence[TubLabel], printed: str) -> list[Drawing]:
    """One drawing a page."""
    pages = label_pages(labels)
    feet = [f"Printed {printed} · page {n} of {len(pages)}" for n in range(1, len(pages) + 1)]
    return [partial(_draw, labels=p, foot=foot) for p, foot in zip(pages, feet, strict=True)]


def _draw(page: Page, labels: Sequence[TubLabel], foot: str) -> None:
    inside = page.inside
    width = (inside.width - (COLUMNS - 1) * GAP_MM) / COLUMNS
    height = (inside.height - (ROWS - 1) * GAP_MM) / ROWS
    for n, label in enumerate(labels):
        row, column = divmod(n, COLUMNS)
        left = inside.left + column * (width + GAP_MM)
        top = inside.top + row * (height + GAP_MM)
        _label(page, label, Box(left, top, width, height))
    page.foot(foot)


def _label(page: Page, label: TubLabel, box: Box) -> None:
    """Words at the left, the code at the right, a frame to cut along."""
    page.frame(box, thick=0.2)
    code = Box(box.left + box.width - CODE_MM, box.top, CODE_MM, CODE_MM)
    draw_code(page, label.scanned, code)
    left, top, room = box.left + 2, box.top + 1, box.width - CODE_MM - 2
    page.text(Box(left, top, room, _LINE_MM + 1), label.name, pt=NAME_PT, bold=True)
    for n, (words, bold) in enumerate(
        ((label.who, False), (label.kind, False), (label.caution, True))
    ):
        line = Box(left, top + _LINE_MM + 1 + n * _LINE_MM, room, _LINE_MM)
        page.text(line, words, bold=bold)
    foot = Box(left, box.top + box.height - _LINE_MM - 0.6, box.width - 4, _LINE_MM)
    page.text(foot, label.digits)


def draw_code(page: Page, words: str, box: Box) -> None:
    """A QR code that holds *words*, with its quiet margin inside *box*."""
    code = segno.make(words, error="m", micro=False, boost_error=False)
    page.code(box, [list(row) for row in code.matrix], QUIET_MODULES)
