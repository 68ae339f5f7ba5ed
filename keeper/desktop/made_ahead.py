"""Places made before they are gone to, so that going to one waits for no file and no widget.

Their modules are loaded in a thread; what is made of them, in the moments after it, one a moment.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from contextlib import suppress
from threading import Thread

from PySide6.QtCore import QObject, QTimer, Signal

from keeper.desktop.main_window import MainWindow

BEGIN_MS = 1500
"""A start is over by then, and few have gone on to another place."""

BETWEEN_MS = 150
"""Keys that were struck while a page was made have their turn before the next."""


def make_ahead(window: MainWindow, names: Iterable[str], load: Callable[[], object]) -> None:
    """Make the places called *names* in *window* some time after this; *load* their modules."""
    _Ahead(window, iter(tuple(names)), load)


class _Ahead(QObject):
    """Belongs to the window and goes with it."""

    _loaded = Signal()

    def __init__(
        self, window: MainWindow, names: Iterator[str], load: Callable[[], object]
    ) -> None:
        super().__init__(window)
        self._window, self._names, self._load = window, names, load
        self._between = QTimer(self, interval=BETWEEN_MS)
        self._between.timeout.connect(self._make_next)
        self._loaded.connect(self._between.start)
        window.closing.connect(self._between.stop)
        QTimer.singleShot(BEGIN_MS, self, self._begin)

    def _begin(self) -> None:
        Thread(target=self._load_all, name="places loaded ahead", daemon=True).start()

    def _load_all(self) -> None:
        self._load()
        with suppress(RuntimeError):  # the window has gone meanwhile
            self._loaded.emit()

    def _make_next(self) -> None:
        name = next(self._names, None)
        if name is None:
            self._between.stop()
        else:
            self._window.page(name)
