"""A printed sheet: its code, typing it once, and what a second typing shows."""

from contextlib import closing
from datetime import date, time, timedelta

import pytest

from keeper.actions.all_but import accept, remainder, sheet_scope
from keeper.actions.round_entries import OtherResult
from keeper.actions.rounds import begin_night, read_again
from keeper.actions.sheets import (
    VERB,
    check_character,
    refusal_chance,
    round_code,
    round_sheet_of,
    sheet_walk,
    thaw_list_of,
    typed_before,
    usual_start,
)
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import Result
from keeper.reports.figures import plain
from keeper.reports.round_sheet import RowEnd, SheetLine, round_sheet
from keeper.reports.thaw_list import Thawed, cautions, thaw_line
from keeper.reports.writing import Writing, writing_as
from tests.builders import a_refusal, an_offer
from tests.feeding_room import (
    NIGHT,
    Clock,
    Tub,
    make_book,
    opaque,
    quarantined,
    refused_twice,
    room,
    row,
)


@pytest.fixture
def clock():
    return Clock()


@pytest.fixture
def keeping(tmp_path, clock):
    with closing(make_book(tmp_path / "night.book", row("A", 1), clock)) as book:
        yield book


@pytest.fixture
def walk(keeping):
    return begin_night(keeping, NIGHT)


def refused(line):
    return OtherResult(line=line, result=Result.REFUSED)


def typed_sheet(keeping, code, others):
    """What the sheet of *code* all but *others* would write, or how it differs from the book."""
    walk = sheet_walk(keeping, code)
    return remainder(keeping, walk, sheet_scope(walk), others, again=typed_before(keeping, walk))


def accept_sheet(keeping, code, others):
    return accept(keeping, sheet_walk(keeping, code), typed_sheet(keeping, code, others), VERB)


def counted(keeping, walk):
    return sum(tub.offer is not None for tub in read_again(walk, keeping).tubs)


def test_a_sheet_is_typed_by_its_code_and_its_exceptions(keeping, walk):
    written = accept_sheet(keeping, round_code(walk.round), [refused(4)])

    assert written.what == "9 as planned, 1 not"
    assert counted(keeping, walk) == 10


def test_typing_the_same_code_twice_shows_differences_and_adds_nothing(keeping, walk):
    code = round_code(walk.round)
    accept_sheet(keeping, code, [refused(4)])

    again = typed_sheet(keeping, code, [refused(5)])

    assert (
        plain(again.words)
        == "The sheet was typed before: 2 lines differ from the book; nothing was added."
    )
    assert again.lines == (
        "line 4, A1·4 Quill: typed taken, the book has refused",
        "line 5, A1·5 Merrow: typed refused, the book has taken",
    )
    with pytest.raises(LookupError, match="typed before"):
        accept_sheet(keeping, code, [refused(5)])
    assert counted(keeping, walk) == 10


def test_typing_the_same_sheet_twice_says_that_it_is_the_same(keeping, walk):
    code = round_code(walk.round)
    accept_sheet(keeping, code, [refused(4)])

    assert typed_sheet(keeping, code, [refused(4)]).words == (
        "The sheet was typed before and says the same; nothing was added."
    )


@pytest.fixture
def mixed(tmp_path, clock):
    """Two that are due, one held, one that nothing is known of."""
    tubs = [*row("A", 1, 2), Tub(place="A1·3", name="Blue", more=opaque)]
    tubs.append(Tub(place="A1·4", name="Unknown", fed_days=None, weight_g=None))
    with closing(make_book(tmp_path / "mixed.book", tubs, clock)) as book:
        yield book


def test_tubs_that_were_held_or_without_a_plan_are_no_difference(mixed):
    code = round_code(begin_night(mixed, NIGHT).round)
    accept_sheet(mixed, code, [])

    assert typed_sheet(mixed, code, []).differing == ()


def test_a_line_first_typed_the_second_time_is_shown_and_not_added(mixed):
    walk = begin_night(mixed, NIGHT)
    accept_sheet(mixed, round_code(walk.round), [])

    again = typed_sheet(mixed, round_code(walk.round), [refused(4)])

    assert again.lines == ("line 4, A1·4 Unknown: typed refused, the book has not reached",)
    assert (again.planned, again.others) == ((), ())
    assert counted(mixed, walk) == 2


