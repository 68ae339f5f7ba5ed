"""The room as racks, rows and tubs, and what each layer says, on a real book."""

from contextlib import closing
from datetime import UTC, datetime, timedelta

import pytest

from keeper.actions import undoing
from keeper.actions.due_board import DueRow
from keeper.actions.noting import note
from keeper.actions.rack_layers import STATES, Layer, layer_of, shown_of
from keeper.actions.rack_moves import declare_rack, exchange_with, make_change, move_to
from keeper.actions.rack_weights import trends_of
from keeper.actions.racks import read_room, room_of
from keeper.actions.racks_desk import RacksDesk
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import Heat, ShedSign, ShedStage, Weighing, Zone
from keeper.husbandry.when import at_instant, on_day
from keeper.rules.feeding import DueState, Plan
from tests.builders import a_profile, an_animal
from tests.feeding_room import NIGHT, Tub, ago, held_by_vet, make_book, opaque, quarantined, row

READ_AT = datetime(2026, 11, 25, 20, tzinfo=UTC)


@pytest.fixture
def keep(tmp_path):
    """Opens a new book with the tubs it is given; closed after the test."""
    opened = []

    def made(*tubs):
        book = make_book(tmp_path / f"{len(opened)}.book", tubs)
        opened.append(book)
        return book

    yield made
    for book in opened:
        book.close()


def a_room(*places, declared=None):
    rows = [
        DueRow(
            animal=an_animal(animal=number, place=place, name=f"No {number}"),
            plan=Plan(animal=number, state=DueState.DUE),
        )
        for number, place in enumerate(places, start=1)
    ]
    profiles = {row.animal.animal: a_profile() for row in rows}
    return room_of(rows, NIGHT, declared or {}, profiles)


def tub_counts(room):
    return {rack.letter: [len(row.tubs) for row in rack.rows] for rack in room.racks}


def shown(keeping, layer, place="A1·1"):
    room = read_room(keeping, NIGHT)
    tub = room.tub_at(place)
    trends = trends_of(keeping, list(room.everyone()), NIGHT)
    return shown_of(tub.living[0], room, layer, trends)


# --- the room --------------------------------------------------------------------------------


def test_tubs_without_an_animal_between_numbers_are_empty_tubs():
    room = a_room("A1·2", "A1·5", "A3·1")

    assert tub_counts(room) == {"A": [5, 0, 1]}
    assert [tub.name for tub in room.tubs() if not tub.living] == ["A1·1", "A1·3", "A1·4"]


def test_numbers_far_apart_are_another_numbering_and_no_empty_tubs():
    assert tub_counts(a_room("A1·101", "A1·102")) == {"A": [2]}


def test_a_declared_rack_has_its_rows_and_tubs_whoever_lives_there():
    room = a_room("A1·2", declared={"A": (2, 3), "D": (1, 4)})

    assert tub_counts(room) == {"A": [3, 3], "D": [4]}


def test_an_animal_beyond_a_declared_rack_is_still_shown():
    assert tub_counts(a_room("A3·5", declared={"A": (2, 3)})) == {"A": [3, 3, 5]}


def test_those_who_share_a_tub_are_both_in_it():
    room = a_room("A1·1", "a1-1", "A1·2")

    assert tub_counts(room) == {"A": [2]}
    assert [len(tub.living) for tub in room.tubs()] == [2, 1]


def test_whoever_stands_in_no_readable_place_is_shown_after_the_racks():
    room = a_room("A1·1", "shelf by the window", None)

    assert [rack.letter for rack in room.racks] == ["A", ""]
    names = [tub.name for row in room.racks[1].rows for tub in row.tubs]
    assert names == ["shelf by the window", "no place, HS-001"]


def test_a_declared_size_is_kept_in_the_book_and_can_be_taken_back(keep):
    keeping = keep(*row("A", 1, 2))

    declare_rack(keeping, "A", "3 × 4")
    assert tub_counts(read_room(keeping, NIGHT)) == {"A": [4, 4, 4]}

    undoing.take_back(keeping)
    assert tub_counts(read_room(keeping, NIGHT)) == {"A": [2]}


def test_an_empty_size_leaves_the_rack_to_its_animals_again(keep):
    keeping = keep(*row("A", 1, 2))
    declare_rack(keeping, "A", "3x4")

    declare_rack(keeping, "A", " ")

    assert tub_counts(read_room(keeping, NIGHT)) == {"A": [2]}


