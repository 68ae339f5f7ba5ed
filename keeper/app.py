"""Composition root: opens the book, builds the places, shows the window."""

import sys
from pathlib import Path

from PySide6.QtWidgets import QApplication

from keeper import clock
from keeper.actions.keeping import Keeping, open_keeping
from keeper.actions.safe_keeping import close
from keeper.actions.station import station_name
from keeper.actions.troubles import BookError
from keeper.desktop.house import House, Maker
from keeper.desktop.look import Look
from keeper.desktop.remembered import last_book, remember_book, remember_light, was_red_lamp

PLACES: dict[str, Maker] = {}
"""The places by name, in the order of the strip."""


def application() -> QApplication:
    """The one QApplication of the process, dressed for our own palettes."""
    app = QApplication.instance() or QApplication(sys.argv[:1])
    assert isinstance(app, QApplication)
    app.setApplicationName("keeper")
    app.setDesktopFileName("keeper")
    app.setStyle("Fusion")
    return app


def build_house(keeping: Keeping, look: Look) -> House:
    """The window over an open book, with every place."""
    house = House(keeping, look, PLACES)
    house.window.closing.connect(lambda: _leave(keeping, look))
    return house


def run(path: Path | None) -> int:
    """Open the window on the book at *path*, or on the last one; returns the exit code."""
    app = application()
    book = path or last_book()
    if book is None:
        print("Name a book: keeper open BOOK", file=sys.stderr)  # noqa: T201
        return 2
    try:
        keeping = open_keeping(book, station=station_name(), now=clock.now)
    except BookError as error:
        print(error, file=sys.stderr)  # noqa: T201
        return 2
    remember_book(book)
    house = build_house(keeping, Look(red_lamp=was_red_lamp()))
    house.window.show()
    return app.exec()


def _leave(keeping: Keeping, look: Look) -> None:
    """What is done when the window goes: remember the light, back up, close the book."""
    remember_light(look.red_lamp)
    try:
        close(keeping)
    except BookError as error:
        print(error, file=sys.stderr)  # noqa: T201
