"""Messages of live probes sorted out: what goes into the book, and what is kept aside and why.

The reasons are those of a logger's file where they are the same. A message that cannot be
dated is no reading: one that the broker kept from before says nothing of when it was measured.
"""

import re
from collections import Counter
from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import Any

import msgspec

from keeper.actions.live_topics import Source, Topics
from keeper.actions.logger_files import HIGHEST_C, LOWEST_C
from keeper.rules.sensors import FAILURE_VALUES_C
from keeper.store.readings import DAY_SECONDS, SLOT_SECONDS

UNPLACED = "probe never placed"
UNMAPPED = "topic of no probe"
NO_NUMBER = "not a number"
NO_FIELD = "field missing"
FAILURE = "failure value"
NO_ROOM = "no temperature of a room"
FUTURE = "reading from the future"
OLD = "reading older than a year"
NO_TIME = "time not readable"
TOO_LONG = "message too long"
KEPT_BY_BROKER = "kept by the broker, its time not known"

OLDEST = timedelta(days=366)
"""A stamp further back is of a clock that was never set: common practice, no source."""

_MOST_BYTES = 4096
_MILLISECONDS_FROM = 10_000_000_000
_NO_STAMP_FROM = 10_000_000_000_000
_NUMBER = re.compile(r"\s*([+-]?\d{1,6}(?:[.,]\d{1,9})?)\s*(?:°?\s*C)?\s*")


@dataclass(frozen=True, slots=True)
class Message:
    """One message as it came. at: when, with the offset of the place.

    from_before: the broker held it, so that *at* is not when it was measured.
    """

    topic: str
    payload: bytes
    at: datetime
    from_before: bool = False


@dataclass(slots=True)
class SortedMessages:
    """What a number of messages say.

    days: by probe and day of UTC the slots of the day in hundredths of a degree. thinned:
    readings that share five minutes with a later one among them.
    """

    days: dict[tuple[str, int], dict[int, int]] = field(default_factory=dict)
    sound: int = 0
    thinned: int = 0
    probes: Counter[str] = field(default_factory=Counter)
    unplaced: set[str] = field(default_factory=set)
    aside: list[tuple[str, Message]] = field(default_factory=list)


@dataclass(frozen=True, slots=True, kw_only=True)
class Span:
    """The first and the last second of UTC that a reading can be of."""

    first: int
    last: int


class _Aside(Exception):
    """Why a message stays out."""


def sort_out(
    messages: Iterable[Message], topics: Topics, placed: Collection[str], span: Span
) -> SortedMessages:
    """The readings of placed probes in *messages*; of one slot the last to come is kept."""
    found = SortedMessages()
    for message in messages:
        try:
            source = _source(message, topics)
            second, hundredths = _reading(message, source, span)
            if source.probe not in placed:
                found.unplaced.add(source.probe)
                raise _Aside(UNPLACED)
        except _Aside as why:
            found.aside.append((str(why), message))
            continue
        _put(found, source.probe, second, hundredths)
    return found


def _put(found: SortedMessages, probe: str, second: int, hundredths: int) -> None:
    day, rest = divmod(second, DAY_SECONDS)
    slots = found.days.setdefault((probe, day), {})
    found.thinned += rest // SLOT_SECONDS in slots
    slots[rest // SLOT_SECONDS] = hundredths
    found.sound += 1
    found.probes[probe] += 1


def _source(message: Message, topics: Topics) -> Source:
    if len(message.payload) > _MOST_BYTES:
        raise _Aside(TOO_LONG)
    source: Source | None = topics.source_of(message.topic)
    if source is None:
        raise _Aside(UNMAPPED)
    return source


def _reading(message: Message, source: Source, span: Span) -> tuple[int, int]:
    """The second of UTC and hundredths of a degree."""
    said = _json(message.payload) if source.field or source.time_field else None
    told = _member(said, source.field) if source.field else _plain(message.payload)
    hundredths = _hundredths(told)
    if source.time_field:
        second = _second(_member(said, source.time_field))
    elif message.from_before:
        raise _Aside(KEPT_BY_BROKER)
    else:
        second = int(message.at.timestamp())
    if second > span.last:
        raise _Aside(FUTURE)
    if second < span.first:
        raise _Aside(OLD)
    return second, hundredths


def _plain(payload: bytes) -> str:
    try:
        return payload.decode("utf-8")
    except UnicodeDecodeError:
        raise _Aside(NO_NUMBER) from None


def _json(payload: bytes) -> Any:
    try:
        return msgspec.json.decode(payload)
    except (msgspec.DecodeError, UnicodeDecodeError, RecursionError):
        raise _Aside(NO_NUMBER) from None


def _member(said: Any, name: str) -> Any:
    """The member *name* of a JSON message; a point goes a level down."""
    if isinstance(said, Mapping) and name in said:
        return said[name]
    for part in name.split("."):
        if not isinstance(said, Mapping) or part not in said:
            raise _Aside(NO_FIELD)
        said = said[part]
    return said


def _hundredths(told: Any) -> int:
    if isinstance(told, bool) or not isinstance(told, int | float | str):
        raise _Aside(NO_NUMBER)
    if isinstance(told, str):
        number = _NUMBER.fullmatch(told)
        if number is None:
            raise _Aside(NO_NUMBER)
        told = float(number[1].replace(",", "."))
    if told in FAILURE_VALUES_C:
        raise _Aside(FAILURE)
    if not LOWEST_C <= told <= HIGHEST_C:
        raise _Aside(NO_ROOM)
    return round(100 * float(told))


def _second(told: Any) -> int:
    """Seconds or milliseconds since 1970, or a stamp of ISO 8601 with its zone."""
    if isinstance(told, int | float) and not isinstance(told, bool):
        if not abs(told) < _NO_STAMP_FROM:
            raise _Aside(NO_TIME)
        return int(told / 1000 if abs(told) >= _MILLISECONDS_FROM else told)
    try:
        at = datetime.fromisoformat(told)
    except (TypeError, ValueError):
        raise _Aside(NO_TIME) from None
    if at.utcoffset() is None:
        raise _Aside(NO_TIME)
    return int(at.timestamp())
