"""Grades of prey in a list with a head and a legend; arrows walk, Enter activates."""

from __future__ import annotations

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
from keeper.desktop.widgets.kept_picture import KeptPicture, KeptRows
from keeper.desktop.widgets.lettering import (
    LEAST_PT,
    advance,
    font_to_fit,
    middle_baseline,
    narrowed,
    set_line,
    wrapped,
)
from keeper.desktop.widgets.prey_demand import GROUPS, paint_patch
from keeper.desktop.widgets.row_list import RowList
from keeper.desktop.widgets.stamps import stamp_tile
from keeper.desktop.widgets.tile import FACES, STOCK, TileState, paint_tile
from keeper.language import tr

FACE_ROLE = Qt.ItemDataRole.UserRole
_HEADS = (tr("grade, an item"), tr("left, bags"), tr("used a week"), tr("lasts"), tr("order by"))
_SHARES = (0.0, 0.265, 0.425, 0.605, 0.79)
"""Where each column begins, as a share of the width beside the tiles."""

_KEPT_ROWS = 40

Index = QModelIndex | QPersistentModelIndex


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
        self.setItemDelegate(_RowPainter(look, self))
        self.setObjectName("prey")
        self.setAccessibleName(tr("grades of prey, what is to be ordered first at the top"))


class PreyHead(Drawn):
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
        return self.look.u(110, 80), self.look.u(9.4, 7.6)

    def paint(self, painter: QPainter) -> None:
        self._kept.lay(painter, self.size(), self.look, self._spare, self._draw)

    def _draw(self, painter: QPainter) -> None:
        look, width = self.look, self.width() - self._spare
        base, plain = self.height() - look.u(1.8, 1.2), look.font(Use.TABLE)
        lefts = _lefts(look, width)
        for text, left, end in zip(_HEADS, lefts, (*lefts[1:], width), strict=True):
            room = end - left - look.u(1)
            font = narrowed(plain, text, room, LEAST_PT)
            set_line(painter, QPointF(left, base), text, font, look.colour("ink2"), room=room)
        painter.setPen(QPen(look.colour("line"), 1.2))
        y = self.height() - 0.6
        painter.drawLine(QLineF(look.u(2.2, 1.2), y, width, y))


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


class _RowPainter(QStyledItemDelegate):
    """Paints a ``GradeFace``."""

    def __init__(self, look: Look, view: QListView) -> None:
        super().__init__(view)
        self._look, self._view = look, view
        self._kept = KeptRows(_KEPT_ROWS)

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        return QSize(self._view.viewport().width(), round(_row_height(self._look)))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        look, face = self._look, index.data(FACE_ROLE)
        here = bool(option.state & QStyle.StateFlag.State_Selected)
        look_of = (look.palette, look.small, look.u(1.0))
        self._kept.lay(
            painter,
            option.rect,
            (face, here),
            look_of,
            lambda on, rect: _paint_row(on, rect, face, look, here=here),
        )


def _row_height(look: Look) -> float:
    """Of one row, two lines of words high."""
    return look.u(13.2, 10.6)


def _lefts(look: Look, width: float) -> tuple[float, ...]:
    """Where each column begins in a list *width* wide."""
    first = look.u(2.2, 1.2) + look.u(11.5, 8.8)
    return tuple(first + share * (width - first) for share in _SHARES)


def _paint_row(painter: QPainter, rect: QRect, face: GradeFace, look: Look, *, here: bool) -> None:
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    row = QRectF(rect)
    painter.fillRect(row, look.colour("sheet" if here else "ground"))
    if here:
        bar = QRectF(row.left(), row.top(), look.u(1.2, 0.8), row.height())
        painter.fillRect(bar, look.colour("point"))
    left = row.left() + look.u(2.2, 1.2)
    painter.setPen(QPen(look.colour("hair"), 1.0))
    painter.drawLine(QLineF(left, row.bottom() - 0.5, row.right(), row.bottom() - 0.5))
    side = row.height() - look.u(5, 3.8)
    tile = QRectF(left + look.u(0.4), row.center().y() - side / 2, side, side)
    stamp_tile(painter, tile, face.state, look.palette)
    strong, plain = look.font(Use.BODY_STRONG), look.font(Use.TABLE)
    first, second = row.top() + look.u(5.6, 4.5), row.top() + look.u(10.4, 8.6)
    lefts = _lefts(look, row.width())
    columns = zip(face.columns, lefts, (*lefts[1:], row.width()), strict=True)
    for (above, beneath), at, end in columns:
        room, at = end - at - look.u(1), row.left() + at
        font = narrowed(strong, above, room, LEAST_PT)
        set_line(painter, QPointF(at, first), above, font, look.colour("ink"), room=room)
        fitted = narrowed(plain, beneath, room, LEAST_PT)
        set_line(painter, QPointF(at, second), beneath, fitted, look.colour("ink2"), room=room)
