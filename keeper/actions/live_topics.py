"""Which probe speaks under which topic of a message broker: the keeper decides, the book keeps it.

A topic is written as the standard has it (MQTT 5, section 4.7): levels parted by a slash, a ``+``
for any one level. Where a ``+`` stands, that level names the probe, so that one line is enough
for a room of probes.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache

import msgspec

from keeper.actions.keeping import Keeping, Written
from keeper.actions.noting import note
from keeper.husbandry.events import Setting
from keeper.husbandry.when import at_instant
from keeper.language import tr
from keeper.store import reading
from keeper.store.database import Book

NAMES_ITSELF = "+"
RIGHT = tr("room/+/air = +  or  room/b3/air = K1, temp, time  is right")

_KEY = "live topic "
_MOST_LETTERS = 200
_KNOWN_TOPICS = 20_000


@dataclass(frozen=True, slots=True, kw_only=True)
class TopicMap:
    """Messages under *topic* are readings of *probe*; ``+``: of the one named by its level.

    field: the number's name in a JSON message, levels parted by points; empty: the message is
    the number. time_field: likewise the instant; empty: a reading is of when it comes.
    """

    topic: str
    probe: str
    field: str = ""
    time_field: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Source:
    """The probe that a topic belongs to, and how its messages are read."""

    probe: str
    field: str
    time_field: str


class Topics:
    """The topics of a book, asked for each message. An exact one goes before one with a ``+``."""

    def __init__(self, maps: Iterable[TopicMap]) -> None:
        self.maps = tuple(maps)
        self._exact = {each.topic: each for each in self.maps if "+" not in each.topic}
        self._open = [(each.topic.split("/"), each) for each in self.maps if "+" in each.topic]
        self.source_of = lru_cache(_KNOWN_TOPICS)(self._source_of)

    def _source_of(self, topic: str) -> Source | None:
        exact = self._exact.get(topic)
        if exact is not None:
            return _source(exact, exact.probe)
        levels = topic.split("/")
        for wanted, each in self._open:
            if _fits(levels, wanted):
                return _source(each, levels[_last_open(wanted)])
        return None


def topics_of(book: Book) -> tuple[TopicMap, ...]:
    """The topics of the book in order of their names."""
    told = reading.settings(book)
    kept = [text for key, text in sorted(told.items()) if key.startswith(_KEY) and text]
    return tuple(msgspec.json.decode(text, type=TopicMap) for text in kept)


def topic_typed(text: str) -> TopicMap:
    """A line such as ``room/+/air = +, temp, time``: topic, probe, field, field of the time.

    >>> topic_typed("room/b3/air = K1").probe, topic_typed("room/+/air").probe
    ('K1', '+')

    Raises:
        ValueError: it is no such line, in one sentence.
    """
    topic, _, right = (part.strip() for part in text.partition("="))
    told = [part.strip() for part in right.split(",")]
    _refuse_odd_topic(topic)
    is_open = "+" in topic
    probe = told[0] or (NAMES_ITSELF if is_open else "")
    if not probe or len(told) > 3:
        raise ValueError(tr("{text!r} names no probe; {right}.", text=text, right=RIGHT))
    if is_open != (probe == NAMES_ITSELF):
        raise ValueError(
            tr(
                "{text!r}: where the topic has a +, so has the probe; {right}.",
                text=text,
                right=RIGHT,
            )
        )
    field, time_field = (*told[1:], "", "")[:2]
    return TopicMap(topic=topic, probe=probe, field=field, time_field=time_field)


def set_topic(keeping: Keeping, text: str) -> Written:
    """Keep the topic typed as *text*; the topic with nothing behind its ``=`` is forgotten.

    Raises:
        ValueError: it is no such line, in one sentence.
        BookError: the book cannot be written.
    """
    topic, sign, right = (part.strip() for part in text.partition("="))
    if sign and not right:
        return _forget(keeping, topic)
    made = topic_typed(text)
    value = msgspec.json.encode(made).decode()
    setting = Setting(happened=at_instant(keeping.now()), key=_KEY + made.topic, value=value)
    return note(keeping, "map topic", setting, where=made.topic, what=words_of(made))


def words_of(each: TopicMap) -> str:
    """How messages of a topic are read, in few words."""
    whose = tr("probe {probe}", probe=each.probe)
    if each.probe == NAMES_ITSELF:
        whose = tr("its + names the probe")
    how = tr("field {name}", name=each.field) if each.field else tr("the number alone")
    when = [tr("time {name}", name=each.time_field)] if each.time_field else []
    return ", ".join((whose, how, *when))


def _forget(keeping: Keeping, topic: str) -> Written:
    if topic not in {each.topic for each in topics_of(keeping.book)}:
        raise ValueError(
            tr("{topic!r} is no topic of this book; nothing was forgotten.", topic=topic)
        )
    setting = Setting(happened=at_instant(keeping.now()), key=_KEY + topic, value="")
    return note(keeping, "forget topic", setting, where=topic)


def _refuse_odd_topic(topic: str) -> None:
    levels = topic.split("/")
    if not topic or len(topic) > _MOST_LETTERS or "\x00" in topic or "#" in topic:
        raise ValueError(
            tr("{topic!r} is no topic to read from; {right}.", topic=topic, right=RIGHT)
        )
    if any("+" in level and level != "+" for level in levels):
        raise ValueError(
            tr("{topic!r}: a + stands for a whole level; {right}.", topic=topic, right=RIGHT)
        )


def _source(each: TopicMap, probe: str) -> Source:
    return Source(probe=probe, field=each.field, time_field=each.time_field)


def _fits(levels: list[str], wanted: list[str]) -> bool:
    if len(levels) != len(wanted) or levels[0].startswith("$"):
        return False
    return all(want in ("+", level) for level, want in zip(levels, wanted, strict=True))


def _last_open(wanted: list[str]) -> int:
    return len(wanted) - 1 - wanted[::-1].index("+")
