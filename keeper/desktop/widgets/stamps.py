"""Tiles that are painted often, kept as pictures: a stamp is laid down instead of drawn anew."""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPixmap

from keeper.desktop.light import Palette
from keeper.desktop.widgets.tile import TileState, paint_small, paint_tile


def stamp_tile(
    painter: QPainter, rect: QRectF, state: TileState, palette: Palette, text: str | None = None
) -> None:
    """As ``paint_tile`` without a font of its own, on whole pixels."""
    dots = painter.device().devicePixelRatioF()
    snapped = QPointF(round(rect.left() * dots) / dots, round(rect.top() * dots) / dots)
    size = (round(rect.width() * dots), round(rect.height() * dots))
    painter.drawPixmap(snapped, _stamp(state, palette, size, dots, text))


def stamp_small(
    painter: QPainter, rect: QRectF, state: TileState, palette: Palette, dots: float
) -> None:
    """As ``paint_small``, for a *rect* on whole pixels of a screen of *dots* a px."""
    size = (round(rect.width() * dots), round(rect.height() * dots))
    painter.drawPixmap(rect.topLeft(), _small(state, palette, size, dots))


@lru_cache(maxsize=160)
def _stamp(
    state: TileState, palette: Palette, size: tuple[int, int], dots: float, text: str | None
) -> QPixmap:
    return _made(size, dots, lambda p, rect: paint_tile(p, rect, state, palette, text))


@lru_cache(maxsize=64)
def _small(state: TileState, palette: Palette, size: tuple[int, int], dots: float) -> QPixmap:
    return _made(size, dots, lambda p, rect: paint_small(p, rect, state, palette))


def _made(size: tuple[int, int], dots: float, paint: Callable[[QPainter, QRectF], None]) -> QPixmap:
    made = QPixmap(*size)
    made.setDevicePixelRatio(dots)
    made.fill(Qt.GlobalColor.transparent)
    painter = QPainter(made)
    paint(painter, QRectF(0, 0, size[0] / dots, size[1] / dots))
    painter.end()
    return made
