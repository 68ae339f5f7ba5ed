"""The walking page: the rack row across the top, the current tub pulled out into the panel."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QPen, QPolygonF, QRegion, QResizeEvent
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.widgets.drawer_shape import (
    MOST_TUBS,
    DrawerShape,
    FrontStyle,
    drawer_shape,
)
from keeper.desktop.widgets.drawn import announce
from keeper.desktop.widgets.kept_picture import KeptRows
from keeper.desktop.widgets.tub_front import FrontKey, TubFront, front_words

FRAME_PX = 3.0


class DrawerRow(QWidget):
    """A row of tubs with the current one pulled out, and three places for what belongs to it.

    ``set_panel`` takes the widget that fills the pulled-out drawer, ``set_side`` what stands at
    its right (offers, reason, pad), ``set_below`` what stands under it (the night, last weights).
    ``tub_asked(index)`` is emitted when a front is pressed with the mouse.
    """

    tub_asked = Signal(int)

    def __init__(
        self,
        look: Look,
        parent: QWidget | None = None,
        *,
        style: FrontStyle = FrontStyle.PATCH,
        panel_share: float = 0.485,
        small_panel_share: float = 0.535,
    ) -> None:
        super().__init__(parent)
        self.look = look
        self._style = style
        self._shares = (panel_share, small_panel_share)
        self._fronts: tuple[TubFront, ...] = ()
        self._current: int | None = None
        self._keys: list[FrontKey] = []
        self._kept = KeptRows(2 * MOST_TUBS)
        self._slots: dict[str, QWidget] = {}
        look.changed.connect(self._lay_out)

    def show_row(self, fronts: Sequence[TubFront], current: int | None, row_words: str) -> None:
        """Show 1 to 14 *fronts* with *current* pulled out; *row_words* names the row aloud.

        Raises:
            ValueError: no tub, too many, or *current* outside the row.
        """
        moved = (row_words, current) != (self.accessibleName(), self._current)
        before = (len(self._fronts), self._current, self.shape())
        self._fronts, self._current = tuple(fronts), current
        self._match_keys()
        for index, (key, front) in enumerate(zip(self._keys, self._fronts, strict=True)):
            key.show_front(front, self._style, pulled=index == current)
        if row_words != self.accessibleName():
            self.setAccessibleName(row_words)
        if before[:2] != (len(self._fronts), self._current):
            self._pull(before[2])
        if moved and current is not None:
            announce(self, front_words(self._fronts[current], pulled=True))

    def set_panel(self, widget: QWidget) -> None:
        """Put *widget* into the pulled-out drawer."""
        self._set_slot("panel", widget)

    def set_side(self, widget: QWidget) -> None:
        """Put *widget* at the right of the panel."""
        self._set_slot("side", widget)

    def set_below(self, widget: QWidget) -> None:
        """Put *widget* under the panel."""
        self._set_slot("below", widget)

    def shape(self) -> DrawerShape:
        """Where everything stands at the present size; a row of one before ``show_row``."""
        return drawer_shape(
            self.width(),
            self.height(),
            max(1, len(self._fronts)),
            self._current,
            self.look.u,
            self._style,
            self._shares[self.look.small],
        )

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._lay_out()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter, shape = QPainter(self), self.shape()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for upright in shape.uprights:
            painter.fillRect(upright, self.look.colour("fill1"))
        painter.setPen(QPen(self.look.colour("line"), 1.6))
        ends = (shape.uprights[0].left(), shape.uprights[1].right())
        painter.drawLine(QLineF(ends[0], shape.shelf_y, ends[1], shape.shelf_y))
        self._paint_drawer(painter, shape)
        painter.end()

    def _paint_drawer(self, painter: QPainter, shape: DrawerShape) -> None:
        """The sheet in two pieces that overlap under no line, as a wide polygon fills slowly."""
        sheet, panel = self.look.colour("sheet"), shape.panel
        painter.fillRect(panel.adjusted(0, FRAME_PX, 0, 0), sheet)
        if self._current is not None:
            front, low = shape.fronts[self._current], QPointF(0, 2 * FRAME_PX)
            left = [panel.topLeft() + low, panel.topLeft(), QPointF(front.left(), shape.shelf_y)]
            right = [QPointF(front.right(), shape.shelf_y), panel.topRight()]
            corners = [*left, front.topLeft(), front.topRight(), *right, panel.topRight() + low]
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(sheet)
            painter.drawPolygon(QPolygonF(corners))
        pen = QPen(self.look.colour("ink"), FRAME_PX)
        pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPolygon(shape.outline)

    def _pull(self, before: DrawerShape) -> None:
        """Move the fronts to their places and redraw what the pulled-out drawer leaves and takes.

        Everything under the top of the panel stays as it is.
        """
        shape = self.shape()
        self._place_keys(shape)
        if len(before.fronts) != len(shape.fronts):
            self.update(QRectF(0, 0, self.width(), shape.panel.top() + FRAME_PX).toAlignedRect())
            return
        band = QRectF(0, shape.fronts[0].bottom(), self.width(), FRAME_PX)
        band.setBottom(shape.panel.top() + FRAME_PX)
        region = QRegion(band.toAlignedRect())
        for old, new in zip(before.fronts, shape.fronts, strict=True):
            if old != new:
                both = old.united(new).adjusted(-FRAME_PX, -FRAME_PX, FRAME_PX, FRAME_PX)
                region = region.united(both.toAlignedRect())
        self.update(region)

    def _place_keys(self, shape: DrawerShape) -> None:
        for key, rect in zip(self._keys, shape.fronts, strict=False):
            key.setGeometry(rect.toAlignedRect())

    def _set_slot(self, name: str, widget: QWidget) -> None:
        widget.setParent(self)
        widget.show()
        self._slots[name] = widget
        self._lay_out()

    def _match_keys(self) -> None:
        while len(self._keys) > len(self._fronts):
            spare = self._keys.pop()
            spare.hide()
            spare.deleteLater()
        while len(self._keys) < len(self._fronts):
            index = len(self._keys)
            key = FrontKey(self.look, self, self._kept)
            key.clicked.connect(lambda _=False, index=index: self.tub_asked.emit(index))
            key.show()
            self._keys.append(key)

    def _lay_out(self) -> None:
        shape = self.shape()
        self._place_keys(shape)
        inside = FRAME_PX / 2
        areas = {
            "panel": shape.panel.adjusted(inside, inside, -inside, -inside),
            "side": shape.side,
            "below": shape.below,
        }
        for name, widget in self._slots.items():
            widget.setGeometry(QRectF(areas[name]).toRect())
        self.update()
