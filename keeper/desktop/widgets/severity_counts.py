"""The head line of the watch: its name, what was looked at, and how many lines of each severity."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.kept_picture import KeptPicture
from keeper.desktop.widgets.lettering import advance, middle_baseline, set_line
from keeper.desktop.widgets.tile import FACES, SEVERITIES, TileState, paint_tile


class SeverityCounts(Drawn):
    """A heading at the left and the four severities with their numbers at the right: the legend."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._head = self._aside = ""
        self._counts: Mapping[TileState, int] = {}
        self._kept = KeptPicture()

    def show_counts(self, head: str, aside: str, counts: Mapping[TileState, int]) -> None:
        """Show *head* and *aside*, and the number of lines of each severity."""
        self._head, self._aside, self._counts = head, aside, dict(counts)
        told = ", ".join(f"{counts.get(s, 0)} {FACES[s].words}" for s in SEVERITIES)
        self.tell(f"{head}: {told}. {aside}")

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(200, 150), self.look.u(12.5, 9.5)

    def paint(self, painter: QPainter) -> None:
        about = (self._head, self._aside, self._counts)
        self._kept.lay(painter, self.size(), self.look, about, self._draw, "ground")

    def _draw(self, painter: QPainter) -> None:
        look, rect = self.look, QRectF(self.rect())
        margin = look.u(7, 3.5)
        head, aside = look.font(Use.PAGE_HEAD), look.font(Use.PAGE_ASIDE)
        base = middle_baseline(rect, head)
        left = self._paint_counts(painter, rect.adjusted(0, 0, -margin, 0))
        used = set_line(painter, QPointF(margin, base), self._head, head, look.colour("ink"))
        at = margin + used + look.u(4, 2.4)
        room = left - at - look.u(4, 2)
        set_line(painter, QPointF(at, base), self._aside, aside, look.colour("ink3"), room=room)

    def _paint_counts(self, painter: QPainter, rect: QRectF) -> float:
        """Paint them from the right; returns where the first begins."""
        look = self.look
        number, word = look.font(Use.PAGE_HEAD), look.font(Use.BODY_STRONG)
        right = rect.right()
        for state in reversed(SEVERITIES):
            count = str(self._counts.get(state, 0))
            right -= max(advance(number, count), advance(number, "0"))
            place = QPointF(right, middle_baseline(rect, number))
            set_line(painter, place, count, number, look.colour("ink"))
            wide, high = look.u(24, 20.5), look.u(6.8, 5.8)
            right -= wide + look.u(2, 1.2)
            tile = QRectF(right, rect.center().y() - high / 2, wide, high)
            paint_tile(painter, tile, state, look.palette, letter_font=word)
            right -= look.u(8, 2.6)
        return right
