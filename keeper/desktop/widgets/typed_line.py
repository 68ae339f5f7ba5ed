"""One line to type in at the foot of a page: no dialog, Enter takes it, Escape leaves it."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QSizePolicy, QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.words_line import Words


class TypedLine(QWidget):
    """A prompt, a field and a hint. Hidden until it is asked for.

    Signals: ``typed(text)`` at every change, ``taken(text)`` with Enter, ``left`` with Escape,
    ``stepped(by)`` with Up (-1) and Down (+1).
    """

    typed = Signal(str)
    taken = Signal(str)
    left = Signal()
    stepped = Signal(int)

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self._prompt = Words(look, Use.BODY_STRONG, "ink", self)
        self._hint = Words(look, Use.TABLE, "ink2", self)
        self.field = _Field(self)
        self._row = QHBoxLayout(self)
        for widget, share in ((self._prompt, 0), (self.field, 5), (self._hint, 6)):
            self._row.addWidget(widget, share)
        for words in (self._prompt, self._hint):
            words.setTextFormat(Qt.TextFormat.PlainText)
        self._prompt.setWordWrap(False)
        self._prompt.setBuddy(self.field)
        self._hint.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        self.field.textEdited.connect(self.typed)
        self.field.returnPressed.connect(lambda: self.taken.emit(self.field.text()))
        self.field.left.connect(self.left)
        self.field.stepped.connect(self.stepped)
        look.changed.connect(self._fit)
        self._fit()
        self.hide()

    def ask(self, prompt: str, hint: str, text: str = "") -> None:
        """Show the line with *prompt*, and give it the keyboard."""
        self._prompt.setText(prompt)
        self._hint.setText(hint)
        self.field.setText(text)
        self.field.setAccessibleName(prompt)
        self.field.setAccessibleDescription(hint)
        self.show()
        self.field.setFocus()

    def hint(self, words: str) -> None:
        """Say something else beside the field."""
        self._hint.setText(words)
        self.field.setAccessibleDescription(words)

    def prompt(self, words: str) -> None:
        """Ask otherwise; what was typed stays."""
        self._prompt.setText(words)
        self.field.setAccessibleName(words)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), self._look.colour("sheet"))
        painter.setPen(QPen(self._look.colour("point"), 3))
        painter.drawLine(0, 1, self.width(), 1)
        painter.end()

    def _fit(self) -> None:
        look = self._look
        margin = round(look.u(7, 3.5))
        self._row.setContentsMargins(margin, round(look.u(1.4, 1)), margin, round(look.u(1, 0.8)))
        self._row.setSpacing(round(look.u(3, 2)))
        self.field.setFont(look.font(Use.BODY))


class _Field(QLineEdit):
    """A line edit that tells Escape, Up and Down."""

    left = Signal()
    stepped = Signal(int)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        steps = {Qt.Key.Key_Up: -1, Qt.Key.Key_Down: 1}
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        elif event.key() in steps:
            self.stepped.emit(steps[Qt.Key(event.key())])
        else:
            super().keyPressEvent(event)
