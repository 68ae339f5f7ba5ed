"""How long the window's thread did not come round, less what was waited for a processor."""

from __future__ import annotations

from contextlib import suppress
from pathlib import Path

from PySide6.QtCore import QElapsedTimer, Qt, QTimer

MOST_STALL_MS = 50.0
MOST_BESIDE_WORK_MS = 250.0
"""Where other work has the machine too: still far below what a book read in this thread takes."""


class Stalls:
    """Watches the thread that makes it, every few milliseconds, part by part."""

    def __init__(self) -> None:
        self.worst_ms: dict[str, float] = {}
        self._part = "begin"
        self._since, self._waited_ms = QElapsedTimer(), _waited_ms()
        self._timer = QTimer(interval=4, timerType=Qt.TimerType.PreciseTimer)
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
        gap = self._since.nsecsElapsed() / 1e6 - max(0.0, waited - self._waited_ms)
        self._since.start()
        self._waited_ms = waited
        self.worst_ms[self._part] = max(self.worst_ms.get(self._part, 0.0), gap)


def _waited_ms() -> float:
    """Milliseconds that threads of this process were ready and others had the processor (Linux).

    Of all of them, because the window's waits for whichever has the interpreter.
    """
    waited = 0
    for told in Path("/proc/self/task").glob("*/schedstat"):
        with suppress(OSError):  # it ended meanwhile
            waited += int(told.read_text().split()[1])
    return waited / 1e6
