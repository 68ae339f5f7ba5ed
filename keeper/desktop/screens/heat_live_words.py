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
from keeper.reports.words import word_of

MESSAGES = counted("message", "messages")
READINGS = counted("reading", "readings")
PROBES = counted("probe", "probes")
_SHOWN_PROBES = 8
_SHOWN_LETTERS = 36

NO_ADDRESS = tr("No address yet: A asks for it, such as 192.168.1.20 or ro@broker.local:1883.")
NO_TOPIC = tr("No topic yet: T asks for it, such as room/+/air or room/b3/air = K1, temp, time.")
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
    yield ", ".join(_broker_parts(choice)), False
    if choice.tls:
        by = choice.ca_file or tr("this system")
        yield tr("TLS; the broker’s certificate is vouched for by {by}", by=by), False
    elif choice.user and choice.password:
        yield IN_THE_CLEAR, False


def _broker_parts(choice: LiveChoice) -> Iterator[str]:
    yield choice.host
    yield tr("port {port}", port=choice.port)
    yield f"MQTT {choice.protocol}"
    if choice.user:
        yield tr("user {user}", user=choice.user)
        yield tr("a password") if choice.password else tr("no password")


def _counts_lines(counts: LiveCounts, book: Path) -> Iterator[tuple[str, bool]]:
    if not counts.heard:
        return
    yield _heard(counts), True
    if counts.thinned:
        count = READINGS(counts.thinned)
        yield tr("{readings} gave way to a later one of their five minutes", readings=count), False
    if counts.unplaced:
        names = ", ".join(counts.unplaced[:_SHOWN_PROBES])
        more = " …" if len(counts.unplaced) > _SHOWN_PROBES else ""
        yield tr("Never placed: {names}; P places the first", names=f"{names}{more}"), True
    if counts.aside:
        total = sum(count for _, count, _ in counts.aside)
        told = {"messages": MESSAGES(total), "file": aside_path(book).name}
        yield tr("Kept aside: {messages}; the first in {file}", **told), True
        yield from ((_aside_words(*each), False) for each in counts.aside)


def _heard(counts: LiveCounts) -> str:
    told = {"messages": MESSAGES(counts.heard), "readings": READINGS(counts.sound)}
    told["probes"] = PROBES(counts.probes)
    if counts.last_at is None:
        return tr("{messages} heard: {readings} of {probes}", **told)
    told["time"] = f"{counts.last_at:%H:%M:%S}"
    return tr("{messages} heard: {readings} of {probes}, last at {time}", **told)


def _aside_words(why: str, count: int, examples: Sequence[str]) -> str:
    first, more = examples[0][:_SHOWN_LETTERS], " …" if count > 1 else ""
    cut = "…" if len(examples[0]) > _SHOWN_LETTERS else more
    return f"   {number(count)} × {word_of('set aside', why)} ({first}{cut})"
