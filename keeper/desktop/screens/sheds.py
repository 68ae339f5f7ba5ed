"""Sheds: every animal's shed clock, what needs a look first; signs noted with one key."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QKeyEvent, QKeySequence, QShowEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from keeper.actions.aftercare import LOOKS, note_look
from keeper.actions.keeping import Keeping
from keeper.actions.shed_board import NOTES, ShedRow, note_sign, shed_rows
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.look import Look
from keeper.desktop.notices import Notices
from keeper.desktop.page_keys import add_told_key
from keeper.desktop.screens.shed_words import caution, shed_face, why
from keeper.desktop.type import Use
from keeper.desktop.widgets.shed_list import ShedLegend, ShedList
from keeper.desktop.widgets.shed_panel import ShedPanel
from keeper.desktop.widgets.words_line import HeadLine, Words
from keeper.language import tr
from keeper.reports.figures import GAP
from keeper.reports.words import because_text

_LEGEND = {
    **{key: noted.words for key, noted in NOTES.items()},
    **{key: look.words for key, look in LOOKS.items()},
}
KEYS = "   ".join(
    f"{key}{GAP}{words}" for key, words in (*_LEGEND.items(), (tr("Enter"), tr("page")))
)
_STEPS = {
    Qt.Key.Key_Down: 1,
    Qt.Key.Key_Plus: 1,
    Qt.Key.Key_Up: -1,
    Qt.Key.Key_Minus: -1,
    Qt.Key.Key_PageDown: 8,
    Qt.Key.Key_PageUp: -8,
    Qt.Key.Key_Home: -100_000,
    Qt.Key.Key_End: 100_000,
}


class ShedsScreen(QWidget):
    """The place *Sheds*. Arrows walk, digits note what is seen, Enter opens her page."""

    def __init__(self, look: Look, keeping: Keeping, notices: Notices) -> None:
        super().__init__()
        self._keeping, self._notices = keeping, notices
        self._rows: tuple[ShedRow, ...] = ()
        self._line = 0
        self._stale = True
        self.head = HeadLine(look)
        self.list = ShedList(look)
        self.legend = ShedLegend(look)
        self.panel = ShedPanel(look)
        self.keys = Words(look, Use.BODY, "ink2")
        self._lay_out()
        for key, noted in NOTES.items():
            self._add_action(key, noted.words, self._noter(key))
        for key, look_words in LOOKS.items():
            self._add_action(key, look_words.words, partial(self._look_again, key))
        self._add_action("Return", tr("open her page"), self._open)
        add_told_key(self, "Down", tr("the next animal"), lambda: self._choose(self._line + 1))
        add_told_key(self, "Up", tr("the animal before"), lambda: self._choose(self._line - 1))
        self.list.asked.connect(self._choose)
        notices.changed.connect(self._hear)

    def scanned(self, code: str) -> None:
        """Go to the animal whose label was scanned."""
        for number, row in enumerate(self._rows):
            if code in (row.animal.code, row.animal.place):
                self._choose(number)
                return
        self._notices.refused.emit(tr("No animal here bears {code!r}.", code=code))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        step = _STEPS.get(Qt.Key(event.key()))
        if step is not None:
            self._choose(self._line + step)
        elif event.key() == Qt.Key.Key_Enter:
            self._open()
        else:
            super().keyPressEvent(event)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self._stale:
            self._read()

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        for widget in (self.head, self.list, self.legend, self.panel, self.keys):
            column.addWidget(widget, int(widget is self.list))
        self.keys.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.keys.setText(KEYS)

    def _add_action(self, key: str, words: str, slot: Callable[[], None]) -> None:
        action = QAction(words, self)
        action.setShortcut(QKeySequence(key))
        action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        action.triggered.connect(lambda _=False: slot())
        self.addAction(action)

    def _noter(self, key: str) -> Callable[[], None]:
        return lambda: self._note(key)

    def _hear(self) -> None:
        self._stale = True
        if self.isVisible():
            self._read(in_place=True)

    def _read(self, *, in_place: bool = False) -> None:
        """Read all clocks anew; the animal that was chosen stays chosen wherever it went.

        in_place: each stays on its line, so that a walk down the list goes on from there.
        """
        self._stale = in_place  # the order is old
        chosen = self._chosen()
        before = {row.animal.animal: line for line, row in enumerate(self._rows)}
        self._rows = shed_rows(self._keeping, self._keeping.today)
        if in_place:
            last = len(before)
            rows = sorted(self._rows, key=lambda row: before.get(row.animal.animal, last))
            self._rows = tuple(rows)
        animals = [row.animal.animal for row in self._rows]
        if chosen is not None and chosen.animal.animal in animals:
            self._line = animals.index(chosen.animal.animal)
        self._choose(self._line)

    def _chosen(self) -> ShedRow | None:
        return self._rows[self._line] if self._line < len(self._rows) else None

    def _choose(self, line: int) -> None:
        self._line = max(0, min(line, len(self._rows) - 1))
        today = self._keeping.today
        faces = [shed_face(row, today) for row in self._rows]
        self.list.show_sheds(faces, self._line, today)
        row = self._chosen()
        if row is not None:
            face = faces[self._line]
            self.panel.show_why(f"{face.place} {face.name}", caution(row), why(row))
        self._show_head()

    def _show_head(self) -> None:
        look = sum(row.severity is not None and not row.cannot_tell for row in self._rows)
        cycle = sum(row.clock.stage is not None for row in self._rows)
        untold = sum(row.cannot_tell for row in self._rows)
        parts = [(tr("what needs a look first"), False)]
        right = (
            tr("{count} to look at", count=look),
            tr("{count} in a cycle", count=cycle),
            tr("{count} cannot tell", count=untold),
        )
        self.head.show_words(tr("Sheds"), parts, right)

    def _note(self, key: str) -> None:
        row = self._chosen()
        if row is None:
            return
        try:
            written, cautions = note_sign(self._keeping, row, NOTES[key])
        except REFUSALS as refusal:
            self._notices.refused.emit(said(refusal))
            return
        self._notices.tell_written(written)
        if cautions:
            told = because_text(cautions, row.animal.sex)
            said_of = tr(
                "Written: {what}. {caution} Ctrl+Z takes it back.", what=written.what, caution=told
            )
            self._notices.noted.emit(said_of)

    def _look_again(self, key: str) -> None:
        row = self._chosen()
        if row is None:
            return
        look, animal, left = LOOKS[key], row.animal, row.left
        self._notices.tell_of(lambda: note_look(self._keeping, animal, look, left))

    def _open(self) -> None:
        row = self._chosen()
        if row is not None:
            self._notices.animal_asked.emit(row.animal.animal)
