"""Laid over the window while a book is written by another process: keys wait, Esc calls it off."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QDialog, QVBoxLayout, QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import announce
from keeper.desktop.widgets.words_line import Words

_FRAME = 3.0


class Waiting(QDialog):
    """A framed sheet of words in the middle of the window, which takes no key meanwhile.

    called_off: what Esc does. Nothing here asks the book: it is being written.
    """

    def __init__(self, look: Look, page: QWidget, called_off: Callable[[], None]) -> None:
        super().__init__(page.window(), Qt.WindowType.FramelessWindowHint)
        self._look, self._window, self._called_off = look, page.window(), called_off
        self.setWindowModality(Qt.WindowModality.WindowModal)
        self._title = Words(look, Use.PAGE_HEAD)
        self._far = Words(look, Use.BODY)
        column = QVBoxLayout(self)
        column.setContentsMargins(*(round(look.u(8)),) * 4)
        column.setSpacing(round(look.u(1)))
        column.addWidget(self._title)
        column.addWidget(self._far)

    def begin(self, title: str, far: str) -> None:
        """Lie over the window until ``end``."""
        self._title.setText(title)
        self._far.setText(far)
        self.setWindowTitle(title)
        self.setMinimumWidth(round(self._look.u(150)))
        self.adjustSize()
        self.move(self._window.geometry().center() - self.rect().center())
        self.show()
        announce(self, f"{title} {far}")

    def tell(self, far: str) -> None:
        """Say how far it is."""
        self._far.setText(far)

    def end(self) -> None:
        """Give the window its keys back."""
        if self.isVisible():
            self.hide()
            self._window.activateWindow()

    def reject(self) -> None:
        """Esc; the sheet stays until what was called off has ended."""
        self._called_off()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        pen = QPen(self._look.colour("ink"), _FRAME)
        pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        painter.setPen(pen)
        painter.setBrush(self._look.colour("sheet"))
        half = round(_FRAME / 2)
        painter.drawRect(self.rect().adjusted(half, half, -half - 1, -half - 1))
