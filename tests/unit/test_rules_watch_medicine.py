"""A course as the vet wrote it: due, ticked, missed, never doubled."""

from datetime import UTC, datetime, timedelta

import pytest

from keeper.husbandry.care import Dose, DoseTold, Medicine
from keeper.husbandry.when import at_instant, on_day
from keeper.reports.words import sentence
from keeper.rules.alerts import watch
from keeper.rules.watch_facts import HouseFacts, Severity, WatchFacts
from keeper.rules.watch_medicine import courses, given_shortly_before
from tests.builders import a_profile, an_animal, day

TODAY = day("2026-09-23")


def ago(days: int):
    return TODAY - timedelta(days=days)


def course(
    begun: int = 3,
    lasts: int = 10,
    every: int = 1,
    name: str = "Tarsin",
    times: int | None = None,
) -> Medicine:
    return Medicine(
        animal=1,
        happened=on_day(ago(begun)),
        medicine=name,
        amount="0.05 ml",
        route="by mouth",
        first_on=ago(begun),
        last_on=ago(begun) + timedelta(days=lasts - 1),
        every_days=every,
        lot="L7",
        times_a_day=times,
    )


def dose(days: int, told: DoseTold = DoseTold.GIVEN, name: str = "tarsin") -> Dose:
    return Dose(animal=1, happened=on_day(ago(days)), medicine=name, told=told)


def told(medicine: Medicine, *doses: Dose):
    (found,) = courses([medicine], doses, TODAY) or (None,)
    return found


def test_on_its_day_a_dose_is_due_until_it_is_ticked():
    given = [dose(3), dose(2), dose(1)]
    due = told(course(), *given)

    assert (due.due_on, due.number, due.doses, due.missed) == (TODAY, 4, 10, ())
    assert told(course(), *given, dose(0)) is None


def test_a_dose_that_nobody_ticked_is_missed_and_the_next_is_one_dose():
    asks = told(course(), dose(3), dose(1))

    assert asks.missed == (ago(2),)
    assert asks.due_on == TODAY
    line = lines(asks)[0]
    assert "dose missed, never doubled, ask a reptile vet" in [why.why for why in line.because]


def test_a_missed_dose_is_told_until_it_is_written_as_missed():
    assert told(course(), dose(3), dose(1), dose(0)).missed == (ago(2),)
    assert told(course(), dose(3), dose(2, DoseTold.MISSED), dose(1), dose(0)) is None


def test_a_second_tick_on_one_day_does_not_make_up_for_a_missed_one():
    asks = told(course(), dose(3), dose(1), dose(1), dose(0))

    assert asks.missed == (ago(2),)


def test_every_third_day_a_dose_may_be_given_a_day_late():
    every_third = course(begun=4, lasts=10, every=3)

    assert told(every_third, dose(4)).due_on == ago(1)
    assert told(every_third, dose(4), dose(0)) is None


def test_a_stopped_course_asks_for_nothing_more():
    assert told(course(), dose(3), dose(2), dose(1, DoseTold.STOPPED)) is None


def test_after_its_last_day_a_course_asks_for_nothing():
    given = [dose(days) for days in range(12, 2, -1)]

    assert told(course(begun=12), *given) is None


def test_a_course_written_anew_takes_the_place_of_the_one_before():
    first, second = course(begun=5), course(begun=1, every=2)
    ticks = [dose(days) for days in (5, 4, 3, 2, 1)]

    assert courses([first, second], ticks, TODAY) == ()


def test_ticks_of_another_medicine_count_for_nothing():
    assert told(course(begun=0), dose(0, name="Other")).due_on == TODAY


def test_a_dose_missed_long_ago_is_history():
    assert told(course(begun=60, lasts=5)) is None


def test_of_two_doses_a_day_each_is_asked_for_until_it_is_ticked():
    before = [dose(days) for days in (3, 3, 2, 2, 1, 1)]
    none, one = told(course(times=2), *before), told(course(times=2), *before, dose(0))

    assert (none.due_on, none.told, none.number, none.doses) == (TODAY, 0, 7, 20)
    assert (one.due_on, one.told, one.number) == (TODAY, 1, 8)
    assert told(course(times=2), *before, dose(0), dose(0)) is None


