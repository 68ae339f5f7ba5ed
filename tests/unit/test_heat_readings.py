"""Packed readings speak on the watch as typed ones do: limits with durations, faults, meals."""

from collections.abc import Iterator
from contextlib import closing
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from keeper.actions.heat_readings import house_heat, readings_for_watch
from keeper.actions.keeping import Keeping, animals_on, new_keeping
from keeper.actions.live_choice import LiveChoice, choose
from keeper.actions.live_messages import Message
from keeper.actions.live_taking import LiveTaking
from keeper.actions.live_topics import set_topic
from keeper.actions.logger_files import place_probe
from keeper.actions.noting import note
from keeper.actions.recording import Newcomer, receive
from keeper.actions.station import HOME_VARIABLE
from keeper.actions.watching import watch_lines
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import Evidence, Heat, Offer, Result, Zone
from keeper.husbandry.when import at_instant, on_day
from keeper.store.readings import (
    DAY_SECONDS,
    SLOT_SECONDS,
    SLOTS,
    PackedDay,
    packed,
    put_in,
    rolled_up,
)
from tests.taken_readings import took_in

NOW = datetime(2026, 11, 25, 20, tzinfo=UTC)
TODAY = NOW.date()


@pytest.fixture
def keeping(tmp_path: Path) -> Iterator[Keeping]:
    """Two animals in row B3, probe K1 at its hot end."""
    with closing(new_keeping(tmp_path / "a.book", station="s", now=lambda: NOW)) as made:
        newcomers = [
            Newcomer(
                happened=on_day(TODAY - timedelta(days=400)),
                code=code,
                species="house_snake",
                hatched=TODAY - timedelta(days=900),
                sex=Sex.FEMALE,
                place=f"B3·{n}",
            )
            for n, code in enumerate(("H1", "H2"), start=1)
        ]
        receive(made, newcomers)
        place_probe(made, "K1", "B3", Zone.HOT, NOW - timedelta(days=30))
        yield made


