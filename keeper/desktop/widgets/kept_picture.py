"""What is the same at every paint, painted once into a picture and laid down from then on."""

from __future__ import annotations

from collections.abc import Callable, Hashable

from PySide6.QtCore import QPoint, QPointF, QRect, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPixmap

from keeper.desktop.look import Look
from keeper.reports.writing import in_use


class KeptPicture:
    """One picture, made anew when its size, look, units or what it is about differs."""

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
        paper: str = "",
    ) -> None:
        """What *paint* paints from the origin on, *size* px; *about*: all that it depends on.

        paper: the role of the plain ground that lies beneath, where nothing else does: what is
        painted on it comes out to the bit as without a picture, and is laid down more quickly.
        Where a px is no whole number of dots it is painted each time, for a picture would blur.
        """
        dots = painter.device().devicePixelRatioF()
        if not dots.is_integer():
            paint(painter)
            return
        asked = (size, dots, *seen(look), paper, about)
        if asked != self._made_for:
            self._picture = _made(size, dots, paint, look.colour(paper) if paper else None)
            self._made_for = asked
        painter.drawPixmap(QPointF(0, 0), self._picture)


class KeptRows:
    """Pictures of like parts, such as the rows of a list, by what each shows.

    The longest unused goes first.

    most: so many are kept, which should be more than are ever in view at once.
    """

    def __init__(self, most: int) -> None:
        self._most = most
        self._made_for: tuple[object, ...] = ()
        self._kept: dict[Hashable, QPixmap] = {}

    def lay(
        self,
        painter: QPainter,
        rect: QRect,
        about: Hashable,
        look_of: tuple[object, ...],
        paint: Callable[[QPainter, QRect], None],
        ground: QColor | None = None,
    ) -> None:
        """What *paint* paints into a rect of the size of *rect*, laid down there.

        about: what the row shows. look_of: what all rows depend on, such as ``seen``; nothing is
        kept beyond it. ground: the colour of what lies beneath, as *paper* of a ``KeptPicture``.
        Where a px is no whole number of dots it is painted each time, for a picture would blur.
        """
        dots = painter.device().devicePixelRatioF()
        if not dots.is_integer():
            paint(painter, rect)
            return
        if (asked := (dots, *look_of)) != self._made_for:
            self._made_for, self._kept = asked, {}
        key = (about, rect.width(), rect.height())
        picture = self._kept.pop(key, None)
        if picture is None:
            area = QRect(QPoint(0, 0), rect.size())
            picture = _made(rect.size(), dots, lambda p: paint(p, area), ground)
            while len(self._kept) >= self._most:
                del self._kept[next(iter(self._kept))]
        self._kept[key] = picture
        painter.drawPixmap(rect.topLeft(), picture)


def seen(look: Look) -> tuple[object, ...]:
    """All of the look that a picture depends on, and how figures are written."""
    return look.palette, look.small, look.u(1.0), in_use()


def _made(
    size: QSize, dots: float, paint: Callable[[QPainter], None], ground: QColor | None
) -> QPixmap:
    made = QPixmap(size * dots)
    made.setDevicePixelRatio(dots)
    made.fill(Qt.GlobalColor.transparent if ground is None else ground)
    painter = QPainter(made)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    try:
        paint(painter)
    finally:
        painter.end()  # a fault that leaves it open would end the process with the picture
    return made