@pytest.mark.parametrize("text", ["seven", "0x4", "7x", "41x4", "7x61", "-1x4"])
def test_what_is_no_size_is_refused_and_nothing_is_written(keep, text):
    keeping = keep(*row("A", 1, 2))

    with pytest.raises(ValueError, match="7x10"):
        declare_rack(keeping, "A", text)

    assert tub_counts(read_room(keeping, NIGHT)) == {"A": [2]}


# --- layers ----------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("fed_days", "state", "figure"),
    [(2, "in step", "0.2"), (9, "due", "0.9"), (15, "behind", "1.5"), (24, "far behind", "2.4")],
)
def test_days_since_eaten_are_shown_as_a_share_of_the_interval(keep, fed_days, state, figure):
    found = shown(keep(Tub(place="A1·1", name="Tansy", fed_days=fed_days)), Layer.RATIO)

    assert (found.state, found.figure) == (state, figure)


def test_a_record_that_fell_silent_cannot_tell_how_far_behind_she_is(keep):
    tub = Tub(place="A1·1", name="Tansy", fed_days=90, weight_g=None)
    found = shown(keep(tub), Layer.RATIO)

    assert (found.state, found.figure) == ("cannot tell", "")
    assert found.because


def test_a_held_animal_is_not_behind(keep):
    found = shown(keep(Tub(place="A1·1", name="Tansy", fed_days=20, more=opaque)), Layer.RATIO)

    assert (found.state, found.figure) == ("held", "")


def test_the_due_layer_counts_days_to_come_and_days_late(keep):
    early, late = Tub(place="A1·1", name="Tansy", fed_days=4), Tub(place="A1·2", name="Orrin")
    keeping = keep(early, late)

    assert shown(keeping, Layer.DUE).state == "not due"
    assert int(shown(keeping, Layer.DUE).figure) > 0
    assert shown(keeping, Layer.DUE, "A1·2").state == "late"


def test_the_hold_layer_says_which_hold_and_for_how_many_days_yet(keep):
    keeping = keep(
        Tub(place="A1·1", name="Tansy", more=held_by_vet),
        Tub(place="A1·2", name="Orrin", more=quarantined),
        Tub(place="A1·3", name="Quill"),
    )

    assert (shown(keeping, Layer.HOLD).state, shown(keeping, Layer.HOLD).figure) == ("vet", "7")
    assert shown(keeping, Layer.HOLD, "A1·2").state == "quarantine"
    assert shown(keeping, Layer.HOLD, "A1·3").state == "none"


def test_the_shed_layer_counts_the_days_of_the_sign(keep):
    found = shown(keep(Tub(place="A1·1", name="Tansy", more=opaque)), Layer.SHED)

    assert (found.state, found.figure) == ("opaque", "2")


def test_the_shed_layer_says_late_when_a_cycle_does_not_end(keep):
    def long_opaque(animal):
        return [ShedSign(animal=animal, happened=on_day(ago(20)), stage=ShedStage.OPAQUE)]

    found = shown(keep(Tub(place="A1·1", name="Tansy", more=long_opaque)), Layer.SHED)

    assert found.state == "late"
    assert int(found.figure) > 0


def test_the_weight_layer_tells_a_loss_from_holding_and_from_not_knowing(keep):
    def lost(animal):
        return [Weighing(animal=animal, happened=on_day(ago(n)), weight_g=98.0) for n in (2, 1)]

    keeping = keep(
        Tub(place="A1·1", name="Tansy"),
        Tub(place="A1·2", name="Orrin", more=lost),
        Tub(place="A1·3", name="Quill", weight_g=None),
    )

    assert shown(keeping, Layer.WEIGHT).state == "holding"
    told = shown(keeping, Layer.WEIGHT, "A1·2")
    assert told.state in ("vet", "act")
    assert told.figure.startswith("−")
    assert shown(keeping, Layer.WEIGHT, "A1·3").state == "cannot tell"


def test_a_female_and_a_male_in_one_tub_are_told_before_their_sexes(keep):
    keeping = keep(
        Tub(place="A1·1", name="Tansy"),
        Tub(place="A1·1", name="Orrin", sex=Sex.MALE),
        Tub(place="A1·2", name="Quill", sex=Sex.MALE),
    )
    found = layer_of(read_room(keeping, NIGHT), Layer.SEX)

    assert [tub.state for tub in found.racks[0][0]] == ["together", "male"]


