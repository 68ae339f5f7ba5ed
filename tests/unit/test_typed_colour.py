"""Scores as keepers type them, of one animal and of a clutch; in German too."""

import json
from datetime import date

import pytest

from keeper.actions.typed_colour import clutch_typed, colour_typed
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.when import on_day
from tests.unit.test_language import python

DAY = on_day(date(2026, 5, 4))
YOUNG = [AnimalNow(animal=n, code=f"c{n}", species="x", place=f"A1·{n}") for n in range(1, 5)]


def one(text, known=("red",)):
    event = colour_typed(1, DAY, text, known).event
    return event.trait, event.score, event.note


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("colour red 7", ("red", 7.0, None)),
        ("red 7.5", ("red", 7.5, None)),
        ("red 7,5", ("red", 7.5, None)),
        ("RED: 7/10", ("red", 7.0, None)),
        ("dark red=6", ("dark red", 6.0, None)),
        ("red 7 after the third shed", ("red", 7.0, "after the third shed")),
        ("red 7, 3 days after a shed", ("red", 7.0, "3 days after a shed")),
        ("colour 8", ("red", 8.0, None)),
        ("8", ("red", 8.0, None)),
    ],
)
def test_a_look_and_its_score_are_read(text, expected):
    assert one(text) == expected


@pytest.mark.parametrize("text", ["red 12", "red 0", "red 10.5"])
def test_a_score_that_is_not_one_to_ten_is_refused_with_it(text):
    with pytest.raises(ValueError, match="between 1 and 10, got"):
        one(text)


@pytest.mark.parametrize("text", ["red", "colour red", "red seven", "-"])
def test_a_look_without_a_number_is_refused(text):
    with pytest.raises(ValueError, match="red 7 is right"):
        one(text)


def test_a_number_alone_is_refused_where_two_looks_are_known():
    with pytest.raises(ValueError, match="Which look"):
        one("7", known=("red", "pale"))


def test_a_look_that_is_new_is_told_so_that_a_slip_is_seen():
    assert "a new look beside red" in colour_typed(1, DAY, "rde 7", ("red",)).what
    assert "new" not in colour_typed(1, DAY, "red 7", ()).what


def many(text):
    return [(e.animal, e.score) for e in clutch_typed(YOUNG, DAY, text, ("red",)).events]


def test_a_clutch_is_scored_in_walking_order():
    assert many("red 7 6,5 8 5") == [(1, 7), (2, 6.5), (3, 8), (4, 5)]


def test_a_dash_leaves_one_out():
    assert many("colour red 7 - 8 -") == [(1, 7), (3, 8)]


def test_while_scores_are_missing_it_says_whose_turn_it_is():
    with pytest.raises(ValueError, match="2 of 4; next is A1·3 c3"):
        many("red 7 6")


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("red 7 6 5 4 3", "5 scores for 4 young"),
        ("red 7 6 5 40", "between 1 and 10"),
        ("red - - - -", "Not one"),
        ("red 7 6 x 4", "walking order"),
    ],
)
def test_a_clutch_that_cannot_be_read_is_refused(text, says):
    with pytest.raises(ValueError, match=says):
        many(text)


GERMAN = """
import json
from datetime import date
from keeper.desktop.chosen_language import choose
choose()
from keeper.actions.typed_colour import colour_typed
from keeper.husbandry.when import on_day
day = on_day(date(2026, 5, 4))
said = [colour_typed(1, day, text, ("rot",)) for text in ("farbe rot 7,5", "colour rot 7.5")]
print(json.dumps([[each.what for each in said], [str(each.event) for each in said]]))
"""


def test_a_score_is_typed_in_german_and_written_as_the_same_entry():
    what, events = json.loads(python(GERMAN))

    assert what[0] == what[1] == "rot 7.5 von 10"
    assert events[0] == events[1]
