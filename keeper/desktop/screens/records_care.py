"""The book looked over from the window, and the mended copy that may take its place."""

from __future__ import annotations

from collections.abc import Callable

from keeper.actions.checking import Mended, flaws_of, is_sound, mend, mended_sentences
from keeper.actions.keeping import Keeping
from keeper.actions.safe_keeping import back_up_now, keeps_every_backup, thin_backups_again
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.background import Background, Worker
from keeper.desktop.notices import Notices
from keeper.desktop.remembered import second_place
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.language import tr

WHOLE = tr("The book is whole: structure, references, every state row as rebuilt, every backup.")
CAN_MEND = tr(
    "M writes a mended copy beside the book and says what it holds; the book stays as it is."
)
LOOKING, MENDING = tr("Looking the book over."), tr("Writing a mended copy.")
_SHOWN = 8


class BookCare:
    """Checks and mends off the main thread. say: shows a text for as long as it is not replaced."""

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

    def check(self) -> None:
        """Look the book over and say what is wrong with it."""
        path = self._keeping.book.path
        self._notices.noted.emit(LOOKING)
        self._worker.run(lambda: flaws_of(path), self._checked, self._refused)

    def mend(self) -> None:
        """Write a mended copy; nothing takes the book's place before it is agreed to."""
        path = self._keeping.book.path
        self._notices.noted.emit(MENDING)
        self._worker.run(lambda: mend(path), self._mended, self._refused)

    def back_up(self) -> None:
        """Back up now; since a restore every backup is kept, until the keeper says otherwise."""
        try:
            second = second_place(self._keeping.book.path)
            made = back_up_now(self._keeping, second_place=second)
        except REFUSALS as refusal:
            self._notices.refused.emit(said(refusal))
            return
        self._notices.noted.emit(tr("Backed up and proved: {name}.", name=made.path.name))
        if keeps_every_backup(self._keeping):
            self._say(
                tr(
                    "This book was restored from a backup, so every backup is kept since. Say yes"
                    " once you have seen that what was restored is right: older backups are then"
                    " thinned out again, fewer the further back they lie."
                )
            )
            self._asking.ask(tr("Thin older backups out again"), self._thin, tr("no"))

    def stop(self) -> None:
        """Wait a moment for what is being done."""
        self._worker.stop()

    def _checked(self, flaws: tuple[str, ...]) -> None:
        if not flaws:
            self._say("")
            self._notices.noted.emit(WHOLE)
            return
        more = [tr("and {count} more", count=len(flaws) - _SHOWN)] if len(flaws) > _SHOWN else []
        self._say("\n".join((*flaws[:_SHOWN], *more, CAN_MEND)))
        self._notices.noted.emit(tr("Something is wrong with the book: {flaw}", flaw=flaws[0]))

    def _mended(self, mended: Mended) -> None:
        told = mended_sentences(mended)
        self._say("\n".join((*told[:_SHOWN], *told[_SHOWN:][-1:])))
        self._notices.noted.emit(tr("Written: {name}.", name=mended.path.name))
        if is_sound(mended) and self._keeping.book.writable:
            self._asking.ask(
                tr("Open the copy in the book’s place, and keep the book beside it"),
                lambda text: self._agreed(mended, text),
                tr("yes"),
            )

    def _thin(self, text: str) -> bool:
        self._say("")
        if text.casefold() in ("y", "yes", tr("yes")):
            thin_backups_again(self._keeping)
            self._notices.noted.emit(
                tr("Older backups are thinned out again from the next one on.")
            )
        return True

    def _agreed(self, mended: Mended, text: str) -> bool:
        if text.casefold() in ("y", "yes", tr("yes")):
            self._notices.copy_agreed.emit(mended.path)
        return True

    def _refused(self, error: Exception) -> None:
        if not isinstance(error, REFUSALS):
            raise error
        self._notices.refused.emit(said(error))