def test_of_those_who_share_a_tub_the_one_furthest_behind_is_shown(keep):
    keeping = keep(
        Tub(place="A1·1", name="Tansy", fed_days=2), Tub(place="A1·1", name="Orrin", fed_days=24)
    )
    found = layer_of(read_room(keeping, NIGHT), Layer.RATIO)

    assert found.racks[0][0][0].state == "far behind"


def test_every_state_of_a_layer_is_counted_once_a_tub(keep):
    keeping = keep(*row("A", 1, 4), *row("B", 2, 3))
    room = read_room(keeping, NIGHT)

    for layer in Layer:
        counts = layer_of(room, layer, {}).counts()
        assert tuple(counts) == STATES[layer]
        assert sum(counts.values()) == 7


# --- heat ------------------------------------------------------------------------------------


def read_heat(keeping, place, temp_c, days_ago=0):
    happened = at_instant(READ_AT - timedelta(days=days_ago))
    note(keeping, "heat", Heat(place=place, happened=happened, zone=Zone.HOT, temp_c=temp_c))


@pytest.mark.parametrize(
    ("temp_c", "state", "out"),
    [(31.0, "within", False), (24.3, "too cold", True), (39.0, "too hot", True)],
)
def test_a_hot_end_out_of_range_is_told_from_one_within(keep, temp_c, state, out):
    keeping = keep(*row("A", 1, 2))
    read_heat(keeping, "A1", temp_c)

    found = read_room(keeping, NIGHT).racks[0].rows[0].heat

    assert (found.state, found.out_of_range, found.temp_c) == (state, out, temp_c)


def test_the_latest_reading_of_a_row_counts_however_its_place_is_written(keep):
    keeping = keep(*row("A", 1, 2))
    read_heat(keeping, "a-1", 24.3)
    read_heat(keeping, "A1", 31.0, days_ago=1)  # written late

    assert read_room(keeping, NIGHT).racks[0].rows[0].heat.temp_c == 24.3


def test_an_old_reading_is_shown_and_says_nothing_of_today(keep):
    keeping = keep(*row("A", 1, 1))
    read_heat(keeping, "A1", 24.3, days_ago=5)
    room = read_room(keeping, NIGHT)

    assert room.racks[0].rows[0].heat.fresh is False
    assert layer_of(room, Layer.HEAT).racks[0][0][0].state == "cannot tell"


def test_a_tub_s_own_reading_comes_before_that_of_its_row(keep):
    keeping = keep(*row("A", 1, 2))
    read_heat(keeping, "A1", 31.0)
    read_heat(keeping, "A1·2", 24.3)

    told = layer_of(read_room(keeping, NIGHT), Layer.HEAT).racks[0][0]

    assert [tub.figure for tub in told] == ["31.0", "24.3"]


# --- moves -----------------------------------------------------------------------------------


def living(keeping, place):
    tub = read_room(keeping, NIGHT).tub_at(place)
    return [row.animal.name for row in tub.living] if tub else []


def move(keeping, place, text):
    room = read_room(keeping, NIGHT)
    change = move_to(room, room.tub_at(place).living[0].animal, text)
    make_change(keeping, change)
    return change


def test_a_move_into_an_empty_tub_warns_of_nobody_and_is_taken_back(keep):
    keeping = keep(Tub(place="A1·1", name="Tansy"), Tub(place="A1·3", name="Orrin"))

    change = move(keeping, "A1·1", "a1-2")

    assert change.sharing == ()
    assert living(keeping, "A1·2") == ["Tansy"]
    undoing.take_back(keeping)
    assert living(keeping, "A1·1") == ["Tansy"]


def test_a_move_into_an_occupied_tub_names_who_is_there_and_both_sexes(keep):
    keeping = keep(Tub(place="A1·1", name="Tansy"), Tub(place="A1·3", name="Orrin", sex=Sex.MALE))

    change = move(keeping, "A1·1", "A1·3")

    (told,) = change.sharing
    assert "Orrin, male" in told
    assert "Tansy would share" in told
    assert "A female and a male would be together" in told
    assert living(keeping, "A1·3") == ["Tansy", "Orrin"]


def test_two_of_one_sex_share_without_being_called_a_pair(keep):
    keeping = keep(Tub(place="A1·1", name="Tansy"), Tub(place="A1·3", name="Orrin"))

    (told,) = move(keeping, "A1·1", "A1·3").sharing

    assert "together" not in told


