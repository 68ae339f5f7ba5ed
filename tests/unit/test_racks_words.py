"""What the racks say in words: the row first, the chosen tub, the totals of the nights."""

from datetime import date, timedelta

import pytest

from keeper.actions.due_board import DueRow
from keeper.actions.rack_heat import PlaceHeat
from keeper.actions.rack_layers import Layer, Shown, layer_of
from keeper.actions.racks import room_of
from keeper.actions.racks_desk import PlaceCause
from keeper.actions.refusal_strip import Cell, Strip, StripAnimal, StripRow
from keeper.desktop.screens.racks_strip import picture_of
from keeper.desktop.screens.racks_words import fronts_of, lines_of
from keeper.desktop.widgets.rack_faces import FACES
from keeper.husbandry.reasons import because
from keeper.rules.feeding import DueState, Plan
from tests.builders import a_profile, an_animal

ON = date(2026, 11, 25)
TOGETHER = because(
    "refused together",
    kind="row",
    name="A2",
    refused=4,
    offered=7,
    expected=0.4,
    nights=1,
    chance=0.0002,
)
CAUSES = {"A2": PlaceCause(kind="cold row", because=(TOGETHER, because("too cold")))}


def a_heat(temp_c=24.3, fresh=True, state="too cold"):
    return PlaceHeat(
        place="A2", temp_c=temp_c, on=ON, state=state, low_c=30, high_c=32, fresh=fresh
    )


def a_room(heat=None):
    rows = [
        DueRow(
            animal=an_animal(animal=number, name=name, place=place),
            plan=Plan(animal=number, state=DueState.DUE, lateness=2.2, interval_days=6),
        )
        for number, (name, place) in enumerate((("Teasel", "A2·1"), ("Orrin", "B1·1")), start=1)
    ]
    profiles = {row.animal.animal: a_profile() for row in rows}
    return room_of(rows, ON, {}, profiles, {"A2": heat} if heat else {})


def told(room, rack=0, row=1, causes=CAUSES):
    shown = layer_of(room, Layer.RATIO)
    where = room.racks[rack].rows[row]
    tub, state = where.tubs[0], shown.racks[rack][row][0]
    face = FACES[Layer.RATIO][state.state]
    chosen = tub.living[0] if tub.living else None
    return lines_of(room, where, tub, state, face, chosen, causes)


def test_the_chosen_tub_is_told_by_place_name_and_verdict():
    words = told(a_room())

    assert (words.place, words.name, words.verdict) == ("A2·1", "Teasel", "F 2.2")
    assert "female" in words.who


def test_the_row_comes_first_with_what_its_hot_end_read_and_wants():
    words = told(a_room(a_heat()))

    assert words.row.startswith("hot end 24.3\u00a0°C on 25\u00a0Nov, wanted 30–32\u00a0°C. ")
    assert "4 of 7 refused" in words.row


def test_a_row_without_a_cause_is_not_told_of():
    assert told(a_room(), rack=1, row=0).row == ""


@pytest.mark.parametrize(
    ("heat", "figure", "out"),
    [
        (a_heat(), "24.3", True),
        (a_heat(31.0, state="within"), "31.0", False),
        (a_heat(32.4, state="beyond wished"), "32.4", False),
        (a_heat(fresh=False), "(24.3)", False),
        (None, "", False),
    ],
)
def test_only_a_fresh_hot_end_out_of_range_is_reversed(heat, figure, out):
    room = a_room(heat)
    row = fronts_of(room, layer_of(room, Layer.RATIO))[0].rows[1]

    assert (row.heat, row.out) == (figure, out)


def test_every_tub_is_a_sentence_with_place_name_state_and_figure():
    room = a_room()
    fronts = fronts_of(room, layer_of(room, Layer.RATIO))

    assert fronts[0].rows[1].tubs[0].words == "A2·1, Teasel, far behind 2.2"


def test_what_is_drawn_as_before_is_the_same_object_and_what_differs_is_not():
    before = fronts_of(a_room(a_heat()), layer_of(a_room(a_heat()), Layer.RATIO))
    again = fronts_of(a_room(a_heat()), layer_of(a_room(a_heat()), Layer.RATIO), before)
    warmer = a_room(a_heat(31.0, state="within"))
    after = fronts_of(warmer, layer_of(warmer, Layer.RATIO), before)

    assert all(new is old for new, old in zip(again, before, strict=True))
    assert after[0] is not before[0]
    assert after[0].rows[0] is before[0].rows[0]
    assert after == fronts_of(warmer, layer_of(warmer, Layer.RATIO))


def test_a_layer_without_a_reason_says_its_state_in_words():
    room = a_room()
    where = room.racks[0].rows[1]
    face = FACES[Layer.SEX]["female"]
    words = lines_of(
        room, where, where.tubs[0], Shown(state="female"), face, where.tubs[0].living[0], {}
    )

    assert words.reason == "female"


def a_strip(*rows):
    nights = tuple(ON - timedelta(days=3 * n) for n in (1, 0))
    return Strip(
        nights=nights,
        rows=tuple(
            StripRow(
                name=name,
                animals=tuple(
                    StripAnimal(animal=an_animal(name=f"{name} {n}", place=f"{name}·{n}"), cells=c)
                    for n, c in enumerate(cells, start=1)
                ),
            )
            for name, cells in rows
        ),
    )


T, R = Cell.TAKEN, Cell.REFUSED


def test_a_row_that_refuses_far_more_than_the_house_is_loud():
    rows = {
        "none of many": [(T, T)] * 8,
        "half of them": [(T, R)] * 3,
        "two alone": [(R, R)],
        "some of many": [(T, R)] * 3 + [(T, T)] * 12,
    }

    picture = picture_of(a_strip(*rows.items()))

    assert [block.name for block in picture.blocks if block.loud] == ["half of them"]


def test_the_nights_have_the_totals_of_the_house_and_every_animal_its_words():
    picture = picture_of(a_strip(("A1", [(T, R), (None, T)]), ("A2", [(Cell.EXCUSED, R)])))

    assert picture.totals == ("0 of 1", "2 of 3")
    assert [block.total for block in picture.blocks] == ["1 of 3", "1 of 1"]
    assert picture.blocks[1].lines[0].words == (
        "A2·1 A2 1: 22\u00a0Nov refused, excused, 25\u00a0Nov refused; refused 1 of 1"
    )
    assert picture.words.startswith("refused of offered: 2 of 4; by night: 22\u00a0Nov 0 of 1")


def test_who_stands_in_no_rack_is_shown_the_key_that_makes_one():
    shelf = DueRow(
        animal=an_animal(animal=1, name="Wren", place="A1"),
        plan=Plan(animal=1, state=DueState.DUE, lateness=2.2, interval_days=6),
    )
    room = room_of([shelf], ON, {}, {1: a_profile()}, {})

    assert "D makes a rack" in told(room, row=0).keys
    assert "X exchanges" in told(a_room(), row=1).keys
