"""Animals by how surely they carry a gene, or cards whose odds moved: a tile, who, what is told."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import (
    QLineF,
    QPointF,
    QRectF,
)
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import (
    QWidget,
)

from keeper.desktop.look import Look
from keeper.desktop.models.faced_rows import FacedRows
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.kept_picture import KeptPicture
from keeper.desktop.widgets.lettering import LEAST_PT, narrowed, set_line
from keeper.desktop.widgets.row_list import RowList, RowPainter, paint_ground
from keeper.desktop.widgets.stamps import stamp_tile
from keeper.desktop.widgets.tile import TileState
from keeper.language import tr

_SHARES = (0.0, 0.12, 0.44, 0.58)
_ROWS_KEPT = 48


@dataclass(frozen=True, slots=True, kw_only=True)
class OddsFace:
    """One row: four cells over a sentence. text: in the tile; seat: its letter in a pair tried."""

    state: TileState
    text: str | None
    cells: tuple[str, str, str, str]
    reason: str
    said: str
    seat: str = ""


class OddsList(RowList):
    """Shows animals or cards with their ``OddsFace``; Tab and Right reach it."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        self.odds = FacedRows[object, OddsFace]()
        super().__init__(look, self.odds, _row_height, parent)
        self.odds.setParent(self)
        self.setItemDelegate(_RowPainter(self, _ROWS_KEPT))
        self.setObjectName("odds")
        self.setAccessibleName(tr("animals of the room, the surest first"))


class OddsHead(Drawn):
    """The heads of the columns; without rows, one sentence in their place."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._heads: tuple[str, ...] = ()
        self._none, self._spare = "", 0.0
        self._kept = KeptPicture()

    def show_heads(self, heads: Sequence[str], none: str, spare: float) -> None:
        """Four *heads*, or the sentence *none*; *spare* px at the right stay free."""
        self._heads, self._none, self._spare = tuple(heads), none, spare
        self.tell(none or ", ".join(heads))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(100, 80), self.look.u(9.4, 7.6)

    def paint(self, painter: QPainter) -> None:
        about = (self._heads, self._none, self._spare)
        self._kept.lay(painter, self.size(), self.look, about, self._draw)

    def _draw(self, painter: QPainter) -> None:
        look, width = self.look, self.width() - self._spare
        base = self.height() - look.u(1.8, 1.2)
        left = look.u(2.2, 1.2)
        if self._none:
            font = narrowed(look.font(Use.TABLE), self._none, width - left, LEAST_PT)
            room = width - left
            set_line(painter, QPointF(left, base), self._none, font, look.colour("ink"), room=room)
            return
        if not self._heads:
            return
        _set_cells(painter, 0.0, base, self._heads, _edges(look, width), look, "ink2")
        painter.setPen(QPen(look.colour("line"), 1.2))
        y = self.height() - 0.6
        painter.drawLine(QLineF(left, y, width, y))


class _RowPainter(RowPainter):
    """Paints an ``OddsFace``."""

    def draw(
        self, painter: QPainter, row: QRectF, face: OddsFace, *, here: bool, held: bool
    ) -> None:
        look = self.look
        left = paint_ground(painter, row, look, here=here, held=held)
        side = row.height() - look.u(3, 2.4)
        tile = QRectF(left + look.u(0.4), row.center().y() - side / 2, side, side)
        stamp_tile(painter, tile, face.state, look.palette, face.text)
        edges, base = _edges(look, row.width()), row.top() + look.u(5, 4.1)
        _set_cells(painter, row.left(), base, face.cells, edges, look, "ink", strong=(1, 3))
        _set_reason(painter, row, edges[0], face, look)


def _set_reason(painter: QPainter, row: QRectF, at: float, face: OddsFace, look: Look) -> None:
    """The sentence, behind the letter of a pair that is tried."""
    left, base, gap = row.left() + at, row.top() + look.u(9.4, 8), look.u(1.6, 1)
    room = row.width() - at - look.u(1)
    if face.seat:
        strong, ink = look.font(Use.TABLE_STRONG), look.colour("ink")
        used = set_line(painter, QPointF(left, base), face.seat, strong, ink) + gap
        left, room = left + used, room - used
    fitted = narrowed(look.font(Use.TABLE), face.reason, room, LEAST_PT)
    set_line(painter, QPointF(left, base), face.reason, fitted, look.colour("ink2"), room=room)


def _row_height(look: Look) -> float:
    """Of one row, two lines of words high."""
    return look.u(11.4, 9.6)


def _edges(look: Look, width: float) -> tuple[float, ...]:
    first = look.u(2.2, 1.2) + look.u(10.6, 8.8)
    return (*(first + share * (width - first) for share in _SHARES), width)


def _set_cells(
    painter: QPainter,
    left: float,
    base: float,
    cells: Sequence[str],
    edges: Sequence[float],
    look: Look,
    ink: str,
    *,
    strong: Sequence[int] = (),
) -> None:
    for number, (text, at, end) in enumerate(zip(cells, edges[:-1], edges[1:], strict=True)):
        use = Use.BODY_STRONG if number in strong else Use.TABLE
        room = end - at - look.u(1, 0.7)
        font = narrowed(look.font(use), text, room, LEAST_PT)
        set_line(painter, QPointF(left + at, base), text, font, look.colour(ink), room=room)
