"""What the round tells the window: what it wrote, refused or asks before it writes."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from keeper.actions.keeping import Written
from keeper.desktop.notices import Notices
from keeper.desktop.sound.synthesis import Tone
from keeper.desktop.sound.tones import tones


class RoundTelling:
    """``by_itself`` is true while the round tells of its own writing, which it need not hear."""

    def __init__(self, notices: Notices) -> None:
        self._notices = notices
        self._until_next_key = False
        self.by_itself = False

    def written(self, written: Written | None, tone: Tone | None = None) -> None:
        """Say what was written, if anything was, and let it be heard by its tone."""
        if written is not None:
            if tone is not None:
                tones.sound(tone)
            with self._own():
                self._notices.tell_written(written)

    def begun(self, sentence: str) -> None:
        """Say that a round was begun, which changes the book and cannot be taken back here."""
        with self._own():
            self._notices.changed.emit()
            self._notices.noted.emit(sentence)

    def noted(self, sentence: str) -> None:
        self._notices.noted.emit(sentence)

    def asked(self, sentence: str) -> None:
        """Show *sentence* until the next key."""
        self._until_next_key = True
        self._notices.noted.emit(sentence)

    def refused(self, sentence: str) -> None:
        """Say why nothing was done, until the next key, and let it be heard."""
        self._until_next_key = True
        tones.sound(Tone.NO_KEY)
        self._notices.refused.emit(sentence)

    def next_key(self) -> None:
        """What was said of the key before is said no more."""
        if self._until_next_key:
            self._until_next_key = False
            self._notices.noted.emit("")

    @contextmanager
    def _own(self) -> Iterator[None]:
        self.by_itself = True
        try:
            yield
        finally:
            self.by_itself = False
