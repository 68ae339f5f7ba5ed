"""Messages of live probes taken into the book, in a thread and over a connection of their own.

What stays out is counted by its reason; the first of it is written to a file beside the book,
so that a probe that speaks otherwise than it should can be put right.
"""

from __future__ import annotations

import csv
import io
from collections import Counter
from collections.abc import Callable, Sequence
from contextlib import suppress
from dataclasses import dataclass, field
from datetime import datetime
from itertools import chain
from pathlib import Path

from keeper.actions.live_choice import keep_heard
from keeper.actions.live_messages import OLDEST, Message, SortedMessages, Span, sort_out
from keeper.actions.live_topics import Topics, topics_of
from keeper.actions.logger_files import CLOCK_DRIFT
from keeper.store import readings
from keeper.store.database import Book, open_book

MOST_ASIDE_BYTES = 1_000_000
"""The file of what is kept aside grows no further; the counts go on."""

_DAYS_AT_ONCE = 100
_SHOWN_BYTES = 80
_EXAMPLES = 3
_TOPIC_LETTERS = 200


@dataclass(frozen=True, slots=True, kw_only=True)
class LiveCounts:
    """What was heard since listening began.

    thinned: readings in whose five minutes a later one came. aside: by reason, how many and the
    first of them.
    """

    heard: int = 0
    sound: int = 0
    thinned: int = 0
    last_at: datetime | None = None
    probes: int = 0
    unplaced: tuple[str, ...] = ()
    aside: tuple[tuple[str, int, tuple[str, ...]], ...] = ()


@dataclass(slots=True)
class _Aside:
    count: int = 0
    examples: list[str] = field(default_factory=list)


class LiveTaking:
    """Takes messages in. Made, used and closed in one thread.

    Raises:
        BookError: the book cannot be opened.
    """

    def __init__(self, path: Path, station: str, now: Callable[[], datetime]) -> None:
        self._book = open_book(path, station=station, known_whole=True)
        self._now = now
        self._kept_aside = aside_path(path)
        self._state: int | None = None
        self._topics = Topics(())
        self._placed: frozenset[str] = frozenset()
        self._heard = self._sound = self._thinned = 0
        self._last_at: datetime | None = None
        self._probes: Counter[str] = Counter()
        self._unplaced: dict[str, None] = {}
        self._aside: dict[str, _Aside] = {}

    @property
    def book(self) -> Book:
        return self._book

    def take(self, messages: Sequence[Message]) -> None:
        """Put the readings of *messages* into the book; when this ends they are on the disk.

        Raises:
            BookError: the book can be neither read nor written; they can be given again.
        """
        with readings.asking(self._book):
            self._look_again()
        found = sort_out(messages, self._topics, self._placed, self._span())
        days = sorted(found.days.items())
        for n in range(0, len(days), _DAYS_AT_ONCE):
            found.thinned += readings.put_in(self._book, dict(days[n : n + _DAYS_AT_ONCE]))
        self._count(messages, found)
        self._write_aside(found)

    def counts(self) -> LiveCounts:
        """What was heard so far."""
        return LiveCounts(
            heard=self._heard,
            sound=self._sound,
            thinned=self._thinned,
            last_at=self._last_at,
            probes=len(self._probes),
            unplaced=tuple(self._unplaced),
            aside=tuple(
                (why, each.count, tuple(each.examples))
                for why, each in sorted(self._aside.items(), key=lambda pair: -pair[1].count)
            ),
        )

    def close(self) -> None:
        self._book.close()

    def _look_again(self) -> None:
        """Topics and placings are read again when another connection wrote in the book."""
        state = readings.state_of_others(self._book)
        if state == self._state:
            return
        self._topics = Topics(topics_of(self._book))
        self._placed = frozenset(
            probe
            for probe, events in readings.placings(self._book).items()
            if any(event.place is not None for event in events)
        )
        for probe in self._placed & self._unplaced.keys():
            del self._unplaced[probe]
        self._state = state

    def _span(self) -> Span:
        now = self._now()
        latest, oldest = now + CLOCK_DRIFT, now - OLDEST
        return Span(first=int(oldest.timestamp()), last=int(latest.timestamp()))

    def _count(self, messages: Sequence[Message], found: SortedMessages) -> None:
        self._heard += len(messages)
        self._sound += found.sound
        self._thinned += found.thinned
        if found.probes.keys() - self._probes.keys():
            with suppress(OSError):  # then a silence is not told; the readings are in the book
                keep_heard(self._book.path, found.probes)
        self._probes += found.probes
        if found.sound:
            self._last_at = max(message.at for message in messages)
        for probe in sorted(found.unplaced)[: 100 - len(self._unplaced)]:
            self._unplaced[probe] = None
        for why, message in found.aside:
            each = self._aside.setdefault(why, _Aside())
            each.count += 1
            if len(each.examples) < _EXAMPLES:
                each.examples.append(f"{message.topic[:_SHOWN_BYTES]} {_shown(message.payload)}")

    def _write_aside(self, found: SortedMessages) -> None:
        """A disk that refuses this file does not keep the readings out."""
        if not found.aside:
            return
        try:
            size = self._kept_aside.stat().st_size if self._kept_aside.exists() else 0
            if size < MOST_ASIDE_BYTES:
                _append(self._kept_aside, found.aside, MOST_ASIDE_BYTES - size)
        except OSError:
            return


def aside_path(book: Path) -> Path:
    """The file beside *book* with the first of what was kept aside."""
    return book.with_name(f"{book.name}.kept-aside.csv")


def _append(path: Path, aside: Sequence[tuple[str, Message]], room: int) -> None:
    """One line for each message, as long as there is room."""
    with path.open("ab") as out:
        head = [] if out.tell() else [("at", "why", "topic", "message")]
        for row in chain(head, map(_row, aside)):
            line = _csv_line(row)
            room -= len(line)
            if room < 0:
                return
            out.write(line)


def _row(kept: tuple[str, Message]) -> tuple[str, ...]:
    why, message = kept
    at = message.at.isoformat(timespec="seconds")
    return at, why, repr(message.topic[:_TOPIC_LETTERS]), _shown(message.payload)


def _csv_line(row: Sequence[str]) -> bytes:
    text = io.StringIO()
    csv.writer(text, lineterminator="\n").writerow(row)
    return text.getvalue().encode("utf-8", "replace")


def _shown(payload: bytes) -> str:
    """The beginning of a message, whatever it is; no cell of it can be taken for a formula."""
    return repr(payload[:_SHOWN_BYTES].decode("utf-8", "replace"))
