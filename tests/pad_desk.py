"""A place of the window worked by real key events on a real book, its keys counted."""

from collections.abc import Callable

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QLabel, QWidget

from keeper.actions.keeping import Keeping, Written
from keeper.desktop.look import Look
from keeper.desktop.main_window import MainWindow
from keeper.desktop.notices import Notices
from keeper.desktop.places import Place

KEYS = {
    "Enter": Qt.Key.Key_Enter,
    "+": Qt.Key.Key_Plus,
    "-": Qt.Key.Key_Minus,
    "*": Qt.Key.Key_Asterisk,
    "/": Qt.Key.Key_Slash,
    ".": Qt.Key.Key_Period,
    **{str(digit): Qt.Key(Qt.Key.Key_0.value + digit) for digit in range(10)},
}
Maker = Callable[[Look, Keeping, Notices], QWidget]


class KeyCount(QObject):
    """Counts the key presses that reach a widget."""

    def __init__(self) -> None:
        super().__init__()
        self.presses = 0

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        self.presses += event.type() == QEvent.Type.KeyPress
        return False


class Desk:
    """One place on one book: what was pressed, written, refused and noted."""

    def __init__(
        self, make: Maker, keeping: Keeping, *, size: tuple[int, int] = (1440, 900)
    ) -> None:
        self.look, self.notices = Look(red_lamp=True), Notices()
        self.written: list[Written] = []
        self.refused: list[str] = []
        self.noted: list[str] = []
        self.notices.written.connect(self.written.append)
        self.notices.refused.connect(self.refused.append)
        self.notices.noted.connect(self.noted.append)
        place = Place(
            key="F2", name="Here", title="Here", make=lambda look: make(look, keeping, self.notices)
        )
        self.window = MainWindow(self.look, [place])
        self.page = self.window.page("Here")
        self.counter = KeyCount()
        self.page.installEventFilter(self.counter)
        self.window.resize(*size)
        self.window.show()

    @property
    def keys(self) -> int:
        """Key presses so far."""
        return self.counter.presses

    def press(self, keys: str) -> None:
        """Press pad keys named with spaces between: ``press("+ 3 0 Enter")``."""
        for key in keys.split():
            QTest.keyClick(self.page, KEYS[key], Qt.KeyboardModifier.KeypadModifier)

    def close(self) -> None:
        self.window.close()
        self.window.deleteLater()


def said_on(page: QWidget) -> str:
    """Everything a screen reader would find on *page*, in one text."""
    labels = [label.text() for label in page.findChildren(QLabel) if label.isVisible()]
    keys = [key.accessibleName() for key in page.findChildren(QAbstractButton) if key.isVisible()]
    return "\n".join([*labels, *keys])
