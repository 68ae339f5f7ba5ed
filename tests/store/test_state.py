"""After an entry only the columns that read its table are made anew; that is as good as all."""

import pytest

from keeper.husbandry.events import Described
from keeper.store import state
from keeper.store.reading import board
from keeper.store.schema import ANIMAL_COLUMNS
from keeper.store.state import differing, refresh, refresh_after
from tests.store.books import a_weight, an_animal, an_offer, write


def columns_after(*tables):
    return {name for name, read in state.tables_read().items() if read & {*tables}}


def test_the_columns_are_those_of_the_table_in_their_order(book):
    told = book.connection.execute("PRAGMA table_info(animal_now)").fetchall()

    assert [column[1] for column in told] == list(state._CELLS)


@pytest.mark.parametrize(
    ("table", "some", "others"),
    [
        ("offer", {"eaten_on", "refused_since", "meal_before_weighing_mg"}, {"weight_mg", "place"}),
        ("weighing", {"weight_mg", "weight_before_mg", "meal_before_weighing_on"}, {"eaten_on"}),
        ("regurgitation", {"meals_since_regurgitation"}, {"meals", "shed_on"}),
        ("shed_sign", {"stage", "stage_since", "shed_before_on"}, {"clutch_on"}),
    ],
)
def test_a_column_is_made_anew_after_entries_of_every_table_that_it_reads(table, some, others):
    assert some <= columns_after(table)
    assert not others & columns_after(table)


def test_every_column_but_the_described_ones_is_made_anew_after_some_entry(book):
    described = {field for field in Described.__dataclass_fields__ if field in state._CELLS}

    assert columns_after(*ANIMAL_COLUMNS) == {*state._CELLS} - described


def test_an_entry_of_no_column_leaves_the_row_alone(book, animal):
    before = board(book)
    book.connection.execute("UPDATE animal_now SET weight_mg = 5")

    refresh_after(book.connection, [animal], ["cleaned"])

    assert differing(book.connection) == [animal]
    refresh(book.connection, [animal])
    assert board(book) == before


def test_what_the_columns_of_one_table_leave_out_is_found_by_the_whole_row(book, monkeypatch):
    monkeypatch.setitem(state.tables_read(), "weighed_on", frozenset())
    state._update.cache_clear()
    animal = an_animal(book, "B1")

    write(book, an_offer(animal), a_weight(animal, 52.5))

    state._update.cache_clear()
    assert differing(book.connection) == [animal]
