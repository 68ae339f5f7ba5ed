"""What property tests draw: every kind of event, built from the dataclasses themselves.

Times are few, so that equal ones occur: an order that leans on anything but time, batch and
number shows itself. A strategy is made once: making and checking them anew for each example
took more time than drawing from them.
"""

from collections.abc import Mapping, Sequence
from dataclasses import fields
from datetime import UTC, date, datetime, timedelta, timezone
from enum import StrEnum
from functools import cache, lru_cache
from typing import Any, get_args, get_type_hints

from hypothesis import strategies as st

from keeper.husbandry.events import (
    Described,
    Event,
    Offer,
    Regurgitation,
    ShedSign,
    Weighing,
)
from keeper.husbandry.when import Happened, at_instant, on_day

KINDS = get_args(Event)
TELLING = (Offer, Weighing, ShedSign, Regurgitation)
"""Kinds whose order among themselves changes what the state row says."""
DAYS = (date(2026, 3, 28), date(2026, 3, 29))
OFFSETS = (timedelta(0), timedelta(hours=1))
WRITTEN = (
    datetime(2026, 4, 1, 20, tzinfo=UTC),
    datetime(2026, 4, 1, 21, tzinfo=timezone(timedelta(hours=1))),
    datetime(2026, 4, 1, 19, 59, tzinfo=UTC),
)
"""The first two are one instant in two places, the third is a clock set back."""

_POSITIVE = st.sampled_from((1, 41_200, 300_500)) | st.integers(1, 10**9)
_NUMBERS: dict[str, st.SearchStrategy[Any]] = {
    "body_score": st.sampled_from((1.0, 2.5, 5.0)),
    "value": st.floats(allow_nan=False, allow_infinity=False),
    "temp_c": st.integers(-40_000, 90_000).map(lambda thousandths: thousandths / 1000),
    "total_cm": st.integers(1, 30_000).map(lambda millimetres: millimetres / 10),
    "svl_cm": st.integers(1, 30_000).map(lambda millimetres: millimetres / 10),
    "count": st.integers(1, 5),
    "good": st.integers(0, 20),
    "slugs": st.integers(0, 20),
    "line": st.integers(0, 200),
    "every_days": st.integers(1, 365),
    "times_a_day": st.none() | st.integers(1, 12),
    "items": st.integers(0, 500),
    "readings": st.integers(0, 10**6),
    "aside": st.integers(0, 10**6),
    "percent": st.sampled_from((0.5, 50.0, 66.6, 99.0)),
    "score": st.sampled_from((1.0, 5.5, 10.0)),
}


@cache
def texts(least: int = 0) -> st.SearchStrategy[str]:
    """Text that a book can hold, the ends of Unicode and the empty text among it."""
    letters = st.characters(exclude_categories=("Cs",), exclude_characters="\x00")
    return st.sampled_from(("A1", "BITES", "Ä·β🐍")) | st.text(letters, min_size=least, max_size=6)


@cache
def happenings() -> st.SearchStrategy[Happened]:
    """A vague day, or an instant counted for its own day or the night before.

    Eight in all, on four instants, so that most entries of an animal are as old as another.
    """
    days, offsets = st.sampled_from(DAYS), st.sampled_from(OFFSETS)
    return st.builds(on_day, days, offsets) | st.builds(_instant, days, offsets)


def _instant(day: date, offset: timedelta) -> Happened:
    """Midnight of Greenwich; an hour east it is one, and still the night before."""
    midnight = datetime(day.year, day.month, day.day, tzinfo=UTC)
    night_of = day - timedelta(days=1) if offset else None
    return at_instant(midnight.astimezone(timezone(offset)), night_of)


def events_of(
    kind: Any, animals: Sequence[int], rounds: Sequence[int], **given: Any
) -> st.SearchStrategy[Any]:
    """Events of one *kind* about *animals* and *rounds*; *given* fields are drawn from there."""
    drawn = _fields_of(kind, tuple(animals), tuple(rounds))
    return st.builds(kind, **{**drawn, **given})


@lru_cache(maxsize=1024)
def _fields_of(
    kind: Any, animals: tuple[int, ...], rounds: tuple[int, ...]
) -> Mapping[str, st.SearchStrategy[Any]]:
    hints = _hints_of(kind)
    return {
        field.name: _values(field.name, hints[field.name], animals, rounds)
        for field in fields(kind)
    }


_hints_of = cache(get_type_hints)


def events(animals: Sequence[int], rounds: Sequence[int]) -> st.SearchStrategy[Event]:
    """Events of every kind that needs nothing but what is given; telling ones more often."""
    return _events(tuple(animals), tuple(rounds))


@lru_cache(maxsize=64)
def _events(animals: tuple[int, ...], rounds: tuple[int, ...]) -> st.SearchStrategy[Event]:
    kinds = [kind for kind in KINDS if rounds or "round" not in _hints_of(kind)]
    every = st.one_of([events_of(kind, animals, rounds) for kind in kinds])
    return every | st.one_of([events_of(kind, animals, rounds) for kind in TELLING])


def descriptions(animal: int, animals: Sequence[int]) -> st.SearchStrategy[Described]:
    """Who *animal* is; its parents come from *animals*."""
    return events_of(Described, animals, (), animal=st.just(animal))


def _values(
    name: str, hint: Any, animals: Sequence[int], rounds: Sequence[int]
) -> st.SearchStrategy[Any]:
    hints = get_args(hint)
    if type(None) in hints:
        wanted = next(part for part in hints if part is not type(None))
        some = _values(name, wanted, animals, rounds)
        return st.none() if name == "round" and not rounds else st.none() | some
    if name in ("animal", "dam", "sire", "mate"):
        return st.sampled_from(tuple(animals))
    if name == "round":
        return st.sampled_from(tuple(rounds))
    return _plain_values(name, hint)


@cache
def _plain_values(name: str, hint: Any) -> st.SearchStrategy[Any]:
    if hint in (int, float) and name in _NUMBERS:
        return _NUMBERS[name]
    if name.endswith("_g"):
        return _POSITIVE.map(lambda milligrams: milligrams / 1000)
    if hint is Happened:
        return happenings()
    if hint is date:
        return st.sampled_from(DAYS)
    if hint is bool:
        return st.booleans()
    if hint is str:
        return texts(least=1)
    if issubclass(hint, StrEnum):
        return st.sampled_from(hint)
    raise TypeError(f"no strategy draws {name}: {hint}; add one here")
