"""The chosen animal's reasons in full, what must be seen first on reversed ground."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import advance, set_line, wrapped


class ShedPanel(Drawn):
    """A name, a caution, the reasons."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._name = self._caution = self._why = ""

    def show_why(self, name: str, caution: str, why: str) -> None:
        """name, empty where no animal is chosen: *why* then says so."""
        self._name, self._caution, self._why = name, caution, why
        self.tell(f"{name}. {why}" if name else why)

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(200, 150), self.look.u(25, 20)

    def paint(self, painter: QPainter) -> None:
        look = self.look
        left, right = look.u(7, 3.5), self.width() - look.u(7, 3.5)
        painter.fillRect(QRectF(self.rect()), look.colour("sheet"))
        painter.setPen(QPen(look.colour("ink"), 1.6))
        painter.drawLine(0, 1, self.width(), 1)
        head = look.font(Use.PAGE_HEAD)
        base = look.u(6.6, 5.4)
        ink = look.colour("ink")
        name_px = advance(head, self._name) + look.u(6, 4)
        wide = min(max(name_px, 0.16 * self.width()), 0.3 * self.width()) if self._name else 0.0
        set_line(painter, QPointF(left, base), self._name, head, ink, room=wide)
        x = left + wide
        font, strong, step = look.font(Use.BODY), look.font(Use.BODY_STRONG), look.u(6, 5)
        for line in list(wrapped(self._caution, strong, right - x))[:2]:
            box = QRectF(x - look.u(1), base - 0.76 * step, right - x + look.u(1), step)
            painter.fillRect(box, ink)
            set_line(painter, QPointF(x, base), line, strong, look.colour("ground"))
            base += step
        rest = self._why.replace(self._caution, "").strip() if self._caution else self._why
        for line in wrapped(rest, font, right - x):
            if base > self.height() - look.u(1):
                return
            set_line(painter, QPointF(x, base), line, font, look.colour("ink2"))
            base += step
