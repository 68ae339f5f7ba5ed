"""Colour across generations as one piece: the picture, and beside or beneath it what it says."""

from __future__ import annotations

from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QSizePolicy, QWidget

from keeper.desktop.look import Look
from keeper.desktop.widgets.clutch_panel import ClutchPanel, Paragraph
from keeper.desktop.widgets.generations import GenerationsPicture
from keeper.language import tr
from keeper.reports.colour_facts import ColourFacts
from keeper.reports.colour_words import paragraphs, scored_how

_WIDE = 1.5
"""From so many times its height on the words stand beside the picture."""


class ColourPanel(QWidget):
    """It takes whatever room there is; it has no keys of its own and takes no keyboard."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self.picture = GenerationsPicture(look, self)
        self.words = ClutchPanel(look, self)
        self.picture.setAccessibleName(tr("Colour across generations"))
        self.words.setAccessibleName(tr("What the picture says"))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self._is_scored = self._words_alone = False
        self._rows = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self._rows.setContentsMargins(0, 0, 0, 0)
        self._rows.addWidget(self.picture, 62)
        self._rows.addWidget(self.words, 38)
        look.changed.connect(self._fit)
        self._fit()
        self.show_colour(None)

    def show_colour(self, facts: ColourFacts | None) -> None:
        """A line's colour, or how to begin where nothing is scored yet."""
        self._is_scored = facts is not None
        self.picture.show_colour(facts)
        self._lay()
        if facts is None:
            self.words.show_paragraphs([Paragraph(head=tr("Colour"), words=scored_how())])
            return
        told = paragraphs(facts)
        self.words.show_paragraphs([Paragraph(head=each.head, words=each.words) for each in told])

    def turn_over(self) -> None:
        """The words in the whole room, in the place of the picture, or both again.

        While the panel is out of sight nothing happens.
        """
        if not self.isVisible():
            return
        self._words_alone = not self._words_alone
        self._lay()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        wide = event.size().width() >= _WIDE * event.size().height()
        across, down = QBoxLayout.Direction.LeftToRight, QBoxLayout.Direction.TopToBottom
        self._rows.setDirection(across if wide else down)
        self._rows.setStretch(0, 62 if wide else 66)
        self._rows.setStretch(1, 38 if wide else 34)

    def _lay(self) -> None:
        self.picture.setVisible(self._is_scored and not self._words_alone)

    def _fit(self) -> None:
        self._rows.setSpacing(round(self._look.u(5, 3.5)))
