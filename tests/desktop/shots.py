"""Pictures of widgets as lightness, for tests and for looking at."""

from __future__ import annotations

from pathlib import Path

import numpy as np
from PySide6.QtCore import QRectF, QSize, QSizeF
from PySide6.QtGui import QColor, QImage, QPainter
from PySide6.QtWidgets import QApplication, QWidget

from keeper.desktop.light import Palette
from keeper.desktop.widgets.tile import TileState, paint_tile

# Machado, Oliveira & Fernandes, "A Physiologically-based Model for Simulation of Color Vision
# Deficiency", IEEE Trans. Vis. Comput. Graph. 15(6), 2009, 1291-1298: matrices for linear RGB
# at severity 1.0.
MACHADO_2009 = {
    "protanopia": (
        (0.152286, 1.052583, -0.204868),
        (0.114503, 0.786281, 0.099216),
        (-0.003882, -0.048116, 1.051998),
    ),
    "deuteranopia": (
        (0.367322, 0.860646, -0.227968),
        (0.280085, 0.672501, 0.047413),
        (-0.011820, 0.042940, 0.968881),
    ),
    "tritanopia": (
        (1.255528, -0.076749, -0.178779),
        (-0.078411, 0.930809, 0.147602),
        (0.004733, 0.691367, 0.303900),
    ),
}
RED_ONLY = ((1.0, 0.0, 0.0), (1.0, 0.0, 0.0), (1.0, 0.0, 0.0))
WAYS_OF_SEEING = {"as drawn": None, "red channel only": RED_ONLY, **MACHADO_2009}


def grab(widget: QWidget, path: Path | str, size: tuple[int, int] | None = None) -> QImage:
    """Show *widget* off screen at *size*, save its picture to *path* and return it."""
    if size is not None:
        widget.resize(QSize(*size))
    widget.show()
    QApplication.processEvents()
    image = widget.grab().toImage()
    Path(path).parent.mkdir(parents=True, exist_ok=True)
    assert image.save(str(path)), f"could not write {path}"
    return image


def tile_image(
    state: TileState, palette: Palette, size: tuple[float, float] = (58, 43), **how: object
) -> QImage:
    """One tile on the ground of its light, twice as fine as drawn."""
    image = QImage(QSizeF(2 * size[0], 2 * size[1]).toSize(), QImage.Format.Format_RGB32)
    image.setDevicePixelRatio(2.0)
    image.fill(QColor(palette.ground))
    painter = QPainter(image)
    paint_tile(painter, QRectF(0, 0, *size), state, palette, **how)
    painter.end()
    return image


def linear_rgb(image: QImage) -> np.ndarray:
    """The picture as linear light, shape (height, width, 3), 0 to 1."""
    plain = image.convertToFormat(QImage.Format.Format_RGB32)
    rows = np.frombuffer(plain.constBits(), np.uint8).reshape(plain.height(), -1, 4)
    share = rows[:, : plain.width(), 2::-1] / 255.0
    return np.where(share <= 0.04045, share / 12.92, ((share + 0.055) / 1.055) ** 2.4)


def luminance_of(image: QImage) -> np.ndarray:
    """Relative luminance of each pixel, 0 to 1 (WCAG 2.2)."""
    return linear_rgb(image) @ np.array([0.2126, 0.7152, 0.0722])


def lightness(image: QImage, seen: str = "as drawn") -> np.ndarray:
    """CIE L* of each pixel, 0 to 100, seen in one of ``WAYS_OF_SEEING``."""
    linear, matrix = linear_rgb(image), WAYS_OF_SEEING[seen]
    if matrix is not None:
        linear = np.clip(linear @ np.array(matrix).T, 0.0, 1.0)
    light = linear @ np.array([0.2126, 0.7152, 0.0722])
    return np.where(light > 216 / 24389, 116 * np.cbrt(light) - 16, light * 24389 / 27)


def rms_difference(one: np.ndarray, other: np.ndarray) -> float:
    """Root mean square difference of two pictures of equal shape."""
    return float(np.sqrt(np.mean((one - other) ** 2)))
