"""The whole book written out from the window, and another's joined to it once it was looked at."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TypeVar

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QWidget

from keeper.actions.bundle_files import Bundled
from keeper.actions.finding import found
from keeper.actions.joining import Joining
from keeper.actions.joining_words import SHOWN, bundled_told, joining_told
from keeper.actions.keeping import Keeping, Written, animals_on
from keeper.actions.other_process import CalledOff
from keeper.actions.sharing_aside import Aside
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.background import Background, Worker
from keeper.desktop.look import Look
from keeper.desktop.notices import Notices
from keeper.desktop.screens.files_asking import complete_paths
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.desktop.widgets.waiting import Waiting
from keeper.husbandry.now import AnimalNow
from keeper.language import tr

T = TypeVar("T")
_SHOWN_WHERE_SMALL = 4
WRITES_OUT = tr(
    "A folder with a table for each kind of entry, the readings and the photos: for"
    " a spreadsheet, for another machine, for whoever gets an animal. Of one animal"
    " only its own lines are written."
)
JOINS = tr(
    "Name the folder that another book was written out to. You see what is new, what"
    " is the same and what differs before anything is written."
)


class BookSharing(QObject):
    """Asks for a folder and what goes into it; asks for one and says what would come of it.

    Another process does it; Esc on *page* calls it off. While a join is written, which is the
    one thing that the window's own entries have to wait for, a sheet lies over the window.

    say: shows a text for as long as it is not replaced.
    """

    _far = Signal(str)

    def __init__(
        self,
        keeping: Keeping,
        notices: Notices,
        asking: AskingLine,
        say: Callable[[str], None],
        *,
        page: QWidget,
        look: Look,
        worker: Worker | None = None,
    ) -> None:
        super().__init__(page)
        self._keeping, self._notices = keeping, notices
        self._asking, self._say = asking, say
        self._page, self._look, self._worker = page, look, worker or Background()
        self._aside: Aside | None = None
        self._running = self._asks = False
        self._waiting = Waiting(look, page, self.call_off)
        self._escape = QAction(tr("call off what is being read or written"), page)
        self._escape.setShortcut(QKeySequence("Esc"))
        self._escape.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        self._escape.triggered.connect(self.call_off)
        self._far.connect(self._tell)

    def write_out(self) -> None:
        """Ask for whom, then for the new folder."""
        if not self._is_free():
            return
        self._say(WRITES_OUT)
        self._asking.ask(
            tr("Write out (code, name or tub; nothing for the whole book)"), self._whom
        )

    def join(self) -> None:
        """Ask for the folder that another book was written out to."""
        if not self._is_free():
            return
        complete_paths(self._asking)
        self._say(JOINS)
        self._asking.ask(tr("Join the book in the folder"), self._look_at, f"{Path.home()}/")

    def turn(self, join: int, *, back: bool) -> None:
        """Take a *join* back, or put it back: of all that came with it that may take seconds."""
        if not self._is_free():
            return
        aside = self._begun()
        self._run(lambda: aside.turn(join, back=back), self._turned)
        if self._running:
            title = tr("A join is being taken back") if back else tr("A join is being put back")
            self._waiting.begin(title, tr("It goes or comes whole."))

    def _turned(self, written: Written) -> None:
        self._keeping.forget_figures()
        self._notices.tell_written(written)

    def call_off(self) -> None:
        """End what is being read or written; nothing of it stays."""
        if self._aside is not None:
            self._aside.call_off()

    def stop(self) -> None:
        """Call it off, and wait a moment for its end."""
        self.call_off()
        self._worker.stop()

    def _is_free(self) -> bool:
        if self._running:
            told = tr("Something is being read or written already; Esc calls it off.")
            self._notices.refused.emit(told)
        return not self._running

    def _whom(self, text: str) -> bool:
        meant = found(animals_on(self._keeping, self._keeping.today), text, most=1)
        if text.strip() and not meant:
            self._notices.refused.emit(tr("No animal here is called {text!r}.", text=text))
            return False
        complete_paths(self._asking)
        chosen = meant[0] if text.strip() else None
        name = chosen.code if chosen else self._keeping.book.path.stem
        told = f"{Path.home()}/{_as_a_name(name)}-{self._keeping.today}"
        self._asking.ask(tr("To the new folder"), lambda folder: self._write(chosen, folder), told)
        return False

    def _write(self, chosen: AnimalNow | None, text: str) -> bool:
        if not text.strip():
            return False
        folder = Path(text.strip()).expanduser()
        animals = None if chosen is None else [chosen.animal]
        aside = self._begun()
        self._run(lambda: aside.write_out(folder, animals), self._told)
        return True

    def _told(self, done: Bundled) -> None:
        self._say("")
        self._notices.noted.emit(bundled_told(done))

    def _look_at(self, text: str) -> bool:
        folder = Path(text.strip()).expanduser()
        if not text.strip() or not folder.is_dir():
            self._notices.refused.emit(
                tr("There is no folder {folder}; name the one that was written.", folder=folder)
            )
            return False
        self._asks = False
        aside = self._begun()
        self._run(lambda: aside.look(folder), self._compared)
        return not self._asks

    def _compared(self, looked: Joining) -> None:
        self._notices.noted.emit(tr("Read; nothing is written yet."))
        self._say(self._words_of(looked))
        if not looked.is_new:
            self.call_off()
            return
        self._asks = True
        question = tr("Join it; taking that line back takes all of it back")
        self._asking.ask(question, self._agreed, tr("yes"), left=self.call_off)

    def _agreed(self, text: str) -> bool:
        if text.casefold() not in ("y", "yes", tr("yes")):
            self._say("")
            self.call_off()
            return True
        aside, now = self._aside, self._keeping.now()
        assert aside is not None
        self._say("")
        self._run(lambda: aside.join(now), self._joined)
        if self._running:
            self._waiting.begin(
                tr("The other book is being joined"),
                tr("It comes whole or not at all. Esc calls it off."),
            )
        return True

    def _joined(self, done: Joining) -> None:
        self._say(self._words_of(done) if done.clashes else "")
        self._keeping.forget_figures()
        if done.written is not None:
            self._notices.tell_written(done.written)

    def _words_of(self, joining: Joining) -> str:
        """As many clashes as there is room for beside the list."""
        shown = _SHOWN_WHERE_SMALL if self._look.small else SHOWN
        return "\n".join(joining_told(joining, shown))

    def _begun(self) -> Aside:
        """A process of its own; one that waits for an answer still is left."""
        self.call_off()
        self._aside = Aside(self._keeping, self._far.emit)
        return self._aside

    def _run(self, job: Callable[[], T], done: Callable[[T], None]) -> None:
        self._running = True
        self._page.addAction(self._escape)

        def came(answer: T) -> None:
            self._rest()
            done(answer)

        self._worker.run(job, came, self._refused)

    def _rest(self) -> None:
        self._running = False
        self._page.removeAction(self._escape)
        self._waiting.end()

    def _tell(self, far: str) -> None:
        if self._running and self._waiting.isVisible():
            self._waiting.tell(far)
        elif self._running:
            self._say(far)

    def _refused(self, error: Exception) -> None:
        self._rest()
        self.call_off()
        self._say("")
        if isinstance(error, CalledOff):
            self._notices.noted.emit(tr("Called off; nothing was written."))
            return
        if not isinstance(error, REFUSALS):
            raise error
        self._notices.refused.emit(said(error))
        self._notices.changed.emit()


def _as_a_name(text: str) -> str:
    """*text* as part of a file's name: a code may hold anything."""
    return "".join(letter if letter.isalnum() else "-" for letter in text)[:40]
