"""The round: a feeding night walked tub by tub on the number pad."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QHideEvent, QKeyEvent, QKeySequence, QShowEvent
from PySide6.QtWidgets import QWidget

from keeper.actions.keeping import Keeping
from keeper.actions.past_nights import PastNight
from keeper.actions.rounds import Walk
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.background import Worker
from keeper.desktop.look import Look
from keeper.desktop.notices import Notices
from keeper.desktop.paper.desk import PaperDesk
from keeper.desktop.paper.printing import Sheets
from keeper.desktop.screens.quiet_view import QuietView
from keeper.desktop.screens.round_asking import Closing
from keeper.desktop.screens.round_away import AwayLine
from keeper.desktop.screens.round_counting import Counting
from keeper.desktop.screens.round_deeds import Asking, Deed, Refused, Step, Verb
from keeper.desktop.screens.round_over import RoundOver
from keeper.desktop.screens.round_pages import Standing, walk_face
from keeper.desktop.screens.round_paper import round_sheet_of_night, thaw_list_of_night
from keeper.desktop.screens.round_past import Why, asked_first
from keeper.desktop.screens.round_quiet import asked_of, night_words
from keeper.desktop.screens.round_scan import scanned_line
from keeper.desktop.screens.round_stand import RoundStand
from keeper.desktop.screens.round_telling import RoundTelling
from keeper.desktop.screens.round_tones import tone_of
from keeper.desktop.screens.round_view import WalkView
from keeper.desktop.sound.tones import tones
from keeper.language import tr
from keeper.reports.figures import counted

_counted_steps = counted("step", "steps")
Printing = Callable[[Keeping, Walk | None], Sheets]


class RoundScreen(QWidget):
    """The place *Round*. It keeps no truth: after every key it shows what the book says."""

    def __init__(
        self, look: Look, keeping: Keeping, notices: Notices, *, worker: Worker | None = None
    ) -> None:
        super().__init__()
        self.look, self._keeping = look, keeping
        self._stand, self._telling = RoundStand(keeping), RoundTelling(notices)
        telling = self._telling
        self.paper = PaperDesk(keeping, self, tell=telling.noted, refuse=telling.refused)
        self.away = AwayLine(look, self, keeping, self.paper, notices, worker)
        self._asking: Asking | None = None
        self._stale = True
        self._walk_view, self._quiet_view = WalkView(look), QuietView(look)
        views = (self._quiet_view, self._walk_view)
        self.over = RoundOver(self, views, look, keeping, notices)
        self._counting = Counting(self, self._stand.tonight.counting, self._show)
        for view in views:
            view.pad.key_asked.connect(self._press)
        self._walk_view.line_asked.connect(self._go_to)
        self.over.past_nights.night_asked.connect(self._open_past)
        self.addActions(_actions(self))
        notices.changed.connect(self._hear)
        look.changed.connect(self._show)

    @property
    def takes_back(self) -> str:
        """How the foot says that what was written is taken back."""
        walks = self.over.page is None and self._stand.here is not None
        return tr(".  takes it back") if walks else tr("Ctrl+Z takes it back")

    @property
    def reach(self) -> str:
        """How far back that goes, for the foot."""
        return _steps(self._stand.steps) if self.over.page is None and self._stand.here else ""

    def scanned(self, code: str) -> None:
        """Go to the tub whose animal or place bears *code*, or begin the sheet that does."""
        if self.over.page is self.over.all_but:
            self.over.all_but.scanned(code)
            return
        if self._stale:
            self._read()
        try:
            line = scanned_line(self._keeping, self._stand.here, code)
        except REFUSALS as error:
            self._telling.refused(said(error))
            return
        self._lay_over(None if line else self.over.all_but)
        if line:
            self._go_to(line)
        else:
            self.over.all_but.scanned(code)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        self._counting.finish()
        view = self._quiet_view if self._stand.here is None else self._walk_view
        if event.key() == Qt.Key.Key_Escape and self._go_back():
            return
        if self.over.page is not None or not view.pad.take(event):
            super().keyPressEvent(event)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._stand.tonight.forget()  # the night may have changed
        tones.prepare_soon()
        if self._stale:
            self._read_night()
        if self._shows_tonight:
            self._counting.begin()
        else:
            self._show()

    def hideEvent(self, event: QHideEvent) -> None:
        self._counting.stop()
        super().hideEvent(event)

    def _hear(self) -> None:
        """Something was written elsewhere."""
        if self._telling.by_itself:
            return
        self._stale = True
        if self.isVisible():
            self._read()

    @property
    def _shows_tonight(self) -> bool:
        """Whether the quiet page is in sight with what was counted for this night before."""
        quiet = self._stand.here is None and self.over.shows(self._quiet_view)
        return quiet and self._asking is None and self._stand.tonight.was_counted

    def _read(self) -> None:
        self._read_night()
        self._show()

    def _read_night(self) -> None:
        self._stale, self._asking = False, None
        self._stand.read()

    def _press(self, key: str) -> None:
        asking = self._asking
        self._handle(asking.press(key) if asking is not None else self._stand.step(key))

    def _handle(self, step: Step) -> None:
        if step is None:
            return
        self._telling.next_key()
        if isinstance(step, Refused):
            self._asking = step.then
            self._telling.refused(step.sentence)
        elif isinstance(step, Deed):
            self._asking = None
            self._do(step)
        else:
            self._asking = step
        self._show()

    def _do(self, deed: Deed) -> None:
        """Do what was asked; what cannot be done is said, and the cursor stays."""
        self._stand.tonight.forget()
        here = self._stand.here
        try:
            if deed.verb is Verb.BEGIN:
                self._telling.begun(self._stand.begin(deed.racks))
            elif deed.verb in _SCREEN:
                _SCREEN[deed.verb](self)
            elif here is not None:
                step = asked_first(here, deed)
                if isinstance(step, Why):
                    self._asking = step
                    self._telling.asked(step.because)
                else:
                    self._telling.written(self._stand.do(step), tone_of(step))
            elif deed.verb is Verb.LEARN:
                self._telling.written(self._stand.answer(deed))
        except REFUSALS as error:
            self._telling.refused(said(error))

    def _close(self) -> None:
        self._telling.written(self._stand.close())

    def _ask_to_close(self) -> None:
        self._lay_over(None)
        self._handle(Deed(verb=Verb.ASK_CLOSE))

    def _go_to(self, line: int) -> None:
        self._handle(Deed(verb=Verb.GO_TO, line=line))

    def _open_past(self, night: PastNight) -> None:
        self._stand.open_past(night)
        self._lay_over(None)

    def _ask_all_but(self) -> None:
        self._lay_over(None if self.over.page is self.over.all_but else self.over.all_but)

    def _ask_nights(self) -> None:
        if self.over.page is self.over.past_nights or (
            self.over.page is None and self._stand.is_past
        ):
            self._go_back()
        else:
            self._lay_over(self.over.past_nights)

    def _go_back(self) -> bool:
        """From a page laid over the round, or from a past night; False if there is no way back."""
        if self.over.page is None:
            if not self._stand.is_past:
                return False
            self._stand.leave()
        self._lay_over(None)
        return True

    def _lay_over(self, page: QWidget | None) -> None:
        """Lay *page* over the round and give it the keyboard; None: the round again."""
        self._asking = None
        self._telling.next_key()
        self.over.lay(page)
        self._show()
        self.over.give_keyboard()

    def _print(self, paper: Printing) -> None:
        here = self._stand.here
        self.paper.make(lambda: paper(self._keeping, here.walk if here else None))

    def _show(self) -> None:
        here = self._stand.here
        if self._stale or self.over.page is not None:
            return
        if here is None:
            counts, legend = self._stand.tonight.counts(), self._stand.tonight.legend()
            self._quiet_view.show_counts(*asked_of(counts, legend, self._asking))
            self.over.show(self._quiet_view)
        else:
            small, now = self.look.small, self._keeping.now()
            face = walk_face(self._keeping, here, self._asking, small=small, now=now)
            self._walk_view.show_face(face)
            self.over.show(self._walk_view)


def _ask_learned(page: RoundScreen) -> None:
    page._asking = page._stand.asks()
    if page._asking is None:
        page._telling.asked(tr("Nobody held tonight has eaten often enough under such a hold."))


def _ask_close(page: RoundScreen) -> None:
    here = page._stand.here
    if here is None:
        return
    if here.again:
        page._stand.leave()
    elif not here.not_reached and not here.unproved:
        page._close()
    else:
        page._asking, told = _closing(here)
        page._telling.noted(told)


def _closing(here: Standing) -> tuple[Closing, str]:
    """What is asked before a round is closed that is not done, and the sentence at the foot."""
    counts = tr(
        "{count} not reached stay due, {unproved} not looked at",
        count=here.not_reached,
        unproved=here.unproved,
    )
    night = night_words(here.walk.night)
    told = tr("{counts}. Enter again closes the round of {night}.", counts=counts, night=night)
    return Closing(counts), told


def _steps(count: int) -> str:
    return tr("{steps} can be taken back", steps=_counted_steps(count)) if count else ""


def _actions(page: RoundScreen) -> list[QAction]:
    """What stands in the menu and on the key sheet."""
    deeds: tuple[tuple[str, str, Callable[[], None]], ...] = (
        (tr("Close the round"), "Ctrl+Return", page._ask_to_close),
        (tr("All but, at the table"), "Ctrl+A", page._ask_all_but),
        (tr("Nights that are over"), "Ctrl+Y", page._ask_nights),
        (tr("Print the round sheet"), "Ctrl+P", lambda: page._print(round_sheet_of_night)),
        (tr("Print the thaw list"), "Ctrl+T", lambda: page._print(thaw_list_of_night)),
        (tr("Away: bend the plan and print the page"), "Ctrl+H", page.away.ask_days),
        (tr("The last PDF on a printer"), "Ctrl+Shift+P", page.paper.to_printer),
    )
    return [_action(page, *deed) for deed in deeds]


def _action(page: QWidget, text: str, key: str, slot: Callable[[], None]) -> QAction:
    action = QAction(text, page)
    action.setShortcut(QKeySequence(key))
    action.triggered.connect(lambda _=False: slot())
    return action


_SCREEN: Mapping[Verb, Callable[[RoundScreen], None]] = {
    Verb.ASK_LEARNED: _ask_learned,
    Verb.LOOK_AGAIN: lambda page: page._stand.look_again(),
    Verb.ASK_CLOSE: _ask_close,
    Verb.CLOSE: RoundScreen._close,
}
