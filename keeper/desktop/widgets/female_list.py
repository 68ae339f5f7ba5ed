"""Females in a list with a head and a legend; arrows walk, Enter activates."""

from __future__ import annotations

from collections.abc import Hashable, Sequence
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
    paint_bracket,
    paint_laid,
    paint_ring,
    paint_window,
)
from keeper.desktop.widgets.column_head import MonthsHead
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.gate_row import (
    GATE_LETTERS,
    Columns,
    FemaleFace,
    RowPaper,
    paint_female,
    row_height,
)
from keeper.desktop.widgets.kept_picture import KeptPicture
from keeper.desktop.widgets.lettering import advance, middle_baseline, set_line, wrapped
from keeper.desktop.widgets.life_axis import TimeAxis
from keeper.desktop.widgets.row_list import RowList, RowPainter
from keeper.desktop.widgets.tile import FACES, GATES, TileState, paint_tile
from keeper.language import tr
from keeper.reports.words import word_of

_ROWS_KEPT = 28
_HEADS = (tr("tub, name, kind"), tr("empty weight of gate"), tr("gates"))


class FemaleList(RowList):
    """Shows a model whose ``FACE_ROLE`` gives a ``FemaleFace``."""

    def __init__(
        self, look: Look, model: QAbstractItemModel, parent: QWidget | None = None
    ) -> None:
        super().__init__(look, model, row_height, parent)
        self.painter = FemalePainter(self, _ROWS_KEPT)
        self.setItemDelegate(self.painter)
        self.setObjectName("females")
        self.setAccessibleName(tr("females, nearest to their gates first"))


class FemalePainter(RowPainter):
    """Paints a ``FemaleFace`` as of ``today``."""

    today: date | None = None

    def __init__(self, of: RowList, most: int) -> None:
        super().__init__(of, most)
        self._paper = RowPaper(of.look)

    def beside(self) -> Hashable:
        return self.today

    def draw(
        self, painter: QPainter, row: QRectF, face: FemaleFace, *, here: bool, held: bool
    ) -> None:
        assert self.today is not None
        at, look = row.toRect(), self.look
        paint_female(painter, at, face, self.today, look, self._paper, here=here)


def female_head(look: Look) -> MonthsHead:
    """The heads of the columns and the months."""

    def months(look: Look, width: float, today: date) -> tuple[Sequence[float], TimeAxis]:
        at = Columns.of(look, width, today)
        return (at.place, at.weight, at.gates, at.calendar.left), at.calendar

    return MonthsHead(look, _HEADS, months, tr("calendar of months"))


class GateLegend(Drawn):
    """What tiles, letters and marks of the list mean, and a caution beneath."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._caution = ""
        self._kept = KeptPicture()

    def show_caution(self, caution: str) -> None:
        """Stand *caution* beneath the legend."""
        self._caution = caution
        letters = ", ".join(f"{letter} {words}" for letter, words in _letters())
        self.tell(tr("legend: {letters}. {caution}", letters=letters, caution=caution))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(200, 150), self.look.u(19, 17)

    def paint(self, painter: QPainter) -> None:
        self._kept.lay(painter, self.size(), self.look, self._caution, self._draw)

    def _draw(self, painter: QPainter) -> None:
        look = self.look
        row = QRectF(0, 0, self.width(), look.u(10, 8))
        measured = QPicture()
        self._legend(QPainter(measured), row)
        painter.save()
        margin = look.u(7, 3.5)
        room = self.width() - 2 * margin
        share = min(1.0, room / (self._left - margin))  # another language's words may be longer
        painter.translate(margin * (1 - share), row.center().y() * (1 - share))
        painter.scale(share, share)
        self._legend(painter, row)
        painter.restore()
        font = look.font(Use.TABLE)
        for n, line in enumerate(list(wrapped(self._caution, font, room))[:2]):
            place = QPointF(margin, row.bottom() + look.u(3, 2.6) + n * look.u(4.8, 4.2))
            set_line(painter, place, line, font, look.colour("ink2"), room=room)

    def _legend(self, painter: QPainter, row: QRectF) -> None:
        """Tiles, letters and marks from the left; ``_left`` is where they end."""
        look = self.look
        self._left = look.u(7, 3.5)
        for state in GATES:
            self._tile(painter, row, state)
        for letter, words in _letters():
            self._words(painter, row, letter, Use.TABLE_STRONG, look.u(1, 0.7))
            self._words(painter, row, words, Use.TABLE, look.u(2.4, 1.5))
        self._marks(painter, row)

    def _tile(self, painter: QPainter, row: QRectF, state: TileState) -> None:
        look, side = self.look, self.look.u(6.4, 5.2)
        rect = QRectF(self._left, row.center().y() - side / 2, side, side)
        paint_tile(painter, rect, state, look.palette, FACES[state].letter or "W")
        self._left += side + look.u(1.6, 1)
        self._words(painter, row, FACES[state].words, Use.TABLE, look.u(4, 2))

    def _words(self, painter: QPainter, row: QRectF, text: str, use: Use, gap: float) -> None:
        font = self.look.font(use)
        place = QPointF(self._left, middle_baseline(row, font))
        set_line(painter, place, text, font, self.look.colour("ink2"))
        self._left += advance(font, text) + gap

    def _marks(self, painter: QPainter, row: QRectF) -> None:
        look = self.look
        wide, high = look.u(11, 8), look.u(4, 3.2)
        bar = QRectF(self._left + look.u(1), row.center().y() - high / 2, wide, high)
        days = [date(2026, 1, n) for n in (1, 3, 6, 9, 11)]
        axis = TimeAxis(first=days[0], last=days[-1], left=bar.left(), right=bar.right())
        window = Window(low=days[0], half_low=days[1], on=days[2], half_high=days[3], high=days[4])
        paint_window(painter, bar, axis, window, look)
        self._left = bar.right() + look.u(1.6, 1)
        self._words(painter, row, tr("8 and 5 in 10"), Use.TABLE, look.u(4, 2))
        paint_bracket(painter, QPointF(self._left + 2, row.center().y()), look)
        self._left += look.u(3, 2.4)
        self._words(painter, row, tr("age gate"), Use.TABLE, look.u(4, 2))
        self._of_breeding(painter, row)

    def _of_breeding(self, painter: QPainter, row: QRectF) -> None:
        """Pairings and clutches on the calendar."""
        middle, ring = row.center().y(), self.look.u(1.3, 1)
        for filled, words in ((False, tr("paired")), (True, tr("lock"))):
            centre = QPointF(self._left + ring, middle)
            paint_ring(painter, centre, self.look, filled=filled)
            self._left += 2 * ring + self.look.u(1.6, 1)
            self._words(painter, row, words, Use.TABLE, self.look.u(4, 2))
        paint_laid(painter, QPointF(self._left + ring, middle), self.look)
        self._left += 2 * ring + self.look.u(1.6, 1)
        self._words(painter, row, tr("laid"), Use.TABLE, 0.0)


def _letters() -> list[tuple[str, str]]:
    return [(letter, word_of("gate", name)) for name, letter in GATE_LETTERS.items()]
