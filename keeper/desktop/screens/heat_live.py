"""Live readings looked after on the heat page: switched on and off, topics, probes to place."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import QObject, QTimer, Signal

from keeper.actions.keeping import Keeping
from keeper.actions.live_choice import (
    BY_SYSTEM,
    NO_TLS,
    LiveChoice,
    choice_for,
    with_address,
    with_certificates,
)
from keeper.actions.live_topics import TopicMap, set_topic, topics_of
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.notices import Notices
from keeper.desktop.screens.files_asking import complete_paths
from keeper.desktop.screens.heat_live_words import live_lines
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.language import tr
from keeper.live.receiving import LiveState

LIVE_KEYS = tr(
    "S switch    A address    W password    C certificates    V version    T topic    P place"
    "    Esc leaves"
)
LOOK_MS = 10_000
Lines = list[tuple[str, bool]]


class HeatLive(QObject):
    """What is told of live readings while it is looked at, and the keys that change it.

    shown: called with the lines, or None when they are looked at no more. place: asks where
    the probe of that name hangs. ``came``: readings came, told at most every ten seconds.
    """

    came = Signal()

    def __init__(
        self,
        keeping: Keeping,
        notices: Notices,
        asking: AskingLine,
        shown: Callable[[Lines | None], None],
        place: Callable[[str], None],
    ) -> None:
        super().__init__(asking)
        self._keeping, self._notices, self._asking = keeping, notices, asking
        self._shown, self._place = shown, place
        self._state, self._choice = LiveState(), LiveChoice()
        self._topics: tuple[TopicMap, ...] = ()
        self._soon = QTimer(self, interval=LOOK_MS, singleShot=True)
        self._soon.timeout.connect(self.came)
        self.looked_at = False
        notices.live_told.connect(self._hear)
        notices.changed.connect(self._look_again)

    def begin(self) -> None:
        """Look at them."""
        self.looked_at = True
        self._notices.live_asked.emit(None)
        self._look_again()

    def leave(self) -> None:
        """Look at them no more."""
        self.looked_at = False
        self._shown(None)

    def press(self, key: str) -> bool:
        """Do what *key* means while they are looked at; False: nothing."""
        deeds = {
            "S": self._switch,
            "A": self._ask_address,
            "W": self._ask_password,
            "C": self._ask_certificates,
            "V": self._change_version,
            "T": self._ask_topic,
            "P": self._ask_place,
            "Esc": self.leave,
        }
        if not self.looked_at or key not in deeds:
            return False
        deeds[key]()
        return True

    def _hear(self, state: LiveState | None) -> None:
        before = self._state
        self._state = state or before
        if self._state.counts.last_at != before.counts.last_at and not self._soon.isActive():
            self._soon.start()
        self._show()

    def _show(self) -> None:
        if self.looked_at:
            path = self._keeping.book.path
            self._shown(list(live_lines(self._state, self._choice, self._topics, path)))

    def _look_again(self) -> None:
        """The book and the file of choices are asked when they changed, not with each message."""
        if self.looked_at:
            self._choice = choice_for(self._keeping.book.path)
            self._topics = topics_of(self._keeping.book)
            self._show()

    def _choose(self, choice: LiveChoice) -> None:
        self._notices.live_asked.emit(choice)
        self._look_again()

    def _switch(self) -> None:
        if not self._choice.host:
            self._ask_address()
            return
        self._choose(replace(self._choice, on=not self._choice.on))

    def _change_version(self) -> None:
        version = self._choice.protocol
        self._choose(replace(self._choice, protocol="5" if version == "3.1.1" else "3.1.1"))

    def _ask_address(self) -> None:
        question = tr("Address of the message broker (host, host:port, user@host)")
        self._asking.ask(question, self._address, self._choice.address)

    def _address(self, text: str) -> bool:
        try:
            choice = with_address(self._choice, text)
        except REFUSALS as refusal:
            self._notices.refused.emit(said(refusal))
            return False
        self._choose(choice)
        return True

    def _ask_password(self) -> None:
        if not self._choice.user:
            told = tr("No user is named; A names one, such as ro@broker.local.")
            self._notices.refused.emit(told)
            return
        question = tr("Password of {user}", user=self._choice.user)
        self._asking.ask(question, self._password, hidden=True)

    def _password(self, text: str) -> bool:
        self._choose(replace(self._choice, password=text))
        return True

    def _ask_certificates(self) -> None:
        complete_paths(self._asking)
        known = self._choice.ca_file or (BY_SYSTEM if self._choice.tls else NO_TLS)
        question = tr("Certificates that vouch for the broker (none, system, or a file)")
        self._asking.ask(question, self._certificates, known)

    def _certificates(self, text: str) -> bool:
        try:
            choice = with_certificates(self._choice, text)
        except REFUSALS as refusal:
            self._notices.refused.emit(said(refusal))
            return False
        self._choose(choice)
        return True

    def _ask_topic(self) -> None:
        question = tr("Topic = probe, field, time (room/+/air = +)")
        self._asking.ask(question, self._topic)

    def _topic(self, text: str) -> bool:
        return self._notices.tell_of(lambda: set_topic(self._keeping, text))

    def _ask_place(self) -> None:
        """Place the first probe that speaks and has no place."""
        if self._state.counts.unplaced:
            self._place(self._state.counts.unplaced[0])
        else:
            self._notices.refused.emit(tr("Every probe that was heard has its place."))
