"""Live readings in the window: looked after by keys, and the window stays quick meanwhile."""

from __future__ import annotations

import json
from collections.abc import Callable
from contextlib import closing
from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest
from heat_room import a_room
from PySide6.QtCore import QElapsedTimer, Qt, QTimer
from PySide6.QtWidgets import QLineEdit
from test_heat import HeatDesk

from keeper.actions.keeping import Keeping
from keeper.actions.live_choice import LiveChoice, choice_for, choose
from keeper.actions.live_taking import LiveCounts
from keeper.actions.live_topics import set_topic, topics_of
from keeper.actions.station import HOME_VARIABLE
from keeper.app import build_house
from keeper.desktop.background import Background
from keeper.desktop.live_line import LiveLine
from keeper.desktop.look import Look
from keeper.husbandry.events import ProbePlaced, Zone
from keeper.husbandry.when import at_instant
from keeper.live.receiving import LiveState
from keeper.store.journal import batch
from keeper.store.readings import values_of
from tests.brokers import LoopbackBroker, needs_broker

MOST_STALL_MS = 50
PROBES, BURST, TRIES = 300, 10_000, 3


@pytest.fixture(autouse=True)
def home(tmp_path, monkeypatch):
    monkeypatch.setenv(HOME_VARIABLE, str(tmp_path / "home"))


@pytest.fixture
def keeping(tmp_path):
    with closing(a_room(tmp_path / "a.book")) as made:
        yield made


@pytest.fixture
def desk(qtbot, keeping):
    made = HeatDesk(qtbot, keeping)
    made.line = LiveLine(keeping, made.notices)
    made.line.start()
    yield made
    made.line.stop()


def told(desk: HeatDesk) -> str:
    return desk.page.sheet.text().replace("\u202f", " ").replace("\xa0", " ")


def test_what_is_missing_is_asked_for_before_anything_is_switched_on(desk):
    desk.press("M")
    assert "Live readings are switched off." in told(desk)
    assert "No address yet" in told(desk) and "No topic yet" in told(desk)

    desk.press("S")

    assert desk.page.asking.isVisible()
    assert not choice_for(desk.keeping.book.path).on


def test_address_version_and_topic_are_typed_and_shown(desk):
    desk.press("M A")
    desk.answer("ro@127.0.0.1:1")
    desk.press("V T")
    desk.answer("room/+/air = +, temp, time")

    assert "127.0.0.1, port 1, MQTT 5, user ro, no password" in told(desk)
    assert "room/+/air: its + names the probe, field temp, time time" in told(desk)
    assert [each.topic for each in topics_of(desk.keeping.book)] == ["room/+/air"]
    assert desk.written[-1].verb == "map topic"


def test_the_password_is_typed_unseen_and_does_not_come_into_the_book(desk):
    desk.press("M W")
    assert "No user is named" in desk.refused[-1]
    desk.press("A")
    desk.answer("ro@127.0.0.1:1")
    desk.press("W")
    assert desk.page.asking.field.echoMode() is QLineEdit.EchoMode.Password
    desk.answer("very secret")

    assert choice_for(desk.keeping.book.path).password == "very secret"
    assert "very secret" not in told(desk)
    assert b"very secret" not in desk.keeping.book.path.read_bytes()
    desk.press("T")
    assert desk.page.asking.field.echoMode() is QLineEdit.EchoMode.Normal


def test_a_line_that_cannot_be_reached_is_told_and_switched_off_again(desk, qtbot):
    desk.press("M A")
    desk.answer("127.0.0.1:1")
    desk.press("S")

    qtbot.waitUntil(lambda: "cannot be reached" in told(desk), timeout=5000)
    assert choice_for(desk.keeping.book.path).on
    desk.press("S")
    assert "switched off" in told(desk)
    assert not choice_for(desk.keeping.book.path).on


def test_what_vouches_for_the_broker_is_typed_and_shown(desk, tmp_path):
    own = tmp_path / "ca.crt"
    own.write_text("-----BEGIN CERTIFICATE-----\n", encoding="ascii")
    desk.press("M A")
    desk.answer("ro@broker.local")
    desk.press("W")
    desk.answer("secret")
    in_the_clear = told(desk)

    desk.press("C")
    desk.answer(str(own))
    by_file = told(desk)
    desk.press("C")
    desk.answer("none")

    assert "goes over the network as it is" in in_the_clear
    assert f"vouched for by {own}" in by_file
    assert "port 8883" in by_file and "as it is" not in by_file
    assert "port 1883" in told(desk) and "no password" in told(desk)


