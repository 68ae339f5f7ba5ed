"""An absence in the book: board, round, racks, thaw list, paper and both stations follow it."""

from contextlib import closing
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta

import pytest

from keeper.actions.absence import (
    Absence,
    absence_words,
    away_typed,
    end_absence,
    is_kept,
    keep_absence,
    next_absence,
)
from keeper.actions.absences import absences, coming_absences
from keeper.actions.animal_page import animal_page
from keeper.actions.bundle_files import write_bundle
from keeper.actions.due_board import due_rows
from keeper.actions.holiday import agreed, holiday_facts
from keeper.actions.joining import join, looked_at
from keeper.actions.keeping import new_keeping
from keeper.actions.noting import note
from keeper.actions.past_nights import covered_nights, missing_nights
from keeper.actions.rack_layers import Layer, shown_in
from keeper.actions.racks import read_room
from keeper.actions.rounds import begin_night
from keeper.actions.settings import set_feed_nights
from keeper.actions.sheets import thaw_list_of
from keeper.actions.tubs import read_tubs
from keeper.actions.undoing import put_back, take_back
from keeper.actions.watch_board import tub_state
from keeper.husbandry.events import Offer, Result
from keeper.husbandry.when import on_day
from keeper.reports.figures import plain
from keeper.reports.words import because_text
from keeper.rules.feeding import DueState
from keeper.store.state import differing
from tests.feeding_room import NIGHT, Clock, hatchling, held_by_vet, make_book, room
from tests.unit.command_line import Run, run

__all__ = ["run"]

DAY = timedelta(days=1)
FRIDAY = NIGHT + 2 * DAY
AWAY = Absence(FRIDAY, FRIDAY + 9 * DAY, who="Wren")  # 27 November to 6 December
WEDNESDAY_AFTER = date(2026, 12, 9)


class Evenings(Clock):
    """The clock of the room, on another evening where one is set."""

    def to(self, day):
        self.at = datetime(day.year, day.month, day.day, 20, 40, tzinfo=UTC)


@pytest.fixture
def clock():
    return Evenings()


def tubs():
    """Grown animals fed four to nine days ago, one that refuses, one held, two hatchlings."""
    made = [replace(tub, fed_days=4 + n % 6) for n, tub in enumerate(room(1, 2))]
    made[3] = replace(made[3], fed_days=None, weight_g=None, more=fed_young(2, name="Wee"))
    made[4] = replace(made[4], fed_days=None, weight_g=None, more=fed_young(3, name="Mite"))
    made[6] = replace(made[6], more=held_by_vet)
    made[8] = replace(made[8], fed_days=20, more=refused_yesterday)
    return made


def refused_yesterday(animal):
    on = on_day(NIGHT - DAY)
    return [
        Offer(
            animal=animal,
            happened=on,
            result=Result.REFUSED,
            prey="mouse adult",
            count=1,
            mass_g=20.0,
        )
    ]


def fed_young(days, name):
    def more(animal):
        on = on_day(NIGHT - days * DAY)
        meal = Offer(
            animal=animal, happened=on, result=Result.TAKEN, prey="mouse pinky", count=1, mass_g=1.5
        )
        return [*hatchling(animal, name=name), meal]

    return more


@pytest.fixture
def keeping(tmp_path, clock):
    with closing(make_book(tmp_path / "house.book", tubs(), clock)) as made:
        set_feed_nights(made, "wed sat")
        yield made


def planned(keeping, on, absence=AWAY):
    """By tub: state, night, and the first reason."""
    return {
        row.animal.place: (row.plan.state, row.plan.due_on, row.plan.because[0].why)
        for row in due_rows(keeping, on)
    }


def kept(keeping, absence=AWAY):
    told = agreed(keeping, absence)
    keep_absence(keeping, told)
    return told


