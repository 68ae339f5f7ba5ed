"""Keys of a round as steps: what one key asks for, and what is typed after it."""

import pytest

from keeper.actions.round_entries import OtherResult
from keeper.desktop.screens.round_asking import Closing, Count, Grades, Line, Marks, Reasons, Sweep
from keeper.desktop.screens.round_deeds import GIVE_UP, Deed, Refused, Verb
from keeper.desktop.screens.round_input import (
    CHECK_LEGEND,
    OFFER_LEGEND,
    Ground,
    check_key,
    end_key,
    offer_key,
    quiet_key,
)
from keeper.husbandry.events import HoldKind, Result
from tests.builders import a_grade, all_prey

GROUND = Ground(
    grades=all_prey(),
    places={"3": 13, "4": 14, "0": 20},
    covered=frozenset({13, 14, 20}),
)


def typed(step, keys):
    """The step after *keys*."""
    for key in keys.split():
        step = step.press(key)
    return step


@pytest.mark.parametrize("key", ["1", "4", "6"])
def test_the_dead_keys_ask_for_nothing_in_either_pass(key):
    assert offer_key(key, GROUND) is None
    assert check_key(key, GROUND) is None
    assert key not in OFFER_LEGEND
    assert key not in CHECK_LEGEND


@pytest.mark.parametrize(
    ("key", "result"),
    [("Enter", Result.TAKEN), ("0", Result.REFUSED), ("5", Result.LEFT_IN), ("2", Result.PART)],
)
def test_one_key_says_what_became_of_the_offer(key, result):
    assert offer_key(key, GROUND) == Deed(verb=Verb.RECORD, result=result)


@pytest.mark.parametrize(
    ("key", "kind"),
    [
        ("1", HoldKind.OPAQUE),
        ("2", HoldKind.JUST_SHED),
        ("3", HoldKind.REGURGITATED),
        ("4", HoldKind.GRAVID),
        ("5", HoldKind.SEASON),
        ("6", HoldKind.VET),
        ("9", HoldKind.OTHER),
    ],
)
def test_not_offered_takes_its_reason(key, kind):
    told = typed(offer_key("7", GROUND), key)

    assert told == Deed(verb=Verb.RECORD, result=Result.NOT_OFFERED, withheld=kind)


def test_a_key_that_names_no_reason_is_dead_and_the_point_gives_up():
    assert Reasons().press("8") is None
    assert Reasons().press(".") == GIVE_UP


def test_every_live_key_of_the_offer_pass_leads_to_a_step():
    assert all(offer_key(key, GROUND) is not None for key in OFFER_LEGEND)
    assert all(check_key(key, GROUND) is not None for key in CHECK_LEGEND)


def test_a_line_is_typed_rubbed_out_and_gone_to():
    assert typed(offer_key("9", GROUND), "1 4 - 2 Enter") == Deed(verb=Verb.GO_TO, line=12)
    assert typed(offer_key("3", GROUND), "8 Enter") == Deed(verb=Verb.PASS_ON, line=8)


def test_enter_without_a_line_is_refused_and_goes_on_asking():
    told = Line(Verb.GO_TO).press("Enter")

    assert told == Refused("No line was typed; give its number, then Enter.", Line(Verb.GO_TO))


def test_another_prey_is_a_grade_and_a_count_at_the_mean_of_the_grade():
    told = typed(offer_key("/", GROUND), "3 2")

    assert told == Deed(verb=Verb.PREY, prey=("mouse hopper", 2, 18.0))


def test_the_slash_shows_the_other_kind_of_prey():
    told = typed(offer_key("/", GROUND), "/ 2 1")

    assert told == Deed(verb=Verb.PREY, prey=("rat fuzzy", 1, 14.0))


def test_the_last_other_prey_comes_back_with_enter():
    last = ("rat fuzzy", 1, 14.0)

    assert Grades(all_prey(), last).press("Enter") == Deed(verb=Verb.PREY, prey=last)
    assert Grades(all_prey()).press("Enter") is None


def test_forty_items_are_doubted_at_the_four_and_refused_at_the_nought():
    first = Count(a_grade("hopper", 7, 9, 12)).press("4")
    second = first.then.press("0")

    assert first.sentence == "4 items are more than the 3 of a usual meal; 4 again takes them."
    assert second.sentence == "0 items is no offer; 1 to 9 are right."


def test_more_items_than_usual_are_taken_when_typed_twice():
    first = Count(a_grade("hopper", 7, 9, 12)).press("4")

    assert first.then.press("4") == Deed(verb=Verb.PREY, prey=("mouse hopper", 4, 36.0))


def test_a_mark_is_one_digit():
    assert Marks().press("4") == Deed(verb=Verb.MARK, digit="4")
    assert Marks().press("Enter") is None


def test_a_sweep_collects_pairs_of_place_and_result_until_enter():
    told = typed(offer_key("+", GROUND), "3 0 0 7 1 Enter")

    assert told == Deed(
        verb=Verb.SWEEP,
        others=(
            OtherResult(line=13, result=Result.REFUSED),
            OtherResult(line=20, result=Result.NOT_OFFERED, withheld=HoldKind.OPAQUE),
        ),
    )


def test_a_place_typed_again_replaces_its_result():
    told = typed(offer_key("+", GROUND), "3 0 3 5 Enter")

    assert told.others == (OtherResult(line=13, result=Result.LEFT_IN),)


@pytest.mark.parametrize("key", ["+", "."])
def test_a_sweep_is_given_up(key):
    assert typed(offer_key("+", GROUND), "3 0").press(key) == GIVE_UP


def test_a_sweep_of_the_check_pass_knows_only_still_there():
    sweep = typed(check_key("+", GROUND), "4")

    assert sweep.press("5") is None
    assert typed(sweep, "0 Enter").others == (OtherResult(line=14, result=Result.REFUSED),)


def test_a_sweep_says_how_many_it_settles():
    sweep = typed(Sweep(GROUND.places, GROUND.covered), "3 0")

    assert sweep.advice == "2 as planned, 1 not; Enter writes the row"


def test_the_end_of_a_pass_offers_the_check_or_asks_to_close():
    assert end_key("Enter", unproved=True) == Deed(verb=Verb.CHECK)
    assert end_key("Enter", unproved=False) == Deed(verb=Verb.ASK_CLOSE)
    assert end_key("0", unproved=True) == Deed(verb=Verb.ASK_CLOSE)


def test_only_a_second_enter_closes():
    assert Closing("17 not reached").press("Enter") == Deed(verb=Verb.CLOSE)
    assert Closing("17 not reached").press("0") == GIVE_UP


def test_with_no_round_open_only_enter_five_and_six_do_something():
    live = {key for key in [*OFFER_LEGEND, "1", "4", "6"] if quiet_key(key)}

    assert live == {"Enter", "5", "6"}
