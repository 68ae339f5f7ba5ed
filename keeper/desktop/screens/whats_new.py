"""What is new: the changes of each version, the newest first; a page that asks for nothing."""

from __future__ import annotations

from PySide6.QtWidgets import QTextBrowser, QVBoxLayout, QWidget

from keeper.actions.changes import Change, changes
from keeper.actions.keeping import Keeping
from keeper.desktop.look import Look
from keeper.desktop.notices import Notices
from keeper.desktop.page_keys import key_shown
from keeper.desktop.places import key_of
from keeper.desktop.type import Use
from keeper.desktop.widgets.words_line import HeadLine
from keeper.language import tr


class WhatsNewScreen(QWidget):
    """Text that is walked with the arrows and read by a screen reader line by line."""

    def __init__(self, look: Look, keeping: Keeping, notices: Notices) -> None:
        super().__init__()
        self._look = look
        self._head = HeadLine(look)
        aside = tr("the newest first; {key} comes back here", key=key_shown(key_of("What is new")))
        self._head.show_words(tr("What is new"), [(aside, False)])
        self.body = QTextBrowser(self)
        self.body.setOpenLinks(False)
        self.body.setStyleSheet("border: 0")
        self.body.setAccessibleName(tr("what is new"))
        self._column = QVBoxLayout(self)
        self._column.setSpacing(0)
        self._column.addWidget(self._head)
        self._column.addWidget(self.body, 1)
        self.setFocusProxy(self.body)
        look.changed.connect(self._dress)
        self._dress()

    def _dress(self) -> None:
        """The text is set again: a heading takes its size from the font at hand."""
        margin = round(self._look.u(2, 1.5))
        self._column.setContentsMargins(0, 0, 0, margin)
        self.body.setFont(self._look.font(Use.BODY))
        self.body.document().setDocumentMargin(self._look.u(6, 3))
        self.body.setMarkdown("\n\n".join(map(_as_shown, changes())))


def _as_shown(change: Change) -> str:
    """Its Markdown with solid dots: Qt draws a star's point as a ring."""
    return change.told.replace("\n* ", "\n- ")
