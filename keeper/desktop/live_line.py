"""Live readings in the window: begun with the book where they are switched on, ended before it.

What listening needs is loaded when it begins: the first paint does not wait for it.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal

from keeper.actions.keeping import Keeping
from keeper.desktop.notices import Notices
from keeper.desktop.sound.heat_alarm import HeatAlarm
from keeper.language import tr

if TYPE_CHECKING:
    from keeper.actions.live_choice import LiveChoice
    from keeper.live.apart import Apart
    from keeper.live.receiving import LiveState

STOP_SECONDS = 2.0
"""How long the closing of the window waits for what was heard to be written."""

COME_MS = 60_000
"""Pages that judge readings look at live ones so seldom."""

READ_ONLY = tr("This window reads the book only; readings are heard where it is written.")


class LiveLine(QObject):
    """Listens for one book. Pages ask and hear through *notices*; nothing here waits.

    state: how it stands now; None before ``start``.
    """

    _came = Signal(int, object)

    def __init__(self, keeping: Keeping, notices: Notices, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._keeping, self._notices = keeping, notices
        self._receiver: Apart | None = None
        self._number = 0
        self._topics: frozenset[str] = frozenset()
        self.state: LiveState | None = None
        self._soon = QTimer(self, interval=COME_MS, singleShot=True)
        self._soon.timeout.connect(notices.readings_came)
        self._came.connect(self._take)
        self._alarm = HeatAlarm(keeping, notices, self)
        notices.live_asked.connect(self._answer)
        notices.changed.connect(self._look_at_topics)

    def start(self) -> None:
        """Listen, if it was switched on for this book on this machine."""
        from keeper.actions.live_choice import choice_for
        from keeper.live.receiving import LiveState

        choice = choice_for(self._keeping.book.path)
        if not choice.on or not choice.host:
            self._show(LiveState())
        elif not self._keeping.book.writable:
            self._show(LiveState(standing="cannot", told=READ_ONLY))
        else:
            self._begin(choice)

    def stop(self, wait_seconds: float = STOP_SECONDS) -> None:
        """Listen no more; what was heard goes in, what is not in by then is sent again."""
        self._alarm.stop()
        receiver, self._receiver = self._receiver, None
        if receiver is not None:
            receiver.stop(wait_seconds)

    def _begin(self, choice: LiveChoice) -> None:
        from keeper.live.apart import Apart
        from keeper.live.receiving import LiveState

        self._number += 1
        number, book = self._number, self._keeping.book
        self._receiver = Apart(
            book.path, book.station, choice, lambda state: self._came.emit(number, state)
        )
        self._topics = self._wanted()
        told = tr("Connecting to {address}.", address=choice.address)
        self._show(LiveState(standing="connecting", told=told))
        self._receiver.start(self._topics)

    def _wanted(self) -> frozenset[str]:
        from keeper.actions.live_topics import topics_of

        return frozenset(each.topic for each in topics_of(self._keeping.book))

    def _answer(self, choice: LiveChoice | None) -> None:
        """With a choice: keep it and begin anew as it says. Without: tell how it stands."""
        from keeper.actions.live_choice import choose

        if choice is None:
            self._notices.live_told.emit(self.state)
            return
        try:
            choose(self._keeping.book.path, choice)
        except OSError as error:
            told = tr(
                "{file}: {why}. Nothing was changed.", file=error.filename, why=error.strerror
            )
            self._notices.refused.emit(told)
            return
        self.stop(0.0)
        self.start()

    def _look_at_topics(self) -> None:
        if self._receiver is None:
            return
        wanted = self._wanted()
        if wanted != self._topics:
            self._topics = wanted
            self._receiver.listen_to(wanted)

    def _take(self, number: int, state: LiveState) -> None:
        """What a receiver tells that was left meanwhile is not shown."""
        if number == self._number and self._receiver is not None:
            self._show(state)

    def _show(self, state: LiveState) -> None:
        before, self.state = self.state, state
        last_at = before.counts.last_at if before else None
        if state.counts.last_at not in (None, last_at) and not self._soon.isActive():
            self._soon.start()
        self._notices.live_told.emit(state)
