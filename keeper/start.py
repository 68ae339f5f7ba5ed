"""A start of the window: the picture of the first place at once, and after it the program.

Before the picture is painted nothing is loaded that it does without: no word, no rule, no look.
"""

from __future__ import annotations

import sys
from collections.abc import Callable
from importlib import import_module
from pathlib import Path

from PySide6.QtWidgets import QApplication

from keeper import clock
from keeper.desktop.first_sight import SightLabel, sight_of
from keeper.desktop.main_window import MainWindow
from keeper.desktop.remembered import last_book

Then = Callable[[Path | None, MainWindow | None], object]

_STYLE = ("-style", "Fusion")
"""Given as an argument: ``setStyle`` would load every name of a style before the first paint."""


def run(path: Path | None) -> int:
    """Open the window on the book at *path*, on the last one, or on the first page.

    Returns the exit code of the window.
    """
    app = bare_application()
    begin(path or last_book(), _go_on)
    return app.exec()


def begin(book: Path | None, then: Then) -> MainWindow | None:
    """Show what the first place of *book* will show, where that is known; *then* go on.

    *then* is given the book and the window that shows the picture, or none; it is not called
    where that window was closed meanwhile. Keys pressed while it works wait for the place itself.
    """
    sight = sight_of(book, clock.now()) if book is not None else None
    if sight is None:
        then(book, None)
        return None
    window, label = MainWindow(), SightLabel(sight)
    window.show_sight(label, sight.title)
    label.painted.connect(lambda: window.isVisible() and then(book, window))
    show_large(window)
    return window


def bare_application() -> QApplication:
    """The one QApplication of the process, ready for our own palettes."""
    app = QApplication.instance()
    if app is None:
        app = QApplication([*sys.argv[:1], *_STYLE])
    else:
        QApplication.setStyle(_STYLE[1])
    assert isinstance(app, QApplication)
    app.setApplicationName("keeper")
    app.setDesktopFileName("keeper")
    return app


def show_large(window: MainWindow) -> None:
    """Show *window* as large as the screen has room."""
    window.resize(window.screen().availableSize())
    window.showMaximized()


def _go_on(book: Path | None, window: MainWindow | None) -> None:
    """The language is chosen before anything that holds words is loaded."""
    import_module("keeper.desktop.chosen_language").choose()
    import_module("keeper.app").begin(book, window)
