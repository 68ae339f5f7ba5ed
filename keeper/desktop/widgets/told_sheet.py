"""Lines of words on a sheet, some of them heavy; what has no room is counted."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import set_line, wrapped


class ToldSheet(Drawn):
    """A framed sheet of lines; long ones are broken."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._lines: tuple[tuple[str, bool], ...] = ()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def show_lines(self, lines: Sequence[tuple[str, bool]]) -> None:
        """Show *lines* as (text, heavy)."""
        self._lines = tuple(lines)
        self.tell("\n".join(text for text, _ in lines))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(110, 80), self.look.u(60, 40)

    def paint(self, painter: QPainter) -> None:
        look = self.look
        frame = QRectF(self.rect()).adjusted(0.8, 0.8, -0.8, -0.8)
        pen = QPen(look.colour("line"), 1.2)
        pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        painter.setPen(pen)
        painter.setBrush(look.colour("sheet"))
        painter.drawRect(frame)
        left, room = look.u(4, 3), self.width() - look.u(8, 6)
        step = look.u(6, 5)
        base = look.u(7, 5.6)
        for text, heavy in self._lines:
            font = look.font(Use.BODY_STRONG if heavy else Use.TABLE)
            ink = look.colour("ink" if heavy else "ink2")
            for line in wrapped(text, font, room):
                if base > self.height() - look.u(2):
                    return
                set_line(painter, QPointF(left, base), line, font, ink, room=room)
                base += step
