"""The Animal place: one life on one axis, worked with the arrow keys, no tabs and no dialogs."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QKeySequence, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from keeper.actions.animal_desk import AnimalDesk, Opened
from keeper.actions.animal_page import AnimalPage
from keeper.actions.day_of_life import day_of_life
from keeper.actions.keeping import Keeping
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.background import Background, Worker
from keeper.desktop.look import Look
from keeper.desktop.notices import Notices
from keeper.desktop.screens.animal_asking import (
    Asking,
    Finding,
    correction_asked,
    hold_asked,
    move_asked,
    remark_asked,
    sex_asked,
    sign_asked,
)
from keeper.desktop.screens.animal_words import figures_of, identity
from keeper.desktop.type import Use
from keeper.desktop.widgets.animal_head import AnimalHead
from keeper.desktop.widgets.drawn import announce
from keeper.desktop.widgets.life_strip import LifeStrip
from keeper.desktop.widgets.life_view import LifeView
from keeper.desktop.widgets.read_out import ReadOut
from keeper.desktop.widgets.typed_line import TypedLine
from keeper.desktop.widgets.words_line import Words
from keeper.husbandry.now import AnimalNow

if TYPE_CHECKING:
    from keeper.actions.forecasting import WeightForecast

_NOBODY = "This book holds no animal yet. Records takes your records in."


class AnimalScreen(QWidget):
    """Shows one animal. Its page is read, and its forecast reckoned, off the main thread.

    reader, reckoner: two workers, so that a long reckoning holds up no page.
    """

    def __init__(
        self,
        look: Look,
        keeping: Keeping,
        notices: Notices,
        *,
        reader: Worker | None = None,
        reckoner: Worker | None = None,
    ) -> None:
        super().__init__()
        self._look, self._keeping, self._notices = look, keeping, notices
        self._reader, self._reckoner = reader or Background(), reckoner or Background()
        self._desks = (AnimalDesk(keeping), AnimalDesk(keeping))
        self._page: AnimalPage | None = None
        self._everyone: Sequence[AnimalNow] = ()
        self._asking: Asking | None = None
        self._asked_for: int | None = None  # the animal that was asked for last
        self._turn = 0  # counts readings; the answer to an older one is dropped
        self._stale = True
        self.head = AnimalHead(look, self)
        self.strip = LifeStrip(look, self)
        self.read_out = ReadOut(look, self)
        self.line = TypedLine(look, self)
        self._nobody = Words(look, Use.BODY, "ink2", self)
        self._assemble()
        self._listen()

    @property
    def page(self) -> AnimalPage | None:
        """The page that is shown; None while there is none."""
        return self._page

    def show_animal(self, animal: int) -> None:
        """Open the page of the animal with this key."""
        self._leave()
        self._read(animal)

    def scanned(self, code: str) -> None:
        """Open the page of the animal whose label was scanned."""
        row = next((row for row in self._everyone if row.code == code), None)
        if row is None:
            self._notices.refused.emit(f"No animal in this book has the code {code}.")
        else:
            self.show_animal(row.animal)

    def close_down(self) -> None:
        """Let go of the book in both threads; no result arrives after this."""
        self._turn += 1
        _let_go((self._reader, self._reckoner), self._desks)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self._stale or (self._page and self._page.today != self._keeping.today):
            self._read(self._asked_for)

    # --- reading -----------------------------------------------------------------------------

    def _read(self, animal: int | None) -> None:
        again, self._stale = self._stale, False
        self._asked_for = animal
        self._turn += 1
        turn, on, desk = self._turn, self._keeping.today, self._desks[0]

        def done(opened: Opened) -> None:
            if turn == self._turn:
                self._show(opened)

        self._reader.run(lambda: desk.open(animal, on, again=again), done, self._tell)

    def _show(self, opened: Opened) -> None:
        self._everyone, self._page = opened.everyone, opened.page
        for part in (self.head, self.strip, self.read_out):
            part.setVisible(opened.page is not None)
        self._nobody.setVisible(opened.page is None)
        if opened.page is None:
            return
        self._asked_for = opened.page.animal.animal
        self.head.show_identity(identity(opened.page))
        self.strip.show_page(opened.page, waiting=opened.page.target_g is not None)
        self._show_day()
        self._reckon(opened.page)

    def _reckon(self, page: AnimalPage) -> None:
        """The forecast, which is shown when it arrives."""
        if page.target_g is None:
            return
        turn, desk = self._turn, self._desks[1]

        def job() -> WeightForecast | None:
            return desk.forecast(page) if turn == self._turn else None

        def done(told: WeightForecast | None) -> None:
            if turn == self._turn:
                self.strip.show_page(page, told)
                self._show_day()

        self._reckoner.run(job, done, self._tell)

    def _tell(self, error: Exception) -> None:
        """A refusal of the book is the keeper's to know; anything else is a fault of ours."""
        if not isinstance(error, REFUSALS):
            raise error
        self._notices.refused.emit(said(error))

    def _changed(self) -> None:
        self._stale = True
        if self.isVisible():
            self._read(self._asked_for)

    # --- moving ------------------------------------------------------------------------------

    def _move(self, moved: Callable[[LifeView], LifeView]) -> None:
        if self._page is None:
            return
        self.strip.show_view(moved(self.strip.view))
        figures = self._show_day()
        announce(self.read_out, figures)

    def _show_day(self) -> str:
        """Read the day of the cursor out; returns it in short."""
        if self._page is None:
            return ""
        figures = figures_of(self._page, day_of_life(self._page, self.strip.view.cursor))
        self.read_out.show_figures(figures)
        first = figures.groups[0][0]
        return f"{figures.head}, {first.label} {first.value}"

    def _walk(self, step: int) -> None:
        """The next animal in walking order, or the one before."""
        here = [row.animal for row in self._everyone if row.in_the_room]
        if not here:
            return
        at = here.index(self._asked_for) if self._asked_for in here else -step if step > 0 else 0
        self.show_animal(here[(at + step) % len(here)])

    # --- asking ------------------------------------------------------------------------------

    def _ask(self, make: Callable[[AnimalNow, date], Asking]) -> None:
        if self._page is None:
            return
        try:
            self._open_line(make(self._page.animal, self.strip.view.cursor))
        except REFUSALS as refusal:
            self._notices.refused.emit(said(refusal))

    def _find(self) -> None:
        self._open_line(Finding(self._everyone, self.show_animal))

    def _open_line(self, asking: Asking) -> None:
        self._asking = asking
        for action in self.actions():
            action.setEnabled(False)
        self.line.ask(asking.prompt, asking.hint)

    def _echo(self, text: str) -> None:
        if self._asking is not None:
            self.line.hint(self._asking.echo(text))

    def _step(self, by: int) -> None:
        if self._asking is not None:
            self._asking.step(by)
            self.line.prompt(self._asking.prompt)
            self._echo(self.line.field.text())

    def _take(self, text: str) -> None:
        """Write what was typed; what is refused stays in the field."""
        if self._asking is None:
            return
        try:
            written = self._asking.take(text)
        except REFUSALS as refusal:
            self._notices.refused.emit(said(refusal))
            return
        self._leave()
        if written is not None:
            self._notices.tell_written(written)

    def _leave(self) -> None:
        if self._asking is None:
            return
        self._asking = None
        self.line.hide()
        for action in self.actions():
            action.setEnabled(True)
        self.setFocus()

    def _known_places(self) -> dict[str, str]:
        """Who stands where."""
        here = [row for row in self._everyone if row.in_the_room and row.place]
        own = self._page.animal.animal if self._page else None
        known: dict[str, str] = {}
        for row in here:
            name = "" if row.animal == own else row.name or row.code
            known[row.place or ""] = known.get(row.place or "") or name
        return known

    # --- set up ------------------------------------------------------------------------------

    def _assemble(self) -> None:
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._nobody.setText(_NOBODY)
        self._nobody.hide()
        self._middle = QHBoxLayout()
        self._middle.setSpacing(0)
        self._middle.addWidget(self.strip, 1)
        self._middle.addWidget(self.read_out)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.head)
        column.addWidget(self._nobody)
        column.addLayout(self._middle, 1)
        column.addWidget(self.line)
        self._fit()

    def _fit(self) -> None:
        look = self._look
        self._middle.setContentsMargins(0, 0, round(look.u(7, 3.5)), round(look.u(1.2, 0.6)))

    def _listen(self) -> None:
        self._look.changed.connect(self._fit)
        self._notices.changed.connect(self._changed)
        self.strip.day_asked.connect(lambda day: self._move(lambda view: view.to(day)))
        self.line.typed.connect(self._echo)
        self.line.stepped.connect(self._step)
        self.line.taken.connect(self._take)
        self.line.left.connect(self._leave)
        for words, keys, slot in self._keys():
            self.addAction(self._action(words, keys, slot))
        let_go = partial(_let_go, (self._reader, self._reckoner), self._desks)
        self.destroyed.connect(let_go)

    def _action(self, words: str, keys: str, slot: Callable[[], object]) -> QAction:
        action = QAction(words, self)
        action.setShortcuts([QKeySequence(key) for key in keys.split()])
        action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        action.triggered.connect(lambda _=False: slot())
        return action

    def _keys(self) -> Sequence[tuple[str, str, Callable[[], object]]]:
        def move(moved: Callable[[LifeView], LifeView]) -> Callable[[], None]:
            return lambda: self._move(moved)

        keeping, strip = self._keeping, self.strip
        return (
            ("A day back", "Left", move(lambda v: v.by_days(-1))),
            ("A day on", "Right", move(lambda v: v.by_days(1))),
            ("To the entry before", "Shift+Left", move(lambda v: v.to_event(strip.days, -1))),
            ("To the next entry", "Shift+Right", move(lambda v: v.to_event(strip.days, 1))),
            ("A month back", "Ctrl+Left", move(lambda v: v.by_months(-1))),
            ("A month on", "Ctrl+Right", move(lambda v: v.by_months(1))),
            ("To hatching", "Home", move(lambda v: v.to(v.life_first))),
            ("To today", "End", move(lambda v: v.to(v.today))),
            ("Nearer", "+ =", move(lambda v: v.zoomed(1))),
            ("Further", "-", move(lambda v: v.zoomed(-1))),
            ("The animal before", "PgUp", lambda: self._walk(-1)),
            ("The next animal", "PgDown", lambda: self._walk(1)),
            ("Find an animal", "/ Ctrl+F", self._find),
            ("Shed sign", "S", lambda: self._ask(lambda r, d: sign_asked(keeping, r, d))),
            ("Note", "N", lambda: self._ask(lambda r, d: remark_asked(keeping, r, d))),
            ("Hold", "H", lambda: self._ask(lambda r, d: hold_asked(keeping, r, d))),
            ("Move to another tub", "M", self._ask_move),
            ("Sex", "X", lambda: self._ask(lambda r, d: sex_asked(keeping, r, d))),
            ("Put right", "E", lambda: self._ask(lambda r, d: correction_asked(keeping, r, d))),
        )

    def _ask_move(self) -> None:
        known = self._known_places()
        self._ask(lambda row, day: move_asked(self._keeping, row, day, known))


def _let_go(workers: Sequence[Worker], desks: Sequence[AnimalDesk]) -> None:
    """Close the book in both threads; no result may reach a page that is gone."""
    for worker, desk in zip(workers, desks, strict=True):
        worker.stop(desk.close)
