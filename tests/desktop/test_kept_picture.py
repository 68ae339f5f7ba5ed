"""A kept picture is painted once and shows what painting it each time would show."""

from collections.abc import Callable

import pytest
from PySide6.QtCore import QRectF, QSize, QSizeF
from PySide6.QtGui import QImage, QPainter

from keeper.desktop.look import Look
from keeper.desktop.widgets.kept_picture import KeptPicture

SIZE = QSize(40, 20)


class Sign:
    """Paints a bar in the ink of the light, and counts how often."""

    def __init__(self, look: Look) -> None:
        self.look, self.times, self.kept = look, 0, KeptPicture()

    def paint(self, painter: QPainter) -> None:
        self.times += 1
        painter.fillRect(QRectF(2, 2, self.look.u(4, 3), self.look.u(2)), self.look.colour("ink"))

    def laid(self, about: object = None, size: QSize = SIZE, dots: float = 1.0) -> QImage:
        return self._on(size, dots, lambda p: self.kept.lay(p, size, self.look, about, self.paint))

    def painted(self, size: QSize = SIZE) -> QImage:
        return self._on(size, 1.0, self.paint)

    @staticmethod
    def _on(size: QSize, dots: float, paint: Callable[[QPainter], None]) -> QImage:
        image = QImage(size * dots, QImage.Format.Format_RGB32)
        image.setDevicePixelRatio(dots)
        image.fill("white")
        painter = QPainter(image)
        paint(painter)
        painter.end()
        return image


@pytest.fixture
def sign(qtbot: object) -> Sign:
    return Sign(Look())


def test_it_is_painted_once_and_looks_as_painted_each_time(sign: Sign) -> None:
    first, second = sign.laid(), sign.laid()

    assert sign.times == 1
    assert first == second == sign.painted()


def test_another_subject_or_size_is_painted_anew(sign: Sign) -> None:
    sign.laid("a")
    sign.laid("b")
    sign.laid("b", QSize(30, 20))

    assert sign.times == 3


def test_another_light_or_window_shows_at_once(sign: Sign) -> None:
    sign.laid()
    sign.look.switch_light()
    by_lamp = sign.laid()
    assert by_lamp == sign.painted()

    sign.look.fit(QSizeF(1024, 600), 96.0)
    assert sign.laid() == sign.painted() != by_lamp


def test_where_a_px_is_no_whole_number_of_dots_nothing_is_kept(sign: Sign) -> None:
    sign.laid(dots=1.25)
    sign.laid(dots=1.25)

    assert sign.times == 2
