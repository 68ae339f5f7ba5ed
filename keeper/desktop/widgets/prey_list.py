"""Grades of prey in a list with a head and a legend; arrows walk, Enter activates."""

from __future__ import annotations

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
    advance,
    font_to_fit,
    middle_baseline,
    set_line,
    wrapped,
)
from keeper.desktop.widgets.prey_demand import GROUPS, paint_patch
from keeper.desktop.widgets.row_list import RowList, RowPainter, paint_cells, paint_ground
from keeper.desktop.widgets.stamps import stamp_tile
from keeper.desktop.widgets.tile import FACES, STOCK, TileState, paint_tile
from keeper.language import tr

_HEADS = (tr("grade, an item"), tr("left, bags"), tr("used a week"), tr("lasts"), tr("order by"))
_SHARES = (0.0, 0.265, 0.425, 0.605, 0.79)
"""Where each column begins, as a share of the width beside the tiles."""

_KEPT_ROWS = 40


@dataclass(frozen=True, slots=True, kw_only=True)
class GradeFace:
    """One grade: its state, and of each column what stands strong and what beneath it."""

    state: TileState
    columns: tuple[tuple[str, str], ...]
    said: str


class PreyList(RowList):
    """Shows a model whose ``FACE_ROLE`` gives a ``GradeFace``."""

    def __init__(
        self, look: Look, model: QAbstractItemModel, parent: QWidget | None = None
    ) -> None:
        super().__init__(look, model, _row_height, parent)
        self.setItemDelegate(_RowPainter(self, _KEPT_ROWS))
        self.setObjectName("prey")
        self.setAccessibleName(tr("grades of prey, what is to be ordered first at the top"))


def prey_head(look: Look) -> ColumnHead:
    """The heads of the columns."""
    return ColumnHead(look, _HEADS, _edges)


class PreyLegend(Drawn):
    """What tiles and patterns mean, and beneath it of whom nothing is counted."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._note = ""
        self._kept = KeptPicture()

    def show_note(self, note: str) -> None:
        """Stand *note* beneath the legend."""
        self._note = note
        tiles = [FACES[state].words for state in STOCK]
        letters = ", ".join((*tiles, *(words for _, words in GROUPS.values())))
        self.tell(tr("legend: {letters}. {caution}", letters=letters, caution=note))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(200, 150), self.look.u(19, 17)

    def paint(self, painter: QPainter) -> None:
        self._kept.lay(painter, self.size(), self.look, self._note, self._draw)

    def _draw(self, painter: QPainter) -> None:
        look, margin = self.look, self.look.u(7, 3.5)
        row = QRectF(0, 0, self.width(), look.u(10, 8))
        room = self.width() - 2 * margin
        font = self._fitted(room)
        left = margin
        for state in STOCK:
            side = look.u(6.4, 5.2)
            rect = QRectF(left, row.center().y() - side / 2, side, side)
            paint_tile(painter, rect, state, look.palette)
            left = self._words(painter, row, rect.right(), FACES[state].words, font)
        left += look.u(3, 2)
        for group, (_, words) in GROUPS.items():
            wide, high = look.u(8, 6), look.u(4.4, 3.6)
            patch = QRectF(left, row.center().y() - high / 2, wide, high)
            paint_patch(painter, patch, group, look)
            left = self._words(painter, row, patch.right(), words, font)
        for n, line in enumerate(list(wrapped(self._note, look.font(Use.TABLE), room))[:2]):
            place = QPointF(margin, row.bottom() + look.u(3, 2.6) + n * look.u(4.8, 4.2))
            ink = look.colour("ink2")
            set_line(painter, place, line, look.font(Use.TABLE), ink, room=room)

    def _fitted(self, room: float) -> QFont:
        look, plain = self.look, self.look.font(Use.TABLE)
        words = [FACES[state].words for state in STOCK] + [words for _, words in GROUPS.values()]
        drawn = len(STOCK) * look.u(6.4, 5.2) + len(GROUPS) * look.u(8, 6) + look.u(3, 2)
        gaps = len(words) * (look.u(1.6, 1) + look.u(4, 2))
        return font_to_fit(plain, "".join(words), room - drawn - gaps, 8.0)

    def _words(
        self, painter: QPainter, row: QRectF, right: float, words: str, font: QFont
    ) -> float:
        """Set *words* beside what ends at *right*; returns where the next begins."""
        left = right + self.look.u(1.6, 1)
        place = QPointF(left, middle_baseline(row, font))
        set_line(painter, place, words, font, self.look.colour("ink2"))
        return left + advance(font, words) + self.look.u(4, 2)


class _RowPainter(RowPainter):
    """Paints a ``GradeFace``."""

    def draw(
        self, painter: QPainter, row: QRectF, face: GradeFace, *, here: bool, held: bool
    ) -> None:
        look = self.look
        left = paint_ground(painter, row, look, here=here, held=True)
        side = row.height() - look.u(5, 3.8)
        tile = QRectF(left + look.u(0.4), row.center().y() - side / 2, side, side)
        stamp_tile(painter, tile, face.state, look.palette)
        paint_cells(painter, row, face.columns, _edges(look, row.width()), look)


def _row_height(look: Look) -> float:
    """Of one row, two lines of words high."""
    return look.u(13.2, 10.6)


def _edges(look: Look, width: float) -> tuple[float, ...]:
    """Where each column begins in a list *width* wide, and where the last one ends."""
    first = look.u(2.2, 1.2) + look.u(11.5, 8.8)
    return (*(first + share * (width - first) for share in _SHARES), width)
