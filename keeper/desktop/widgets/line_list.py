"""What the house breeds for, in a list with a head and a legend: genes, then lines of colour."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import (
    QAbstractItemModel,
    QPointF,
    QRectF,
)
from PySide6.QtGui import QFont, QPainter
from PySide6.QtWidgets import (
    QWidget,
)

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.column_head import ColumnHead
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.kept_picture import KeptPicture
from keeper.desktop.widgets.lettering import (
    font_to_fit,
    middle_baseline,
    set_line,
    wrapped,
)
from keeper.desktop.widgets.row_list import RowList, RowPainter, paint_cells, paint_ground
from keeper.desktop.widgets.stamps import stamp_tile
from keeper.desktop.widgets.tile import FACES, LINES, ODDS, TileState
from keeper.language import tr

_HEADS = (tr("gene, or line and look"), tr("in the room, or by generations"))
_SHARES = (0.0, 0.46, 0.64, 0.83)
"""Where the name and the three figures begin, of what is right of the tile."""
_ROWS_KEPT = 32


@dataclass(frozen=True, slots=True, kw_only=True)
class LineFace:
    """One row of two lines. figures: three, each with what it counts beneath it."""

    state: TileState
    name: str
    under: str
    figures: tuple[tuple[str, str], ...]
    said: str


class LineList(RowList):
    """Shows a model whose ``FACE_ROLE`` gives a ``LineFace``."""

    def __init__(
        self, look: Look, model: QAbstractItemModel, parent: QWidget | None = None
    ) -> None:
        super().__init__(look, model, _row_height, parent)
        self.setItemDelegate(_RowPainter(self, _ROWS_KEPT))
        self.setObjectName("lines")
        self.setAccessibleName(tr("genes of each species, then lines scored for colour"))


def line_head(look: Look) -> ColumnHead:
    """The heads of the columns: the name, and all figures together."""

    def edges(look: Look, width: float) -> Sequence[float]:
        name, figures, *_, end = _edges(look, width)
        return name, figures, end

    return ColumnHead(look, _HEADS, edges)


class LineLegend(Drawn):
    """What the tiles of the list and of the animals mean, and a note beneath."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._note = ""
        self._kept = KeptPicture()

    def show_note(self, note: str) -> None:
        """Stand *note* beneath the legend."""
        self._note = note
        letters = ", ".join(f"{FACES[state].letter} {FACES[state].words}" for state in _TILES)
        self.tell(tr("legend: {letters}. {caution}", letters=letters, caution=note))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(200, 150), self.look.u(19, 16.5)

    def paint(self, painter: QPainter) -> None:
        self._kept.lay(painter, self.size(), self.look, self._note, self._draw)

    def _draw(self, painter: QPainter) -> None:
        look, margin = self.look, self.look.u(7, 3.5)
        row = QRectF(0, 0, self.width(), look.u(10, 7.6))
        room = self.width() - 2 * margin
        side, gap, font = look.u(5.4, 4.4), look.u(1.4, 0.9), self._fitted(room)
        left = margin
        for state in _TILES:
            rect = QRectF(left, row.center().y() - side / 2, side, side)
            stamp_tile(painter, rect, state, look.palette)
            place = QPointF(rect.right() + gap, middle_baseline(row, font))
            used = set_line(painter, place, FACES[state].words, font, look.colour("ink2"))
            left = place.x() + used + look.u(3, 1.6)
        note = look.font(Use.TABLE)
        for n, line in enumerate(list(wrapped(self._note, note, room))[:2]):
            place = QPointF(margin, row.bottom() + look.u(3, 2.6) + n * look.u(4.8, 4.2))
            set_line(painter, place, line, note, look.colour("ink2"), room=room)

    def _fitted(self, room: float) -> QFont:
        look = self.look
        each = look.u(5.4, 4.4) + look.u(1.4, 0.9) + look.u(3, 1.6)
        words = "".join(FACES[state].words for state in _TILES)
        return font_to_fit(look.font(Use.TABLE), words, room - len(_TILES) * each, 6.0)


_TILES = tuple(dict.fromkeys((*LINES[:-2], *ODDS)))
"""Every letter of the place once; both tables end alike."""


class _RowPainter(RowPainter):
    """Paints a ``LineFace``."""

    def draw(
        self, painter: QPainter, row: QRectF, face: LineFace, *, here: bool, held: bool
    ) -> None:
        look = self.look
        left = paint_ground(painter, row, look, here=here, held=held)
        side = row.height() - look.u(5, 3.8)
        tile = QRectF(left + look.u(0.4), row.center().y() - side / 2, side, side)
        stamp_tile(painter, tile, face.state, look.palette)
        cells = ((face.name, face.under), *face.figures)
        paint_cells(painter, row, cells, _edges(look, row.width()), look)


def _row_height(look: Look) -> float:
    """Of one row, two lines of words high."""
    return look.u(13.2, 10.6)


def _edges(look: Look, width: float) -> tuple[float, ...]:
    """Where each column begins in a list *width* wide, and where the last one ends."""
    first = look.u(2.2, 1.2) + look.u(11, 8.6)
    return (*(first + share * (width - first) for share in _SHARES), width)
