"""How long the window's thread did not come round, less what it waited for a processor."""

from __future__ import annotations

import threading
from pathlib import Path

from PySide6.QtCore import QElapsedTimer, Qt, QTimer

MOST_STALL_MS = 50.0


class Stalls:
    """Watches the thread that makes it, every two milliseconds, part by part."""

    def __init__(self) -> None:
        self.worst_ms: dict[str, float] = {}
        self._part = "begin"
        self._since, self._waited_ms = QElapsedTimer(), _waited_ms()
        self._timer = QTimer(interval=2, timerType=Qt.TimerType.PreciseTimer)
        self._timer.timeout.connect(self._tick)
        self._since.start()
        self._timer.start()

    def part(self, name: str) -> None:
        """What comes now is told under *name*."""
        self._tick()
        self._part = name

    def stop(self) -> None:
        self._tick()
        self._timer.stop()

    def _tick(self) -> None:
        waited = _waited_ms()
        gap = self._since.nsecsElapsed() / 1e6 - (waited - self._waited_ms)
        self._since.start()
        self._waited_ms = waited
        self.worst_ms[self._part] = max(self.worst_ms.get(self._part, 0.0), gap)


def _waited_ms() -> float:
    """Milliseconds that this thread was ready and other processes had the processor (Linux)."""
    told = Path(f"/proc/self/task/{threading.get_native_id()}/schedstat")
    return int(told.read_text().split()[1]) / 1e6 if told.is_file() else 0.0