def test_every_place_says_the_bent_plan(keeping, clock):
    thursday = NIGHT + DAY
    clock.to(thursday)
    before, thawed = planned(keeping, thursday), thaw_list_of(keeping, thursday)
    kept(keeping)
    after = planned(keeping, thursday)

    waiting = {place for place, told in after.items() if told[2] == "waits, away"}
    early = {place for place, told in after.items() if told[2] == "fed early, away"}
    assert {after[place][1] for place in waiting} == {WEDNESDAY_AFTER, AWAY.back}
    assert early == {"A1·5"}  # the hatchling that ate on Sunday: Thursday is its soonest day
    assert (before["A1·5"][0], after["A1·5"][0]) == (DueState.NOT_DUE, DueState.DUE)
    assert after["A1·9"][2] == "fed meanwhile, away"  # it refused: offered again on time
    assert thaw_list_of(keeping, thursday) != thawed
    shown = read_room(keeping, thursday)
    tubs_shown = [tub for rack in shown.racks for each in rack.rows for tub in each.tubs]
    state = {tub.name: shown_in(tub, shown, Layer.DUE) for tub in tubs_shown}
    assert state["A1·5"].state == "due"
    for place in waiting - {"A1·7"}:  # held by the vet
        assert int(state[place].figure) == (after[place][1] - thursday).days
    walk = begin_night(keeping, thursday)
    said = next(tub for tub in walk.tubs if tub.plan.place == "A1·5")
    assert said.walked
    assert "Offered 2 days early, on Thu 26 Nov" in plain(because_text(said.because))


def test_fed_as_the_board_says_the_paper_of_the_start_comes_true(keeping, clock):
    """Night by night to the end of it: who is due on the board is who stands on the paper."""
    told = kept(keeping)
    facts = holiday_facts(keeping, told)
    paper = {n.night: set(n.places) for n in facts.nights}
    early = {n.night: set(n.places) for n in facts.before}
    walked, brought = {}, {}
    for n in range((AWAY.last - NIGHT).days + 1):
        on = NIGHT + n * DAY
        clock.to(on)
        rows = [row for row in due_rows(keeping, on) if row.plan.state is DueState.DUE]
        places = {row.animal.place for row in rows}
        first = {row.animal.place: row.plan.because[0].why for row in rows}
        if places and AWAY.covers(on):
            walked[on] = places
        elif on < AWAY.first and "fed early, away" in first.values():
            brought[on] = {place for place, why in first.items() if why == "fed early, away"}
        feed(keeping, rows, on)

    assert walked == paper and paper
    assert brought == early and early
    assert set(paper) <= {*told.nights}


def feed(keeping, rows, on):
    offers = [
        Offer(
            animal=row.animal.animal,
            happened=on_day(on),
            result=Result.TAKEN,
            prey="mouse adult",
            count=1,
            mass_g=20.0,
        )
        for row in rows
    ]
    if offers:
        note(keeping, "feed", *offers)


def test_those_who_wait_on_the_paper_are_those_who_wait_on_the_board(keeping):
    facts = holiday_facts(keeping, kept(keeping))
    on_board = {
        place: told[1]
        for place, told in planned(keeping, AWAY.first).items()
        if told[2] == "waits, away"
    }

    on_paper = {place: night for night, places in facts.waits.items() for place in places}
    assert {place: on_paper[place] for place in on_board} == on_board


def test_taken_back_every_plan_is_as_before_and_put_back_as_it_was_bent(keeping):
    before = due_rows(keeping, NIGHT)
    kept(keeping)
    bent = due_rows(keeping, NIGHT)

    take_back(keeping)
    assert due_rows(keeping, NIGHT) == before
    put_back(keeping)
    assert due_rows(keeping, NIGHT) == bent
    assert bent != before
    assert differing(keeping.book.connection) == []


def test_the_board_asked_for_single_animals_says_the_same(keeping):
    kept(keeping)
    rows = due_rows(keeping, NIGHT)

    for row in rows:
        assert due_rows(keeping, NIGHT, {row.animal.animal}) == [row]


def test_an_animals_own_page_tells_the_night_of_the_board(keeping):
    kept(keeping)
    rows = [row for row in due_rows(keeping, NIGHT) if row.plan.due_on is not None]

    for row in rows:
        page = animal_page(keeping, row.animal, NIGHT)
        assert page.plan.due_on == row.plan.due_on


def test_the_plan_of_a_night_that_was_begun_stays_as_it_was(keeping):
    walk = begin_night(keeping, NIGHT)
    lines = [tub.plan for tub in walk.tubs]
    kept(keeping)

    assert [tub.plan for tub in read_tubs(keeping, walk.round)] == lines


def test_the_same_twice_is_written_once_and_other_days_take_its_place(keeping):
    told = kept(keeping)
    assert is_kept(keeping, told)
    assert keep_absence(keeping, told) is None

    longer = replace(told, last=told.last + DAY)
    keep_absence(keeping, longer)

    assert absences(keeping, NIGHT) == (longer,)
    assert len(coming_absences(keeping, NIGHT)) == 1
    take_back(keeping)
    assert absences(keeping, NIGHT) == (told,)


