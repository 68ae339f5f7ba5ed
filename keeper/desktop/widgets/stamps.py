"""Tiles that are painted often, kept as pictures: a stamp is laid down instead of drawn anew."""

from __future__ import annotations

from collections.abc import Callable, Hashable

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFont, QPainter, QPixmap

from keeper.desktop.light import Palette
from keeper.desktop.widgets.tile import TileState, paint_small, paint_tile

_KEPT_MOST = 240


class _Album:
    """The stamps of the light in use. A palette is compared, not hashed: thousands are asked."""

    def __init__(self) -> None:
        self._palette: Palette | None = None
        self._kept: dict[Hashable, QPixmap] = {}

    def of(self, palette: Palette) -> dict[Hashable, QPixmap]:
        """Those of *palette*; of another light, or of too many, none is kept."""
        if palette is not self._palette and palette != self._palette:
            self._kept.clear()
        if len(self._kept) >= _KEPT_MOST:
            self._kept.clear()
        self._palette = palette
        return self._kept


_ALBUM = _Album()


def stamp_tile(
    painter: QPainter,
    rect: QRectF,
    state: TileState,
    palette: Palette,
    text: str | None = None,
    *,
    font: QFont | None = None,
) -> None:
    """As ``paint_tile``, on whole pixels. font: of the letters, else in proportion to *rect*."""
    dots = painter.device().devicePixelRatioF()
    snapped = QPointF(round(rect.left() * dots) / dots, round(rect.top() * dots) / dots)
    size = (round(rect.width() * dots), round(rect.height() * dots))
    lettering = None if font is None else (font.pointSizeF(), font.weight())  # of one family
    kept, asked = _ALBUM.of(palette), ("tile", state, size, dots, text, lettering)
    if asked not in kept:
        kept[asked] = _made(
            size, dots, lambda p, r: paint_tile(p, r, state, palette, text, letter_font=font)
        )
    painter.drawPixmap(snapped, kept[asked])


def stamp_small(
    painter: QPainter, rect: QRectF, state: TileState, palette: Palette, dots: float
) -> None:
    """As ``paint_small``, for a *rect* on whole pixels of a screen of *dots* a px."""
    size = (round(rect.width() * dots), round(rect.height() * dots))
    kept, asked = _ALBUM.of(palette), ("small", state, size, dots)
    if asked not in kept:
        kept[asked] = _made(size, dots, lambda p, r: paint_small(p, r, state, palette))
    painter.drawPixmap(rect.topLeft(), kept[asked])


def _made(size: tuple[int, int], dots: float, paint: Callable[[QPainter, QRectF], None]) -> QPixmap:
    made = QPixmap(*size)
    made.setDevicePixelRatio(dots)
    made.fill(Qt.GlobalColor.transparent)
    painter = QPainter(made)
    paint(painter, QRectF(0, 0, size[0] / dots, size[1] / dots))
    painter.end()
    return made
