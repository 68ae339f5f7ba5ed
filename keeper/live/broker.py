"""The line to a message broker (MQTT 3.1.1 or 5, QoS 1): the only module with network code.

The session outlasts the program: what is published while it is away, the broker keeps. A message
is acknowledged when its reading is on the disk and not before, so a reading is lost neither by a
crash here nor by one of the broker's that it survives itself.
"""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from datetime import datetime
from hashlib import sha256
from threading import Thread
from time import monotonic
from typing import Any, Literal

from paho.mqtt.client import Client, DisconnectFlags, MQTTMessage
from paho.mqtt.enums import CallbackAPIVersion, MQTTProtocolVersion
from paho.mqtt.packettypes import PacketTypes
from paho.mqtt.properties import Properties

from keeper.actions.live_choice import LiveChoice
from keeper.actions.live_messages import Message
from keeper.language import tr
from keeper.live.certificates import refused_words, unreadable_words

Standing = Literal["connecting", "listening", "refused", "lost"]

QOS = 1
FIRST_WAIT_SECONDS, LONGEST_WAIT_SECONDS = 1, 60
"""The shortest and the longest wait between attempts to connect; each is twice the one before."""

AWAY_SECONDS = 300.0
"""After so long away what a broker held is older than its slot of five minutes."""

HELD_SECONDS = 10.0
"""So long after coming back messages may be of those that were held."""

_SESSION_SECONDS = 7 * 86_400
_KEEP_ALIVE_SECONDS = 30


class NoCertificates(Exception):
    """The certificates that are to vouch for a broker cannot be used; says why in a sentence."""


@dataclass(frozen=True, slots=True)
class Heard:
    """A message with what its acknowledgement needs."""

    message: Message
    connection: int
    mid: int
    qos: int


class Broker:
    """One connection, kept up in a thread of its own until ``stop``.

    heard and told are called in that thread: with each message, and with how the line stands
    and a sentence. now gives this instant with the offset of the place.

    Raises:
        NoCertificates: those that are to vouch for the broker cannot be read.
    """

    def __init__(
        self,
        choice: LiveChoice,
        name: str,
        *,
        now: Callable[[], datetime],
        heard: Callable[[Heard], None],
        told: Callable[[Standing, str], None],
    ) -> None:
        self._choice, self._now, self._heard, self._told = choice, now, heard, told
        self._topics: frozenset[str] = frozenset()
        self._connection = 0
        self._left_at: float | None = None
        self._refused = False
        self._held_until = 0.0
        self._client = self._made(name)
        self._thread = Thread(target=self._keep_up, daemon=True)

    def start(self, topics: Iterable[str]) -> None:
        """Begin to connect; what stands in the way is told and tried again."""
        self._topics = frozenset(topics)
        self._told("connecting", tr("Connecting to {address}.", address=self._choice.address))
        self._thread.start()

    def listen_to(self, topics: Iterable[str]) -> None:
        """Hear these topics from now on and no others."""
        before, self._topics = self._topics, frozenset(topics)
        if self._client.is_connected():
            self._subscribe(self._topics - before)
            for topic in before - self._topics:
                self._client.unsubscribe(topic)

    def acknowledge(self, taken: Iterable[Heard]) -> None:
        """Tell the broker that these are in the book.

        One that came over an earlier connection is sent again, and its number may be another's.
        """
        for each in taken:
            if each.qos and each.connection == self._connection:
                self._client.ack(each.mid, each.qos)

    def stop(self, wait_seconds: float) -> None:
        """Leave; the session stays with the broker."""
        self._client.disconnect()
        if wait_seconds > 0:
            self._thread.join(wait_seconds)

    def _made(self, name: str) -> Client:
        five = self._choice.protocol == "5"
        client = Client(
            CallbackAPIVersion.VERSION2,
            client_id=f"keeper{sha256(name.encode()).hexdigest()[:16]}",
            clean_session=None if five else False,
            protocol=MQTTProtocolVersion.MQTTv5 if five else MQTTProtocolVersion.MQTTv311,
            manual_ack=True,
        )
        client.on_connect = self._connected
        client.on_connect_fail = self._not_reached
        client.on_disconnect = self._disconnected
        client.on_subscribe = self._subscribed
        client.on_message = self._came
        client.reconnect_delay_set(FIRST_WAIT_SECONDS, LONGEST_WAIT_SECONDS)
        if self._choice.user:
            client.username_pw_set(self._choice.user, self._choice.password or None)
        if self._choice.tls:
            _vouch(client, self._choice)
        return client

    def _keep_up(self) -> None:
        choice = self._choice
        kept: dict[str, Any] = {}
        if choice.protocol == "5":
            properties = Properties(PacketTypes.CONNECT)  # type: ignore[no-untyped-call]
            properties.SessionExpiryInterval = _SESSION_SECONDS
            kept = {"clean_start": False, "properties": properties}
        self._client.connect_async(choice.host, choice.port, _KEEP_ALIVE_SECONDS, **kept)
        self._client.loop_forever(retry_first_connection=True)

    # --- called by the client, in its thread -------------------------------------------------

    def _connected(self, _client: Client, _: Any, flags: Any, why: Any, _more: Any) -> None:
        self._connection += 1
        self._refused = why.is_failure
        if why.is_failure:
            told = tr(
                "{address} refuses: {why}. Tried again.", address=self._choice.address, why=why
            )
            self._told("refused", told)
            return
        away = self._left_at is None or monotonic() - self._left_at > AWAY_SECONDS
        if away and flags.session_present:
            self._held_until = monotonic() + HELD_SECONDS
        self._subscribe(self._topics)
        self._told("listening", tr("Listening to {address}.", address=self._choice.address))

    def _not_reached(self, _client: Client, _: Any) -> None:
        refused = refused_words(self._choice, sys.exception())  # the client handles it just now
        told = tr("{address} cannot be reached. Tried again.", address=self._choice.address)
        self._told("refused" if refused else "lost", refused or told)

    def _disconnected(
        self, _client: Client, _: Any, flags: DisconnectFlags, why: Any, _more: Any
    ) -> None:
        if self._refused:  # that was told, and says more
            return
        self._left_at = monotonic()
        told = tr(
            "The line to {address} is cut: {why}. Tried again.",
            address=self._choice.address,
            why=why,
        )
        self._told("lost", told)

    def _subscribed(self, _client: Client, _: Any, _mid: int, whys: Any, _more: Any) -> None:
        if any(why.is_failure for why in whys):
            told = tr(
                "{address} does not give a topic: {why}.", address=self._choice.address, why=whys[0]
            )
            self._told("refused", told)

    def _came(self, _client: Client, _: Any, came: MQTTMessage) -> None:
        try:
            topic = came.topic
        except UnicodeDecodeError:
            topic = "?"
        from_before = came.retain or monotonic() < self._held_until
        message = Message(topic, bytes(came.payload), self._now(), from_before)
        self._heard(Heard(message, self._connection, came.mid, came.qos))

    def _subscribe(self, topics: Iterable[str]) -> None:
        wanted = [(topic, QOS) for topic in sorted(topics)]
        if wanted:
            self._client.subscribe(wanted)


def _vouch(client: Client, choice: LiveChoice) -> None:
    """From now on *client* speaks only to a broker whose certificate is vouched for."""
    try:
        client.tls_set(ca_certs=choice.ca_file or None)
    except OSError as error:
        raise NoCertificates(unreadable_words(choice, error)) from error
