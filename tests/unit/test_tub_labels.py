"""Numbers of labels: opaque, told apart, and a slip is named."""

from contextlib import closing

import pytest
from hypothesis import given
from hypothesis import strategies as st

from keeper.actions.keeping import animals_on
from keeper.actions.sheets import check_character
from keeper.actions.tub_labels import (
    code_scanned,
    label_number,
    labels_of,
    place_labels_of,
)
from keeper.husbandry.place import place_of
from keeper.reports.tub_label import first_typed, label_pages
from tests.feeding_room import make_book, room

A_PAGE = 27
KEYS = st.integers(min_value=1, max_value=2**63 - 1)


@pytest.fixture
def keeping(tmp_path):
    with closing(make_book(tmp_path / "room.book", room(1, 3))) as book:
        yield book


@given(KEYS)
def test_a_number_has_twelve_digits_whatever_the_key(animal):
    number = label_number(animal)

    assert len(number) == 12 and number.isdecimal()


@given(KEYS, st.integers(0, 11), st.integers(1, 9))
def test_one_digit_slipped_never_fits_its_check_digit(animal, at, by):
    number = label_number(animal)
    slipped = f"{number[:at]}{(int(number[at]) + by) % 10}{number[at + 1 :]}"

    assert check_character(number[:-1]) == number[-1]
    assert check_character(slipped[:-1]) != slipped[-1]


def test_a_label_with_two_digits_exchanged_is_refused_with_a_sentence(keeping):
    row = animals_on(keeping, keeping.today)[4]
    number = label_number(row.animal)
    at = next(n for n in range(11) if number[n] != number[n + 1])
    slipped = f"{number[:at]}{number[at + 1]}{number[at]}{number[at + 2 :]}"

    with pytest.raises(ValueError, match="holds a slip: its check digit does not fit"):
        code_scanned(keeping, slipped)


def test_ten_thousand_animals_of_one_take_in_have_ten_thousand_numbers():
    first = 1_234_567_890_123_456_789

    assert len({label_number(first + n) for n in range(10_000)}) == 10_000


def test_the_label_of_another_book_is_refused_with_a_sentence(keeping):
    number = label_number(987_654_321)

    with pytest.raises(LookupError, match="is of no animal in this book"):
        code_scanned(keeping, number)


def test_digits_typed_in_groups_are_the_same_label(keeping):
    row = animals_on(keeping, keeping.today)[4]
    number = label_number(row.animal)

    assert code_scanned(keeping, f"{number[:4]} {number[4:8]} {number[8:]}") == row.code


def test_the_keepers_own_code_is_handed_on_as_it_is(keeping):
    assert code_scanned(keeping, "HS-007") == "HS-007"
    assert code_scanned(keeping, "not there") == "not there"


def test_labels_are_cut_into_pages_and_none_is_lost(keeping):
    labels = labels_of(keeping, animals_on(keeping, keeping.today))
    pages = label_pages(labels, A_PAGE)

    assert [len(page) for page in pages] == [A_PAGE, 3]
    assert [label for page in pages for label in page] == labels


def test_without_an_animal_there_is_no_label(keeping):
    with pytest.raises(LookupError, match="no label to print"):
        labels_of(keeping, [])


def test_a_half_used_sheet_keeps_its_used_labels_free(keeping):
    labels = labels_of(keeping, animals_on(keeping, keeping.today))
    first, second = label_pages(labels, A_PAGE, first=5)

    assert first[:4] == (None,) * 4
    assert [label for label in (*first, *second) if label is not None] == labels


@pytest.mark.parametrize("typed", ["0", "28", "-1", "two", "1.5"])
def test_a_label_that_no_sheet_has_is_refused_with_what_is_right(typed):
    with pytest.raises(ValueError, match=f"{typed} is no label of a sheet; 1 to 27 is right"):
        first_typed(typed, A_PAGE)


def test_the_code_on_the_label_of_a_place_leads_back_to_that_place():
    (label,) = place_labels_of(["B12·7"])

    assert place_of(label.scanned.removeprefix(";")) == place_of("B12·7")
    assert len(label.scanned) <= 14  # what a code of version 1 at level M holds, in bytes


def test_what_stands_in_no_rack_has_no_label_of_a_place():
    assert [label.place for label in place_labels_of(["shelf by the window", "a1-2"])] == ["A1·2"]
    with pytest.raises(LookupError, match="no place to label"):
        place_labels_of(["shelf by the window"])
