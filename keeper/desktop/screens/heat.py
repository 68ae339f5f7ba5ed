"""Heat: rows and rooms with their last readings, the day-night band, readings typed, loggers."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QKeyEvent, QKeySequence, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QStackedLayout, QVBoxLayout, QWidget

from keeper.actions.heat_band import band_of
from keeper.actions.heat_board import (
    HeatBoard,
    HeatCell,
    HeatLine,
    doubt,
    heat_board,
    set_incubator_limits,
    typed_celsius,
    write_heat,
)
from keeper.actions.keeping import Keeping, Written
from keeper.actions.logger_files import Preview
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.background import Background, Worker
from keeper.desktop.look import Look
from keeper.desktop.notices import Notices
from keeper.desktop.screens.heat_files import AGREE, HeatFiles
from keeper.desktop.screens.heat_words import band_face, place_face, preview_lines, reading_face
from keeper.desktop.type import Use
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.desktop.widgets.day_night_band import DayNightBand
from keeper.desktop.widgets.heat_list import HeatLegend, HeatList
from keeper.desktop.widgets.reading_panel import ReadingPanel
from keeper.desktop.widgets.told_sheet import ToldSheet
from keeper.desktop.widgets.words_line import HeadLine, Words
from keeper.reports.figures import counted
from keeper.reports.words import sentence

KEYS = "digits, Enter  write    +  −  row    /  zone    G  read with    L  logger file    P  probe"
GUN = "gun"
_MOST_DIGITS = 6
_KEYS = {
    Qt.Key.Key_Enter: "Enter",
    Qt.Key.Key_Return: "Enter",
    Qt.Key.Key_Escape: "Esc",
    Qt.Key.Key_Plus: "+",
    Qt.Key.Key_Down: "+",
    Qt.Key.Key_Minus: "-",
    Qt.Key.Key_Up: "-",
    Qt.Key.Key_Slash: "/",
    Qt.Key.Key_Right: "/",
    Qt.Key.Key_Left: "<",
    Qt.Key.Key_Period: ".",
    Qt.Key.Key_Comma: ".",
    Qt.Key.Key_Backspace: "rub",
    **{Qt.Key(Qt.Key.Key_0.value + n): str(n) for n in range(10)},
    **{Qt.Key[f"Key_{letter}"]: letter for letter in "UOZN"},
}
PLACES = counted("place", "places")


class HeatScreen(QWidget):
    """The place *Heat*. Digits type a reading of the cell that is chosen, Enter writes it."""

    def __init__(
        self, look: Look, keeping: Keeping, notices: Notices, *, worker: Worker | None = None
    ) -> None:
        super().__init__()
        self._look, self._keeping, self._notices = look, keeping, notices
        self._worker = worker or Background(self)
        self._board = HeatBoard(lines=(), faults=(), fault_places=())
        self._line = self._cell = 0
        self._typed = self._asked = ""
        self._doubted: float | None = None
        self._read_with = GUN
        self._stale = True
        self.head = HeadLine(look)
        self.list = HeatList(look)
        self.legend = HeatLegend(look)
        self.panel = ReadingPanel(look)
        self.band = DayNightBand(look)
        self.sheet = ToldSheet(look)
        self.keys = Words(look, Use.BODY, "ink2")
        self.asking = AskingLine(look, self)
        self.files = HeatFiles(keeping, notices, self.asking, self._worker, self._show_file)
        self._lay_out()
        self._listen()

    def scanned(self, code: str) -> None:
        """Go to the place that was scanned."""
        for number, line in enumerate(self._board.lines):
            if code == line.place:
                self._choose(number, self._cell)
                return
        self._notices.refused.emit(f"No place here bears {code!r}.")

    def close_down(self) -> None:
        """Wait for what is being read."""
        self._worker.stop()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = _KEYS.get(Qt.Key(event.key()))
        if key is None or not self._press(key):
            super().keyPressEvent(event)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self._stale:
            self._read()

    # --- laying out --------------------------------------------------------------------------

    def _lay_out(self) -> None:
        self._right = QStackedLayout()
        self._right.addWidget(self.band)
        self._right.addWidget(self.sheet)
        left, right = QVBoxLayout(), QVBoxLayout()
        left.addWidget(self.list, 1)
        left.addWidget(self.legend)
        right.addWidget(self.panel)
        right.addLayout(self._right, 1)
        self._body = QHBoxLayout()
        self._body.addLayout(left, 11)
        self._body.addLayout(right, 10)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.head)
        column.addLayout(self._body, 1)
        column.addWidget(self.keys)
        column.addWidget(self.asking)
        self.keys.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.keys.setText(KEYS)
        self._fit()

    def _fit(self) -> None:
        margin = round(self._look.u(7, 3.5))
        self._body.setContentsMargins(0, 0, margin, round(self._look.u(1)))
        self._body.setSpacing(round(self._look.u(5, 3)))

    def _listen(self) -> None:
        for key, words, slot in (
            ("L", "take in a logger’s file", self._take_file),
            ("P", "place a probe here", self._place_probe),
            ("G", "what readings are typed from", self._ask_read_with),
            ("I", "limits of the incubator", self._ask_incubator),
        ):
            self._add_action(key, words, slot)
        self.list.asked.connect(self._choose)
        self._notices.changed.connect(self._hear)
        self._look.changed.connect(self._fit)

    def _add_action(self, key: str, words: str, slot: Callable[[], None]) -> None:
        action = QAction(words, self)
        action.setShortcut(QKeySequence(key))
        action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        action.triggered.connect(lambda _=False: slot())
        self.addAction(action)

    # --- reading and showing -----------------------------------------------------------------

    def _hear(self) -> None:
        self._stale = True
        if self.isVisible():
            self._read()

    def _read(self) -> None:
        self._stale = False
        self._board = heat_board(self._keeping, self._keeping.today)
        self._line = min(self._line, max(0, len(self._board.lines) - 1))
        self._show()

    def _here(self) -> tuple[HeatLine, HeatCell] | None:
        if not self._board.lines:
            return None
        line = self._board.lines[self._line]
        return line, line.cells[min(self._cell, len(line.cells) - 1)]

    def _show(self) -> None:
        on, lines = self._keeping.today, self._board.lines
        here = self._here()
        if here is None:
            return
        line, cell = here
        at = line.cells.index(cell)
        self.list.show_places([place_face(each, on) for each in lines], self._line, at)
        self.panel.show_reading(reading_face(line, cell, on, self._typed, self._asked))
        band = band_of(self._keeping, line.place, cell.zone, on)
        self.band.show_band(band_face(line, cell, band))
        self._show_head()

    def _show_head(self) -> None:
        cells = [cell for line in self._board.lines for cell in line.cells]
        out = sum(cell.standing in ("today", "now") for cell in cells)
        unread = sum(all(c.temp_c is None for c in line.cells) for line in self._board.lines)
        parts = [(PLACES(len(self._board.lines)), True)]
        if self._board.faults:
            place = self._board.fault_places[0]
            parts += [(f"{place}: {sentence(self._board.faults[0])}", True)]
        right = [f"{out} to look at", f"{unread} not read in two weeks", f"with {self._read_with}"]
        self.head.show_words("Heat", parts, right)

    def _show_file(self, seen: Preview | None) -> None:
        if seen is None:
            self._right.setCurrentWidget(self.band)
            self.keys.setText(KEYS)
            return
        self.sheet.show_lines(list(preview_lines(seen)))
        self._right.setCurrentWidget(self.sheet)
        self.keys.setText(AGREE)
        self.setFocus()

    # --- keys --------------------------------------------------------------------------------

    def _press(self, key: str) -> bool:
        if self.files.seen is not None and self.files.press(key):
            return True
        if self._here() is None:
            return False
        if key.isdigit() or key == ".":
            self._type(key)
        elif key == "Enter":
            self._enter()
        elif key in "+-":
            self._choose(self._line + (1 if key == "+" else -1), self._cell)
        elif key in "/<":
            self._next_zone(1 if key == "/" else -1)
        elif key == "rub":
            self._say(self._typed[:-1])
        elif key == "Esc" and self._typed:
            self._say("")
        else:
            return False
        return True

    def _type(self, key: str) -> None:
        if key == "." and "." in self._typed:
            return
        self._say((self._typed + key)[:_MOST_DIGITS])

    def _say(self, typed: str, asked: str = "") -> None:
        self._typed, self._asked = typed, asked
        self._show()

    def _next_zone(self, by: int) -> None:
        here = self._here()
        if here is not None:
            count = len(here[0].cells)
            self._choose(self._line, (here[0].cells.index(here[1]) + by) % count)

    def _choose(self, line: int, cell: int) -> None:
        self._line = max(0, min(line, len(self._board.lines) - 1))
        self._cell = cell
        self._doubted = None
        self._say("")

    def _enter(self) -> None:
        """Write what is typed and go on to the next row; with nothing typed only go on."""
        here = self._here()
        if here is None:
            return
        if not self._typed:
            self._choose(self._line + 1, self._cell)
            return
        try:
            temp_c = typed_celsius(self._typed)
            doubted = doubt(temp_c)
            if doubted is not None and temp_c != self._doubted:
                self._doubted = temp_c
                self._say("", f"{doubted} Type it again.")
                return
            line, cell = here
            written = write_heat(self._keeping, line.place, cell.zone, temp_c, self._read_with)
        except REFUSALS as refusal:
            self._say("")
            self._notices.refused.emit(said(refusal))
            return
        self._choose(self._line + 1, self._cell)
        self._notices.tell_written(written)

    def _take_file(self) -> None:
        self.files.begin()

    def _place_probe(self) -> None:
        here = self._here()
        if not self.files.press("P") and here is not None:
            self.files.place(here[0].place, here[1].zone)

    def _ask_read_with(self) -> None:
        self.asking.ask("Readings are typed from", self._take_read_with, self._read_with)

    def _take_read_with(self, text: str) -> bool:
        self._read_with = text or GUN
        self._show_head()
        return True

    def _ask_incubator(self) -> None:
        self.asking.ask("Limits of the incubator, °C (27-30.5)", self._take_incubator)

    def _take_incubator(self, text: str) -> bool:
        return self._try(lambda: set_incubator_limits(self._keeping, text))

    def _try(self, write: Callable[[], Written]) -> bool:
        try:
            written = write()
        except REFUSALS as refusal:
            self._notices.refused.emit(said(refusal))
            return False
        self._notices.tell_written(written)
        return True
