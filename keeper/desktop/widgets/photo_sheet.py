"""The photos of the cursor's day, one under another, with what they show."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QImage, QPainter, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from keeper.desktop.look import Look
from keeper.desktop.picture_files import thumbnail
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import set_line
from keeper.language import tr

NO_PHOTO = tr("no photo of this day")
_HEIGHT_UNITS = (46.0, 22.0)
_RED_LAMP_SHARE = 0.5  # of the light of a photo, which would dazzle between dim lines
_WIDTH_UNITS = (61.5, 52.0)


class PhotoSheet(Drawn):
    """Shows the last photo of a day; hidden on days without one."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._path: Path | None = None
        self._image = QImage()
        self._words = ""
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        look.changed.connect(self._read)
        self.tell(NO_PHOTO)
        self.hide()

    def show_photos(self, pictures: Sequence[Path], words: str) -> None:
        """Show the last of *pictures*; *words* say what all photos of the day show."""
        path = pictures[-1] if pictures else None
        if path != self._path:
            self._path = path
            self._read()
        self._words = words
        self.tell(tr("photo: {words}", words=words) if words else NO_PHOTO)
        self.setVisible(bool(words))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(*_WIDTH_UNITS), self.look.u(*_HEIGHT_UNITS)

    def paint(self, painter: QPainter) -> None:
        look, box = self.look, QRectF(self.rect())
        painter.fillRect(box, look.colour("sheet"))
        painter.setPen(QPen(look.colour("point"), 3))
        painter.drawLine(QLineF(1.5, 0, 1.5, box.height()))
        left, foot = look.u(4.2, 3), look.u(6.4, 5)
        if not self._image.isNull():
            room = QRectF(left, look.u(1), box.width() - left - look.u(2.4), box.height() - foot)
            size = self._image.deviceIndependentSize()
            size.scale(room.size(), Qt.AspectRatioMode.KeepAspectRatio)
            at = QPointF(room.left(), room.top())
            painter.setOpacity(_RED_LAMP_SHARE if look.red_lamp else 1.0)
            painter.drawImage(QRectF(at, size), self._image)
            painter.setOpacity(1.0)
        base = QPointF(left, box.height() - look.u(2, 1.6))
        font, ink = look.font(Use.TABLE), look.colour("ink2")
        set_line(painter, base, self._words, font, ink, room=box.width() - left - look.u(2.4))

    def _read(self) -> None:
        """Decoded no larger than it is shown."""
        dots = self.devicePixelRatioF()
        wide, high = (round(side * dots) for side in self.natural_size())
        self._image = thumbnail(self._path, wide, high) if self._path else QImage()
        self._image.setDevicePixelRatio(dots)
        self.update()
