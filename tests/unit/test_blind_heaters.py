"""A heater whose only probe is at fault is left to itself: that is told at once."""

from collections.abc import Iterator
from contextlib import closing
from datetime import timedelta
from pathlib import Path

import pytest

from keeper.actions.heat_board import heat_board, set_incubator_limits
from keeper.actions.heat_readings import eggs_here
from keeper.actions.keeping import Keeping, animals_on, new_keeping
from keeper.actions.logger_files import place_probe
from keeper.actions.noting import note
from keeper.actions.recording import Newcomer, receive
from keeper.actions.watching import watch_lines
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import Clutch, Heat, Zone
from keeper.husbandry.when import at_instant, on_day
from keeper.rules.watch_facts import Severity, WatchLine
from keeper.store.readings import SLOT_SECONDS, SLOTS, put_in
from tests.unit.test_heat_readings import NOW, TODAY, heat, logged, typed

BLIND = "nothing tells the heat there"


@pytest.fixture
def keeping(tmp_path: Path) -> Iterator[Keeping]:
    """A house snake and a python in row B3, nobody in B4."""
    with closing(new_keeping(tmp_path / "a.book", station="s", now=lambda: NOW)) as made:
        newcomers = [
            Newcomer(
                happened=on_day(TODAY - timedelta(days=400)),
                code=code,
                species=species,
                hatched=TODAY - timedelta(days=900),
                sex=Sex.FEMALE,
                place=f"B3·{n}",
            )
            for n, (code, species) in enumerate((("H1", "house_snake"), ("P1", "ball_python")), 1)
        ]
        receive(made, newcomers)
        yield made


def hung(keeping: Keeping, probe: str, place: str, zone: Zone) -> None:
    place_probe(keeping, probe, place, zone, NOW - timedelta(days=30))


