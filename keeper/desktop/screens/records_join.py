"""The whole book written out from the window, and another's joined to it once it was looked at."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from keeper.actions.bundle_files import Bundle, Bundled, read_bundle, write_bundle
from keeper.actions.finding import found
from keeper.actions.joining import Joining, join, would_join
from keeper.actions.joining_words import bundled_told, joining_told
from keeper.actions.keeping import Keeping, animals_on, opened_to_read
from keeper.actions.passing_animals import pass_on
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.background import Background, Worker
from keeper.desktop.notices import Notices
from keeper.desktop.screens.files_asking import complete_paths
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.husbandry.now import AnimalNow
from keeper.language import tr


class BookSharing:
    """Asks for a folder and what goes into it; asks for one and says what would come of it.

    say: shows a text for as long as it is not replaced.
    """

    def __init__(
        self,
        keeping: Keeping,
        notices: Notices,
        asking: AskingLine,
        say: Callable[[str], None],
        worker: Worker | None = None,
    ) -> None:
        self._keeping, self._notices = keeping, notices
        self._asking, self._say = asking, say
        self._worker = worker or Background()
        self._asks = False

    def write_out(self) -> None:
        """Ask for whom, then for the new folder."""
        self._say(
            tr(
                "A folder with a table for each kind of entry, the readings and the photos: for"
                " a spreadsheet, for another machine, for whoever gets an animal. Of one animal"
                " only its own lines are written."
            )
        )
        self._asking.ask(
            tr("Write out (code, name or tub; nothing for the whole book)"), self._whom
        )

    def join(self) -> None:
        """Ask for the folder that another book was written out to."""
        complete_paths(self._asking)
        self._say(
            tr(
                "Name the folder that another book was written out to. You see what is new, what"
                " is the same and what differs before anything is written."
            )
        )
        self._asking.ask(tr("Join the book in the folder"), self._look_at, f"{Path.home()}/")

    def stop(self) -> None:
        """Wait a moment for what is being done."""
        self._worker.stop()

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
        folder, path = Path(text.strip()).expanduser(), self._keeping.book.path
        now, keeper = self._keeping.now, self._keeping.keeper
        self._notices.noted.emit(tr("Writing out."))
        self._worker.run(
            lambda: _written(opened_to_read(path, now, keeper), chosen, folder),
            self._told,
            self._refused,
        )
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
        self._notices.noted.emit(tr("Reading the other book."))
        self._asks = False
        self._worker.run(lambda: read_bundle(folder), self._compare, self._refused)
        return not self._asks

    def _compare(self, bundle: Bundle) -> None:
        try:
            looked = would_join(self._keeping, bundle)
        except REFUSALS as refusal:
            self._refused(refusal)
            return
        self._notices.noted.emit(tr("Read; nothing is written yet."))
        self._say("\n".join(joining_told(looked)))
        if looked.is_new:
            self._asks = True
            question = tr("Join it; taking that line back takes all of it back")
            self._asking.ask(question, lambda text: self._agreed(bundle, text), "yes")

    def _agreed(self, bundle: Bundle, text: str) -> bool:
        if text.casefold() not in ("y", "yes", tr("yes")):
            self._say("")
            return True
        try:
            done = join(self._keeping, bundle)
        except REFUSALS as refusal:
            self._refused(refusal)
            return True
        self._say("\n".join(joining_told(done)) if done.clashes else "")
        self._announce(done)
        return True

    def _announce(self, done: Joining) -> None:
        if done.written is not None:
            self._notices.tell_written(done.written)
        else:
            self._notices.noted.emit(tr("The readings came; there was no line to join."))
            self._notices.changed.emit()

    def _refused(self, error: Exception) -> None:
        if not isinstance(error, REFUSALS):
            raise error
        self._notices.refused.emit(said(error))


def _written(keeping: Keeping, chosen: AnimalNow | None, folder: Path) -> Bundled:
    try:
        if chosen is None:
            return write_bundle(keeping, folder)
        return pass_on(keeping, [chosen], folder).bundled
    finally:
        keeping.close()


def _as_a_name(text: str) -> str:
    """*text* as part of a file's name: a code may hold anything."""
    return "".join(letter if letter.isalnum() else "-" for letter in text)[:40]
