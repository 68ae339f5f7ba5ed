"""The two bases of all drawn pieces: a picture that has words, and a key that can be pressed.

Both ask the look for every colour, font and length, redraw when it changes, and carry their
content as text for a screen reader: no picture without its figures in words.
"""

from __future__ import annotations

import sys
from collections.abc import Callable

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import (
    QAccessible,
    QAccessibleAnnouncementEvent,
    QPainter,
    QPaintEvent,
)
from PySide6.QtWidgets import QAbstractButton, QLabel, QWidget

from keeper.desktop.look import Look


class Drawn(QLabel):
    """A painted picture whose label text is the same thing in words.

    Subclasses implement ``paint`` and ``natural_size`` and call ``tell`` when content changes.
    The text is never shown; it is what assistive technology reads.
    """

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.look = look
        self.setTextFormat(Qt.TextFormat.PlainText)
        look.changed.connect(self._redraw)
        self._paper: str | None = None

    def lie_on(self, paper: str) -> None:
        """Fill the ground with the colour of the role *paper*, so that nothing beneath is drawn."""
        self._paper = paper
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)

    def tell(self, words: str) -> None:
        """Give the content in words and redraw."""
        self.setText(words)
        self._redraw()

    def paint(self, painter: QPainter) -> None:
        """Draw the content; overridden."""
        raise NotImplementedError

    def natural_size(self) -> tuple[float, float]:
        """Width and height in device-independent px at the present look; overridden."""
        raise NotImplementedError

    def sizeHint(self) -> QSize:
        width, height = self.natural_size()
        return QSize(round(width), round(height))

    def minimumSizeHint(self) -> QSize:
        return QSize(0, self.sizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        if self._paper is not None:
            painter.fillRect(self.rect(), self.look.colour(self._paper))
        paint_safely(self.paint, painter)

    def _redraw(self) -> None:
        self.updateGeometry()
        self.update()


class DrawnKey(QAbstractButton):
    """A painted thing that can be pressed with the mouse; it never takes the keyboard.

    Subclasses implement ``paint``. The keyboard way is the place's own key.
    """

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.look = look
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        look.changed.connect(self.update)

    def paint(self, painter: QPainter) -> None:
        """Draw the key; overridden."""
        raise NotImplementedError

    def paintEvent(self, event: QPaintEvent) -> None:
        paint_safely(self.paint, QPainter(self))


def paint_safely(paint: Callable[[QPainter], None], painter: QPainter) -> None:
    """Paint, and end *painter* whatever happens.

    A fault that left a paint event would end the process; told to the excepthook it is logged
    and the picture stays unfinished.
    """
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    try:
        paint(painter)
    except Exception:
        sys.excepthook(*sys.exc_info())
    finally:
        painter.end()


def announce(widget: QWidget, sentence: str, *, urgent: bool = False) -> None:
    """Have assistive technology speak *sentence* now; *urgent* interrupts what it is saying."""
    event = QAccessibleAnnouncementEvent(widget, sentence)
    politeness = QAccessible.AnnouncementPoliteness
    event.setPoliteness(politeness.Assertive if urgent else politeness.Polite)
    QAccessible.updateAccessibility(event)
