"""A folder in memory, because thousands of crashed books are laid down in it."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.faults.system_calls import STRACE
from tests.store.books import quick_folder


@pytest.fixture
def room() -> Iterator[Path]:
    """A place of one's own, gone after the test."""
    with quick_folder() as name:
        yield Path(name).resolve() / "room"


@pytest.fixture
def strace() -> None:
    if STRACE is None:
        pytest.skip("strace is not installed: apt install strace")
