"""The weigh-in: animals walked in rack order to the scale, a slip asked about and never changed."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from contextlib import suppress

from PySide6.QtGui import QKeyEvent, QShowEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from keeper.actions.keeping import Keeping, Written, animal_coded
from keeper.actions.troubles import REFUSALS, said
from keeper.actions.weighing import Asks, WeighIn
from keeper.desktop.look import Look
from keeper.desktop.notices import Notices
from keeper.desktop.page_keys import add_key
from keeper.desktop.screens.round_asking import Marks
from keeper.desktop.screens.weigh_in_faces import grams_typed
from keeper.desktop.screens.weigh_in_view import WeighView
from keeper.husbandry.place import place_of
from keeper.language import tr

MOST_TYPED = 8
"""Digits and a point of the heaviest weight that can be typed, with three decimals less one."""

LEGEND = {
    **dict.fromkeys("0123456789", ""),
    "/": tr("no weight"),
    "*": tr("mark"),
    "-": tr("step back"),
    "+": tr("take off the bag"),
    ".": tr("point"),
    "Enter": tr("write"),
}


class WeighInScreen(QWidget):
    """The place *Weigh-in*. What is typed is not written until Enter takes it."""

    def __init__(self, look: Look, keeping: Keeping, notices: Notices) -> None:
        super().__init__()
        self.look, self._keeping, self._notices = look, keeping, notices
        self._walk: WeighIn | None = None
        self._typed = ""
        self._asks: Asks | None = None
        self._marking, self._fresh = False, False
        self._passed: frozenset[int] = frozenset()
        self._stale, self._telling, self._refused = True, False, False
        self._view = WeighView(look)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._view)
        self._view.pad.key_asked.connect(self._press)
        self._view.row.tub_asked.connect(self._go_to_front)
        add_key(self, "R", tr("what the scale reads to, as typed"), self._set_scale)
        notices.changed.connect(self._hear)
        look.changed.connect(self._show)

    def read_ahead(self) -> Iterable[Callable[[], object]]:
        """The walk, and who is at the scale. What cannot be read is told when it is shown."""
        return self._read_walk_ahead, self._read_scale_ahead

    def _read_walk_ahead(self) -> None:
        with suppress(*REFUSALS):
            self._read_if_stale()

    def _read_scale_ahead(self) -> None:
        if self._walk is not None and self._walk.current is not None:
            with suppress(*REFUSALS):
                self._walk.on_scale()

    def scanned(self, code: str) -> None:
        """Go to the animal whose code or place is *code*."""
        self._read_if_stale()
        walk = self._walk
        if walk is None:
            return
        try:
            place = place_of(code)
            there = [row for row in walk.animals if place and place_of(row.place or "") == place]
            walk.go_to(there[0] if there else animal_coded(self._keeping, code))
        except REFUSALS as error:
            self._refuse(said(error))
            return
        self._typed, self._asks = "", None
        self._show()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if not self._view.pad.take(event):
            super().keyPressEvent(event)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._read_if_stale()
        self._show()

    def _hear(self) -> None:
        """Something was written elsewhere."""
        if self._telling:
            return
        self._stale = True
        if self.isVisible():
            self._read_if_stale()
            self._show()

    def _read_if_stale(self) -> None:
        if not self._stale:
            return
        if self._walk is None:
            self._walk = WeighIn(self._keeping)
            self._stale = False
            return
        before = self._walk.written
        self._walk.read_again()
        self._stale = False
        lost = sorted(set(before) - set(self._walk.written))
        if lost:
            self._walk.cursor, self._asks, self._typed = lost[0], None, ""

    def _press(self, key: str) -> None:
        if self._walk is None:
            return
        if self._refused:
            self._refused = False
            self._notices.noted.emit("")
        try:
            self._do(self._walk, key)
        except REFUSALS as error:
            self._refuse(said(error))
        self._show()

    def _do(self, walk: WeighIn, key: str) -> None:
        if self._marking:
            self._marking = False
            if key != ".":
                self._tell(walk.mark(key))
        elif key.isdigit() or key == ".":
            self._type(key)
        elif key == "Enter":
            self._enter(walk)
        elif key == "+":
            self._take_off(walk)
        elif key == "*":
            self._marking = walk.current is not None
        elif key == "-" and self._typed and self._asks is None:
            self._typed = self._typed[:-1]
        else:
            self._step(walk, -1 if key == "-" else 1)

    def _type(self, key: str) -> None:
        asked_about = self._asks is not None and self._fresh
        before = "" if asked_about else self._typed
        self._fresh = False
        if len(before) < MOST_TYPED and not (key == "." and "." in before):
            self._typed = before + key

    def _enter(self, walk: WeighIn) -> None:
        if not self._typed or self._fresh:
            self._refuse(tr("Type the weight, then Enter; / goes on without one."))
            return
        took = walk.weigh(self._typed)
        if isinstance(took, Asks):
            self._asks, self._fresh = took, True
            return
        self._asks, self._typed = None, ""
        self._tell(took)

    def _take_off(self, walk: WeighIn) -> None:
        if not self._typed:
            self._refuse(tr("Put the empty bag on the scale, type what it reads, then +."))
            return
        bag_g = walk.take_off_bag(self._typed)
        self._typed, self._asks = "", None
        told = tr(
            "{weight} are taken off each weight; 0 and + end that.", weight=grams_typed(bag_g)
        )
        self._notices.noted.emit(told if bag_g else tr("No bag is taken off any more."))

    def _set_scale(self) -> None:
        """The typed figure is the step of the scale."""
        if self._walk is None:
            return
        try:
            if not self._typed or self._asks is not None:
                raise ValueError(tr("Type the step that the scale reads in, such as 0.1, then R."))
            written = self._walk.scale.set(self._typed)
        except REFUSALS as error:
            self._refuse(said(error))
            return
        self._typed = ""
        self._tell(written)
        self._show()

    def _step(self, walk: WeighIn, by: int) -> None:
        if by > 0 and walk.current is not None:
            self._passed |= {walk.cursor}
        walk.step(by)
        self._typed, self._asks = "", None

    def _go_to_front(self, index: int) -> None:
        lines = self._view.lines
        line = lines[index] if index < len(lines) else None
        if line is not None and self._walk is not None:
            self._walk.step(line - self._walk.cursor)
            self._typed, self._asks = "", None
            self._show()

    def _tell(self, written: Written) -> None:
        self._telling = True
        try:
            self._notices.tell_written(written)
        finally:
            self._telling = False

    def _refuse(self, sentence: str) -> None:
        self._refused = True
        self._notices.refused.emit(sentence)

    def _legend(self) -> Mapping[str, str]:
        if self._marking:
            return Marks(dead=False).legend
        rubs = bool(self._typed) and self._asks is None
        return LEGEND | ({"-": tr("rub out")} if rubs else {})

    def _show(self) -> None:
        if self._walk is None or self._stale:
            return
        self._view.show_walk(
            self._keeping, self._walk, self._typed, self._asks, self._passed, self._legend()
        )
