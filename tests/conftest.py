"""What every test shares: Qt without a display, the long campaigns, a place for a book."""

import gc
import os
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ.setdefault("KEEPER_LANGUAGE", "en")  # whatever the machine speaks

COLLECT_AFTER = 100_000
MEMORY = Path("/dev/shm")
ROOM_BYTES = 4_000_000_000
LONGEST = Path(__file__).with_name("longest_first.txt").read_text(encoding="utf-8").split()
"""Files that take ten seconds or more, or nearly so, roughly the longest first."""


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
def pytest_runtest_teardown(item: pytest.Item, nextitem: pytest.Item | None) -> Iterator[None]:
    """What a test left is gone before the next, which is not slowed by windows of others."""
    yield
    core, widgets = (sys.modules.get(f"PySide6.{name}") for name in ("QtCore", "QtWidgets"))
    is_last = nextitem is None or nextitem.path != item.path
    came = bool(widgets and widgets.QApplication.instance() and is_last and _let_go(widgets))
    if core is not None and core.QCoreApplication.instance() is not None:
        deferred = core.QEvent.Type.DeferredDelete.value  # kept while no event loop runs
        core.QCoreApplication.sendPostedEvents(None, deferred)
    if came or gc.get_count()[0] > COLLECT_AFTER:
        gc.collect()


def _let_go(widgets: Any) -> bool:
    """Windows that a file of tests left, if any: the filters of each hear every event of all."""
    left = [w for w in widgets.QApplication.topLevelWidgets() if isinstance(w, widgets.QMainWindow)]
    for window in left:
        if window.isVisible():
            window.close()
        window.deleteLater()
    return bool(left)


def pytest_addoption(parser: pytest.Parser) -> None:
    parser.addoption("--long", action="store_true", help="also run the campaigns marked long")


def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """The longest files come first, so that no processor waits for one that came last."""
    rank = {name: number for number, name in enumerate(LONGEST)}
    items.sort(key=lambda item: rank.get(f"{item.path.parent.name}/{item.path.name}", len(rank)))
    if config.getoption("--long"):
        return
    for item in items:
        if item.get_closest_marker("long"):
            item.add_marker(pytest.mark.skip(reason="a campaign: runs with --long"))


@pytest.fixture
def tmp_book_path(tmp_path: Path) -> Path:
    """Where a test may make a record book; nothing is there yet."""
    return tmp_path / "test.book"
