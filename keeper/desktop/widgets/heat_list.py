"""Places down the page, their zones across: last reading as a tile with its figure, and when."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QLineF, QPointF, QRect, QRectF, Qt, Signal
from PySide6.QtGui import QMouseEvent, QPainter, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from keeper.actions.heat_board import Standing
from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.kept_picture import KeptPicture, KeptRows, seen
from keeper.desktop.widgets.lettering import advance, middle_baseline, set_line
from keeper.desktop.widgets.stamps import stamp_tile
from keeper.desktop.widgets.tile import TileState, paint_tile
from keeper.desktop.widgets.walked import first_shown
from keeper.language import tr

TILES: Mapping[Standing, TileState] = {
    "within": TileState.NOTED,
    "noted": TileState.THIS_WEEK,
    "today": TileState.TODAY,
    "now": TileState.NOW,
    "cannot tell": TileState.CANNOT_TELL,
    "never read": TileState.GATE_CANNOT_TELL,
}
LEGEND: tuple[tuple[Standing, str, str], ...] = (
    ("within", "", tr("within")),
    ("noted", "", tr("noted")),
    ("today", "", tr("today")),
    ("now", "", tr("now")),
    ("cannot tell", "?", tr("cannot tell")),
    ("never read", "", tr("not read")),
)
LETTERS = tr("H too hot, C too cold")
HEADS = (tr("place, animals"), tr("hot end"), tr("cool end"), tr("night low"))
_COLUMN_SHARES = (0.0, 0.19, 0.46, 0.73)
_LINES_KEPT = 48


@dataclass(frozen=True, slots=True, kw_only=True)
class CellFace:
    """A tile's words and what stands beside it; zone_words only where the column is not its."""

    standing: Standing
    words: str
    when: str = ""
    zone_words: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class PlaceFace:
    place: str
    aside: str
    cells: tuple[CellFace, ...]
    told: str  # the whole line in words


