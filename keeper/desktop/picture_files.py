"""A picture file taken in: decoded, turned upright, made small, and written anew without a word.

Only the pixels are kept. Place, device and whatever else a camera writes into a picture stay
behind, and nothing of a file that is not a picture gets any further.
"""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, Qt
from PySide6.QtGui import QImage, QImageReader, QImageWriter, QPainter

from keeper.language import tr

LONGEST_PX = 1600
"""Longest side of a kept photo: scales and eye caps can be read, and ten thousand fit a stick."""

QUALITY = 85
BYTES_MOST = 64 * 2**20
FORMATS = frozenset({b"jpeg", b"png", b"webp"})


def reencoded(path: Path) -> bytes:
    """The picture at *path* as a JPEG of at most ``LONGEST_PX`` a side, without metadata.

    Raises:
        ValueError: no file, too large a file, or not a picture of ``FORMATS``; one sentence.
    """
    if not path.is_file():
        raise ValueError(
            tr("There is no file {path}; name a JPEG, PNG or WebP picture.", path=path)
        )
    if path.stat().st_size > BYTES_MOST:
        most = BYTES_MOST // 2**20
        told = tr("{name} is larger than {most} MB; make it smaller.", name=path.name, most=most)
        raise ValueError(told)
    return _jpeg(_pixels(_read(path)))


def thumbnail(path: Path, width: int, height: int) -> QImage:
    """A kept photo no larger than the two, in px; a null image where it cannot be read."""
    reader = QImageReader(str(path))
    size = reader.size()
    if size.isValid():
        reader.setScaledSize(size.scaled(width, height, Qt.AspectRatioMode.KeepAspectRatio))
    return reader.read()


def _read(path: Path) -> QImage:
    reader = QImageReader(str(path))
    reader.setDecideFormatFromContent(True)  # a name may say anything
    reader.setAutoTransform(True)
    if bytes(reader.format().data()) not in FORMATS:
        raise ValueError(tr("{name} is not a JPEG, PNG or WebP picture.", name=path.name))
    size = reader.size()
    if size.isValid() and max(size.width(), size.height()) > LONGEST_PX:
        keep = Qt.AspectRatioMode.KeepAspectRatio
        reader.setScaledSize(size.scaled(LONGEST_PX, LONGEST_PX, keep))
    image = reader.read()
    if image.isNull():
        told = tr(
            "{name} cannot be read as a picture: {why}.", name=path.name, why=reader.errorString()
        )
        raise ValueError(told)
    return image


def _pixels(image: QImage) -> QImage:
    """The same to look at, on white, with nothing written beside the pixels."""
    bare = QImage(image.size(), QImage.Format.Format_RGB32)
    bare.fill(Qt.GlobalColor.white)
    painter = QPainter(bare)
    painter.drawImage(0, 0, image)
    painter.end()
    return bare


def _jpeg(image: QImage) -> bytes:
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QImageWriter(buffer, QByteArray(b"jpeg"))
    writer.setQuality(QUALITY)
    if not writer.write(image):
        raise ValueError(tr("The picture could not be written anew; try another file."))
    return bytes(buffer.data().data())
