"""A menu bar that is out of sight until it is asked for."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication, QMenu, QMenuBar, QWidget


class MenuOnRequest(QMenuBar):
    """Hidden until ``ask``; hides again when its menus close. ``put_away`` is emitted then."""

    put_away = Signal()

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setNativeMenuBar(False)
        self._alt_alone = False
        self.hide()

    def add(self, title: str) -> QMenu:
        """Add a menu that puts the bar away when it closes."""
        menu = self.addMenu(title)
        menu.aboutToHide.connect(self._look_again_soon)
        return menu

    def watch(self, event: QEvent) -> None:
        """Alt pressed and let go by itself in the window asks for the menu."""
        if not isinstance(event, QKeyEvent):
            self._alt_alone &= event.type() != QEvent.Type.WindowDeactivate
            return
        alt = event.key() == Qt.Key.Key_Alt
        if event.type() in (QEvent.Type.KeyPress, QEvent.Type.ShortcutOverride):
            self._alt_alone = alt
        elif event.type() == QEvent.Type.KeyRelease and alt and self._alt_alone:
            self._alt_alone = False
            self.ask()

    def ask(self) -> None:
        """Show the bar with its first menu open, or put it away if it is there."""
        if self.isVisible():
            self._hide_now()
            return
        self.show()
        self.setFocus()
        if self.actions():
            self.setActiveAction(self.actions()[0])

    def _look_again_soon(self) -> None:
        QTimer.singleShot(0, self, self._hide_if_done)

    def _hide_if_done(self) -> None:
        if self.isVisible() and QApplication.activePopupWidget() is None:
            self._hide_now()

    def _hide_now(self) -> None:
        self.hide()
        self.put_away.emit()
