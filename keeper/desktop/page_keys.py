"""A page's own keys: they work while the page has the keyboard, and F1 and the menu list them."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QWidget


def add_key(page: QWidget, key: str, words: str, slot: Callable[[], None]) -> None:
    """Let *key* do *slot* on *page*; a field in which one types keeps its letters."""
    action = QAction(words, page)
    action.setShortcut(QKeySequence(key))
    action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
    action.triggered.connect(lambda _=False: slot())
    page.addAction(action)
