"""One thing to choose: its key, its name, what is chosen, and what follows from it, at once."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import DrawnKey
from keeper.desktop.widgets.lettering import RIGHT, advance, font_to_fit, set_line
from keeper.language import tr

_LEAST_PT = 9.0


@dataclass(frozen=True, slots=True, kw_only=True)
class ChoiceFace:
    """In words: *value* is what is chosen, *effect* what follows, *kept* where it is kept."""

    key: str
    name: str
    value: str
    effect: str
    kept: str
    refused: bool = False  # the effect says why what is typed cannot be


class ChoiceRow(DrawnKey):
    """A row that takes the keyboard; Enter, space, its key or a click ask for the change."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self.face: ChoiceFace | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        look.changed.connect(self.updateGeometry)

    def show_choice(self, face: ChoiceFace) -> None:
        """Show *face*; assistive technology reads the name with what is chosen and follows."""
        self.face = face
        self.setText(f"{face.name}: {face.value}")
        self.setAccessibleName(f"{face.key}, {face.name}: {face.value}")
        self.setAccessibleDescription(
            tr("{effect} Kept {where}.", effect=face.effect, where=face.kept)
        )
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(round(self.look.u(200)), round(self.look.u(15.6, 12.2)))

    def minimumSizeHint(self) -> QSize:
        return QSize(0, self.sizeHint().height())

    def paint(self, painter: QPainter) -> None:
        if self.face is None:
            return
        look, rect = self.look, QRectF(self.rect())
        if self.hasFocus():
            painter.fillRect(rect, look.colour("sheet"))
            bar = QRectF(rect.left(), rect.top(), look.u(1.3, 1), rect.height())
            painter.fillRect(bar, look.colour("point"))
        painter.setPen(QPen(look.colour("hair"), 1.0))
        painter.drawLine(rect.bottomLeft(), rect.bottomRight())
        self._paint_words(painter, rect, self.face)

    def _paint_words(self, painter: QPainter, rect: QRectF, face: ChoiceFace) -> None:
        look = self.look
        title, aside, body = (look.font(use) for use in (Use.LINE_TITLE, Use.TABLE, Use.BODY))
        base = rect.top() + look.u(6.6, 5.4)
        margin = look.u(7, 3.5)
        value_left = rect.left() + look.u(86, 68)
        right = rect.right() - margin
        set_line(painter, QPointF(margin, base), face.key, title, look.colour("ink3"))
        name_left = margin + look.u(7, 5)
        room = value_left - name_left - look.u(2)
        set_line(painter, QPointF(name_left, base), face.name, title, look.colour("ink"), room=room)
        kept = QPointF(right, base)
        set_line(painter, kept, face.kept, aside, look.colour("ink3"), align=RIGHT)
        room = right - value_left - advance(aside, face.kept) - margin
        place = QPointF(value_left, base)
        set_line(painter, place, face.value, title, look.colour("ink"), room=room)
        room = right - value_left
        fitted = font_to_fit(body, face.effect, room, _LEAST_PT)
        ink = look.colour("ink" if face.refused else "ink2")
        place = QPointF(value_left, base + look.u(5.8, 4.8))
        set_line(painter, place, face.effect, fitted, ink, room=room)
