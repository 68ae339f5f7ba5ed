"""The reading being typed, large enough for an arm's length: place, zone, degrees."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import RIGHT, advance, font_to_fit, set_line, wrapped
from keeper.language import tr
from keeper.reports.figures import heat_unit


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadingFace:
    """typed: digits as far as they go, empty while the last reading is shown."""

    place: str
    zone: str
    last: str
    typed: str = ""
    asked: str = ""  # a doubt, reversed
    reason: str = ""


class ReadingPanel(Drawn):
    """Words change, places never."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._face: ReadingFace | None = None

    def show_reading(self, face: ReadingFace) -> None:
        self._face = face
        typed = face.last
        if face.typed:
            typed = tr("{temp} {unit}, not written", temp=face.typed, unit=heat_unit())
        self.tell(" ".join(filter(None, (face.place, face.zone, typed, face.asked, face.reason))))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(110, 80), self.look.u(48, 40)

    def paint(self, painter: QPainter) -> None:
        face = self._face
        if face is None:
            return
        look = self.look
        frame = QRectF(self.rect()).adjusted(1.5, 1.5, -1.5, -1.5)
        pen = QPen(look.colour("ink"), 3.0)
        pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        painter.setPen(pen)
        painter.setBrush(look.colour("sheet"))
        painter.drawRect(frame)
        big, mid = look.font(Use.NAME), look.font(Use.PAGE_HEAD)
        left, right = frame.left() + look.u(4, 3), frame.right() - look.u(4, 3)
        base = frame.top() + look.u(19, 15)
        figure = f"{face.typed or '–'} {heat_unit()}"
        wide = advance(big, figure)
        set_line(painter, QPointF(right, base), figure, big, look.colour("ink"), align=RIGHT)
        room = right - wide - left - look.u(3)
        set_line(painter, QPointF(left, base), face.place, big, look.colour("ink"), room=room)
        base += look.u(8, 6.6)
        aside = tr("not written") if face.typed else face.last
        plain = look.font(Use.BODY)
        end = QPointF(right, base)
        room = right - left - look.u(2)
        room -= set_line(painter, end, aside, plain, look.colour("ink2"), align=RIGHT)
        mid = font_to_fit(mid, face.zone, room, plain.pointSizeF())
        set_line(painter, QPointF(left, base), face.zone, mid, look.colour("ink"), room=room)
        self._paint_reason(painter, face, QRectF(left, base, right - left, frame.bottom() - base))

    def _paint_reason(self, painter: QPainter, face: ReadingFace, under: QRectF) -> None:
        look = self.look
        font = look.font(Use.BODY_STRONG if face.asked else Use.BODY)
        text = face.asked or face.reason
        base = under.top() + look.u(7, 5.8)
        step = look.u(6, 5.2)
        most = max(1, int((under.bottom() - look.u(1) - base) // step) + 1)
        lines = list(wrapped(text, font, under.width()))
        if len(lines) > most:
            lines[most - 1 :] = [" ".join(lines[most - 1 :])]
        for n, line in enumerate(lines):
            y = base + n * step
            if face.asked:
                box = QRectF(under.left() - look.u(1), y - 0.8 * step, under.width(), step)
                painter.fillRect(box, look.colour("ink"))
            ink = look.colour("ground" if face.asked else "ink2")
            set_line(painter, QPointF(under.left(), y), line, font, ink, room=under.width())