def test_what_is_no_certificate_is_refused_and_nothing_is_changed(desk, keeping, tmp_path):
    desk.press("M A")
    desk.answer("broker.local")
    before = choice_for(keeping.book.path)

    desk.press("C")
    desk.answer(str(tmp_path / "gone.crt"))

    (refused,) = desk.refused
    assert refused.endswith(
        "cannot be read: No such file or directory; name a file such as ca.crt."
    )
    assert choice_for(keeping.book.path) == before


def test_what_is_no_address_is_refused_in_one_sentence(desk):
    desk.press("M A")
    desk.answer("mqtt://x")

    assert "is no address of a broker" in desk.refused[-1]


def test_counts_and_what_is_kept_aside_are_told_by_name(desk):
    counts = LiveCounts(
        heard=7,
        sound=3,
        thinned=1,
        probes=2,
        last_at=datetime(2026, 11, 25, 20, 4, 5, tzinfo=UTC),
        unplaced=("K9",),
        aside=(("not a number", 3, ("room/K1 'warm'",)), ("failure value", 1, ("room/K2 '85'",))),
    )
    desk.press("M")
    desk.notices.live_told.emit(LiveState(standing="listening", told="Listening.", counts=counts))

    said = told(desk)
    assert "7 messages heard: 3 readings of 2 probes, last at 20:04:05" in said
    assert "3 × not a number (room/K1 'warm' …)" in said
    assert "Kept aside: 4 messages; the first in a.book.kept-aside.csv" in said
    desk.press("P")
    desk.answer("B1 hot")
    assert (desk.written[-1].verb, desk.written[-1].what) == ("place probe", "K9, hot surface")


def test_escape_gives_the_band_back(desk):
    desk.press("M Esc")

    assert desk.page.band.isVisible()
    assert not desk.page.sheet.isVisible()


def test_a_book_that_is_only_read_is_not_listened_for(desk, keeping):
    reader = replace(keeping, book=replace(keeping.book, writable=False))
    line = LiveLine(reader, desk.notices)
    desk.press("M A")
    desk.answer("127.0.0.1:1")
    desk.press("S")
    desk.line.stop()

    line.start()

    assert line.state.standing == "cannot"


def hang_probes(keeping: Keeping, count: int = PROBES) -> None:
    since = at_instant(keeping.now() - timedelta(days=30))
    with batch(keeping.book, verb="place", keeper="", written=keeping.now()) as writer:
        for n in range(count):
            place = ("A1", "A2", "B1")[n] if n < 3 else f"shelf {n}"
            writer.add(ProbePlaced(happened=since, probe=f"K{n}", zone=Zone.HOT, place=place))


