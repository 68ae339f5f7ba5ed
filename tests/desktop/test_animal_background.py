"""The way off the main thread: one thread, results back on the main one, nothing after the end."""

import threading
import time

import pytest

from keeper.desktop.background import AtOnce, Background


@pytest.fixture
def worker(qtbot):
    made = Background()
    yield made
    made.stop()


def quiet(_):
    return None


def test_a_job_runs_elsewhere_and_its_result_arrives_here(qtbot, worker):
    seen = []

    worker.run(
        threading.get_ident, lambda ident: seen.append((ident, threading.get_ident())), quiet
    )
    qtbot.waitUntil(lambda: bool(seen), timeout=5000)

    (worked_in, arrived_in) = seen[0]
    assert worked_in != threading.get_ident()
    assert arrived_in == threading.get_ident()


def test_every_job_runs_in_the_same_thread_in_order(qtbot, worker):
    seen = []
    for number in range(5):
        worker.run(lambda n=number: (n, threading.get_ident()), seen.append, quiet)
    qtbot.waitUntil(lambda: len(seen) == 5, timeout=5000)

    assert [number for number, _ in seen] == list(range(5))
    assert len({ident for _, ident in seen}) == 1


def test_what_went_wrong_is_told_here(qtbot, worker):
    failed, done = [], []

    worker.run(lambda: 1 / 0, done.append, failed.append)
    qtbot.waitUntil(lambda: bool(failed), timeout=5000)

    assert isinstance(failed[0], ZeroDivisionError)
    assert done == []


def test_stopping_drops_what_waits_and_does_the_last_thing_in_the_thread(qtbot, worker):
    begun, release, seen, last = threading.Event(), threading.Event(), [], []
    worker.run(lambda: begun.set() or release.wait(5), seen.append, quiet)
    worker.run(lambda: "waited", seen.append, quiet)
    assert begun.wait(5)

    threading.Timer(0.05, release.set).start()
    worker.stop(lambda: last.append(threading.get_ident()))
    qtbot.wait(50)

    assert seen == []
    assert len(last) == 1 and last[0] != threading.get_ident()


def test_a_long_reckoning_does_not_hold_up_the_closing(qtbot, worker, monkeypatch):
    monkeypatch.setattr("keeper.desktop.background.STOP_SECONDS", 0.1)
    begun, release, seen = threading.Event(), threading.Event(), []
    worker.run(lambda: begun.set() or release.wait(20), seen.append, quiet)
    assert begun.wait(5)

    started = time.monotonic()
    worker.stop()
    waited = time.monotonic() - started
    release.set()
    qtbot.wait(50)

    assert waited < 10
    assert seen == []


def test_it_begins_anew_after_a_stop(qtbot, worker):
    seen = []
    worker.stop()

    worker.run(lambda: 7, seen.append, quiet)
    qtbot.waitUntil(lambda: seen == [7], timeout=5000)


def test_at_once_is_done_before_it_returns():
    done, failed = [], []

    AtOnce().run(lambda: 7, done.append, failed.append)
    AtOnce().run(lambda: 1 / 0, done.append, failed.append)

    assert done == [7]
    assert isinstance(failed[0], ZeroDivisionError)
