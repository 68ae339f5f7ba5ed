"""Garbage is collected on the main thread alone, between two events.

Python collects cycles in whatever thread allocates next. A widget that lies in such a cycle would
then be destroyed outside its thread, which Qt does not allow: its timers cannot be stopped there,
and the program may end.
"""

from __future__ import annotations

import gc

from PySide6.QtCore import QObject, QTimer

EVERY_MS = 500
AFTER = 50_000
"""Objects made and not let go since the last time: a board of thousands of rows is no garbage."""

_MIDDLE_AFTER, _OLD_AFTER = 20, 50
"""So many collections of the younger generation make an older one due."""


class MainThreadCollector(QObject):
    """Takes the collecting over from Python; what is loaded by now stays loaded."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        gc.freeze()
        gc.disable()
        timer = QTimer(self)
        timer.timeout.connect(collect_if_due)
        timer.start(EVERY_MS)


def collect_if_due(after: int = AFTER) -> int | None:
    """Collect the oldest generation that is due; returns it, or None where nothing is."""
    young, middle, old = gc.get_count()
    if young <= after:
        return None
    generation = 2 if old >= _OLD_AFTER else 1 if middle >= _MIDDLE_AFTER else 0
    gc.collect(generation)
    return generation
