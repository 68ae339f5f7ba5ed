"""The one line of a page at work: what is asked for, echoed while it is typed, and written."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.look import Look
from keeper.desktop.notices import Notices
from keeper.desktop.screens.animal_asking import Asking
from keeper.desktop.widgets.typed_line import TypedLine


class AnimalLine(TypedLine):
    """While it is open the page's own keys are letters; Escape gives the page the keyboard back."""

    def __init__(self, look: Look, page: QWidget, notices: Notices) -> None:
        super().__init__(look, page)
        self._page, self._notices = page, notices
        self._asking: Asking | None = None
        self.typed.connect(self._echo)
        self.stepped.connect(self._step)
        self.taken.connect(self._take)
        self.left.connect(self.leave)

    def open(self, asking: Asking) -> None:
        """Ask for one thing."""
        self._asking = asking
        for action in self._page.actions():
            action.setEnabled(False)
        self.ask(asking.prompt, asking.hint)

    def leave(self) -> None:
        """Put the line away, written or not."""
        if self._asking is None:
            return
        self._asking = None
        self.hide()
        for action in self._page.actions():
            action.setEnabled(True)
        self._page.setFocus()

    def _echo(self, text: str) -> None:
        if self._asking is not None:
            self.hint(self._asking.echo(text))

    def _step(self, by: int) -> None:
        if self._asking is not None:
            self._asking.step(by)
            self.prompt(self._asking.prompt)
            self._echo(self.field.text())

    def _take(self, text: str) -> None:
        """Write what was typed; what is refused stays in the field."""
        if self._asking is None:
            return
        try:
            written = self._asking.take(text)
        except REFUSALS as refusal:
            self._notices.refused.emit(said(refusal))
            return
        self.leave()
        if written is not None:
            self._notices.tell_written(written)
