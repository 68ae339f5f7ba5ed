"""The offer pass on a real book: what each key writes, where the cursor goes, what is said."""

from contextlib import closing
from datetime import UTC, datetime, timedelta

import pytest
from round_desk import FUZZIES, ROW, desk, offers, stands_at, walk

from keeper.actions.rounds import night_of
from keeper.desktop.screens.round import RoundScreen
from keeper.husbandry.events import (
    Cleaned,
    Evidence,
    HoldKind,
    Offer,
    Regurgitation,
    Result,
    ShedQuality,
    ShedSign,
    ShedStage,
)
from keeper.husbandry.house import Cleaning
from keeper.store import reading
from tests.feeding_room import (
    Clock,
    make_book,
)
from tests.pad_desk import Desk, said_on


@pytest.fixture
def keeping(tmp_path):
    with closing(make_book(tmp_path / "night.book", ROW, Clock(timedelta(seconds=5)))) as book:
        yield book


__all__ = ["desk"]


# --- before a round --------------------------------------------------------------------------


def test_the_quiet_page_counts_tonight_by_rack(qtbot, keeping):
    desk = Desk(RoundScreen, keeping)
    said = said_on(desk.page)

    assert "all: 5 due, 2 hold, 1 not due, 1 cannot tell" in said
    assert "B: 2 due, 0 hold, 0 not due, 0 cannot tell" in said
    assert "Enter begins the round of Wed 25\u00a0Nov" in said
    desk.close()


@pytest.mark.parametrize(("hour", "day"), [(9, 24), (10, 25), (23, 25), (0, 24)])
def test_a_round_begun_before_ten_in_the_morning_counts_for_the_night_before(hour, day):
    assert night_of(datetime(2026, 11, 25, hour, 30, tzinfo=UTC)).day == day


def test_a_round_begun_after_midnight_is_the_night_before_and_everything_counts_for_it(
    qtbot, tmp_path
):
    late = Clock()
    late.at = datetime(2026, 11, 26, 0, 40, tzinfo=UTC)
    with closing(make_book(tmp_path / "late.book", ROW, late)) as keeping:
        desk = Desk(RoundScreen, keeping)
        desk.press("Enter Enter * 2")

        assert walk(keeping).night.isoformat() == "2026-11-25"
        assert offers(keeping)[1].happened.day.isoformat() == "2026-11-25"
        (sign,) = reading.history(keeping.book, ShedSign, walk(keeping).tub(2).plan.animal)
        assert sign.event.happened.day.isoformat() == "2026-11-25"
        desk.close()


def test_enter_begins_the_round_at_the_first_tub_that_is_due(desk, keeping):
    assert walk(keeping).night.isoformat() == "2026-11-25"
    assert stands_at(desk, "Tansy")
    assert "0 of 6 walked" in said_on(desk.page)


# --- the offer pass --------------------------------------------------------------------------


def test_each_result_is_written_and_the_walk_goes_on_past_what_is_not_due(desk, keeping):
    desk.press("Enter 0 5 7 6 2")

    told = {line: (o.result, o.withheld) for line, o in offers(keeping).items()}
    assert told == {
        1: (Result.TAKEN, None),
        2: (Result.REFUSED, None),
        3: (Result.LEFT_IN, None),
        7: (Result.NOT_OFFERED, HoldKind.VET),
        8: (Result.PART, None),
    }
    assert all(offer.evidence is Evidence.SEEN for offer in offers(keeping).values())
    assert stands_at(desk, "Wick")


def test_dead_keys_write_nothing_and_leave_the_cursor(desk, keeping):
    desk.press("1 4 6")

    assert offers(keeping) == {}
    assert stands_at(desk, "Tansy")
    assert desk.refused == []


def test_the_foot_is_told_the_tub_the_result_and_the_prey(desk):
    desk.press("5")

    told = desk.written[-1]
    assert (told.where, told.what) == ("A1·1 Tansy", "left in, 2 fuzzy mouse, 10\u00a0g")


def test_the_keepers_caution_stands_on_the_front_and_on_the_panel(desk):
    assert "tub 2, Bracken, not reached, BITES" in said_on(desk.page)

    desk.press("Enter")

    assert "BITES, tongs at full length" in said_on(desk.page)


def test_a_regurgitation_is_written_the_tub_stays_and_its_caution_shows(desk, keeping):
    desk.press("8")

    found = reading.all_of(keeping.book, Regurgitation)
    assert [entry.event.happened.day for entry in found] == [walk(keeping).night]
    assert offers(keeping) == {}
    assert "Tansy, regurgitation found" in said_on(desk.page)
    assert "REGURGITATED, hold to 9\u00a0Dec; water, heat, no handling" in said_on(desk.page)


def test_other_prey_is_shown_and_written_with_the_grams_of_its_grade(desk, keeping):
    desk.press("/ 4 1")
    assert "1 × hopper mouse, 8\u00a0g" in said_on(desk.page)
    desk.press("0 Enter")

    first, second = offers(keeping)[1], offers(keeping)[2]
    assert (first.result, first.prey, first.count, first.mass_g) == (
        Result.REFUSED,
        "mouse hopper",
        1,
        8.0,
    )
    assert (second.prey, second.count, second.mass_g) == FUZZIES


