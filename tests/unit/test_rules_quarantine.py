"""A new arrival restarts the quarantine of all in its room, and of nobody else."""

from datetime import timedelta

import pytest

from keeper.husbandry.events import HoldKind, HoldSet, Moved
from keeper.husbandry.when import on_day
from keeper.reports.words import sentence
from keeper.rules.alerts import watch
from keeper.rules.holds import Hold
from keeper.rules.quarantine import (
    MitesSeen,
    arrivals,
    lengthened,
    longer_reason,
    restart_reason,
    restarted,
)
from keeper.rules.watch_facts import HouseFacts, Severity, WatchFacts
from tests.builders import a_profile, an_animal, day

TODAY = day("2026-11-24")


def ago(days: int):
    return TODAY - timedelta(days=days)


def held(animal: int, days: int, lasts: int | None = 90) -> HoldSet:
    until = None if lasts is None else ago(days) + timedelta(days=lasts)
    return HoldSet(animal=animal, happened=on_day(ago(days)), kind=HoldKind.QUARANTINE, until=until)


def moved(animal: int, *stays: tuple[int, str]) -> list[Moved]:
    return [Moved(animal=animal, happened=on_day(ago(on)), place=at) for on, at in stays]


def anew(*newcomers, first=(60, 90), own=((60, "Q1·1"),)):
    """The restarted quarantine of animal 1; newcomers: stays and hold of each of the others."""
    hold = held(1, *first)
    moves, holds = {1: moved(1, *own)}, {1: [hold]}
    for number, (stays, quarantine) in enumerate(newcomers, start=2):
        moves[number] = moved(number, *stays)
        holds[number] = [held(number, *quarantine)] if quarantine else []
    return restarted(hold, moves[1], arrivals(moves, holds), TODAY)


def test_one_that_comes_into_the_rack_in_quarantine_restarts_the_days_of_all_there():
    found = anew(([(20, "Q1·2")], (20, 90)))

    assert (found.hold.happened.day, found.hold.until) == (ago(20), ago(20) + timedelta(days=90))
    assert (found.since, found.arrival.animal, found.arrival.rack) == (ago(60), 2, "Q")


def test_the_last_of_several_arrivals_counts():
    found = anew(([(40, "Q1·2")], (40, 90)), ([(5, "Q2·1")], (5, 90)))

    assert (found.hold.happened.day, found.arrival.animal) == (ago(5), 3)


@pytest.mark.parametrize(
    "newcomer",
    [
        ([(20, "R1·1")], (20, 90)),  # another rack
        ([(20, "Q1·2")], None),  # not in quarantine: an animal of the house
        ([(70, "Q1·2"), (20, "Q1·3")], (70, 90)),  # only another tub of the same rack
        ([(70, "Q1·2")], (70, 90)),  # was there before
        ([(20, "Q1·2")], (75, 90)),  # written late, in quarantine before
        ([(20, "Q1·2")], (10, 90)),  # put into it long after it came
    ],
)
def test_nothing_else_restarts_them(newcomer):
    assert anew(newcomer) is None


def test_one_in_quarantine_that_comes_over_from_another_rack_is_an_arrival():
    assert anew(([(70, "R1·1"), (20, "Q1·2")], (70, 90))).arrival.on == ago(20)


def test_an_arrival_after_the_end_begins_nothing_anew():
    assert anew(([(20, "Q1·2")], (20, 90)), first=(60, 30)) is None


def test_an_arrival_before_the_end_carries_it_on_though_its_first_end_is_past():
    found = anew(([(80, "Q1·2")], (80, 90)), first=(100, 90), own=((100, "Q1·1"),))

    assert found.hold.until == ago(80) + timedelta(days=90)


def test_one_that_lay_elsewhere_on_that_day_is_not_concerned():
    newcomer = ([(40, "Q1·2")], (40, 90))

    assert anew(newcomer, own=((60, "R1·1"), (30, "Q1·1"))) is None


def test_without_an_end_the_days_since_begin_anew():
    found = anew(([(20, "Q1·2")], (20, 90)), first=(60, None))

    assert (found.hold.happened.day, found.hold.until) == (ago(20), None)


def lines(on: int, left: int):
    restart = anew(([(on, "Q1·2")], (on, 90)))
    hold = Hold(
        kind=HoldKind.QUARANTINE, since=ago(on), until=TODAY + timedelta(days=left), skip=False
    )
    now = an_animal(weighed_on=ago(3), weight_g=300.0, eaten_on=ago(3))
    facts = WatchFacts(
        now=now, profile=a_profile(), holds=[hold], anew=restart_reason(restart, "Nova")
    )
    return [
        (w.kind, w.severity, [r.why for r in w.because])
        for w in watch([facts], HouseFacts(), TODAY)
    ]


def test_a_restart_is_noted_for_a_week_and_told_again_at_the_end():
    began, ends = "quarantine began anew", "quarantine ends"

    assert lines(7, 83) == [("quarantine", Severity.NOTED, [began, ends])]
    assert lines(8, 82) == []
    assert lines(10, 7) == [("quarantine", Severity.THIS_WEEK, [ends, began])]


def test_it_is_told_by_whom_where_and_since_when():
    told = sentence(restart_reason(anew(([(20, "Q1·2")], (20, 90))), "Nova"))

    assert told.replace("\u00a0", " ").startswith("Nova came into Q on 4 Nov")


def longer(*seen, hold=None, own=((60, "Q1·1"),)):
    """The quarantine of animal 1 with mites seen: days ago, rack, animal."""
    mites = [MitesSeen(on=ago(days), rack=rack, animal=animal) for days, rack, animal in seen]
    return lengthened(hold or held(1, 70, 90), moved(1, *own), mites, TODAY)


@pytest.mark.parametrize("seen", [(5, "Q", 2), (5, None, None), (5, "R", 1), (5, "Q", None)])
def test_mites_in_its_rack_in_the_room_or_on_itself_lengthen_it_to_thirty_days_without(seen):
    found = longer(seen)

    assert found.before == ago(70) + timedelta(days=90)
    assert found.hold.until == ago(5) + timedelta(days=30)
    assert found.hold.happened.day == ago(70)


@pytest.mark.parametrize(
    "seen",
    [
        (5, "R", 2),  # another rack
        (60, "Q", 2),  # long enough ago
        (10, "Q", 2),  # thirty days without end with its own days
        (71, None, 1),  # before it began
    ],
)
def test_other_mites_do_not(seen):
    assert longer(seen) is None


def test_mites_after_it_was_over_do_not_bring_it_back_and_those_before_its_new_end_do():
    over = held(1, 95, 90)

    assert longer((3, "Q", 2), hold=over) is None
    assert longer((20, "Q", 2), (3, "Q", 2), hold=over).hold.until == ago(3) + timedelta(days=30)


def test_why_it_lasts_longer_is_told_as_long_as_it_does():
    found = longer((20, "Q", 2), hold=held(1, 89, 90))
    hold = Hold(kind=HoldKind.QUARANTINE, since=ago(89), until=found.hold.until)
    now = an_animal(weighed_on=ago(3), weight_g=300.0, eaten_on=ago(3))
    facts = WatchFacts(now=now, profile=a_profile(), holds=[hold], longer=longer_reason(found))
    (line,) = watch([facts], HouseFacts(), TODAY)

    ends, why = line.because[-2:]
    assert (ends.why, why.why) == ("quarantine ends", "quarantine until free of mites")
    assert sentence(why).replace("\u00a0", " ") == (
        "Mites were there on 4 Nov 2026: quarantine lasts 30 days from then on, until 4 Dec 2026"
        " and not 25 Nov 2026."
    )
