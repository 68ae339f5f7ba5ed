"""Every place of the window painted anew, beside one picture of its size put on the screen."""

import time
from collections.abc import Callable

from PySide6.QtGui import QPainter, QPixmap
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from benches.books import Size, book_of, written_in
from benches.measuring import Row, in_turns, ratio_row, timed
from keeper import app as program
from keeper.desktop.look import Look

SIZE = (1440, 900)
MOST = 20.0
SETTLE_MS = 400


def rows(size: Size, rounds: int) -> list[Row]:
    """One line a place, drawn whole with all that it shows."""
    program.application()
    made = []
    with written_in(book_of(size)) as keeping:
        house = program.build_house(keeping, Look())
        house.window.resize(*SIZE)
        house.window.show()
        for at, name in enumerate(program.PLACES):
            house.window.go_to(at)
            QTest.qWait(SETTLE_MS)
            made.append(_row(name, house.window.page(name), size, rounds))
        house.window.close()
        house.window.deleteLater()
        QApplication.processEvents()
    return made


def _row(name: str, page: QWidget, size: Size, rounds: int) -> Row:
    picture, target = page.grab(), QPixmap(page.size())
    target.fill()
    took = in_turns(
        rounds,
        {"floor": _times(10, lambda: _put(picture, target)), "program": page.grab},
        least_of=3,
        reckoning=True,
    )
    floor = "one picture of the same size"
    return ratio_row(f"{name} painted anew", str(size), took, most=MOST, floor=floor)


def _times(count: int, run: Callable[[], object]) -> Callable[[], float]:
    """*run* so often that the clock can tell; answers the seconds of one."""
    return lambda: timed(lambda: [run() for _ in range(count)], time.process_time) / count


def _put(picture: QPixmap, target: QPixmap) -> None:
    painter = QPainter(target)
    painter.drawPixmap(0, 0, picture)
    painter.end()
