"""The heads of the columns over a list of the same width."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date

from PySide6.QtCore import QLineF, QPointF, QRectF
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.calendar_strip import paint_head
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.kept_picture import KeptPicture
from keeper.desktop.widgets.lettering import LEAST_PT, narrowed, set_line
from keeper.desktop.widgets.life_axis import TimeAxis

Edges = Callable[[Look, float], Sequence[float]]
"""Where each column of a list so wide begins, and where the last one ends."""

Months = Callable[[Look, float, date], tuple[Sequence[float], TimeAxis]]
"""The same as of a day, with the axis of months right of the columns."""


class ColumnHead(Drawn):
    """*heads* over columns between *edges*, one more than they are."""

    def __init__(
        self, look: Look, heads: Sequence[str], edges: Edges, parent: QWidget | None = None
    ) -> None:
        super().__init__(look, parent)
        self._heads, self._edges, self._spare = tuple(heads), edges, 0.0
        self._kept = KeptPicture()
        self.tell(", ".join(heads))

    def leave(self, spare: float) -> None:
        """Leave *spare* px at the right free."""
        self._spare = spare
        self.update()

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(100, 70), self.look.u(9.4, 7.6)

    def paint(self, painter: QPainter) -> None:
        about = (self._heads, self._spare)
        self._kept.lay(painter, self.size(), self.look, about, self._draw)

    def _draw(self, painter: QPainter) -> None:
        width = self.width() - self._spare
        _set_heads(painter, self._heads, self._edges(self.look, width), self.height(), self.look)
        _rule(painter, self.look.u(2.2, 1.2), width, self.height(), self.look)


class MonthsHead(Drawn):
    """*heads* over columns, and the months of a calendar right of them, as of a day.

    said: what the calendar is called; draw_more: paints on above the rule, along the axis.
    """

    def __init__(
        self,
        look: Look,
        heads: Sequence[str],
        months: Months,
        said: str,
        draw_more: Callable[[QPainter, TimeAxis, float, Look], None] | None = None,
    ) -> None:
        super().__init__(look)
        self._heads, self._months, self._said = tuple(heads), months, said
        self._draw_more = draw_more
        self._today: date | None = None
        self._spare = 0.0
        self._kept = KeptPicture()

    def show_day(self, today: date, spare: float) -> None:
        """Head the columns as of *today*; *spare* px at the right stay free."""
        self._today, self._spare = today, spare
        self.tell(", ".join((*self._heads, self._said)))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(200, 150), self.look.u(15.6, 12.6)

    def paint(self, painter: QPainter) -> None:
        if (today := self._today) is not None:
            about = (today, self._spare)
            self._kept.lay(painter, self.size(), self.look, about, lambda p: self._draw(p, today))

    def _draw(self, painter: QPainter, today: date) -> None:
        look, rect = self.look, QRectF(self.rect()).adjusted(0, 0, -self._spare, 0)
        edges, axis = self._months(look, rect.width(), today)
        _set_heads(painter, self._heads, edges, rect.bottom(), look)
        paint_head(painter, rect, axis, today, look)
        if self._draw_more is not None:
            self._draw_more(painter, axis, rect.bottom(), look)
        _rule(painter, edges[0], rect.right(), rect.bottom(), look)


def _set_heads(
    painter: QPainter, heads: Sequence[str], edges: Sequence[float], bottom: float, look: Look
) -> None:
    base, plain = bottom - look.u(1.8, 1.2), look.font(Use.TABLE)
    for text, left, end in zip(heads, edges[:-1], edges[1:], strict=True):
        room = end - left - look.u(1, 0.7)
        font = narrowed(plain, text, room, LEAST_PT)
        set_line(painter, QPointF(left, base), text, font, look.colour("ink2"), room=room)


def _rule(painter: QPainter, left: float, right: float, bottom: float, look: Look) -> None:
    painter.setPen(QPen(look.colour("line"), 1.2))
    painter.drawLine(QLineF(left, bottom - 0.6, right, bottom - 0.6))
