"""Messages queued as they come, taken into the book in batches, acknowledged when they lie there.

Batches are small when the broker waits for acknowledgements and seldom when it does not: a disk
write for each message of three hundred probes would wear the disk for nothing.
"""

from __future__ import annotations

import logging
from collections.abc import Callable, Iterable, Iterator
from contextlib import closing, suppress
from dataclasses import dataclass, field, replace
from datetime import datetime
from itertools import chain, repeat
from pathlib import Path
from queue import Empty, Full, Queue
from threading import Event, Lock, Thread
from time import monotonic
from typing import TYPE_CHECKING, Any, Literal

from keeper.actions.live_choice import LiveChoice
from keeper.actions.live_messages import Message
from keeper.actions.live_taking import LiveCounts, LiveTaking
from keeper.language import tr
from keeper.store.errors import BookError, NewerBook, NotABook, ReadOnlyBook

if TYPE_CHECKING:
    from keeper.live.broker import Broker, Heard, Standing

MISSING = tr(
    "Live readings need one more part: pip install 'keeper[mqtt]', then switch it on again."
)

LINGER_SECONDS = 5.0
"""How long a few messages wait for more before they are written."""

QUICK_SECONDS = 0.02
"""The same while the broker holds messages back until it hears of the last ones."""

WAITING_SECONDS = 0.2
"""A message so soon after an acknowledgement was held back by the broker."""

REST_SECONDS = 0.02
"""At least so long the book is left to the window between two writes, and as long as one took."""

ENOUGH = 10
MOST_AT_ONCE = 2_000
MOST_QUEUED = 20_000
TELL_SECONDS = 0.5
_RETRY_SECONDS = (1.0, 2.0, 5.0, 10.0, 30.0)
_LOOK_SECONDS = 0.1


@dataclass(frozen=True, slots=True, kw_only=True)
class LiveState:
    """How the line stands, a sentence on it, and what was heard.

    trouble: why what was heard is not in the book yet; empty while all is well.
    """

    standing: Literal["off", "cannot", "connecting", "listening", "refused", "lost"] = "off"
    told: str = tr("Live readings are switched off.")
    trouble: str = ""
    counts: LiveCounts = field(default_factory=LiveCounts)


