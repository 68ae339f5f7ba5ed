"""A book for each test, in memory where there is such a place."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from keeper.store.database import Book, create_book
from tests.store.books import an_animal, quick_folder, tails


@pytest.fixture
def folder() -> Iterator[Path]:
    with quick_folder() as name:
        yield Path(name)


@pytest.fixture
def book(folder: Path) -> Iterator[Book]:
    made = create_book(folder / "shed.book", station="shed", tail=tails(0))
    yield made
    made.close()


@pytest.fixture
def animal(book: Book) -> int:
    return an_animal(book)
