"""Nights that embarrass a naive record: each told by the keeper's verbs on a real book on disk.

The weight slips, the clock change, the refused item, the move, the power cut, the switch of
prey, the late finding, two in a tub. The keys of the pad are held in test_round_keys.
"""

import subprocess
import sys
from collections import Counter
from contextlib import closing
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta, timezone
from pathlib import Path

import pytest

from keeper.actions.due_board import due_rows
from keeper.actions.keeping import open_keeping
from keeper.actions.life import life_of
from keeper.actions.life_lanes import Counting, refusal_marks
from keeper.actions.noting import note
from keeper.actions.own_entries import struck_through
from keeper.actions.past_nights import past_night
from keeper.actions.recording import write_up
from keeper.actions.refusal_strip import Cell, refusal_strip
from keeper.actions.rounds import begin_night, night_of, open_night
from keeper.actions.weighing import Asks, WeighIn
from keeper.husbandry.events import (
    Described,
    Moved,
    Offer,
    Result,
    Weighing,
)
from keeper.husbandry.when import at_instant, on_day
from keeper.reports.figures import plain
from keeper.reports.words import because_text
from keeper.rules.feeding import DueState
from keeper.rules.prey import choose_prey
from keeper.rules.stages import figures_of, stage_of
from keeper.store import reading
from keeper.store.state import differing
from tests.apart import OUR_TESTS
from tests.feeding_room import (
    NIGHT,
    STATION,
    Clock,
    Tub,
    ago,
    held_by_vet,
    make_book,
    quarantined,
    reopened,
    room,
    row,
)

ROOT = Path(__file__).resolve().parents[2]


@pytest.fixture
def clock():
    return Clock()


@pytest.fixture
def book(tmp_path, clock):
    """Make a book of these tubs; closed when the test ends."""
    made = []

    def make(tubs):
        keeping = make_book(tmp_path / f"{len(made)}.book", tubs, clock)
        made.append(keeping)
        return keeping

    yield make
    for keeping in made:
        keeping.close()


def offers_of(keeping, animal):
    return [entry.event for entry in reading.history(keeping.book, Offer, animal)]


def plan_of(keeping, name, on=None):
    rows = due_rows(keeping, on or keeping.today)
    return next(r.plan for r in rows if r.animal.name == name)


# --- 2: two share a tub ----------------------------------------------------------------------


@pytest.fixture
def pair(book):
    """Tansy and Ash in one tub, Bracken alone."""
    tubs = [*row("A", 1, 2), Tub(place="A1·1", name="Ash", fed_days=3)]
    return book(tubs)


def test_of_two_in_a_tub_each_is_planned_walked_and_fed_on_her_own_line(pair):
    walk = begin_night(pair, NIGHT)

    here = [(tub.line, tub.animal.name, tub.plan.state) for tub in walk.row_of(1)]

    assert here == [(1, "Tansy", "due"), (2, "Ash", "not due"), (3, "Bracken", "due")]
    walk.record(Result.TAKEN)
    assert walk.current.animal.name == "Bracken"
    assert walk.tub(2).offer is None


def test_a_regurgitation_of_one_of_two_is_written_of_the_one_it_was_seen_of(pair):
    walk = begin_night(pair, NIGHT)
    walk.record(Result.TAKEN)
    walk.go_to(2)
    walk.regurgitated()

    assert walk.tub(2).regurgitated
    assert not walk.tub(1).regurgitated
    assert plan_of(pair, "Ash").state is DueState.HOLD


def test_moving_one_of_two_leaves_the_other_where_she_was(pair):
    ash = next(r.animal for r in due_rows(pair, NIGHT) if r.animal.name == "Ash")
    note(pair, "move", Moved(animal=ash.animal, happened=at_instant(pair.now()), place="E1·1"))

    places = {r.animal.name: r.animal.place for r in due_rows(pair, NIGHT)}

    assert places == {"Tansy": "A1·1", "Bracken": "A1·2", "Ash": "E1·1"}


# --- 4: slips at the scale -------------------------------------------------------------------


