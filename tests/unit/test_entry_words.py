"""Every kind of entry can be told in the records."""

from collections.abc import Iterator
from dataclasses import fields
from datetime import date
from enum import StrEnum
from typing import Any, get_args, get_type_hints

import pytest

from keeper.actions.due_board import FEED_NIGHTS
from keeper.actions.entry_words import KINDS, entry_words
from keeper.husbandry.events import Described, Setting
from keeper.husbandry.when import Happened, on_day
from keeper.store.rows import TABLES

DAY = date(2026, 3, 18)


def filled(kind: type[Any]) -> Any:
    """An entry of *kind* with something in every field."""
    hints = get_type_hints(kind)
    return kind(**{f.name: _sample(hints[f.name]) for f in fields(kind) if f.name != "note"})


def _sample(hint: Any) -> Any:
    kinds = [kind for kind in get_args(hint) or (hint,) if kind is not type(None)]
    return _values(kinds[0])


def _values(kind: type[Any]) -> Any:
    if issubclass(kind, StrEnum):
        return next(iter(kind))
    samples: Iterator[tuple[type[Any], Any]] = iter(
        ((Happened, on_day(DAY)), (bool, True), (int, 3), (float, 3.0), (date, DAY), (str, "B3"))
    )
    return next(value for base, value in samples if issubclass(kind, base))


@pytest.mark.parametrize("kind", TABLES, ids=lambda kind: kind.__name__)
def test_an_entry_of_every_kind_has_words(kind):
    assert entry_words(filled(kind))


@pytest.mark.parametrize("table", TABLES.values())
def test_every_table_is_counted_in_words_of_its_own(table):
    assert KINDS[table](1) != KINDS[table](2)


def test_feed_nights_are_told_as_they_are_typed():
    chosen = Setting(happened=on_day(DAY), key=FEED_NIGHTS, value="FREQ=WEEKLY;BYDAY=WE,SA")

    assert entry_words(chosen) == "feed nights: Wed, Sat"


def test_young_are_told_by_their_clutch_and_the_day_they_hatched():
    young = Described(
        animal=3,
        happened=on_day(DAY),
        code="26-9 a",
        species="house-snake",
        hatched_first=DAY,
        hatched_last=DAY,
        clutch="26-9",
    )

    assert entry_words(young).replace("\u00a0", " ") == "26-9 a, hatched 18 Mar 2026, clutch 26-9"
