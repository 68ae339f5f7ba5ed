"""The look of paper: black and greys on white, type in px of 96 dpi so that it scales evenly."""

from __future__ import annotations

from math import ceil

from PySide6.QtGui import QFont

from keeper.desktop.light import Palette
from keeper.desktop.look import Look
from keeper.desktop.paper.page import LEAST_PT
from keeper.desktop.type import Use

PAPER = Palette(
    name="Paper",
    ground="#FFFFFF",
    sheet="#FFFFFF",
    ink="#000000",
    ink2="#000000",
    ink3="#1C1C1C",
    line="#6E6E6E",
    hair="#C8C8C8",
    fill1="#D6D6D6",
    fill2="#8C8C8C",
    fill3="#505050",
    band1="#E6E6E6",
    band2="#CFCFCF",
    point="#000000",
    on_point="#FFFFFF",
    is_dark=False,
)

_PX_A_POINT = 96.0 / 72.0


class PaperLook(Look):
    """What the window's painters are given to draw on a page; nothing is under 12 points."""

    @property
    def palette(self) -> Palette:
        return PAPER

    def font(self, use: Use) -> QFont:
        made = super().font(use)
        points = max(made.pointSizeF(), LEAST_PT)
        made.setPixelSize(ceil(points * _PX_A_POINT))
        made.setFeature(QFont.Tag("liga"), 0)  # a ligature has no letters when a PDF is read back
        return made