class HeatList(Drawn):
    """Shows the lines round the one that is walked to. ``asked(line, cell)`` by the mouse."""

    asked = Signal(int, int)

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._faces: tuple[PlaceFace, ...] = ()
        self._line = self._cell = self._first = 0
        self._kept = KeptRows(_LINES_KEPT)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def show_places(self, faces: Sequence[PlaceFace], line: int, cell: int) -> None:
        """Show *faces* with the cell *cell* of line *line* chosen."""
        self._faces, self._line, self._cell = tuple(faces), line, cell
        self.tell("\n".join(face.told for face in faces))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(150, 110), self.look.u(60, 50)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        for (line, cell), rect in self._rects().items():
            if rect.contains(event.position()):
                self.asked.emit(line, cell)

    def paint(self, painter: QPainter) -> None:
        look = self.look
        self._paint_heads(painter)
        rects = self._rects()
        for line, cell in rects:
            if cell == 0:
                self._lay_line(painter, line)
        if self._faces:
            chosen = rects.get((self._line, self._cell))
            if chosen is not None:
                pen = QPen(look.colour("point"), 3.0)
                pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
                painter.setPen(pen)
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.drawRect(chosen.adjusted(-3, -2, 3, 2))

    def _row_height(self) -> float:
        return self.look.u(8.6, 7.4)

    def _rects(self) -> dict[tuple[int, int], QRectF]:
        """The tiles of the lines in view."""
        room = int((self.height() - self._head_height()) // self._row_height())
        self._first = first_shown(self._line, len(self._faces), room, self._first)
        rects = {}
        for line in range(self._first, min(self._first + room, len(self._faces))):
            for cell, rect in enumerate(self._tiles(self._faces[line], self._top(line))):
                rects[line, cell] = rect
        return rects

    def _top(self, line: int) -> float:
        return self._head_height() + (line - self._first) * self._row_height()

    def _tiles(self, face: PlaceFace, top: float) -> list[QRectF]:
        """The tiles of a line that begins at *top*."""
        row, wide = self._row_height(), self.look.u(21, 16)
        lefts = (self._column(cell + 1) for cell in range(len(face.cells)))
        return [QRectF(left, top + 0.1 * row, wide, 0.8 * row) for left in lefts]

    def _column(self, number: int) -> float:
        return self.look.u(7, 3.5) + _COLUMN_SHARES[number] * (self.width() - self.look.u(7, 3.5))

    def _head_height(self) -> float:
        return self.look.u(8, 6.6)

    def _paint_heads(self, painter: QPainter) -> None:
        look, font = self.look, self.look.font(Use.TABLE)
        head = QRectF(0, 0, self.width(), self._head_height())
        base = head.bottom() - look.u(2.2, 1.8)
        for n, words in enumerate(HEADS):
            set_line(painter, QPointF(self._column(n), base), words, font, look.colour("ink2"))
        painter.setPen(QPen(look.colour("line"), 1.1))
        y = head.bottom() - look.u(0.6)
        painter.drawLine(QLineF(self._column(0), y, self.width(), y))

    def _lay_line(self, painter: QPainter, line: int) -> None:
        """A line as a picture of whole px; where it begins between two of them is kept too."""
        face, here, look = self._faces[line], line == self._line, self.look
        top = self._top(line)
        above = math.floor(top)
        strip = QRect(0, above, self.width(), math.ceil(top + self._row_height()) - above)

        def paint(on: QPainter, area: QRect) -> None:
            self._paint_line(on, face, area.top() + top - above, here)

        about = (face, here, round(top - above, 6))
        self._kept.lay(painter, strip, about, seen(look), paint, look.colour("ground"))

    def _paint_line(self, painter: QPainter, face: PlaceFace, top: float, here: bool) -> None:
        tiles = self._tiles(face, top)
        self._paint_place(painter, face, tiles[0], here)
        for cell, tile in zip(face.cells, tiles, strict=True):
            self._paint_cell(painter, cell, tile)

    def _paint_place(self, painter: QPainter, face: PlaceFace, tile: QRectF, here: bool) -> None:
        look = self.look
        strong, plain = look.font(Use.TABLE_STRONG), look.font(Use.TABLE)
        left, right = self._column(0), tile.left() - look.u(1.5)
        line = QRectF(left - look.u(1.5), tile.top() - 2, self.width() - left, tile.height() + 4)
        if here:
            painter.fillRect(line, look.colour("sheet"))
        base = middle_baseline(tile, strong)
        used = set_line(painter, QPointF(left, base), face.place, strong, look.colour("ink"))
        beside = left + used + look.u(2)
        set_line(
            painter,
            QPointF(beside, base),
            face.aside,
            plain,
            look.colour("ink2"),
            room=right - beside,
        )

    def _paint_cell(self, painter: QPainter, face: CellFace, tile: QRectF) -> None:
        look, plain = self.look, self.look.font(Use.TABLE)
        font = look.font(Use.TABLE_STRONG)
        state = TILES[face.standing]
        stamp_tile(painter, tile, state, look.palette, face.words, font=font)
        beside = tile.right() + look.u(1.6, 1.5)
        words = " ".join(filter(None, (face.zone_words, face.when)))
        room = self.look.u(22, 15) if not face.zone_words else self.width() - beside
        base = middle_baseline(tile, plain)
        set_line(painter, QPointF(beside, base), words, plain, look.colour("ink2"), room=room)


class HeatLegend(Drawn):
    """What tiles and letters of the list mean."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._kept = KeptPicture()
        words = ", ".join(words for _, _, words in LEGEND)
        self.tell(tr("legend: {letters}. {caution}", letters=words, caution=LETTERS))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(150, 110), self.look.u(8, 6.4)

    def paint(self, painter: QPainter) -> None:
        self._kept.lay(painter, self.size(), self.look, LEGEND, self._draw, "ground")

    def _draw(self, painter: QPainter) -> None:
        look, font = self.look, self.look.font(Use.KEY_HINT if self.look.small else Use.TABLE)
        left = look.u(7, 3.5)
        row = QRectF(0, 0, self.width(), self.height())
        for standing, letter, words in LEGEND:
            tile = QRectF(left, row.center().y() - look.u(2.2, 1.9), look.u(6, 5), look.u(4.4, 3.8))
            paint_tile(painter, tile, TILES[standing], look.palette, letter)
            left = tile.right() + look.u(1.2, 0.8)
            place = QPointF(left, middle_baseline(row, font))
            set_line(painter, place, words, font, look.colour("ink2"))
            left += advance(font, words) + look.u(3, 1.8)
        place = QPointF(left, middle_baseline(row, font))
        room = self.width() - left
        set_line(painter, place, LETTERS, font, look.colour("ink2"), room=room)
