"""Places made before they are gone to, so that going to one waits for no file and no widget.

Their modules are loaded in a thread; what is made of them, in the moments after it, one a moment.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Iterable
from contextlib import suppress
from functools import partial
from threading import Thread
from typing import Protocol, runtime_checkable

from PySide6.QtCore import QObject, QTimer, Signal

from keeper.desktop.main_window import MainWindow

BEGIN_MS = 1500
"""A start is over by then, and few have gone on to another place."""

BETWEEN_MS = 150
"""Keys that were struck while a page was made have their turn before the next."""


@runtime_checkable
class ReadsAhead(Protocol):
    """A page that reads the book in the window's own thread, and may do so before it is shown."""

    def read_ahead(self) -> Iterable[Callable[[], object]]:
        """What it will need, in parts that are each done in a moment of their own."""


def make_ahead(window: MainWindow, names: Iterable[str], load: Callable[[], object]) -> None:
    """Make the places called *names* in *window* some time after this; *load* their modules."""
    _Ahead(window, tuple(names), load)


class _Ahead(QObject):
    """Belongs to the window and goes with it."""

    _loaded = Signal()

    def __init__(
        self, window: MainWindow, names: Iterable[str], load: Callable[[], object]
    ) -> None:
        super().__init__(window)
        self._window, self._load = window, load
        self._left: deque[Callable[[], object]] = deque(partial(self._make, n) for n in names)
        self._between = QTimer(self, interval=BETWEEN_MS)
        self._between.timeout.connect(self._do_next)
        self._loaded.connect(self._between.start)
        window.closing.connect(self._between.stop)
        QTimer.singleShot(BEGIN_MS, self, self._begin)

    def _begin(self) -> None:
        Thread(target=self._load_all, name="places loaded ahead", daemon=True).start()

    def _load_all(self) -> None:
        self._load()
        with suppress(RuntimeError):  # the window has gone meanwhile
            self._loaded.emit()

    def _do_next(self) -> None:
        if self._left and self._window.isVisible():
            self._left.popleft()()
        else:
            self._between.stop()

    def _make(self, name: str) -> None:
        page = self._window.page(name)
        if isinstance(page, ReadsAhead):
            self._left.extend(page.read_ahead())