def test_a_left_in_tub_that_was_looked_into_since_is_no_difference(keeping, walk):
    code, left = round_code(walk.round), OtherResult(line=4, result=Result.LEFT_IN)
    accept_sheet(keeping, code, [left])
    looked = read_again(walk, keeping)
    looked.begin_check()
    looked.go_to(4)
    looked.found(gone=True)

    assert typed_sheet(keeping, code, [left]).differing == ()


def test_a_sheet_whose_typing_was_taken_back_can_be_typed_again(keeping, walk):
    from keeper.actions import undoing

    code = round_code(walk.round)
    accept_sheet(keeping, code, [])
    undoing.take_back(keeping)

    accept_sheet(keeping, code, [refused(1)])

    assert counted(keeping, walk) == 10


def test_a_slip_in_the_code_is_told_from_another_book(keeping, walk):
    code = round_code(walk.round)
    other = round_code(walk.round + 123_456)
    slipped = code[:-1] + str((int(code[-1]) + 1) % 10)

    with pytest.raises(ValueError, match="holds a slip: its check digit does not fit"):
        sheet_walk(keeping, slipped)
    with pytest.raises(LookupError, match="is not of a night in this book"):
        sheet_walk(keeping, other)
    with pytest.raises(ValueError, match="nine digits stand at its top"):
        sheet_walk(keeping, "12 34")


def test_the_code_of_another_night_is_refused_by_the_night_being_typed(keeping, walk, clock):
    walk.close()
    clock.at += timedelta(days=4)
    later = begin_night(keeping, NIGHT + timedelta(days=4))

    with pytest.raises(LookupError) as refusal:
        sheet_walk(keeping, round_code(walk.round), here=later)

    assert refusal.value.args[0].endswith("is of the night of 25 Nov 2026, not of 29 Nov 2026.")


@pytest.mark.parametrize("key", range(10**18, 10**18 + 300, 7))
def test_every_code_can_be_typed_on_a_number_pad_and_fits_its_check_digit(key):
    digits = round_code(key).replace(" ", "")

    assert digits.isdecimal()
    assert check_character(digits[:-1]) == digits[-1]


def test_every_single_slip_and_swap_of_neighbours_is_found():
    digits = round_code(10**18 + 41).replace(" ", "")
    slips = [digits[:n] + d + digits[n + 1 :] for n in range(9) for d in "0123456789"]
    swaps = [digits[:n] + digits[n + 1] + digits[n] + digits[n + 2 :] for n in range(8)]

    wrong = [typed for typed in (*slips, *swaps) if typed != digits]

    assert [typed for typed in wrong if check_character(typed[:-1]) == typed[-1]] == []


def sheet_of(rows):
    """A sheet of lines whose rack rows have these lengths."""
    names = [f"A{n}" for n, length in enumerate(rows, start=1) for _ in range(length)]
    lines = [
        SheetLine(
            line=n,
            place=f"{name}·1",
            row=name,
            name="Ash",
            sex=Sex.MALE,
            eaten_days=9,
            plan="1 × x",
        )
        for n, name in enumerate(names, start=1)
    ]
    printed = Clock().at
    return round_sheet(lines, night=NIGHT, code="1", keeper="Ro", printed=printed)


def lines_on(page):
    return [part.line for part in page if isinstance(part, SheetLine)]


def test_thirty_lines_stand_on_a_page_in_rack_order():
    sheet = sheet_of([10] * 7)

    assert [len(lines_on(page)) for page in sheet.pages] == [30, 30, 10]
    assert [n for page in sheet.pages for n in lines_on(page)] == list(range(1, 71))


def test_every_row_ends_with_its_box_right_after_its_last_line():
    (page,) = sheet_of([3, 2]).pages

    assert page[3] == RowEnd(row="A1", first=1, last=3)
    assert page[6] == RowEnd(row="A2", first=4, last=5)


