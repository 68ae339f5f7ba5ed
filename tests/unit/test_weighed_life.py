"""What the scale needs of an animal: the same weighings and offers, and nothing else is read."""

from contextlib import closing
from datetime import date

import pytest

from keeper.actions.life import life_of, weighed_life_of
from keeper.actions.recording import write_up
from keeper.actions.weighing import WeighIn
from keeper.husbandry.events import Weighing
from keeper.husbandry.when import at_instant
from keeper.rehearsal.collection import make_collection

STATEMENTS_MOST = 8
"""Weighings, offers, and what the growth curve of a kind is drawn over from."""


@pytest.fixture
def keeping(tmp_path):
    path = tmp_path / "a.book"
    with closing(make_collection(path, animals=5, years=1, ends_on=date(2026, 11, 24))) as made:
        yield made


@pytest.mark.parametrize("on", [date(2026, 11, 25), date(2026, 6, 1)])
def test_weighings_and_offers_are_those_of_the_whole_record(keeping, on):
    for row in WeighIn(keeping).animals:
        whole, part = (read(keeping, row.animal, on) for read in (life_of, weighed_life_of))

        assert whole.weighings
        assert (part.weighings, part.offers) == (whole.weighings, whole.offers)
        assert part.meals == whole.meals


def test_an_animal_comes_to_the_scale_after_a_few_questions_to_the_book(keeping):
    walk = WeighIn(keeping)
    walk.on_scale(0)  # its kind's curve is drawn over once
    kin = [n for n, row in enumerate(walk.animals) if row.species == walk.animals[0].species]
    asked: list[str] = []
    keeping.book.connection.set_trace_callback(asked.append)
    try:
        walk.on_scale(kin[-1])
    finally:
        keeping.book.connection.set_trace_callback(None)

    assert kin[-1] > 0
    assert 0 < len(asked) <= STATEMENTS_MOST


def test_weights_of_the_day_are_found_whoever_was_weighed_and_in_the_order_of_writing(keeping):
    walk = WeighIn(keeping)
    assert walk.written == {}
    first, last = walk.animals[0], walk.animals[-1]
    for row, grams in ((last, 50.0), (first, 40.0), (last, 51.0)):
        weighing = Weighing(
            animal=row.animal, happened=at_instant(keeping.now()), weight_g=grams, resolution_g=0.1
        )
        write_up(keeping, [weighing])

    again = WeighIn(keeping)

    assert again.written == {0: 40.0, len(walk.animals) - 1: 51.0}
