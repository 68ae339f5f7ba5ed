"""An alarm by ear: live readings that call for the keeper now are heard from any place."""

from __future__ import annotations

from collections.abc import Set

from PySide6.QtCore import QObject

from keeper.actions.keeping import Keeping
from keeper.actions.troubles import REFUSALS
from keeper.desktop.background import Background, Worker
from keeper.desktop.notices import Notices
from keeper.desktop.remembered import wants_tones
from keeper.desktop.sound.tones import Tones, tones


class HeatAlarm(QObject):
    """Looks at the heat when live readings came, while tones are on, off the main thread."""

    def __init__(
        self,
        keeping: Keeping,
        notices: Notices,
        parent: QObject | None = None,
        *,
        worker: Worker | None = None,
        sounds: Tones = tones,
    ) -> None:
        super().__init__(parent)
        self._keeping, self._sounds = keeping, sounds
        self._worker = worker or Background()
        self._looking = False
        notices.readings_came.connect(self.look)

    def look(self) -> None:
        """Read the heat, unless it is being read or nobody wants to hear of it."""
        if not self._looking and wants_tones():
            self._looking = True
            keeping = self._keeping
            self._worker.run(lambda: _now(keeping), self._took, self._failed)

    def stop(self) -> None:
        """Wait a moment for what is being read."""
        self._looking = False
        self._worker.stop()

    def _took(self, now: Set[tuple[str, str]]) -> None:
        self._looking = False
        self._sounds.heard("heat", now)

    def _failed(self, error: Exception) -> None:
        """A book that cannot be read now is told by whoever shows it."""
        self._looking = False
        if not isinstance(error, REFUSALS):
            raise error


def _now(keeping: Keeping) -> set[tuple[str, str]]:
    """Places and zones that call for the keeper now."""
    from keeper.actions.heat_board import heat_board  # no start waits for it
    from keeper.actions.own_connection import own_connection

    with own_connection(keeping) as own:
        lines = heat_board(own, own.today).lines
    return {
        (line.place, cell.zone.value)
        for line in lines
        for cell in line.cells
        if cell.standing == "now"
    }