def logged(keeping: Keeping, *spells: tuple[float, float], probe: str = "K1", end=NOW) -> None:
    """Hours and degrees one after another up to *end*, read each five minutes."""
    days: dict[int, dict[int, int]] = {}
    at = int((end - timedelta(hours=sum(hours for hours, _ in spells))).timestamp())
    for hours, temp_c in spells:
        for n in range(round(hours * 12)):
            slot = (at + n * 300) % DAY_SECONDS // 300
            wobble = n % 2 * 20
            days.setdefault((at + n * 300) // DAY_SECONDS, {})[slot] = round(temp_c * 100) + wobble
        at += round(hours * 3600)
    for day, values in days.items():
        slots = packed(values)
        took_in(
            keeping.book, [PackedDay(probe=probe, day=day, slots=slots, hours=rolled_up(slots))]
        )


def typed(keeping: Keeping, temp_c: float, at: datetime = NOW) -> None:
    event = Heat(place="B3", happened=at_instant(at), zone=Zone.HOT, temp_c=temp_c, read_with="gun")
    note(keeping, "read heat", event)


def fed(keeping: Keeping, code: str, at: datetime) -> None:
    animal = next(row.animal for row in animals_on(keeping, TODAY) if row.code == code)
    offer = Offer(
        animal=animal,
        happened=at_instant(at),
        result=Result.TAKEN,
        evidence=Evidence.SEEN,
        prey="mouse",
        mass_g=20.0,
    )
    note(keeping, "feed", offer)


def heat(keeping: Keeping, live=None):
    return house_heat(keeping, animals_on(keeping, TODAY), lambda row: (), TODAY, live)


def test_a_probe_beyond_its_limit_for_long_enough_is_today_s_concern(keeping):
    logged(keeping, (10, 31), (2, 24))

    (verdict,) = heat(keeping).verdicts

    assert (verdict.state, verdict.urgency, verdict.place) == ("too cold", "today", "B3")
    assert 110 <= verdict.minutes <= 120


def test_a_short_dip_is_only_noted_and_says_how_long_it_has_lasted(keeping):
    logged(keeping, (10, 31), (0.5, 24))

    (verdict,) = heat(keeping).verdicts

    assert (verdict.state, verdict.urgency) == ("too cold", "noted")


def test_a_dip_that_is_over_is_within_limits(keeping):
    logged(keeping, (3, 31), (4, 24), (3, 31))

    assert [verdict.state for verdict in heat(keeping).verdicts] == ["within limits"]


def test_a_hot_end_cold_for_six_hours_names_those_fed_within_two_days(keeping):
    fed(keeping, "H1", NOW - timedelta(hours=20))
    fed(keeping, "H2", NOW - timedelta(hours=70))
    logged(keeping, (40, 31), (7, 25))

    lines = watch_lines(keeping, TODAY)

    (line,) = [line for line in lines if line.kind == "cold after feeding"]
    codes = {row.animal: row.code for row in animals_on(keeping, TODAY)}
    assert [codes[member] for member in line.members] == ["H1"]


def test_five_hours_of_cold_after_feeding_are_not_yet_six(keeping):
    fed(keeping, "H1", NOW - timedelta(hours=20))
    logged(keeping, (40, 31), (5, 25))

    assert not [ln for ln in watch_lines(keeping, TODAY) if ln.kind == "cold after feeding"]


def test_a_stuck_probe_is_a_fault_of_its_own_and_says_nothing_of_heat(keeping):
    logged(keeping, (6, 31))
    slots = packed(dict.fromkeys(range(180, 240), 2400))
    day = int(NOW.timestamp()) // DAY_SECONDS
    took_in(keeping.book, [PackedDay(probe="K1", day=day, slots=slots, hours=rolled_up(slots))])

    found = heat(keeping)

    assert [fault.kind for fault in found.faults] == ["stuck"]
    assert found.verdicts == ()
    assert [line.kind for line in watch_lines(keeping, TODAY) if line.kind == "sensor"]


def half_degrees(keeping: Keeping, days: int, every_hours: int, still_hours: int) -> None:
    """A logger of half degrees that moves so often, and has not for the last hours."""
    last = int(NOW.timestamp()) // SLOT_SECONDS
    table: dict[tuple[str, int], dict[int, int]] = {}
    for slot in range(last - days * SLOTS, last):
        moved = min(slot, last - still_hours * 12) // (12 * every_hours)
        table.setdefault(("K1", slot // SLOTS), {})[slot % SLOTS] = 3050 + 50 * (moved % 2)
    put_in(keeping.book, table)


def test_a_steady_room_told_in_half_degrees_is_no_stuck_probe(keeping):
    half_degrees(keeping, days=20, every_hours=60, still_hours=100)

    assert heat(keeping).faults == ()


def test_a_logger_that_repeats_its_last_value_for_days_is_still_called_stuck(keeping):
    half_degrees(keeping, days=20, every_hours=4, still_hours=60)

    assert [fault.kind for fault in heat(keeping).faults] == ["stuck"]


def test_a_logger_is_not_called_silent_between_two_files_but_a_live_probe_is(keeping):
    logged(keeping, (10, 31), end=NOW - timedelta(hours=6))

    assert heat(keeping).faults == ()
    assert [fault.kind for fault in heat(keeping, live={"K1"}).faults] == ["silent"]


def test_a_probe_heard_live_is_missed_only_while_live_readings_are_on(
    keeping, tmp_path, monkeypatch
):
    monkeypatch.setenv(HOME_VARIABLE, str(tmp_path / "home"))
    logged(keeping, (10, 31), end=NOW - timedelta(hours=6))
    with closing(LiveTaking(keeping.book.path, "s", keeping.now)) as taking:
        set_topic(keeping, "room/+")
        taking.take([Message("room/K1", b"31", NOW - timedelta(hours=5))])
    before = heat(keeping).faults

    choose(keeping.book.path, LiveChoice(host="127.0.0.1", on=True))

    assert before == ()
    assert [fault.kind for fault in heat(keeping).faults] == ["silent"]
    assert [line.kind for line in watch_lines(keeping, TODAY) if line.kind == "sensor"]


def test_a_line_that_is_cut_is_one_fault_and_not_one_for_each_probe(keeping):
    for probe in ("K1", "K2", "K3"):
        place_probe(keeping, probe, "B3", Zone.HOT, NOW - timedelta(days=30))
        logged(keeping, (10, 31), probe=probe, end=NOW - timedelta(hours=6))
    cut = heat(keeping, live={"K1", "K2", "K3"}).faults
    logged(keeping, (10, 31), probe="K3")

    assert [(fault.kind, fault.place) for fault in cut] == [("silent", "all live probes")]
    assert [
        (fault.kind, fault.place) for fault in heat(keeping, live={"K1", "K2", "K3"}).faults
    ] == [
        ("silent", "B3"),
        ("silent", "B3"),
    ]


def test_a_reading_typed_long_before_gives_way_to_the_probe_read_last(keeping):
    typed(keeping, 24.0, NOW - timedelta(hours=5))
    logged(keeping, (10, 31))

    assert [verdict.state for verdict in heat(keeping).verdicts] == ["within limits"]


def test_of_two_sources_within_the_hour_the_worse_is_kept(keeping):
    typed(keeping, 24.0, NOW - timedelta(minutes=30))
    logged(keeping, (10, 31))

    assert [verdict.state for verdict in heat(keeping).verdicts] == ["too cold"]


def test_a_probe_speaks_of_the_place_where_it_hung_at_the_time(keeping):
    place_probe(keeping, "K1", "B4", Zone.COOL, NOW - timedelta(hours=4))
    logged(keeping, (10, 31))

    sources = readings_for_watch(keeping, TODAY)

    told = [(s.place, s.zone, round(len(s.readings) / 12)) for s in sources]
    assert told == [("B3", Zone.HOT, 6), ("B4", Zone.COOL, 4)]


def test_a_day_gone_by_reads_no_probe_of_a_later_hour(keeping):
    logged(keeping, (10, 24))

    assert readings_for_watch(keeping, TODAY - timedelta(days=1)) == ()
