"""A batch written out in one book and read in in another says the same, or nothing is written."""

import copy
import json

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from keeper.store.database import create_book
from keeper.store.documents import NotADocument
from keeper.store.errors import BookError
from keeper.store.exchange import batch_keys, read_in, write_out
from keeper.store.journal import withdraw_batch
from keeper.store.reading import board
from keeper.store.state import differing
from tests.store.books import WRITTEN, a_weight, an_animal, an_offer, tables_of, tails, write
from tests.strategies import events


@pytest.fixture
def other(folder):
    made = create_book(folder / "other.book", station="other", tail=tails(1))
    yield made
    made.close()


@pytest.fixture
def documents(book, animal):
    """A described animal, a weight and an offer, and a batch that takes the latter two back."""
    key = write(book, a_weight(animal), an_offer(animal))
    withdraw_batch(book, key, verb="take back", keeper="Ro", written=WRITTEN)
    return written_out(book)


def written_out(book):
    """By way of JSON text, as between machines."""
    return json.loads(json.dumps([write_out(book, key) for key in batch_keys(book)]))


def test_a_book_read_in_whole_says_the_same_in_every_table(book, other, documents):
    taken = read_in(other, documents)

    assert taken.new == batch_keys(book)
    assert tables_of(other) == tables_of(book)


def test_documents_come_in_any_order(book, other, documents):
    read_in(other, documents[::-1])

    assert tables_of(other) == tables_of(book)


def test_reading_in_twice_adds_nothing_and_says_so(other, documents):
    read_in(other, documents)
    before = tables_of(other)

    taken = read_in(other, documents)

    assert (taken.new, len(taken.known)) == ((), 3)
    assert tables_of(other) == before


def test_a_known_key_with_other_content_is_refused_and_nothing_is_written(other, documents):
    read_in(other, documents[:1])
    before = tables_of(other)
    changed = copy.deepcopy(documents)
    changed[0]["entries"][0]["fields"]["code"] = "B2"

    taken = read_in(other, changed)

    assert (taken.new, taken.conflicts) == ((), (int(documents[0]["batch"]),))
    assert tables_of(other) == before


def test_one_call_with_two_versions_of_a_batch_is_refused(other, documents):
    changed = {**documents[0], "keeper": "Someone else"}

    taken = read_in(other, [documents[0], changed])

    assert (taken.new, taken.conflicts) == ((), (int(documents[0]["batch"]),))
    assert batch_keys(other) == ()


def test_an_offset_that_differs_is_other_content(other, documents):
    read_in(other, documents[:1])
    changed = copy.deepcopy(documents[0])
    changed["written"] = "2026-03-01T21:00:00.000+01:00"

    assert read_in(other, [changed]).conflicts == (int(documents[0]["batch"]),)


def test_both_stations_end_alike_after_undoing_the_same_batch(book, other, documents):
    key = batch_keys(book)[0]
    read_in(other, documents)
    for one in (book, other):
        withdraw_batch(one, key, verb="take back", keeper="Ro", written=WRITTEN)

    ours, theirs = written_out(book), written_out(other)
    read_in(book, theirs)
    read_in(other, ours)

    assert board(book) == []
    assert tables_of(other) == tables_of(book)


def test_a_putting_back_that_arrives_late_counts(book, other, documents):
    undo = batch_keys(book)[-1]
    read_in(other, documents)
    redo = withdraw_batch(book, undo, verb="put back", keeper="Ro", written=WRITTEN)

    read_in(other, [write_out(book, redo)])

    assert board(other) == board(book)
    assert board(other)[0].weight_g == 41.2


def test_numbers_beyond_what_json_readers_hold_are_written_as_digits(documents):
    numbers = [documents[0]["batch"], *documents[0]["animals"]]

    assert all(isinstance(number, str) and int(number) > 2**53 for number in numbers)


def test_whole_grams_may_come_as_whole_numbers(book, other, animal):
    write(book, a_weight(animal, 41.0))
    documents = written_out(book)
    documents[1]["entries"][0]["fields"]["weight_g"] = 41

    read_in(other, documents)

    assert tables_of(other) == tables_of(book)


def test_a_batch_whose_animal_is_unknown_is_refused_whole(other, documents):
    with pytest.raises(NotADocument, match=r"animal .* is neither in the book nor in these"):
        read_in(other, documents[1:])

    assert batch_keys(other) == ()


def test_a_taking_back_of_an_unknown_batch_is_refused_whole(other, documents):
    with pytest.raises(NotADocument, match=r"withdraws batch .* neither in the book"):
        read_in(other, [documents[0], documents[2]])

    assert batch_keys(other) == ()


