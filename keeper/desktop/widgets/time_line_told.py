"""What is told of a tub and a day beside the time-line: a sheet of whole sentences."""

from __future__ import annotations

from PySide6.QtCore import QLineF, QPointF, QRectF
from PySide6.QtGui import QFont, QPainter, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from keeper.actions.time_line_told import Told
from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import advance, cap_height, set_line, wrapped
from keeper.language import tr

_SHARES = (1.0, 0.94, 0.88, 0.84)
"""Of their size, to which the sentences may shrink before the last are left to the paper."""


class ToldSheet(Drawn):
    """Takes the height there is; what has no room is said to be on paper."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._told: Told | None = None
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)

    def show_told(self, told: Told) -> None:
        """Show one tub on one day."""
        self._told = told
        self.tell(told.words)

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(82, 72), self.look.u(100, 70)

    def paint(self, painter: QPainter) -> None:
        look = self.look
        sheet = QRectF(self.rect())
        painter.fillRect(sheet, look.colour("sheet"))
        painter.setPen(QPen(look.colour("point"), 3))
        painter.drawLine(QLineF(1.5, 0, 1.5, self.height()))
        if self._told is None:
            return
        top = self._paint_head(painter, self._told)
        room = self.height() - top - look.u(2, 1.2)
        for share in _SHARES:
            lines = self._lines(self._told, share)
            if sum(high for _, _, _, high in lines) <= room:
                break
        self._paint_lines(painter, lines, top, room)

    def _paint_head(self, painter: QPainter, told: Told) -> float:
        look, left = self.look, self.look.u(4.2, 3)
        head, aside = look.font(Use.PAGE_HEAD), look.font(Use.PAGE_ASIDE)
        base = cap_height(head) + look.u(3, 2)
        gap, ends = look.u(3, 2), self.width() - look.u(2, 1.4)
        room = ends - left - gap - advance(aside, told.aside)
        ink = look.colour("point")
        used = set_line(painter, QPointF(left, base), told.head, head, ink, room=room)
        place = QPointF(left + used + gap, base)
        set_line(painter, place, told.aside, aside, look.colour("ink2"))
        return base + look.u(2.4, 1.6)

    def _lines(self, told: Told, share: float) -> list[tuple[str, QFont, str, float]]:
        """Every line with its font, its ink and its height; a head begins with air."""
        look = self.look
        plain, strong = look.font(Use.BODY), look.font(Use.TABLE_STRONG)
        if look.small:
            plain = look.font(Use.TABLE)
        for font in (plain, strong):
            font.setPointSizeF(font.pointSizeF() * share)
        room = self.width() - look.u(4.2, 3) - look.u(2.4, 1.6)
        step, air = 1.9 * cap_height(plain), look.u(1.7, 1) * share
        found: list[tuple[str, QFont, str, float]] = []
        for para in told.paras:
            if para.head:
                found.append((para.head, strong, "ink2", step + air))
            found += [(line, plain, "ink", step) for line in wrapped(para.text, plain, room)]
        return found

    def _paint_lines(
        self,
        painter: QPainter,
        lines: list[tuple[str, QFont, str, float]],
        top: float,
        room: float,
    ) -> None:
        look, left, used = self.look, self.look.u(4.2, 3), 0.0
        more = sum(high for _, _, _, high in lines) > room
        for n, (words, font, ink, high) in enumerate(lines):
            last = more and used + 2 * high > room
            said = tr("… and more: Ctrl+P prints all of it.") if last else words
            place = QPointF(left, top + used + high - 0.3 * cap_height(font))
            shown = look.colour("ink2" if last else ink)
            set_line(painter, place, said, font, shown, room=self.width() - left)
            used += high
            if last and n < len(lines):
                return
