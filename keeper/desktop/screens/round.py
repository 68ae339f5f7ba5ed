"""The round: a feeding night walked tub by tub on the number pad."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import replace

from PySide6.QtGui import QAction, QKeyEvent, QKeySequence, QShowEvent
from PySide6.QtWidgets import QStackedLayout, QWidget

from keeper.actions import rounds
from keeper.actions.due_board import due_rows
from keeper.actions.keeping import Keeping, Written
from keeper.actions.rounds import Walk, night_of, sweep_covers
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.look import Look
from keeper.desktop.notices import Notices
from keeper.desktop.screens.round_asking import Closing
from keeper.desktop.screens.round_deeds import Asking, Deed, Refused, Step, Verb
from keeper.desktop.screens.round_doing import begin_check, do, line_of
from keeper.desktop.screens.round_faces import sweep_places
from keeper.desktop.screens.round_input import Ground, check_key, end_key, offer_key, quiet_key
from keeper.desktop.screens.round_pages import Standing, standing, walk_face
from keeper.desktop.screens.round_quiet import QuietView, left_in, night_words, quiet_counts
from keeper.desktop.screens.round_view import WalkView
from keeper.desktop.widgets.night_counts import NightCounts


class RoundScreen(QWidget):
    """The place *Round*. It keeps no truth: after every key it shows what the book says."""

    takes_back = ".  takes it back"

    def __init__(self, look: Look, keeping: Keeping, notices: Notices) -> None:
        super().__init__()
        self.look, self._keeping, self._notices = look, keeping, notices
        self._here: Standing | None = None
        self._last: Walk | None = None
        self._tonight: NightCounts | None = None
        self._asking: Asking | None = None
        self._stale, self._telling, self._refused = True, False, False
        self._walk_view, self._quiet_view = WalkView(look), QuietView(look)
        self._pages = QStackedLayout(self)
        for view in (self._quiet_view, self._walk_view):
            self._pages.addWidget(view)
            view.pad.key_asked.connect(self._press)
        self._walk_view.row.tub_asked.connect(self._go_to_front)
        self.addAction(_closing(self, lambda: self._handle(Deed(verb=Verb.ASK_CLOSE))))
        notices.changed.connect(self._hear)
        look.changed.connect(self._show)

    def scanned(self, code: str) -> None:
        """Go to the tub whose animal or place bears *code*."""
        if self._stale:
            self._read()
        if self._here is None:
            self._refuse(f"No round is open, so {code!r} has no tub to go to; Enter begins one.")
            return
        line = line_of(self._here.walk, code)
        if line is None:
            self._refuse(f"No tub of tonight’s round bears {code!r}.")
            return
        self._handle(Deed(verb=Verb.GO_TO, line=line))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        view = self._quiet_view if self._here is None else self._walk_view
        if not view.pad.take(event):
            super().keyPressEvent(event)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._tonight = None  # the night may have changed
        if self._stale:
            self._read()
        else:
            self._show()

    def _hear(self) -> None:
        """Something was written elsewhere."""
        if self._telling:
            return
        self._stale = True
        if self.isVisible():
            self._read()

    def _read(self) -> None:
        """Read the night from the book, keeping the place where the keeper stands."""
        self._stale, self._asking, self._tonight = False, None, None
        walk = rounds.open_night(self._keeping)
        before = self._here
        if before is not None and (before.again or (walk and walk.round == before.walk.round)):
            walk = rounds.read_again(before.walk, self._keeping)
            kept = standing(walk, again=before.again)
            self._here = replace(kept, looked=before.looked, last_prey=before.last_prey)
        else:
            self._here = standing(walk) if walk else None
        self._show()

    def _press(self, key: str) -> None:
        if self._asking is not None:
            self._handle(self._asking.press(key))
        elif self._here is None:
            self._handle(quiet_key(key))
        elif self._here.walk.current is None:
            unproved = bool(self._here.unproved) and not self._here.walk.checking
            self._handle(end_key(key, unproved=unproved))
        else:
            asked = check_key if self._here.walk.checking else offer_key
            self._handle(asked(key, self._ground(self._here)))

    def _handle(self, step: Step) -> None:
        if step is None:
            return
        if self._refused:
            self._refused = False
            self._notices.noted.emit("")
        if isinstance(step, Refused):
            self._asking = step.then
            self._refuse(step.sentence)
        elif isinstance(step, Deed):
            self._asking = None
            self._do(step)
        else:
            self._asking = step
        self._show()

    def _do(self, deed: Deed) -> None:
        """Do what was asked; what cannot be done is said, and the cursor stays."""
        self._tonight = None
        try:
            if deed.verb in _SCREEN:
                _SCREEN[deed.verb](self)
            elif self._here is not None:
                written = do(self._keeping, self._here, deed)
                if written is not None:
                    self._tell(written)
        except REFUSALS as error:
            self._refuse(said(error))

    def _begin(self) -> None:
        night = night_of(self._keeping.now())
        self._here = standing(rounds.begin_night(self._keeping, night))
        begun = f"The round of {night_words(night)} is begun: {self._here.stops} tubs to walk."
        with self._own_telling():
            self._notices.changed.emit()
            self._notices.noted.emit(begun)

    def _look_again(self) -> None:
        if self._last is not None and left_in(self._last):
            self._here = standing(self._last, again=True)
            begin_check(self._keeping, self._here, Deed(verb=Verb.CHECK))

    def _ask_close(self) -> None:
        here = self._here
        if here is None:
            return
        counts = f"{here.not_reached} not reached stay due, {here.unproved} not looked at"
        if here.again:
            self._here = None
        elif not here.not_reached and not here.unproved:
            self._close()
        else:
            self._asking = Closing(counts)
            night = night_words(here.walk.night)
            self._notices.noted.emit(f"{counts}. Enter again closes the round of {night}.")

    def _close(self) -> None:
        if self._here is not None:
            written = self._here.walk.close()
            self._here = None
            self._tell(written)

    def _go_to_front(self, index: int) -> None:
        lines = self._walk_view.lines
        line = lines[index] if index < len(lines) else None
        if line is not None:
            self._handle(Deed(verb=Verb.GO_TO, line=line))

    def _ground(self, here: Standing) -> Ground:
        tub = here.walk.current
        if tub is None:
            return Ground()
        row = here.walk.row_of(tub.line)
        rest = [t.line for t in row if t.line >= tub.line and sweep_covers(here.walk, t)]
        return Ground(
            grades=here.profile(self._keeping, tub).prey,
            last_prey=here.last_prey,
            places=sweep_places(row, tub.line, rest),
            covered=frozenset(rest),
        )

    @contextmanager
    def _own_telling(self) -> Iterator[None]:
        """What this page wrote itself need not be read again."""
        self._telling = True
        try:
            yield
        finally:
            self._telling = False

    def _tell(self, written: Written) -> None:
        with self._own_telling():
            self._notices.tell_written(written)

    def _refuse(self, sentence: str) -> None:
        self._refused = True
        self._notices.refused.emit(sentence)

    def _show(self) -> None:
        if self._stale:
            return
        if self._here is None:
            self._show_quiet()
            return
        now = self._keeping.now()
        face = walk_face(self._keeping, self._here, self._asking, small=self.look.small, now=now)
        self._walk_view.show_face(face)
        self._pages.setCurrentWidget(self._walk_view)

    def _show_quiet(self) -> None:
        if self._tonight is None:
            night = night_of(self._keeping.now())
            self._last = rounds.last_night(self._keeping)
            self._tonight = quiet_counts(due_rows(self._keeping, night), night, self._last)
        counts = self._tonight
        legend = {"Enter": "begin the round"} if counts.rows else {}
        if self._last is not None and left_in(self._last):
            legend["5"] = "look again"
        self._quiet_view.show_counts(counts, legend)
        self._pages.setCurrentWidget(self._quiet_view)


def _closing(page: QWidget, close: Callable[[], None]) -> QAction:
    action = QAction("Close the round", page)
    action.setShortcut(QKeySequence("Ctrl+Return"))
    action.triggered.connect(lambda _=False: close())
    return action


_SCREEN: Mapping[Verb, Callable[[RoundScreen], None]] = {
    Verb.BEGIN: RoundScreen._begin,
    Verb.LOOK_AGAIN: RoundScreen._look_again,
    Verb.ASK_CLOSE: RoundScreen._ask_close,
    Verb.CLOSE: RoundScreen._close,
}