def test_each_dose_of_a_past_day_that_nobody_ticked_is_missed_by_itself():
    asks = told(course(times=3), dose(3), dose(2), dose(0), dose(0), dose(0))

    assert asks.missed == (ago(2), ago(2), ago(1), ago(1), ago(1))
    told_missed = [dose(day, DoseTold.MISSED) for day in (2, 2, 1, 1, 1)]
    given = [dose(3), dose(2), dose(0), dose(0), dose(0)]
    assert told(course(times=3), *given, *told_missed) is None


def test_a_third_tick_makes_up_for_no_dose_of_another_day():
    asks = told(course(times=2), dose(3), dose(2), dose(1), dose(1), dose(1), dose(0), dose(0))

    assert asks.missed == (ago(2),)


def test_on_the_first_day_of_a_course_one_of_its_doses_is_enough():
    after = [dose(0), dose(0)]

    assert told(course(begun=1, times=2), dose(1), *after) is None
    assert told(course(begun=1, times=2), *after).missed == (ago(1),)


def test_several_doses_a_day_are_told_one_at_a_time():
    (line,) = lines(told(course(begun=0, times=2)))
    due = line.because[0]

    assert due.why == "dose of several a day due"
    assert (due.figures["times"], due.figures["told"]) == (2, 0)
    assert "never two at once" in sentence(due)


@pytest.mark.parametrize("times", [0, 13, -1])
def test_a_course_of_no_or_of_countless_doses_a_day_is_no_course(times):
    with pytest.raises(ValueError, match="1 to 12 times a day"):
        course(times=times)


def lines(*asked, **given):
    now = an_animal(weighed_on=ago(3), weight_g=300.0, eaten_on=ago(3))
    facts = WatchFacts(now=now, profile=a_profile(), courses=asked, **given)
    return watch([facts], HouseFacts(), TODAY)


def test_a_due_dose_is_todays_with_the_vets_own_words_and_her_weight():
    (line,) = lines(told(course(begun=0)))
    due = line.because[0]

    assert (line.kind, line.severity) == ("medicine", Severity.TODAY)
    assert (due.figures["amount"], due.figures["route"]) == ("0.05 ml", "by mouth")
    assert line.because[1].figures["weight_g"] == 300.0


@pytest.mark.parametrize("every", [0, 366, -1])
def test_a_course_without_a_rhythm_is_no_course(every):
    with pytest.raises(ValueError, match="each 1 to 365 days"):
        course(every=every)


def given_at(hour: int, days: int = 0) -> Dose:
    at = datetime(TODAY.year, TODAY.month, TODAY.day, hour, tzinfo=UTC) - timedelta(days=days)
    return Dose(animal=1, happened=at_instant(at), medicine="Tarsin", told=DoseTold.GIVEN)


@pytest.mark.parametrize(
    "written, before, now, near",
    [
        (course(times=2), given_at(9), given_at(14), True),  # 5 of 12 hours
        (course(times=2), given_at(9), given_at(15), False),  # half of them
        (course(), given_at(22, days=1), given_at(8), True),  # 10 of 24 hours
        (course(), given_at(20, days=1), given_at(8), False),
        (course(every=3), given_at(8, days=1), given_at(8), True),  # 24 of 72 hours
        (course(every=2), given_at(8, days=1), given_at(8), False),
    ],
)
def test_a_dose_nearer_than_half_of_what_the_vet_wrote_is_told(written, before, now, near):
    found = given_shortly_before(written, [given_at(9, days=9), before], now.happened)

    assert found is (before if near else None)


def test_a_dose_of_which_the_day_alone_is_known_is_held_against_none():
    assert given_shortly_before(course(times=2), [dose(0)], given_at(9).happened) is None
    assert given_shortly_before(course(times=2), [given_at(8)], on_day(TODAY)) is None
