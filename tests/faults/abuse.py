"""A process that opens the window on a book and sends one place after another random events.

abuse.py BOOK SEED EVENTS   prints the events sent and how far the count of None fell
"""

import random
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from PySide6.QtCore import QPoint, QPointF, Qt, QTimer  # noqa: E402
from PySide6.QtGui import QWheelEvent  # noqa: E402
from PySide6.QtTest import QTest  # noqa: E402
from PySide6.QtWidgets import QApplication  # noqa: E402

from keeper import app  # noqa: E402
from keeper.desktop.look import Look  # noqa: E402

KEYS = [
    *(Qt.Key(code) for code in range(Qt.Key.Key_Space, Qt.Key.Key_QuoteLeft)),
    *(Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Escape, Qt.Key.Key_Tab, Qt.Key.Key_Backtab),
    *(Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_Left, Qt.Key.Key_Right, Qt.Key.Key_Home),
    *(Qt.Key.Key_End, Qt.Key.Key_PageUp, Qt.Key.Key_PageDown, Qt.Key.Key_Backspace),
    *(Qt.Key.Key_Delete, Qt.Key.Key_F1, Qt.Key.Key_F12, Qt.Key.Key_Plus, Qt.Key.Key_Minus),
]
NONE, SHIFT = Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.ShiftModifier
CONTROL, PAD = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.KeypadModifier
LEAVES = {Qt.Key.Key_Q, Qt.Key.Key_W}  # closing is tried at the end


def main(book: Path, seed: int, events: int) -> int:
    qt = app.application()
    front = app.Front(Look())
    app.log_faults(front.tell)
    front.open(book)
    QTest.qWaitForWindowExposed(front.window)
    draw, nones = random.Random(seed), sys.getrefcount(None)
    for number in range(len(app.PLACES)):
        go_to(front, number)
        for _ in range(events // len(app.PLACES)):
            annoy(front, draw)
    QApplication.processEvents()
    sys.stdout.write(f"{events} {min(0, sys.getrefcount(None) - nones)}\n")
    sys.stdout.flush()
    QTimer.singleShot(0, front.window.close)
    return qt.exec()


def go_to(front: app.Front, number: int) -> None:
    while (popup := QApplication.activePopupWidget()) is not None:
        popup.close()
    front.window.go_to(number)
    QApplication.processEvents()


def annoy(front: app.Front, draw: random.Random) -> None:
    """One event of any kind, at any place of the window."""
    window = front.window.windowHandle()
    at = QPoint(draw.randrange(window.width()), draw.randrange(window.height()))
    kind = draw.random()
    if kind < 0.7:
        key, held = draw.choice(KEYS), draw.choice((NONE, NONE, NONE, SHIFT, PAD, CONTROL))
        if held is not CONTROL or key not in LEAVES:
            QTest.keyClick(window, key, held)
    elif kind < 0.85:
        QTest.mouseClick(window, Qt.MouseButton.LeftButton, NONE, at)
    elif kind < 0.9:
        QTest.mouseDClick(window, Qt.MouseButton.LeftButton, NONE, at)
    elif kind < 0.97:
        wheel(front, at, draw.choice((-120, 120)))
    else:
        front.window.resize(draw.randrange(600, 2000), draw.randrange(400, 1200))
    if draw.random() < 0.2:
        QApplication.processEvents()


def wheel(front: app.Front, at: QPoint, delta: int) -> None:
    where = front.window.childAt(at) or front.window
    inside = QPointF(where.mapFrom(front.window, at))
    QApplication.sendEvent(
        where,
        QWheelEvent(
            inside,
            QPointF(at),
            QPoint(),
            QPoint(0, delta),
            Qt.MouseButton.NoButton,
            NONE,
            Qt.ScrollPhase.NoScrollPhase,
            False,
        ),
    )


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1]), int(sys.argv[2]), int(sys.argv[3])))