@pytest.mark.parametrize("typed", ["0.412", "4120", "41,2"])
def test_a_slipped_weight_is_asked_about_and_never_changed_by_itself(book, typed):
    keeping = book([Tub(place="A1·1", name="Ingrid", weight_g=410.0)])
    scales = WeighIn(keeping)

    asked = scales.weigh(typed)

    assert isinstance(asked, Asks)
    assert f"{asked.typed_g:g}" == typed.replace(",", ".")
    assert asked.verdict.guess_g == pytest.approx(412)
    assert scales.current.name == "Ingrid"
    assert (
        reading.recent(keeping.book, Weighing, [scales.current.animal], 1)[scales.current.animal][
            0
        ].weight_g
        == 410.0
    )


def ten_days_old(animal):
    """A hatchling in place of the grown animal of the room, weighed a week ago."""
    hatched = ago(10)
    described = Described(
        animal=animal,
        code="26-01 a",
        species="house_snake",
        name="Wee",
        hatched_first=hatched,
        hatched_last=hatched,
        happened=on_day(hatched),
    )
    return [described, Weighing(animal=animal, happened=on_day(ago(7)), weight_g=3.5)]


def test_a_genuine_hatchling_weight_passes_in_silence(book):
    keeping = book([Tub(place="H1·1", name="Wee", fed_days=None, weight_g=None, more=ten_days_old)])
    scales = WeighIn(keeping)

    written = scales.weigh("3.4")

    assert not isinstance(written, Asks)
    assert scales.current is None


# --- 5: the clock goes back in a night round --------------------------------------------------

SUMMER, WINTER = timezone(timedelta(hours=1)), UTC
BACK = date(2026, 10, 24)
"""In Britain the clock went from 02:00 summer time back to 01:00 in the small hours after."""


class TurningClock:
    """Instants as a wall clock in Britain tells them, one for each look."""

    def __init__(self) -> None:
        first = datetime(2026, 10, 25, 0, 50, tzinfo=SUMMER)
        self.looks = iter(first + timedelta(minutes=8 * n) for n in range(10_000))
        self.last = first

    def __call__(self) -> datetime:
        self.last = next(self.looks).astimezone(UTC)
        zone = SUMMER if self.last < datetime(2026, 10, 25, 1, tzinfo=UTC) else WINTER
        return self.last.astimezone(zone)


@pytest.fixture
def turned(book):
    """A night walked through the hour that comes twice."""
    tubs = [replace(tub, fed_days=45) for tub in row("A", 1, 6)]
    keeping = replace(book(tubs), now=TurningClock())
    walk = begin_night(keeping, BACK)
    for _ in range(6):
        walk.record(Result.TAKEN)
    return keeping, walk


def test_a_round_through_the_clock_change_is_one_night(turned):
    _, walk = turned
    happened = [tub.offer.event.happened for tub in walk.tubs]

    assert {h.day for h in happened} == {BACK} == {walk.night}
    assert {h.at.utcoffset() for h in happened} == {timedelta(hours=1), timedelta(0)}
    assert night_of(happened[-1].at) == BACK


def test_half_past_one_twice_keeps_its_order_by_sequence(turned):
    _, walk = turned
    shown = [f"{tub.offer.event.happened.at:%H:%M}" for tub in walk.tubs]
    keys = [(tub.offer.event.happened.at, tub.offer.key.batch) for tub in walk.tubs]

    assert shown != sorted(shown)
    assert keys == sorted(keys)


def test_days_since_eaten_count_nights_and_not_hours(turned):
    keeping, _ = turned

    plan = plan_of(keeping, "Tansy", BACK + timedelta(days=7))

    assert plan.days_since_eaten == 7


# --- 7: a refused item eaten by another -------------------------------------------------------


def test_a_refused_item_eaten_by_another_is_one_item_and_two_entries(book):
    keeping = book(row("A", 1, 3))
    walk = begin_night(keeping, NIGHT)

    walk.pass_on(3)

    giver, taker = walk.tub(1).offer, walk.tub(3).offer
    assert (giver.event.result, taker.event.result) == (Result.REFUSED, Result.TAKEN)
    assert (giver.event.prey, giver.event.mass_g) == (taker.event.prey, taker.event.mass_g)
    assert giver.key.batch == taker.key.batch