def test_a_sign_of_shed_is_written_at_once_and_the_tub_stays(desk, keeping):
    desk.press("* 5")

    (sign,) = reading.history(keeping.book, ShedSign, walk(keeping).tub(1).plan.animal)
    assert (sign.event.stage, sign.event.quality) == (ShedStage.SHED, ShedQuality.PIECES)
    assert stands_at(desk, "Tansy")
    assert desk.written[-1].what == "shed in pieces"


def test_an_empty_tub_is_passed_by_and_no_result_can_be_written_for_it(desk, keeping):
    desk.press("* 0 Enter")

    assert desk.refused == ["A1·1 Tansy is not in its tub; 7 and a reason goes on."]
    assert offers(keeping) == {}
    desk.press("7 9")
    assert stands_at(desk, "Bracken")


def test_a_line_is_gone_to_and_a_held_animal_can_be_fed_with_a_prey_of_choice(desk, keeping):
    desk.press("9 4 Enter Enter")
    assert desk.refused == [
        "Nothing is planned for A1·4 Quill; 4 offers it all the same, / chooses the prey."
    ]

    desk.press("/ 3 1 Enter")

    assert offers(keeping)[4].prey == "mouse fuzzy"


def test_a_line_that_is_not_there_is_one_sentence_and_the_cursor_stays(desk):
    desk.press("9 9 9 Enter")

    assert desk.refused == ["There is no line 99 tonight; lines run 1 to 9."]
    assert stands_at(desk, "Tansy")


def test_after_a_refusal_the_next_good_key_clears_the_foot(desk):
    desk.press("9 9 9 Enter -")

    assert desk.noted[-1] == ""


def test_stepping_back_shows_what_was_written_and_a_new_key_strikes_it_through(desk, keeping):
    desk.press("Enter -")
    assert "Tansy, taken" in said_on(desk.page)
    desk.press("0")

    animal = walk(keeping).tub(1).plan.animal
    tonight = [
        (entry.event.result, entry.stands)
        for entry in reading.history(keeping.book, Offer, animal, withdrawn_too=True)
        if entry.event.round is not None
    ]
    assert tonight == [(Result.TAKEN, False), (Result.REFUSED, True)]
    assert stands_at(desk, "Bracken")


def test_the_point_takes_back_the_whole_round_and_says_what(desk, keeping):
    desk.press("Enter * 2 0 . . .")

    assert [w.what for w in desk.written[-3:]] == [
        "taken back: refused, 2 fuzzy mouse, 10\u00a0g",
        "taken back: mark",
        "taken back: taken, 2 fuzzy mouse, 10\u00a0g",
    ]
    assert offers(keeping) == {}
    desk.press(".")
    assert desk.refused == ["Nothing of this round is left to take back."]


def test_a_tub_cleaned_is_marked_with_one_key_and_the_tub_stays(desk, keeping):
    desk.press("* / * +")

    tub = walk(keeping).tub(1).plan
    cleaned = reading.history(keeping.book, Cleaned, tub.animal)
    assert [entry.event.extent for entry in cleaned] == [Cleaning.WHOLE, Cleaning.SPOT]
    assert [written.what for written in desk.written[-2:]] == ["cleaned", "spot clean"]
    assert stands_at(desk, "Tansy")


# --- an item passed on -----------------------------------------------------------------------


def test_an_item_passed_on_is_a_refusal_here_and_a_taken_there_in_one_batch(desk, keeping):
    desk.press("3 8 Enter")

    giver, taker = (walk(keeping).tub(line).offer for line in (1, 8))
    assert (giver.event.result, taker.event.result) == (Result.REFUSED, Result.TAKEN)
    assert (taker.event.prey, taker.event.count, taker.event.mass_g) == FUZZIES
    assert giver.key.batch == taker.key.batch
    assert stands_at(desk, "Bracken")
    desk.press(".")
    assert offers(keeping) == {}
    assert stands_at(desk, "Tansy")


@pytest.mark.parametrize(
    ("keys", "sentence"),
    [
        (
            "3 3 Enter",
            "A1·3 Orrin is kept apart (quarantine): bin the item, it goes to no other tub.",
        ),
        ("3 6 Enter", "A1·7 Sorrel is kept apart (vet): bin the item, it goes to no other tub."),
        ("3 1 Enter", "Line 1 is this tub; give the line that took the item."),
        ("3 9 9 Enter", "There is no line 99 tonight; lines run 1 to 9."),
        (
            "9 8 Enter Enter 9 1 Enter 3 8 Enter",
            "B1·1 Linnet has had an item tonight (taken); a second one is a double feed.",
        ),
        (
            "9 8 Enter * 7 9 1 Enter 3 8 Enter",
            "B1·1 Linnet is kept apart (mites): bin the item, it goes to no other tub.",
        ),
        (
            "Enter Enter 3 8 Enter",
            "A1·3 Orrin is kept apart (quarantine): bin the item, it goes to no other tub.",
        ),
    ],
)
def test_an_item_goes_to_no_tub_that_must_not_have_it(desk, keeping, keys, sentence):
    desk.press(keys)

    assert desk.refused == [sentence]
    assert all(offer.result is Result.TAKEN for offer in offers(keeping).values())
