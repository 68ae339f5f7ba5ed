"""The head line of the racks: the layers with their keys, the one in use in a box."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFont, QPainter, QPen
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import RIGHT, advance, set_line
from keeper.language import tr


@dataclass(frozen=True, slots=True, kw_only=True)
class LayerKey:
    """A layer, the key that shows it, and whether it is shown now."""

    key: str
    name: str
    shown: bool


class LayerLine(Drawn):
    """Name of the place, its layers, and how much there is of everything at the right."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._head = ""
        self._layers: tuple[LayerKey, ...] = ()
        self._right = ""

    def show_layers(self, head: str, layers: Sequence[LayerKey], right: str) -> None:
        """Show *head*, *layers* by their keys, and *right* flush right."""
        self._head, self._layers, self._right = head, tuple(layers), right
        shown = next((layer.name for layer in layers if layer.shown), "")
        keys = ", ".join(f"{layer.key} {layer.name}" for layer in layers)
        self.tell(
            tr(
                "{place}, layer {shown}; {counts}; layers: {keys}",
                place=head,
                shown=shown,
                counts=right,
                keys=keys,
            )
        )

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(200), self.look.u(13, 10)

    def paint(self, painter: QPainter) -> None:
        look, base = self.look, 0.62 * self.height()
        margin = look.u(7, 3.5)
        room = self.width() - 2 * margin
        aside = look.font(Use.PAGE_ASIDE)
        at = QPointF(self.width() - margin, base)
        room -= set_line(painter, at, self._right, aside, look.colour("ink2"), align=RIGHT)
        head, ink = look.font(Use.PAGE_HEAD), look.colour("ink")
        used = set_line(painter, QPointF(margin, base), self._head, head, ink)
        used += look.u(4, 2.4)
        air, pad = look.u(5, 2.6), look.u(2, 1.4)
        share = self._share(room - used - air, air, pad)
        left = margin + used
        for layer in self._layers:
            left += self._paint_layer(painter, QPointF(left, base), layer, share, pad) + air * share

    def _fonts(self, layer: LayerKey) -> tuple[QFont, QFont]:
        name = self.look.font(Use.PAGE_ASIDE)
        if layer.shown:
            name.setWeight(self.look.font(Use.LINE_TITLE).weight())
        return self.look.font(Use.TABLE), name

    def _width(self, layer: LayerKey, pad: float) -> float:
        key, name = self._fonts(layer)
        box = 2 * pad if layer.shown else 0.0
        return advance(key, layer.key) + self.look.u(1.4, 1) + advance(name, layer.name) + box

    def _share(self, room: float, air: float, pad: float) -> float:
        """How much smaller all of it must be to fit; 1 where it fits as it is."""
        wanted = sum(self._width(layer, pad) for layer in self._layers)
        wanted += air * (len(self._layers) - 1)
        return max(0.6, min(1.0, room / max(1.0, wanted)))

    def _paint_layer(
        self, painter: QPainter, at: QPointF, layer: LayerKey, share: float, pad: float
    ) -> float:
        look = self.look
        key, name = self._fonts(layer)
        for font in (key, name):
            font.setPointSizeF(font.pointSizeF() * share)
        inset = pad * share if layer.shown else 0.0
        gap = look.u(1.4, 1) * share
        wide = advance(key, layer.key) + gap + advance(name, layer.name) + 2 * inset
        if layer.shown:
            high = look.u(6.6, 5.6)
            box = QRectF(at.x(), at.y() - 0.71 * high, wide, high)
            pen = QPen(look.colour("ink"), 2.0)
            pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
            painter.setPen(pen)
            painter.setBrush(look.colour("sheet"))
            painter.drawRect(box)
        place = QPointF(at.x() + inset, at.y())
        used = set_line(painter, place, layer.key, key, look.colour("ink2"))
        ink = look.colour("ink" if layer.shown else "ink2")
        set_line(painter, QPointF(place.x() + used + gap, at.y()), layer.name, name, ink)
        return wide
