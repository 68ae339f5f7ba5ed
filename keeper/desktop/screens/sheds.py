"""Sheds: every animal's shed clock, what needs a look first; signs noted with one key."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QKeyEvent, QKeySequence, QShowEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from keeper.actions.aftercare import LOOKS
from keeper.actions.keeping import Keeping
from keeper.actions.shed_board import NOTES, ShedRow, shed_row
from keeper.desktop.background import Background, Worker
from keeper.desktop.look import Look
from keeper.desktop.notices import Notices
from keeper.desktop.page_keys import add_told_key
from keeper.desktop.screens.shed_words import caution, why
from keeper.desktop.screens.sheds_doing import ShedsDoing
from keeper.desktop.screens.sheds_reading import Clocks, ShedsReading
from keeper.desktop.type import Use
from keeper.desktop.widgets.shed_list import ShedLegend, ShedList
from keeper.desktop.widgets.shed_panel import ShedPanel
from keeper.desktop.widgets.words_line import HeadLine, Words
from keeper.language import tr
from keeper.reports.figures import GAP

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
_READING = tr("The shed clocks are being read.")
_NONE = tr("No animal of this book is in the room; there is no shed to tell.")


class ShedsScreen(QWidget):
    """The place *Sheds*. Arrows walk, digits note what is seen, Enter opens her page.

    All clocks are read off the main thread. What is noted here is read back at once for its own
    animal alone, so that a walk waits for no reading.
    """

    def __init__(
        self, look: Look, keeping: Keeping, notices: Notices, *, worker: Worker | None = None
    ) -> None:
        super().__init__()
        self._keeping, self._notices = keeping, notices
        self._clocks: Clocks | None = None
        self._line = 0
        self._gone: ShedRow | None = None  # the chosen animal that left the room meanwhile
        self._in_place = self._order_is_old = False
        self._scanned, self._unread = "", _READING
        self._reading = ShedsReading(
            keeping, worker or Background(), take=self._take, outran=self._look, refused=self._fail
        )
        self._doing = ShedsDoing(
            keeping, notices, chosen=self._chosen, why_none=self._why_none, wrote=self._read_back
        )
        self.head = HeadLine(look)
        self.list = ShedList(look)
        self.legend = ShedLegend(look)
        self.panel = ShedPanel(look)
        self.keys = Words(look, Use.BODY, "ink2")
        self._lay_out()
        self._listen()
        self.head.show_words(tr("Sheds"), [(tr("looking through the book"), False)])
        self._show_line()

    def scanned(self, code: str) -> None:
        """Go to the animal whose label was scanned, if need be when the reading is done."""
        for number, row in enumerate(self._rows):
            if code in (row.animal.code, row.animal.place):
                self._choose(number)
                return
        if self._reading.under_way:
            self._scanned = code
            return
        self._notices.refused.emit(tr("No animal here bears {code!r}.", code=code))

    def close_down(self) -> None:
        """Let go of the book; nothing is read any more."""
        self._reading.stop()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        step = _STEPS.get(Qt.Key(event.key()))
        if step is not None:
            self._step(step)
        elif event.key() == Qt.Key.Key_Enter:
            self._doing.open()
        else:
            super().keyPressEvent(event)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self._reading.is_old or self._order_is_old:
            self._in_place = False
            self._reading.begin()

    # --- reading -----------------------------------------------------------------------------

    def _hear(self) -> None:
        """The book changed; while one looks, each stays on its line, so that a walk goes on."""
        self._reading.changed()
        if self._doing.telling or not self.isVisible():
            return
        self._in_place |= not self._reading.under_way
        self._reading.begin()

    def _look(self) -> None:
        if self.isVisible():
            self._reading.begin()

    def _take(self, clocks: Clocks) -> None:
        """The animal that was chosen stays chosen wherever it went; no other takes its keys."""
        chosen, before = self._gone or self._chosen(), self._lines()
        in_place = self._in_place and bool(before)
        self._order_is_old = in_place
        self._clocks = clocks.in_order_of(before) if in_place else clocks
        self.list.show_sheds(self._clocks.faces, clocks.on)
        self._show_head()
        if chosen is not None:
            here = self._lines().get(chosen.animal.animal)
            self._gone = chosen if here is None else None
            self._line = self._line if here is None else here
        self._show_line()
        if self._scanned:
            code, self._scanned = self._scanned, ""
            self.scanned(code)

    def _fail(self, sentence: str) -> None:
        self._unread = tr("The sheds could not be read. {why}", why=sentence)
        self._notices.refused.emit(self._unread)
        self._scanned = ""
        self._show_line()

    def _read_back(self, row: ShedRow) -> None:
        """The one animal of which something was noted, on its line."""
        self._order_is_old = self._in_place = True
        line, clocks, today = (
            self._lines().get(row.animal.animal),
            self._clocks,
            self._keeping.today,
        )
        now = shed_row(self._keeping, row.animal.animal, today)
        if now is None or line is None or clocks is None or clocks.on != today:
            self._look()
            return
        self._clocks = clocks.with_row(line, now)
        self.list.show_sheds(self._clocks.faces, today)
        self._show_head()
        self._show_line()

    # --- showing -----------------------------------------------------------------------------

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        for widget in (self.head, self.list, self.legend, self.panel, self.keys):
            column.addWidget(widget, int(widget is self.list))
        self.keys.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.keys.setText(KEYS)

    def _listen(self) -> None:
        for key, noted in NOTES.items():
            self._add_action(key, noted.words, partial(self._doing.note, key))
        for key, look_words in LOOKS.items():
            self._add_action(key, look_words.words, partial(self._doing.look_again, key))
        self._add_action("Return", tr("open her page"), self._doing.open)
        add_told_key(self, "Down", tr("the next animal"), lambda: self._step(1))
        add_told_key(self, "Up", tr("the animal before"), lambda: self._step(-1))
        self.list.asked.connect(self._choose)
        self._notices.changed.connect(self._hear)

    def _add_action(self, key: str, words: str, slot: Callable[[], None]) -> None:
        action = QAction(words, self)
        action.setShortcut(QKeySequence(key))
        action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        action.triggered.connect(lambda _=False: slot())
        self.addAction(action)

    @property
    def _rows(self) -> tuple[ShedRow, ...]:
        return self._clocks.rows if self._clocks is not None else ()

    def _lines(self) -> dict[int, int]:
        """The line of each animal shown."""
        return {row.animal.animal: line for line, row in enumerate(self._rows)}

    def _chosen(self) -> ShedRow | None:
        there = self._gone is None and self._line < len(self._rows)
        return self._rows[self._line] if there else None

    def _step(self, by: int) -> None:
        """Where the chosen one is gone, the next has its line already."""
        self._choose(self._line + by - int(self._gone is not None and by > 0))

    def _choose(self, line: int) -> None:
        self._line, self._gone = line, None
        self._in_place = True  # an answer still to come must not move what is walked
        self._show_line()

    def _show_line(self) -> None:
        self._line = max(0, min(self._line, len(self._rows) - 1))
        row = self._chosen()
        self.list.choose(self._line, chosen=row is not None)
        if row is None or self._clocks is None:
            self.panel.show_why("", "", self._why_none())
            return
        face = self._clocks.faces[self._line]
        self.panel.show_why(f"{face.place} {face.name}", caution(row), why(row))

    def _why_none(self) -> str:
        """Why no animal is chosen."""
        if self._clocks is None:
            return self._unread
        if self._gone is None or not self._rows:
            return _NONE
        return tr(
            "{name} is no longer in the room; an arrow key chooses another animal.",
            name=self._gone.animal.called,
        )

    def _show_head(self) -> None:
        look = sum(row.severity is not None and not row.cannot_tell for row in self._rows)
        cycle = sum(row.clock.stage is not None for row in self._rows)
        untold = sum(row.cannot_tell for row in self._rows)
        right = (
            tr("{count} to look at", count=look),
            tr("{count} in a cycle", count=cycle),
            tr("{count} cannot tell", count=untold),
        )
        self.head.show_words(tr("Sheds"), [(tr("what needs a look first"), False)], right)
