"""What the tests of taking in share: a book with a fixed day, and files made on the spot."""

import hashlib
from collections.abc import Iterator
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path

import pytest

from keeper.actions.csv_file import Fault
from keeper.actions.keeping import Keeping, new_keeping
from keeper.actions.taking_in import TakenIn, take_in

NOW = datetime(2026, 3, 18, 21, 0, tzinfo=UTC)
ANIMALS = "animal,species,sex,hatched,place\n"
DIARY = "animal,date,what,grams,note\n"
ASH = "ash,corn snake,female,2025-07-01,A-1-1\n"


@pytest.fixture
def keeping(tmp_book_path: Path) -> Iterator[Keeping]:
    with closing(new_keeping(tmp_book_path, station="test", now=lambda: NOW)) as keeping:
        yield keeping


def taken(
    keeping: Keeping, animals: str | bytes | None = None, diary: str | bytes | None = None
) -> TakenIn:
    """Take in files of this content."""
    folder = keeping.book.path.parent
    paths: dict[str, Path | None] = {"animals": None, "diary": None}
    for name, content in (("animals", animals), ("diary", diary)):
        if content is not None:
            paths[name] = folder / f"{name}.csv"
            raw = content.encode() if isinstance(content, str) else content
            (folder / f"{name}.csv").write_bytes(raw)
    return take_in(keeping, animals=paths["animals"], diary=paths["diary"])


def told_by(book: Keeping) -> str:
    """A fingerprint of everything the book says."""
    dump = "\n".join(book.book.connection.iterdump())
    return hashlib.sha256(dump.encode()).hexdigest()


def the_fault(found: TakenIn) -> Fault:
    assert len(found.faults) == 1, [str(fault) for fault in found.faults]
    return found.faults[0]