def test_who_took_it_is_not_due_twice(book):
    keeping = book(row("A", 1, 3))
    walk = begin_night(keeping, NIGHT)
    walk.pass_on(3)

    lines = []
    while walk.current is not None:
        lines.append(walk.current.line)
        walk.record(Result.TAKEN)

    assert lines == [2]
    assert plan_of(keeping, "Orrin").state is DueState.NOT_DUE
    assert plan_of(keeping, "Tansy").days_since_eaten == 12


@pytest.mark.parametrize("apart", [quarantined, held_by_vet])
def test_an_item_goes_neither_to_nor_from_an_animal_kept_apart(book, apart):
    tubs = row("A", 1, 3)
    tubs[2] = replace(tubs[2], more=apart)
    keeping = book(tubs)
    walk = begin_night(keeping, NIGHT)

    with pytest.raises(LookupError, match="is kept apart"):
        walk.pass_on(3)
    walk.go_to(3)
    with pytest.raises(LookupError, match="is kept apart"):
        walk.pass_on(1)

    assert all(tub.offer is None for tub in walk.tubs)


# --- 8: moved in mid-round --------------------------------------------------------------------


def test_an_animal_moved_in_mid_round_is_visited_once(book):
    keeping = book([*row("C", 1, 4), *row("E", 1, 3, first=10)])
    walk = begin_night(keeping, NIGHT)
    walk.record(Result.TAKEN)
    moved = walk.tub(4).plan.animal
    note(keeping, "move", Moved(animal=moved, happened=at_instant(keeping.now()), place="E1·9"))

    again = open_night(reopened(keeping))
    visited = []
    while again.current is not None:
        visited.append(again.current.plan.animal)
        again.record(Result.TAKEN)

    assert Counter(visited)[moved] == 1
    assert len(visited) == len(set(visited)) == 6
    tub = again.tub(4)
    assert (tub.plan.place, tub.animal.place) == ("C1·4", "E1·9")


# --- 9: a power cut at 143 of 300 -------------------------------------------------------------

CUT = f"""{OUR_TESTS}import os, signal
from tests.journeys.test_night_scenarios import walk_until_the_cut
walk_until_the_cut(sys.argv[1], 143)
os.kill(os.getpid(), signal.SIGKILL)
"""


def walk_until_the_cut(path, tubs):
    keeping = open_keeping(Path(path), station=STATION, now=Clock(), keeper="Ro")
    walk = begin_night(keeping, NIGHT)
    for _ in range(tubs):
        walk.record(Result.TAKEN)


def test_after_a_power_cut_at_143_of_300_the_rest_is_not_reached_and_not_refused(book):
    keeping = book(room())
    keeping.close()
    subprocess.run(
        [sys.executable, "-c", CUT, str(keeping.book.path)], cwd=ROOT, timeout=120, check=False
    )

    again = reopened(keeping)
    walk = open_night(again)

    with closing(again):
        results = Counter(t.offer.event.result if t.offer else None for t in walk.tubs)
        assert results == {Result.TAKEN: 143, None: 157}
        assert walk.cursor == 144
        assert walk.tub(143).offer.event.happened.at > walk.tub(142).offer.event.happened.at
        assert differing(again.book.connection) == []


# --- 14: mice to rats -------------------------------------------------------------------------


@pytest.fixture
def switching(book):
    """Ingrid on mice, offered rats instead on two nights."""
    keeping = book([Tub(place="A1·1", name="Ingrid", weight_g=300.0)])
    animal = due_rows(keeping, NIGHT)[0].animal.animal
    for days in (10, 5):
        refused = Offer(
            animal=animal,
            happened=on_day(ago(days)),
            result=Result.REFUSED,
            prey="rat fuzzy",
            count=1,
            mass_g=14.0,
        )
        write_up(keeping, [refused])
    return keeping


def test_after_two_refusals_of_rat_she_is_offered_mouse_again(switching):
    plan = plan_of(switching, "Ingrid")

    assert plan.state is DueState.DUE
    assert [offer.prey.split()[0] for offer in plan.offer] == ["mouse"]


