"""One line at the foot of a place that asks for one thing: no dialog, Enter writes, Esc leaves."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.words_line import Words
from keeper.language import tr


class AskingLine(QWidget):
    """Hidden until ``ask``; gives the keyboard back to *home* when it is done."""

    def __init__(self, look: Look, home: QWidget) -> None:
        super().__init__(home)
        self._home = home
        self._answered: Callable[[str], bool] = lambda _: True
        self._left: Callable[[], None] | None = None
        self._question = Words(look, Use.BODY_STRONG)
        self._question.setWordWrap(False)
        self.field = QLineEdit(self)
        self._hint = Words(look, Use.BODY, "ink3")
        self._hint.setText(tr("Enter writes   Esc leaves"))
        self._hint.setWordWrap(False)
        self._look = look
        self._row = row = QHBoxLayout(self)
        row.addWidget(self._question)
        row.addWidget(self.field, 1)
        row.addWidget(self._hint)
        self.field.returnPressed.connect(self._answer)
        look.changed.connect(self._fit)
        self._fit()
        self.hide()

    def ask(
        self,
        question: str,
        answered: Callable[[str], bool],
        written: str = "",
        *,
        hidden: bool = False,
        left: Callable[[], None] | None = None,
    ) -> None:
        """Ask *question*. *answered* gets the text and says whether it could be taken.

        hidden: what is typed is not shown. left: called when Esc leaves it unanswered.
        """
        self._left = left
        echo = QLineEdit.EchoMode
        self.field.setEchoMode(echo.Password if hidden else echo.Normal)
        self._question.setText(question)
        self._answered = answered
        self.field.setText(written)
        self.field.setAccessibleName(question)
        self.show()
        self.field.setFocus()
        self.field.selectAll()

    def leave(self) -> None:
        """Ask no more; nothing is written."""
        self.hide()
        self._home.setFocus()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.leave()
            if self._left is not None:
                self._left()
        elif event.key() not in (Qt.Key.Key_Return, Qt.Key.Key_Enter):  # answered; no page's key
            super().keyPressEvent(event)

    def _fit(self) -> None:
        margin = round(self._look.u(7, 3.5))
        self.field.setFont(self._look.font(Use.BODY))
        self._row.setContentsMargins(margin, 0, margin, round(self._look.u(1)))

    def _answer(self) -> None:
        if self._answered(self.field.text().strip()):
            self.leave()