def stuck(keeping: Keeping, probe: str) -> None:
    """Reads, moves, and then the same for six hours (in neither half degrees nor whole ones)."""
    logged(keeping, (10, 31.0), probe=probe, end=NOW - timedelta(hours=6))
    last = int(NOW.timestamp()) // SLOT_SECONDS
    for slot in range(last - 72, last):
        put_in(keeping.book, {(probe, slot // SLOTS): {slot % SLOTS: 3112}})


def broken(keeping: Keeping, probe: str) -> None:
    """A failure value at the end."""
    logged(keeping, (10, 31.0), probe=probe)
    logged(keeping, (1 / 12, 85.0), probe=probe)


def silent(keeping: Keeping, probe: str) -> None:
    logged(keeping, (10, 31.0), probe=probe, end=NOW - timedelta(hours=2))


def sensor_lines(keeping: Keeping) -> list[WatchLine]:
    return [line for line in watch_lines(keeping, TODAY) if line.kind == "sensor"]


def is_blind(line: WatchLine) -> bool:
    return BLIND in [reason.why for reason in line.because]


@pytest.mark.parametrize("fault", [stuck, broken], ids=["stuck", "failure value"])
@pytest.mark.parametrize(
    ("place", "zone", "severity"),
    [
        ("B3", Zone.HOT, Severity.NOW),
        ("B3·1", Zone.HOT, Severity.NOW),
        ("incubator", Zone.INCUBATOR, Severity.NOW),
        ("B3", Zone.COOL, Severity.TODAY),
        ("room", Zone.ROOM, Severity.TODAY),
        ("B4", Zone.HOT, Severity.TODAY),
    ],
)
def test_a_fault_of_the_only_probe_of_a_heater_is_told_at_once(
    keeping, fault, place, zone, severity
):
    hung(keeping, "K1", place, zone)
    fault(keeping, "K1")

    (line,) = sensor_lines(keeping)

    assert (line.severity, is_blind(line)) == (severity, severity is Severity.NOW)


def test_a_live_probe_that_falls_silent_over_a_heater_is_blind(keeping):
    hung(keeping, "K1", "B3", Zone.HOT)
    silent(keeping, "K1")

    (fault,) = heat(keeping, live={"K1"}).faults

    assert (fault.kind, fault.blind) == ("silent", True)


@pytest.mark.parametrize(
    ("place", "zone", "is_told"),
    [
        ("B3", Zone.HOT, True),
        ("B3·2", Zone.HOT, True),
        ("B3", Zone.COOL, False),
        ("B5", Zone.HOT, False),
    ],
)
def test_another_probe_of_that_heater_makes_the_fault_a_matter_of_today(
    keeping, place, zone, is_told
):
    hung(keeping, "K1", "B3", Zone.HOT)
    hung(keeping, "K2", place, zone)
    stuck(keeping, "K1")
    logged(keeping, (10, 31.0), probe="K2")

    (line,) = sensor_lines(keeping)

    assert line.severity is (Severity.TODAY if is_told else Severity.NOW)


def test_two_probes_of_one_heater_both_at_fault_are_blind(keeping):
    for probe in ("K1", "K2"):
        hung(keeping, probe, "B3", Zone.HOT)
        stuck(keeping, probe)

    assert [fault.blind for fault in heat(keeping).faults] == [True, True]


def test_a_probe_that_read_last_hours_ago_tells_no_heat_of_now(keeping):
    hung(keeping, "K1", "B3", Zone.HOT)
    hung(keeping, "K2", "B3", Zone.HOT)
    stuck(keeping, "K1")
    logged(keeping, (10, 31.0), probe="K2", end=NOW - timedelta(hours=2))

    assert [fault.blind for fault in heat(keeping).faults] == [True]


def test_a_reading_by_hand_tells_the_heat_for_an_hour(keeping):
    hung(keeping, "K1", "B3", Zone.HOT)
    stuck(keeping, "K1")
    typed(keeping, 31.0, NOW - timedelta(minutes=61))
    before = [fault.blind for fault in heat(keeping).faults]

    typed(keeping, 31.0, NOW - timedelta(minutes=20))

    assert (before, [fault.blind for fault in heat(keeping).faults]) == ([True], [False])


def laid(keeping: Keeping, code: str, days_ago: int) -> None:
    animal = next(row.animal for row in animals_on(keeping, TODAY) if row.code == code)
    on = on_day(TODAY - timedelta(days=days_ago))
    note(keeping, "laid", Clutch(animal=animal, happened=on, good=6, slugs=0))


def eggs_read(keeping: Keeping, temp_c: float) -> str:
    happened = at_instant(NOW)
    note(
        keeping,
        "read heat",
        Heat(place="box", happened=happened, zone=Zone.INCUBATOR, temp_c=temp_c),
    )
    (verdict,) = heat(keeping).verdicts
    return f"{verdict.state}, {verdict.urgency}"


@pytest.mark.parametrize(
    ("code", "days_ago", "temp_c", "said"),
    [
        ("H1", 10, 31.5, "too hot, now"),
        ("P1", 10, 31.5, "within limits, noted"),
        ("P1", 10, 27.5, "too cold, now"),
        ("H1", 10, 27.5, "within limits, noted"),
        ("P1", 80, 27.5, "within limits, noted"),
    ],
)
def test_an_incubator_is_judged_by_the_eggs_of_those_who_laid_of_late(
    keeping, code, days_ago, temp_c, said
):
    laid(keeping, code, days_ago)

    assert eggs_read(keeping, temp_c) == said


def test_where_both_kinds_lie_the_keeper_s_limits_say_whose_they_are(keeping):
    laid(keeping, "H1", 10)
    laid(keeping, "P1", 10)
    rows = animals_on(keeping, TODAY)
    before = eggs_here(keeping, rows, TODAY)

    set_incubator_limits(keeping, "31-32")
    after = eggs_here(keeping, rows, TODAY)

    assert before is not None and after is not None
    assert (before.kinds, before.hot_c, before.cold_c) == (2, 33.0, 22.0)
    assert (after.kinds, after.low_c, after.high_c, after.cold_c) == (1, 31.0, 32.0, 28.0)


def test_the_heat_page_says_of_a_cell_why_its_probe_is_not_believed(keeping):
    hung(keeping, "K1", "B3", Zone.HOT)
    stuck(keeping, "K1")

    line = next(line for line in heat_board(keeping, TODAY).lines if line.place == "B3")

    assert line.cells[0].standing == "cannot tell"
    assert [reason.why for reason in line.cells[0].because] == ["sensor stuck", BLIND]


def test_the_heat_page_shows_what_the_eggs_bear(keeping):
    laid(keeping, "P1", 10)
    eggs_read(keeping, 31.5)

    (cell,) = next(line for line in heat_board(keeping, TODAY).lines if line.place == "box").cells

    assert (cell.low_c, cell.high_c, cell.standing) == (30.0, 32.8, "within")
    assert cell.act_c == (28.0, 33.0)