def test_a_batch_that_the_book_does_not_have_cannot_be_written_out(book):
    with pytest.raises(BookError, match="no batch 7"):
        write_out(book, 7)


ODD = [
    (("format",), "other", "must be 'keeper batch'"),
    (("version",), 2, "version is 2; it must be 1"),
    (("batch",), "9223372036854775807", "a key before 2080"),
    (("batch",), 12.5, "batch cannot be 12.5"),
    (("written",), "2026-03-01T20:00:00", "a time with its offset"),
    (("written",), "9999-12-31T23:59:59.999-23:59", "between 1900 and 2199"),
    (("keeper",), "R\0", "text cannot hold NUL"),
    (("colour",), "red", "'colour' is not known here"),
    (("animals",), ["12"], "the keys after its own"),
    (("entries",), "none", "entries cannot be 'none'"),
    (("entries", 0, "kind"), "moult", "a kind this program knows"),
    (("entries", 0, "seq"), 1, "numbered from 0 to 0"),
    (("entries", 0, "happened", "at"), "2026-02-30T10:00:00Z", "at cannot be '2026-02-30"),
    (("entries", 0, "happened", "at"), "2026-02-03T10:00:00", "needs the offset"),
    (("entries", 0, "happened", "at"), "2026-02-03T10:00:00.5Z", "finer than a book keeps"),
    (("entries", 0, "happened", "at"), "9999-12-31T23:59:59-23:59", "happened|out of range"),
    (("entries", 0, "happened", "span"), "-P1D", "cannot be negative"),
    (("entries", 0, "fields", "code"), "", "the book cannot hold|CHECK"),
    (("entries", 0, "fields", "code"), None, "code cannot be None"),
    (("entries", 0, "fields", "dam"), 99, "animal 99 is neither"),
    (("entries", 0, "fields", "note"), "\ud800", "half a character"),
]


@pytest.mark.parametrize(("path", "value", "told"), ODD)
def test_an_odd_document_is_refused_with_the_place_and_nothing_is_written(
    other, documents, path, value, told
):
    inside = documents[0]
    for step in path[:-1]:
        inside = inside[step]
    inside[path[-1]] = value

    with pytest.raises(NotADocument, match=f"(?i){told}"):
        read_in(other, documents)

    assert batch_keys(other) == ()


@pytest.mark.parametrize(
    ("weight", "told"),
    [
        (0, "more than 0 g"),
        (-3, "more than 0 g"),
        ("412g", "weight_g cannot be '412g'"),
        (0.0004, "too small"),
        (41.20004, "finer"),
        (float("inf"), "more than 0"),
        (True, "weight_g cannot be True"),
    ],
)
def test_an_impossible_weight_is_refused(book, other, animal, weight, told):
    write(book, a_weight(animal))
    documents = written_out(book)
    documents[1]["entries"][0]["fields"]["weight_g"] = weight

    with pytest.raises(NotADocument, match=told):
        read_in(other, documents)


@pytest.mark.parametrize(
    ("target", "seq", "told"),
    [(None, None, "an older batch"), (0, 5, "withdraws entry 5"), (0, -1, "an entry or null")],
)
def test_a_withdrawal_of_itself_or_of_nothing_is_refused(other, documents, target, seq, told):
    key = documents[2]["batch"] if target is None else documents[target]["batch"]
    documents[2]["withdrawals"][0] |= {"target_batch": key, "target_seq": seq}

    with pytest.raises(NotADocument, match=told):
        read_in(other, documents)


@pytest.mark.parametrize("given", [None, 3, "batch", [], {}])
def test_what_is_no_document_at_all_is_refused(other, given):
    with pytest.raises(NotADocument, match=r"missing|JSON object"):
        read_in(other, [given])


@settings(
    max_examples=25,
    deadline=None,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)
@given(data=st.data())
def test_joining_is_a_union_in_either_direction(folder, data):
    name = f"{len(list(folder.iterdir()))}"
    first = create_book(folder / f"{name}-a", station="a", tail=tails(0))
    second = create_book(folder / f"{name}-b", station="b", tail=tails(1))
    animal = an_animal(first)
    read_in(second, written_out(first))
    said = st.lists(events((animal,), ()), max_size=4)
    for one in (first, second):
        write(one, *data.draw(said))

    ours, theirs = written_out(first), written_out(second)
    read_in(first, theirs)
    read_in(second, ours)

    assert tables_of(first) == tables_of(second)
    assert differing(first.connection) == []
    first.close()
    second.close()