def test_nights_that_were_agreed_stay_when_the_page_is_printed_again(keeping, clock):
    told = kept(keeping)
    clock.to(NIGHT + DAY)
    feed(keeping, due_rows(keeping, keeping.today), keeping.today)

    assert agreed(keeping, AWAY) == told
    take_back(keeping)
    take_back(keeping)
    feed(keeping, due_rows(keeping, keeping.today), keeping.today)
    assert agreed(keeping, AWAY).nights != told.nights


def test_one_to_come_is_withdrawn_and_one_that_runs_ends_yesterday(keeping, clock):
    told = kept(keeping)
    assert next_absence(keeping) == told
    end_absence(keeping, coming_absences(keeping, NIGHT)[0])
    assert absences(keeping, NIGHT) == ()
    take_back(keeping)

    clock.to(FRIDAY + 3 * DAY)
    end_absence(keeping, coming_absences(keeping, keeping.today)[0])

    (ended,) = absences(keeping, keeping.today)
    assert (ended.first, ended.last) == (FRIDAY, FRIDAY + 2 * DAY)
    assert all(night <= ended.last for night in ended.nights)


def test_a_day_before_it_was_told_of_is_planned_as_it_was_then(keeping, clock):
    clock.to(NIGHT + DAY)
    before = due_rows(keeping, NIGHT)
    kept(keeping)

    assert due_rows(keeping, NIGHT) == before
    assert due_rows(keeping, NIGHT + DAY) != before


def test_its_nights_are_asked_of_nobody_and_those_that_were_agreed_can_be_written_up(
    keeping, clock
):
    told = kept(keeping)
    clock.to(AWAY.back)
    today = keeping.today
    begun = [night for night in missing_nights(keeping, today) if night >= AWAY.first]

    assert told.nights and begun == []
    assert set(covered_nights(keeping, today)) == set(told.nights)
    take_back(keeping)
    assert [n for n in missing_nights(keeping, today) if AWAY.covers(n)]
    assert covered_nights(keeping, today) == ()


def test_nobody_who_waited_as_planned_is_behind_when_the_keeper_is_back(keeping, clock):
    kept(keeping)
    clock.to(AWAY.back)
    rows = {row.animal.place: row.plan for row in due_rows(keeping, keeping.today)}
    waits = ("waits, away", "waited, away")
    waited = [plan for plan in rows.values() if plan.because[0].why in waits]

    assert len(waited) > 10
    assert {tub_state(plan) for plan in waited} <= {"due", "in step", "held"}
    take_back(keeping)
    plain_rows = due_rows(keeping, keeping.today)
    assert "behind" in {tub_state(row.plan) for row in plain_rows}


def test_two_stations_that_join_plan_the_same(keeping, clock, tmp_path):
    kept(keeping)
    write_bundle(keeping, tmp_path / "out")
    with closing(new_keeping(tmp_path / "other.book", station="shed", now=clock)) as other:
        join(other, looked_at(other, tmp_path / "out"))
        assert absences(other, NIGHT) == absences(keeping, NIGHT)
        for on in (NIGHT, AWAY.first, AWAY.back, WEDNESDAY_AFTER):
            assert due_rows(other, on) == due_rows(keeping, on)
        assert differing(other.book.connection) == []


def test_the_command_line_tells_the_reason_of_each(run: Run, keeping):
    kept(keeping)
    path = keeping.book.path

    said = plain(run("due", path, "--on", NIGHT.isoformat()).out)

    assert "Offered 2 days early, on Thu 26 Nov 2026: away 27 Nov 2026 to 6 Dec 2026." in said
    assert "Waits until Wed 9 Dec 2026: away 27 Nov 2026 to 6 Dec 2026; this meal may wait" in said
    rows = run("due", path, "--on", NIGHT.isoformat(), "--json").json["rows"]
    assert {row["due_on"] for row in rows} >= {"2026-11-26", "2026-12-09"}


@pytest.mark.parametrize(
    ("typed", "who"),
    [
        ("5 Dec to 14 Dec, Wren", "Wren"),
        ("5 Dec, 9 days, Wren, Ash", "Wren, Ash"),
        ("9 days, next door", "next door"),
        ("5 Dec to 14 Dec", ""),
        ("5 Dec, 9 days", ""),
    ],
)
def test_who_covers_is_typed_after_the_days(typed, who):
    assert away_typed(typed, NIGHT).who == who


def test_an_absence_in_words_is_typed_as_the_same():
    assert away_typed(absence_words(AWAY), NIGHT) == AWAY
