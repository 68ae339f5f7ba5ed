"""Garbage with widgets in it is collected on the main thread, whatever thread allocates."""

import gc
import threading

import pytest
from PySide6.QtCore import QObject, QThread

from keeper.desktop.collecting import MainThreadCollector, collect_if_due


class Cyclic(QObject):
    """An object in a cycle that notes in which thread it was let go."""

    def __init__(self, gone):
        super().__init__()
        self.itself = self
        self._gone = gone

    def __del__(self):
        self._gone.append(threading.current_thread())


@pytest.fixture
def collector(qtbot):
    was_on = gc.isenabled()
    gc.enable()
    made = MainThreadCollector()
    yield made
    made.deleteLater()
    gc.unfreeze()
    if was_on:
        gc.enable()


def allocate():
    """What a reading in another thread does: more objects than make a collection due."""
    return [[n] for n in range(200_000)]


def test_another_thread_that_allocates_collects_no_widget(qtbot, collector):
    gone = []
    Cyclic(gone)
    kept = []
    thread = threading.Thread(target=lambda: kept.append(allocate()))
    thread.start()
    thread.join()
    assert gone == []

    qtbot.waitUntil(lambda: gone != [], timeout=5000)

    assert gone == [threading.main_thread()]
    assert QThread.currentThread() is collector.thread()


def test_nothing_is_collected_while_little_was_made(collector):
    gc.collect()

    assert collect_if_due(after=1_000_000) is None


def test_a_collection_is_due_by_what_was_made(collector):
    gc.collect()
    kept = allocate()

    assert collect_if_due() == 0
    assert len(kept) == 200_000
