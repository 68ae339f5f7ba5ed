"""What the scale needs of an animal: the same weighings and offers, and nothing else is read."""

from contextlib import closing
from datetime import date

import pytest

from keeper.actions.life import life_of, weighed_life_of
from keeper.actions.weighing import WeighIn
from keeper.rehearsal.collection import make_collection

STATEMENTS_MOST = 8
"""Weighings, offers, and what the growth curve of a kind is drawn over from."""


@pytest.fixture(scope="module")
def keeping(tmp_path_factory):
    path = tmp_path_factory.mktemp("weighed") / "a.book"
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
