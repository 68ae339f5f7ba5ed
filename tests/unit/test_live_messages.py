"""Messages of live probes: what is no reading is named and kept aside, and the rest goes in."""

from collections import Counter
from contextlib import closing
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from keeper.actions import live_taking
from keeper.actions.keeping import new_keeping
from keeper.actions.live_messages import Message, Span, sort_out
from keeper.actions.live_taking import LiveTaking, aside_path
from keeper.actions.live_topics import TopicMap, Topics, set_topic, topic_typed, topics_of
from keeper.actions.logger_files import place_probe
from keeper.actions.station import HOME_VARIABLE
from keeper.husbandry.events import Zone
from keeper.store.readings import values_of

NOW = datetime(2026, 11, 25, 20, tzinfo=UTC)
SPAN = Span(first=int((NOW - timedelta(days=366)).timestamp()), last=int(NOW.timestamp()) + 600)
TOPICS = Topics(
    [
        TopicMap(topic="room/+/air", probe="+"),
        TopicMap(topic="room/b3/air", probe="K3"),
        TopicMap(topic="json/+", probe="+", field="temp", time_field="time"),
        TopicMap(topic="deep/+", probe="+", field="air.temp"),
    ]
)
PLACED = {"K1", "K3"}


def told(topic: str, payload: str | bytes, **given_: object) -> Message:
    raw = payload if isinstance(payload, bytes) else payload.encode()
    return Message(topic, raw, NOW, **given_)


def reading(topic: str, payload: str | bytes, **given_: object) -> tuple[str, float] | str:
    """Probe and degrees, or why the message is kept aside."""
    found = sort_out([told(topic, payload, **given_)], TOPICS, PLACED, SPAN)
    if found.aside:
        assert not found.days
        return found.aside[0][0]
    ((probe, _),) = found.days
    ((value,),) = [slots.values() for slots in found.days.values()]
    return probe, value / 100


@pytest.mark.parametrize(
    ("topic", "payload", "degrees"),
    [
        ("room/K1/air", "25.5", ("K1", 25.5)),
        ("room/K1/air", " 25,55 °C\n", ("K1", 25.55)),
        ("room/K1/air", "-1", ("K1", -1.0)),
        ("room/b3/air", "30", ("K3", 30.0)),
        ("json/K1", '{"temp": 25.5, "time": "2026-11-25T19:00:00+00:00"}', ("K1", 25.5)),
        ("json/K1", '{"temp": "25.5", "time": 1795633200}', ("K1", 25.5)),
        ("json/K1", '{"time": 1795633200000, "temp": 25.5}', ("K1", 25.5)),
        ("deep/K1", '{"air": {"temp": 25.5}}', ("K1", 25.5)),
        ("deep/K1", '{"air.temp": 25.5}', ("K1", 25.5)),
    ],
)
def test_a_number_alone_or_in_a_named_field_is_a_reading(topic, payload, degrees):
    assert reading(topic, payload) == degrees


@pytest.mark.parametrize(
    ("topic", "payload", "why"),
    [
        ("room/K1/air", "warm", "not a number"),
        ("room/K1/air", "", "not a number"),
        ("room/K1/air", "nan", "not a number"),
        ("room/K1/air", "1_0", "not a number"),
        ("room/K1/air", b"\xff\xfe2", "not a number"),
        ("json/K1", "25.5", "field missing"),
        ("json/K1", '{"temp": true, "time": 1795633200}', "not a number"),
        ("json/K1", '{"temp": null, "time": 1795633200}', "not a number"),
        ("json/K1", '{"temp": 25.5', "not a number"),
        ("deep/K1", "[" * 4000, "not a number"),
        ("json/K1", '{"humid": 40, "time": 1795633200}', "field missing"),
        ("json/K1", '{"temp": 25.5, "time": "yesterday"}', "time not readable"),
        ("json/K1", '{"temp": 25.5, "time": "2026-11-25T19:00:00"}', "time not readable"),
        ("json/K1", '{"temp": 25.5, "time": 1e300}', "time not readable"),
        ("json/K1", '{"temp": 25.5, "time": null}', "time not readable"),
        ("room/K1/air", "-127", "failure value"),
        ("room/K1/air", "85.00", "failure value"),
        ("room/K1/air", "812", "no temperature of a room"),
        ("json/K1", '{"temp": 1e99, "time": 1795633200}', "no temperature of a room"),
        ("json/K1", '{"temp": 25, "time": "2026-11-25T20:11:00Z"}', "reading from the future"),
        ("json/K1", '{"temp": 25, "time": 12}', "reading older than a year"),
        ("room/K9/air", "25", "probe never placed"),
        ("other/K1", "25", "topic of no probe"),
        ("room/K1/air/x", "25", "topic of no probe"),
        ("$SYS/K1/air", "25", "topic of no probe"),
        ("room/K1/air", "9" * 5000, "message too long"),
    ],
)
def test_what_is_no_reading_is_kept_aside_by_its_name(topic, payload, why):
    assert reading(topic, payload) == why


def test_a_message_that_the_broker_kept_has_no_time_but_its_own():
    own_time = '{"temp": 25.5, "time": "2026-11-25T19:00:00Z"}'

    assert reading("room/K1/air", "25", from_before=True) == (
        "kept by the broker, its time not known"
    )
    assert reading("json/K1", own_time, from_before=True) == ("K1", 25.5)


