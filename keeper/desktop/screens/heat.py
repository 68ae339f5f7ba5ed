"""Heat: rows and rooms with their last readings, the day-night band, readings typed, loggers."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QKeyEvent, QKeySequence, QShowEvent
from PySide6.QtWidgets import QWidget

from keeper.actions.heat_band import band_of
from keeper.actions.heat_board import (
    HeatBoard,
    HeatCell,
    HeatLine,
    heat_board,
    set_incubator_limits,
)
from keeper.actions.keeping import Keeping
from keeper.actions.logger_files import Preview
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.aside_reading import AsideReading
from keeper.desktop.background import Background, Worker
from keeper.desktop.look import Look
from keeper.desktop.notices import Notices
from keeper.desktop.page_keys import add_told_key
from keeper.desktop.screens.heat_files import AGREE, HeatFiles
from keeper.desktop.screens.heat_live import LIVE_KEYS, HeatLive
from keeper.desktop.screens.heat_typing import HeatTyping, read_with_typed
from keeper.desktop.screens.heat_view import HeatView
from keeper.desktop.screens.heat_words import (
    band_face,
    head_words,
    place_face,
    preview_lines,
    reading_face,
)
from keeper.language import tr
from keeper.reports.figures import degrees, heat_unit

KEYS = tr(
    "digits, Enter  write    +  −  row    /  zone    G  read with    L  logger file    P  probe"
    "    I  incubator    M  live"
)
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
    **{Qt.Key[f"Key_{letter}"]: letter for letter in "UOZNSAWVTC"},
}

TOLD = {
    "0": tr("and the other digits type what was read"),
    "Enter": tr("write what was typed"),
    "+, Down": tr("the next row"),
    "-, Up": tr("the row before"),
    "/, Right": tr("the next zone"),
}
"""Keys that the page takes by itself."""


class HeatScreen(HeatView):
    """The place *Heat*. Digits type a reading of the cell that is chosen, Enter writes it."""

    def __init__(
        self, look: Look, keeping: Keeping, notices: Notices, *, worker: Worker | None = None
    ) -> None:
        super().__init__(look)
        self._keeping, self._notices = keeping, notices
        self._worker = worker or Background(self)
        self._board = HeatBoard(lines=(), faults=(), fault_places=())
        self._line = self._cell = 0
        self._typing = HeatTyping()
        self.files = HeatFiles(keeping, notices, self.asking, self._worker, self._show_file)
        self.live = HeatLive(
            keeping, notices, self.asking, self._show_live, self.files.ask_place_of
        )
        self._reading = AsideReading(
            self,
            keeping,
            worker,
            question=heat_board,
            take=self._take_board,
            refused=notices.refused.emit,
        )
        self.keys.setText(KEYS)
        self._listen()

    def scanned(self, code: str) -> None:
        """Go to the place that was scanned."""
        for number, line in enumerate(self._board.lines):
            if code == line.place:
                self._choose(number, self._cell)
                return
        self._notices.refused.emit(tr("No place here bears {code!r}.", code=code))

    def close_down(self) -> None:
        """Wait for what is being read."""
        self._reading.stop()
        self._worker.stop()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = _KEYS.get(Qt.Key(event.key()))
        if key is None or not self._press(key):
            super().keyPressEvent(event)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._reading.look()

    def _listen(self) -> None:
        for key, words, slot in (
            ("L", tr("take in a logger’s file"), self.files.begin),
            ("P", tr("place a probe here"), self._place_probe),
            ("G", tr("what readings are typed from"), self._ask_read_with),
            ("I", tr("limits of the incubator"), self._ask_incubator),
            ("M", tr("live readings of a message broker"), self._look_at_live),
        ):
            self.addAction(_action(self, key, words, slot))
        for key, words in TOLD.items():
            add_told_key(self, key, words, partial(self._press, key.split(",")[0]))
        self.list.asked.connect(self._choose)
        self._notices.changed.connect(self._reading.hear)
        self.live.came.connect(self._reading.hear)

    # --- reading and showing -----------------------------------------------------------------

    def _take_board(self, board: HeatBoard) -> None:
        """Show *board*; the place that was chosen stays so."""
        here = self._here()
        self._board = board
        places = [line.place for line in board.lines]
        if here is not None and here[0].place in places:
            self._line = places.index(here[0].place)
        self._line = min(self._line, max(0, len(places) - 1))
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
        band = band_of(self._keeping, line.place, cell.zone, on)
        self.band.show_band(band_face(line, cell, band))
        self._show_head()
        self._show_panel()

    def _show_panel(self) -> None:
        """All that a digit changes."""
        here = self._here()
        if here is not None:
            typed, asked = self._typing.typed, self._typing.asked
            self.panel.show_reading(reading_face(*here, self._keeping.today, typed, asked))

    def _show_head(self) -> None:
        self.head.show_words(tr("Heat"), *head_words(self._board, self._typing.read_with))

    def _show_file(self, seen: Preview | None) -> None:
        self.live.looked_at = False
        self._show_sheet(None if seen is None else list(preview_lines(seen)), AGREE)

    def _show_live(self, lines: list[tuple[str, bool]] | None) -> None:
        self._show_sheet(lines, LIVE_KEYS)

    def _show_sheet(self, lines: list[tuple[str, bool]] | None, keys: str) -> None:
        self.lay_over(self.band if lines is None else self.sheet)
        self.keys.setText(KEYS if lines is None else keys)
        if lines is not None:
            self.sheet.show_lines(lines)
            if not self.asking.isVisible():
                self.setFocus()

    # --- keys --------------------------------------------------------------------------------

    def _press(self, key: str) -> bool:
        if self.files.press(key) or self.live.press(key):
            return True
        if self._here() is None:
            return False
        if key.isdigit() or key == ".":
            self._typing.add(key)
            self._show_panel()
        elif key == "Enter":
            self._enter()
        elif key in "+-":
            self._choose(self._line + (1 if key == "+" else -1), self._cell)
        elif key in "/<":
            self._next_zone(1 if key == "/" else -1)
        elif key == "rub" or (key == "Esc" and self._typing.typed):
            self._typing.rub_out() if key == "rub" else self._typing.forget()
            self._show_panel()
        else:
            return False
        return True

    def _next_zone(self, by: int) -> None:
        here = self._here()
        if here is not None:
            count = len(here[0].cells)
            self._choose(self._line, (here[0].cells.index(here[1]) + by) % count)

    def _choose(self, line: int, cell: int) -> None:
        self._line, self._cell = max(0, min(line, len(self._board.lines) - 1)), cell
        self._typing.forget()
        self._show()

    def _enter(self) -> None:
        """Write what is typed and go on to the next row; with nothing typed only go on."""
        here = self._here()
        if here is None:
            return
        if self._typing.typed:
            try:
                written = self._typing.write(self._keeping, here[0].place, here[1].zone)
            except REFUSALS as refusal:
                self._show_panel()
                self._notices.refused.emit(said(refusal))
                return
            if written is None:
                self._show_panel()
                return
            self._notices.tell_written(written)
        self._choose(self._line + 1, self._cell)

    def _look_at_live(self) -> None:
        if self.files.seen is None:
            self.live.begin()

    def _place_probe(self) -> None:
        here = self._here()
        if not (self.files.press("P") or self.live.press("P")) and here is not None:
            self.files.place(here[0].place, here[1].zone)

    def _ask_read_with(self) -> None:
        self.asking.ask(tr("Readings are typed from"), self._take_read_with, self._typing.device)

    def _take_read_with(self, text: str) -> bool:
        self._typing.read_with = read_with_typed(text)
        self._show_head()
        return True

    def _ask_incubator(self) -> None:
        question = tr(
            "Limits of the incubator, {unit} ({low}-{high})",
            unit=heat_unit(),
            low=degrees(27),
            high=degrees(29.5),
        )
        self.asking.ask(question, self._take_incubator)

    def _take_incubator(self, text: str) -> bool:
        return self._notices.tell_of(lambda: set_incubator_limits(self._keeping, text))


def _action(page: QWidget, key: str, words: str, slot: Callable[[], None]) -> QAction:
    action = QAction(words, page)
    action.setShortcut(QKeySequence(key))
    action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
    action.triggered.connect(lambda _=False: slot())
    return action
