"""Yesterday and earlier: put right with the reason, its consequences told before it is written."""

from contextlib import closing
from datetime import date, timedelta

import pytest

from keeper.actions import undoing
from keeper.actions.consequences import consequences
from keeper.actions.due_board import due_rows
from keeper.actions.noting import note
from keeper.actions.own_entries import struck_through
from keeper.actions.past_nights import (
    Correction,
    answer_night,
    in_other_tub,
    late_night,
    looks,
    missing_nights,
    past_night,
    put_right,
)
from keeper.actions.rounds import begin_night, open_night
from keeper.actions.settings import set_feed_nights
from keeper.husbandry.events import Evidence, HoldEnded, HoldKind, HoldSet, NightTold, Result
from keeper.husbandry.when import on_day
from keeper.reports.figures import plain
from keeper.reports.words import because_text
from keeper.rules.feeding import DueState
from keeper.store.state import differing
from tests.feeding_room import NIGHT, Clock, Tub, make_book, row

WEDNESDAYS_AND_SATURDAYS = "FREQ=WEEKLY;BYDAY=WE,SA"
SATURDAY, MONDAY = date(2026, 11, 28), date(2026, 11, 30)


@pytest.fixture
def clock():
    return Clock()


@pytest.fixture
def keeping(tmp_path, clock):
    with closing(make_book(tmp_path / "night.book", row("A", 1, 4), clock)) as book:
        set_feed_nights(book, WEDNESDAYS_AND_SATURDAYS)
        yield book


@pytest.fixture
def over(keeping, clock):
    """The night as it was walked and closed, two mornings later."""
    walk = begin_night(keeping, NIGHT)
    walk.record(Result.TAKEN)
    walk.record(Result.TAKEN)
    walk.record(Result.LEFT_IN)
    walk.close()
    clock.at += timedelta(days=1, hours=12)
    night = past_night(keeping, NIGHT)
    assert night is not None
    return night


def rows_of(book):
    return {
        table: book.connection.execute(f"SELECT count(*) FROM {table}").fetchone()[0]
        for table in ("batch", "offer", "withdrawal", "withdrawn")
    }


def due_on(keeping, animal):
    return next(
        r.plan.due_on for r in due_rows(keeping, keeping.today) if r.animal.animal == animal
    )


def test_what_follows_is_told_before_anything_is_written(keeping, over):
    over.go_to(1)
    before = rows_of(keeping.book)

    told = plain(because_text(over.foreseen_found(gone=False)))

    assert told == (
        "Tansy: now refusal 1, not 0."
        " Tansy: due Wed 2 Dec 2026, not Sat 5 Dec 2026."
        " Tansy: last eaten 13 Nov 2026, not 25 Nov 2026."
        " Stock unchanged: the same prey was thawed."
    )
    assert rows_of(keeping.book) == before
    assert differing(keeping.book.connection) == []
    assert not keeping.book.connection.in_transaction


def test_what_was_foreseen_is_what_follows(keeping, over):
    over.go_to(1)
    animal = over.tub(1).plan.animal
    foreseen = {why.why: why.figures for why in over.foreseen_found(gone=False)}

    over.found(gone=False)

    assert due_on(keeping, animal) == foreseen["due instead"]["after"]
    assert over.tub(1).animal.eaten_on == foreseen["eaten instead"]["after"]
    assert over.tub(1).animal.refused_since == foreseen["refusal now"]["after"]


def test_a_refusal_after_a_hold_was_ended_is_foreseen_as_counted(keeping, over):
    animal = over.tub(1).plan.animal
    held = HoldSet(animal=animal, happened=on_day(NIGHT - timedelta(days=40)), kind=HoldKind.VET)
    ended = HoldEnded(animal=animal, happened=on_day(NIGHT - timedelta(days=30)), kind=HoldKind.VET)
    note(keeping, "hold", held)
    note(keeping, "end hold", ended)
    over.go_to(1)

    told = plain(because_text(over.foreseen(Result.REFUSED)))

    assert "now refusal 1, not 0" in told


def test_the_old_entry_stays_struck_through_with_who_and_why(keeping, over):
    over.go_to(1)

    over.found(gone=False)

    (struck,) = struck_through(keeping, over.tub(1).plan.animal, keeping.today)
    assert (struck.event.result, struck.reason, struck.by) == (Result.TAKEN, "found uneaten", "Ro")


