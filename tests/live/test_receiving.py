"""Readings over a real broker on loopback: none is lost, whatever stops and starts again."""

from __future__ import annotations

import json
import shutil
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from datetime import UTC, datetime, timedelta
from pathlib import Path
from time import monotonic, sleep

import pytest

from keeper import clock
from keeper.actions.keeping import Keeping, new_keeping
from keeper.actions.live_choice import LiveChoice
from keeper.actions.live_topics import set_topic, topics_of
from keeper.actions.station import HOME_VARIABLE
from keeper.husbandry.events import ProbePlaced, Zone
from keeper.husbandry.when import at_instant
from keeper.live.receiving import LiveState, Receiver
from keeper.store.journal import batch
from keeper.store.readings import values_of
from tests.brokers import LoopbackBroker, needs_broker

pytestmark = needs_broker

PROBES = 300
SLOT = timedelta(minutes=5)


def utc_now() -> datetime:
    return clock.now().astimezone(UTC)


@pytest.fixture(autouse=True)
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv(HOME_VARIABLE, str(tmp_path / "home"))


@pytest.fixture
def keeping(tmp_path: Path) -> Iterator[Keeping]:
    with closing(new_keeping(tmp_path / "a.book", station="s", now=utc_now)) as made:
        since = at_instant(utc_now() - timedelta(days=30))
        with batch(made.book, verb="place", keeper="", written=utc_now()) as writer:
            for n in range(PROBES):
                placed = ProbePlaced(happened=since, probe=f"K{n}", zone=Zone.HOT, place=f"B{n}")
                writer.add(placed)
        set_topic(made, "room/+/air = +, temp, time")
        set_topic(made, "plain/+")
        yield made


@pytest.fixture
def broker(tmp_path: Path) -> Iterator[LoopbackBroker]:
    made = LoopbackBroker(tmp_path / "broker")
    made.start()
    yield made
    made.stop()


class Heard:
    """States as they are told."""

    def __init__(self) -> None:
        self.states: list[LiveState] = [LiveState()]

    @property
    def last(self) -> LiveState:
        return self.states[-1]

    def wait(self, holds: Callable[[LiveState], bool], seconds: float = 60) -> None:
        end = monotonic() + seconds
        while not holds(self.last):
            assert monotonic() < end, f"after {seconds} s: {self.last}"
            sleep(0.02)


def receiver_of(keeping: Keeping, choice: LiveChoice, heard: Heard) -> Receiver:
    book = keeping.book
    return Receiver(book.path, book.station, keeping.now, choice, heard.states.append)


@contextmanager
def listening(keeping: Keeping, broker: LoopbackBroker, **chosen: object) -> Iterator[Heard]:
    heard = Heard()
    choice = LiveChoice(host="127.0.0.1", port=broker.port, on=True, **chosen)
    receiver = receiver_of(keeping, choice, heard)
    receiver.start([each.topic for each in topics_of(keeping.book)])
    try:
        heard.wait(lambda state: state.standing == "listening")
        yield heard
    finally:
        receiver.stop(5)


