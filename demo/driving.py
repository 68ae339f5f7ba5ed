"""A window worked by real key events, and pictures taken of it."""

from pathlib import Path

from PySide6.QtCore import QEventLoop, Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from keeper.desktop.look import Look

SIZE = (1440, 900)
PAD = frozenset("0123456789+-*/.")
HELD = {
    "Ctrl": Qt.KeyboardModifier.ControlModifier,
    "Shift": Qt.KeyboardModifier.ShiftModifier,
    "Alt": Qt.KeyboardModifier.AltModifier,
}


class Hand:
    """Presses keys in *window* and saves pictures into *folder*."""

    def __init__(self, window: QWidget, folder: Path) -> None:
        self._window = window
        self._folder = folder
        self.pictures: list[Path] = []
        folder.mkdir(parents=True, exist_ok=True)
        window.resize(*SIZE)
        window.show()
        QTest.qWaitForWindowExposed(window)
        self.settle()

    def press(self, keys: str) -> None:
        """Press keys named with spaces between: ``press("F2 Enter 0 + Enter Ctrl+Z")``."""
        for name in keys.split():
            key, modifiers = _key(name)
            QTest.keyClick(self._focus(), key, modifiers)
            self.settle()

    def picture(self, name: str) -> Path:
        """The window as it stands, as *name*.png.

        Raises:
            OSError: the picture cannot be written.
        """
        self.settle()
        path = self._folder / f"{name}.png"
        if not self._window.grab().save(str(path)):
            raise OSError(f"the picture {path} could not be written")
        self.pictures.append(path)
        return path

    def both_lights(self, look: Look, name: str) -> None:
        """The window by day and by the red lamp, as *name*-day and *name*-red-lamp."""
        for light in ("day", "red-lamp"):
            self.picture(f"{name}-{light}")
            look.switch_light()

    def wait(self, seconds: float) -> None:
        """Let what reads and reckons beside the window come back to it."""
        loop = QEventLoop()
        QTimer.singleShot(round(1000 * seconds), loop.quit)
        loop.exec()

    def settle(self) -> None:
        """Let the window paint and whatever works behind it come back."""
        for _ in range(3):
            QApplication.processEvents()
            QTest.qWait(5)

    def _focus(self) -> QWidget:
        return self._window.focusWidget() or self._window


def _key(name: str) -> tuple[Qt.Key, Qt.KeyboardModifier]:
    """A key of the pad, or one such as ``F2``, ``Tab`` or ``Ctrl+Shift+Z``."""
    if name == "Enter":
        return Qt.Key.Key_Enter, Qt.KeyboardModifier.KeypadModifier
    if name in PAD:
        return Qt.Key(ord(name)), Qt.KeyboardModifier.KeypadModifier
    *held, last = name.split("+")
    modifiers = Qt.KeyboardModifier.NoModifier
    for each in held:
        modifiers |= HELD[each]
    return Qt.Key[f"Key_{last}"], modifiers