def test_a_correction_happened_when_the_offer_did(keeping, over):
    over.go_to(1)
    before = over.tub(1).offer.event.happened

    over.record(Result.REFUSED)

    assert over.tub(1).offer.event.happened == before


def test_taking_the_correction_back_brings_the_meal_and_the_due_day_back(keeping, over):
    over.go_to(1)
    animal = over.tub(1).plan.animal
    before = due_on(keeping, animal)
    over.found(gone=False)

    over.take_back()

    assert due_on(keeping, animal) == before
    assert over.tub(1).offer.event.result is Result.TAKEN


def test_the_point_takes_back_nothing_that_was_written_before_the_night_was_opened(over):
    with pytest.raises(LookupError, match="Nothing of this round is left to take back"):
        over.take_back()


def test_a_look_that_settles_a_left_in_tub_is_no_correction(keeping, over):
    over.begin_check()

    over.found(gone=True)

    assert over.tub(3).offer.event.evidence is Evidence.GONE
    assert struck_through(keeping, over.tub(3).plan.animal, keeping.today) == ()


def test_the_keeper_may_give_another_reason(keeping, over):
    over.go_to(2)
    over.why = Correction.TYPED_LATE

    over.record(Result.REFUSED)

    (struck,) = struck_through(keeping, over.tub(2).plan.animal, keeping.today)
    assert struck.reason == "typed late"


def test_a_tub_never_written_is_filled_in_as_of_that_night(keeping, over):
    over.go_to(4)

    over.record(Result.TAKEN)

    happened = over.tub(4).offer.event.happened
    assert happened.day == NIGHT
    assert happened.at < keeping.now() - timedelta(days=1)


def test_a_regurgitation_found_today_is_of_today(keeping, over):
    over.go_to(1)

    over.regurgitated()

    assert over.tub(1).animal.regurgitated_on == keeping.today
    assert over.tub(1).animal.meals_since_regurgitation == 0


def test_an_entry_of_the_wrong_tub_moves_and_both_animals_are_told_of(keeping, over):
    entry, right = over.tub(1).offer, over.tub(4)
    instead = in_other_tub(entry, right)
    told = plain(because_text(consequences(keeping, entry, instead)))

    put_right(keeping, entry, instead, Correction.WRONG_TUB, "read the label late")

    assert "Tansy: last eaten 13 Nov 2026, not 25 Nov 2026." in told
    assert "Quill: last eaten 25 Nov 2026, not 13 Nov 2026." in told
    again = past_night(keeping, NIGHT)
    assert again.tub(1).offer is None
    assert again.tub(4).offer.event.result is Result.TAKEN
    (struck,) = struck_through(keeping, again.tub(1).plan.animal, keeping.today)
    assert struck.reason == "wrong tub: read the label late"


def test_a_tub_with_an_entry_of_its_own_takes_no_other(over):
    with pytest.raises(LookupError, match="A1·2 Bracken has an entry that night \\(taken\\)"):
        in_other_tub(over.tub(1).offer, over.tub(2))


def test_another_prey_changes_the_stock_and_nothing_else(keeping, over):
    over.go_to(1)

    told = plain(because_text(over.foreseen(Result.TAKEN, prey=("mouse hopper", 1, 8.0))))

    assert told == ("Nothing that is reckoned changes. Stock: 1 hopper mouse, not 2 fuzzy mouse.")


def test_the_last_nights_say_what_the_morning_look_has_left(keeping, over):
    (look,) = looks(keeping)

    assert (look.night, look.left_in, look.assumed, look.not_reached) == (NIGHT, 1, 0, 1)


def test_the_strip_says_which_night_is_entered(over):
    assert over.banner == "ENTERING FOR WED 25 NOV 2026"


def test_a_feed_night_without_an_offer_is_asked_about_once(keeping, over):
    assert SATURDAY not in missing_nights(keeping, SATURDAY)
    assert missing_nights(keeping, MONDAY)[-1] == SATURDAY
    assert NIGHT not in missing_nights(keeping, MONDAY)


