"""Tones for whoever cannot look: off until switched on, and then silent where nothing can play.

Nothing of sound is loaded while they are off. A device that fails is told to nobody: the round
goes on, without a tone.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Collection, Hashable
from pathlib import Path

from PySide6.QtCore import QTimer

from keeper.actions.station import home_dir
from keeper.desktop.remembered import wants_tones
from keeper.desktop.sound.synthesis import NOTES, Tone, samples, wave_file

Play = Callable[[Path], object]
PREPARE_MS = 1500
"""So long after a page is shown what plays is looked for, while nobody waits for a key."""

HEAR_MS = 450
"""Between the tones when all of them are heard one after another."""


class Tones:
    """One a program. play: how a file is played; None: looked for when the first tone is asked."""

    def __init__(self, play: Play | None = None) -> None:
        self._play = play
        self._looked = play is not None
        self._files: dict[Tone, Path] = {}
        self._known: dict[str, frozenset[Hashable]] = {}

    def sound(self, tone: Tone, *, though_off: bool = False) -> None:
        """Play *tone* once, if tones are wanted."""
        if not (though_off or wants_tones()):
            return
        self.prepare()
        if self._play is None:
            return
        try:
            self._play(self._file(tone))
        except (OSError, RuntimeError):
            self._play = None  # no more tones until the next start, and no word about it

    def heard(self, source: str, now: Collection[Hashable]) -> None:
        """Sound once when *source* tells of something in *now* that it did not tell before."""
        fresh = frozenset(now) - self._known.get(source, frozenset())
        self._known[source] = frozenset(now)
        if fresh:
            self.sound(Tone.NOW)

    def prepare(self) -> bool:
        """Look for what plays; whether anything does."""
        if not self._looked:
            from keeper.desktop.sound.players import player

            self._looked, self._play = True, player()
        return self._play is not None

    def prepare_soon(self) -> None:
        """The same in a moment, if tones are wanted and it was not looked for yet."""
        if not self._looked and wants_tones():
            QTimer.singleShot(PREPARE_MS, self.prepare)

    def hear_all(self) -> None:
        """Every tone, one after another, whether they are switched on or not."""
        for number, tone in enumerate(NOTES):
            QTimer.singleShot(number * HEAR_MS, lambda tone=tone: self.sound(tone, though_off=True))

    def _file(self, tone: Tone) -> Path:
        """The file of *tone*, written once each start. Raises OSError."""
        if tone not in self._files:
            folder = home_dir() / "tones"
            folder.mkdir(mode=0o700, parents=True, exist_ok=True)
            path = folder / f"{tone.value.replace(' ', '-')}.wav"
            how = os.O_WRONLY | os.O_CREAT | os.O_TRUNC
            with os.fdopen(os.open(path, how, 0o600), "wb") as file:
                file.write(wave_file(samples(tone)))
            self._files[tone] = path
        return self._files[tone]


tones = Tones()
"""Of this program."""