def test_an_unknown_sex_is_said_to_be_unknown(keep):
    keeping = keep(
        Tub(place="A1·1", name="Tansy"), Tub(place="A1·3", name="Orrin", sex=Sex.UNKNOWN)
    )

    (told,) = move(keeping, "A1·1", "A1·3").sharing

    assert "unknown sex" in told


@pytest.mark.parametrize("text", ["", "B", "shelf", "A1·1"])
def test_a_move_to_no_tub_or_to_the_same_is_refused(keep, text):
    keeping = keep(Tub(place="A1·1", name="Tansy"))
    room = read_room(keeping, NIGHT)

    with pytest.raises(ValueError):
        move_to(room, room.tub_at("A1·1").living[0].animal, text)


def exchange(keeping, place, text):
    room = read_room(keeping, NIGHT)
    tub = room.tub_at(place)
    first = tub.living[0].animal if tub.living else None
    change = exchange_with(room, tub, first, text)
    make_change(keeping, change)
    return change


def test_two_tubs_change_places_with_all_who_live_in_them(keep):
    keeping = keep(
        Tub(place="A1·1", name="Tansy"),
        Tub(place="A1·1", name="Orrin"),
        Tub(place="B2·1", name="Quill"),
    )

    change = exchange(keeping, "A1·1", "B2·1")

    assert change.sharing == ()
    assert living(keeping, "A1·1") == ["Quill"]
    assert living(keeping, "B2·1") == ["Tansy", "Orrin"]
    undoing.take_back(keeping)
    assert living(keeping, "A1·1") == ["Tansy", "Orrin"]


def test_two_animals_change_places_and_those_who_stay_are_named(keep):
    keeping = keep(
        Tub(place="A1·1", name="Tansy"),
        Tub(place="A1·1", name="Orrin", sex=Sex.MALE),
        Tub(place="B2·1", name="Quill"),
    )

    change = exchange(keeping, "A1·1", "quill")

    assert living(keeping, "B2·1") == ["Tansy"]
    assert set(living(keeping, "A1·1")) == {"Orrin", "Quill"}
    assert ["Orrin, male" in told for told in change.sharing] == [True]


def test_a_tub_is_moved_by_exchanging_it_with_an_empty_one(keep):
    keeping = keep(Tub(place="A1·1", name="Tansy"), Tub(place="A1·3", name="Orrin"))

    exchange(keeping, "A1·2", "A1·3")

    assert living(keeping, "A1·2") == ["Orrin"]


@pytest.mark.parametrize("text", ["A1·1", "C9·9", "nobody", ""])
def test_an_exchange_with_itself_or_with_nothing_is_refused(keep, text):
    keeping = keep(Tub(place="A1·1", name="Tansy"), Tub(place="A1·2", name="Orrin"))
    room = read_room(keeping, NIGHT)
    tub = room.tub_at("A1·1")

    with pytest.raises(ValueError):
        exchange_with(room, tub, tub.living[0].animal, text)


def test_two_animals_of_one_name_are_told_by_their_code(keep):
    keeping = keep(
        Tub(place="A1·1", name="Tansy"),
        Tub(place="A1·2", name="Orrin"),
        Tub(place="A1·3", name="Orrin"),
    )
    room = read_room(keeping, NIGHT)
    tub = room.tub_at("A1·1")

    with pytest.raises(ValueError, match="code"):
        exchange_with(room, tub, tub.living[0].animal, "Orrin")
    exchange(keeping, "A1·1", "hs-003")

    assert living(keeping, "A1·1") == ["Orrin"]


# --- reading aside ---------------------------------------------------------------------------


def test_a_cold_row_is_a_cause_at_its_place(tmp_path):
    def refused(animal):
        from tests.builders import a_refusal

        return [a_refusal(f"{ago(2)}", animal=animal)]

    rows = [tub for number in (1, 2, 3) for tub in row("A", number, 8)]
    cold = [Tub(place=f"B1·{n}", name=f"No {n}", more=refused) for n in range(1, 9)]
    with closing(make_book(tmp_path / "cold.book", [*rows, *cold])) as keeping:
        read_heat(keeping, "B1", 24.0)
        desk = RacksDesk(keeping)
        causes = desk.causes(NIGHT)
        desk.close()

    assert "B1" in causes
    assert "A1" not in causes
