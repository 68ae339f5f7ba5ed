"""Mites are met in the rack as one: looks on days 7, 14, 21, 28, all clear on day 42."""

from datetime import timedelta

import pytest

from keeper.husbandry.house import MiteStep, MitesTold
from keeper.husbandry.when import on_day
from keeper.rules.watch_facts import Severity
from keeper.rules.watch_mites import mite_course, mite_lines
from tests.builders import an_animal, day

TODAY = day("2026-09-23")
BEGUN, CLEAR, SEEN, ENDED = MitesTold
LOOKS = (7, 14, 21, 28, 42)
ROOM = [an_animal(animal=n, place=place) for n, place in enumerate(("A1·1", "B1·1", "B2·4"), 1)]


def step(days: int, told: MitesTold = CLEAR, place: str | None = "B", **given) -> MiteStep:
    happened = on_day(TODAY - timedelta(days=days))
    return MiteStep(happened=happened, place=place, told=told, **given)


def number(day_now: int, *looks: int, **given) -> int | None:
    """The look that is due on that day after day 0, where others were made."""
    told = [step(day_now, BEGUN), *(step(day_now - look) for look in looks)]
    found = mite_course(told, TODAY)
    return found.number if found else None


@pytest.mark.parametrize("at", range(5))
def test_each_look_is_due_on_its_day_and_done_when_it_is_written(at):
    before, on = LOOKS[:at], LOOKS[at]

    assert number(on - 1, *before) is None
    assert number(on, *before) == on
    assert number(on, *before, on) is None
    assert number(on, *before, on - 1) is None


def test_a_look_is_due_until_the_next_one_is_and_then_counts_as_missed():
    asks = mite_course([step(14, BEGUN)], TODAY)

    assert number(13) == 7
    assert (asks.number, asks.missed) == (14, 1)


def test_all_is_clear_only_with_a_clear_look_on_day_42():
    assert number(60, 7, 14, 21, 28) == 42
    assert number(60, 7, 14, 21, 28, 42) is None


def test_mites_seen_begin_the_count_anew():
    told = [step(21, BEGUN), step(14), step(7, SEEN)]

    assert mite_course(told, TODAY).number == 7
    assert mite_course([*told, step(0)], TODAY) is None


def test_a_course_that_was_ended_asks_for_nothing():
    assert mite_course([step(21, BEGUN), step(10, ENDED)], TODAY) is None


def test_a_clear_look_where_nothing_was_begun_begins_nothing():
    assert mite_course([step(21)], TODAY) is None


def test_a_rack_is_one_line_of_today_with_all_its_animals_and_what_vet_or_label_say():
    told = [step(7, BEGUN, treatment="spray, as the vet wrote")]
    (line,) = mite_lines(told, ROOM, TODAY)
    whys = {why.why: why.figures for why in line.because}

    assert (line.place, line.kind, line.severity) == ("B", "mite step", Severity.TODAY)
    assert line.members == (2, 3)
    assert whys["treated against mites"]["text"] == "spray, as the vet wrote"
    assert "the whole rack is one, product and amount by a reptile vet" in whys


def test_the_room_is_one_as_well_and_racks_are_counted_apart():
    found = mite_lines([step(7, BEGUN, place=None), step(5, BEGUN, place="A")], ROOM, TODAY)

    assert [(line.place, len(line.members)) for line in found] == [(None, 3)]


def test_what_is_written_of_later_days_is_not_known_yet():
    assert len(mite_lines([step(7, BEGUN), step(-1)], ROOM, TODAY)) == 1
