"""Readings of two books become one another's, in any order, or none of them where they differ."""

import json
from contextlib import closing
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from keeper.store.database import Book, create_book
from keeper.store.documents import NotADocument
from keeper.store.readings import packed, put_in, rolled_up
from keeper.store.readings_out import write_out_readings
from tests.store.books import quick_folder
from tests.store.readings_read_in import read_in_readings

DAY = 20_500
SLOTS_OF_A_DAY = st.dictionaries(st.integers(0, 287), st.integers(-4000, 8000), max_size=20)


def rows_of(book: Book) -> list[tuple[object, ...]]:
    return book.connection.execute("SELECT * FROM reading_day ORDER BY probe, day").fetchall()


def travelled(book: Book, probe: str = "K1") -> list[dict[str, object]]:
    return json.loads(json.dumps(list(write_out_readings(book, probe))))


@given(SLOTS_OF_A_DAY, SLOTS_OF_A_DAY)
@settings(deadline=None, max_examples=50)
def test_two_books_that_read_each_other_hold_the_same_roll_up_and_all(first, second):
    second = {slot: first.get(slot, value) for slot, value in second.items()}
    with quick_folder() as at:
        one, two = (create_book(Path(at) / f"{n}.book", station=n) for n in ("one", "two"))
        with closing(one), closing(two):
            for book, values in ((one, first), (two, second)):
                put_in(book, {("K1", DAY): values} if values else {})
            from_one, from_two = travelled(one), travelled(two)
            read_in_readings(two, from_one)
            read_in_readings(one, from_two)
            again = read_in_readings(one, from_two)

            assert rows_of(one) == rows_of(two)
            assert again.new == 0 and again.known == len(second)
            whole = packed(second | first)
            if first or second:
                assert rows_of(one) == [("K1", DAY, whole, rolled_up(whole))]


def test_where_two_books_differ_nothing_is_taken_in_and_the_slot_is_named(book):
    put_in(book, {("K1", DAY): {5: 2100}})
    told = travelled(book)[0]
    told["hundredths"][5], told["hundredths"][6] = 2200, 2300
    before = rows_of(book)

    joined = read_in_readings(book, [told])

    assert (joined.new, joined.conflicts) == (0, (("K1", DAY, 5),))
    assert rows_of(book) == before


@pytest.mark.parametrize(
    ("name", "value", "told"),
    [
        ("probe", " ", "its name"),
        ("day", "yesterday", "2026-03-01"),
        ("hundredths", [1, 2], "288 whole numbers"),
        ("hundredths", [True] * 288, "288 whole numbers"),
        ("hundredths", [-32768] * 288, "288 whole numbers"),
        ("more", 1, "nothing else"),
    ],
)
def test_a_document_that_is_none_is_refused_by_its_number(book, name, value, told):
    put_in(book, {("K1", DAY): {5: 2100}})
    before, document = rows_of(book), travelled(book)[0]

    with pytest.raises(NotADocument, match="Document 1") as refusal:
        read_in_readings(book, [document | {name: value}])

    assert told in str(refusal.value)
    assert rows_of(book) == before


def test_two_documents_that_tell_one_slot_differently_are_refused(book):
    put_in(book, {("K1", DAY): {5: 2100}})
    first = travelled(book)[0]
    second = first | {"hundredths": [2200] * 288}

    with pytest.raises(NotADocument, match="Document 2: K1 on 2026-02-16 was told otherwise"):
        read_in_readings(book, [first, second])
