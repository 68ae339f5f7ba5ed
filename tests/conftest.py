"""What every test shares: Qt without a display, the long campaigns, a place for a book."""

import gc
import os
from pathlib import Path

import pytest

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ.setdefault("KEEPER_LANGUAGE", "en")  # whatever the machine speaks

COLLECT_AFTER = 100_000


def pytest_configure(config: pytest.Config) -> None:
    """Garbage is collected between tests on the main thread, as the program does.

    Otherwise a thread of one test might destroy the widgets of another.
    """
    gc.disable()


def pytest_runtest_teardown(item: pytest.Item) -> None:
    if gc.get_count()[0] > COLLECT_AFTER:
        gc.collect()


def pytest_addoption(parser: pytest.Parser) -> None:
    parser.addoption("--long", action="store_true", help="also run the campaigns marked long")


def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    if config.getoption("--long"):
        return
    for item in items:
        if item.get_closest_marker("long"):
            item.add_marker(pytest.mark.skip(reason="a campaign: runs with --long"))


@pytest.fixture
def tmp_book_path(tmp_path: Path) -> Path:
    """Where a test may make a record book; nothing is there yet."""
    return tmp_path / "test.book"