def messages_of(keeping: Keeping, count: int) -> list[str]:
    """Each probe in turn, five minutes on with each round."""
    begin = keeping.now() - timedelta(days=1)
    return [
        json.dumps(
            [
                f"room/K{n % PROBES}/air",
                json.dumps(
                    {
                        "temp": 25 + n % 500 / 100,
                        "time": (begin + timedelta(minutes=5) * (n // PROBES)).isoformat(),
                    }
                ),
            ]
        )
        for n in range(count)
    ]


def worst_gap_ms(qtbot, until: Callable[[], bool], seconds: float) -> float:
    """The longest that the window's thread did not come round, watched every two milliseconds."""
    since, worst = QElapsedTimer(), [0.0]

    def tick() -> None:
        worst[0] = max(worst[0], since.nsecsElapsed() / 1e6)
        since.start()

    timer = QTimer(interval=2, timerType=Qt.TimerType.PreciseTimer)
    timer.timeout.connect(tick)
    since.start()
    timer.start()
    qtbot.waitUntil(until, timeout=int(1000 * seconds))
    timer.stop()
    return worst[0]


def test_a_window_that_is_closed_leaves_no_process_that_listens(qtbot, tmp_path):
    keeping = a_room(tmp_path / "b.book")
    choose(keeping.book.path, LiveChoice(host="127.0.0.1", port=1, on=True))
    house = build_house(keeping, Look())
    house.window.show()
    line = house.findChild(LiveLine)
    qtbot.waitUntil(lambda: bool(line.state and line.state.standing == "lost"), timeout=20_000)
    process = line._receiver._process

    house.window.close()

    qtbot.waitUntil(lambda: process.poll() is not None, timeout=10_000)
    assert process.returncode == 0


def test_a_book_alone_never_makes_the_program_reach_out(qtbot, tmp_path):
    keeping = a_room(tmp_path / "b.book")
    set_topic(keeping, "room/+")
    house = build_house(keeping, Look())
    qtbot.addWidget(house.window)
    line = house.findChild(LiveLine)

    qtbot.waitUntil(lambda: line.state is not None, timeout=5_000)

    assert line.state.standing == "off"
    assert line._receiver is None


@pytest.fixture
def broker(tmp_path):
    made = LoopbackBroker(tmp_path / "broker")
    made.start()
    yield made
    made.stop()


@pytest.fixture
def live_desk(qtbot, keeping, broker):
    """The page with the live readings in view, and the line that listens."""
    hang_probes(keeping)
    set_topic(keeping, "room/+/air = +, temp, time")
    made = HeatDesk(qtbot, keeping, worker=Background())
    qtbot.waitUntil(lambda: bool(made.page._board.lines), timeout=10_000)
    made.line = LiveLine(keeping, made.notices)
    made.press("M")
    made.notices.live_asked.emit(LiveChoice(host="127.0.0.1", port=broker.port, on=True))
    qtbot.waitUntil(lambda: made.line.state.standing == "listening", timeout=20_000)
    yield made
    made.line.stop()
    made.page.close_down()


@pytest.mark.long
@needs_broker
def test_the_window_never_stalls_while_a_room_of_probes_and_a_burst_come_in(
    qtbot, live_desk, broker
):
    """A campaign, for a machine that does nothing else: beside other work it stalls by itself."""
    keeping, line = live_desk.keeping, live_desk.line
    lines = messages_of(keeping, PROBES + BURST)
    worst = []
    for begin, end in [(0, PROBES), *[(PROBES, len(lines))] * TRIES]:
        wanted = line.state.counts.heard + end - begin
        publisher = broker.publish_aside(lines[begin:end])
        worst.append(
            worst_gap_ms(qtbot, lambda n=wanted: line.state.counts.heard >= n, seconds=120)
        )
        publisher.wait(30)
        if end > PROBES and worst[-1] <= MOST_STALL_MS:
            break

    since = keeping.now() - timedelta(days=2)
    stored = [list(values_of(keeping.book, f"K{n}", since, keeping.now())) for n in range(PROBES)]
    assert sum(map(len, stored)) == len(lines)
    assert worst[-1] <= MOST_STALL_MS, worst


@needs_broker
def test_readings_come_to_the_board_by_themselves(qtbot, live_desk, broker):
    live_desk.page.live._soon.setInterval(100)
    live_desk.line._soon.setInterval(200)
    came = []
    live_desk.notices.readings_came.connect(lambda: came.append(True))

    broker.publish(messages_of(live_desk.keeping, PROBES))

    def shown() -> bool:
        lines = {line.place: line for line in live_desk.page._board.lines}
        return "A1" in lines and lines["A1"].cells[0].temp_c == 25.0

    qtbot.waitUntil(shown, timeout=20_000)
    qtbot.waitUntil(lambda: bool(came), timeout=5_000)


@needs_broker
def test_a_topic_typed_while_it_listens_is_heard(qtbot, live_desk, broker):
    live_desk.press("T")
    live_desk.answer("plain/+")
    sent = json.dumps(["plain/K1", "31.5"])

    def heard() -> bool:
        broker.publish([sent])
        return live_desk.line.state.counts.sound > 0

    qtbot.waitUntil(heard, timeout=30_000)


@needs_broker
def test_when_the_process_that_listens_dies_that_is_told(qtbot, live_desk):
    live_desk.line._receiver._process.kill()

    qtbot.waitUntil(lambda: live_desk.line.state.standing == "cannot", timeout=10_000)
    assert "S twice switches it on again" in live_desk.line.state.told
