"""Dates ahead: faecal tests of a quarantine, and permits that end."""

from datetime import timedelta

import pytest

from keeper.husbandry.care import FaecalResult, FaecalTest, Permit
from keeper.husbandry.events import HoldKind
from keeper.husbandry.house import HousePermit
from keeper.husbandry.when import on_day
from keeper.rules.alerts import watch
from keeper.rules.holds import Hold
from keeper.rules.watch_facts import HouseFacts, Severity, WatchFacts
from keeper.rules.watch_tests import permit_lines
from tests.builders import a_profile, an_animal, day

TODAY = day("2026-09-23")
CLEAR, FOUND, SENT = FaecalResult.CLEAR, FaecalResult.FOUND, FaecalResult.SENT


def ago(days: int):
    return TODAY - timedelta(days=days)


def faecal(days: int, result: FaecalResult = CLEAR, note: str | None = None) -> FaecalTest:
    return FaecalTest(animal=1, happened=on_day(ago(days)), result=result, note=note)


def permit(ends_in: int, kind: str = "transfer permit", number: str = "26-118") -> Permit:
    ends = TODAY + timedelta(days=ends_in)
    return Permit(animal=1, happened=on_day(ago(200)), kind=kind, number=number, expires=ends)


def lines(*, quarantined: int | None = None, faecals=(), permits=()):
    holds = []
    if quarantined is not None:
        until = ago(quarantined) + timedelta(days=90)
        since = ago(quarantined)
        holds = [Hold(kind=HoldKind.QUARANTINE, since=since, until=until, skip=False)]
    now = an_animal(weighed_on=ago(3), weight_g=300.0, eaten_on=ago(3))
    facts = WatchFacts(now=now, profile=a_profile(), holds=holds, faecals=faecals, permits=permits)
    return [(w.kind, w.because[0].why) for w in watch([facts], HouseFacts(), TODAY)]


DUE, LATE = [("faecal test", "faecal test due")], [("faecal test", "faecal test overdue")]


@pytest.mark.parametrize(("days", "told"), [(22, []), (23, DUE), (30, DUE), (31, LATE)])
def test_the_first_test_of_a_quarantine_is_told_a_week_ahead(days, told):
    assert lines(quarantined=days) == told


def test_each_test_puts_the_next_thirty_days_off():
    assert lines(quarantined=52, faecals=[faecal(22)]) == []
    assert lines(quarantined=53, faecals=[faecal(23)]) == DUE


def test_three_clear_tests_far_enough_apart_are_enough():
    clear = [faecal(82), faecal(51), faecal(20)]

    assert lines(quarantined=110, faecals=clear)[0][0] == "quarantine"
    assert not any(kind == "faecal test" for kind, _ in lines(quarantined=80, faecals=clear))


def test_two_tests_within_three_weeks_count_as_one():
    near = [faecal(80), faecal(75), faecal(40)]

    assert lines(quarantined=82, faecals=near) == LATE


def test_what_was_found_is_told_until_a_clear_test_and_begins_the_count_anew():
    found = faecal(20, FOUND, "flagellates")

    assert lines(faecals=[found]) == [("faecal test", "found in the faeces")]
    assert lines(faecals=[found, faecal(1, SENT)]) == [("faecal test", "found in the faeces")]
    assert lines(faecals=[found, faecal(1)]) == []
    assert lines(quarantined=75, faecals=[faecal(70), faecal(45), found, faecal(0)]) == []
    assert lines(quarantined=79, faecals=[faecal(72), faecal(50), faecal(29, FOUND), faecal(25)])


@pytest.mark.parametrize(("days", "count"), [(13, 0), (14, 1)])
def test_a_sample_that_is_away_is_asked_after_in_two_weeks(days, count):
    told = lines(quarantined=60, faecals=[faecal(days, SENT)])

    assert told == [("faecal test", "result awaited")] * count


def test_without_a_quarantine_no_test_is_asked_for():
    assert lines() == []


@pytest.mark.parametrize(
    ("days", "told"), [(31, []), (30, "permit ends"), (0, "permit ends"), (-1, "permit has ended")]
)
def test_a_permit_is_told_thirty_days_ahead_and_when_it_has_ended(days, told):
    assert lines(permits=[permit(days)]) == ([("permit", told)] if told else [])


def test_a_new_permit_of_the_kind_ends_the_line_and_one_of_another_kind_does_not():
    old = permit(5)

    assert lines(permits=[old, permit(400, number="27-1")]) == []
    assert lines(permits=[old, permit(400, kind="breeding permit")]) != []


def test_dates_are_this_weeks():
    now = an_animal(weighed_on=ago(3), weight_g=300.0, eaten_on=ago(3))
    facts = WatchFacts(now=now, profile=a_profile(), permits=[permit(3)])

    assert watch([facts], HouseFacts(), TODAY)[0].severity is Severity.THIS_WEEK


def licence(ends_in: int, kind: str = "keeping licence") -> HousePermit:
    ends = TODAY + timedelta(days=ends_in)
    return HousePermit(happened=on_day(ago(300)), kind=kind, number="24-7", expires=ends)


@pytest.mark.parametrize(
    ("days", "told"),
    [(31, []), (30, ["permit ends"]), (0, ["permit ends"]), (-1, ["permit has ended"])],
)
def test_a_permit_of_the_house_is_told_as_one_of_an_animal_is(days, told):
    found = permit_lines([licence(days)], TODAY)

    assert [line.because[0].why for line in found] == told
    assert all(line.animal is None and line.place == "keeping licence" for line in found)


def test_a_new_permit_of_the_house_ends_the_line_of_its_kind_alone():
    old, other = licence(3), licence(4, "breeding licence")

    found = permit_lines([old, other, licence(700)], TODAY)

    assert [line.place for line in found] == ["breeding licence"]
