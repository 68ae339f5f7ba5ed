"""Books for tests: a folder in memory, two stations, what every table holds."""

import itertools
import os
import tempfile
from collections.abc import Callable
from datetime import UTC, date, datetime
from pathlib import Path
from typing import Any

from keeper.husbandry.events import Described, Event, Offer, Result, Weighing
from keeper.husbandry.when import on_day
from keeper.store.database import Book
from keeper.store.journal import batch

WRITTEN = datetime(2026, 3, 1, 20, tzinfo=UTC)
DAY = date(2026, 3, 1)


def quick_folder() -> tempfile.TemporaryDirectory[str]:
    """A folder that goes away; in memory where there is one, because a book waits for its disk."""
    memory = Path("/dev/shm")
    return tempfile.TemporaryDirectory(dir=memory if os.access(memory, os.W_OK) else None)


def tails(station: int) -> Callable[[], int]:
    """Tails that no other *station* uses, the same in every run."""
    return itertools.count(station, 2).__next__


def write(book: Book, *events: Event, **given: Any) -> int:
    """One batch that says *events*; returns its key."""
    with batch(book, verb="note", keeper="Ro", written=given.pop("written", WRITTEN)) as writer:
        writer.add(*events)
    return writer.id


def an_animal(book: Book, code: str = "A1", **given: Any) -> int:
    """A new animal of the book, described; returns its key."""
    with batch(book, verb="take in", keeper="Ro", written=WRITTEN) as writer:
        animal = writer.new_animal()
        described = {"code": code, "species": "house_snake", "happened": on_day(DAY), **given}
        writer.add(Described(animal=animal, **described))
    return animal


def a_weight(animal: int, weight_g: float = 41.2, **given: Any) -> Weighing:
    return Weighing(animal=animal, weight_g=weight_g, **{"happened": on_day(DAY), **given})


def an_offer(animal: int, result: Result = Result.TAKEN, **given: Any) -> Offer:
    return Offer(animal=animal, result=result, **{"happened": on_day(DAY), **given})


def tables_of(book: Book) -> dict[str, list[tuple[Any, ...]]]:
    """Every row of every table, in an order that does not depend on the writing."""
    execute = book.connection.execute
    names = execute("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name").fetchall()
    return {name: sorted(execute(f"SELECT * FROM {name}"), key=repr) for (name,) in names}
