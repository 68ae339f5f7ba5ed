"""Clutches in a list with a head and a legend; arrows walk, Enter activates."""

from __future__ import annotations

from collections.abc import Hashable, Iterator, Sequence
from datetime import date

from PySide6.QtCore import (
    QAbstractItemModel,
    QPointF,
    QRectF,
)
from PySide6.QtGui import QPainter, QPicture
from PySide6.QtWidgets import (
    QWidget,
)

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.calendar_strip import (
    Window,
    paint_laid,
    paint_letter,
    paint_window,
)
from keeper.desktop.widgets.clutch_row import (
    ClutchColumns,
    ClutchFace,
    clutch_row_height,
    paint_clutch,
    paint_weeks,
)
from keeper.desktop.widgets.column_head import MonthsHead
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.kept_picture import KeptPicture
from keeper.desktop.widgets.lettering import advance, middle_baseline, set_line, wrapped
from keeper.desktop.widgets.life_axis import TimeAxis
from keeper.desktop.widgets.row_list import RowList, RowPainter
from keeper.desktop.widgets.tile import EGGS, FACES, TileState, paint_tile
from keeper.language import tr

_ROWS_KEPT = 24
_HEADS = (tr("clutch, dam"), tr("lies in"), tr("laid, days"), tr("eggs"))

CANDLE, FIRST_OUT = tr("C", sense="candle"), tr("P", sense="first out")
"""Letters of the calendar; the legend says what they are."""


class ClutchList(RowList):
    """Shows a model whose ``FACE_ROLE`` gives a ``ClutchFace``."""

    def __init__(
        self, look: Look, model: QAbstractItemModel, parent: QWidget | None = None
    ) -> None:
        super().__init__(look, model, clutch_row_height, parent)
        self.painter = ClutchPainter(self, _ROWS_KEPT)
        self.setItemDelegate(self.painter)
        self.setObjectName("clutches")
        self.setAccessibleName(tr("clutches, the open ones first"))


class ClutchPainter(RowPainter):
    """Paints a ``ClutchFace`` as of ``today``."""

    today: date | None = None

    def beside(self) -> Hashable:
        return self.today

    def draw(
        self, painter: QPainter, row: QRectF, face: ClutchFace, *, here: bool, held: bool
    ) -> None:
        assert self.today is not None
        paint_clutch(painter, row.toRect(), face, self.today, self.look, here=here)


def clutch_head(look: Look) -> MonthsHead:
    """The heads of the columns, months and weeks."""

    def months(look: Look, width: float, today: date) -> tuple[Sequence[float], TimeAxis]:
        at = ClutchColumns.of(look, width, today)
        return (at.code, at.where, at.since, at.eggs, at.calendar.left), at.calendar

    return MonthsHead(look, _HEADS, months, tr("calendar of weeks"), paint_weeks)


class ClutchLegend(Drawn):
    """What tiles, letters and marks of the list mean, and the cautions beneath."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._caution = ""
        self._kept = KeptPicture()
        self._left = 0.0

    def show_caution(self, caution: str) -> None:
        """Stand *caution* beneath the legend."""
        self._caution = caution
        letters = ", ".join(f"{FACES[state].letter} {FACES[state].words}" for state in EGGS)
        marks = ", ".join(f"{letter} {words}" for letter, words in _lettered())
        told = {"letters": letters, "marks": marks, "caution": caution}
        self.tell(tr("legend: {letters}, {marks}. {caution}", **told))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(200, 150), self.look.u(19, 16)

    def paint(self, painter: QPainter) -> None:
        self._kept.lay(painter, self.size(), self.look, self._caution, self._draw)

    def _draw(self, painter: QPainter) -> None:
        look = self.look
        row = QRectF(0, 0, self.width(), look.u(9, 7))
        measured = QPicture()
        self._legend(QPainter(measured), row)
        painter.save()
        room = self.width() - look.u(7, 3.5)
        share = min(1.0, room / self._left)  # words of another language may be longer
        painter.translate(0, row.center().y() * (1 - share))
        painter.scale(share, share)
        self._legend(painter, row)
        painter.restore()
        font = look.font(Use.TABLE)
        room = self.width() - 2 * look.u(7, 3.5)
        for n, line in enumerate(list(wrapped(self._caution, font, room))[:2]):
            place = QPointF(look.u(7, 3.5), row.bottom() + look.u(3, 2.6) + n * look.u(4.8, 4.2))
            set_line(painter, place, line, font, look.colour("ink2"), room=room)

    def _legend(self, painter: QPainter, row: QRectF) -> None:
        """Tiles, letters and marks from the left; ``_left`` is where they end."""
        look = self.look
        self._left = look.u(7, 3.5)
        for state in EGGS:
            self._tile(painter, row, state)
        middle, half = row.center().y(), look.u(1.6, 1.3)
        paint_laid(painter, QPointF(self._left + half, middle), look)
        self._left += 2 * half + look.u(1.6, 1)
        self._words(painter, row, tr("laid"))
        for letter, words in _lettered():
            paint_letter(painter, QPointF(self._left + look.u(2, 1.7), middle), letter, look)
            self._left += look.u(5.4, 4.4)
            self._words(painter, row, words)
        self._window(painter, row)

    def _tile(self, painter: QPainter, row: QRectF, state: TileState) -> None:
        look, side = self.look, self.look.u(5.4, 4.4)
        rect = QRectF(self._left, row.center().y() - side / 2, side, side)
        paint_tile(painter, rect, state, look.palette, FACES[state].letter)
        self._left += side + look.u(1.4, 0.9)
        self._words(painter, row, FACES[state].words)

    def _window(self, painter: QPainter, row: QRectF) -> None:
        look = self.look
        wide, high = look.u(11, 8), look.u(4, 3.2)
        bar = QRectF(self._left + look.u(1), row.center().y() - high / 2, wide, high)
        days = [date(2026, 1, n) for n in (1, 4, 8, 11)]
        axis = TimeAxis(first=days[0], last=days[-1], left=bar.left(), right=bar.right())
        window = Window(on=None, low=days[0], half_low=days[1], half_high=days[2], high=days[3])
        paint_window(painter, bar, axis, window, look)
        self._left = bar.right() + look.u(1.6, 1)
        self._words(painter, row, tr("first slit: usual days, and by its heat"), last=True)

    def _words(self, painter: QPainter, row: QRectF, text: str, *, last: bool = False) -> None:
        font = self.look.font(Use.TABLE)
        place = QPointF(self._left, middle_baseline(row, font))
        set_line(painter, place, text, font, self.look.colour("ink2"))
        self._left += advance(font, text) + (0.0 if last else self.look.u(3.4, 1.8))


def _lettered() -> Iterator[tuple[str, str]]:
    yield CANDLE, tr("candle")
    yield FIRST_OUT, tr("first slit or out")
