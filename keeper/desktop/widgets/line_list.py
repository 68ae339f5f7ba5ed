"""What the house breeds for, in a list with a head and a legend: genes, then lines of colour."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import (
    QAbstractItemModel,
    QLineF,
    QModelIndex,
    QPersistentModelIndex,
    QPointF,
    QRect,
    QRectF,
    QSize,
    Qt,
)
from PySide6.QtGui import QFont, QPainter, QPen
from PySide6.QtWidgets import (
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.kept_picture import KeptPicture, KeptRows, seen
from keeper.desktop.widgets.lettering import (
    LEAST_PT,
    font_to_fit,
    middle_baseline,
    narrowed,
    set_line,
    wrapped,
)
from keeper.desktop.widgets.row_list import RowList
from keeper.desktop.widgets.stamps import stamp_tile
from keeper.desktop.widgets.tile import FACES, LINES, ODDS, TileState
from keeper.language import tr

FACE_ROLE = Qt.ItemDataRole.UserRole
_HEADS = (tr("gene, or line and look"), tr("in the room, or by generations"))
_SHARES = (0.0, 0.46, 0.64, 0.83)
"""Where the name and the three figures begin, of what is right of the tile."""
_ROWS_KEPT = 32

Index = QModelIndex | QPersistentModelIndex


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
        self.setItemDelegate(_RowPainter(look, self))
        self.setObjectName("lines")
        self.setAccessibleName(tr("genes of each species, then lines scored for colour"))


class LineHead(Drawn):
    """The heads of the columns, over a list of the same width."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._spare = 0.0
        self._kept = KeptPicture()
        self.tell(", ".join(_HEADS))

    def leave(self, spare: float) -> None:
        """Leave *spare* px at the right free."""
        self._spare = spare
        self.update()

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(100, 70), self.look.u(9.4, 7.6)

    def paint(self, painter: QPainter) -> None:
        self._kept.lay(painter, self.size(), self.look, self._spare, self._draw)

    def _draw(self, painter: QPainter) -> None:
        look, width = self.look, self.width() - self._spare
        base, plain = self.height() - look.u(1.8, 1.2), look.font(Use.TABLE)
        lefts = _lefts(look, width)
        for text, left, end in zip(_HEADS, lefts[:2], (lefts[1], width), strict=True):
            room = end - left - look.u(1)
            font = narrowed(plain, text, room, LEAST_PT)
            set_line(painter, QPointF(left, base), text, font, look.colour("ink2"), room=room)
        painter.setPen(QPen(look.colour("line"), 1.2))
        y = self.height() - 0.6
        painter.drawLine(QLineF(look.u(2.2, 1.2), y, width, y))


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


class _RowPainter(QStyledItemDelegate):
    """Paints a ``LineFace``."""

    def __init__(self, look: Look, view: QListView) -> None:
        super().__init__(view)
        self._look, self._view = look, view
        self._kept = KeptRows(_ROWS_KEPT)

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        return QSize(self._view.viewport().width(), round(_row_height(self._look)))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        look, face = self._look, index.data(FACE_ROLE)
        here = bool(option.state & QStyle.StateFlag.State_Selected)
        held = here and self._view.hasFocus()

        def draw(on: QPainter, rect: QRect) -> None:
            _paint_row(on, rect, face, look, here=here, held=held)

        ground = look.colour("ground")
        self._kept.lay(painter, option.rect, (face, here, held), seen(look), draw, ground)


def _row_height(look: Look) -> float:
    """Of one row, two lines of words high."""
    return look.u(13.2, 10.6)


def _lefts(look: Look, width: float) -> tuple[float, ...]:
    """Where each column begins in a list *width* wide."""
    first = look.u(2.2, 1.2) + look.u(11, 8.6)
    return tuple(first + share * (width - first) for share in _SHARES)


def _paint_row(
    painter: QPainter, rect: QRect, face: LineFace, look: Look, *, here: bool, held: bool
) -> None:
    row = QRectF(rect)
    paint_ground(painter, row, look, here=here, held=held)
    side = row.height() - look.u(5, 3.8)
    left = row.left() + look.u(2.6, 1.6)
    tile = QRectF(left, row.center().y() - side / 2, side, side)
    stamp_tile(painter, tile, face.state, look.palette)
    cells = ((face.name, face.under), *face.figures)
    lefts = _lefts(look, row.width())
    paint_cells(painter, row, cells, (*lefts, row.width()), look)


def paint_ground(painter: QPainter, row: QRectF, look: Look, *, here: bool, held: bool) -> None:
    """The paper of a row, a pointer before the chosen one, a hair beneath.

    held: whether its list has the keyboard; else the pointer is quiet.
    """
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.fillRect(row, look.colour("sheet" if here else "ground"))
    if here:
        bar = QRectF(row.left(), row.top(), look.u(1.2, 0.8), row.height())
        painter.fillRect(bar, look.colour("point" if held else "line"))
    left = row.left() + look.u(2.2, 1.2)
    painter.setPen(QPen(look.colour("hair"), 1.0))
    painter.drawLine(QLineF(left, row.bottom() - 0.5, row.right(), row.bottom() - 0.5))


def paint_cells(
    painter: QPainter,
    row: QRectF,
    cells: Sequence[tuple[str, str]],
    edges: Sequence[float],
    look: Look,
) -> None:
    """Two lines of words in each column, between *edges*, one more than *cells*."""
    strong, plain = look.font(Use.BODY_STRONG), look.font(Use.TABLE)
    first, second = row.top() + look.u(5.6, 4.5), row.top() + look.u(10.4, 8.6)
    for (above, beneath), at, end in zip(cells, edges[:-1], edges[1:], strict=True):
        room, left = end - at - look.u(1, 0.8), row.left() + at
        font = narrowed(strong, above, room, LEAST_PT)
        set_line(painter, QPointF(left, first), above, font, look.colour("ink"), room=room)
        fitted = narrowed(plain, beneath, room, LEAST_PT)
        set_line(painter, QPointF(left, second), beneath, fitted, look.colour("ink2"), room=room)
