"""The legend of a layer: each state as it is drawn, its words, its count, and its limits."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QFont, QPainter
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import advance, set_line
from keeper.desktop.widgets.tile import TileState, paint_small, paint_tile
from keeper.language import tr

_LEAST_SHARE = 0.72


@dataclass(frozen=True, slots=True, kw_only=True)
class LegendItem:
    """letter and figure as on a tub; count: how many show it; note: limits or what a figure is.

    small: drawn as where no letter has room.
    """

    look: TileState
    letter: str
    words: str
    count: str
    figure: str = ""
    note: str = ""
    small: bool = False


class RackLegend(Drawn):
    """One line of items, set closer and then smaller where the room is narrow."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._items: tuple[LegendItem, ...] = ()

    def show_items(self, items: Sequence[LegendItem]) -> None:
        """Show *items* in their order."""
        if tuple(items) != self._items:
            self._items = tuple(items)
            told = (f"{item.words} {item.count}".strip() for item in items)
            self.tell(tr("legend: {told}", told=", ".join(told)))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(200), self.look.u(17, 11.5)

    def paint(self, painter: QPainter) -> None:
        look, margin = self.look, self.look.u(7, 3.5)
        room = self.width() - 2 * margin
        widths = [self._width(item, 1.0) for item in self._items]
        pieces = max(1, len(widths) - 1)
        least = look.u(3, 1.8)
        share = min(1.0, (room - pieces * least) / max(1.0, sum(widths)))
        share = max(_LEAST_SHARE, share)
        used = sum(self._width(item, share) for item in self._items)
        air = max(1.0, min(look.u(9, 6), (room - used) / pieces))
        left = margin
        for item in self._items:
            self._paint_item(painter, left, item, share)
            left += self._width(item, share) + air

    def _fonts(self) -> tuple[QFont, QFont]:
        strong = self.look.font(Use.BODY_STRONG)
        strong.setWeight(self.look.font(Use.LINE_TITLE).weight())
        return strong, self.look.font(Use.TABLE)

    def _tile(self, share: float) -> tuple[float, float]:
        return self.look.u(9.4, 7) * share, self.look.u(12, 8.4)

    def _width(self, item: LegendItem, share: float) -> float:
        look = self.look
        strong, plain = self._fonts()
        head = advance(strong, item.words) + look.u(1.6, 1.2) + advance(plain, item.count)
        beside = max(head, advance(plain, item.note)) * share
        return self._tile(share)[0] + look.u(2, 1.4) + beside

    def _paint_item(self, painter: QPainter, left: float, item: LegendItem, share: float) -> None:
        look = self.look
        wide, high = self._tile(share)
        tile = QRectF(left, (self.height() - high) / 2, wide, high)
        self._paint_tile(painter, tile, item)
        strong, plain = self._fonts()
        for font in (strong, plain):
            font.setPointSizeF(font.pointSizeF() * share)
        beside = tile.right() + look.u(2, 1.4)
        first = tile.center().y() + (-look.u(0.8, 0.4) if item.note else look.u(1.6, 1.2))
        used = set_line(painter, QPointF(beside, first), item.words, strong, look.colour("ink"))
        used += look.u(1.6, 1.2) * share
        at = QPointF(beside + used, first)
        set_line(painter, at, item.count, plain, look.colour("ink2"))
        under = QPointF(beside, first + look.u(5.4, 4))
        set_line(painter, under, item.note, plain, look.colour("ink2"))

    def _paint_tile(self, painter: QPainter, tile: QRectF, item: LegendItem) -> None:
        palette = self.look.palette
        if item.small:
            box = QRectF(0, 0, self.look.u(6, 4.6), self.look.u(5, 4))
            box.moveCenter(tile.center())
            paint_small(painter, box, item.look, palette)
            return
        loud = bool(item.letter) and item.look is not TileState.EMPTY
        font = self.look.font(Use.BODY_STRONG if loud else Use.TABLE)
        if loud:
            font.setWeight(self.look.font(Use.LINE_TITLE).weight())
        paint_tile(
            painter,
            tile,
            item.look,
            palette,
            item.letter,
            number=item.figure,
            letter_font=font,
        )
