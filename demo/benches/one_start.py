"""One start of the program, or of an empty window, in a process of its own.

    python one_start.py empty
    python one_start.py open BOOK [close]

Prints ``painted`` once the first place is on the window with what it has to say, then which
modules are loaded; then ``alive`` once the place itself has the keyboard. With ``close`` the
window is then closed as a keeper would, which leaves a backup and what the next start shows.
"""

import json
import os
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[2]
PATIENCE_MS = 120_000
"""A start that shows nothing for so long has failed."""


def main(what: str, book: str = "", closing: str = "") -> None:
    """Start, say when the window is painted, and be gone."""
    if what == "empty":
        _empty()
    else:
        _program(book, closing=bool(closing))
    os._exit(0)


def _empty() -> None:
    from PySide6.QtWidgets import QApplication, QMainWindow

    app = QApplication([])
    window = QMainWindow()
    window.resize(window.screen().availableSize())
    _watch(window, _tell_painted)
    window.showMaximized()
    while not _TOLD:
        app.processEvents()


def _program(book: str, *, closing: bool) -> None:
    """The program by its own way in, its clock standing at the book's evening."""
    sys.path[:0] = [str(ROOT)]
    from datetime import UTC, datetime

    from keeper import __main__ as way_in
    from keeper import clock

    evening = datetime(2026, 6, 17, 20, tzinfo=UTC)
    clock.now = lambda: evening
    way_in.prepare()  # as it does itself, before it loads anything
    from keeper import start

    def at_paint(window: Any) -> None:
        _tell_painted(window)
        if not window.at_first_sight:
            print("alive", flush=True)
            if not closing:
                os._exit(0)
            window.close()

    show = start.show_large

    def shown(window: Any) -> None:
        _watch(window, at_paint)
        show(window)

    start.show_large = shown
    sys.argv[1:] = ["open", book]
    way_in.main()


_TOLD: list[str] = []


def _tell_painted(_: Any) -> None:
    if not _TOLD:
        _TOLD.append("painted")
        print("painted", flush=True)
        print(json.dumps(sorted(n for n in sys.modules if "." not in n)), flush=True)


def _watch(window: Any, then: Callable[[Any], None]) -> None:
    """Call *then* each time that what was painted on the window is handed to the screen.

    Nothing but the window is watched, so that watching costs the same with much on it as with
    nothing.
    """
    from PySide6.QtCore import QEvent, QObject, QTimer

    class Painted(QObject):
        def eventFilter(self, watched: QObject, event: QEvent) -> bool:
            if event.type() == QEvent.Type.Paint:
                QTimer.singleShot(0, self, lambda: then(window))
            return False

    window.watching = Painted()
    window.installEventFilter(window.watching)
    QTimer.singleShot(PATIENCE_MS, window, lambda: os._exit(1))


if __name__ == "__main__":
    main(*sys.argv[1:])