class Receiver:
    """Takes readings into the book at *path* until ``stop``.

    now gives this instant with the offset of the place; told is called in threads of its own.
    """

    def __init__(
        self,
        path: Path,
        station: str,
        now: Callable[[], datetime],
        choice: LiveChoice,
        told: Callable[[LiveState], None],
    ) -> None:
        self._path, self._station = path, station
        self._now, self._choice, self._told = now, choice, told
        self._queue: Queue[Heard] = Queue(MOST_QUEUED)
        self._stopping = Event()
        self._broker: Broker | None = None
        self._state, self._changing = LiveState(), Lock()
        self._told_at = self._acknowledged_at = 0.0
        self._thread = Thread(target=self._work, daemon=True)

    def start(self, topics: Iterable[str]) -> None:
        """Begin; where the part that speaks to brokers is missing, that is told.

        Only here is network code imported.
        """
        try:
            from keeper.live.broker import Broker, NoCertificates
        except ImportError:
            self._say("cannot", MISSING)
            return
        name = f"{self._station} {self._path.resolve()}"
        try:
            self._broker = Broker(
                self._choice, name, now=self._now, heard=self._take_up, told=self._say
            )
        except NoCertificates as trouble:
            self._say("cannot", str(trouble))
            return
        self._thread.start()
        self._broker.start(topics)

    def listen_to(self, topics: Iterable[str]) -> None:
        """Hear these topics from now on."""
        if self._broker is not None:
            self._broker.listen_to(topics)

    def stop(self, wait_seconds: float = 0.0) -> None:
        """Leave. What is queued goes in; what is not in then, the broker sends again."""
        self._stopping.set()
        if self._broker is None:
            return
        if wait_seconds > 0:
            self._thread.join(wait_seconds)
        self._broker.stop(wait_seconds)

    # --- in the broker's thread --------------------------------------------------------------

    def _take_up(self, heard: Heard) -> None:
        """A full queue holds up the broker's thread, and so the broker."""
        while not self._stopping.is_set():
            with suppress(Full):
                self._queue.put(heard, timeout=_LOOK_SECONDS)
                return

    def _say(self, standing: Standing | Literal["cannot"], told: str) -> None:
        self._change(standing=standing, told=told)

    def _change(self, **parts: Any) -> None:
        """Tell the state with *parts* of it changed, from whichever thread."""
        with self._changing:
            self._state = replace(self._state, **parts)
            state = self._state
        if not self._stopping.is_set():
            self._told(state)

    # --- in the thread of its own ------------------------------------------------------------

    def _work(self) -> None:
        try:
            opened = self._opened()
            if opened is None:
                return
            with closing(opened) as taking:
                while not self._stopping.is_set():
                    self._take(taking, self._gathered())
                    self._tell_counts(taking)
                self._take(taking, self._rest())
        except BookError as error:
            self._give_up(tr("{error} Nothing is heard.", error=error))
        except Exception:
            logging.getLogger(__name__).exception("live readings")
            self._give_up(tr("The program failed at a message; nothing is heard any more."))

    def _opened(self) -> LiveTaking | None:
        """The book, tried again while another program holds it; None if it is time to stop."""
        for wait in _waits():
            try:
                return LiveTaking(self._path, self._station, self._now)
            except (NotABook, NewerBook, ReadOnlyBook):
                raise
            except BookError as error:
                self._change(trouble=tr("{error} Tried again.", error=error))
            if self._stopping.wait(wait):
                break
        return None

    def _give_up(self, told: str) -> None:
        self._say("cannot", told)
        self._stopping.set()
        if self._broker is not None:
            self._broker.stop(0.0)

    def _gathered(self) -> list[Heard]:
        """What came, as soon as it is enough or has waited long enough."""
        try:
            batch = [self._queue.get(timeout=_LOOK_SECONDS)]
        except Empty:
            return []
        begun = monotonic()
        is_waited_for = begun - self._acknowledged_at < WAITING_SECONDS
        end = begun + (QUICK_SECONDS if is_waited_for else LINGER_SECONDS)
        while len(batch) < MOST_AT_ONCE and not self._stopping.is_set():
            left = end - monotonic()
            wait = 0.0 if len(batch) >= ENOUGH else min(left, _LOOK_SECONDS)
            try:
                batch.append(self._queue.get(wait > 0, wait if wait > 0 else None))
            except Empty:
                if len(batch) >= ENOUGH or left <= _LOOK_SECONDS:
                    break
        return batch

    def _rest(self) -> list[Heard]:
        rest: list[Heard] = []
        with suppress(Empty):
            while len(rest) < MOST_QUEUED:
                rest.append(self._queue.get_nowait())
        return rest

    def _take(self, taking: LiveTaking, batch: list[Heard]) -> None:
        """Write *batch* and acknowledge it; a book that refuses is tried again."""
        begun = monotonic()
        if not batch or not self._written(taking, [heard.message for heard in batch]):
            return
        if self._broker is not None:
            self._broker.acknowledge(batch)
        self._acknowledged_at = monotonic()
        self._stopping.wait(max(REST_SECONDS, self._acknowledged_at - begun))

    def _written(self, taking: LiveTaking, messages: list[Message]) -> bool:
        """Whether they are in the book before it is time to stop."""
        for wait in _waits():
            try:
                taking.take(messages)
                break
            except BookError as error:
                self._change(trouble=tr("{error} Tried again.", error=error))
            if self._stopping.wait(wait):
                return False
        if self._state.trouble:
            self._change(trouble="")
        return True

    def _tell_counts(self, taking: LiveTaking) -> None:
        if monotonic() - self._told_at < TELL_SECONDS:
            return
        counts = taking.counts()
        if counts != self._state.counts:
            self._told_at = monotonic()
            self._change(counts=counts)


def _waits() -> Iterator[float]:
    """Seconds before each next try."""
    return chain(_RETRY_SECONDS, repeat(_RETRY_SECONDS[-1]))
