"""One rack through time: its tubs, its marks, and what is said of a tub on a day."""

from contextlib import closing

import pytest

from keeper.actions import undoing
from keeper.actions.noting import note
from keeper.actions.racks_desk import RacksDesk
from keeper.actions.time_line import MarkKind, RackTime, read_time_line
from keeper.actions.time_line_reading import letter_of
from keeper.actions.time_line_told import Told, mates_of, told_at
from keeper.husbandry.events import Moved, Paired
from keeper.husbandry.when import on_day
from tests.time_room import CODES, TODAY, ago, room


@pytest.fixture(scope="module")
def keeping(tmp_path_factory):
    with room(tmp_path_factory.mktemp("time") / "room.book") as made:
        yield made


@pytest.fixture(scope="module")
def rack(keeping) -> RackTime:
    return read_time_line(keeping, "B", TODAY)


def key(rack: RackTime, name: str) -> int:
    return next(row.animal for row in rack.who.values() if row.code == CODES[name])


def told(rack: RackTime, place: str, days: int, name: str | None = None) -> dict[str, str]:
    """What is said under each head."""
    return {
        para.head: para.text.replace("\u00a0", " ") for para in said(rack, place, days, name).paras
    }


def said(rack: RackTime, place: str, days: int, name: str | None) -> Told:
    tub = rack.tub(place)
    assert tub is not None
    here = [bar.stay for bar in tub.at(ago(days)) if name in (None, bar.name)]
    return told_at(rack, tub, here[0] if here else None, ago(days))


def marks(rack: RackTime) -> list[tuple[MarkKind, str | None, int]]:
    return [(mark.kind, mark.tub, (TODAY - mark.on).days) for mark in rack.marks]


def test_the_tubs_stand_in_rack_order_from_the_first_to_the_last_of_each_row(rack):
    names = [tub.name for tub in rack.tubs]

    assert names == [*(f"B1·{n}" for n in range(1, 5)), *(f"B2·{n}" for n in range(1, 6))]


def test_a_tub_is_known_from_its_first_entry_and_one_of_a_row_that_never_had_any_is_not(rack):
    known = {tub.name: tub.known_from for tub in rack.tubs}

    assert (known["B1·4"], known["B2·5"], known["B2·1"]) == (ago(60), ago(10), None)


def test_two_in_one_tub_lie_in_two_lanes(rack):
    tub = rack.tub("B1·2")

    assert (tub.lanes, [(bar.name, bar.lane) for bar in tub.bars]) == (
        2,
        [("Maud", 0), ("Alder", 1)],
    )
    assert rack.tub("B1·1").lanes == 1


def test_what_neighbours_are_looked_at_for_is_marked_on_its_day(rack):
    assert sorted(marks(rack), key=str) == sorted(
        [
            (MarkKind.LOCK, "B1·2", 45),
            (MarkKind.LOCK, "B1·2", 45),
            (MarkKind.WASHED, None, 35),
            (MarkKind.RELEASED, "B1·4", 30),
            (MarkKind.MITES, "B1·3", 20),
            (MarkKind.TREATED, None, 19),
            (MarkKind.MISSING, "B2·4", 15),
            (MarkKind.CLEAR, None, 12),
            (MarkKind.FOUND, "B2·5", 10),
        ],
        key=str,
    )


def test_a_quarantine_that_began_in_another_rack_is_marked_there(keeping):
    found = marks(read_time_line(keeping, "Q", TODAY))

    assert (MarkKind.QUARANTINE, "Q1·2", 120) in found
    assert all(kind is not MarkKind.RELEASED for kind, _, _ in found)


def test_steps_against_mites_in_another_rack_are_not_this_ones(keeping):
    found = marks(read_time_line(keeping, "Q", TODAY))

    assert not {kind for kind, _, _ in found} & {MarkKind.TREATED, MarkKind.CLEAR, MarkKind.MITES}


def test_a_day_in_the_past_knows_nothing_of_what_came_after(keeping):
    then = read_time_line(keeping, "B", ago(42))

    assert [bar.name for bar in then.tub("B1·2").at(ago(42))] == ["Maud", "Alder"]
    assert {kind for kind, _, _ in marks(then)} == {MarkKind.LOCK}


def test_every_rack_in_which_anybody_ever_stood_can_be_gone_to(rack):
    assert rack.letters == ("B", "Q")


def test_the_rack_of_an_animal_is_that_of_the_day(keeping, rack):
    pell = key(rack, "Pell")

    assert [letter_of(keeping, pell, ago(days)) for days in (150, 100, 60, 0)] == [
        None,
        "Q",
        "B",
        "B",
    ]


# --- sentences -------------------------------------------------------------------------------


def test_a_female_is_told_of_the_male_that_shared_her_tub_and_how_it_counts(rack):
    her = told(rack, "B1·2", 45, "Maud")

    assert her[""].startswith("Maud, female, has been in B1·2 since 9 May 2026: 200 days.")
    assert her["Together"] == (
        "Alder, male, shared it from 6 Oct 2026 to 16 Oct 2026: 11 days. It exposed Maud to Alder:"
        " 11 days count from 6 Oct 2026, and a shared tub weighs 1 where a pairing weighs 3 and a"
        " lock 8. Maud may keep sperm until 16 Oct 2028."
    )
    assert her["Pairings"] == "Maud and Alder were paired on 11 Oct 2026, and a lock was seen."
    assert her["Washing up"] == (
        "On 21 Oct 2026 2 tubs of 6 lived in were washed, this one among them."
    )


