"""Every place of the window painted anew, beside one picture of its size put on the screen.

Told in the processor time of the thread that paints: a place reckons in others what it shows
later, and that is not its painting. A list that is read by such a thread is waited for.
"""

import time
from collections.abc import Callable

from PySide6.QtGui import QPainter, QPixmap
from PySide6.QtWidgets import QApplication, QListView, QWidget

from benches.books import Size, book_of, written_in
from benches.measuring import Row, in_turns, ratio_row, timed
from keeper import app as program
from keeper.desktop.look import Look

SIZE = (1440, 900)
MOST = 20.0
FIRST_SECONDS, SETTLE_SECONDS, READ_SECONDS = 2.0, 0.4, 60.0


def rows(size: Size, rounds: int) -> list[Row]:
    """One line a place, drawn whole with all that it shows."""
    program.application()
    made = []
    with written_in(book_of(size)) as keeping:
        house = program.build_house(keeping, Look())
        house.window.resize(*SIZE)
        house.window.show()
        for at in range(len(program.PLACES)):  # each begins to read what it will show
            house.window.go_to(at)
            _settle(FIRST_SECONDS)
        for at, name in enumerate(program.PLACES):
            house.window.go_to(at)
            page = house.window.page(name)
            _settle(SETTLE_SECONDS)
            if name == "Females":
                _read(page)
            made.append(_row(name, page, size, rounds))
            if name == "Females":
                _press(page, "C")
                _read(page)
                made.append(_row("Pairing calendar", page, size, rounds))
                _press(page, "C")
            if name == "Racks":
                _press(page, "T")
                _settle(FIRST_SECONDS)
                made.append(_row("Neighbour time-line", page, size, rounds))
                _press(page, "T")
        house.window.close()
        house.window.deleteLater()
        QApplication.processEvents()
    return made


def _settle(seconds: float) -> None:
    """Let events and other threads have their turn; Qt's own wait keeps Python's threads out."""
    until = time.monotonic() + seconds
    while time.monotonic() < until:
        QApplication.processEvents()
        time.sleep(0.01)


def _press(page: QWidget, key: str) -> None:
    """What *key* does on *page*."""
    next(action for action in page.actions() if action.shortcut().toString() == key).trigger()


def _read(page: QWidget) -> None:
    """Wait for the rows of the lists in sight.

    Raises:
        RuntimeError: none came.
    """
    shown = [view for view in page.findChildren(QListView) if view.isVisible()]
    waited = 0.0
    while not all(view.model().rowCount() for view in shown):
        if waited > READ_SECONDS:
            raise RuntimeError("a list to be painted was never read")
        _settle(SETTLE_SECONDS)
        waited += SETTLE_SECONDS


def _row(name: str, page: QWidget, size: Size, rounds: int) -> Row:
    picture, target = page.grab(), QPixmap(page.size())
    target.fill()
    took = in_turns(
        rounds,
        {"floor": _times(10, lambda: _put(picture, target)), "program": _times(1, page.grab)},
        least_of=3,
    )
    floor = "one picture of the same size"
    return ratio_row(f"{name} painted anew", str(size), took, most=MOST, floor=floor)


def _times(count: int, run: Callable[[], object]) -> Callable[[], float]:
    """*run* so often that the clock can tell; answers the seconds of one."""
    return lambda: timed(lambda: [run() for _ in range(count)], time.thread_time) / count


def _put(picture: QPixmap, target: QPixmap) -> None:
    painter = QPainter(target)
    painter.drawPixmap(0, 0, picture)
    painter.end()
