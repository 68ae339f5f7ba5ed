"""A label scanner that types like a keyboard: its codes are caught before they reach a field.

Our labels begin with ``;`` and the scanner ends with Enter. What lies between is a code, at
any time and in any place of the window. A ``;`` that a person typed is given back, with what
followed it, as soon as the pause is longer than a scanner's.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication

SENTINEL = ";"
PAUSE_MS = 200
"""Longest pause between two keys of one code. Common practice, no source: scanners send a key
every few milliseconds, a quick typist one in about 100, and a radio link may stutter."""
LONGEST_CODE = 64


class ScanFilter(QObject):
    """Install on the application; emits ``scanned(code)`` and swallows the keys of the code."""

    scanned = Signal(str)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._held: list[QKeyEvent] = []
        self._giving_back = False
        self._pause = QTimer(self, singleShot=True, interval=PAUSE_MS)
        self._pause.timeout.connect(self._give_back)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if self._giving_back or not isinstance(event, QKeyEvent) or not self._is_in_front():
            return False
        if not self._held and event.text() != SENTINEL:
            return False
        if event.type() == QEvent.Type.ShortcutOverride:
            event.accept()  # no letter of a code may trigger a shortcut
            return True
        if event.type() == QEvent.Type.KeyPress:
            self._hold(event)
            return True
        return bool(self._held)

    def _is_in_front(self) -> bool:
        """Two windows each have a filter; what one gives back is no code for the other."""
        return self.parent() is None or QApplication.activeWindow() is self.parent()

    def _hold(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._finish(event)
            return
        self._held.append(event.clone())
        self._pause.start()
        if len(self._held) > LONGEST_CODE:
            self._give_back()

    def _finish(self, enter: QKeyEvent) -> None:
        code = "".join(event.text() for event in self._held)[len(SENTINEL) :].strip()
        if not code:
            self._held.append(enter.clone())
            self._give_back()
            return
        self._pause.stop()
        self._held.clear()
        self.scanned.emit(code)

    def _give_back(self) -> None:
        """Nobody's code: let the keys reach whatever has the keyboard."""
        self._pause.stop()
        held, self._held = self._held, []
        self._giving_back = True
        try:
            for event in held:
                target = QApplication.focusWidget() or QApplication.activeWindow()
                if target is not None:
                    QApplication.sendEvent(target, event)
        finally:
            self._giving_back = False