def readings_of(count: int, begin: datetime) -> tuple[list[str], dict[str, list[int]]]:
    """Messages of all probes slot by slot, and what must be in the book then."""
    lines, wanted = [], {f"K{n}": [] for n in range(PROBES)}
    for n in range(count):
        at, value = begin + (n // PROBES) * SLOT, 2000 + (7 * n) % 1000
        said = json.dumps({"temp": value / 100, "time": at.isoformat()})
        lines.append(json.dumps([f"room/K{n % PROBES}/air", said]))
        wanted[f"K{n % PROBES}"].append(value)
    return lines, wanted


def stored(keeping: Keeping) -> dict[str, list[int]]:
    begin, end = utc_now() - timedelta(days=20), utc_now() + timedelta(days=1)
    return {
        f"K{n}": [value for _, value in values_of(keeping.book, f"K{n}", begin, end)]
        for n in range(PROBES)
    }


@pytest.mark.parametrize("protocol", ["3.1.1", "5"])
def test_a_burst_of_ten_thousand_after_a_room_of_probes_loses_none(keeping, broker, protocol):
    lines, wanted = readings_of(PROBES + 10_000, utc_now() - timedelta(days=10))

    with listening(keeping, broker, protocol=protocol) as heard:
        broker.publish(lines[:PROBES])
        broker.publish(lines[PROBES:])
        heard.wait(lambda state: state.counts.sound >= len(lines))

    assert stored(keeping) == wanted


@pytest.mark.parametrize("protocol", ["3.1.1", "5"])
def test_a_broker_stopped_and_started_again_is_found_and_none_is_lost(keeping, broker, protocol):
    lines, wanted = readings_of(3 * PROBES, utc_now() - timedelta(days=10))

    with listening(keeping, broker, protocol=protocol) as heard:
        broker.publish(lines[:PROBES])
        broker.stop()
        heard.wait(lambda state: state.standing == "lost")
        sleep(1.5)
        broker.start()
        broker.publish(lines[PROBES:])
        heard.wait(lambda state: state.standing == "listening")
        heard.wait(lambda state: state.counts.sound >= len(lines))

    assert stored(keeping) == wanted


def test_what_is_published_while_the_window_is_closed_comes_when_it_is_open_again(keeping, broker):
    lines, wanted = readings_of(PROBES, utc_now() - timedelta(days=10))
    with listening(keeping, broker):
        pass

    broker.publish(lines)
    broker.publish([json.dumps(["plain/K1", "25"])])
    with listening(keeping, broker) as heard:
        heard.wait(lambda state: state.counts.heard >= len(lines) + 1)

    assert stored(keeping) == wanted
    assert [each[:2] for each in heard.last.counts.aside] == [
        ("kept by the broker, its time not known", 1)
    ]


def test_a_message_kept_for_newcomers_is_not_taken_for_a_reading_of_now(keeping, broker):
    retained = (
        "import sys, paho.mqtt.publish as p;"
        "p.single('plain/K1', '25', qos=1, retain=True, port=int(sys.argv[1]))"
    )
    subprocess.run([sys.executable, "-c", retained, str(broker.port)], check=True)

    with listening(keeping, broker) as heard:
        heard.wait(lambda state: state.counts.heard >= 1)

    assert heard.last.counts.aside[0][0] == "kept by the broker, its time not known"


def test_a_number_alone_is_a_reading_of_the_moment_it_comes(keeping, broker):
    with listening(keeping, broker) as heard:
        broker.publish([json.dumps(["plain/K1", "25.25"])])
        heard.wait(lambda state: state.counts.sound >= 1)

    end = utc_now()
    told = list(values_of(keeping.book, "K1", end - timedelta(minutes=10), end))
    assert [value for _, value in told] == [2525]


def test_a_book_that_is_held_when_listening_begins_is_opened_when_it_is_free(keeping, broker):
    lines, wanted = readings_of(PROBES, utc_now() - timedelta(days=10))
    keeping.book.connection.execute("BEGIN EXCLUSIVE")
    with listening(keeping, broker) as heard:
        broker.publish(lines)
        heard.wait(lambda state: "cannot be opened" in state.trouble)
        keeping.book.connection.execute("ROLLBACK")
        heard.wait(lambda state: state.counts.sound >= PROBES)

    assert stored(keeping) == wanted


def test_nothing_is_acknowledged_that_is_not_in_the_book(keeping, broker):
    lines, wanted = readings_of(PROBES, utc_now() - timedelta(days=10))
    with listening(keeping, broker) as heard:
        keeping.book.connection.execute("BEGIN EXCLUSIVE")
        broker.publish(lines)
        heard.wait(lambda state: "Tried again" in state.trouble)
    keeping.book.connection.execute("ROLLBACK")
    assert stored(keeping) == {f"K{n}": [] for n in range(PROBES)}

    with listening(keeping, broker) as heard:
        heard.wait(lambda state: state.counts.sound >= PROBES)

    assert stored(keeping) == wanted


def test_a_wrong_password_is_told_and_a_right_one_is_let_in(keeping, tmp_path):
    maker = shutil.which("mosquitto_passwd")
    if maker is None:
        pytest.skip("mosquitto_passwd is not installed")
    passwords = tmp_path / "passwords"
    subprocess.run([maker, "-b", "-c", str(passwords), "ro", "right"], check=True)
    broker = LoopbackBroker(tmp_path / "broker", passwords=passwords)
    broker.start()
    try:
        heard = Heard()
        wrong = LiveChoice(host="127.0.0.1", port=broker.port, user="ro", password="wrong", on=True)
        receiver = receiver_of(keeping, wrong, heard)
        receiver.start(["plain/+"])
        heard.wait(lambda state: state.standing == "refused")
        receiver.stop(5)
        with listening(keeping, broker, user="ro", password="right"):
            pass
    finally:
        broker.stop()

    assert "refuses" in heard.last.told


def test_waits_between_attempts_grow(keeping, broker):
    broker.stop()
    heard, begun = Heard(), monotonic()
    choice = LiveChoice(host="127.0.0.1", port=broker.port, on=True)
    receiver = receiver_of(keeping, choice, heard)
    receiver.start(["plain/+"])
    times = []
    while len(times) < 3:
        told = sum(state.standing == "lost" for state in heard.states)
        if told > len(times):
            times.append(monotonic() - begun)
        sleep(0.01)
        assert monotonic() - begun < 20
    receiver.stop(5)

    assert 0.8 < times[1] - times[0] < times[2] - times[1] - 0.5
    assert "cannot be reached" in heard.last.told


def test_stopping_does_not_keep_the_window_waiting(keeping, broker):
    with listening(keeping, broker):
        begun = monotonic()
    assert monotonic() - begun < 3


def test_where_the_part_is_missing_that_is_told_and_nothing_fails(keeping, monkeypatch):
    monkeypatch.setitem(sys.modules, "keeper.live.broker", None)
    heard = Heard()

    receiver = receiver_of(keeping, LiveChoice(host="127.0.0.1", on=True), heard)
    receiver.start(["plain/+"])
    receiver.stop()

    assert heard.last.standing == "cannot"
    assert "pip install 'keeper[mqtt]'" in heard.last.told


@pytest.mark.long
def test_two_hundred_thousand_messages_of_junk_leave_the_readings_whole(keeping, broker):
    junk = [json.dumps([f"room/J{n % 300}/air", "warm" * (n % 7)]) for n in range(200_000)]
    lines, wanted = readings_of(PROBES, utc_now() - timedelta(days=10))

    with listening(keeping, broker) as heard:
        publisher = broker.publish_aside(junk, qos=0)
        broker.publish(lines)
        publisher.wait(300)
        heard.wait(lambda state: state.counts.heard >= len(junk) + len(lines), seconds=300)

    assert stored(keeping) == wanted
    assert [each[:2] for each in heard.last.counts.aside] == [("not a number", len(junk))]