@pytest.mark.parametrize("told", NightTold)
def test_an_answered_night_is_not_asked_about_again(keeping, over, clock, told):
    clock.at += timedelta(days=4)
    before = missing_nights(keeping, MONDAY)

    answer_night(keeping, SATURDAY, told)

    assert missing_nights(keeping, MONDAY) == before[:-1]
    undoing.take_back(keeping)
    assert missing_nights(keeping, MONDAY) == before


def test_a_round_held_a_day_off_is_no_missing_night(keeping, clock):
    sunday = SATURDAY + timedelta(days=1)
    clock.at += timedelta(days=4)
    walk = begin_night(keeping, sunday)
    walk.record(Result.TAKEN)

    assert SATURDAY not in missing_nights(keeping, MONDAY)


def test_without_feed_nights_no_night_is_missing(tmp_path):
    with closing(make_book(tmp_path / "every.book", row("A", 1, 2))) as keeping:
        assert missing_nights(keeping, MONDAY) == ()


def test_a_night_that_has_offers_takes_no_answer(keeping, over):
    with pytest.raises(ValueError, match="The night of Wed 25 Nov 2026 has offers"):
        answer_night(keeping, NIGHT, NightTold.NO_ROUND)


def test_a_night_that_is_not_over_takes_no_answer_and_no_late_entry(keeping):
    with pytest.raises(ValueError, match="Wed 25 Nov 2026 is not over"):
        answer_night(keeping, NIGHT, NightTold.NO_ROUND)
    with pytest.raises(ValueError, match="Wed 25 Nov 2026 is not over"):
        late_night(keeping, NIGHT)


def state_on(keeping, on):
    return {r.animal.name: r.plan for r in due_rows(keeping, on)}["Tansy"]


def test_after_a_night_fed_and_not_recorded_nobody_is_called_unfed_for_it(keeping, clock):
    clock.at += timedelta(days=2)
    assert state_on(keeping, SATURDAY).state is DueState.DUE

    answer_night(keeping, NIGHT, NightTold.UNWRITTEN)

    plan = state_on(keeping, SATURDAY)
    assert plan.state is DueState.CANNOT_TELL
    assert plan.because[0].why == "night not written"
    later = state_on(keeping, date(2026, 12, 5))
    assert later.state is DueState.DUE
    assert later.because[-1].why == "may have eaten then"


def test_who_was_not_due_on_the_night_that_was_not_recorded_is_not_doubted(tmp_path, clock):
    tubs = [*row("A", 1, 1), Tub(place="A1·2", name="Fed", fed_days=3)]
    with closing(make_book(tmp_path / "fed.book", tubs, clock)) as keeping:
        clock.at += timedelta(days=2)
        answer_night(keeping, NIGHT, NightTold.UNWRITTEN)

        plans = {r.animal.name: r.plan for r in due_rows(keeping, date(2026, 12, 5))}

    doubted = {n: p.because[-1].why == "may have eaten then" for n, p in plans.items()}
    assert doubted == {"Tansy": True, "Fed": False}


def test_a_night_without_a_round_leaves_everybody_due(keeping, clock):
    clock.at += timedelta(days=2)

    answer_night(keeping, NIGHT, NightTold.NO_ROUND)

    assert state_on(keeping, SATURDAY).state is DueState.DUE


def test_a_forgotten_night_is_written_up_as_of_that_night_and_its_doubt_ends(keeping, clock):
    clock.at += timedelta(days=2)
    answer_night(keeping, NIGHT, NightTold.FORGOT)

    late = late_night(keeping, NIGHT)
    late.record(Result.REFUSED)

    assert late.tub(1).animal.offered_on == NIGHT
    assert state_on(keeping, SATURDAY).because[0].why != "night not written"
    assert open_night(keeping) is None
    with pytest.raises(ValueError, match="has a round; it is put right there"):
        late_night(keeping, NIGHT)


def test_a_late_entry_does_not_come_after_a_later_meal(keeping, clock):
    clock.at += timedelta(days=3)
    saturday = begin_night(keeping, SATURDAY)
    saturday.record(Result.TAKEN)
    clock.at += timedelta(days=1)

    late_night(keeping, NIGHT).record(Result.TAKEN)

    assert state_on(keeping, MONDAY).days_since_eaten == 2