def test_short_rows_take_a_page_more_rather_than_crowd_it():
    sheet = sheet_of([1] * 30)

    assert all(len(page) <= 38 for page in sheet.pages)
    assert sum(len(lines_on(page)) for page in sheet.pages) == 30


def test_the_sheet_has_the_frozen_lines_of_the_night_and_its_code(keeping, walk):
    sheet = round_sheet_of(keeping, walk)

    assert sheet.code == round_code(walk.round)
    first = sheet.pages[0][0]
    assert first.cells == ("1", "A1·1", "Tansy", "f", "12 d")
    assert (first.plan, first.walked) == ("2 × fuzzy mouse", True)


def items(count, **changed):
    told = {"prey": "mouse hopper", "count": 1, "hatchling": False, "apart": False}
    chances = {"refusal_chance": 0.0, "opaque_chance": 0.0}
    return [Thawed(**(told | chances | changed)) for _ in range(count)]


def test_hatchlings_get_a_tenth_to_spare_and_others_a_twentieth():
    assert thaw_line("p", items(40)).spare == 2
    assert thaw_line("p", items(40, hatchling=True)).spare == 4


def test_what_is_likely_left_is_taken_off_the_thaw():
    line = thaw_line("p", items(40, refusal_chance=0.1, opaque_chance=0.05))

    assert line.left == pytest.approx(40 * (0.05 + 0.95 * 0.1))
    assert line.thaw == 40 + 2 - 5


def test_items_for_animals_kept_apart_are_never_counted_on_for_others():
    line = thaw_line("p", items(10, apart=True, refusal_chance=0.5))

    assert (line.left, line.apart, line.thaw) == (0, 10, 11)


def test_her_own_refusals_raise_the_chance_and_few_offers_hardly_move_it():
    steady = [an_offer(f"2026-09-{n:02}") for n in range(1, 7)]
    poor = [a_refusal(f"2026-09-{n:02}") for n in range(1, 7)]

    assert refusal_chance(()) == pytest.approx(0.08)
    assert refusal_chance(steady) < 0.08 < refusal_chance(poor) < 0.6


def test_the_thaw_list_counts_what_is_planned_and_leaves_out_what_is_held(tmp_path):
    tubs = [*row("A", 1, 6)]
    tubs[1] = Tub(place="A1·2", name="Blue", more=opaque)
    tubs[2] = Tub(place="A1·3", name="Apart", more=quarantined)
    tubs[3] = Tub(place="A1·4", name="Shy", more=refused_twice)
    with closing(make_book(tmp_path / "thaw.book", tubs)) as keeping:
        told = thaw_list_of(keeping, NIGHT)

    assert sum(line.planned for line in told.lines) == 10
    assert sum(line.apart for line in told.lines) == 2
    assert "Held and not counted: opaque 1." in told.notes


def test_the_times_follow_from_when_rounds_usually_begin(keeping, clock):
    assert usual_start(keeping) is None

    begin_night(keeping, NIGHT).close()

    assert usual_start(keeping) == time(20, 40)
    assert thaw_list_of(keeping, date(2026, 11, 28)).times == (
        "Freezer to fridge from Fri 20:40 to Sat 12:40.",
        "Into warm water at Sat 20:10.",
        "The round begins about Sat 20:40, as it usually does.",
    )


def test_a_night_without_lines_prints_nothing():
    with pytest.raises(ValueError, match="no line to print"):
        round_sheet([], night=NIGHT, code="1", keeper="Ro", printed=Clock().at)


def test_a_room_of_300_prints_on_ten_pages(tmp_path):
    with closing(make_book(tmp_path / "room.book", room())) as keeping:
        assert len(round_sheet_of(keeping, begin_night(keeping, NIGHT)).pages) == 10


def test_the_warmth_of_water_and_prey_is_told_in_the_unit_in_use():
    assert "38–42 °C" in plain(cautions()[1])
    with writing_as(Writing(fahrenheit=True)):
        told = plain(cautions()[1])

    assert "water of 100.4–107.6 °F" in told and "100.4–104 °F at the nose" in told
    assert "°C" not in told