def test_the_refusals_are_told_as_the_switch_and_not_as_appetite(switching):
    told = plain(because_text(plan_of(switching, "Ingrid").because))

    assert "(0 refusals counted)" in told
    assert (
        "2 refusals of rat straight after a change from mouse: that is the change of prey,"
        " not appetite."
    ) in told


def test_the_margins_of_the_nights_count_no_refusal_of_the_switch(switching):
    strip = refusal_strip(switching, NIGHT)
    (ingrid,) = strip.rows[0].animals

    assert [cell for cell in ingrid.cells if cell][-2:] == [Cell.EXCUSED, Cell.EXCUSED]
    assert strip.rows[0].margin.refused == 0


def test_the_strip_of_her_life_marks_them_as_excused(switching):
    row_now = due_rows(switching, NIGHT)[0].animal
    offers = offers_of(switching, row_now.animal)

    marks = list(refusal_marks(offers, (), (), switching.profile(row_now)))

    assert [(mark.day, mark.counting) for mark in marks] == [
        (ago(10), Counting.EXCUSED),
        (ago(5), Counting.EXCUSED),
    ]


def test_the_third_refusal_of_rat_is_one_of_appetite(switching):
    animal = due_rows(switching, NIGHT)[0].animal.animal
    third = Offer(
        animal=animal,
        happened=on_day(ago(1)),
        result=Result.REFUSED,
        prey="rat fuzzy",
        count=1,
        mass_g=14.0,
    )
    write_up(switching, [third])

    assert "(1 refusal counted)" in plain(because_text(plan_of(switching, "Ingrid").because))


@pytest.mark.parametrize("kind", ["mouse", "rat"])
def test_the_meal_is_near_the_same_target_whatever_the_kind(switching, kind):
    row_now = due_rows(switching, NIGHT)[0].animal
    profile = switching.profile(row_now)
    stage = stage_of(row_now, profile, NIGHT)
    figures = figures_of(profile, stage, row_now.sex)

    (meal,) = choose_prey(300.0, figures, profile.prey, (), kind=kind).offer

    assert meal.prey.startswith(kind)
    assert 0.8 <= meal.grams / (3.0 * figures.meal_percent.value) <= 1.2


# --- 15: found uneaten two mornings later -----------------------------------------------------


@pytest.fixture
def late_found(book, clock):
    """A night that was swept, closed, and looked at again two mornings later."""
    keeping = book(row("A", 1, 3))
    walk = begin_night(keeping, NIGHT)
    walk.sweep()
    walk.close()
    clock.at += timedelta(days=1, hours=12)
    return keeping


def test_found_uneaten_two_mornings_later_moves_due_and_refusals_as_foreseen(late_found):
    keeping, night = late_found, past_night(late_found, NIGHT)
    night.go_to(2)
    before = plan_of(keeping, "Bracken").due_on

    told = plain(because_text(night.foreseen_found(gone=False)))
    night.found(gone=False)

    after = plan_of(keeping, "Bracken")
    assert after.due_on < before
    assert after.days_since_eaten == 14
    assert "Bracken: now refusal 1, not 0." in told
    assert "Stock unchanged" in told


def test_the_weight_after_it_no_longer_holds_a_meal(late_found):
    keeping, night = late_found, past_night(late_found, NIGHT)
    animal = night.tub(2).plan.animal
    note(
        keeping,
        "weigh",
        Weighing(animal=animal, happened=at_instant(keeping.now()), weight_g=121.0),
    )
    assert reading.animal_now(keeping.book, animal).meal_before_weighing_on == NIGHT

    night.go_to(2)
    night.found(gone=False)

    assert reading.animal_now(keeping.book, animal).meal_before_weighing_on == ago(12)
    assert differing(keeping.book.connection) == []


def test_the_meal_stays_struck_through_and_can_be_put_back(late_found):
    keeping, night = late_found, past_night(late_found, NIGHT)
    animal = night.tub(2).plan.animal
    night.go_to(2)
    night.why = None
    night.checking = False
    night.record(Result.REFUSED)

    (struck,) = struck_through(keeping, animal, keeping.today)
    night.take_back()

    assert (struck.reason, struck.by) == ("found uneaten", "Ro")
    assert life_of(keeping, animal, keeping.today).offers[-1].result is Result.TAKEN
