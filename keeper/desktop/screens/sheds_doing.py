"""What the keys of the sheds page write of the chosen animal."""

from __future__ import annotations

from collections.abc import Callable

from keeper.actions.aftercare import LOOKS, note_look
from keeper.actions.keeping import Keeping, Written
from keeper.actions.shed_board import NOTES, ShedRow, note_sign, shed_row
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.notices import Notices
from keeper.language import tr
from keeper.reports.words import because_text


class ShedsDoing:
    """Writes at once, whatever is being read.

    chosen: the animal that is shown as chosen; why_none: why there is none, in one sentence.
    wrote: is told of which row something was written. ``telling`` while the window hears of it.
    """

    def __init__(
        self,
        keeping: Keeping,
        notices: Notices,
        *,
        chosen: Callable[[], ShedRow | None],
        why_none: Callable[[], str],
        wrote: Callable[[ShedRow], None],
    ) -> None:
        self._keeping, self._notices = keeping, notices
        self._chosen, self._why_none, self._wrote = chosen, why_none, wrote
        self.telling = False

    def note(self, key: str) -> None:
        """Write the sign that *key* stands for."""
        row = self._asked_of()
        if row is None:
            return
        try:
            written, cautions = note_sign(self._keeping, row, NOTES[key])
        except REFUSALS as refusal:
            self._notices.refused.emit(said(refusal))
            return
        self._tell(row, written)
        if cautions:
            told = because_text(cautions, row.animal.sex)
            said_of = tr(
                "Written: {what}. {caution} Ctrl+Z takes it back.", what=written.what, caution=told
            )
            self._notices.noted.emit(said_of)

    def look_again(self, key: str) -> None:
        """Write what *key* says of that which the last shed left."""
        row = self._asked_of()
        if row is None:
            return
        try:  # what is left is asked of the book as it is now, not as it was shown
            now = shed_row(self._keeping, row.animal.animal, self._keeping.today) or row
            written = note_look(self._keeping, row.animal, LOOKS[key], now.left)
        except REFUSALS as refusal:
            self._notices.refused.emit(said(refusal))
            return
        self._tell(row, written)

    def open(self) -> None:
        """Ask for the page of the chosen animal."""
        row = self._asked_of()
        if row is not None:
            self._notices.animal_asked.emit(row.animal.animal)

    def _asked_of(self) -> ShedRow | None:
        """The chosen animal; where there is none it is told why."""
        row = self._chosen()
        if row is None:
            self._notices.refused.emit(self._why_none())
        return row

    def _tell(self, row: ShedRow, written: Written) -> None:
        self.telling = True
        try:
            self._notices.tell_written(written)
        finally:
            self.telling = False
        self._wrote(row)
