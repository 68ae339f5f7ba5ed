"""What is the same at every paint, painted once into a picture and laid down from then on."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QPointF, QSize, Qt
from PySide6.QtGui import QPainter, QPixmap

from keeper.desktop.look import Look


class KeptPicture:
    """One picture; it is made anew when its size, the look, or what it is about differs."""

    def __init__(self) -> None:
        self._made_for: tuple[object, ...] = ()
        self._picture = QPixmap()

    def lay(
        self,
        painter: QPainter,
        size: QSize,
        look: Look,
        about: object,
        paint: Callable[[QPainter], None],
    ) -> None:
        """What *paint* paints from the origin on, *size* px; *about*: all that it depends on.

        Where a px is no whole number of dots it is painted each time, for a picture would blur.
        """
        dots = painter.device().devicePixelRatioF()
        if not dots.is_integer():
            paint(painter)
            return
        asked = (size, dots, look.palette, look.small, look.u(1.0), about)
        if asked != self._made_for:
            self._picture = _made(size, dots, paint)
            self._made_for = asked
        painter.drawPixmap(QPointF(0, 0), self._picture)


def _made(size: QSize, dots: float, paint: Callable[[QPainter], None]) -> QPixmap:
    made = QPixmap(size * dots)
    made.setDevicePixelRatio(dots)
    made.fill(Qt.GlobalColor.transparent)
    painter = QPainter(made)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    paint(painter)
    painter.end()
    return made