@given(st.text(max_size=40), st.binary(max_size=60))
@settings(deadline=None, max_examples=50)
def test_no_message_whatever_stops_the_others(topic, payload):
    other = told("room/K1/air", "25")

    found = sort_out([told(topic, payload), told("json/K1", payload), other], TOPICS, PLACED, SPAN)

    assert found.probes["K1"] >= 1


@pytest.mark.parametrize(
    ("typed", "made"),
    [
        ("room/+/air", TopicMap(topic="room/+/air", probe="+")),
        (" room/b3 = K1 ", TopicMap(topic="room/b3", probe="K1")),
        ("a/+ = +, t", TopicMap(topic="a/+", probe="+", field="t")),
        ("a/+/b = +,,at", TopicMap(topic="a/+/b", probe="+", time_field="at")),
        ("a = K1, t.v, at", TopicMap(topic="a", probe="K1", field="t.v", time_field="at")),
    ],
)
def test_a_topic_is_typed_in_one_line(typed, made):
    assert topic_typed(typed) == made


@pytest.mark.parametrize(
    "typed",
    ["", "=", "room/b3", "room/# = K1", "room/b+/x = K1", "a/+ = K1", "a = +", "a = K1,b,c,d"],
)
def test_a_line_that_is_no_topic_says_what_would_be_right(typed):
    with pytest.raises(ValueError, match="is right"):
        topic_typed(typed)


@pytest.fixture(autouse=True)
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch):
    monkeypatch.setenv(HOME_VARIABLE, str(tmp_path / "home"))


@pytest.fixture
def keeping(tmp_path: Path):
    with closing(new_keeping(tmp_path / "a.book", station="s", now=lambda: NOW)) as made:
        yield made


def test_topics_are_kept_in_the_book_and_can_be_forgotten(keeping):
    set_topic(keeping, "b/+ = +, temp")
    set_topic(keeping, "a/x = K1")
    set_topic(keeping, "a/x = K2")

    assert [(each.topic, each.probe) for each in topics_of(keeping.book)] == [
        ("a/x", "K2"),
        ("b/+", "+"),
    ]
    set_topic(keeping, "a/x =")
    assert [each.topic for each in topics_of(keeping.book)] == ["b/+"]
    with pytest.raises(ValueError, match="no topic of this book"):
        set_topic(keeping, "a/x =")


def test_a_probe_placed_and_a_topic_typed_meanwhile_are_heard_at_once(keeping):
    with closing(LiveTaking(keeping.book.path, "s", keeping.now)) as taking:
        taking.take([told("room/K1/air", "25")])
        set_topic(keeping, "room/+/air")
        taking.take([told("room/K1/air", "25")])
        assert taking.counts().unplaced == ("K1",)
        place_probe(keeping, "K1", "B3", Zone.HOT, NOW - timedelta(days=1))
        taking.take([told("room/K1/air", "25")])

        counts = taking.counts()
    assert {why: count for why, count, _ in counts.aside} == {
        "topic of no probe": 1,
        "probe never placed": 1,
    }
    assert (counts.heard, counts.sound, counts.unplaced) == (3, 1, ())
    assert list(values_of(keeping.book, "K1", NOW - timedelta(days=1), NOW)) == [
        (int(NOW.timestamp()), 2500)
    ]


def test_of_two_readings_in_five_minutes_the_later_stays_and_that_is_counted(keeping):
    set_topic(keeping, "room/+/air")
    place_probe(keeping, "K1", "B3", Zone.HOT, NOW - timedelta(days=1))
    with closing(LiveTaking(keeping.book.path, "s", keeping.now)) as taking:
        taking.take([told("room/K1/air", "25"), told("room/K1/air", "26")])
        taking.take([told("room/K1/air", "27")])

        assert (taking.counts().sound, taking.counts().thinned) == (3, 2)
    assert [v for _, v in values_of(keeping.book, "K1", NOW, NOW)] == [2700]


def test_two_hundred_thousand_messages_of_junk_are_counted_and_the_file_of_them_stays_small(
    keeping,
):
    set_topic(keeping, "room/+/air")
    place_probe(keeping, "K1", "B3", Zone.HOT, NOW - timedelta(days=1))
    kinds = ("warm", "-127", "812", '{"a":1}', "x" * 5000)
    junk = [told(f"room/J{n % 300}/air", kinds[n % 5]) for n in range(200_000)]
    with closing(LiveTaking(keeping.book.path, "s", keeping.now)) as taking:
        for n in range(0, len(junk), 2000):
            taking.take([*junk[n : n + 2000], told("room/K1/air", "25")])
        counts = taking.counts()

    assert Counter({why: count for why, count, _ in counts.aside}) == {
        "not a number": 80_000,
        "failure value": 40_000,
        "no temperature of a room": 40_000,
        "message too long": 40_000,
    }
    assert counts.sound == 100
    assert all(len(examples) == 3 for _, _, examples in counts.aside)
    assert 500_000 < aside_path(keeping.book.path).stat().st_size <= live_taking.MOST_ASIDE_BYTES


def test_the_file_of_what_is_kept_aside_says_when_why_and_what(keeping):
    set_topic(keeping, "room/+/air")
    with closing(LiveTaking(keeping.book.path, "s", keeping.now)) as taking:
        taking.take([told("room/=2+2/air", "=cmd"), told("room/K1/air", "25")])

    lines = aside_path(keeping.book.path).read_text(encoding="utf-8").splitlines()
    assert lines == [
        "at,why,topic,message",
        "2026-11-25T20:00:00+00:00,not a number,'room/=2+2/air','=cmd'",
        "2026-11-25T20:00:00+00:00,probe never placed,'room/K1/air','25'",
    ]
