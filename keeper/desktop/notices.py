"""What happened, told once: screens speak to the window, and hear of changes, only through here."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, Signal

from keeper.actions.keeping import Written
from keeper.actions.troubles import REFUSALS, said


class Notices(QObject):
    """One object a window.

    Signals: ``written`` after something was written in the book (carries the ``Written``);
    ``refused`` with one sentence when nothing was; ``noted`` with a plain sentence;
    ``changed`` when the book changed in any way, so that what is shown may be read again;
    ``animal_asked`` with an animal's key to open its page; ``grade_asked`` with a grade of prey as
    the book writes it, ``clutch_asked`` with the name of a clutch, and ``weighing_asked`` with the
    code of an animal, to go to it; ``stay_asked`` with an animal's key and a day, to go to where
    it stood in the racks' time-line; ``copy_agreed`` with the path of a mended copy that is to take
    the book's place; ``live_asked`` with a ``LiveChoice`` to listen
    so, or None to be told how it stands; ``live_told`` with that ``LiveState``;
    ``readings_came`` when live readings came, at most once a minute.
    """

    written = Signal(object)
    refused = Signal(str)
    noted = Signal(str)
    changed = Signal()
    animal_asked = Signal(object)  # keys are larger than a C int
    grade_asked = Signal(str)
    clutch_asked = Signal(str)
    weighing_asked = Signal(str)
    stay_asked = Signal(object, object)
    copy_agreed = Signal(object)
    live_asked = Signal(object)
    live_told = Signal(object)
    readings_came = Signal()

    def tell_written(self, written: Written) -> None:
        """Say what was written and that the book changed."""
        self.written.emit(written)
        self.changed.emit()

    def tell_of(self, write: Callable[[], Written | None]) -> bool:
        """Write, then say what was written or why it was refused; whether it was not refused."""
        try:
            written = write()
        except REFUSALS as refusal:
            self.refused.emit(said(refusal))
            return False
        if written is not None:
            self.tell_written(written)
        return True
