"""One start of the program, or of an empty window, in a process of its own.

    python one_start.py empty
    python one_start.py BOOK [close]

Prints ``painted`` once the first place is on the window, then which modules are loaded. With
``close`` the window is then closed as a keeper would, which leaves a backup.
"""

import json
import os
import sys
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[2]


def main(what: str, *, closing: bool = False) -> None:
    """Start, say when the window is painted, and be gone."""
    from PySide6.QtWidgets import QApplication, QMainWindow

    if what == "empty":
        app: Any = QApplication([])
        window: Any = QMainWindow()
        page: Any = window
        window.resize(1440, 900)
        window.show()
    else:
        app, front = _program(Path(what))
        window = front.window
        page = window.page(window.place.name)
    wait_for_paint(app, page)
    print("painted", flush=True)
    print(json.dumps(sorted(name for name in sys.modules if "." not in name)), flush=True)
    if closing:
        window.close()
    os._exit(0)


def _program(book: Path) -> tuple[Any, Any]:
    """The program as it opens the window on a book, its clock standing at the book's evening."""
    sys.path[:0] = [str(ROOT)]
    from datetime import UTC, datetime

    from keeper import clock

    evening = datetime(2026, 6, 17, 20, tzinfo=UTC)
    clock.now = lambda: evening
    from keeper import app as program
    from keeper.desktop.look import Look

    application = program.application()
    front = program.Front(Look())
    front.open(book)
    return application, front


def wait_for_paint(app: Any, page: Any) -> None:
    """Until *page* or something on it has been painted and handed to the screen."""
    from PySide6.QtCore import QEvent, QObject
    from PySide6.QtWidgets import QWidget

    class Painted(QObject):
        seen = False

        def eventFilter(self, watched: QObject, event: QEvent) -> bool:
            if event.type() == QEvent.Type.Paint and isinstance(watched, QWidget):
                self.seen = self.seen or watched is page or page.isAncestorOf(watched)
            return False

    painted = Painted()
    app.installEventFilter(painted)
    while not painted.seen:
        app.processEvents()
    app.processEvents()
    app.removeEventFilter(painted)


if __name__ == "__main__":
    main(sys.argv[1], closing=sys.argv[2:] == ["close"])
