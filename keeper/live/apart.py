"""Listening done by another process: what comes in never takes the interpreter from the window.

The order goes out on the first line of its input, topics that changed on later ones; each line
that it writes is how things stand. When its input ends, so does it: a window that dies leaves
nothing behind that listens.
"""

from __future__ import annotations

import logging
import os
import subprocess
from collections.abc import Callable, Iterable
from contextlib import suppress
from pathlib import Path
from threading import Lock, Thread
from typing import IO

import msgspec

from keeper.actions.live_choice import LiveChoice
from keeper.actions.other_process import begun
from keeper.actions.station import home_dir
from keeper.language import VARIABLE, spoken, tr
from keeper.live.receiving import LiveState, Receiver

LOG = "live.log"
ENDED = tr("The part that listens has ended; S twice switches it on again. More is in {path}.")

_NICER = 5
_STOP_SECONDS = 5.0


class Order(msgspec.Struct, kw_only=True):
    """What is to be listened to, and for which book."""

    path: str
    station: str
    choice: LiveChoice
    topics: list[str]


class Apart:
    """A receiver in a process of its own; ``start``, ``listen_to`` and ``stop`` do not wait.

    told is called in a thread of its own.
    """

    def __init__(
        self, path: Path, station: str, choice: LiveChoice, told: Callable[[LiveState], None]
    ) -> None:
        self._path, self._station, self._choice, self._told = path, station, choice, told
        self._topics: list[str] = []
        self._process: subprocess.Popen[bytes] | None = None
        self._stopping, self._speaking = False, Lock()
        self._thread = Thread(target=self._hear, daemon=True)

    def start(self, topics: Iterable[str]) -> None:
        """Begin to listen."""
        self._topics = sorted(topics)
        self._thread.start()

    def listen_to(self, topics: Iterable[str]) -> None:
        """Hear these topics from now on and no others."""
        with self._speaking:
            self._topics = sorted(topics)
            self._say(self._topics)

    def stop(self, wait_seconds: float = 0.0) -> None:
        """Leave; what was heard goes in first, for as long as that is waited for."""
        with self._speaking:
            self._stopping = True
            if self._process is not None and self._process.stdin is not None:
                with suppress(OSError):
                    self._process.stdin.close()
        if wait_seconds > 0 and self._thread.is_alive():
            self._thread.join(wait_seconds)

    def _say(self, words: object) -> None:
        if self._process is not None and self._process.stdin is not None:
            with suppress(OSError, ValueError):
                self._process.stdin.write(msgspec.json.encode(words) + b"\n")
                self._process.stdin.flush()

    def _hear(self) -> None:
        try:
            process = self._begun()
        except OSError as error:
            self._told(
                LiveState(
                    standing="cannot", told=tr("No process can be had: {error}.", error=error)
                )
            )
            return
        if process is None:
            return
        with process:
            assert process.stdout is not None
            for line in process.stdout:
                state = msgspec.json.decode(line, type=LiveState)
                if not self._stopping:
                    self._told(state)
            with self._speaking:
                self._process = None
        if not self._stopping:
            told = ENDED.format(path=home_dir() / LOG)
            self._told(LiveState(standing="cannot", told=told))

    def _begun(self) -> subprocess.Popen[bytes] | None:
        """The process with its order; None where it was stopped before it began."""
        with self._speaking:
            if self._stopping:
                return None
            self._process = begun("keeper.live", **{VARIABLE: spoken()})
            order = Order(
                path=str(self._path),
                station=self._station,
                choice=self._choice,
                topics=self._topics,
            )
            self._say(order)
            return self._process


def serve(orders: IO[bytes], out: IO[bytes]) -> None:
    """What the other process does: listen until *orders* end, each state a line in *out*."""
    from keeper import clock

    _keep_log()
    if hasattr(os, "nice"):
        os.nice(_NICER)  # the window goes first
    order = msgspec.json.decode(orders.readline(), type=Order)
    speaking = Lock()

    def tell(state: LiveState) -> None:
        with speaking, suppress(OSError, ValueError):
            out.write(msgspec.json.encode(state) + b"\n")
            out.flush()

    receiver = Receiver(Path(order.path), order.station, clock.now, order.choice, tell)
    receiver.start(order.topics)
    for line in orders:
        receiver.listen_to(msgspec.json.decode(line, type=list[str]))
    receiver.stop(_STOP_SECONDS)


def _keep_log() -> None:
    """Faults go to a log of its own, made when there is one."""
    home_dir().mkdir(parents=True, exist_ok=True)
    handler = logging.FileHandler(home_dir() / LOG, encoding="utf-8", delay=True)
    logging.basicConfig(level=logging.WARNING, handlers=[handler])
