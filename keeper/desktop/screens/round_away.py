"""When the keeper is away: asked in one line, told back, then kept and printed."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QEvent, QObject
from PySide6.QtGui import QHideEvent
from PySide6.QtWidgets import QWidget

from keeper.actions.absence import (
    Absence,
    absence_words,
    away_typed,
    is_kept,
    keep_absence,
    next_absence,
)
from keeper.actions.holiday import agreed, holiday_facts
from keeper.actions.keeping import Keeping
from keeper.actions.own_connection import own_connection
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.background import Background, Worker
from keeper.desktop.look import Look
from keeper.desktop.notices import Notices
from keeper.desktop.paper.desk import PaperDesk
from keeper.desktop.paper.printing import Sheets
from keeper.desktop.type import Use
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.desktop.widgets.words_line import Words
from keeper.language import tr
from keeper.reports.absence_told import absence_told
from keeper.reports.holiday_page import HolidayFacts


class AwayLine(AskingLine):
    """Asks over the foot of the round from when to when, and who covers.

    Enter tells back what the plan does round it, reckoned by *worker*; Enter again writes it into
    the book and prints the page. While the line is open the place's own keys are letters.
    """

    def __init__(
        self,
        look: Look,
        place: QWidget,
        keeping: Keeping,
        desk: PaperDesk,
        notices: Notices,
        worker: Worker | None = None,
    ) -> None:
        self._place, self._keeping = place, keeping
        self._worker = away = worker or Background()
        place.destroyed.connect(lambda: away.stop())
        self._seen: tuple[str, Absence, HolidayFacts] | None = None
        self.told = Words(look, Use.BODY, "ink", place)  # the line hides as it is made
        super().__init__(look, place)
        self._desk, self._notices = desk, notices
        for widget in (self, self.told):
            widget.setAutoFillBackground(True)
        self.told.hide()
        self.field.textChanged.connect(self._forget)
        place.installEventFilter(self)

    def ask_days(self) -> None:
        """Open the line, with the absence that is to come if there is one."""
        for action in self._place.actions():
            action.setEnabled(False)
        coming = next_absence(self._keeping)
        written = absence_words(coming) if coming is not None else ""
        asked = tr("Away from, to, who covers (5 Dec to 14 Dec, Wren; 9 days)")
        self.ask(asked, self._take, written)
        self._lie_at_the_foot()
        self.raise_()

    def hideEvent(self, event: QHideEvent) -> None:
        super().hideEvent(event)
        self._forget()
        for action in self._place.actions():
            action.setEnabled(True)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if watched is self._place and event.type() == QEvent.Type.Resize:
            self._lie_at_the_foot()
        return super().eventFilter(watched, event)

    def _lie_at_the_foot(self) -> None:
        high, room = self.sizeHint().height(), self._place.rect()
        self.setGeometry(0, room.height() - high, room.width(), high)
        margin = round(self._look.u(7, 3.5))
        self.told.setContentsMargins(margin, round(self._look.u(2, 1)), margin, 0)
        above = self.told.heightForWidth(room.width())
        self.told.setGeometry(0, room.height() - high - above, room.width(), above)

    def _forget(self) -> None:
        """What was told back was of other words."""
        self._seen = None
        self.told.hide()

    def _take(self, text: str) -> bool:
        """Tell *text* back, or keep and print what was told of it."""
        if self._seen is not None and self._seen[0] == text:
            _, absence, facts = self._seen
            self._desk.make(lambda: _sheets(facts))
            self._notices.tell_of(lambda: keep_absence(self._keeping, absence))
            return True
        try:
            typed = away_typed(text, self._keeping.today)
        except REFUSALS as refusal:
            self._refuse(refusal)
            return False
        self._notices.noted.emit(tr("The plan is being bent round it."))
        self._worker.run(
            partial(_reckoned, self._keeping, typed), partial(self._tell_back, text), self._refuse
        )
        return False

    def _refuse(self, error: Exception) -> None:
        if not isinstance(error, REFUSALS):
            raise error
        self._notices.refused.emit(said(error))

    def _tell_back(self, text: str, reckoned: tuple[Absence, HolidayFacts]) -> None:
        """What was reckoned, unless other words stand there by now."""
        if not self.isVisible() or self.field.text() != text:
            return
        absence, facts = reckoned
        self._seen = (text, absence, facts)
        if is_kept(self._keeping, absence):
            follows = tr("Enter again prints the page.")
        else:
            follows = tr("Enter again keeps it and prints the page.")
        self.told.setText(f"{absence_told(facts)} {follows}")
        self._notices.noted.emit(follows)
        self._lie_at_the_foot()
        self.told.show()
        self.told.raise_()


def _reckoned(keeping: Keeping, typed: Absence) -> tuple[Absence, HolidayFacts]:
    """The nights agreed and what follows, read through a connection of this thread's own."""
    with own_connection(keeping) as own:
        absence = agreed(own, typed)
        return absence, holiday_facts(own, absence)


def _sheets(facts: HolidayFacts) -> Sheets:
    from keeper.desktop.paper.holiday import sheets_of  # what sets pages, when asked for

    return sheets_of(facts)
