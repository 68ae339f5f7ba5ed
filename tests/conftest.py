"""What every test shares: Qt without a display, the long campaigns, a place for a book."""

import gc
import os
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ.setdefault("KEEPER_LANGUAGE", "en")  # whatever the machine speaks

COLLECT_AFTER = 100_000
MEMORY = Path("/dev/shm")
ROOM_BYTES = 1_000_000_000


def pytest_configure(config: pytest.Config) -> None:
    """Garbage is collected between tests on the main thread, as the program does.

    Otherwise a thread of one test might destroy the widgets of another. Files of tests lie in
    memory where it has room: thousands of books are made, and each would wait for its disk.
    """
    gc.disable()
    if _has_room(MEMORY):
        os.environ.setdefault("PYTEST_DEBUG_TEMPROOT", str(MEMORY))


def _has_room(folder: Path) -> bool:
    if not os.access(folder, os.W_OK):
        return False
    there = os.statvfs(folder)
    return there.f_bavail * there.f_frsize > ROOM_BYTES


def pytest_collection_finish(session: pytest.Session) -> None:
    """Modules and tests stay to the end: no collection need look at them again."""
    gc.collect()
    gc.freeze()


@pytest.hookimpl(wrapper=True)
def pytest_runtest_teardown(item: pytest.Item) -> Iterator[None]:
    """What a test left is gone before the next, which is not slowed by windows of others."""
    yield
    _destroy_what_was_left()
    if gc.get_count()[0] > COLLECT_AFTER:
        gc.collect()


def _destroy_what_was_left() -> None:
    """Outside of an event loop Qt keeps a widget that is to be deleted later, and it hears all."""
    if "PySide6.QtWidgets" in sys.modules:
        from PySide6.QtCore import QCoreApplication, QEvent

        if QCoreApplication.instance() is not None:
            QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)


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
