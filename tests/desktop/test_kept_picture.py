"""A kept picture is painted once and shows what painting it each time would show."""

from collections.abc import Callable

import pytest
from PySide6.QtCore import QPoint, QRect, QRectF, QSize, QSizeF
from PySide6.QtGui import QImage, QPainter

from keeper.desktop.look import Look
from keeper.desktop.widgets.kept_picture import KeptPicture, KeptRows

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


# --- rows of a list --------------------------------------------------------------------------


class Rows:
    """Three rows under one another, each a bar as long as its number."""

    def __init__(self, most: int) -> None:
        self.painted: list[int] = []
        self.kept = KeptRows(most)

    def laid(
        self, numbers: tuple[int, ...], light: str = "day", high: int = 6, dots: float = 1.0
    ) -> QImage:
        image = QImage(QSize(40, 20) * dots, QImage.Format.Format_RGB32)
        image.setDevicePixelRatio(dots)
        image.fill("white")
        painter = QPainter(image)
        for line, number in enumerate(numbers):
            rect = QRect(QPoint(0, line * 6), QSize(40, high))
            self.kept.lay(painter, rect, number, (light,), lambda p, r, n=number: self.bar(p, r, n))
        painter.end()
        return image

    def bar(self, painter: QPainter, rect: QRect, number: int) -> None:
        self.painted.append(number)
        painter.fillRect(QRect(rect.topLeft(), QSize(number, 4)), "black")


def test_a_row_that_moves_is_laid_down_where_it_now_stands(qtbot: object) -> None:
    rows = Rows(most=9)
    rows.laid((7, 8, 9))
    moved = rows.laid((8, 9, 10))

    assert rows.painted == [7, 8, 9, 10]
    assert moved == Rows(most=9).laid((8, 9, 10))


def test_another_light_height_or_odd_dots_paint_a_row_anew(qtbot: object) -> None:
    rows = Rows(most=9)
    for light, high, dots in (("day", 6, 1.0), ("lamp", 6, 1.0), ("lamp", 5, 1.0)):
        rows.laid((7,), light, high, dots)
    assert rows.painted == [7, 7, 7]

    rows.laid((7,), "lamp", 5, 1.25)
    rows.laid((7,), "lamp", 5, 1.25)
    assert len(rows.painted) == 5


def test_of_too_many_rows_the_longest_unused_goes(qtbot: object) -> None:
    rows = Rows(most=2)
    for number in (7, 8, 7, 9, 7, 8):
        rows.laid((number,))

    assert rows.painted == [7, 8, 9, 8]
