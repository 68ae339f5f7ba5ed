"""The papers of a night, and of the nights while the keeper is away."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from PySide6.QtCore import QEvent, QObject
from PySide6.QtGui import QHideEvent
from PySide6.QtWidgets import QWidget

from keeper.actions.absence import Absence, away_typed
from keeper.actions.due_board import feed_nights_around
from keeper.actions.keeping import Keeping
from keeper.actions.rounds import Walk, night_of
from keeper.desktop.look import Look
from keeper.desktop.paper.desk import PaperDesk
from keeper.desktop.paper.printing import Sheets, round_sheets, thaw_sheets
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.language import tr


def round_sheet_of_night(keeping: Keeping, walk: Walk | None) -> Sheets:
    """The round sheet of *walk*. Raises ValueError while none is begun."""
    return round_sheets(keeping, walk)


def thaw_list_of_night(keeping: Keeping, walk: Walk | None) -> Sheets:
    """What to thaw for the night of *walk*, or for the next feed night."""
    return thaw_sheets(keeping, walk.night if walk else next_feed_night(keeping))


class AwayLine(AskingLine):
    """Asks from when to when the keeper is away, over the foot of the round, and prints the page.

    While it is open the place's own keys are letters. refused: gets why nothing was printed.
    """

    def __init__(
        self,
        look: Look,
        place: QWidget,
        keeping: Keeping,
        desk: PaperDesk,
        refused: Callable[[str], object],
    ) -> None:
        self._place, self._keeping = place, keeping
        super().__init__(look, place)
        self._desk, self._refused = desk, refused
        self.setAutoFillBackground(True)
        place.installEventFilter(self)

    def ask_days(self) -> None:
        """Open the line, empty: no span is proposed that nobody meant."""
        for action in self._place.actions():
            action.setEnabled(False)
        self.ask(tr("Away from, to (5 Dec to 14 Dec; 9 days)"), self._print)
        self._lie_at_the_foot()
        self.raise_()

    def hideEvent(self, event: QHideEvent) -> None:
        super().hideEvent(event)
        for action in self._place.actions():
            action.setEnabled(True)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if watched is self._place and event.type() == QEvent.Type.Resize:
            self._lie_at_the_foot()
        return super().eventFilter(watched, event)

    def _lie_at_the_foot(self) -> None:
        high, room = self.sizeHint().height(), self._place.rect()
        self.setGeometry(0, room.height() - high, room.width(), high)

    def _print(self, text: str) -> bool:
        try:
            absence = away_typed(text, self._keeping.today)
        except ValueError as refusal:
            self._refused(str(refusal))
            return False
        self._desk.make(lambda: _holiday_sheets(self._keeping, absence))
        return True


def _holiday_sheets(keeping: Keeping, absence: Absence) -> Sheets:
    from keeper.desktop.paper.holiday import holiday_sheets  # what sets pages, when asked for

    return holiday_sheets(keeping, absence)


def next_feed_night(keeping: Keeping) -> date:
    """The next feed night, tonight among them; tonight where every night is one."""
    tonight = night_of(keeping.now())
    to_come = [night for night in feed_nights_around(keeping, tonight) if night >= tonight]
    return min(to_come, default=tonight)