def test_the_male_is_told_the_same_from_his_side(rack):
    him = told(rack, "B1·2", 45, "Alder")

    assert him[""] == (
        "Alder, male, was in B1·2 from 6 Oct 2026 to 16 Oct 2026: 10 days. Alder came from B1·1."
        " Alder went to B1·1."
    )
    assert "It exposed Maud to Alder: 11 days" in him["Together"]
    assert mates_of(rack, key(rack, "Alder")) == {key(rack, "Maud")}


def test_a_find_of_mites_names_who_stood_beside_it_and_where_each_is_now(rack):
    """Maud and Alder at the left, Pell at the right, Sage beneath until ten days before."""
    mites = told(rack, "B1·3", 20)["Mites"]

    assert mites.startswith("Mites were seen on Wren here on 5 Nov 2026.")
    for told_of in (
        "Maud (B1·2, still there)",
        "Alder (B1·2 then, now B1·1)",
        "Pell (B1·4, still there)",
        "Sage (B2·3 then, now Q1·1)",
    ):
        assert told_of in mites
    assert "Dill" not in mites
    assert "rack B from 6 Nov 2026 on (as the vet wrote). The last look, on 13 Nov 2026" in mites
    assert mites.endswith("product and amount by a reptile vet or the label.")


def test_a_neighbour_of_the_find_is_told_on_which_side_it_stood(rack):
    assert "was to its left" in told(rack, "B1·2", 20, "Maud")["Mites"]
    assert "was to its right" in told(rack, "B1·4", 20)["Mites"]
    assert "was below it" in told(rack, "B2·3", 40)["Mites"]
    assert "Wren" not in told(rack, "B1·1", 0)["Mites"]


def test_the_tubs_beside_are_told_with_who_was_in_them_on_the_day(rack):
    assert told(rack, "B1·3", 45)["Beside it"] == (
        "On 11 Oct 2026: left B1·2: Maud and Alder; right B1·4: Pell; below B2·3: Sage."
    )
    assert told(rack, "B1·3", 0)["Beside it"].endswith("below B2·3: empty.")
    assert told(rack, "B1·2", 0)["Beside it"].endswith("below B2·2: cannot tell.")


def test_one_that_was_missed_met_nobody_knows_whom(rack):
    assert (
        "Dill was missing from 10 Nov 2026 to 15 Nov 2026, last in B2·4"
        in told(rack, "B2·5", 0)[""]
    )
    assert "Dill was missed on 10 Nov 2026." in told(rack, "B2·4", 30)[""]


def test_an_empty_tub_is_told_as_empty_with_who_was_in_it_before(rack):
    assert told(rack, "B2·3", 0)[""] == (
        "Nobody is written in B2·3 on 25 Nov 2026: empty. Before that Sage was in it, until"
        " 26 Oct 2026."
    )


def test_before_its_first_entry_of_a_tub_nothing_can_be_told(rack):
    assert told(rack, "B1·4", 100)[""].startswith("Nothing is written of B1·4 before 26 Sep 2026")
    assert told(rack, "B2·1", 0)[""].startswith("Nothing is written of B2·1: who was in it")


def test_all_that_is_told_is_one_text(rack):
    words = said(rack, "B1·3", 20, None).words

    assert words.splitlines()[0].replace("\u00a0", " ") == "B1·3, 5 Nov 2026"
    assert "\nMites: Mites were seen" in words


# --- the book --------------------------------------------------------------------------------


def test_a_pairing_that_was_taken_back_is_not_marked(tmp_path):
    with room(tmp_path / "room.book") as keeping:
        rack = read_time_line(keeping, "B", TODAY)
        wren, pell = key(rack, "Wren"), key(rack, "Pell")
        note(keeping, "pair", Paired(animal=wren, happened=on_day(ago(5)), mate=pell))
        (kind, tub, _), *_ = marks(read_time_line(keeping, "B", TODAY))[-2:]
        undoing.take_back(keeping)

        assert (kind, tub) == (MarkKind.PAIRED, "B1·3")
        assert marks(read_time_line(keeping, "B", TODAY)) == marks(rack)


def test_an_animal_without_a_tub_has_no_time_line(keeping):
    with closing(RacksDesk(keeping)) as desk, pytest.raises(LookupError, match="no time-line"):
        desk.time_line(None, 1, TODAY)


def test_a_rack_that_only_a_move_taken_back_names_is_none_of_the_book(tmp_path):
    with room(tmp_path / "room.book") as keeping:
        rack = read_time_line(keeping, "B", TODAY)
        moved = Moved(animal=key(rack, "Wren"), happened=on_day(TODAY), place="Z1·1")
        note(keeping, "move", moved)
        assert read_time_line(keeping, "B", TODAY).letters == ("B", "Q", "Z")
        undoing.take_back(keeping)

        assert read_time_line(keeping, "B", TODAY).letters == ("B", "Q")
