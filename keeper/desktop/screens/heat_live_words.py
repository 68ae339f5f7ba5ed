"""What the heat page says of live readings, line by line."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from pathlib import Path

from keeper.actions.live_choice import LiveChoice
from keeper.actions.live_taking import LiveCounts, aside_path
from keeper.actions.live_topics import TopicMap, words_of
from keeper.language import tr
from keeper.live.receiving import LiveState
from keeper.reports.figures import counted, number

MESSAGES = counted("message", "messages")
READINGS = counted("reading", "readings")
PROBES = counted("probe", "probes")
_SHOWN_PROBES = 8
_SHOWN_LETTERS = 36

NO_ADDRESS = "No address yet: A asks for it, such as 192.168.1.20 or ro@broker.local:1883."
NO_TOPIC = "No topic yet: T asks for it, such as room/+/air or room/b3/air = K1, temp, time."
IN_THE_CLEAR = tr(
    "The password goes over the network as it is: only in a network of your own, or C for TLS."
)


def live_lines(
    state: LiveState, choice: LiveChoice, topics: Sequence[TopicMap], book: Path
) -> Iterator[tuple[str, bool]]:
    """How live readings stand, line by line; True: heavy."""
    yield state.told, True
    if state.trouble:
        yield state.trouble, True
    yield from _choice_lines(choice)
    yield from ((f"{each.topic}: {words_of(each)}", False) for each in topics)
    if not topics:
        yield NO_TOPIC, True
    yield from _counts_lines(state.counts, book)


def _choice_lines(choice: LiveChoice) -> Iterator[tuple[str, bool]]:
    if not choice.host:
        yield NO_ADDRESS, True
        return
    word = "a password" if choice.password else "no password"
    who = f", user {choice.user}, {word}" if choice.user else ""
    yield f"{choice.host}, port {choice.port}, MQTT {choice.protocol}{who}", False
    if choice.tls:
        by = choice.ca_file or tr("this system")
        yield tr("TLS; the broker's certificate is vouched for by {by}", by=by), False
    elif choice.user and choice.password:
        yield IN_THE_CLEAR, False


def _counts_lines(counts: LiveCounts, book: Path) -> Iterator[tuple[str, bool]]:
    if not counts.heard:
        return
    last = f", last at {counts.last_at:%H:%M:%S}" if counts.last_at else ""
    sound = f"{READINGS(counts.sound)} of {PROBES(counts.probes)}"
    yield f"{MESSAGES(counts.heard)} heard: {sound}{last}", True
    if counts.thinned:
        yield f"{READINGS(counts.thinned)} gave way to a later one of their five minutes", False
    if counts.unplaced:
        names = ", ".join(counts.unplaced[:_SHOWN_PROBES])
        more = " …" if len(counts.unplaced) > _SHOWN_PROBES else ""
        yield f"Never placed: {names}{more}; P places the first", True
    if counts.aside:
        total = sum(count for _, count, _ in counts.aside)
        yield f"Kept aside: {MESSAGES(total)}; the first in {aside_path(book).name}", True
        yield from ((_aside_words(*each), False) for each in counts.aside)


def _aside_words(why: str, count: int, examples: Sequence[str]) -> str:
    first, more = examples[0][:_SHOWN_LETTERS], " …" if count > 1 else ""
    cut = "…" if len(examples[0]) > _SHOWN_LETTERS else more
    return f"   {number(count)} × {why} ({first}{cut})"
