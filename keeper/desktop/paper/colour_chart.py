"""The picture of colour across generations on paper, as it looks in the window."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSizeF
from PySide6.QtGui import QPainter

from keeper.desktop.paper.flow import Artist
from keeper.desktop.paper.paper_look import PaperLook
from keeper.desktop.widgets.generations import paint_generations
from keeper.reports.colour_facts import ColourFacts


def colour_artist(facts: ColourFacts) -> Artist:
    """Paints the picture."""

    def paint(painter: QPainter, size: QSizeF) -> None:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint_generations(painter, PaperLook(), facts, QRectF(QPointF(0, 0), size))

    return paint
